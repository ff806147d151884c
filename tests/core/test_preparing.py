# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs as people take them become leaves, a batch at a time."""

import pickle
import weakref
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image
from shapely.geometry import box

from veneerwb.core.colour import decode, encode
from veneerwb.core.photos import preparation, preparing
from veneerwb.core.photos.decode import decoded
from veneerwb.core.photos.preparing import Cancelled, Preparation, Troubles, prepared
from veneerwb.core.photos.squaring import Squaring

WIDTH, LENGTH = 120.0, 300.0  # mm of the leaf
TABLE = (60, 90, 130)
ROWS, COLUMNS = 420, 300  # of a photograph at about 1 mm per pixel


def wood(x, y, k=0):
    """The colours of leaf k at mm (x, y): figure of its own, lighter towards the top."""
    rings = np.sin(x / 4.0 + np.sin(y / 40.0 + k) * 3.0)
    grey = 150.0 + 30.0 * rings + 0.05 * y
    return np.stack([grey, grey * 0.8, grey * 0.55], axis=-1)


def square_on(k=0, light=(1.0, 1.0, 1.0), at=(70, 50), table=TABLE):
    """A leaf photographed square on at 1 mm per pixel, its lower left `at` mm."""
    x, y = np.meshgrid(np.arange(COLUMNS) + 0.5 - at[0], ROWS - np.arange(ROWS) - 0.5 - at[1])
    inside = (x >= 0) & (x <= WIDTH) & (y >= 0) & (y <= LENGTH)
    seen = np.where(inside[..., None], wood(x, y, k), table)
    return lit(seen, light)


def lit(seen, light):
    linear = decode(np.clip(seen, 0, 255) / 255.0) * light
    return np.rint(np.clip(encode(linear), 0, 1) * 255).astype(np.uint8)


CORNERS = ((52.0, 395.0), (250.0, 380.0), (228.0, 40.0), (80.0, 30.0))
"""Where a slanted photograph shows the leaf's lower left, lower right, upper right, upper left."""


def slanted(k=0, corners=CORNERS):
    back = Squaring(corners, WIDTH, LENGTH)
    column, row = np.meshgrid(np.arange(COLUMNS) + 0.5, np.arange(ROWS) + 0.5)
    places = back.to_mm(np.column_stack([column.ravel(), row.ravel()])).reshape(ROWS, COLUMNS, 2)
    x, y = places[..., 0], places[..., 1]
    inside = (x >= 0) & (x <= WIDTH) & (y >= 0) & (y <= LENGTH)
    return lit(np.where(inside[..., None], wood(x, y, k), TABLE), (1.0, 1.0, 1.0))


@pytest.fixture
def shoot(tmp_path):
    """Saves photographs; their paths."""

    def saved(*pictures, kind="png"):
        paths = []
        for k, pixels in enumerate(pictures, start=1):
            paths.append(tmp_path / f"leaf {k}.{kind}")
            Image.fromarray(pixels).save(paths[-1])
        return paths

    return saved


def difference(photo, k=0):
    """The mean difference in levels of a photo from the leaf itself, its first mm left out."""
    rows, columns = photo.shape[:2]
    step = WIDTH / columns
    x, y = np.meshgrid((np.arange(columns) + 0.5) * step, (rows - np.arange(rows) - 0.5) * step)
    inner = (x > 3) & (x < WIDTH - 3) & (y > 3) & (y < LENGTH - 3)
    return np.abs(photo.astype(float) - wood(x, y, k))[inner].mean()


# --- one photograph ----------------------------------------------------------------------------


def test_a_given_scale_keeps_the_whole_photograph(shoot):
    (one,) = prepared(shoot(square_on()), Preparation(mm_per_px=0.5)).photos
    assert (one.size, one.usable, one.gains, one.trust) == ((150.0, 210.0), None, None, None)
    assert one.shape == (ROWS, COLUMNS)


def test_a_leaf_is_found_and_cut_out_with_a_margin(shoot):
    how = Preparation(mm_per_px=1.0, find=True, margin=10.0)
    (one,) = prepared(shoot(square_on()), how).photos
    assert one.size == pytest.approx((WIDTH + 20, LENGTH + 20), abs=1.5)
    assert one.usable.symmetric_difference(box(10, 10, WIDTH + 10, LENGTH + 10)).area < 400.0
    assert one.leaf_size == pytest.approx((WIDTH, LENGTH), abs=1.5)
    inside = one.photo().pixels[30:290, 30:110]
    assert inside[..., 2].mean() < inside[..., 0].mean()  # wood, not the blue table


