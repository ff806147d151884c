# SPDX-License-Identifier: LGPL-2.1-or-later
"""From a picture file of any kind to upright sRGB pixels, or to a sentence about what is wrong.

Pixels are uint8 rows x columns x 3, row 0 at the top. A photo turned by its camera (EXIF) is turned
upright; alpha is laid over white; an embedded colour profile is converted to sRGB where Pillow's
colour management can, and ignored where it cannot or where the photo has one channel of more than
8 bits. Of a file with several pictures the first is read.
"""

from __future__ import annotations

import hashlib
import io
import math
import os
import re
import stat
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

import numpy as np
from PIL import Image, ImageCms, UnidentifiedImageError

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import reason, shown_name

FORMATS = ("PNG", "JPEG", "TIFF", "BMP", "WEBP")
MOST_MEGAPIXELS = 150.0
MOST_OF_WEBP = 75.0
"""Megapixels: its decoder holds five copies of a picture at once."""
MOST_BYTES = 1 << 30
"""Of a file: 150 megapixels of three times 16 bits are less."""
MOST_WORK = 2000.0
"""Megapixels times the scans of a JPEG, each of which goes over all of it again: cameras and
programs write some ten, a file made to keep a reader busy thousands."""
BAND = 1 << 22
"""Pixels converted at once: whole copies of the largest photo would take more than 2 GB."""

_ORIENTATION = 0x0112  # EXIF tag
_TURNS = {  # EXIF orientation -> the upright view
    2: lambda p: p[:, ::-1],
    3: lambda p: p[::-1, ::-1],
    4: lambda p: p[::-1],
    5: lambda p: p.swapaxes(0, 1),
    6: lambda p: p.swapaxes(0, 1)[:, ::-1],
    7: lambda p: p[::-1, ::-1].swapaxes(0, 1),
    8: lambda p: p.swapaxes(0, 1)[::-1],
}
_SIDEWAYS = (5, 6, 7, 8)
_MARKER = re.compile(rb"\xff([^\x00\x01\xd0-\xd8\xff])")
"""What a JPEG is parted by: of the bytes, those that are neither picture nor filling."""
_SCAN, _END = 0xDA, 0xD9
_EIGHT_OF_SIXTEEN = np.rint(np.arange(65536) / 257.0).astype(np.uint8)
_limit_lock = threading.Lock()


def upright(pixels: np.ndarray, orientation: int = 1, mirrored: bool = False) -> np.ndarray:
    """`pixels` turned by an EXIF orientation, then flipped; contiguous and read-only."""
    turned = _TURNS.get(orientation, lambda p: p)(pixels)
    if mirrored:
        turned = turned[:, ::-1]
    result = np.ascontiguousarray(turned).view()  # a view: the giver's own array stays writeable
    result.flags.writeable = False
    return result


def decoded(path: Path, sha256: str = "") -> tuple[np.ndarray, str]:
    """The upright pixels of a file and its SHA-256; with `sha256` given, the file must have it."""
    name = shown_name(path)
    with _telling(name), _opened(path, name) as stream:
        _header(stream, name)  # a photo too large is refused before its file is read
        found = _digest(stream)
        if not sha256:
            _header(stream, name).verify()  # Pillow's decoder skips the checksums of a PNG
        elif found != sha256:
            raise VeneerError(
                "photo-changed",
                "The photo {file} has changed since it was read; read it again.",
                file=name,
            )
        image = _header(stream, name)
        _refuse_endless(image, stream, name)
        image.load()
        return upright(_rgb(image), _orientation(image)), found


def glimpse(path: Path, columns: int, rows: int) -> np.ndarray:
    """The upright pixels of a file, at least three quarters of that size unless the picture is
    smaller: a JPEG is decoded no finer than that takes, which is sooner done."""
    name = shown_name(path)
    with _telling(name), _opened(path, name) as stream:
        image = _header(stream, name)
        _refuse_endless(image, stream, name)  # before its size is told smaller
        if image.format in ("JPEG", "MPO"):
            least = 3 * columns // 4, 3 * rows // 4
            image.draft(None, least[::-1] if _orientation(image) > 4 else least)
        image.load()
        return upright(_rgb(image), _orientation(image))


def stored(path: str | os.PathLike[str]) -> tuple[tuple[int, int], int]:
    """(rows, columns) of the picture held upright and the EXIF orientation in which it is stored,
    from the head of its file alone."""
    path = Path(path)
    name = shown_name(path)
    with _telling(name), _opened(path, name) as stream:
        image = _header(stream, name)
        (columns, rows), turn = image.size, _turn_said(image)
    return (columns, rows) if turn in _SIDEWAYS else (rows, columns), turn


def sha256_of(path: str | os.PathLike[str]) -> str:
    """The SHA-256 of a file's content, in hexadecimal."""
    path = Path(path)
    name = shown_name(path)
    with _telling(name), _opened(path, name) as stream:
        return _digest(stream)


