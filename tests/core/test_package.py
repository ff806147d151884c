# SPDX-License-Identifier: LGPL-2.1-or-later
"""The files about the project agree with each other, and every file keeps to the house style."""

import ast
import os
import re
import tomllib
from collections.abc import Iterator
from fnmatch import fnmatch
from pathlib import Path
from xml.etree import ElementTree

import pytest

import veneerwb

ROOT = Path(__file__).parents[2]
MOST_LINES = 400
NAMESPACE = "{https://wiki.freecad.org/Package_Metadata}"
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
ADDON = ElementTree.parse(ROOT / "package.xml").getroot()


def python_files() -> Iterator[Path]:
    for folder, inner, names in os.walk(ROOT):
        inner[:] = sorted(name for name in inner if not name.startswith(".") and name != "out")
        yield from (Path(folder, name) for name in sorted(names) if fnmatch(name, "[!.]*.py"))


def addon(tag: str) -> list[str]:
    return [element.text or "" for element in ADDON.iter(NAMESPACE + tag)]


def test_every_place_gives_the_same_version_and_date() -> None:
    newest = re.search(r"^## (\S+) - (\S+)$", (ROOT / "CHANGELOG.md").read_text("utf-8"), re.M)
    assert newest is not None
    assert addon("version") == [newest[1]]
    assert addon("date") == [newest[2]]
    assert PROJECT["version"] == veneerwb.__version__ == newest[1]


def test_the_addon_asks_for_the_python_that_the_project_does() -> None:
    assert PROJECT["requires-python"] == ">=" + addon("pythonmin")[0]


def test_the_addon_has_three_to_seven_tags() -> None:
    assert 3 <= len(addon("tag")) <= 7


@pytest.mark.parametrize(
    "path", list(python_files()), ids=lambda path: path.relative_to(ROOT).as_posix()
)
def test_python_file_keeps_to_the_house_style(path: Path) -> None:
    text = path.read_text("utf-8")
    assert text.splitlines()[0] == "# SPDX-License-Identifier: LGPL-2.1-or-later"
    assert ast.get_docstring(ast.parse(text)), "says in a docstring what it is for"
    assert len(text.splitlines()) <= MOST_LINES


@pytest.mark.parametrize("folder", ["tests", "resources"])
def test_folder_is_no_package_that_could_hide_another(folder: str) -> None:
    """The addon's folder is on the host's sys.path."""
    assert not list((ROOT / folder).rglob("__init__.py"))
