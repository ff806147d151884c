# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the checks find, listed: a click selects what it speaks of. And the switches of the view."""

import gc

import FreeCAD
import FreeCADGui
import pytest

from veneerwb.host.objects import add_match, add_stock, layout


@pytest.fixture
def match(fresh, bundle):
    """Eight wedges, some of them off their leaves."""
    made = add_match(fresh, bundle, Diameter=800.0, Ways=8, Oversize=5.0)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


def selected():
    return {
        (one.Object.Label, part)
        for one in FreeCADGui.Selection.getSelectionEx()
        for part in (one.SubElementNames or ("",))
    }


def row_of(user, words):
    (row,) = [k for k, line in enumerate(user.lines()) if words in line]
    return row


def test_every_finding_is_listed_with_its_remedy(user, fresh, match):
    user.open_panel("Veneer_CheckMatch", "findings")
    assert [f"{level}: {line}" for level, line in zip(
        (text.split(":")[0] for text in match.Findings), user.lines()
    )] == list(match.Findings)
    stops = sum(text.startswith("stop") for text in match.Findings)
    assert stops and f"{stops} against it" in user.box("summary").text()


def test_a_click_selects_the_wedges_and_leaves_concerned(user, fresh, match):
    user.open_panel("Veneer_CheckMatch", "findings")
    user.click(user.box("findings"), row_of(user, "usable area of their leaves"))
    laid = layout(match)
    faces = [len(solid.Faces) for solid in match.Shape.Solids]
    wanted = {(match.Label, f"Face{sum(faces[: p.position])}") for p in laid.pieces}
    wanted |= {(f"Leaf {p.leaf}", "") for p in laid.pieces}
    assert selected() == wanted
    user.click(user.box("findings"), row_of(user, "show the other side"))
    turned = {p.position for p in laid.pieces if p.turned}
    assert selected() == {(match.Label, f"Face{sum(faces[:p])}") for p in turned}


def test_the_list_follows_the_match(user, fresh, match):
    user.open_panel("Veneer_CheckMatch", "findings")
    match.Diameter = 200.0
    fresh.recompute()
    assert not any("usable area" in line for line in user.lines())
    assert "Nothing stands" in user.box("summary").text() or "knowing" in user.box("summary").text()
    match.Ways = 7
    fresh.recompute()
    assert user.box("summary").text() == match.Message and not user.lines()


def test_a_match_that_is_deleted_leaves_the_list(user, fresh, match):
    other = add_match(fresh, add_stock(fresh, 200.0, 400.0, 6), Ways=6, Diameter=100.0)
    fresh.recompute()
    FreeCADGui.Selection.addSelection(other)
    user.open_panel("Veneer_CheckMatch", "findings")
    assert user.box("match").currentData() == other.Name
    fresh.removeObject(other.Name)
    user.wait_for(lambda: user.box("match").currentData() == match.Name, "the other is shown")
    fresh.removeObject(match.Name)
    user.wait_for(lambda: "gone" in user.box("summary").text(), "it is said")
    user.close()
    user.wait_closed()


def test_looking_changes_nothing_and_close_closes(user, fresh, match):
    before = user.state(fresh)
    user.open_panel("Veneer_CheckMatch", "findings")
    user.close()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


@pytest.mark.parametrize(("command", "name"), [
    ("Veneer_ShowSeams", "Seams"), ("Veneer_ShowNumbers", "Numbers"),
])  # fmt: skip
def test_a_switch_acts_on_the_selected_matches_or_on_all(user, fresh, bundle, match, command, name):
    other = add_match(fresh, bundle, Ways=6, Diameter=300.0)
    fresh.recompute()
    shown = lambda: [getattr(m.ViewObject, name) for m in (match, other)]  # noqa: E731
    FreeCADGui.runCommand(command)
    assert shown() == [False, False]
    FreeCADGui.Selection.addSelection(other)
    FreeCADGui.runCommand(command)
    assert shown() == [False, True]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.runCommand(command)
    assert shown() == [False, False]


def test_another_workbench_cancels_an_open_panel(user, fresh, match):
    before = user.state(fresh)
    user.double_click(match, "Ways")
    user.fill("Ways", "6")
    user.wait_for(lambda: len(match.Shape.Solids) == 6, "the match follows the boxes")
    FreeCADGui.activateWorkbench("PartWorkbench")
    user.wait_closed()
    assert user.state(fresh) == before and not fresh.HasPendingTransaction


def test_commands_ask_for_what_they_need(user):
    active = lambda name: FreeCADGui.Command.get(name).isActive()  # noqa: E731
    needy = ["NewRadialMatch", "CheckMatch", "ShowSeams", "ShowNumbers"]
    assert active("Veneer_BringInLeaves") and not any(active(f"Veneer_{n}") for n in needy)
    doc = FreeCAD.newDocument()
    assert not any(active(f"Veneer_{n}") for n in needy)
    add_stock(doc, 200.0, 400.0, 6)
    assert active("Veneer_NewRadialMatch") and not active("Veneer_CheckMatch")


def test_panels_open_again_and_again(user, fresh, match):
    """Qt 6 crashes if a panel's widgets are still known by name when the next one's are made."""
    gc.disable()
    try:
        for _ in range(12):
            user.double_click(match, "Ways")
            user.cancel()
            user.wait_closed()
            user.open_panel("Veneer_CheckMatch", "match")
            user.close()
            user.wait_closed()
            user.open_panel("Veneer_BringInLeaves", "folder")
            user.cancel()
            user.wait_closed()
    finally:
        gc.enable()
    assert not fresh.HasPendingTransaction
