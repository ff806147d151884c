# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a panel's build-up will do: cup, move, break short.

Movement is that of free wood by the Wood Handbook's coefficients (FPL-GTR-190, 2010, Eq. 13-2 and
Table 13-5), moisture by Simpson, FPL-RN-0268 (1998). All else is common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import Any

from veneerwb.core.buildup.kinds import Core, Lipping
from veneerwb.core.buildup.panel import BuildUp, PanelPart
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.top import Top
from veneerwb.core.wood import (
    DRIEST,
    HELD,
    SPECIES,
    WETTEST,
    Climate,
    Coefficients,
    beyond,
    coefficients,
    movement,
    words,
)
from veneerwb.words import marked, word

ALIKE = 0.05
"""mm: layers that differ by less are of one thickness (common practice, no source)."""
ACROSS = 45.0
"""Degrees: a crossband whose grain lies nearer to the core's than this runs along it (common
practice, no source)."""


def buildup_findings(
    build_up: BuildUp,
    top: Top,
    climates: tuple[Climate, Climate] | None = None,
    parts: Sequence[PanelPart] | None = None,
) -> list[Finding]:
    """All findings on a build-up of `top`. `climates`: the air that the panel is made in and the
    air that it will stand in; without them nothing is said of how much it moves. `parts`: those of
    the build-up on the top, where they are at hand."""
    climates = None if climates is None else _two(climates)
    parts = build_up.parts(top) if parts is None else parts
    return [
        *_backer(build_up),
        *_crossbands(build_up),
        *_movement(build_up, parts, climates),
        *_border(build_up, parts),
    ]


def _two(climates: Any) -> tuple[Climate, Climate]:
    found = tuple(climates) if isinstance(climates, tuple | list) else ()
    if len(found) != 2 or not all(isinstance(climate, Climate) for climate in found):
        raise VeneerError(
            "no-climates",
            "The climates cannot be {value!r:.40}; give two: the air that the panel is made in, "
            "and the air that it will stand in.",
            value=climates,
        )
    return found


# --- balance -----------------------------------------------------------------------------------


def _backer(panel: BuildUp) -> Iterator[Finding]:
    """A panel is veneered alike on both sides (common practice, no source)."""
    if panel.backer is None:
        yield Finding(
            "one-sided",
            "warn",
            "The panel has no backer: veneered on one side only, it will cup.",
            "Give it a backer of the show veneer's thickness and wood, pressed at the same time.",
        )
        return
    show, backer = panel.show, panel.backer
    thick = abs(show.thickness - backer.thickness) > ALIKE
    wood = bool(show.material and backer.material) and not _same(show.material, backer.material)
    if thick or wood:
        values = {
            "show": show.thickness, "backer": backer.thickness,
            "show_wood": show.material or word("not said"),
            "wood": backer.material or word("not said"),
        }  # fmt: skip
        yield Finding(
            "unlike-backer",
            "warn",
            "The backer ({wood}, {backer} mm) is unlike the show veneer ({show_wood}, {show} mm), "
            "so the two sides pull unlike and the panel may cup.",
            "Take a backer of the same thickness and a wood that moves alike.",
            values,
        )


def _crossbands(panel: BuildUp) -> Iterator[Finding]:
    """Crossbands come in pairs alike, their grain across the core's (common practice, no
    source)."""
    pair = (panel.crossband_above, panel.crossband_below)
    there = [band for band in pair if band is not None]
    if len(there) == 1:
        yield Finding(
            "crossband-alone",
            "warn",
            "There is a crossband on one side of the core only, so the panel may cup.",
            "Give the other side the same, or leave both out.",
        )
    elif there and _differ(*there):
        yield Finding(
            "unlike-crossbands",
            "warn",
            "The crossbands differ in thickness, wood or grain, so the panel may cup.",
            "Make both alike.",
        )
    nearest = [_between(band.grain, panel.core.grain) for band in there]
    if nearest and min(nearest) < ACROSS:
        yield Finding(
            "crossband-along",
            "warn",
            "The grain of a crossband lies at {angle} degrees to that of the core and does not "
            "cross it.",
            "Turn it to 90 degrees.",
            {"angle": min(nearest)},
        )


def _differ(a: object, b: object) -> bool:
    return (
        abs(a.thickness - b.thickness) > ALIKE
        or not _same(a.material, b.material)
        or _between(a.grain, b.grain) > 1.0
    )


def _same(a: str, b: str) -> bool:
    return words(a) == words(b)


def _between(a: float, b: float) -> float:
    """The angle between two directions of grain, 0..90 degrees."""
    return abs(math.remainder(a - b, 180.0))


# --- movement ----------------------------------------------------------------------------------


