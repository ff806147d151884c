# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the stack follows: figure, log or marks; what each costs, rests on and leaves unknown."""

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import box

from veneerwb.core import Disturbance, Top, radial, sawn_bundle
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.chain import Chain, Check, Step
from veneerwb.core.sequence.drift import CLEAR, drifted, shifted
from veneerwb.core.sequence.follow import compared, cost, follow
from veneerwb.core.sequence.marks import MARKS_AGREE, MARKS_APART
from veneerwb.core.sequence.trust import TESTED, trusted

WIDTH, LENGTH = 240.0, 700.0
MIDDLE = (WIDTH / 2, LENGTH / 2)
CORNERS = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
WANDER = (0.4, -3.0)


def bundle(leaves=12, **more):
    blank = Photo.of(np.full((70, 24, 3), 90, np.uint8), 10.0)
    return Bundle(tuple(Leaf(k, Side(blank)) for k in range(1, leaves + 1)), 0.6, **more)


def lain(leaves=12, seed=1, shift=10.0):
    """Where the log lies on each photograph: anywhere within the shift, the first where it is."""
    rng = np.random.default_rng(seed)
    found = {1: IDENTITY}
    for k in range(2, leaves + 1):
        dx, dy, turn = rng.uniform(-1, 1, 3) * (shift, shift, 2)
        found[k] = Motion(dx=dx, dy=dy) @ Motion.turn_about(*MIDDLE, turn)
    return found


def chain(places, wander=WANDER, grows=0.0):
    """The chain of a figure that wanders so from leaf to leaf."""
    registers = {
        k: motion @ Motion(dx=wander[0] * (k - 1), dy=wander[1] * (k - 1) + grows * (k - 1) ** 2)
        for k, motion in places.items()
    }
    steps = tuple(
        Step(a, a + 1, registers[a + 1] @ registers[a].inverse(), 0.8, 0.1, 0.01, 0.3)
        for a in list(places)[:-1]
    )
    return Chain(registers, steps, ())


def off(done, wanted):
    """rms mm at the corners."""
    gone = [
        done.bundle.leaf(n).register.apply(CORNERS) - wanted[n].apply(CORNERS) for n in wanted
    ]
    return math.sqrt(np.mean(np.sum(np.array(gone) ** 2, axis=2)))


def codes(done):
    return [finding.code for finding in done.findings]


def test_following_the_figure_takes_the_chain_as_it_is():
    links = chain(lain())
    done = follow(bundle(), chain=links)
    assert done.what == "figure" and off(done, links.registers) == 0
    assert set(done.wander.values()) == {(0.0, 0.0)}
    assert all(leaf.face.view == leaf.register for leaf in done.bundle.leaves)


def test_the_log_by_its_own_frames_is_exact_and_the_wander_is_measured():
    places = lain()
    elsewhere = Motion(30.0, 5.0, -70.0)  # targets have a frame of their own
    frames = {n: motion @ elsewhere for n, motion in places.items()}
    done = follow(bundle(), "log", chain=chain(places), frames=frames)
    assert off(done, places) < 1e-9
    assert done.wander[12] == pytest.approx((11 * 0.4, 11 * -3.0), abs=1e-9)
    assert "log-by-frames" in codes(done) and "log-unknown" not in codes(done)


def test_the_log_by_its_frames_needs_no_figure():
    """The blank photographs show none."""
    places = lain()
    done = follow(bundle(), "log", frames=places)
    assert off(done, places) < 1e-9 and done.trust == () and done.wander == {}
    assert "log-by-frames-alone" in codes(done)
    with pytest.raises(VeneerError, match="no figure"):
        follow(bundle(), "log", wander=WANDER)


def test_the_log_by_a_wander_measured_elsewhere():
    places = lain()
    done = follow(bundle(), "log", chain=chain(places), wander=WANDER)
    assert off(done, places) < 1e-9
    assert done.wander[3] == pytest.approx((0.8, -6.0))
    assert all(leaf.face.view == leaf.register for leaf in done.bundle.leaves)
    assert "wander-at-odds" not in codes(done)
    assert "wander-at-odds" in codes(
        follow(bundle(), "log", chain=chain(places), wander=(0.0, 6.0))
    )


@pytest.mark.parametrize("back", ["next", "previous"])
@pytest.mark.parametrize("slope", [10.0, -10.0])
def test_the_log_by_a_known_slope(slope, back):
    """Plane geometry: t / tan(a) a leaf, towards -y for a positive slope and leaves under each
    other; four leaves are too few for a drift."""
    y = -math.copysign(0.6 / math.tan(math.radians(10)), slope) * (1 if back == "next" else -1)
    places = lain(4)
    stack = bundle(4, slope=slope, back=back)
    done = follow(stack, "log", chain=chain(places, (0.0, y)))
    assert off(done, places) < 1e-6 and "log-by-slope" in codes(done)


