# SPDX-License-Identifier: LGPL-2.1-or-later
"""The paper marks of a bundle's leaves while they are clicked, and what they tell.

Places are leaf mm. What nobody touches stays exactly as it was. Nothing here writes to a document.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

import FreeCAD

from veneerwb.core import Bundle, Motion, VeneerError
from veneerwb.core.plane import IDENTITY
from veneerwb.core.renumbering import numbers_now
from veneerwb.core.targets import MARK, Frame, carried_back, frame, located, shared
from veneerwb.core.targets.mark import LETTERS
from veneerwb.core.targets.measuring import RING
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.items import Item, mark

translate = FreeCAD.Qt.translate
HERE = "VeneerMarksPanel"
ASKEW = 45.0
"""Degrees: an arrow that points further from the photo's top is spoken of."""


@dataclass(eq=False)
class Entry:
    """A mark: which (0 for A), where (leaf mm), and, if it was clicked in this panel, `error`: mm,
    one deviation of its centre by the fit to the photograph; `askew`: degrees by which its arrow
    points away from the photo's top, counter-clockwise, None where no arrow was seen; `ring`: mm
    that its ring is across by the photograph's scale."""

    which: int
    place: Place
    error: float | None = None
    askew: float | None = None
    ring: float = MARK.outer

    @property
    def letter(self) -> str:
        return LETTERS[self.which]

    @property
    def text(self) -> str:
        """What stands beside it on the photograph."""
        return self.letter if self.error is None else f"{self.letter} {plus_minus(self.error)}"

    def told(self) -> str:
        """It in a line."""
        text = self.text
        if self.error is None:
            text = translate(HERE, "{letter}, as kept").format(letter=self.letter)
        if self.askew is not None and abs(self.askew) > ASKEW:
            text += translate(HERE, "; its arrow does not point up")
        if abs(math.log(self.ring / MARK.outer)) > RING:
            text += translate(
                HERE, "; its ring seems {seen} across, not {printed}: see scale and print"
            ).format(seen=fields.length(self.ring), printed=fields.length(MARK.outer))
        return text


