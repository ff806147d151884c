# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs of leaves: reading, naming, shrinking and saving them.

Pixels are uint8 rows x columns x 3, sRGB, row 0 at the top. How a file becomes that (camera's turn,
alpha, colour profile, depth) is told in `decode`.
"""

from __future__ import annotations

import io
import math
import os
import re
import threading
import unicodedata
from collections import Counter, OrderedDict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

import numpy as np
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import reason, shown_name, write_beside
from veneerwb.core.photos.decode import (
    MOST_MEGAPIXELS,
    check_size,
    decoded,
    glimpse,
    sha256_of,
    upright,
)
from veneerwb.core.photos.evening import Evening, Three, evened
from veneerwb.core.plane import finite, positive
from veneerwb.words import word

__all__ = [
    "MOST_MEGAPIXELS", "MOST_NUMBER", "SUFFIXES", "Photo", "by_number", "by_number_or_name",
    "checked_gains", "names_apart", "number_in", "photo_files", "save_jpeg", "save_png",
    "sha256_of", "shrunk", "working_copy",
]

AnyPath = str | os.PathLike[str]

SUFFIXES = (".png", ".jpg", ".jpeg", ".tif", ".tiff", ".bmp", ".webp")
COARSEST = 10.0
"""mm/px: a coarser photo shows no figure."""
MOST_LIGHT = 16.0
"""Times more or less light than photographed: beyond lies nothing but noise."""
JPEG_QUALITY = 95
LARGEST_LEAF, LONGEST_LEAF = 12.0, 8_000.0
"""m2 and mm that no leaf exceeds, photographed with what lies about it (common practice, no
source): one that does has a slip of the keyboard in its scale."""
MOST_NUMBER = 9999
"""Of a leaf: it is chalked by hand and printed on paper marks, and cameras count as far."""
KEPT_BYTES = 1 << 30
"""Bytes of decoded photos kept in memory; older ones are decoded again when asked for."""


# --- the photo ---------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Origin:
    """Where a photo's pixels come from: a file with that content, flipped left-right or not, and
    what evens its light."""

    path: Path
    sha256: str
    mirrored: bool
    gains: Three | None = None

    def seen(self, pixels: np.ndarray) -> np.ndarray:
        """The photo's pixels from those of the file."""
        if self.gains is not None:
            pixels = evened(pixels, Evening(self.gains))
        return upright(pixels, mirrored=self.mirrored)


@dataclass(frozen=True, eq=False)
class Photo:
    """A photograph at a known scale. Two photos are equal only if they are one object.

    `mm_per_px` is the scale, `shape` (rows, columns), `name` the file's name ("" for an array).
    Made by `Photo.read` or `Photo.of`.
    """

    mm_per_px: float
    shape: tuple[int, int]
    name: str = ""
    _origin: _Origin | None = field(default=None, repr=False)
    _array: np.ndarray | None = field(default=None, repr=False)

    @staticmethod
    def read(
        path: AnyPath, mm_per_px: float, mirrored: bool = False,
        gains: Sequence[float] | None = None,
    ) -> Photo:
        """The photo in a file, read to its end once, so that a damaged one is refused here.

        `mirrored` flips it left-right: a photo of a leaf's back, as seen from the face. `gains` by
        which linear red, green and blue are multiplied whenever it is decoded; the file stays as it
        was photographed. Raises VeneerError, naming the file, for one that is missing, empty,
        damaged, no picture, larger than MOST_MEGAPIXELS or smaller than 2 x 2 pixels.
        """
        scale, gains = _scale(mm_per_px), checked_gains(gains)
        path = Path(path).absolute()  # the working folder may change before the next decoding
        pixels, sha256 = decoded(path)
        origin = _Origin(path, sha256, mirrored, gains)
        pixels = origin.seen(pixels)
        _kept.keep(origin, pixels)
        return Photo(scale, pixels.shape[:2], shown_name(path), origin)

    @staticmethod
    def of(array: np.ndarray, mm_per_px: float, name: str = "") -> Photo:
        """A photo of an array, uint8 rows x columns x 3, which is kept, not copied."""
        scale = _scale(mm_per_px)
        array = np.asarray(array)
        if array.dtype != np.uint8 or array.ndim != 3 or array.shape[2] != 3:
            raise VeneerError(
                "not-pixels",
                "A photo's pixels must be whole numbers from 0 to 255 (uint8), rows x columns x 3; "
                "these are {dtype} {shape}.",
                dtype=str(array.dtype),
                shape=" x ".join(map(str, array.shape)) or word("without rows"),
            )
        check_size(name or word("in memory"), array.shape[1], array.shape[0])
        return Photo(scale, array.shape[:2], name, _array=upright(array))

    @property
    def pixels(self) -> np.ndarray:
        """uint8 rows x columns x 3, contiguous, read-only.

        Raises VeneerError if the file has gone or changed since it was read.
        """
        if self._array is not None:
            return self._array
        return _kept.pixels(self._origin)

    @property
    def size(self) -> tuple[float, float]:
        """(width, length) in mm."""
        rows, columns = self.shape
        return columns * self.mm_per_px, rows * self.mm_per_px

    @property
    def sha256(self) -> str:
        """The SHA-256 of the file as it was read, in hexadecimal; "" for a photo of an array."""
        return self._origin.sha256 if self._origin else ""

    @property
    def gains(self) -> Three | None:
        """What evens its light: linear red, green and blue are multiplied so on decoding."""
        return self._origin.gains if self._origin else None

    def small(self, columns: int, rows: int) -> np.ndarray:
        """Its pixels shrunk to that size, for looking at: decoded no finer than that takes, and
        not kept."""
        if self._array is not None:
            pixels = self._array
        else:
            pixels = self._origin.seen(glimpse(self._origin.path, columns, rows))
        return resized(pixels, columns, rows)

    def as_photographed(self) -> Photo:
        """The same photo without gains."""
        if self.gains is None:
            return self
        return replace(self, _origin=replace(self._origin, gains=None))


