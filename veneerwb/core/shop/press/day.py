# SPDX-License-Identifier: LGPL-2.1-or-later
"""Press day: where the taped face lies on the core, whether it goes into the press, what pressure
the gauge must show and how much adhesive it takes.

Of the adhesive nothing is known here: its maker's sheet says pressure, times and spread, and wins
over anything else. Pinning in the oversize, the margin and the tape are common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, fields

from shapely.geometry import Point as ShapelyPoint

from veneerwb.core.buildup import BuildUp
from veneerwb.core.layout import Layout
from veneerwb.core.matches.asked import MOST_OVERSIZE, between
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Point
from veneerwb.core.plane import TOUCH, finite, polar, positive, whole
from veneerwb.core.shop.press.units import of_the_air, pressure
from veneerwb.core.top import Top
from veneerwb.words import marked, word

AXES = (
    (marked("right"), 0.0), (marked("up"), 90.0), (marked("left"), 180.0), (marked("down"), 270.0)
)
BAND, OFF_SEAM = 5.0, 5.0
"""mm: the least oversize that holds a pin, and how far from a seam it is set: common practice, no
source."""
ASIDE = (0.0, *(side * step for step in (4.0, 8.0, 12.0, 16.0, 20.0) for side in (1.0, -1.0)))
"""Degrees by which a pin may be set beside its axis, the nearest first."""
MARGIN = 25.0
"""mm all round between blank and platen or bag where nobody said: common practice, no source."""
MOST_RAMS = 100
LONGEST_TIME, MOST_SPREAD = 10_000.0, 2000.0
"""Minutes, and g/m2: larger numbers are slips of the keyboard."""


@dataclass(frozen=True)
class Adhesive:
    """What the maker's sheet says; None: not looked up yet. `pressure` in kPa, `open_time` and
    `press_time` in minutes, `spread` in g/m2 of each glue line."""

    name: str = ""
    pressure: float | None = None
    open_time: float | None = None
    press_time: float | None = None
    spread: float | None = None

    def __post_init__(self) -> None:
        if self.pressure is not None:
            object.__setattr__(self, "pressure", pressure(self.pressure))
        most = {"open_time": LONGEST_TIME, "press_time": LONGEST_TIME, "spread": MOST_SPREAD}
        for one in fields(self):
            value = getattr(self, one.name)
            if one.name in most and value is not None:
                settled = between(SOUGHT[one.name], value, 0.0, most[one.name])
                object.__setattr__(self, one.name, settled)

    @property
    def missing(self) -> tuple[str, ...]:
        """What is still to be looked up."""
        return tuple(word(said) for name, said in SOUGHT.items() if getattr(self, name) is None)


SOUGHT = {
    "pressure": marked("pressure"),
    "open_time": marked("open time"),
    "press_time": marked("time in the press"),
    "spread": marked("spread"),
}
"""What a maker's sheet is read for."""


@dataclass(frozen=True)
class Platen:
    """A press with plates of `width` x `length` mm. Where it is hydraulic: how many `rams` of which
    diameter `ram` (mm), and the most its gauge may show (kPa)."""

    width: float
    length: float
    rams: int = 0
    ram: float = 0.0
    most: float | None = None

    def __post_init__(self) -> None:
        _sized(self, marked("platen width"), marked("platen length"))
        object.__setattr__(self, "rams", whole(marked("number of rams"), self.rams, 0, MOST_RAMS))
        if self.rams:
            object.__setattr__(self, "ram", positive(marked("diameter of a ram"), self.ram))
        if self.most is not None:
            object.__setattr__(self, "most", pressure(self.most))

    @property
    def ram_area(self) -> float:
        """m2 of all rams."""
        return self.rams * math.pi * (self.ram / 2000.0) ** 2


@dataclass(frozen=True)
class Bag:
    """A vacuum bag, `width` x `length` mm as it lies flat inside its seals; its pump `pulls` so
    many kPa below the air by a gauge at the place itself (None: not known), `altitude` m above the
    sea."""

    width: float
    length: float
    pulls: float | None = None
    altitude: float = 0.0

    def __post_init__(self) -> None:
        _sized(self, marked("bag width"), marked("bag length"))
        object.__setattr__(self, "altitude", finite(marked("altitude"), self.altitude))
        if self.pulls is not None:
            object.__setattr__(self, "pulls", pressure(self.pulls))
        of_the_air(self.altitude)

    @property
    def most(self) -> float:
        """kPa that it can press with: no more than the air."""
        air = of_the_air(self.altitude)
        return air if self.pulls is None else min(air, self.pulls)


def _sized(press: Platen | Bag, wide: str, long: str) -> None:
    """Settles both sizes, which are called so."""
    for name, said in (("width", wide), ("length", long)):
        object.__setattr__(press, name, positive(said, getattr(press, name)))


