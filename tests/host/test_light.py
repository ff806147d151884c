# SPDX-License-Identifier: LGPL-2.1-or-later
"""Light is evened by what lies round the leaf that is found on a photograph, and by no wood."""

import os

import numpy as np
import pytest
from shapely.geometry import box

from veneerwb.core import Bundle, Leaf, Side, sawn_bundle
from veneerwb.core.photos.preparing import Prepared, Troubles
from veneerwb.core.photos.reading import Photo, save_png
from veneerwb.host.backs import add_backs
from veneerwb.host.light import even_backs, even_light, told
from veneerwb.host.objects import add_bundle, core_bundle

USABLE = box(45.0, 45.0, 175.0, 275.0)
"""mm: well inside the leaf, where there is one."""
DARK = (0.85, 0.8, 0.75)


def photographs(table):
    """Three leaves of plain wood, the second a darker and redder one; on a table of 30 mm round
    them, or filling their photographs."""
    wood = sawn_bundle(
        leaves=3, width=160, length=260, thickness=0.6, mm_per_px=1.0, figure="plain", seed=4,
        knots=0,
    )  # fmt: skip
    for leaf in wood.leaves:
        pixels = leaf.photo * (DARK if leaf.number == 2 else (1.0, 1.0, 1.0))
        if table:
            pixels = np.pad(pixels, ((30, 30), (30, 30), (0, 0)))
            off = np.ones(pixels.shape[:2], bool)
            off[30:-30, 30:-30] = False
            pixels[off] = (70, 90, 130)
        yield Leaf(leaf.number, Side(Photo.of(pixels.astype(np.uint8), 1.0)), None, USABLE)


def made(doc, table):
    bundle = add_bundle(doc, Bundle(tuple(photographs(table)), 0.6, "own"))
    doc.recompute()
    return bundle


def test_wood_beside_the_usable_area_is_not_taken_for_background(doc):
    bundle = made(doc, table=False)
    with pytest.raises(Troubles) as caught:
        even_light(bundle)
    assert len(caught.value.each) == 3 and caught.value.each[1][1].startswith("Leaf 2")
    assert all(list(leaf.Gains) == [] for leaf in bundle.Leaves)


def with_back(doc, light):
    """A bundle on a table whose light is evened, and then a back of leaf 2 in other light."""
    bundle = made(doc, table=True)
    even_light(bundle)
    leaf = core_bundle(bundle).leaf(2)
    pixels = np.clip(leaf.face.image.as_photographed().pixels * light, 0, 255).astype(np.uint8)
    save_png(os.path.join(doc.TransientDir, "back.png"), pixels)
    one = Prepared(
        os.path.join(doc.TransientDir, "back.png"), pixels.shape[:2], 1.0, None, None, "back", "",
        1.0, None,
    )
    add_backs(bundle, {2: one})
    even_backs(bundle, [2])
    doc.recompute()
    return bundle, bundle.Leaves[1]


def test_the_light_of_a_back_that_is_added_is_evened_with_its_face(doc):
    bundle, leaf = with_back(doc, 0.8)
    side = core_bundle(bundle).leaf(2)
    face, back = (one.photo[:20].reshape(-1, 3).mean(axis=0) for one in (side.face, side.back))
    assert np.allclose(face, back, atol=1.0) and leaf.BackGains[0] > 1.3
    assert "The back of leaf 2 was made" in " ".join(told(bundle)) and list(leaf.Notes) == []


def test_a_back_whose_light_cannot_be_evened_says_so(doc):
    bundle, leaf = with_back(doc, 0.0)
    assert list(leaf.BackGains) == []
    assert leaf.Notes[0].startswith("Back: its light stays as photographed. The back of leaf 2")
    assert "The back of leaf 2 is as photographed." in told(bundle)


def test_the_table_counts_however_little_of_the_leaf_is_usable(doc):
    """A leaf that is darker by nature stays so: the light on all three tables was the same."""
    bundle = made(doc, table=True)
    even_light(bundle)
    for leaf in bundle.Leaves:
        assert np.allclose(leaf.Gains, 1.0, atol=0.02)