@contextmanager
def _telling(name: str) -> Iterator[None]:
    """Turns what the system and Pillow raise into a sentence about the file `name`."""
    try:
        yield
    except VeneerError:
        raise
    except FileNotFoundError as error:
        raise VeneerError(
            "photo-missing", "There is no photo {file}; check its name and its folder.", file=name
        ) from error
    except UnidentifiedImageError as error:
        raise VeneerError(
            "not-a-photo",
            "The file {file} is not a picture that can be read; "
            "give a PNG, JPEG, TIFF, BMP or WebP.",
            file=name,
        ) from error
    except MemoryError as error:
        raise VeneerError(
            "no-memory",
            "There is not enough memory for the photo {file}; save it at a smaller size.",
            file=name,
        ) from error
    except Exception as error:  # Pillow's readers raise many kinds on damaged files
        if isinstance(error, OSError) and error.errno is not None:
            raise VeneerError(
                "photo-unreadable",
                "The photo {file} cannot be opened ({reason}); "
                "copy it to a folder that you may read.",
                file=name,
                reason=reason(error),
            ) from error
        raise VeneerError(
            "photo-damaged",
            "The photo {file} is damaged or cut short; copy it again or save it anew.",
            file=name,
        ) from error


def _opened(path: Path, name: str) -> BinaryIO:
    """The file open for reading, if it is a plain file with something in it."""
    status = path.stat()
    if stat.S_ISDIR(status.st_mode):
        raise VeneerError(
            "photo-is-folder", "{file} is a folder; give the photo file itself.", file=name
        )
    if not stat.S_ISREG(status.st_mode):  # a pipe would make us wait for ever
        raise UnidentifiedImageError(name)
    if status.st_size == 0:
        raise VeneerError(
            "photo-empty", "The photo {file} is an empty file; copy it again.", file=name
        )
    if status.st_size > MOST_BYTES:
        raise VeneerError(
            "photo-file-too-large",
            "The file {file} has {size} MB and at most {most} can be read; save it at a smaller "
            "size.",
            file=name,
            size=round(status.st_size / 1e6),
            most=round(MOST_BYTES / 1e6),
        )
    return path.open("rb")


def _header(stream: BinaryIO, name: str) -> Image.Image:
    """The picture in `stream`, not yet decoded, if its size is allowed."""
    stream.seek(0)
    with _unlimited():
        image = Image.open(stream, formats=FORMATS)
    check_size(name, *image.size, MOST_OF_WEBP if image.format == "WEBP" else MOST_MEGAPIXELS)
    return image


@contextmanager
def _unlimited() -> Iterator[None]:
    """Without Pillow's own limit, which stands below ours and tells neither name nor remedy."""
    with _limit_lock:
        limit, Image.MAX_IMAGE_PIXELS = Image.MAX_IMAGE_PIXELS, None
        try:
            yield
        finally:
            Image.MAX_IMAGE_PIXELS = limit


def _refuse_endless(image: Image.Image, stream: BinaryIO, name: str) -> None:
    """Raises for a picture that a small file can make a decoder work on without end."""
    if image.tile and image.tile[0][0] == "bmp_rle":  # a jump in it may fill any memory
        raise VeneerError(
            "photo-packed",
            "The photo {file} is a BMP packed by run lengths (RLE), which is not read; save it as "
            "a PNG.",
            file=name,
        )
    if image.format not in ("JPEG", "MPO"):
        return
    place = stream.tell()
    stream.seek(0)
    scans = _scans(stream.read())
    stream.seek(place)
    if scans * math.prod(image.size) > MOST_WORK * 1e6:
        raise OSError("too many scans")


def _scans(data: bytes) -> int:
    """The scans of a JPEG's first picture: small pictures in its remarks, and what stands behind
    it, count for nothing."""
    count, at = 0, 2
    while (found := _MARKER.search(data, at)) and found[1][0] != _END:
        count += found[1][0] == _SCAN
        at = found.end() + int.from_bytes(data[found.end() : found.end() + 2], "big")
    return count


def check_size(name: str, columns: int, rows: int, most: float = MOST_MEGAPIXELS) -> None:
    megapixels = columns * rows / 1e6
    if megapixels > most:
        raise VeneerError(
            "photo-too-large",
            "The photo {file} has {megapixels} megapixels and at most {most} can be read; "
            "save it at a smaller size.",
            file=name,
            megapixels=round(megapixels, 1),
            most=most,
        )
    if columns < 2 or rows < 2:
        raise VeneerError(
            "photo-too-small",
            "The photo {file} is only {columns} x {rows} pixels; give one of the whole leaf.",
            file=name,
            columns=columns,
            rows=rows,
        )


def _digest(stream: BinaryIO) -> str:
    stream.seek(0)
    return hashlib.file_digest(stream, "sha256").hexdigest()