def test_all_of_the_picture_can_be_kept_round_a_found_leaf(shoot):
    how = Preparation(mm_per_px=1.0, find=True, margin=None)
    (one,) = prepared(shoot(square_on(at=(90, 70))), how).photos
    assert one.size == (COLUMNS, ROWS)
    assert one.usable.bounds == pytest.approx((90, 70, 90 + WIDTH, 70 + LENGTH), abs=1.5)


def test_two_points_give_the_scale_and_how_far_it_can_be_trusted(shoot):
    how = Preparation(points=((70.0, 370.0), (190.0, 370.0)), distance=60.0, find=True)
    (one,) = prepared(shoot(square_on()), how).photos
    assert one.original_mm_per_px == pytest.approx(0.5)
    assert one.leaf_size == pytest.approx((WIDTH / 2, LENGTH / 2), abs=1.0)
    assert one.trust == pytest.approx(ROWS * 0.5 / 120.0)  # a pixel in 120, over 210 mm


@pytest.mark.parametrize("order", [(0, 1, 2, 3), (2, 0, 3, 1)])
def test_the_leafs_corners_square_it_up(shoot, order):
    how = Preparation(corners=[CORNERS[k] for k in order], rectangle=(WIDTH, LENGTH), margin=0)
    (one,) = prepared(shoot(slanted()), how).photos
    assert one.size == pytest.approx((WIDTH, LENGTH), abs=one.mm_per_px)
    assert one.usable is None
    assert 0.0 < one.trust < 2.0
    assert difference(one.photo().pixels) < 4.0


def test_a_margin_round_clicked_corners_is_none_of_the_leaf(shoot):
    how = Preparation(corners=CORNERS, rectangle=(WIDTH, LENGTH), margin=8.0)
    (one,) = prepared(shoot(slanted()), how).photos
    assert one.usable.symmetric_difference(box(8, 8, WIDTH + 8, LENGTH + 8)).area < 1.0


def test_a_sheet_beside_the_leaf_squares_the_picture_and_the_leaf_is_found(shoot):
    sheet = Squaring(CORNERS, WIDTH, LENGTH).to_pixels([(20, 30), (90, 30), (90, 200), (20, 200)])
    how = Preparation(corners=sheet, rectangle=(70.0, 170.0), beside=True, find=True,
                      margin=5.0)
    (one,) = prepared(shoot(slanted()), how).photos
    assert one.leaf_size == pytest.approx((WIDTH, LENGTH), abs=2.0)
    assert one.usable.area == pytest.approx(WIDTH * LENGTH, rel=0.02)


