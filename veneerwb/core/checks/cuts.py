# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the way of cutting takes of the leaves where pieces differ, and whether it lies on them."""

from __future__ import annotations

from collections.abc import Iterator

from veneerwb.core.checks.finding import Finding
from veneerwb.core.layout import Layout, lots_of
from veneerwb.core.lots import Cutting, cutting, pieces_differ
from veneerwb.words import marked, word

LEAST_SHARE = 0.01
"""A union that takes no more than this beyond the lots is not worth a word (our own choice)."""


def cut_findings(layout: Layout, margin: float) -> Iterator[Finding]:
    if layout.recipe is None or not pieces_differ(layout):
        return
    stack, shape = cutting(layout, "stack", margin), cutting(layout, "shape", margin)
    if layout.cut_as == "stack":
        yield from _off(stack, shape, margin)
    yield from _unequal(layout, stack, shape)


def _off(stack: Cutting, shape: Cutting, margin: float) -> Iterator[Finding]:
    """The common outline may leave a leaf whose own piece does not."""
    leaves = tuple(leaf for leaf in stack.over if leaf not in shape.over)
    if leaves:
        yield Finding(
            "stack-off-leaf",
            "warn",
            "Cut as one stack the common outline reaches up to {overhang} mm off the usable area "
            "of leaves {leaves}, though their own pieces lie on them (margin {margin} mm).",
            "Cut in lots by shape ({lots} of them), or take other leaves.",
            {
                "leaves": leaves,
                "overhang": max(stack.over[leaf] for leaf in leaves),
                "margin": margin,
                "lots": len(shape.lots),
            },
            tuple(p.position for lot in stack.lots for p in lot.pieces if p.leaf in leaves),
        )


def _unequal(layout: Layout, stack: Cutting, shape: Cutting) -> Iterator[Finding]:
    """What the way chosen takes of the leaves, against the others."""
    together, apart = stack.area, shape.area
    if together <= apart * (1.0 + LEAST_SHARE):
        return
    values = {
        "together": together / 1e6,
        "apart": apart / 1e6,
        "lots": len(shape.lots),
        "single": len(lots_of(layout.pieces, "own")),
        "saved": 100.0 * (1.0 - apart / together),
    }
    text, remedy = {
        "stack": (
            marked(
                "The pieces differ: cut as one stack they take {together} m2 of the leaves, parted "
                "into {lots} lots by shape {apart} m2, {saved} % less."
            ),
            marked("To save leaf cut in lots by shape: each is then set out by itself."),
        ),
        "shape": (
            marked(
                "The pieces differ and are cut in {lots} lots by shape, each set out by itself: "
                "they take {apart} m2 of the leaves; as one stack, set out once, {together} m2."
            ),
            "",
        ),
        "own": (
            marked(
                "The pieces differ and are cut as single pieces, set out {single} times: they take "
                "{apart} m2 of the leaves; {lots} lots by shape take as much, one stack "
                "{together} m2."
            ),
            "",
        ),
    }[layout.cut_as]
    yield Finding("unequal-cuts", "note", word(text), word(remedy), values)
