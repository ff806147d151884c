# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sentence on what the registers of a sheet rest."""

from __future__ import annotations

import pytest

from veneerwb.core import Bundle, Leaf, Motion, Side, Stock, Top, VeneerError, radial
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.rests import FOLLOWS, rests


def bundle_of(register, photographed=()):
    import numpy as np

    photo = Photo.of(np.zeros((140, 48, 3), np.uint8), 10.0)
    other = Photo.of(np.ones((140, 48, 3), np.uint8), 10.0)
    return Bundle(tuple(
        Leaf(k, Side(photo, register(k), register(k)),
             Side(other, register(k), register(k)) if k in photographed else None)
        for k in range(1, 13)), 0.6)


REGISTERED = bundle_of(lambda k: Motion(0.1 * k, k, -k))
FLAT = bundle_of(lambda k: Motion())


def test_a_stock_rests_on_nothing():
    assert rests(Stock(300.0, 900.0, 12, 0.6)) == ""


@pytest.mark.parametrize("follows", FOLLOWS)
def test_it_is_said_in_whole_sentences(follows):
    for bundle in (REGISTERED, FLAT):
        said = rests(bundle, follows, 0.2, [3], radial(bundle, Top.round(700.0), 12).pieces)
        sentences = said.removesuffix(".").split(". ")
        assert said.endswith(".") and all(one[0].isupper() for one in sentences)
        assert sum(one.startswith("This sheet rests on ") for one in sentences) == 1


def test_leaves_as_photographed_are_said_to_be_so():
    for said in (rests(FLAT), rests(FLAT, "as photographed")):
        assert "lay under the camera" in said and "not registered" in said
    assert "nobody said" in rests(REGISTERED, "as photographed")


def test_what_they_follow_and_how_well():
    assert "on the figure in the photographs. Standard" in rests(REGISTERED, "figure", 0.213)
    assert "up to 0.21 mm" in rests(REGISTERED, "figure", 0.213)
    assert "How well was not kept." in rests(REGISTERED, "log")
    assert "generated log" in rests(REGISTERED, "generated")
    assert "no photograph bears out" in rests(REGISTERED, "typed", 0.2)
    assert "Standard error" not in rests(REGISTERED, "typed", 0.2)
    assert "nobody said" in rests(REGISTERED)
    with pytest.raises(VeneerError):
        rests(REGISTERED, "guess")


def test_leaves_in_doubt_are_named_where_the_sheet_uses_them():
    pieces = radial(REGISTERED, Top.round(700.0), 8, first=1).pieces
    assert "leaves 3, 7 and those after" in rests(REGISTERED, "figure", 0.2, [3, 7, 12], pieces)
    assert "doubt" not in rests(REGISTERED, "figure", 0.2, [12], pieces)


def test_backs_that_were_not_photographed_are_counted():
    layout = radial(REGISTERED, Top.round(700.0), 12)
    assert "The backs of 6 turned leaves were not photographed" in rests(
        REGISTERED, "figure", used=layout.pieces)
    some = bundle_of(lambda k: Motion(0.0, k), photographed=range(1, 12, 2))
    assert "not photographed" not in rests(
        some, "figure", used=radial(some, Top.round(700.0), 12).pieces)
    slip = radial(REGISTERED, Top.round(700.0), 12, "slip")
    assert "backs" not in rests(REGISTERED, "figure", used=slip.pieces)


def test_lengths_are_written_as_the_sheet_has_them():
    layout = radial(REGISTERED, Top.round(700.0), 12)
    said = rests(REGISTERED, "figure", 0.213, used=layout.pieces, lengths=Lengths("inch"))
    assert "up to 0.008 in." in said and " mm" not in said
    assert f"miss by {round(REGISTERED.wander(), 1) / 25.4:.3f} in." in said
