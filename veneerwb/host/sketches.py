# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sketches, wires and planar faces of the document as outlines of tops.

An outline is read in a frame of its own: x and y are a sketch's or the object's own where the
outline lies parallel to its xy plane, else x runs level and z away from the material. The origin is
moved to the centroid of what the outer edge encloses (openings do not shift it), or stays where the
object's own is.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Any, NamedTuple

import FreeCAD
import numpy as np
import Part
from FreeCAD import Vector

from veneerwb.core.facing import SAME_PLANE
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines import given as outline_tops
from veneerwb.core.outlines.curves import Curve, EllipseArc, fitted
from veneerwb.core.outlines.edge import Arc, Edge, Line, Segment
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import Motion
from veneerwb.host.faces import is_flat, refuse_endless
from veneerwb.host.objects.base import Refused
from veneerwb.words import say, word

FINE = 7
"""Decimals of the centroid in mm: hosts differ beyond them."""


class Outline(NamedTuple):
    """The loops of a top (its edge, its openings) and the placement of its frame in the document
    (or in what holds the object)."""

    loops: tuple[Edge, tuple[Edge, ...]]
    placement: Any


def outline_of(obj: Any) -> Outline:
    """The outline that a Match is linked to by OutlineOf. Refused or VeneerError where that is
    none."""
    source, shape = _linked(obj)
    frame = _frame(source, shape)
    outer, holes = _sorted(source, _runs(shape, frame))
    middle = _middle(outer) if obj.OutlineCentre == "centroid" else (0.0, 0.0)
    away = Motion(dx=-middle[0], dy=-middle[1])
    region = Region(outer, holes).moved(away)
    onto = FreeCAD.Placement(Vector(*middle, 0.0), FreeCAD.Rotation())
    return Outline((region.outer, region.holes), _into_document(source, frame).multiply(onto))


def _linked(obj: Any) -> tuple[Any, Any]:
    """The object that is linked and what of its shape is meant."""
    source, parts = (obj.OutlineOf or (None, ()))[:2]
    if source is None:
        raise Refused(
            word(
                "The top is an outline and none is chosen; choose a sketch, a wire or a planar "
                "face."
            )
        )
    names = [name for name in parts if name]
    shape = getattr(source, "Shape", None)
    if names:
        found = [_part(source, name) for name in names]
        if len(found) > 1 and any(one.ShapeType == "Face" for one in found):
            raise Refused(say(
                "{count} parts of {name} are chosen; choose one face.",
                count=len(found), name=source.Label,
            ))
        shape = found[0] if len(found) == 1 else Part.Compound(found)
    if shape is None or shape.isNull() or not shape.Edges:
        raise Refused(say(
            "{name} has no lines; draw one closed outline in it.",
            name=source.Label,
        ))
    if len(shape.Faces) > 1:
        raise Refused(
            say(
                "{name} has {count} faces; choose the one that is to be the top.",
                name=source.Label, count=len(shape.Faces),
            )
        )
    refuse_endless(source, shape)
    return source, shape.Faces[0] if shape.Faces else shape


def _part(source: Any, name: str) -> Any:
    try:
        found = source.getSubObject(name)
    except Exception:  # each host raises another kind
        found = None
    if found is None or found.isNull():
        raise Refused(say(
            "{name} has no {part} any more; choose its outline anew.",
            name=source.Label, part=name,
        ))
    return found


def loops_in(source: Any, shape: Any, frame: Any) -> tuple[Edge, tuple[Edge, ...]]:
    """The edge and the openings of a flat shape of `source` in a frame given, a placement."""
    return _sorted(source, _runs(shape, frame))


# --- frame -------------------------------------------------------------------------------------


