# SPDX-License-Identifier: LGPL-2.1-or-later
"""Outlines of tops as they are given: looked over, put in order, and refused in words."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import astuple
from typing import Any

import numpy as np
from shapely.geometry import LinearRing, Polygon
from shapely.validation import explain_validity

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Line, Segment
from veneerwb.core.outlines.region import joined
from veneerwb.core.plane import LONGEST, SHORTEST, TOUCH
from veneerwb.words import marked, word

LEAST_AREA = 1.0
"""mm2: no top and no opening is smaller."""
_NEAR = 1e-3  # mm: an opening that lies nearer to the edge, or to another, touches it
_KINDS = (Line, Arc, EllipseArc, Curve)
_PLACE = re.compile(r"\[(\S+) (\S+?)\]")

Loops = tuple[Edge, tuple[Edge, ...]]


def of_polygon(polygon: Any) -> Loops:
    """The edge and the holes of a shapely polygon."""
    kind = getattr(polygon, "geom_type", None)
    if kind == "MultiPolygon" and len(polygon.geoms) > 1:
        raise VeneerError(
            "not-one-outline",
            "An outline must be one closed run, and these are {count}: give one of them.",
            count=len(polygon.geoms),
        )
    if kind is not None and polygon.is_empty:
        raise _too_small("outline", 0.0)
    polygon = polygon.geoms[0] if kind == "MultiPolygon" else polygon
    if getattr(polygon, "geom_type", None) != "Polygon":
        raise VeneerError(
            "no-outline", "An outline must be a polygon, and this is a {kind}.",
            kind=_called(polygon),
        )
    outer, *holes = map(_straights, (polygon.exterior, *polygon.interiors))
    return of_runs(outer, holes)


def of_runs(edge: Iterable[Segment], holes: Iterable[Iterable[Segment]] = ()) -> Loops:
    """The edge and the holes of runs of segments, the edge made counter-clockwise and the holes
    clockwise; VeneerError where they are no outline."""
    outer = _turned(_closed(edge, marked("outline")), "outline", 1.0)
    holes = holes if isinstance(holes, Iterable) else [holes]
    inner = tuple(_turned(_closed(hole, marked("opening")), "opening", -1.0) for hole in holes)
    _apart(outer, inner)
    return outer, inner


def holes_within(
    field: Edge, edge: Edge, holes: Sequence[Edge], width: float
) -> tuple[Edge, ...]:
    """Those holes of a top with this edge that lie in its field inside a border; VeneerError where
    one lies across the border's inner edge."""
    area, whole = edges.polygon(field), edges.polygon(edge)
    kept = []
    for hole in holes:
        shape = edges.polygon(hole)
        if area.buffer(-_NEAR).contains(shape):
            kept.append(hole)
        elif area.buffer(_NEAR).intersects(shape):
            raise _across_border(whole, shape, width)
    return tuple(kept)


def _across_border(whole: Polygon, hole: Polygon, width: float) -> VeneerError:
    room = whole.exterior.distance(hole)
    x, y = hole.representative_point().coords[0]
    return VeneerError(
        "opening-across",
        "The inner edge of a border {width} mm wide runs through the opening near ({x}, {y}): make "
        "the border narrower than {most} mm, or move the opening.",
        width=width,
        x=round(x, 1),
        y=round(y, 1),
        most=math.floor(10.0 * room) / 10.0,
    )


def _straights(ring: LinearRing) -> Edge:
    """The run of straights through a ring's points, the last of which is its first."""
    return edges.straights([p[:2] for p in ring.coords[:-1]])


def _closed(run: Iterable[Segment], what: str) -> Edge:
    """A run without points in it, gaps under SHORTEST bridged; VeneerError where it is open."""
    segments = list(run) if isinstance(run, Iterable) else [run]
    odd = [s for s in segments if not isinstance(s, _KINDS)]
    if odd:
        raise VeneerError(
            "no-outline", "The {what} must be of segments, and this is a {kind}.",
            what=word(what), kind=_called(odd[0]),
        )  # fmt: skip
    for segment in segments:
        _in_range(segment, what)
    segments = [s for s in segments if s.length > TOUCH]
    if not segments:
        raise _too_small(what, 0.0)
    out: list[Segment] = []
    for segment, following in zip(segments, [*segments[1:], segments[0]]):
        out.append(segment)
        gap = math.dist(segment.end, following.start)
        if gap > SHORTEST:
            x, y = segment.end
            raise VeneerError(
                "open-outline",
                "The {what} is open by {gap} mm near ({x}, {y}); close it there.",
                what=word(what),
                gap=gap,
                x=x,
                y=y,
            )
        if gap > TOUCH:
            out.append(Line(segment.end, following.start, segment.role))
    return joined(out)


