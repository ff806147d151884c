# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the registers leave along the seams: by how many mm the figure of one leaf lies off that of
the leaf it meets.

A seam drawn back into the bundle is a line. Small patches of the two sides that meet, looked up
there as they would be painted, are laid over each other and shifted until they correlate best, to
a part of a pixel. A seam of a book match is one line; the two pieces of a slip match come from two
lines and do not meet by design, so that the registers are measured on either.

Where the figure is lines all one way, only the shift across them can be told and only that counts.
"""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from scipy.ndimage import map_coordinates

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece, Seam
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.plane import Motion
from veneerwb.core.sequence.grid import WORKING_SCALE, Grid, grid_of
from veneerwb.words import marked

SPACING = 25.0
"""mm from patch to patch along a seam."""
HALF, REACH = 16, 6
"""mm: half the side of a patch, and the largest shift looked for (one ring or bar, about)."""
LEAST_ALIKE = 0.5
"""Correlation that two patches must reach for their shift to mean anything."""
PRECISE = 0.5
"""mm: a direction in which a patch's predicted standard error is larger is not told."""
VISIBLE = 1.0
"""mm: a larger shift shows at a seam; a rule of thumb, no source."""
_INDEPENDENT = 16.0
"""Pixels of the smoothed figure that count as one independent value."""
_NEAREST = 0.1
"""Correlation by which a patch at the end of the reach must be better than one in place: figure
recurs."""
_LEAN = 0.1
"""Share of the sharper bend that a direction's must reach: a ridge askew to the pixels seems to
bend a little along itself."""
_ONE_LINE = 0.01
_KEPT = 4


@dataclass(frozen=True)
class Patch:
    """At `place` (bundle mm) the figure of the second leaf lies `shift` mm (x, y, in the bundle)
    from the first's; `whole` if both directions could be told, else only the one across."""

    place: tuple[float, float]
    shift: tuple[float, float]
    whole: bool

    @property
    def mm(self) -> float:
        return math.hypot(*self.shift)


@dataclass(frozen=True)
class SeamResidual:
    """The seam between positions `a` and `b`, where surfaces `step` apart meet: the patches that
    could be measured, of how many `tried`; `one_photo` where both sides are pictured by the same
    photograph, so that there is nothing to measure."""

    a: int
    b: int
    step: int
    patches: tuple[Patch, ...]
    tried: int
    one_photo: bool

    @property
    def rms(self) -> float:
        """mm; not a number where nothing could be measured."""
        return _rms(self.patches)

    @property
    def worst(self) -> float:
        return max((patch.mm for patch in self.patches), default=math.nan)


