# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every match of the table on every kind of top: it tiles, and its joints are what the table says.
What the picture shows of them: tests/paint/test_every_picture.py."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon, box
from shapely.prepared import prep

from veneerwb.core import Radial, Rings, Stock, Top, VeneerError, check
from veneerwb.core.matches.end import END_KINDS, End
from veneerwb.core.matches.kinds import HALF_TURN, MATCHES, MIRROR, SHIFT, SHIFTED_MIRROR, TURN
from veneerwb.core.matches.quarters import BOXES, QUARTER_KINDS, Quarters
from veneerwb.core.matches.rings import RING_KINDS
from veneerwb.core.matches.side import FACE_KINDS, FACES, TURN_KINDS, TURNS, SideMatch
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, straights

STOCK = Stock(900.0, 3000.0, 30, 0.6)
CABLE = [(140, 90), (140, 170), (260, 170), (260, 90)]


def opening(x, y, radius):
    return (Arc((x, y), radius, 0.0, -360.0),)


TOPS = {
    "round": Top.round(800.0),
    "six sides": Top.polygon(6, 700.0),
    "oval": Top.oval(900.0, 620.0),
    "square": Top.square(700.0),
    "rectangle": Top.rectangle(900.0, 600.0),
    "racetrack": Top.racetrack(1000.0, 500.0),
    "boat": Top.boat(1100.0, 560.0, 320.0),
    "outline with an opening": Top.outline(
        Polygon([(-450, -300), (470, -280), (430, 300), (-400, 320)], [CABLE])
    ),
    "racetrack with openings": Top.of_edges(
        Top.racetrack(1000.0, 500.0).edge,
        [opening(300, 0, 40), opening(-290, 110, 55), straights(CABLE)],
    ),
    "boat, open in its middle": Top.of_edges(
        Top.boat(1100.0, 560.0, 320.0).edge, [opening(10, 0, 70)]
    ),
}
HINDERED = {"rings": "opening-crossed", "radial round a disc": "disc-too-large"}
"""What the samples of these matches cannot be laid with where the middle of a top is open."""
BY_KEY = {match.key: match for match in MATCHES}
every_match = pytest.mark.parametrize("key", BY_KEY)


def tiles(layout):
    """The exact areas sum to the top's; no two pieces overlap, by the overlay of their polygons;
    and points all over the top lie in one piece each."""
    top = layout.top
    assert math.fsum(p.area for p in layout.pieces) == pytest.approx(top.area, rel=1e-9)
    outlines = [piece.outline for piece in layout.pieces]
    boxes = [outline.bounds for outline in outlines]
    for i, a in enumerate(boxes):
        for j in range(i):
            b = boxes[j]
            if a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]:
                assert outlines[i].intersection(outlines[j]).area <= 1e-6
    within = [prep(outline) for outline in outlines]
    # Not on a seam, and off the rim, where polygons are a sagitta smaller than the true curve.
    for point in points_in(top):
        assert sum(area.contains(point) for area in within) == 1


def points_in(top):
    inside = prep(top.polygon_mm.buffer(-0.1))
    x0, y0, x1, y1 = top.polygon_mm.bounds
    chance = np.random.default_rng(2)
    at = chance.uniform((x0, y0), (x1, y1), (60, 2))
    return [point for point in map(Point, at) if inside.contains(point)]


def joint(layout, seam):
    """How the piece on one side of a seam lies to the one on the other, by their motions alone."""
    pieces = {piece.position: piece for piece in layout.pieces}
    over = pieces[seam.b].onto_bundle.inverse() @ pieces[seam.a].onto_bundle
    line = np.asarray(seam.line.coords)[[0, -1]]
    shift = over.apply(line) - line
    if over.mirrored:
        if np.abs(shift).max() < 1e-6:
            return MIRROR
        return SHIFTED_MIRROR if np.ptp(shift, axis=0).max() < 1e-6 else "none"
    turned = abs(math.remainder(over.angle, 360.0))
    if turned < 1e-9:
        return SHIFT
    if turned > 180.0 - 1e-9:
        return HALF_TURN
    return TURN if np.abs(over.apply((0.0, 0.0))).max() < 1e-6 else "none"


