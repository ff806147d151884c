# SPDX-License-Identifier: LGPL-2.1-or-later
"""Press day on paper: centre, axes and pins on a plan, and in words what goes in, at which
pressure, which tape comes off when, and how the edge is cut."""

from __future__ import annotations

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Point
from veneerwb.core.plane import polar
from veneerwb.core.shop.drawing.drawn import CHAIN, GREY, MEDIUM, THICK, THIN, Drawing, placed
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import scale_for
from veneerwb.core.shop.pages.flowing import Item, Section, Table, flowed
from veneerwb.core.shop.pages.kit import SHOW
from veneerwb.core.shop.press import said as words
from veneerwb.core.shop.press.day import BAND, Bag, PressDay
from veneerwb.core.shop.press.dust import LIMITS, dust_caution
from veneerwb.words import figure, filled, marked, say, word

CODE, TITLE = "press", marked("Press day")
AROUND = 12.0
"""mm round the top for the letters of axes and pins."""
PIN, ASIDE = 1.2, 8.0
"""mm: half of a pin's mark, and how far beside its axis its letter stands."""


def pages(day: PressDay, look: Look, unit: str = "kPa", species: str = "") -> list[Page]:
    """All pages of press day; pressures in the `unit` of the gauge, `species` of the show veneer
    as it was entered."""
    sections = [
        Section(word("Centre, axes and pins"), _marks(day, look)),
        Section(word("In the press"), _in_the_press(day, look, unit)),
        Section(word("Adhesive"), _adhesive(day, look)),
        Section(word("What comes off when"), [
            word(tape) for tape in words.TAPES
        ]),
        Section(word("Order of the day"), _numbered(words.order_of_the_day(day))),
        Section(word(
            "The edge, from the centre"
        ), _numbered(words.edge_cut(day, _radius(day, look)))),
        Section(word("Cautions"), [
            word(words.PRESSURE_CAUTION), word(words.ADHESIVE_CAUTION), dust_caution(species),
            word(LIMITS), word(words.EDGE_CAUTION),
        ]),
    ]  # fmt: skip
    return flowed(
        look, CODE, TITLE, sections, lambda drawing, box: _plan(drawing, box, day),
        (SHOW, DRY_LAY),
    )  # fmt: skip


def _numbered(lines: list[str]) -> list[Item]:
    return [f"{k}.  {line}" for k, line in enumerate(lines, start=1)]


def _radius(day: PressDay, look: Look) -> str:
    return "" if day.trammel is None else look.lengths.length(day.trammel)


# --- words --------------------------------------------------------------------------------------


def _marks(day: PressDay, look: Look) -> list[Item]:
    def length(value: float) -> str:
        return look.lengths.length(value)

    rows = [
        (word(mark.name), length(mark.net), length(mark.face), length(mark.core))
        for mark in day.axes
    ]
    items: list[Item] = [
        Table(
            (marked("from the centre"), marked("finished edge"), marked("show face"),
             marked("core")),
            rows,
        ),
        word(
            "Mark centre and axes on the tape of the face and over the edges of the core; lay "
            "mark on mark."
        ),
    ]
    along = [
        f"{word(mark.name)}: {mark.seam[0]} | {mark.seam[1]}" for mark in day.axes if mark.seam
    ]
    if along:
        items.append(say("Axes that run along a seam: {along}.", along=", ".join(along)))
    if day.pins:
        rows = [(chr(65 + k), length(pin.distance), f"{pin.direction:.0f}", length(pin.band))
                for k, pin in enumerate(day.pins)]  # fmt: skip
        items += [
            Table(
                (
                    marked("pin"),
                    marked("from the centre"),
                    marked("direction, deg"),
                    marked("band"),
                ),
                rows,
            ),
            word(
                "Directions run counter-clockwise from right. Pins go through the oversize of "
                "face and core, off the seams; they keep the face from swimming on wet adhesive."
            ),
        ]
    if not day.pinned:
        items.append(
            say(
                "Between finished edge and blank a pin needs {BAND}: with less, hold the face "
                "with tape over the edge instead.",
                BAND=length(BAND),
            )
        )
    return items


def _in_the_press(day: PressDay, look: Look, unit: str) -> list[Item]:
    items: list[Item] = [
        say(
            "Largest of face and core: {size}; in the press {thickness} thick.",
            size=look.lengths.size(*day.blank), thickness=look.lengths.length(day.thickness),
        )
    ]
    if day.fit:
        verdict = (
            say("Yes: it goes in, {spare} to spare.", spare=look.lengths.length(day.fit.spare))
            if day.fit.ok
            else say("No: it does not go in; {missing} are missing.",
                     missing=look.lengths.length(-day.fit.spare))
        )  # fmt: skip
        needs = say(
            HAS[isinstance(day.press, Bag), day.fit.turned],
            margin=look.lengths.length(day.margin), needs=look.lengths.size(*day.fit.needs),
            there=look.lengths.size(*day.fit.there),
        )
        items.append(f"{verdict} {needs}")
    else:
        items.append(word("Press or bag: not entered, so that nothing is said of its size."))
    return [*items, *words.pressure_words(day, unit)]


