# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said beside a plan, and what has a letter on it: border, line, inlay, lipping,
openings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from veneerwb.core.layout import Layout
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Point
from veneerwb.core.outlines.region import Region
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.pages.kit import SHOW
from veneerwb.words import marked, say, word

LETTERS = (*"ABCDEFGHJKLMNPQRSTUVWXYZ", *(f"A{k}" for k in range(1, 10)))


@dataclass(frozen=True)
class Item:
    """What has a letter on the plan: in words, and the regions that it fills (top mm)."""

    words: str
    regions: tuple[Region, ...]


def plan_texts(
    layout: Layout, look: Look, built: Built | None, items: Sequence[Item], leaves: bool,
    outside: bool = False, crowded: bool = False,
) -> list[str]:  # fmt: skip
    """What is said beside a plan: whether leaves stand in it, and numbers outside."""
    turned = [piece.position for piece in layout.pieces if piece.turned]
    way = counted(layout)
    texts = [
        say("{count} pieces.", count=len(layout.pieces)) + " " + word(SHOW),
        say("Large: the position. Positions run {way}.", way=way),
        word("L: the leaf it is cut from.") if leaves else word("Leaves: see the cut list."),
        word("Underlined: the leaf is turned over, its back is shown.")
        if turned
        else word("No leaf is turned over."),
        word("The arrow in a piece is its grain."),
        *_places(layout, look, built),
    ]
    if crowded:
        texts[1] = say("Positions run {way}; the parts of the plan that follow have them.", way=way)
    elif outside:
        texts[1] += " " + word("Where a piece is too small its number stands outside.")
    unseen = [f"{item.words}." for item in items if not item.regions]
    return [*texts, *unseen, *(f"{k}: {item.words}." for k, item in with_letters(items))]


def with_letters(items: Sequence[Item]) -> Iterator[tuple[str, Item]]:
    """What is seen on the plan, with its letter."""
    return zip(LETTERS, (item for item in items if item.regions))


def _places(layout: Layout, look: Look, built: Built | None) -> list[str]:
    """Sizes in words, and where the match's centre lies where that is not the middle."""
    lengths = look.lengths
    whole = built.top.edge if built else layout.top.edge
    (x0, x1), (y0, y1) = (edges.extent(whole, turn) for turn in (0.0, 90.0))
    texts = []
    if built:
        field_ = size_of(layout.top.edge)
        texts.append(say(
            "Whole top {size}, field {size_2}.",
            size=lengths.size(x1 - x0, y1 - y0), size_2=lengths.size(*field_),
        ))
    cx, cy = centre_of(layout)
    if off_centre(layout, built):
        texts.append(
            say(
                "The cross is the centre of the match: {cx} from the left end and {cy} from the "
                "lowest point of the top.",
                cx=lengths.length(cx - x0), cy=lengths.length(cy - y0),
            )
        )
    return texts


def off_centre(layout: Layout, built: Built | None) -> bool:
    """Whether the match's centre is not the middle of the top."""
    whole = built.top.edge if built else layout.top.edge
    spans = (edges.extent(whole, turn) for turn in (0.0, 90.0))
    return any(abs(2.0 * c - a - b) > 0.05 for c, (a, b) in zip(centre_of(layout), spans))


def centre_of(layout: Layout) -> Point:
    """Where the match has its centre on the top, mm."""
    how = layout.recipe
    how = getattr(how, "inner", how)
    return tuple(getattr(how, "centre", (0.0, 0.0)))  # type: ignore[return-value]


def size_of(edge: Edge) -> tuple[float, float]:
    """How far an edge reaches along x and y, mm."""
    (x0, x1), (y0, y1) = (edges.extent(edge, turn) for turn in (0.0, 90.0))
    return x1 - x0, y1 - y0


def items_of(layout: Layout, look: Look, built: Built | None) -> list[Item]:
    """What lies round the field and in it, from the edge inwards; then the openings."""
    found: list[Item] = []
    if built:
        lipping = built.build_up.lipping
        if lipping and not lipping.shows:
            parts = [p for p in built.parts if p.item == "lipping"]
            words = _strip_words(look, lipping, len(parts))
            words = say("{strip}, under the veneer", strip=words)
            found.append(Item(words[0].upper() + words[1:], ()))
        for item in ("lipping", "border", "stringing line", "inlay"):
            regions = tuple(part.region for part in built.face if part.item == item)
            if regions:
                found.append(Item(_words(look, built, item, len(regions)), regions))
    holes = built.top.holes if built else layout.top.holes
    for hole in holes:
        found.append(Item(_hole_words(layout, look, built, hole), (Region(_filled(hole)),)))
    return found


