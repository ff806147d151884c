# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether a photograph of a pinned leaf, or of a stack, bears out the registers."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import rigid, similar
from veneerwb.core.plane import Motion
from veneerwb.core.targets import Pins, Seen, confirm, together

PLACES = np.array([(40.0, 60.0), (560.0, 75.0), (550.0, 1510.0), (35.0, 1490.0)])
"""Four marks of a leaf of 600 x 1600 mm, counter-clockwise from the lower left."""
REGISTERS = [Motion(), Motion(0.8, 6.0, -9.0), Motion(-1.2, -11.0, 4.0), Motion(0.3, 2.0, 3.0)]
MIDDLE = np.array([1500.0, 2000.0])
"""Of the photograph of 3000 x 4000 pixels."""
ABOVE = 1500.0
"""mm: the camera over the topmost leaf."""


def photographed(places: np.ndarray, below: float = 0.0, tilt: float = 0.0) -> np.ndarray:
    """What a camera sees of places (mm, bundle) at a depth: it hangs ABOVE over (300, 800), a
    little turned, and looks `tilt` degrees off straight down, across and along alike."""
    off = np.column_stack([places - (300.0, 800.0), np.full(len(places), -below - ABOVE)])
    turn, lean = math.radians(3.0), math.radians(tilt)
    c, s = math.cos(turn), math.sin(turn)
    p, q = math.cos(lean), math.sin(lean)
    spun = np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])
    along = np.array([[1, 0, 0], [0, p, -q], [0, q, p]])
    across = np.array([[p, 0, q], [0, 1, 0], [-q, 0, p]])
    x, y, z = along @ across @ spun @ off.T
    return MIDDLE + 3100.0 * np.column_stack([x / -z, y / z])


def seen(number: int, moved: Motion | None = None, marks: np.ndarray = PLACES, below: float = 0.0,
         tilt: float = 0.0) -> Seen:
    """Marks of a leaf that lies off its register by `moved`, each leaf's at places of its own."""
    register, own = REGISTERS[number - 1], marks + 3.0 * number
    lies = (moved or Motion()).apply(register.inverse().apply(own))
    return Seen(number, photographed(lies, below, tilt), own, register, below)


def stack(moved: dict[int, Motion], depth: float = 0.0, **more: object) -> list[Seen]:
    return [seen(k, moved.get(k), below=depth * (k - 1), **more) for k in (1, 2, 3, 4)]


def codes(findings: list) -> list[tuple[int, str]]:
    return [(f.values["leaf"], f.code.removeprefix("register-")) for f in findings]


def refused(code: str, *args: object, **more: object) -> str:
    with pytest.raises(VeneerError) as caught:
        confirm(*args, **more)
    assert caught.value.code == code, str(caught.value)
    return str(caught.value)


PINS = np.array([(300.0, 100.0), (310.0, 1500.0)])
CLICKED = Pins(photographed(PINS), PINS)


# --- one leaf and its pins ----------------------------------------------------------------------


def test_a_pinned_leaf_is_confirmed_or_contradicted_by_its_pins() -> None:
    (good,) = confirm([seen(2)], CLICKED)
    assert (good.code, good.level) == ("register-confirmed", "note")
    assert good.values["off"] < 0.01 and "Leaf 2 lies where its register has it" in good.text
    (bad,) = confirm([seen(2, Motion(dx=0.3, dy=-0.9))], CLICKED)
    assert (bad.code, bad.level) == ("register-contradicted", "stop")
    assert bad.values["off"] == pytest.approx(math.hypot(0.3, 0.9), abs=0.02)
    assert bad.values["turn"] == 0.0
    (turned,) = confirm([seen(2, Motion.turn_about(300, 800, 0.2))], CLICKED)
    assert turned.code == "register-contradicted"
    assert turned.values["turn"] == pytest.approx(0.2, abs=0.01)
    refused("nothing-to-compare", [seen(2)])
    refused("nothing-to-compare", [])
    refused("marks-missing", [seen(2)], Pins(CLICKED.on_photo, PINS[:1]))
    refused("too-few-marks", [seen(2, marks=PLACES[:1])], CLICKED)
    refused("too-few-pins", [seen(2)], Pins(CLICKED.on_photo[:1], PINS[:1]))


