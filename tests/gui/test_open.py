# SPDX-License-Identifier: LGPL-2.1-or-later
"""Documents saved without a window, opened in one: shown by the host's own display, saved,
reopened."""

import time
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.host import compat
from veneerwb.host.objects import add_match, add_stock

VERSION = ".".join(map(str, compat.version()))
FIXTURE = Path(__file__).parents[1] / "fixtures" / f"schema1-{VERSION}.FCStd"


@pytest.fixture(autouse=True)
def no_documents_left():
    yield
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


RED = (0.8, 0.1, 0.1)


def red_share(path):
    """The share of a saved picture of the view that is red."""
    image = QtGui.QImage(str(path))
    columns, rows = range(0, image.width(), 4), range(0, image.height(), 4)
    colours = [QtGui.QColor(image.pixel(x, y)) for x in columns for y in rows]
    return sum(c.red() - max(c.green(), c.blue()) > 40 for c in colours) / len(colours)


def looked_at(doc, path):
    """The share of the view that the matches of `doc` fill, waited for."""
    for obj in doc.findObjects("Part::FeaturePython"):
        obj.ViewObject.DisplayMode = "Flat Lines"
        obj.ViewObject.ShapeColor = RED  # 1.0.0 lights its own grey to white
    FreeCADGui.setActiveDocument(doc.Name)
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    view.viewTop()
    found, until = 0.0, time.monotonic() + 20.0
    while found <= 0.05 and time.monotonic() < until:
        QtGui.QApplication.processEvents()
        view.fitAll()
        view.saveImage(str(path), 400, 300, "White")
        found = red_share(path)
    return found


def test_the_document_of_this_host_is_seen_saved_and_seen_again(tmp_path):
    if not FIXTURE.exists():
        pytest.skip(f"no document was saved by {VERSION}")
    copy = tmp_path / FIXTURE.name
    copy.write_bytes(FIXTURE.read_bytes())
    for name in ("first", "again"):
        doc = FreeCAD.openDocument(str(copy))
        matches = [obj for obj in doc.Objects if obj.Name.startswith("Match")]
        assert [obj.Message for obj in matches] == ["", ""]
        assert all(obj.ViewObject.Visibility for obj in matches)
        assert all(
            obj.ViewObject.DisplayMode in obj.ViewObject.listDisplayModes() for obj in matches
        )
        assert looked_at(doc, tmp_path / f"{name}.png") > 0.05
        doc.save()
        FreeCAD.closeDocument(doc.Name)


def test_an_object_made_in_the_window_is_seen(tmp_path):
    doc = FreeCAD.newDocument("Made")
    match = add_match(doc, add_stock(doc, 900.0, 1200.0, 8))
    doc.recompute()
    assert match.Message == ""
    assert looked_at(doc, tmp_path / "made.png") > 0.05
