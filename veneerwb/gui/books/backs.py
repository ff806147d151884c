# SPDX-License-Identifier: LGPL-2.1-or-later
"""The backs of a bundle's leaves while they are added, tied and asked what they tell.

Nothing here writes to the document but `write`.
"""

from __future__ import annotations

import math
import tempfile
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any

import FreeCAD
import numpy as np
from PIL import Image

from veneerwb.core import VeneerError
from veneerwb.core.files import scratch
from veneerwb.core.leaf import Leaf
from veneerwb.core.renumbering import numbers_now
from veneerwb.core.sides import (
    Sense,
    Tie,
    Wander,
    measured_wander,
    proved_sense,
    tied,
    with_tie,
)
from veneerwb.core.sides.lying import laid, tie_of
from veneerwb.core.targets import located, shared
from veneerwb.core.targets.mark import LETTERS
from veneerwb.gui.books.back_words import kept_told, left_told
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.items import Item, mark
from veneerwb.host import areas, backs, values
from veneerwb.host.light import even_backs
from veneerwb.host.sequence import apply_ties, leaf_objects

translate = FreeCAD.Qt.translate
HERE = "VeneerBacksPanel"
FACE, BACK, BOTH = SIDES = ("face", "back", "both")
BANDS = 9
"""Strips in which face and back are seen in turn where they are laid on each other."""
SAME = 5.0
"""mm: a click so near a mark that is there already means that one."""


@dataclass(eq=False)
class Point:
    """A mark or point of the figure: its number (0 for A), where it is (mm on its photograph), and
    whether it is a paper mark that was centred; `held`: it is the leaf's own and stays."""

    which: int
    place: Place
    centred: bool = False
    held: bool = False

    @property
    def letter(self) -> str:
        return LETTERS[self.which]


