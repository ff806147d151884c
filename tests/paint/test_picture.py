# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture against an independent re-assembly: scipy's bilinear warp of each side's photo."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import ndimage

from veneerwb.core import (
    Bundle,
    Disturbance,
    Leaf,
    Motion,
    Placement,
    Side,
    Stock,
    Top,
    VeneerError,
    radial,
    sawn_bundle,
)
from veneerwb.core.photos.reading import Photo

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import picture  # noqa: E402

SCALE = 1.0


@pytest.fixture(scope="module")
def disturbed() -> Bundle:
    """Photos shifted and turned, every second back photographed: no two views of a piece are
    alike."""
    return sawn_bundle(
        leaves=12,
        width=220,
        length=420,
        thickness=0.6,
        mm_per_px=SCALE,
        figure="burl",
        seed=5,
        slope=8,
        disturb=Disturbance(shift=6.0, turn=1.5),
        backs=[2, 3, 6, 7, 9],
    )


def centres(pixels: np.ndarray, px_per_mm: float) -> np.ndarray:
    """Top mm of every pixel's centre, rows x columns x 2."""
    rows, columns = pixels.shape[:2]
    x = (np.arange(columns) + 0.5 - columns / 2) / px_per_mm
    y = (rows / 2 - np.arange(rows) - 0.5) / px_per_mm
    return np.stack(np.meshgrid(x, y), axis=-1)


def seen_on(side: Side, points: np.ndarray) -> np.ndarray:
    """The photo's colours at points of the bundle, bilinear, its edge pixels repeated."""
    at = side.view.apply(points)
    rows = side.photo.shape[0] - at[..., 1] / side.mm_per_px - 0.5
    columns = at[..., 0] / side.mm_per_px - 0.5
    photo = side.photo.astype(float)
    channels = [
        ndimage.map_coordinates(photo[..., c], [rows, columns], order=1, mode="nearest")
        for c in range(3)
    ]
    return np.stack(channels, axis=-1)


