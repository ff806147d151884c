# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pinning and marking on paper: where the pins stand, where each leaf's holes go, in figures and
on strips at 1:1, and what is chalked inside each cut."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from shapely.geometry import LineString, Polygon
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import nearest_points

from veneerwb.core.layout import Layout
from veneerwb.core.outlines.edge import straights
from veneerwb.core.plane import Point
from veneerwb.core.shop.cutting.said import ERROR, in_units
from veneerwb.core.shop.drawing.drawn import MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, width
from veneerwb.core.shop.drawing.page import Look, Page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.cutting_cells import Told, table_pages
from veneerwb.core.shop.pages.cutting_pictures import WOOD, View, dot
from veneerwb.core.shop.pages.pinning_strips import strip_pages
from veneerwb.core.shop.pinning.chalking import Chalked, Chalking
from veneerwb.core.shop.pinning.plan import PinnedStack, Pinning
from veneerwb.core.shop.shown import WAYS
from veneerwb.words import marked, say, word

Length = Callable[[float], str]
CODE, TITLE = "pinning", marked("Pinning")
HEADINGS = (
    marked("leaf"), marked("hole"), "a", "b", marked("from a"), marked("from b"),
    marked("along a b"), marked("square off it"), marked("found to"),
)
PRICK = marked(
    "Caution: prick with an awl away from the hand that holds the leaf, on a soft board. Drive "
    "the pins square: a pin that leans moves every leaf by its height in the stack."
)


def pages(pinning: Pinning, look: Look) -> list[Page]:
    """The pages of a pinning: where pins stand, the table of all holes, the strips."""
    strips, tall = strip_pages(pinning, look)
    length, error = in_units(look.lengths), in_units(look.lengths, ERROR)
    cells = [_stack(pinning, stack, length, error) for stack in pinning.stacks]
    cells.append(Told(word("How holes are found"), _how(pinning, error, tall), _drawn_hole, 60.0))
    columns = 2 if look.lengths.unit != "both" and look.paper.wide >= 400.0 else 1
    rows = _rows(pinning, look)
    return [*table_pages(look, CODE, TITLE, HEADINGS, rows, cells, columns=columns), *strips]


def _stack(pinning: Pinning, stack: PinnedStack, length: Length, error: Length) -> Told:
    def draw(drawing: Drawing, box: Box) -> None:
        _pins(drawing, box, stack, length)

    name = (
        say("Stack {stack}: where the pins stand", stack=stack.pile.name)
        if len(pinning.stacks) > 1
        else word("Where the pins stand")
    )
    worst = stack.worst
    texts = (
        word("Seen from the faces of the leaves, grain upright."),
        say(
            "The pins stand {apart} apart in the board under the leaves, {free} from the nearest "
            "cut, and {margin} inside every leaf and outside every fault at least.",
            apart=length(stack.apart), free=length(stack.free), margin=length(pinning.margin),
        ),
        say(
            "The two holes of every leaf are {apart} apart: measure this before you prick. "
            "Measure and prick every leaf face up, those that will be turned over as well.",
            apart=length(stack.apart),
        ),
        say(
            "By the errors of its holes alone the cut is off by up to {at_cut} (root mean square, "
            "leaf {leaf}).",
            at_cut=error(worst.at_cut), leaf=worst.leaf,
        ),
        *(note.text(length) for note in stack.notes),
        word(PRICK),
    )
    return Told(name, texts, draw, 80.0)


def _pins(drawing: Drawing, box: Box, stack: PinnedStack, length: Length) -> None:
    x = [p[0] for p in stack.places]
    y = [p[1] for p in stack.places]
    x0, y0, x1, y1 = stack.pile.outlines.bounds
    bounds = (min(x0, *x), min(y0, *y), max(x1, *x), max(y1, *y))
    view = View.of(bounds, Box(box.x + 14.0, box.y + 10.0, box.wide - 28.0, box.high - 18.0))
    for cut in stack.pile.cuts:
        view.area(drawing, cut.outline, MEDIUM, WOOD)
    a, b = map(view.point, stack.places)
    drawing.line(a, b, THIN, (3.0, 1.5))
    for k, at in enumerate((a, b)):
        dot(drawing, at, 1.8, "#ffffff")
        dot(drawing, at, 0.5)
        away = 1.0 if at[0] >= (a[0] + b[0]) / 2.0 else -1.0
        anchor = "start" if away > 0.0 else "end"
        drawing.text(
            (at[0] + 3.0 * away, at[1] - SMALL / 2.0),
            say("pin {number}", number=k + 1),
            SMALL,
            anchor,
        )
    drawing.text(
        (box.x + box.wide / 2.0, box.y + 1.0),
        say("1 to 2: {apart}", apart=length(stack.apart)),
        SMALL,
    )


