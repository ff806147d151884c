# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a ring is by its count and its top: parity, fineness of the tips, sunburst, the axes of a
long top; and whether its cuts lie beside each other."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from typing import Any

from shapely.geometry import Point

from veneerwb.core.checks.finding import Finding
from veneerwb.core.layout import Layout
from veneerwb.core.listing import one_of
from veneerwb.core.matches.quarters import BOXES, Quarters
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.plane import tand
from veneerwb.words import marked

TIP_AT = 10.0
FINE_TIP = 2.0
"""mm: a tip narrower than this at TIP_AT mm breaks and tears in the hand (common practice, no
source)."""
SUNBURST = 6
"""Leaves: Architectural Woodwork Standards, 1st ed. (2009), 1.2.22: sunburst, six or more
leaves."""
SAME = 0.001
"""mm and degrees: what differs by less is the same."""


def ring_findings(layout: Layout, hidden: Any = None) -> list[Finding]:
    return [
        *_parity(layout),
        *_cut_twice(layout),
        *_tips(layout, hidden),
        *_sunburst(layout),
        *_axes(layout),
        *_box_mirrors(layout),
    ]


def _parity(layout: Layout) -> Iterator[Finding]:
    """In a book match every seam joins a turned piece to an upright one, or it is no book joint."""
    if not getattr(layout.recipe, "all_book", isinstance(layout.recipe, Radial)):
        return
    by_position = {piece.position: piece for piece in layout.pieces}
    turned = [piece for piece in layout.pieces if piece.turned]
    if len(turned) in (0, len(layout.pieces)):
        return
    alike = [s for s in layout.seams if by_position[s.a].turned == by_position[s.b].turned]
    if alike:
        first = alike[0]
        yield Finding(
            "parity",
            "stop",
            "{count} of the seams join two pieces of the same side up (the first between positions "
            "{a} and "
            "{b}), so they are no book joints.",
            marked("Take an even number of ways, with every second piece turned.")
            if isinstance(layout.recipe, Radial)
            else marked("Turn over every second piece."),
            {"count": len(alike), "a": first.a, "b": first.b},
            tuple(sorted({n for seam in alike for n in (seam.a, seam.b)})),
        )


def _tips(layout: Layout, hidden: Any) -> Iterator[Finding]:
    """How fine the tips are where they begin to be seen: a disc, an inlay or any opening takes them
    away, and what covers the centre hides them."""
    for ring in _rings(layout)[:1]:
        seen = layout.top.polygon_mm if hidden is None else layout.top.polygon_mm - hidden
        at = max(TIP_AT, ring.disc / 2.0, seen.distance(Point(ring.centre)))
        width = 2.0 * at * tand(180.0 / ring.ways)
        if width < FINE_TIP:
            yield Finding(
                "fine-tips",
                "warn",
                "The tips are fine: {width} mm wide at {at} mm from the point.",
                "Take fewer ways, or plan a disc at the centre that hides the tips.",
                {"width": width, "at": at, "ways": ring.ways},
            )


def _rings(layout: Layout) -> list[Radial]:
    """The rings of a layout, the inner one first."""
    recipe = layout.recipe
    if isinstance(recipe, Rings):
        return [recipe.inner, recipe.outer]
    return [recipe] if isinstance(recipe, Radial) else []


def _sunburst(layout: Layout) -> Iterator[Finding]:
    if isinstance(layout.recipe, Radial) and layout.recipe.count < SUNBURST:
        yield Finding(
            "not-sunburst",
            "note",
            "With {ways} ways the top is not a sunburst, which has six leaves or more "
            "(Architectural Woodwork Standards, 2009).",
            "",
            {"ways": layout.recipe.ways},
        )


def _axes(layout: Layout) -> Iterator[Finding]:
    """Of a book ring with a seam on one axis: n wedges of 360/n degrees have a seam at right angles
    to it only if n is divisible by 4 (plane geometry)."""
    (left, right), (low, high) = (layout.top.region.extent(turn) for turn in (0.0, 90.0))
    if abs((right - left) - (high - low)) <= SAME:
        return
    for ring in _rings(layout)[-1:]:
        seams = [ring.direction(k) for k in range(ring.ways)]
        on = [any(abs(math.remainder(s - axis, 180.0)) <= SAME for s in seams) for axis in (0, 90)]
        if ring.turn == "book" and any(on) and not all(on):
            ways = ring.ways
            nearest = [n for n in (ways - ways % 4, ways - ways % 4 + 4) if n > 3]
            yield Finding(
                "oval-axes",
                "warn",
                "A seam lies on one axis of this top and none on the other: with {ways} ways there "
                "cannot be one on each.",
                "For a seam on each axis take {would_do} ways: their number must be divisible by "
                "4.",
                {
                    "ways": ways, "nearest": tuple(nearest),
                    "would_do": one_of([str(n) for n in nearest]),
                },
            )


def _box_mirrors(layout: Layout) -> Iterator[Finding]:
    """A box of unequal sides cannot have four mirrors."""
    recipe = layout.recipe
    if not isinstance(recipe, Quarters) or recipe.kind not in BOXES or recipe.turn != "book":
        return
    (left, right), (low, high) = (layout.top.region.extent(turn) for turn in (0.0, 90.0))
    shift = abs((right - left) - (high - low))
    if shift <= SAME:
        return
    text = marked(
        "At the upper left and the lower right mitre the figure is shifted by {shift} mm: on a top "
        "of unequal sides only two mitres of a box can mirror."
    )
    remedy = marked(
        "Turn the top's best corner to the upper right or the lower left, or make it square."
    )
    if recipe.corners == "diagonal":
        text = marked(
            "From corner to corner no joint of this box mirrors: its sides differ by {shift} mm."
        )
        remedy = marked("Take mitres of 45 degrees: two of them mirror.")
    yield Finding("box-mirrors", "note", text, remedy, {"shift": shift})


def _cut_twice(layout: Layout) -> Iterator[Finding]:
    """Pieces from one leaf must lie beside each other on it."""
    by_leaf: dict[int, list[Any]] = defaultdict(list)
    for piece in layout.pieces:
        by_leaf[piece.leaf].append(piece)
    leaves, positions = set(), set()
    for leaf, pieces in by_leaf.items():
        drawn = [(p, p.onto_bundle.apply_to(p.blank)) for p in pieces] if len(pieces) > 1 else []
        for k, (one, area) in enumerate(drawn):
            for other, beside in drawn[k + 1 :]:
                same = one.blank_edge == other.blank_edge  # parted by an opening, cut as one
                if not same and area.intersection(beside).area > 1.0:
                    leaves.add(leaf)
                    positions |= {one.position, other.position}
    if leaves:
        yield Finding(
            "cut-twice",
            "stop",
            "Pieces at positions {pieces} overlap on their leaves ({leaves}).",
            "Move one of the cuts, or take other leaves for it.",
            {"pieces": tuple(sorted(positions)), "leaves": tuple(sorted(leaves))},
            tuple(sorted(positions)),
        )
