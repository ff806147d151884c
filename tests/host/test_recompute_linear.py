# SPDX-License-Identifier: LGPL-2.1-or-later
"""A recompute does no more for each piece of many than of few: counted in calls, which no other
work on the machine changes."""

import sys

import pytest

from veneerwb.host.objects import add_build_up, add_match, add_run, add_stock, parts_of

SIDE = {"Kind": "Side by side", "Top": "Oval", "Length": 4000.0, "Width": 700.0}
RINGS = {"Kind": "Two rings", "Diameter": 3000.0, "InnerDiameter": 1200.0, "Strips": 5}
COUNTED = {
    "strips": (SIDE, lambda n: {"Count": n}),
    "herringbone": ({**SIDE, "Kind": "Herringbone"}, lambda n: {"StripWidth": 3300.0 / n}),
    "two rings": (RINGS, lambda n: {"InnerWays": n // 6, "Ways": n // 6}),
}


@pytest.fixture
def many(doc):
    return add_stock(doc, 900.0, 2400.0, 400, 0.5)


def calls(doc, *objects):
    """How many calls, of the host's functions too, a recompute of these takes."""
    count = 0

    def one(frame, event, arg):
        nonlocal count
        count += event in ("call", "c_call")

    for obj in objects:
        obj.ShapeMark = ""
        sys.setprofile(one)
        try:
            obj.Proxy.execute(obj)
        finally:
            sys.setprofile(None)
        assert obj.Message == ""
    return count


@pytest.mark.parametrize("name", COUNTED)
def test_the_work_for_a_match_grows_with_its_pieces_and_no_faster(doc, many, name):
    settings, counted = COUNTED[name]
    match = add_match(doc, many, **settings)
    work = []
    for n in (50, 200) if name == "strips" else (24, 72):
        for prop, value in counted(n).items():
            setattr(match, prop, value)
        doc.recompute()
        assert match.Message == "" and len(match.Shape.Solids) >= 0.9 * n
        work.append(calls(doc, match) / len(match.Shape.Solids))
    assert work[1] < 1.15 * work[0]


def test_the_work_for_a_run_grows_with_its_doors_and_no_faster(doc, many):
    doors = []
    for k in range(24):
        door = doc.addObject("Part::Box", "Door")
        door.Length, door.Width, door.Height = 300.0, 18.0, 500.0
        door.Placement.Base.x = 303.0 * k
        doors.append((door, "Face3"))
    doc.recompute()
    work = []
    for n in (8, 24):
        run = add_run(doc, many, doors[:n], Count=5)
        doc.recompute()
        assert run.Message == "" and len(run.Shape.Solids) == 5 * n
        work.append(calls(doc, run) / n)
    assert work[1] < 1.15 * work[0]


def test_the_work_for_a_panel_grows_with_its_parts_and_no_faster(doc, many):
    match = add_match(doc, many, Ways=8, Diameter=1200.0)
    how = add_build_up(doc, match, BorderWidth=60.0, BorderKind="following")
    work = []
    for n in (20, 60):
        how.BorderSegments = n
        doc.recompute()
        parts = parts_of(match)
        assert parts.Message == "" and len(parts.Shape.Solids) > n
        work.append(calls(doc, parts) / n)
    assert work[1] < 1.15 * work[0]
