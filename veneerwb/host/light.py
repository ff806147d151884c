# SPDX-License-Identifier: LGPL-2.1-or-later
"""The light of a bundle that is in the document already, evened, or left as photographed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import Any

import numpy as np
from shapely import affinity

from veneerwb.core import Leaf, Side, VeneerError
from veneerwb.core.leaf import Bundle
from veneerwb.core.photos.background import around, leaf_on_background
from veneerwb.core.photos.evening import Evening, Light, Three, evenings, measured
from veneerwb.core.photos.preparation import CLEAR
from veneerwb.core.photos.preparing import Troubles, each_evening
from veneerwb.core.photos.reading import checked_gains
from veneerwb.core.photos.report import light_report
from veneerwb.host import values
from veneerwb.host.objects.base import set_if_new
from veneerwb.host.sequence import leaf_objects
from veneerwb.host.steps import one_step
from veneerwb.words import marked, say, word

RAGGED = 3.0
"""Pixels: an outline that is found is not truer than that."""


def even_light(
    bundle_obj: Any, patch: Any = None, grey: bool = False,
    progress: Callable[[float], Any] | None = None,
) -> list[str]:
    """Evens the light of all photographs of a Bundle object, those of backs too, and says what was
    done: from the background round the leaf that is found on each, or from `patch` (shapely, mm on
    every photograph as the leaf is seen from its face), which may be known to be grey.

    The gains are set and EvenLight is on; nothing else changes, in one undo step. Raises Troubles,
    which names every photograph whose light cannot be had, before anything is changed. `progress`
    is told the share done before each photograph; what it raises leaves all as it was.
    """
    tell = progress or (lambda share: None)
    bundle, objects = values.plain_bundle(bundle_obj), leaf_objects(bundle_obj)
    places, lights, troubles = [], [], []
    sides = [*_sides(bundle)]
    for number, name, side, leaf in sides:
        tell(len(places) / len(sides))
        places.append((objects[number], name))
        try:
            lights.append(_light(side, leaf, patch, _called(objects[number], name)))
        except VeneerError as error:
            troubles.append((_called(objects[number], name), str(error)))
    found, more = each_evening(lights, grey)
    if troubles or more:
        raise Troubles([*troubles, *more], len(places))
    report = light_report(found, _word(patch, grey))
    with one_step(bundle_obj.Document, word("Even light")):
        for (obj, name), evening in zip(places, found):
            set_if_new(obj, **{name: list(evening.gains)})
        set_if_new(bundle_obj, EvenLight=True)
    return report


def even_backs(bundle_obj: Any, numbers: Iterable[int]) -> None:
    """Evens the light of backs that were added to leaves whose faces are evened already, so that
    the background is as light behind both; where that cannot be measured, the leaf's Notes say so.
    """
    bundle, objects = values.plain_bundle(bundle_obj), leaf_objects(bundle_obj)
    with one_step(bundle_obj.Document, word("Even light of backs")):
        for leaf in map(bundle.leaf, numbers):
            obj = objects[leaf.number]
            gains = checked_gains(obj.Gains)
            if gains is None:
                continue
            try:
                found = _as_the_face(leaf, gains, obj)
            except VeneerError as error:
                said = f"{word('Back: its light stays as photographed.')} {error}"
                set_if_new(obj, Notes=[*obj.Notes, said])
            else:
                set_if_new(obj, BackGains=list(found))


def _as_the_face(leaf: Leaf, gains: Three, obj: Any) -> Three:
    face = _light(leaf.face, leaf, None, _called(obj, "Gains"))
    back = _light(leaf.back, leaf, None, _called(obj, "BackGains"))
    return evenings([back], target=np.multiply(face.level, gains))[0].gains


def told(bundle_obj: Any) -> list[str]:
    """What the gains of a Bundle object do to each photograph, in sentences, by leaf, and which
    backs they leave out."""
    said = []
    for obj in leaf_objects(bundle_obj).values():
        for name in ("Gains", "BackGains"):
            if getattr(obj, name):
                gains = checked_gains(getattr(obj, name))
                said.append(Evening(gains, name=_called(obj, name)).text)
        if obj.Gains and obj.BackPhoto and not obj.BackGains:
            said.append(say("The back of leaf {leaf} is as photographed.", leaf=obj.Number))
    return said


def _sides(bundle: Bundle) -> Iterator[tuple[int, str, Side, Leaf]]:
    """Every photograph: the leaf's number, where its gains go, the side, the leaf."""
    for leaf in bundle.leaves:
        yield leaf.number, "Gains", leaf.face, leaf
        if leaf.back is not None and leaf.back.source == "photo":
            yield leaf.number, "BackGains", leaf.back, leaf


def _light(side: Side, leaf: Leaf, patch: Any, name: str) -> Light:
    photo = side.image.as_photographed()
    if patch is not None:
        return measured(photo.pixels, _in_pixels(patch, photo), name)
    onto = side.view @ side.register.inverse()
    area = _background(photo, _in_pixels(onto.apply_to(leaf.usable), photo), name)
    return measured(photo.pixels, area, name)


def _background(photo: Any, usable: Any, name: str) -> Any:
    """What lies round the leaf that is found on a photograph (shapely, pixels). What lies round the
    `usable` area may be wood: only where that lies on the leaf that is found, is that the leaf."""
    clear = CLEAR * min(photo.shape)
    if around(usable, photo.shape, clear).is_empty:
        raise VeneerError(
            "no-background-kept",
            "{photo} shows no background round the leaf; bring the leaves in again and choose "
            "there how their light is evened.",
            photo=name,
        )
    try:
        found = leaf_on_background(np.asarray(photo.pixels))
    except VeneerError as error:
        raise VeneerError(
            "leaf-not-found-for-light", "{photo}: {why}", photo=name, why=str(error)
        ) from error
    if not found.buffer(max(clear, RAGGED)).covers(usable):
        raise VeneerError(
            "background-in-doubt",
            "{photo} shows wood beside what is found as the leaf; bring the leaves in again and "
            "choose there how their light is evened.",
            photo=name,
        )
    return around(found.union(usable), photo.shape, clear)


def _in_pixels(area: Any, photo: Any) -> Any:
    """An area in mm on a photograph as (column, row)."""
    scale = photo.mm_per_px
    return affinity.affine_transform(area, [1 / scale, 0, 0, -1 / scale, 0, photo.shape[0]])


def _called(obj: Any, name: str) -> str:
    if name == "Gains":
        return say("Leaf {leaf}", leaf=obj.Number)
    return say("The back of leaf {leaf}", leaf=obj.Number)


def _word(patch: Any, grey: bool) -> str:
    if patch is None:
        return marked("background")
    return marked("grey patch") if grey else marked("patch")
