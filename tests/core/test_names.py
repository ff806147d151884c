# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every name that a person reads stands in docs/names.md, where it is said whose word it is.

Names are what stands for itself: commands, labels, choices, titles, headings, layers, files, keys,
colours, icons. Sentences are not, nor texts with values in them. Sources are read, not run.
"""

import ast
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

ROOT = Path(__file__).parents[2]
PAGE = ROOT / "docs/names.md"
WHOSE = re.compile(r"trade|ours|host|(host|standard): [^|]+")
MOST_WORDS = 4
"""Longer texts of the sources explain; in forms and tables all that is no sentence counts."""
STRING = r'"((?:[^"\\\n]|\\.)*)"'
SAID = re.compile(rf"\b(?:(?:word|marked|say)\(|translate\(\s*HERE,)\s*{STRING}\s*[,)]")
FILES = re.compile(rf"(?:self\._pdf|PacketFile)\(\s*{STRING}")
CODE = re.compile(rf"^(?:\w*CODE|CUTS|BILL)(?:, \w+)? = {STRING}", re.M)
OBJECT = re.compile(r'\baddObject\(\s*"[\w:]+", "(\w+)"')
ADDED = re.compile(r'\badded\(doc, "\w+", (\w+)(?:, "(\w+)")?\)')
KEYS = re.compile(r"\bKey_(\w+)")
PROPERTY = re.compile(r'Property\(\s*"\w+",\s*"(\w+)",\s*"([^"]+)"')
COLUMN = re.compile(r'^ {4}\("([^"]+)", "(?:particulars|extent)"', re.M)
KIND = re.compile(r'^ {4}"([A-Z][^"]*)": \(', re.M)
MATCH = re.compile(r'marked\(\s*"([A-Z][^".]*\bmatch\b[^".]*)"\)')
COLOUR = re.compile(r'^ {4}"(\w+Colour)": ', re.M)
SHOWN = {"text", "title", "windowTitle", "specialValueText", "placeholderText", "suffix"}


def cells():
    """The table rows of the page: (section, names in code spans, whose, where seen)."""
    section = ""
    for line in PAGE.read_text("utf-8").splitlines():
        row = [cell.strip() for cell in line.strip("|").split(" | ")]
        if line.startswith("## "):
            section = line[3:]
        if line.startswith("|") and "`" in row[0]:
            yield section, re.findall("`([^`]+)`", row[0]), *row[1:]


LISTED = {name.casefold() for _, names, *_ in cells() for name in names}
LOOKED_AT = ("Workbench and tree", "Files", "Keys and mouse", "Colours", "Marks", "Icons")
"""Sections that were written by looking at the product; the others hold what is found here."""


def source(*parts):
    return ROOT.joinpath("veneerwb", *parts).read_text("utf-8")


def plain(text):
    """Without the mark of its key, and the dots that say that more is asked."""
    return text.replace("&", "").strip().removesuffix("...")


def is_name(text):
    return bool(re.search(r"\w", text)) and "{" not in text and not re.search(r"[.:?]$", text)


def literals(file, *names):
    """The strings in the module's constants of these names."""
    found = []
    for node in ast.parse(source(*file.split("/"))).body:
        if not isinstance(node, ast.Assign | ast.AnnAssign):
            continue
        target = ast.unparse(node.targets[0] if isinstance(node, ast.Assign) else node.target)
        if set(re.findall(r"\w+", target)) & set(names):
            found += [one.value for one in ast.walk(node.value)
                      if isinstance(one, ast.Constant) and isinstance(one.value, str)]  # fmt: skip
    return found


def commands():
    first = rf'Command\(\s*"\w+", "[\w-]+",\s*QT_TRANSLATE_NOOP\("\w+", {STRING}'
    title = rf'QT_TRANSLATE_NOOP\("Workbench", {STRING}'
    table = source("gui", "commands.py")
    return [*re.findall(first, table), *re.findall(title, table)]


def forms():
    for form in sorted(ROOT.glob("resources/ui/*.ui")):
        for one in ElementTree.parse(form).iter():
            if one.get("name") in SHOWN and (text := one.findtext("string")):
                yield text


