# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pages: a core Sheet on the host's own views.

The views are the host's and carry no proxy, so that a page opens without this addon. Each has two
hidden properties: its role on the sheet, and a link to its drawing, by which the drawing finds it
and the host recomputes it after the drawing.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import veneerwb
from veneerwb.host import compat
from veneerwb.host.objects.base import kind_of

TEMPLATE = Path(veneerwb.__file__).parents[1] / "resources" / "templates" / "a3-landscape.svg"
ROLE, OWNER = "SheetRole", "Drawing"
STALE, PICTURE = "stale", "picture"
RED = (0.8, 0.0, 0.0)
MOST_PIXELS = 800
"""Of the preview, in either direction."""
_MARGIN = 0.4
"""mm: what an annotation leaves free at its left."""


def add_page(drawing: Any, figures: list[str], texts: list[str]) -> Any:
    """A page with a view for each role, of which `drawing` takes care. A failure takes away again
    what was made."""
    from veneerwb.core.shop.drawing.lettering import FONT

    doc, made = drawing.Document, []

    def add(kind: str, name: str) -> Any:
        made.append(doc.addObject(kind, name))
        return made[-1]

    try:
        page = add("TechDraw::DrawPage", "Page")
        compat.hide_frames(page)
        template = add("TechDraw::DrawSVGTemplate", "Template")
        template.Template = str(TEMPLATE)
        page.Template = template
        for role in [*figures, PICTURE]:
            _own(add("TechDraw::DrawViewSymbol", _name(role)), drawing, page, f"figure {role}")
        for role in [*texts, STALE]:
            view = add("TechDraw::DrawViewAnnotation", _name(role))
            _own(view, drawing, page, f"text {role}")
            view.Text, view.Font = [""], FONT
            if role == STALE:
                view.TextColor = RED
    except Exception:
        for obj in reversed(made):
            doc.removeObject(obj.Name)
        raise
    return page


def _name(role: str) -> str:
    return "".join(part.capitalize() for part in role.replace("-", " ").split())


def _own(view: Any, drawing: Any, page: Any, role: str) -> None:
    hidden = compat.HIDDEN | compat.READ_ONLY
    compat.add_property(view, "String", ROLE, "Base", "What the view shows on its page", hidden)
    compat.add_property(view, "Link", OWNER, "Base", "The drawing that the view is part of", hidden)
    setattr(view, ROLE, role)
    setattr(view, OWNER, drawing)
    page.addView(view)
    view.ScaleType = "Custom"


def views_of(drawing: Any) -> dict[str, Any]:
    """The views that show `drawing`, by role."""
    pages = _pages(drawing)
    return pages[0][1] if pages else {}


def page_of(drawing: Any) -> Any:
    """The page of `drawing`, or None if it is gone."""
    pages = _pages(drawing)
    return pages[0][0] if pages else None


def copies_of(drawing: Any) -> list[dict[str, Any]]:
    """The views on copies of the page, which nobody keeps up to date."""
    return [views for _, views in _pages(drawing)[1:]]


def _pages(drawing: Any) -> list[tuple[Any, dict[str, Any]]]:
    """The pages with views of `drawing`, the oldest first, and these views by role."""
    found: dict[str, tuple[Any, dict[str, Any]]] = {}
    for view in drawing.InList:
        if ROLE in view.PropertiesList and getattr(view, OWNER, None) is drawing:
            for page in view.InList:
                if page.isDerivedFrom("TechDraw::DrawPage"):
                    found.setdefault(page.Name, (page, {}))[1][getattr(view, ROLE)] = view
    return [found[name] for name in sorted(found, key=lambda name: (len(name), name))]


def drawing_of(obj: Any) -> Any:
    """The Drawing that a drawing, its page or one of its views belongs to; None for others."""
    if kind_of(obj) == "Drawing":
        return obj
    if obj.isDerivedFrom("TechDraw::DrawPage"):
        owners = [getattr(view, OWNER, None) for view in obj.Views]
        return next((one for one in owners if one is not None), None)
    return getattr(obj, OWNER, None)


def remove_page(drawing: Any) -> None:
    """Takes away the page of `drawing` with its template and views."""
    page, views = page_of(drawing), list(views_of(drawing).values())
    template = page.Template if page else None
    for obj in [*views, template, page]:  # the page last, or the host removes the rest its own way
        if obj is not None and drawing.Document.getObject(obj.Name) is obj:
            drawing.Document.removeObject(obj.Name)