def _movement(
    panel: BuildUp, parts: Sequence[PanelPart], climates: tuple[Climate, Climate] | None
) -> Iterator[Finding]:
    """Solid cores and lippings move; by how much says the Wood Handbook (see above)."""
    core, lipping = panel.core, panel.lipping
    if core.solid and lipping:
        yield Finding(
            "lipping-across-core",
            "warn",
            "The core is solid and moves across its grain, and the lipping across its ends does "
            "not move along with it: their joint will give, or the core split.",
            "Take a core of sheet goods, or lip only the sides that run along its grain.",
        )
    movers = [piece for piece in (core if core.solid else None, lipping) if piece]
    if not movers:
        return
    if climates is None:
        yield Finding(
            "no-climates",
            "note",
            "There is solid wood in the panel, and how much it moves depends on the air.",
            "Say in which air the panel is made and in which it will stand.",
        )
        return
    before, after = (round(climate.moisture, 1) for climate in climates)
    outside = tuple(beyond(before, after))
    if outside:
        yield Finding(
            "moisture-outside",
            "note",
            "Wood in this air settles at {before} and {after} % moisture; the figures of movement "
            "hold from {driest} to {wettest} % only.",
            "",
            {"before": before, "after": after, "driest": DRIEST, "wettest": WETTEST},
        )
    for piece in movers:
        known = _coefficients(piece)
        if known is None:
            yield _unknown(piece)
        elif piece is core:
            yield _core_moves(core, known, _extent(parts, "core"), before, after)
        else:
            height = _extent(parts, "lipping")
            yield _lipping_moves(piece, known, height, before, after)


def _coefficients(piece: Core | Lipping) -> Coefficients | None:
    if piece.moves:
        return piece.moves
    try:
        return coefficients(piece.material)
    except VeneerError:
        return None


def _unknown(piece: Core | Lipping) -> Finding:
    return Finding(
        "species-unknown",
        "note",
        "How much the {what} of {wood} moves is not known here.",
        "Give its coefficients, or name one of these: {known}.",
        {
            "what": word(piece.what), "wood": piece.material or word("unnamed wood"),
            "known": "; ".join(map(word, SPECIES)),
        },
    )


def _extent(parts: Sequence[PanelPart], item: str) -> float:
    """Of the core its width across the grain, of a lipping its height, mm."""
    part = next(part for part in parts if part.item == item)
    return part.size[1] if item == "core" else part.thickness


_SAWN = {"plain": marked("plain sawn"), "quarter": marked("quarter sawn")}


def _core_moves(
    core: Core, known: Coefficients, width: float, before: float, after: float
) -> Finding:
    change = movement(width, known.across(core.sawn), before, after)
    grows = word(
        "The solid core ({wood}, {sawn}), {width} mm across its grain, grows by {change} mm "
        "as its moisture goes from {before} to {after} %, were it free."
    )
    shrinks = word(
        "The solid core ({wood}, {sawn}), {width} mm across its grain, shrinks by {change} mm "
        "as its moisture goes from {before} to {after} %, were it free."
    )
    return Finding(
        "core-moves",
        "warn",
        word(f"{shrinks if change < 0.0 else grows} {word(HELD)}"),
        "Take a core of sheet goods; else fix the top so that it can move, and veneer across the "
        "core's grain.",
        {
            "wood": core.material or word("own coefficients"), "sawn": word(_SAWN[core.sawn]),
            "width": width, "change": round(abs(change), 2), "before": before, "after": after,
        },
    )  # fmt: skip


def _lipping_moves(
    lipping: Lipping, known: Coefficients, height: float, before: float, after: float
) -> Finding:
    """A board's thickness moves by the other coefficient than its width; a lipping under veneer
    shows as a ridge or a hollow."""
    other = "quarter" if lipping.sawn == "plain" else "plain"
    across = movement(lipping.width, known.across(lipping.sawn), before, after)
    up = movement(height, known.across(other), before, after)
    told = word(_LIPPING_MOVES[across >= 0.0, lipping.shows])
    remedy = marked("Keep the lipping narrow, or set it after veneering.")
    return Finding(
        "lipping-moves",
        "note",
        word(f"{told} {word(HELD)}"),
        "" if lipping.shows else remedy,
        {
            "wood": lipping.material or word("own coefficients"), "sawn": word(_SAWN[lipping.sawn]),
            "across": round(abs(across), 2), "width": lipping.width,
            "up": round(abs(up), 2), "height": height, "before": before, "after": after,
        },
    )  # fmt: skip


_LIPPING_MOVES = {
    (True, True): marked(
        "The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by "
        "{up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, "
        "were it free."
    ),
    (True, False): marked(
        "The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by "
        "{up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, "
        "were it free, which may show through the veneer over it."
    ),
    (False, True): marked(
        "The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and "
        "by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, "
        "were it free."
    ),
    (False, False): marked(
        "The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and "
        "by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, "
        "were it free, which may show through the veneer over it."
    ),
}
"""Whether it grows, and whether it shows: what is said."""


# --- border ------------------------------------------------------------------------------------


def _border(panel: BuildUp, parts: Sequence[PanelPart]) -> Iterator[Finding]:
    """Grain at borders (common practice, no source)."""
    if panel.border is None:
        return
    count = sum(part.item == "border" for part in parts)
    if panel.border.grain == "across":
        yield Finding(
            "short-grain",
            "note",
            "The grain of the border lies across it: over its {width} mm it is short and breaks in "
            "the hand.",
            "Tape its strips before they are cut, and join each from as few pieces as can be.",
            {"width": panel.border.width},
        )
    if count == 1:
        yield Finding(
            "border-in-one",
            "note",
            "The border is a ring in one, so its grain runs one way all round and not with the "
            "edge.",
            "Part it in segments where the grain shall follow the edge.",
        )
    elif panel.border.grain == "along":
        yield Finding(
            "continuous-grain",
            "note",
            "The border is of {count} parts, and its grain runs on from one to the next only if "
            "they come from one run of veneer in order.",
            "Cut them one after another along the leaf and number them round the edge.",
            {"count": count},
        )
