# SPDX-License-Identifier: LGPL-2.1-or-later
"""Templates: the outlines that are cut are the layout's, seams over as asked, and what is said of
them is true."""

from __future__ import annotations

import math
import re
from functools import cache

import pytest
from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.matches.quarters import quarters
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.core.plane import Motion
from veneerwb.core.shop.cutting.piles import piles
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.templates.make import StackCut, stack_cuts, templates
from veneerwb.core.shop.templates.marks import inside
from veneerwb.core.shop.templates.over import EXACT, Over, seams_of
from veneerwb.core.shop.templates.template import BACK, FACE, Pin
from veneerwb.core.shop.templates.words import said

STOCK = Stock(900.0, 3000.0, 64, 0.6)
CABLE = [(140, 90), (140, 170), (260, 170), (260, 90)]
TOPS = {
    "round": Top.round(800.0),
    "oval": Top.oval(900.0, 620.0),
    "boat": Top.boat(1100.0, 560.0, 320.0),
    "outline": Top.outline(
        Polygon([(-450, -300), (470, -280), (430, 300), (-400, 320)], [CABLE])
    ),
}
BY_KEY = {match.key: match for match in MATCHES}


@cache
def sample(key, top):
    return BY_KEY[key].sample(STOCK, TOPS[top])


def ring(ways, top=None, oversize=10.0, **more):
    return radial(STOCK, top or Top.round(1200.0), ways, oversize=oversize, **more)


def one(layout, *args, **more):
    (template,) = templates(layout, *args, **more)
    return template


def seam_angle(template):
    """The angle between the two seams as cut, by their ends alone."""
    first, last = (template.cut[k] for k in seams_of(template.cut))
    a, b = (math.degrees(math.atan2(q[1] - p[1], q[0] - p[0]))
            for p, q in ((first.a, first.b), (last.b, last.a)))
    return (b - a) % 360.0


@pytest.mark.parametrize("ways", [4, 8, 12, 16, 24, 64])
def test_one_wedge_serves_a_round_ring_with_its_tip_on_the_origin(ways):
    layout = ring(ways)
    template = one(layout)
    assert template.positions == tuple(range(1, ways + 1)) and template.up == FACE
    assert template.turned == tuple(range(1, ways + 1, 2))
    assert template.tip == pytest.approx((0.0, 0.0), abs=1e-9)
    assert template.angle == pytest.approx(360.0 / ways, abs=1e-9) == seam_angle(template)
    assert template.area == pytest.approx(edges.area(layout.pieces[0].blank_edge), rel=1e-12)
    assert edges.area(template.nets[0]) == pytest.approx(layout.pieces[0].area, rel=1e-12)
    (rim,) = [s for s in template.cut if s.role == "rim"]
    assert isinstance(rim, Arc) and rim.radius == pytest.approx(610.0)
    assert template.revision == layout.revision and template.name == "round, 1200 mm"
    # The axis stands upright for a pointed wedge and reaches the rim.
    if ways > 4:
        assert template.axis.b == pytest.approx((0.0, 610.0), abs=1e-6)
        assert template.grain == pytest.approx(90.0, abs=1e-9)
    else:  # a square tip lies along its first seam
        assert template.axis.b == pytest.approx((610.0 / math.sqrt(2),) * 2, abs=1e-6)


@pytest.mark.parametrize(("key", "ways"), [
    *((key, ways) for key in TOPS for ways in (3, 8, 24)), ("round", 64), ("oval", 12),
])  # fmt: skip
def test_over_by_an_angle_opens_the_tip_and_turns_each_seam_by_half(ways, key):
    turn = "slip" if ways % 2 else "book"
    layout = ring(ways, TOPS[key], turn=turn)
    exact, over = templates(layout), templates(layout, Over(angle=0.4))
    assert len(exact) == len(over)
    for before, after in zip(exact, over):
        assert seam_angle(before) == pytest.approx(360.0 / ways, abs=1e-8)
        assert seam_angle(after) == pytest.approx(360.0 / ways + 0.4, abs=1e-7)
        assert after.cut_angle == pytest.approx(seam_angle(after), abs=1e-7)
        assert after.tip_cut == pytest.approx(before.tip, abs=1e-6) and after.shift == 0.0
        for k, m in zip(seams_of(before.cut), seams_of(after.cut)):
            (x, y), (u, v) = before.cut[k].slope(0.0), after.cut[m].slope(0.0)
            assert math.degrees(math.asin(abs(x * v - y * u))) == pytest.approx(0.2, abs=1e-7)
        assert after.shape.buffer(0.02).contains(before.shape)
        assert [edges.area(n) for n in after.nets] == [edges.area(n) for n in before.nets]