def _frame(source: Any, shape: Any) -> Any:
    """The placement (in what holds `source`) of the frame that the outline is read in."""
    own = getattr(source, "Placement", FreeCAD.Placement())
    plane = shape.findPlane(SAME_PLANE) if shape.ShapeType != "Face" or is_flat(shape) else None
    if plane is None and len(shape.Edges) == 1 and isinstance(_curve_of(shape.Edges[0]), Part.Line):
        raise Refused(say(
            "{name} is a straight line; draw an outline that closes.",
            name=source.Label,
        ))
    if plane is None:
        raise Refused(
            say(
                "{name} does not lie in one plane; a top is flat, so draw its outline flat.",
                name=source.Label,
            )
        )
    normal, up = plane.Axis, own.Rotation.multVec(Vector(0.0, 0.0, 1.0))
    if shape.ShapeType == "Face":
        normal = shape.normalAt(*_inside_range(shape))
    else:
        normal = normal if normal.dot(up) >= 0.0 else -normal
    if (normal - up).Length < 1e-9:
        turn, at = own.Rotation, own.Base
    else:
        turn, at = _level(normal), plane.Position
    return FreeCAD.Placement(at + normal * normal.dot(plane.Position - at), turn)


def _inside_range(face: Any) -> tuple[float, float]:
    u0, u1, v0, v1 = face.ParameterRange
    return (u0 + u1) / 2.0, (v0 + v1) / 2.0


def _level(normal: Any) -> Any:
    """The rotation whose z is `normal` and whose x is level."""
    x = Vector(0.0, 0.0, 1.0).cross(normal)
    x = x if x.Length > 1e-9 else Vector(1.0, 0.0, 0.0)
    return FreeCAD.Rotation(x, normal.cross(x), normal, "ZXY")


def _into_document(source: Any, frame: Any) -> Any:
    """A placement in what holds `source` as one in the document."""
    own = getattr(source, "Placement", None)
    if own is None or not hasattr(source, "getGlobalPlacement"):
        return frame
    return source.getGlobalPlacement().multiply(own.inverse()).multiply(frame)


# --- runs --------------------------------------------------------------------------------------


def _runs(shape: Any, frame: Any) -> list[list[Segment]]:
    """The connected runs of a shape's edges, head to tail."""
    back = frame.inverse()
    return [_chained([_segments(e, back) for e in run]) for run in Part.sortEdges(shape.Edges)]


def _chained(parts: Sequence[Sequence[Segment]]) -> list[Segment]:
    """Runs made one, each turned so that it begins where the one before it ends."""
    out = list(parts[0])
    if len(parts) > 1:
        ends = [parts[1][0].start, parts[1][-1].end]
        if min(_gap(out[0].start, e) for e in ends) < min(_gap(out[-1].end, e) for e in ends):
            out = _reversed(out)
    for part in parts[1:]:
        there = out[-1].end
        back = _gap(there, part[-1].end) < _gap(there, part[0].start)
        out += _reversed(part) if back else part
    return out


def _gap(a: Any, b: Any) -> float:
    return math.dist(a, b)


def _reversed(run: Iterable[Segment]) -> list[Segment]:
    return [segment.reversed() for segment in reversed(list(run))]


def _sorted(source: Any, runs: list[list[Segment]]) -> tuple[Edge, tuple[Edge, ...]]:
    """The edge and its openings; each run must be closed, and all but one lie in that one."""
    loops = [outline_tops.of_runs(run)[0] for run in runs]
    outer = max(loops, key=edges.area)
    area = edges.polygon(outer)
    holes = [loop for loop in loops if loop is not outer]
    for hole in holes:
        if not area.intersects(edges.polygon(hole).representative_point()):
            raise Refused(
                say(
                    "{name} holds two outlines beside each other; leave one, or choose the edges "
                    "of one.",
                    name=source.Label,
                )
            )
    return outline_tops.of_runs(outer, holes)


def _middle(outer: Edge) -> tuple[float, float]:
    """The centroid of what an edge encloses: as the host measures it, for that is exact."""
    from veneerwb.host import solids

    centre = solids.face_of(Region(outer)).CenterOfMass
    return round(centre.x, FINE) + 0.0, round(centre.y, FINE) + 0.0


# --- segments ----------------------------------------------------------------------------------


