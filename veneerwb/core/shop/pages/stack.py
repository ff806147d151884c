# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every cut on the leaf that lies on top of the stack, dimensioned from two marks of that leaf."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

from shapely.geometry import LineString
from shapely.geometry import Point as ShapelyPoint

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Bundle
from veneerwb.core.outlines.edge import Arc, Point, straights
from veneerwb.core.plane import polar
from veneerwb.core.shop.drawing.drawn import (
    CHAIN,
    DASHED,
    MEDIUM,
    RED,
    THICK,
    THIN,
    Drawing,
    placed,
)
from veneerwb.core.shop.drawing.legible import area
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, degrees, runs, width
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page, blank_page, table
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import Figure, figure, free, partings
from veneerwb.core.shop.pages.pictures import Pictured, Pictures
from veneerwb.core.shop.stack import CutOnLeaf, cuts_on_leaf
from veneerwb.words import filled, marked, say, word

CODE = "stack"
CAUTION = marked(
    "The stack must be pinned and held between boards before it is cut; the papers on pinning and "
    "cutting say how."
)
STANDING = (DRY_LAY, CAUTION)
ORIGIN = (0.0, 0.0)
CASING, BALLOON = "#ffffff", 2.9
FIELD_ROOM = 46.0
"""mm of height that the table of places takes below the words."""


def pages(
    layout: Layout, look: Look, pictures: Pictures | None = None,
    marks: Mapping[int, Any] | None = None,
) -> list[Page]:  # fmt: skip
    """A page for each cut of the layout. `marks`: by leaf, its paper marks (leaf mm)."""
    photographed = isinstance(layout.bundle, Bundle)
    return [
        _page(cut, look, pictures or Pictures(), photographed)
        for cut in cuts_on_leaf(layout, marks)
    ]


def _page(cut: CutOnLeaf, look: Look, pictures: Pictures, photographed: bool) -> Page:
    texts = _texts(cut, look, photographed, cut.leaf in pictures.leaves)
    field = free(look, STANDING)
    parted = partings(field, texts, FIELD_ROOM)[0]
    room = (parted.figure.wide, parted.figure.high)
    made, laid = _figure(cut, look, pictures, room)
    if laid:
        texts[0] += " " + word("It is drawn lying, its lower end to the left.")
    values = {"number": cut.number, "count": cut.count, "leaf": cut.leaf}
    title, named = (
        (say("The cut on the stack {number} of {count}", **values),
         say("Cut {number} of {count} on leaf {leaf}", **values))
        if cut.count > 1
        else (word("The cut on the stack"), say("Cut on leaf {leaf}", **values))
    )  # fmt: skip
    page, _ = blank_page(look, CODE, title, str(made.scale), STANDING)
    made.centred(page.drawing, parted.figure)
    rest = parted.write(page.drawing, named, texts)
    table(page.drawing, rest.below(rest.top - 3.0), *_table(cut, look), parted.height)
    return page


def _figure(
    cut: CutOnLeaf, look: Look, pictures: Pictures, room: tuple[float, float]
) -> tuple[Figure, bool]:
    """The leaf upright, or on its side if that makes it larger."""
    photo = pictures.leaves.get(cut.leaf)
    made = figure(lambda on, f: _draw(on, cut, f, look, photo), cut.size, room)
    laid = cut.laid
    lying = figure(lambda on, f: _draw(on, laid, f, look, None), laid.size, room)
    if lying.scale.factor <= made.scale.factor:
        return made, False
    if photo:
        turned = photo.laid(cut.size[0])
        lying = figure(lambda on, f: _draw(on, laid, f, look, turned), laid.size, room)
    return lying, True


# --- words ----------------------------------------------------------------------------------------


