# SPDX-License-Identifier: LGPL-2.1-or-later
"""The chain of neighbours through a bundle: where the figure of leaf 1 lies on every leaf.

Leaf k + 1 is aligned to leaf k and the motions are composed. Steps of two leaves are aligned on
their own, from a start of their own, and only tell where the chain is in doubt. Longer steps are
never used: figure recurs ring by ring, and a direct match of far leaves lands on the wrong ring.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.align import Grid, aligned, grids, likeness
from veneerwb.core.sequence.grid import LEAST_CONTRAST, no_figure

REGION_MARGIN = 20.0
"""mm round a region that count with it, so that the figure on both sides of a seam is held."""
WITHOUT_FIGURE = ("no-figure", "too-little-figure")
"""Codes of the errors that say so."""
LEAST_LIKENESS = 0.2
"""Correlation below which two neighbours are not known to show the same figure."""
LEAST_REGION = 400.0
"""mm2 of a leaf's usable area that a region must hold, and that must show figure."""
WORST_ERROR = 1.0
"""mm: a step whose predicted standard error at the leaf's corner is larger is in doubt."""
_SLIP = 3.0
"""mm by which a step of two may differ from the chain at a corner without a word."""
_CLEARLY = 0.15
"""Correlation by which a step of two must beat the chain to contradict it: on broad crowns quite
different motions explain two leaves equally well."""
_FEW = 100
"""Cells of a coarse grid: a leaf of fewer shows nothing there, even if it has figure."""
_CHECKED = 2
"""Levels of the grid that a check uses: a slip to the next ring or bar is far larger than their
pixels."""


@dataclass(frozen=True)
class Step:
    """From leaf `first` to leaf `second`, its neighbour: `motion` (mm to mm), the correlation
    reached, and the standard errors predicted from the residuals of the photographs: `error_mm` of
    the middle, `error_deg` of the turn, `corner_mm` of the leaf's corner."""

    first: int
    second: int
    motion: Motion
    likeness: float
    error_mm: float
    error_deg: float
    corner_mm: float

    @property
    def sure(self) -> bool:
        return self.likeness >= LEAST_LIKENESS and self.corner_mm <= WORST_ERROR


@dataclass(frozen=True)
class Check:
    """A step of two leaves beside the chain: `gap` is the mm by which they differ at the worse
    corner, `likeness` and `chained` the correlations by the one and by the other."""

    first: int
    second: int
    gap: float
    likeness: float
    chained: float

    @property
    def agrees(self) -> bool:
        """Also where the two leaves are too unlike to say anything."""
        near = self.gap <= _SLIP or self.likeness < LEAST_LIKENESS
        return near or self.likeness - self.chained <= _CLEARLY


@dataclass(frozen=True)
class Chain:
    """`registers`: bundle mm to mm on each leaf, the first the identity; the steps between
    neighbours and the checks of those."""

    registers: Mapping[int, Motion]
    steps: tuple[Step, ...]
    checks: tuple[Check, ...]

    @property
    def doubts(self) -> tuple[Step, ...]:
        """Steps that are not sure, or that lie under a step of two which contradicts the chain."""
        against = [(c.first, c.second) for c in self.checks if not c.agrees]
        return tuple(
            s for s in self.steps
            if not s.sure or any(a <= s.first and s.second <= b for a, b in against)
        )


def chained(
    bundle: Bundle, region: Any = None, progress: Callable[[float], None] | None = None
) -> Chain:
    """The registers of the faces, from their figure alone, and how far they can be trusted.

    `region` (shapely polygon, bundle mm) weights them to what lies in it and REGION_MARGIN round
    it. Leaves follow each other by number. Registers that the bundle has already play no part.
    `progress` is told the share done, twice a leaf, and may raise to end it.
    Raises VeneerError for a leaf without figure, naming it, and for a region that lies off a leaf.
    """
    focus = None if region is None else _checked_region(region).buffer(REGION_MARGIN)
    registers: dict[int, Motion] = {}
    steps: list[Step] = []
    checks: list[Future[Check]] = []
    tell = progress or (lambda share: None)
    count = len(bundle.leaves)
    with ThreadPoolExecutor(1) as beside:  # no step waits for the check of the one before
        for before, last, leaf in _in_threes(bundle, prepared=len(bundle.leaves) > 1):
            number = leaf[0].number
            tell((len(registers) + 0.5) / count)
            if last is None:
                registers[number] = IDENTITY
                continue
            there = registers[last[0].number]
            area = None if focus is None else _on_leaf(focus, there, last[0])
            steps.append(_step(last, leaf, area))
            registers[number] = steps[-1].motion @ there
            tell(len(registers) / count)
            if before is not None:
                through = steps[-1].motion @ steps[-2].motion
                checks.append(beside.submit(_check, before, leaf, through))
                checks[max(0, len(checks) - 2)].result()  # so that few pictures wait in memory
    return Chain(registers, tuple(steps), tuple(check.result() for check in checks))