def said():
    """The short texts of the sources."""
    for file in ROOT.glob("veneerwb/**/*.py"):
        texts = SAID.findall(file.read_text("utf-8"))
        yield from (text for text in texts if len(text.split()) <= MOST_WORDS)


def properties():
    """Of document objects, and their groups in the host's property editor."""
    for file in ROOT.glob("veneerwb/host/objects/*.py"):
        yield from (text for found in PROPERTY.findall(file.read_text("utf-8")) for text in found)


def choices():
    """Of properties, as documents keep them: those in the sources of document objects."""
    for file in ROOT.glob("veneerwb/host/objects/*.py"):
        tree = ast.parse(file.read_text("utf-8"))
        calls = (one for one in ast.walk(tree) if isinstance(one, ast.Call))
        kept = [one.args[4] for one in calls if ast.unparse(one).startswith(
            "Property('Enumeration'") and len(one.args) > 4]  # fmt: skip
        for one in (*kept, *(n.value for n in tree.body if isinstance(n, ast.Assign))):
            if isinstance(one, ast.Tuple):
                yield from (e.value for e in one.elts if isinstance(getattr(e, "value", 0), str))


def sheets():
    """Codes by which pages know what they show; titles are among the short texts."""
    for file in (ROOT / "veneerwb/core/shop/pages").glob("*.py"):
        yield from CODE.findall(file.read_text("utf-8"))


def objects():
    """What objects are called in the tree, before they are renamed."""
    for file in ROOT.glob("veneerwb/host/**/*.py"):
        text = file.read_text("utf-8")
        yield from OBJECT.findall(text)
        yield from (named or kind for kind, named in ADDED.findall(text))


def matches():
    """Kinds of match and of top, and the titles of matches."""
    yield from KIND.findall(source("host", "kinds.py"))
    for file in (ROOT / "veneerwb/core/matches").glob("*.py"):
        yield from MATCH.findall(file.read_text("utf-8"))


def headings():
    """Of lists that are written as CSV."""
    yield from COLUMN.findall(source("core", "inventory.py"))
    for file in ("core/shop/cutlist.py", "core/buildup/bill.py", "core/chalk.py"):
        yield from literals(file, "HEADINGS", "CORNER")


def keys():
    for file in ROOT.glob("veneerwb/gui/**/*.py"):
        yield from KEYS.findall(file.read_text("utf-8"))


FOUND = {
    "commands": commands,
    "forms": forms,
    "short texts": said,
    "properties": properties,
    "choices": choices,
    "sheets": sheets,
    "objects": objects,
    "headings": headings,
    "layers": lambda: literals("core/shop/templates/marks.py", "CUT", "AXIS"),
    "matches and tops": matches,
    "files of the packet": lambda: FILES.findall(source("host", "packet.py")),
    "keys": keys,
    "colours": lambda: COLOUR.findall(source("host", "settings.py")),
    "icons": lambda: [file.stem for file in (ROOT / "resources/icons").glob("*.svg")],
}  # fmt: skip
LEAST = {
    "commands": 23, "forms": 300, "short texts": 400, "properties": 200, "choices": 60,
    "sheets": 12, "objects": 10, "headings": 40, "layers": 11, "matches and tops": 38,
    "files of the packet": 8, "keys": 20, "colours": 14, "icons": 28,
}  # fmt: skip
"""How many there are at least: fewer, and the sources are no longer read as they are written."""


def found(kind):
    return {name for name in map(plain, FOUND[kind]()) if is_name(name)}


@pytest.mark.parametrize("kind", FOUND)
def test_every_name_is_listed(kind):
    """A new one: judge whose it is (the trade's, the host's, a standard's, our own plain English,
    and no other program's), and write it into a row of the page."""
    names = found(kind)
    assert len(names) >= LEAST[kind]
    assert sorted(name for name in names if name.casefold() not in LISTED) == []


def test_names_that_have_gone_are_not_listed():
    there = {name.casefold() for kind in FOUND for name in found(kind)}
    listed = {name for section, names, *_ in cells() if section not in LOOKED_AT for name in names}
    assert sorted(name for name in listed if name.casefold() not in there) == []


def test_every_row_says_whose_and_where():
    for _, names, *rest in cells():
        assert len(rest) == 2 and WHOSE.fullmatch(rest[0]) and rest[1], names
