# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a photograph of pinned leaves shows, and the plane of the topmost leaf under it, on which
all of them are laid to be compared."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import Motion, positive
from veneerwb.core.targets.measuring import plane_to_picture, points, through

SQUARES = 4
"""Marks on the topmost leaf that square the photograph up."""


@dataclass(frozen=True)
class Seen:
    """Marks of one leaf on a photograph of what was pinned: `on_photo`, N x 2 (column, row);
    `marks`, N x 2, the same ones in leaf mm; the leaf's `register`; and how many mm the leaf lies
    `below` the topmost, where the camera sees it smaller."""

    leaf: int
    on_photo: Any
    marks: Any
    register: Motion
    below: float = 0.0


@dataclass(frozen=True)
class Pins:
    """Pins on such a photograph: `on_photo`, N x 2 (column, row), where they stand in the bundle,
    N x 2 mm, and one deviation of a click, px."""

    on_photo: Any
    bundle: Any
    error: float = 0.0


@dataclass(frozen=True)
class Plane:
    """The plane of the topmost leaf under a photograph: `matrix`, 3 x 3, takes (column, row) to it,
    mm if the photograph is `squared` up, else pixels, y up. `foot` is the place under the camera on
    it, and `camera` how many mm the camera was above it, where they are known. `top` is the topmost
    leaf; `moved` are the matrices with each mark that squares it up off by its error in column and
    in row, and where all of them are seen then."""

    matrix: np.ndarray
    squared: bool
    camera: float | None
    foot: np.ndarray | None
    top: Seen
    moved: tuple[tuple[np.ndarray, np.ndarray], ...] = ()

    def flat(self, seen: Any) -> np.ndarray:
        """Places (column, row) of what lies in the plane."""
        return through(self.matrix, seen)

    def per_px(self, seen: np.ndarray) -> float:
        """The largest of what a pixel is on it at some places."""
        return float(np.linalg.norm(self.flat(seen + (1.0, 0.0)) - self.flat(seen), axis=1).max())

    def flat_if_off(self, seen: Any, top: bool = False) -> list[np.ndarray]:
        """The same places for each of `moved`; `top`: they are the marks that move."""
        return [through(matrix, marks if top else seen) for matrix, marks in self.moved]

    def shift(self, one: Seen) -> np.ndarray:
        """By how much the leaf's depth makes its marks be seen nearer the foot, N x 2."""
        seen = self.flat(one.on_photo)
        if not one.below:
            return np.zeros_like(seen)
        if self.camera is None or self.foot is None:
            raise VeneerError(
                "camera-unknown",
                "Leaf {leaf} lies {below} mm below the topmost and is seen smaller; say how far "
                "above the topmost leaf the camera was.",
                leaf=one.leaf, below=float(one.below),
            )
        return one.below / self.camera * (seen - self.foot)


def plane_of(
    leaves: Sequence[Seen], camera: float | None, middle: tuple[float, float] | None,
    error: float = 0.0,
) -> Plane:
    """The plane of the topmost of `leaves`: squared up by its marks, if they are enough. `error`:
    px, one deviation of a mark."""
    height = None if camera is None else positive("distance of the camera", camera)
    top = min(leaves, key=lambda one: one.below)
    off = _off(top, error) if error else []
    to_photo, *others = (_squared_by(one) for one in (top, *off))
    if to_photo is None or any(one is None for one in others):
        matrix = np.diag((1.0, -1.0, 1.0))
        foot = None if middle is None else through(matrix, [middle])[0]
        return Plane(matrix, False, height, foot, top)
    known = height is not None and middle is not None
    foot = _foot(to_photo, height, middle) if known else None
    moved = tuple((np.linalg.inv(one), seen.on_photo) for one, seen in zip(others, off))
    return Plane(np.linalg.inv(to_photo), True, height, foot, top, moved)


def _off(top: Seen, error: float) -> list[Seen]:
    """The leaf with one of its marks `error` px off in column or row: each in turn."""
    seen = points(top.on_photo, None, 1)
    if len(seen) < SQUARES:
        return []
    steps = error * np.eye(seen.size).reshape(-1, *seen.shape)
    return [replace(top, on_photo=seen + step) for step in steps]


def _squared_by(top: Seen) -> np.ndarray | None:
    """From a leaf's mm to (column, row), by its marks; None where they do not tell it."""
    seen = points(top.on_photo, None, 1)
    if len(seen) < SQUARES:
        return None
    try:
        return plane_to_picture(points(top.marks, len(seen), SQUARES), seen)
    except VeneerError as error:
        if error.code != "marks-on-a-line":
            raise
        return None


def _foot(to_photo: np.ndarray, camera: float, middle: tuple[float, float]) -> np.ndarray:
    """The place on the plane, mm, that lies under a camera `camera` mm above it whose lens is over
    `middle`.

    With x right, y up and z away from the camera a place p on the plane is seen at f (x, y) / z
    from the middle, (x, y, z) = p1 r1 + p2 r2 + t: `to_photo` is diag(f, f, 1) (r1 r2 t) but for a
    factor. f follows from the scale at the middle, and the camera stands at -(r1 r2 r3)' t.
    """
    from_middle = np.array([[1, 0, -middle[0]], [0, -1, middle[1]], [0, 0, 1]]) @ to_photo
    right, up, there = through(np.linalg.inv(from_middle), [(1, 0), (0, 1), (0, 0)])
    (a, b), (c, d) = right - there, up - there
    f = camera / math.sqrt(abs(a * d - b * c))
    pose = from_middle / [[f], [f], [1.0]]
    pose = pose / math.sqrt(np.linalg.norm(pose[:, 0]) * np.linalg.norm(pose[:, 1]))
    if pose[2, 2] < 0:
        pose = -pose
    r1 = pose[:, 0] / np.linalg.norm(pose[:, 0])
    r2 = pose[:, 1] - (pose[:, 1] @ r1) * r1
    r2 /= np.linalg.norm(r2)
    return -np.array([r1, r2]) @ pose[:, 2]
