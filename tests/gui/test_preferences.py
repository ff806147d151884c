# SPDX-License-Identifier: LGPL-2.1-or-later
"""The preferences pages in the host's dialog, the user's colours on what is drawn, and windows that
can be read under dark and light style sheets."""

import os
import time

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from pivy import coin
from PySide import QtCore, QtGui

from veneerwb.gui import themes
from veneerwb.gui.panels import base
from veneerwb.gui.photos import looks as photo_looks
from veneerwb.gui.photos.items import Item
from veneerwb.gui.photos.window import PhotoWindow
from veneerwb.gui.spot import looks as spot_looks
from veneerwb.host import settings
from veneerwb.host.objects import add_match, add_stock
from veneerwb.paint import ink, strip
from veneerwb.paint.label import label

GREEN = (10, 200, 40)


def packed(rgb):
    return rgb[0] << 24 | rgb[1] << 16 | rgb[2] << 8 | 255


@pytest.fixture
def kept():
    """The host's group of ours; afterwards nothing is left in it."""
    group = FreeCAD.ParamGet(settings.PATH)
    yield group
    for name in (*settings.SETTINGS, *settings.COLOURS):
        for kind in ("Bool", "Int", "Float", "String", "Unsigned"):
            getattr(group, f"Rem{kind}")(name)
    QtGui.QApplication.processEvents()  # what is open takes its own colours again
    assert not group.GetContents()


# --- the pages ----------------------------------------------------------------------------------


def in_dialog(use):
    """Opens the host's preferences, has `use` be called with our boxes by their names, and leaves
    them by OK. What goes wrong inside is raised here."""
    wrong = []

    def look():
        dialog = QtGui.QApplication.activeModalWidget()
        if dialog is None:
            QtCore.QTimer.singleShot(50, look)
            return
        ok = None
        try:
            every = QtGui.QApplication.allWidgets()
            ours = {*settings.SETTINGS, *settings.COLOURS}
            use({one.objectName(): one for one in every if one.objectName() in ours
                 and dialog.isAncestorOf(one)})  # fmt: skip
            boxes = [one for one in every if isinstance(one, QtGui.QDialogButtonBox)]
            (box,) = filter(dialog.isAncestorOf, boxes)
            ok = box.button(QtGui.QDialogButtonBox.Ok)
        except BaseException as error:
            wrong.append(error)
        finally:
            (ok.click if ok is not None else dialog.reject)()

    QtCore.QTimer.singleShot(50, look)
    FreeCADGui.runCommand("Std_DlgPreferences")
    if wrong:
        raise wrong[0]


def test_what_is_entered_on_the_pages_reaches_a_new_match(user, fresh, kept):
    def fill(boxes):
        assert {*settings.SETTINGS, *settings.COLOURS} <= set(boxes)
        boxes["Oversize"].setProperty("rawValue", 7.5)
        boxes["Spares"].setValue(3)
        boxes["Owner"].setText("The shop")
        boxes["Paper"].setCurrentIndex(settings.PAPERS.index("A2"))
        boxes["SheetUnit"].setCurrentIndex(settings.UNITS.index("both"))
        boxes["FaceDown"].setChecked(True)
        boxes["WedgeColour"].setProperty("color", QtGui.QColor(*GREEN))

    in_dialog(fill)
    assert (settings.setting("Owner"), settings.setting("Paper")) == ("The shop", "A2")
    assert settings.setting("SheetUnit") == "both" and settings.setting("FaceDown") is True
    assert settings.colour("WedgeColour") == GREEN
    assert settings.colour("KnotColour") == settings.COLOURS["KnotColour"]
    match = add_match(fresh, add_stock(fresh, 400.0, 1000.0, 16), Ways=8, Diameter=600.0)
    assert (match.Oversize.Value, match.Spares) == (7.5, 3)
    again = {}
    in_dialog(lambda boxes: again.update(spares=boxes["Spares"].value()))
    assert again == {"spares": 3}


def test_leaves_are_brought_in_as_thick_as_is_set(user, fresh, kept):
    kept.SetFloat("Thickness", 0.9)
    user.open_panel("Veneer_BringInLeaves", "thickness")
    assert user.box("thickness").property("rawValue") == 0.9
    user.cancel()
    user.wait_closed()


# --- colours ------------------------------------------------------------------------------------


