# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template as DXF, for a router, a laser or a knife: release 2000, in millimetres or inches.

Outlines are closed polylines, arcs in them true arcs (bulges); see `arcs` for curves that
are neither straight nor round. Layers by purpose: `marks.LAYERS`.
"""

from __future__ import annotations

import io
import os
from collections.abc import Iterable
from typing import Any

from veneerwb import packages
from veneerwb.core.errors import VeneerError
from veneerwb.core.files import write_beside
from veneerwb.core.outlines.edge import Arc, Edge, Line
from veneerwb.core.plane import choice
from veneerwb.core.shop.drawing.drawn import ANCHORS, Letters
from veneerwb.core.shop.drawing.lengths import INCH, Lengths
from veneerwb.core.shop.drawing.lettering import clean
from veneerwb.core.shop.templates.arcs import TOLERANCE, vertices
from veneerwb.core.shop.templates.marks import HIDDEN, LAYERS, PINS, TEXT, Lines, marks
from veneerwb.core.shop.templates.template import Template
from veneerwb.words import marked, say

UNITS = {"mm": (1.0, 4, 1), "inch": (1.0 / INCH, 1, 0)}
"""By unit: how long a millimetre is in it, and the format's codes of $INSUNITS and $MEASUREMENT."""
RELEASE = "R2000"
_ARCS = marked(
    "Curves that are neither straight nor round are arcs within {tolerance:.4f} mm of them."
)
_COLOURS = dict(zip(LAYERS, (7, 3, 5, 4, 1, 8, 8, 6, 2, 8, 7)))


def dxf(template: Template, unit: str = "mm", lengths: Lengths | None = None) -> bytes:
    """The file. `unit` "mm" or "inch" is what its coordinates are in; `lengths` how its words give
    lengths, in that unit if not said."""
    ezdxf = _ezdxf()
    scale, code, metric = UNITS[choice(marked("unit of the file"), unit, tuple(UNITS))]
    doc = ezdxf.new(RELEASE)
    doc.header["$INSUNITS"] = code
    doc.header["$MEASUREMENT"] = metric
    for layer in LAYERS:
        added = doc.layers.add(layer, color=_COLOURS[layer])
        if layer in HIDDEN:
            added.off()
    space = doc.modelspace()
    for mark in marks(template, lengths or Lengths(unit), _note(template)):
        if isinstance(mark, Letters):
            _text(space, mark, scale)
        else:
            _lines(space, mark, scale)
    out = io.StringIO()
    doc.write(out)
    return out.getvalue().encode(doc.output_encoding, errors="dxfreplace")


def write_dxf(
    template: Template,
    path: str | os.PathLike[str],
    unit: str = "mm",
    lengths: Lengths | None = None,
) -> None:
    """Writes the file to `path`, whole or not at all; VeneerError."""
    data = dxf(template, unit, lengths)
    write_beside(path, lambda stream: stream.write(data))


def _note(template: Template) -> str:
    """What must be known of curves that a polyline cannot hold."""
    loops = (template.cut, *template.nets)
    plain = all(isinstance(s, Arc | Line) for loop in loops for s in loop)
    return "" if plain else say(_ARCS, tolerance=TOLERANCE)


def _ezdxf() -> Any:
    """The library that writes the format; all else works without it."""
    try:
        import ezdxf
    except ImportError as error:
        raise VeneerError(
            "no-ezdxf",
            "DXF files need the Python package ezdxf, which is missing; take the SVG files, or run "
            "this in a terminal and start FreeCAD again: {command}",
            command=packages.command(packages.EZDXF),
        ) from error
    return ezdxf


def _lines(space: Any, mark: Lines, scale: float) -> None:
    attributes = {"layer": mark.layer}
    if mark.layer == PINS:  # what a drill looks for
        (x, y), radius = mark.edge[0].centre, mark.edge[0].radius
        space.add_circle((x * scale, y * scale), radius * scale, dxfattribs=attributes)
        return
    points = polyline(mark.edge, mark.closed, scale)
    space.add_lwpolyline(points, format="xyb", close=mark.closed, dxfattribs=attributes)


def polyline(edge: Edge, closed: bool, scale: float) -> Iterable[tuple[float, float, float]]:
    """The vertices (x, y, bulge) of a run, scaled; of an open one its end too."""
    run = vertices(edge)
    if not closed:
        run.append((*edge[-1].end, 0.0))
    return [(x * scale, y * scale, bulge) for x, y, bulge in run]


def _text(space: Any, mark: Letters, scale: float) -> None:
    place = mark.at[0] * scale, mark.at[1] * scale
    space.add_text(safe(mark.text), dxfattribs={
        "layer": TEXT, "insert": place, "align_point": place,
        "halign": ANCHORS.index(mark.anchor), "height": mark.height * scale, "rotation": mark.turn,
    })  # fmt: skip


def safe(text: str) -> str:
    """Text without what readers of the format take for commands: %%, ^ and escapes by \\."""
    while "%%" in text:
        text = text.replace("%%", "% %")
    return clean(text).replace("\\", "/").replace("^", "^ ")
