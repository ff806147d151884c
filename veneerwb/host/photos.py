# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures inside a document: working copies going in, photographs read lazily coming out.

A working copy has at most 3 megapixels and is kept as JPEG of quality 95 with full colour
resolution. Measured on generated leaves of 3 megapixels with sensor noise: 1.3 to 1.7 MB where PNG
takes 4.6 to 5.4, at a mean error of 2.0 to 2.3 levels of 255, most of it the noise.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.background import leaf_on_background
from veneerwb.core.photos.decode import glimpse, sha256_of, stored
from veneerwb.core.photos.evening import Evening, Three, evened
from veneerwb.core.photos.reading import Photo, checked_gains, resized, save_jpeg, working_copy

GLANCE, LEAST_LEAF = 400, 0.3
"""Pixels of a photograph's longer side at a glance; the share of it that a leaf takes at least,
since a part of the figure may pass for less of one."""


@dataclass(frozen=True)
class WorkingCopy:
    """A working copy in a file of its own, on its way into a document, and where it came from."""

    path: str
    mm_per_px: float
    name: str
    sha256: str
    original_mm_per_px: float


def copied(photo: Photo, folder: str, stem: str) -> WorkingCopy:
    """The working copy of `photo` as photographed, written into `folder`."""
    pixels, factor = working_copy(photo.as_photographed())
    path = os.path.join(folder, f"{stem}.jpg")
    save_jpeg(path, pixels)
    return WorkingCopy(path, photo.mm_per_px * factor, photo.name, photo.sha256, photo.mm_per_px)


@dataclass(frozen=True, eq=False)
class IncludedPhoto(Photo):
    """A photograph inside a document: its size is known from its header, and its pixels are read
    when they are asked for. `stamp` tells one content of the file from another, `light` are its
    gains."""

    path: str = ""
    stamp: tuple[int, int] = (0, 0)
    light: Three | None = None

    @property
    def pixels(self) -> np.ndarray:
        """uint8 rows x columns x 3, read-only. Raises VeneerError for a picture that cannot be
        read."""
        return _read(self.path, self.stamp, self.light).pixels

    def small(self, columns: int, rows: int) -> np.ndarray:
        """Its pixels shrunk to that size. Raises VeneerError as above."""
        _refuse_other(self.path, self.stamp)
        pixels = glimpse(Path(self.path), columns, rows)
        if self.light is not None:
            pixels = evened(pixels, Evening(self.light))
        return resized(pixels, columns, rows)

    @property
    def sha256(self) -> str:
        """Of the working copy; no picture is decoded."""
        return _digest(self.path, self.stamp)

    @property
    def gains(self) -> Three | None:
        return self.light

    def as_photographed(self) -> Photo:
        return _included(self.path, self.stamp, self.mm_per_px, None)


def included(path: str, mm_per_px: float, gains: Sequence[float] | None = None) -> Photo:
    """The photograph at `path` inside a document, its light evened by `gains`; one object for as
    long as file, scale and gains stay the same.

    Raises VeneerError if there is none or it is no picture.
    """
    try:
        stamp = _stamp(path)
    except (OSError, ValueError) as error:
        raise VeneerError(
            "photo-missing", "A leaf has no photograph; give it one again.", file=str(path)
        ) from error
    return _included(path, stamp, mm_per_px, checked_gains(gains))


@lru_cache(maxsize=4096)
def _included(
    path: str, stamp: tuple[int, int], mm_per_px: float, gains: Three | None
) -> Photo:
    photo = Photo.of(np.zeros((2, 2, 3), np.uint8), mm_per_px)  # for its check of the scale
    return IncludedPhoto(
        photo.mm_per_px, _shape(path, stamp), Path(path).name, path=path, stamp=stamp, light=gains
    )


def shape_of(path: str | os.PathLike[str]) -> tuple[int, int]:
    """Rows and columns of a photograph held upright. Raises VeneerError if it cannot be read."""
    try:
        return _shape(os.fspath(path), _stamp(os.fspath(path)))
    except OSError:
        return Photo.read(path, 1.0).shape  # says in a sentence what is wrong


@lru_cache(maxsize=4096)
def _shape(path: str, stamp: tuple[int, int]) -> tuple[int, int]:
    """(rows, columns) of the picture held upright, from its header alone."""
    return stored(path)[0]


def shows_background(path: str | os.PathLike[str]) -> bool:
    """Whether background is seen on all sides of the leaf on a photograph: a guess, at a glance."""
    try:
        return _background(os.fspath(path), _stamp(os.fspath(path)))
    except (OSError, VeneerError):
        return False


@lru_cache(maxsize=64)
def _background(path: str, stamp: tuple[int, int]) -> bool:
    shape = _shape(path, stamp)
    rows, columns = (max(1, round(side * GLANCE / max(shape))) for side in shape)
    seen = glimpse(Path(path), columns, rows)
    rows, columns = seen.shape[:2]
    leaf = leaf_on_background(seen)
    left, above, right, below = leaf.bounds
    round_it = min(left, above, columns - right, rows - below) > 0.01 * min(rows, columns)
    return round_it and leaf.area > LEAST_LEAF * rows * columns


@lru_cache(maxsize=4096)
def _read(path: str, stamp: tuple[int, int], gains: Three | None) -> Photo:
    _refuse_other(path, stamp)
    return Photo.read(path, 1.0, gains=gains)


@lru_cache(maxsize=4096)
def _digest(path: str, stamp: tuple[int, int]) -> str:
    _refuse_other(path, stamp)
    return sha256_of(path)


def _refuse_other(path: str, stamp: tuple[int, int]) -> None:
    """The leaf may have been given another picture under the same name, and undo may bring the
    first one back: neither may be kept for the other."""
    try:
        there = _stamp(path)
    except OSError:
        return  # reading it says in a sentence what is wrong
    if there != stamp:
        raise VeneerError(
            "photo-replaced", "The leaf was given another photograph; read the leaf again."
        )


def _stamp(path: str) -> tuple[int, int]:
    status = os.stat(path)
    return status.st_mtime_ns, status.st_size