@pytest.mark.parametrize("pins", [CLICKED, None], ids=["pins", "stack"])
def test_it_says_which_way_a_leaf_lies_off_and_what_would_do(pins: Pins | None) -> None:
    moved = Motion(dx=1.5, dy=-0.8) @ Motion.turn_about(300, 800, 0.3)
    leaves = [seen(3, moved)] if pins else stack({3: moved})
    bad = next(f for f in confirm(leaves, pins) if f.values["leaf"] == 3)
    assert bad.values["dx"] == pytest.approx(1.5, abs=0.05)
    assert bad.values["dy"] == pytest.approx(-0.8, abs=0.05)
    assert bad.values["angle"] == pytest.approx(0.3, abs=0.02)
    assert "mm to the right and" in bad.text and "mm down the grain, turned 0." in bad.text
    assert bad.text.endswith("deg counter-clockwise about the middle.")
    assert bad.remedy.startswith("Do not cut.") and "mm to the left and" in bad.remedy
    assert "mm up the grain, turned" in bad.remedy and "deg clockwise" in bad.remedy
    assert str(bad.values["across"]) in bad.text and "{" not in bad.text + bad.remedy


def test_where_marks_or_clicks_tell_too_little_that_is_said() -> None:
    (coarse,) = confirm([seen(2)], CLICKED, error=1.0)
    assert (coarse.code, coarse.level) == ("register-not-told", "warn")
    assert "neither confirms" in coarse.text
    (rough,) = confirm([seen(2)], replace(CLICKED, error=1.0))
    assert rough.code == "register-not-told"
    three = seen(2, marks=PLACES[:3])
    swapped = replace(three, marks=three.marks + [(0, 0), (0, 0), (0, 3.0)])
    (askew,) = confirm([swapped], CLICKED)
    assert askew.code == "register-not-told" and askew.values["unsure"] > 0.5


def test_what_is_extrapolated_from_marks_near_each_other_is_less_sure() -> None:
    near = PLACES[0] + [(0, 0), (60.0, 0), (0, 60.0)]
    (far,) = confirm([seen(2)], CLICKED, error=0.1)
    (short,) = confirm([seen(2, marks=near)], CLICKED, error=0.1)
    assert far.code == "register-confirmed" and far.values["unsure"] < 0.25
    assert short.code == "register-not-told" and short.values["unsure"] > 1.0


def test_pins_near_each_other_and_clicked_a_pixel_off_contradict_nothing() -> None:
    pins = np.array([(300.0, 700.0), (340.0, 760.0)])
    clicked = Pins(photographed(pins) + [(0.4, 0.0), (0.0, -0.4)], pins, 0.3)
    (good,) = confirm([seen(2)], clicked, error=0.1)
    assert good.code == "register-confirmed" and good.values["turn"] > 0.1
    (bad,) = confirm([seen(2, Motion(dx=1.5))], clicked, error=0.1)
    assert bad.code == "register-contradicted"


def test_a_leaf_that_is_another_one_is_not_pushed_about() -> None:
    (bad,) = confirm([seen(2, Motion(dx=60.0))], CLICKED)
    assert bad.code == "register-contradicted"
    assert "See that this is the leaf" in bad.remedy and "move the leaf" not in bad.remedy


# --- a camera that does not look straight down --------------------------------------------------


def test_four_marks_on_the_topmost_leaf_square_the_photograph_up() -> None:
    """Two degrees spoil what is taken to be square on by millimetres."""
    pins = Pins(photographed(PINS, tilt=2.0), PINS)
    (good,) = confirm([seen(1, tilt=2.0)], pins)
    assert good.code == "register-confirmed" and good.values["off"] < 0.02
    (bad,) = confirm([seen(1, Motion(dx=1.0), tilt=2.0)], pins)
    assert bad.values["off"] == pytest.approx(1.0, abs=0.03) and "squared up" not in bad.remedy
    (two,) = confirm([seen(1, marks=PLACES[:2], tilt=2.0)], pins)
    assert two.code == "register-contradicted" and two.values["off"] > 2.0
    assert "four marks on the topmost leaf" in two.remedy


def test_marks_on_a_line_square_nothing_and_refuse_nothing() -> None:
    line = np.column_stack([np.full(4, 40.0), np.linspace(60.0, 1500.0, 4)])
    (good,) = confirm([seen(1, marks=line)], CLICKED)
    assert good.code == "register-confirmed"


