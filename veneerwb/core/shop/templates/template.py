# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template at 1:1: an outline to cut, with all that has to stand on it, as values.

Its frame is in mm: the tip, where it has one, on the origin with the axis upwards (a tip that is
square or blunt: with the first seam to the right); else its lowest and leftmost extent on the
origin and the grain upwards. Outlines run counter-clockwise as seen, so
that a tool which follows them runs on their right, outside. `make` makes templates of a
layout.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property

from shapely.geometry import Polygon

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line, Point
from veneerwb.core.outlines.offset import parallel
from veneerwb.core.plane import TOUCH, Motion, polar
from veneerwb.core.shop.setout import STEP, SetOut, set_out
from veneerwb.core.shop.templates.over import Over, seams_of, tip_of

FACE, BACK = "face", "back"
STACK, PIECE, SINGLE = "stack", "piece", "single"
"""Kinds: laid on a stack; on the leaf of a piece that differs, its face up; on a single leaf with
the show face up."""
_CODES = {STACK: "cut", PIECE: "piece", SINGLE: "single"}
BLUNT = 89.99
"""Degrees: a tip of more lies with its first seam level, for that takes less room."""


def axis_of(angle: float) -> float:
    """The direction in degrees of a template's axis, by the angle of its tip as finished."""
    return 90.0 if angle < BLUNT else angle / 2.0


@dataclass(frozen=True)
class Pin:
    """A hole for a pin: its middle (bundle mm where it is given, template mm where it is drawn), a
    name, its diameter in mm."""

    at: Point
    name: str = ""
    diameter: float = 3.0

    def moved(self, by: Motion) -> Pin:
        return replace(self, at=by.point(self.at))


@dataclass(frozen=True)
class Template:
    """An outline to cut.

    `cut` is that outline, `nets` the finished outlines that lie in it (one, but where a cut serves
    pieces that differ) and `holes` their openings, which are cut after pressing; segments have the
    roles seam and rim. `overs` has the Over of each seam edge of the cut, counter-clockwise;
    `oversize` in mm is that of the rim, where it is known. `tip` is where its seams meet as
    finished, `angle` the angle there in degrees. `grain` is the direction of the grain in degrees,
    towards the upper end of the leaves. `up` is the side of the leaf that is up, "face" or "back".
    `positions`, `leaves` and `turned` (those of the positions that show the back) are what it
    serves. `tool` is the width in mm of what cuts, 0 where that does not matter. `number` is that
    of the cut, or of the first piece. `base` in mm is what the angle is set out over, 0 where that
    is not chosen. `title` names its files, `shown` is what it is called on paper.
    """

    kind: str
    number: int
    title: str
    cut: Edge
    nets: tuple[Edge, ...]
    holes: tuple[Edge, ...]
    overs: tuple[Over, ...]
    oversize: float | None
    tip: Point | None
    angle: float | None
    grain: float
    up: str
    positions: tuple[int, ...]
    leaves: tuple[int, ...]
    turned: tuple[int, ...]
    tool: float
    pins: tuple[Pin, ...]
    name: str
    revision: str
    rests: str = ""
    base: float = 0.0
    shown: str = ""

    @property
    def code(self) -> str:
        """A short name for files and pages: "cut-1", "piece-3", "single-3"."""
        return f"{_CODES[self.kind]}-{self.number}"

    @property
    def area(self) -> float:
        """Exact area that is cut, mm2."""
        return edges.area(self.cut)

    @cached_property
    def shape(self) -> Polygon:
        """The outline to cut as a shapely polygon, derived from `cut`."""
        return edges.polygon(self.cut)

    @cached_property
    def tool_line(self) -> Edge | None:
        """The way of the tool's middle, half its width outside the cut; None without a width."""
        return parallel(self.cut, self.tool / 2.0) if self.tool else None

    @property
    def cut_angle(self) -> float | None:
        """The angle that is cut, degrees."""
        if self.angle is None:
            return None
        seams = (self.cut[k] for k in seams_of(self.cut))
        turned = (o.angle / 2.0 for o, s in zip(self.overs, seams) if isinstance(s, Line))
        return self.angle + math.fsum(turned)

    @property
    def tip_cut(self) -> Point | None:
        """Where the seams meet as cut: further out than the tip where they are over by a width."""
        return tip_of(self.cut)

    @property
    def shift(self) -> float:
        """How far over by a width moves the tip out, mm."""
        if self.tip is None or self.tip_cut is None:
            return 0.0
        away = math.dist(self.tip, self.tip_cut)
        return away if away > 1000.0 * TOUCH else 0.0

    @property
    def axis(self) -> Line | None:
        """From the tip along the middle to the furthest that the cut reaches there."""
        if self.tip is None or self.angle is None:
            return None
        turn, (x, y) = axis_of(self.angle), self.tip
        ux, uy = polar(1.0, turn)
        normal = turn + 90.0
        offset = y * ux - x * uy
        places = [s.at(share) for s in self.cut for share in s.crossings(normal, offset)]
        places += [p for p in (s.start for s in self.cut)
                   if abs((p[1] - y) * ux - (p[0] - x) * uy) <= TOUCH]
        far = max(((p[0] - x) * ux + (p[1] - y) * uy for p in places), default=0.0)
        return Line(self.tip, (x + far * ux, y + far * uy)) if far > TOUCH else None

    def set_out(self, step: float = STEP) -> SetOut | None:
        """How the angle that is cut is set out, over `base`, or a multiple of `step` mm that
        reaches as far as the seams; None where no angle is."""
        if self.cut_angle is None or self.cut_angle >= BLUNT:
            return None
        side = max(self.cut[k].length for k in seams_of(self.cut))
        base = self.base or step * math.ceil(side / step - 1e-9)
        return set_out(self.cut_angle, side, base)

    @property
    def extents(self) -> tuple[float, float, float, float]:
        """Least x, least y, most x, most y of all that is drawn, mm."""
        outer = self.tool_line or self.cut
        (x0, x1), (y0, y1) = (edges.extent(outer, turn) for turn in (0.0, 90.0))
        for pin in self.pins:
            r, (x, y) = pin.diameter / 2.0, pin.at
            x0, y0, x1, y1 = min(x0, x - r), min(y0, y - r), max(x1, x + r), max(y1, y + r)
        return x0, y0, x1, y1
