# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said on the sheet of a layout."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.layout import Layout
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.cutlist import CAUTION, Row
from veneerwb.core.shop.drawing.lettering import degrees, length, runs
from veneerwb.core.shop.drawing.scales import Scale
from veneerwb.core.shop.lot_lines import lot_line
from veneerwb.core.shop.setout import SetOut
from veneerwb.core.shop.wedge import Wedge
from veneerwb.words import marked, say, word

CAUTIONS = (
    CAUTION,
    marked(
        "Lay all positions out dry, in order, show face up, and judge every seam in raking light "
        "before glue is mixed."
    ),
    marked(
        "Before you cut, compare the revision mark with the model's: paper with another mark is "
        "stale."
    ),
)


def legend(layout: Layout, scale: Scale) -> list[str]:
    """What is said of the plan."""
    turned = any(piece.turned for piece in layout.pieces)
    return [
        say("Plan, scale {scale}.", scale=str(scale)),
        word("Seen from the show face."),
        say("Positions run {way}.", way=counted(layout)),
        word("Underlined: the leaf is turned over, its back is shown.")
        if turned
        else word("No leaf is turned over."),
        *filter(None, [lot_line(layout)]),
    ]


def kind(name: str, one: Wedge) -> str:
    """Sides and rim of a kind of wedge."""
    lower, upper = map(length, one.sides)
    return say(
        "{name} at {positions}: {lower}, {rim}, {upper}", name=name, lower=lower,
        positions=runs(one.positions), rim=_rim(one), upper=upper,
    )  # fmt: skip


def _rim(one: Wedge) -> str:
    return " + ".join(map(length, one.flats)) or say("chord {length}", length=length(one.chord))


def names() -> list[str]:
    """Those of the kinds of wedges."""
    letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
    return [*letters, *(a + b for a in letters for b in letters)]


def wedge_heading(alike: Sequence[Wedge], scale: Scale | None) -> str:
    """The heading of the wedge that is drawn."""
    if len(alike) > 1:
        return say("Wedge {letter}, scale {scale}", letter=names()[0], scale=str(scale))
    return say("Wedge, scale {scale}", scale=str(scale))


def wedge_note(layout: Layout, alike: Sequence[Wedge], listed: Sequence[Row]) -> list[str]:
    """What is said of it."""
    if not alike:
        return []
    one = alike[0]
    row = listed[one.positions[0] - 1]
    trimmed = len(alike) > 1 and layout.cut_as == "stack"
    places = runs(one.positions)
    if len(alike) == 1:
        said = word("For all positions.")
    elif len(one.positions) > 1:
        said = say("For positions {positions}.", positions=places)
    else:
        said = say("For position {positions}.", positions=places)
    said += " " + (
        word("As trimmed, seen from the face of the leaf.") if trimmed
        else word("As cut, seen from the face of the leaf.")
    )  # fmt: skip
    if len(alike) == 1 < len(one.flats):
        said = f"{said} {say('Rim from the lower seam: {lengths}.', lengths=_rim(one))}"
    return [
        said,
        say(
            "Net {net}, blank {blank}, across x along the grain.",
            net=size(row.net_across, row.net_along),
            blank=size(row.blank_across, row.blank_along),
        ),
    ]


def size(across: float, along: float) -> str:
    """Across x along the grain, mm."""
    return f"{length(across)} x {length(along)}"


def set_out_words(base: SetOut) -> list[str]:
    """How the wedge's angle is set out."""
    return [
        say("Set-out of {angle}, not to scale.", angle=degrees(base.angle)),
        say(
            "On a straight line mark {base} from the tip. There square off {offset} to both "
            "sides. The seams run from the tip through the two marks.",
            base=length(base.base), offset=length(base.offset),
        ),
    ]
