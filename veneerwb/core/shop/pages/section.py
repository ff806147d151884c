# SPDX-License-Identifier: LGPL-2.1-or-later
"""The section through the build-up, with every layer named."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.outlines.edge import Arc, Line, Point
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import CHAIN, MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, width
from veneerwb.core.shop.drawing.page import (
    Look,
    Page,
    blank_page,
    table,
    table_height,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.thickness import on_drawing
from veneerwb.core.shop.pages.kit import Figure, figure, free, heading
from veneerwb.core.shop.section import Layer, Section, Slice, section
from veneerwb.words import marked, say, word

CODE, TITLE = "section", marked("Section")
LEAST, MOST = 6.0, 46.0
"""mm of the paper: how thick a layer is drawn at least and at most."""
SMALLEST = 76.0
"""mm of height below which the list of layers goes on a page of its own."""
TIMES = 5.0
"""By how much thicknesses are exaggerated at least where they lie between those."""
BROKEN = 46.0
"""mm of the paper: what is wider than this, at its scale, is drawn shorter with a break."""
NARROW, ENDS = 8.0, 44.0
"""mm of the paper: how wide a part is drawn at least, and what numbers and dimensions take beside
the section."""
STEP = 7.5
BALLOON = 2.9
WAVE = 2.0


def pages(built: Built | None, look: Look) -> list[Page]:
    """The section of a panel that is built up; none for a bare match."""
    if built is None:
        return []
    one = section(built)
    texts = [
        word(
            "Section along x through the centre of the match, from the left end of the top to the "
            "centre, seen from the lower end. The show face is on top."
        ),
        word(
            "Thicknesses are exaggerated and not to scale; so are narrow strips. Wide parts are "
            "drawn shorter, with a break. Read the figures."
        ),
        say("The panel is {thick} thick in all.", thick=look.lengths.length(one.thick)),
    ]
    field = free(look)
    rows = _rows(one, look)
    high = field.high - 17.0 - text_height(texts, field.wide, between=False)
    beside = high - 18.0 - table_height(HEADINGS, rows, field.wide)
    made = _fitting(one, look, field.wide, beside if beside >= SMALLEST else high)
    page, _ = blank_page(look, CODE, TITLE, word("not to scale"))
    rest = heading(page.drawing, field, word("Section through the build-up"))
    y = text_block(page.drawing, rest, texts, between=False)
    made.put(page.drawing, field.x + (field.wide - made.box.wide) / 2.0, y - 8.0 - made.box.high)
    left = rows
    if beside >= SMALLEST:
        body = field.below(y - 16.0 - made.box.high)
        _, left = table(page.drawing, body, HEADINGS, rows)
    found = [page]
    while left:
        more, box = blank_page(look, CODE, TITLE, word("not to scale"))
        _, left = table(more.drawing, heading(more.drawing, box, word(
            "Section, continued"
        )), HEADINGS,
                        left)  # fmt: skip
        found.append(more)
    return found


def _fitting(one: Section, look: Look, wide: float, high: float) -> Figure:
    """The section no higher than that: thick layers are drawn thinner where they must be."""
    for most in range(int(MOST), int(LEAST), -2):
        made = figure(
            lambda on, _, most=most: _draw(on, one, look, wide, most), (1.0, 1.0), (wide, 400.0)
        )
        if made.box.high <= high:
            break
    return made


HEADINGS = ("", marked("layer"), marked("material"), marked("thickness"), marked("grain"))


def _rows(one: Section, look: Look) -> list[tuple[str, ...]]:
    return [
        (str(k), layer.name, layer.material, on_drawing(look.lengths, layer.thickness), layer.grain)
        for k, layer in enumerate(one.layers, 1)
    ]


# --- drawing --------------------------------------------------------------------------------------


def _stretched(one: Section, wide: float, look: Look) -> dict[float, float]:
    """Where on the paper each joint along the section stands, mm from its left end: strips as wide
    as their figures need."""
    places = sorted({round(x, 4) for s in one.slices for x in s.x})
    least = dict.fromkeys(places, NARROW)
    for cut in one.slices:
        if cut.part.item in one.widths:
            text = look.lengths.length(one.widths[cut.part.item])
            first = round(cut.x[0], 4)
            least[first] = max(least[first], width(text, SMALL) + 4.0)
    needs = [least[a] for a in places[:-1]]
    wants = [max(min(b - a, BROKEN), n) for a, b, n in zip(places, places[1:], needs)]
    room, spare = wide - ENDS, sum(wants) - sum(needs)
    share = min(1.0, max(0.0, (room - sum(needs)) / spare)) if spare else 1.0
    across = [n + share * (w - n) for n, w in zip(needs, wants)]
    more = min(1.6, max(1.0, room / sum(across)))
    across = [more * v for v in across]
    found, x = {places[0]: 0.0}, 0.0
    for place, gap in zip(places[1:], across):
        x += gap
        found[place] = x
    return found


def _heights(one: Section, most: float) -> dict[float, float]:
    """Where on the paper each level stands, mm from the underside, no layer thicker than `most`."""
    levels = sorted({round(z, 4) for s in one.slices for z in s.z})
    found, y = {levels[0]: 0.0}, 0.0
    for low, high in zip(levels, levels[1:]):
        y += min(max((high - low) * TIMES, LEAST), most)
        found[high] = y
    return found


def _draw(drawing: Drawing, one: Section, look: Look, wide: float, most: float) -> None:
    xs, ys = _stretched(one, wide, look), _heights(one, most)
    boxes = [(s, _box(s, xs, ys)) for s in one.slices]
    for cut, box in boxes:
        _hatched(drawing, one, cut, box)
        drawing.rectangle(box, MEDIUM)
    right, top = max(xs.values()), max(ys.values())
    for x in _breaks(one, xs):
        _break(drawing, x, top)
    _end(drawing, right, top)
    _named(drawing, one, boxes, right)
    _widths(drawing, one, boxes, look, top)
    drawing.distance((0.0, 0.0), (0.0, top), on_drawing(look.lengths, one.thick), 9.0)


def _box(cut: Slice, xs: dict[float, float], ys: dict[float, float]) -> Box:
    (a, b), (low, high) = (tuple(round(v, 4) for v in pair) for pair in (cut.x, cut.z))
    return Box(xs[a], ys[low], xs[b] - xs[a], ys[high] - ys[low])


def _breaks(one: Section, xs: dict[float, float]) -> list[float]:
    """The middles of what is drawn shorter than it is."""
    places = sorted(xs)
    return [
        (xs[a] + xs[b]) / 2.0 for a, b in zip(places, places[1:]) if b - a > BROKEN + 1e-6
    ]


def _hatched(drawing: Drawing, one: Section, cut: Slice, box: Box) -> None:
    """Lines along the section for grain along it, dots for grain that runs through it."""
    grain = None if cut.part.item == "core" and not one.solid else cut.part.grain
    if cut.part.item in ("lipping", "stringing line"):
        grain = 90.0
    if grain is None or box.high < 4.0:
        return
    through = 45.0 <= grain % 180.0 <= 135.0
    count = max(1, int(box.high / 4.0))
    for k in range(count):
        y = box.y + (k + 0.5) * box.high / count
        dashes = (0.6, 3.4) if through else (9.0, 3.0)
        drawing.line((box.x + 1.0, y), (box.right - 1.0, y), THIN, dashes, "#808080")


def _break(drawing: Drawing, x: float, top: float) -> None:
    """Two zigzags with white between them."""
    count = max(2, int((top + 6.0) / 6.0))
    ys = [-3.0 + k * (top + 6.0) / count for k in range(count + 1)]
    left = [(x - WAVE + (WAVE if k % 2 else 0.0), y) for k, y in enumerate(ys)]
    across = [(px + 3.0, py) for px, py in left]
    drawing.area([*left, *reversed(across)], "#ffffff")
    for run in (left, across):
        drawing.edge(tuple(Line(p, q) for p, q in zip(run, run[1:])), THIN)


def _end(drawing: Drawing, right: float, top: float) -> None:
    """The centre, where the section ends."""
    drawing.line((right, -4.0), (right, top + 9.0), THIN, CHAIN)
    drawing.text((right, top + 10.0), word("centre"), SMALL)


def _named(
    drawing: Drawing, one: Section, boxes: Sequence[tuple[Slice, Box]], right: float
) -> None:
    """Numbers of the layers in circles: of the show face in its parts, of whole layers right of the
    section, of what else there is below it; with lines to them where they stand outside."""
    y = None
    for k, layer in sorted(enumerate(one.layers, 1), key=lambda pair: pair[1].z):
        mine = [box for cut, box in boxes if _is(cut, layer)]
        if not mine:
            continue
        box = max(mine, key=lambda box: box.right)
        if layer.item in FACE:
            widest = max(mine, key=lambda box: box.wide)
            _balloon(drawing, _off_breaks(one, widest), str(k))
        elif abs(box.right - right) < 1e-6:
            middle = box.y + box.high / 2.0
            y = middle if y is None else max(middle, y + 2.0 * BALLOON + 1.6)
            tip = (right - min(4.0, box.wide / 3.0), middle)
            drawing.line(tip, (right + 16.0 - BALLOON, y), THIN)
            _dot(drawing, tip)
            _balloon(drawing, (right + 16.0, y), str(k))
        else:
            tip = (mine[0].x + mine[0].wide / 2.0, mine[0].y + mine[0].high / 2.0)
            drawing.line(tip, (tip[0], -9.0 + BALLOON), THIN)
            _dot(drawing, tip)
            _balloon(drawing, (tip[0], -9.0), str(k))


FACE = ("field", "border", "stringing line", "inlay")


def _off_breaks(one: Section, box: Box) -> Point:
    """The middle of a part, or beside that where it is drawn broken."""
    share = 0.25 if box.wide > 30.0 else 0.5
    return box.x + share * box.wide, box.y + box.high / 2.0


def _is(cut: Slice, layer: Layer) -> bool:
    return cut.part.item == layer.item and abs(cut.z[0] - layer.z[0]) < 1e-6


def _dot(drawing: Drawing, at: Point) -> None:
    drawing.edge((Arc(at, 0.5, 0.0, 360.0),), 0.0, fill="#000000")


def _balloon(drawing: Drawing, at: Point, text: str) -> None:
    drawing.edge((Arc(at, BALLOON, 0.0, 360.0),), THIN, fill="#ffffff")
    drawing.text((at[0], at[1] - PLAIN / 2.0), text, PLAIN)


def _widths(
    drawing: Drawing, one: Section, boxes: Sequence[tuple[Slice, Box]], look: Look, top: float
) -> None:
    """The widths of the strips above the section, each on a level of its own."""
    level, seen = 0, set()
    for cut, box in sorted(boxes, key=lambda pair: pair[1].x):
        item = cut.part.item
        if item not in one.widths or item in seen:
            continue
        seen.add(item)
        text = look.lengths.length(one.widths[item])
        drawing.distance((box.x, top), (box.right, top), text, 8.0 + STEP * level)
        level += 1
