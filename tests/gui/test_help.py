# SPDX-License-Identifier: LGPL-2.1-or-later
"""The help in its window, What's This on buttons, panels and menus, the example."""

from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui import commands, help
from veneerwb.host.objects.base import kind_of


@pytest.fixture
def helped(user):
    """A user with the help open; it closes afterwards."""
    help.show()
    yield user
    for window in list(help._shown):
        window.close()
    help._shown.clear()


def page():
    """The page that is shown, within docs."""
    (window,) = help._shown
    path = Path(window.form.text.source().toLocalFile())
    return path.relative_to(help.DOCS).as_posix()


def ask(user, widget):
    """Shift+F1, and a click on a widget."""
    FreeCADGui.runCommand("Std_WhatsThis")
    assert QtGui.QWhatsThis.inWhatsThisMode()
    left, none = QtCore.Qt.LeftButton, QtCore.Qt.NoButton
    at = QtCore.QPointF(widget.rect().center())
    everywhere = QtCore.QPointF(widget.mapToGlobal(at.toPoint()))
    for kind, held in (
        (QtCore.QEvent.MouseButtonPress, left), (QtCore.QEvent.MouseButtonRelease, none),
    ):  # fmt: skip
        event = QtGui.QMouseEvent(kind, at, everywhere, left, held, QtCore.Qt.NoModifier)
        QtGui.QApplication.sendEvent(widget, event)
    user.wait_for(lambda: not QtGui.QWhatsThis.inWhatsThisMode(), "it is answered")


def test_the_help_opens_at_its_contents_and_finds_its_way_back(helped):
    assert page() == "README.md" and len(help._shown) == 1
    text = help._shown[0].form.text
    assert "first top" in text.toPlainText() and "[" not in text.toPlainText()
    help.show("words.md")
    assert page() == "words.md" and len(help._shown) == 1
    helped.box("back").click()
    assert page() == "README.md" and not helped.box("back").isEnabled()
    help.show("words.md")
    helped.box("contents").click()
    assert page() == "README.md"


def test_pictures_are_found_from_a_page_in_a_folder(helped):
    help.show("commands/new-match.md")
    text = help._shown[0].form.text
    url = QtCore.QUrl("../pictures/match.png")
    found = text.loadResource(2, text.source().resolved(url))  # 2: a picture
    assert found is not None
    assert text.document().size().height() > 800  # with it and not with a mark for a lost one


def test_a_page_that_is_not_there_is_the_contents(helped):
    help.show("commands/never-was.md")
    assert page() == "README.md"


def test_help_that_is_lost_is_said(helped, tmp_path, monkeypatch):
    monkeypatch.setattr(help, "DOCS", str(tmp_path))
    help.show("words.md")
    assert "install the workbench again" in help._shown[0].form.text.toPlainText()


def test_the_help_stays_open_beside_a_panel_and_closes_by_itself(helped, fresh):
    helped.open_panel("Veneer_BringInLeaves", "folder")
    assert FreeCADGui.Command.get("Veneer_Help").isActive()
    FreeCADGui.runCommand("Veneer_Help")
    assert page() == "README.md" and helped.visible(QtGui.QLineEdit, "folder")
    helped.cancel()
    helped.wait_closed()
    help._shown[0]._frame.close()
    helped.wait_for(lambda: not help._shown, "the window has gone")


def test_the_help_opens_again_and_again(helped):
    for name in ("words", "scripting", "first-top", "preferences") * 3:
        help.show(f"{name}.md")
        assert page() == f"{name}.md" and len(helped.visible(QtGui.QTextBrowser, "text")) == 1
        help._shown[0]._frame.close()
        helped.wait_for(lambda: not help._shown, "the window has gone")
    help.show()
    assert page() == "README.md"


def test_whats_this_on_a_button_opens_its_page(helped):
    action = FreeCADGui.Command.get("Veneer_BringInLeaves").getAction()[0]
    buttons = [
        one
        for one in helped.visible(QtGui.QToolButton)
        if one.defaultAction() is not None and one.defaultAction().whatsThis() == action.whatsThis()
    ]
    ask(helped, buttons[0])
    helped.wait_for(lambda: page() == "commands/bring-in-leaves.md", "its page is shown")


def test_whats_this_on_a_box_opens_the_page_of_its_panel(helped, fresh):
    helped.open_panel("Veneer_BringInLeaves", "folder")
    ask(helped, helped.box("folder"))
    helped.wait_for(lambda: page() == "commands/bring-in-leaves.md", "its page is shown")
    assert helped.visible(QtGui.QLineEdit, "folder")


def test_whats_this_of_others_is_left_to_the_host(helped):
    event = QtGui.QWhatsThisClickedEvent("Std_Copy")
    assert not help._asked[0].eventFilter(FreeCADGui.getMainWindow(), event)
    assert page() == "README.md"


def test_every_command_tells_the_host_its_name_and_has_all_that_is_shown_of_it(user):
    for command in filter(None, commands.COMMANDS):
        told = command.GetResources()
        assert told["WhatsThis"] == command.name and told["MenuText"] and told["ToolTip"]
        assert (Path(help.DOCS) / help.page_of(command.name)).is_file()
        assert not FreeCADGui.getIcon(told["Pixmap"]).isNull()


def test_the_example_opens_as_a_copy_without_a_file(user):
    before = Path(help.EXAMPLE).read_bytes()
    FreeCADGui.runCommand("Veneer_OpenExample")
    doc = FreeCAD.ActiveDocument
    kinds = [kind_of(obj) for obj in doc.Objects]
    assert doc.FileName == "" and doc.Label == "Example"
    assert {"Bundle", "Match", "BuildUp", "Parts", "Bench"} <= set(kinds)
    match = user.only(doc, "Match")
    assert len(match.Shape.Solids) == 12 and match.Ways == 12
    match.Ways = 10
    doc.recompute()
    assert [obj.Message for obj in doc.Objects if getattr(obj, "Message", "")] == []
    assert len(match.Shape.Solids) == 10
    FreeCADGui.runCommand("Veneer_OpenExample")  # and once more beside it
    assert len(FreeCAD.listDocuments()) == 2
    assert user.only(FreeCAD.ActiveDocument, "Match").Ways == 12
    assert Path(help.EXAMPLE).read_bytes() == before


def test_the_example_shows_its_leaves(user):
    FreeCADGui.runCommand("Veneer_OpenExample")
    match = user.only(FreeCAD.ActiveDocument, "Match")
    assert match.ViewObject.Proxy is not None
    assert match.ViewObject.DisplayMode == "Leaf pictures"


def test_an_example_that_is_lost_is_said(user, tmp_path, monkeypatch):
    said = []
    monkeypatch.setattr(help, "EXAMPLE", str(tmp_path / "none.FCStd"))
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *told: said.append(told[-1]))
    assert help.open_example() is None
    assert "install the workbench again" in said[0] and not FreeCAD.listDocuments()


@pytest.mark.parametrize("kept", [0, 400])
def test_an_example_that_is_broken_leaves_no_empty_document(user, tmp_path, monkeypatch, kept):
    said, broken = [], tmp_path / "cut short.FCStd"
    broken.write_bytes(Path(help.EXAMPLE).read_bytes()[:kept])
    monkeypatch.setattr(help, "EXAMPLE", str(broken))
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *told: said.append(told[-1]))
    assert help.open_example() is None
    assert "install the workbench again" in said[0] and not FreeCAD.listDocuments()
