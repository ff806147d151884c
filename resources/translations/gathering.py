# SPDX-License-Identifier: LGPL-2.1-or-later
"""Finds every text for a person: in Python by its syntax, in forms by their format."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterable, Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple
from xml.etree import ElementTree

ROOT = Path(__file__).resolve().parents[2]
PARTS = ("forms", "screens", "core", "shop", "host")
"""Each is a file for one translator. A text that several use belongs to the first of them."""
SHARED = "Veneer"
"""The context of what is said below the screens, and of findings and errors everywhere."""
PROPERTIES = "App::Property"
"""The context in which the host looks for what it shows of properties."""

_SAYING = ("say", "word", "marked")
_MARKING = (*_SAYING, "QT_TRANSLATE_NOOP")
_TEMPLATES = {
    "VeneerError": ((1, "template"),),
    "Finding": ((2, "template"), (3, "remedy_template")),
}
_NAMING = ("positive", "finite", "whole", "choice")
"""Of `core.plane`: what they are given first names a value, in the sentence that refuses it."""
_PROPERTY = {"Property": 1, "add_property": 2}
"""Which argument of these calls is a property's name; its group and what it is for come next."""
_OUT_OF_SIGHT = ("SECRET", "HIDDEN")
_GOING_BETWEEN = (
    "veneerwb/words.py",
    "veneerwb/core/errors.py",
    "veneerwb/gui/panels/fields.py",
    "veneerwb/gui/language.py",
)
"""What they are given has been marked where it was written, as what `word` is given elsewhere."""


class Text(NamedTuple):
    """A text as Qt knows it: `comment` tells apart what else would be the same."""

    context: str
    source: str
    comment: str = ""


class Place(NamedTuple):
    """Where something stands in the project."""

    file: str
    line: int

    def __str__(self) -> str:
        return f"{self.file}:{self.line}"


class Gathered(NamedTuple):
    """All texts by part, each with where it was first found, and places of which the text cannot be
    known from the source alone."""

    parts: dict[str, dict[Text, Place]]
    unknown: list[tuple[Place, str]]


def gathered() -> Gathered:
    """Every text of the project."""
    parts: dict[str, dict[Text, Place]] = {part: {} for part in PARTS}
    unknown: list[tuple[Place, str]] = []
    seen: set[Text] = set()

    def take(part: str, found: Iterable[tuple[Text, Place]]) -> None:
        for text, place in found:
            if text.source and text not in seen:
                seen.add(text)
                parts[part][text] = place

    for form in sorted(ROOT.glob("resources/ui/*.ui")):
        take("forms", of_form(form, form.relative_to(ROOT).as_posix()))
    for part, file in sorted(_python(), key=lambda one: (PARTS.index(one[0]), one[1])):
        reader = of_python(file, file.relative_to(ROOT).as_posix())
        take(part, reader.found)
        unknown += reader.unknown
    return Gathered(parts, unknown)


def _python() -> Iterator[tuple[str, Path]]:
    yield "screens", ROOT / "InitGui.py"
    for file in (ROOT / "veneerwb").rglob("*.py"):
        first, second, *_ = (*file.relative_to(ROOT / "veneerwb").parts, "")
        if (first, second) == ("core", "shop") or first == "paint":
            yield "shop", file
        else:
            yield {"gui": "screens", "host": "host"}.get(first, "core"), file


# --- forms --------------------------------------------------------------------------------------


def of_form(form: Path, file: str) -> Iterator[tuple[Text, Place]]:
    """A form's strings, except those marked as not to be translated."""
    lines = form.read_text("utf-8").splitlines()
    root = ElementTree.fromstring("\n".join(lines))
    context, at = root.findtext("class") or "", 0
    for string in root.iter("string"):
        if string.get("notr") != "true" and string.text:
            start = string.text.splitlines()[0].replace("&", "&amp;").replace("<", "&lt;")
            rows = [*range(at, len(lines)), *range(at)]
            at = next((row for row in rows if f">{start}" in lines[row]), at)
            yield Text(context, string.text, string.get("comment", "")), Place(file, at + 1)


# --- Python -------------------------------------------------------------------------------------


def of_python(path: Path, file: str) -> Reader:
    """What the file at `path` says; `file` is its name in the project."""
    return Reader(file, path.read_text("utf-8"))


