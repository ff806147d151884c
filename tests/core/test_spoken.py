# SPDX-License-Identifier: LGPL-2.1-or-later
"""In another language nothing of what the core says stays English: here all letters are capitals,
and what was not translated, or glued from scraps, shows by its small ones."""

from __future__ import annotations

import re
from dataclasses import replace
from string import Formatter

import pytest

from veneerwb import words
from veneerwb.core import Radial, Stock, Top, VeneerError, check, radial, rings, side
from veneerwb.core.appeal.words import BANDS
from veneerwb.core.buildup import Backer, Border, BuildUp, Core, Crossband, Lipping, Show
from veneerwb.core.buildup.bill import bill, bill_csv
from veneerwb.core.checks.buildup import buildup_findings
from veneerwb.core.leaf import Fault
from veneerwb.core.listing import all_of, one_of, put_in
from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.runs import Run, run_findings
from veneerwb.core.sequence import suspects
from veneerwb.core.sides import measured_wander, proved_sense
from veneerwb.core.targets.sheet import sheet
from veneerwb.core.wood import Climate

UNSEEN = "\u200b"
STOCK = Stock(320.0, 1200.0, 24, 0.6)
TOPS = (
    Top.round(900.0), Top.oval(900.0, 600.0), Top.polygon(8, 900.0), Top.square(800.0),
    Top.rectangle(900.0, 600.0), Top.racetrack(900.0, 600.0), Top.boat(900.0, 600.0, 400.0),
    Top.outline(Top.square(800.0).polygon_mm), Top.square(800.0).inset(40.0),
)  # fmt: skip


def capitals(template):
    """A template, its {names} left alone; what was translated already, marked by an unseen sign,
    is no text of the catalogue and stays."""
    if UNSEEN in template:
        return template
    out = UNSEEN
    for text, name, form, kind in Formatter().parse(template):
        out += text.replace("{", "{{").replace("}", "}}").upper()
        if name is not None:
            out += "{" + name + (f"!{kind}" if kind else "") + (f":{form}" if form else "") + "}"
    return out


@pytest.fixture(autouse=True)
def spoken():
    words.speak(capitals)
    yield
    words.speak()


def left_of(texts):
    """What of the texts is English still."""
    return [text for text in texts if re.search("[a-z]", text)]


def of_findings(findings):
    return left_of(text for one in findings for text in (one.text, one.remedy))


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_every_match_is_named_and_checked_in_it(match):
    small = Stock(90.0, 400.0, 24, 0.6)
    found = [
        finding
        for stock, top in ((STOCK, TOPS[4]), (small, TOPS[0]))
        for finding in check(match.sample(stock, top), margin=10.0, spares=99, wedge_angle=30.2)
    ]
    assert left_of((match.title, match.line)) == of_findings(found) == []
    assert len(found) > 3


@pytest.mark.parametrize("top", TOPS, ids=lambda top: top.words)
def test_every_top_is_named_in_it(top):
    assert left_of([top.name, top.scaled(0.5).name]) == []
    assert str(round(top.size)) in top.name


@pytest.fixture(scope="module")
def knotty():
    """A bundle that has a knot in the middle of every leaf."""
    bundle = sawn_bundle(leaves=12, width=200.0, length=400.0, seed=3, mm_per_px=4.0)
    return replace(bundle, leaves=tuple(
        replace(leaf, faults=(Fault(leaf.usable.centroid.buffer(40.0), "knot"),))
        for leaf in bundle.leaves
    ))


@pytest.mark.parametrize("angle", [29.9, 30.0, 30.1])
@pytest.mark.parametrize("turn", ["book", "slip"])
def test_a_rings_closing_and_its_faults_are_said_in_it(knotty, turn, angle):
    for cuts in ("stack", "own"):
        found = check(radial(knotty, Top.round(300.0), 12, turn, cuts=cuts), 0.0, 99, angle)
        assert of_findings(found) == []
        assert "fault-seen" in [one.code for one in found]


