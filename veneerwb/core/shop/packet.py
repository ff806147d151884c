# SPDX-License-Identifier: LGPL-2.1-or-later
"""The packet: all papers and files for the shop in one folder, complete or not there at all.

The folder carries the layout's name and revision mark. An older packet is never touched: a second
one of the same layout gets a number behind its name.
"""

from __future__ import annotations

import os
import re
import shutil
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import beside, reason, shown_name
from veneerwb.core.shop.drawing.lettering import clean

LONGEST_NAME = 80
"""Characters of a file's name, which every system takes with a folder's in front."""
LONGEST_BYTES = 160
"""The same in UTF-8: systems take 255, numbers and endings are put to it."""
_FORBIDDEN = re.compile(r'[\\/:*?"<>|]+')
_RESERVED = re.compile(r"(?i)(con|prn|aux|nul|com\d|lpt\d)(\..*)?")
MOST_PACKETS = 1000


@dataclass(frozen=True)
class PacketFile:
    """A file of the packet: what its name says, its ending (".pdf"), what it is for in one
    sentence, and its bytes."""

    name: str
    ending: str
    about: str
    data: bytes


@dataclass(frozen=True)
class Named:
    """A file of the packet under the name it gets."""

    file_name: str
    about: str
    data: bytes


@dataclass(frozen=True)
class LeftOut:
    """A part that the packet lacks, and why, in one sentence."""

    name: str
    why: str


def safe_name(text: str, ending: str = "") -> str:
    """`text` as a name that every system takes for a file or folder; where it is cut short, the
    `ending` that it has stays."""
    name = re.sub(r"\s+", " ", _FORBIDDEN.sub("-", clean(text)).strip(" .-"))
    if _short(name) != name:
        name = _short(name.removesuffix(ending), ending).rstrip(" .") + ending
    if not name or _RESERVED.fullmatch(name):
        name = f"top {name}".strip()
    return name


def _short(name: str, ending: str = "") -> str:
    """As much of a name as there is room for before an ending."""
    room = LONGEST_BYTES - len(ending.encode())
    return name[: LONGEST_NAME - len(ending)].encode()[:room].decode(errors="ignore")


def named(files: Sequence[PacketFile], first: int = 1) -> list[Named]:
    """The files with their numbers in front, in the order given."""
    digits = max(2, len(str(first + len(files) - 1)))
    return [
        Named(f"{k:0{digits}d} {safe_name(file.name)}{file.ending}", file.about, file.data)
        for k, file in enumerate(files, start=first)
    ]


def write_packet(
    folder: str | os.PathLike[str], title: str, revision: str, files: Sequence[Named]
) -> Path:
    """Writes the files into a new folder inside `folder`; its path. All of them or none: they are
    written beside and the folder gets its name in one step.

    Raises VeneerError for a folder that cannot be written to, a full disk, no files, or two files
    of one name.
    """
    if not files:
        raise VeneerError("no-files", "There is nothing to write into the packet.")
    names = [file.file_name.lower() for file in files]
    twice = next((name for name in names if names.count(name) > 1), None)
    if twice:
        raise VeneerError(
            "file-twice", "Two files of the packet would be called {file}.", file=twice
        )
    parent = Path(os.path.realpath(folder))
    part = beside(parent)
    try:
        try:
            part.mkdir()
            for file in files:
                with open(part / file.file_name, "xb") as stream:
                    stream.write(file.data)
                    stream.flush()
                    os.fsync(stream.fileno())
            return _settle(part, parent, safe_name(f"{title} {revision}", f" {revision}"))
        finally:
            shutil.rmtree(part, ignore_errors=True)
    except OSError as error:
        raise VeneerError(
            "cannot-write",
            "The packet could not be written into {folder} ({reason}); choose a folder that you "
            "may write to and that has room.",
            folder=shown_name(parent),
            reason=reason(error),
        ) from error


def _settle(part: Path, parent: Path, name: str) -> Path:
    """Gives a finished folder the first name that is free."""
    for k in range(1, MOST_PACKETS):
        target = parent / (name if k == 1 else f"{name} ({k})")
        if os.path.lexists(target):
            continue
        os.rename(part, target)  # onto an empty folder made meanwhile it would succeed: harmless
        return target
    raise VeneerError(
        "too-many-packets",
        "The folder {folder} holds {count} packets of this layout; choose another one.",
        folder=shown_name(parent),
        count=MOST_PACKETS - 1,
    )