class _Kept:
    """Decoded photos, those longest unused dropped first once they pass `most_bytes`."""

    def __init__(self, most_bytes: int) -> None:
        self.most_bytes = most_bytes
        self.bytes = 0
        self._photos: OrderedDict[_Origin, np.ndarray] = OrderedDict()
        self._lock = threading.Lock()

    def pixels(self, origin: _Origin) -> np.ndarray:
        with self._lock:
            if origin in self._photos:
                self._photos.move_to_end(origin)
                return self._photos[origin]
        # Not under the lock: other threads may decode other photos meanwhile.
        pixels = origin.seen(decoded(origin.path, origin.sha256)[0])
        self.keep(origin, pixels)
        return pixels

    def keep(self, origin: _Origin, pixels: np.ndarray) -> None:
        with self._lock:
            known = self._photos.pop(origin, None)
            self.bytes += pixels.nbytes - (0 if known is None else known.nbytes)
            self._photos[origin] = pixels
            while self.bytes > self.most_bytes and self._photos:
                self.bytes -= self._photos.popitem(last=False)[1].nbytes


_kept = _Kept(KEPT_BYTES)


def _scale(mm_per_px: float) -> float:
    return positive("scale of the photo in mm per pixel", mm_per_px, COARSEST)


def too_large(width: float, length: float) -> bool:
    """Whether no leaf is so large (mm), so that the scale of its photograph must be wrong."""
    return width * length > LARGEST_LEAF * 1e6 or max(width, length) > LONGEST_LEAF


def checked_gains(gains: Sequence[float] | None) -> Three | None:
    """Three gains of a photo's light; None for none. VeneerError for what no light has."""
    if gains is None or not len(gains):
        return None
    red_green_blue = tuple(finite("gain of a photo's light", gain) for gain in gains)
    fits = all(1 / MOST_LIGHT <= gain <= MOST_LIGHT for gain in red_green_blue)
    if len(red_green_blue) != 3 or not fits:
        raise VeneerError(
            "no-such-gains",
            "The gains of a photo's light must be three numbers from {least} to {most}: for red, "
            "green and blue.",
            least=1 / MOST_LIGHT, most=MOST_LIGHT,
        )
    return red_green_blue


# --- folders and names -------------------------------------------------------------------------


def photo_files(folder: AnyPath) -> list[Path]:
    """Every picture in `folder`, by its suffix, in natural order (leaf 2 before leaf 10)."""
    folder = Path(folder)
    try:
        inside = list(folder.iterdir())
    except OSError as error:
        raise VeneerError(
            "no-folder", "The folder {folder} cannot be read ({reason}); check its name.",
            folder=shown_name(folder), reason=reason(error),
        ) from error
    # Names with a leading dot are other systems' notes on the file of that name.
    found = [p for p in inside if p.suffix.lower() in SUFFIXES and p.name[0] != "." and p.is_file()]
    if not found:
        raise VeneerError(
            "no-photos",
            "The folder {folder} holds no photos; it needs PNG, JPEG, TIFF, BMP or WebP files.",
            folder=shown_name(folder),
        )
    return sorted(found, key=_natural)


def _natural(path: Path) -> tuple[list[str | int], str]:
    name = unicodedata.normalize("NFC", path.name).casefold()
    parts = re.split(r"(\d+)", name)
    return [int(p) if i % 2 else p for i, p in enumerate(parts)], path.name


def names_apart(paths: Iterable[AnyPath]) -> dict[Path, str]:
    """What to call each file: its name, with its folder's where files of several folders share
    it, and all of its path where they share that too."""
    files = list(dict.fromkeys(map(Path, paths)))
    called = {path: shown_name(path) for path in files}
    for longer in (_with_folder, _in_full):
        counts = Counter(called.values())
        called |= {path: longer(path) for path in files if counts[called[path]] > 1}
    return called


def _with_folder(path: Path) -> str:
    return f"{shown_name(path.absolute().parent)}/{shown_name(path)}"


def _in_full(path: Path) -> str:
    return str(path.absolute()).encode("utf-8", "replace").decode("utf-8")


def number_in(path: AnyPath) -> int | None:
    """The last whole number in a file's name (without its suffix); None where there is none."""
    digits = re.findall(r"\d+", Path(path).stem)
    return int(digits[-1]) if digits else None


