# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closing a ring: the layout as trued, what is advised, what is measured, and what is refused."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from veneerwb.core import Stock, Top, VeneerError, radial, side
from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Closing,
    Errors,
    Expected,
    Gap,
    Measured,
    Moisture,
    Ring,
    Trial,
    as_trued,
    chance,
    costs,
    hows,
    least_over,
    places,
    point_moves,
)  # fmt: skip

STOCK = Stock(1600.0, 3000.0, 64, 0.6)
ROUND = Top.round(1000.0)


def lay(ways=12, top=ROUND, **given):
    return radial(STOCK, top, ways, **{"turn": "slip" if ways % 2 else "book", **given})


def angles_of(ways, seed=1, over=0.1, spread=0.1):
    return 360.0 / ways + over + np.random.default_rng(seed).normal(0.0, spread, ways)


def measured(layout, angles, uncertainty=0.02, **given):
    wedges = tuple(Angle(float(a), uncertainty) for a in angles)
    return Measured(Ring.of(layout), wedges, **given)


def code(action):
    with pytest.raises(VeneerError) as caught:
        action()
    assert str(caught.value).count("{") == 0
    return caught.value.code


# --- the layout as trued ------------------------------------------------------------------------


@pytest.mark.parametrize("how", ["both ends", "one end", "quarters"])
@pytest.mark.parametrize(
    "top", [ROUND, Top.polygon(12, 1000.0), Top.oval(1200.0, 800.0), Top.rectangle(1200.0, 900.0)]
)
def test_pieces_that_were_trued_fill_the_top_and_lie_along_the_lines_that_were_cut(how, top):
    layout = lay(top=top, oversize=10.0)
    angles = [30.25] * 12
    at = places(Ring.of(layout), angles, how)
    laid = as_trued(layout, at)
    assert [(p.position, p.leaf, p.turned) for p in laid.pieces] == [
        (p.position, p.leaf, p.turned) for p in layout.pieces
    ]
    assert math.fsum(p.area for p in laid.pieces) == pytest.approx(top.area, rel=1e-9)
    place = layout.recipe.placement
    to_wedge = [-(place.angle)]
    trimmed = set()
    for piece in laid.pieces:
        for segment in piece.edge:
            if segment.role != "seam":
                continue
            far = max(segment.start, segment.end, key=lambda p: math.hypot(*p))
            x, y = piece.onto_bundle.point(far)
            turn = math.degrees(math.atan2(y - place.y, x - place.x)) + to_wedge[0]
            lost = 30.25 / 2.0 - abs(math.remainder(turn, 360.0))
            assert lost >= -1e-9
            trimmed.add(round(lost, 6))
    each = {"both ends": {0.0, 0.75}, "one end": {0.0, 1.5}, "quarters": {0.0, 0.375}}
    assert trimmed == each[how]


def test_wedges_of_the_true_angle_lie_as_they_were_planned():
    layout = lay(ways=8, oversize=5.0, disc=60.0)
    laid = as_trued(layout, places(Ring.of(layout), [45.0] * 8, "both ends"))
    for planned, real in zip(layout.pieces, laid.pieces):
        assert real.outline.symmetric_difference(planned.outline).area < 0.5
        assert real.onto_bundle.apply([[100.0, 50.0]]) == pytest.approx(
            planned.onto_bundle.apply([[100.0, 50.0]]), abs=1e-9
        )
    assert [(s.a, s.b, s.step) for s in laid.seams] == [(s.a, s.b, s.step) for s in layout.seams]


def test_strips_and_a_centre_aside_are_trued_with_their_wedges():
    layout = lay(ways=8, turn="slip", strips=2, centre=(30.0, -20.0))
    laid = as_trued(layout, places(Ring.of(layout), [45.2] * 8, "both ends"))
    assert len(laid.pieces) == 16
    assert math.fsum(p.area for p in laid.pieces) == pytest.approx(ROUND.area, rel=1e-9)


