# SPDX-License-Identifier: LGPL-2.1-or-later
"""From the screen to the bench and back: where a pin hole lies, measured from a leaf's own marks;
and whether a photograph of what was pinned confirms the register.

A register takes bundle mm to leaf mm; a leaf's marks are points in leaf mm, in the order of their
letters.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError, number
from veneerwb.core.plane import Motion, positive
from veneerwb.core.targets.mark import letter
from veneerwb.core.targets.measuring import NEAREST, frame, numbered, points

FLAT = 0.2
"""Least sine of the angle under which two marks are seen from a point that is found by its
distances from them: there 1 mm misread moves it 5 mm."""
FEWEST = 4
"""Marks of a stack without pins: two fit however the leaves lie, for scale, turn and place are
found from them."""
AGREED = 0.5
"""mm: a mark no further from where the register has it confirms the register."""
TURNED = 0.1
"""Degrees: nor turned by more; that is 1 mm at 600 mm."""


# --- to the bench ------------------------------------------------------------------------------


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

    def __str__(self) -> str:
        side = "left" if self.beside >= 0 else "right"
        (a, b), (near, far) = self.marks, (number(round(d, 1)) for d in self.distances)
        if self.by_distances:
            return f"{near} mm from {a} and {far} mm from {b}, {side} of the line from {a} to {b}"
        along, beside = number(round(self.along, 1)), number(round(abs(self.beside), 1))
        return f"{along} mm from {a} along the line to {b}, then {beside} mm square to the {side}"


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


# --- and back ----------------------------------------------------------------------------------


@dataclass(frozen=True)
class Seen:
    """Marks of one leaf on a photograph of what was pinned: `on_photo`, N x 2 (column, row);
    `marks`, N x 2, the same ones in leaf mm; the leaf's `register`; and how many mm the leaf lies
    `below` the topmost, where the camera sees it smaller."""

    leaf: int
    on_photo: Any
    marks: Any
    register: Motion
    below: float = 0.0


@dataclass(frozen=True)
class Pins:
    """Pins on such a photograph: `on_photo`, N x 2 (column, row), and where they stand in the
    bundle, N x 2 mm."""

    on_photo: Any
    bundle: Any


@dataclass(frozen=True)
class _Similar:
    """(column, row) to bundle mm, for a photo taken square on: p -> scale R(angle) F p + off."""

    scale: float
    motion: Motion

    def apply(self, seen: np.ndarray) -> np.ndarray:
        return self.motion.apply(self.scale * _up(seen))


def confirm(
    leaves: Sequence[Seen], pins: Pins | None = None, tolerance: float = AGREED,
    turn: float = TURNED, error: float = 0.0, camera: float | None = None,
    middle: tuple[float, float] | None = None,
) -> list[Finding]:
    """Whether a photograph bears out the registers on the screen, a Finding for each leaf.

    Either the topmost leaf with at least two marks and the pins: the marks then say where on the
    leaf the pins stand, and that is compared with where the register has them. Or marks of several
    leaves of one stack (on tabs that stand out of it) without pins: all together say how the stack
    lies, those that stand apart from the others weighing less. The photograph is taken square on,
    or squared up first; its scale is found.

    A leaf is confirmed where nothing is further than `tolerance` mm from where its register has it,
    and turned by no more than `turn` degrees; else contradicted. If `error` (px, of a centre or a
    click, one deviation; say the largest `Located.error`) or the misfit of a leaf's own marks is so
    large that nothing can be told, that is said.

    Leaves that lie `below` the topmost are seen smaller: with the `camera` at that many mm above
    the topmost, and the `middle` (column, row) of the photograph, this is set right. (14 mm of
    stack seen from 1.5 m move a mark that is 300 mm off the middle by 2.8 mm.) Raises VeneerError
    where there is nothing to compare with.
    """
    tolerance, turn = positive("tolerance", tolerance), positive("turn", turn, 180.0)
    places = [_level(one, camera, middle) for one in leaves]
    marks = [points(one.marks, len(seen), 1) for one, seen in zip(leaves, places)]
    if not leaves or (pins is None and len(leaves) == 1):
        raise VeneerError(
            "nothing-to-compare",
            "One leaf's marks alone confirm nothing; click two pins too, or marks of other leaves "
            "of the stack.",
        )
    if pins is None and sum(map(len, marks)) < FEWEST:
        raise VeneerError(
            "too-few-to-compare",
            "{count} marks fit any photograph, so that they confirm nothing; click at least "
            "{least}, on two leaves or more.",
            count=sum(map(len, marks)), least=FEWEST,
        )
    if pins is not None:
        clicked = points(pins.on_photo, None, 2)
        stand = points(pins.bundle, len(clicked), 2)
        compared = [_by_pins(one, seen, known, clicked, stand)
                    for one, seen, known in zip(leaves, places, marks)]
    else:
        compared = _by_others(leaves, places, marks, tolerance)
    return [_verdict(one.leaf, compare, tolerance, turn, error)
            for one, compare in zip(leaves, compared)]


@dataclass(frozen=True)
class _Compared:
    """Where points should lie and where they do, mm; how badly the marks between fit, mm; and the
    photograph's mm per pixel."""

    known: np.ndarray
    lies: np.ndarray
    misfit: float
    scale: float