def reassembled(layout, top_points: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Colours by wedge, and how far in mm each point lies from the nearest seam."""
    ways, start = layout.recipe.ways, layout.recipe.start
    x, y = top_points[..., 0], top_points[..., 1]
    off = (np.degrees(np.arctan2(y, x)) - start + 180.0 / ways) % 360.0
    which = np.minimum((off * ways / 360.0).astype(int), ways - 1)
    from_seam = np.abs((off + 180.0 / ways) % (360.0 / ways) - 180.0 / ways)
    away = np.hypot(x, y) * np.sin(np.radians(np.minimum(from_seam, 90.0)))
    colours = np.zeros((*x.shape, 3))
    for piece in layout.pieces:
        here = which == piece.position - 1
        side = layout.bundle.leaf(piece.leaf).side(piece.turned)
        colours[here] = seen_on(side, piece.onto_bundle.apply(top_points[here]))
    return colours, away


@pytest.mark.parametrize(
    "options",
    [
        {"ways": 12},
        {"ways": 12, "turned": "even", "order": "spread"},
        {"ways": 7, "turn": "slip", "start": 17.0, "order": "spread"},
        {"ways": 5, "turn": "slip", "turned": "all", "placement": Placement(100, 60, 83.0)},
        {"ways": 4, "order": [9, 2, 12, 6], "placement": Placement(130, 330, -95.0)},
    ],
    ids=str,
)
@pytest.mark.parametrize(
    "top", [Top.round(300), Top.polygon(5, 260), Top.polygon(8, 280)], ids=lambda t: t.name
)
def test_agrees_with_a_reassembly_by_another_library(disturbed, top, options):
    layout = radial(disturbed, top, **options)
    pixels = picture(layout, px_per_mm=1 / SCALE)
    points = centres(pixels, 1 / SCALE)
    expected, away = reassembled(layout, points)
    inside = (pixels[..., 3] == 255) & (away > 1.5)
    assert inside.sum() > 0.8 * top.area
    difference = np.abs(pixels[..., :3].astype(float) - expected)[inside]
    print(f"mean difference {difference.mean():.3f} levels of 255")
    assert difference.mean() < 2.0
    assert np.percentile(difference, 99.5) < 8.0


def test_is_clear_outside_and_solid_inside(disturbed):
    top = Top.round(301)
    pixels = picture(radial(disturbed, top, ways=10), px_per_mm=1.3)
    assert pixels.shape == (392, 392, 4) and pixels.dtype == np.uint8
    away = np.hypot(*np.moveaxis(centres(pixels, 1.3), -1, 0))
    alpha = pixels[..., 3]
    assert (alpha[away > 150.5 + 1.0] == 0).all()
    assert (alpha[away < 150.5 - 1.0] == 255).all()
    assert alpha.sum() / 255.0 == pytest.approx(top.area * 1.3**2, rel=2e-3)


def test_the_rim_keeps_the_photos_colours(disturbed):
    white = Photo.of(np.full((420, 220, 3), 240, np.uint8), 1.0)
    bundle = Bundle(tuple(Leaf(k, Side(white)) for k in range(1, 9)), 0.6)
    pixels = picture(radial(bundle, Top.round(300), ways=8), px_per_mm=1.0)
    grazed = (pixels[..., 3] > 20) & (pixels[..., 3] < 255)
    assert grazed.sum() > 100
    assert pixels[grazed][:, :3].min() > 225


def test_a_pixel_that_a_seam_and_the_rim_share_is_painted_too(disturbed):
    top = Top.round(301)
    few, many = (picture(radial(disturbed, top, ways), 1.0)[..., 3] for ways in (6, 12))
    np.testing.assert_allclose(few.astype(int), many, atol=3)


def test_book_ring_of_one_unchanging_stem_is_mirrored_across_every_seam():
    """Without change from leaf to leaf both sides of a seam show the same point of the bundle."""
    one = sawn_bundle(
        leaves=1, width=220, length=420, thickness=0.6, mm_per_px=1.0, figure="burl", seed=2
    )
    photo = one.leaves[0].face.image
    bundle = Bundle(tuple(Leaf(k, Side(photo)) for k in range(1, 9)), 0.6)
    layout = radial(bundle, Top.round(300), ways=8, start=22.5)
    for seam in layout.seams:
        a, b = layout.pieces[seam.a - 1], layout.pieces[seam.b - 1]
        points = np.array(a.outline.exterior.coords)
        ux, uy = np.subtract(seam.line.coords[1], seam.line.coords[0]) / seam.line.length
        across = points @ np.array([[2 * ux * ux - 1, 2 * ux * uy], [2 * ux * uy, 2 * uy * uy - 1]])
        np.testing.assert_allclose(
            a.onto_bundle.apply(points), b.onto_bundle.apply(across), atol=1e-9
        )
    # With a seam on each axis and each diagonal the pixels mirror too, but for the pixels a seam
    # cuts.
    pixels = picture(layout, px_per_mm=1.0).astype(int)
    points = centres(pixels, 1.0)
    _, away = reassembled(layout, points)
    clear = (away > 1.0) & (np.hypot(points[..., 0], points[..., 1]) < 148.0)
    for image in (pixels[:, ::-1], pixels[::-1], pixels.transpose(1, 0, 2)):
        difference = np.abs(image - pixels)[clear]
        assert difference.mean() < 0.3 and difference.max() <= 3


def test_off_a_leaf_the_edge_pixel_is_repeated():
    photo = np.zeros((100, 60, 3), np.uint8)
    photo[:, :30] = (200, 30, 30)
    photo[:, 30:] = (30, 30, 200)
    bundle = Bundle(tuple(Leaf(k, Side(Photo.of(photo, 1.0))) for k in range(1, 4)), 0.6)
    layout = radial(bundle, Top.round(300), ways=3, turn="slip", placement=Placement(30, 90, 90.0))
    pixels = picture(layout, px_per_mm=1.0)
    # Piece 1 points up: left of its axis the leaf is red for ever, right of it blue.
    assert tuple(pixels[20, 120, :3]) == (200, 30, 30)
    assert tuple(pixels[20, 180, :3]) == (30, 30, 200)


@pytest.mark.parametrize("coarse", [0.24, 0.5])
def test_a_coarse_picture_averages_the_photo_and_keeps_its_place(disturbed, coarse):
    layout = radial(disturbed, Top.round(300), ways=6)
    pixels = picture(layout, px_per_mm=coarse)
    points = centres(pixels, coarse)
    near = np.linspace(-0.4, 0.4, 5) / coarse
    expected = np.mean(
        [reassembled(layout, points + [dx, dy])[0] for dx in near for dy in near], axis=0
    )
    _, away = reassembled(layout, points)
    inside = (pixels[..., 3] == 255) & (away > 1.5 / coarse)
    assert np.abs(pixels[..., :3] - expected)[inside].mean() < 4.0


def test_seams_and_numbers_are_drawn_only_on_request(disturbed):
    layout = radial(disturbed, Top.round(300), ways=6)
    plain = picture(layout, px_per_mm=2.0).astype(int)
    seams = picture(layout, px_per_mm=2.0, seams=True).astype(int)
    numbers = picture(layout, px_per_mm=2.0, numbers=True).astype(int)
    points = centres(plain, 2.0)
    _, away = reassembled(layout, points)
    changed = np.abs(seams - plain).max(axis=-1) > 0
    assert changed[(away < 0.3) & (np.hypot(*np.moveaxis(points, -1, 0)) < 145)].mean() > 0.9
    assert not changed[away > 2.0].any()
    written = np.abs(numbers - plain).max(axis=-1) > 40
    for piece in layout.pieces:
        x, y = 1.2 * np.array(piece.outline.centroid.coords[0])
        row, column = int(plain.shape[0] / 2 - 2 * y), int(plain.shape[1] / 2 + 2 * x)
        assert written[row - 9 : row + 9, column - 9 : column + 9].any()


def test_no_picture_without_photographs():
    with pytest.raises(VeneerError, match="no photographs"):
        picture(radial(Stock(300, 600, 8, 0.6), Top.round(400), ways=8), px_per_mm=1.0)


@pytest.mark.parametrize("scale", [0, -1, float("nan"), 1e9, 500])
def test_absurd_scales_are_refused_in_a_sentence(disturbed, scale):
    with pytest.raises(VeneerError) as refused:
        picture(radial(disturbed, Top.round(300), ways=6), px_per_mm=scale)
    assert str(refused.value).endswith(".")


def test_a_view_in_another_frame_than_the_register_is_followed():
    """A back photographed askew: the picture follows the photo's frame, the cut the leaf's."""
    face = Photo.of(np.zeros((100, 60, 3), np.uint8), 1.0)
    marked = np.zeros((100, 60, 3), np.uint8)
    marked[:, 40:] = 250
    back = Side(Photo.of(marked, 1.0), Motion(), Motion(dx=10.0), "photo")
    leaves = [Leaf(k, Side(face), back) for k in range(1, 5)]
    layout = radial(
        Bundle(tuple(leaves), 0.6), Top.round(100), ways=4, placement=Placement(30, 20, 90)
    )
    assert layout.pieces[0].turned
    pixels = picture(layout, px_per_mm=1.0)
    # On the photo the step lies at 40 mm, so on the bundle at 30: on piece 1, mirrored, left of its
    # axis.
    assert pixels[20, 45:49, 0].min() > 240 and pixels[20, 51:55, 0].max() < 10
