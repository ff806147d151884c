# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a bundle's particulars: boxes, areas, and CSV out and in."""

import csv

import FreeCADGui
import numpy as np
import pytest
from PySide import QtGui
from shapely import geometry

from veneerwb.core import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import add_bundle, core_bundle

OPEN = ("Veneer_Particulars", "Species")


def saved_as(monkeypatch, path):
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))


def read_from(monkeypatch, path):
    monkeypatch.setattr(QtGui.QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))


def fill_all(user):
    for box, text in (
        ("Label", "Flitch 12, first lot"), ("Species", "European oak"), ("Cut", "Half round"),
        ("Thickness", "1/32 in"), ("TightSide", "back"), ("Flitch", "12"), ("LotMark", "K-7"),
        ("Moisture", "8.5"), ("Cost", "1250.50"), ("Currency", "EUR"),
        ("Origin", "=bought at auction; papers in the safe"),
    ):  # fmt: skip
        user.fill(box, text)


def test_a_bundle_is_told_of_in_one_step(user, fresh, bundle):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    fill_all(user)
    user.ok()
    user.wait_closed()
    assert bundle.Label == "Flitch 12, first lot" and bundle.Species == "European oak"
    assert bundle.Cut == "Half round" and bundle.TightSide == "back"
    assert bundle.Thickness.Value == pytest.approx(25.4 / 32)
    assert (bundle.Flitch, bundle.LotMark, bundle.Currency) == ("12", "K-7", "EUR")
    assert bundle.Moisture == pytest.approx(8.5) and bundle.Cost == pytest.approx(1250.5)
    assert bundle.Origin.startswith("=bought") and bundle.Message == ""
    assert fresh.UndoCount == 1
    fresh.undo()
    fresh.recompute()
    assert user.state(fresh) == before


