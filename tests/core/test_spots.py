# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a leaf suggests: its knots, stains and splits, and little of its figure."""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from PIL import Image, ImageDraw
from shapely.geometry import LineString, Polygon, box

from veneerwb.core.leaf import Fault, Leaf, Side
from veneerwb.core.log.figures import FIGURES
from veneerwb.core.log.sawn import TABLE, Log
from veneerwb.core.photos.reading import Photo
from veneerwb.core.spots import suggested

WIDTH, LENGTH = 300.0, 500.0
DARK, LIGHT = (38, 28, 20), (250, 246, 236)


@cache
def generated(figure, seed, scale, knots):
    log = Log(WIDTH, LENGTH, 0.6, figure, seed, 0.0, knots)
    noise = np.random.default_rng(seed).normal(0, 2, (*log.pixels(scale), 3))
    pixels = np.clip(log.picture(0, scale) + noise, 0, 255).astype(np.uint8)
    return pixels, tuple(log.faults(0))


def photograph(figure, seed=3, scale=1.0, knots=0):
    """Pixels of a generated leaf, with the noise of a camera, and its knots."""
    pixels, faults = generated(figure, seed, scale, knots)
    return pixels.copy(), faults


def leaf(pixels, scale=1.0, **more):
    return Leaf(1, Side(Photo.of(pixels, scale)), **more)


def painted(pixels, shape, colour, scale=1.0, soft=1.0):
    """The picture with a shape (shapely polygon, mm) painted over it."""
    rows, columns = pixels.shape[:2]
    image = Image.new("L", (4 * columns, 4 * rows))
    corners = [(4 * x / scale, 4 * (rows - y / scale)) for x, y in shape.exterior.coords]
    ImageDraw.Draw(image).polygon(corners, fill=255)
    share = np.asarray(image.resize((columns, rows), Image.Resampling.BOX))[..., None] / 255 * soft
    return (pixels * (1 - share) + np.array(colour) * share).astype(np.uint8)


def crack(x, y, length, width, degrees):
    """A line a little off the grain, wavering and running out at both ends, and its area."""
    t = np.linspace(0, 1, 41)
    waver = 0.4 * np.sin(7 * t)
    line = np.column_stack([
        x + length * t * np.sin(np.radians(degrees)) + waver,
        y + length * t * np.cos(np.radians(degrees)),
    ])
    half = width / 2 * np.minimum(1, 6 * np.minimum(t, 1 - t) + 0.25)
    side = np.column_stack([half, np.zeros(41)])
    area = LineString([*(line - side), *(line + side)[::-1], line[0] - side[0]])
    return LineString(line), Polygon(area.coords)


def is_found(found, outline, kinds):
    return any(
        s.kind in kinds and s.outline.intersection(outline).area
        > 0.3 * min(s.outline.area, outline.area) for s in found
    )


def test_the_figure_itself_suggests_next_to_nothing():
    counts = [len(suggested(leaf(photograph(figure)[0]))) for figure in FIGURES]
    assert max(counts) <= 2 and sum(counts) <= 2


@pytest.mark.parametrize("figure", [f for f in FIGURES if f != "burl"])
def test_knots_are_found(figure):
    """Not on burl: its eyes are as dark and as round as a knot; on crotch, whose plume is nearly as
    dark, every second one; on cathedral one may be missed."""
    pixels, faults = photograph(figure, 5, knots=4)
    found = suggested(leaf(pixels))
    seen = sum(is_found(found, fault.outline, ("knot", "stain")) for fault in faults)
    least = {"crotch": 2, "cathedral": 3}.get(figure, 4)
    assert len(faults) == 4 and seen >= least and len(found) <= 5


CRACKS = {
    DARK: ((40, 60, 300, 1.5, 2.0), (120, 330, 60, 2.0, -5.0), (200, 280, 150, 1.0, 4.0)),
    LIGHT: ((80, 40, 250, 1.0, -2.0), (160, 60, 60, 2.0, 5.0), (250, 150, 300, 1.5, 1.0)),
}
"""x, y, length, width, degrees."""


@pytest.mark.parametrize("figure", FIGURES)
def test_splits_are_found(figure):
    pixels, _ = photograph(figure)
    lines = []
    for colour, cracks in CRACKS.items():
        for one in cracks:
            line, area = crack(*one)
            lines.append(line)
            pixels = painted(pixels, area, colour)
    found = [s for s in suggested(leaf(pixels)) if s.kind == "split"]
    hits = [
        line for line in lines
        if any(s.outline.buffer(1).intersection(line).length > 0.5 * line.length for s in found)
    ]
    assert len(hits) == 6 and len(found) <= 7


