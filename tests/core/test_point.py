# SPDX-License-Identifier: LGPL-2.1-or-later
"""A point followed through the stack, and the leaves' own frames by which its drift is parted."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Polygon, box

from veneerwb.core import Bundle, Leaf, Motion, Side, VeneerError, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import tand
from veneerwb.core.sequence import chained
from veneerwb.core.sequence.frames import leaf_frames
from veneerwb.core.sequence.point import point_drift

SIX = {
    k: Motion.turn_about(100.0, 300.0, 0.5 * k) @ Motion(dx=3.0 * k, dy=-2.0 * k * k)
    for k in range(6)
}
"""How six leaves lay under the camera."""


@pytest.fixture(scope="module")
def slanting() -> Bundle:
    """A stem of 5 degrees in leaves of 0.6 mm: its figure goes 6.858 mm towards -y from leaf to
    leaf (t / tan a). Each photograph is shifted and turned."""
    return sawn_bundle(
        leaves=6, width=220, length=520, thickness=0.6, mm_per_px=1.0, figure="cathedral", seed=3,
        slope=5.0, knots=0, disturb={"shift": 8.0, "turn": 1.0},
    )


def test_without_frames_there_is_one_combined_drift() -> None:
    way = point_drift((100.0, 300.0), SIX)
    assert way.numbers == (0, 1, 2, 3, 4, 5) and not way.parted
    assert way.figure is None and way.shift is None
    for k, motion in SIX.items():
        assert way.places[k] == pytest.approx(motion.apply((100.0, 300.0)))
    assert way.combined[0] == pytest.approx((0.0, 0.0))
    assert way.combined[4] == pytest.approx(way.places[4] - way.places[0])


def test_frames_part_the_wander_of_the_figure_from_the_shift_of_the_photograph() -> None:
    wander = np.array([(0.2 * k, -7.0 * k) for k in SIX])
    seen = {k: SIX[k] @ Motion(dx=wander[k][0], dy=wander[k][1]) for k in SIX}
    way = point_drift((100.0, 300.0), seen, SIX)
    assert way.parted
    assert way.figure == pytest.approx(wander, abs=1e-9)
    still = SIX[0].inverse().apply(way.places[0])
    lay = np.array([SIX[k].apply(still) for k in SIX])
    assert way.shift == pytest.approx(lay - lay[0], abs=1e-9)
    assert np.abs(way.combined - way.figure).max() > 1.0


def test_a_frame_that_is_missing_parts_nothing() -> None:
    few = {k: motion for k, motion in SIX.items() if k != 3}
    assert not point_drift((1.0, 2.0), SIX, few).parted


def test_frames_may_start_anywhere_on_the_leaf() -> None:
    elsewhere = Motion(30.0, dx=12.0, dy=-40.0)
    seen = {k: SIX[k] @ Motion(dy=-5.0 * k) for k in SIX}
    here = point_drift((50.0, 60.0), seen, SIX)
    there = point_drift((50.0, 60.0), seen, {k: m @ elsewhere for k, m in SIX.items()})
    assert there.figure == pytest.approx(here.figure) and there.shift == pytest.approx(here.shift)


def test_no_leaves_are_refused() -> None:
    with pytest.raises(VeneerError):
        point_drift((0.0, 0.0), {})


def test_a_point_of_the_figure_is_followed_on_a_stem_that_leans(slanting: Bundle) -> None:
    """Registered by the figure alone, and parted by the known places of the photographs: the
    figure's wander comes out as plane geometry has it, as far as one rigid motion fits a leaf."""
    found = chained(slanting).registers
    lay = {leaf.number: leaf.register for leaf in slanting.leaves}
    way = point_drift((110.0, 300.0), found, lay)
    steps = np.diff(way.figure[:, 1])
    assert np.mean(steps) == pytest.approx(-0.6 / tand(5.0), rel=0.15)
    assert np.abs(way.figure[:, 0]).max() < 3.0


# --- frames ------------------------------------------------------------------------------------


def leaf_like(cut: float = 0.0) -> Polygon:
    """A leaf with waney edges, `cut` mm taken off a corner."""
    y = np.linspace(0, 600, 50)
    left = np.column_stack([5 * np.sin(y / 90) + 3 * np.sin(y / 31), y])
    right = np.column_stack([200 + 6 * np.sin(y / 120 + 1), y])
    whole = Polygon(np.vstack([left, right[::-1]]))
    return whole.difference(box(-50, -50, cut, cut)) if cut else whole


