# SPDX-License-Identifier: LGPL-2.1-or-later
"""Working copies turned end for end or mirrored without a loss: a JPEG is only marked as lying
otherwise (the orientation of EXIF 2.3, tag 0x0112), other pictures are saved anew without loss.
"""

from __future__ import annotations

import os
import struct
from pathlib import Path

import numpy as np

from veneerwb.core.photos.decode import decoded, stored, upright
from veneerwb.core.photos.reading import save_png
from veneerwb.core.renumbering import Change

_SCAN, _EXIF, _JFIF = 0xDA, 0xE1, 0xE0
_ORIENTATION = 0x0112


def changed_copy(path: str, change: Change, folder: str, stem: str) -> str:
    """Writes the picture at `path`, changed, into `folder`; the path of the new file. Raises
    VeneerError for a picture that cannot be read."""
    pixels, _ = decoded(Path(path))
    with open(path, "rb") as stream:
        data = stream.read()
    if data[:3] == b"\xff\xd8\xff":
        there = os.path.join(folder, f"{stem}.jpg")
        with open(there, "wb") as stream:
            stream.write(_marked(data, _after(stored(path)[1], change)))
        if np.array_equal(decoded(Path(there))[0], change(pixels)):
            return there
        os.unlink(there)  # a JPEG of an odd make: its marks are not where they should be
    there = os.path.join(folder, f"{stem}.png")
    save_png(there, change(pixels))
    return there


def _after(orientation: int, change: Change) -> int:
    """The orientation that shows `change` of what is shown with `orientation`."""
    probe = np.arange(6).reshape(2, 3)
    wanted = change(upright(probe, orientation))
    return next(k for k in range(1, 9) if np.array_equal(upright(probe, k), wanted))


def _marked(data: bytes, orientation: int) -> bytes:
    """A JPEG whose EXIF says nothing but its orientation."""
    head, kept, at = b"", [], 2
    while at + 4 <= len(data) and data[at] == 0xFF and data[at + 1] != _SCAN:
        size = 2 + struct.unpack(">H", data[at + 2 : at + 4])[0]
        segment = data[at : at + size]
        if segment[1] == _JFIF and not head:
            head = segment
        elif not (segment[1] == _EXIF and segment[4:8] == b"Exif"):
            kept.append(segment)
        at += size
    entry = struct.pack(">HHIHH", _ORIENTATION, 3, 1, orientation, 0)
    tiff = b"MM\x00*" + struct.pack(">IH", 8, 1) + entry + struct.pack(">I", 0)
    body = b"Exif\x00\x00" + tiff
    exif = b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body
    return b"\xff\xd8" + head + exif + b"".join(kept) + data[at:]