# Plain geometry: both edges of a wedge moved by w move its tip by w / sin(180 / n); 3 mm: 15.4 mm
# at 16 ways, 23.0 mm at 24.
@pytest.mark.parametrize(("ways", "shift"), [(16, 15.4), (24, 23.0)])
def test_over_by_a_width_slides_the_tip_out_and_keeps_the_angle(ways, shift):
    template = one(ring(ways), Over(width=3.0))
    assert template.shift == pytest.approx(shift, abs=0.05)
    assert seam_angle(template) == pytest.approx(360.0 / ways, abs=1e-9) == template.cut_angle
    assert template.tip == pytest.approx((0.0, 0.0), abs=1e-9)
    first = template.cut[seams_of(template.cut)[0]]
    net = template.nets[0][0]
    (x, y), (ux, uy) = first.a, net.slope(0.0)
    assert ux * (y - net.a[1]) - uy * (x - net.a[0]) == pytest.approx(-3.0, abs=1e-9)
    assert any(f"{template.shift:.1f} mm further out" in text for text in said(template, Lengths()))


def test_each_seam_edge_can_have_its_own_over():
    layout = ring(12)
    template = one(layout, [Over(), Over(angle=0.4)])
    assert seam_angle(template) == pytest.approx(30.2, abs=1e-8)
    exact = one(layout)
    first, last = seams_of(template.cut)
    assert template.cut[first].slope(0.0) == pytest.approx(exact.cut[first].slope(0.0), abs=1e-12)
    assert template.cut[last].slope(0.0) != pytest.approx(exact.cut[last].slope(0.0), abs=1e-6)
    text = next(t for t in said(template, Lengths()) if t.startswith("The seam edges"))
    assert "exactly, 0.2" in text
    with pytest.raises(VeneerError) as caught:
        templates(layout, [Over(), Over(), Over()])
    assert caught.value.code == "wrong-overs" and "2 seam edges" in str(caught.value)


@pytest.mark.parametrize("top", TOPS)
@pytest.mark.parametrize("key", BY_KEY)
def test_every_match_has_templates_that_hold_its_pieces(key, top):
    layout = sample(key, top)
    found = templates(layout, Over(width=1.0), tool=3.0)
    cuts = [t for t in found if t.code.startswith("cut")]
    assert sorted(p for t in cuts for p in t.positions) == [p.position for p in layout.pieces]
    if top in ("oval", "outline"):
        exact = sum(edges.area(t.cut) for t in templates(layout) if t.code.startswith("cut"))
        assert exact == pytest.approx(sum(cut.outline.area for cut in layout.cuts), rel=2e-4)
    for template in found:
        assert all(template.shape.buffer(0.02).contains(edges.polygon(n)) for n in template.nets)
        assert edges.polygon(template.cut).exterior.is_ccw
        for a, b in zip(template.cut, [*template.cut[1:], template.cut[0]]):
            assert math.dist(a.end, b.start) <= 1e-5
        # The tool's line lies half its width outside, nowhere nearer.
        line = edges.polygon(template.tool_line)
        assert line.exterior.distance(template.shape) == pytest.approx(1.5, abs=0.02)
        assert line.contains(template.shape)


