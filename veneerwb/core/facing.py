# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf laid on flat faces in space: which way up it lies, where, and what the checks find.

A plane is seen from outside. Its frame has its origin at the foot of the perpendicular from the
world's origin; up is the world's z laid into the plane, or y where the plane is level. Faces of one
plane share one frame, so that the figure runs on from face to face at true scale.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from shapely.geometry import Point, Polygon, box
from shapely.ops import unary_union

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Leaf, Side
from veneerwb.core.listing import all_of, put_in
from veneerwb.core.plane import TOUCH, Motion, finite
from veneerwb.words import marked, say, word

LEVEL = 1e-4
"""Sine of the slope below which a plane counts as level."""
SAME_WAY = 1e-4
"""Sine of the angle between two planes below which they may be one."""
SAME_PLANE = 0.01
"""mm that points of a face, or of an outline, may lie off a plane and still be in it."""
FURTHEST = 1e6
"""mm and degrees: further no leaf is moved or turned."""
MIRROR = Motion(mirrored=True)


@dataclass(frozen=True, eq=False)
class Frame:
    """Plane coordinates (mm): `right`, `up` and the outward `normal` are unit vectors, right-handed
    in this order; `origin` lies in the plane."""

    origin: np.ndarray
    right: np.ndarray
    up: np.ndarray
    normal: np.ndarray

    @staticmethod
    def facing(normal: Sequence[float], point: Sequence[float]) -> Frame:
        """The frame of the plane through `point` whose outside is where `normal` points."""
        out = _unit(normal)
        level = np.hypot(out[0], out[1]) < LEVEL
        towards = np.array((0.0, 1.0, 0.0) if level else (0.0, 0.0, 1.0))
        up = _unit(towards - (towards @ out) * out)
        return Frame(out * (out @ np.asarray(point, float)), np.cross(up, out), up, out)

    def flat(self, points: Any) -> np.ndarray:
        """Points in space, N x 3, in this plane: N x 2."""
        return (np.asarray(points, float) - self.origin) @ np.column_stack((self.right, self.up))

    def off(self, points: Any) -> np.ndarray:
        """How far points in space, N x 3, lie over the plane (mm)."""
        return (np.asarray(points, float) - self.origin) @ self.normal

    def holds(self, normal: Sequence[float], points: Any) -> bool:
        """Whether a face with that outward normal and those points lies in this plane."""
        out = _unit(normal)
        same_way = out @ self.normal > 0.0 and (
            np.linalg.norm(np.cross(out, self.normal)) < SAME_WAY
        )
        return bool(same_way and np.abs(self.off(points)).max() < SAME_PLANE)


def _unit(vector: Sequence[float]) -> np.ndarray:
    array = np.asarray(vector, float)
    return array / np.linalg.norm(array) + 0.0  # no minus zeros


@dataclass(frozen=True, eq=False)
class Face:
    """A flat face in space: its `name` and `owner` for sentences, its outward `normal`, and its
    `rings` (N x 3 arrays, mm), in any order."""

    name: str
    owner: str
    normal: Sequence[float]
    rings: Sequence[np.ndarray]

    def outline(self, frame: Frame) -> Any:
        """The face in plane coordinates (shapely); the largest ring is its rim, the others are
        holes."""
        rim, *holes = sorted(map(Polygon, map(frame.flat, self.rings)), key=lambda ring: -ring.area)
        area = Polygon(rim.exterior, [hole.exterior for hole in holes])
        return area if area.is_valid else area.buffer(0)


@dataclass(frozen=True, eq=False)
class Plane:
    """Faces in one plane: their numbers (1.. in the order chosen), what they are called, and their
    outlines (shapely, plane mm)."""

    frame: Frame
    numbers: tuple[int, ...]
    words: str
    outlines: tuple[Any, ...]

    @cached_property
    def middle(self) -> tuple[float, float]:
        """The middle of the rectangle that just holds the faces, upright in the plane."""
        return _middle(unary_union(self.outlines))