def refused():
    yield lambda: radial(STOCK, TOPS[0], 7)
    yield lambda: radial(STOCK, TOPS[0], 48)
    yield lambda: radial(STOCK, TOPS[0], "many")
    yield lambda: radial(STOCK, TOPS[0], 12, strips=3)
    yield lambda: radial(STOCK, TOPS[0], 12, disc=2000.0)
    yield lambda: side(STOCK, TOPS[0], face="slip-centre-book", count=5)
    yield lambda: side(STOCK, TOPS[0], face="centre balance", count=3)
    yield lambda: side(STOCK, TOPS[0], count=30)
    yield lambda: rings(STOCK, TOPS[0], Radial(8), Radial(12), 2000.0)
    yield lambda: Border(-1.0)
    yield lambda: Show(-1.0)
    yield lambda: BuildUp(Show(0.6), Core(18.0), border=Border(600.0)).field(TOPS[3])
    yield lambda: BuildUp(Show(0.6), Core(18.0), border=Border(40.0)).field(TOPS[0])


@pytest.mark.parametrize("what", refused())
def test_what_cannot_be_is_refused_in_it(what):
    with pytest.raises(VeneerError) as error:
        what()
    assert left_of([re.sub("'.*?'", "", str(error.value))]) == []


@pytest.mark.parametrize("after", [Climate(20.0, 30.0), Climate(20.0, 70.0)])
@pytest.mark.parametrize("when", ["before veneering", "after veneering"])
def test_a_build_up_is_checked_and_listed_in_it(when, after):
    build_up = BuildUp(
        Show(0.6, "OAK, RED"), Core(18.0, "OAK, RED", 0.0, "solid wood"), Backer(0.9),
        Crossband(1.0), lipping=Lipping(20.0, "OAK, RED", when=when), border=Border(40.0),
    )
    found = buildup_findings(build_up, TOPS[3], (Climate(20.0, 50.0), after))
    assert of_findings(found) == []
    assert {"core-moves", "lipping-moves", "crossband-alone"} <= {one.code for one in found}
    assert left_of([bill_csv(bill(build_up.parts(TOPS[3])), "T")]) == []


@pytest.mark.parametrize("count", [1, 5])
@pytest.mark.parametrize("mode", ["sequence", "blueprint"])
def test_a_run_is_checked_in_it(wall, mode, count):
    laid = Run(side_of := MATCHES[2].sample(STOCK, TOPS[3]).recipe, mode).lay(
        Stock(260.0, 2600.0, 30, 0.6), wall(count)
    )
    assert side_of.turn == "book"
    for spares in (0, 99):
        assert of_findings(run_findings(laid, spares=spares)) == []


def test_a_proofs_suspects_are_said_in_it():
    found = [
        suspects.out_of_place(3, 1, 2), suspects.out_of_place(3, None, 2),
        suspects.out_of_place(3, 1, None), suspects.swapped(1, 2, None, 3),
        suspects.missing(1, 2, 3.0), suspects.thickness(3, 2.0), suspects.thickness(3, 0.5),
        suspects.lying(1, "turned", True), suspects.lying(1, "turned"),
        suspects.lying(1, "both"), suspects.lying(1, "end for end"), suspects.foreign(2, True),
        suspects.duplicate(1, 2, True), suspects.duplicate(1, 2, False, True),
    ]  # fmt: skip
    assert left_of(one.text for one in found) == []


@pytest.mark.parametrize("backs", [False, [2]])
def test_what_backs_tell_is_said_in_it(backs):
    bundle = sawn_bundle(leaves=3, width=200.0, length=400.0, seed=3, mm_per_px=4.0, backs=backs)
    wander = measured_wander(bundle)
    assert wander.known == bool(backs)
    assert left_of([wander.text, *(note.text for note in proved_sense(bundle).notes)]) == []


def test_paper_marks_and_appeal_are_said_in_it():
    bands = [words.word(text) for _, said in BANDS.values() for _, text in said]
    pages = [line.text for page in sheet([1, 2], 2) for line in page.words]
    assert left_of([*bands, *pages]) == []


def test_lists_take_the_languages_own_words():
    assert all_of(["1", "2", "3"]) == f"{UNSEEN}1, 2 AND 3"
    assert one_of(["1", "2"]) == f"{UNSEEN}1 OR 2"
    assert all_of(["1"]) == "1"
    assert put_in("{SO} MM, {by}", by="{up} MM UP") == "{SO} MM, {up} MM UP"
