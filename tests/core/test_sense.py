# SPDX-License-Identifier: LGPL-2.1-or-later
"""The stack's sense proved by the photograph of a back: whose face shows the same surface."""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from veneerwb.core.leaf import Bundle, Side
from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY
from veneerwb.core.sides import proved_sense


@cache
def sawn(figure="burl", leaves=3, backs=(2,), seed=5, shift=8.0):
    shaken = {"shift": shift, "turn": 1.5, "exposure": 0.1, "noise": 0.01}
    return sawn_bundle(
        leaves, 100.0, 220.0, 0.6, 1.0, figure, seed, backs=backs, disturb=shaken
    )


def turned_about(bundle):
    """The same leaves numbered from the other end."""
    last = len(bundle.leaves) + 1
    leaves = tuple(replace(leaf, number=last - leaf.number) for leaf in bundle.leaves)
    return Bundle(leaves, bundle.thickness, "previous")


def with_back(bundle, pixels, view=None):
    """The bundle with another picture for the back of leaf 2."""
    leaf = bundle.leaf(2)
    side = Side(
        Photo.of(np.ascontiguousarray(pixels), 1.0), leaf.register, view or leaf.back.view
    )
    leaves = tuple(
        replace(here, back=side) if here.number == 2 else here for here in bundle.leaves
    )
    return replace(bundle, leaves=leaves)


@pytest.mark.parametrize("figure", ["cathedral", "ripple", "stripe"])
def test_one_back_proves_the_sense(figure):
    under = proved_sense(sawn(figure))
    assert (under.back, under.agrees) == ("next", True)
    (reading,) = under.readings
    assert reading.margin > 0.3 and reading.likeness["next"] > reading.step
    assert reading.likeness["previous"] < reading.likeness["face"] < reading.likeness["next"]


def test_the_other_sense_is_proved_as_well():
    over = proved_sense(turned_about(sawn()))
    assert (over.back, over.agrees) == ("previous", True)
    assert "Leaf 2 lay over leaf 1" in over.text and "by the back of leaf 2" in over.text


def test_a_bundle_that_says_the_opposite_is_told_so():
    wrong = proved_sense(replace(sawn(), back="previous"))
    assert (wrong.back, wrong.agrees) == ("next", False)
    assert "The back of leaf 2 and the face of leaf 3 are one surface" in wrong.text
    assert wrong.text.endswith("and the bundle says the opposite: change it.")
    unsaid = proved_sense(replace(sawn(), back="own"))
    assert (unsaid.back, unsaid.agrees) == ("next", None)


def test_the_face_photographed_again_is_no_back():
    bundle = sawn()
    again = sawn(shift=7.0).leaf(2)
    for pixels, view in ((again.photo[:, ::-1], IDENTITY), (again.photo, again.register)):
        found = proved_sense(with_back(bundle, pixels, view))
        assert found.back is None and found.readings[0].same == "face"
        assert "shows its face again" in found.text


def test_a_back_that_was_mirrored_already_is_noticed():
    bundle = sawn()
    found = proved_sense(with_back(bundle, bundle.leaf(2).back.photo[:, ::-1]))
    assert found.back == "next" and found.readings[0].way == "mirrored"
    assert "mirrored already before it was read" in found.text


def test_a_back_that_lies_end_for_end_is_noticed():
    bundle = sawn()
    found = proved_sense(with_back(bundle, bundle.leaf(2).back.photo[::-1, ::-1]))
    assert found.back == "next" and "end for end" in found.text


def test_what_a_back_does_not_tell_is_not_guessed():
    bundle = sawn()
    other = sawn(leaves=1, backs=False, seed=9).leaf(1).photo
    for doubtful in (
        with_back(bundle, other),
        Bundle(bundle.leaves[:2], 0.6),  # its surface is on no face here
        Bundle(bundle.leaves[1:2], 0.6),  # no neighbour to compare with
    ):
        found = proved_sense(doubtful)
        assert found.back is None and found.agrees is None and found.readings[0].same is None
        assert found.text.endswith("The stack's sense is not proved.")
    none = proved_sense(sawn(backs=False))
    assert none.back is None and none.readings == () and "No back was photographed" in none.text


def test_backs_that_contradict_each_other_prove_nothing():
    bundle = sawn(leaves=6, backs=(2, 5))
    leaves = [
        leaf if leaf.number < 4 else replace(leaf, number=10 - leaf.number)
        for leaf in bundle.leaves
    ]  # 1 2 3 6 5 4
    found = proved_sense(Bundle(tuple(leaves), 0.6))
    assert [r.same for r in found.readings] == ["next", "previous"]
    assert found.back is None and "contradict each other" in found.text
