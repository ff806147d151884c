# SPDX-License-Identifier: LGPL-2.1-or-later
"""From the screen to the bench: where a point, such as a pin hole, lies on a leaf, measured from
the leaf's own marks.

A register takes bundle mm to leaf mm; a leaf's marks are points in leaf mm, in the order of their
letters.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.plane import Motion
from veneerwb.core.targets.mark import letter
from veneerwb.core.targets.measuring import numbered, points
from veneerwb.words import marked

FLAT = 0.2
"""Least sine of the angle under which two marks are seen from a point that is found by its
distances from them: there 1 mm misread moves it 5 mm."""


@dataclass(frozen=True)
class Measured:
    """A point of a leaf, measured from two of its marks.

    `place`: leaf mm. `marks`: their letters. `distances`: mm from each. `along`, `beside`: from the
    first along the line to the second, and square off it (to the left above 0), mm. `spread`: mm
    that the point moves at most for 1 mm of error in either distance.
    """

    place: tuple[float, float]
    marks: tuple[str, str]
    distances: tuple[float, float]
    along: float
    beside: float
    spread: float

    @property
    def by_distances(self) -> bool:
        """Whether the two distances find the point well; else along and beside do."""
        return self.spread <= 1 / FLAT

    @property
    def template(self) -> str:
        """How to come to the point, to be filled with `values`."""
        left = self.beside >= 0
        if self.by_distances:
            return marked(
                "{near} mm from {a} and {far} mm from {b}, left of the line from {a} to {b}"
            ) if left else marked(
                "{near} mm from {a} and {far} mm from {b}, right of the line from {a} to {b}"
            )
        return marked(
            "{along} mm from {a} along the line to {b}, then {square} mm square to the left"
        ) if left else marked(
            "{along} mm from {a} along the line to {b}, then {square} mm square to the right"
        )

    @property
    def values(self) -> dict[str, Any]:
        (a, b), (near, far) = self.marks, (round(one, 1) for one in self.distances)
        return {"a": a, "b": b, "near": near, "far": far, "along": round(self.along, 1),
                "square": round(abs(self.beside), 1)}

    def __str__(self) -> str:
        return sentence(self.template, self.values)


def carried_back(point: Any, register: Motion, marks: Any) -> Measured:
    """Where the bundle's `point` (mm), such as a pin hole, lies on a leaf with that register, from
    the two of its `marks` (leaf mm, in the order of their letters or by number, see
    `measuring.numbered`) that find it best.

    Seen from the face, left and right with the first mark behind and the second ahead. From marks
    that the point sees at an angle t, an error e in one distance moves it e / |sin t|.
    """
    known = numbered(marks)
    points(list(known.values()), None, 2)
    place = register.apply(points(point, 1, 1)[0])
    pairs = [(i, j) for j in known for i in known if i < j]
    best = min((_measured(place, known, i, j) for i, j in pairs), key=lambda m: round(m.spread, 6))
    if math.isinf(best.along):
        raise VeneerError(
            "marks-coincide",
            "The leaf's marks lie in one place, so nothing can be measured from them; locate them "
            "again.",
        )
    return best


def _measured(place: np.ndarray, marks: dict[int, tuple[float, float]], i: int, j: int) -> Measured:
    a, b = marks[i] - place, marks[j] - place
    near, far = float(np.hypot(*a)), float(np.hypot(*b))
    line = b - a
    length = float(np.hypot(*line))
    names = letter(i), letter(j)
    if length < 1.0:
        return Measured(tuple(place.tolist()), names, (near, far), math.inf, 0.0, math.inf)
    at_mark = min(near, far) < 1e-6
    sine = 1.0 if at_mark else abs(float(a[0] * b[1] - a[1] * b[0])) / (near * far)
    along, beside = float(-a @ line) / length, float(line[0] * -a[1] - line[1] * -a[0]) / length
    return Measured(
        tuple(place.tolist()), names, (near, far), along, beside, 1 / max(sine, 1e-9)
    )
