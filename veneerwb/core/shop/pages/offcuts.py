# SPDX-License-Identifier: LGPL-2.1-or-later
"""What cuts leave of the leaves, on paper."""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import box as rectangle

from veneerwb.core.leaf import ranges
from veneerwb.core.shop.cutting.offcuts import LeafRest
from veneerwb.core.shop.drawing.drawn import DASHED, MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import SMALL
from veneerwb.core.shop.drawing.page import Look, Page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages import cutting_pictures as pictures
from veneerwb.core.shop.pages.cutting_cells import Told, table_pages
from veneerwb.words import marked, say, word


def pages(rests: Sequence[LeafRest], look: Look) -> list[Page]:
    """What is left of the leaves, and what for; none where nothing is."""
    if not rests:
        return []
    first = rests[0]

    def draw(drawing: Drawing, box: Box) -> None:
        _leaf_rest(drawing, box, first)

    texts = (
        say(
            "Leaf {leaf} as it is left, seen from its face; letters are those of the table.",
            leaf=first.leaf,
        ),
        *_shares(rests, look),
        word(
            "Sizes are of rectangles along the grain that fit; larger ones may be found by hand. "
            "What an offcut is kept for, and from which size on, is common practice: set your own."
        ),
        word(
            "Number every offcut as its leaf: a patch or a strip from the same leaf, or the next, "
            "matches in colour and figure."
        ),
    )
    cell = Told(word("What is left"), texts, draw, 80.0)
    return table_pages(look, "offcuts", word("Offcuts"), HEADINGS, _rows(rests, look), [cell])


def _shares(rests: Sequence[LeafRest], look: Look) -> list[str]:
    area = look.lengths.area
    used, kerf, left, usable = (
        sum(getattr(r, name) for r in rests) / 1e6 for name in ("cuts", "kerf", "left", "usable")
    )
    return [
        say(
            "Of {usable} of usable area in {count} leaves, {used} lie in the cuts, {kerf} go with "
            "the kerf and {left} are left.",
            usable=area(usable), count=len(rests), used=area(used), kerf=area(kerf),
            left=area(left),
        )
    ]


HEADINGS = (marked("leaves"), marked("offcut"), marked("across x along"), marked("can serve"))


def _rows(rests: Sequence[LeafRest], look: Look) -> list[tuple[str, ...]]:
    groups: dict[tuple[object, ...], list[int]] = {}
    for rest in rests:
        kept = sorted((k for one in rest.offcuts for k in one.kept),
                      key=lambda k: -k.size[0] * k.size[1])
        key = tuple(((int(k.size[0]), int(k.size[1])), k.uses) for k in kept)
        groups.setdefault(key, []).append(rest.leaf)
    rows: list[tuple[str, ...]] = []
    for kept, leaves in groups.items():
        if not kept:
            rows.append((ranges(leaves), "-", "-", word("nothing large enough")))
        for k, (size, uses) in enumerate(kept):
            rows.append((ranges(leaves) if k == 0 else "", _letter(k),
                         look.lengths.size(*map(float, size)), ", ".join(map(word, uses))))
    return rows


def _leaf_rest(drawing: Drawing, box: Box, rest: LeafRest) -> None:
    areas = [one.area for one in rest.offcuts]
    if not areas:
        return
    bounds = [f(v) for f, v in zip((min, min, max, max), zip(*(a.bounds for a in areas)))]
    view = pictures.View.of(bounds, box.inset(3.0))
    for area in areas:
        view.area(drawing, area, MEDIUM, pictures.WOOD)
    kept = sorted((k for one in rest.offcuts for k in one.kept),
                  key=lambda k: -k.size[0] * k.size[1])
    for k, one in enumerate(kept):
        view.area(drawing, rectangle(*one.rectangle), THIN, "", DASHED)
        x, y = view.point(((one.rectangle[0] + one.rectangle[2]) / 2.0,
                           (one.rectangle[1] + one.rectangle[3]) / 2.0))
        if one.size[0] * view.factor > 2.6 and one.size[1] * view.factor > 3.6:
            drawing.text((x, y - SMALL / 2.0), _letter(k))


def _letter(k: int) -> str:
    letters = "abcdefghijklmnopqrstuvwxyz"
    return letters[k] if k < len(letters) else f"{letters[k % 26]}{k // 26}"