def materials(node):
    """The colours of all materials below a node, 0 to 255."""
    search = coin.SoSearchAction()
    search.setType(coin.SoMaterial.getClassTypeId())
    search.setInterest(coin.SoSearchAction.ALL)
    search.apply(node)
    paths = search.getPaths()
    found = [paths[k].getTail().diffuseColor[0].getValue() for k in range(paths.getLength())]
    return {tuple(round(255 * part) for part in rgb) for rgb in found}


def test_what_is_shown_in_the_3d_view_follows_the_colours_at_once(user, fresh, kept):
    match = add_match(fresh, add_stock(fresh, 400.0, 1000.0, 16), Ways=8, Diameter=600.0)
    fresh.recompute()
    root = match.ViewObject.Proxy.pictures
    seams = settings.COLOURS["SeamColour"]
    assert seams in materials(root) and GREEN not in materials(root)
    undos = fresh.UndoCount
    kept.SetUnsigned("SeamColour", packed(GREEN))
    user.wait_for(lambda: GREEN in materials(root), "the seams are drawn anew")
    assert seams not in materials(root)
    assert fresh.UndoCount == undos and "Touched" not in match.State
    kept.SetUnsigned("ChosenColour", packed((1, 2, 3)))
    FreeCADGui.Selection.addSelection(match)
    assert (1, 2, 3) in materials(match.ViewObject.Proxy.marks)


def test_numbers_can_be_read_whatever_their_colour():
    for rgb in ((20, 20, 20), (255, 255, 255), (250, 240, 60), (90, 0, 0)):
        pixels = label("12", rgb=rgb).reshape(-1, 3)
        paper = QtGui.QColor(*map(int, np.median(pixels, axis=0)))
        assert (np.abs(pixels.astype(int) - rgb).max(axis=1) < 3).sum() > 200
        assert themes.contrast(paper, QtGui.QColor(*rgb)) > 4.0


@pytest.mark.parametrize("kind", list(photo_looks.OWN))
def test_faults_and_the_usable_area_have_the_users_colour(kept, kind):
    item = Item([(0, 0), (10, 0), (10, 10)], kind)
    assert photo_looks.look_of(item) == photo_looks.LOOKS[kind]
    kept.SetUnsigned(photo_looks.OWN[kind], packed(GREEN))
    look = photo_looks.look_of(item)
    assert look.colour == GREEN and look.lines == photo_looks.LOOKS[kind].lines


def test_the_wedge_has_the_users_colours(kept):
    assert spot_looks.good().colour == settings.COLOURS["WedgeColour"]
    kept.SetUnsigned("WedgeColour", packed(GREEN))
    kept.SetUnsigned("MisfitColour", packed((1, 2, 3)))
    assert (spot_looks.good().colour, spot_looks.bad().colour) == (GREEN, (1, 2, 3))


def test_charts_mark_leaves_and_suspects_in_the_users_colours(user, kept):
    from veneerwb.gui import canvas  # noqa: F401 - from it on charts ask for the user's colours

    def shades():
        row = strip.Row((1, 2, 3), 90, 0.4, frozenset([2]))
        image = ink.image_of(
            (row.width, row.height), lambda p: strip.draw_strip(p, row, {}, 1, {2: "turned"})
        )
        pixels = np.frombuffer(bytes(image.constBits()), np.uint8).reshape(-1, 4)
        return {tuple(map(int, bgr[::-1])) for bgr in np.unique(pixels[:, :3], axis=0)}

    assert {ink.MARK, ink.SUSPECT} <= shades()
    kept.SetUnsigned("PointedColour", packed(GREEN))
    kept.SetUnsigned("SuspectColour", packed((1, 2, 250)))
    assert {GREEN, (1, 2, 250)} <= shades() and not {ink.MARK, ink.SUSPECT} & shades()


def test_what_charts_are_drawn_in_without_a_window_is_what_is_set_at_first():
    assert settings.COLOURS["PointedColour"] == ink.MARK
    assert settings.COLOURS["SuspectColour"] == ink.SUSPECT


# --- dark and light -----------------------------------------------------------------------------

SHEET = "QWidget { color: %s } QMainWindow { background: %s } QMdiSubWindow { border: 1px solid }"
SHEETS = {
    "none": "",
    "dark": SHEET % ("#f5f5f5", "#444444"),
    "light": SHEET % ("#303030", "#f5f5f5"),
    "grey": SHEET % ("#000000", "#6e6e6e"),
}
"""As the host's own are made: they colour all text, and the ground of the host's windows alone."""


