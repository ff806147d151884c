# SPDX-License-Identifier: LGPL-2.1-or-later
"""The painted picture of every match: which leaf and which place of it every pixel shows, and what
meets across each seam, by the trade's rule and not by the pieces' motions."""

from __future__ import annotations

import math
from functools import cache

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter, map_coordinates
from shapely.geometry import Point
from shapely.prepared import prep

from veneerwb.core import Bundle, Leaf, Motion, Side, Top, check
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.photos.reading import Photo

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import picture  # noqa: E402

BY_KEY = {match.key: match for match in MATCHES}
every_match = pytest.mark.parametrize("key", BY_KEY)
RECTANGLE = Top.rectangle(900.0, 600.0)


# --- which leaf, which side, which place of it ---------------------------------------------------

LEVEL, COARSE = 1600.0 / 255.0, 0.2
"""mm: a place along the grain is told by one of 255 levels of blue; pixels of 5 mm."""


def chart(number, back, width, length):
    """A photograph whose red says which leaf and side it is of, green how far across it a place
    lies, and blue how far along it, at 5 mm per pixel."""
    rows, columns = round(length / 5.0), round(width / 5.0)
    y, x = np.indices((rows, columns)) + 0.5
    red = np.full((rows, columns), 6 * number + 3 * back)
    green, blue = 255.0 * x / columns, 255.0 * (rows - y) / rows
    return Photo.of(np.stack([red, green, blue], axis=-1).round().astype(np.uint8), 5.0)


@cache
def charted(width, length=1600.0):
    """Thirty leaves, each photographed a little shifted and turned, backs too."""
    leaves = []
    for k in range(1, 31):
        lies = Motion(0.5 * (k % 5 - 2), 3.0 * (k % 7 - 3), 2.0 * (k % 3 - 1))
        sides = (Side(chart(k, back, width, length), lies, lies) for back in (False, True))
        leaves.append(Leaf(k, *sides))
    return Bundle(tuple(leaves), 0.6, "own")


@pytest.mark.parametrize("width", [1200.0, 120.0], ids=["wide enough", "too narrow"])
@every_match
def test_every_pixel_shows_its_place_of_its_leaf_or_the_checks_name_the_piece(key, width):
    bundle = charted(width)
    layout = BY_KEY[key].sample(bundle, RECTANGLE)
    pixels = picture(layout, COARSE)[..., :3].astype(int)
    rows, columns = pixels.shape[:2]
    y, x = np.indices((rows, columns)) + 0.5
    points = np.stack([x - columns / 2, rows / 2 - y], axis=-1)[::3, ::3] / COARSE
    pixels = pixels[::3, ::3]
    named = {n for f in check(layout) if f.code == "off-leaf" for n in f.pieces}
    seen, off = set(), set()
    for piece in layout.pieces:
        within = prep(piece.outline.buffer(-6.0))
        x0, y0, x1, y1 = piece.outline.bounds
        there = ((points > (x0, y0)) & (points < (x1, y1))).all(axis=-1)
        there[there] = [within.contains(Point(p)) for p in points[there]]
        at = (bundle.register(piece.leaf, piece.turned) @ piece.onto_bundle).apply(points[there])
        red, green, blue = pixels[there].T
        assert (red == 6 * piece.leaf + 3 * piece.turned).all()
        shown = np.stack([green * width / 255.0, blue * LEVEL], axis=-1)
        inside = ((at > 8.0) & (at < (width - 8.0, 1592.0))).all(axis=1)
        assert np.abs(shown - at)[inside].max(initial=0.0) < 10.0
        beyond = ((at < -1.0) | (at > (width + 1.0, 1601.0))).any(axis=1)
        seen |= {piece.position} if there.any() else set()
        off |= {piece.position} if beyond.any() else set()
    assert seen and off <= named
    assert bool(off) == bool(named) == (width < 200.0)


# --- what meets at the seams ---------------------------------------------------------------------


@pytest.fixture(scope="module")
def alike():
    """Leaves that all show one picture, so that only how they lie makes a difference."""
    noise = np.random.default_rng(5).normal(0.0, 1.0, (1000, 1000, 1))
    soft = gaussian_filter(noise, (6.0, 6.0, 0.0))
    soft = 128.0 + 50.0 * soft / soft.std()
    photo = Photo.of(np.repeat(soft.clip(0, 255), 3, axis=2).astype(np.uint8), 1.0)
    return Bundle(tuple(Leaf(k, Side(photo)) for k in range(1, 31)), 0.6, "own")