def register(bundle: Bundle, region: Any = None) -> Bundle:
    """The bundle with the registers that its figure gives, weighted to `region` (shapely polygon,
    bundle mm) or to the whole leaf; see `chained`."""
    return registered(bundle, chained(bundle, region).registers)


def registered(bundle: Bundle, registers: Mapping[int, Motion]) -> Bundle:
    """The bundle with these registers of its faces; photographed backs keep their place on the
    leaf."""
    leaves = tuple(_placed(leaf, registers[leaf.number]) for leaf in bundle.leaves)
    return replace(bundle, leaves=leaves)


def _placed(leaf: Leaf, motion: Motion) -> Leaf:
    onto_bundle = leaf.face.register.inverse()
    face = replace(leaf.face, register=motion, view=motion)
    back = leaf.back
    if back is not None and back.source == "photo":
        onto = onto_bundle @ motion
        back = Side(back.image, back.register @ onto, back.view @ onto, back.source)
    return replace(leaf, face=face, back=back)


Prepared = tuple[Leaf, tuple[Grid, ...]]


def _in_threes(
    bundle: Bundle, prepared: bool
) -> Iterator[tuple[Prepared | None, Prepared | None, Prepared]]:
    """Every leaf with its grids, after the two before it; no more than three are kept."""
    before = last = None
    for leaf in bundle.leaves:
        here = leaf, _with_figure(leaf) if prepared else ()
        yield before, last, here
        before, last = last, here


def _with_figure(leaf: Leaf) -> tuple[Grid, ...]:
    found = grids(leaf)
    if found[0].contrast < LEAST_CONTRAST and found[0].figure.size > _FEW:
        raise no_figure(leaf.number)
    if found[-1].weight.sum() * found[-1].scale**2 < LEAST_REGION:
        raise VeneerError(
            "too-little-figure",
            "Leaf {leaf} shows figure on too little of its usable area to be registered; check its "
            "scale and its usable area, or leave it out.",
            leaf=leaf.number,
        )
    return found


def _step(a: Prepared, b: Prepared, area: Any) -> Step:
    found = aligned(a[1], b[1], area)
    left, low, right, high = (a[0].usable if area is None else area).bounds
    swing = math.radians(found.error_deg) * math.hypot(right - left, high - low) / 2
    return Step(
        a[0].number, b[0].number, found.motion, found.likeness, found.error_mm, found.error_deg,
        math.hypot(found.error_mm, swing),
    )


def _check(a: Prepared, b: Prepared, through: Motion) -> Check:
    # The whole leaf and not the region: a slip shows there best.
    ours, theirs = a[1][:_CHECKED], b[1][:_CHECKED]
    direct = aligned(ours, theirs)
    width, length = a[0].size
    corners = np.array([(0, 0), (width, 0), (0, length), (width, length)])
    gap = np.hypot(*(direct.motion.apply(corners) - through.apply(corners)).T).max()
    chained_likeness = likeness(ours[-1], theirs[-1], through)
    return Check(a[0].number, b[0].number, float(gap), direct.likeness, chained_likeness)


def _checked_region(region: Any) -> Any:
    if getattr(region, "geom_type", "") not in ("Polygon", "MultiPolygon") or region.is_empty:
        raise VeneerError(
            "no-region",
            "The region to register by must be an area on the bundle; give a polygon in mm.",
        )
    return region if region.is_valid else region.buffer(0)


def _on_leaf(focus: Any, there: Motion, leaf: Leaf) -> Any:
    area = there.apply_to(focus)
    if area.intersection(leaf.usable).area < LEAST_REGION:
        raise VeneerError(
            "region-off-leaf",
            "The region to register by lies off the usable area of leaf {leaf}; choose a region "
            "that every leaf shows.",
            leaf=leaf.number,
        )
    return area