def host_mark() -> str:
    """Changes with the way in which a host sets text and symbols: pages laid out on another host
    are to be laid out anew."""
    return f"{tuple(compat.lettering())} {compat.symbol_scale():.4f}"


def fill(views: dict[str, Any], sheet: Any) -> None:
    """Brings the views up to date with a core Sheet; only what differs is touched."""
    for role, figure in sheet.figures.items():
        if f"figure {role}" in views:
            _set_figure(views[f"figure {role}"], figure)
    for role, text in sheet.texts.items():
        if f"text {role}" in views:
            _set_text(views[f"text {role}"], text)


def say_stale(views: dict[str, Any], reason: str) -> None:
    """Writes on the page that it is not up to date, and why; an empty reason takes it away."""
    from veneerwb.core.shop.one_sheet.sheet import stale

    if f"text {STALE}" in views:
        _set_text(views[f"text {STALE}"], stale(reason))


def set_picture(views: dict[str, Any], layout: Any, box: Any) -> None:
    """Puts the picture of a layout in its field; an empty field for a stock."""
    from veneerwb.core.shop.drawing.drawn import (
        Drawing,
    )
    from veneerwb.core.shop.one_sheet.sheet import figure

    view = views.get(f"figure {PICTURE}")
    if view is None:
        return
    if not box.wide:
        _set_figure(view, figure(Drawing(1.0, 1.0), box.x, box.y))
        return
    data, shape = _preview(layout)
    factor = min(box.wide / shape[0], box.high / shape[1])
    drawing = Drawing(shape[0] * factor, shape[1] * factor)
    drawing.picture(data)
    x, y = box.centre
    _set_figure(view, figure(drawing, x - drawing.wide / 2.0, y - drawing.high / 2.0))


def _preview(layout: Any) -> tuple[bytes, tuple[int, int]]:
    """The picture as a JPEG file, and its columns and rows."""
    from PIL import Image

    from veneerwb.paint import picture

    pixels = picture(layout, px_per_mm=MOST_PIXELS / (2.0 * layout.top.reach), seams=True)
    image = Image.fromarray(pixels, "RGBA")
    paper = Image.new("RGB", image.size, (255, 255, 255))
    paper.paste(image, mask=image.getchannel("A"))
    stream = io.BytesIO()
    paper.save(stream, "JPEG", quality=92, subsampling=0)
    return stream.getvalue(), image.size


def _set_figure(view: Any, figure: Any) -> None:
    from veneerwb.core.shop.one_sheet.frame import AXIS

    set_view(view, Symbol=figure.svg, Scale=compat.symbol_scale(), X=AXIS, Y=figure.box.centre[1])


def _set_text(view: Any, text: Any) -> None:
    from veneerwb.core.shop.one_sheet.frame import AXIS

    letters, height = compat.lettering(), text.height
    spacing = round(100.0 * text.pitch / (letters.line * height))
    pitch = letters.line * height * spacing / 100.0
    lines = as_read(text.lines) or [""]
    block = (len(lines) + letters.trailing) * pitch
    set_view(
        view,
        Text=lines,
        TextSize=letters.size * height,
        LineSpace=spacing,
        MaxWidth=2.0 * (AXIS - text.x + _MARGIN),
        X=AXIS,
        Y=text.top - height + letters.drop * height - block / 2.0,
        Scale=1.0,
    )


def as_read(lines: Sequence[str]) -> list[str]:
    """What a view shows as these lines: the host takes them for HTML, in which it mends "<" alone,
    and some hosts read escapes where there is a \\x."""
    return [_escaped(line.replace("&", "&amp;")) for line in lines]


def _escaped(line: str) -> str:
    escapes = "\\x" in line and compat.reads_escapes()
    return line.encode("unicode_escape").decode("ascii") if escapes else line


def set_view(view: Any, **values: Any) -> None:
    """Sets the properties that differ, so that nothing is touched or kept for undo in vain."""
    for name, value in values.items():
        now = getattr(view, name)
        now = getattr(now, "Value", now)
        same = abs(now - value) < 1e-5 if isinstance(value, float) else now == value
        if not same:
            setattr(view, name, value)