def _segments(edge: Any, back: Any) -> list[Segment]:
    """An edge as segments in the frame, from its first parameter to its last."""
    first, last = edge.ParameterRange
    curve = _curve_of(edge)
    if isinstance(curve, Part.Line | Part.LineSegment):
        return [Line(_flat(back, edge.valueAt(first)), _flat(back, edge.valueAt(last)))]
    if isinstance(curve, Part.Circle):
        return [_arc(curve, first, last, back)]
    if isinstance(curve, Part.Ellipse):
        return [_ellipse_arc(curve, first, last, back)]
    return _curves(curve.toBSpline(first, last), back)


def _curve_of(edge: Any) -> Any:
    try:
        return edge.Curve
    except TypeError:  # the pole of a ball, the tip of a cone
        raise Refused(say(
            "The outline has an edge that is but a point; draw it without that."
        )) from None


def _flat(back: Any, point: Any) -> tuple[float, float]:
    there = back.multVec(point)
    if abs(there.z) > SAME_PLANE:
        raise Refused(word(
            "The outline does not lie in one plane; a top is flat, so draw it flat."
        ))
    return there.x, there.y


def _heading(back: Any, curve: Any) -> tuple[float, float]:
    """The direction in degrees of a circle's or ellipse's parameter 0 from its centre, and 1.0
    where it runs counter-clockwise, else -1.0."""
    along = back.Rotation.multVec(curve.value(0.0) - curve.Center)
    sense = back.Rotation.multVec(curve.Axis).z
    return math.degrees(math.atan2(along.y, along.x)), math.copysign(1.0, sense)


def _arc(curve: Any, first: float, last: float, back: Any) -> Arc:
    turn, sense = _heading(back, curve)
    begin = turn + sense * math.degrees(first)
    sweep = sense * math.degrees(last - first)
    return Arc(_flat(back, curve.Center), curve.Radius, begin, sweep)


def _ellipse_arc(curve: Any, first: float, last: float, back: Any) -> EllipseArc:
    turn, sense = _heading(back, curve)
    return EllipseArc(
        _flat(back, curve.Center), curve.MajorRadius, curve.MinorRadius,
        turn, sense * math.degrees(first), sense * math.degrees(last - first),
    )  # fmt: skip


def _curves(spline: Any, back: Any) -> list[Segment]:
    """A B-spline as cubic curves: exact where it is one of a degree up to 3 without weights."""
    if spline.isPeriodic():
        spline.setNotPeriodic()
    poles = tuple(_flat(back, pole) for pole in spline.getPoles())
    return list(_fitted(
        poles, tuple(spline.getWeights()), tuple(spline.getKnots()),
        tuple(spline.getMultiplicities()), spline.Degree,
    ))  # fmt: skip


@lru_cache(maxsize=64)
def _fitted(
    poles: tuple[Any, ...], weights: tuple[float, ...], knots: tuple[float, ...],
    times: tuple[int, ...], degree: int,
) -> tuple[Curve, ...]:
    spline = Part.BSplineCurve()
    spline.buildFromPolesMultsKnots(
        [Vector(*pole, 0.0) for pole in poles], times, knots, False, degree, weights
    )
    if degree <= 3 and max(weights) - min(weights) < 1e-12:
        spline.increaseDegree(3)
        runs = ([(p.x, p.y) for p in bezier.getPoles()] for bezier in spline.toBezier())
        return tuple(Curve(a, c, d, b) for a, c, d, b in runs)
    path = _path(spline)
    return tuple(curve for a, b in zip(knots, knots[1:]) for curve in fitted(path, a, b))


def _path(spline: Any) -> Any:
    """Parameters to points and slopes, N x 2 each."""
    first, last = spline.FirstParameter, spline.LastParameter

    def path(parameters: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        found = [spline.getD1(min(max(t, first), last)) for t in parameters.tolist()]
        points, slopes = zip(*found)
        return np.array([(p.x, p.y) for p in points]), np.array([(s.x, s.y) for s in slopes])

    return path