@dataclass(frozen=True)
class AxisMark:
    """How far from the centre an axis meets the finished edge (`net`), the edge of the taped face
    and that of the core, mm; `seam`: the positions whose seam it runs along, if it does."""

    name: str
    direction: float
    net: float
    face: float
    core: float
    seam: tuple[int, int] | None = None


@dataclass(frozen=True)
class Pin:
    """A pin through the oversize: `at` (top mm), how far from the centre, in which direction
    (degrees), and how wide the band is there, mm."""

    at: Point
    distance: float
    direction: float
    band: float


@dataclass(frozen=True)
class Fit:
    """Whether a blank goes in: what it `needs` (with margin, mm), what there is (as the blank
    lies), and the least that is left over (below 0: what is missing)."""

    needs: tuple[float, float]
    there: tuple[float, float]
    turned: bool

    @property
    def spare(self) -> float:
        return min(have - need for have, need in zip(self.there, self.needs))

    @property
    def ok(self) -> bool:
        return self.spare >= -TOUCH


@dataclass(frozen=True)
class Pressing:
    """The pressure wanted on the face and the most that the press can give (kPa; None: not known),
    the force on the panel in kN, and what the gauge must show (kPa): a hydraulic one by the rams'
    area, a vacuum one as much as is wanted on the face."""

    wanted: float | None
    most: float | None
    force: float | None = None
    gauge: float | None = None

    @property
    def ok(self) -> bool | None:
        """None where either is not known."""
        if self.wanted is None or self.most is None:
            return None
        return self.wanted <= self.most * (1.0 + 1e-9)


@dataclass(frozen=True)
class PressDay:
    """All of it. `blank`: extents of the larger of face and core (mm, across and up); `area`: m2 of
    one glue line, `lines`: how many; `grams`: adhesive in all, None where the spread is not known;
    `trammel`: the radius that the edge is cut with from the centre, where it is one circle."""

    layout: Layout
    panel: Top
    centre: Point
    axes: tuple[AxisMark, ...]
    pins: tuple[Pin, ...]
    blank: tuple[float, float]
    thickness: float
    margin: float
    adhesive: Adhesive
    press: Platen | Bag | None
    fit: Fit | None
    pressing: Pressing
    area: float
    lines: int
    backer: bool
    trammel: float | None

    @property
    def glued(self) -> float:
        """m2 of all glue lines."""
        return self.area * self.lines

    @property
    def grams(self) -> float | None:
        return None if self.adhesive.spread is None else self.adhesive.spread * self.glued

    @property
    def pinned(self) -> bool:
        return len(self.pins) == len(AXES)


def press_day(
    layout: Layout,
    adhesive: Adhesive | None = None,
    press: Platen | Bag | None = None,
    margin: float = MARGIN,
    core_over: float | None = None,
    thickness: float = 20.0,
    build_up: BuildUp | None = None,
    backer: bool = True,
    panel: Top | None = None,
) -> PressDay:
    """What is to be known on press day.

    core_over: mm that the core reaches beyond the finished edge; as far as the veneer if not given.
    thickness: mm of all that lies in the press or bag, core and cauls; at least that of the
               build-up where there is one.
    build_up:  says which glue lines there are; without one it is the show face, and the other one
               where there is a `backer`.
    panel:     the finished panel, where the layout is the field within a border: the border's
               strips then reach as far as the core.

    Raises VeneerError for numbers that cannot be.
    """
    margin = between(marked("margin"), margin, 0.0, MOST_OVERSIZE)
    over = float(getattr(layout.recipe, "oversize", 0.0)) if core_over is None else core_over
    panel = panel or layout.top
    core = panel.grown(between(marked("core's oversize"), over, 0.0, MOST_OVERSIZE))
    thickness = positive(marked("thickness"), thickness)
    thickness = max(thickness, build_up.thickness) if build_up else thickness
    blanks = [piece.blank_edge for piece in layout.pieces]
    runs = _Runs(panel.edge, blanks if panel is layout.top else [*blanks, core], core)
    blank = tuple(_extent([*blanks, core], way) for way in (0.0, 90.0))
    adhesive = adhesive or Adhesive()
    area = edges.area(core) * 1e-6
    centre = _centre(layout)
    axes = tuple(_axes(layout, runs, centre))
    return PressDay(
        layout, panel, centre, axes, tuple(_pins(layout, runs, centre)), blank, thickness, margin,
        adhesive, press, _fit(press, blank, margin, thickness), _pressing(adhesive, press, area),
        area, _lines(build_up, backer), bool(build_up.backer if build_up else backer),
        _trammel(panel, centre),
    )  # fmt: skip


def _lines(build_up: BuildUp | None, backer: bool) -> int:
    if build_up is None:
        return 2 if backer else 1
    return len(build_up.levels) - 1