def _words(look: Look, built: Built, item: str, count: int) -> str:
    of = built.build_up
    strips = {"lipping": of.lipping, "border": of.border, "stringing line": of.stringing}
    if item in strips:
        return _strip_words(look, strips[item], count)
    size = look.lengths.size(*size_of(of.inlay.outline)) if of.inlay else ""
    material = of.inlay.material if of.inlay else ""
    return ", ".join(part for part in (word("inlay"), material, size) if part)


def _strip_words(look: Look, strip: object, count: int) -> str:
    words = [
        word(strip.what), strip.material,  # type: ignore[attr-defined]
        say("{width} wide", width=look.lengths.length(strip.width)),  # type: ignore[attr-defined]
    ]  # fmt: skip
    kind, grain = getattr(strip, "kind", ""), getattr(strip, "grain", "")
    if kind:
        words.append(word(BORDER[kind, grain]))
    words.append(say("{count} parts", count=count) if count > 1 else word("in one"))
    return ", ".join(filter(None, words))


BORDER = {
    ("mitred", "along"): marked("mitred, grain along the edge"),
    ("mitred", "across"): marked("mitred, grain across the edge"),
    ("straight", "along"): marked("straight, grain along the edge"),
    ("straight", "across"): marked("straight, grain across the edge"),
    ("following", "along"): marked("following, grain along the edge"),
    ("following", "across"): marked("following, grain across the edge"),
}


def _filled(hole: Edge) -> Edge:
    return tuple(segment.reversed() for segment in reversed(hole))


def _hole_words(layout: Layout, look: Look, built: Built | None, hole: Edge) -> str:
    lengths, (cx, cy) = look.lengths, centre_of(layout)
    (x0, x1), (y0, y1) = (edges.extent(hole, turn) for turn in (0.0, 90.0))
    wide, high = x1 - x0, y1 - y0
    x, y = (x0 + x1) / 2.0 - cx, (y0 + y1) / 2.0 - cy
    disc = getattr(getattr(layout.recipe, "inner", layout.recipe), "disc", 0.0)
    if not built and disc and max(abs(x), abs(y)) < 1e-6 and abs(wide - disc) < 1e-3:
        return say("inlaid disc, diameter {diameter}", diameter=lengths.length(wide))
    values = {
        "size": lengths.size(wide, high), "across": lengths.length(abs(x)),
        "along": lengths.length(abs(y)),
    }  # fmt: skip
    return say(OPENING[_sign(x), _sign(y)], **values)


def _sign(mm: float) -> int:
    return 0 if abs(mm) <= 0.05 else 1 if mm > 0.0 else -1


OPENING = {
    (0, 0): marked(
        "opening {size}, its middle at the match's centre, cut after pressing"
    ),
    (1, 0): marked(
        "opening {size}, its middle {across} right of the match's centre, cut after pressing"
    ),
    (-1, 0): marked(
        "opening {size}, its middle {across} left of the match's centre, cut after pressing"
    ),
    (0, 1): marked(
        "opening {size}, its middle {along} above the match's centre, cut after pressing"
    ),
    (0, -1): marked(
        "opening {size}, its middle {along} below the match's centre, cut after pressing"
    ),
    (1, 1): marked(
        "opening {size}, its middle {across} right of and {along} above the match's centre, cut "
        "after pressing"
    ),
    (1, -1): marked(
        "opening {size}, its middle {across} right of and {along} below the match's centre, cut "
        "after pressing"
    ),
    (-1, 1): marked(
        "opening {size}, its middle {across} left of and {along} above the match's centre, cut "
        "after pressing"
    ),
    (-1, -1): marked(
        "opening {size}, its middle {across} left of and {along} below the match's centre, cut "
        "after pressing"
    ),
}
"""By whether it lies right of the centre (1), left of it (-1) or at it, and above or below."""
