# SPDX-License-Identifier: LGPL-2.1-or-later
"""The photographs for the pages: where they lie, what they show."""

from __future__ import annotations

import io

import numpy as np
import pytest
from PIL import Image

from veneerwb.core import Stock, Top, radial, sawn_bundle
from veneerwb.core.shop.drawing.drawn import Image as Placed
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.pages import finished, stack
from veneerwb.core.shop.pages.gather import sheet_pages
from veneerwb.core.shop.stack import cuts_on_leaf
from veneerwb.paint.pdf import pdf
from veneerwb.paint.sheet_pictures import PALE, sheet_pictures


@pytest.fixture(scope="module")
def layout():
    bundle = sawn_bundle(
        leaves=8, width=240, length=500, thickness=0.6, mm_per_px=1.0, figure="cathedral", seed=3
    )
    return radial(bundle, Top.oval(600.0, 500.0), 8, oversize=5.0)


def opened(picture):
    return np.asarray(Image.open(io.BytesIO(picture.data)).convert("RGB"), float)


def test_a_stock_has_none():
    assert sheet_pictures(radial(Stock(300.0, 900.0, 8, 0.6), Top.round(500.0), 8)) is None


def test_the_finished_top_lies_about_its_origin_and_is_white_outside(layout):
    shown = sheet_pictures(layout).finished
    pixels, box = opened(shown), shown.box
    assert (box.x, box.y) == pytest.approx((-box.wide / 2.0, -box.high / 2.0))
    scale = pixels.shape[1] / box.wide
    assert scale == pytest.approx(pixels.shape[0] / box.high, rel=0.01)
    assert pixels[:8, :8].min() > 245.0
    rows, columns = np.nonzero(pixels.mean(axis=2) < 235.0)
    assert (np.ptp(columns) / scale, np.ptp(rows) / scale) == pytest.approx((600.0, 500.0), abs=4.0)


def test_the_leaf_is_paled_and_fills_its_size(layout):
    (cut,) = cuts_on_leaf(layout)
    shown = sheet_pictures(layout).leaves[cut.leaf]
    leaf = layout.bundle.leaf(cut.leaf)
    assert (shown.box.wide, shown.box.high) == leaf.size
    expected = leaf.photo.astype(float).mean() * (1.0 - PALE) + 255.0 * PALE
    assert opened(shown).mean() == pytest.approx(expected, abs=2.0)


def test_the_leaf_on_its_side_has_its_lower_end_at_the_left(layout):
    (cut,) = cuts_on_leaf(layout)
    shown = sheet_pictures(layout).leaves[cut.leaf]
    laid = shown.laid(cut.size[0])
    upright, lying = opened(shown), opened(laid)
    assert (laid.box.wide, laid.box.high) == (shown.box.high, shown.box.wide)
    assert np.abs(np.rot90(upright, -1)[::4, ::4] - lying[::4, ::4]).mean() < 6.0


def test_the_pages_hold_the_pictures_to_scale_and_can_be_read(layout):
    pictures, look = sheet_pictures(layout), Look()
    (page,) = finished.pages(layout, look, pictures)
    (image,) = [m for m in page.drawing.marks if isinstance(m, Placed)]
    box = pictures.finished.box
    assert image.box.wide / box.wide == pytest.approx(image.box.high / box.high)
    made = sheet_pages(layout, look, None, (), pictures)
    assert [(p.title, t) for p in made for t in troubles(p)] == []
    codes = ["notes", "plan", "pieces", "stack", "cut-list", "finished"]
    assert list(dict.fromkeys(p.code for p in made)) == codes
    (on_leaf,) = stack.pages(layout, look, pictures)
    assert any(isinstance(m, Placed) for m in on_leaf.drawing.marks)
    assert pdf(made, "Top").startswith(b"%PDF")
