# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the host loads says what the catalogues say: a zip install has nothing to compile them."""

from pathlib import Path
from xml.etree import ElementTree

import pytest

from veneerwb.paint.qt import QtCore

FOLDER = Path(__file__).parents[2] / "resources/translations"


def catalogued(language):
    """(context, source, comment): translation, of all parts."""
    return {
        (context.findtext("name"), message.findtext("source"), message.findtext("comment") or ""):
            message.findtext("translation")
        for file in FOLDER.glob(f"*_{language}.ts")
        for context in ElementTree.parse(file).iter("context")
        for message in context.iter("message")
        if message.find("translation").get("type") != "unfinished"
    }  # fmt: skip


@pytest.mark.parametrize("language", ["de", "fr"])
def test_the_host_loads_what_the_catalogues_say(language):
    """`resources/translations/texts.py compile` makes it so."""
    known = catalogued(language)
    assert len(known) > 500
    loaded = QtCore.QTranslator()
    assert loaded.load(str(FOLDER / f"veneer_{language}.qm"))
    wrong = [
        (key, text, loaded.translate(*key))
        for key, text in known.items()
        if loaded.translate(*key) != text
    ]
    assert wrong == []


def test_nothing_else_is_loaded():
    """The host takes every file whose name ends with the language."""
    assert {file.name for file in FOLDER.glob("*.qm")} == {"veneer_de.qm", "veneer_fr.qm"}
