# SPDX-License-Identifier: LGPL-2.1-or-later
"""Reading files that may be anything, and writing them so that a reader never meets half a one."""

from __future__ import annotations

import errno
import os
import re
import secrets
import shutil
import stat
import tempfile
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO

from veneerwb.core.errors import VeneerError
from veneerwb.words import say

PART, SCRATCH = ".part", "veneerwb-"
"""How a file that is not finished yet ends, and how a folder of files on their way begins."""
LEFT = 24 * 3600.0
"""Seconds after which nobody is writing them any more."""
_PART = re.compile(rf"\.[0-9a-f]{{16}}{re.escape(PART)}")
_SCRATCH = re.compile(rf"{re.escape(SCRATCH)}[a-z]+-(?:(?P<process>\d+)-)?[a-z0-9_]{{8}}")
"""With the process that works in it, if it is told, which may be at it for days."""


def shown_name(path: str | os.PathLike[str]) -> str:
    """The file's own name, without its folder, in characters that can always be printed."""
    path = Path(path)
    return (path.name or str(path)).encode("utf-8", "replace").decode("utf-8")


def reason(error: Exception) -> str:
    """What the system says of `error`, as a part of a sentence."""
    return (getattr(error, "strerror", "") or str(error) or type(error).__name__).rstrip(".")


def read_plain(path: str | os.PathLike[str], most: int) -> bytes:
    """The bytes of a plain file of at most `most`. OSError for any other: a pipe or a device would
    keep us waiting, or fill the memory, for ever."""
    status = os.stat(path)
    if not stat.S_ISREG(status.st_mode) and not stat.S_ISDIR(status.st_mode):
        raise OSError(errno.EINVAL, say("it is no file"))
    if status.st_size > most:
        raise OSError(errno.EFBIG, say("it is larger than {size} MB", size=most // 1_000_000))
    with open(path, "rb") as stream:
        return stream.read(most)


def beside(folder: Path) -> Path:
    """A name in a folder for what is not finished yet, hidden and never used twice; what a run that
    was killed left there under such a name is removed."""
    clear(folder, _PART)
    # Not tempfile: its files are closed to other users, and the finished file would be too.
    return folder / f".{secrets.token_hex(8)}{PART}"


def scratch(name: str) -> tempfile.TemporaryDirectory:
    """A folder of the system's for files on their way; those that killed runs left are removed."""
    clear(Path(tempfile.gettempdir()), _SCRATCH)
    return tempfile.TemporaryDirectory(prefix=f"{SCRATCH}{name}-{os.getpid()}-")


def clear(folder: Path, names: re.Pattern[str]) -> None:
    """Removes what has such a name and was not touched for a day, as far as that is allowed; not
    what a process that lives has named after itself."""
    try:
        found = [one for one in os.scandir(folder) if _nobodys(names.fullmatch(one.name))]
        left = [one for one in found if time.time() - one.stat().st_mtime > LEFT]
    except OSError:
        return
    for one in left:
        if one.is_dir(follow_symlinks=False):
            shutil.rmtree(one.path, ignore_errors=True)
        else:
            with suppress(OSError):
                os.unlink(one.path)


def _nobodys(name: re.Match[str] | None) -> bool:
    """Whether it is such a name, and of no process that lives."""
    process = name and name.groupdict().get("process")
    return bool(name) and not (process and _lives(int(process)))


def _lives(process: int) -> bool:
    """Whether a process of that number runs; no on Windows, where asking this way would end it."""
    if os.name == "nt":
        return False
    try:
        os.kill(process, 0)
    except PermissionError:
        return True
    except (OSError, OverflowError):
        return False
    return True


def write_beside(path: str | os.PathLike[str], write: Callable[[BinaryIO], None]) -> None:
    """Writes a file by `write(stream)` beside `path`, then renames it over `path` in one step.

    If anything fails, what was at `path` stays as it was and nothing is left beside it. Raises
    VeneerError "cannot-write" for what the system refuses (a folder that is missing or read-only, a
    full disk); other errors of `write` pass through.
    """
    target = Path(os.path.realpath(path))  # a link stays a link: the file it points to is replaced
    part = beside(target.parent)
    try:
        try:
            with open(part, "xb") as stream:
                write(stream)
            os.replace(part, target)
        finally:
            if os.path.lexists(part):
                os.unlink(part)
    except OSError as error:
        raise VeneerError(
            "cannot-write",
            "The file {file} could not be written ({reason}); "
            "choose a folder that you may write to and that has room.",
            file=shown_name(path), reason=reason(error),
        ) from error
