# SPDX-License-Identifier: LGPL-2.1-or-later
"""Segments that are neither straight nor round: elliptical arcs and cubic curves.

They answer what a Line and an Arc do (see `edge`). A share 0..1 is one of the parameter, not of the
length.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import ellipeinc

from veneerwb.core.plane import SAGITTA, TOUCH, Motion, Point, cosd, polar, sind

FIT = 0.0005
"""mm: how far a fitted curve may lie from what it stands for."""
_TOUCHES = 1e-9  # mm: a curve that turns back so near a straight does not cross it
_SAMPLES = np.linspace(0.0, 1.0, 17)[1:-1]  # where a fit is measured

Path = Callable[[np.ndarray], tuple[np.ndarray, np.ndarray]]
"""Parameters to points and slopes, both N x 2."""


class Ends:
    """Where a segment that knows its points begins and ends, and its middle."""

    @property
    def start(self) -> Point:
        return self.at(0.0)

    @property
    def end(self) -> Point:
        return self.at(1.0)

    @property
    def middle(self) -> Point:
        return self.at(0.5)


class _Bent(Ends):
    """What both kinds have in common."""

    def hit(self, degrees: float) -> float | None:
        """Where the ray from the origin meets it (the furthest place), as a share 0..1; None if
        nowhere."""
        ux, uy = polar(1.0, degrees)
        shares = self._met(degrees + 90.0, 0.0)
        along = [ux * x + uy * y for x, y in map(self.at, shares)]
        far, share = max(zip(along, shares), default=(0.0, 0.0))
        return share if far > 0.0 else None

    def crossings(self, normal: float, offset: float) -> list[float]:
        """The shares, rising, between its ends where it crosses the straight of the points p with
        p . (cos normal, sin normal) = offset (degrees, mm); where it only touches it does not."""
        return sorted(s for s in self._met(normal, offset) if 0.0 < s < 1.0)

    def slope(self, share: float) -> Point:
        """The unit vector along it at a share."""
        inwards = share + (1e-6 if share < 0.5 else -1e-6)  # where a handle lies on its end
        _, slopes = self.path(np.array([share, inwards]))
        x, y = next((s for s in slopes.tolist() if math.hypot(*s) > 0.0), (1.0, 0.0))
        size = math.hypot(x, y)
        return x / size, y / size

    def _settled(self, share: float) -> float:
        """A share that lies within TOUCH of an end is that end."""
        end = 0.0 if share < 0.5 else 1.0
        near = abs(share - end) < 0.25 and math.dist(self.at(share), self.at(end)) <= TOUCH
        return end if near else share

    def _run(self, count: int) -> list[Point]:
        """The starts of `count` parts of equal shares."""
        places, _ = self.path(np.arange(1, count) / count)
        return [self.start, *map(tuple, places.tolist())]

    def _furthest(self, shares: Iterable[float]) -> float:
        return max(math.hypot(*self.at(share)) for share in (0.0, 1.0, *shares))


@dataclass(frozen=True)
class EllipseArc(_Bent):
    """The arc of the ellipse about `centre` with the semi-axes `along` the direction `tilt` and
    `across` it (mm), from the parameter `begin` over `sweep` degrees (positive: counter-clockwise).

    Its points are centre + R(tilt) (along cos t, across sin t).
    """

    centre: Point
    along: float
    across: float
    tilt: float
    begin: float
    sweep: float
    role: str = "rim"

    @property
    def length(self) -> float:
        """By the elliptic integral of the second kind."""
        ends = np.radians((self.begin, self.begin + self.sweep))
        low, high = self.across * ellipeinc(ends, 1.0 - (self.along / self.across) ** 2)
        return abs(float(high - low))

    @property
    def swept(self) -> float:
        """Half the integral of x dy - y dx along it (Green's theorem), mm2."""
        (ax, ay), (bx, by), (cx, cy) = self.start, self.end, self.centre
        about_centre = 0.5 * self.along * self.across * math.radians(self.sweep)
        return about_centre + 0.5 * (cx * (by - ay) - cy * (bx - ax))

    @property
    def reach(self) -> float:
        """The furthest that it lies from the origin, mm.

        There P . P' = 0, in z = exp(i t) a polynomial of the fourth degree.
        """
        u, v = self._towards(*self.centre)
        a, b, c = self.along * u, self.across * v, self.across**2 - self.along**2
        roots = np.roots([c, 2j * b - 2.0 * a, 0.0, 2j * b + 2.0 * a, -c])
        shares = (self._share(t) for t in np.degrees(np.angle(roots)).tolist())
        return self._furthest(s for s in shares if s is not None)

    def scaled(self, factor: float) -> EllipseArc:
        cx, cy = self.centre
        return replace(
            self,
            centre=(cx * factor, cy * factor),
            along=self.along * factor,
            across=self.across * factor,
        )

    def moved(self, motion: Motion) -> EllipseArc:
        centre = motion.point(self.centre)
        if motion.mirrored:
            tilt = motion.angle + 180.0 - self.tilt
            return replace(self, centre=centre, tilt=tilt, begin=-self.begin, sweep=-self.sweep)
        return replace(self, centre=centre, tilt=motion.angle + self.tilt)

    def reversed(self) -> EllipseArc:
        return replace(self, begin=self.begin + self.sweep, sweep=-self.sweep)

    def at(self, share: float) -> Point:
        """The point at a share 0..1 of its parameter."""
        turn = self.begin + share * self.sweep
        u, v = self.along * cosd(turn), self.across * sind(turn)
        c, s = cosd(self.tilt), sind(self.tilt)
        return self.centre[0] + c * u - s * v, self.centre[1] + s * u + c * v

    def path(self, shares: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Points and slopes (mm a share) at shares."""
        turn, rate = np.radians(self.begin + shares * self.sweep), math.radians(self.sweep)
        axes = np.array([[cosd(self.tilt), sind(self.tilt)], [-sind(self.tilt), cosd(self.tilt)]])
        places = np.column_stack((self.along * np.cos(turn), self.across * np.sin(turn)))
        slopes = rate * np.column_stack((-self.along * np.sin(turn), self.across * np.cos(turn)))
        return places @ axes + self.centre, slopes @ axes

    def bends(self, shares: np.ndarray) -> np.ndarray:
        """The second derivatives at shares."""
        return (self.path(shares)[0] - self.centre) * -(math.radians(self.sweep) ** 2)

    def points(self, sagitta: float = SAGITTA) -> list[Point]:
        """Points from its start on, its end left out, chords nowhere deeper than `sagitta` mm."""
        most = max(self.along, self.across)
        widest = 2.0 * math.degrees(math.acos(max(math.sqrt(0.5), 1.0 - sagitta / most)))
        return self._run(max(1, math.ceil(abs(self.sweep) / max(widest, 1e-3))))

    def part(self, first: float, last: float) -> EllipseArc:
        begin = self.begin + first * self.sweep
        return replace(self, begin=begin, sweep=(last - first) * self.sweep)

    def extremes(self, degrees: float) -> list[Point]:
        """The points between its ends that lie furthest or least far in a direction."""
        u, v = self._towards(*polar(1.0, degrees))
        turn = math.degrees(math.atan2(self.across * v, self.along * u))
        shares = (self._share(turn), self._share(turn + 180.0))
        return [self.at(share) for share in shares if share is not None]

    def _towards(self, x: float, y: float) -> Point:
        """A vector's parts along and across the tilt."""
        c, s = cosd(self.tilt), sind(self.tilt)
        return c * x + s * y, c * y - s * x

    def _met(self, normal: float, offset: float) -> list[float]:
        ux, uy = polar(1.0, normal)
        u, v = self._towards(ux, uy)
        a, b = self.along * u, self.across * v
        away, most = offset - (ux * self.centre[0] + uy * self.centre[1]), math.hypot(a, b)
        if abs(away) >= most - _TOUCHES:
            return []
        middle, half = math.degrees(math.atan2(b, a)), math.degrees(math.acos(away / most))
        shares = (self._share(middle + turn) for turn in (half, -half))
        return [share for share in shares if share is not None]

    def _share(self, turn: float) -> float | None:
        """The share of the parameter `turn`, None if it is not on the arc."""
        turn = math.copysign(1.0, self.sweep) * (turn - self.begin) % 360.0
        for candidate in (turn, turn - 360.0):
            share = self._settled(candidate / abs(self.sweep))
            if 0.0 <= share <= 1.0:
                return share
        return None


@dataclass(frozen=True)
class Curve(_Bent):
    """The cubic curve from `a` to `b` with the handles `c` and `d`: the Bezier curve of the points
    a, c, d, b."""

    a: Point
    c: Point
    d: Point
    b: Point
    role: str = "rim"

    @cached_property
    def _powers(self) -> np.ndarray:
        """Coefficients 4 x 2 of 1, t, t2, t3."""
        a, c, d, b = np.array((self.a, self.c, self.d, self.b))
        return np.array((a, 3.0 * (c - a), 3.0 * (d - 2.0 * c + a), b - a + 3.0 * (c - d)))

    @property
    def length(self) -> float:
        """By quadrature, within 1e-6 of itself."""
        _, (x1, y1), (x2, y2), (x3, y3) = self._powers.tolist()

        def speed(t: float) -> float:
            u, v = x1 + t * (2.0 * x2 + 3.0 * t * x3), y1 + t * (2.0 * y2 + 3.0 * t * y3)
            return math.hypot(u, v)

        return float(quad(speed, 0.0, 1.0, epsrel=1e-9, limit=100)[0])

    @property
    def swept(self) -> float:
        """Half the integral of x dy - y dx along it (Green's theorem), mm2, exact."""
        a, c, d, b = self.a, self.c, self.d, self.b
        return (
            6.0 * (_cross(a, c) + _cross(d, b))
            + 3.0 * (_cross(a, d) + _cross(c, d) + _cross(c, b))
            + _cross(a, b)
        ) / 20.0

    @property
    def reach(self) -> float:
        """The furthest that it lies from the origin, mm; there P . P' = 0."""
        x, y = (np.polynomial.Polynomial(row) for row in self._powers.T)
        across = x * x.deriv() + y * y.deriv()
        # A highest power next to nothing has a root so far off that it spoils the others.
        roots = across.trim(1e-14 * np.abs(across.coef).max()).roots()
        return self._furthest(t for t in np.real(roots).tolist() if 0.0 < t < 1.0)

    def scaled(self, factor: float) -> Curve:
        return self._of((x * factor, y * factor) for x, y in self._four)

    def moved(self, motion: Motion) -> Curve:
        return self._of(map(motion.point, self._four))

    def reversed(self) -> Curve:
        return self._of(self._four[::-1])

    def at(self, share: float) -> Point:
        """The point at a share 0..1 of its parameter; the ends exactly."""
        if share in (0.0, 1.0):
            return self.b if share else self.a
        return self._blossom(share, share, share)

    def path(self, shares: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Points and slopes (mm a share) at shares."""
        t, (k0, k1, k2, k3) = np.asarray(shares, float)[:, None], self._powers
        return k0 + t * (k1 + t * (k2 + t * k3)), k1 + t * (2.0 * k2 + 3.0 * t * k3)

    def bends(self, shares: np.ndarray) -> np.ndarray:
        """The second derivatives at shares."""
        return 2.0 * self._powers[2] + 6.0 * np.asarray(shares)[:, None] * self._powers[3]

    def points(self, sagitta: float = SAGITTA) -> list[Point]:
        """Points from its start on, its end left out, chords nowhere deeper than `sagitta` mm.

        A chord over h of the parameter is at most h2 |P''| / 8 deep.
        """
        most = max(math.hypot(*bend) for bend in self.bends(np.array((0.0, 1.0))))
        return self._run(max(1, math.ceil(math.sqrt(most / (8.0 * sagitta)))))

    def part(self, first: float, last: float) -> Curve:
        handles = self._blossom(first, first, last), self._blossom(first, last, last)
        return self._of((self.at(first), *handles, self.at(last)))

    def extremes(self, degrees: float) -> list[Point]:
        """The points between its ends that lie furthest or least far in a direction."""
        return [self.at(t) for t in _turning(self._powers @ polar(1.0, degrees))]

    @property
    def _four(self) -> tuple[Point, Point, Point, Point]:
        return self.a, self.c, self.d, self.b

    def _of(self, points: Iterable[Point]) -> Curve:
        return Curve(*points, self.role)

    def _blossom(self, r: float, s: float, t: float) -> Point:
        """The curve's polar form: P(t) = f(t, t, t); f(r, r, t) and f(r, t, t) are handles."""
        row = list(self._four)
        for share in (r, s, t):
            row = [
                (p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]))
                for p, q in zip(row, row[1:])
            ]
        return row[0]

    def _met(self, normal: float, offset: float) -> list[float]:
        """A root lies between two of the places where the distance turns, if its sign changes."""
        powers = self._powers @ polar(1.0, normal)
        powers[0] -= offset
        k0, k1, k2, k3 = powers.tolist()

        def away(t: float) -> float:
            return k0 + t * (k1 + t * (k2 + t * k3))

        turning = [t for t in _turning(powers) if abs(away(t)) > _TOUCHES]
        found = [end for end in (0.0, 1.0) if abs(away(end)) <= TOUCH]
        for low, high in zip([0.0, *turning], [*turning, 1.0]):
            if away(low) * away(high) < 0.0:
                root = self._settled(brentq(away, low, high, xtol=1e-15))
                if root not in found:
                    found.append(root)
        return found


def _cross(p: Point, q: Point) -> float:
    return p[0] * q[1] - p[1] * q[0]


def _turning(powers: np.ndarray) -> list[float]:
    """Where between 0 and 1 a cubic with these coefficients of 1, t, t2, t3 turns, rising."""
    _, k1, k2, k3 = powers.tolist()
    square = k2 * k2 - 3.0 * k1 * k3
    if square < 0.0:
        return []
    q = -(k2 + math.copysign(math.sqrt(square), k2))  # the stable way to solve a quadratic
    roots = ([q / (3.0 * k3)] if k3 else []) + ([k1 / q] if q else [])
    return sorted(t for t in roots if 0.0 < t < 1.0)


def fitted(path: Path, first: float, last: float, role: str = "rim") -> tuple[Curve, ...]:
    """Curves that run within FIT of a smooth path from one of its parameters to another, and in its
    directions where they meet; halved until they do."""
    curve, off = _fit(path, first, last, role)
    if off <= FIT or last - first < 1e-4:
        return (curve,)
    middle = 0.5 * (first + last)
    return (*fitted(path, first, middle, role), *fitted(path, middle, last, role))


def _fit(path: Path, first: float, last: float, role: str) -> tuple[Curve, float]:
    """One curve and how far it lies off: the lengths of its two handles are those that make the
    distances square to the path least (Gauss-Newton)."""
    (a, b), slopes = path(np.array([first, last]))
    speeds = np.hypot(*slopes.T)
    (u, v), handles = slopes / speeds[:, None], speeds * (last - first) / 3.0
    s, t = _SAMPLES[:, None], first + _SAMPLES * (last - first)
    ends = (1.0 - s) ** 2 * (1.0 + 2.0 * s) * a + s**2 * (3.0 - 2.0 * s) * b
    reins = np.stack((3.0 * s * (1.0 - s) ** 2 * u, -3.0 * s**2 * (1.0 - s) * v))
    for _ in range(4):
        off, slopes = _aside(path, ends + np.tensordot(handles, reins, 1), t)
        square = np.column_stack((-slopes[:, 1], slopes[:, 0])) / np.hypot(*slopes.T)[:, None]
        rows = (reins * square).sum(axis=2).T
        handles = handles - np.linalg.lstsq(rows, (off * square).sum(axis=1), rcond=1e-9)[0]
    off, _ = _aside(path, ends + np.tensordot(handles, reins, 1), t)
    points = np.array((a, a + handles[0] * u, b - handles[1] * v, b)).tolist()
    curve = Curve(*map(tuple, points), role)
    return curve, float(np.hypot(*off.T).max()) if handles.min() > 0.0 else math.inf


def _aside(path: Path, places: np.ndarray, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """How places lie off the path, and its slopes there; brings the parameters `t` up to date."""
    for _ in range(2):
        points, slopes = path(t)
        t += ((places - points) * slopes).sum(axis=1) / (slopes**2).sum(axis=1)
    points, slopes = path(t)
    return places - points, slopes
