# SPDX-License-Identifier: LGPL-2.1-or-later
"""The workbench's commands, in a table. What one opens is imported when it is run."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module
from typing import Any

import FreeCAD

from veneerwb.gui.chosen import (
    Found,
    benched_first,
    chosen_first,
    cut_here_first,
    holding_first,
    leaves_chosen,
    of_kind,
    seen_first,
    selected,
    sheets_seen_first,
)
from veneerwb.gui.told import in_a_box


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Marks a text that the host translates itself."""
    return text


TITLE = QT_TRANSLATE_NOOP("Workbench", "Veneer Layup")
MENU = QT_TRANSLATE_NOOP("Workbench", "Veneer &Layup")
"""Of letters for the keyboard, those of FreeCAD's own menus are F E V T M W H."""


# --- what is done with what is found ------------------------------------------------------------


def opens(module: str, action: str, *given: Callable[[Found], Any]) -> Callable[[Found], None]:
    """Calls `action` of a module of the screens with what `given` makes of what was found."""

    def run(found: Found) -> None:
        act = getattr(import_module(f"veneerwb.gui.{module}"), action)
        act(*(one(found) for one in given))

    return run


def document(found: Found) -> Any:
    return FreeCAD.ActiveDocument


def first(found: Found) -> Any:
    return found[0]


def every(found: Found) -> Found:
    return found


def leaf_number(found: Found) -> int | None:
    """The number of the leaf that is selected."""
    return next((leaf.Number for leaf in leaves_chosen()), None)


def particulars_panel(found: Found) -> Any:
    from veneerwb.gui.panels.particulars import ParticularsPanel

    return ParticularsPanel


def switches(shows: str) -> Callable[[Found], None]:
    """Shows or hides one thing on the selected matches, or on all if none is selected."""

    def run(found: Found) -> None:
        matches = [one for one in found if one in selected()] or found
        views = [match.ViewObject for match in matches]
        shown = not any(getattr(view, shows) for view in views)
        for view in views:
            setattr(view, shows, shown)

    return run


# --- the table ----------------------------------------------------------------------------------


@dataclass(frozen=True)
class Command:
    """`run` is given the objects of the kinds that it `needs`, as `order` puts them; there must be
    one of them where it needs any. `alone`: only where no panel is open."""

    name: str
    picture: str
    menu: str
    tip: str
    run: Callable[[Found], None]
    needs: tuple[str, ...] = ()
    order: Callable[[Found], Found] = chosen_first
    alone: bool = True

    def GetResources(self) -> dict[str, str]:
        """`WhatsThis` is what the host takes for the place of its help: the command's name, which
        `help` finds a page by."""
        told = {"MenuText": self.menu, "ToolTip": self.tip, "WhatsThis": self.name}
        if not self.alone:  # or the host greys it out while a panel is open
            told["CmdType"] = "ForEdit"
        return {"Pixmap": self.picture, **told}

    def IsActive(self) -> bool:
        import FreeCADGui

        if self.alone and FreeCADGui.Control.activeDialog():
            return False
        return not self.needs or bool(of_kind(FreeCAD.ActiveDocument, *self.needs))

    def Activated(self) -> None:
        import FreeCADGui

        shown = FreeCADGui.Command.get(self.name).getAction()[0].text()
        with in_a_box(shown.replace("&", "")):
            self.run(self.order(of_kind(FreeCAD.ActiveDocument, *self.needs)))