def test_halves_that_are_under_meet_on_their_line_without_their_tips():
    layout = lay(oversize=10.0)
    at = places(Ring.of(layout), [29.8] * 12, "both ends")
    laid = as_trued(layout, at)
    lost = 500.0 * math.sin(math.radians(0.6))
    assert [part.tip_lost for part in at.parts] == pytest.approx([lost, lost])
    assert point_moves(at.parts) == pytest.approx(2.0 * lost)
    assert math.fsum(p.area for p in laid.pieces) == pytest.approx(ROUND.area, abs=1.0)
    line = at.ring.direction(0)
    for piece in laid.pieces[:6]:
        away = [
            math.sin(math.radians(-line)) * x + math.cos(math.radians(line)) * y
            for x, y in piece.outline.exterior.coords
        ]
        assert min(away) >= -1e-6
    tips = [piece.onto_bundle.inverse().point(
        (layout.recipe.placement.x, layout.recipe.placement.y)) for piece in laid.pieces]
    assert [math.hypot(*tip) for tip in tips] == pytest.approx([lost] * 12)


def test_an_odd_ring_is_trued_at_its_last_joint_or_stays_open():
    ring = Ring.of(lay(7))
    over, under = (places(ring, [a] * 7, "last joint") for a in (51.5, 51.4))
    assert costs(over).open == 0.0 and costs(over).lost > 0.0
    short = 360.0 - 7 * 51.4
    assert costs(under).open == pytest.approx(1000.0 * math.sin(math.radians(short / 2.0)))
    assert costs(under).lost == costs(under).area == costs(under).tips == 0.0
    assert code(lambda: places(ring, [51.5] * 7, "both ends")) == "no-halves"


@pytest.mark.parametrize("ways", [6, 10, 22])
def test_quarters_need_a_number_that_is_divisible_by_four(ways):
    assert "quarters" not in hows(ways)
    ring = Ring.of(lay(ways))
    assert code(lambda: places(ring, [360.0 / ways] * ways, "quarters")) == "no-quarters"


def test_trimming_both_ends_alike_keeps_the_mirror_at_the_half_joints_and_one_end_does_not():
    ring = Ring.of(lay())
    both, one = (costs(places(ring, [30.2] * 12, how)) for how in ("both ends", "one end"))
    assert both.mirror_off == pytest.approx(0.0, abs=1e-9)
    assert one.mirror_off == pytest.approx(500.0 * math.sin(math.radians(1.2)))
    assert one.shift > both.shift and one.area == pytest.approx(both.area)
    assert (both.ends, one.ends) == (4, 2)
    halves = places(ring, [30.2] * 12, "one end").parts
    assert [half.trims for half in halves] == [pytest.approx((0.0, 1.2))] * 2


def test_what_is_trued_off_is_what_the_pieces_lose():
    layout = lay()
    at = places(Ring.of(layout), [30.2] * 12, "both ends")
    cut = 12 * 0.5 * 500.0**2 * math.radians(30.2)
    assert costs(at).area == pytest.approx(cut - ROUND.area, rel=1e-9)


def test_seams_miss_the_corners_of_a_polygon_by_their_shift():
    top = Top.polygon(12, 1000.0)
    found = dict(costs(places(Ring.of(lay(top=top)), [30.2] * 12, "both ends")).corners)
    assert set(found) == {1, 2, 4, 5, 7, 8, 10, 11}  # the joints and the middle seams lie true
    along = [500.0 * math.tan(math.radians(turn)) for turn in (15.0, 14.6)]
    assert found[1] == pytest.approx(along[0] - along[1])
    assert costs(places(Ring.of(lay()), [30.2] * 12, "both ends")).corners == ()
    assert costs(places(Ring.of(lay(8, top=top)), [45.1] * 8, "both ends")).corners == ()


