# SPDX-License-Identifier: LGPL-2.1-or-later
"""A test cut tells the template before the stack is cut; and of diameters that will all do the one
is left open that hides truing best."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Closing,
    Errors,
    Measured,
    Ring,
    Trial,
    broken_of,
    least_over,
    replayed,
    said,
)

STOCK = Stock(1600.0, 3000.0, 64, 0.6)


def lay(ways=12, **given):
    turn = "slip" if ways % 2 else "book"
    return radial(STOCK, Top.round(1000.0), ways, **{"turn": turn, **given})


def measured(layout, angles, uncertainty=0.02, **given):
    wedges = tuple(Angle(float(a), uncertainty) for a in angles)
    return Measured(Ring.of(layout), wedges, **given)


# --- a test cut ---------------------------------------------------------------------------------


def tried(total, unsure=0.05, count=6, **given):
    errors = Errors(0.1, 0.02)
    trial = Trial(count, Angle(total, unsure), 30.0, errors.piece)
    return Before(lay(), errors, trial=trial, **given)


def test_after_a_test_cut_the_templates_error_is_what_the_test_leaves_open():
    before = tried(6.0 * 30.2)
    sure = math.hypot(0.05, math.sqrt(6.0) * 0.02) / 6.0
    assert before.settled.template == pytest.approx(sure) and sure < 0.02
    assert before.least.over.degrees < Before(lay(), Errors(0.1, 0.02)).advised.over.degrees
    wanted = least_over(12, Errors(sure, 0.02), 0.95, "both ends")
    assert before.least.over.degrees == wanted.degrees > 0.0
    text = " ".join(said.steps_before(before, "{:.1f} mm".format))
    assert "made 181.20 deg" in text and "cuts 30.200 deg" in text


def test_a_template_that_is_sure_enough_stays_and_the_ring_is_reckoned_as_it_cuts():
    before = tried(6.0 * 30.2)
    assert before.stays and before.advised.over.cut == pytest.approx(30.2)
    assert before.advised.costs.lost == pytest.approx(500.0 * math.sin(math.radians(0.6)))
    assert before.advised.over.claimed >= 0.95
    hits = replayed(before.advised.over) / 10_000
    spread = math.sqrt(hits * (1.0 - hits) / 10_000) + 1e-4
    assert abs(hits - before.advised.over.claimed) < 4.0 * spread
    text = " ".join(said.steps_before(before, "{:.1f} mm".format))
    assert "It may stay as it is." in text and "less would do" in text


@pytest.mark.parametrize("total", [179.4, 180.0])
def test_a_template_that_is_under_or_too_near_is_opened_by_what_is_missing(total):
    before = tried(total)
    assert not before.stays and before.advised == before.least
    turn = before.least.over.cut - total / 6.0
    base = before.set_out.base
    old, new = (base * math.tan(math.radians(a / 2.0)) for a in (total / 6.0, total / 6.0 + turn))
    assert before.mark_moves == pytest.approx(new - old) and before.mark_moves > 0.0
    text = " ".join(said.steps_before(before, "{:.1f} mm".format))
    assert f"Open it by {turn:.3f} deg" in text and f"{new - old:.2f} mm out" in text
    assert ("under" in text.split("are wanted")[0]) == (total < 180.0)


def test_a_test_cut_that_cannot_be_of_this_ring_is_told():
    with pytest.raises(VeneerError, match="mend the number of wedges") as caught:
        assert tried(6.0 * 30.2, count=5).advised
    assert caught.value.code == "trial-wild"


def test_a_set_out_that_is_less_sure_than_the_template_was_taken_to_be_asks_for_a_longer_base():
    rough = Before(lay(), Errors(0.01, 0.02), reading=0.5)
    wanted = rough.base_wanted
    assert wanted > rough.set_out.base
    longer = Before(lay(), Errors(0.01, 0.02), base=wanted, reading=0.5)
    assert longer.set_out_error == pytest.approx(0.01) and longer.base_wanted == 0.0
    assert "less sure" in said.steps_before(rough, "{:.1f} mm".format)[0]
    assert "less sure" not in said.steps_before(longer, "{:.1f} mm".format)[0]


# --- which diameter hides truing ------------------------------------------------------------------


def test_of_diameters_that_are_sure_the_one_that_is_broken_most_is_left_open():
    """Twelve in sequence: leaf 12 beside leaf 1 shows what no truing spoils."""
    layout = lay()
    broken = broken_of(layout)
    steps = [seam.step for seam in layout.seams]
    assert broken[0] == (steps[11] + steps[5]) / 2.0 == max(broken)
    angles = 30.3 + np.array([0.0, 0.1, -0.1, 0.1, 0.0, 0.05, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0])
    even = measured(layout, angles)
    hidden = measured(layout, angles, broken=broken)
    assert all(one.sure >= 0.99 for one in hidden.diameters)
    assert even.best.first != 1 and hidden.best.first == 1
    rest = [-one.broken for one in hidden.diameters]
    assert rest == sorted(rest)
    text = " ".join(said.steps_after(Closing(Before(layout, Errors(0.1, 0.1)), hidden), str))
    assert f"({max(broken):.1f} on the mean)" in text
    heads, rows = said.diameters(Closing(Before(layout, Errors(0.1, 0.1)), hidden), str)
    assert heads[2] == "between" and rows[0][2] == f"{max(broken):.1f}"


def test_where_nothing_is_sure_the_most_even_halves_still_go_first():
    layout = lay()
    angles = 30.02 + np.random.default_rng(1).normal(0.0, 0.1, 12)
    even, hidden = (
        measured(layout, angles, 0.3, broken=broken) for broken in ((), broken_of(layout))
    )
    assert all(one.sure < 0.99 for one in hidden.diameters)
    assert [one.first for one in even.diameters] == [one.first for one in hidden.diameters]
    assert broken_of(lay(13)) == () == broken_of(lay(8, strips=2, turn="slip"))