@pytest.mark.parametrize("tilt", [0.0, 1.5])
def test_leaves_further_down_are_seen_smaller(tilt: float) -> None:
    leaves = stack({}, depth=4.0, tilt=tilt)
    refused("camera-unknown", leaves)
    level = confirm(leaves, camera=ABOVE, middle=tuple(MIDDLE))
    assert max(f.values["off"] for f in level) < 0.02
    # 12 mm down and some 780 mm off the middle: 780 x 12 / 1500.
    assert level[0].values["parallax"] == 0.0
    assert level[3].values["parallax"] == pytest.approx(6.2, abs=0.2)
    flat = [replace(one, below=0.0) for one in leaves]
    assert any(f.level != "note" for f in confirm(flat))


def test_fourteen_mm_of_stack_move_a_mark_by_2_8_mm() -> None:
    """300 mm off the middle, from 1.5 m: 300 x 14 / 1500."""
    ring = np.array([(0.0, 800.0), (600.0, 800.0)]) - 6.0
    leaves = [seen(1), seen(3), seen(2, marks=ring, below=14.0)]
    (last,) = (f for f in confirm(leaves, camera=ABOVE, middle=tuple(MIDDLE))
               if f.values["leaf"] == 2)
    assert last.code == "register-confirmed"
    assert last.values["parallax"] == pytest.approx(2.8, abs=0.15)


# --- what the marks' own errors leave unsure ----------------------------------------------------

THIRD = np.array([(40.0, 60.0), (560.0, 75.0), (550.0, 510.0), (35.0, 490.0)])
"""Marks near one end: what they square up is far off at the other."""


def blurred(one: Seen | Pins, rng: np.random.Generator, error: float) -> Seen | Pins:
    return replace(one, on_photo=one.on_photo + rng.normal(0, error, one.on_photo.shape))


@pytest.mark.parametrize("marks, code, least, most", [
    (PLACES, "register-confirmed", 0.1, 0.3), (THIRD, "register-not-told", 1.0, 3.0),
], ids=["corners", "one end"])
def test_what_squares_the_photograph_up_is_off_too(
    marks: np.ndarray, code: str, least: float, most: float
) -> None:
    rng, error, beyond = np.random.default_rng(5), 0.15, 0
    for _ in range(60):
        pins = replace(blurred(CLICKED, rng, error), error=error)
        (found,) = confirm([blurred(seen(1, marks=marks), rng, error)], pins, error=error)
        assert found.code == code and least < found.values["unsure"] < most
        beyond += found.values["off"] > found.values["unsure"]
    assert beyond <= 12, "two deviations of two pins"


def test_tabs_far_from_the_marks_that_square_up_do_not_contradict_each_other() -> None:
    rng, error = np.random.default_rng(6), 0.15
    tabs = [np.array([(20.0, y), (580.0, y)]) for y in (1500.0, 1510.0, 1520.0)]
    leaves = [seen(1, marks=THIRD), *(seen(k, marks=m) for k, m in zip((2, 3, 4), tabs))]
    for _ in range(30):
        found = confirm([blurred(one, rng, error) for one in leaves], error=error)
        assert all(one.level != "stop" for one in found), codes(found)


# --- leaves by each other -----------------------------------------------------------------------


def test_the_leaf_that_stands_apart_in_a_stack_is_named() -> None:
    assert codes(confirm(stack({}))) == [(k, "confirmed") for k in (1, 2, 3, 4)]
    findings = confirm(stack({3: Motion(dx=2.0)}))
    assert codes(findings)[2] == (3, "contradicted")
    assert [code for _, code in codes(findings)].count("confirmed") == 3
    assert findings[2].values["off"] == pytest.approx(2.0, abs=0.02)


def test_one_mark_a_leaf_will_do_where_many_leaves_show_one() -> None:
    single = [replace(one, on_photo=one.on_photo[k:k + 1], marks=one.marks[k:k + 1])
              for k, one in enumerate(stack({}))]
    assert codes(confirm(single)) == [(k, "confirmed") for k in (1, 2, 3, 4)]


def test_marks_that_fit_any_photograph_confirm_nothing() -> None:
    """Scale, turn and place are four unknowns: two marks always fit."""
    single = [replace(one, on_photo=one.on_photo[:1], marks=one.marks[:1]) for one in stack({})]
    refused("too-few-to-compare", single[:2])
    refused("too-few-to-compare", single[:3])


