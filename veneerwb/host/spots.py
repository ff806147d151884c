# SPDX-License-Identifier: LGPL-2.1-or-later
"""Spots of a match that are kept in its document: laid, pictured, kept, taken up again."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Sequence
from dataclasses import replace
from typing import Any, NamedTuple

import numpy as np

from veneerwb.core import Layout, Placement
from veneerwb.core.files import scratch
from veneerwb.core.leaf import Bundle
from veneerwb.core.matches.radial import Radial
from veneerwb.core.photos.reading import save_jpeg
from veneerwb.host import compat, keeping, values
from veneerwb.host.objects.base import Refused, set_if_new
from veneerwb.host.objects.spot import Spot, add_spot, kept
from veneerwb.host.steps import one_step
from veneerwb.words import marked, word

__all__ = [
    "STEPS", "bring_back", "drop", "keep", "kept", "laid", "mark", "noted", "picture_anew",
    "recipe", "rename", "seen",
]  # fmt: skip

STEPS = KEEP, NAME, ANEW, DROP = (
    marked("Keep spot"), marked("Name spot"), marked("Picture spot anew"), marked("Delete spot")
)
"""What the undo steps are called."""
PIXELS = 512
"""Size of a kept picture."""


def recipe(obj: Any) -> Radial:
    """How a kept spot is laid: itself as it was kept, all else as its match is."""
    return replace(
        values.radial_recipe(obj.Match),
        ways=obj.Ways,
        turn=obj.Turn,
        turned=None if obj.Turned == "auto" else obj.Turned,
        placement=Placement(obj.TipX.Value, obj.TipY.Value, obj.Axis.Value),
        first=obj.First,
        order=values.order_of(obj.Order),
    )


def laid(obj: Any) -> Layout:
    """The top of a kept spot from the leaves as they are now. Raises VeneerError where it cannot be
    laid."""
    match = obj.Match
    return _LAID.of(obj, values.leaves_of(match.Bundle), recipe(obj), values.shape(match))


def _lay(bundle: Any, how: Radial, shape: tuple[Any, ...]) -> Layout:
    return how.lay(bundle, values.top_of(*shape))


_LAID = values.Latest(_lay)
_LAID.MOST = 256


def mark(obj: Any) -> str:
    """A mark of what the picture of a kept spot shows; "" for a stock."""
    return _SEEN.of(obj, laid(obj))


def seen(layout: Layout) -> str:
    """A mark of what is seen of a layout: another picture has another mark."""
    if not isinstance(layout.bundle, Bundle):
        return ""
    marks: list[Any] = [layout.top.name]
    for piece in layout.pieces:
        side = layout.bundle.leaf(piece.leaf).side(piece.turned)
        on_photo = (side.view @ piece.onto_bundle).apply(_REFERENCE)
        shown = [np.round(on_photo, 3).tolist(), np.round(piece.outline.bounds, 3).tolist()]
        marks.append((shown, side.image.sha256, side.mm_per_px, side.image.gains))
    return hashlib.sha256(repr(marks).encode()).hexdigest()[:12]


_REFERENCE = np.array([(0.0, 0.0), (100.0, 0.0), (0.0, 100.0)])
_SEEN = values.Latest(seen)
_SEEN.MOST = 256


def keep(match: Any, layout: Layout, name: str, measures: Sequence[float] = ()) -> Any:
    """Keeps the spot of a layout of `match` under a name, with its picture, in one undo step."""
    how = layout.recipe
    if not isinstance(how, Radial) or how.placement is None:
        raise Refused(word("This top has no spot that could be kept."))
    listed = how.order if isinstance(how.order, str) else ", ".join(map(str, how.order))
    doc = match.Document
    with one_step(doc, word(KEEP)):
        obj = add_spot(
            doc, match, name, TipX=how.placement.x, TipY=how.placement.y,
            Axis=how.placement.angle, Ways=how.ways, Turn=how.turn, Turned=how.turned,
            First=how.first, Order=listed, Measures=list(measures),
        )  # fmt: skip
        _picture(obj, layout)
        compat.recompute(doc, [obj])
    return obj


def picture_anew(obj: Any) -> None:
    """Pictures a kept spot as its leaves are now, in one undo step."""
    with one_step(obj.Document, word(ANEW)):
        _picture(obj, laid(obj))
        set_if_new(obj, Measures=[])  # they were of the leaves as they were
        compat.recompute(obj.Document, [obj])


def rename(obj: Any, name: str) -> None:
    """Gives a kept spot another name, in one undo step."""
    if name and name != obj.Label:
        with one_step(obj.Document, word(NAME)):
            obj.Label = name


def drop(objs: Sequence[Any]) -> None:
    """Takes kept spots out of their document, in one undo step."""
    if objs:
        doc = objs[0].Document
        with one_step(doc, word(DROP)):
            for obj in objs:
                doc.removeObject(obj.Name)


class Noted(NamedTuple):
    """All that a kept spot holds, its picture as the bytes of the file."""

    label: str
    values: dict[str, Any]
    picture: bytes


NOT_HELD = "Match", "Picture", "Old"
HELD = [one.name for one in Spot.properties if one.name not in NOT_HELD]


def noted(match: Any) -> dict[str, Noted]:
    """What `bring_back` needs to know of the kept spots of a match as they are, by object."""
    return {
        obj.Name: Noted(
            obj.Label, {name: getattr(obj, name) for name in HELD}, _bytes_of(obj.Picture)
        )
        for obj in kept(match)
    }


def bring_back(match: Any, spots: dict[str, Noted]) -> None:
    """Has the kept spots of a match as they were noted, in the step that is open: what was kept
    since is taken out, what was taken out is made anew."""
    doc, now = match.Document, {obj.Name: obj for obj in kept(match)}
    for name in now.keys() - spots.keys():
        doc.removeObject(name)
    for name, was in spots.items():
        obj = now.get(name) or add_spot(doc, match, was.label)
        set_if_new(obj, Label=was.label, **was.values)
        if was.picture and _bytes_of(obj.Picture) != was.picture:
            _put_picture(obj, was.picture)


def _bytes_of(path: str) -> bytes:
    if not os.path.isfile(path):
        return b""
    with open(path, "rb") as file:
        return file.read()


def _put_picture(obj: Any, jpeg: bytes) -> None:
    with scratch("spots") as folder:
        path = os.path.join(folder, f"{obj.Name}.jpg")
        with open(path, "wb") as file:
            file.write(jpeg)
        keeping.keep(obj, Picture=path)


def _picture(obj: Any, layout: Layout) -> None:
    if not isinstance(layout.bundle, Bundle):
        return
    from veneerwb.paint.gallery import pictured
    from veneerwb.paint.qt import to_pixels

    pixels = to_pixels(pictured(layout, PIXELS))[..., :3]
    with scratch("spots") as folder:
        path = os.path.join(folder, f"{obj.Name}.jpg")
        save_jpeg(path, np.ascontiguousarray(pixels))
        keeping.keep(obj, Picture=path)
    obj.PictureMark = seen(layout)