COMMANDS: tuple[Command | None, ...] = (
    Command(
        "Veneer_BringInLeaves", "veneer-bring-in",
        QT_TRANSLATE_NOOP("Veneer_BringInLeaves", "&Bring In Leaves"),
        QT_TRANSLATE_NOOP(
            "Veneer_BringInLeaves", "Make a bundle of leaves from their photographs"
        ),
        opens("panels.leaves", "bring_in"),
    ),
    Command(
        "Veneer_Sequence", "veneer-sequence",
        QT_TRANSLATE_NOOP("Veneer_Sequence", "Prove Se&quence"),
        QT_TRANSLATE_NOOP(
            "Veneer_Sequence",
            "Page through the leaves of the selected bundle, prove their order, lay them on each "
            "other",
        ),
        opens("panels.sequence", "look", document, first), ("Bundle",),
    ),
    Command(
        "Veneer_Backs", "veneer-backs",
        QT_TRANSLATE_NOOP("Veneer_Backs", "Bac&ks"),
        QT_TRANSLATE_NOOP(
            "Veneer_Backs",
            "Add photographs of backs, tie them to their faces, prove by them how the leaves lay",
        ),
        opens("panels.backs", "look", document, every, leaf_number), ("Bundle",), holding_first,
    ),
    Command(
        "Veneer_Particulars", "veneer-particulars",
        QT_TRANSLATE_NOOP("Veneer_Particulars", "&Particulars"),
        QT_TRANSLATE_NOOP(
            "Veneer_Particulars",
            "Say what the selected bundle is: species, cut, flitch, cost; how much there is of it",
        ),
        opens("panels.live", "edit", particulars_panel, first), ("Bundle",),
    ),
    Command(
        "Veneer_NewMatch", "veneer-match",
        QT_TRANSLATE_NOOP("Veneer_NewMatch", "&New Match"),
        QT_TRANSLATE_NOOP(
            "Veneer_NewMatch",
            "Lay up a top of any shape from the selected bundle or stock: book, slip, end match, "
            "box, diamond, herringbone, radial; a selected outline becomes the top",
        ),
        opens("panels.match", "choose", document, first), ("Bundle", "Stock"),
    ),
    Command(
        "Veneer_NewRadialMatch", "veneer-radial",
        QT_TRANSLATE_NOOP("Veneer_NewRadialMatch", "New Radial Matc&h"),
        QT_TRANSLATE_NOOP(
            "Veneer_NewRadialMatch",
            "Lay up a top of wedges from the selected bundle or stock of leaves",
        ),
        opens("panels.match", "new", document, first), ("Bundle", "Stock"),
    ),
    Command(
        "Veneer_BuildUp", "veneer-buildup",
        QT_TRANSLATE_NOOP("Veneer_BuildUp", "Build &Up Panel"),
        QT_TRANSLATE_NOOP(
            "Veneer_BuildUp",
            "Build the selected match up into a panel: core, backer, lipping, border, line, inlay",
        ),
        opens("panels.buildup", "look", first), ("Match",), cut_here_first,
    ),
    Command(
        "Veneer_ChooseSpot", "veneer-spot",
        QT_TRANSLATE_NOOP("Veneer_ChooseSpot", "Choos&e Spot"),
        QT_TRANSLATE_NOOP(
            "Veneer_ChooseSpot",
            "Move the wedge of the selected match on its leaves and see the top follow",
        ),
        opens("panels.spot", "choose", every), ("Match",), cut_here_first,
    ),
    Command(
        "Veneer_LeafOnFaces", "veneer-facing",
        QT_TRANSLATE_NOOP("Veneer_LeafOnFaces", "&Leaf On Faces"),
        QT_TRANSLATE_NOOP(
            "Veneer_LeafOnFaces", "Lay a leaf's picture, to scale, on the selected flat faces"
        ),
        opens("panels.facing", "new", document), ("Leaf",),
    ),
    Command(
        "Veneer_RunOnFaces", "veneer-run",
        QT_TRANSLATE_NOOP("Veneer_RunOnFaces", "Panels &in Sequence"),
        QT_TRANSLATE_NOOP(
            "Veneer_RunOnFaces",
            "Lay doors, drawer fronts or wall panels, the selected flat faces, from one sequence "
            "of leaves",
        ),
        opens("panels.run", "new", document, first), ("Bundle", "Stock"),
    ),
    Command(
        "Veneer_Faults", "veneer-faults",
        QT_TRANSLATE_NOOP("Veneer_Faults", "&Faults"),
        QT_TRANSLATE_NOOP(
            "Veneer_Faults",
            "Draw knots, splits and other faults, and what may be used, on the leaves' photographs",
        ),
        opens("panels.faults", "look", document, every, leaf_number), ("Bundle",), holding_first,
    ),
    Command(
        "Veneer_Marks", "veneer-marks",
        QT_TRANSLATE_NOOP("Veneer_Marks", "Paper &Marks"),
        QT_TRANSLATE_NOOP(
            "Veneer_Marks",
            "Print marks to stick on the leaves, find them on the photographs, measure from them",
        ),
        opens("panels.marks", "look", document, every, leaf_number), ("Bundle",), holding_first,
    ),
    None,
    Command(
        "Veneer_CheckMatch", "veneer-check",
        QT_TRANSLATE_NOOP("Veneer_CheckMatch", "&Check Match"),
        QT_TRANSLATE_NOOP(
            "Veneer_CheckMatch",
            "List what stands against cutting the selected match, and what would do",
        ),
        opens("panels.check", "look", document, every), ("Match",),
    ),
    Command(
        "Veneer_CloseRing", "veneer-closing",
        QT_TRANSLATE_NOOP("Veneer_CloseRing", "Close the Rin&g"),
        QT_TRANSLATE_NOOP(
            "Veneer_CloseRing",
            "How much over to cut the wedges of the selected match; as cut, what to true and where",
        ),
        opens("panels.closing", "look", first), ("Match",), cut_here_first,
    ),
    Command(
        "Veneer_DrawMatch", "veneer-drawing",
        QT_TRANSLATE_NOOP("Veneer_DrawMatch", "New &Drawing"),
        QT_TRANSLATE_NOOP(
            "Veneer_DrawMatch",
            "Draw the selected match on a page: plan, wedge, set-out and cut list",
        ),
        opens("panels.drawing", "new", document, first), ("Match",),
    ),
    Command(
        "Veneer_SaveDrawing", "veneer-save",
        QT_TRANSLATE_NOOP("Veneer_SaveDrawing", "Save Drawing &as PDF..."),
        QT_TRANSLATE_NOOP("Veneer_SaveDrawing", "Save the selected drawing as a PDF file"),
        opens("saving", "save_drawing", first), ("Drawing",), seen_first,
    ),
    Command(
        "Veneer_Bench", "veneer-bench",
        QT_TRANSLATE_NOOP("Veneer_Bench", "&To the Bench"),
        QT_TRANSLATE_NOOP(
            "Veneer_Bench",
            "Make the sheets of the selected match for the shop; say how it cuts, tapes, presses",
        ),
        opens("panels.bench", "look", first), ("Match",), benched_first,
    ),
    Command(
        "Veneer_RefreshSheets", "veneer-refresh",
        QT_TRANSLATE_NOOP("Veneer_RefreshSheets", "&Refresh Sheets"),
        QT_TRANSLATE_NOOP("Veneer_RefreshSheets", "Make the sheets as the match is now"),
        opens("packet", "refresh_sheets", first), ("Bench",), sheets_seen_first,
    ),
    Command(
        "Veneer_WritePacket", "veneer-packet",
        QT_TRANSLATE_NOOP("Veneer_WritePacket", "&Write Packet..."),
        QT_TRANSLATE_NOOP(
            "Veneer_WritePacket",
            "Write all sheets, templates, plans and lists for the shop into a folder",
        ),
        opens("packet", "write_packet", first), ("Bench",), sheets_seen_first,
    ),
    None,
    Command(
        "Veneer_ShowSeams", "veneer-seams",
        QT_TRANSLATE_NOOP("Veneer_ShowSeams", "&Seams On or Off"),
        QT_TRANSLATE_NOOP("Veneer_ShowSeams", "Show or hide the seams of the selected matches"),
        switches("Seams"), ("Match", "Run"), alone=False,
    ),
    Command(
        "Veneer_ShowNumbers", "veneer-numbers",
        QT_TRANSLATE_NOOP("Veneer_ShowNumbers", "Numbers &On or Off"),
        QT_TRANSLATE_NOOP(
            "Veneer_ShowNumbers",
            "Show or hide the positions and leaves, underlined where a leaf is turned over, on the "
            "selected matches",
        ),
        switches("Numbers"), ("Match", "Run"), alone=False,
    ),
    None,
    Command(
        "Veneer_OpenExample", "veneer-example",
        QT_TRANSLATE_NOOP("Veneer_OpenExample", "Open E&xample"),
        QT_TRANSLATE_NOOP(
            "Veneer_OpenExample",
            "Open a copy of the example: a round top in 12 ways, built up, with its bench",
        ),
        opens("help", "open_example"),
    ),
    Command(
        "Veneer_Help", "veneer-help",
        QT_TRANSLATE_NOOP("Veneer_Help", "&Veneer Help"),
        QT_TRANSLATE_NOOP(
            "Veneer_Help",
            "A first top step by step, a page for each command, the trade's words, what to beware "
            "of",
        ),
        opens("help", "show"), alone=False,
    ),
)
"""In the order of the toolbar; None is a gap."""


def register() -> list[str]:
    """Makes the commands known to the host; their names, in the order of the toolbar."""
    import FreeCADGui

    from veneerwb.gui import help as pages

    pages.answer_whats_this()
    for command in filter(None, COMMANDS):
        FreeCADGui.addCommand(command.name, command)
    return [command.name if command else "Separator" for command in COMMANDS]
