# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photo's gains even its light whenever it is decoded; the file stays as photographed."""

import numpy as np
import pytest
from PIL import Image

from veneerwb.core import VeneerError
from veneerwb.core.photos.evening import Evening, evened
from veneerwb.core.photos.reading import Photo


@pytest.fixture
def path(tmp_path):
    pixels = np.random.default_rng(1).integers(0, 256, (40, 30, 3), np.uint8)
    Image.fromarray(pixels).save(tmp_path / "a.png")
    return tmp_path / "a.png"


def test_gains_are_applied_on_reading_and_kept_apart(path):
    plain = Photo.read(path, 1.0)
    light = Photo.read(path, 1.0, gains=(1.2, 1.0, 0.8))
    assert np.array_equal(light.pixels, evened(plain.pixels, Evening((1.2, 1.0, 0.8))))
    assert not np.array_equal(light.pixels, plain.pixels)
    assert light.sha256 == plain.sha256 and plain.gains is None
    assert light.gains == (1.2, 1.0, 0.8) and not light.pixels.flags.writeable
    back = Photo.read(path, 1.0, mirrored=True, gains=[1.2, 1.0, 0.8])
    assert np.array_equal(back.pixels, light.pixels[:, ::-1])
    assert Photo.read(path, 1.0, gains=[]).gains is None
    raw = light.as_photographed()
    assert raw.gains is None and np.array_equal(raw.pixels, plain.pixels)
    assert plain.as_photographed() is plain


@pytest.mark.parametrize("gains", [(1.0, 1.0), (1.0, 0.0, 1.0), (1.0, -1.0, 1.0), (1e9, 1.0, 1.0)])
def test_gains_that_no_light_has_are_refused(path, gains):
    with pytest.raises(VeneerError):
        Photo.read(path, 1.0, gains=gains)
