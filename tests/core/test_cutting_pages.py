# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of the cutting plan and its offcuts: all can be read, and say what the plan holds."""

from __future__ import annotations

import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.cutting.methods import KNIFE, MACHINE, METHODS, SAW, method
from veneerwb.core.shop.cutting.offcuts import offcuts
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.cutting.said import ERROR, Said, in_units, plain
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS
from veneerwb.core.shop.pages.cutting import pages

STOCK = Stock(420.0, 1400.0, 24, 0.6)


def made(layout, how=SAW, paper="A3", unit="mm", spares=0):
    look = Look(paper=PAPERS[paper], lengths=Lengths(unit), title="A top <&>", revision="AB12CD",
                rests="This sheet rests on the figure in the photographs.")
    plan = cutting_plan(layout, how, spares)
    return plan, pages(plan, offcuts(layout, how, spares), look)


def words(found):
    return " ".join(m.text for page in found for m in page.drawing.marks if isinstance(m, Letters))


@pytest.mark.parametrize("match", MATCHES, ids=lambda m: m.key)
def test_every_match_can_be_read(match):
    _, found = made(match.sample(STOCK, Top.oval(1000.0, 700.0)), METHODS["saw"])
    assert [t for page in found for t in troubles(page)] == []


@pytest.mark.parametrize(
    ("ways", "how", "paper", "unit"),
    [(3, KNIFE, "A4", "mm"), (12, SAW, "A4 upright", "both"), (24, KNIFE, "ANSI B", "inch"),
     (64, SAW, "A3", "both"), (12, MACHINE, "A1", "mm"), (24, SAW, "ANSI A upright", "inch")],
)  # fmt: skip
def test_any_ways_on_any_paper_in_any_unit_can_be_read(ways, how, paper, unit):
    stock = Stock(900.0, 1400.0, ways + 2, 0.6)
    _, found = made(radial(stock, Top.round(900.0), ways, "slip"), how, paper, unit, 2)
    assert [t for page in found for t in troubles(page)] == []
    assert {page.paper.name for page in found} == {paper}


def test_every_step_stands_there_with_what_holds_and_its_caution():
    plan, found = made(radial(STOCK, Top.round(800.0), 12), SAW, spares=2)
    said = words(found)
    for step in plan.stacks[0].steps:
        for text in (step.what.text(in_units(Lengths())), step.held, step.waste_held, step.caution):
            assert all(word in said for word in text.split()), text
        assert f"Step {step.number}: " in said
    assert plan.caution.split()[0] in said and "no published source" in said
    assert "This sheet rests" in said and "Dry-lay before glue" in said


def test_lean_and_heights_are_those_of_the_plan():
    plan, found = made(radial(STOCK, Top.round(800.0), 24), method("saw", lean=2.0))
    said, error = words(found), in_units(Lengths(), ERROR)
    lean = plan.leaning[0]
    for text in (error(lean.lowest), error(lean.slide), f"{lean.opens:.2f} deg", "14.4 mm high"):
        assert text in said
    assert error(lean.lowest) == "0.5 mm"


def test_several_tops_can_be_read():
    layouts = [radial(STOCK, Top.round(560.0), 12, placement=(210.0, y)) for y in (50.0, 600.0)]
    plan, found = made(layouts, KNIFE)
    assert [t for page in found for t in troubles(page)] == []
    assert "of cut 2" in words(found)


def test_offcuts_are_listed_with_their_sizes_and_uses():
    layout = radial(STOCK, Top.round(800.0), 12)
    _, found = made(layout, SAW)
    said = words([page for page in found if page.code == "offcuts"])
    rest = offcuts(layout, SAW)[0]
    for kept in (k for one in rest.offcuts for k in one.kept):
        assert Lengths().size(*(float(int(v)) for v in kept.size)) in said
    assert "1-12" in said and "border strips" in said


def test_lengths_in_sentences_carry_their_unit_and_small_ones_are_not_lost():
    assert plain(12.34) == "12.3 mm" and plain(0.084) == "0.08 mm"
    said = Said("{a} and {n}", {"a": 25.4, "n": 3})
    assert str(said) == "25.4 mm and 3"
    assert said.text(in_units(Lengths("inch"))) == "1 in and 3"
    assert in_units(Lengths("both"))(25.4) == "25.4 mm (1 in)"
    assert in_units(Lengths("inch"))(0.5) == "0.020 in"
    assert in_units(Lengths("both"))(0.0126) == "0.013 mm (0.0005 in)"
    assert in_units(Lengths("mm"), ERROR)(1.234) == "1.23 mm"
    assert in_units(Lengths("mm"))(0.0) == "0.0 mm"


@pytest.mark.parametrize(("cuts", "how"), [("shape", SAW), ("own", KNIFE), ("shape", MACHINE)])
def test_stacks_that_are_cut_alike_are_told_once(cuts, how):
    layout = radial(STOCK, Top.oval(800.0, 600.0), 8, cuts=cuts, oversize=5.0)
    plan, found = made(layout, how)
    assert [t for page in found for t in troubles(page)] == []
    text = words(found)
    kinds = {tuple((s.kind, s.held, s.waste_held) for s in stack.steps if s.kind != "test")
             for stack in plan.stacks}
    assert len(kinds) < len(plan.stacks)
    assert text.count(": take off") <= 2 * len(kinds)
    assert text.count("Its steps are those of stack") >= len(plan.stacks) - 2 * len(kinds)
    for stack in plan.stacks:  # what the shared steps leave to its own words
        name = f"Stack {stack.pile.name}"
        assert name in text
    assert "as listed" in text