def _orientation(image: Image.Image) -> int:
    """The EXIF orientation in which a loaded picture still lies."""
    if image.format == "TIFF":
        return 1  # Pillow has turned it on loading; some versions leave the tag in nevertheless
    return _turn_said(image)


def _turn_said(image: Image.Image) -> int:
    """The EXIF orientation that stands in the file; 1 where none does that is one."""
    try:
        turn = int(image.getexif().get(_ORIENTATION, 1))
        return turn if turn in _TURNS else 1
    except Exception:  # a damaged note of the camera's is no reason to refuse a sound picture
        return 1


# --- colours -----------------------------------------------------------------------------------


def _rgb(image: Image.Image) -> np.ndarray:
    """A loaded picture of any mode as uint8 rows x columns x 3, sRGB, converted band by band."""
    columns, rows = image.size
    pixels = np.empty((rows, columns, 3), np.uint8)
    converted = _shown if image.mode != "F" and image.mode[0] != "I" else _grey(image)
    for top, band in _bands(image):
        pixels[top : top + band.size[1]] = converted(band)
    return pixels


def _bands(image: Image.Image) -> Iterator[tuple[int, Image.Image]]:
    """The picture in parts of at most BAND pixels: the first row of each, and the part."""
    columns, rows = image.size
    step = max(1, BAND // columns)
    for top in range(0, rows, step):
        with _unlimited():
            band = image.crop((0, top, columns, min(rows, top + step)))
        yield top, band


def _shown(image: Image.Image) -> np.ndarray:
    """A picture of a mode of 8 bits or fewer as uint8 rows x columns x 3, sRGB."""
    if image.mode == "LAB":
        lab, srgb = ImageCms.createProfile("LAB"), ImageCms.createProfile("sRGB")
        return np.asarray(ImageCms.profileToProfile(image, lab, srgb, outputMode="RGB"))
    profile = image.info.get("icc_profile")
    alpha = None
    if image.mode == "LA":
        image, alpha = image.getchannel("L"), image.getchannel("A")
    elif image.mode in ("RGBA", "RGBa", "PA") or image.info.get("transparency") is not None:
        image = image.convert("RGBA")
        image, alpha = image.convert("RGB"), image.getchannel("A")
    elif image.mode not in ("L", "RGB", "CMYK"):
        image = image.convert("RGB")
    image = _srgb(image, profile)
    if alpha is not None:
        white = Image.new("RGB", image.size, "white")
        white.paste(image, mask=alpha)
        image = white
    return np.asarray(image)


def _srgb(image: Image.Image, profile: bytes | None) -> Image.Image:
    """A picture of mode L, RGB or CMYK as RGB, by its colour profile if there is one that works."""
    if profile:
        try:
            source = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            # Most cameras say sRGB: converting it to itself would only cost time and rounding.
            if "srgb" not in ImageCms.getProfileDescription(source).lower():
                target = ImageCms.createProfile("sRGB")
                return ImageCms.profileToProfile(image, source, target, outputMode="RGB")
        except (ImageCms.PyCMSError, ImportError, OSError, ValueError):
            pass  # the colours as stored are the best left
    return image.convert("RGB")


def _grey(image: Image.Image) -> Callable[[Image.Image], np.ndarray]:
    """What makes bands of a picture of one deep channel (16 or 32 bits, or floating point) uint8
    rows x columns x 1.

    16 bits are scaled by 65535. Where the range is not told, the first of 1 (floating point only),
    255 and 65535 that holds all values is taken for white; if none does, or some are negative, they
    are stretched from least to most.
    """
    if image.mode.startswith("I;16"):
        return lambda band: _EIGHT_OF_SIXTEEN[np.asarray(band)][..., None]
    if image.mode == "I" and image.format == "PNG":  # older Pillow's mode for 16 bits
        return lambda band: _EIGHT_OF_SIXTEEN[np.clip(np.asarray(band), 0, 65535)][..., None]
    extremes = [(one.min(), one.max()) for one in (_numbers(band) for _, band in _bands(image))]
    black, most = float(min(extremes)[0]), float(max(most for _, most in extremes))
    tops = [top for top in ((1.0,) if image.mode == "F" else ()) + (255.0, 65535.0) if top >= most]
    black, white = (0.0, tops[0]) if black >= 0.0 and tops else (black, most)
    factor = 255.0 / ((white - black) or 1.0)
    return lambda band: np.rint((_numbers(band) - black) * factor).astype(np.uint8)[..., None]


def _numbers(band: Image.Image) -> np.ndarray:
    """Its values; 0 for what is no number, or an endless one."""
    values = np.array(band, dtype=np.float64)
    if band.mode == "F":
        np.nan_to_num(values, copy=False, nan=0.0, posinf=0.0, neginf=0.0)
    return values
