# SPDX-License-Identifier: LGPL-2.1-or-later
"""Names that look like markup are shown as they are written: nothing they ask for is fetched."""

from html import escape

from PySide import QtCore, QtGui

from veneerwb.gui.told import as_written
from veneerwb.host import compat
from veneerwb.host.objects.base import kind_of

MARKUP = '<img src="\\\\host\\x.png"><a href="http://host/">{name}</a> & &lt;b&gt;'
ASKS = '<img src="\\\\host'
IN_XML = escape(MARKUP)
TEXTS = ("Species", "Title", "Owner", "CoreMaterial", "Flitch", "Origin", "LotMark")


def named(doc):
    """Gives everything in a document such names."""
    for obj in doc.Objects:
        if kind_of(obj) or obj.TypeId == "Part::Box":
            obj.Label = MARKUP.format(name=obj.Name)
        for text in TEXTS:
            if kind_of(obj) and text in obj.PropertiesList:  # the host's have an Owner, too
                setattr(obj, text, MARKUP.format(name=text))
    doc.recompute()


def test_a_tip_and_a_box_hold_what_was_written():
    """As Qt reads them."""
    shown = QtGui.QTextDocument()
    for text in (MARKUP, "<b>\n5 < 6 & 7", "&lt;b&gt;"):
        shown.setHtml(as_written(text))
        assert shown.toPlainText() == text and as_written(text) != text
    assert as_written("5 & 6, it's") == "5 & 6, it's"


def test_a_line_on_the_console_is_shown_as_written(report, settled):
    """In the host's report; no label, which would take it for markup, shows it as well."""
    compat.say(f"{MARKUP}\n is lost")
    settled()
    assert f"{MARKUP} is lost\n" in report().toPlainText()
    for one in QtGui.QApplication.allWidgets():
        if isinstance(one, QtGui.QLabel) and one.textFormat() != QtCore.Qt.PlainText:
            assert ASKS not in one.text()


def test_every_panel_shows_names_as_they_are_written(opened, panels, boxes):
    doc = opened()
    named(doc)
    seen = []

    def look(panel):
        for one in QtGui.QApplication.allWidgets():
            if one.isVisible():
                assert ASKS not in one.toolTip(), one.objectName()
                if isinstance(one, QtGui.QLabel) and ASKS in one.text():
                    seen.append(one.objectName())
                    assert one.textFormat() == QtCore.Qt.PlainText, one.objectName()

    looked = panels(doc, look)
    assert len(looked) >= 16 and "measured" in seen
    assert not any(ASKS in text for text in boxes)


def test_a_documents_own_words_for_a_value_are_no_markup(opened, panels):
    """What a property is for is in the file as well."""
    doc = opened(Document=lambda text: text.replace('doc="', f'doc="{IN_XML} '))
    tips = []

    def look(panel):
        tips.extend(one.toolTip() for one in QtGui.QApplication.allWidgets() if one.isVisible())

    panels(doc, look, ("Run",), "Particulars")
    assert not any(ASKS in tip for tip in tips)
    assert any(ASKS.replace("<", "&lt;") in tip for tip in tips)
