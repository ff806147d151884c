# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph's scale from paper marks that were clicked on it roughly: by the size of their
rings, as printed; by one measured distance; or squared up by the six distances between four."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import similar
from veneerwb.core.photos.squaring import Squaring
from veneerwb.core.plane import Motion, positive
from veneerwb.core.targets.locating import Located, located
from veneerwb.core.targets.mark import LETTERS, MARK, letter
from veneerwb.core.targets.measuring import by_distances, scale_from, squared_by

PAIRS = ("AB", "BC", "CD", "DA", "AC", "BD")
"""Between which marks the six distances lie, in their order."""
DOUBTFUL = 0.3
"""mm by which six distances disagree (rms) that were measured to half a millimetre or so: for more,
one is likely misread."""
UNEVEN = 0.02
"""Rings that differ by a larger share in size were not photographed square on."""


def distances_of(count: int, given: Any) -> tuple[float, ...]:
    """The distances between `count` marks, in mm: none, one between two, or six between four.
    Raises VeneerError for any other number of either."""
    try:
        found = tuple(float(one) for one in given)
    except (TypeError, ValueError):
        raise VeneerError("not-distances", "Distances between marks are numbers, in mm.") from None
    if len(found) not in (0, 1, 6) or not 2 <= count <= len(LETTERS) or (
        found and count != {1: 2, 6: 4}[len(found)]
    ):
        raise VeneerError(
            "marks-or-distances",
            "Click two paper marks to {most}, or two and give their distance, or four and give "
            "the six distances between them.", most=len(LETTERS),
        )
    for one in found:
        positive("distance between two marks", one)
    return found


def clicked(pixels: np.ndarray, clicks: Sequence[Any], photo: str = "") -> list[Located]:
    """The marks nearest to the `clicks` (column, row) on `pixels`, in their order. Raises
    VeneerError where none is, and for one that is clicked twice."""
    found: list[Located] = []
    for rough in clicks:
        one = located(pixels, rough, found[0].mm_per_px if found else None, photo)
        for k, other in enumerate(found):
            if np.hypot(*np.subtract(one.centre, other.centre)) < other.radius:
                raise VeneerError(
                    "mark-twice",
                    "Marks {one} and {other} are the same mark; click each once.",
                    one=letter(k), other=letter(len(found)),
                )
        found.append(one)
    return found


def scale_of(marks: Sequence[Located], distances: Sequence[float] = ()) -> float:
    """mm per pixel of a photo taken square on: from the one distance between two marks, or without
    from the mean size of the rings, as printed."""
    if distances:
        return scale_from(marks[0], marks[1], distances[0])
    return MARK.outer / 2 / float(np.mean([one.radius for one in marks]))


def unevenness(marks: Sequence[Located]) -> float:
    """By what share the largest ring is larger than the smallest."""
    radii = [one.radius for one in marks]
    return max(radii) / min(radii) - 1.0


def squared_by_distances(
    marks: Sequence[Located], distances: Sequence[float], shape: tuple[int, ...]
) -> tuple[Squaring, float]:
    """The Squaring of a picture by four marks and the six distances between them (see `PAIRS`),
    whichever way round they stand, and by how many mm these disagree (rms); the picture's own up
    stays up. Raises VeneerError for distances that disagree too much, or do not suit what is
    seen."""
    places, off = by_distances(*distances)
    seen = np.array([one.centre for one in marks]) * (1.0, -1.0)
    if _area(seen) * _area(places) < 0:  # distances do not tell a round from its mirror image
        places = places * (1.0, -1.0)
    angle = similar(places, seen).motion.angle
    return squared_by(marks, Motion(angle).apply(places), shape), off


def _area(ring: np.ndarray) -> float:
    """Of four places in their order, above 0 if that is counter-clockwise; nought never, unless
    they lie on a line."""
    p, q = ring[2] - ring[0], ring[3] - ring[1]
    return float(p[0] * q[1] - p[1] * q[0])
