# SPDX-License-Identifier: LGPL-2.1-or-later
"""The plan: the top from its show face with every piece's number, leaf and grain, what lies round
the field and in it, and its sizes."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from shapely.geometry import Polygon

from veneerwb.core.layout import Layout
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Point
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import MEDIUM, THICK, THIN, Drawing, placed
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.drawing.page import Look, Page, blank_page, row_height, table, table_width
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import SCALES, Scale
from veneerwb.core.shop.pages import placing
from veneerwb.core.shop.pages.kit import Parted, free, partings
from veneerwb.core.shop.pages.placing_outside import Outside, outside_marks, text_of
from veneerwb.core.shop.pages.plan_letters import BALLOON, lettered
from veneerwb.core.shop.pages.plan_parts import draw_spot, part_pages
from veneerwb.core.shop.pages.plan_words import (
    Item,
    centre_of,
    items_of,
    off_centre,
    plan_texts,
    size_of,
)
from veneerwb.core.shop.shapes import seam_lines
from veneerwb.words import marked, word

CODE, TITLE = "plan", marked("Plan")
DIMENSION = 8.0
"""mm from the top to its first dimension, and from one to the next."""
AROUND = 3.0
SHADE = "#d8d8d8"
LISTED = 30.0
"""mm: how wide a block of the list of leaves is."""
CROWDED = 24
"""More seams than this are drawn thin."""


@dataclass(frozen=True)
class _Plan:
    """A plan on paper at one scale."""

    layout: Layout
    look: Look
    built: Built | None
    scale: Scale
    onto: Motion
    marks: placing.Marks
    outside: list[Outside]
    reach: float
    """mm of the paper that numbers outside take all round."""
    crowded: bool
    """Whether some numbers found no room, so that parts of the plan are drawn larger."""

    @property
    def at(self) -> Point:
        return self.onto.dx, self.onto.dy


def pages(layout: Layout, look: Look, built: Built | None = None) -> list[Page]:
    """The plan of a layout, and of the panel that it lies on."""
    items = items_of(layout, look, built)
    field_ = free(look)
    at_scale = lru_cache(None)(_tries(layout, built))
    best: tuple[_Plan, Parted] | None = None
    for k, leaves in ((0, True), (1, True), (0, False)):
        texts = plan_texts(layout, look, built, items, leaves, outside=True)
        options = partings(field_, texts)
        if k < len(options):
            made = _planned(layout, look, built, options[k].figure, bool(items), at_scale)
            if made and (best is None or _better(made, best[0])):
                best = (made, options[k])
    if best is None:  # without words
        bare = _planned(layout, look, built, field_, False, at_scale)
        assert bare is not None
        best = (bare, Parted(field_, Box(field_.x, field_.y, field_.wide, 0.0), False, SMALL))
    plan, parted = best
    page, _ = blank_page(look, CODE, TITLE, str(plan.scale))
    drawing = page.drawing
    _draw(drawing, plan, items)
    texts = plan_texts(
        layout, look, built, items, plan.marks.leaves, bool(plan.marks.outside), plan.crowded
    )
    rest = parted.write(drawing, TITLE, texts)
    if parted.beside:
        _listing(drawing, rest.below(rest.top - 4.0), layout)
    return [page, *(part_pages(layout, look, plan.scale) if plan.crowded else ())]


def _better(one: _Plan, other: _Plan) -> bool:
    def key(plan: _Plan) -> tuple[bool, float, int, float]:
        inside = len(plan.marks.inside)
        size = plan.marks.height + plan.marks.leaves
        return not plan.crowded, plan.scale.factor, inside, size

    return key(one) > key(other)


def _listing(drawing: Drawing, box: Box, layout: Layout) -> None:
    """Leaf and side of every position, in blocks beside each other, if there is room for all."""
    rows = [
        (str(p.position), str(p.leaf), word("back" if p.turned else "face")) for p in layout.pieces
    ]
    headings = marked("pos."), marked("leaf"), marked("side")
    wide = max(LISTED, table_width(headings, rows, box.wide))  # a language may have longer words
    roomy, blocks = (int((box.wide + 3.0) / (one + 3.0)) for one in (wide, LISTED))
    most = int((box.high - 1.0) / row_height()) - 1
    count = -(-len(rows) // max(most, 1))
    if most < 4 or count > blocks:
        return
    each = -(-len(rows) // count)
    blocks = roomy if count <= roomy else blocks
    for k, part in enumerate(box.columns(blocks, 3.0)[:count]):
        table(drawing, part, headings, rows[k * each : (k + 1) * each])


# --- where it stands ------------------------------------------------------------------------------


def _planned(
    layout: Layout, look: Look, built: Built | None, box: Box, balloons: bool,
    at_scale: Callable[[float], _Try],
) -> _Plan | None:  # fmt: skip
    """The plan at the largest scale at which it fits its field with all round it; None where it
    fits at none."""
    whole = built.top.edge if built else layout.top.edge
    (x0, x1), (y0, y1) = (edges.extent(whole, turn) for turn in (0.0, 90.0))
    for scale in SCALES:
        f = scale.factor
        size = (f * (x1 - x0), f * (y1 - y0))
        if size[0] > box.wide or size[1] > box.high:
            continue
        marks, outside, ring = at_scale(f)
        crowded = len(outside) < len(marks.outside)
        under, beside = _margins(layout, look, built, f)
        around = max(ring + 1.0, 2.0 * BALLOON + 8.0 if balloons else 0.0, AROUND)
        lower = max(around, ring + under)
        right = max(around, ring + beside)
        if size[0] + around + right <= box.wide and size[1] + around + lower <= box.high:
            left = (box.wide - size[0] - around - right) / 2.0 + around
            foot = (box.high - size[1] - around - lower) / 2.0 + lower
            onto = Motion(dx=box.x + left - f * x0, dy=box.y + foot - f * y0)
            moved = [replace(o, at=onto.point(o.at), tip=onto.point(o.tip)) for o in outside]
            marks = placing.moved(marks, onto)
            return _Plan(layout, look, built, scale, onto, marks, moved, ring, crowded)
    return None


_Try = tuple[placing.Marks, list[Outside], float]
"""Marks inside and outside, and how far out those reach, mm of the paper."""


def _tries(layout: Layout, built: Built | None) -> Callable[[float], _Try]:
    """What tells of a scale where the marks go, about the origin."""
    wide = [placing.widest(piece) for piece in layout.pieces]
    whole = built.top.edge if built else layout.top.edge
    centre = centre_of(layout)
    crossed = off_centre(layout, built)

    def tried(f: float) -> _Try:
        marks = placing.placed_marks(layout.pieces, wide, f, centre, crossed)
        if not marks.outside:
            return marks, [], 0.0
        outline = Polygon([(f * x, f * y) for x, y in edges.points(whole)])
        taken = [placing.block_area(spot, marks.height, marks.leaves) for spot in marks.inside]
        theirs = [wide[piece.position - 1] for piece in marks.outside]
        found = outside_marks(marks.outside, theirs, outline, f, marks.leaves, centre, taken)
        return marks, *(found or ([], 0.0))

    return tried


def _margins(
    layout: Layout, look: Look, built: Built | None, f: float
) -> tuple[float, float]:
    """mm below the top and right of it for its sizes."""
    found = _sizes(layout, look, built, f)
    under = max(size.off for size in found if size.level) + 3.0
    beside = [size.off + _overhang(size, f) + 3.0 for size in found if not size.level]
    return under, max(beside, default=0.0)


def _whole(plan: _Plan) -> Edge:
    """The edge of the whole top."""
    return plan.built.top.edge if plan.built else plan.layout.top.edge


def is_round(edge: Edge) -> bool:
    return len(edge) == 1 and isinstance(edge[0], Arc)


# --- drawing --------------------------------------------------------------------------------------


def _draw(drawing: Drawing, plan: _Plan, items: Sequence[Item]) -> None:
    layout, f, at = plan.layout, plan.scale.factor, plan.at
    _fills(drawing, plan)
    if plan.built:
        for part in plan.built.face:
            for loop in part.region.loops:
                drawing.edge(placed(loop, f, at), THIN)
    for seam in seam_lines(layout):
        drawing.edge(
            placed((seam,), f, at), MEDIUM if len(layout.pieces) <= CROWDED else THIN
        )
    whole = plan.built.top.region if plan.built else layout.top.region
    if plan.built:
        drawing.edge(placed(layout.top.edge, f, at), MEDIUM)
    for loop in whole.loops:
        drawing.edge(placed(loop, f, at), THICK)
    before = len(drawing.marks)
    _marked(drawing, plan)
    _measured(drawing, plan)
    _cross(drawing, plan)
    lettered(drawing, items, _whole(plan), f, plan.onto, before)


def _fills(drawing: Drawing, plan: _Plan) -> None:
    """The stringing line filled, so that it is seen however thin it is."""
    for part in plan.built.face if plan.built else ():
        if part.item in ("stringing line", "inlay"):
            fill = "#000000" if part.item == "stringing line" else SHADE
            outer, *holes = part.region.loops
            drawing.edge(placed(outer, plan.scale.factor, plan.at), 0.0, fill=fill)
            for hole in holes:
                drawing.edge(placed(hole, plan.scale.factor, plan.at), 0.0, fill="#ffffff")


def _marked(drawing: Drawing, plan: _Plan) -> None:
    marks = plan.marks
    for spot in marks.inside:
        draw_spot(drawing, spot, marks)
    for one in plan.outside:
        text = text_of(one.piece, marks.leaves)
        x, y = one.at
        half, high = width(text, SMALL) / 2.0, SMALL / 2.0 + 0.8
        way = math.degrees(math.atan2(one.tip[1] - y, one.tip[0] - x))
        ux, uy = polar(1.0, way)
        back = min((half + 0.8) / abs(ux) if abs(ux) > 1e-6 else 1e9,
                   high / abs(uy) if abs(uy) > 1e-6 else 1e9)  # fmt: skip
        drawing.line(one.tip, (x + back * ux, y + back * uy), THIN)
        drawing.edge((Arc(one.tip, 0.4, 0.0, 360.0),), 0.0, fill="#000000")
        number = str(one.piece.position)
        drawing.text((x, y - SMALL / 2.0), text, SMALL)
        if one.piece.turned:
            left = x - half
            low = y - SMALL / 2.0 - 0.6
            drawing.line((left, low), (left + width(number, SMALL), low))


@dataclass(frozen=True)
class _Size:
    """A dimension below the top (`level`) or right of it: between which places of the top (mm), in
    words, and how far off the top its line lies on the paper (mm)."""

    ends: tuple[float, float]
    text: str
    level: bool
    off: float


def _sizes(layout: Layout, look: Look, built: Built | None, f: float) -> list[_Size]:
    """The whole top's sizes, and within them those of the field; those that do not fit between
    their arrows stand beside them, and what is further out keeps clear of them."""
    whole = built.top.edge if built else layout.top.edge
    sizes = [("", whole)]
    if built and size_of(whole) != size_of(layout.top.edge):
        sizes.insert(0, (word("field") + " ", layout.top.edge))
    found, under, beside = [], DIMENSION, DIMENSION
    for before, edge in sizes:
        before += ROUND if is_round(edge) else ""
        across, along = (edges.extent(edge, turn) for turn in (0.0, 90.0))
        found.append(
            _Size(across, before + look.lengths.length(across[1] - across[0]), True, under)
        )
        under += DIMENSION
        if not is_round(edge):
            text = before + look.lengths.length(along[1] - along[0])
            found.append(_Size(along, text, False, beside))
            beside += DIMENSION + _overhang(found[-1], f)
    return found


ROUND = "\N{LATIN CAPITAL LETTER O WITH STROKE} "


def _overhang(size: _Size, f: float) -> float:
    """mm that a text beside its line takes."""
    wide = width(size.text, SMALL) + 3.0
    return wide if not size.level and f * (size.ends[1] - size.ends[0]) < wide else 0.0


def _measured(drawing: Drawing, plan: _Plan) -> None:
    whole, f, (dx, dy) = _whole(plan), plan.scale.factor, plan.at
    low = dy + f * edges.extent(whole, 90.0)[0]
    right = dx + f * edges.extent(whole, 0.0)[1]
    for size in _sizes(plan.layout, plan.look, plan.built, f):
        a, b = size.ends
        ends = (
            ((dx + f * a, low), (dx + f * b, low))
            if size.level
            else ((right, dy + f * a), (right, dy + f * b))
        )
        drawing.distance(*ends, size.text, -(size.off + plan.reach), plan.reach)


def _cross(drawing: Drawing, plan: _Plan) -> None:
    """The match's centre, where it is not that of the top."""
    if off_centre(plan.layout, plan.built):
        cx, cy = centre_of(plan.layout)
        x, y = plan.onto.point((plan.scale.factor * cx, plan.scale.factor * cy))
        arm = placing.CROSS
        drawing.line((x - arm, y), (x + arm, y), MEDIUM)
        drawing.line((x, y - arm), (x, y + arm), MEDIUM)