def joints(layout):
    """Those of all seams but the line between two rings, where nothing is to meet."""
    pieces = {piece.position: piece for piece in layout.pieces}
    line = isinstance(layout.recipe, Rings)
    return {
        joint(layout, seam) for seam in layout.seams
        if not line or pieces[seam.a].cut == pieces[seam.b].cut
    }  # fmt: skip


# --- the table ---------------------------------------------------------------------------------


def test_the_table_has_every_match_of_the_families_once():
    assert len(BY_KEY) == len({match.title for match in MATCHES}) == len(MATCHES) == 23
    families = (*TURN_KINDS, *FACE_KINDS, *END_KINDS, *QUARTER_KINDS, *RING_KINDS)
    left_out = {kind.key for kind in families} - set(BY_KEY)
    assert left_out == {"radial"}  # it is there as book, slip, round a disc and off the middle


@every_match
def test_its_words_are_plain(key):
    kind = BY_KEY[key].kind
    assert kind.title[0].isupper() and "match" in kind.title and not kind.title.endswith(".")
    assert kind.line[0].isupper() and kind.line.endswith(".") and len(kind.line) < 100


def test_the_sample_shows_what_the_key_says():
    layouts = {key: match.sample(STOCK, TOPS["square"]) for key, match in BY_KEY.items()}
    turns = {key: layouts[key].recipe.turn for key in TURNS}
    assert turns == {turn: turn for turn in TURNS}
    assert {key: layouts[key].recipe.face for key in FACES} == {face: face for face in FACES}
    for kinds in (END_KINDS, QUARTER_KINDS):
        assert all(layouts[kind.key].recipe.kind == kind.key for kind in kinds)
    radials = {key: layouts[key].recipe for key in BY_KEY if key.startswith("radial")}
    assert radials["radial book"].turn == "book" and radials["radial slip"].turn == "slip"
    assert radials["radial in strips"].strips == 3
    assert radials["radial round a disc"].disc > 0.0
    assert radials["radial off the middle"].centre != (0.0, 0.0)


# --- every match on every top ------------------------------------------------------------------


@pytest.mark.parametrize("name", TOPS)
@every_match
def test_it_tiles_and_its_joints_are_what_the_table_says(key, name):
    match, top = BY_KEY[key], TOPS[name]
    if name.startswith("boat, open") and key in HINDERED:
        with pytest.raises(VeneerError) as caught:
            match.sample(STOCK, top)
        assert caught.value.code == HINDERED[key]
        return
    layout = match.sample(STOCK, top)
    tiles(layout)
    assert all(piece.turned == piece.onto_bundle.mirrored for piece in layout.pieces)
    used = sorted({piece.leaf for piece in layout.pieces})
    assert used == list(STOCK.numbers[: len(used)])
    assert len(used) >= match.kind.least
    assert [piece.position for piece in layout.pieces] == list(range(1, len(layout.pieces) + 1))
    sides = [high - low for low, high in (edges.extent(top.edge, way) for way in (0.0, 90.0))]
    expected = set(match.joints)
    if key in BOXES and sides[0] == pytest.approx(sides[1]):
        expected = {MIRROR}
    assert joints(layout) == expected


@every_match
def test_it_is_the_same_each_time(key):
    one, two = (BY_KEY[key].sample(STOCK, TOPS["oval"]) for _ in range(2))
    assert one.pieces == two.pieces and one.revision == two.revision


def test_every_layout_has_a_revision_mark_of_its_own():
    marks = {
        match.sample(STOCK, top).revision
        for match in MATCHES for top in (TOPS["square"], TOPS["round"])
    }  # fmt: skip
    assert len(marks) == 2 * len(MATCHES)