def _middle(area: Any) -> tuple[float, float]:
    x0, y0, x1, y1 = area.bounds
    return (x0 + x1) / 2, (y0 + y1) / 2


def _words(faces: Sequence[Face]) -> str:
    """ "Face5, Face6 and Face9 of Cabinet and Face1 of Shelf" """
    by_owner: dict[str, list[str]] = {}
    for face in faces:
        by_owner.setdefault(face.owner, []).append(face.name)
    return all_of([
        say("{faces} of {owner}", faces=all_of(names), owner=owner)
        for owner, names in by_owner.items()
    ])


def planes(faces: Sequence[Face]) -> tuple[Plane, ...]:
    """The faces by plane, in the order of each plane's first face."""
    found: list[tuple[Frame, list[int]]] = []
    for k, face in enumerate(faces, start=1):
        points = np.concatenate(list(face.rings))
        for frame, numbers in found:
            if frame.holds(face.normal, points):
                numbers.append(k)
                break
        else:
            found.append((Frame.facing(face.normal, points.mean(axis=0)), [k]))
    return tuple(
        Plane(
            frame,
            tuple(numbers),
            _words([faces[k - 1] for k in numbers]),
            tuple(faces[k - 1].outline(frame) for k in numbers),
        )
        for frame, numbers in found
    )


@dataclass(frozen=True)
class Lie:
    """How a leaf lies on a plane, its middle on the middle of the faces.

    `grain`: its direction, degrees counter-clockwise from up. `across` and `along`: how far the
    leaf is then moved (mm), to the right and upwards seen with the grain upright. `turned`: it
    shows its back.
    """

    grain: float = 0.0
    across: float = 0.0
    along: float = 0.0
    turned: bool = False

    def __post_init__(self) -> None:
        for name in (marked("grain"), marked("across"), marked("along")):
            value = finite(name, getattr(self, name))
            if abs(value) > FURTHEST:
                raise VeneerError(
                    "out-of-range",
                    "The {name} cannot be {value}; give a number from {least} to {most}.",
                    name=word(name), value=value, least=-FURTHEST, most=FURTHEST,
                )

    def upright(self, middle: tuple[float, float]) -> Motion:
        """Plane mm to mm on the leaf as it is seen, grain upright, its middle at the origin."""
        to_middle = Motion(dx=-middle[0], dy=-middle[1])
        return Motion(dx=-self.across, dy=-self.along) @ Motion(-self.grain) @ to_middle