def _by_pins(
    one: Seen, seen: np.ndarray, marks: np.ndarray, clicked: np.ndarray, stand: np.ndarray
) -> _Compared:
    """The pins on the leaf, as its marks have them."""
    onto = _similar(points(seen, None, 2), marks)
    misfit = float(np.linalg.norm(onto.apply(seen) - marks, axis=1).max())
    return _Compared(one.register.apply(stand), onto.apply(clicked), misfit, onto.scale)


def _by_others(
    leaves: Sequence[Seen], places: list[np.ndarray], marks: list[np.ndarray], tolerance: float
) -> list[_Compared]:
    """Every leaf's marks in the bundle, as all leaves' marks together have it."""
    expected = [one.register.inverse().apply(known) for one, known in zip(leaves, marks)]
    onto = _robust(np.vstack(places), np.vstack(expected), tolerance)
    return [_Compared(known, onto.apply(seen), 0.0, onto.scale)
            for known, seen in zip(expected, places)]


def _level(one: Seen, camera: float | None, middle: tuple[float, float] | None) -> np.ndarray:
    """Where the marks would be seen if the leaf lay topmost."""
    seen = points(one.on_photo, None, 1)
    if not one.below:
        return seen
    if camera is None or middle is None:
        raise VeneerError(
            "camera-unknown",
            "Leaf {leaf} lies {below} mm below the topmost and is seen smaller; say how far above "
            "the topmost leaf the camera was.",
            leaf=one.leaf, below=float(one.below),
        )
    factor = 1.0 + one.below / positive("distance of the camera", camera)
    return middle + factor * (seen - middle)


def _up(seen: np.ndarray) -> np.ndarray:
    return seen * (1.0, -1.0)


def _similar(seen: np.ndarray, places: np.ndarray, weights: np.ndarray | None = None) -> _Similar:
    """The scale and motion that take `seen` nearest to `places` (weighted least squares)."""
    w = np.ones(len(seen)) if weights is None else weights
    p = _up(seen)
    a, b = np.average(p, axis=0, weights=w), np.average(places, axis=0, weights=w)
    p0, q0 = p - a, places - b
    spread = float(w @ (p0**2).sum(axis=1))
    real = float(w @ (p0 * q0).sum(axis=1))
    turned = float(w @ (p0[:, 0] * q0[:, 1] - p0[:, 1] * q0[:, 0]))
    if spread <= 1e-9 or math.hypot(real, turned) <= 1e-9:
        raise VeneerError(
            "marks-coincide",
            "The marks lie in one place, so nothing can be measured from them; locate them again.",
        )
    scale, angle = math.hypot(real, turned) / spread, math.degrees(math.atan2(turned, real))
    dx, dy = b - Motion(angle).apply(scale * a)
    return _Similar(scale, Motion(angle, float(dx), float(dy)))


def _robust(seen: np.ndarray, places: np.ndarray, tolerance: float) -> _Similar:
    """The same, each mark weighing as 1 / its miss (least sum of distances), from `tolerance` / 4
    on."""
    weights = np.ones(len(seen))
    for _ in range(50):
        found = _similar(seen, places, weights)
        off = np.linalg.norm(found.apply(seen) - places, axis=1)
        weights = 1.0 / np.maximum(off, tolerance / 4)
    return found


def _verdict(
    leaf: int, compared: _Compared, tolerance: float, turn: float, error: float
) -> Finding:
    known, lies = compared.known, compared.lies
    off = float(np.linalg.norm(lies - known, axis=1).max())
    unsure = max(2.0 * error * compared.scale, compared.misfit)
    values = {"leaf": leaf, "off": round(off, 2), "tolerance": tolerance, "most": turn,
              "unsure": round(unsure, 2), "turn": 0.0}
    says = "By this photograph leaf {leaf} lies {off} mm off its register on the screen"
    turned = blurred = 0.0
    apart = float(np.linalg.norm(known - known[0], axis=1).max())
    if apart >= NEAREST:
        turned = abs(frame(known, lies).motion.angle)
        blurred = math.degrees(math.sqrt(2.0) * unsure / apart)
        values["turn"] = round(turned, 3)
        says = (
            "By this photograph leaf {leaf} lies {off} mm and {turn} deg off its register on the "
            "screen"
        )
    if unsure > tolerance:
        return Finding(
            "register-not-told", "warn",
            "The marks of leaf {leaf} can be told to {unsure} mm only, and {tolerance} mm is "
            "asked: the photograph neither confirms nor contradicts its register.",
            "Photograph again from straight above and from nearer, sharp and in even light; see "
            "that each mark has its own letter.", values,
        )
    if off <= tolerance and turned <= turn + blurred:
        return Finding(
            "register-confirmed", "note",
            says + "; up to {tolerance} mm and {most} deg confirm it.", "", values,
        )
    return Finding(
        "register-contradicted", "stop",
        says + ", more than the {tolerance} mm and {most} deg that would confirm it.",
        "Do not cut. See that each mark has its own letter; then pin the leaf again by its "
        "marks, or locate its marks again on its photograph.", values,
    )
