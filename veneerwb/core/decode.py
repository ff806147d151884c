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
import os
import stat
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

import numpy as np
from PIL import Image, ImageCms, UnidentifiedImageError

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import reason, shown_name

FORMATS = ("PNG", "JPEG", "TIFF", "BMP", "WEBP")
MOST_MEGAPIXELS = 150.0

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
_EIGHT_OF_SIXTEEN = np.rint(np.arange(65536) / 257.0).astype(np.uint8)
_header_lock = threading.Lock()


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
        image.load()
        return upright(_rgb(image), _orientation(image)), found


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
    return path.open("rb")


def _header(stream: BinaryIO, name: str) -> Image.Image:
    """The picture in `stream`, not yet decoded, if its size is allowed."""
    stream.seek(0)
    with _header_lock:  # Pillow's own limit stands below ours and tells neither name nor remedy
        limit, Image.MAX_IMAGE_PIXELS = Image.MAX_IMAGE_PIXELS, None
        try:
            image = Image.open(stream, formats=FORMATS)
        finally:
            Image.MAX_IMAGE_PIXELS = limit
    check_size(name, *image.size)
    return image


def check_size(name: str, columns: int, rows: int) -> None:
    megapixels = columns * rows / 1e6
    if megapixels > MOST_MEGAPIXELS:
        raise VeneerError(
            "photo-too-large",
            "The photo {file} has {megapixels} megapixels and at most {most} can be read; "
            "save it at a smaller size.",
            file=name,
            megapixels=round(megapixels, 1),
            most=MOST_MEGAPIXELS,
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
    try:
        return int(image.getexif().get(_ORIENTATION, 1))
    except Exception:  # a damaged note of the camera's is no reason to refuse a sound picture
        return 1


# --- colours -----------------------------------------------------------------------------------


def _rgb(image: Image.Image) -> np.ndarray:
    """A loaded picture of any mode as uint8 rows x columns x 3, sRGB."""
    if image.mode == "F" or image.mode.startswith("I"):
        return np.repeat(_grey(image)[..., None], 3, axis=2)
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


def _grey(image: Image.Image) -> np.ndarray:
    """A picture of one deep channel (16 or 32 bits, or floating point) as uint8 rows x columns.

    16 bits are scaled by 65535. Where the range is not told, the first of 1 (floating point only),
    255 and 65535 that holds all values is taken for white; if none does, or some are negative, they
    are stretched from least to most.
    """
    values = np.asarray(image)
    if image.mode.startswith("I;16"):
        return _EIGHT_OF_SIXTEEN[values]
    if image.mode == "I" and image.format == "PNG":  # older Pillow's mode for 16 bits
        return _EIGHT_OF_SIXTEEN[np.clip(values, 0, 65535)]
    values = np.nan_to_num(values.astype(np.float64), nan=0.0, posinf=0.0, neginf=0.0)
    black, most = float(values.min()), float(values.max())
    tops = [top for top in ((1.0,) if image.mode == "F" else ()) + (255.0, 65535.0) if top >= most]
    black, white = (0.0, tops[0]) if black >= 0.0 and tops else (black, most)
    return np.rint((values - black) * (255.0 / ((white - black) or 1.0))).astype(np.uint8)