@dataclass(frozen=True)
class Faced:
    """A leaf on faces: the `side` of `leaf` that shows, how it lies, and the faces by plane."""

    leaf: Leaf
    side: Side
    lie: Lie
    planes: tuple[Plane, ...]

    def __post_init__(self) -> None:
        if self.leaf.usable.is_empty:
            raise VeneerError(
                "nothing-usable",
                "Nothing of leaf {leaf} may be used; outline its usable area again.",
                leaf=self.leaf.number,
            )

    def onto_leaf(self, plane: Plane) -> Motion:
        """Plane mm to mm on the leaf, as seen from its face: mirrored where it is turned."""
        x, y = _middle(self.leaf.usable)
        seen = self.lie.upright(plane.middle)
        return Motion(dx=x, dy=y) @ (MIRROR @ seen if self.lie.turned else seen)

    def onto_photo(self, plane: Plane) -> Motion:
        """Plane mm to mm on the photograph of the side that shows."""
        return self.side.view @ self.side.register.inverse() @ self.onto_leaf(plane)

    @property
    def findings(self) -> list[Finding]:
        """What is to be said of the faces on this leaf, the gravest first."""
        found = [one for plane in self.planes for one in self._on(plane)]
        if self.lie.turned and self.side.source == "own face":
            found.append(
                Finding(
                    "back-not-photographed",
                    "note",
                    "The back of leaf {leaf} was not photographed; its face is shown, mirrored.",
                    values={"leaf": self.leaf.number},
                )
            )
        return sorted(found, key=lambda one: ("stop", "warn", "note").index(one.level))

    def _on(self, plane: Plane) -> Iterator[Finding]:
        motion = self.onto_leaf(plane)
        area = unary_union([motion.apply_to(outline) for outline in plane.outlines])
        x0, y0, x1, y1 = area.bounds
        values = {
            "faces": plane.words,
            "leaf": self.leaf.number,
            "width": round(x1 - x0, 1),
            "length": round(y1 - y0, 1),
        }
        yield from self._off_leaf(plane, area, values)
        faults = [f for f in self.leaf.faults if area.intersection(f.outline).area > TOUCH]
        if faults:
            kinds = ", ".join(word(kind) for kind in sorted({fault.kind for fault in faults}))
            yield Finding(
                "fault-seen",
                "stop",
                "Faults ({kinds}) of leaf {leaf} will be seen on {faces}.",
                "Move the leaf, or take another.",
                {**values, "kinds": kinds},
                plane.numbers,
            )
        told = marked(
            "{faces} take {width} mm across and {length} mm along the grain of leaf {leaf}."
        )
        if len(plane.numbers) == 1:
            told = marked(
                "{faces} takes {width} mm across and {length} mm along the grain of leaf {leaf}."
            )
        yield Finding(
            "leaf-taken",
            "note",
            told,
            "",
            values,
            plane.numbers,
        )

    def _off_leaf(self, plane: Plane, area: Any, values: dict[str, Any]) -> Iterator[Finding]:
        usable = self.leaf.usable
        beyond = area.difference(usable.buffer(TOUCH, join_style=2))
        if beyond.is_empty:
            return
        sides = self._beyond(area, usable)
        where = ", ".join(word(_BEYOND[side]) for side in sides)
        width, length = self.side.image.size
        on_photo = (self.side.view @ self.side.register.inverse()).apply_to(area)
        off_photo = not box(0.0, 0.0, width, length).buffer(TOUCH, join_style=2).covers(on_photo)
        told = word(_REACH[len(plane.numbers) == 1, bool(where), off_photo])
        if where:
            told = put_in(told, where=where)
        yield Finding(
            "off-leaf",
            "stop",
            word(told),
            "Move the leaf, turn the grain, or take a larger leaf.",
            {**values, **sides, "overhang": _reach(beyond, usable)},
            plane.numbers,
        )

    def _beyond(self, area: Any, usable: Any) -> dict[str, float]:
        """How far the faces reach past the usable area's bounds, by side, seen with the grain
        upright."""
        x0, y0, x1, y1 = area.bounds
        u0, v0, u1, v1 = usable.bounds
        left, right = (x1 - u1, u0 - x0) if self.lie.turned else (u0 - x0, x1 - u1)
        over = {"left": left, "right": right, "below": v0 - y0, "above": y1 - v1}
        return {side: far for side, far in over.items() if far > TOUCH}


_BEYOND = {
    "left": marked("{left} mm left"),
    "right": marked("{right} mm right"),
    "below": marked("{below} mm below"),
    "above": marked("{above} mm above"),
}
_REACH = {
    (True, True, True): marked(
        "{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off "
        "the photograph its edge is repeated."
    ),
    (True, True, False): marked(
        "{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where})."
    ),
    (True, False, True): marked(
        "{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}; off the "
        "photograph its edge is repeated."
    ),
    (True, False, False): marked(
        "{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}."
    ),
    (False, True, True): marked(
        "{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off "
        "the photograph its edge is repeated."
    ),
    (False, True, False): marked(
        "{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where})."
    ),
    (False, False, True): marked(
        "{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}; off the "
        "photograph its edge is repeated."
    ),
    (False, False, False): marked(
        "{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}."
    ),
}
"""One face, sides known, off the photograph: what is said."""


def _reach(beyond: Any, usable: Any) -> float:
    """How far the parts beyond the usable area lie from it (mm)."""
    parts = [part for part in getattr(beyond, "geoms", [beyond]) if part.geom_type == "Polygon"]
    points = [Point(p) for part in parts for p in part.exterior.coords]
    points += [part.representative_point() for part in parts]
    return max(usable.distance(point) for point in points)
