# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes the zip that users install where there is no git: `picked.py FILE.zip FOLDER`.

Reads .gitignore and the lines of .gitattributes that say export-ignore, as far as ours go: a name
or pattern that holds everywhere, or with a slash before its end from the root; a slash at the end
for folders only. tests/core/test_package_zip.py holds that git picks the same.
"""

from __future__ import annotations

import os
import sys
import zipfile
from collections.abc import Iterator
from fnmatch import fnmatchcase
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def patterns(root: Path) -> list[str]:
    """What is left out."""
    ignored = (root / ".gitignore").read_text("utf-8").splitlines()
    given = [line.split() for line in (root / ".gitattributes").read_text("utf-8").splitlines()]
    return [".git", *ignored, *(words[0] for words in given if "export-ignore" in words[1:])]


def left_out(path: str, is_folder: bool, every: list[str]) -> bool:
    """Whether a path within the project ("tests/core") is one of `every` pattern's."""
    for one in every:
        pattern = one.rstrip("/")
        if not pattern or (one.endswith("/") and not is_folder):
            continue
        whole = path if "/" in pattern else path.rpartition("/")[2]
        if fnmatchcase(whole, pattern.lstrip("/")):
            return True
    return False


def picked(root: Path) -> Iterator[str]:
    """The files that are installed, by their paths within the project."""
    every = patterns(root)
    for folder, inner, names in os.walk(root):
        here = os.path.relpath(folder, root).replace(os.sep, "/")
        path = "" if here == "." else f"{here}/"
        inner[:] = sorted(one for one in inner if not left_out(path + one, True, every))
        yield from (path + one for one in sorted(names) if not left_out(path + one, False, every))


def main(file: str, folder: str) -> None:
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as made:
        for name in picked(ROOT):
            made.write(ROOT / name, f"{folder}/{name}")


if __name__ == "__main__":
    main(*sys.argv[1:])