@pytest.mark.parametrize("top", TOPS)
@pytest.mark.parametrize("key", BY_KEY)
def test_single_leaves_are_cut_as_the_top_shows_them(key, top):
    """The true shape of each piece is its outline on the top, as it is or turned, never mirrored:
    the show face is up."""
    layout = sample(key, top)
    found = templates(layout, singly=True)
    pieces = {piece.position: piece for piece in layout.pieces}
    assert sorted(p for t in found for p in t.positions) == sorted(pieces)
    for template in found:
        for position in template.positions:
            piece = pieces[position]
            assert template.up == (BACK if piece.turned else FACE)
            grain = piece.onto_bundle.inverse()
            (x0, y0), (x1, y1) = grain.point((0.0, 0.0)), grain.point((0.0, 1.0))
            turn = template.grain - math.degrees(math.atan2(y1 - y0, x1 - x0))
            turned = Motion(turn).apply_to(piece.outline)
            (a, b, _, _), (c, d, _, _) = turned.bounds, edges.polygon(template.nets[0]).bounds
            moved = Motion(turn).apply([s.start for s in piece.edge]) + (c - a, d - b)
            near = edges.polygon(template.nets[0]).exterior
            assert all(near.distance(Polygon([p] * 3).centroid) < 0.03 for p in moved)
        said_up = "BACK" if template.up == BACK else "FACE"
        assert said_up in said(template, Lengths())[0]
        assert ("Mirror image" in said(template, Lengths())[0]) == (template.up == BACK)


def test_an_oval_has_one_cut_round_all_pieces_and_a_template_for_each_that_differs():
    layout = ring(24, Top.oval(1500.0, 900.0))
    found = templates(layout)
    cut, *others = found
    assert cut.code == "cut-1" and len(cut.nets) == 12 == len(others)
    whole = unary_union([
        Motion(90.0 - layout.recipe.placement.angle).apply_to(p.onto_bundle.apply_to(p.blank))
        for p in layout.pieces
    ])
    assert cut.area == pytest.approx(whole.area, abs=3.0)
    assert {type(s).__name__ for s in cut.cut} == {"Line", "Curve"}  # true, and not a polygon
    assert sorted(p for t in others for p in t.positions) == list(range(1, 25))
    for template in others:
        assert len(template.positions) == 2 and len(template.nets) == 1
        piece = layout.pieces[template.positions[0] - 1]
        assert template.area == pytest.approx(edges.area(piece.blank_edge), rel=1e-9)


def test_the_union_of_crossing_rims_is_exact():
    """Two mirrored wedges with a slanting rim: the union's corner lies on the axis where the rims
    cross, and its area is by plain geometry."""
    layout = ring(4, Top.rectangle(1000.0, 600.0), oversize=0.0, start=75.0)
    cut = templates(layout)[0]
    pieces = [edges.moved(p.blank_edge, p.onto_bundle) for p in layout.pieces]
    exact = unary_union([Polygon([s.a for s in piece]) for piece in pieces]).area
    assert all(isinstance(s, Line) for s in cut.cut)
    assert cut.area == pytest.approx(exact, rel=1e-12)


def test_set_out_reaches_as_far_as_the_seams_and_has_the_angle_that_is_cut():
    template = one(ring(12), Over(angle=0.4))
    out = template.set_out()
    assert out.angle == pytest.approx(30.4) and out.base == 1000.0
    assert out.offset == pytest.approx(1000.0 * math.tan(math.radians(15.2)))
    text = next(t for t in said(template, Lengths()) if t.startswith("Set out"))
    assert "1000 mm" in text and f"{out.offset:.2f} mm" in text
    inches = next(t for t in said(template, Lengths("inch")) if t.startswith("Set out"))
    base, offset = (float(v) for v in re.findall(r"([\d.]+) in\b", inches))
    assert base == 30.0 and offset == pytest.approx(30.0 * math.tan(math.radians(15.2)), abs=6e-4)


def test_a_chosen_base_is_what_the_angle_is_set_out_over():
    template = one(ring(8), base=900.0)
    # Henderson, Making Templates for a Sunburst (2007): tan 22.5 deg x 22 in = 9.112698 in.
    assert template.set_out().base == 900.0
    inches = one(ring(8), base=22.0 * 25.4)
    assert inches.set_out().offset / 25.4 == pytest.approx(9.112698, abs=5e-7)
    text = next(t for t in said(inches, Lengths("inch")) if t.startswith("Set out"))
    assert "middle 22 in" in text and "9.113 in square" in text


