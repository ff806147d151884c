# SPDX-License-Identifier: LGPL-2.1-or-later
"""Made-up rings as a maker measures them, worked out by hand: what is told at the bench is that."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Closing,
    Errors,
    Gap,
    Measured,
    Ring,
    Trial,
    bent,
    point_moves,
    said,
)

STOCK = Stock(1600.0, 3000.0, 64, 0.6)


def plain(mm):
    return f"{mm:.2f} mm"


def halves(one, two, top=None, first=1, shifted=0.0, **given):
    layout = radial(STOCK, top or Top.round(1000.0), 12, **{"oversize": 10.0, **given})
    both = tuple(a if isinstance(a, Angle) else Angle(a, 0.02) for a in (one, two))
    after = Measured(Ring.of(layout), halves=both, first=first)
    return Closing(Before(layout, Errors(0.03, 0.05)), after, shifted)


def told(closing):
    texts = [*said.found_after(closing, plain), *said.steps_after(closing, plain)]
    return " ".join(texts)


def test_halves_that_are_both_over_lose_half_of_it_at_each_end_and_keep_their_tips():
    """181.2: 0.6 deg at each end, 500 sin 0.6 = 5.24 at the rim, 500 mm from the tip."""
    one = halves(181.2, 180.8)
    rows = said.ends(one.at, plain)[1]
    assert [row[:3] for row in rows] == [
        ("a", "1", "12"), ("b", "6", "7"), ("c", "7", "6"), ("d", "12", "1"),
    ]  # fmt: skip
    assert [row[3:] for row in rows] == [("0.00 mm", "5.24 mm", "500.00 mm")] * 2 + [
        ("0.00 mm", "3.49 mm", "500.00 mm")
    ] * 2
    assert "All tips still meet" in told(one) and "To keep the tips" not in told(one)
    assert "overlaps by 17.45 mm" in told(one)  # 2 x 500 sin 1


def test_on_an_oval_each_line_ends_where_its_own_seam_does():
    one = halves(181.2, 180.8, Top.oval(1200.0, 800.0))
    ring = one.ring
    rows = said.ends(one.at, plain)[1]
    far = ring.length(0)
    assert far == pytest.approx(ring.length(6)) and far < ring.reach
    assert {row[5] for row in rows} == {plain(far)}
    assert rows[0][4] == plain(far * math.sin(math.radians(0.6)))


def test_a_half_under_is_trued_beyond_its_tip_along_one_straight():
    """178.8: 500 sin 0.6 = 5.24 at the tip, nothing at the rim; the other alike: 10.47 apart."""
    one = halves(178.8, 178.8)
    rows = said.ends(one.at, plain)[1]
    assert [row[3:5] for row in rows] == [("5.24 mm", "0.00 mm")] * 4
    assert point_moves(one.at.parts) == pytest.approx(10.472, abs=1e-3)
    assert "stays open by 20.94 mm" in told(one) and "10.47 mm apart" in told(one)
    assert bent(one.at) is None and "To keep the tips" not in told(one)
    # The two marks of an end lie on the straight that runs 5.24 before the tip.
    part = one.at.parts[0]
    (tip, rim), _ = part.offsets
    b = math.radians(0.6)
    lean = math.hypot(500.0, tip - rim)
    assert tip * 500.0 / lean == pytest.approx(500.0 * math.sin(b), rel=1e-4)


@pytest.mark.parametrize(("over", "under", "trim"), [(180.6, 179.7, 0.15), (180.6, 179.4, 0.0)])
def test_a_half_that_is_under_keeps_its_tip_where_the_other_makes_up_for_it(over, under, trim):
    for one in (halves(over, under), halves(under, over)):
        found = bent(one.at)
        assert found.kept.sum == under and found.other.sum == over
        assert found.to == pytest.approx(360.0 - under) and found.trim == pytest.approx(trim)
        assert found.offs == pytest.approx((500.0 * math.sin(math.radians(trim)),) * 2)
        assert found.bend == pytest.approx(180.0 - under)
        text = told(one)
        assert "To keep the tips instead" in text
        assert ("fit into each other untrued" in text) == (trim == 0.0)
        assert (plain(found.offs[0]) in text.split("To keep")[1]) == (trim > 0.0)


def test_a_ring_that_sums_to_360_closes():
    assert "the ring closes" in told(halves(180.0, 180.0))
    assert "0.00 mm, give" not in told(halves(180.3, 179.7))


def test_quarters_have_no_bent_joint_and_both_under_have_none():
    one = halves(180.6, 179.7)
    assert bent(one.at) is not None
    quarters = Measured(one.ring, halves=one.after.halves, how="quarters")
    assert bent(quarters.trued) is None


@pytest.mark.parametrize(("shifted", "left"), [(3.0, 10.0 + 11.59), (-2.0, 10.0 - 7.73)])
def test_edges_that_are_all_out_take_the_rim_with_them(shifted, left):
    """3 / sin 15 = 11.59."""
    one = halves(180.0, 180.0, shifted=shifted)
    assert one.slides == pytest.approx(shifted / math.sin(math.radians(15.0)))
    assert one.oversize_left == pytest.approx(left, abs=0.01)
    assert f"Of the oversize {one.oversize_left:.2f} mm are left" in told(one)


def test_edges_that_are_in_by_more_than_the_oversize_covers_leave_the_rim_short():
    one = halves(180.0, 180.0, shifted=-3.0)
    assert "1.59 mm short of the finished edge" in told(one)
    assert "short" not in told(halves(180.0, 180.0, shifted=-2.0))


def test_a_disc_over_the_tips_hides_that_they_do_not_meet():
    assert "The disc over the centre hides it." in told(halves(179.6, 179.6, disc=120.0))
    assert "A disc over the centre hides it" in told(halves(179.6, 179.6))


def test_a_straightedge_on_unlike_arms_tells_the_angle_by_their_harmonic_mean():
    """Arms of 413 and 629 mm that are over by 1.2 deg in all: the gap is the height of the triangle
    that they make with the straightedge (plane geometry)."""
    layout = radial(STOCK, Top.oval(1200.0, 800.0), 12, centre=(60.0, 0.0), oversize=10.0)
    ring = Ring.of(layout, 10.0)
    for first in range(1, 13):
        a, b = ring.length(first - 1), ring.length(first + 5)
        turn = math.radians(181.2)
        base = math.sqrt(a * a + b * b - 2.0 * a * b * math.cos(turn))
        gap = a * b * abs(math.sin(turn)) / base
        far = ring.straightedge(first, "tip")
        assert min(a, b) <= far <= max(a, b)
        assert Gap(gap, far, "tip").half.value == pytest.approx(181.2, abs=5e-4)
        assert ring.straightedge(first, "end") == max(a, b)
    assert ring.length(0) == pytest.approx(Ring.of(layout).length(0) + 10.0, abs=1.0)


def test_no_claim_is_of_certainty():
    layout = radial(STOCK, Top.round(1000.0), 12)
    trial = Trial(6, Angle(6.0 * 30.4, 0.02), 30.0, 0.02)
    before = Before(layout, Errors(0.03, 0.02), trial=trial)
    assert before.advised.over.claimed > 0.9995
    assert "180 deg in over 99.9, the diameter" in said.claim(before.advised.over)
    under = Before(layout, Errors(0.03, 0.02), trial=Trial(6, Angle(178.0, 0.02), 30.0, 0.02))
    assert "in under 0.1 of 100 rings" in " ".join(said.steps_before(under, plain))
