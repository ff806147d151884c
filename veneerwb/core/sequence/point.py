# SPDX-License-Identifier: LGPL-2.1-or-later
"""A point followed through the stack: where its figure lies on the photograph of every leaf.

What is seen is one drift, of two causes: the leaf lay elsewhere under the camera, and the figure
wanders on the leaf. Photographs alone cannot part them. A frame that belongs to the leaf itself
(marks stuck on it, its edge, photographed backs) does.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle
from veneerwb.core.plane import Motion


@dataclass(frozen=True, eq=False)
class PointDrift:
    """How far a point has moved on each leaf, against the first; arrays are N x 2, mm across and
    along.

    `places`: where it lies on each photograph; `combined`: how far that is from its place on the
    first. Where the leaves' own frames are known, `figure` is its wander on the leaf, in the first
    leaf's directions, and `shift` how far the leaf under it lay elsewhere under the camera.
    """

    numbers: tuple[int, ...]
    places: np.ndarray
    combined: np.ndarray
    figure: np.ndarray | None = None
    shift: np.ndarray | None = None

    @property
    def parted(self) -> bool:
        """Whether the two causes are known apart."""
        return self.figure is not None and self.shift is not None


def point_drift(
    point: tuple[float, float],
    views: Mapping[int, Motion],
    frames: Mapping[int, Motion] | None = None,
) -> PointDrift:
    """The way of `point` (bundle mm) through the leaves of `views` (leaf number: bundle mm to mm on
    its photograph).

    `frames`: mm in a frame that belongs to the leaf itself, the same on all leaves, to mm on its
    photograph; without them, or where one is missing, the causes are not parted. Raises VeneerError
    for no leaves.
    """
    numbers = tuple(sorted(views))
    if not numbers:
        raise VeneerError("no-leaves", "The bundle has no leaves; add at least one photograph.")
    places = np.array([views[k].apply(point) for k in numbers])
    start = places[0]
    combined = places - start
    if frames is None or any(k not in frames for k in numbers):
        return PointDrift(numbers, places, combined)
    first = frames[numbers[0]].inverse()
    onto = [frames[k] @ first for k in numbers]
    figure = np.array([f.inverse().apply(p) for f, p in zip(onto, places)]) - start
    shift = np.array([f.apply(start) for f in onto]) - start
    return PointDrift(numbers, places, combined, figure, shift)


def views(bundle: Bundle) -> dict[int, Motion]:
    """Bundle mm to mm on the photograph of each leaf's face."""
    return {leaf.number: leaf.face.view for leaf in bundle.leaves}