def test_a_cut_that_is_not_in_the_list_may_be_typed(user, fresh, bundle):
    user.open_panel(*OPEN)
    user.fill("Cut", "Sliced from a burl")
    user.ok()
    user.wait_closed()
    assert bundle.Cut == "Sliced from a burl"
    user.double_click(bundle, "Species")
    assert user.box("Cut").currentText() == "Sliced from a burl"
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("how", ["cancel", "escape"])
def test_nothing_is_left_of_what_is_not_wanted(user, fresh, bundle, how):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    fill_all(user)
    user.wait_for(lambda: bundle.Species == "European oak", "the bundle follows")
    if how == "cancel":
        user.cancel()
    else:
        user.escape(user.box("Flitch"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_how_much_there_is_is_said(user, bundle):
    """Eight leaves of 240 by 500 mm; a square foot is 0.09290304 m2 by definition."""
    user.open_panel(*OPEN)
    said = user.box("summary").text()
    user.cancel()
    user.wait_closed()
    assert "8 leaves" in said and "0.960 m²" in said and f"{0.96 / 0.09290304:.2f} sq ft" in said


def test_the_particulars_are_written_and_read(user, fresh, bundle, eight_leaves, tmp_path,
                                              monkeypatch):  # fmt: skip
    path = tmp_path / "stock é.csv"
    other = add_bundle(fresh, eight_leaves)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(bundle)
    user.open_panel(*OPEN)
    fill_all(user)
    saved_as(monkeypatch, path)
    user.box("save").click()
    user.cancel()  # the file has what was in the boxes
    user.wait_closed()
    rows = list(csv.DictReader(path.read_text("utf-8").splitlines()))
    assert [row["bundle"] for row in rows] == ["Flitch 12, first lot", other.Label]
    assert float(rows[0]["full area m2"]) == pytest.approx(0.96)
    bundle.Label = "Flitch 12, first lot"
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(bundle)
    user.open_panel(*OPEN)
    read_from(monkeypatch, path)
    user.box("read").click()
    user.ok()
    user.wait_closed()
    assert (bundle.Species, bundle.Cut, bundle.TightSide) == ("European oak", "Half round", "back")
    assert bundle.Thickness.Value == pytest.approx(25.4 / 32, abs=0.001)
    assert bundle.Moisture == pytest.approx(8.5) and bundle.Cost == pytest.approx(1250.5)
    assert bundle.Origin == "=bought at auction; papers in the safe"
    assert fresh.UndoCount == 1 and other.Species == ""


@pytest.mark.parametrize(("text", "said"), [
    ("bundle,species\nOther,oak\nThird,ash\n", "called"),
    ("bundle,thickness mm\nSomebody else's,2\n", "called"),
    ("nothing,of,this\n1,2,3\n", "holds none of the columns"),
    ("bundle,thickness mm\nBundle,thick\n", "thickness"),
])  # fmt: skip
def test_a_file_that_will_not_do_is_said_so_and_changes_nothing(
    user, fresh, bundle, tmp_path, monkeypatch, text, said
):
    path = tmp_path / "list.csv"
    path.write_text(text, "utf-8")
    before = user.state(fresh)
    user.open_panel(*OPEN)
    read_from(monkeypatch, path)
    user.box("read").click()
    assert said in user.box("trouble").text()
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before


def test_what_a_file_does_not_say_stays_as_it_was(user, fresh, bundle, tmp_path, monkeypatch):
    bundle.TightSide, bundle.Origin = "face", "the loft"
    fresh.recompute()
    path = tmp_path / "list.csv"
    path.write_text("bundle,species\n,Ash\n", "utf-8")
    user.open_panel(*OPEN)
    read_from(monkeypatch, path)
    user.box("read").click()
    user.ok()
    user.wait_closed()
    assert (bundle.Species, bundle.TightSide, bundle.Origin) == ("Ash", "face", "the loft")


def test_what_cannot_be_is_refused_and_the_panel_stays(user, fresh, bundle):
    user.open_panel(*OPEN)
    user.fill("Moisture", "95")
    user.wait_for(lambda: bundle.Message, "it is refused")
    user.ok()
    assert FreeCADGui.Control.activeDialog() and "moisture" in user.box("trouble").text()
    user.fill("Moisture", "9")
    user.wait_for(lambda: not bundle.Message, "nine will do")
    user.ok()
    user.wait_closed()
    assert bundle.Moisture == pytest.approx(9.0)


def test_a_bundle_opens_by_a_double_click(user, bundle):
    user.double_click(bundle, "Species")
    assert user.box("Label").text() == bundle.Label
    user.cancel()
    user.wait_closed()


# --- the light ---------------------------------------------------------------------------------


@pytest.fixture
def uneven(fresh):
    """Three leaves on a grey table, photographed in one jig; the second with less light."""
    rng, leaves = np.random.default_rng(2), []
    for number, light in ((1, 200), (2, 160), (3, 200)):
        pixels = np.full((100, 60, 3), light, np.uint8)
        pixels[20:80, 15:45] = rng.integers(60, 120, (60, 30, 1))
        outline = geometry.box(75, 100, 225, 400)
        leaves.append(Leaf(number, Side(Photo.of(pixels, 5.0)), None, outline))
    made = add_bundle(fresh, Bundle(tuple(leaves), 0.6, "own"))
    fresh.recompute()
    fresh.clearUndos()
    return made


def table(bundle):
    """How light the table is behind each leaf."""
    return [round(float(leaf.photo[:10].mean())) for leaf in core_bundle(bundle).leaves]


def test_the_light_is_evened_and_had_back_on_the_screen(user, fresh, uneven):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    assert not user.box("EvenLight").isEnabled() and not user.visible(QtGui.QListWidget, "light")
    user.box("even").click()
    user.wait_for(lambda: user.visible(QtGui.QListWidget, "light"), "it is said what was done")
    assert table(uneven) == [200] * 3
    said = user.lines("light")
    assert said[0] == "Leaf 1 is left as it is." and "Leaf 2 was made" in said[1]
    assert "lighter" in said[1] and len(said) == 3
    user.fill("EvenLight", False)
    user.wait_for(lambda: table(uneven) == [200, 160, 200], "it is as photographed")
    user.ok()
    user.wait_closed()
    assert uneven.EvenLight is False and fresh.UndoCount == 1
    user.double_click(uneven, "Species")
    user.fill("EvenLight", True)
    user.ok()
    user.wait_closed()
    assert table(uneven) == [200] * 3 and fresh.UndoCount == 2
    fresh.undo()
    fresh.undo()
    fresh.recompute()
    assert user.state(fresh) == before


def test_evening_says_how_far_it_is_and_can_be_stopped(user, fresh, uneven, panel):
    user.open_panel(*OPEN)
    opened, texts = panel(), []
    told = opened._progressed

    def heard(name, share):
        told(name, share)
        texts.append(user.box("even").text())
        if share > 0.5:
            user.box("even").click()
            told(name, share)

    opened._progressed = heard
    user.box("even").click()
    assert "Stop (33 %)" in texts and user.box("trouble").text().startswith("Stopped")
    assert all(list(leaf.Gains) == [] for leaf in uneven.Leaves)
    assert "Background" in user.box("even").text() and user.box("save").isEnabled()
    user.cancel()
    user.wait_closed()


def test_light_that_cannot_be_measured_is_said_and_nothing_is_changed(user, fresh, bundle):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.box("even").click()
    said = user.box("trouble").text()
    assert "8 of 8" in said and "Leaf 1 shows no background" in said
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