@dataclass(frozen=True)
class Residual:
    """All seams of a layout, in their order."""

    seams: tuple[SeamResidual, ...]

    @property
    def measured(self) -> int:
        return sum(len(seam.patches) for seam in self.seams)

    @property
    def tried(self) -> int:
        return sum(seam.tried for seam in self.seams)

    @property
    def rms(self) -> float:
        """mm, over all patches."""
        return _rms(tuple(patch for seam in self.seams for patch in seam.patches))

    @property
    def worst(self) -> float:
        return max((seam.worst for seam in self.seams if seam.patches), default=math.nan)

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What is to be said of it."""
        return (*_measured(self), *_unmeasured(self))

    @property
    def text(self) -> str:
        return " ".join(
            part for finding in self.findings for part in (finding.text, finding.remedy) if part
        )


def residual(
    layout: Layout, bundle: Bundle | None = None, progress: Callable[[float], None] | None = None
) -> Residual:
    """The residual of the registers along the seams of a layout, from its bundle's photographs (or
    those of `bundle`, the same leaves with other registers). `progress` is told the share done, and
    may raise to end it.

    Raises VeneerError for a stock of plain sizes, which has no photographs.
    """
    bundle = layout.bundle if bundle is None else bundle
    if not isinstance(bundle, Bundle):
        raise VeneerError(
            "no-pictures", "A stock of plain sizes has no photographs; lay the top from a bundle."
        )
    pieces = {piece.position: piece for piece in layout.pieces}
    shown = _Shown(bundle)
    found = []
    for seam in layout.seams:
        found.append(_seam(shown, seam, pieces[seam.a], pieces[seam.b]))
        if progress is not None:
            progress(len(found) / len(layout.seams))
    return Residual(tuple(found))


def _seam(shown: _Shown, seam: Seam, a: Piece, b: Piece) -> SeamResidual:
    first, second = shown.side(a), shown.side(b)
    if first.image is second.image and first.view == second.view:
        return SeamResidual(seam.a, seam.b, seam.step, (), 0, True)
    found, tried = [], 0
    for place in _places(seam, a, b):
        here, there = shown.grid(first), shown.grid(second)
        patch = measured((here, first.view), (there, second.view), place)
        tried += 1
        if patch is not None:
            found.append(patch)
    return SeamResidual(seam.a, seam.b, seam.step, tuple(found), tried, False)


def _places(seam: Seam, a: Piece, b: Piece) -> list[tuple[float, float]]:
    """Middles of the patches, bundle mm: on the one line, or on both if they are two."""
    ends = np.asarray(seam.line.coords)
    lines = [piece.onto_bundle.apply(ends) for piece in (a, b)]
    if np.abs(lines[0] - lines[1]).max() < _ONE_LINE:
        lines.pop()
    count = max(1, int(seam.line.length / SPACING))
    at = [seam.line.interpolate((k + 0.5) / count, normalized=True) for k in range(count)]
    points = np.array([(p.x, p.y) for p in at])
    owners = (a, b)[: len(lines)]
    return [tuple(map(float, p)) for piece in owners for p in piece.onto_bundle.apply(points)]


class _Shown:
    """The sides that pieces show, and the grids of their pictures, a few at a time."""

    def __init__(self, bundle: Bundle) -> None:
        self._bundle = bundle
        self._faces = {id(leaf.face.image): leaf for leaf in bundle.leaves}
        self._kept: OrderedDict[int, Grid] = OrderedDict()

    def side(self, piece: Piece) -> Side:
        return self._bundle.leaf(piece.leaf).side(piece.turned)

    def grid(self, side: Side) -> Grid:
        """Of a face within its usable area, be it shown as a neighbour's back or not; of a
        photographed back, whose area nobody gave, the whole."""
        key = id(side.image)
        if key not in self._kept:
            leaf = self._faces.get(key) or Leaf(1, Side(side.image))
            self._kept[key] = grid_of(leaf)
        self._kept.move_to_end(key)
        while len(self._kept) > _KEPT:
            self._kept.popitem(last=False)
        return self._kept[key]


# --- one patch ---------------------------------------------------------------------------------


def measured(
    first: tuple[Grid, Motion], second: tuple[Grid, Motion], place: tuple[float, float]
) -> Patch | None:
    """How the figure lies at `place` (bundle mm) on two pictures, each a grid and its view (bundle
    mm to mm on it); None where that cannot be told."""
    here, weight = _patch(*first, place, HALF)
    there, other = _patch(*second, place, HALF + REACH)
    taper = np.outer(*[np.hanning(2 * HALF + 3)[1:-1]] * 2)
    inner = other[REACH:-REACH, REACH:-REACH]
    if min(float((taper * w).sum()) for w in (weight, inner)) < 0.5 * float(taper.sum()):
        return None
    alike = _likeness(here, there, taper * weight)
    away = np.hypot(*np.mgrid[-REACH : REACH + 1, -REACH : REACH + 1]) / REACH
    row, column = np.unravel_index(int((alike - _NEAREST * away**2).argmax()), alike.shape)
    top = float(alike[row, column])
    if top < LEAST_ALIKE or not (0 < row < 2 * REACH and 0 < column < 2 * REACH):
        return None
    told = _top(alike[row - 1 : row + 2, column - 1 : column + 2], float((taper**2).sum()))
    if told is None:
        return None
    (x, y), basis = told
    shift = basis @ basis.T @ (column - REACH, row - REACH) + (x, y)
    mm = tuple(float(v) * WORKING_SCALE for v in shift)
    return Patch(place, mm, basis.shape[1] == 2)


def _patch(
    grid: Grid, view: Motion, place: tuple[float, float], half: int
) -> tuple[np.ndarray, np.ndarray]:
    """Figure and weight round a place, rows with y, WORKING_SCALE mm apart in the bundle."""
    steps = np.arange(-half, half + 1) * WORKING_SCALE
    x, y = np.meshgrid(place[0] + steps, place[1] + steps)
    at = view.apply(np.stack([x, y], axis=-1)) / grid.scale - 0.5
    where = at[..., 1], at[..., 0]
    figure = map_coordinates(grid.spline, where, order=3, prefilter=False, mode="constant")
    return figure, map_coordinates(grid.weight, where, order=1, mode="constant")


def _likeness(here: np.ndarray, there: np.ndarray, weight: np.ndarray) -> np.ndarray:
    """Weighted correlation of a patch with a larger one at every whole shift (rows y, columns x).
    """
    windows = sliding_window_view(there, here.shape)
    total = float(weight.sum())
    calm = here - float((weight * here).sum()) / total
    power = float((weight * calm * calm).sum())
    mean = np.einsum("ijkl,kl->ij", windows, weight) / total
    square = np.einsum("ijkl,ijkl,kl->ij", windows, windows, weight) - total * mean**2
    product = np.einsum("ijkl,kl->ij", windows, weight * calm)
    return product / np.sqrt(np.maximum(power * square, 1e-9))


def _top(near: np.ndarray, size: float) -> tuple[np.ndarray, np.ndarray] | None:
    """From nine correlations, the top of the paraboloid through them (pixels x, y from the middle)
    in the directions that can be told, and those directions as columns; None if there are none.

    A direction's variance is (1 - correlation) over how sharply it bends, for each independent
    value.
    """
    gx, gy = (near[1, 2] - near[1, 0]) / 2, (near[2, 1] - near[0, 1]) / 2
    xx = 2 * near[1, 1] - near[1, 2] - near[1, 0]
    yy = 2 * near[1, 1] - near[2, 1] - near[0, 1]
    xy = -(near[2, 2] + near[0, 0] - near[0, 2] - near[2, 0]) / 4
    bends, basis = np.linalg.eigh(np.array([[xx, xy], [xy, yy]]))
    most = PRECISE / WORKING_SCALE
    least = (1 - float(near[1, 1])) * _INDEPENDENT / size / most**2
    held = bends > max(least, _LEAN * bends[-1], 1e-4)
    if not held.any():
        return None
    basis, bends = basis[:, held], bends[held]
    step = basis @ (basis.T @ (gx, gy) / bends)
    return np.clip(step, -1, 1), basis


# --- words -------------------------------------------------------------------------------------


def _rms(patches: tuple[Patch, ...]) -> float:
    return math.sqrt(sum(p.mm**2 for p in patches) / len(patches)) if patches else math.nan


def _measured(found: Residual) -> list[Finding]:
    if not found.measured:
        return []
    worst = max((s for s in found.seams if s.patches), key=lambda seam: round(seam.worst, 6))
    values = {
        "rms": round(found.rms, 2), "worst": round(worst.worst, 2), "a": worst.a, "b": worst.b,
        "measured": found.measured, "tried": found.tried, "step": worst.step,
    }
    bad = worst.worst > VISIBLE
    return [Finding(
        "residual", "warn" if bad else "note",
        "From the residuals of your photographs, the figure of one leaf lies {rms} mm (rms) from "
        "that of the leaf it meets, measured at {measured} of {tried} places along the seams; "
        "{worst} mm at worst, between positions {a} and {b}, where the surfaces that meet are "
        "{step} apart.",
        marked(
            "Register by the pieces of the match, take an order whose largest step is less, or "
            "another place on the leaves."
        ) if bad else "",
        values, (worst.a, worst.b) if bad else (),
    )]


def _unmeasured(found: Residual) -> list[Finding]:
    findings = []
    same = tuple(seam.a for seam in found.seams if seam.one_photo)
    if same:
        findings.append(Finding(
            "one-photograph", "note",
            "Both sides of the seams after positions {seams} are pictured by one photograph, so "
            "they meet in the picture; where the figure of a back really lies was not measured.",
            "", {"seams": same}, same,
        ))
    blank = tuple(s.a for s in found.seams if not s.one_photo and not s.patches)
    if blank:
        findings.append(Finding(
            "residual-untold", "note",
            "At the seams after positions {seams} the figure is too plain, or the leaves too "
            "unlike, to tell how it meets.",
            "", {"seams": blank}, blank,
        ))
    return findings
