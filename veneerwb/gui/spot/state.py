# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the wedge lies on the leaves and how the top is laid, as the hand has it now: no widgets.

The document follows when the hand rests; see panels/spot.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Any

from veneerwb.core import Bundle, Layout, Leaf, Motion, Top, VeneerError
from veneerwb.core.matches.radial import TURNED, Placement
from veneerwb.host import values
from veneerwb.host.objects.base import Refused, kind_of
from veneerwb.words import say

Heard = Callable[[], None]
TIP = ("TipX", "TipY", "Axis")


class SpotState:
    """`bundle`, `recipe` (whose placement is always given) and `top` are the core's; `go` changes
    them, `changed` and `rested` take what is to be called then and when the document has followed.
    `number` is the leaf that is looked at, and `mirrored` whether the top is shown as two mirrors
    on that leaf would (else from the true leaves): `look` changes these.
    """

    def __init__(self, match: Any) -> None:
        """Raises Refused or VeneerError where there is nothing to choose a spot on."""
        self.doc, self._name = match.Document, match.Name
        self.settle: Heard = lambda: None
        """Has the document follow now, as an undo step that is then closed: the panel's."""
        self.mirrored = False
        self.number = 0
        self._changed: list[Heard] = []
        self._rested: list[Heard] = []
        self._alone: tuple[Leaf, int, Bundle] | None = None
        self.read()

    @property
    def match(self) -> Any:
        """The Match object. Refused if it is gone."""
        found = self.doc.getObject(self._name) if self.doc is not None else None
        if kind_of(found) != "Match":
            raise Refused(say("The match is gone; close this panel."))
        return found

    # --- what the document has ----------------------------------------------------------------

    def read(self) -> None:
        """Takes over what the match holds. Raises as `__init__` does, and then changes nothing."""
        match = self.match
        if kind_of(match.Bundle) == "Stock":
            raise Refused(say(
                "A stock of plain sizes has no photographs to choose a spot on; cut the match from "
                "a bundle of leaves."
            ))  # fmt: skip
        bundle, recipe = values.leaves_of(match.Bundle), values.radial_recipe(match)
        self.bundle, self.top = bundle, values.top(match)
        self._sides = match.Sides if match.Top == "Polygon" else 0
        self.size_name = "AcrossFlats" if self._sides else "Diameter"
        """The property that holds the top's size: mm across."""
        self.size = getattr(match, self.size_name).Value
        self.margin = match.Margin.Value
        self.hidden = match.HiddenDisc.Value
        """Diameter (mm) of what will cover the top's centre; faults may lie under it."""
        self.locked = frozenset(path.lstrip(".") for path, _ in match.ExpressionEngine)
        """The properties that expressions set."""
        self._in_middle = recipe.placement is None
        self.recipe = recipe
        if self._in_middle:
            self.recipe = replace(recipe, placement=self._middle())
        self._there = self.recipe, self.size, self.hidden
        self._laid: Layout | VeneerError | None = None
        if self.number not in bundle.numbers:
            self.number = self.used[0]

    def _middle(self) -> Placement:
        """Where a match lies that is cut from the middle of its leaves."""
        try:
            return self.recipe.lay(self.bundle, self.top).recipe.placement
        except VeneerError:  # too few leaves: in the middle of the first
            return self._mirrored(self.bundle.numbers[0]).recipe.placement

    def differing(self) -> dict[str, Any]:
        """What the match must be given to be as the hand has it, by property."""
        now, there = self.recipe, self._there[0]
        wanted: dict[str, Any] = {}
        if now.ways != there.ways:
            wanted["Ways"] = now.ways
        if (now.turn, now.turned) != (there.turn, there.turned):
            plain = now.turned == TURNED[now.turn][0]
            wanted.update(Turn=now.turn, Turned="auto" if plain else now.turned)
        if now.first != there.first:
            wanted["First"] = now.first
        if now.order != there.order:
            listed = now.order if isinstance(now.order, str) else ", ".join(map(str, now.order))
            wanted["Order"] = listed
        if self.size != self._there[1]:
            wanted[self.size_name] = self.size
        if now.placement != there.placement or (wanted and self._in_middle):
            place = now.placement
            wanted.update(zip(TIP, (place.x, place.y, place.angle)))
            if self._in_middle:
                wanted["AutoPlacement"] = False
        if self.hidden != self._there[2]:
            wanted["HiddenDisc"] = self.hidden
        return {name: value for name, value in wanted.items() if name not in self.locked}

    # --- what the hand has --------------------------------------------------------------------

    @property
    def placement(self) -> Placement:
        return self.recipe.placement

    def go(
        self, placement: Placement | None = None, first: int | None = None,
        ways: int | None = None, turn: str | None = None, order: Any = None,
        turned: str | None = None, size: float | None = None, hidden: float | None = None,
        run: bool = False,
    ) -> None:
        """Changes what is given, and leaves what an expression sets. Raises VeneerError for what
        cannot be, and then changes nothing.

        It is an undo step of its own; with `run` it may go on, and the document follows later.
        """
        recipe, top = self.recipe, self.top
        changes: dict[str, Any] = {}
        if ways is not None and ways != recipe.ways and "Ways" not in self.locked:
            changes["ways"] = ways
            if not isinstance(recipe.order, str):  # a list is of so many leaves
                changes["order"] = "sequence"
        if turn is not None and turn != recipe.turn and "Turn" not in self.locked:
            changes.update(turn=turn, turned=TURNED.get(turn, ("",))[0])
        given = {"First": ("first", first), "Order": ("order", order), "Turned": ("turned", turned)}
        changes |= {
            name: value for lock, (name, value) in given.items()
            if value is not None and lock not in self.locked
        }
        if placement is not None:
            changes["placement"] = self._unlocked(placement)
        recipe = replace(recipe, **changes) if changes else recipe
        if size is None or self.size_name in self.locked:
            size = self.size
        elif size != self.size:
            top = Top.polygon(self._sides, size) if self._sides else Top.round(size)
        if hidden is None or "HiddenDisc" in self.locked:
            hidden = self.hidden
        if (recipe, size, hidden) == (self.recipe, self.size, self.hidden):
            return
        if not run:
            self.settle()
        self.recipe, self.top, self.size, self.hidden = recipe, top, size, hidden
        self._laid = None
        self._tell(self._changed)
        if not run:
            self.settle()

    def _unlocked(self, place: Placement) -> Placement:
        here = self.recipe.placement
        both = zip(TIP, (here.x, here.y, here.angle), (place.x, place.y, place.angle))
        return Placement(*(old if name in self.locked else new for name, old, new in both))

    def look(self, number: int | None = None, mirrored: bool | None = None) -> None:
        """Looks at another leaf, or shows the top the other way; the match is not changed."""
        seen = self.number, self.mirrored
        self.number = seen[0] if number is None else number
        self.mirrored = seen[1] if mirrored is None else mirrored
        if (self.number, self.mirrored) != seen:
            self._tell(self._changed)

    def layout(self) -> Layout:
        """The top from the true leaves. Raises VeneerError where it cannot be laid."""
        if self._laid is None:
            try:
                self._laid = self.recipe.lay(self.bundle, self.top)
            except VeneerError as error:
                self._laid = error
        if isinstance(self._laid, VeneerError):
            raise self._laid
        return self._laid

    def shown(self) -> Layout:
        """The top as it is to be shown. Raises VeneerError where it cannot be laid."""
        return self._mirrored(self.number) if self.mirrored else self.layout()

    def _mirrored(self, number: int) -> Layout:
        """The top as two mirrors on the face of one leaf would show it."""
        leaf, ways = self.bundle.leaf(number), self.recipe.ways
        if self._alone is None or self._alone[0] is not leaf or self._alone[1] != ways:
            copies = tuple(replace(leaf, number=k, back=None) for k in range(1, ways + 1))
            self._alone = leaf, ways, Bundle(copies, self.bundle.thickness, "own")
        alike = replace(self.recipe, first=1, order="sequence")
        return alike.lay(self._alone[2], self.top)

    @property
    def covered(self) -> Any:
        """What of the top will be covered (shapely, top mm); None where nothing is."""
        return values.disc(self.hidden)

    @property
    def wedge(self) -> Layout:
        """A layout for the wedge's outlines alone, also where there are too few leaves."""
        try:
            return self.layout()
        except VeneerError:
            return self._mirrored(self.bundle.numbers[0])

    @property
    def used(self) -> list[int]:
        """The leaves that the top needs, by position; where there are too few, all."""
        try:
            return self.recipe.leaf_numbers(self.bundle)
        except VeneerError:
            return list(self.bundle.numbers)

    def onto_leaf(self, number: int) -> Motion:
        """Bundle mm to mm on a leaf, for the side that shows where the top uses it."""
        used = self.used
        position = used.index(number) + 1 if number in used else 0
        return self.bundle.register(number, bool(position) and self.recipe.is_turned(position))

    # --- who is told --------------------------------------------------------------------------

    def changed(self, heard: Heard) -> None:
        """`heard` is called after every change by `go` and `look`, while a hand moves the wedge
        many times a second."""
        self._changed.append(heard)

    def rested(self, heard: Heard) -> None:
        """`heard` is called when the document has followed, also to another change of its own."""
        self._rested.append(heard)

    def follow(self) -> None:
        """The document has followed, or has changed of its own: takes over what it holds."""
        self.read()
        self._tell(self._changed)
        self._tell(self._rested)

    def let_go(self) -> None:
        """Tells nobody any more."""
        self._changed, self._rested = [], []
        self.settle = lambda: None

    @staticmethod
    def _tell(whom: Iterable[Heard]) -> None:
        for heard in tuple(whom):
            heard()