SIDE = 640.0
SQUARE, ROUND = Top.square(SIDE), Top.round(SIDE)


def mirror(points, seam, layout):
    """Mirrored in the seam."""
    (ax, ay), (bx, by) = seam.line.coords[0], seam.line.coords[-1]
    turn = 2.0 * math.degrees(math.atan2(by - ay, bx - ax)) - 180.0
    over = Motion(turn, mirrored=True)
    return (Motion(dx=ax, dy=ay) @ over @ Motion(dx=-ax, dy=-ay)).apply(points)


def slip(points, seam, layout):
    """Moved over by the width of a strip."""
    return points + (SIDE / len(layout.pieces), 0.0)


def end_for_end(points, seam, layout):
    """Turned by half about the middle of the seam."""
    (ax, ay), (bx, by) = seam.line.coords[0], seam.line.coords[-1]
    return np.array([ax + bx, ay + by]) - points


def round_the_centre(points, seam, layout):
    """Turned about the centre by the angle of a wedge."""
    return Motion(360.0 / layout.recipe.ways).apply(points)


def up_the_centre_line(points, seam, layout):
    """Moved up the centre line by a strip's height there."""
    rise = layout.recipe.strip / math.cos(math.radians(layout.recipe.slant))
    return points + (0.0, rise)


def across_the_wedge(points, seam, layout):
    """Moved over by a strip's width, square to the wedge's axis."""
    recipe = layout.recipe
    across = math.radians(recipe.axis((seam.a - 1) // recipe.strips + 1) + 90.0)
    width = SIDE * math.sin(math.pi / recipe.ways) / recipe.strips
    return points + (width * math.cos(across), width * math.sin(across))


def rule_of(key, layout, seam):
    """How what lies on one side of a seam is seen again on the other, by the trade's rule."""
    on_centre_line = max(abs(x) for x, _ in seam.line.coords) < 1e-6
    if key in ("random", "slip"):
        return slip
    if key == "slip-centre-book":
        return mirror if on_centre_line else slip
    if key == "herringbone":
        return mirror if on_centre_line else up_the_centre_line
    if key == "radial in strips":
        one, other = ((at - 1) // layout.recipe.strips for at in (seam.a, seam.b))
        return across_the_wedge if one == other else mirror
    return {"reverse slip": end_for_end, "radial slip": round_the_centre}.get(key, mirror)


def beside(seam, area):
    """Points next to a seam, away from its ends: those within the area, and their like on the other
    side."""
    (ax, ay), (bx, by) = seam.line.coords[0], seam.line.coords[-1]
    length = math.hypot(bx - ax, by - ay)
    share, off = np.meshgrid(np.linspace(0.45, 0.85, 9), np.linspace(3.0, 30.0, 10))
    on = np.stack([ax + share * (bx - ax), ay + share * (by - ay)], axis=-1).reshape(-1, 2)
    away = np.array([(ay - by) / length, (bx - ax) / length]) * off.reshape(-1, 1)
    left, right = on + away, on - away
    return (left, right) if area.contains(Point(left[0])) else (right, left)


def colour(pixels, points):
    rows, columns = pixels.shape
    where = [rows / 2 - points[:, 1] - 0.5, columns / 2 + points[:, 0] - 0.5]
    return map_coordinates(pixels, where, order=1)


@every_match
def test_what_meets_at_each_seam_is_what_the_rule_of_the_match_says(key, alike):
    match = BY_KEY[key]
    layout = match.sample(alike, ROUND if match.family in ("radial", "rings") else SQUARE)
    pixels = picture(layout, px_per_mm=1.0)[..., 0].astype(float)
    areas = {piece.position: prep(piece.outline) for piece in layout.pieces}
    seams, judged = layout.seams, 0
    if key == "rings":  # at the line between the rings nothing is to meet
        seams = [seam for seam in seams if len(seam.line.coords) == 2]
    for seam in seams:
        rule = rule_of(key, layout, seam)
        here, opposite = beside(seam, areas[seam.a])
        there = rule(here, seam, layout)
        both = [areas[seam.a].contains(Point(p)) and areas[seam.b].contains(Point(q))
                for p, q in zip(here, there)]  # fmt: skip
        if sum(both) < 20:  # too short a seam
            continue
        judged += 1
        here, there, opposite = here[both], there[both], opposite[both]
        assert np.abs(colour(pixels, here) - colour(pixels, there)).mean() < 3.0
        if rule is not mirror:
            assert np.abs(colour(pixels, here) - colour(pixels, opposite)).mean() > 15.0
    assert judged >= 0.75 * len(seams) > 0