def test_a_wedge_is_not_trued_away():
    ring = Ring.of(lay(24))
    assert code(lambda: places(ring, [19.0] * 24, "one end")) == "wedge-lost"


# --- before cutting -----------------------------------------------------------------------------


def test_the_least_over_is_advised_and_a_step_less_would_not_do():
    before = Before(lay(), Errors(0.03, 0.08))
    over = before.advised.over
    wanted = [o.over.degrees for o in before.offers if o.over.confidence == 0.95]
    assert over.degrees == min(wanted)
    assert over.claimed >= 0.95 > chance(
        Expected(12, over.cut - 0.01, before.errors), over.how
    )
    assert before.set_out.angle == over.cut and before.set_out.base >= 500.0
    assert {o.over.confidence for o in before.offers} == {0.95, 0.99}


def test_a_diameter_chosen_by_measuring_needs_less_over_and_blind_choice_needs_the_same():
    errors = Errors(0.01, 0.1)
    fixed, sharp, blunt = (
        chance(Expected(16, 22.53, errors), "both ends", known) for known in (None, 0.0, 50.0)
    )
    assert sharp > fixed + 0.02
    assert blunt == pytest.approx(fixed, abs=0.005)
    assert (
        least_over(16, errors, 0.95, "both ends", 0.01).degrees
        < least_over(16, errors, 0.95, "both ends").degrees
    )


@given(st.floats(0.0, 0.3), st.floats(0.0, 0.3), st.sampled_from([4, 8, 12, 24]))
def test_more_over_is_surer_and_more_parts_are_less_sure(template, piece, ways):
    errors = Errors(template, piece)
    for how in hows(ways):
        grows = [chance(Expected(ways, 360.0 / ways + e, errors), how) for e in (0.0, 0.1, 0.3)]
        assert grows == sorted(grows) and grows[0] >= 0.0 and grows[-1] <= 1.0 + 1e-9
    both, quarters = (chance(Expected(ways, 360.0 / ways + 0.05, errors), how)
                      for how in ("both ends", "quarters"))  # fmt: skip
    assert quarters <= both + 1e-9


def test_errors_of_one_kind_alone_have_the_chance_of_a_textbook():
    from scipy.stats import norm

    # The template alone: all halves are alike, one normal. The pieces alone: two of them.
    only = chance(Expected(12, 30.1, Errors(0.1, 0.0)), "both ends")
    assert only == pytest.approx(norm.cdf(1.0), abs=1e-12)
    own = chance(Expected(12, 30.1, Errors(0.0, 0.1)), "both ends")
    assert own == pytest.approx(norm.cdf(6**0.5) ** 2, abs=1e-12)
    for tiny in (1e-7, 1e-3):
        assert chance(Expected(12, 30.1, Errors(0.1, tiny)), "both ends") == pytest.approx(
            only, abs=5e-3
        )
        assert chance(Expected(12, 30.1, Errors(tiny, 0.1)), "both ends") == pytest.approx(
            own, abs=5e-3
        )


def test_drying_is_cut_for_and_swelling_never_asks_to_cut_under():
    dry, wet = (Moisture(9.0, 9.0, to, 0.00274) for to in (8.0, 12.0))
    cut = least_over(12, Errors(0.0, 0.0, dry), 0.95, "both ends")
    assert cut.degrees == pytest.approx(0.08)  # 0.95 / 12, rounded up
    assert least_over(12, Errors(0.02, 0.02, wet), 0.99, "both ends").degrees == 0.0


def test_wood_with_its_grain_across_the_axis_closes_the_other_way():
    along, across, slanting = (Moisture(9.0, 9.0, 8.0, 0.003, grain=g) for g in (0.0, 90.0, 45.0))
    assert along.taped(30.0) < 30.0 < across.taped(30.0)
    assert slanting.taped(30.0) == pytest.approx(30.0, abs=0.002)