def _how(pinning: Pinning, error: Length, tall: Sequence[str]) -> tuple[str, ...]:
    kinds = {h.a.kind: h.a.known for s in pinning.stacks for one in s.leaves for h in one.holes}
    known = ", ".join(say(KNOWN[kind], error=error(value)) for kind, value in kinds.items())
    texts = [
        word(
            "Two ways, seen from the face: two arcs, their radii the distances from a and from b; "
            "or along the line from a to b, then square off it, to the left or right with a "
            "behind and b ahead. The two must meet."
        ),
        word(
            "Or lay the strip on the leaf, its cross where the strip says and its line along a "
            "straightedge through both marks, the arrow towards the second, and prick the hole "
            "through the ring. Print at 100 %: the bars must measure 100 mm."
        ),
        say(
            '"Found to": how far the hole may be off (root mean square) where lengths are read to '
            "{read} and marks are known: {known}. These are common practice, no published source: "
            "set your own.", read=error(pinning.read), known=known,
        ),
    ]
    if tall:
        names = "; ".join(tall[:3])
        if len(tall) > 3:
            names = say("{some} and {count} more", some=names, count=len(tall) - 3)
        texts.append(say(
            "Too tall for a strip on this paper, by figures only: {names}.",
            names=names,
        ))
    return tuple(texts)


KNOWN = {
    "paper mark": marked("a paper mark to {error}"),
    "picked point": marked("a picked point to {error}"),
    "corner": marked("a corner to {error}"),
}


def _drawn_hole(drawing: Drawing, box: Box) -> None:
    """Two marks and a hole, with both ways to it."""
    a = (box.x + 0.22 * box.wide, box.y + 0.2 * box.high)
    b = (box.x + 0.8 * box.wide, box.y + 0.3 * box.high)
    hole = (box.x + 0.42 * box.wide, box.y + 0.8 * box.high)
    drawing.line(a, b, THIN, (3.0, 1.5))
    for p in (a, b):
        drawing.line(p, hole, THIN)
    share = ((hole[0] - a[0]) * (b[0] - a[0]) + (hole[1] - a[1]) * (b[1] - a[1])) / math.dist(
        a, b) ** 2
    foot = a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
    drawing.line(foot, hole, MEDIUM, (1.0, 1.0))
    for p, name, off in ((a, "a", (-4.0, -3.0)), (b, "b", (4.0, -3.0))):
        for half in (3.0,):
            drawing.line((p[0] - half, p[1]), (p[0] + half, p[1]), MEDIUM)
            drawing.line((p[0], p[1] - half), (p[0], p[1] + half), MEDIUM)
        drawing.text((p[0] + off[0], p[1] + off[1] - SMALL), name, PLAIN)
    dot(drawing, hole, 1.8, "#ffffff")
    dot(drawing, hole, 0.5)
    drawing.text((hole[0] + 4.0, hole[1] - SMALL / 2.0), word("hole"), SMALL, "start")


def _rows(pinning: Pinning, look: Look) -> list[tuple[str, ...]]:
    size, error = look.lengths.length, in_units(look.lengths, ERROR)
    rows = []
    for stack in pinning.stacks:
        named = f"{stack.pile.name} " if len(pinning.stacks) > 1 else ""
        for one in stack.leaves:
            leaf = f"{named}{one.leaf}"
            leaf = say("{leaf} back", leaf=leaf) if one.back else leaf
            leaf = say("{leaf} spare", leaf=leaf) if one.spare else leaf
            for k, h in enumerate(one.holes, start=1):
                rows.append((
                    leaf, str(k), h.a.brief, h.b.brief,
                    size(h.near), size(h.far), size(h.along),
                    f"{size(abs(h.beside))} {word(h.side)}", error(h.error),
                ))
    return rows


