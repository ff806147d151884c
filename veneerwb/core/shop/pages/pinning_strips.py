# SPDX-License-Identifier: LGPL-2.1-or-later
"""Strips at 1:1 that lead from a mark on a leaf to a pin hole: laid on the leaf, cross on the mark
and line towards the second mark, the hole is pricked through the ring.

Where the mark is far from the hole, the strip's cross belongs on the line a round length from the
mark, which is measured with a rule.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.outlines.edge import Arc
from veneerwb.core.shop.cutting.said import in_units
from veneerwb.core.shop.drawing.drawn import DASHED, MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lengths import INCH
from veneerwb.core.shop.drawing.lettering import PITCH, SMALL, wrapped
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page, blank_page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.template_marks import bars
from veneerwb.core.shop.pinning.marks import Hole, hole
from veneerwb.core.shop.pinning.plan import PinnedLeaf, Pinning
from veneerwb.words import marked, say, word

PAD = 8.0
"""mm of paper round the crosses."""
NARROWEST = 56.0
"""mm: a strip is as wide at least, for its words."""
LONGEST = 150.0
"""mm: a longer strip starts at a round length from the mark."""
GAP = 4.0
STANDING = (
    marked("Print at 100 %: both bars measure 100 mm. Seen from the face of the leaf."),
    DRY_LAY,
)
BARS = 12.0
"""mm of the field for the bars, at the left and at the foot."""


@dataclass(frozen=True)
class Strip:
    """A strip: `name` of leaf and hole, the hole's `number`, the `hole`, and `base`: where its
    cross lies on the line, mm from the first mark (as `hole.along` counts), `said` in the units of
    the page."""

    name: str
    number: int
    hole: Hole
    base: float
    said: str

    @property
    def start(self) -> float:
        """mm along the line at which it begins, and ends."""
        return min(self.base, self.hole.along) - PAD

    @property
    def end(self) -> float:
        return max(self.base, self.hole.along) + PAD

    @property
    def low(self) -> float:
        """mm that it reaches below the line, and `high` above."""
        return min(0.0, self.hole.beside) - PAD

    @property
    def high(self) -> float:
        return max(0.0, self.hole.beside) + PAD

    @property
    def wide(self) -> float:
        return max(self.end - self.start, NARROWEST)

    @property
    def words(self) -> list[str]:
        a, b = self.hole.a.brief, self.hole.b.brief
        if not self.base:
            cross = say("cross on {a}", a=a)
        elif self.base < 0.0:
            cross = say("cross {far} from {a}, away from {b}", far=self.said, a=a, b=b)
        else:
            cross = say("cross {far} from {a}", far=self.said, a=a)
        texts = [self.name, cross, say("arrow to {b}", b=b)]
        return [line for text in texts for line in wrapped(text, self.wide - 3.0, SMALL)]

    @property
    def tall(self) -> float:
        return self.high - self.low + PITCH * SMALL * len(self.words) + 2.0


def strips_of(one: PinnedLeaf, stack: str, look: Look, read: float, most: float) -> list[Strip]:
    """The strips of a leaf's two holes, their holes no more than `most` mm off the line where some
    pair of marks allows it."""
    found = []
    length = in_units(look.lengths)
    step = 2.0 * INCH if look.lengths.unit == "inch" else 50.0
    for k, told in enumerate(one.holes, start=1):
        best = hole(told.place, one.marks, read, most)
        name = stack + say(BACK if one.back else FACE, leaf=one.leaf, hole=k)
        far = abs(best.along)
        base = 0.0
        if far + 2.0 * PAD > LONGEST:
            base = math.copysign(step * math.floor((far - 20.0) / step), best.along)
        found.append(Strip(name, k, best, base, length(abs(base))))
    return found


FACE = marked("leaf {leaf}, hole {hole}")
BACK = marked("leaf {leaf} (back), hole {hole}")


def strip_pages(pinning: Pinning, look: Look) -> tuple[list[Page], list[str]]:
    """All strips on as few pages as rows of them need, and the names of those that are too tall
    for the paper."""
    code, title = "pin-strips", word("Pin holes at 1:1")
    field = blank_page(look, code, title, "1:1", STANDING)[1]
    room = Box(field.x + BARS, field.y + BARS, field.wide - BARS, field.high - BARS)
    strips, tall = [], []
    for stack in pinning.stacks:
        named = f"{stack.pile.name}: " if len(pinning.stacks) > 1 else ""
        for one in stack.leaves:
            for strip in strips_of(one, named, look, pinning.read, room.high - 2.0 * PAD - 24.0):
                (strips if strip.tall <= room.high else tall).append(strip)
    strips.sort(key=lambda strip: strip.number)  # they are more alike so
    pages: list[Page] = []
    page, x, top, deep = None, room.x, room.top, 0.0
    for strip in strips:
        if page is not None and x + strip.wide > room.right + 1e-6:
            x, top, deep = room.x, top - deep - GAP, 0.0
        if page is None or top - strip.tall < room.y - 1e-6:
            page, _ = blank_page(look, code, title, "1:1", STANDING)
            bars(page.drawing, (field.x + 40.0, field.y + 3.0), (field.x + 5.0, field.y + 14.0))
            pages.append(page)
            x, top, deep = room.x, room.top, 0.0
        draw(page.drawing, strip, x, top)
        x += strip.wide + GAP
        deep = max(deep, strip.tall)
    return pages, [strip.name for strip in tall]


def draw(drawing: Drawing, strip: Strip, x: float, top: float) -> None:
    """A strip with its upper left corner there."""
    drawing.rectangle(Box(x, top - strip.tall, strip.wide, strip.tall), THIN)
    line = top - strip.high
    along, beside = strip.hole.along, strip.hole.beside

    def at(along: float, beside: float = 0.0) -> tuple[float, float]:
        return x + along - strip.start, line + beside

    drawing.line((x, line), (x + strip.wide, line), THIN, DASHED)
    _cross(drawing, at(strip.base), 5.0)
    drawing.arrow(at(strip.base + 5.9), 0.0)
    place = at(along, beside)
    if abs(beside) > 2.5:
        drawing.line(at(along), (place[0], place[1] - math.copysign(2.5, beside)), THIN)
    _cross(drawing, place, 4.0)
    drawing.edge((Arc(place, 2.0, 0.0, 360.0),), MEDIUM)
    y = line + strip.low
    for k, text in enumerate(strip.words, start=1):
        drawing.text((x + 1.5, y - PITCH * SMALL * k + 0.8), text, SMALL, "start")


def _cross(drawing: Drawing, at: tuple[float, float], half: float) -> None:
    x, y = at
    drawing.line((x - half, y), (x + half, y), MEDIUM)
    drawing.line((x, y - half), (x, y + half), MEDIUM)