def test_a_fine_split_is_found_on_a_finer_photograph():
    pixels, _ = photograph("crotch", 3, 0.5)
    line, area = crack(100, 200, 80, 0.5, 3.0)
    found = suggested(leaf(painted(pixels, area, DARK, 0.5), 0.5))
    (split,) = [s for s in found if s.kind == "split"]
    assert split.outline.buffer(1).intersection(line).length > 0.8 * line.length


def test_a_split_says_how_long_wide_and_dark_it_is():
    even = np.full((700, 300, 3), 160, np.uint8)
    line, area = crack(150, 200, 200, 2.0, 4.0)
    (split,) = suggested(leaf(painted(even, area, (40, 40, 40))))
    assert split.kind == "split" and split.fault == Fault(split.outline, "split")
    assert split.length == pytest.approx(200, abs=10) and 1.0 <= split.width <= 3.0
    assert 0.5 < split.darker < 0.8
    assert split.text.startswith(f"A line of {round(split.length)} mm along the grain")
    assert f"{split.darker:.0%} darker" in split.text
    assert split.outline.covers(line.interpolate(0.5, normalized=True))
    (light,) = suggested(leaf(painted(even, area, LIGHT)))
    assert light.darker < 0 and "lighter than the leaf on both sides" in light.text


def test_a_spot_says_how_large_and_dark_it_is():
    even = np.full((700, 300, 3), 160, np.uint8)
    round_spot = LineString([(150, 300), (150.01, 300)]).buffer(8)
    (knot,) = suggested(leaf(painted(even, round_spot, (80, 80, 80))))
    assert knot.kind == "knot" and knot.outline.covers(round_spot.buffer(-1))
    assert (knot.length, knot.width) == pytest.approx((16, 16), abs=1.5)
    assert knot.darker == pytest.approx(0.49, abs=0.06) and "darker than what lies" in knot.text


def test_a_drawn_out_blot_is_a_stain():
    pixels, _ = photograph("plain", 3)
    blot = LineString([(150, 300), (150, 325)]).buffer(9)
    found = suggested(leaf(painted(pixels, blot, (60, 50, 60), soft=0.5)))
    assert found and found[0].kind == "stain" and is_found(found, blot, ("stain",))


def test_the_strongest_comes_first_and_the_same_leaf_suggests_the_same():
    pixels, _ = photograph("stripe", 4, knots=4)
    found, again = suggested(leaf(pixels)), suggested(leaf(pixels))
    assert [s.strength for s in found] == sorted((s.strength for s in found), reverse=True)
    assert min(s.strength for s in found) > 1
    assert [s.text for s in found] == [s.text for s in again]


def test_light_and_exposure_hardly_matter():
    pixels, faults = photograph("plain", 3, knots=4)
    light = np.linspace(0.5, 1.1, 500)[:, None, None] * np.linspace(0.7, 1.0, 300)[None, :, None]
    found = suggested(leaf((pixels * light).clip(0, 255).astype(np.uint8)))
    assert sum(is_found(found, f.outline, ("knot", "stain")) for f in faults) >= 3
    assert len(found) <= 5


def test_nothing_is_applied_and_what_is_known_is_not_suggested_again():
    pixels, faults = photograph("ripple", 3, knots=4)
    bare = leaf(pixels)
    found = suggested(bare)
    assert found and bare.faults == ()
    assert suggested(replace(bare, faults=faults)) == ()
    first = replace(bare, faults=(found[0].fault,))
    assert len(suggested(first)) == len(found) - 1


def test_what_lies_off_the_usable_area_is_not_suggested():
    pixels, _ = photograph("plain", 3)
    pixels[:, :40], pixels[:, 270:], pixels[:30], pixels[470:] = TABLE, TABLE, TABLE, TABLE
    pixels = painted(pixels, box(12, 100, 24, 112), (20, 20, 20))  # dirt on the table
    pixels = painted(pixels, box(40, 0, 42, 500), (90, 90, 90))  # the leaf's shadow
    cut = leaf(pixels, usable=box(43, 31, 269, 469))
    assert suggested(cut) == ()
    spot = LineString([(60, 300), (60.01, 300)]).buffer(7)
    near_edge = leaf(painted(pixels, spot, (60, 40, 30)), usable=box(43, 31, 269, 469))
    assert is_found(suggested(near_edge), spot, ("knot",))


@pytest.mark.parametrize("pixels", [
    np.zeros((700, 300, 3), np.uint8), np.full((700, 300, 3), 255, np.uint8),
    np.zeros((4, 3, 3), np.uint8), np.full((20, 600, 3), 99, np.uint8),
    np.random.default_rng(1).integers(0, 256, (300, 200, 3), dtype=np.uint8),
])
def test_a_photograph_that_shows_no_leaf_suggests_nothing(pixels):
    assert suggested(leaf(pixels)) == ()
