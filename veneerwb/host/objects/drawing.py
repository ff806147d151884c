# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawing: the shop drawing of a match on a page of its own."""

from __future__ import annotations

import datetime
import hashlib
import os
from typing import Any

from veneerwb.host import settings
from veneerwb.host.kinds import KINDS
from veneerwb.host.objects import names
from veneerwb.host.objects.base import (
    OUT,
    SECRET,
    Property,
    Proxy,
    Refused,
    added,
    give,
    kind_of,
    sentence,
    set_if_new,
)
from veneerwb.words import marked, say, word

CALLED = {
    "Two rings": marked("two rings"), "Side by side": marked("side by side"),
    "End match": marked("end match"), "Centre and butt": marked("centre and butt"),
    "Box": marked("box"), "Reverse box": marked("reverse box"), "Diamond": marked("diamond"),
    "Reverse diamond": marked("reverse diamond"), "Herringbone": marked("herringbone"),
}  # fmt: skip
"""What a kind of match is called in the title block; a radial one has its ways there."""
ORDERS = {"sequence": marked("in sequence"), "spread": marked("spread out")}


class Drawing(Proxy):
    """Keeps a page up to date with a match. The page's views are the host's own; they link to this
    object, and with it gone the page stays as it was drawn last."""

    kind = "Drawing"
    properties = (
        Property("Link", "Match", "Drawing", "The match that is drawn"),
        Property("String", "Title", "Drawing", "Title; empty for the match's name", ""),
        Property("String", "DrawnBy", "Drawing", "Who answers for the drawing", ""),
        Property(
            "Length",
            "Base",
            "Drawing",
            "Length over which the wedge's angle is set out; 0 to have it chosen",
            0.0,
        ),
        Property("String", "Date", "Result", "When this layout was first drawn", "", OUT),
        Property("String", "Scale", "Result", "Scale of the plan", "", OUT),
        Property("String", "WedgeScale", "Result", "Scale of the wedge", "", OUT),
        Property("Length", "SetOutBase", "Result", "The set-out's base", 0.0, OUT),
        Property("Length", "SetOutOffset", "Result", "The set-out's offset to each side", 0.0, OUT),
        Property("String", "Revision", "Result", "The mark of the layout drawn", "", OUT),
        Property("String", "HostMark", "Result", "Which host laid the page out", "", SECRET),
        Property("String", "PictureMark", "Result", "What the picture was made from", "", SECRET),
    )

    def onDocumentRestored(self, obj: Any) -> None:
        from veneerwb.host import sheets

        super().onDocumentRestored(obj)
        names.watch()
        if obj.HostMark and obj.HostMark != sheets.host_mark():
            self.execute(obj)  # to touch it would not do: the host forgets that while it opens

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        names.watch()

    def update(self, obj: Any) -> None:
        from veneerwb.host import sheets

        views = sheets.views_of(obj)
        if not views:
            raise Refused(word(
                "Its page is gone; undo, or delete this drawing and make a new one."
            ))
        for copy in sheets.copies_of(obj):
            sheets.say_stale(copy, say("this is a copy of {page}.", page=sheets.page_of(obj).Label))
        try:
            _draw(obj, views)
        except Exception as error:
            sheets.say_stale(views, sentence(error))
            raise
        sheets.say_stale(views, "")


def _draw(obj: Any, views: dict[str, Any]) -> None:
    from veneerwb.core.shop.one_sheet.sheet import sheet
    from veneerwb.host import sheets, values

    match = obj.Match
    if kind_of(match) != "Match":
        raise Refused(word("The drawing has no match; link it to one, or delete it."))
    if match.Message:
        raise Refused(
            say("{name} was refused, and its last good layout is shown: {why}", name=match.Label,
                why=match.Message)
            if match.Revision
            else say("{name} was refused, and no layout of it stands yet: {why}", name=match.Label,
                     why=match.Message)
        )  # fmt: skip
    laid = values.layout_on(match, values.leaves_of(match.Bundle))
    date = obj.Date
    if laid.revision != obj.Revision or not date:
        date = datetime.date.today().isoformat()
    pictured = kind_of(match.Bundle) == "Bundle"
    drawn = sheet(laid, _facts(obj, laid, date), pictured)
    host = sheets.host_mark()
    mark = _picture_mark(match, f"{laid.revision} {host}", drawn.picture)
    if mark != obj.PictureMark:
        sheets.set_picture(views, laid, drawn.picture)
    sheets.fill(views, drawn)
    set_if_new(
        obj,
        Date=date,
        Scale=str(drawn.scale),
        WedgeScale=str(drawn.wedge_scale or ""),
        Revision=laid.revision,
        PictureMark=mark,
        HostMark=host,
    )
    base, offset = (drawn.set_out.base, drawn.set_out.offset) if drawn.set_out else (0.0, 0.0)
    for name, value in (("SetOutBase", base), ("SetOutOffset", offset)):
        if getattr(obj, name).Value != value:
            setattr(obj, name, value)


def _facts(obj: Any, laid: Any, date: str) -> Any:
    from veneerwb.core.shop.one_sheet.sheet import Facts
    from veneerwb.host import values

    match = obj.Match
    order = match.Order.strip().lower() or "sequence"
    return Facts(
        title=obj.Title.strip() or match.Label,
        drawn_by=obj.DrawnBy,
        date=date,
        bundle=match.Bundle.Label,
        match=_laid(match, order),
        base=obj.Base.Value,
        findings=tuple(str(f) for f in values.findings(match, laid) if f.level != "note"),
    )


def _laid(match: Any, order: str) -> str:
    """How the leaves of a match are laid, in words."""
    used = KINDS[match.Kind]
    said = [] if match.Kind == "Radial" else [word(CALLED[match.Kind])]
    if "Strips" in used and match.Strips > 1:
        said.append(say("{count} strips", count=match.Strips))
    said += [word(getattr(match, name)) for name in ("Turn", "Face", "EndKind") if name in used]
    if order != "sequence" or match.Kind == "Radial":
        said.append(word(ORDERS.get(order, marked("as listed"))))
    return ", ".join(said)


def _picture_mark(match: Any, layout: str, box: Any) -> str:
    """All that the picture depends on: the layout, its field, and the photographs."""
    marks = [layout, f"{box.x:.3f} {box.y:.3f} {box.wide:.3f} {box.high:.3f}"]
    leaves = match.Bundle.Leaves if kind_of(match.Bundle) == "Bundle" else []
    for leaf in leaves:
        for name in ("Photo", "BackPhoto"):
            path = getattr(leaf, name, "")
            if path and os.path.exists(path):
                found = os.stat(path)
                marks.append(f"{os.path.basename(path)} {found.st_size} {found.st_mtime_ns}")
        marks.append(f"{list(getattr(leaf, 'View', []))} {list(getattr(leaf, 'BackView', []))}")
    return hashlib.sha256(" ".join(marks).encode()).hexdigest()[:16]


def add_drawing(doc: Any, match: Any, **properties: Any) -> Any:
    """A Drawing of a Match with its page, with the properties given by name. Recompute to see
    it."""
    from veneerwb.core.shop.one_sheet.sheet import FIGURES, TEXTS
    from veneerwb.host import sheets

    with added(doc, "App", Drawing) as obj:
        obj.Match = match
        give(obj, {**settings.for_drawing(), **properties})
        sheets.add_page(obj, FIGURES, TEXTS)
    return obj


def page_of(obj: Any) -> Any:
    """The page of a Drawing; None if it was deleted."""
    from veneerwb.host import sheets

    return sheets.page_of(obj)