def test_a_clear_drift_has_the_last_word_on_the_sign_of_a_slope():
    places = lain(24, shift=2.0)
    y = 0.6 / math.tan(math.radians(10))
    done = follow(bundle(24, slope=10.0), "log", chain=chain(places, (0.0, y)))
    assert off(done, places) < 1e-6


def test_a_stem_without_slope_has_no_wander():
    links = chain(lain(), (0.0, 0.0))
    done = follow(bundle(slope=0.0), "log", chain=links)
    assert off(done, links.registers) == 0 and "log-by-slope" in codes(done)


def test_without_any_other_knowledge_the_shared_drift_is_taken_out():
    places = lain(24)
    links = chain(places)
    done = follow(bundle(24), "log", chain=links)
    assert "log-by-drift" in codes(done) and "log-unknown" in codes(done)
    assert off(done, places) < 8 < 35 < off(follow(bundle(24), chain=links), places)
    # What is left is the same for all leaves but for the number of steps: nothing else was touched.
    left = {
        n: done.bundle.leaf(n).register.inverse().apply(places[n].apply(MIDDLE)) - MIDDLE
        for n in places
    }
    assert left[24] == pytest.approx(23 / 11 * left[12], abs=1e-6)


def test_a_drift_that_grows_is_followed_and_one_leaf_astray_pulls_little():
    places = lain(24, shift=1.0)
    links = chain(places, (0.0, -2.0), grows=-0.15)
    seen = drifted(links.registers, MIDDLE)
    assert seen.growth[1] == pytest.approx(-0.3, abs=0.05) and seen.clear == (False, True)
    assert seen.after(23)[1] == pytest.approx(-2 * 23 - 0.15 * 23**2, abs=3)
    astray = {**links.registers, 20: Motion(dy=80.0) @ links.registers[20]}
    assert drifted(astray, MIDDLE).after(23)[1] == pytest.approx(seen.after(23)[1], abs=4)


def test_the_drift_is_seen_in_the_bundle_whatever_the_turn_of_a_photograph():
    lies = Motion(dx=2.0, dy=-1.0) @ Motion.turn_about(*MIDDLE, 40.0)
    wandered = lies @ Motion(dx=3.0, dy=7.0)
    back = Motion(-40.0).apply((2.0, -1.0))
    assert shifted(wandered, MIDDLE) == pytest.approx(back + (3.0, 7.0))
    turned_over = Motion(0.0, WIDTH, 0.0, True) @ Motion(dx=3.0, dy=7.0)
    assert shifted(turned_over, MIDDLE) == pytest.approx((3.0, 7.0))


def test_no_drift_is_made_up():
    """Photographs laid down at random share a drift by chance only; none is taken out."""
    clear = 0
    for seed in range(25):
        links = chain(lain(12, seed), (0.0, 0.0))
        clear += any(drifted(links.registers, MIDDLE).clear)
    assert clear <= 2
    links = chain(lain(12, 3), (0.0, 0.0))
    done = follow(bundle(), "log", chain=links)
    assert {"log-by-nothing", "log-unknown"} <= set(codes(done))
    assert "follows-log" not in codes(done)
    assert off(done, links.registers) == 0
    few = follow(bundle(3), "log", chain=chain(lain(3)))
    assert "So few leaves" in few.text


def test_what_a_drift_may_hide_adds_up_over_the_bundle():
    still = chain(lain(12, 3), (0.0, 0.0))
    found = follow(bundle(), "log", chain=still).findings
    (unknown,) = [one for one in found if one.code == "log-unknown"]
    error = math.hypot(*drifted(still.registers, MIDDLE).error)
    assert unknown.values["hidden"] == pytest.approx(CLEAR * error, abs=0.05)
    assert unknown.values["hidden_total"] == pytest.approx(11 * CLEAR * error, abs=0.05)


def test_the_figure_is_compared_with_progress():
    stack = sawn_bundle(3, 150, 300, mm_per_px=1.5, figure="burl", seed=2)
    for what in (follow, compared):
        what(stack, progress=(told := []).append)
        assert told == sorted(told) and told[-1] == 1.0


def test_the_error_of_the_drift_is_of_the_size_of_the_miss():
    missed, said = [], []
    for seed in range(20):
        seen = drifted(chain(lain(24, seed)).registers, MIDDLE)
        missed.append(seen.per_leaf[1] - WANDER[1] if not seen.growth[1] else 0)
        said.append(seen.error[1])
    assert 0.6 < np.std(missed) / np.mean(said) < 1.6


# --- marks -------------------------------------------------------------------------------------


def picked(places, points=((60, 80), (180, 620))):
    return {n: [tuple(p) for p in m.apply(np.array(points, float))] for n, m in places.items()}


