# SPDX-License-Identifier: LGPL-2.1-or-later
"""Table tops: outlines about the match's centre, as true segments."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from shapely.geometry import Polygon

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines import given as outlines
from veneerwb.core.outlines.curves import EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Line, Segment
from veneerwb.core.outlines.offset import parallel
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import LONGEST, Motion, cosd, finite, polar, positive, whole
from veneerwb.words import marked, say

SIDES = (3, 64)


@dataclass(frozen=True)
class Top:
    """The outline of a finished top: `edge` counter-clockwise, in mm, the origin the centre of the
    match.

    `size` is what it is ordered by, in mm (diameter, width across flats, length along x), `name`
    that in words with the template `words`; `others` are further sizes in it, by name. `holes` are
    openings (clockwise).
    """

    words: str
    size: float
    edge: Edge
    holes: tuple[Edge, ...] = ()
    others: tuple[tuple[str, float], ...] = ()

    @staticmethod
    def round(diameter: float) -> Top:
        """A round top of that diameter in mm."""
        size = positive("diameter", diameter)
        return Top(marked("round, {size} mm"), size, (Arc((0.0, 0.0), size / 2.0, -90.0, 360.0),))

    @staticmethod
    def oval(length: float, width: float) -> Top:
        """A true ellipse, `length` mm along x and `width` mm along y."""
        long, wide = _sizes(length, width)
        edge = (EllipseArc((0.0, 0.0), long / 2.0, wide / 2.0, 0.0, -90.0, 360.0),)
        return Top(marked("oval, {size} by {width} mm"), long, edge, (), (("width", wide),))

    @staticmethod
    def polygon(sides: int, across_flats: float) -> Top:
        """A regular polygon with a flat at the bottom; `across_flats` is twice the distance in mm
        from the centre to a flat, for odd numbers of sides too."""
        count = whole("number of sides", sides, *SIDES)
        size = positive("width across flats", across_flats)
        corner = size / 2.0 / cosd(180.0 / count)
        turns = [-90.0 + (2 * k - 1) * 180.0 / count for k in range(count)]
        edge = edges.straights([polar(corner, turn) for turn in turns])
        words = marked("{sides}-sided, {size} mm across flats")
        return Top(words, size, edge, (), (("sides", count),))

    @staticmethod
    def square(side: float) -> Top:
        """A square of `side` mm."""
        size = positive("side", side)
        return Top(marked("square, {size} mm"), size, _oblong(size / 2.0, size / 2.0))

    @staticmethod
    def rectangle(length: float, width: float) -> Top:
        """A rectangle, `length` mm along x and `width` mm along y."""
        long, wide = _sizes(length, width)
        edge = _oblong(long / 2.0, wide / 2.0)
        words = marked("rectangle, {size} by {width} mm")
        return Top(words, long, edge, (), (("width", wide),))

    @staticmethod
    def racetrack(length: float, width: float) -> Top:
        """Two half circles of `width` mm joined by straights, `length` mm over all along x."""
        long, wide = _sizes(length, width)
        if long <= wide:
            raise _no_racetrack(long, wide)
        x, y = (long - wide) / 2.0, wide / 2.0
        edge = (
            Line((-x, -y), (x, -y)),
            Arc((x, 0.0), y, -90.0, 180.0),
            Line((x, y), (-x, y)),
            Arc((-x, 0.0), y, 90.0, 180.0),
        )
        words = marked("racetrack, {size} by {width} mm")
        return Top(words, long, edge, (), (("width", wide),))

    @staticmethod
    def boat(length: float, width: float, ends: float) -> Top:
        """A boat shape, `length` mm along x: two long arcs `width` mm apart in the middle, and
        straight ends `ends` mm wide."""
        long, wide = _sizes(length, width)
        end = positive("width at the ends", ends)
        rise, x = (wide - end) / 2.0, long / 2.0
        if not 0.0 < rise < x:
            raise _no_boat(long, wide, end)
        radius = (x * x + rise * rise) / (2.0 * rise)
        half = 2.0 * math.degrees(math.atan2(rise, x))
        below = wide / 2.0 - radius
        edge = (
            Arc((0.0, -below), radius, -90.0 - half, 2.0 * half),
            Line((x, -end / 2.0), (x, end / 2.0)),
            Arc((0.0, below), radius, 90.0 - half, 2.0 * half),
            Line((-x, end / 2.0), (-x, -end / 2.0)),
        )
        words = marked("boat shape, {size} by {width} mm, {ends} mm at the ends")
        return Top(words, long, edge, (), (("width", wide), ("ends", end)))

    @staticmethod
    def outline(polygon: Polygon) -> Top:
        """The top of a shapely polygon (mm), holes allowed. Its origin is the centre of the match,
        and may lie anywhere: `centred` lays it on the centroid."""
        return _of_loops(*outlines.of_polygon(polygon))

    @staticmethod
    def of_edges(edge: Iterable[Segment], holes: Iterable[Iterable[Segment]] = ()) -> Top:
        """The top of true segments (mm), as of a sketch: each run head to tail in order, either way
        round, ends within 0.001 mm of the next beginning; `holes` likewise. The origin is as for
        `outline`."""
        return _of_loops(*outlines.of_runs(edge, holes))

    def centred(self) -> Top:
        """The same with its centroid at the origin."""
        middle = self.polygon_mm.centroid
        return self._moved(Motion(dx=-middle.x, dy=-middle.y))

    def _moved(self, motion: Motion) -> Top:
        region = self.region.moved(motion)
        return replace(self, edge=region.outer, holes=region.holes)

    def grown(self, by: float) -> Edge:
        """The edge `by` mm outside this one (parallel, corners sharp); inside where it is less than
        0."""
        away = finite("oversize", by)
        if abs(away) > LONGEST:
            raise VeneerError(
                "out-of-range",
                "The oversize cannot be {value} mm; give at most {most}.",
                value=away, most=LONGEST,
            )  # fmt: skip
        return parallel(self.edge, away)

    def inset(self, width: float) -> Top:
        """What a border of `width` mm all round leaves of it, the field. Openings stay as they are;
        one that lies in the border altogether is left to that."""
        wide = positive("border's width", width)
        edge = parallel(self.edge, -wide)
        holes = outlines.holes_within(edge, self.edge, self.holes, wide)
        others = dict(self.others)
        others["border"] = others.get("border", 0.0) + wide
        return Top(self.words, self.size, edge, holes, tuple(others.items()))

    def scaled(self, factor: float) -> Top:
        """The same shape, `factor` times as large."""
        factor = finite("scale", factor)
        if not 0.0 < factor * self.reach <= LONGEST:
            raise VeneerError(
                "out-of-range",
                "The scale cannot be {factor}; give more than 0 and at most {most}.",
                factor=factor, most=LONGEST / self.reach,
            )  # fmt: skip
        edge, *holes = (tuple(s.scaled(factor) for s in loop) for loop in self.region.loops)
        others = tuple(
            (name, value if name == "sides" else value * factor) for name, value in self.others
        )
        return Top(self.words, self.size * factor, edge, tuple(holes), others)

    @property
    def region(self) -> Region:
        """The finished top with its openings."""
        return Region(self.edge, self.holes)

    def blank_region(self, oversize: float) -> Region:
        """What is covered before the top is trimmed: its edge `oversize` mm further out, and its
        openings, which are cut after pressing."""
        return self.region if not (oversize or self.holes) else Region(self.grown(oversize))

    @property
    def name(self) -> str:
        """What it is in words."""
        name = sentence(self.words, self.values)
        if "border" in self.values:
            return say("{top}, less {border} mm all round", top=name, border=self.values["border"])
        return name

    @property
    def values(self) -> dict[str, float]:
        """The sizes in its name, in mm, and the number of sides of a polygon."""
        return {"size": self.size, **dict(self.others)}

    @cached_property
    def polygon_mm(self) -> Polygon:
        """The top as a shapely polygon, derived from `edge` and `holes`."""
        return self.region.polygon

    @property
    def area(self) -> float:
        """Exact area in mm2."""
        return self.region.area

    @property
    def reach(self) -> float:
        """The furthest that the edge lies from the centre, mm."""
        return max(segment.reach for segment in self.edge)


def _sizes(length: float, width: float) -> tuple[float, float]:
    return positive("length", length), positive("width", width)


def _oblong(x: float, y: float) -> Edge:
    return edges.straights([(-x, -y), (x, -y), (x, y), (-x, y)])


def _of_loops(edge: Edge, holes: Sequence[Edge]) -> Top:
    (left, right), (low, high) = edges.extent(edge, 0.0), edges.extent(edge, 90.0)
    others = (("width", high - low),)
    words = marked("outline, {size} by {width} mm")
    return Top(words, right - left, edge, tuple(holes), others)


def _no_racetrack(long: float, wide: float) -> VeneerError:
    if long == wide:
        return VeneerError(
            "no-straights",
            "A racetrack {length} mm long and as wide has no straights: make it longer, or take a "
            "round top of {length} mm.",
            length=long,
        )
    return VeneerError(
        "swapped-sizes",
        "A racetrack cannot be {width} mm wide and only {length} mm long: swap the two ({width} mm "
        "long and {length} mm wide), or make it longer than {width} mm.",
        length=long,
        width=wide,
    )


def _no_boat(long: float, wide: float, end: float) -> VeneerError:
    if end >= wide:
        return VeneerError(
            "wide-ends",
            "The ends of a boat shape cannot be {ends} mm wide where its middle is {width} mm: "
            "give less than {width} mm.",
            ends=end,
            width=wide,
        )
    return VeneerError(
        "short-boat",
        "A boat shape {length} mm long cannot widen from {ends} to {width} mm: make it longer than "
        "{least} mm, or its ends wider than {most} mm.",
        length=long,
        ends=end,
        width=wide,
        least=wide - end,
        most=wide - long,
    )