def test_figure_moves_with_the_moisture_between_photograph_and_cut():
    before = Before(lay(), Errors(0.0, 0.0, Moisture(10.0, 8.0, 8.0, 0.00274)))
    half = 500.0 * math.sin(math.radians(15.0))
    assert before.figure_moves == pytest.approx(-2.0 * 0.00274 * half)


def test_a_test_cut_tells_the_template_and_how_surely():
    trial = Trial(6, Angle(181.2, 0.06), 30.0, piece=0.05)
    assert trial.error.value == pytest.approx(0.2)
    assert trial.error.uncertainty == pytest.approx(math.sqrt(0.06**2 + 6 * 0.05**2) / 6)
    chance = np.random.default_rng(3)
    sums = (30.2 + chance.normal(0.0, 0.05, (4000, 6))).sum(axis=1) + chance.normal(0, 0.06, 4000)
    assert np.std((sums - 180.0) / 6) == pytest.approx(trial.error.uncertainty, rel=0.04)


def test_a_set_out_is_as_sure_as_its_offsets_are_read():
    before = Before(lay(), Errors(0.02, 0.02), base=1000.0, reading=0.25)
    chance = np.random.default_rng(4)
    offsets = before.set_out.offset + chance.normal(0.0, 0.25, (2, 8000))
    found = np.degrees(np.arctan(offsets / 1000.0)).sum(axis=0)
    assert np.std(found) == pytest.approx(before.set_out_error, rel=0.03)


def test_errors_that_nothing_can_cut_for_are_refused():
    assert code(lambda: least_over(64, Errors(5.0, 5.0), 0.9999, "quarters")) == "too-wild"


# --- after cutting ------------------------------------------------------------------------------


def test_uncertainties_add_as_they_should():
    layout = lay()
    own = measured(layout, [30.05] * 12, 0.05)
    assert own.total.uncertainty == pytest.approx(0.05 * 12**0.5)
    shared = measured(layout, [30.05] * 12, 0.0, common=0.05)
    assert shared.total.uncertainty == pytest.approx(0.6)
    assert shared.best.halves[0].uncertainty == pytest.approx(0.3)


def test_the_chance_that_both_halves_reach_is_what_the_readings_leave_open():
    layout, chance = lay(), np.random.default_rng(5)
    wedges = angles_of(12, 7, over=0.03)
    found = measured(layout, wedges, 0.05, common=0.02).best
    halves = np.array([half.value for half in found.halves])
    true = halves + 6 * 0.02 * chance.normal(size=(20_000, 1))
    true = true + 0.05 * 6**0.5 * chance.normal(size=(20_000, 2))
    assert found.sure == pytest.approx((true >= 180.0).all(axis=1).mean(), abs=0.012)


