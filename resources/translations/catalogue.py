# SPDX-License-Identifier: LGPL-2.1-or-later
"""Catalogues of translations in Qt's .ts format, and what makes a translation sound."""

from __future__ import annotations

import re
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from string import Formatter
from typing import NamedTuple
from xml.etree import ElementTree

from gathering import PARTS, ROOT, Place, Text

HERE = Path(__file__).resolve().parent
LANGUAGES = ("de", "fr")
_SENTENCE_ENDS = (".", ":", "?", "!", "...", ",", ";")


class Entry(NamedTuple):
    """A text in another language; empty while there is none."""

    text: str
    file: str


Catalogue = dict[Text, Entry]


def path(part: str, language: str) -> Path:
    return HERE / f"{part}_{language}.ts"


def compiled(language: str) -> Path:
    """The file that the host loads."""
    return HERE / f"veneer_{language}.qm"


def read(part: str, language: str) -> Catalogue:
    """A catalogue as its file has it; empty where there is no file."""
    file = path(part, language)
    if not file.exists():
        return {}
    found: Catalogue = {}
    for context in ElementTree.parse(file).iter("context"):
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            key = Text(name, message.findtext("source") or "", message.findtext("comment") or "")
            location = message.find("location")
            where = "" if location is None else location.get("filename", "")
            found[key] = Entry(message.findtext("translation") or "", where)
    return found


def write(part: str, language: str, catalogue: Catalogue) -> None:
    """Writes a catalogue, contexts and texts in the order of the alphabet."""
    root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    for name in sorted({key.context for key in catalogue}):
        context = ElementTree.SubElement(root, "context")
        ElementTree.SubElement(context, "name").text = name
        for key in sorted(key for key in catalogue if key.context == name):
            entry = catalogue[key]
            message = ElementTree.SubElement(context, "message")
            ElementTree.SubElement(message, "location", filename=entry.file)
            ElementTree.SubElement(message, "source").text = key.source
            if key.comment:
                ElementTree.SubElement(message, "comment").text = key.comment
            translation = ElementTree.SubElement(message, "translation")
            if entry.text:
                translation.text = entry.text
            else:
                translation.set("type", "unfinished")
    ElementTree.indent(root, " ")
    body = ElementTree.tostring(root, "unicode")
    new = f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n'
    file = path(part, language)
    if not file.exists() or file.read_text("utf-8") != new:
        file.write_text(new, "utf-8", newline="\n")


def renewed(texts: dict[Text, Place], known: Catalogue) -> Catalogue:
    """The catalogue of `texts`, with the translations that are `known` of them."""
    return {
        text: Entry(known[text].text if text in known else "", place.file)
        for text, place in texts.items()
    }


def known_everywhere(language: str) -> Catalogue:
    """Whatever has been translated: a text may move from one part to another."""
    known: Catalogue = {}
    for part in reversed(PARTS):
        known |= {key: entry for key, entry in read(part, language).items() if entry.text}
    return known


# --- what is wrong with a translation -----------------------------------------------------------


def troubles(source: str, text: str) -> list[str]:
    """What makes `text` no translation of `source` that can be filled and shown like it."""
    return list(_troubles(source, text)) if text else []


def _troubles(source: str, text: str) -> Iterator[str]:
    for what, find in (
        ("the names in braces", _fields),
        ("the lengths that stand before mm", _lengths),
        ("the %1, %2", lambda one: set(re.findall(r"%\d", one))),
        ("the tags", lambda one: Counter(re.findall(r"</?\w[^<>]*>", one))),
        ("the number of & for the keyboard", lambda one: len(_accelerators(one))),
        ("the space in front", lambda one: _edge(one, 0)),
        ("the space or the sign at the end", lambda one: (_edge(one, -1), _end(one))),
    ):
        try:
            here, there = find(source), find(text)
        except ValueError as error:
            yield f"cannot be read: {error}"
            return
        if here != there:
            yield f"{what}: {_shown(here)} in English, {_shown(there)} here"


def _fields(text: str) -> set[str]:
    """Names with how they are formatted; a text without names may hold any braces."""
    return {
        f"{name}!{how}:{form}" for _, name, form, how in Formatter().parse(text) if name is not None
    }


def _lengths(text: str) -> Counter[str]:
    return Counter(name for found in _of_length().findall(text) for name in _names(found))


def _of_length() -> re.Pattern[str]:
    if str(ROOT) not in sys.path:
        sys.path.insert(0, str(ROOT))
    from veneerwb.core.checks.finding import LENGTHS

    return LENGTHS


def _names(found: str) -> list[str]:
    return re.findall(r"\{(\w+)\}", found)


def _accelerators(text: str) -> list[str]:
    return re.findall(r"&(?=[^\s&])", text.replace("&&", "")) if "<" not in text else []


def _edge(text: str, end: int) -> str:
    return text[end] if text[end].isspace() else ""


def _end(text: str) -> str:
    last = text.rstrip().replace("\u2026", "...")
    return next((end for end in sorted(_SENTENCE_ENDS, key=len, reverse=True)
                 if last.endswith(end)), "")  # fmt: skip


def _shown(one: object) -> str:
    """Something found in a text, for a person."""
    if isinstance(one, Counter):
        one = one.elements()
    if isinstance(one, (set, Iterator)) or hasattr(one, "__next__"):
        return " ".join(sorted(map(str, one))).replace("!None:", "") or "none"  # type: ignore
    return repr(one)
