# SPDX-License-Identifier: LGPL-2.1-or-later
"""The plane: degrees, rigid motions, and the tolerances that the whole core shares.

Millimetres and degrees throughout, angles counter-clockwise.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from shapely import affinity

from veneerwb.core.errors import VeneerError
from veneerwb.words import word

Point = tuple[float, float]
SAGITTA = 0.01
"""mm: how far a polygon derived from a true curve may lie inside it. Nothing exact rests on it."""
TOUCH = 1e-6
"""mm: two points nearer than this are one point."""
SHORTEST = 0.001
"""mm: nothing that is cut, measured or photographed is smaller; smaller numbers are slips of the
keyboard."""
LONGEST = 100_000.0
"""mm: no leaf and no top is longer than 100 m; larger numbers are slips of the keyboard."""


def cosd(degrees: float) -> float:
    """Cosine of an angle in degrees, exact at multiples of 90."""
    return sind(degrees + 90.0)


def sind(degrees: float) -> float:
    """Sine of an angle in degrees, exact at multiples of 90."""
    turns = math.remainder(degrees, 360.0)
    if turns % 90.0 == 0.0:
        return (0.0, 1.0, 0.0, -1.0)[int(turns // 90) % 4]
    return math.sin(math.radians(turns))


def tand(degrees: float) -> float:
    """Tangent of an angle in degrees."""
    return sind(degrees) / cosd(degrees)


def polar(radius: float, degrees: float) -> tuple[float, float]:
    """The point at `radius` mm from the origin in direction `degrees`."""
    return radius * cosd(degrees), radius * sind(degrees)


def snapped(share: float, length: float) -> float:
    """A share of something `length` mm long; within TOUCH of an end it is that end, 0 or 1."""
    near = TOUCH / length if length else 0.0
    if abs(share) <= near:
        return 0.0
    return 1.0 if abs(share - 1.0) <= near else share


def stepped(values: Any, step: float) -> np.ndarray:
    """Which step of `step` each value lies in, as whole numbers. Steps begin at odd places, so that
    plain sizes, which rounding moves a hair to either side, stay within one."""
    return np.floor(np.asarray(values, float) / step + 1.0 / math.pi)


def positive(name: str, value: float, most: float = LONGEST) -> float:
    """`value` as a float, if it is a number from SHORTEST to `most` (mm, degrees); else
    VeneerError."""
    number = finite(name, value)
    if not SHORTEST <= number <= most:
        raise VeneerError(
            "out-of-range",
            "The {name} cannot be {value}; give a number from {least} to {most}.",
            name=word(name),
            value=number,
            least=SHORTEST,
            most=most,
        )
    return number


def finite(name: str, value: float) -> float:
    """`value` as a float, if it is a finite number; else VeneerError."""
    try:
        number = float(value)
    except (TypeError, ValueError):
        number = math.nan
    except OverflowError:
        value = number = math.inf
    if not math.isfinite(number):
        raise VeneerError(
            "not-a-number",
            "The {name} cannot be {value!r:.40}; give a plain number.",
            name=word(name),
            value=value,
        )
    return number


def whole(name: str, value: int, least: int, most: int) -> int:
    """`value` as an int, if it is a whole number from `least` to `most`; else VeneerError."""
    number = finite(name, value)
    if number != int(number) or not least <= number <= most:
        raise VeneerError(
            "out-of-range",
            "The {name} cannot be {value}; give a whole number from {least} to {most}.",
            name=word(name),
            value=number,
            least=least,
            most=most,
        )
    return int(number)


def choice(name: str, value: str, allowed: tuple[str, ...]) -> str:
    """`value`, if it is one of `allowed`; else VeneerError."""
    if not isinstance(value, str) or value not in allowed:
        raise VeneerError(
            "unknown-choice",
            "The {name} cannot be {value!r:.40}; choose one of: {allowed}.",
            name=word(name),
            value=value,
            allowed=", ".join(allowed),
        )
    return value


@dataclass(frozen=True)
class Motion:
    """A rigid motion of the plane: p -> R(angle) F p + (dx, dy).

    F is the identity, or x -> -x for a mirrored motion (a leaf turned over about its grain).
    `angle` in degrees, `dx` and `dy` in mm. Motions compose: (a @ b).apply(p) ==
    a.apply(b.apply(p)).
    """

    angle: float = 0.0
    dx: float = 0.0
    dy: float = 0.0
    mirrored: bool = False

    @staticmethod
    def turn_about(x: float, y: float, degrees: float) -> Motion:
        """The rotation by `degrees` that leaves the point (x, y) where it is."""
        return Motion(dx=x, dy=y) @ Motion(degrees) @ Motion(dx=-x, dy=-y)

    @cached_property
    def matrix(self) -> tuple[float, float, float, float]:
        """(a, b, d, e) of x' = a x + b y + dx, y' = d x + e y + dy."""
        c, s = cosd(self.angle), sind(self.angle)
        return (-c, -s, -s, c) if self.mirrored else (c, -s, s, c)

    def apply(self, points: Any) -> np.ndarray:
        """`points`, N x 2 (or one point of 2) in mm, moved; an array of the same shape."""
        p = np.asarray(points, dtype=float)
        a, b, d, e = self.matrix
        out = np.empty(p.shape)
        out[..., 0] = a * p[..., 0] + b * p[..., 1] + self.dx
        out[..., 1] = d * p[..., 0] + e * p[..., 1] + self.dy
        return out

    def point(self, point: Point) -> Point:
        """One point, moved."""
        (x, y), (a, b, d, e) = point, self.matrix
        return a * x + b * y + self.dx, d * x + e * y + self.dy

    def apply_to(self, geometry: Any) -> Any:
        """A shapely geometry, moved."""
        return affinity.affine_transform(geometry, [*self.matrix, self.dx, self.dy])

    def inverse(self) -> Motion:
        """The motion that takes every moved point back."""
        turned = Motion(self.angle if self.mirrored else -self.angle, mirrored=self.mirrored)
        dx, dy = turned.apply((-self.dx, -self.dy))
        return Motion(turned.angle, float(dx), float(dy), self.mirrored)

    def __matmul__(self, first: Motion) -> Motion:
        angle = self.angle + (-first.angle if self.mirrored else first.angle)
        dx, dy = self.apply((first.dx, first.dy))
        return Motion(
            math.remainder(angle, 360.0), float(dx), float(dy), self.mirrored != first.mirrored
        )


IDENTITY = Motion()
