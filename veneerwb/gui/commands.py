# SPDX-License-Identifier: LGPL-2.1-or-later
"""The workbench's commands. Each opens a panel, which is imported when the command is run."""

from __future__ import annotations

from typing import Any

import FreeCAD

from veneerwb.host.objects.base import kind_of


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Marks a text that the host translates itself."""
    return text


TITLE = QT_TRANSLATE_NOOP("Workbench", "Veneer Layup")


def of_kind(doc: Any, *kinds: str) -> list[Any]:
    """The objects of those kinds in a document (None: none)."""
    return [obj for obj in (doc.Objects if doc else ()) if kind_of(obj) in kinds]


def sources(doc: Any) -> list[Any]:
    """What a match can be cut from: the bundles and stocks of a document."""
    return of_kind(doc, "Bundle", "Stock")


def chosen_first(candidates: list[Any]) -> list[Any]:
    """`candidates`, those that are selected before the others."""
    import FreeCADGui

    chosen = FreeCADGui.Selection.getSelection()
    return sorted(candidates, key=lambda one: one not in chosen)


class Command:
    """A command that opens a panel where none is open. `needs` are the kinds of object of which the
    document must hold one."""

    name = ""
    picture = ""
    needs: tuple[str, ...] = ()
    menu = tip = ""

    def GetResources(self) -> dict[str, str]:
        return {"Pixmap": self.picture, "MenuText": self.menu, "ToolTip": self.tip}

    def IsActive(self) -> bool:
        import FreeCADGui

        if FreeCADGui.Control.activeDialog():
            return False
        return not self.needs or bool(of_kind(FreeCAD.ActiveDocument, *self.needs))

    def found(self) -> list[Any]:
        """The objects that it needs, those that are selected first."""
        return chosen_first(of_kind(FreeCAD.ActiveDocument, *self.needs))

    def Activated(self) -> None:
        """Runs the command."""


class BringInLeaves(Command):
    """Photographs of leaves become a bundle."""

    name = "Veneer_BringInLeaves"
    picture = "veneer-bring-in"
    menu = QT_TRANSLATE_NOOP("Veneer_BringInLeaves", "Bring In Leaves")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_BringInLeaves", "Make a bundle of leaves from their photographs"
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import leaves

        leaves.bring_in()


class NewRadialMatch(Command):
    """A bundle or a stock becomes a top of wedges."""

    name = "Veneer_NewRadialMatch"
    picture = "veneer-radial"
    needs = ("Bundle", "Stock")
    menu = QT_TRANSLATE_NOOP("Veneer_NewRadialMatch", "New Radial Match")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_NewRadialMatch",
        "Lay up a top of wedges from the selected bundle or stock of leaves",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import match

        match.new(FreeCAD.ActiveDocument, self.found()[0])


class ProveSequence(Command):
    """The order of a bundle's leaves and how they lie on each other."""

    name = "Veneer_Sequence"
    picture = "veneer-sequence"
    needs = ("Bundle",)
    menu = QT_TRANSLATE_NOOP("Veneer_Sequence", "Prove Sequence")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_Sequence",
        "Page through the leaves of the selected bundle, prove their order, lay them on each other",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import sequence

        sequence.look(FreeCAD.ActiveDocument, self.found()[0])


class DrawFaults(Command):
    """Faults and usable areas, drawn on the photographs."""

    name = "Veneer_Faults"
    picture = "veneer-faults"
    needs = ("Bundle",)
    menu = QT_TRANSLATE_NOOP("Veneer_Faults", "Faults")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_Faults",
        "Draw knots, splits and other faults, and what may be used, on the leaves' photographs",
    )

    def found(self) -> list[Any]:
        """The bundles, first the one that is selected or holds a selected leaf."""
        meant = [up for leaf in self._leaves() for up in leaf.InList]
        return sorted(super().found(), key=lambda one: one not in meant)

    @staticmethod
    def _leaves() -> list[Any]:
        import FreeCADGui

        return [one for one in FreeCADGui.Selection.getSelection() if kind_of(one) == "Leaf"]

    def Activated(self) -> None:
        from veneerwb.gui.panels import faults

        leaves = self._leaves()
        number = leaves[0].Number if leaves else None
        faults.look(FreeCAD.ActiveDocument, self.found(), number)


class PaperMarks(DrawFaults):
    """Paper marks: printed, found on the photographs, measured from."""

    name = "Veneer_Marks"
    picture = "veneer-marks"
    menu = QT_TRANSLATE_NOOP("Veneer_Marks", "Paper Marks")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_Marks",
        "Print marks to stick on the leaves, find them on the photographs, measure from them",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import marks

        leaves = self._leaves()
        number = leaves[0].Number if leaves else None
        marks.look(FreeCAD.ActiveDocument, self.found(), number)


