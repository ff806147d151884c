# SPDX-License-Identifier: LGPL-2.1-or-later
"""Keeps the translations in step with the sources. For /usr/bin/python3, nothing else needed.

    texts.py                          brings all catalogues up to date with the sources, compiles
                                      them, and says how they stand
    texts.py check                    says how they stand; fails where anything is out of step
    texts.py unknown                  places whose text cannot be known from the source
    texts.py todo PART LANG           what is still to be translated, as JSON
    texts.py take PART LANG FILE      takes translations from such a file
    texts.py compile                  writes what the host loads

Compiling takes Qt's lrelease (qttools5-dev-tools). PART is forms, screens, core, shop or host; LANG
is de or fr. A file to take is a list of {"context", "source", "text"} ("comment" too where `todo`
gave one).
"""

from __future__ import annotations

import fcntl
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import catalogue
from catalogue import LANGUAGES, PARTS, Catalogue
from gathering import Text, gathered


def main(asked: list[str]) -> int:
    match asked:
        case []:
            with alone():
                update()
                return compile_all() | _stand()
        case ["check"]:
            return _stand(strict=True)
        case ["unknown"]:
            for place, call in gathered().unknown:
                print(f"{place}: {call}")
            return 0
        case ["todo", part, language] if part in PARTS and language in LANGUAGES:
            return todo(part, language)
        case ["take", part, language, file] if part in PARTS and language in LANGUAGES:
            with alone():
                return take(part, language, Path(file))
        case ["compile"]:
            return compile_all()
    print(__doc__)
    return 2


@contextmanager
def alone() -> Iterator[None]:
    """Several may translate at once: one of them writes at a time."""
    folder = os.open(catalogue.HERE, os.O_RDONLY)
    try:
        fcntl.flock(folder, fcntl.LOCK_EX)
        yield
    finally:
        os.close(folder)


def update() -> None:
    """Every catalogue gets the texts of the sources and keeps the translations it has."""
    texts = gathered().parts
    for language in LANGUAGES:
        known = catalogue.known_everywhere(language)
        for part in PARTS:
            catalogue.write(part, language, catalogue.renewed(texts[part], known))


def _stand(strict: bool = False) -> int:
    """How everything stands, one line each; not 0 if anything is unsound, or, if `strict`, missing
    or out of step."""
    found, wrong, late = gathered(), 0, 0
    for language in LANGUAGES:
        for part in PARTS:
            have, texts = catalogue.read(part, language), found.parts[part]
            done = sum(1 for text in texts if text in have and have[text].text)
            stale = sum(1 for text in have if text not in texts)
            late += len(texts) - done + stale
            print(f"{part}_{language}: {done} of {len(texts)}" + f", {stale} stale" * bool(stale))
            wrong += _say_troubles(have, f"{part}_{language}")
    print(f"{len(found.unknown)} places cannot be read (texts.py unknown)")
    return 1 if wrong or (strict and late) else 0


def _say_troubles(entries: Catalogue, name: str) -> int:
    lines = [
        f"{name}: {text.source[:50]!r}: {trouble}"
        for text, entry in entries.items()
        for trouble in catalogue.troubles(text.source, entry.text)
    ]
    for line in lines:
        print(line)
    return len(lines)


def todo(part: str, language: str) -> int:
    """What one part lacks in a language."""
    texts, have = gathered().parts[part], catalogue.read(part, language)
    lacking = [
        {"context": text.context, "source": text.source, "where": str(place)}
        | ({"comment": text.comment} if text.comment else {})
        for text, place in texts.items()
        if text not in have or not have[text].text
    ]
    json.dump(lacking, sys.stdout, ensure_ascii=False, indent=0)
    print()
    return 0


def take(part: str, language: str, file: Path) -> int:
    """Takes the sound ones of a file's translations; says which are not, and why."""
    texts = gathered().parts[part]
    have = catalogue.renewed(texts, catalogue.known_everywhere(language))
    taken, refused = 0, 0
    for given in json.loads(file.read_text("utf-8")):
        text = Text(given["context"], given["source"], given.get("comment", ""))
        if not given.get("text"):
            continue
        wrong = catalogue.troubles(text.source, given["text"])
        if text not in texts:
            wrong = [f"no text of {part}"]
        for trouble in wrong:
            print(f"refused {text.context}: {text.source[:60]!r}: {trouble}")
        refused += bool(wrong)
        if not wrong:
            taken += 1
            have[text] = have[text]._replace(text=given["text"])
    catalogue.write(part, language, have)
    left = sum(1 for entry in have.values() if not entry.text)
    print(f"{taken} taken, {refused} refused, {left} of {len(have)} left")
    return 1 if refused else 0


def compile_all() -> int:
    """One file for each language, of what is translated."""
    lrelease = shutil.which("lrelease") or shutil.which("lrelease-qt5")
    if lrelease is None:
        print("lrelease is missing; install qttools5-dev-tools, then try again.")
        return 1
    for language in LANGUAGES:
        parts = [str(catalogue.path(part, language)) for part in PARTS]
        made = str(catalogue.compiled(language))
        subprocess.run(
            [lrelease, "-silent", "-nounfinished", *parts, "-qm", made],
            check=True,
        )
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