def test_words_give_what_the_template_holds():
    layout = ring(12)
    text = " ".join(said(one(layout, tool=6.0, rests="Rests on the figure."), Lengths()))
    for part in (
        "FACES up", "marked TIP", "Positions 1 to 12, from the leaves of the same numbers",
        "when laid: the odd ones", "cut exactly", "rim is cut 10.0 mm over", "counter-clockwise",
        "on its right, its middle 3 mm off", "Fit to page shrinks a sheet", "Dry-lay before glue",
        "Rests on the figure.",
    ):
        assert part in text, part
    spread = " ".join(said(one(ring(8, order=[3, 1, 2, 4, 5, 6, 7, 8])), Lengths()))
    assert "Positions 1 (leaf 3), 2 (leaf 1), 3 (leaf 2), 4 (leaf 4)" in spread
    slip = " ".join(said(one(ring(12, turn="slip")), Lengths("inch")))
    assert "when laid" not in slip and "13/32 in over" in slip and " mm over" not in slip


def test_pins_move_with_the_cut():
    layout = ring(12, placement=(450.0, 300.0, 80.0))
    template = one(layout, cuts=[StackCut(tuple(range(1, 13)), "", (
        Pin((450.0, 250.0), "A"), Pin((450.0, 1000.0), "B", 5.0)))])
    a, b = template.pins
    assert math.dist(a.at, b.at) == pytest.approx(750.0)
    assert math.dist(a.at, template.tip) == pytest.approx(50.0)
    assert (b.name, b.diameter) == ("B", 5.0)
    assert template.grain == pytest.approx(100.0)  # the axis stands upright, the grain aslant
    x0, y0, _, y1 = template.extents
    assert y0 <= a.at[1] - 1.5 and y1 >= b.at[1] + 2.5 and x0 <= a.at[0] - 1.5


@pytest.mark.parametrize(
    ("code", "make"),
    [
        ("out-of-range", lambda: Over(angle=-0.1)),
        ("out-of-range", lambda: Over(width=51.0)),
        ("not-a-number", lambda: Over(angle=math.nan)),
        ("two-overs", lambda: Over(angle=0.1, width=1.0)),
        ("out-of-range", lambda: templates(ring(12), tool=-1.0)),
        ("out-of-range", lambda: templates(ring(12), base=-1.0)),
        ("no-tip", lambda: templates(BY_KEY["book"].sample(STOCK, TOPS["round"]), Over(0.2))),
        ("no-tip", lambda: templates(BY_KEY["radial in strips"].sample(STOCK, TOPS["round"]),
                                     Over(0.2), singly=True)),
    ],
)
def test_what_cannot_be_is_said_in_one_sentence(code, make):
    with pytest.raises(VeneerError) as caught:
        make()
    assert caught.value.code == code
    assert str(caught.value).endswith(".") and "\n" not in str(caught.value)


def test_templates_follow_the_cutting_plan_where_it_parts_the_stack():
    """An oval cut by outlines: a template for each stack, and none for pieces that differ."""
    layout = ring(12, Top.oval(1500.0, 900.0))
    stacks = piles(layout, by_shape=True)
    pins = {stacks[1].name: [Pin((100.0, 200.0), "1")]}
    found = templates(layout, cuts=stack_cuts(stacks, pins))
    assert len(found) == len(stacks) == 6 and all(t.code.startswith("cut") for t in found)
    for template, pile in zip(found, stacks):
        assert template.positions == pile.cuts[0].positions and len(template.nets) == 1
        assert template.title.endswith(f"stack {pile.name}")
        assert len(template.pins) == (pile is stacks[1])
        assert template.area == pytest.approx(pile.outlines.area, rel=1e-4)


def test_exact_seams_change_nothing_and_a_diamond_lies_along_its_sides():
    layout = quarters(STOCK, Top.rectangle(1200.0, 800.0), "diamond", oversize=8.0)
    template = one(layout, EXACT)
    x0, y0, x1, y1 = template.extents
    assert (x1 - x0, y1 - y0) == pytest.approx((608.0, 408.0), abs=1e-6)
    assert template.tip == pytest.approx((0.0, 0.0), abs=1e-9)
    assert abs(math.remainder(template.grain - 135.0, 180.0)) == pytest.approx(0.0, abs=1e-9) or (
        abs(math.remainder(template.grain - 45.0, 180.0)) == pytest.approx(0.0, abs=1e-9))


