# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pages: their papers, title block, words and tables, and what a host keeps as text."""

from pathlib import Path

import pytest
from shapely import affinity
from shapely.geometry import box

from veneerwb.core import VeneerError
from veneerwb.core.shop.drawing.blocks import MOST_LINES, parted
from veneerwb.core.shop.drawing.drawn import Drawing, Letters, Stroke
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import PITCH, SMALL
from veneerwb.core.shop.drawing.page import (
    CELLS,
    DRY_LAY,
    Look,
    blank_page,
    numbered,
    table,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import PAPERS, Box, form, form_name, paper_of

LONG = "Registered on the figure of the photographs; the backs take the register of their faces."
FORMS = Path(__file__).parents[2] / "resources" / "templates"


def letters(drawing):
    return [mark for mark in drawing.marks if isinstance(mark, Letters)]


def covered(mark):
    """What letters cover at most."""
    (x, y), wide = mark.at, mark.wide
    left = x - {"start": 0.0, "middle": 0.5, "end": 1.0}[mark.anchor] * wide
    area = box(left, y - 0.2 * mark.height, left + wide, y + mark.height)
    return affinity.rotate(area, mark.turn, origin=mark.at)


def overlaps(drawing):
    areas = [(mark.text, covered(mark)) for mark in letters(drawing) if mark.text]
    return [
        (one, other)
        for k, (one, a) in enumerate(areas)
        for other, b in areas[:k]
        if a.intersection(b).area > 0.05
    ]


def look(paper, **more):
    return Look(paper=PAPERS[paper], title="A table <&> top", top="round, 1200 mm", bundle="Bundle",
                owner="The shop", drawn_by="N. N.", date="2026-11-26", revision="AB12CD", **more)


# Sizes: ISO 216 and ANSI/ASME Y14.1; the frame 20 mm left and 10 mm elsewhere, so that on A3 it is
# 390 x 277 mm, and the title block 180 mm wide (the host's own A3 form, after ISO 5457 and 7200).
@pytest.mark.parametrize(
    ("name", "size"),
    [
        ("A4", (297.0, 210.0)), ("A4 upright", (210.0, 297.0)), ("A3", (420.0, 297.0)),
        ("A2", (594.0, 420.0)), ("A1", (841.0, 594.0)), ("ANSI A", (279.4, 215.9)),
        ("ANSI B", (431.8, 279.4)), ("ANSI C", (558.8, 431.8)), ("ANSI D", (863.6, 558.8)),
    ],
)  # fmt: skip
def test_papers_have_their_sizes_and_frames(name, size):
    paper = paper_of(name)
    assert (paper.wide, paper.high) == pytest.approx(size)
    frame = paper.frame
    assert (frame.x, frame.y) == (20.0, 10.0)
    assert (paper.wide - frame.right, paper.high - frame.top) == pytest.approx((10.0, 10.0))
    assert frame.wide >= 180.0


def test_the_frame_of_a3_is_that_of_the_standard():
    assert (PAPERS["A3"].frame.wide, PAPERS["A3"].frame.high) == (390.0, 277.0)


def test_another_paper_is_refused_with_those_there_are():
    with pytest.raises(VeneerError, match="A4 upright"):
        paper_of("A5")


@pytest.mark.parametrize("name", PAPERS)
def test_the_forms_that_are_kept_are_those_that_are_drawn(name):
    assert (FORMS / form_name(PAPERS[name])).read_text() == form(PAPERS[name])


@pytest.mark.parametrize(
    ("mm", "inches"),
    [(25.4, "1"), (600.0, "23 5/8"), (3.175, "1/8"), (0.0, "0"), (-12.7, "-1/2"), (0.1, "0"),
     (25.3, "1"), (304.8, "12")],
)  # fmt: skip
def test_inches_are_written_in_lowest_terms(mm, inches):
    assert Lengths("inch").inches(mm) == inches


def test_lengths_are_written_as_asked():
    assert Lengths().length(600.04) == "600.0"
    assert Lengths("inch").length(600.0) == "23 5/8 in"
    assert Lengths("both").length(600.0) == "600.0 (23 5/8 in)"
    assert Lengths("both", 16).size(100.0, 600.0) == "100.0 x 600.0 (3 15/16 x 23 5/8 in)"
    assert Lengths("inch").area(1.0) == "10.76 sq ft"
    with pytest.raises(VeneerError, match="16, 32, 64"):
        Lengths("inch", 10)


@pytest.mark.parametrize("rests", ["", LONG])
@pytest.mark.parametrize("name", PAPERS)
def test_a_page_says_all_it_must_with_nothing_over_another(name, rests):
    page, free = blank_page(look(name, rests=rests, number="T-12"), "plan", "Plan", "1:5")
    said = " ".join(mark.text for mark in letters(page.drawing))
    for word in ("A table <&> top", "AB12CD", "T-12", "N. N.", "1:5", "The shop", *DRY_LAY.split()):
        assert word in said
    assert {label for label, *_ in CELLS.values()} <= {m.text for m in letters(page.drawing)}
    assert not rests or all(word in said for word in rests.split())
    assert overlaps(page.drawing) == []
    paper = page.paper
    assert paper.frame.holds(free) and free.high > 100.0
    inside = box(paper.frame.x, paper.frame.y, paper.frame.right, paper.frame.top)
    field = box(free.x, free.y, free.right, free.top)
    for mark in letters(page.drawing):
        assert covered(mark).within(inside.buffer(0.01)), mark.text
        assert covered(mark).intersection(field).area == 0.0, mark.text


def test_long_words_of_the_title_block_stay_in_their_fields():
    said = Look(title="A very long title that no field of any title block could ever hold in one",
                owner="M" * 60, top="an outline of many words " * 4)  # fmt: skip
    page, _ = blank_page(said, "plan", "Plan", "1:5")
    assert overlaps(page.drawing) == []
    right = page.paper.frame.right
    assert all(covered(mark).bounds[2] <= right + 0.01 for mark in letters(page.drawing))


def test_pages_are_numbered_and_those_given_are_kept():
    pages = [blank_page(look("A3"), code, code)[0] for code in ("one", "two")]
    before = [len(page.drawing.marks) for page in pages]
    texts = [{m.text for m in letters(page.drawing)} for page in numbered(pages)]
    assert "1/2" in texts[0] and "2/2" in texts[1]
    assert [len(page.drawing.marks) for page in pages] == before


def test_paragraphs_take_the_height_that_was_told():
    drawing, field = Drawing(100.0, 100.0), Box(10.0, 10.0, 50.0, 80.0)
    texts = [LONG, "", "Short."]
    foot = text_block(drawing, field, texts)
    assert field.top - foot == pytest.approx(text_height(texts, field.wide))
    assert " ".join(mark.text for mark in letters(drawing)) == f"{LONG} Short."
    assert overlaps(drawing) == []


def test_paragraphs_that_do_not_fit_say_so():
    drawing = Drawing(100.0, 100.0)
    text_block(drawing, Box(0.0, 0.0, 50.0, 9.0), [LONG])
    assert letters(drawing)[-1].text.endswith("...")
    assert len(letters(drawing)) == int(9.0 / (PITCH * SMALL))


def test_a_table_gives_back_the_rows_that_found_no_room():
    rows = [(str(k), "words " * (k % 4) * 4) for k in range(40)]
    drawing, field = Drawing(100.0, 120.0), Box(5.0, 5.0, 60.0, 100.0)
    foot, left = table(drawing, field, ("pos", "what is said"), rows)
    assert foot >= field.y and 0 < len(left) < 40
    assert list(left) == rows[40 - len(left) :]
    assert overlaps(drawing) == []
    inside = box(field.x, field.y, field.right, field.top).buffer(0.01)
    assert all(covered(mark).within(inside) for mark in letters(drawing))
    assert {"pos", "0", str(39 - len(left))} <= {mark.text for mark in letters(drawing)}
    assert str(40 - len(left)) not in {mark.text for mark in letters(drawing)}


def test_a_table_without_room_gives_back_everything():
    _, left = table(Drawing(50.0, 5.0), Box(0.0, 0.0, 50.0, 2.0), ("a",), [("1",), ("2",)])
    assert list(left) == [("1",), ("2",)]


def test_columns_and_rules_become_blocks_and_all_else_stays():
    drawing = Drawing(200.0, 200.0)
    rows = [(str(k), f"{k} x 600.0") for k in range(40)]
    table(drawing, Box(10.0, 0.0, 100.0, 195.0), ("pos", "size"), rows)
    drawing.distance((10.0, 20.0), (90.0, 20.0), "80.0", 5.0)
    rest, blocks = parted(drawing, 50, 200.0)
    assert all(1 <= len(block.lines) <= MOST_LINES for block in blocks)
    taken = [
        (round(block.x, 2), round(block.foot - k * block.pitch, 1), line)
        for block in blocks
        for k, line in enumerate(block.lines)
    ]
    wanted = [
        (round(m.at[0], 2), round(m.at[1], 1), m.text)
        for m in letters(drawing)
        if m.anchor == "start"
    ]
    assert sorted(taken) == sorted(wanted)
    assert [m.text for m in letters(rest)] == ["80.0"]
    strokes = [mark for mark in drawing.marks if isinstance(mark, Stroke)]
    assert [mark for mark in rest.marks if isinstance(mark, Stroke)] == strokes


def test_only_the_longest_blocks_are_taken_and_none_too_far_right():
    drawing = Drawing(100.0, 100.0)
    for k, text in enumerate(("a", "a longer one", "a line that is longer still")):
        drawing.text((5.0 + k, 80.0 - 20.0 * k), text, anchor="start")
    drawing.text((80.0, 50.0), "a very long line on the right of it all", anchor="start")
    rest, blocks = parted(drawing, 2, 60.0)
    assert [block.lines[0] for block in blocks] == ["a longer one", "a line that is longer still"]
    assert {m.text for m in letters(rest)} == {"a", "a very long line on the right of it all"}