def test_an_outline_can_be_drawn_by_hand(shoot):
    drawn = ((80, 360), (180, 360), (180, 100), (80, 100))
    paths = shoot(square_on())
    (one,) = prepared(paths, Preparation(mm_per_px=1.0, outline=drawn, margin=0)).photos
    assert one.size == (100.0, 260.0) and one.usable is None
    slim = ((80, 360), (180, 360), (130, 100))
    (one,) = prepared(paths, Preparation(mm_per_px=1.0, outline=slim)).photos
    assert one.usable.area == pytest.approx(100 * 260 / 2)


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
@pytest.mark.parametrize("mirrored", [False, True])
def test_turning_and_mirroring_carry_the_outline_along(shoot, turn, mirrored):
    drawn = ((80, 360), (180, 360), (130, 100))
    paths = shoot(square_on())
    straight = Preparation(mm_per_px=1.0, outline=drawn, margin=12.0)
    (plain,) = prepared(paths, straight).photos
    (one,) = prepared(paths, replace(straight, turn=turn, mirrored=mirrored)).photos
    expected = np.rot90(plain.photo().pixels, turn // 90)
    expected = expected[:, ::-1] if mirrored else expected
    assert np.abs(one.photo().pixels.astype(int) - expected).mean() < 2.0
    assert one.usable.area == pytest.approx(plain.usable.area)
    # The point of the triangle, away from its base, lies where the picture's turn puts it.
    width, length = plain.size
    tip = np.array([62.0, 272.0])
    for _ in range(turn // 90):
        tip, (width, length) = np.array([length - tip[1], tip[0]]), (length, width)
    if mirrored:
        tip[0] = width - tip[0]
    assert np.hypot(*(np.asarray(one.usable.exterior.coords) - tip).T).min() < 1e-6


def enlarged(pixels):
    return np.asarray(Image.fromarray(pixels).resize((2 * COLUMNS, 2 * ROWS), Image.BICUBIC))


def test_a_large_photograph_becomes_a_smaller_copy_at_the_same_place(shoot, monkeypatch):
    assert preparation.MEGAPIXELS == 3.0
    monkeypatch.setattr(preparation, "MEGAPIXELS", 0.2)  # the photographs have half a megapixel
    how = Preparation(mm_per_px=0.5, find=True, margin=None)
    (one,) = prepared(shoot(enlarged(square_on()), kind="jpg"), how).photos
    assert 0.19e6 < one.shape[0] * one.shape[1] <= 0.2e6
    assert one.original_mm_per_px == 0.5 < one.mm_per_px
    assert one.size == pytest.approx((COLUMNS, ROWS), abs=1.0)
    assert one.usable.bounds == pytest.approx((70, 50, 70 + WIDTH, 50 + LENGTH), abs=1.0)
    corners = tuple((2.0 * c, 2.0 * r) for c, r in CORNERS)
    squared = Preparation(corners=corners, rectangle=(WIDTH, LENGTH), margin=0)
    monkeypatch.setattr(preparation, "MEGAPIXELS", 0.05)
    (one,) = prepared(shoot(enlarged(slanted()), kind="jpg"), squared).photos
    assert 0.045e6 < one.shape[0] * one.shape[1] <= 0.05e6
    assert difference(one.photo().pixels) < 5.0


# --- light -------------------------------------------------------------------------------------

LIGHTS = ((1.0, 1.0, 1.0), (0.8, 0.8, 0.8), (1.15, 1.1, 0.95))
"""The middle of each channel is 1, 1 and 0.95."""


@pytest.mark.parametrize("light", ["background", "patch"])
def test_light_is_evened_and_the_copies_stay_as_photographed(shoot, light):
    paths = shoot(*(square_on(0, one) for one in LIGHTS))
    patch = ((5, 5), (60, 5), (60, 200), (5, 200)) if light == "patch" else ()
    how = Preparation(mm_per_px=1.0, find=True, light=light, patch=patch)
    batch = prepared(paths, how)
    for one, gain in zip(batch.photos, LIGHTS):
        assert np.array(one.gains) * gain == pytest.approx((1.0, 1.0, 0.95), rel=0.02)
    means = [one.photo().pixels.mean(axis=(0, 1)) for one in batch.photos]
    assert np.ptp(means, axis=0).max() < 1.5
    raw = [one.photo(even=False).pixels.mean(axis=(0, 1)) for one in batch.photos]
    assert np.ptp(raw, axis=0).max() > 15.0
    assert "gains from 0.88 to 1.27" in batch.report and "unchanged" in batch.report


def test_a_grey_patch_makes_the_background_grey(shoot):
    warm = (1.0, 0.8, 0.6)
    paths = shoot(*(square_on(k, warm, table=(140, 140, 140)) for k in (1, 2, 3)))
    patch = ((5, 5), (60, 5), (60, 200), (5, 200))
    how = Preparation(mm_per_px=1.0, light="grey patch", patch=patch)
    for one in prepared(paths, how).photos:
        red, green, blue = one.photo().pixels[:200, :60].mean(axis=(0, 1))
        assert abs(red - green) < 1.6 and abs(green - blue) < 1.6


def test_what_was_burnt_out_is_named(shoot):
    bright = square_on(1)
    bright[150:200, 100:150] = 255
    paths = shoot(square_on(0), bright, square_on(2))
    batch = prepared(paths, Preparation(mm_per_px=1.0, find=True, light="background"))
    assert "Too bright when photographed, and lost: leaf 2.png 2 %" in batch.report
    assert batch.photos[1].notes and not batch.photos[0].notes


def test_all_photographs_that_are_too_dark_are_named_together(shoot):
    light = {1: 0.1, 3: 0.12}
    paths = shoot(*(square_on(k, (light.get(k, 1.0),) * 3, table=(180,) * 3) for k in range(5)))
    with pytest.raises(Troubles) as caught:
        prepared(paths, Preparation(mm_per_px=1.0, find=True, light="background"))
    assert [name for name, _ in caught.value.each] == ["leaf 2.png", "leaf 4.png"]
    assert all("times more or less light" in said for _, said in caught.value.each)


# --- the batch ---------------------------------------------------------------------------------


def test_each_photograph_may_have_its_own_corners(shoot):
    other = tuple((c + 6.0, r - 9.0) for c, r in CORNERS)
    how = [
        Preparation(corners=corners, rectangle=(WIDTH, LENGTH), margin=0)
        for corners in (CORNERS, other)
    ]
    batch = prepared(shoot(slanted(1), slanted(2, other)), how)
    for k, one in enumerate(batch.photos, start=1):
        assert difference(one.photo().pixels, k) < 4.0
    assert "moves a corner by at most" in batch.report


def test_a_batch_becomes_a_bundle(shoot):
    paths = shoot(*(square_on(k, (1.0 - 0.1 * k,) * 3) for k in range(3)))
    batch = prepared(paths, Preparation(mm_per_px=1.0, find=True, light="background"))
    bundle = batch.bundle(0.6, "previous")
    assert (bundle.numbers, bundle.thickness, bundle.back) == ((1, 2, 3), 0.6, "previous")
    assert bundle.leaf(3).face.image.gains == batch.photos[2].gains
    assert batch.bundle(0.6, even=False).leaf(3).face.image.gains is None
    assert batch.photos[2].name == "leaf 3.png" and len(batch.photos[2].sha256) == 64


def test_the_bad_photographs_of_a_batch_are_named_together(shoot, tmp_path):
    blue = np.full((ROWS, COLUMNS, 3), TABLE, np.uint8)
    paths = shoot(square_on(0), blue, square_on(1), np.zeros((ROWS, COLUMNS, 3), np.uint8))
    paths += [tmp_path / "gone 5.png", paths[0]]
    out = tmp_path / "out"
    out.mkdir()
    with pytest.raises(Troubles) as caught:
        prepared(paths, Preparation(mm_per_px=1.0, find=True), out)
    told = dict(caught.value.each)
    assert set(told) == {"leaf 2.png", "leaf 4.png", "gone 5.png", "leaf 1.png"}
    assert "No leaf stands out" in told["leaf 2.png"] and "black" in told["leaf 4.png"]
    assert "given twice" in told["leaf 1.png"]
    assert all(said.startswith(name) or name in said for name, said in caught.value.each)
    assert str(caught.value).startswith(
        "4 of 6 photographs will not do (leaf 1.png, leaf 2.png, leaf 4.png, gone 5.png); the first"
    )
    assert list(out.iterdir()) == []
    again = pickle.loads(pickle.dumps(caught.value))
    assert (str(again), again.each) == (str(caught.value), caught.value.each)


def test_photographs_of_one_name_in_two_folders_are_told_apart(tmp_path):
    paths = []
    for folder, pixels in (("faces", square_on(0)), ("backs", np.zeros((90, 60, 3), np.uint8))):
        (tmp_path / folder).mkdir()
        paths.append(tmp_path / folder / "leaf 1.png")
        Image.fromarray(pixels).save(paths[-1])
    with pytest.raises(Troubles) as caught:
        prepared(paths, Preparation(mm_per_px=1.0))
    assert [name for name, _ in caught.value.each] == ["backs/leaf 1.png"]
    paths[1].write_bytes(paths[0].read_bytes())
    same = "backs/leaf 1.png is the same photograph as faces/leaf 1.png; leave one of them out"
    with pytest.raises(Troubles, match=same):
        prepared(paths, Preparation(mm_per_px=1.0))


@pytest.mark.parametrize(("how", "size"), [
    ({"mm_per_px": 10.0}, "5 m across and 7 m along"),
    ({"mm_per_px": 10.0, "turn": 90}, "7 m across and 5 m along"),
    ({"points": ((9, 9), (9, 609)), "distance": 6000.0}, "5 m across and 7 m along"),
    ({"corners": CORNERS, "rectangle": (4200.0, 10500.0)}, "4.2 m across and 10.5 m along"),
])
def test_a_scale_ten_times_wrong_is_refused_with_the_size_that_comes_out(shoot, how, size):
    paths = shoot(np.asarray(Image.fromarray(square_on()).resize((500, 700))))
    with pytest.raises(Troubles, match=f"leaf 1.png would show a leaf {size}, larger than any"):
        prepared(paths, Preparation(**how))


def test_a_wide_table_round_a_leaf_is_no_leaf(shoot):
    paths = shoot(np.asarray(Image.fromarray(square_on()).resize((500, 700))))
    (one,) = prepared(paths, Preparation(mm_per_px=10.0, find=True, margin=None)).photos
    assert one.leaf_size == pytest.approx((2000.0, 5000.0), rel=0.02)


def test_one_bad_photograph_is_one_sentence(shoot):
    corners = ((10, 10), (200, 10), (100, 10), (10, 200))
    how = Preparation(corners=corners, rectangle=(WIDTH, LENGTH))
    with pytest.raises(Troubles, match=r"^leaf 1.png: Three of the corners lie almost on a line"):
        prepared(shoot(square_on()), how)


def test_a_photograph_on_its_side_is_found(shoot):
    paths = shoot(square_on(0), np.rot90(square_on(1)).copy(), square_on(2))
    how = Preparation(mm_per_px=1.0, find=True)
    with pytest.raises(Troubles, match="leaf 2.png shows its leaf turned by 90 degrees"):
        prepared(paths, how)
    batch = prepared(paths, [how, replace(how, turn=270), how])
    sizes = [one.leaf_size for one in batch.photos]
    assert np.ptp(sizes, axis=0).max() < 2.0


def test_a_leaf_of_another_size_or_scale_is_mentioned(shoot):
    small = np.asarray(Image.fromarray(square_on(1)).resize((240, 336)))
    paths = shoot(square_on(0), small, square_on(2))
    batch = prepared(paths, Preparation(mm_per_px=1.0, find=True))
    assert "leaf 2.png: The leaf is 36 % smaller than the others; check it." in batch.report
    assert not batch.photos[0].notes


def test_a_leaf_that_runs_out_of_the_picture_is_mentioned(shoot):
    (one,) = prepared(
        shoot(square_on(at=(70, -40))), Preparation(mm_per_px=1.0, find=True)
    ).photos
    assert "runs out of the picture" in one.notes[0]


def test_progress_is_told_and_can_stop_the_batch(shoot, tmp_path):
    paths = shoot(*map(square_on, range(4)))
    told = []
    how = Preparation(mm_per_px=1.0)
    prepared(paths, how, progress=lambda *now: told.append(now))
    assert told[0] == (0, 4, "leaf 1.png") and told[-1][:2] == (4, 4) and len(told) == 5
    for stop in (0, 2, 4):
        out = tmp_path / f"out {stop}"
        out.mkdir()
        with pytest.raises(Cancelled):
            prepared(paths, how, out, lambda done, *_, stop=stop: done < stop)
        assert list(out.iterdir()) == []


def test_one_photograph_is_in_memory_at_a_time(shoot, monkeypatch):
    kept, alive = [], []

    def read(path):
        alive.append(sum(one() is not None for one in kept))
        pixels, sha256 = decoded(path)
        kept.append(weakref.ref(pixels))
        return pixels, sha256

    monkeypatch.setattr(preparing, "decoded", read)
    how = Preparation(mm_per_px=1.0, find=True, light="background")
    prepared(shoot(*map(square_on, range(3))), how)
    assert alive == [0] * 3


def test_a_batchs_own_files_stay_until_it_is_discarded(shoot):
    batch = prepared(shoot(square_on()), Preparation(mm_per_px=1.0))
    file, discard = batch.photos[0].file, batch.discard
    del batch
    assert file.exists()
    discard()
    assert not file.parent.exists()


def test_working_copies_beside_the_photographs_leave_those_as_they_are(tmp_path):
    rng = np.random.default_rng(3)
    paths = []
    for k in (1, 2):
        paths.append(tmp_path / f"photo-{k:03d}.jpg")
        pixels = rng.integers(60, 200, (90, 60, 3)).astype(np.uint8)
        Image.fromarray(pixels).save(paths[-1])
    before = [path.read_bytes() for path in paths]
    batch = prepared(paths, Preparation(mm_per_px=1.0), tmp_path)
    assert [path.read_bytes() for path in paths] == before
    assert not {one.file for one in batch.photos} & set(paths)