@pytest.mark.parametrize("width", [900.0, 60.0])
@every_match
def test_a_piece_lies_in_its_leaf_or_the_checks_name_it(key, width):
    bundle = Stock(width, 3000.0, 30, 0.6)
    layout = BY_KEY[key].sample(bundle, TOPS["rectangle"])
    leaf = box(-0.01, -0.01, width + 0.01, 3000.01)
    off = [p.position for p in layout.pieces
           if not leaf.contains(p.onto_bundle.apply_to(p.blank))]  # fmt: skip
    named = [position for f in check(layout) if f.code == "off-leaf" for position in f.pieces]
    assert sorted(named) == off and bool(off) == (width < 100.0)


# --- any ways, sizes and orders ----------------------------------------------------------------

SIZE = st.integers(500, 1400)
DEGREES = st.integers(-1800, 1800).map(lambda tenths: tenths / 10.0)


@st.composite
def any_top(draw):
    """Of any kind, with an opening or without, which is never where two rings meet."""
    long, wide = draw(SIZE), draw(st.integers(400, 499))
    top = draw(st.sampled_from([
        Top.round(long), Top.polygon(draw(st.integers(3, 12)), long), Top.oval(long, wide),
        Top.rectangle(wide, long), Top.racetrack(long, wide), Top.boat(long, wide, 0.6 * wide),
    ]))  # fmt: skip
    turn, away = math.radians(draw(st.integers(0, 359))), draw(st.sampled_from([None, 0, 30, 95]))
    if away is None:
        return top
    at = away * math.cos(turn), away * math.sin(turn)
    return Top.of_edges(top.edge, [opening(*at, draw(st.sampled_from([3.0, 20.0])))])


@st.composite
def any_recipe(draw):
    turn = draw(st.sampled_from(["book", "slip"]))
    family = draw(st.sampled_from(["radial", "rings", "side", "end", "quarters"]))
    if family in ("radial", "rings"):
        ways, strips = 2 * draw(st.integers(2, 7)), draw(st.integers(1, 2))
        order = draw(st.one_of(
            st.sampled_from(["sequence", "spread"]), st.permutations(range(1, ways * strips + 1))
        ))  # fmt: skip
        start = draw(DEGREES)
        if family == "rings":
            inner = Radial(ways, turn, order=order, strips=strips, start=start)
            return Rings(inner, Radial(2 * draw(st.integers(2, 14)), turn), 0.6 * 200.0)
        centre = draw(st.tuples(st.integers(-80, 80), st.integers(-80, 80)))
        return Radial(ways, turn, order=order, strips=strips, start=start, centre=centre)
    grain, count = draw(DEGREES), 2 * draw(st.integers(2, 8))
    order = draw(st.one_of(st.just("sequence"), st.permutations(range(1, count + 1))))
    if family == "side":
        turn = draw(st.sampled_from(["book", "slip", "reverse slip", "random"]))
        face = draw(st.sampled_from(["balance", "centre balance"]))
        return SideMatch(turn, face, count, order=order, grain=grain)
    if family == "end":
        return End(draw(st.sampled_from([k.key for k in END_KINDS])), count, order=order,
                   grain=grain)  # fmt: skip
    return Quarters(
        draw(st.sampled_from([k.key for k in QUARTER_KINDS])), turn,
        draw(st.floats(5.0, 85.0)), draw(st.integers(200, 400)),
        draw(st.sampled_from(["mitre", "diagonal"])),
    )  # fmt: skip


@settings(max_examples=40)
@given(any_recipe(), any_top())
def test_it_tiles_for_any_ways_sizes_and_orders(recipe, top):
    layout = recipe.lay(STOCK, top)
    tiles(layout)
    assert all(piece.turned == piece.onto_bundle.mirrored for piece in layout.pieces)
    assert {piece.leaf for piece in layout.pieces} <= set(STOCK.numbers)
    assert "none" not in joints(layout) or not pure(recipe)


def pure(recipe):
    """Whether each joint is one of the table's whatever the top and the corners: between slipped
    wedges of strips lie a turn and a shift."""
    inner = getattr(recipe, "inner", recipe)
    in_strips = getattr(inner, "strips", 1) > 1 and inner.turn == "slip"
    return not (
        isinstance(recipe, Quarters) or in_strips or getattr(recipe, "centre", (0, 0)) != (0, 0)
    )
