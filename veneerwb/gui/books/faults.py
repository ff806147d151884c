# SPDX-License-Identifier: LGPL-2.1-or-later
"""The faults and usable areas of a bundle while they are edited, and how they lie on each photo.

What nobody touches stays exactly as it was. Nothing here writes to a document.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import FreeCAD
import numpy as np
from shapely.geometry import Polygon

from veneerwb.core import Bundle, Fault, Leaf, Motion, VeneerError
from veneerwb.core.faults import KINDS, along, checked
from veneerwb.core.progress import Progress, unheard
from veneerwb.core.renumbering import numbers_now
from veneerwb.core.spots import suggested
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture
from veneerwb.gui.photos.items import Item

HERE = "VeneerFaultsPanel"
USABLE, SUGGESTED = "usable", "suggested"


def word(kind: str) -> str:
    """What a kind of fault is called on the screens."""
    translate = FreeCAD.Qt.translate
    return {
        "margin": translate(HERE, "margin"),
        "split": translate(HERE, "split"),
        "knot": translate(HERE, "knot"),
        "patch": translate(HERE, "patch"),
        "stain": translate(HERE, "stain"),
        USABLE: translate(HERE, "usable"),
    }.get(kind, kind)


@dataclass(eq=False)
class Entry:
    """A fault: its outline in mm of leaf `leaf`, or (None) in bundle mm and through all leaves.
    `suggested` is one that nobody has taken yet, and `why` it is one; `source` is the object of the
    document that draws it, which is its only place to be changed."""

    outline: Polygon
    kind: str
    leaf: int | None = None
    suggested: bool = False
    source: Any = None
    why: str = ""

    @property
    def held(self) -> bool:
        return self.suggested or self.source is not None

    @property
    def text(self) -> str:
        return f"{word(self.kind)}?" if self.suggested else word(self.kind)

    def told(self) -> str:
        """It in a line."""
        translate = FreeCAD.Qt.translate
        where = (
            translate(HERE, "all leaves")
            if self.leaf is None
            else translate(HERE, "leaf {number}").format(number=self.leaf)
        )
        if self.source is not None:
            where += ", " + self.source.Label
        return f"{self.text}, {where}"


class FaultBook:
    """`entries` and `rings` (by leaf: the rings of its usable area in leaf mm, none for the whole
    photo) of a plain bundle, with the faults through all leaves beside it: those written down, and
    those drawn by objects of the document."""

    def __init__(
        self, bundle: Bundle, through: Iterable[Fault], drawn: Iterable[tuple[Any, Fault]] = ()
    ) -> None:
        self.bundle = bundle
        self.entries = [
            Entry(part, fault.kind, leaf.number)
            for leaf in bundle.leaves
            for fault in leaf.faults
            for part in _parts(fault.outline)
        ]
        self.entries += [Entry(p, fault.kind) for fault in through for p in _parts(fault.outline)]
        self.entries += [Entry(fault.outline, fault.kind, source=shape) for shape, fault in drawn]
        self.rings = {leaf.number: _rings(leaf) for leaf in bundle.leaves}
        self._sources_were = self.sources()
        self._faults_were = {k: _told(entries) for k, entries in self.written().items()}
        self._rings_were = {k: _listed(rings) for k, rings in self.rings.items()}

    # --- on a photo ---------------------------------------------------------------------------

    def items(self, number: int, picture: Picture) -> list[Item]:
        """What is to be seen on the photo of a leaf, its usable area first."""
        leaf = self.bundle.leaf(number)
        rings = self.rings[number] or [np.array(_box(leaf.size))]
        onto = self._onto_photo(number, number)
        items = [
            Item(_places(onto, ring, picture), USABLE, "" if k else word(USABLE), meant=USABLE)
            for k, ring in enumerate(rings)
        ]
        for entry in self.on(number):
            corners = np.array(entry.outline.exterior.coords)[:-1]
            corners = _places(self._onto_photo(number, entry.leaf), corners, picture)
            look = SUGGESTED if entry.suggested else entry.kind
            items.append(Item(corners, look, entry.text, entry.held, entry))
        return items

    def on(self, number: int) -> list[Entry]:
        """The faults that a leaf shows."""
        return [entry for entry in self.entries if entry.leaf in (None, number)]

    def leaf(self, number: int) -> Leaf:
        """A leaf as it stands in the book."""
        leaf = self.bundle.leaf(number)
        faults = [
            Fault(e.outline if e.leaf is not None else leaf.register.apply_to(e.outline), e.kind)
            for e in self.on(number)
            if not e.suggested
        ]
        usable = None
        for ring in map(Polygon, self.rings[number]):
            usable = ring if usable is None else usable.symmetric_difference(ring)
        return replace(leaf, faults=tuple(faults), usable=usable)

    def suggest(self, number: int, progress: Progress = unheard) -> list[Entry]:
        """What a leaf's photo suggests, in place of what it suggested before. `progress` may raise
        to end it; nothing is changed then."""
        others = [e for e in self.entries if not (e.suggested and e.leaf == number)]
        found = [
            Entry(part, one.kind, number, True, why=fields.in_words(one))
            for one in suggested(self.leaf(number), progress)
            for part in _parts(one.outline)
        ]
        self.entries = [*others, *found]
        return found

    def _onto_photo(self, number: int, leaf: int | None) -> Motion:
        """From mm of a leaf, or of the bundle, to mm on a leaf's photo."""
        face = self.bundle.leaf(number).face
        return face.view if leaf is None else face.view @ face.register.inverse()

    def points(self, item: Item, number: int, picture: Picture, leaf: int | None) -> np.ndarray:
        """The corners of an item on the photo of leaf `number`, in mm of a leaf or the bundle."""
        mm = np.array([picture.mm(corner) for corner in item.corners])
        return self._onto_photo(number, leaf).inverse().apply(mm)

    # --- changes ------------------------------------------------------------------------------

    def draw(self, item: Item, number: int, picture: Picture, through: bool) -> Entry:
        """What was drawn on a leaf's photo becomes a fault, sound or not: `trouble` tells. Raises
        VeneerError for a line that is none."""
        leaf = None if through else number
        points = self.points(item, number, picture, leaf)
        outline = Polygon(points) if item.ring else _parts(along(points).outline)[0]
        entry = Entry(outline, item.kind, leaf)
        self.entries.append(entry)
        return entry

    def reshape(self, item: Item, number: int, picture: Picture) -> None:
        """A fault takes the shape of its item, sound or not: `trouble` tells."""
        entry = item.meant
        entry.outline = Polygon(self.points(item, number, picture, entry.leaf))

    def set_usable(self, items: Sequence[Item], number: int, picture: Picture) -> None:
        """The usable area of a leaf is what lies within an odd number of these items; the whole
        photo where there is none."""
        self.rings[number] = [self.points(item, number, picture, number) for item in items]

    def set_outline(self, outline: Any, number: int) -> None:
        """The usable area of a leaf, shapely in leaf mm; None for the whole photo."""
        parts = [] if outline is None else _parts(outline)
        rings = [ring for part in parts for ring in (part.exterior, *part.interiors)]
        self.rings[number] = [np.array(ring.coords)[:-1] for ring in rings]

    def move(self, entry: Entry, number: int, through: bool) -> None:
        """The fault runs through all leaves from now on, or is on leaf `number` alone, on which it
        is seen; there it stays where it is."""
        leaf = None if through else number
        if entry.leaf != leaf:
            register = self.bundle.leaf(number).register
            motion = register.inverse() if through else register
            entry.outline, entry.leaf = motion.apply_to(entry.outline), leaf

    def trouble(self) -> str:
        """What is wrong with the first outline that is none; "" if all are sound."""
        try:
            for entry in self.entries:
                if not entry.suggested:
                    checked(Fault(entry.outline, entry.kind if entry.kind in KINDS else "knot"))
            for number, rings in self.rings.items():
                for ring in rings:
                    _sound(ring, number)
        except VeneerError as error:
            return fields.in_words(error)
        return ""

    # --- what changed -------------------------------------------------------------------------

    def written(self) -> dict[int | None, list[Entry]]:
        """By leaf (None: the bundle) the faults that are written down there, not drawn elsewhere
        and not only suggested."""
        faults: dict[int | None, list[Entry]] = {one: [] for one in (None, *self.rings)}
        for entry in self.entries:
            if not entry.held:
                faults[entry.leaf].append(entry)
        return faults

    def sources(self) -> list[Any]:
        """The objects of the document that draw faults, each once."""
        found: list[Any] = []
        for entry in self.entries:
            if entry.source is not None and entry.source not in found:
                found.append(entry.source)
        return found

    def take_over(self, old: FaultBook) -> list[int]:
        """What was changed in an older book of the bundle is changed here, and what was suggested
        there is so here; the numbers there of the leaves that are no more, with which it goes. What
        is of an outline that is gone goes too."""
        now = {None: None, **numbers_now(old.bundle, self.bundle)}
        faults, usable = old.changed_faults(), old.changed_usable()
        ours, drawn = {now.get(k, 0) for k in faults}, old.sources() != old._sources_were

        def stays(entry: Entry) -> bool:
            return not drawn if entry.source is not None else entry.leaf not in ours

        def comes(entry: Entry) -> bool:
            if entry.source is not None:
                return drawn and getattr(entry.source, "Document", None) is not None
            return (entry.suggested or entry.leaf in faults) and entry.leaf in now

        self.entries = [one for one in self.entries if stays(one)]
        self.entries += [
            replace(one, leaf=now[one.leaf]) for one in old.entries if comes(one)
        ]
        self.rings |= {now[k]: rings for k, rings in usable.items() if k in now}
        return sorted({*faults, *usable} - now.keys())

    def changed_faults(self) -> dict[int | None, list[Entry]]:
        """Of `written` what has changed."""
        return {k: now for k, now in self.written().items() if _told(now) != self._faults_were[k]}

    def changed_usable(self) -> dict[int, list[np.ndarray]]:
        """The usable rings of every leaf where they have changed."""
        return {k: now for k, now in self.rings.items() if _listed(now) != self._rings_were[k]}


