# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel built up: its parts fill it, layer by layer, without gap and without overlap."""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.buildup import (
    Backer,
    Border,
    BuildUp,
    Core,
    Crossband,
    Disc,
    Lipping,
    Show,
    Star,
    Stringing,
)
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line

ROUND, SQUARE, EIGHT = Top.round(1200.0), Top.polygon(4, 1200.0), Top.polygon(8, 900.0)


def build_up(**changed):
    """A panel with everything in it."""
    of = {
        "show": Show(0.6, "walnut, black"),
        "core": Core(18.0, "birch ply"),
        "backer": Backer(0.6, "walnut, black"),
        "crossband_above": Crossband(1.5, "poplar"),
        "crossband_below": Crossband(1.5, "poplar"),
        "lipping": Lipping(12.0, "walnut, black"),
        "border": Border(60.0, "walnut, black", 8, "following"),
        "stringing": Stringing(2.0, "maple, sugar"),
        "inlay": Disc(50.0, "maple, sugar"),
    }
    return BuildUp(**of | changed)


def only(**parts):
    return BuildUp(Show(0.6), Core(18.0), **parts)


def chords(region, step=1.0):
    """A polygon whose arcs are sampled at whole steps of direction, so that what shares an arc
    shares its chords."""
    def corners(loop):
        out = []
        for s in loop:
            out.append(s.start)
            if isinstance(s, Arc):
                low, high = sorted((s.begin, s.begin + s.sweep))
                turns = np.arange(math.floor(low / step) + 1, math.ceil(high / step - 1e-9)) * step
                turns = turns if s.sweep > 0.0 else turns[::-1]
                out += [s.at((turn - s.begin) / s.sweep) for turn in turns]
        return out
    return Polygon(corners(region.outer), [corners(hole) for hole in region.holes])


def layers(parts):
    """The parts that lie at one height, by their layer; those that go through all in each."""
    flat = {part.layer for part in parts} - {"all layers"}
    return {name: [p for p in parts if p.layer in (name, "all layers")] for name in flat}


def covering(parts, points):
    """How many of the parts cover each of the points; points near an edge are left out."""
    areas = [part.region.polygon for part in parts]
    near = [p for p in map(Point, points) if all(a.boundary.distance(p) > 0.05 for a in areas)]
    assert len(near) > 50
    return {sum(area.covers(point) for area in areas) for point in near}


def tiles(parts, top):
    """Every layer makes up the finished top, exactly."""
    for here in layers(parts).values():
        assert math.fsum(p.area for p in here) == pytest.approx(top.area, rel=1e-9)
        assert all(p.region.polygon.is_valid and p.area > 0.0 for p in here)
        for loop in (loop for part in here for loop in part.region.loops):
            gaps = [math.dist(a.end, b.start) for a, b in zip(loop, [*loop[1:], loop[0]])]
            assert max(gaps) <= 1e-6 and min(s.length for s in loop) > 1e-5


def no_overlap(parts):
    for here in layers(parts).values():
        for a, b in itertools.combinations([chords(p.region) for p in here], 2):
            assert a.intersection(b).area <= 1e-6


def is_chorded(parts):
    """Whether every arc of the parts is about a joint that `chords` samples alike on both sides."""
    segments = [s for p in parts for loop in p.region.loops for s in loop]
    return all(isinstance(s, Line) or _whole(s) for s in segments)


def _whole(arc):
    return isinstance(arc, Arc) and all(
        abs(turn - round(turn)) < 1e-9 for turn in (arc.begin, arc.begin + arc.sweep)
    )


# --- the parts fill the panel ------------------------------------------------------------------

OVAL, RACETRACK = Top.oval(1800.0, 1000.0), Top.racetrack(2000.0, 900.0)
BOAT, OBLONG = Top.boat(2400.0, 1100.0, 800.0), Top.rectangle(1500.0, 700.0)
HOLLOW = Top.outline(Polygon([(-500, -400), (500, -400), (500, 400), (100, 100), (-500, 400)]))
KINDS = {
    "oval": (OVAL, build_up(border=Border(80.0, "", 8, "following"))),
    "oval, lipping in six": (OVAL, build_up(lipping=Lipping(20.0, "", 6, "after veneering"))),
    "racetrack": (RACETRACK, build_up(border=Border(70.0, "", 6, "following"))),
    "boat": (BOAT, build_up(border=Border(90.0), inlay=Star(16, 150.0, 60.0))),
    "boat, long sides in three": (BOAT, build_up(border=Border(90.0, "", 3, "following"))),
    "oblong": (OBLONG, build_up(border=Border(100.0, kind="straight"))),
    "hollow": (HOLLOW, build_up(border=Border(40.0, "", 2, "following"), inlay=None)),
    "everything on a round top": (ROUND, build_up()),
    "seven parts round": (ROUND, build_up(border=Border(60.0, "", 7, "following"))),
    "showing lipping": (ROUND, build_up(lipping=Lipping(15.0, segments=6, when="after veneering"))),
    "ring in one": (ROUND, build_up(border=Border(40.0, kind="following"))),
    "star": (EIGHT, build_up(border=Border(60.0, kind="mitred"), inlay=Star(8, 70.0, 30.0))),
    "mitred square": (SQUARE, build_up(border=Border(90.0))),
    "straight square": (SQUARE, build_up(border=Border(90.0, kind="straight"))),
    "straight pentagon": (Top.polygon(5, 800.0), build_up(border=Border(50.0, kind="straight"))),
    "three to a side": (Top.polygon(3, 900.0), build_up(border=Border(50.0, "", 3, "following"))),
    "nothing but show and core": (ROUND, only()),
    "inlay only": (SQUARE, only(inlay=Star(5, 100.0, 40.0, turn=10.0))),
    "stringing at the edge": (SQUARE, only(stringing=Stringing(3.0))),
    "64 sides": (Top.polygon(64, 1000.0), only(border=Border(80.0))),
}