def test_files_for_single_leaves_have_the_leaf_s_pins_mirrored_with_a_turned_piece():
    layout = ring(12, Top.round(800.0))
    pins = {"A": [Pin((410.0, 990.0), "pin 1"), Pin((500.0, 2000.0), "pin 2")]}
    made = templates(layout, singly=True, cuts=stack_cuts(piles(layout), pins))
    assert [t.up for t in made] == [BACK, FACE] and len(made[0].positions) == 6
    by_position = {piece.position: piece for piece in layout.pieces}
    for template in made:
        piece = by_position[template.positions[0]]
        # Plain geometry: from the tip to each pin, and from corner to corner, as in the bundle.
        tip = piece.onto_bundle.point((0.0, 0.0))
        for pin, given in zip(template.pins, pins["A"]):
            assert math.dist(pin.at, template.tip) == pytest.approx(math.dist(given.at, tip))
        (ax, ay), (bx, by) = (p.at for p in template.pins)
        (cx, cy), (dx, dy) = ((x - tip[0], y - tip[1]) for x, y in (p.at for p in pins["A"]))
        turn = (cx * dy - cy * dx) * (-1.0 if template.up == BACK else 1.0)
        assert ax * by - ay * bx == pytest.approx(turn)
        assert any("pin holes" in text for text in said(template, Lengths()))


def test_single_leaves_of_two_stacks_with_other_pins_have_files_of_their_own():
    layout = quarters(STOCK, Top.rectangle(600.0, 600.0), "diamond", cuts="shape")
    cuts = [StackCut((p.position,), "", (Pin((0.0, 10.0 * p.position)),)) for p in layout.pieces]
    alone = templates(layout, singly=True)
    pinned = templates(layout, singly=True, cuts=cuts)
    assert len(pinned) == 4 > len(alone)


def test_a_piece_whose_seam_lies_within_the_cut_is_marked_by_the_pins_of_its_leaf():
    layout = quarters(STOCK, Top.rectangle(900.0, 600.0), "box")
    stacks = piles(layout)
    pins = {"A": [Pin((20.0, 20.0), "pin 1"), Pin((800.0, 2000.0), "pin 2")]}
    made = {t.code: t for t in templates(layout, cuts=stack_cuts(stacks, pins))}
    again = stacks[0].cuts[0].again
    assert again and all(bool(t.pins) == (set(t.positions) <= set(again))
                         for code, t in made.items() if code.startswith("piece"))


def test_stacks_that_are_cut_alike_share_a_template_that_names_them():
    layout = ring(12, Top.round(800.0), cuts="own")
    stacks = piles(layout)
    assert len(stacks) == 12
    same = [Pin((20.0, 20.0), "pin 1"), Pin((800.0, 2000.0), "pin 2")]
    template = one(layout, cuts=stack_cuts(stacks, {pile.name: same for pile in stacks}))
    assert template.positions == tuple(range(1, 13)) and "stacks A, B, C" in template.title
    assert template.turned == (1, 3, 5, 7, 9, 11)
    other = {pile.name: same if pile.name != "C" else [Pin((30.0, 20.0))] for pile in stacks}
    apart = templates(layout, cuts=stack_cuts(stacks, other))
    assert [t.positions for t in apart] == [tuple(n for n in range(1, 13) if n != 3), (3,)]
    assert apart[1].title == "Template of the cut 2 of 2, stack C"


def test_words_are_placed_where_the_geometry_library_cannot_shrink_their_room():
    # Narrow rooms of several parts, whose buffer inwards fails in shapely 1.8.
    stock, top = Stock(420.0, 1400.0, 24, 0.6), Top.oval(900.0, 620.0)
    layout = BY_KEY["radial off the middle"].sample(stock, top)
    (template,) = (t for t in templates(layout, Over(width=2.0), 3.0) if t.code == "piece-3")
    assert any(isinstance(mark, Letters) for mark in inside(template))