def _texts(cut: CutOnLeaf, look: Look, photographed: bool, pictured: bool) -> list[str]:
    values: dict[str, object] = {
        **dict(zip("ab", (mark.said for mark in cut.marks))), "leaf": cut.leaf,
        "positions": runs(cut.positions), "turn": degrees(abs(cut.turn)), "shown": cut.shown,
    }  # fmt: skip
    marks = (
        say("A and B are the paper marks {a} and {b} of leaf {leaf}.", **values)
        if cut.marks[0].kind == "paper mark"
        else say("A: {a}, B: {b} of leaf {leaf}, as it was outlined; mark them before anything is "
                 "trimmed off.", **values)
    )  # fmt: skip
    way = "along" if abs(cut.turn) < 0.005 else "left" if cut.turn > 0.0 else "right"
    lean = filled(word(LEANS[cut.wedge, way]), values)
    texts = [
        say("Leaf {leaf} lies on top, face up, grain upright. The cut serves positions "
            "{positions}.", **values),
        marks,
        word("Measure along A-B from A, then square to the side.") + f" {lean}",
        say("Thick: the cut. Thin within it: position {shown} as finished. Dashed: the area that "
            "may be used.", **values),
    ]
    if pictured:
        texts.append(word("The photograph is paled, so that lines on it can be read."))
    if cut.faults:
        count = Counter(fault.kind for fault in cut.faults)
        told = ", ".join(f"{n} x {word(kind)}" for kind, n in sorted(count.items()))
        texts.append(say("Red: faults of this leaf ({told}); others have their own.", told=told))
    if photographed:
        texts.append(
            word(
                "Other leaves lie under it by their registers, not by their edges: what is "
                "measured here holds for this leaf alone."
            )
        )
    return texts


LEANS = {
    (True, "along"): marked("The axis runs along A-B."),
    (True, "left"): marked("The axis leans {turn} to the left of A-B."),
    (True, "right"): marked("The axis leans {turn} to the right of A-B."),
    (False, "along"): marked("The line between the two corners runs along A-B."),
    (False, "left"): marked("The line between the two corners leans {turn} to the left of A-B."),
    (False, "right"): marked("The line between the two corners leans {turn} to the right of A-B."),
}


def _table(cut: CutOnLeaf, look: Look) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    cell = look.lengths.cell
    headings = (
        marked("place"), marked("along A-B"), marked("square off"), marked("from A"),
        marked("from B"),
    )
    rows = [
        (f"{letter}: {word(p.name)}", cell(p.along), f"{cell(abs(p.beside))} {word(p.side)}",
         cell(p.near), cell(p.far))
        for letter, p in zip("CD", cut.places)
    ]
    return headings, rows


# --- drawing --------------------------------------------------------------------------------------


def _draw(
    drawing: Drawing, cut: CutOnLeaf, f: float, look: Look, photo: Pictured | None
) -> None:
    """The leaf from its face, the lower left corner of what is drawn at the origin."""
    wide, high = (f * v for v in cut.size)
    if photo:
        box = photo.box
        drawing.picture(photo.data, Box(f * box.x, f * box.y, f * box.wide, f * box.high))
    drawing.rectangle(Box(0.0, 0.0, wide, high), THIN)
    for part in _parts(cut.usable):
        drawing.edge(_on_paper(part, f), THIN, DASHED)
    for fault in cut.faults:
        for part in _parts(fault.outline):
            drawing.edge(_on_paper(part, f), MEDIUM, colour=RED)
    for part in _parts(cut.outline):
        for weight, colour in ((4.0 * THICK, CASING), (1.5 * THICK, "#000000")):
            drawing.edge(_on_paper(part, f), weight, colour=colour)
    drawing.edge(placed(cut.net, f, ORIGIN), THIN)
    _axis(drawing, cut, f)
    _measured(drawing, cut, f, look)
    _named(drawing, cut, f)


def _parts(shape: Any) -> list[Any]:
    return [part for part in getattr(shape, "geoms", [shape]) if part.geom_type == "Polygon"]


def _on_paper(polygon: Any, f: float) -> Any:
    points = list(polygon.simplify(0.05 / f).exterior.coords)[:-1]
    return straights([(f * x, f * y) for x, y in points])


def _axis(drawing: Drawing, cut: CutOnLeaf, f: float) -> None:
    (ax, ay), (bx, by) = (place.at for place in cut.places)
    long = math.dist((ax, ay), (bx, by)) or 1.0
    ux, uy = (bx - ax) / long, (by - ay) / long
    start, end = (f * ax - 3.0 * ux, f * ay - 3.0 * uy), (f * bx + 3.0 * ux, f * by + 3.0 * uy)
    if cut.wedge:
        drawing.line(start, end, THIN, CHAIN)