class Particulars(Command):
    """What a bundle is, for the shelf and the bill."""

    name = "Veneer_Particulars"
    picture = "veneer-particulars"
    needs = ("Bundle",)
    menu = QT_TRANSLATE_NOOP("Veneer_Particulars", "Particulars")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_Particulars",
        "Say what the selected bundle is: species, cut, flitch, cost; how much there is of it",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import live, particulars

        live.edit(particulars.ParticularsPanel, self.found()[0])


class CheckMatch(Command):
    """What stands against cutting a match."""

    name = "Veneer_CheckMatch"
    picture = "veneer-check"
    needs = ("Match",)
    menu = QT_TRANSLATE_NOOP("Veneer_CheckMatch", "Check Match")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_CheckMatch",
        "List what stands against cutting the selected match, and what would do",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import check

        check.look(FreeCAD.ActiveDocument, self.found())


class LeafOnFaces(Command):
    """A leaf on flat faces of anything."""

    name = "Veneer_LeafOnFaces"
    picture = "veneer-facing"
    needs = ("Leaf",)
    menu = QT_TRANSLATE_NOOP("Veneer_LeafOnFaces", "Leaf On Faces")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_LeafOnFaces", "Lay a leaf's picture, to scale, on the selected flat faces"
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import facing

        facing.new(FreeCAD.ActiveDocument)


class DrawMatch(Command):
    """The shop drawing of a match."""

    name = "Veneer_DrawMatch"
    picture = "veneer-drawing"
    needs = ("Match",)
    menu = QT_TRANSLATE_NOOP("Veneer_DrawMatch", "New Drawing")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_DrawMatch",
        "Draw the selected match on a page: plan, wedge, set-out and cut list",
    )

    def Activated(self) -> None:
        from veneerwb.gui.panels import drawing

        drawing.new(FreeCAD.ActiveDocument, self.found()[0])


class SaveDrawing(Command):
    """A drawing as a file to print."""

    name = "Veneer_SaveDrawing"
    picture = "veneer-save"
    needs = ("Drawing",)
    menu = QT_TRANSLATE_NOOP("Veneer_SaveDrawing", "Save Drawing as PDF...")
    tip = QT_TRANSLATE_NOOP("Veneer_SaveDrawing", "Save the selected drawing as a PDF file")

    def found(self) -> list[Any]:
        """The drawings, first the one whose page or view is selected or whose page is seen."""
        import FreeCADGui

        from veneerwb.host.sheets import drawing_of

        seen = getattr(FreeCADGui.activeView(), "getPage", lambda: None)()
        meant = [drawing_of(one) for one in [*FreeCADGui.Selection.getSelection(), seen] if one]
        return sorted(super().found(), key=lambda one: one not in meant)

    def Activated(self) -> None:
        from veneerwb.gui import saving

        saving.save_drawing(self.found()[0])


class Switch(Command):
    """Shows or hides one thing on the selected matches, or on all if none is selected."""

    needs = ("Match",)
    shows = ""

    def IsActive(self) -> bool:
        return bool(of_kind(FreeCAD.ActiveDocument, *self.needs))

    def Activated(self) -> None:
        import FreeCADGui

        matches = self.found()
        selected = [one for one in matches if one in FreeCADGui.Selection.getSelection()]
        views = [match.ViewObject for match in selected or matches]
        shown = not any(getattr(view, self.shows) for view in views)
        for view in views:
            setattr(view, self.shows, shown)


class ShowSeams(Switch):
    """Seams on the pictures."""

    name = "Veneer_ShowSeams"
    picture = "veneer-seams"
    shows = "Seams"
    menu = QT_TRANSLATE_NOOP("Veneer_ShowSeams", "Seams On or Off")
    tip = QT_TRANSLATE_NOOP("Veneer_ShowSeams", "Show or hide the seams of the selected matches")


class ShowNumbers(Switch):
    """Numbers on the pictures."""

    name = "Veneer_ShowNumbers"
    picture = "veneer-numbers"
    shows = "Numbers"
    menu = QT_TRANSLATE_NOOP("Veneer_ShowNumbers", "Numbers On or Off")
    tip = QT_TRANSLATE_NOOP(
        "Veneer_ShowNumbers",
        "Show or hide the positions, underlined where a leaf is turned over, on the selected "
        "matches",
    )


COMMANDS: tuple[type[Command] | None, ...] = (
    BringInLeaves,
    ProveSequence,
    Particulars,
    NewRadialMatch,
    LeafOnFaces,
    DrawFaults,
    PaperMarks,
    None,
    CheckMatch,
    DrawMatch,
    SaveDrawing,
    None,
    ShowSeams,
    ShowNumbers,
)
"""In the order of the toolbar; None is a gap."""


def register() -> list[str]:
    """Makes the commands known to the host; their names, in the order of the toolbar."""
    import FreeCADGui

    for command in filter(None, COMMANDS):
        FreeCADGui.addCommand(command.name, command())
    return [command.name if command else "Separator" for command in COMMANDS]