@pytest.fixture
def styled():
    app = QtGui.QApplication.instance()
    before = app.styleSheet()
    yield app.setStyleSheet
    app.setStyleSheet(before)
    QtGui.QApplication.processEvents()


def seen_contrast(widget):
    """The contrast of what is written on a widget with what is most of its ground, on the screen;
    and the share of that ground."""
    corner = widget.mapToGlobal(QtCore.QPoint(0, 0))
    grabbed = QtGui.QApplication.primaryScreen().grabWindow(
        0, corner.x(), corner.y(), widget.width(), widget.height()
    )
    image = grabbed.toImage().convertToFormat(QtGui.QImage.Format_RGB32)
    pixels = np.frombuffer(bytes(image.constBits()), np.uint8).reshape(-1, 4)[:, 2::-1]
    colours, counts = np.unique(pixels, axis=0, return_counts=True)
    ground = QtGui.QColor(*map(int, colours[counts.argmax()]))
    most = max(themes.contrast(ground, QtGui.QColor(*map(int, rgb))) for rgb in colours)
    return most, counts.max() / counts.sum()


@pytest.mark.parametrize("after", [False, True], ids=["before", "while open"])
@pytest.mark.parametrize("sheet", SHEETS)
def test_a_window_can_be_read_under_any_style_sheet(user, fresh, styled, sheet, after):
    if not after:
        styled(SHEETS[sheet])
    window = PhotoWindow("Photograph", ["Leaf 1", "Leaf 2"])
    window.say("Click round it.")
    if after:
        styled(SHEETS[sheet])
    hint = window.form.hint
    user.wait_for(lambda: hint.isVisible() and hint.width() > 50, "the window is laid out")
    found = share = 0.0
    for _ in range(40):  # until the screen shows it
        QtGui.QApplication.processEvents()
        found, share = seen_contrast(hint)
        if found >= themes.READABLE and share > 0.6:
            break
        time.sleep(0.05)
    window.close()
    assert found >= themes.READABLE and share > 0.6


def test_a_ground_is_changed_only_as_far_as_it_must_be():
    white, black = QtGui.QColor(255, 255, 255), QtGui.QColor(0, 0, 0)
    grey = QtGui.QColor(110, 110, 110)
    assert themes.contrast(white, black) == pytest.approx(21.0)  # WCAG 2.1: black on white
    assert themes.contrast(QtGui.QColor("#777777"), white) == pytest.approx(4.48, abs=0.005)
    assert themes.ground(white, black) == black and themes.ground(black, grey) != grey
    for text in (white, black):
        made = themes.ground(text, grey)
        assert themes.READABLE <= themes.contrast(text, made) < 7.0
    for text in (grey, QtGui.QColor(200, 30, 30)):  # as far as it can be
        assert themes.contrast(text, themes.ground(text, text)) > 3.9


def test_a_narrow_box_begins_with_its_first_figure(user, fresh):
    """The host scrolls to the end, so that 1200.00 mm would be read as 200.00 mm."""
    add_stock(fresh, 400.0, 1000.0, 16)
    fresh.recompute()
    user.open_panel("Veneer_NewRadialMatch", "Diameter")
    line = user.box("Diameter").findChild(QtGui.QLineEdit)
    user.wait_for(lambda: line.cursorPosition() == 0, "the box shows its beginning")
    panel = base.shown()[0]
    line.end(False)
    panel.fill("Diameter", 1234.0)
    assert line.text().startswith("1234") and line.cursorPosition() == 0


@pytest.mark.parametrize("rgb", [settings.COLOURS["MisfitColour"], (255, 240, 90), (0, 0, 0)])
def test_a_badge_can_be_read(rgb):
    colours = [part.split(":")[1].strip() for part in themes.badge(rgb).split(";")[:2]]
    assert themes.contrast(*map(QtGui.QColor, colours)) >= themes.READABLE


ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))


def test_no_form_says_in_which_colour_text_is_written():
    """It would be read under one style sheet and not under another."""
    folder = os.path.join(ROOT, "resources", "ui")
    for name in sorted(os.listdir(folder)):
        with open(os.path.join(folder, name), encoding="utf-8") as file:
            text = file.read()
        assert "color:" not in text and '"palette"' not in text, name
