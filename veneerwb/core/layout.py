# SPDX-License-Identifier: LGPL-2.1-or-later
"""What every match gives and all else reads: pieces, seams, cuts.

A piece is an outline on the top, the leaf it is cut from, whether that leaf is turned over, and one
rigid motion from the top to the bundle.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Protocol

import numpy as np
from shapely.geometry import LineString, Polygon
from shapely.ops import unary_union

from veneerwb.core.leaf import Leaves
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import TOUCH, Motion, choice, stepped
from veneerwb.core.top import Top


@dataclass(frozen=True)
class Piece:
    """One piece of the top, at `position` 1.. as its match counts them, seen from the show face.

    `edge` is the finished outline and `blank_edge` the one that is cut (with oversize), true
    segments in top mm; `holes` are openings in the finished piece (clockwise), which are cut after
    pressing. `onto_bundle` takes top mm to bundle mm; it is mirrored when the leaf is turned over.
    `cut` is the place of its cut among those of a leaf, where pieces come from several.
    """

    position: int
    leaf: int
    turned: bool
    edge: Edge
    blank_edge: Edge
    onto_bundle: Motion
    holes: tuple[Edge, ...] = ()
    cut: int = 0

    @cached_property
    def outline(self) -> Polygon:
        """The finished outline (shapely, top mm), derived from `edge` and `holes`."""
        return Region(self.edge, self.holes).polygon

    @cached_property
    def blank(self) -> Polygon:
        """The outline that is cut, with oversize (shapely, top mm), derived from `blank_edge`."""
        return edges.polygon(self.blank_edge)

    @property
    def area(self) -> float:
        """Exact area of the finished piece in mm2."""
        return Region(self.edge, self.holes).area


@dataclass(frozen=True)
class Seam:
    """The joint between the pieces at positions `a` and `b`: its `line` (shapely, top mm) and
    `step`, the number of surfaces between the two that meet there."""

    a: int
    b: int
    line: LineString
    step: int


CUTS = ("stack", "shape", "own")
"""Ways to cut what differs: one stack for all, a lot for each outline, each piece by itself."""


@dataclass(frozen=True)
class Cut:
    """One outline cut through the stack (shapely, bundle mm) and the positions that it serves."""

    outline: Polygon
    pieces: tuple[int, ...]


class Recipe(Protocol):
    """How a layout was made, so that a check can ask what another size or count would give."""

    cuts: str
    """One of CUTS."""

    def lay(self, bundle: Leaves, top: Top) -> Layout: ...


@dataclass(frozen=True)
class Layout:
    """The pieces of a top with their seams and cuts, on `bundle` (or a stock)."""

    pieces: tuple[Piece, ...]
    seams: tuple[Seam, ...]
    cuts: tuple[Cut, ...]
    top: Top
    bundle: Leaves
    recipe: Recipe | None = None

    @property
    def cut_as(self) -> str:
        """How the stack is cut: one of CUTS."""
        return getattr(self.recipe, "cuts", CUTS[0])

    @cached_property
    def revision(self) -> str:
        """A short mark that changes with the layout, its registers and the bundle's edition: stale
        paper is seen by it."""
        return hashlib.sha256(repr(self._marks()).encode()).hexdigest()[:6].upper()

    def _marks(self) -> list[Any]:
        marks: list[Any] = [self.top.name, float(self.bundle.thickness), self.bundle.back]
        if getattr(self.bundle, "edition", 0):  # a stock has none
            marks.append(self.bundle.edition)
        if self.cut_as != CUTS[0]:  # else as before there was a choice
            marks.append(self.cut_as)
        for p in self.pieces:
            marks.append((p.position, p.leaf, p.turned, _rounded(p.onto_bundle)))
            marks.append(_rounded(self.bundle.register(p.leaf, p.turned)))
            for run in (p.edge, p.blank_edge, *p.holes):
                bent = [s.at(share) for s in run if not isinstance(s, (Line, Arc))
                        for share in (0.25, 0.75)]  # fmt: skip
                marks.append((np.round([*_marks(run), *bent], 4) + 0.0).tolist())
        return marks


def _rounded(motion: Motion) -> tuple[float, ...]:
    values = (motion.angle, motion.dx, motion.dy)
    return (*(round(float(v), 4) + 0.0 for v in values), float(motion.mirrored))


def cuts_of(pieces: Sequence[Piece], how: str = CUTS[0]) -> tuple[Cut, ...]:
    """The cuts through the leaves, one for each of `lots_of`: the common outline where its pieces
    are alike, else the union of all of them drawn back into the bundle."""
    return tuple(map(_cut, lots_of(pieces, how)))


def lots_of(pieces: Sequence[Piece], how: str) -> list[list[Piece]]:
    """The pieces that are cut at once, by their places and then by their first positions.

    "stack": all that are cut from one place; "shape": those whose outlines are one as they are
    drawn back into the bundle, so that mirror images of which one is turned share a lot; "own":
    those of one outline on one leaf. VeneerError for any other.
    """
    choice("way of cutting", how, CUTS)
    lots: dict[tuple[Any, ...], list[Piece]] = {}
    for piece in pieces:
        shape = () if how == "stack" else _drawn_key(piece, piece.blank_edge)
        leaf = (piece.leaf,) if how == "own" else ()
        lots.setdefault((piece.cut, *leaf, *shape), []).append(piece)
    return [lots[key] for key in sorted(lots, key=lambda key: key[0])]


def cuts_by_shape(pieces: Sequence[Piece]) -> tuple[Cut, ...]:
    """The cuts where the stack is parted into lots, one for each outline that there is."""
    return cuts_of(pieces, "shape")


def _cut(pieces: Sequence[Piece]) -> Cut:
    same = _alike([_drawn_marks(piece, piece.blank_edge) for piece in pieces])
    shown = pieces[:1] if same else pieces
    drawn = [p.onto_bundle.apply_to(p.blank) for p in shown]
    outline = drawn[0] if same else unary_union([d.buffer(0) for d in drawn])
    return Cut(outline, tuple(p.position for p in pieces))


def alike(pieces: Sequence[Piece]) -> bool:
    """Whether the finished outlines of pieces are one when they are drawn back into the bundle."""
    return _alike([_drawn_marks(piece, piece.edge) for piece in pieces])


def _alike(marks: Sequence[np.ndarray]) -> bool:
    return all(
        len(m) == len(marks[0]) and np.abs(m - marks[0]).max() <= 10.0 * TOUCH for m in marks[1:]
    )


def _marks(edge: Edge) -> np.ndarray:
    """The start and the middle of every segment, 2 n x 2: with the kinds of segments they fix an
    edge."""
    return np.array([point for segment in edge for point in (segment.start, segment.at(0.5))])


def _drawn_marks(piece: Piece, edge: Edge) -> np.ndarray:
    """Those of a piece's edge drawn back into the bundle, counter-clockwise from its lowest corner
    (of several the one furthest left)."""
    marks = piece.onto_bundle.apply(_marks(edge))
    if piece.onto_bundle.mirrored:
        marks = np.concatenate([marks[:1], marks[:0:-1]])
    corners = stepped(marks[::2], 1e-4)
    first = min(range(len(corners)), key=lambda k: (corners[k, 1], corners[k, 0]))
    return np.roll(marks, -2 * first, axis=0)


def _drawn_key(piece: Piece, edge: Edge) -> tuple[Any, ...]:
    return tuple(stepped(_drawn_marks(piece, edge), 1e-3).ravel())
