# SPDX-License-Identifier: LGPL-2.1-or-later
"""Yield and cost on paper, and what to buy before there is a bundle."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from veneerwb.core.inventory import square_feet
from veneerwb.core.outlines.edge import straights
from veneerwb.core.plane import stepped
from veneerwb.core.shop.cost import Cost, Factors, LeafYield, Yields
from veneerwb.core.shop.drawing.drawn import MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import SMALL, runs, width
from veneerwb.core.shop.drawing.page import Look, Page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import scale_for
from veneerwb.core.shop.pages.flowing import Item, Picture, Section, Table, flowed
from veneerwb.core.shop.pages.wedge_figure import grain_arrow
from veneerwb.core.shop.planning import BUNDLES, Planning
from veneerwb.core.shop.room import ROOM
from veneerwb.words import figure, marked, say, word

CODE, TITLE = "yield", marked("Yield and cost")
PLANNING_CODE, PLANNING_TITLE = "planning", marked("What to buy")
NO_CHARGE = marked(
    "Veneer alone: adhesive, backer, core, time and the risk of a spoilt cut are not in it."
)
SPOILT = marked(
    "One wrong cut through the stack spoils every leaf of it at once: cut a trial from a spare or "
    "an end first, and keep the spares from the same bundle, next to those used."
)
BAR = 9.0
"""mm: how high the bar of areas is."""
ALIKE = 1e-5
"""m2: leaves of which the used areas differ by less share a row."""
AROUND = 16.0
"""mm round the leaf for its dimensions."""
SHADES = ("#5a5a5a", "#a8a8a8", "#dcdcdc", "#ffffff")
WORDS = (
    marked("used (finished pieces)"), marked("oversize, trimmed"),
    marked("offcuts of opened leaves"), marked("whole leaves left"),
)  # fmt: skip


def pages(found: Yields, look: Look, what: Cost | None = None) -> list[Page]:
    """The yields of a layout and, where a price is known, what its veneer costs."""
    sections = [
        Section(word("What becomes of the leaves"), _yields(found, look, what.tops if what else 1)),
        Section(word("Cost"), _cost(what, found) if what else [
            word("No price was entered: give one for the bundle, a leaf, a m2 or a sq ft.")
        ]),
        Section(word("Leaf by leaf"), [_leaves(found, look), *_left(found)]),
    ]  # fmt: skip
    return flowed(look, CODE, TITLE, sections, standing=())


def _yields(found: Yields, look: Look, tops: int) -> list[Item]:
    area = look.lengths.area
    factors = [
        (word("of the leaves opened"), found.of_opened),
        (word("of the bundle"), found.of_bundle),
    ]
    if tops > 1:
        factors.append(
            (say("of the bundle by {count} tops", count=tops), found.shared_by(tops))
        )
    rows = [
        (word("used: finished pieces"), area(found.used)),
        (word("cut: blanks with oversize"), area(found.cut)),
        (say("opened: {count} leaves cut into", count=len(found.opened)), area(found.opened_area)),
        (say("bought: {count} leaves", count=len(found.leaves)), area(found.bought)),
        (word("left: offcuts"), area(found.offcuts)),
        (say("left: {count} whole leaves", count=len(found.whole_leaves)), area(found.left)),
    ]
    return [
        Picture(BAR + 4 * 2.0 * SMALL + 4.0, lambda drawing, box: _bar(drawing, box, found)),
        Table((marked("what"), marked("area")), rows),
        _factors(factors),
    ]


def _factors(pairs: Sequence[tuple[str, Factors]]) -> Table:
    return Table(
        ("", marked("used / bought"), marked("bought / used"), marked("waste of the purchase")),
        [
            (name, figure(f.used_of_bought, ".3f"), figure(f.bought_to_used, ".2f"),
             f"{figure(100.0 * f.waste, '.1f')} %")
            for name, f in pairs
        ],
    )


def _bar(drawing: Drawing, box: Box, found: Yields) -> None:
    """One bar for all that was bought, parted by what becomes of it."""
    parts = (found.used, found.cut - found.used, found.offcuts, found.left)
    x, y = box.x, box.top - BAR
    for part, shade in zip(parts, SHADES):
        wide = box.wide * max(part, 0.0) / found.bought
        if wide > 0.01:
            drawing.rectangle(Box(x, y, wide, BAR), THIN, shade)
        x += wide
    drawing.rectangle(Box(box.x, y, box.wide, BAR), MEDIUM)
    y -= 2.0 * SMALL
    for part, shade, text in zip(parts, SHADES, map(word, WORDS)):
        drawing.rectangle(Box(box.x, y, SMALL, SMALL), THIN, shade)
        share = f"{figure(100.0 * part / found.bought, '.1f')} %"
        drawing.text((box.x + 7.0 + width("000.0 %", SMALL), y), share, anchor="end")
        drawing.text((box.x + 10.0 + width("000.0 %", SMALL), y), text, anchor="start")
        y -= 2.0 * SMALL


def _leaves(found: Yields, look: Look) -> Table:
    """Leaves of which as much is used, together."""
    lots: dict[tuple[float, ...], list[LeafYield]] = {}
    for one in found.leaves:
        key = (*stepped([one.full, one.used, one.cut], ALIKE), float(bool(one.positions)))
        lots.setdefault(key, []).append(one)
    rows = []
    for lot in lots.values():
        one, positions = lot[0], [p for other in lot for p in other.positions]
        rows.append((
            runs(other.leaf for other in lot),
            runs(positions) if positions else word("left whole"),
            look.lengths.area(one.full),
            look.lengths.area(one.used) if positions else "",
            figure(one.factors.used_of_bought, ".3f") if positions else "",
        ))  # fmt: skip
    return Table(
        (
            marked("leaves"),
            marked("positions"),
            marked("each has"),
            marked("of each used"),
            marked("used / bought"),
        ),
        rows,
    )


def _left(found: Yields) -> list[Item]:
    if not found.whole_leaves:
        return [word("No leaf is left whole: there is no spare.")]
    return [say("Left whole: {whole_leaves}.", whole_leaves=runs(found.whole_leaves))]


def _cost(what: Cost, found: Yields) -> list[Item]:
    def money(amount: float) -> str:
        return f"{figure(amount, '.2f')} {what.price.currency}".rstrip()

    def row(name: str, amount: float) -> tuple[str, ...]:
        return (name, money(amount), money(what.per_m2(amount)), money(what.per_sq_ft(amount)))

    shared = (
        word("the whole bundle") if what.tops == 1
        else say("the bundle, shared by {count} tops", count=what.tops)
    )  # fmt: skip
    rows = [row(shared, what.per_top), row(word("the leaves opened"), what.opened)]
    return [
        say(
            "Price as entered: {amount} for each {per}.",
            amount=money(what.price.amount),
            per=word(what.price.per),
        ),
        Table(
            (
                marked("veneer of one top"),
                marked("in all"),
                marked("a m2 of top"),
                marked("a sq ft of top"),
            ),
            rows,
        ),
        say(
            "One finished top has {top:.3f} m2 ({top_2:.2f} sq ft).",
            top=found.top,
            top_2=square_feet(found.top),
        ),
        word(NO_CHARGE),
    ]


# --- planning -----------------------------------------------------------------------------------


def planning_pages(found: Planning, look: Look) -> list[Page]:
    """What to buy, with the number of bundles of the usual sizes."""
    look = replace(look, rests="")  # there is no bundle yet
    length, size = look.lengths.length, look.lengths.size
    sections = [
        Section(word("Leaves"), _buy(found, length, size)),
        Section(word("Area"), _area(found, look)),
        Section(word("Bundles"), [_bundles(found), word(SPOILT)]),
    ]
    return flowed(
        look, PLANNING_CODE, PLANNING_TITLE, sections,
        lambda drawing, box: _leaf(drawing, box, found, look), standing=(),
    )  # fmt: skip


def _leaf(drawing: Drawing, box: Box, found: Planning, look: Look) -> str:
    """The least leaf, its grain upright, and what is cut of it for each top."""
    room = (box.wide - 2.0 * AROUND, box.high - 2.0 * AROUND)
    scale = scale_for((found.width, found.length), room)
    f = scale.factor
    leaf = Box(box.centre[0] - f * found.width / 2.0, box.centre[1] - f * found.length / 2.0,
               f * found.width, f * found.length)  # fmt: skip
    drawing.rectangle(leaf, MEDIUM)
    for k in range(found.per_leaf):
        up = k * (found.cut[1] + ROOM)
        for cut in found.cuts:
            points = [(leaf.x + f * x, leaf.y + f * (y + up)) for x, y in cut.exterior.coords]
            drawing.edge(straights(points[:-1]), THIN)
    drawing.distance((leaf.x, leaf.y), (leaf.right, leaf.y), look.lengths.length(found.width), -8.0)
    drawing.distance(
        (leaf.x, leaf.y), (leaf.x, leaf.top), look.lengths.length(found.length), 8.0
    )
    grain_arrow(drawing, (leaf.right + 8.0, leaf.centre[1]), 90.0)
    return str(scale)


def _buy(
    found: Planning, length: Callable[[float], str], size: Callable[[float, float], str]
) -> list[Item]:
    values = {
        "count": found.needed, "spares": found.spares, "all": found.leaves, "tops": found.tops,
        "size": size(found.width, found.length),
    }  # fmt: skip
    items: list[Item] = [
        say(
            "For one top: {count} leaves and {spares} spares, {all} in all, each at least {size} "
            "(across the leaf, along the grain).", **values,
        )
        if found.tops == 1
        else say(
            "For {tops} tops: {count} leaves and {spares} spares, {all} in all, each at least "
            "{size} (across the leaf, along the grain).", **values,
        ),
        say(
            "A top takes {count} leaves that follow each other in the log, and of each {size}; a "
            "margin of {margin} all round is in the least size.",
            count=found.each, size=size(*found.cut), margin=length(found.margin),
        ),
    ]  # fmt: skip
    if found.per_leaf > 1:
        items.append(
            say(
                "{per_leaf} tops are cut from each leaf, one behind the other along the grain, "
                "{ROOM} apart.",
                per_leaf=found.per_leaf, ROOM=length(ROOM),
            )
        )
    if found.place:
        items.append(
            say(
                "On the least leaf the match lies with its point at {size} from the lower left "
                "corner; a longer leaf leaves room to choose where the figure is best. Faults and "
                "crooked edges come off what is bought.",
                size=size(*found.place),
            )
        )
    return items


def _area(found: Planning, look: Look) -> list[Item]:
    rows = [
        (word("finished tops"), look.lengths.area(found.tops * found.top)),
        (word("their blanks"), look.lengths.area(found.tops * found.blanks)),
        (word("a leaf of the least size"), look.lengths.area(found.leaf_area)),
        (word("to buy, of the least size"), look.lengths.area(found.area)),
    ]
    f = found.factors
    return [
        Table((marked("what"), marked("area")), rows),
        say(
            "Used / bought {used_of_bought:.3f}, bought / used {bought_to_used:.2f}, waste of the "
            "purchase {waste:.1f} %.",
            used_of_bought=f.used_of_bought, bought_to_used=f.bought_to_used,
            waste=100.0 * f.waste,
        ),
    ]


def _bundles(found: Planning) -> Table:
    def row(size: int) -> tuple[str, ...]:
        count = found.bundles(size)
        if count is None:
            return (str(size), word("too few for one top"), "")
        return (str(size), str(count), str(found.left_over(size)))

    return Table(
        (marked("leaves of a bundle"), marked("bundles"), marked("leaves over")),
        [row(s) for s in BUNDLES],
    )
