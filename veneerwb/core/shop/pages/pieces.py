# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pieces as they are cut, one drawing for all that are alike, with every figure that is needed
at the saw or knife; and how a ring's angle is set out."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import degrees, runs
from veneerwb.core.shop.drawing.page import (
    Look,
    Page,
    row_height,
    table,
    table_height,
    table_width,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import Cell, Figure, cell_pages, figure, heading
from veneerwb.core.shop.pages.piece_figure import draw_piece
from veneerwb.core.shop.pages.wedge_figure import draw_set_out, draw_wedge, on_axis
from veneerwb.core.shop.setout import SetOut, set_out
from veneerwb.core.shop.shapes import Corner, Shape, Side, corners_of, shapes
from veneerwb.core.shop.wedge import Wedge
from veneerwb.words import marked, say, word

CODE, TITLE = "pieces", marked("Pieces")
CAUTION = marked(
    "Sharp edges: cut away from the hand, with work and rule held down, and keep the guard on the "
    "saw. What local rules and the machine's own sheet ask comes first."
)
STANDING = (CAUTION,)
LEAST, SMALLEST = 62.0, 0.1
"""mm of height that a figure is given at least, and the scale at which it is to have room."""
BETWEEN = 6.0
TALL = 72.0
"""mm: the least width for the figure of a piece beside its table."""


def pages(layout: Layout, look: Look, base: float = 0.0) -> list[Page]:
    """Every kind of piece, then the set-outs over `base` mm (0: as long as it takes)."""
    found = shapes(layout)
    cells = [
        (_wedge_cell if shape.wedge else _piece_cell)(shape, name, look)
        for name, shape in zip(_names(found), found)
    ]
    cells += [_set_out_cell(one, look) for one in set_outs(layout, found, base)]
    return cell_pages(look, CODE, TITLE, cells, STANDING)


def _names(found: Sequence[Shape]) -> list[str]:
    what, lettered = (
        (word("Wedge"), marked("Wedge {letter}")) if found[0].wedge
        else (word("Piece"), marked("Piece {letter}"))
    )  # fmt: skip
    letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
    named = [*letters, *(a + b for a in letters for b in letters)]
    if len(found) == 1:
        return [what]
    return [say(lettered, letter=letter) for letter in named[: len(found)]]


def set_outs(layout: Layout, found: Sequence[Shape], base: float = 0.0) -> list[SetOut]:
    """Those of the angles at which the seams of a ring meet, the widest first."""
    reach = max((max(s.wedge.sides) for s in found if s.wedge), default=layout.top.reach)
    angles = [shape.wedge.angle for shape in found if shape.wedge]
    if isinstance(layout.recipe, Radial):
        angles = angles or [360.0 / layout.recipe.ways]
    elif isinstance(layout.recipe, Rings):
        angles = [360.0 / ring.ways for ring in (layout.recipe.inner, layout.recipe.outer)]
    unlike = {round(angle, 6): angle for angle in angles if angle < 179.0}
    return [set_out(unlike[key], reach, base) for key in sorted(unlike, reverse=True)]


# --- words and tables -----------------------------------------------------------------------------


def _words(shape: Shape, look: Look) -> list[str]:
    lengths, count = look.lengths, len(shape.positions)
    where, size = runs(shape.positions), lengths.size(*shape.size)
    return [
        say("{count} alike, positions {positions}.", count=count, positions=where)
        if count > 1
        else say("Position {positions}.", positions=where),
        say(
            "Finished {size}, as cut {blank}, across x along the grain.", size=size,
            blank=lengths.size(*shape.blank_size),
        )
        if shape.oversized
        else say("Finished {size}, across x along the grain.", size=size),
        word("As it lies on its leaf, face up. Dashed: as cut.")
        if shape.oversized
        else word("As it lies on its leaf, face up; cut as drawn."),
    ]


def _side_words(side: Side, look: Look) -> str:
    lengths = look.lengths
    role = word(side.role)
    if side.form != "arc":
        return f"{role}, {word(side.form)}"
    values = {
        "side": role, "radius": lengths.length(side.radius),
        "rise": lengths.length(abs(side.rise)),
    }  # fmt: skip
    if side.rise < 0.0:
        return say("{side}, hollow arc, R {radius}, rise {rise}", **values)
    return say("{side}, arc, R {radius}, rise {rise}", **values)


Table = tuple[str, tuple[str, ...], list[tuple[str, ...]]]
"""A title, headings and rows."""
HEADINGS = (
    marked("corner"), marked("x"), marked("y"), marked("angle"), marked("from here on"),
    marked("chord"),
)


def _tables(shape: Shape, look: Look) -> list[Table]:
    """The corners of a piece, with those of the blank beside them where it has as many; and those
    of outlines that the first table does not hold: another blank, and openings."""
    cell = look.lengths.cell
    net, blank = shape.corners, shape.blank_corners
    same = [c.number for c in net] == [c.number for c in blank]
    rows = [_row(corner, look) for corner in net]
    if shape.oversized and same:
        rows = [(*row, cell(c.x), cell(c.y)) for row, c in zip(rows, blank)]
        found = [("", (*HEADINGS, marked("x cut"), marked("y cut")), rows)]
    else:
        found = [("", HEADINGS, rows)]
    if shape.oversized and not same:
        found.append((word("As cut"), HEADINGS, [_row(c, look) for c in blank]))
    for hole in shape.holes:
        turned = tuple(segment.reversed() for segment in reversed(hole))
        rows = [_row(c, look) for c in corners_of(turned, "opening")]
        found.append((word("Opening, cut after pressing"), HEADINGS, rows))
    return found


def _row(corner: Corner, look: Look) -> tuple[str, ...]:
    place = (look.lengths.cell(corner.x), look.lengths.cell(corner.y))
    if corner.side is None:
        return ("", *place, "", word("on the curve"), "")
    return (
        str(corner.number), *place, degrees(corner.angle), _side_words(corner.side, look),
        look.lengths.cell(corner.side.chord),
    )  # fmt: skip


def _tables_width(tables: Sequence[Table], room: float) -> float:
    return max(table_width(headings, rows, room) for _, headings, rows in tables)


def _tables_height(tables: Sequence[Table], wide: float) -> float:
    return sum(7.5 * bool(title) + 3.0 + table_height(h, rows, wide) for title, h, rows in tables)


def _put_tables(drawing: Drawing, box: Box, tables: Sequence[Table]) -> list[Table]:
    """Tables from the top of a box down; what found no room."""
    left: list[Table] = []
    y = box.top
    for title, headings, rows in tables:
        needed = table_height(headings, rows[:1], box.wide) + 3.0 + 7.5 * bool(title)
        if left or y - needed < box.y:
            left.append((title, headings, rows))
            continue
        y -= 3.0
        if title:
            y = text_block(drawing, box.below(y - 2.0), [title], between=False) - 1.5
        y, rest = table(drawing, box.below(y), headings, rows)
        if rest:
            left.append((say("{title}, continued", title=title) if title else "", headings, rest))
    return left


# --- a piece --------------------------------------------------------------------------------------


def _piece_cell(shape: Shape, name: str, look: Look) -> Cell:
    tables = _tables(shape, look)
    texts = [*_words(shape, look), word(DATUM)]

    def beside(wide: float) -> float:
        return max(_tables_width(tables, wide - TALL - BETWEEN), 70.0)

    def least(wide: float) -> float:
        across = beside(wide)
        words = text_height(texts, across, between=False) + _tables_height(tables, across)
        return 9.0 + max(words, _wanted(shape))

    def draw(drawing: Drawing, box: Box) -> tuple[str, list[Cell]]:
        made, words = _arranged(shape, look, texts, tables, box)
        heading(drawing, box, say("{name}, scale {scale}", name=name, scale=str(made.scale)))
        made.put(drawing, box.x, box.top - 9.0 - made.box.high)
        y = text_block(drawing, words, texts, between=False)
        left = _put_tables(drawing, words.below(y), tables)
        more = [_more_cell(say("{title}, continued", title=name), left)] if left else []
        return str(made.scale), more

    return Cell(least, draw)


def _arranged(
    shape: Shape, look: Look, texts: Sequence[str], tables: Sequence[Table], box: Box
) -> tuple[Figure, Box]:
    """The figure and the field of the words: beside it where they need not be narrow to make it as
    large as it can be, else below it."""
    deep = text_height(texts, box.wide, between=False) + _tables_height(tables, box.wide)
    natural = max(_tables_width(tables, box.wide - TALL - BETWEEN), 70.0)
    rooms = [(box.wide - across - BETWEEN, box.high - 9.0) for across in (natural, 80.0)]
    rooms.append((box.wide, box.high - 15.0 - deep))
    made = [
        figure(lambda on, f: draw_piece(on, shape, f, look.lengths), shape.blank_size, room)
        for room in rooms if min(room) > 40.0
    ]  # fmt: skip
    best = max(range(len(made)), key=lambda k: (made[k].scale.factor, -k))
    drawn = made[best]
    if best == len(rooms) - 1:
        return drawn, box.below(box.top - 15.0 - drawn.box.high)
    room = box.wide - max(drawn.box.wide, TALL) - BETWEEN
    across = max(_tables_width(tables, room), 70.0)
    return drawn, Box(box.right - across, box.y, across, box.high - 9.0)


def _more_cell(name: str, tables: Sequence[Table]) -> Cell:
    """What of a piece's tables found no room beside its drawing."""

    def least(wide: float) -> float:
        return 9.0 + _tables_height(tables, wide)

    def draw(drawing: Drawing, box: Box) -> tuple[str, list[Cell]]:
        rest = heading(drawing, box, name)
        left = _put_tables(drawing, rest, tables)
        return "", [_more_cell(name, left)] if left else []

    return Cell(least, draw)


def _wanted(shape: Shape) -> float:
    """mm of height for the figure at SMALLEST, within reason."""
    return min(max(shape.blank_size[1] * SMALLEST + 26.0, LEAST), 180.0)


DATUM = marked("x from the left end and y from the lower end of the finished piece.")


# --- a wedge --------------------------------------------------------------------------------------


def _wedge_cell(shape: Shape, name: str, look: Look) -> Cell:
    wedge = shape.wedge
    assert wedge is not None
    texts = [*_words(shape, look), *_rim_words(shape, look)]
    headings, rows = _rim_rows(shape, look)
    x0, y0, x1, y1 = wedge.extents

    def least(wide: float) -> float:
        return 9.0 + text_height(texts, wide, between=False) + _tall(wedge) + _below(rows, look)

    def draw(drawing: Drawing, box: Box) -> tuple[str, list[Cell]]:
        words = text_height(texts, box.wide, between=False)
        low = box.y + max(0.0, min(_below(rows, look), box.high - 15.0 - words - _tall(wedge)))
        field = Box(box.x, low, box.wide, box.top - 9.0 - words - 6.0 - low)
        made = figure(
            lambda on, f: draw_wedge(on, wedge, f, look.lengths), (x1 - x0, y1 - y0),
            (field.wide, field.high),
        )  # fmt: skip
        title = say("{name}, scale {scale}", name=name, scale=str(made.scale))
        rest, left = heading(drawing, box, title), []
        y = text_block(drawing, rest, texts, between=False)
        made.put(drawing, field.x, y - 6.0 - made.box.high)
        if rows:
            field = box.below(y - 9.0 - made.box.high)
            left = _put_tables(drawing, field, [("", headings, rows)])
        more = [_more_cell(say("{title}, continued", title=name), left)] if left else []
        return str(made.scale), more

    return Cell(least, draw)


def _tall(wedge: Wedge) -> float:
    """mm of height that a wedge is given at least."""
    _, y0, _, y1 = wedge.extents
    return min(max((y1 - y0) * SMALLEST + 44.0, LEAST), 160.0)


def _below(rows: Sequence[object], look: Look) -> float:
    lines = 2 if look.lengths.unit == "both" else 1
    return (len(rows) + 1) * row_height(lines) + 8.0 if rows else 0.0


def _rim_words(shape: Shape, look: Look) -> list[str]:
    wedge, lengths = shape.wedge, look.lengths
    assert wedge is not None
    words = [say("Tip {angle}.", angle=degrees(wedge.angle))]
    if wedge.rise > 0.0:
        words.append(say(
            "Rim: arc of radius {radius}, chord {chord}, rise {rise}.",
            radius=lengths.length(wedge.rim[0].radius),  # type: ignore[union-attr]
            chord=lengths.length(wedge.chord), rise=lengths.length(wedge.rise),
        ))  # fmt: skip
    elif len(wedge.flats) == len(wedge.rim) == 1:
        words.append(say("Rim: one straight of {length}.", length=lengths.length(wedge.chord)))
    elif len(wedge.flats) == len(wedge.rim):
        flats = " + ".join(map(lengths.length, wedge.flats))
        words.append(say("Rim from the lower seam: {lengths}.", lengths=flats))
    if shape.oversized:
        words.append(
            say(
                "As cut the rim is {over} over and the axis {axis} long.",
                over=lengths.length(wedge.oversize), axis=lengths.length(on_axis(wedge)),
            )
        )
    return [" ".join(words)]


def _rim_rows(shape: Shape, look: Look) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    """Places of a rim that is no single arc or straight, along the axis from the tip and off it."""
    wedge, lengths = shape.wedge, look.lengths
    headings = (
        marked("rim, from the lower seam"), marked("along the axis"), marked("off it"),
        marked("from here on"), marked("chord"),
    )
    assert wedge is not None
    if wedge.rise > 0.0 or len(wedge.rim) == len(wedge.flats) == 1:
        return headings, []
    corners = shape.corners
    numbers = [k for k, c in enumerate(corners) if c.number == 2]
    last = [k for k, c in enumerate(corners) if c.number == len(wedge.net)]
    rows = []
    for corner in corners[numbers[0] : last[0] + 1]:
        name = word("point") if corner.side is None else word("corner")
        if corner.number == 2:
            name = word("end of the lower seam")
        elif corner.number == len(wedge.net):
            name = word("end of the upper seam")
        on = corner.side is not None and corner.number != len(wedge.net)
        rows.append((
            name, lengths.cell(corner.x), lengths.cell(corner.y),
            _side_words(corner.side, look) if on and corner.side else "",
            lengths.cell(corner.side.chord) if on and corner.side else "",
        ))  # fmt: skip
    return headings, rows


# --- set-out --------------------------------------------------------------------------------------


def _set_out_cell(one: SetOut, look: Look) -> Cell:
    lengths = look.lengths
    texts = [
        say(
            "On a straight line mark {base} from the tip. There square off {offset} to both "
            "sides. The seams run from the tip through the two marks. Make a test cut and lay it "
            "together before the stack is cut.",
            base=lengths.length(one.base), offset=lengths.length(one.offset),
        ),
    ]

    def least(wide: float) -> float:
        return 9.0 + text_height(texts, wide) + 52.0

    def draw(drawing: Drawing, box: Box) -> tuple[str, list[Cell]]:
        rest = heading(drawing, box, say(
            "Set-out of {angle}, not to scale",
            angle=degrees(one.angle),
        ))
        y = text_block(drawing, rest, texts, between=False)
        wide, high = min(box.wide, 150.0), min(y - box.y - 10.0, 70.0)
        made = figure(
            lambda on, _: draw_set_out(on, one, lengths, wide, high), (1.0, 1.0), (wide, 200.0)
        )
        made.put(drawing, box.x, y - 6.0 - made.box.high)
        return "", []

    return Cell(least, draw)