def test_two_marks_hold_the_stack():
    places = lain(5, shift=8.0)
    done = follow(bundle(5), "marks", marks=picked(places))
    assert off(done, places) < 1e-9 and done.trust == () and "follows-marks" in codes(done)


def test_more_marks_than_two_are_fitted_by_least_squares():
    """A leaf that shrank a little about the middle of its marks: the middle and the turn hold."""
    points = np.array([(50, 60), (190, 60), (190, 620), (50, 620)], float)
    shrunk = (points - (120, 340)) * 0.998 + (120, 340)
    lies = Motion(3.0, 20.0, -4.0)
    marks = {1: points.tolist(), 2: lies.apply(shrunk).tolist()}
    done = follow(bundle(2), "marks", marks=marks)
    found = done.bundle.leaf(2).register
    assert found.angle == pytest.approx(3.0) and not found.mirrored
    assert found.apply((120, 340)) == pytest.approx(lies.apply((120, 340)))
    assert done.findings[0].values["apart"] == pytest.approx(0.002 * math.hypot(140, 560), abs=0.01)


def test_marks_that_disagree_are_refused_and_little_is_reported():
    places = lain(3, shift=5.0)
    marks = picked(places)
    x, y = marks[2][1]
    length = math.dist(*marks[2])
    along = ((x - marks[2][0][0]) / length, (y - marks[2][0][1]) / length)
    little, much = MARKS_AGREE - 0.5, MARKS_AGREE + 0.5
    marks[2][1] = (x + little * along[0], y + little * along[1])
    done = follow(bundle(3), "marks", marks=marks)
    assert done.findings[0].values["apart"] == pytest.approx(little, abs=0.01)
    assert done.findings[0].values["leaf"] == 2
    marks[2][1] = (x + much * along[0], y + much * along[1])
    with pytest.raises(VeneerError, match="leaf 2") as caught:
        follow(bundle(3), "marks", marks=marks)
    assert caught.value.code == "marks-disagree"


@pytest.mark.parametrize("wrong, code", [
    ({2: [(60, 80)]}, "marks-missing"),
    ({2: []}, "marks-missing"),
    ({2: [(60, 80), (180, 620), (100, 300)]}, "marks-missing"),
    ({2: [(60, 80), (60 + MARKS_APART - 1, 80)]}, "marks-coincide"),
    ({2: [(60, 80), (60, 80)]}, "marks-coincide"),
    ({2: [(60, 80), (180, 900)]}, "mark-off-leaf"),
    ({2: [(60, 80), (180, math.nan)]}, "mark-off-leaf"),
    ({2: [(60, 80), "here"]}, "marks-missing"),
    ({2: 7}, "marks-missing"),
])
def test_bad_marks_are_refused_and_the_leaf_named(wrong, code):
    marks = {n: [(60, 80), (180, 620)] for n in (1, 2, 3)}
    with pytest.raises(VeneerError, match="eaf 2") as caught:
        follow(bundle(3), "marks", marks={**marks, **wrong})
    assert caught.value.code == code


def test_no_marks_at_all_are_asked_for():
    with pytest.raises(VeneerError, match="pick at least two"):
        follow(bundle(3), "marks")


def test_marks_picked_in_the_other_order_are_remarked():
    marks = picked(lain(3, shift=3.0))
    marks[3].reverse()
    done = follow(bundle(3), "marks", marks=marks)
    (turned,) = [f for f in done.findings if f.code == "marks-turned"]
    assert turned.values["leaves"] == (3,)


# --- cost, trust, side by side -----------------------------------------------------------------


def test_following_the_figure_costs_length_where_it_wanders():
    still = dict.fromkeys(range(1, 13), IDENTITY)
    links = chain(still, (0.0, -5.0))
    by_figure = follow(bundle(), chain=links).cost
    by_log = follow(bundle(), "log", chain=links, wander=(0.0, -5.0)).cost
    assert by_figure.lost == pytest.approx((0.0, 55.0)) and by_log.lost == pytest.approx((0, 0))
    assert by_figure.area == pytest.approx(WIDTH * (LENGTH - 55))
    assert by_log.common == pytest.approx((WIDTH, LENGTH))


def test_leaves_that_have_nothing_in_common_stop_the_cut():
    links = chain(dict.fromkeys(range(1, 13), IDENTITY), (0.0, -70.0))
    done = follow(bundle(), chain=links)
    assert done.cost.common == (0, 0) and "nothing-in-common" in codes(done)


def test_the_cost_is_of_the_usable_areas():
    stack = bundle(2)
    narrow = replace(stack.leaf(2), usable=box(20, 0, WIDTH, LENGTH - 100), back=None)
    price = cost(Bundle((stack.leaf(1), narrow), 0.6))
    assert price.common == pytest.approx((220, 600)) and price.lost == pytest.approx((0, 0))