HAS = {
    (True, False): marked(
        "With a margin of {margin} all round it needs {needs}; the bag has {there}."
    ),
    (True, True): marked(
        "With a margin of {margin} all round it needs {needs}; the bag has {there} (turned)."
    ),
    (False, False): marked(
        "With a margin of {margin} all round it needs {needs}; the plates have {there}."
    ),
    (False, True): marked(
        "With a margin of {margin} all round it needs {needs}; the plates have {there} (turned)."
    ),
}


def _adhesive(day: PressDay, look: Look) -> list[Item]:
    sheet = day.adhesive
    items: list[Item] = [word(words.WINS)]
    if sheet.name:
        items.append(say("Adhesive: {name}.", name=sheet.name))
    values = {"area": look.lengths.area(day.area), "count": day.lines,
              "all": look.lengths.area(day.glued)}  # fmt: skip
    items.append(
        say("Glue area: {area} a glue line, {count} of them (with backer): {all}.", **values)
        if day.backer
        else say("Glue area: {area} a glue line, {count} of them (without backer): {all}.",
                 **values)
    )  # fmt: skip
    if day.grams is not None:
        items.append(
            say(
                "At {spread:g} g/m2, as entered, that is {grams:.0f} g of adhesive, without what "
                "stays on roller and pot.",
                spread=sheet.spread, grams=day.grams,
            )
        )
    said = [
        filled(word(what), {"minutes": figure(value, "g")}) for what, value in (
            (marked("open time {minutes} min"), sheet.open_time),
            (marked("in the press {minutes} min"), sheet.press_time),
        ) if value is not None
    ]  # fmt: skip
    if said:
        items.append(say("As entered from the maker's sheet: {said}.", said=", ".join(said)))
    if sheet.missing:
        items.append(say(
            "Still to be looked up there: {missing}.",
            missing=", ".join(sheet.missing),
        ))
    return items


# --- the plan -----------------------------------------------------------------------------------


def _plan(drawing: Drawing, box: Box, day: PressDay) -> str:
    """Finished edge, blanks, core, axes and pins."""
    layout = day.layout
    runs = [day.panel.edge, *(piece.blank_edge for piece in layout.pieces)]
    spans = [
        (min(low for low, _ in found), max(high for _, high in found))
        for way in (0.0, 90.0)
        for found in [[edges.extent(run, way) for run in runs]]
    ]
    (x0, x1), (y0, y1) = spans
    key = 3 * 2.0 * SMALL
    room = (box.wide - 2.0 * AROUND, box.high - 2.0 * AROUND - key)
    scale = scale_for((x1 - x0, y1 - y0), room)
    f = scale.factor
    cx, cy = box.centre
    at = (cx - f * (x0 + x1) / 2.0, cy + key / 2.0 - f * (y0 + y1) / 2.0)
    for piece in layout.pieces:
        drawing.edge(placed(piece.blank_edge, f, at), THIN, colour=GREY)
    for loop in day.panel.region.loops:
        drawing.edge(placed(loop, f, at), THICK)
    _axes(drawing, day, f, at)
    for k, pin in enumerate(day.pins):
        _pin(drawing, (at[0] + f * pin.at[0], at[1] + f * pin.at[1]), chr(65 + k), pin.direction)
    _key(drawing, box)
    return str(scale)


def _axes(drawing: Drawing, day: PressDay, f: float, at: Point) -> None:
    centre = (at[0] + f * day.centre[0], at[1] + f * day.centre[1])
    for mark in day.axes:
        far = f * max(mark.face, mark.core) + 4.0
        dx, dy = polar(far, mark.direction)
        tip = (centre[0] + dx, centre[1] + dy)
        drawing.line(centre, tip, THIN, CHAIN)
        half = width(word(mark.name), SMALL) / 2.0
        ux, uy = polar(1.0, mark.direction)
        drawing.text(
            (tip[0] + ux * (1.0 + half), tip[1] + uy * (1.0 + SMALL / 2.0) - SMALL / 2.0),
            word(mark.name),
        )
    drawing.edge((Arc(centre, 1.5, 0.0, 360.0),), MEDIUM)


def _pin(drawing: Drawing, at: Point, name: str, direction: float) -> None:
    drawing.edge((Arc(at, PIN, 0.0, 360.0),), MEDIUM, fill="#ffffff")
    drawing.line((at[0] - PIN, at[1]), (at[0] + PIN, at[1]), THIN)
    drawing.line((at[0], at[1] - PIN), (at[0], at[1] + PIN), THIN)
    out, aside = polar(5.0, direction), polar(ASIDE, direction + 90.0)
    drawing.text((at[0] + out[0] + aside[0], at[1] + out[1] + aside[1] - SMALL / 2.0), name)


def _key(drawing: Drawing, box: Box) -> None:
    lines = (
        (THICK, (), "#000000", word("finished edge")),
        (THIN, (), GREY, word("blanks as taped, with oversize")),
        (THIN, CHAIN, "#000000", word("axes")),
    )
    y = box.y + 2.0 * SMALL * (len(lines) - 1)
    for weight, dashes, colour, text in lines:
        drawing.line((box.x, y + SMALL / 2.0), (box.x + 14.0, y + SMALL / 2.0), weight, dashes,
                     colour)  # fmt: skip
        drawing.text((box.x + 17.0, y), text, anchor="start")
        y -= 2.0 * SMALL