# --- chalk ----------------------------------------------------------------------------------------

CHALKED = (
    marked("chalk"), marked("leaf"), marked("on its"), marked("from its left"),
    marked("from its foot"), marked("arrow"),
)


def marking_pages(chalking: Chalking, layouts: Sequence[Layout], look: Look) -> list[Page]:
    """The pages of what is chalked inside each cut."""
    length = in_units(look.lengths)
    texts = tuple(note.text(length) for note in chalking.notes)
    shown = [next((m for m in chalking.marks if m.side == side), None) for side in ("face", "back")]

    def draw(drawing: Drawing, box: Box) -> None:
        there = [mark for mark in shown if mark is not None]
        for mark, field in zip(there, box.columns(len(there), 4.0)):
            _marked(drawing, field, mark, layouts[mark.top - 1])

    cell = Told(word("What is chalked"), (*texts, word(_PLACES)), draw, 70.0)
    size = look.lengths.length
    many = len(layouts) > 1
    rows = [
        (say("top {top}: {text}", top=m.top, text=m.text) if many else m.text, str(m.leaf),
         word(m.side), size(m.beside),
         size(m.above), _pointing(m.arrow_seen))
        for m in chalking.marks
    ]
    columns = 1 if look.lengths.unit == "both" else 2
    return table_pages(look, "marking", word("Marking"), CHALKED, rows, [cell], columns=columns)


_PLACES = marked(
    "Places are those of the mark's middle, from the left edge as seen on the side that is "
    "chalked and from the lower end; a finger's breadth either way does no harm."
)


def _pointing(degrees: float) -> str:
    return word(WAYS[round(degrees / 45.0) % 8])


def _marked(drawing: Drawing, box: Box, mark: Chalked, layout: Layout) -> None:
    """A piece on its leaf, as seen on the side that is chalked, with its mark."""
    piece = next(p for p in layout.pieces if p.position == (mark.position or 1))
    register = layout.bundle.register(mark.leaf, mark.turned)
    outline = (register @ piece.onto_bundle).apply_to(piece.outline)
    flip = -1.0 if mark.side == "back" else 1.0
    x0, y0, x1, y1 = outline.bounds
    bounds = (x0, y0, x1, y1) if flip > 0.0 else (-x1, y0, -x0, y1)
    view = View.of(bounds, Box(box.x + 3.0, box.y + 8.0, box.wide - 6.0, box.high - 12.0))

    def onto(p: Point) -> Point:
        return view.point((flip * p[0], p[1]))

    corners = [onto(p) for p in outline.exterior.simplify(0.1 / view.factor).coords[:-1]]
    drawing.edge(straights(corners), MEDIUM, fill=WOOD)
    shape = Polygon(corners)
    room = shape.buffer(-0.5 * width(mark.text, PLAIN) - 0.5)
    at = ShapelyPoint(onto(mark.on_leaf))
    if room.is_empty:  # too narrow on the paper: beside it
        right = shape.bounds[2] + 5.0
        drawing.text((right + 1.0, at.y - PLAIN / 2.0), mark.text, PLAIN, "start")
        drawing.line((right, at.y), (at.x, at.y), THIN)
    else:
        at = at if room.contains(at) else nearest_points(room, at)[0]
        drawing.text((at.x, at.y - PLAIN / 2.0), mark.text, PLAIN)
    turn = math.radians(mark.arrow_seen)
    for near, far in ((5.5, 13.0), (-13.0, -5.5)):  # ahead of the words, or where that is outside
        a, b = ((at.x + r * math.cos(turn), at.y + r * math.sin(turn)) for r in (near, far))
        if shape.contains(LineString([a, b])):
            drawing.line(a, b, MEDIUM)
            drawing.arrow(b, mark.arrow_seen)
            break
    drawing.text(
        (box.centre[0], box.y + 1.0),
        say("leaf {leaf}, {side}", leaf=mark.leaf, side=word(mark.side)),
        SMALL,
    )
