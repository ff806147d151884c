# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph shrunk for looking at shows what the whole one shows, decoded sooner."""

import numpy as np
import pytest
from PIL import Image

from veneerwb.core import VeneerError
from veneerwb.core.photos import decode
from veneerwb.core.photos.reading import Photo, resized

SMALL = 50, 100


def pixels():
    """A photograph of 400 x 800 pixels, red at the left, light at the top."""
    y, x = np.mgrid[0:800, 0:400]
    return np.stack([255 - x * 0.6, 200 - y * 0.2, 60 + x * 0.1], axis=-1).astype(np.uint8)


@pytest.mark.parametrize("ending", [".jpg", ".png"])
@pytest.mark.parametrize("gains", [None, (1.2, 1.0, 0.8)])
@pytest.mark.parametrize("mirrored", [False, True])
def test_it_is_the_photograph_made_smaller(tmp_path, ending, gains, mirrored):
    path = tmp_path / f"leaf{ending}"
    Image.fromarray(pixels()).save(path, quality=95)
    photo = Photo.read(path, 0.5, mirrored, gains)
    small = photo.small(*SMALL)
    assert small.shape == (100, 50, 3) and small.dtype == np.uint8
    whole = resized(photo.pixels, *SMALL)
    assert np.abs(small.astype(int) - whole).max() <= 4
    assert (small[:, 0, 0].mean() < small[:, -1, 0].mean()) == mirrored


def test_an_array_too(tmp_path):
    small = Photo.of(pixels(), 0.5).small(*SMALL)
    assert np.array_equal(small, resized(pixels(), *SMALL))


def test_a_photograph_on_its_side_is_upright(tmp_path):
    exif = Image.Exif()
    exif[0x0112] = 6
    Image.fromarray(np.rot90(pixels()).copy()).save(tmp_path / "side.jpg", quality=95, exif=exif)
    photo = Photo.read(tmp_path / "side.jpg", 0.5)
    assert photo.shape == (800, 400)
    small = photo.small(*SMALL).astype(int)
    assert np.abs(small - resized(photo.pixels, *SMALL)).max() <= 4


def test_a_jpeg_is_decoded_no_finer_than_that_takes(tmp_path, monkeypatch):
    Image.fromarray(pixels()).save(tmp_path / "leaf.jpg")
    sizes = []
    real = decode._rgb
    monkeypatch.setattr(decode, "_rgb", lambda image: sizes.append(image.size) or real(image))
    decode.glimpse(tmp_path / "leaf.jpg", 60, 120)
    decode.glimpse(tmp_path / "leaf.jpg", 300, 600)
    assert sizes == [(50, 100), (400, 800)]


def test_what_is_wrong_with_a_file_is_said(tmp_path):
    path = tmp_path / "leaf.jpg"
    Image.fromarray(pixels()).save(path)
    photo = Photo.read(path, 0.5)
    path.write_bytes(path.read_bytes()[:900])
    with pytest.raises(VeneerError, match="leaf.jpg is damaged or cut short"):
        photo.small(*SMALL)
    path.unlink()
    with pytest.raises(VeneerError, match="There is no photo leaf.jpg"):
        photo.small(*SMALL)
