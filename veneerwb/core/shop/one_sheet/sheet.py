# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sheet of a layout: all that is drawn and written on it, and where. Nothing here knows a host.

Everything comes from the pieces' true edges and from the cut list, so that no number on the paper
can differ from the model's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.shop.cutlist import Row, rows
from veneerwb.core.shop.drawing.drawn import (
    THIN,
    Drawing,
)
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import (
    LARGE,
    PITCH,
    PLAIN,
    SMALL,
    fitted,
    paragraphs,
    width,
    wrapped,
)
from veneerwb.core.shop.drawing.scales import Scale
from veneerwb.core.shop.drawing.thickness import thickness
from veneerwb.core.shop.one_sheet import figures, frame
from veneerwb.core.shop.one_sheet.frame import Box
from veneerwb.core.shop.one_sheet.words import (
    CAUTIONS,
    kind,
    legend,
    names,
    set_out_words,
    size,
    wedge_heading,
    wedge_note,
)
from veneerwb.core.shop.setout import SetOut, set_out
from veneerwb.core.shop.wedge import Wedge, is_ring, kinds
from veneerwb.words import marked, say, word


@dataclass(frozen=True)
class Facts:
    """What a layout does not know of itself: words for the title block."""

    title: str = ""
    drawn_by: str = ""
    date: str = ""
    bundle: str = ""
    match: str = ""
    base: float = 0.0
    findings: tuple[str, ...] = ()


@dataclass(frozen=True)
class Text:
    """Lines of `height` mm letters, flush left from `x`, the first one's top at `top` mm."""

    x: float
    top: float
    lines: tuple[str, ...]
    height: float = SMALL

    @property
    def pitch(self) -> float:
        """From line to line, mm."""
        return PITCH * self.height

    @property
    def box(self) -> Box:
        """What the letters cover at most."""
        high = self.pitch * (len(self.lines) - 1) + 1.3 * self.height if self.lines else 0.0
        return Box(
            self.x,
            self.top - high,
            max((width(line, self.height) for line in self.lines), default=0.0),
            high,
        )


@dataclass(frozen=True)
class Figure:
    """What is drawn in `box`, as an SVG that is as high as the box and centred on frame.AXIS."""

    box: Box
    svg: str


def figure(drawing: Drawing, x: float, y: float) -> Figure:
    """A drawing with its lower left corner at (x, y)."""
    box = Box(x, y, drawing.wide, drawing.high)
    half = max(frame.AXIS - box.x, box.right - frame.AXIS)
    return Figure(box, drawing.svg(2.0 * half, box.x - frame.AXIS + half))


@dataclass(frozen=True)
class Sheet:
    """All of a page by role; `picture` is the field for the preview. Only a ring of wedges has a
    wedge and its set-out."""

    figures: dict[str, Figure]
    texts: dict[str, Text]
    picture: Box
    scale: Scale
    wedge_scale: Scale | None
    set_out: SetOut | None
    kinds: list[Wedge] = field(default_factory=list)


def sheet(layout: Layout, facts: Facts, pictured: bool = True) -> Sheet:
    """The sheet of a layout. `pictured`: room for the preview is wanted."""
    alike, listed = kinds(layout.pieces) if is_ring(layout) else [], rows(layout)
    table, columns, bottom = _table(listed)
    named = [kind(name, w) for name, w in zip(names(), alike)] if len(alike) > 1 else []
    note = _below(bottom, wedge_note(layout, alike, listed), named)
    left, right, low = frame.LIST, frame.PLAN, frame.LIST.y
    wedge, offsets = Drawing(left.wide, 1.0), Drawing(frame.SET_OUT.wide, frame.SET_OUT.high)
    wedge_scale = base = None
    if alike:
        base = set_out(alike[0].angle, max(alike[0].sides), facts.base)
        wedge, wedge_scale = figures.wedge(alike[0], left.wide, note.box.y - 1.0 - low)
        offsets = figures.set_out(base, frame.SET_OUT.wide, frame.SET_OUT.high)
    plan, scale = figures.plan(layout, right.wide, right.high, LEAST_PICTURE if pictured else 0.0)
    title = _title(layout, facts, scale, wedge_scale)
    drawn = {
        "plan": figure(plan, right.x, right.top - plan.high),
        "wedge": figure(wedge, left.x, low),
        "set-out": figure(offsets, frame.SET_OUT.x, frame.SET_OUT.y),
        "table": table,
        "title block": figure(title, frame.TITLE_BLOCK.x, frame.TITLE_BLOCK.y),
    }
    count = len(layout.pieces)
    ways = say("{count} ways", count=count) if alike else say("{count} pieces", count=count)
    heading = (wedge_heading(alike, wedge_scale),) if alike else ()
    texts = {
        "heading": Text(frame.HEADING.x, frame.HEADING.top, (ways,), LARGE),
        "notes": _block(
            frame.NOTES, [*legend(layout, scale), *map(word, CAUTIONS), *facts.findings]
        ),
        "wedge heading": Text(note.x, note.top + 6.0, heading, PLAIN),
        "wedge note": note,
        "set-out note": _set_out_note(base) if base else _block(frame.SET_OUT_NOTE, []),
        **columns,
    }
    picture = _picture_box(drawn["plan"].box.y) if pictured else Box(right.x, right.y, 0.0, 0.0)
    return Sheet(drawn, texts, picture, scale, wedge_scale, base, alike)


