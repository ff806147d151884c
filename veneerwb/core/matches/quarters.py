# SPDX-License-Identifier: LGPL-2.1-or-later
"""Matches about a centre with straight joints: four fields, or strips that slant to a centre line.

Centre and butt, diamond and reverse diamond are four quadrants that meet at the top's origin, each
the mirror image of its neighbours when they are book matched; they differ by where their grain
points. Box and reverse box are four fields, each against one side, with the grain along that side
or square to it. Herringbone is strips on both sides of an upright centre line. Rules: Architectural
Woodwork Standards, 1st ed. (2009), 1.2.19 to 1.2.22 (box, reverse box); the trade's own pages for
the diamonds and herringbone.

Fields are cut with the point in which they meet (the middle of a box, the lower left corner of a
quadrant that is slipped) on the placement's point, strips with the end of their middle line on the
centre line there.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches import asked
from veneerwb.core.matches.cells import Cell, laid
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.rows import LEAST_STRIP, Kind, leaves_for
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import Motion, Point, choice, cosd, positive, whole
from veneerwb.core.top import Top
from veneerwb.words import marked

QUARTER_KINDS = (
    Kind("centre and butt", marked("Four-piece centre and butt match"),
         marked("Four leaves meet at the centre, side by side and end to end, grain upright."),
         4, "four"),
    Kind("box", marked("Box match"),
         marked("Four leaves against the four sides, the grain along each side."), 4, "four"),
    Kind("reverse box", marked("Reverse box match"),
         marked("Four leaves against the four sides, the grain square to each side."), 4, "four"),
    Kind("diamond", marked("Diamond match"),
         marked("Four quarters with slanting grain, which runs round the centre in a diamond."),
         4, "four"),
    Kind("reverse diamond", marked("Reverse diamond match"),
         marked("Four quarters with slanting grain, whose V's meet at the centre."), 4, "four"),
    Kind("herringbone", marked("Herringbone match"),
         marked("Strips slant away from both sides of an upright centre line."), 2, "even"),
)  # fmt: skip
"""Parity "four": exactly four leaves."""
KINDS = tuple(kind.key for kind in QUARTER_KINDS)
BOXES = ("box", "reverse box")
TURNED = {"book": ("even", "odd"), "slip": ("none", "all")}
CORNERS = ("mitre", "diagonal")
STEEPEST, FLATTEST = 85.0, 5.0
"""Degrees: grain that slants more or less than this is as good as upright or level."""
MIRROR, HALF_TURN = Motion(mirrored=True), Motion(180.0)


@dataclass(frozen=True)
class Quarters(asked.CutBy):
    """The recipe of a match about a centre; see `quarters`."""

    kind: str = "centre and butt"
    turn: str = "book"
    slant: float = 45.0
    strip: float = 100.0
    corners: str = "mitre"
    placement: Placement | None = None
    first: int = 1
    order: str | tuple[int, ...] = "sequence"
    turned: str | None = None
    oversize: float = 0.0

    def __post_init__(self) -> None:
        choice("kind", self.kind, KINDS)
        choice("turn", self.turn, tuple(TURNED))
        choice("corners", self.corners, CORNERS)
        turned = asked.turned_of(marked("match"), self.turn, self.turned, TURNED[self.turn])
        settled = {
            "turned": turned,
            "slant": asked.between(marked("slant"), self.slant, FLATTEST, STEEPEST),
            "strip": positive("strip width", self.strip),
            "oversize": asked.oversize_of(self.oversize),
            "first": whole("first leaf", self.first, 1, asked.LAST_LEAF),
            "order": asked.order_of(self.order),
            "placement": asked.placement_of(self.placement),
        }
        if settled["strip"] < LEAST_STRIP:
            raise VeneerError(
                "slivers",
                "Strips {strip} mm wide are slivers; take {least} mm or more.",
                strip=settled["strip"],
                least=LEAST_STRIP,
            )
        for name, value in settled.items():
            object.__setattr__(self, name, value)

    def cells(self, bundle: Leaves, region: Region) -> list[Cell]:
        fields = self._fields(region)
        leaves = self._leaves(bundle, len(fields))
        return [
            Cell(halves, leaf, over != mirrored, MIRROR @ frame if over else frame)
            for leaf, (halves, mirrored, frame) in zip(leaves, fields)
            for over in [self.turned in ("odd", "all")]
        ]

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        return laid(self, bundle, top)

    def _leaves(self, bundle: Leaves, count: int) -> list[int]:
        """The leaf of each field or strip."""
        if self.kind != "herringbone":
            return leaves_for(self, bundle, count, marked("{count} fields"), count)
        have = sum(n >= self.first for n in bundle.numbers)
        if isinstance(self.order, str) and count > have >= 2:
            raise VeneerError(
                "too-few-leaves",
                "Strips {strip} mm wide need {count} leaves and from leaf {first} on there are "
                "{have}; take strips of {wider} mm, an earlier first leaf, or a larger bundle.",
                strip=self.strip,
                count=count,
                first=self.first,
                have=have,
                wider=math.ceil(count // 2 * self.strip / (have // 2)),
            )
        return leaves_for(self, bundle, count, step=2)

    def _fields(self, region: Region) -> list[_Field]:
        if self.kind in BOXES:
            return self._box(region)
        if self.kind == "herringbone":
            return self._herringbone(region)
        return self._quadrants(region)

    # Each gives, position by position, the halves, whether the frame is mirrored, and the frame
    # while the first piece is upright.

    def _quadrants(self, region: Region) -> list[_Field]:
        """Counter-clockwise from the upper right one. Without turning, the grain slants the other
        way in every second one because it is cut so."""
        grain = {"diamond": 180.0 - self.slant, "reverse diamond": self.slant}.get(self.kind, 90.0)
        first = Motion(90.0 - grain)
        second = first @ MIRROR if self.turn == "book" else Motion(grain - 90.0)
        right, upper = Half(180.0, 0.0), Half(270.0, 0.0)
        corners = [(right, upper), (right.other, upper), (right.other, upper.other),
                   (right, upper.other)]  # fmt: skip
        frames = [first, second, first @ HALF_TURN, second @ HALF_TURN]
        if self.kind == "centre and butt" and self.turn == "slip":
            left, low = region.extent(0.0)[0], region.extent(90.0)[0]
            over, up = Motion(dx=-left), Motion(dy=-low)
            frames = [first, over, over @ up, up]
        return [_field(halves, frame) for halves, frame in zip(corners, frames)]

    def _box(self, region: Region) -> list[_Field]:
        """Counter-clockwise from the upper one. In mitres of 45 degrees grain along one side turns
        into grain along the next, as in a mirror."""
        (left, right), (low, high) = region.extent(0.0), region.extent(90.0)
        x, y = (left + right) / 2.0, (low + high) / 2.0
        wide, deep = (right - left) / 2.0, (high - low) / 2.0
        to_middle = Motion(dx=-x, dy=-y)
        mitred = self.corners == "mitre"
        half = wide - deep if mitred else 0.0
        lean = 45.0 if mitred else math.degrees(math.atan2(deep, wide))
        upper = Motion(0.0 if self.kind == "reverse box" else 90.0)
        # The mirror in the mitre at the upper right, through (half, 0).
        over = Motion(-90.0, half, -half, True) if self.turn == "book" else Motion(90.0)
        side = upper @ over
        frames = [upper, side @ HALF_TURN, upper @ HALF_TURN, side]
        halves = _box_halves((x, y), half, lean)
        return [_field(h, frame @ to_middle) for h, frame in zip(halves, frames)]

    def _herringbone(self, region: Region) -> list[_Field]:
        """From the bottom up, right and left by turns; what is left over is shared by the lowest
        and the highest strips."""
        right, across = Half(180.0, 0.0), self.slant + 90.0
        mirrored = region.moved(MIRROR)
        parts = [part for side in (region, mirrored) for part in side.cut([right])]
        ends = [end for part in parts for end in part.extent(across)]
        low, high = (min(ends), max(ends)) if ends else (0.0, 0.0)
        count = max(1, math.ceil((high - low) / self.strip - 1e-9))
        foot = (low + high - count * self.strip) / 2.0
        fields = []
        for k in range(count):
            lines = [foot + (k + j) * self.strip for j in (0, 1)]
            rise = (lines[0] + lines[1]) / 2.0 / cosd(self.slant)
            frame = Motion(90.0 - self.slant) @ Motion(dy=-rise)
            other = Motion(self.slant - 90.0) @ Motion(dy=-rise)
            fields.append(_field((right, *_strip(across, lines, k, count)), frame))
            other = frame @ MIRROR if self.turn == "book" else other
            halves = (right.other, *_strip(180.0 - across, lines, k, count))
            fields.append(_field(halves, other))
        return fields


_Field = tuple[tuple[Half, ...], bool, Motion]


def _field(halves: Sequence[Half], frame: Motion) -> _Field:
    return tuple(halves), frame.mirrored, frame


def _box_halves(middle: Point, half: float, lean: float) -> list[tuple[Half, ...]]:
    """The upper, left, lower and right field, between lines that lean by `lean` degrees. Where
    these do not meet in the middle, a ridge of 2 |half| mm joins them: level where `half` is above
    0, else upright."""
    (x, y), dx, dy = middle, max(half, 0.0), max(-half, 0.0)
    ne, nw = Half.left_of((x + dx, y + dy), lean), Half.left_of((x - dx, y + dy), 180.0 - lean)
    sw, se = Half.left_of((x - dx, y - dy), 180.0 + lean), Half.left_of((x + dx, y - dy), -lean)
    ridge = Half.left_of(middle, 0.0 if half > 0.0 else 90.0)
    upper, left = [ne, nw.other], [nw, sw.other]
    lower, right = [sw, se.other], [se, ne.other]
    if half:
        one, two = (upper, lower) if half > 0.0 else (left, right)
        one.append(ridge)
        two.append(ridge.other)
    return [tuple(halves) for halves in (upper, left, lower, right)]


def _strip(across: float, lines: Sequence[float], k: int, count: int) -> tuple[Half, ...]:
    """Between two lines square to `across`; nothing bounds the first and the last outside, so that
    the oversize belongs to them."""
    lower = (Half(across, lines[0]).other,) if k else ()
    return (*lower, Half(across, lines[1])) if k < count - 1 else lower


def quarters(
    bundle: Leaves,
    top: Top,
    kind: str = "centre and butt",
    turn: str = "book",
    slant: float = 45.0,
    strip: float = 100.0,
    corners: str = "mitre",
    placement: Placement | None = None,
    first: int = 1,
    order: str | Sequence[int] = "sequence",
    turned: str | None = None,
    oversize: float = 0.0,
    cuts: str = CUTS[0],
) -> Layout:
    """A match about a centre on `top`.

    bundle:    a Bundle, or a Stock where no picture is needed.
    kind:      "centre and butt", "box", "reverse box", "diamond", "reverse diamond" or
               "herringbone". Quadrants are counted counter-clockwise from the upper right one, the
               fields of a box from the upper one, the strips of a herringbone in pairs, right and
               left, from the bottom up.
    turn:      "book" (neighbours mirror each other; in a herringbone across the centre line) or
               "slip" (none turned, or all; fields and quadrants are then turned about the centre
               instead, those of a centre and butt moved over).
    slant:     degrees between the grain and the joint across, in diamonds, or between a strip and
               the level, in a herringbone (5 to 85).
    strip:     width in mm of a herringbone's strips; the lowest and the highest share what is left.
    corners:   of a box: "mitre" (45 degrees, so that grain turns the corner as in a mirror) or
               "diagonal" (from corner to corner: grain along all sides, but no mirror). Where the
               sides of the top differ no box has four mirrors: in mitres, those at the upper right
               and the lower left are true, and at the two others the figure is shifted by the
               difference of the sides.
    placement: where on the bundle it is cut; in the middle of the leaves if not given.
    first:     the first leaf.
    order:     "sequence", or the leaf of each position.
    turned:    which positions are turned: "even" or "odd" (book), "none" or "all" (slip).
    oversize:  mm that the blanks reach beyond the finished edge.
    cuts:      how what differs is cut: "stack" (all at once, by what all of it takes together),
               "shape" (a lot of leaves for each outline) or "own" (each piece by itself).

    Raises VeneerError for counts and choices that cannot be; a piece that does not fit its leaf is
    left to `check`.
    """
    recipe = Quarters(
        kind, turn, slant, strip, corners, placement, first, order, turned, oversize, cuts=cuts
    )  # fmt: skip
    return recipe.lay(bundle, top)