def outlined(lying: list[Motion], shapes: list[Polygon]) -> Bundle:
    photo = Photo.of(np.full((700, 300, 3), 128, np.uint8), 1.0)
    leaves = [
        Leaf(k, Side(photo), None, motion.apply_to(shape))
        for k, (motion, shape) in enumerate(zip(lying, shapes), start=1)
    ]
    return Bundle(tuple(leaves), 0.6)


LYING = [Motion(dx=50, dy=50) @ Motion.turn_about(100, 300, 0.7 * k) @ Motion(dx=k, dy=-3 * k)
         for k in (0, 2, -2)]  # fmt: skip
CORNERS = np.array([(0, 0), (200, 0), (0, 600), (200, 600)])


@pytest.mark.parametrize("cut", [0.0, 60.0])
def test_outlines_tell_how_the_leaves_lay_with_a_corner_gone_too(cut: float) -> None:
    found = leaf_frames(outlined(LYING, [leaf_like(), leaf_like(cut), leaf_like()]))
    assert found is not None and found.by == "outline"
    for k, motion in enumerate(LYING, start=1):
        moved = found.on({})[k].apply(LYING[0].apply(CORNERS))
        assert moved == pytest.approx(motion.apply(CORNERS), abs=0.5)


def test_outlines_of_other_shapes_and_unknown_outlines_tell_nothing() -> None:
    other = Polygon([(0, 0), (200, 0), (150, 600), (60, 600)])
    assert leaf_frames(outlined(LYING, [leaf_like(), other, leaf_like()])) is None
    plain = sawn_bundle(leaves=2, width=100, length=200, mm_per_px=2.0)
    assert leaf_frames(plain) is None


TEMPLATE = {"A": (20.0, 30.0), "B": (180.0, 570.0), "C": (20.0, 560.0)}


def marked(lying: list[Motion], **off: tuple[float, float]) -> dict[int, dict[str, np.ndarray]]:
    """Where marks stuck by one template lie on the photographs, some of those of the last leaf
    elsewhere."""
    found = {
        k: {name: motion.apply(place) for name, place in TEMPLATE.items()}
        for k, motion in enumerate(lying, start=1)
    }
    for name, by in off.items():
        found[len(lying)][name] = found[len(lying)][name] + by
    return found


def test_marks_go_before_outlines_and_need_not_all_be_there() -> None:
    bundle, marks = outlined(LYING, [leaf_like()] * 3), marked(LYING)
    del marks[3]["C"]
    found = leaf_frames(bundle, marks)
    assert found is not None and found.by == "marks"
    for k, motion in enumerate(LYING, start=1):
        moved = found.motions[k].apply(LYING[0].apply(CORNERS))
        assert moved == pytest.approx(motion.apply(CORNERS), abs=1e-6)


def test_marks_stuck_anywhere_tell_nothing() -> None:
    bundle = sawn_bundle(leaves=3, width=200, length=600, mm_per_px=2.0)
    assert leaf_frames(bundle, marked(LYING, B=(9.0, -12.0))) is None
    few = marked(LYING)
    few[2] = {"A": few[2]["A"]}
    assert leaf_frames(bundle, few) is None
    assert leaf_frames(bundle, marked(LYING)).by == "marks"


@pytest.mark.parametrize(("back", "sign"), [("next", 1.0), ("previous", -1.0)])
def test_backs_tell_how_far_the_figure_goes_from_leaf_to_leaf(back: str, sign: float) -> None:
    """A face and its back are t / tan a apart (plane geometry), towards -y; the next leaf shows on
    its face what this one shows on its back, or, lying the other way up, the leaf before does."""
    backed = sawn_bundle(
        leaves=3, width=220, length=520, thickness=0.6, mm_per_px=1.0, figure="cathedral", seed=3,
        slope=5.0, knots=0, backs=[1, 2, 3], disturb={"shift": 3.0, "turn": 0.2},
    )
    found = leaf_frames(replace(backed, back=back))
    assert found is not None and found.by == "backs"
    assert found.step[1] == pytest.approx(-sign * 0.6 / tand(5.0), rel=0.15)
    seen = {k: SIX[k] @ Motion(dx=found.step[0] * k, dy=found.step[1] * k) for k in range(3)}
    way = point_drift((100.0, 300.0), seen, found.on(seen))
    assert way.figure[2] == pytest.approx(2 * np.array(found.step))
    still = SIX[0].inverse().apply(way.places[0])
    assert way.shift[2] == pytest.approx(SIX[2].apply(still) - SIX[0].apply(still))
    assert leaf_frames(replace(backed, back="own")) is None
