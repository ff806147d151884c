# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages in another language: every word on them can be translated, and words that are a third
longer, as German ones are, still find their room."""

from __future__ import annotations

import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

from veneerwb import words
from veneerwb.core import Stock, Top, check, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.closing import Angle, Before, Closing, Errors, Measured, Moisture, Ring
from veneerwb.core.shop.cost import Price, cost, yields
from veneerwb.core.shop.cutting.methods import METHODS
from veneerwb.core.shop.cutting.offcuts import offcuts
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.page import blank_page, numbered
from veneerwb.core.shop.packet import LeftOut, Named
from veneerwb.core.shop.pages import closing as closing_pages
from veneerwb.core.shop.pages import contents
from veneerwb.core.shop.pages import cost as cost_pages
from veneerwb.core.shop.pages import cutting as cutting_pages
from veneerwb.core.shop.pages import pinning as pinning_pages
from veneerwb.core.shop.pages import press as press_pages
from veneerwb.core.shop.pages import taping as taping_pages
from veneerwb.core.shop.pages import template as template_pages
from veneerwb.core.shop.pages.gather import sheet_pages
from veneerwb.core.shop.pinning.chalking import chalking
from veneerwb.core.shop.pinning.plan import pinning
from veneerwb.core.shop.planning import planned_for
from veneerwb.core.shop.press.day import Adhesive, Bag, Platen, press_day
from veneerwb.core.shop.taping.plan import taping
from veneerwb.core.shop.templates.make import templates
from veneerwb.core.shop.templates.over import Over

TRANSLATIONS = Path(__file__).parents[3] / "resources/translations"
STOCK = Stock(420.0, 1400.0, 30, 0.6)
NAMELESS = dict.fromkeys(
    ("title", "number", "owner", "drawn_by", "date", "revision", "top", "bundle", "rests"), "0"
)
PLAIN = {"mm", "deg", "in", "kPa", "CIEDE", "birch", "ply", "walnut", "black", "poplar", "maple",
         "holly", "box", "pale", "ebony", "CUT", "TOOL"}  # fmt: skip
"""Units, materials as they were entered, and layers of files."""
QUOTED = r"3\.937|0\.75 ppm|1910\.\d+"
"""Numbers that stand in the texts themselves: their translations write them as is right."""


def spoken(text, letters):
    """A text with its {names} kept and `letters` for every run of letters between them."""
    parts = re.split(r"(\{[^}]*\})", text)
    return "".join(
        part if part.startswith("{") else re.sub("[A-Za-z]+", lambda run: letters(run[0]), part)
        for part in parts
    )


@pytest.fixture
def speaking():
    yield lambda letters: words.speak(lambda text: spoken(text, letters), lambda: ",")
    words.speak()


def ring_closed(layout):
    """The pages on closing a ring."""
    ways = len(layout.pieces)
    angles = tuple(Angle(360.0 / ways + (-1) ** k * 0.04 + 0.01, 0.03) for k in range(ways))
    after = Measured(Ring.of(layout), angles, common=0.01)
    before = Before(layout, Errors(0.03, 0.05, Moisture(9.0, 9.0, 8.0, 0.00274, 0.3)))
    return lambda look: closing_pages.pages(Closing(before, after), look)


def ring_pages(look, ways, how):
    """All of one ring."""
    layout = radial(STOCK, Top.round(700.0), ways, oversize=8.0)
    plan = cutting_plan(layout, METHODS[how], 2)
    press = Bag(1400.0, 2500.0) if ways % 4 else Platen(900.0, 900.0, 2, 80.0)
    adhesive = Adhesive("", 84.0, 20.0, None, 150.0)
    found, over = yields(layout), Over(angle=0.3) if how == "knife" else Over(width=1.0)
    made = [
        *sheet_pages(layout, look, None, check(layout, wedge_angle=29.0)),
        *cutting_pages.pages(plan, offcuts(layout, METHODS[how], 2), look),
        *pinning_pages.pages(pinning(layout, how=METHODS[how], spares=2), look),
        *pinning_pages.marking_pages(chalking(layout, spares=2), [layout], look),
        *taping_pages.pages(taping(layout, face_down=how == "saw"), look),
        *ring_closed(layout)(look),
        *press_pages.pages(press_day(layout, adhesive, press), look, "kPa", "walnut, black"),
        *cost_pages.pages(found, look, cost(found, Price(100.0), 2)),
        *cost_pages.planning_pages(planned_for(layout, 2, 5.0, 2), look),
        *contents.pages(look, [Named("1", "0", b"")], [LeftOut("0", "0")]),
    ]
    made = numbered(made)
    for one in templates(layout, over, 3.0, how == "machine", "0"):
        made += [page for page in template_pages.pages(one, look) if page.code.endswith("-map")]
    return made  # the sheets at 1:1 have words outside the frame


def other_pages(look, panels):
    """Of what is no ring, and of a panel built up."""
    made = []
    for match in MATCHES[::6]:
        layout = match.sample(STOCK, Top.rectangle(600.0, 400.0))
        made += [*sheet_pages(layout, look), *taping_pages.pages(taping(layout), look)]
    built = panels["oval"]
    layout = radial(Stock(900.0, 3000.0, 64, 0.6), built.build_up.field(built.top), 12)
    return [*made, *sheet_pages(layout, look, built)]


def longer(run):
    return run + "e" * (round(len(run) * 0.3) if len(run) > 3 else 0)


def in_the_way(made, texts):
    """What cannot be read, and what is cut off."""
    found = [(page.title, trouble) for page in made for trouble in troubles(page)]
    return found + [text for text in texts(made) if text.endswith("...") and text != "..."]


def test_every_word_on_a_page_can_be_translated(look, texts, panels, speaking):
    speaking(lambda run: "x" * len(run))
    one = look("A3", "mm", **NAMELESS)
    made = [*ring_pages(one, 6, "machine"), *other_pages(one, panels)]
    left = {
        word for text in texts(made)
        for word in re.findall("[A-Za-z]{2,}", text) if word.strip("xX") and word not in PLAIN
    }  # fmt: skip
    assert left == set()
    codes = {page.code for page in made}  # by which documents know them
    assert any(code.endswith("-map") for code in codes) and not [c for c in codes if "xx" in c]


@pytest.mark.parametrize(("ways", "how", "unit"), [(12, "knife", "mm"), (6, "machine", "both")])
def test_every_number_on_a_page_has_the_decimal_sign_spoken(
    ways, how, unit, look, texts, panels, speaking
):
    speaking(str)
    one = look("A3", unit, **NAMELESS)
    made = [*ring_pages(one, ways, how), *other_pages(one, panels)]
    left = [text for text in texts(made) if re.search(r"\d\.\d", re.sub(QUOTED, "", text))]
    assert left == []


@pytest.mark.parametrize(
    ("ways", "how", "paper", "unit"),
    [(12, "saw", "A3", "both"), (24, "knife", "A4 upright", "both")],
)
def test_longer_words_find_room(ways, how, paper, unit, look, texts, speaking):
    speaking(longer)
    assert in_the_way(ring_pages(look(paper, unit), ways, how), texts) == []


def test_longer_words_find_room_for_other_matches_and_panels(look, texts, panels, speaking):
    speaking(longer)
    assert in_the_way(other_pages(look("A3", "both"), panels), texts) == []


def translated(language):
    """What says a text in a language of the catalogues."""
    said = {
        one.findtext("source"): one.findtext("translation")
        for part in ("core", "shop")
        for one in ElementTree.parse(TRANSLATIONS / f"{part}_{language}.ts").iter("message")
    }
    return lambda text: said.get(text) or text


LANGUAGES = {
    "German": translated("de"), "French": translated("fr"),
    "much longer": lambda text: spoken(text, lambda run: longer(longer(run))),
}  # fmt: skip


@pytest.mark.parametrize("paper", ["A3", "A4", "A4 upright"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_tables_of_the_closing_grow_with_their_words(language, paper, look, texts):
    """What is cut off of titles and their block stands on empty pages as well."""
    made, one = ring_closed(radial(STOCK, Top.round(700.0), 12, oversize=8.0)), look(paper, "both")
    words.speak(LANGUAGES[language])
    try:
        pages, empty = made(one), [blank_page(one, "", "")[0]]
    finally:
        words.speak()
    empty += [blank_page(one, "", page.title)[0] for page in pages]
    assert [found for found in in_the_way(pages, texts) if found not in texts(empty)] == []
