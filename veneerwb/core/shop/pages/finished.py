# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture of the finished top, to scale."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line, Point
from veneerwb.core.outlines.region import Region
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import MEDIUM, THIN, Drawing, placed
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page, blank_page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import SHOW, figure, free, partings
from veneerwb.core.shop.pages.pictures import Pictured, Pictures
from veneerwb.words import marked, say, word

CODE, TITLE = "finished", marked("The finished top")
ORIGIN = (0.0, 0.0)
TINTS = {"border": "#c9b79c", "stringing line": "#4a3a2a", "inlay": "#e6dcc3"}
OTHER = "#d8d2c6"
"""Plain tints of what has no photograph."""


def pages(
    layout: Layout, look: Look, pictures: Pictures | None = None, built: Built | None = None
) -> list[Page]:
    """The picture of a layout from a bundle; none where there are no photographs."""
    shown = pictures.finished if pictures else None
    if shown is None:
        return []
    whole = built.top.edge if built else layout.top.edge
    (x0, x1), (y0, y1) = (edges.extent(whole, turn) for turn in (0.0, 90.0))
    texts = _texts(layout, look, built, (x1 - x0, y1 - y0))
    parted = partings(free(look), texts)
    made = [
        figure(
            lambda on, f: draw_top(on, layout, built, shown, f), (x1 - x0, y1 - y0),
            (option.figure.wide, option.figure.high),
        )
        for option in parted
    ]  # fmt: skip
    best = max(range(len(made)), key=lambda k: (made[k].scale.factor, -k))
    page, _ = blank_page(look, CODE, TITLE, str(made[best].scale), (DRY_LAY,))
    made[best].centred(page.drawing, parted[best].figure)
    parted[best].write(page.drawing, TITLE, texts)
    return [page]


def _texts(
    layout: Layout, look: Look, built: Built | None, size: tuple[float, float]
) -> list[str]:
    texts = [
        word(SHOW) + " " + say(
            "{count} pieces, {size} over all.", count=len(layout.pieces),
            size=look.lengths.size(*size),
        ),
        word(
            "Every piece shows the photograph of the side that is up, in its own colours and "
            "without finish. A screen or a printer may show them otherwise than daylight."
        ),
    ]
    unseen = [p.position for p in layout.pieces if _borrowed(layout, p.leaf, p.turned)]
    if unseen:
        texts.append(
            say("{count} pieces show a back that was not photographed: its neighbour's picture, or "
                "its own face, stands in for it.", count=len(unseen))
            if len(unseen) > 1
            else word("One piece shows a back that was not photographed: its neighbour's picture, "
                      "or its own face, stands in for it.")
        )  # fmt: skip
    return [*texts, *tinted(built)]


def tinted(built: Built | None) -> list[str]:
    """What is said of parts that have no photograph."""
    if not built or not built.face:
        return []
    items = ", ".join(map(word, dict.fromkeys(part.item for part in built.face)))
    return [say("In plain tints, without a photograph: {items}.", items=items)]


def _borrowed(layout: Layout, leaf: int, turned: bool) -> bool:
    return turned and layout.bundle.leaf(leaf).side(True).source != "photo"  # type: ignore[attr-defined]


def draw_top(
    drawing: Drawing, layout: Layout, built: Built | None, shown: Pictured, f: float,
    origin: Point = ORIGIN,
) -> None:  # fmt: skip
    """The top, `f` mm on paper for one, about a point of the drawing: the picture of the field, and
    in plain tints what lies round it and in it."""
    box = shown.box
    x, y = origin[0] + f * box.x, origin[1] + f * box.y
    drawing.picture(shown.data, Box(x, y, f * box.wide, f * box.high))
    for part in built.face if built else ():
        tint = TINTS.get(part.item, OTHER)
        drawing.edge(placed(_slit(part.region), f, origin), 0.0, fill=tint)
        for loop in part.region.loops:
            drawing.edge(placed(loop, f, origin), THIN)
    for loop in (built.top if built else layout.top).region.loops:
        drawing.edge(placed(loop, f, origin), MEDIUM)


def _slit(region: Region) -> Edge:
    """The outline of a region as one run, with a slit to each of its holes and back."""
    run = list(region.outer)
    home = run[-1].end
    for hole in region.holes:
        start = hole[0].start
        run += [Line(home, start), *hole, Line(start, home)]
    return tuple(run)