def _is_plain(segment: Segment) -> bool:
    """Whether its sizes are finite numbers and its places two of them each."""
    *values, _ = astuple(segment)  # the last is the role
    try:
        found = [np.asarray(value, float) for value in values]
    except (TypeError, ValueError):
        return False
    return all(np.isfinite(v).all() and v.shape in ((), (2,)) for v in found)


def _in_range(segment: Segment, what: str) -> None:
    if not _is_plain(segment):
        raise VeneerError(
            "not-a-number", "The {what} has a place or a size that is no plain number.",
            what=word(what),
        )
    sizes = [getattr(segment, name, 1.0) for name in ("radius", "along", "across")]
    if min(sizes) < TOUCH:
        raise VeneerError(
            "no-radius",
            "The {what} has an arc with a radius of {radius} mm; draw it larger.",
            what=word(what),
            radius=min(sizes),
        )
    if abs(getattr(segment, "sweep", 0.0)) > 360.0 + 1e-6:
        raise VeneerError(
            "crosses-itself",
            "The {what} has an arc of {sweep} degrees, which lies on itself; give at most 360.",
            what=word(what),
            sweep=segment.sweep,
        )
    reach = segment.reach
    if reach > LONGEST:
        raise VeneerError(
            "out-of-range",
            "The {what} reaches {reach} mm from the origin; the most is {most} mm.",
            what=word(what),
            reach=reach,
            most=LONGEST,
        )


def _turned(loop: Edge, what: str, sense: float) -> Edge:
    """A loop that runs counter-clockwise (`sense` 1) or clockwise (-1)."""
    shape = Polygon(points) if len(points := edges.points(loop)) > 2 else Polygon()
    size = edges.area(loop)
    if not shape.is_empty and not shape.is_valid and shape.convex_hull.area >= LEAST_AREA:
        place = _PLACE.search(explain_validity(shape))
        x, y = (round(float(v), 1) for v in place.groups()) if place else loop[0].start
        raise VeneerError(
            "crosses-itself",
            "The {what} crosses or touches itself near ({x}, {y}); draw it without.",
            what=word(what),
            x=x,
            y=y,
        )
    if abs(size) < LEAST_AREA:
        raise _too_small(what, abs(size))
    if size * sense > 0.0:
        return loop
    return tuple(segment.reversed() for segment in reversed(loop))


def _apart(edge: Edge, holes: Sequence[Edge]) -> None:
    """VeneerError unless the holes lie inside the edge, clear of it and of each other."""
    area = edges.polygon(edge)
    shapes = [edges.polygon(hole) for hole in holes]
    for k, shape in enumerate(shapes):
        if any(other.contains(shape) for other in shapes if other is not shape):
            x, y = shape.representative_point().coords[0]
            raise VeneerError(
                "island",
                "The outline near ({x}, {y}) lies within an opening, and a top is of one piece; "
                "leave it out, or make it a top of its own.",
                x=round(x, 1),
                y=round(y, 1),
            )
        others = [LinearRing(area.exterior), *shapes[:k]]
        if not area.contains(shape) or min(other.distance(shape) for other in others) < _NEAR:
            x, y = shape.representative_point().coords[0]
            raise VeneerError(
                "opening-outside",
                "The opening near ({x}, {y}) lies outside the outline or touches it or another "
                "opening; move it, or cut the outline there.",
                x=round(x, 1),
                y=round(y, 1),
            )


def _too_small(what: str, size: float) -> VeneerError:
    return VeneerError(
        "no-area",
        "The {what} encloses {size} mm2; it must be at least {least} mm2.",
        what=word(what),
        size=size,
        least=LEAST_AREA,
    )


def _called(thing: Any) -> str:
    return str(getattr(thing, "geom_type", None) or type(thing).__name__)