def _measured(drawing: Drawing, cut: CutOnLeaf, f: float, look: Look) -> None:
    """The two places along the line A-B and square off it; all dimension lines off the leaf."""
    a, b = (tuple(f * v for v in mark.place) for mark in cut.marks)
    way = math.atan2(b[1] - a[1], b[0] - a[0])
    u, n = (math.cos(way), math.sin(way)), (-math.sin(way), math.cos(way))
    drawing.line(a, b, MEDIUM, CHAIN)
    corners = [(x, y) for x in (0.0, f * cut.size[0]) for y in (0.0, f * cut.size[1])]
    off_left = max(_dot(n, c, a) for c in corners)
    off_right = max(-_dot(n, c, a) for c in corners)
    left = off_left <= off_right
    aside = (off_left if left else off_right) + 9.0
    lengths = look.lengths
    for place in sorted(cut.places, key=lambda place: abs(place.along)):
        foot = _moved(a, u, f * place.along)
        first, last = (a, foot) if place.along >= 0.0 else (foot, a)
        gap, text = math.dist(first, last), lengths.length(abs(place.along))
        if gap > 0.5:
            drawing.distance(first, last, text, aside if left else -aside)
            beside = width(text, SMALL) + 2.0
            aside += 9.0 + (beside if gap < beside else 0.0)
    back = max(-_dot(u, c, a) for c in corners)
    ahead = max(_dot(u, c, a) for c in corners)
    by_height = sorted(cut.places, key=lambda place: place.along)
    for place, forward in zip(by_height, (False, True)):
        foot, at = _moved(a, u, f * place.along), _moved(ORIGIN, place.at, f)
        if math.dist(foot, at) < 0.5:
            continue
        reach = (ahead - f * place.along if forward else back + f * place.along) + 9.0
        rightward = place.beside < 0.0
        first, last = (foot, at) if rightward else (at, foot)
        # To the left of the way from first to last lies u.
        drawing.distance(first, last, lengths.length(abs(place.beside)),
                         reach if forward else -reach)  # fmt: skip


def _dot(u: Point, p: Point, origin: Point) -> float:
    return u[0] * (p[0] - origin[0]) + u[1] * (p[1] - origin[1])


def _moved(p: Point, by: Point, times: float) -> Point:
    return p[0] + times * by[0], p[1] + times * by[1]


def _named(drawing: Drawing, cut: CutOnLeaf, f: float) -> None:
    """The letters of marks and places in circles, each where it lies on no other."""
    taken = [area(m) for m in drawing.marks if hasattr(m, "text")]
    spots = [mark.place for mark in cut.marks] + [place.at for place in cut.places]
    points = [(f * x, f * y) for x, y in spots]
    taken += [LineString([(f * x, f * y) for x, y in part.exterior.coords])
              for part in _parts(cut.outline)]  # fmt: skip
    for point in points:
        drawing.edge((Arc(point, 0.9, 0.0, 360.0),), MEDIUM, fill=CASING)
        taken.append(ShapelyPoint(point).buffer(1.0))
    for letter, point in zip("ABCD", points):
        at = _circle_place(point, taken, (f * cut.size[0], f * cut.size[1]))
        drawing.edge((Arc(at, BALLOON, 0.0, 360.0),), THIN, fill=CASING)
        drawing.text((at[0], at[1] - PLAIN / 2.0), letter, PLAIN)
        taken.append(ShapelyPoint(at).buffer(BALLOON))


def _circle_place(at: Point, taken: Sequence[Any], size: tuple[float, float]) -> Point:
    """Beside a place, on the leaf if it can be."""
    options = [
        _moved(at, polar(BALLOON + off, 45.0 + 45.0 * k), 1.0)
        for off in (2.2, 4.0) for k in (0, 2, 4, 6, 1, 3, 5, 7)
    ]  # fmt: skip

    def bad(p: Point) -> tuple[bool, bool]:
        here = ShapelyPoint(p).buffer(BALLOON + 0.4)
        off = not (BALLOON < p[0] < size[0] - BALLOON and BALLOON < p[1] < size[1] - BALLOON)
        return any(here.intersects(other) for other in taken), off

    return min(options, key=bad)