def _told(entries: list[Entry]) -> list[Any]:
    return [(entry.kind, list(entry.outline.exterior.coords)) for entry in entries]


def _listed(rings: list[np.ndarray]) -> list[Any]:
    return [ring.tolist() for ring in rings]


def _parts(area: Any) -> list[Polygon]:
    """The polygons of a shapely area."""
    return [part for part in getattr(area, "geoms", [area]) if not part.is_empty]


def _rings(leaf: Any) -> list[np.ndarray]:
    """The rings of a leaf's usable area in leaf mm; none if that is the whole photo."""
    if leaf.usable.equals(Polygon(_box(leaf.size))):
        return []
    return [
        np.array(ring.coords)[:-1]
        for part in _parts(leaf.usable)
        for ring in (part.exterior, *part.interiors)
    ]


def _box(size: tuple[float, float]) -> list[tuple[float, float]]:
    width, length = size
    return [(0.0, 0.0), (width, 0.0), (width, length), (0.0, length)]


def _places(onto: Motion, points: np.ndarray, picture: Picture) -> list[tuple[float, float]]:
    return [picture.place(tuple(map(float, mm))) for mm in onto.apply(points)]


def _sound(ring: np.ndarray, number: int) -> None:
    try:
        checked(Fault(Polygon(ring), "margin"))
    except VeneerError as error:
        raise VeneerError(
            "no-usable-area",
            "The usable outline of leaf {leaf} crosses itself or encloses nothing; draw it round "
            "the leaf, without crossing.",
            leaf=number,
        ) from error
