# SPDX-License-Identifier: LGPL-2.1-or-later
"""A run of panels in the document: faces in one plane as the core's panels, laid from one bundle or
two, and the veneer on them as solids."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import Part
from FreeCAD import Matrix, Placement, Rotation, Vector

from veneerwb.core import Top, VeneerError
from veneerwb.core.facing import SAME_PLANE, SAME_WAY, Face, Frame
from veneerwb.core.leaf import Leaves, ranges
from veneerwb.core.runs import LaidRun, Panel, Run, elevation, joined
from veneerwb.core.runs.grain import grain_of
from veneerwb.host import faces, laying, sketches, solids, values
from veneerwb.host.objects.base import Refused
from veneerwb.words import figure, in_unit, say, word

Links = Sequence[tuple[Any, str]]


@dataclass(frozen=True)
class OnFaces:
    """A run as it lies on faces: the core's `laid`, the `frame` of the faces' plane, and the
    `links` to the faces in the order chosen."""

    laid: LaidRun
    frame: Frame
    links: Links

    def place(self, obj: Any, panel: Panel) -> Any:
        """Where a panel's own frame lies as what holds `obj` sees it."""
        moved = Placement(Vector(*panel.place, 0.0), Rotation())
        return faces.above(obj).inverse().multiply(_placement(self.frame)).multiply(moved)

    def compound(self, obj: Any) -> Any:
        """One compound, one solid a piece, in the order of panels and positions in them; the back
        of the veneer lies on the faces."""
        found = []
        for panel, layout in zip(self.laid.panels, self.laid.layouts):
            place = self.place(obj, panel)
            for solid in solids.compound(layout).Solids:
                solid.Placement = place.multiply(solid.Placement)
                found.append(solid)
        return Part.Compound(found)

    def shape_mark(self, obj: Any) -> str:
        """A mark of everything that `compound` reads, so that equal marks mean equal shapes."""
        places = [self.place(obj, panel).Matrix.A for panel in self.laid.panels]
        return solids.mark(places, [solids.shape_mark(one) for one in self.laid.layouts])

    @cached_property
    def revision(self) -> str:
        """A mark of all that the picture shows."""
        at = [tuple(map(float, side)) for side in (*_sides(self.frame), self.frame.origin)]
        pieces = [solids.piece_marks(layout) for layout in self.laid.layouts]
        return solids.mark(at, [panel.place for panel in self.laid.panels], pieces)

    @property
    def numbers(self) -> list[int]:
        """The panel's number on each face, in the order chosen."""
        found = {panel.source: panel.number for panel in self.laid.panels}
        return [found[k] for k in range(len(self.links))]

    @property
    def words(self) -> list[str]:
        """A line for each panel: its number, its face, its leaves and the way of its grain."""
        lines = []
        for panel, layout in zip(self.laid.panels, self.laid.layouts):
            leaves = sorted({piece.leaf for piece in layout.pieces})
            way = _way(grain_of(layout))
            values = {
                "number": panel.number, "face": faces.words(*self.links[panel.source]),
                "leaves": ranges(leaves), "way": way,
            }  # fmt: skip
            lines.append(
                say("{number}: {face}, leaf {leaves}, grain {way}", **values)
                if len(leaves) == 1
                else say("{number}: {face}, leaves {leaves}, grain {way}", **values)
            )
        return lines

    def source_of(self, solid: int) -> tuple[Any, str]:
        """The face under a solid of the compound, counted from 1."""
        panel, _ = self.piece_at(solid)
        return self.links[panel.source]

    def piece_at(self, solid: int) -> tuple[Panel, int]:
        """The panel and the position of a solid of the compound, counted from 1."""
        for panel, layout in zip(self.laid.panels, self.laid.layouts):
            if solid <= len(layout.pieces):
                return panel, solid
            solid -= len(layout.pieces)
        raise IndexError("the run has no such piece")

    def solids_of(self, number: int) -> range:
        """Which solids of the compound lie on the panel of that number, counted from 1."""
        counts = [len(layout.pieces) for layout in self.laid.layouts]
        first = sum(counts[: number - 1])
        return range(first + 1, first + counts[number - 1] + 1)


