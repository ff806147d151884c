# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel is called as its command is, in every language; one that edits what a *New* command made,
as that is called."""

import re
from functools import cache
from pathlib import Path
from xml.etree import ElementTree

import pytest

ROOT = Path(__file__).parents[2]
PANELS = [
    form.stem
    for form in sorted((ROOT / "resources" / "ui").glob("*.ui"))
    if ElementTree.parse(form).find('.//widget[@name="trouble"]') is not None
    and "_" not in form.stem
]
"""A panel has a label for what goes wrong; so have the tabs of a window, `spot_kept` say."""
MADE = {"match": "Match", "drawing": "Drawing"}


def drawn(panel):
    """(its class, title, command) of a form."""
    form = ElementTree.parse(ROOT / "resources" / "ui" / f"{panel}.ui")
    said = [form.findtext(f'widget/property[@name="{name}"]/string')
            for name in ("windowTitle", "whatsThis")]  # fmt: skip
    return form.findtext("class"), *said


@cache
def spoken(language):
    """(context, English): the translation."""
    return {
        (context.findtext("name"), one.findtext("source")): one.findtext("translation")
        for file in (ROOT / "resources" / "translations").glob(f"*_{language}.ts")
        for context in ElementTree.parse(file).iter("context")
        for one in context.iter("message")
    }


def menu_text(command):
    table = (ROOT / "veneerwb" / "gui" / "commands.py").read_text("utf-8")
    return re.search(rf'QT_TRANSLATE_NOOP\("{command}", "([^"]+)"\)', table)[1]


@pytest.mark.parametrize("panel", PANELS)
def test_a_panel_has_the_name_of_its_command(panel):
    kind, title, command = drawn(panel)
    menu = menu_text(command)
    assert title == MADE.get(panel, menu.replace("&", "").removesuffix("..."))
    if panel in MADE:
        assert f"New {title}" == menu.replace("&", "")
        return
    for language in ("de", "fr"):
        known = spoken(language)
        assert known[kind, title] == known[command, menu].replace("&", ""), language


def test_these_are_the_panels():
    assert len(PANELS) >= 15 and {"sequence", "check", "buildup", *MADE} <= set(PANELS)