def test_photographs_simply_stacked_are_the_identity_and_say_so():
    stack = bundle(3)
    moved = follow(stack, chain=chain(lain(3))).bundle
    done = follow(moved, "photographs")
    assert all(leaf.register == IDENTITY == leaf.face.view for leaf in done.bundle.leaves)
    assert "not-registered" in codes(done) and "as they were photographed" in done.text


def test_trust_adds_up_along_the_chain_and_doubt_is_handed_on():
    links = chain(lain(4))
    doubtful = replace(links, checks=(Check(2, 4, 10.0, 0.9, 0.3),))
    found = trusted(doubtful)
    assert [t.total_mm for t in found] == pytest.approx([0, 0.3, 0.3 * 2**0.5, 0.3 * 3**0.5])
    assert [t.sure for t in found] == [True, True, False, False]
    assert all(t.sure for t in trusted(links))
    unlike = replace(links, steps=(replace(links.steps[0], likeness=0.1), *links.steps[1:]))
    assert [t.sure for t in trusted(unlike)] == [True, False, False, False]
    (doubt,) = [f for f in follow(bundle(4), chain=doubtful).findings if f.level == "warn"]
    assert doubt.values["leaves"] == (3, 4)


def test_a_figure_says_whether_it_comes_from_photographs_or_from_our_tests():
    assert TESTED.text.startswith("In our tests") and "under glass" in TESTED.remedy
    (said,) = [f for f in follow(bundle(4), chain=chain(lain(4))).findings
               if f.code == "registers-error"]
    assert said.text.startswith("From the residuals of your photographs")
    assert said.values["total"] == pytest.approx(0.3 * 3**0.5, abs=0.01)


def test_choices_side_by_side_are_laid_at_the_same_place():
    stack, places = bundle(6), lain(6, shift=5.0)
    layout = radial(stack, Top.round(300), ways=6)
    choices = compared(
        stack, marks=picked(places), chain=chain(places), wander=WANDER, layout=layout
    )
    assert [c.what for c in choices] == ["figure", "log", "marks", "photographs"]
    for each in choices:
        assert each.layout.bundle is each.followed.bundle
        assert [p.onto_bundle for p in each.layout.pieces] == [
            p.onto_bundle for p in layout.pieces
        ]
    assert [c.what for c in compared(stack, chain=chain(places))] == [
        "figure", "log", "photographs"
    ]


def test_without_figure_the_choices_that_need_none_are_left_and_say_so():
    stack, places = bundle(6), lain(6, shift=5.0)  # blank photographs
    choices = compared(stack, marks=picked(places))
    assert [c.what for c in choices] == ["marks", "photographs"]
    assert all("leaf 1 shows no figure" in c.followed.text for c in choices)
    assert [c.what for c in compared(stack, frames=places)] == ["log", "photographs"]
    with pytest.raises(VeneerError) as caught:
        compared(sawn_bundle(2, 120, 300, mm_per_px=1.0), region="everything")
    assert caught.value.code == "no-region"


def test_one_leaf_is_followed_whatever_it_is():
    for what in ("figure", "log", "photographs"):
        done = follow(bundle(1), what)
        assert done.bundle.leaf(1).register == IDENTITY and done.cost.lost == (0, 0)


@pytest.mark.parametrize("how, code", [
    ({"what": "colour"}, "unknown-choice"),
    ({"what": "log", "wander": 3.0}, "not-a-list"),
    ({"what": "log", "wander": (0.0, math.nan)}, "not-a-number"),
    ({"what": "log", "frames": {1: IDENTITY, 3: IDENTITY}}, "frames-missing"),
    ({"chain": Chain({1: IDENTITY}, (), ())}, "chain-lacks-leaf"),
])
def test_what_is_missing_is_said_in_a_sentence(how, code):
    with pytest.raises(VeneerError) as caught:
        follow(bundle(3), **{"chain": chain(lain(3)), **how})
    assert caught.value.code == code and str(caught.value).endswith(".")


def test_from_photographs_alone_down_a_sloping_stem():
    """End to end: crowns that wander 3.4 mm a leaf, photographs shifted by up to 3 mm."""
    stack = sawn_bundle(
        8, WIDTH, LENGTH, mm_per_px=1.0, figure="cathedral", slope=10.0, knots=0,
        disturb=Disturbance(shift=3, turn=1),
    )
    true = {leaf.number: leaf.register for leaf in stack.leaves}
    done = follow(replace(stack, slope=None), "log")
    assert "log-by-drift" in codes(done)
    by_figure = follow(stack, chain=Chain(_registers(stack, done), (), ()))
    assert off(done, true) < 3.5 < 10 < off(by_figure, true)


def _registers(stack, done):
    return {
        n: done.bundle.leaf(n).register @ Motion(dx=done.wander[n][0], dy=done.wander[n][1])
        for n in stack.numbers
    }
