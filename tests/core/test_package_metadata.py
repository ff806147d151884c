# SPDX-License-Identifier: LGPL-2.1-or-later
"""package.xml keeps the published rules of format 1, and names what is so.

The rules are those of FreeCAD's documentation: the page Package_Metadata of its wiki
(https://wiki.freecad.org/Package_Metadata) and, newer, the manifest's pages of its Addon Academy
(https://freecad.github.io/Addon-Academy/Topics/Structuring/Manifest), both read in 2026-11. Where
they differ the stricter one is taken: the Academy requires freecadmin and pythonmin and has both,
as dependencies, in the package and not in its contents.
"""

import ast
import re
import tomllib
from collections import Counter
from pathlib import Path
from xml.etree import ElementTree

import pytest

ROOT = Path(__file__).parents[2]
FILE = ROOT / "package.xml"
SPACE = "https://wiki.freecad.org/Package_Metadata"
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]

REQUIRED = {
    "name", "version", "date", "description", "maintainer", "license", "icon", "content",
    "freecadmin", "pythonmin",
}  # fmt: skip
ONCE = {"name", "version", "date", "description", "icon", "content", "freecadmin", "freecadmax",
        "pythonmin"}  # fmt: skip
ALLOWED = REQUIRED | {"url", "author", "depend", "conflict", "replace", "tag", "freecadmax"}
"""Directly under <package>; "no other tags are permitted" there, says the wiki."""
IN_CONTENT = (ALLOWED - {"content"}) | {"classname", "subdirectory", "file"}
CONTENTS = {"workbench", "macro", "preferencepack", "bundle", "other"}
URLS = {"website", "bugtracker", "repository", "readme", "documentation", "discussion"}
DEPENDS = {"automatic", "addon", "internal", "python"}
RELATIONS = {"version_lt", "version_lte", "version_eq", "version_gte", "version_gt", "condition",
             "optional", "type"}  # fmt: skip
LICENCES = {
    "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "BSL-1.0", "GPL-2.0-or-later",
    "GPL-3.0-or-later", "LGPL-2.1-or-later", "LGPL-3.0-or-later", "MIT", "MPL-1.1", "CC0-1.0",
    "CC-BY-SA-4.0",
}  # fmt: skip
"""The SPDX identifiers that the Academy lists as usual."""
SEMANTIC = r"\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?"
CALENDAR = r"\d{4}\.\d\d(\.\d\d)?"


def broken(text: str) -> list[str]:
    """Which rules a package.xml breaks, one sentence each."""
    try:
        root = ElementTree.fromstring(text)
    except ElementTree.ParseError as error:
        return [f"not well-formed: {error}"]
    if root.tag != f"{{{SPACE}}}package" or root.get("format") != "1":
        return ["not a <package> of format 1 in the namespace"]
    found = [*_of_tags(root, "package", ALLOWED, REQUIRED), *_of_values(root)]
    for content in root.iter(f"{{{SPACE}}}content"):
        if not len(content):
            found.append("nothing in <content>")
        for item in content:
            found += _of_content(item)
    return found


def _name(element):
    return element.tag.removeprefix(f"{{{SPACE}}}")


def _text(element):
    return (element.text or "").strip()


def _of_tags(element, name, allowed, required):
    count = Counter(map(_name, element))
    yield from (f"<{tag}> is not in <{name}>" for tag in sorted(required - count.keys()))
    yield from (f"<{tag}> is not permitted in <{name}>" for tag in sorted(count.keys() - allowed))
    yield from (f"<{tag}> more than once" for tag in sorted(ONCE) if count[tag] > 1)


def _of_content(item):
    name = _name(item)
    if name not in CONTENTS:
        yield f"<{name}> is no content"
    workbench = name == "workbench"
    yield from _of_tags(item, name, IN_CONTENT, {"classname", "icon"} if workbench else {"name"})
    yield from _of_values(item)
    folder = item.findtext(f"{{{SPACE}}}subdirectory", item.findtext(f"{{{SPACE}}}name", ""))
    if not (ROOT / folder).is_dir():
        yield f"no folder {folder!r}"


def _of_values(parent):
    for element in parent:
        name, text = _name(element), _text(element)
        if name != "content" and not text:
            yield f"<{name}> is empty"
        if name != "content" and (len(element) or re.search(r"[<>]", text)):
            yield f"<{name}> has markup"
        yield from RULES.get(name, lambda *_: ())(element, text)
    urls = [one for one in parent if _name(one) == "url"]
    if _name(parent) == "package" and "repository" not in {one.get("type") for one in urls}:
        yield "no <url> of the repository"


def _needs(good, sentence):
    return () if good else (sentence,)


def _url(element, text):
    yield from _needs(element.get("type") in URLS, f"a <url> of type {element.get('type')}")
    yield from _needs(re.fullmatch(r"https?://\S+", text), f"{text} is no address")
    if element.get("type") == "repository":
        yield from _needs(element.get("branch"), "the repository has no branch")
    if element.get("type") == "readme":  # "a direct link to a rendered version"
        yield from _needs("/raw/" not in text, "the readme is not the rendered one")


