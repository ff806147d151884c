# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures of side and end matches of leaves that are all alike: mirrored joints look mirrored,
slipped ones repeat, and openings are clear."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy import ndimage
from shapely.geometry import Point
from shapely.prepared import prep

from veneerwb.core import Bundle, Leaf, Placement, Side, Stock, Top, sawn_bundle
from veneerwb.core.matches.end import end
from veneerwb.core.matches.side import side
from veneerwb.core.outlines.edge import Arc
from veneerwb.core.outlines.inside import number_places
from veneerwb.core.photos.reading import Photo

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import picture  # noqa: E402
from veneerwb.paint.live import LivePicture  # noqa: E402
from veneerwb.paint.qt import QtGui, to_pixels  # noqa: E402

SQUARE = Top.polygon(4, 160.0)
PLACE = Placement(50.0, 20.0)
HOLED = replace(Top.round(160.0), holes=((Arc((10.0, 0.0), 25.0, 0.0, -360.0),),))


@pytest.fixture(scope="module")
def alike() -> Bundle:
    """Eight leaves with one picture, blurred so that half a pixel is nothing."""
    noise = np.random.default_rng(3).uniform(0, 255, (10, 6, 3))
    smooth = np.kron(noise, np.ones((20, 20, 1))).astype(np.uint8)
    photo = Photo.of(smooth, 1.0)
    return Bundle(tuple(Leaf(k, Side(photo)) for k in range(1, 9)), 0.6, "own")


def shown(layout, **asked):
    return picture(layout, 1.0, **asked).astype(int)


def same(a, b):
    """Alike but for the odd pixel between two fields of colour."""
    assert a.shape == b.shape
    return (np.abs(a - b).max(axis=-1) > 3).mean() < 0.03


def test_a_booked_joint_looks_mirrored(alike):
    pixels = shown(side(alike, SQUARE, "book", count=2, placement=PLACE))
    assert same(pixels, pixels[:, ::-1])
    assert not same(pixels[:, :80], pixels[:, 80:])


def test_a_slipped_joint_repeats(alike):
    pixels = shown(side(alike, SQUARE, "slip", count=4, placement=PLACE))
    assert all(same(pixels[:, :40], pixels[:, x : x + 40]) for x in (40, 80, 120))
    assert not same(pixels, pixels[:, ::-1])


def test_a_reverse_slipped_joint_looks_turned_by_half(alike):
    pixels = shown(side(alike, SQUARE, "reverse slip", count=2, placement=PLACE))
    assert same(pixels[:, :80], pixels[::-1, :79:-1])
    assert not same(pixels, pixels[:, ::-1])


def test_a_slip_centre_book_face_looks_mirrored_at_its_centre_alone(alike):
    pixels = shown(side(alike, SQUARE, face="slip-centre-book", count=4, placement=PLACE))
    assert same(pixels, pixels[:, ::-1])
    assert same(pixels[:, :40], pixels[:, 40:80])


@pytest.mark.parametrize("kind", ["architectural", "panel", "continuous"])
def test_an_end_match_looks_mirrored_both_ways(alike, kind):
    pixels = shown(end(alike, SQUARE, kind, 8, placement=PLACE))
    assert same(pixels, pixels[:, ::-1]) and same(pixels, pixels[::-1])
    assert not same(pixels[:, :40], pixels[:, 40:80])


def test_grain_across_the_top_turns_the_picture(alike):
    upright = shown(side(alike, SQUARE, "book", count=2, placement=PLACE))
    across = shown(side(alike, SQUARE, "book", count=2, placement=PLACE, grain=0.0))
    assert same(np.rot90(across), upright)


def test_every_pixel_of_the_top_is_painted_and_an_opening_is_clear(alike):
    for layout in (side(alike, HOLED, count=5, grain=70.0), end(alike, HOLED, "panel", 8)):
        alpha = picture(layout, 2.0)[..., 3]
        y, x = np.indices(alpha.shape) + 0.5
        x, y = (x - alpha.shape[1] / 2) / 2.0, (alpha.shape[0] / 2 - y) / 2.0
        away, within = np.hypot(x, y), np.hypot(x - 10.0, y)
        assert (alpha[(away < 79.3) & (within > 25.7)] == 255).all()
        assert (alpha[(away > 80.7) | (within < 24.3)] == 0).all()


@pytest.mark.parametrize("lay", [side, end])
def test_each_piece_is_filled_from_its_own_leaf_up_to_its_joints(lay):
    """Against scipy's bilinear warp of the photo of the side that each piece shows."""
    bundle = sawn_bundle(9, 120, 240, 0.6, 1.0, "burl", 5, disturb={"shift": 4.0, "turn": 1.0})
    layout = lay(bundle, HOLED, count=6, grain=65.0)
    pixels = shown(layout)[..., :3]
    y, x = np.indices(pixels.shape[:2]) + 0.5
    points = np.stack([x - pixels.shape[1] / 2, pixels.shape[0] / 2 - y], axis=-1)[::2, ::2]
    places = [Point(p) for p in points.reshape(-1, 2)]
    for piece in layout.pieces:
        within = prep(piece.outline.buffer(-1e-3))
        inside = np.array([within.contains(p) for p in places]).reshape(points.shape[:2])
        shows = bundle.leaf(piece.leaf).side(piece.turned)
        at = (shows.view @ piece.onto_bundle).apply(points[inside])
        where = [shows.photo.shape[0] - at[:, 1] - 0.5, at[:, 0] - 0.5]
        for channel in range(3):
            band = shows.photo[..., channel].astype(float)
            expected = ndimage.map_coordinates(band, where, order=1, mode="nearest")
            assert np.abs(pixels[::2, ::2][inside][:, channel] - expected).max() < 8.0


def test_the_live_picture_leaves_openings_to_the_ground(alike):
    live = LivePicture(170, 170, 1.0)
    red = QtGui.QColor(255, 0, 0)
    for layout in (side(alike, replace(HOLED, holes=()), count=4), side(alike, HOLED, count=4)):
        pixels = to_pixels(live.paint(layout, red).convertToFormat(QtGui.QImage.Format_ARGB32))
        clear = (pixels[70:100, 80:110, :3] == (255, 0, 0)).all(axis=-1)
        assert clear.all() if layout.top.holes else not clear.any()


def test_a_number_stands_on_its_own_piece():
    stock = Stock(400.0, 900.0, 9, 0.6)
    ring = replace(Top.round(300.0), holes=((Arc((0.0, 0.0), 120.0, 0.0, -360.0),),))
    for count, lay in ((1, side), (5, side), (4, end)):
        layout = lay(stock, ring, count=count)
        for x, y in number_places(layout):
            assert 120.0 < np.hypot(x, y) < 150.0
