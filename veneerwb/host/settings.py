# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the user has set on the preferences page: with what new objects begin, and the colours of
what is drawn over pictures.

Kept by the host in its own file, each under a name of the tables below, and read when it is used.
What is missing, of another kind, or not within its limits counts as not set. A document keeps its
own values: no setting changes what is in one.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any, NamedTuple

import FreeCAD

GROUP = "Mod/VeneerLayup"
"""Where they are kept, as the page's boxes say it."""
PATH = f"User parameter:BaseApp/Preferences/{GROUP}"

Rgb = tuple[int, int, int]

PAPERS = (
    "A3", "A4", "A4 upright", "A2", "A1", "ANSI B", "ANSI A", "ANSI A upright", "ANSI C", "ANSI D",
)  # fmt: skip
TILES = ("A4 upright", "ANSI A upright", "A4", "ANSI A", "A3", "ANSI B", "A2", "A1", "ANSI C",
         "ANSI D")  # fmt: skip
UNITS = ("as FreeCAD", "mm", "inch", "both")
CUT_BY = ("knife", "saw", "machine")
"""Choices are kept by their place in these tuples: only add to them, at the end."""


class Setting(NamedTuple):
    """`default`: what holds where nothing is set; its type is what is kept (a text of `choices` by
    its place). Numbers (mm, degrees) lie within `least` and `most`, texts are no longer than it."""

    default: Any
    least: float = 0.0
    most: float = 0.0
    choices: tuple[str, ...] = ()


SETTINGS: dict[str, Setting] = {
    # leaves
    "Thickness": Setting(0.6, 0.05, 50.0),
    # matches
    "Oversize": Setting(0.0, 0.0, 200.0),
    "Margin": Setting(0.0, 0.0, 200.0),
    "Spares": Setting(0, 0, 64),
    # title block
    "Owner": Setting("", most=80),
    "DrawnBy": Setting("", most=80),
    "ApprovedBy": Setting("", most=80),
    # sheets and templates
    "Paper": Setting("A3", choices=PAPERS),
    "TilePaper": Setting("A4 upright", choices=TILES),
    "SheetUnit": Setting("as FreeCAD", choices=UNITS),
    # cutting and taping
    "CutBy": Setting("knife", choices=CUT_BY),
    "Tool": Setting(0.0, 0.0, 50.0),
    "FaceDown": Setting(False),
    "TemplateError": Setting(0.03, 0.0, 2.0),
    "PieceError": Setting(0.05, 0.0, 2.0),
}
COLOURS: dict[str, Rgb] = {
    # in the 3-D view
    "SeamColour": (20, 20, 20),
    "NumberColour": (20, 20, 20),
    "ChosenColour": (26, 204, 26),
    "JointColour": (255, 153, 26),
    # in windows of photographs
    "PointedColour": (200, 20, 120),
    "SuspectColour": (255, 214, 64),
    "WedgeColour": (0, 90, 200),
    "MisfitColour": (214, 20, 30),
    "UsableColour": (0, 120, 70),
    "MarginColour": (196, 110, 0),
    "SplitColour": (200, 20, 40),
    "KnotColour": (110, 30, 150),
    "PatchColour": (0, 100, 190),
    "StainColour": (150, 50, 90),
}
"""Red, green and blue. The host keeps a colour as one number, its fourth byte being of no use
here."""
IN_VIEW = ("SeamColour", "NumberColour", "JointColour")
"""Those that are drawn into the scene of a match or a run."""


def _kept() -> Any:
    return FreeCAD.ParamGet(PATH)


def setting(name: str) -> Any:
    """What is set under a name of SETTINGS: a number, a truth, a text."""
    row = SETTINGS[name]
    if row.choices:
        place = _kept().GetInt(name, -1)
        return row.choices[place] if 0 <= place < len(row.choices) else row.default
    if isinstance(row.default, bool):
        return _kept().GetBool(name, row.default)
    if isinstance(row.default, str):
        text = _kept().GetString(name, row.default).strip()
        return text if len(text) <= row.most and text.isprintable() else row.default
    read = _kept().GetInt if isinstance(row.default, int) else _kept().GetFloat
    value = read(name, row.default)
    within = math.isfinite(value) and row.least <= value <= row.most
    return value if within else row.default


def colour(name: str) -> Rgb:
    """The colour under a name of COLOURS, 0 to 255."""
    plain = COLOURS[name]
    red, green, blue = plain
    packed = _kept().GetUnsigned(name, red << 24 | green << 16 | blue << 8)
    return packed >> 24 & 255, packed >> 16 & 255, packed >> 8 & 255


def shade(name: str) -> tuple[float, float, float]:
    """The same as the 3-D view takes it, 0 to 1."""
    red, green, blue = colour(name)
    return red / 255.0, green / 255.0, blue / 255.0


def in_view() -> tuple[Rgb, ...]:
    """Those of the 3-D view, to see whether what was drawn is still right."""
    return tuple(map(colour, IN_VIEW))


# --- with what new objects begin ----------------------------------------------------------------


def for_match() -> dict[str, Any]:
    """By the names of a Match's properties."""
    return {name: setting(name) for name in ("Oversize", "Margin", "Spares")}


def for_bench(asked: Mapping[str, Any] | None = None) -> dict[str, Any]:
    """By the names of a Bench's properties; of a way of cutting with its usual figures, unless
    another is `asked` for."""
    from veneerwb.core.shop.cutting.methods import METHODS

    same = ("Paper", "TilePaper", "Owner", "ApprovedBy", "Tool", "FaceDown")
    found = {name: setting(name) for name in same} | {"CreatedBy": setting("DrawnBy")}
    unit = setting("SheetUnit")
    found["Unit"] = ("inch" if shows_inches() else "mm") if unit == UNITS[0] else unit
    if "CutBy" in (asked or ()):
        return found
    how = METHODS[setting("CutBy")]
    figures = {"Kerf": how.kerf, "Lean": how.lean, "AtOnce": how.most, "Boards": how.board}
    return found | {"CutBy": how.key} | figures


def for_closing() -> dict[str, Any]:
    """By the names of a Closing's properties."""
    return {name: setting(name) for name in ("TemplateError", "PieceError")}


def for_drawing() -> dict[str, Any]:
    """By the names of a Drawing's properties."""
    return {"DrawnBy": setting("DrawnBy")}


def shows_inches() -> bool:
    """Whether the host shows lengths in inches, feet or parts of them."""
    middling = FreeCAD.Units.Quantity(50.0, FreeCAD.Units.Length)
    tenfold = math.log10(float(middling.getUserPreferred()[1]))
    return abs(tenfold - round(tenfold)) > 1e-6
