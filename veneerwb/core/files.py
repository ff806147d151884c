# SPDX-License-Identifier: LGPL-2.1-or-later
"""Writing files so that a reader never meets half a one."""

from __future__ import annotations

import os
import secrets
from collections.abc import Callable
from pathlib import Path
from typing import BinaryIO

from veneerwb.core.errors import VeneerError


def shown_name(path: str | os.PathLike[str]) -> str:
    """The file's own name, without its folder, in characters that can always be printed."""
    path = Path(path)
    return (path.name or str(path)).encode("utf-8", "replace").decode("utf-8")


def reason(error: OSError) -> str:
    """What the system says of `error`, as a part of a sentence."""
    return (error.strerror or str(error) or type(error).__name__).rstrip(".")


def write_beside(path: str | os.PathLike[str], write: Callable[[BinaryIO], None]) -> None:
    """Writes a file by `write(stream)` beside `path`, then renames it over `path` in one step.

    If anything fails, what was at `path` stays as it was and nothing is left beside it. Raises
    VeneerError "cannot-write" for what the system refuses (a folder that is missing or read-only, a
    full disk); other errors of `write` pass through.
    """
    target = Path(os.path.realpath(path))  # a link stays a link: the file it points to is replaced
    # Not tempfile: its files are closed to other users, and the finished file would be too.
    beside = target.with_name(f".{secrets.token_hex(8)}.part")
    try:
        try:
            with open(beside, "xb") as stream:
                write(stream)
            os.replace(beside, target)
        finally:
            if os.path.lexists(beside):
                os.unlink(beside)
    except OSError as error:
        raise VeneerError(
            "cannot-write",
            "The file {file} could not be written ({reason}); "
            "choose a folder that you may write to and that has room.",
            file=shown_name(path), reason=reason(error),
        ) from error
