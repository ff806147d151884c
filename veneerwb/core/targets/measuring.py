# SPDX-License-Identifier: LGPL-2.1-or-later
"""From marks to measure: two give a photograph its scale, four square it up, two or more are a
frame on the leaf.

A leaf's marks are kept as a list of points in leaf mm, in the order of their letters, or by number
(0 for A) where some are missing. Distances are between the crosses. With marks d mm apart that are
centred to e mm, a scale is uncertain by 1.4 e / d of itself and a turn by 1.4 e / d radians: far
apart is better than many.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.optimize import least_squares

from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import rigid
from veneerwb.core.photos.squaring import Squaring, scale_between
from veneerwb.core.plane import Motion, positive
from veneerwb.core.targets.locating import Located
from veneerwb.core.targets.mark import MARK, letter

RING = 0.08
"""Share by which a ring may seem larger or smaller than it was printed: bright paper eats into it,
and a print is rarely at exactly 100 %."""
NEAREST = 30.0
"""mm: marks that are a frame are not nearer."""
NARROWEST = 0.01
"""Width by length of what marks span: on anything narrower they lie on a line."""
LEVEL = 0.01
"""The least singular value by the largest of the equations that four marks give: below, three of
them lie on a line."""
SAME = 1.0
"""mm: marks said to be the same on two photographs fit better than this."""


@dataclass(frozen=True)
class Frame:
    """A rigid motion that takes some marks to others, and by how many mm each then misses."""

    motion: Motion
    off: tuple[float, ...]

    @property
    def rms(self) -> float:
        return math.sqrt(sum(one * one for one in self.off) / len(self.off))

    @property
    def worst(self) -> float:
        return max(self.off)


def on_leaf(marks: Sequence[Located], mm_per_px: float, shape: tuple[int, ...]) -> np.ndarray:
    """The centres, N x 2 in leaf mm, of marks found on a leaf's photo of `shape` (rows, ...)."""
    scale = positive("scale of the photo in mm per pixel", mm_per_px)
    return np.array([(m.centre[0] * scale, (shape[0] - m.centre[1]) * scale) for m in marks])


def scale_from(a: Located, b: Located, distance: float) -> float:
    """mm per pixel from two marks whose crosses lie `distance` mm apart, on a photo taken square
    on. Raises VeneerError where the rings would then not be of the size that was printed."""
    scale = scale_between(a.centre, b.centre, distance)
    _plausible([2.0 * mark.radius * scale for mark in (a, b)])
    return scale


def _plausible(sizes: Sequence[float]) -> None:
    """Raises VeneerError if rings of these diameters, mm, are none of ours."""
    worst = max(sizes, key=lambda size: abs(math.log(size / MARK.outer)))
    if abs(math.log(worst / MARK.outer)) > RING:
        raise VeneerError(
            "ring-size",
            "By these distances a ring is {size} mm across, and it was printed {printed} mm; "
            "measure again from cross to cross, see that each mark has its own letter, and that "
            "the sheet was printed at 100 %.",
            size=round(worst, 1), printed=MARK.outer,
        )


def squared_by(marks: Sequence[Located], places: Any, shape: tuple[int, ...]) -> Squaring:
    """The Squaring of a picture by four marks or more at known `places`, N x 2 in mm.

    Its rectangle is the one round the places, and its mm count from there: the place p lies at p
    less the least x and y of all. With more than four it is the best fit (least squares in
    homogeneous coordinates, each side centred and scaled; after R. Hartley, A. Zisserman, Multiple
    View Geometry, 2nd ed. 2004, algorithm 4.2). Raises VeneerError for fewer, for marks on a line,
    and for places that do not suit what is seen.
    """
    known = points(places, len(marks), 4)
    seen = np.array([mark.centre for mark in marks])
    matrix = plane_to_picture(known, seen)
    low, high = known.min(axis=0), known.max(axis=0)
    width, length = (high - low).tolist()
    corners = through(matrix, [low, (high[0], low[1]), high, (low[0], high[1])])
    inside = (corners >= 0).all() and (corners <= (shape[1], shape[0])).all()
    found = Squaring(tuple(map(tuple, corners.tolist())), width, length)
    if not inside:  # a corner off the picture is no harm, one behind the camera is
        found.whole(shape)
    off = np.linalg.norm(found.to_mm(seen) + low - known, axis=1)
    _plausible([_ring_in_mm(found, mark) for mark in marks])
    if off.max() > SAME:
        raise VeneerError(
            "marks-disagree",
            "Mark {letter} lies {off} mm off the place that was given for it; measure the places "
            "of the marks again, and see that each has its own letter.",
            letter=letter(int(off.argmax())), off=round(float(off.max()), 2),
        )
    return found