def _file(element, text):
    yield from _needs("\\" not in text, f"{text}: a path has slashes")
    yield from _needs((ROOT / text).is_file(), f"there is no {text}")


def _license(element, text):
    yield from _needs(text in LICENCES, f"{text} is no usual SPDX identifier")
    if element.get("file"):
        yield from _file(element, element.get("file"))


def _depend(element, text):
    yield from _needs(element.attrib.keys() <= RELATIONS, f"{text}: {list(element.attrib)}")
    yield from _needs(element.get("type", "automatic") in DEPENDS, f"{text}: what type is it")
    yield from _needs(element.get("optional", "false") in ("true", "false"), f"{text}: optional")


def _like(pattern, sentence):
    return lambda element, text: _needs(re.fullmatch(pattern, text), f"{text}: {sentence}")


RULES = {
    "name": _like(r'[^/\\?%*:|"<>]+', "a name that no file could have"),
    "version": _like(f"{SEMANTIC}|{CALENDAR}", "neither semantic nor calendar versioning"),
    "date": _like(r"\d{4}-\d\d-\d\d|\d{4}\.\d\d\.\d\d", "not YYYY-MM-DD"),
    "maintainer": lambda element, text: _needs(
        re.fullmatch(r"\S+@\S+\.\S+", element.get("email", "")), f"{text} has no email address"
    ),
    "license": _license,
    "icon": _file,
    "url": _url,
    "depend": _depend,
    "conflict": _depend,
    "replace": _depend,
    "freecadmin": _like(r"\d+\.\d+\.\d+", "not MAJOR.MINOR.BUILD"),
    "freecadmax": _like(r"\d+\.\d+\.\d+", "not MAJOR.MINOR.BUILD"),
    "pythonmin": _like(r"3\.\d+", "not 3.MINOR"),
}
WRONG = {
    "<package format=\"1\"": "<package format=\"2\"",
    "https://wiki.freecad.org/Package_Metadata": "https://wiki.freecad.org/Other",
    "</package>": "",
    "<name>Veneer Layup</name>\n  <desc": "<name>Veneer: Layup</name>\n  <desc",
    "<version>0.1.0": "<version>new",
    "<date>2026-11-25": "<date>25.11.2026",
    "email=\"veneer-layup@example.org\"": "",
    ">LGPL-2.1-or-later<": ">LGPL2<",
    "file=\"LICENSE\"": "file=\"LICENCE\"",
    " branch=\"main\"": "",
    "type=\"repository\"": "type=\"website\"",
    "/blob/main/README": "/raw/main/README",
    "type=\"bugtracker\"": "type=\"bugs\"",
    "<icon>resources/icons/veneer-layup.svg</icon>\n  <f": "<f",
    "<icon>resources/icons/": "<icon>resources\\icons\\",
    "<freecadmin>0.20.2</freecadmin>": "",
    "<freecadmin>0.20.2": "<freecadmin>0.20",
    "<pythonmin>3.11": "<pythonmin>3",
    "type=\"python\" version_gte=\"1.24\"": "type=\"pip\"",
    "optional=\"true\"": "optional=\"yes\"",
    "version_gte=\"9.4\"": "least=\"9.4\"",
    "<classname>VeneerWorkbench</classname>": "",
    "<subdirectory>./": "<subdirectory>nowhere",
    "<workbench>": "<workbench><script>x</script>",
    "<tag>veneer</tag>": "<tag>veneer</tag><screenshot>a.png</screenshot>",
    "Lays up table": "<b>Lays</b> up table",
}  # fmt: skip


def test_the_package_keeps_every_rule():
    assert broken(FILE.read_text("utf-8")) == []


@pytest.mark.parametrize("was", WRONG)
def test_each_rule_is_looked_at(was):
    text = FILE.read_text("utf-8")
    assert was in text
    assert broken(text.replace(was, WRONG[was], 1 if was != "</package>" else -1))


# --- what it says is so -------------------------------------------------------------------------


def depends():
    """What the package needs: its version, or more, and whether it can do without."""
    root = ElementTree.parse(FILE).getroot()
    return {
        one.text: (one.get("version_gte"), one.get("optional") == "true")
        for one in root.iter(f"{{{SPACE}}}depend")
    }


def test_the_package_needs_what_the_project_does_in_the_same_versions():
    needs = [re.fullmatch(r"(\w+)>=([\d.]+)", one).groups() for one in PROJECT["dependencies"]]
    assert [(name, version) for name, (version, _) in depends().items()] == needs


def test_what_is_optional_is_what_the_addon_can_do_without():
    from veneerwb.packages import EZDXF, NEEDED

    optional = {name for name, (_, optional) in depends().items() if optional}
    assert optional == {EZDXF.name}
    assert depends().keys() - optional == {one.name for one in NEEDED}


def test_the_class_is_that_of_the_start_file():
    named = ElementTree.parse(FILE).getroot().find(f".//{{{SPACE}}}classname").text
    tree = ast.parse((ROOT / "InitGui.py").read_text("utf-8"))
    (made,) = [node for node in tree.body if isinstance(node, ast.ClassDef)]
    assert made.name == named
    assert "Icon" in {target.id for node in made.body if isinstance(node, ast.Assign)
                      for target in node.targets}  # fmt: skip