class Reader(ast.NodeVisitor):
    """Reads one file; what it finds is in `found`, what it cannot know in `unknown`."""

    def __init__(self, file: str, source: str) -> None:
        self.file = file
        self.found: list[tuple[Text, Place]] = []
        self.unknown: list[tuple[Place, str]] = []
        tree = ast.parse(source)
        nodes = list(ast.walk(tree))
        brought = [node for node in nodes if isinstance(node, ast.ImportFrom)]
        self.calls = _calls_of_words(brought)
        self.known = _brought_in(brought) | _constants(tree)
        self.called: dict[str, list[ast.Call]] = {}
        for node in nodes:
            if isinstance(node, ast.Call):
                self.called.setdefault(_last_name(node.func), []).append(node)
        self.inner: list[ast.FunctionDef] = []
        self.asked: list[str] = []
        self.given: dict[ast.FunctionDef, dict[str, list[ast.expr | None]]] = {}
        self.visit(tree)

    def visit_FunctionDef(self, function: ast.FunctionDef) -> None:
        self.inner.append(function)
        self.generic_visit(function)
        self.inner.pop()

    def visit_Call(self, call: ast.Call) -> None:
        name = self._called(call.func)
        if name == "QT_TRANSLATE_NOOP" or (name == "translate" and not _is_method(call.func)):
            self._in_context(call)
        elif name in _SAYING and not (name == "word" and self._texts(call.args[0]) is None):
            self._collect(SHARED, call.args[0] if call.args else None, call)
        elif name in _TEMPLATES and self.file not in _GOING_BETWEEN:
            for row, keyword in _TEMPLATES[name]:
                given = _argument(call, row, keyword)
                if given is not None:
                    self._collect(SHARED, given, call)
        elif name in _NAMING and call.args and self._texts(call.args[0]) is not None:
            self._collect(SHARED, call.args[0], call)
        elif name in _PROPERTY and len(call.args) > _PROPERTY[name] + 2:
            self._property(call, _PROPERTY[name])
        self.generic_visit(call)

    def _called(self, func: ast.expr) -> str:
        """What is called; a saying only where it is that of `veneerwb.words`."""
        if isinstance(func, ast.Attribute):
            of_words = isinstance(func.value, ast.Name) and func.value.id in self.calls
            return "" if func.attr in _SAYING and not of_words else func.attr
        if isinstance(func, ast.Name):
            name = self.calls.get(func.id, func.id)
            return "" if name in _SAYING and func.id not in self.calls else name
        return ""

    def _in_context(self, call: ast.Call) -> None:
        contexts = list(self._texts(call.args[0]) or ())
        if contexts == [PROPERTIES] and not isinstance(call.args[1], ast.Constant):
            return  # found where the property is made
        if len(contexts) == 1 and len(call.args) in (2, 3):
            comment = list(self._texts(call.args[2]) or ("",)) if len(call.args) > 2 else [""]
            self._collect(contexts[0], call.args[1], call, comment[0])
        else:
            self._miss(call)

    def _property(self, call: ast.Call, row: int) -> None:
        """What the host shows of a property: its name and group in words, and what it is for."""
        name, group, text = call.args[row : row + 3]
        self._collect(PROPERTIES, text, call)
        if not any(word in ast.unparse(call) for word in _OUT_OF_SIGHT):
            for label in (name, group):
                for shown in self._texts(label) or ():
                    self.found.append((Text(PROPERTIES, _spaced(shown)), self._place(call)))

    def _place(self, call: ast.Call) -> Place:
        return Place(self.file, call.lineno)

    def _collect(
        self, context: str, given: ast.expr | None, call: ast.Call, comment: str = ""
    ) -> None:
        texts = None if given is None else self._texts(given)
        if texts is None:
            self._miss(call)
        for text in texts or ():
            self.found.append((Text(context, text, comment), self._place(call)))

    def _miss(self, call: ast.Call) -> None:
        if self.file not in _GOING_BETWEEN:
            self.unknown.append((self._place(call), ast.unparse(call)[:90]))

    def _texts(self, node: ast.expr) -> list[str] | None:
        """The texts that an expression may be, marked ones aside, which are collected where they
        stand; None where that cannot be known."""
        if isinstance(node, ast.Constant):
            return [node.value] if isinstance(node.value, str) else None
        if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Add):
            left, right = self._texts(node.left), self._texts(node.right)
            both = left is not None and right is not None
            return [one + other for one in left for other in right] if both else None
        if isinstance(node, ast.IfExp):
            return self._all([node.body, node.orelse])
        if isinstance(node, ast.JoinedStr):
            return self._joined(node)
        if isinstance(node, ast.Name):
            return self._named(node.id)
        if isinstance(node, ast.Subscript):
            table = node.value
            if isinstance(table, ast.Name):
                table = self.known.get(table.id, table)
            if isinstance(table, ast.Dict):
                return self._all(table.values)
            if isinstance(table, (ast.Tuple, ast.List)):
                return self._all(table.elts)
        if isinstance(node, ast.Call) and self._called(node.func) in _MARKING:
            return []
        if isinstance(node, ast.Attribute) and node.attr in ("template", "remedy_template"):
            return []  # of an error or a finding that is said anew
        return None

    def _named(self, name: str) -> list[str] | None:
        if name in self.asked:  # it may be made of itself
            return None
        for function in reversed(self.inner):
            if function not in self.given:
                self.given[function] = _given_names(function, self.called)
            if name in self.given[function]:
                nodes = self.given[function][name]
                self.asked.append(name)
                texts = None if None in nodes else self._all(node for node in nodes if node)
                self.asked.pop()
                return texts
        return self._texts(self.known[name]) if name in self.known else None

    def _joined(self, node: ast.JoinedStr) -> list[str] | None:
        """A text with others in it, all of them known."""
        whole = [""]
        for part in node.values:
            inner = part.value if isinstance(part, ast.FormattedValue) else part
            texts = self._texts(inner)
            if not texts:
                return None
            whole = [one + text for one in whole for text in texts]
        return whole

    def _all(self, nodes: Iterable[ast.expr]) -> list[str] | None:
        texts = [self._texts(node) for node in nodes]
        return None if None in texts else [text for some in texts for text in some or ()]