def _ring_in_mm(found: Squaring, mark: Located) -> float:
    """The ring's diameter as the squaring has it, by the longer axis of its picture."""
    angles = np.radians(np.arange(0, 180, 10))
    ends = mark.radius * np.column_stack([np.cos(angles), np.sin(angles)])
    across = np.linalg.norm(
        found.to_mm(mark.centre + ends) - found.to_mm(mark.centre - ends), axis=1
    )
    return float(across.min())  # along the longer axis the picture is nearest to the ring


def plane_to_picture(places: np.ndarray, seen: np.ndarray) -> np.ndarray:
    """H, 3 x 3, from mm to (column, row), with w above 0 where the marks are."""
    near, far = _normal(places), _normal(seen)
    p, q = through(near, places), through(far, seen)
    ones, nothing = np.ones((len(p), 1)), np.zeros((len(p), 3))
    full = np.column_stack([p, ones])
    rows = np.vstack([
        np.column_stack([full, nothing, -q[:, :1] * full]),
        np.column_stack([nothing, full, -q[:, 1:] * full]),
    ])
    _, sizes, turned = np.linalg.svd(rows)
    if sizes[7] < LEVEL * sizes[0]:
        raise _on_a_line()
    matrix = np.linalg.inv(far) @ turned[8].reshape(3, 3) @ near
    w = np.column_stack([places, np.ones(len(places))]) @ matrix[2]
    if w.min() * w.max() <= 0:
        raise VeneerError(
            "marks-interchanged",
            "The marks do not lie as their places say; see that each has its own letter.",
        )
    return matrix * np.sign(w[0])


def _normal(places: np.ndarray) -> np.ndarray:
    """3 x 3: places centred, and scaled to spread alike along their principal axes, since a leaf is
    long and narrow. Raises VeneerError for places on a line."""
    middle = places.mean(axis=0)
    _, spread, axes = np.linalg.svd(places - middle, full_matrices=False)
    if spread[1] < NARROWEST * spread[0]:
        raise _on_a_line()
    matrix = np.eye(3)
    matrix[:2, :2] = math.sqrt(len(places)) * axes / spread[:, None]
    matrix[:2, 2] = -matrix[:2, :2] @ middle
    return matrix


def _on_a_line() -> VeneerError:
    return VeneerError(
        "marks-on-a-line",
        "Three of the marks lie almost on a line, which squares nothing; use marks that stand near "
        "the corners of the leaf.",
    )


def through(matrix: np.ndarray, places: Any) -> np.ndarray:
    """Places, N x 2, carried by a projective 3 x 3."""
    p = np.asarray(places, float) @ matrix[:, :2].T + matrix[:, 2]
    return p[:, :2] / p[:, 2:]