def _centre(layout: Layout) -> Point:
    """Where the pieces meet: the ring's centre, else the middle of the match."""
    how = getattr(layout.recipe, "inner", layout.recipe)
    x, y = getattr(how, "centre", (0.0, 0.0))
    return float(x), float(y)


def _trammel(panel: Top, centre: Point) -> float | None:
    run = panel.edge
    one = len(run) == 1 and isinstance(run[0], Arc) and math.dist(run[0].centre, centre) <= TOUCH
    return run[0].radius if one else None


def _extent(runs: Iterable[Edge], way: float) -> float:
    spans = [edges.extent(run, way) for run in runs]
    return max(high for _, high in spans) - min(low for low, _ in spans)


# --- axes and pins ------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Runs:
    """The finished edge, what is taped, and the core, top mm."""

    net: Edge
    face: list[Edge]
    core: Edge

    def reaches(self, centre: Point, way: float) -> tuple[float, float, float]:
        """How far from the centre a ray leaves each of them; 0 where it does not meet it."""
        return tuple(
            _furthest(runs, centre, way) for runs in ([self.net], self.face, [self.core])
        )  # fmt: skip


def _axes(layout: Layout, runs: _Runs, centre: Point) -> Iterable[AxisMark]:
    for name, way in AXES:
        net, face, core = runs.reaches(centre, way)
        if net:
            yield AxisMark(name, way, net, face, core, _seam_along(layout, centre, way, net))


def _furthest(runs: Iterable[Edge], centre: Point, way: float) -> float:
    ux, uy = polar(1.0, way)
    offset = uy * centre[0] - ux * centre[1]  # of the straight whose normal is way - 90
    far = 0.0
    for run in runs:
        for segment in run:
            hits = [segment.at(share) for share in segment.crossings(way - 90.0, offset)]
            for x, y in (*hits, segment.start, segment.end):
                if abs(uy * x - ux * y - offset) <= 2.0 * TOUCH:
                    far = max(far, ux * (x - centre[0]) + uy * (y - centre[1]))
    return far


def _seam_along(
    layout: Layout, centre: Point, way: float, reach: float
) -> tuple[int, int] | None:
    x, y = polar(0.9 * reach, way)
    spot = ShapelyPoint(centre[0] + x, centre[1] + y)
    near = [s for s in layout.seams if s.line.distance(spot) <= 100.0 * TOUCH]
    return (near[0].a, near[0].b) if near else None


def _pins(layout: Layout, runs: _Runs, centre: Point) -> Iterable[Pin]:
    """A pin beside each axis, where the band is wide enough and no seam is near."""
    for _, axis in AXES:
        for aside in ASIDE:
            way = axis + aside
            net, *outer = runs.reaches(centre, way)
            band = min(outer) - net
            if not net or band < BAND - TOUCH:
                continue
            x, y = polar(net + band / 2.0, way)
            at = (centre[0] + x, centre[1] + y)
            if _off_seams(layout, at):
                yield Pin(at, net + band / 2.0, way % 360.0, band)
                break


def _off_seams(layout: Layout, at: Point) -> bool:
    """Whether a place is well within one blank, or outside all of them. Blanks go on beyond the
    finished edge, and their seams with them."""
    spot = ShapelyPoint(at)
    near = sorted(piece.blank.distance(spot) for piece in layout.pieces)
    return near[0] >= OFF_SEAM or len(near) < 2 or (near[0] <= TOUCH and near[1] >= OFF_SEAM)


# --- press --------------------------------------------------------------------------------------


def _fit(
    press: Platen | Bag | None, blank: tuple[float, float], margin: float, thickness: float
) -> Fit | None:
    """A flat bag of width W has 2 W all round; a board of w x t has 2 (w + t): so a bag needs the
    thickness too (plane geometry)."""
    if press is None:
        return None
    more = 2.0 * margin + (thickness if isinstance(press, Bag) else 0.0)
    needs = (blank[0] + more, blank[1] + more)
    there = (press.width, press.length)
    ways = [Fit(needs, there, False), Fit(needs, there[::-1], True)]
    return max(ways, key=lambda fit: (round(fit.spare, 6), not fit.turned))


def _pressing(adhesive: Adhesive, press: Platen | Bag | None, area: float) -> Pressing:
    """Force = pressure x area of the panel; gauge = force / area of the rams (their friction and
    springs left out). A bag presses with what its gauge shows below the air."""
    wanted = adhesive.pressure
    force = None if wanted is None else wanted * area
    if isinstance(press, Bag):
        return Pressing(wanted, press.most, force, wanted)
    if press is None or not press.rams:
        return Pressing(wanted, None, force)
    gauge = None if force is None else force / press.ram_area
    most = None if press.most is None else press.most * press.ram_area / area
    return Pressing(wanted, most, force, gauge)