def _constants(tree: ast.Module) -> dict[str, ast.expr]:
    """What a module's names are given at its top."""
    return {
        target.id: node.value
        for node in tree.body
        if isinstance(node, (ast.Assign, ast.AnnAssign)) and node.value is not None
        for target in (node.targets if isinstance(node, ast.Assign) else [node.target])
        if isinstance(target, ast.Name)
    }


def _brought_in(imports: Iterable[ast.ImportFrom]) -> dict[str, ast.expr]:
    """The constants that a module imports from others of the project."""
    known = {}
    for node in imports:
        if (node.module or "").startswith("veneerwb."):
            there = _module(node.module or "")
            names = [(one.asname or one.name, one.name) for one in node.names]
            known |= {name: there[own] for name, own in names if own in there}
    return known


@cache
def _module(name: str) -> dict[str, ast.expr]:
    file = ROOT.joinpath(*name.split(".")).with_suffix(".py")
    return _constants(ast.parse(file.read_text("utf-8"))) if file.exists() else {}


def _given_names(
    function: ast.FunctionDef, called: dict[str, list[ast.Call]]
) -> dict[str, list[ast.expr | None]]:
    """What a function's names are given, None where it cannot be known; its parameters by the calls
    in the same file."""
    plain = function.args
    names = [one.arg for one in (*plain.posonlyargs, *plain.args)]
    if names[:1] in (["self"], ["cls"]):
        del names[0]
    given: dict[str, list[ast.expr | None]] = {}
    calls = called.get(function.name, ())
    defaults = dict(zip(reversed(names), reversed(plain.defaults)))
    defaults |= {one.arg: value for one, value in zip(plain.kwonlyargs, plain.kw_defaults)}
    for row, name in enumerate([*names, *(one.arg for one in plain.kwonlyargs)]):
        by_place = row if row < len(names) else None
        given[name] = [_argument(call, by_place, name) or defaults.get(name) for call in calls]
        given[name] = given[name] or [None]
    for node in ast.walk(function):
        if isinstance(node, ast.Assign):
            for target in node.targets:
                for name, value in _pairs(target, node.value):
                    given.setdefault(name, []).append(value)
        elif isinstance(node, ast.AnnAssign) and node.value is not None:
            for name, value in _pairs(node.target, node.value):
                given.setdefault(name, []).append(value)
        elif isinstance(node, (ast.AugAssign, ast.For, ast.NamedExpr, ast.comprehension)):
            for name, _ in _pairs(node.target, None):
                given.setdefault(name, []).append(None)
    return given


def _pairs(target: ast.expr, value: ast.expr | None) -> Iterator[tuple[str, ast.expr | None]]:
    """The names of an assignment and what each is given."""
    if isinstance(target, ast.Name):
        yield target.id, value
    elif isinstance(target, ast.Tuple):
        if isinstance(value, ast.IfExp):
            yield from _pairs(target, value.body)
            yield from _pairs(target, value.orelse)
            return
        known = isinstance(value, ast.Tuple) and len(value.elts) == len(target.elts)
        for row, one in enumerate(target.elts):
            yield from _pairs(one, value.elts[row] if known else None)  # type: ignore


def _spaced(name: str) -> str:
    """A property's name as the host shows it: CutAs is Cut As, TipX Tip X, FullM2 Full M2."""
    return re.sub(r"(?<=[^A-Z ])(?=[A-Z])", " ", name)


def _last_name(func: ast.expr) -> str:
    return getattr(func, "attr", getattr(func, "id", ""))


def _argument(call: ast.Call, row: int | None, keyword: str) -> ast.expr | None:
    if row is not None and row < len(call.args):
        return call.args[row]
    return next((one.value for one in call.keywords if one.arg == keyword), None)


def _is_method(func: ast.expr) -> bool:
    """Whether something of that name is called that is no translation, such as a painter's."""
    return isinstance(func, ast.Attribute) and ast.unparse(func.value) not in ("FreeCAD.Qt", "Qt")


def _calls_of_words(imports: Iterable[ast.ImportFrom]) -> dict[str, str]:
    """What a file calls the module of words and what it has of it: what that is called there."""
    return {
        one.asname or one.name: one.name
        for node in imports
        for one in node.names
        if node.module == "veneerwb.words" or (node.module, one.name) == ("veneerwb", "words")
    }