def by_distances(
    ab: float, bc: float, cd: float, da: float, ac: float, bd: float
) -> tuple[np.ndarray, float]:
    """The places of four marks, 4 x 2 in mm, from the six distances between their crosses, and by
    how many mm the distances disagree (rms).

    A stands at the origin, B on the x axis, C and D above it (A to D counter-clockwise). Six
    distances measure five coordinates, so that one that is misread shows. Raises VeneerError for
    distances that no four points have.
    """
    given = np.array([positive("distance between two marks", d) for d in (ab, bc, cd, da, ac, bd)])
    pairs = ((0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 3))

    def above(from_a: float, from_b: float) -> tuple[float, float]:
        x = (from_a**2 - from_b**2 + ab**2) / (2 * ab)
        return x, math.sqrt(max(from_a**2 - x**2, 1.0))

    def full(free: np.ndarray) -> np.ndarray:
        return np.array([(0, 0), (free[0], 0), free[1:3], free[3:5]], float)

    def missed(free: np.ndarray) -> np.ndarray:
        placed = full(free)
        return np.array([math.dist(placed[i], placed[j]) for i, j in pairs]) - given

    start = [ab, *above(ac, bc), *above(da, bd)]
    found = least_squares(missed, start)
    off = float(np.sqrt((found.fun**2).mean()))
    if off > SAME:
        raise VeneerError(
            "distances-disagree",
            "The six distances miss each other by {off} mm, so one is misread; measure them again "
            "from cross to cross.",
            off=round(off, 1),
        )
    return full(found.x), off


def frame(places: Any, onto: Any, mirrored: bool = False) -> Frame:
    """The rigid motion that takes marks at `places` nearest to `onto` (N x 2 each, mm, least
    squares), and what each then misses.

    With `mirrored` it turns the plane over too. Used between the marks of two leaves, between those
    of a leaf and where its register says they are, and between a leaf's face and back (see
    `sides.tied`). Raises VeneerError for fewer than two, or two in one place.
    """
    here = points(places, None, 2)
    there = points(onto, len(here), 2)
    flat = here * (-1.0, 1.0) if mirrored else here
    p, q = flat - flat.mean(axis=0), there - there.mean(axis=0)
    if min(np.ptp(p, axis=0).max(), np.ptp(q, axis=0).max()) < NEAREST:
        raise VeneerError(
            "marks-too-near",
            "The marks lie less than {least} mm apart, too near to tell a turn; use marks far "
            "apart.",
            least=NEAREST,
        )
    motion = rigid(flat, there)[0] @ Motion(mirrored=mirrored)
    return Frame(motion, tuple(np.linalg.norm(motion.apply(here) - there, axis=1).tolist()))


def numbered(marks: Any) -> dict[int, tuple[float, float]]:
    """Marks by number, 0 for A: of a list in the order of their letters, None where one is missing,
    or of a mapping that is so already."""
    pairs = marks.items() if isinstance(marks, Mapping) else enumerate(marks)
    return {k: (float(p[0]), float(p[1])) for k, p in sorted(pairs) if p is not None}


def shared(a: Any, b: Any) -> tuple[np.ndarray, np.ndarray]:
    """The marks that two lists or mappings both have, N x 2 each in one order, as `frame` wants
    them."""
    here, there = numbered(a), numbered(b)
    both = [k for k in here if k in there]
    return tuple(np.array([one[k] for k in both]).reshape(-1, 2) for one in (here, there))


def seen_from_face(centres: Any, shape: tuple[int, ...]) -> np.ndarray:
    """Places (column, row) on a back's own photo of `shape` (rows, columns), as they lie on that
    photo flipped left-right."""
    flipped = np.array(centres, float)
    flipped[..., 0] = shape[1] - flipped[..., 0]
    return flipped


def points(given: Any, count: int | None, least: int) -> np.ndarray:
    """`given` as N x 2, at least `least` and exactly `count` if that is given; else VeneerError."""
    try:
        found = np.asarray(given, float).reshape(-1, 2)
    except (TypeError, ValueError):
        found = np.empty((0, 2))
    if len(found) < least or not np.isfinite(found).all() or count not in (None, len(found)):
        raise VeneerError(
            "marks-missing",
            "There are {count} marks where {least} are needed, each with its place; locate them "
            "all.",
            count=len(found), least=max(least, count or 0),
        )
    return found