@pytest.mark.parametrize("kind", KINDS)
def test_the_parts_of_each_layer_tile_the_top_and_do_not_overlap(kind):
    top, panel = KINDS[kind]
    parts = panel.parts(top)
    tiles(parts, top)
    if is_chorded(parts):
        no_overlap(parts)
    else:
        (left, right), (low, high) = edges.extent(top.edge, 0.0), edges.extent(top.edge, 90.0)
        points = np.random.default_rng(5).uniform((left, low), (right, high), (120, 2))
        inside = [p for p in points if top.polygon_mm.covers(Point(p))]
        for here in layers(parts).values():
            assert covering(here, inside) == {1}


@pytest.mark.parametrize("kind", KINDS)
def test_layers_lie_one_on_another_and_the_show_veneer_on_nought(kind):
    top, panel = KINDS[kind]
    parts = panel.parts(top)
    levels = sorted({p.z for p in parts if p.layer != "all layers"})
    assert all(low[1] == high[0] for low, high in itertools.pairwise(levels))  # the very plane
    assert levels[-1] == (0.0, 0.6)
    assert all(p.z == (levels[0][0], 0.6) for p in parts if p.layer == "all layers")
    assert panel.thickness == pytest.approx(levels[-1][1] - levels[0][0])
    volume = math.fsum(p.volume for p in parts)
    assert volume == pytest.approx(top.area * panel.thickness, rel=1e-9)


@settings(max_examples=12, deadline=None)
@given(
    sides=st.integers(3, 12), across=st.floats(400.0, 3000.0), border=st.floats(5.0, 90.0),
    line=st.floats(0.5, 6.0), segments=st.integers(1, 9), inlay=st.floats(5.0, 60.0),
    kind=st.sampled_from(["mitred", "following"]), shows=st.booleans(), is_round=st.booleans(),
)  # fmt: skip
def test_any_sizes_tile(sides, across, border, line, segments, inlay, kind, shows, is_round):
    top = Top.round(across) if is_round else Top.polygon(sides, across)
    kind = "following" if is_round else kind
    when = "after veneering" if shows else "before veneering"
    parts = build_up(
        border=Border(border, "", segments, kind), stringing=Stringing(line), inlay=Disc(inlay),
        lipping=Lipping(8.0, when=when),
    ).parts(top)  # fmt: skip
    tiles(parts, top)


# --- where each part lies ----------------------------------------------------------------------


def named(parts):
    return {part.name: part for part in parts}


def test_a_round_top_from_the_edge_inwards():
    found = named(build_up().parts(ROUND))
    arcs = [s for s in found["border 3"].region.outer if isinstance(s, Arc)]
    assert [arc.radius for arc in arcs] == [600.0, 540.0]
    line = found["stringing line"].region
    assert (line.outer[0].radius, line.holes[0][0].radius) == (540.0, 538.0)
    field = found["field"].region
    assert (field.outer[0].radius, field.holes[0][0].radius) == (538.0, 25.0)
    assert found["inlay"].region.outer[0].radius == 25.0
    assert found["core"].region.outer[0].radius == 588.0
    lipping = found["lipping"]
    assert lipping.layer == "core" and lipping.z == found["core"].z
    assert lipping.bent == pytest.approx((math.tau * 600.0, 12.0))


def test_a_lipping_after_veneering_is_as_high_as_the_panel_and_shows():
    found = named(build_up(lipping=Lipping(15.0, when="after veneering")).parts(ROUND))
    assert found["lipping"].thickness == pytest.approx(22.2)
    for name in ("backer", "core", "crossband above", "crossband below"):
        assert found[name].region.outer[0].radius == 585.0
    assert found["field"].region.outer[0].radius == 585.0 - 62.0


def test_a_mitre_runs_from_corner_to_corner():
    found = named(only(border=Border(90.0)).parts(SQUARE))
    bottom = np.array(edges.points(found["border 1"].region.outer))
    assert bottom == pytest.approx(
        np.array([(-600, -600), (600, -600), (510, -510), (-510, -510)])
    )
    assert [found[f"border {n}"].grain for n in (1, 2, 3, 4)] == [0.0, 90.0, 0.0, 90.0]


