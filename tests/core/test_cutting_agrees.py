# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan agrees with the templates: on a machine and on a saw, with seams over, and where
a seam lies within the cut."""

from __future__ import annotations

import pytest
from shapely.geometry import LinearRing, LineString, Point
from shapely.ops import unary_union

from veneerwb.core import Stock, Top, VeneerError, quarters, radial
from veneerwb.core.leaf import ranges
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.cutting.methods import KNIFE, MACHINE, SAW, method
from veneerwb.core.shop.cutting.offcuts import offcuts
from veneerwb.core.shop.cutting.piles import piles
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.templates.make import templates
from veneerwb.core.shop.templates.over import EXACT, Over

STOCK = Stock(420.0, 1400.0, 24, 0.6)
TOPS = (Top.round(800.0), Top.oval(1000.0, 700.0))


def texts(layout, how, **more):
    return {step.kind: step for stack in cutting_plan(layout, how, **more).stacks
            for step in stack.steps}


def test_a_machine_runs_round_each_leaf_the_side_up_that_its_file_has():
    layout = radial(STOCK, TOPS[1], 24, oversize=5.0)
    made = texts(layout, MACHINE)
    turned = [p.position for p in layout.pieces if p.turned]
    assert f"the backs of positions {ranges(turned)} are up" in str(made["lay"].what)
    assert "the file's two pins" in str(made["close"].what) and "seam" not in made
    way = LineString(made["round"].line)
    (cut,) = piles(layout)[0].cuts
    assert way.is_closed and way.length == pytest.approx(cut.outline.exterior.length)
    assert LinearRing(way.coords).is_ccw  # the tool on the right runs outside
    assert "trimmed" not in str(made["free"].what) and "cut back" not in str(made["free"].what)
    rim = next(side for side in cut.sides if side.kind == "rim")
    assert LineString(rim.points).distance(Point(made["round"].line[0])) < 0.1
    parted = quarters(STOCK, Top.rectangle(900.0, 600.0), "box")
    assert "again" not in texts(parted, MACHINE) and "outline" not in texts(parted, MACHINE)


@pytest.mark.parametrize("how", [KNIFE, SAW], ids=["knife", "saw"])
def test_a_seam_within_the_common_outline_is_marked_by_the_pins_and_cut_with_the_piece_held(how):
    made = texts(quarters(STOCK, Top.rectangle(900.0, 600.0), "box"), how)
    kinds = list(made)
    assert kinds.index("prick") < kinds.index("outline") < kinds.index("lay")
    again = made["again"]
    assert again.piece and again.held and again.waste_held and "by knife" in str(again.what)
    assert "straightedge" in again.held and "Fresh blade" in again.caution


def test_a_saw_has_a_line_on_its_board_and_new_boards_for_each_lift():
    made = texts(radial(STOCK, TOPS[0], 24), method("saw", most=8.0))
    assert "template" in str(made["close"].what) and "the line" in str(made["close"].what)
    assert "two new boards" in str(made["free"].what) and "same pins" not in str(made["free"].what)
    assert "boards of its own" in str(made["test"].what)
    assert "same pins" in str(texts(radial(STOCK, TOPS[0], 24), KNIFE)["free"].what)


def test_of_several_tops_it_is_said_which_backs_are_up():
    top = Top.round(560.0)
    layouts = [radial(STOCK, top, 12, turned=turned, placement=(210.0, y))
               for turned, y in (("odd", 50.0), ("even", 600.0))]
    made = texts(layouts, MACHINE)
    assert "1, 3, 5, 7, 9, 11 of top 1; 2, 4, 6, 8, 10, 12 of top 2 are up" in str(
        made["lay"].what)


AGREED = [("radial book", "oval"), ("box", "rectangle"), ("diamond", "rectangle"),
          ("herringbone", "rectangle"), ("rings", "round"), ("book", "oval")]


@pytest.mark.parametrize(("key", "shape"), AGREED)
@pytest.mark.parametrize("over", [EXACT, Over(width=3.0)], ids=["exact", "over"])
def test_the_plan_cuts_what_layout_and_templates_have(key, shape, over):
    match = next(m for m in MATCHES if m.key == key)
    top = {"oval": TOPS[1], "round": TOPS[0], "rectangle": Top.rectangle(700.0, 500.0)}[shape]
    layout = match.sample(STOCK, top)
    cuts = {cut.positions: cut for pile in piles(layout, over=over) for cut in pile.cuts}
    files = {t.positions: t for t in templates(layout, over) if t.kind == "stack"}
    assert cuts.keys() == files.keys()
    for positions, cut in cuts.items():
        assert cut.outline.area == pytest.approx(files[positions].area, rel=1e-4)
        length = sum(side.length for side in cut.sides)
        assert length == pytest.approx(cut.outline.exterior.length, abs=1.5)
    if over.exact:
        assert unary_union([cut.outline for cut in cuts.values()]).area == pytest.approx(
            unary_union([cut.outline for cut in layout.cuts]).area)


def test_pins_boards_lines_and_offcuts_reckon_with_seams_that_are_cut_over():
    layout = radial(STOCK, Top.round(800.0), 24, oversize=5.0)
    over = Over(width=6.0)
    (template,) = templates(layout, over)
    plan = cutting_plan(layout, SAW, over=over)
    (stack,), (exact,) = plan.stacks, cutting_plan(layout, SAW).stacks
    # Plain geometry: 6 mm / sin 7.5 deg = 46.0 mm that the tip lies further out.
    down = exact.pile.cuts[0].outline.bounds[1] - stack.pile.cuts[0].outline.bounds[1]
    assert down == pytest.approx(45.97, abs=0.01) == template.shift
    assert stack.board.bounds[1] == pytest.approx(exact.board.bounds[1] - down)
    for pin in stack.pins:
        assert stack.pile.cuts[0].outline.distance(Point(pin)) >= SAW.clear - 1e-6
    last = [step for step in stack.steps if step.at_blade][-1]
    assert last.kept.buffer(0.05).covers(stack.pile.cuts[0].outline)
    assert any("cut over, 6 mm on each" in str(note) for note in plan.notes)
    left = [sum(rest.left for rest in offcuts(layout, SAW, over=one)) for one in (EXACT, over)]
    assert left[1] < left[0]
    beside = (layout.recipe.placement.x + 122.0, layout.recipe.placement.y)
    both = [layout, radial(STOCK, Top.round(800.0), 24, placement=beside, oversize=5.0)]
    assert cutting_plan(both, KNIFE).stacks
    with pytest.raises(VeneerError, match=r"lie 4\.\d+ mm apart"):
        cutting_plan(both, method("knife", kerf=6.0), over=over)