def by_number(paths: Iterable[AnyPath]) -> dict[int, Path]:
    """The files by the last whole number in each name (without its suffix), in order of number."""
    numbered: dict[int, Path] = {}
    files = [*map(Path, paths)]
    called = names_apart(files)
    for path in files:
        number = number_in(path)
        if number is None:
            raise VeneerError(
                "no-number",
                "The file name {file} holds no number; put the number of the leaf in it.",
                file=called[path],
            )
        if not 1 <= number <= MOST_NUMBER:
            raise VeneerError(
                "number-of-no-leaf",
                "The last number in the file name {file} is {number}, which no leaf has; give each "
                "file the number of its leaf, from 1 to {most}.",
                file=called[path], number=number, most=MOST_NUMBER,
            )
        if number in numbered:
            raise VeneerError(
                "two-photos-one-number",
                "The files {first} and {second} both carry the number {number}; rename one.",
                first=called[numbered[number]], second=called[path], number=number,
            )
        numbered[number] = path
    return dict(sorted(numbered.items()))


def by_number_or_name(paths: Iterable[AnyPath]) -> dict[int, Path]:
    """The files as `by_number` has them; where the last numbers in their names cannot be those of
    leaves (dates, times, none at all), counted from 1 in the natural order of the names."""
    files = sorted(map(Path, paths), key=_natural)
    return dict(enumerate(files, start=1)) if _uncounted(files) else by_number(files)


def _uncounted(files: Sequence[Path]) -> bool:
    """Whether files in natural order hold no numbers of leaves, and their names tell an order."""
    if len({tuple(_natural(path)[0]) for path in files}) < len(files):
        return False
    last = [number_in(path) for path in files]
    if not any(n is not None and 1 <= n <= MOST_NUMBER for n in last):
        return True
    # In names that are alike but for their numbers another one rises: "9.41.58", "9.42.03".
    alike = len({re.sub(r"\d+", "", path.stem) for path in files}) == 1
    return alike and None not in last and any(a >= b for a, b in zip(last, last[1:]))


# --- copies ------------------------------------------------------------------------------------


def working_copy(
    photo: Photo | AnyPath, most_megapixels: float = 3.0
) -> tuple[np.ndarray, float]:
    """Pixels shrunk to at most `most_megapixels`, and the factor f by which mm per pixel grows.

    f = columns / new columns, exactly, and holds along the leaf too, so the copy has one true
    scale. The copy starts at the same lower left corner, so a point keeps its mm; at the upper edge
    less than one pixel of the copy is left off. A photo that is small enough is returned as it is
    (f = 1); one only a few pixels wide is left longer than asked.
    """
    pixels = photo.pixels if isinstance(photo, Photo) else decoded(Path(photo))[0]
    return shrunk(pixels, most_megapixels)


def shrunk(pixels: np.ndarray, most_megapixels: float = 3.0) -> tuple[np.ndarray, float]:
    """`pixels` as `working_copy` shrinks those of a photo, and the factor."""
    most = positive("most megapixels of a working copy", most_megapixels, MOST_MEGAPIXELS) * 1e6
    rows, columns = pixels.shape[:2]
    if rows * columns <= most:
        return pixels, 1.0
    new_columns = max(2, math.floor(math.sqrt(most * columns / rows)))
    factor = columns / new_columns
    new_rows = max(2, rows * new_columns // columns)
    box = (0.0, max(0.0, rows - new_rows * factor), columns, rows)
    copy = Image.fromarray(pixels).resize((new_columns, new_rows), Image.Resampling.LANCZOS, box)
    return upright(np.asarray(copy)), factor


def resized(pixels: np.ndarray, columns: int, rows: int) -> np.ndarray:
    """uint8 `pixels` at another size, each the mean of what it covers."""
    image = Image.fromarray(pixels)
    return np.asarray(image.resize((columns, rows), Image.Resampling.HAMMING))


def save_png(path: AnyPath, pixels: np.ndarray) -> None:
    """Writes uint8 rows x columns x 3 (RGB) or x 4 (RGBA) as PNG, whole or not at all."""
    pixels = np.ascontiguousarray(pixels)
    if pixels.dtype != np.uint8 or pixels.ndim != 3 or pixels.shape[2] not in (3, 4):
        raise ValueError(f"uint8 rows x columns x 3 or 4 wanted, not {pixels.dtype} {pixels.shape}")
    _save(path, Image.fromarray(pixels), format="PNG")


def save_jpeg(path: AnyPath, pixels: np.ndarray) -> None:
    """Writes uint8 rows x columns x 3 as JPEG of JPEG_QUALITY with full colour resolution, whole or
    not at all."""
    image = Image.fromarray(np.ascontiguousarray(pixels))
    _save(path, image, format="JPEG", quality=JPEG_QUALITY, subsampling=0)


def _save(path: AnyPath, image: Image.Image, **how: Any) -> None:
    """By way of the memory: into a file Pillow writes a JPEG without a word that the disk is full.
    """
    data = io.BytesIO()
    image.save(data, **how)
    write_beside(path, lambda stream: stream.write(data.getbuffer()))