def test_straight_strips_butt_and_every_second_one_runs_through():
    found = named(only(border=Border(90.0, kind="straight")).parts(SQUARE))
    sizes = np.array([found[f"border {n}"].size for n in (1, 2, 3, 4)])
    assert sizes == pytest.approx(np.array([(1200, 90), (1020, 90), (1200, 90), (1020, 90)]))


def test_with_an_odd_number_of_sides_each_straight_strip_runs_through_at_one_end():
    parts = only(border=Border(50.0, kind="straight")).parts(Top.polygon(5, 800.0))
    sizes = [part.size for part in parts if part.item == "border"]
    assert len(sizes) == 5 and all(size == pytest.approx(sizes[0]) for size in sizes)
    assert sizes[0][1] == pytest.approx(50.0)


def test_grain_along_and_across_the_border():
    for grain, turned in (("along", 0.0), ("across", 90.0)):
        parts = only(border=Border(60.0, "", 6, "following", grain)).parts(ROUND)
        found = [p.grain for p in parts if p.item == "border"]
        # the first of six starts at the bottom (-90 degrees): its chord points to -60 + 90 degrees
        assert found[:3] == pytest.approx([(30.0 + turned + 60.0 * k) % 180.0 for k in range(3)])


def test_segments_of_a_round_border_are_alike_and_square_to_the_edge():
    parts = only(border=Border(60.0, "", 12, "following")).parts(ROUND)
    strips = [p for p in parts if p.item == "border"]
    assert len(strips) == 12
    for part in strips:
        assert part.area == pytest.approx(math.pi * (600.0**2 - 540.0**2) / 12.0, rel=1e-12)
        joints = [s for s in part.region.outer if s.role == "seam"]
        assert len(joints) == 2
        for joint in joints:  # along the radius
            (ax, ay), (bx, by) = joint.a, joint.b
            assert abs(ax * by - ay * bx) < 1e-6 and joint.length == pytest.approx(60.0)


def test_a_star_has_its_tips_where_it_says():
    star = Star(5, 100.0, 40.0, turn=90.0)
    tips = edges.points(star.outline)
    assert tips[0] == pytest.approx((0.0, 100.0))
    assert [math.hypot(*tip) for tip in tips] == pytest.approx([100.0, 40.0] * 5)
    # plain geometry: 2 n triangles of half r R sin(180 / n)
    assert edges.area(star.outline) == pytest.approx(
        5 * 100.0 * 40.0 * math.sin(math.pi / 5), rel=1e-12
    )


# --- the field ---------------------------------------------------------------------------------


def test_a_match_lies_on_the_field_and_fills_it():
    panel = build_up()
    field = panel.field(ROUND)
    assert field.name == "round, 1200 mm, less 62 mm all round"
    part = named(panel.parts(ROUND))["field"]
    assert field.area == pytest.approx(part.area, rel=1e-12)
    layout = radial(Stock(500.0, 700.0, 12, 0.6), only(border=panel.border).field(ROUND), 12)
    assert math.fsum(p.area for p in layout.pieces) == pytest.approx(math.pi * 540.0**2, rel=1e-9)


@pytest.mark.parametrize("by", [0.0, 10.0, 62.0, 80.0])
def test_the_field_grows_into_the_border_and_beyond(by):
    grown = build_up().field(ROUND).grown(by)
    assert edges.area(grown) == pytest.approx(math.pi * (538.0 + by) ** 2, rel=1e-12)


# --- openings ----------------------------------------------------------------------------------


def with_opening(x, y, radius, top=ROUND):
    hole = (Arc((x, y), radius, 0.0, -360.0),)
    return Top(top.words, top.size, top.edge, (hole,), top.others)


@pytest.mark.parametrize(("x", "y", "radius", "home"), [
    (200.0, 100.0, 30.0, "field"), (0.0, 0.0, 10.0, "inlay"), (215.0, -515.0, 15.0, "border 1"),
])  # fmt: skip
def test_an_opening_goes_through_every_layer(x, y, radius, home):
    top = with_opening(x, y, radius)
    parts = build_up().parts(top)
    tiles(parts, top)
    holed = [p.name for p in parts if top.holes[0] in p.region.holes]
    assert holed == ["backer", "crossband below", "core", "crossband above", home]
    field = build_up().field(top)
    assert (top.holes[0] in field.holes) == (home == "field")


@pytest.mark.parametrize(("x", "radius"), [(540.0, 10.0), (0.0, 25.0), (20.0, 10.0), (0.0, 30.0)])
def test_an_opening_across_a_joint_is_refused(x, radius):
    with pytest.raises(VeneerError, match="does not lie within a single part of the show face"):
        build_up().parts(with_opening(x, 0.0, radius))
