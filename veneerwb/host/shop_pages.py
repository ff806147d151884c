# SPDX-License-Identifier: LGPL-2.1-or-later
"""The core's pages on the host's own: one figure each, and annotations for what is to stay text.

Pages and views are the host's and carry no proxy, so that they open without this addon. A page has
a hidden link to its bench and the code of its sheet; each view has its role. A bench asks for them
when it is opened, where the core's packages may be missing.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

import veneerwb
from veneerwb.host import compat
from veneerwb.host.objects.base import kind_of
from veneerwb.host.sheets import RED, as_read, set_view
from veneerwb.words import say

FORMS = Path(veneerwb.__file__).parents[1] / "resources" / "templates"
CODE, ROLE, OWNER = "SheetCode", "SheetRole", "Bench"
FIGURE, STALE = "figure", "stale"
MOST_BLOCKS, FURTHEST = 56, 0.8
"""Annotations on a page, and the share of its width that the middle of one may lie at: what is left
over stays in the figure."""
STALE_WIDE = 174.0
"""mm of a page that the note takes which says that it is old."""
_FREE = 0.4
"""mm: what an annotation leaves free at its left."""


def pages_of(bench: Any) -> dict[str, Any]:
    """The pages of a bench by code, in the order they were made; copies are left out."""
    found: dict[str, Any] = {}
    for page in _all_pages(bench):
        found.setdefault(getattr(page, CODE), page)
    return found


def _all_pages(bench: Any) -> list[Any]:
    pages = {
        obj.Name: obj
        for obj in bench.InList
        if obj.isDerivedFrom("TechDraw::DrawPage") and getattr(obj, OWNER, None) is bench
    }
    return [pages[name] for name in sorted(pages, key=lambda name: (len(name), name))]


def bench_of(obj: Any) -> Any:
    """The Bench that a bench, its page or one of its views belongs to; None for others."""
    if kind_of(obj) == "Bench":
        return obj
    for one in (obj, *obj.InList):
        if one.isDerivedFrom("TechDraw::DrawPage") and getattr(one, OWNER, None) is not None:
            return getattr(one, OWNER)
    return None


def put(
    bench: Any, pages: Sequence[Any], progress: Callable[[float], None] = lambda share: None
) -> None:
    """Makes the host's pages show the core's `pages`: what is there is filled anew, what lacks is
    made, what is no longer wanted goes. `progress` is told before each; what it raises leaves some
    of them as they were."""
    wanted = {page.code for page in pages}
    there = pages_of(bench)
    for page in _all_pages(bench):
        if getattr(page, CODE) not in wanted or page not in there.values():
            _remove(page)
    for k, page in enumerate(pages, start=1):
        progress((k - 1) / len(pages))
        shown = there.get(page.code) or _new(bench, page)
        _fill(bench, shown, page)
        label = f"{bench.Label} {k} {page.title}"
        if shown.Label != label:
            shown.Label = label


def remove_pages(bench: Any) -> None:
    """Takes away all pages of a bench with what is on them."""
    for page in _all_pages(bench):
        _remove(page)


def say_stale(bench: Any, reason: str) -> None:
    """Writes on every page that it is not up to date, and why; an empty reason takes it away.
    Copies of pages are never up to date."""
    kept, told = pages_of(bench), set()
    for page in [*kept.values(), *_all_pages(bench)]:
        view, own = _views(page).get(STALE), kept[getattr(page, CODE)]
        if view is not None and view.Name not in told:  # a copy may show the views of its original
            told.add(view.Name)
            said = reason if page is own else say("this is a copy of {page}.", page=own.Label)
            set_view(view, Text=as_read(_stale_lines(said)))


def _stale_lines(reason: str) -> list[str]:
    from veneerwb.core.shop.drawing.lettering import SMALL, wrapped

    said = (
        wrapped(say("NOT UP TO DATE: {reason}", reason=reason), STALE_WIDE - 4.0, SMALL)[:2]
        if reason
        else []
    )
    return said or [""]


# --- a page ---------------------------------------------------------------------------------------


def _views(page: Any) -> dict[str, Any]:
    return {getattr(v, ROLE): v for v in page.Views if ROLE in v.PropertiesList}


def _new(bench: Any, sheet: Any) -> Any:
    hidden = compat.HIDDEN | compat.READ_ONLY
    doc = bench.Document
    page = doc.addObject("TechDraw::DrawPage", "Sheet")
    compat.hide_frames(page)
    compat.add_property(page, "String", CODE, "Base", "Which sheet the page shows", hidden)
    compat.add_property(page, "Link", OWNER, "Base", "What the page is made from", hidden)
    setattr(page, CODE, sheet.code)
    setattr(page, OWNER, bench)
    _take_paper(page, sheet.paper)  # before views, which would be too large for a page of no size
    return page


def _note(page: Any) -> Any:
    """The view that says that a page is old."""
    view = _add(page, "TechDraw::DrawViewAnnotation", STALE)
    hidden = compat.HIDDEN | compat.READ_ONLY
    compat.add_property(view, "Link", OWNER, "Base", "What the page is made from", hidden)
    setattr(view, OWNER, getattr(page, OWNER))  # so that the host recomputes it after the bench
    view.TextColor = RED
    return view


def _add(page: Any, kind: str, role: str) -> Any:
    from veneerwb.core.shop.drawing.lettering import FONT

    view = page.Document.addObject(kind, "Words" if kind.endswith("Annotation") else "Figure")
    hidden = compat.HIDDEN | compat.READ_ONLY
    compat.add_property(view, "String", ROLE, "Base", "What the view shows on its page", hidden)
    setattr(view, ROLE, role)
    page.addView(view)
    view.ScaleType = "Custom"
    if kind.endswith("Annotation"):
        view.Text, view.Font = [""], FONT
    return view


def _remove(page: Any) -> None:
    """Takes away a page and what is on it, but for what another page shows as well."""
    doc = page.Document
    shown = [page.Template, *page.Views]
    gone = [obj for obj in shown if obj is not None and not _elsewhere(obj, page)]
    if len(gone) < len(shown):  # or the host would take away with the page what another shows
        page.Views, page.Template = [], None
    for obj in [*gone, page]:  # the page last, or the host has its own way
        if doc.getObject(obj.Name) is obj:
            doc.removeObject(obj.Name)


def _elsewhere(obj: Any, page: Any) -> bool:
    """Whether another page shows it too."""
    return any(one != page and one.isDerivedFrom("TechDraw::DrawPage") for one in obj.InList)


def _take_paper(page: Any, paper: Any) -> None:
    from veneerwb.core.shop.drawing.paper import form_name

    path = FORMS / form_name(paper)
    if page.Template is None:
        page.Template = page.Document.addObject("TechDraw::DrawSVGTemplate", "Template")
    if Path(page.Template.Template).name != path.name or not page.Template.PageResult:
        page.Template.Template = str(path)


def _fill(bench: Any, page: Any, sheet: Any) -> None:
    from veneerwb.core.shop.drawing.blocks import Block, parted
    from veneerwb.core.shop.drawing.lettering import SMALL

    _take_paper(page, sheet.paper)
    figure, blocks = parted(sheet.drawing, MOST_BLOCKS, FURTHEST * sheet.paper.wide)
    views, frame = _views(page), sheet.paper.frame
    # Newer hosts shift a view in x or y when it nearly lines up with another; one that lines up
    # exactly with all others stays where it is put. So all are centred on one x.
    axis = max([sheet.paper.wide / 2.0, *(block.middle for block in blocks)])
    roles = [f"text {k}" for k in range(1, len(blocks) + 1)]
    for role in [role for role in views if role.startswith("text") and role not in roles]:
        page.Document.removeObject(views.pop(role).Name)
    set_view(
        views.get(FIGURE) or _add(page, "TechDraw::DrawViewSymbol", FIGURE),
        Symbol=figure.svg(2.0 * axis),
        Scale=compat.symbol_scale(),
        X=axis,
        Y=sheet.paper.high / 2.0,
    )
    for role, block in zip(roles, blocks):
        view = views.get(role) or _add(page, "TechDraw::DrawViewAnnotation", role)
        _set_text(view, block, axis)
    foot = frame.top + 2.2 * SMALL
    stale, left = views.get(STALE) or _note(page), max(frame.x, axis - STALE_WIDE / 2.0)
    _place_text(stale, Block(left, foot, tuple(stale.Text), SMALL, 1.6 * SMALL), axis)


def _set_text(view: Any, block: Any, axis: float) -> None:
    set_view(view, Text=as_read(block.lines))
    _place_text(view, block, axis)


def _place_text(view: Any, block: Any, axis: float) -> None:
    letters, height = compat.lettering(), block.height
    spacing = round(100.0 * block.pitch / (letters.line * height))
    pitch = letters.line * height * spacing / 100.0
    high = (len(block.lines) + letters.trailing) * pitch
    # What the host rounds a line's distance by is shared by the lines above and below the middle.
    drift = (len(block.lines) - 1) * (pitch - block.pitch) / 2.0
    set_view(
        view,
        TextSize=letters.size * height,
        LineSpace=spacing,
        MaxWidth=2.0 * (axis - block.x + _FREE),
        X=axis,
        Y=block.foot + drift + letters.drop * height - high / 2.0,
        Scale=1.0,
    )
