# SPDX-License-Identifier: LGPL-2.1-or-later
"""Objects whose values cannot be, selected, recomputed, shown and edited in their panels: what is
wrong is said in a sentence, and nothing takes long."""

import random
import re
import time

import FreeCADGui
import pytest
from FreeCAD import Vector
from PySide import QtGui

from veneerwb.gui.panels import base
from veneerwb.host.objects.base import kind_of

NAN, INF = float("nan"), float("inf")
NUMBERS = (NAN, INF, -INF, -1.0, 0.0, 1e300, 1e-300, 1e6)
WHOLE = (-1, 0, 1, 2**31 - 1, -(2**31))
LONG = "x" * 100_000
WORDS = ("", '<img src="//host/x.png"><b>', LONG, "\u202e\x7f", "=1+1", "%s {x} {0}", "1,2,x",
         "9" * 5000)  # fmt: skip
POINTS = ([], [Vector(NAN, 0, 0)] * 4, [Vector(1e300, 0, 0), Vector(0, 1e300, 0), Vector()],
          [Vector(0, 0, 1e300)] * 3, [Vector()])  # fmt: skip
VALUES = {
    "Float": NUMBERS, "Length": NUMBERS, "Distance": NUMBERS, "Angle": NUMBERS,
    "Integer": WHOLE, "Bool": (True, False), "String": WORDS,
    "FloatList": ([], [NAN] * 4, [1e300] * 3, [1.0] * 5000, [INF]),
    "IntegerList": ([], [-1] * 9, [2**31 - 1] * 3, [1] * 5000),
    "StringList": ([], [""], ["<b>"] * 900, [LONG]),
    "VectorList": POINTS,
}  # fmt: skip
"""By the kind of property."""
SHOWN = ("Leaf", "Bundle", "Stock", "Match", "Facing", "Run", "BuildUp", "Parts", "Bench", "Spot",
         "Closing", "Drawing")  # fmt: skip
COMMANDS = {
    "Leaf": ("Veneer_Faults", "Veneer_Backs", "Veneer_Marks"),
    "Bundle": ("Veneer_Sequence", "Veneer_Faults"),
    "Match": ("Veneer_CheckMatch", "Veneer_ChooseSpot", "Veneer_CloseRing"),
}  # fmt: skip
"""What opens on an object beside its double click."""


def links(obj, doc):
    """None, and others of the wrong kind that do not rest on it."""
    rest = set(obj.InListRecursive) | {obj}
    return [None, *(one for one in doc.Objects if one not in rest)]


def wrong(obj, rnd, some):
    """Gives an object values that cannot be; `some`: to how many of its properties."""
    for prop in obj.Proxy.properties:
        values = VALUES.get(prop.kind, ())
        if prop.kind.startswith("LinkList"):
            values = [[], links(obj, obj.Document)[1:4]]
        elif prop.kind in ("Link", "LinkGlobal"):
            values = links(obj, obj.Document)
        if values and rnd.random() < some:
            try:
                setattr(obj, prop.name, rnd.choice(values))
            except (ValueError, TypeError, RuntimeError):  # the host itself takes no such value
                continue


def one_of(doc, kind):
    return next(obj for obj in doc.Objects if kind_of(obj) == kind)


@pytest.fixture
def tried(user, settled, boxes):
    """Opens what a double click and, if asked, the commands open on an object; OK, and Cancel where
    that is refused, or Cancel, by turns."""

    def said_well(text):
        assert "does not know" not in text, text
        assert not text or text.endswith((".", "?")), text

    def leave(ok):
        for panel in base.shown():
            said_well(panel.form.trouble.text())
            for one in vars(panel.form).values():
                if isinstance(one, QtGui.QLabel) and one.isVisible():
                    assert "does not know" not in one.text(), one.text()
            if not (ok and panel.accept()):
                said_well(panel.form.trouble.text())
                panel.reject()
        if FreeCADGui.Control.activeDialog():
            FreeCADGui.Control.closeDialog()
        settled(3)

    def tried(obj, ok, commands):
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(obj)
        opens = [lambda: obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)]
        names = COMMANDS.get(kind_of(obj), ()) if commands else ()
        opens += [lambda name=name: FreeCADGui.runCommand(name) for name in names]
        for k, one in enumerate(opens):
            one()
            settled(3)
            leave(ok ^ bool(k % 2))
        for text in boxes:
            said_well(text)
        boxes.clear()

    return tried


@pytest.mark.parametrize("some", [0.3, 1.0])
def test_what_cannot_be_is_said_where_it_is_shown(opened, settled, tried, some):
    doc = opened()
    doc.UndoMode = 1
    for k, kind in enumerate(SHOWN):
        obj, began = one_of(doc, kind), time.monotonic()
        rnd = random.Random(f"{kind} {some}")
        doc.clearUndos()
        doc.openTransaction("Wrong")
        wrong(obj, rnd, some)
        doc.commitTransaction()
        FreeCADGui.Selection.addSelection(obj)
        doc.recompute()
        settled(2)
        tried(obj, ok=bool(k % 2) ^ (some == 0.3), commands=some == 0.3)
        while doc.UndoCount:
            doc.undo()
        settled(2)
        assert time.monotonic() - began < 10.0, kind
    for one in doc.Objects:
        if kind_of(one):
            one.touch()
    doc.recompute()
    assert [one.Message for one in doc.Objects if kind_of(one) and one.Message] == []


def test_parts_of_what_is_no_match_open_nothing(opened, settled, boxes):
    """They once opened a build-up of it."""
    doc = opened()
    parts = one_of(doc, "Parts")
    parts.Match = one_of(doc, "Stock")
    doc.recompute()
    parts.ViewObject.Proxy.doubleClicked(parts.ViewObject)
    settled()
    assert not base.shown() and not boxes and parts.Message.endswith(".")


def test_choices_that_there_are_not(opened, panels, boxes):
    """In each list of the document's."""

    def change(text):
        old = r'(type="App::PropertyEnumeration"[^>]*>\s*<Integer value=)"\d+"'
        start = text.index("<ObjectData")  # what stands before is the host's
        return text[:start] + re.sub(old, r'\1"99"', text[start:])

    doc = opened(Document=change)
    assert boxes == []
    names = ("Match", "Run", "Bench", "Closing", "PanelParts")
    assert len(panels(doc, names=names, commands="none")) == len(names)
    assert doc.getObject("Match").Kind == "Radial"
