# SPDX-License-Identifier: LGPL-2.1-or-later
"""From marks to measure: scale, squaring, frames, the way to the bench."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from veneerwb.core.errors import VeneerError
from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.plane import Motion
from veneerwb.core.targets import (
    Located,
    by_distances,
    carried_back,
    frame,
    on_leaf,
    scale_from,
    seen_from_face,
    shared,
    squared_by,
)

PLACES = np.array([(40.0, 60.0), (560.0, 75.0), (550.0, 1510.0), (35.0, 1490.0)])
"""Four marks of a leaf of 600 x 1600 mm, counter-clockwise from the lower left."""
SHAPE = (3400, 1600)
MOTIONS = st.builds(Motion, st.floats(-180, 180), st.floats(-900, 900), st.floats(-900, 900))


def seen_through(matrix: np.ndarray, places: np.ndarray) -> list[Located]:
    """Marks as a camera sees them; rings by its scale at each, along the longer axis."""
    found = []
    for place in places:
        turns = np.radians(np.arange(0, 360, 5))
        ring = place + 10 * np.column_stack([np.cos(turns), np.sin(turns)])
        centre, *edge = through(matrix, np.vstack([place, ring]))
        radius = max(np.linalg.norm(edge - centre, axis=1))
        found.append(Located((float(centre[0]), float(centre[1])), radius, 0.05, 0.99))
    return found


def through(matrix: np.ndarray, places: np.ndarray) -> np.ndarray:
    p = np.column_stack([places, np.ones(len(places))]) @ matrix.T
    return p[:, :2] / p[:, 2:]


SLANTED = np.array([[1.9, 0.05, 150.0], [0.02, -1.9, 3250.0], [4e-5, -3e-5, 1.0]])


# --- scale and squaring ------------------------------------------------------------------------


def test_two_marks_give_the_scale_and_a_wrong_distance_is_seen(refused: Callable) -> None:
    a, b = (Located(c, 20.0, 0.02, 0.99) for c in ((100.0, 200.0), (700.0, 1000.0)))
    assert scale_from(a, b, 500.0) == pytest.approx(0.5)
    assert "18" in refused("ring-size", scale_from, a, b, 450.0)
    refused("points-too-near", scale_from, a, a, 500.0)


def test_marks_lie_on_the_leaf_where_pixels_do() -> None:
    marks = [Located((100.0, 3400.0), 20.0, 0.02, 0.99), Located((0.5, 0.5), 20.0, 0.02, 0.99)]
    np.testing.assert_allclose(on_leaf(marks, 0.5, SHAPE), [(50.0, 0.0), (0.25, 1699.75)])


def test_four_marks_square_a_slanted_photograph() -> None:
    found = squared_by(seen_through(SLANTED, PLACES), PLACES, SHAPE)
    low = PLACES.min(axis=0)
    for place in [(300.0, 800.0), (40.0, 60.0), (500.0, 1300.0)]:
        seen = through(SLANTED, np.array([place]))
        np.testing.assert_allclose(found.to_mm(seen)[0] + low, place, atol=1e-6)
    assert (found.width, found.length) == (525.0, 1450.0)


def test_a_long_and_narrow_leaf_is_squared_too() -> None:
    narrow = np.array([(20.0, 30.0), (95.0, 35.0), (100.0, 2400.0), (15.0, 2390.0)])
    for turn in (0, 45, 90):
        c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
        turned = np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]]) @ SLANTED
        middle = through(turned, narrow).min(axis=0) - 50
        shifted = np.array([[1, 0, -middle[0]], [0, 1, -middle[1]], [0, 0, 1]]) @ turned
        found = squared_by(seen_through(shifted, narrow), narrow, (6000, 6000))
        lies = found.to_mm(through(shifted, np.array([(60.0, 1200.0)]))) + narrow.min(axis=0)
        np.testing.assert_allclose(lies, [(60.0, 1200.0)], atol=1e-5)


def test_more_than_four_marks_share_their_errors() -> None:
    more = np.vstack([PLACES, [(300.0, 90.0), (310.0, 1480.0)]])
    rng = np.random.default_rng(1)
    inside, worst = np.array([[300.0, 800.0]]), {4: [], 6: []}
    for _ in range(40):
        marks = [
            Located(tuple(np.array(m.centre) + rng.normal(0, 0.1, 2)), m.radius, 0.1, 0.99)
            for m in seen_through(SLANTED, more)
        ]
        for count in (4, 6):
            found = squared_by(marks[:count], more[:count], SHAPE)
            lies = found.to_mm(through(SLANTED, inside)) + more[:count].min(axis=0)
            worst[count].append(math.dist(lies[0], inside[0]))
    assert np.mean(worst[6]) < np.mean(worst[4]) < 0.2


def test_marks_that_square_nothing_are_refused(refused: Callable) -> None:
    marks = seen_through(SLANTED, PLACES)
    refused("marks-missing", squared_by, marks[:3], PLACES[:3], SHAPE)
    refused("marks-missing", squared_by, marks, PLACES[:3], SHAPE)
    line = np.column_stack([np.full(4, 300.0), np.linspace(100, 1500, 4)])
    refused("marks-on-a-line", squared_by, seen_through(SLANTED, line), line, SHAPE)
    three = np.array([(40.0, 60.0), (300.0, 60.0), (560.0, 60.0), (300.0, 1500.0)])
    refused("marks-on-a-line", squared_by, seen_through(SLANTED, three), three, SHAPE)
    refused("ring-size", squared_by, marks, 0.8 * PLACES, SHAPE)
    for wrong in ([1, 0, 2, 3], [0, 2, 1, 3], [2, 1, 0, 3]):
        with pytest.raises(VeneerError):
            squared_by(marks, PLACES[wrong], SHAPE)
    six = np.vstack([PLACES, [(300.0, 90.0), (310.0, 1480.0)]])
    moved = six.copy()
    moved[4] += (12.0, 0.0)
    refused("marks-disagree", squared_by, seen_through(SLANTED, moved), six, SHAPE)


def distances(places: np.ndarray) -> list[float]:
    return [math.dist(places[i], places[j])
            for i, j in ((0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 3))]


def test_six_distances_place_four_marks_and_show_one_misread(refused: Callable) -> None:
    given = distances(PLACES)
    found, off = by_distances(*given)
    assert off < 1e-6
    fit = frame(found, PLACES)
    assert fit.worst < 1e-5
    read = [round(2 * d) / 2 for d in given]  # to half a millimetre
    found, off = by_distances(*read)
    assert frame(found, PLACES).worst < 0.5 and 0 < off < 0.3
    read[4] += 10.0
    refused("distances-disagree", by_distances, *read)


# --- frames ------------------------------------------------------------------------------------


@settings(max_examples=40)
@given(MOTIONS)
def test_a_frame_is_the_motion_between_the_marks(motion: Motion) -> None:
    for count in (2, 3, 4):
        found = frame(PLACES[:count], motion.apply(PLACES[:count]))
        np.testing.assert_allclose(found.motion.apply(PLACES), motion.apply(PLACES), atol=1e-6)
        assert found.worst < 1e-6
    turned = motion @ Motion(mirrored=True)
    found = frame(PLACES, turned.apply(PLACES), mirrored=True)
    np.testing.assert_allclose(found.motion.apply(PLACES), turned.apply(PLACES), atol=1e-6)


def test_no_other_motion_fits_better() -> None:
    rng = np.random.default_rng(5)
    onto = Motion(3.0, 10.0, -20.0).apply(PLACES) + rng.normal(0, 0.5, PLACES.shape)
    found = frame(PLACES, onto)
    best = sum(one**2 for one in found.off)
    assert found.rms == pytest.approx(math.sqrt(best / 4)) and found.worst == max(found.off)
    for turn, dx, dy in ((0.01, 0, 0), (-0.01, 0, 0), (0, 0.05, 0), (0, -0.05, 0), (0, 0, 0.05)):
        other = Motion(dx=dx, dy=dy) @ found.motion @ Motion.turn_about(300, 800, turn)
        assert (np.linalg.norm(other.apply(PLACES) - onto, axis=1) ** 2).sum() > best


def test_frames_that_tell_no_turn_are_refused(refused: Callable) -> None:
    refused("marks-missing", frame, PLACES[:1], PLACES[:1])
    refused("marks-missing", frame, PLACES, PLACES[:3])
    refused("marks-missing", frame, [("a", "b")], PLACES[:1])
    refused("marks-too-near", frame, [(0, 0), (5, 5)], [(0, 0), (5, 5)])


def test_marks_of_a_back_lie_as_seen_from_the_face() -> None:
    shown = Motion(1.5, 4.0, -7.0)  # how the back lay under the camera, as seen from the face
    scale, shape = 0.5, (3400, 1400)
    as_seen = shown.apply(PLACES)
    column, row = as_seen[:, 0] / scale, shape[0] - as_seen[:, 1] / scale
    own = np.column_stack([shape[1] - column, row])  # on the back's own photograph
    flipped = [Located(tuple(c), 20.0, 0.02, 0.99) for c in seen_from_face(own, shape)]
    np.testing.assert_allclose(on_leaf(flipped, scale, shape), as_seen, atol=1e-9)
    raw = on_leaf([Located(tuple(c), 20.0, 0.02, 0.99) for c in own], scale, shape)
    assert frame(PLACES, raw).worst > 10 and frame(PLACES, raw, mirrored=True).worst < 1e-6


# --- to the bench ------------------------------------------------------------------------------


@settings(max_examples=40)
@given(st.floats(0, 600), st.floats(0, 1600), MOTIONS)
def test_a_point_is_found_again_from_two_marks(x: float, y: float, register: Motion) -> None:
    marks = register.apply(PLACES)
    told = carried_back((x, y), register, marks)
    place = register.apply((x, y))
    a, b = (marks["ABCD".index(one)] for one in told.marks)
    ahead = (b - a) / np.hypot(*(b - a))
    again = a + told.along * ahead + told.beside * np.array([-ahead[1], ahead[0]])
    np.testing.assert_allclose(again, place, atol=1e-6)
    assert math.dist(a, place) == pytest.approx(told.distances[0], abs=1e-6)
    assert math.dist(b, place) == pytest.approx(told.distances[1], abs=1e-6)
    assert told.spread < 2.2  # four marks round the leaf always have a good pair


def test_the_way_to_the_bench_reads_as_a_person_measures(refused: Callable) -> None:
    marks = [(0.0, 0.0), (400.0, 0.0)]
    right = carried_back((150.0, 200.0), Motion(), marks)
    assert str(right) == "250 mm from A and 320.2 mm from B, left of the line from A to B"
    assert "right of the line" in str(carried_back((150.0, -200.0), Motion(), marks))
    line = carried_back((150.0, 3.0), Motion(), marks)
    assert str(line) == "150 mm from A along the line to B, then 3 mm square to the left"
    assert not line.by_distances and right.by_distances
    assert carried_back((0.0, 0.0), Motion(), marks).distances == (0.0, 400.0)
    refused("marks-coincide", carried_back, (1.0, 2.0), Motion(), [(5.0, 5.0), (5.0, 5.0)])
    refused("marks-missing", carried_back, (1.0, 2.0), Motion(), [(5.0, 5.0)])


def test_a_mark_that_was_not_found_leaves_the_others_their_letters(refused: Callable) -> None:
    marks = {0: (0.0, 0.0), 2: (0.0, 300.0), 3: (400.0, 0.0)}
    assert carried_back((390.0, 290.0), Motion(), marks).marks == ("C", "D")
    assert carried_back((100.0, 100.0), Motion(), [(0, 0), None, (0, 300)]).marks == ("A", "C")
    here, there = shared(marks, [None, (1, 1), (2, 302), (402, 2)])
    np.testing.assert_allclose(frame(here, there).motion.apply((0.0, 0.0)), (2.0, 2.0), atol=1e-9)
    refused("marks-missing", frame, *shared({0: (0, 0)}, {1: (0, 0)}))
    refused("marks-missing", carried_back, (1.0, 1.0), Motion(), {2: (0, 0)})


def test_marks_on_a_generated_bundle_carry_its_registers() -> None:
    """Marks at the same places of the log, photographed off their places, are the registers."""
    bundle = sawn_bundle(leaves=4, width=300, length=500, mm_per_px=2.0, seed=2, disturb={})
    log_marks = np.array([(20.0, 30.0), (280.0, 25.0), (150.0, 480.0)])
    for leaf in bundle.leaves:
        found = frame(log_marks, leaf.register.apply(log_marks))
        assert found.worst < 1e-9
        told = carried_back((150.0, 250.0), leaf.register, leaf.register.apply(log_marks))
        assert math.dist(told.place, leaf.register.apply((150.0, 250.0))) < 1e-9