class BackBook:
    """`bundle` is a Bundle object's with what was done in the panel; `ties` are by leaf number, a
    core Tie for one that is new; `taken` are the leaves whose doubtful tie the maker takes.
    `sense` and `wander` are what was asked last, `kept` the wander that the document has
    (across, along, left) and `pin` how turned leaves are pinned by it."""

    def __init__(self, obj: Any) -> None:
        self.obj = obj
        self.bundle = self._was = values.plain_bundle(obj)
        self.follows = obj.Follows
        self._kept_ties = backs.kept_ties(obj)
        self.ties: dict[int, Any] = dict(self._kept_ties)
        self.taken: set[int] = set()
        self.kept = tuple(obj.Wander)
        self.pin = self._pin = obj.PinBacks
        self.sense: Sense | None = None
        self.wander: Wander | None = None
        self._ready: dict[int, Any] = {}
        self._folder = scratch("backs")
        self.points: dict[tuple[int, str], list[Point]] = {}
        for number, leaf in leaf_objects(obj).items():
            self.points[number, FACE] = [
                Point(which, place, centred=True, held=True)
                for which, place in sorted(areas.marks_of(leaf).items())
            ]
            self.points[number, BACK] = []

    def discard(self) -> None:
        """Removes the photographs that were made ready."""
        self._folder.cleanup()

    @property
    def numbers(self) -> list[int]:
        """The leaves whose backs are photographed."""
        return [leaf.number for leaf in self.bundle.leaves if leaf.back.source == "photo"]

    def add(
        self, paths: Mapping[int, Any], mm_per_px: float | None, progress: Callable[..., Any]
    ) -> None:
        """Photographs of backs by leaf number. Raises VeneerError, and nothing is added then."""
        # A folder for each time: a photograph that is shown is not written over.
        folder = tempfile.mkdtemp(dir=self._folder.name)
        made = backs.made_ready(self.obj, paths, folder, mm_per_px, progress)
        self._replace({
            number: backs.with_backs(self.bundle.leaf(number), one) for number, one in made.items()
        })
        self._ready |= made
        for number in made:
            self.ties.pop(number, None)
            self.taken.discard(number)
            self.points[number, BACK] = []

    def take_out(self, number: int) -> None:
        """Takes a photograph that was added here away again; what the document has stands then.
        Raises VeneerError for one that is in the document."""
        if number not in self._ready:
            raise VeneerError(
                "back-in-document",
                "The back of leaf {leaf} is in the document already; add another photograph of it, "
                "which takes its place, or undo the step that added it.",
                leaf=number,
            )
        del self._ready[number]
        self._replace({number: self._was.leaf(number)})
        self.ties.pop(number, None)
        if number in self._kept_ties:
            self.ties[number] = self._kept_ties[number]
        self.taken.discard(number)
        self.points[number, BACK] = []

    def _replace(self, leaves: Mapping[int, Leaf]) -> None:
        """Other leaves: what was asked of the old ones is forgotten."""
        self.sense, self.wander, self.kept = None, None, tuple(self.obj.Wander)
        self.bundle = replace(
            self.bundle, leaves=tuple(leaves.get(one.number, one) for one in self.bundle.leaves)
        )

    # --- ties ---------------------------------------------------------------------------------

    def tie_all(self, by: str, told: Callable[[float], Any] = lambda share: None) -> list[str]:
        """Ties every back by its outline, but for those that the maker tied by marks or by hand;
        or by the marks that it shares with its face. What is to be said of those left out. `told`
        hears the share that is done; what it raises leaves all as it was."""
        marks, wrong, made = by == "marks", [], []
        pairs = {number: self.pair(number) if marks else "outline" for number in self.numbers}
        left = [] if marks else [number for number in pairs if self._by_hand(number)]
        todo = [n for n, pair in pairs.items() if n not in left and (not marks or len(pair[0]) > 1)]
        if marks and not todo:
            raise VeneerError(
                "no-marks-on-backs",
                "No back shares two marks with its face; click the same marks or points on both.",
            )
        for k, number in enumerate(todo):
            told(k / len(todo))
            try:
                made.append(tied(self.bundle.leaf(number), pairs[number]))
            except VeneerError as error:
                wrong.append(fields.in_words(error))
        for tie in made:
            self._tie(tie)
        return [*wrong, left_told(left)] if left else wrong

    def _by_hand(self, number: int) -> bool:
        """Whether the maker tied a back, or took its tie: its outline says no more."""
        tie = self.ties.get(number)
        return number in self.taken or getattr(tie, "by", "") == "marks"

    def turn(self, number: int) -> None:
        """Ties a back by its outline the other end up. Raises VeneerError."""
        leaf = self.bundle.leaf(number)
        self._tie(tied(leaf, turn=tie_of(leaf).angle + 180.0))

    def _tie(self, tie: Tie) -> None:
        number = tie.leaf
        self._replace({number: with_tie(self.bundle.leaf(number), tie)})
        self.ties[number] = tie
        self.taken.discard(number)

    def pair(self, number: int) -> tuple[np.ndarray, np.ndarray]:
        """The marks that face and back share, mm on each photograph."""
        face, back = (
            {one.which: one.place for one in self.points[number, side]} for side in (FACE, BACK)
        )
        return shared(face, back)

    def doubted(self, number: int) -> bool:
        """Whether something speaks against a tie that the maker has not taken."""
        tie = self.ties.get(number)
        return isinstance(tie, Tie) and not tie.sure and number not in self.taken

    def tied_numbers(self) -> list[int]:
        return [n for n in self.numbers if n in self.ties and not self.doubted(n)]

    # --- what they tell -----------------------------------------------------------------------

    def prove(self, told: Callable[[float], Any] = lambda share: None) -> None:
        """Asks the backs how the leaves lay. `told` hears the share that is done."""
        self.sense = proved_sense(self.bundle, progress=told)

    def say_so(self, told: Callable[[float], Any] = lambda share: None) -> None:
        """Takes the sense that was proved for the bundle's. `told` as for `prove`."""
        said = replace(self.bundle, back=self.sense.back)
        self.sense, self.bundle = proved_sense(said, progress=told), said

    def measure(self, told: Callable[[float], Any] = lambda share: None) -> None:
        """Measures the wander on the tied backs; it is kept where it is known. Raises VeneerError
        where none is tied. `told` hears the share that is done."""
        numbers = self.tied_numbers()
        if self.numbers and not numbers:
            raise VeneerError(
                "backs-not-tied",
                "Tie the backs to their faces first: until then the shift of the photographs "
                "would pass for wander.",
            )
        self.wander = measured_wander(self.bundle, self.ties, numbers, told)
        if self.wander.known:
            self.kept = (self.wander.across, self.wander.along, self.wander.left)

    # --- in words -----------------------------------------------------------------------------

    def listed(self, number: int) -> str:
        """A back in a line: tied or not, and how well."""
        tie = self.ties.get(number)
        if tie is None:
            text = translate(HERE, "{leaf}: not tied")
        elif tie.by == "placed":
            text = translate(HERE, "{leaf}: laid by a script")
        elif self.doubted(number):
            text = translate(HERE, "{leaf}: in doubt, {off}")
        else:
            text = translate(HERE, "{leaf}: by {by}, {off}")
        by = {"outline": translate(HERE, "outline"), "marks": translate(HERE, "marks")}
        return text.format(
            leaf=number, off="" if tie is None else fields.length(tie.rms, 2),
            by=by.get(getattr(tie, "by", ""), ""),
        )

    def told(self, number: int) -> str:
        """What is to be said of the back of a leaf."""
        tie = self.ties.get(number)
        if number not in self.numbers:
            return translate(HERE, "The back of leaf {leaf} is not photographed.").format(
                leaf=number
            )
        if tie is None:
            return translate(
                HERE, "Where the back of leaf {leaf} lies on its face is not known yet: tie it."
            ).format(leaf=number)
        if not isinstance(tie, Tie):
            return kept_told(number, tie)
        text = fields.in_words(tie)
        if self.doubted(number):
            text += " " + translate(HERE, "OK does not keep it, unless you take it.")
        return text

    # --- on the photographs -------------------------------------------------------------------

    def picture(self, number: int, side: str) -> Picture:
        """A side of a leaf, or both on each other in strips. Raises VeneerError where there is no
        back."""
        leaf = self.bundle.leaf(number)
        if side == FACE or number not in self.numbers:
            return Picture(leaf.face.photo, leaf.face.mm_per_px)
        if side == BACK:
            return Picture(leaf.back.photo, leaf.back.mm_per_px)
        behind = laid(leaf.back.image, tie_of(leaf), leaf).face.image
        rows, columns = behind.shape[:2]
        pixels = np.array(
            Image.fromarray(leaf.face.photo).resize((columns, rows), Image.Resampling.BOX)
        )
        strips = ((np.arange(rows) * BANDS // rows) % 2 == 1)[:, None]
        back = strips & behind.pixels.any(axis=2)  # black is what no photograph shows
        pixels[back] = behind.pixels[back]
        return Picture(pixels, behind.mm_per_px)

    def items(self, number: int, side: str, picture: Picture) -> list[Item]:
        """The marks to be seen on a side of a leaf."""
        return [
            mark(picture.place(one.place), one.letter, meant=one, held=one.held)
            for one in self.points.get((number, side), ())
        ]

    def free(self, number: int, side: str) -> str:
        """The letters that no mark of a side has, those of the other side first."""
        taken = {one.which for one in self.points.get((number, side), ())}
        other = {one.which for one in self.points.get((number, FACE if side == BACK else BACK), ())}
        order = sorted(range(len(LETTERS)), key=lambda which: (which not in other, which))
        return "".join(LETTERS[which] for which in order if which not in taken)

    def point(
        self, number: int, side: str, picture: Picture, rough: Place, which: int,
        moved: Point | None = None,
    ) -> Point:
        """A point clicked on a side of a leaf, or one that was moved: a paper mark is centred, of
        anything else the click itself counts."""
        place, centred = rough, False
        try:
            found = located(picture.pixels, rough, picture.mm_per_px)
            if math.dist(found.centre, rough) <= 2.0 * found.radius:
                place, centred = found.centre, True
        except VeneerError:
            pass  # no paper mark
        at = picture.mm(place)
        points = self.points[number, side]
        near = (one for one in points if one is not moved and math.dist(one.place, at) < SAME)
        there = next(near, None)
        if there is not None:
            raise VeneerError(
                "mark-twice", "That is {letter} already; click another place.", letter=there.letter
            )
        if moved is None:
            moved = Point(which, at)
            points.append(moved)
        moved.place, moved.centred = at, centred
        return moved

    def remove(self, number: int, side: str, point: Point) -> None:
        if not point.held:
            self.points[number, side].remove(point)

    # --- the document -------------------------------------------------------------------------

    def _new_ties(self) -> dict[int, Tie]:
        return {n: self.ties[n] for n in self.tied_numbers() if isinstance(self.ties[n], Tie)}

    def _measured(self) -> bool:
        return self.wander is not None and self.wander.known

    def changed(self) -> bool:
        """Whether there is something to write."""
        return bool(
            self._ready or self._new_ties() or self.bundle.back != self._was.back
            or self._measured() or self.pin != self._pin
        )

    def write(self) -> None:
        """Puts all of it into the document."""
        if self._ready:
            backs.add_backs(self.obj, self._ready)
        ties = self._new_ties()
        if ties:
            apply_ties(self.obj, ties)
        if self._ready:
            even_backs(self.obj, self._ready)  # once tied: what lies round the leaf is known then
        if self.bundle.back != self._was.back:
            backs.set_sense(self.obj, self.bundle.back)
        if self._measured():
            backs.keep_wander(self.obj, self.wander, self.pin)
        elif self.pin != self._pin or (ties and self.kept):
            backs.set_pin(self.obj, self.pin)

    # --- read again ---------------------------------------------------------------------------

    def take_over(self, old: BackBook) -> list[int]:
        """What was done in an older book of the bundle is done here; the numbers there of the
        leaves that are no more, with which it goes. Of the older one, which is of no use then, the
        photographs are kept."""
        now = numbers_now(old.bundle, self.bundle)
        self._folder, old._folder = old._folder, self._folder
        old.discard()
        self._ready = {now[n]: one for n, one in old._ready.items() if n in now}
        self._replace({
            n: backs.with_backs(self.bundle.leaf(n), one) for n, one in self._ready.items()
        })
        self.ties = {n: tie for n, tie in self.ties.items() if n not in self._ready}
        for was, number in now.items():
            self._take_leaf(number, old, was)
        if old.bundle.back != old._was.back:
            self.bundle = replace(self.bundle, back=old.bundle.back)
        self.pin = self.pin if old.pin == old._pin else old.pin
        if self.bundle == old.bundle:  # else it is to be asked again
            self.sense, self.wander = old.sense, old.wander
            if old._measured():
                self.kept = old.kept
        return sorted({*old._ready, *old._new_ties(), *old.pointed()} - now.keys())

    def pointed(self) -> set[int]:
        """The leaves on which points were clicked."""
        return {n for (n, _), there in self.points.items() if not all(one.held for one in there)}

    def _take_leaf(self, number: int, old: BackBook, was: int) -> None:
        """Points and ties count for no other photographs than they were found on."""
        ours, theirs = self.bundle.leaf(number), old.bundle.leaf(was)
        here = self.points[number, FACE]
        own = {one.which for one in here}
        here += [one for one in old.points[was, FACE] if not one.held and one.which not in own]
        if ours.back.image is not theirs.back.image:
            return
        self.points[number, BACK] = old.points[was, BACK]
        tie = old.ties.get(was)
        if isinstance(tie, Tie):
            self._tie(replace(tie, leaf=number, values={**tie.values, "leaf": number}))
            self.taken |= {number} if was in old.taken else set()
