# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bundle makes: the table of ways, and the tops of one size that are cut from it."""

import pytest
from PySide import QtCore


@pytest.fixture
def makes(tabs):
    return tabs.open(tabs.makes)


@pytest.fixture
def table(user, makes):
    """The texts of the table that the user has made."""
    user.box("largest").click()
    assert makes.form.trouble.text() == ""
    model = user.box("ways").model()
    return [
        [model.index(row, column).data() for column in range(model.columnCount())]
        for row in range(model.rowCount())
    ]


def test_the_table_has_the_largest_top_for_every_number_of_ways(makes, table, spot):
    assert [row[0] for row in table] == ["4", "6", "8"]
    sizes = [float(row[1].split()[0]) for row in table]
    assert sizes == pytest.approx([row.size for row in makes.rows], abs=0.06)
    assert sizes[0] < sizes[-1]  # narrower wedges reach further


def test_a_click_on_a_row_goes_there(user, makes, table, match, tip):
    user.click(user.box("ways"), 1)
    row = makes.rows[1]
    assert (match.Ways, match.First, match.Diameter.Value) == (6, row.first, 300.0)
    assert tip(match) == pytest.approx((row.placement.x, row.placement.y, row.placement.angle))


def test_the_size_is_taken_over_where_it_is_asked_for_and_it_fits(user, makes, table, match):
    user.box("sized").setChecked(True)
    user.click(user.box("ways"), 2)
    assert match.Diameter.Value == pytest.approx(makes.rows[2].size)
    assert "stop" not in {one.level for one in match.Proxy.found}


def test_sizes_are_in_the_users_unit(makes, in_inches, table):
    assert table[0][1].endswith(" in")
    assert float(table[0][1].split()[0]) * 25.4 == pytest.approx(makes.rows[0].size, abs=0.3)


def test_how_many_are_counted_and_their_cuts_lie_apart(user, spot, makes):
    spot.state.go(size=160.0)
    user.box("count").click()
    cuts = [cut.outline for laid in makes.counted for cut in laid.cuts]
    assert len(cuts) > 3
    assert makes.hand.said().startswith(f"At least {len(cuts)} tops of 160.0 mm in 8 ways")
    assert all(a.distance(b) > 0.0 for k, a in enumerate(cuts) for b in cuts[:k])
    assert makes.fits
    spot.state.go(size=170.0)
    assert not makes.fits


def test_none_of_a_size_that_is_too_large(user, spot, makes):
    spot.state.go(size=1500.0)
    user.box("count").click()
    assert makes.counted == [] and makes.hand.said() == "No top of this size fits."


def test_too_few_leaves_are_told(user, spot, makes):
    spot.state.go(ways=12)
    user.box("count").click()
    assert "12 ways need 12 leaves" in makes.form.trouble.text()


def test_it_can_be_stopped_and_nothing_has_changed(user, makes, match):
    before = user.state(match.Document)

    def stop():
        box = user.box("largest")
        if box.text().startswith("Stop"):
            box.click()
        else:
            QtCore.QTimer.singleShot(5, stop)

    QtCore.QTimer.singleShot(0, stop)
    user.box("largest").click()
    assert "Stopped" in makes.form.trouble.text() and not makes.rows
    assert user.state(match.Document) == before


def test_what_is_said_of_tops_is_what_they_were_counted_for(user, spot, makes, monkeypatch):
    from veneerwb.core.yields import packing

    count = packing.tops_from

    def meanwhile(*given, **more):
        found = count(*given, **more)
        spot.state.go(size=170.0)  # the window lives while it is counted
        return found

    monkeypatch.setattr(packing, "tops_from", meanwhile)
    spot.state.go(size=160.0)
    user.box("count").click()
    assert "tops of 160.0 mm in 8 ways" in makes.hand.said()
    assert not makes.fits
    spot.state.go(size=160.0)
    assert makes.fits
    spot.state.go(order="spread")
    assert not makes.fits


def test_the_table_is_old_when_the_leaves_are_taken_in_another_order(spot, makes, table):
    assert not makes.form.trouble.text()
    spot.state.go(order="spread")
    assert "before the last change" in makes.form.trouble.text()


def test_a_row_is_gone_to_with_the_order_that_it_was_made_for(user, spot, makes, match):
    spot.state.go(order=(8, 7, 6, 5, 4, 3, 2, 1))
    assert match.Order.startswith("8, 7")
    user.box("largest").click()
    user.box("sized").setChecked(True)
    user.click(user.box("ways"), 2)
    assert (match.Ways, match.Order) == (8, "sequence")
    assert not makes.form.trouble.text()
