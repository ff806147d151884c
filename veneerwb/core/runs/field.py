# SPDX-License-Identifier: LGPL-2.1-or-later
"""One field over all panels of a run, laid out beforehand: what of it each panel gets.

The field has its origin in its middle. Laid through, the panels lie in it as they lie in their
plane, and what falls into the gaps is lost. Closed, gaps that run right through the run from side
to side or from top to bottom are taken out of it, so that they lose nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.asked import CutBy
from veneerwb.core.matches.cells import Cell, laid
from veneerwb.core.matches.placement import Placement
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import TOUCH, Motion, Point, polar
from veneerwb.core.runs.panels import Panel
from veneerwb.core.top import Top

Span = tuple[float, float]


@dataclass(frozen=True)
class Field:
    """`width` and `height` in mm of the field, and in it the `places` of the panels' middles.
    `gaps`: the widths in mm of all gaps that run through it, whether they are closed or not."""

    width: float
    height: float
    places: tuple[Point, ...]
    gaps: tuple[float, ...]

    @staticmethod
    def of(panels: Sequence[Panel], closed: bool) -> Field:
        spans = [[(p.box[k], p.box[k + 2]) for p in panels] for k in (0, 1)]
        open_at = [_gaps(along) for along in spans]
        sizes, places = [], []
        for k, (along, gaps) in enumerate(zip(spans, open_at)):
            taken = gaps if closed else []
            low, high = min(a for a, _ in along), max(b for _, b in along)
            size = high - low - sum(b - a for a, b in taken)
            at = [_within(p.place[k], low, taken) - size / 2.0 for p in panels]
            sizes.append(size)
            places.append(at)
        widths = tuple(b - a for gaps in open_at for a, b in gaps)
        return Field(*sizes, tuple(zip(*places)), widths)

    @property
    def region(self) -> Region:
        """The rectangle that it fills."""
        return Top.rectangle(self.width, self.height).region


def _gaps(spans: Sequence[Span]) -> list[Span]:
    """What lies between spans and in none of them."""
    found: list[Span] = []
    reached = min(spans)[1]
    for low, high in sorted(spans):
        if low > reached + TOUCH:
            found.append((reached, low))
        reached = max(reached, high)
    return found


def _within(at: float, low: float, taken: Sequence[Span]) -> float:
    """How far a place lies from the beginning once gaps are taken out."""
    return at - low - sum(b - a for a, b in taken if b <= at)


@dataclass(frozen=True)
class Share(CutBy):
    """The recipe of one panel's share of a field: the field's cells, brought to the panel."""

    share: tuple[Cell, ...]
    placement: Placement | None
    oversize: float = 0.0
    grain: float | None = None

    def cells(self, bundle: Leaves, region: Region) -> tuple[Cell, ...]:
        return self.share

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        return laid(self, bundle, top)


def shared(cells: Sequence[Cell], place: Point, size: tuple[float, float]) -> tuple[Cell, ...]:
    """Those of a field's cells that may reach a panel of that size whose middle lies at `place`, as
    the panel has them."""
    motion = Motion(dx=place[0], dy=place[1])
    found = []
    for cell in cells:
        halves = tuple(_moved(half, place) for half in cell.halves)
        if all(_reaches(half, size) for half in halves):
            found.append(replace(cell, halves=halves, frame=cell.frame @ motion))
    return tuple(found)


def _moved(half: Half, place: Point) -> Half:
    ux, uy = polar(1.0, half.normal)
    return Half(half.normal, half.offset - ux * place[0] - uy * place[1])


def _reaches(half: Half, size: tuple[float, float]) -> bool:
    """Whether a rectangle of that size about the origin has something of a half plane."""
    ux, uy = polar(1.0, half.normal)
    return half.offset > -(abs(ux) * size[0] + abs(uy) * size[1]) / 2.0 - TOUCH