@pytest.mark.parametrize("counts", [(4, 4), (3, 2), (2, 3), (3, 1)])
def test_two_leaves_never_share_the_misfit_between_them(counts: tuple[int, int]) -> None:
    """What the second lies off the first is told in full, and that two do not tell which."""
    def pair(moved: Motion) -> list[Seen]:
        return [seen(1, marks=PLACES[:counts[0]]), seen(2, moved, marks=PLACES[::-1][:counts[1]])]

    (good,) = confirm(pair(Motion()))
    assert good.code == "register-confirmed" and "on each other" in good.text
    (bad,) = confirm(pair(Motion(dx=0.0, dy=1.2)))
    assert (bad.code, bad.level) == ("leaves-disagree", "stop")
    assert bad.values["off"] == pytest.approx(1.2, abs=0.02)
    assert {bad.values["leaf"], bad.values["other"]} == {1, 2}
    way = "up" if bad.values["leaf"] == 2 else "down"
    assert f"1.2 mm {way} the grain" in bad.text and "do not tell which" in bad.text


def test_two_leaves_with_marks_at_opposite_ends_keep_their_scale() -> None:
    """A shift along the grain is no scale."""
    leaves = [seen(1, marks=PLACES[:2]), seen(2, Motion(dy=1.2), marks=PLACES[2:])]
    (bad,) = confirm(leaves)
    assert bad.values["off"] == pytest.approx(1.2, abs=0.02)


def test_two_leaves_whose_marks_tell_no_turn_are_refused() -> None:
    near = PLACES[0] + [(0.0, 0.0), (12.0, 3.0)]
    assert "far apart" in refused("marks-too-near", [seen(1, marks=near), seen(2, marks=near)])


def test_one_leafs_close_marks_do_not_stop_the_others() -> None:
    """24 mm apart in x and in y, 34 mm in all: a place is told, a turn is not."""
    near = PLACES[0] + [(0.0, 0.0), (24.0, 24.0)]
    leaves = [seen(1), seen(2), seen(3, marks=near)]
    assert codes(confirm(leaves)) == [(k, "confirmed") for k in (1, 2, 3)]


def test_where_no_more_than_half_agree_no_leaf_is_blamed() -> None:
    away = Motion(dx=2.0)
    findings = confirm(stack({3: away, 4: away}))
    assert all(f.code in ("leaves-disagree", "register-confirmed") for f in findings)
    wrong = [f for f in findings if f.level == "stop"]
    assert wrong and all("too few leaves agree" in f.text for f in wrong)


def test_findings_are_read_at_a_glance() -> None:
    """What stands against cutting first; the leaves that lie right in one sentence."""
    findings = confirm(stack({3: Motion(dx=2.0)}), error=0.05)
    first, rest = together(findings)
    assert first is findings[2]
    assert rest.text.startswith("Leaves 1-2, 4 lie where their registers")
    assert rest.values["off"] == max(findings[k].values["off"] for k in (0, 1, 3))
    (one,) = together(confirm([seen(2)], CLICKED))
    assert "Leaf 2" in one.text
    (two,) = together(confirm(stack({})[:2]))
    assert "Leaves 1 and 2" in two.text


# --- the fit ------------------------------------------------------------------------------------


def test_the_fit_with_a_scale_is_the_rigid_one_where_the_scale_is_one() -> None:
    rng = np.random.default_rng(3)
    onto = Motion(7.0, 30.0, -4.0).apply(PLACES) + rng.normal(0, 1.0, PLACES.shape)
    weights = np.array([1.0, 3.0, 0.5, 2.0])
    motion, _ = rigid(PLACES, onto, weights)
    found = similar(PLACES, onto, weights)
    assert found.motion.angle == pytest.approx(motion.angle) and abs(found.scale - 1) < 0.01
    doubled = similar(2.0 * PLACES, onto, weights)
    assert doubled.scale == pytest.approx(found.scale / 2)

    def left(scale: float) -> float:
        fit = Motion(found.motion.angle)
        off = scale * fit.apply(PLACES) - onto
        off -= np.average(off, axis=0, weights=weights)
        return float(weights @ (off**2).sum(axis=1))

    assert left(found.scale) < min(left(found.scale * 1.0001), left(found.scale / 1.0001))