class MarkBook:
    """`entries`, by leaf, of a plain bundle; `marks` are those that its leaves have (leaf mm, by
    number, 0 for A)."""

    def __init__(self, bundle: Bundle, marks: Mapping[int, Mapping[int, Place]]) -> None:
        self.bundle = bundle
        self.entries = {
            number: [Entry(k, place) for k, place in sorted(marks.get(number, {}).items())]
            for number in bundle.numbers
        }
        self._were = {number: self.places(number) for number in bundle.numbers}

    def places(self, number: int) -> dict[int, Place]:
        """The marks of a leaf by number, as `targets` wants them."""
        return {one.which: one.place for one in self.on(number)}

    def on(self, number: int) -> list[Entry]:
        """The marks of a leaf in the order of their letters."""
        return sorted(self.entries[number], key=lambda one: one.which)

    def free(self, number: int, first: int = 0) -> str:
        """The letters that no mark of a leaf has, from the one of `first` on."""
        taken = self.places(number)
        turned = [(first + k) % len(LETTERS) for k in range(len(LETTERS))]
        return "".join(LETTERS[k] for k in turned if k not in taken)

    # --- on a photo ---------------------------------------------------------------------------

    def _onto_photo(self, number: int) -> Motion:
        face = self.bundle.leaf(number).face
        return face.view @ face.register.inverse()

    def on_photo(self, number: int, picture: Picture, place: Place) -> Place:
        """A place of a leaf (leaf mm) on its photo (column, row)."""
        return picture.place(tuple(map(float, self._onto_photo(number).apply([place])[0])))

    def items(self, number: int, picture: Picture) -> list[Item]:
        """The marks to be seen on the photo of a leaf."""
        return [
            mark(self.on_photo(number, picture, one.place), one.text, meant=one)
            for one in self.on(number)
        ]

    def locate(
        self, number: int, picture: Picture, rough: Place, which: int, entry: Entry | None = None
    ) -> Entry:
        """The mark near a click on the photo of a leaf: `entry` moved there, or a new one with the
        letter of `which`, or the one that is known there already, centred anew.

        Raises VeneerError where there is no mark that can be centred, and where another one of the
        leaf is there already; everything is as before then.
        """
        name = translate(HERE, "of leaf {number}").format(number=number)
        found = located(picture.pixels, rough, picture.mm_per_px, name)
        mm = self._onto_photo(number).inverse().apply([picture.mm(found.centre)])[0]
        place = float(mm[0]), float(mm[1])
        there = self._at(number, place)
        if entry is not None and there not in (None, entry):
            raise VeneerError(
                "mark-twice",
                "That is mark {letter} already; drag {moved} to another mark.",
                letter=there.letter, moved=entry.letter,
            )
        entry = there or entry
        if entry is None:
            entry = Entry(which, place)
            self.entries[number].append(entry)
        entry.place, entry.error = place, found.error * picture.mm_per_px
        entry.ring = 2.0 * found.radius * picture.mm_per_px
        entry.askew = None if found.up is None else _askew(found.up)
        return entry

    def _at(self, number: int, place: Place) -> Entry | None:
        near = (e for e in self.entries[number] if math.dist(e.place, place) < MARK.outer / 2)
        return next(near, None)

    # --- changes ------------------------------------------------------------------------------

    def remove(self, number: int, entry: Entry) -> None:
        self.entries[number].remove(entry)

    def reletter(self, number: int, entry: Entry, which: int) -> None:
        """Gives a mark another letter; the mark that has it takes the old one in exchange."""
        for other in self.entries[number]:
            if other.which == which:
                other.which = entry.which
        entry.which = which

    def take_over(self, old: MarkBook) -> list[int]:
        """What was changed in an older book of the bundle is changed here; the numbers there of
        the leaves that are no more, with which it goes."""
        now, changed = numbers_now(old.bundle, self.bundle), old.changed()
        for number in changed.keys() & now.keys():
            self.entries[now[number]] = old.entries[number]
        return sorted(changed.keys() - now.keys())

    def changed(self) -> dict[int, dict[int, Place]]:
        """The marks of every leaf where they have changed."""
        now = {number: self.places(number) for number in self.bundle.numbers}
        return {number: marks for number, marks in now.items() if marks != self._were[number]}

    # --- what they tell -----------------------------------------------------------------------

    def told(self, number: int) -> str:
        """A leaf's marks in a line: which, and how they lie by those of an earlier leaf."""
        if not self.entries[number]:
            return translate(HERE, "{number}: none").format(number=number)
        letters = "".join(one.letter for one in self.on(number))
        text = translate(HERE, "{number}: {letters}").format(number=number, letters=letters)
        return ", ".join([text, *self._compared(number)])

    def _compared(self, number: int) -> Iterator[str]:
        other = self.earlier(number)
        if other is None:
            return
        try:
            laid = self.laid_on(number, other)
        except VeneerError:
            yield translate(HERE, "too near each other to compare")
        else:
            yield translate(HERE, "{rms} off leaf {other}").format(
                rms=fields.length(laid.rms, 2), other=other
            )

    def earlier(self, number: int) -> int | None:
        """The first leaf that two letters of this one are on too, if it comes before."""
        for other in self.bundle.numbers:
            if other >= number:
                return None
            if len(shared(self.places(other), self.places(number))[0]) >= 2:
                return other
        return None

    def laid_on(self, number: int, other: int) -> Frame:
        """The marks of a leaf laid on those of another, with the letters that both have."""
        return frame(*shared(self.places(number), self.places(other)))

    def measured(self, number: int, point: Place | None) -> str:
        """Where a point of the bundle (mm; None: the middle of the leaf) lies on a leaf, measured
        from its marks. Raises VeneerError where there are not two."""
        leaf, marks = self.bundle.leaf(number), self.places(number)
        if point is None:
            return fields.in_words(carried_back(self.middle(number), IDENTITY, marks))
        return fields.in_words(carried_back(point, leaf.register, marks))

    def middle(self, number: int) -> Place:
        """The middle of a leaf, leaf mm."""
        width, long = self.bundle.leaf(number).size
        return width / 2, long / 2


def _askew(up: Place) -> float:
    """Degrees, counter-clockwise from the photo's top, of a direction (column, row)."""
    return math.degrees(math.atan2(-up[0], -up[1]))


def plus_minus(error: float) -> str:
    """An error, never written as none."""
    return f"\u00b1 {fields.length(max(error, 0.01), 2)}"