@pytest.mark.parametrize("ways", [4, 8, 12, 24])
def test_turning_the_ring_turns_the_best_diameter_with_it(ways):
    layout = lay(ways)
    angles = angles_of(ways, 3)
    found = measured(layout, angles).best
    turned = measured(layout, np.roll(angles, 1)).best
    assert turned.uneven == pytest.approx(found.uneven, abs=1e-9)
    assert (turned.first - found.first) % (ways // 2) == 1 % (ways // 2)


def test_measured_halves_give_their_own_diameter():
    ring = Ring.of(lay())
    found = Measured(ring, halves=(Angle(180.6, 0.05), Angle(179.8, 0.05)), first=3)
    assert [d.first for d in found.diameters] == [3]
    assert found.error == pytest.approx(0.4)
    assert found.best.halves[1].value == pytest.approx(179.8)
    assert found.best.costs.tips == pytest.approx(500.0 * math.sin(math.radians(0.1)))
    assert found.best.sure < 0.01
    assert math.fsum(found.angles) == pytest.approx(360.4)
    late = Measured(ring, halves=(Angle(180.6), Angle(179.8)), first=9)
    assert late.best.halves[0].value == pytest.approx(180.6)


def test_an_odd_ring_has_no_diameter():
    found = measured(lay(7), [51.5] * 7)
    assert found.diameters == () and found.trued.how == "last joint"
    assert code(lambda: found.best) == "no-halves"
    assert code(lambda: Measured(found.ring, halves=(Angle(180.0), Angle(180.0)))) == "no-halves"


def test_long_and_short_seams_decide_where_less_is_trued_off():
    layout = lay(8, top=Top.oval(1600.0, 600.0), start=22.5)
    found = measured(layout, [45.2] * 8)
    assert len({d.costs.area for d in found.diameters}) > 1
    least = min(found.diameters, key=lambda d: d.costs.area)
    assert found.best.costs.area == pytest.approx(least.costs.area)
    lengths = found.best.at.parts[0].lengths
    assert min(lengths) == pytest.approx(300.0)


def test_no_tip_is_lost_to_save_a_little_area():
    layout = lay(8, top=Top.oval(1600.0, 600.0), start=22.5)
    across = np.array([-0.03, -0.03, 0.03, 0.03])
    angles = np.full(8, 45.0 + 0.1 / 8) + np.concatenate([across, -across]) / 2.0
    found = measured(layout, angles)
    short = next(d for d in found.diameters if d.first == 3)  # along the shortest seams
    assert short.costs.tips > 0.01 and short.costs.area < found.best.costs.area
    assert found.best.costs.tips == 0.0 and found.best.first in (2, 4)


def test_swaps_are_offered_only_with_what_they_do_to_the_seams():
    layout = lay(12)
    wedges = list(angles_of(12, 7, over=0.4, spread=0.3))
    closing = Closing(Before(layout, Errors(0.05, 0.1)), measured(layout, wedges))
    assert closing.swaps
    pieces = {p.position: p for p in layout.pieces}
    for swap in closing.swaps:
        other = list(wedges)
        other[swap.a - 1], other[swap.b - 1] = other[swap.b - 1], other[swap.a - 1]
        assert measured(layout, other).best.uneven == pytest.approx(swap.uneven)
        assert swap.uneven < swap.uneven_now == closing.after.best.uneven
        assert swap.broken == 2  # a book ring alternates: the seams on both sides lose the mirror
        before, after = (swap.a - 2) % 12 + 1, swap.b % 12 + 1
        surface = [
            abs(layout.bundle.surface(pieces[i].leaf, pieces[i].turned)
                - layout.bundle.surface(pieces[j].leaf, pieces[j].turned))
            for i, j in ((before, swap.b), (swap.b, swap.a), (swap.a, after))
        ]  # fmt: skip
        assert list(swap.steps) == surface
    slip = lay(12, turn="slip")
    other = Closing(Before(slip, Errors(0.05, 0.1)), measured(slip, wedges))
    assert other.swaps and {swap.broken for swap in other.swaps} == {0}


def test_only_a_ring_is_closed():
    assert code(lambda: Ring.of(side(STOCK, Top.rectangle(600.0, 400.0), count=2))) == "no-ring"
    assert code(lambda: Ring.of(lay(8, centre=(900.0, 0.0)))) == "no-ring"
    ring = Ring.of(lay())
    assert code(lambda: Measured(ring, (Angle(30.0),) * 11)) == "wrong-count"
    assert code(lambda: Measured(ring)) == "wrong-count"
    assert code(lambda: places(ring, [30.0] * 3, "both ends")) == "wrong-count"
    for wrong in (math.nan, -0.1, 9.0):
        assert code(lambda bad=wrong: Errors(bad, 0.0)) in ("not-a-number", "out-of-range")
    assert code(lambda: Gap(300.0, 500.0)) == "out-of-range"
    assert code(lambda: Moisture(9.0, 9.0, 9.0, 0.5)) == "out-of-range"
    assert code(lambda: Before(lay(), Errors(0.1, 0.1), confidence=1.0)) == "out-of-range"
