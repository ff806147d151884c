# SPDX-License-Identifier: LGPL-2.1-or-later
"""Order, steps and suspects from likeness alone, without photographs."""

import numpy as np
import pytest

from veneerwb.core.errors import sentence
from veneerwb.core.sequence.order import proven, slices, tells
from veneerwb.core.sequence.orientation import Lying
from veneerwb.core.sequence.steps import change, lone
from veneerwb.core.sequence.suspects import KINDS, lying, missing, out_of_place, thickness
from veneerwb.core.sequence.verdict import _misplaced, _moved, verdict


def likeness(depths, reach=3.0, seed=1, noise=0.01):
    """Of leaves at these depths (slices): it falls with the distance, as smooth figure does."""
    far = np.subtract.outer(depths, depths)
    out = np.exp(-((far / reach) ** 2))
    shaken = np.random.default_rng(seed).normal(0, noise, out.shape)
    out += np.triu(shaken, 1) + np.triu(shaken, 1).T
    np.fill_diagonal(out, 1)
    return np.clip(out, 0, 1)


@pytest.mark.parametrize("seed", range(5))
@pytest.mark.parametrize("count", [4, 12, 30])
def test_a_shuffled_bundle_is_put_in_order(count, seed):
    depths = np.random.default_rng(seed).permutation(count)
    path = proven(likeness(depths, seed=seed), range(count))
    assert [int(depths[p]) for p in path] in (list(range(count)), list(range(count))[::-1])


def test_the_order_given_stands_where_nothing_speaks_against_it():
    unlike_all = np.full((8, 8), 0.3) + 0.7 * np.eye(8)
    assert proven(unlike_all, range(8)) == list(range(8))
    assert not tells(unlike_all, range(8))


def test_recurring_figure_does_not_mislead():
    depths = np.arange(14)
    alike = likeness(depths, reach=1.2)
    alike[2, 11] = alike[11, 2] = 0.4  # more than two slices apart show
    assert proven(alike, range(14)) == list(range(14))
    assert tells(alike, range(14))


def test_the_direction_is_that_of_the_numbers():
    assert proven(likeness(np.arange(9)[::-1]), range(9)) == list(range(9))


def test_slices_count_what_is_missing_and_what_is_there_twice():
    depths = np.array([0, 1, 2, 3, 5, 6, 7, 7, 8, 9, 10])
    found = slices(likeness(depths, noise=0.003), range(11))
    assert found == pytest.approx(np.diff(depths), abs=0.3)


@pytest.mark.parametrize("twice", [3, 0, 10])
def test_two_photographs_of_one_leaf_are_told_however_noisy_they_are(twice):
    """Noise makes them nearly as unlike as neighbours are; to all others they are alike."""
    depths = np.insert(np.arange(11), twice, twice)
    apart = np.abs(np.subtract.outer(depths, depths))
    unlike = 0.02 + 0.04 * np.minimum(apart, 2.5)
    unlike[twice, twice + 1] = unlike[twice + 1, twice] = 0.05
    np.fill_diagonal(unlike, 0.0)
    found = Lying(tuple(range(12)), {}, (), (), 0.94, 1 - unlike, {})
    told = verdict(list(range(1, 13)), found, {})
    assert [(s.kind, s.leaf) for s in told.suspects] == [("duplicate", twice + 2)]


@pytest.mark.parametrize(
    ("steps", "at"),
    [
        ([1, 1, 1, 2, 1, 1, 1], [3]),
        ([2, 1, 1, 1, 1, 1, 1], [0]),
        ([1, 1, 1, 1, 1, 1, 1.9], [6]),
        ([1, 2, 1, 1, 1, 1, 3, 1], [1, 6]),
        ([0.5, 0.6, 0.7, 1.4, 0.9, 1.0, 1.1], [3]),
        ([0.7, 1.1, 0.7, 1.1, 0.7, 1.1, 0.7], []),  # every other step shows a new layer
        ([0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.2], []),  # the figure grows livelier
        ([1, 1, 1, 1, 2, 2, 2], []),
    ],
)
def test_only_a_lone_step_is_a_gap(steps, at):
    assert [step.at for step in lone(steps)] == at


@pytest.mark.parametrize(
    ("steps", "at"),
    [
        ([1, 1, 1, 1.5, 1.5, 1.5, 1.5], 3),
        ([1, 1, 2, 2, 2, 2, 2, 2], 2),
        ([1, 1, 1, 1, 1, 1.7, 1.7], 5),
        ([2, 2, 2, 2, 1, 1, 1, 1], 4),
        ([1, 1, 1, 2, 1, 1, 1, 1], None),
        ([0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.2], None),
        ([1, 1, 1, 1, 1, 1, 2], None),
    ],
)
def test_only_steps_that_stay_grown_are_a_change_of_thickness(steps, at):
    large = [step.at for step in lone(steps)]
    found = change(steps, large)
    assert (None if found is None else found.at) == at


@pytest.mark.parametrize("growth", [1.12, 1.2, 1 / 1.3])
def test_a_slow_change_of_pace_is_no_change_of_thickness(growth):
    assert change([growth**k for k in range(11)]) is None


def test_steps_none_of_which_counts_tell_no_change():
    """As where every other leaf lies turned over."""
    assert change([1.0, 1.1, 0.9, 1.0, 1.6, 1.7], range(6)) is None


def test_a_change_of_thickness_is_measured():
    assert change([1, 1, 1, 1.5, 1.5, 1.5]).times == pytest.approx(1.5, abs=0.01)


def test_the_fewest_leaves_are_out_of_place():
    assert _moved([1, 2, 7, 3, 4, 5, 6, 8]) == [7]
    assert _moved([2, 3, 4, 1, 5]) == [1]
    assert _moved([1, 2, 3]) == []


def test_a_moved_leaf_is_told_where_it_belongs():
    only = _misplaced([1, 2, 7, 3, 4, 5, 6, 8])
    assert [(s.leaf, s.values["before"], s.values["after"]) for s in only] == [(7, 2, 3)]
    assert only[0].text == "Leaf 7 is out of place: it belongs between leaves 2 and 3."
    assert _misplaced([5, 1, 2, 3, 4])[0].text == (
        "Leaf 5 is out of place: it belongs before leaf 1, at the end."
    )


def test_of_two_that_changed_places_both_are_named():
    found = _misplaced([1, 3, 2, 4, 5])
    assert {s.leaf for s in found} == {2, 3}
    assert all(s.kind == "out of place" for s in found)
    assert "changed places" in found[0].text


def test_suspects_are_worded_from_templates():
    for suspect in (out_of_place(4, 7, 8), missing(3, 4, 2.04), thickness(5, 1.5)):
        assert suspect.kind in KINDS
        assert suspect.text == sentence(suspect.template, suspect.values)
        assert str(suspect.leaf) in suspect.text
    assert "a gap, or one thicker leaf" in missing(3, 4, 2.04).text
    assert "changes 2 times as much" in missing(3, 4, 2.04).text


def test_a_leaf_that_may_be_turned_over_or_end_for_end_is_said_to_be_either():
    sure, unsure = lying(4, "turned"), lying(4, "turned", unsure=True)
    assert (sure.kind, unsure.kind) == ("turned", "turned")
    assert "look at the leaf itself" in unsure.text and "end for end" in unsure.text
    assert "end for end" not in sure.text