def _placement(frame: Frame, over: float = 0.0) -> Any:
    """A frame as a placement in the world, so far over its plane (mm)."""
    columns = zip(*_sides(frame), frame.origin + over * frame.normal)
    return Placement(Matrix(*(float(n) for row in columns for n in row), 0.0, 0.0, 0.0, 1.0))


def _way(grain: float | None) -> str:
    """The way of the grain in words, as it is seen on the panel."""
    if grain is None:
        return word("several ways")
    if grain in (0.0, 90.0):
        return word("upright") if grain else word("level")
    return say("at {angle:g} degrees", angle=grain)


def _sides(frame: Frame) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    return frame.right, frame.up, frame.normal


def on_faces(obj: Any, links: Links, shapes: Sequence[Any]) -> OnFaces:
    """How a Run lies on faces in the world. Raises VeneerError or Refused."""
    flat = [faces.flat_face(shape, *link) for shape, link in zip(shapes, links)]
    frame = common_frame(flat)
    tops = [_top(frame, face, shape, link) for face, shape, link in zip(flat, shapes, links)]
    bundle = leaves_of(obj)
    run = Run(laying.recipe(obj, bundle), obj.Mode, obj.Gaps)
    return OnFaces(run.lay(bundle, elevation(tops)), frame, links)


def leaves_of(obj: Any) -> Leaves:
    """The leaves that a Run draws on: of one bundle, or of two as one."""
    if obj.Bundle is None:
        raise Refused(word("The run has no bundle; choose a bundle or a stock of leaves."))
    first = values.leaves_of(obj.Bundle)
    if obj.Second is None:
        return first
    if obj.Second == obj.Bundle:
        raise Refused(word(
            "Both bundles of the run are the same; choose another second one, or none."
        ))
    return _JOINED.of(obj, first, values.leaves_of(obj.Second), obj.Missing)


_JOINED = values.Latest(joined)


def common_frame(flat: Sequence[Face]) -> Frame:
    """The frame of the plane that all faces lie in; Refused names the first that does not."""
    first = flat[0]
    frame = Frame.facing(first.normal, np.concatenate(list(first.rings)).mean(axis=0))
    for face in flat[1:]:
        points = np.concatenate(list(face.rings))
        if frame.holds(face.normal, points):
            continue
        raise Refused(_how_off(frame, face, first, points))
    return frame


def _how_off(frame: Frame, face: Face, first: Face, points: np.ndarray) -> str:
    """How a face does not lie in the plane of the first, in a sentence."""
    normal = np.asarray(face.normal, float) / np.linalg.norm(face.normal)
    turn = math.degrees(math.atan2(np.linalg.norm(np.cross(normal, frame.normal)),
                                   float(normal @ frame.normal)))  # fmt: skip
    off = max(float(np.abs(frame.off(points)).max()), SAME_PLANE)
    values = {
        "face": faces.of_owner(face.name, face.owner), "turn": figure(turn, ".3g"),
        "first": faces.of_owner(first.name, first.owner), "off": in_unit(off, 3),
    }  # fmt: skip
    if turn > 180.0 - math.degrees(SAME_WAY):
        return say(
            "{face} looks the other way than {first}; a run lies in one plane, so choose faces of "
            "one plane and one side.", **values,
        )  # fmt: skip
    if turn > math.degrees(SAME_WAY):
        return say(
            "{face} is tilted by {turn} degrees against {first}; a run lies in one plane, so "
            "choose faces of one plane and one side.", **values,
        )  # fmt: skip
    return say(
        "{face} lies {off} off the plane of {first}; a run lies in one plane, so choose faces of "
        "one plane and one side.", **values,
    )  # fmt: skip


def _top(frame: Frame, face: Face, shape: Any, link: tuple[Any, str]) -> Top:
    """A face as a top in the plane of the run, with its true curves. It is read where it lies, a
    hair over the plane or under it."""
    off = float(frame.off(np.concatenate(list(face.rings))).mean())
    try:
        edge, holes = sketches.loops_in(link[0], shape, _placement(frame, off))
    except VeneerError as error:
        raise Refused(say(
            "{face} cannot be a panel: {error}",
            face=faces.of_owner(face.name, face.owner), error=error,
        )) from None
    return Top.of_edges(edge, holes)