def _below(bottom: float, words: Sequence[str], named: Sequence[str]) -> Text:
    """What is written below the cut list, above the wedge: `words`, and as many of the kinds
    `named` as leave the wedge its room."""
    top = bottom - 11.0
    most = int((top - frame.LIST.y - LEAST_WEDGE) / (PITCH * SMALL))
    shown = len(named)
    while True:
        lines = paragraphs([*words, *_kinds_said(named, shown)], frame.LIST.wide, SMALL)
        if len(lines) <= most or not shown:
            return Text(frame.LIST.x, top, tuple(lines))
        shown = min(shown - 1, shown * most // len(lines))


def _kinds_said(named: Sequence[str], shown: int) -> list[str]:
    if not named:
        return []
    some = "; ".join(named[:shown])
    if shown < len(named):
        return [say(
            "{count} kinds (lower seam, rim, upper seam): {some}; {more} more, see the cut list.",
            count=len(named), some=some, more=len(named) - shown,
        )]  # fmt: skip
    return [say("{count} kinds (lower seam, rim, upper seam): {some}.", count=len(named),
                some=some)]  # fmt: skip


def _picture_box(top: float) -> Box:
    """The field below the plan, square and in its middle."""
    field_ = frame.PLAN
    side = min(top - 4.0 - field_.y, LARGEST_PICTURE)
    return Box(field_.x + (field_.wide - side) / 2.0, top - 4.0 - side, side, side)


def _block(box: Box, texts: Sequence[str]) -> Text:
    """Paragraphs with an empty line between them, cut off where the box ends."""
    lines: list[str] = []
    for text in texts:
        lines += ["", *wrapped(text, box.wide, SMALL)]
    most = int(box.high / (PITCH * SMALL))
    if len(lines) - 1 > most:
        lines = [*lines[:most], word("More in the model.")]
    return Text(box.x, box.top, tuple(lines[1:]))


def _set_out_note(base: SetOut) -> Text:
    return _block(frame.SET_OUT_NOTE, set_out_words(base))


# --- cut list -----------------------------------------------------------------------------------

BLOCK = 89.0
"""mm: the width of one of the list's two blocks."""
COLUMNS = {
    "position": (0.0, "", marked("pos.")),
    "leaf": (11.0, "", marked("leaf")),
    "side": (21.0, marked("side"), marked("up")),
    "net": (33.0, marked("net size"), marked("across x along")),
    "blank": (61.0, marked("blank size"), marked("across x along")),
}
"""The columns of a block by role: place in it, two lines of heading."""
LEAST_PICTURE, LARGEST_PICTURE, LEAST_WEDGE = 70.0, 120.0, 56.0
"""mm: what is kept free below the plan, how large the picture gets, and what is kept free for the
wedge with its dimensions."""


def _table(listed: Sequence[Row]) -> tuple[Figure, dict[str, Text], float]:
    """The rules of the list, its columns in two blocks, and where it ends."""
    half = (len(listed) + 1) // 2
    box, pitch = frame.LIST, PITCH * SMALL
    top, clear = box.top - 6.0, 0.5 * (pitch - SMALL)
    high = pitch * (half + 2) + 2.0
    rules = Drawing(box.wide, high)
    texts = {"list heading": Text(box.x, box.top, (word("Cut list, sizes of the pieces in mm"),))}
    for k, part in enumerate((listed[:half], listed[half:])):
        x = k * BLOCK
        foot = high - 1.5 - pitch * (len(part) + 2) + clear
        for y in (high - 0.3, high - 1.5 - 2.0 * pitch + clear, foot):
            rules.line((x, y), (min(x + BLOCK - 3.0, rules.wide), y), THIN)
        taken = 0.0
        for role, (place, *heading) in COLUMNS.items():
            lines = (*map(word, heading), *(_entry(role, row) for row in part))
            place = max(place, taken)  # words of another language may be longer
            taken = place + max(width(line, SMALL) for line in lines) + 1.5
            texts[f"{role} {k + 1}"] = Text(box.x + x + place, top, lines)
    return figure(rules, box.x, top + 1.5 - high), texts, top + 1.5 - high


def _entry(role: str, row: Row) -> str:
    return {
        "position": str(row.position),
        "leaf": str(row.leaf),
        "side": word(row.side_up),
        "net": size(row.net_across, row.net_along),
        "blank": size(row.blank_across, row.blank_along),
    }[role]


FIGURES = ["plan", "wedge", "set-out", "table", "title block"]
TEXTS = [
    "heading",
    "notes",
    "wedge heading",
    "wedge note",
    "set-out note",
    "list heading",
    *(f"{role} {k}" for k in (1, 2) for role in COLUMNS),
]
"""The roles of all figures and texts, the same for every layout."""


# --- title block --------------------------------------------------------------------------------


def _title(layout: Layout, facts: Facts, scale: Scale, wedge_scale: Scale | None) -> Drawing:
    """What stands in the fields of the title block."""
    values = {
        "title": facts.title,
        "drawn by": facts.drawn_by,
        "date": facts.date,
        "top": layout.top.name,
        "ways": _ways(layout.recipe),
        "match": facts.match,
        "bundle": facts.bundle,
        "thickness": thickness(Lengths(), layout.bundle.thickness),
        "scale": str(scale),
        "wedge scale": str(wedge_scale or ""),
        "units": "mm",
        "revision": layout.revision,
        "sheet": "1/1",
    }
    block = frame.TITLE_BLOCK
    drawing = Drawing(block.wide, block.high)
    _translated_labels(drawing, block)
    for role, text in values.items():
        if not text.strip():
            continue
        box = frame.cell(role)
        lines, height = _entered(text, box.wide - 2.4, LARGE if role == "title" else PLAIN)
        for k, line in enumerate(reversed(lines)):
            up = 2.2 if len(lines) == 1 else 1.4 + k * (SMALL + 1.0)
            at = (box.x - block.x + 1.2, box.y - block.y + up)
            drawing.text(at, line, height, anchor="start")
    return drawing


def _translated_labels(drawing: Drawing, block: Box) -> None:
    """The form itself has its labels in English; where another language is spoken they are covered
    by what they are called there."""
    for role, (label, _, _, _) in frame.CELLS.items():
        told = word(label)
        if told == label:
            continue
        box, high = frame.cell(role), frame.LABEL
        x, y = box.x - block.x + 1.2, box.top - block.y - 1.2 - high
        drawing.rectangle(Box(x, y - 0.5, width(label, high), high + 0.9), 0.0, "#ffffff")
        height = min(high, high * (box.wide - 2.4) / width(told, high))
        drawing.text((x, y), told, height, anchor="start")


def _ways(how: Any) -> str:
    if isinstance(how, Rings):
        return f"{how.inner.ways} + {how.outer.ways}"
    return str(how.ways) if isinstance(how, Radial) else ""


def _entered(text: str, room: float, height: float) -> tuple[list[str], float]:
    """`text` as it stands in a field: on one line, or on two of small letters where it is long."""
    broken = wrapped(text, room, SMALL)
    if len(broken) <= 1:
        line, height = fitted(text, room, height)
        return [line], height
    return [broken[0], fitted(" ".join(broken[1:]), room, SMALL)[0]], SMALL


def stale(reason: str) -> Text:
    """The note on a page that does not show the match as it is; empty if there is no reason."""
    box = frame.STALE
    lines = (
        paragraphs([say("NOT UP TO DATE: {reason}", reason=reason)], box.wide, SMALL)[:2]
        if reason
        else []
    )
    return Text(box.x, box.top, tuple(lines))
