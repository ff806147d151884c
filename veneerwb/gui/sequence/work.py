# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is known of the leaves of a Bundle object, what is said of it, and what is done to them. No
widget."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cache, partial
from typing import Any, NamedTuple

import FreeCAD

from veneerwb.gui.panels import fields
from veneerwb.gui.sequence.state import MARKS, Stack
from veneerwb.gui.sequence.window import Told
from veneerwb.gui.sequence.words import FIGURE, PHOTOGRAPHED, REGISTERED, doubt, listed, marked_as
from veneerwb.host.areas import picked, set_picked
from veneerwb.host.objects.base import Refused, kind_of

translate = FreeCAD.Qt.translate
HERE = "VeneerSequencePanel"
FOLLOWS = {
    "figure": "figure", "log": "log", "marks": "marks", "photographs": "as photographed",
}  # fmt: skip
"""What the stack may follow, as the core names it and as the document does."""
FEWEST, USUAL = 4, 12
"""Ways of the ring that is laid where the document has no match of the bundle."""
SHARE = 0.8
"""Of the leaves' shorter side, the diameter of that ring."""


Progress = Callable[[float], None]
"""Told the share done; raises to end it."""


class Reading(NamedTuple):
    """What a document says of the leaves: the core's `bundle`, the same leaves `apart`, each with
    its own usable area, and the paper marks `stuck` on them, mm on the photographs."""

    bundle: Any
    apart: Any
    stuck: Mapping[int, Mapping[str, tuple[float, float]]]

    @classmethod
    def of(cls, obj: Any) -> Reading:
        """Raises VeneerError for a bundle that cannot be."""
        from veneerwb.host.values import core_bundle, plain_bundle

        apart = plain_bundle(obj)
        return cls(core_bundle(obj), apart, _stuck(apart, obj.Leaves))

    def same_faces(self, other: Reading) -> bool:
        """Whether both are of the same faces, lying alike: all that is compared."""
        ours, theirs = self.bundle.leaves, other.bundle.leaves
        return list(map(_face, ours)) == list(map(_face, theirs))

    def same(self, other: Reading) -> bool:
        """Whether nothing is otherwise by which a point, or the log, is followed."""
        return (
            self.same_faces(other) and self.apart == other.apart and self.stuck == other.stuck
        )


class Work:
    """`seen` is the document as it was read last; `proof`, `chain` (by the `region`) and `followed`
    (the choice that its registers come from) are of it, or None; `marks` were picked by hand, mm on
    the photographs.
    """

    def __init__(self, obj: Any) -> None:
        """Raises VeneerError for a bundle that cannot be."""
        self.obj, self.name = obj, obj.Name
        self.marks: Mapping[int, Sequence[tuple[float, float]]] = picked(obj)
        self._kept = self.marks
        self.proof = self.chain = self.region = self.followed = None
        self.said = self._doubt = ""  # of the leaf that was turned over last
        self._stand_on(Reading.of(obj))

    def _stand_on(self, seen: Reading) -> None:
        from veneerwb.core.sequence.frames import leaf_frames

        self.seen = seen
        # From the leaves' own outlines: a common usable area lies as the figure does. Found when a
        # point is picked.
        self.frames = cache(partial(leaf_frames, seen.apart, seen.stuck))

    @property
    def bundle(self) -> Any:
        return self.seen.bundle

    def read_again(self) -> bool:
        """Whether the leaves are not as they were; then what was known of them is forgotten."""
        from veneerwb.core.renumbering import numbers_now

        was, seen = self.seen, Reading.of(self.obj)
        if seen.same(was):
            return False
        self._stand_on(seen)
        self.followed = None
        if not seen.same_faces(was):
            self.proof = self.chain = self.region = None
            now = numbers_now(was.bundle, seen.bundle)
            if self.marks_differ:
                self.marks = {now[n]: pair for n, pair in self.marks.items() if n in now}
                self._kept = picked(self.obj)
            else:
                self.marks = self._kept = picked(self.obj)
        return True

    def _compared(self, compare: Callable[[Reading], Any]) -> Any:
        """What a comparison of the photographs, which takes its time, gives of the leaves as they
        are; what they have become meanwhile it cannot speak of. Raises what `compare` does."""
        self.read_again()
        seen = self.seen
        found = compare(seen)
        if not Reading.of(self.obj).same_faces(seen):
            raise Refused(translate(
                HERE, "The leaves were changed while they were compared, so the result is of no "
                "use; compare them again."
            ))
        self.read_again()
        return found

    @property
    def numbers(self) -> tuple[int, ...]:
        return self.bundle.numbers

    # --- what is shown ------------------------------------------------------------------------

    def stack(self) -> Stack:
        """What the window lays: as registered, on the figure where that is known (the chain knows
        it more exactly than the proof), as photographed."""
        from veneerwb.core.sequence.point import views

        layings = {REGISTERED: views(self.bundle)}
        if self.chain is not None:
            layings[FIGURE] = {n: self.chain.registers[n] for n in self.numbers}
        elif self.proof is not None and self.proof.rough:  # a foreign leaf has none
            layings[FIGURE] = {**layings[REGISTERED], **self.proof.rough}
        layings[PHOTOGRAPHED] = Stack.photographed(self.bundle)
        if FIGURE in layings:
            figure, follows = FIGURE, "figure"
        else:
            figure, follows = REGISTERED, {"log": "log", "marks": "marks"}.get(
                self.obj.Follows, "figure"
            )
        return Stack(self.bundle, self._order(), layings, figure, follows, self.frames)

    def _order(self) -> tuple[int, ...]:
        """The order of paging: as proved, with what the proof leaves out behind."""
        from veneerwb.paint.strip import proven

        if self.proof is None or not self.proof.order:
            return self.numbers
        return proven(tuple(self.proof.order), self.numbers)

    def told(self) -> Told:
        """What the proof says, as the window shows it."""
        if self.proof is None:
            return Told()
        marks: dict[int, str] = {}
        gaps: dict[int, str] = {}
        for suspect in self.proof.suspects:
            text, gap = marked_as(suspect.kind)
            there = gaps if gap else marks
            before = there.get(suspect.leaf)
            there[suspect.leaf] = text if before is None else f"{before}, {text}"
        return Told(self.proof.likeness, marks, gaps)

    # --- what is said -------------------------------------------------------------------------

    def summary(self) -> str:
        if self.proof is not None:
            return fields.in_words(self.proof)
        return translate(HERE, "{count} leaves, {numbers}. Their order is not proved yet.").format(
            count=len(self.numbers), numbers=listed(self.numbers)
        )

    def on_following(self, what: str) -> str:
        """What is to be said of a choice of what the stack follows."""
        if what == "marks":
            return self._on_marks()
        if self.followed is not None and self.followed.what == what:
            return self._on_followed()
        return {
            "figure": translate(HERE, "Crowns meet all round; costs length if figure wanders."),
            "log": translate(HERE, "Knots and edges stay put; the figure marches round."),
            "photographs": translate(HERE, "Simply laid on each other; nothing is compared."),
        }[what]

    def _on_followed(self) -> str:
        """What the registers cost, and what is in doubt; all of it is in the window of choices."""
        across, along = (fields.length(round(mm), 0) for mm in self.followed.cost.lost)
        cost = translate(HERE, "Registered so: costs {along} of length, {across} of width.")
        found = map(fields.in_units, self.followed.findings)
        grave = [one for one in found if one.level != "note"]
        said = [part for one in grave for part in (one.text, one.remedy) if part]
        return " ".join([cost.format(along=along, across=across), *said])

    def _on_marks(self) -> str:
        lacking = [n for n in self.numbers if len(self.marks.get(n, ())) < MARKS]
        if lacking:
            return translate(
                HERE, "Click the same two points of the figure on every leaf. Without: {leaves}."
            ).format(leaves=listed(lacking))
        return translate(HERE, "Every leaf has its two marks; a click moves the nearer one.")

    # --- what is done -------------------------------------------------------------------------

    def prove(self, progress: Progress) -> None:
        """Compares all photographs. Raises VeneerError, and what `progress` raises."""
        from veneerwb.core.sequence.proof import prove_sequence

        self.proof = self._compared(lambda seen: prove_sequence(seen.bundle, progress))

    def renumber(self) -> None:
        """Gives the leaves the numbers that the proof proposes; refuses where they are no longer
        what was proved."""
        from veneerwb.host.sequence import renumber

        self.read_again()
        if self.proof is None:
            raise Refused(translate(
                HERE, "The leaves were changed since the proof; prove the sequence again."
            ))
        renumber(self.obj, dict(self.proof.proposal))

    def turn_end(self, number: int) -> None:
        from veneerwb.host.sequence import turn_end

        turn_end(self._leaf(number))

    def register_behind(self, number: int, progress: Progress) -> Any:
        """The register of a leaf that the proof found turned over, made exact, if the others lie by
        their figure; else None. Raises VeneerError, and what `progress` raises."""
        from veneerwb.core.sequence.exact import exact

        self.read_again()
        proof, self._doubt = self.proof, ""
        rough = {} if proof is None else proof.rough
        if self.obj.Follows != "figure" or number not in rough or not rough[number].mirrored:
            return None
        found = self._compared(
            lambda seen: exact(seen.bundle, proof.order, rough, proof.ways, progress)
        )
        self._doubt = doubt(found)
        return found[number]

    def turn_over(self, number: int, register: Any = None) -> None:
        from veneerwb.host.sequence import turn_over

        self.said = " ".join([turn_over(self._leaf(number), register), self._doubt]).strip()

    def _leaf(self, number: int) -> Any:
        return next(leaf for leaf in self.obj.Leaves if leaf.Number == number)

    def found(self, what: str, progress: Progress, match: Any = None) -> Any:
        """How the stack follows `what`; the figure weighted to the pieces of a match, if there is
        one. Nothing is changed. Raises VeneerError, and what `progress` raises."""
        from veneerwb.core.sequence.follow import follow

        marks = self.marks if what == "marks" else None
        chain = self._chained(progress, match) if what in ("figure", "log") else None
        log = self.log() if what == "log" else {}
        return follow(self.bundle, what, marks=marks, chain=chain, **log)

    def _chained(self, progress: Progress, match: Any = None) -> Any:
        from veneerwb.core.sequence.chain import chained

        region = None if match is None else region_of(match)
        if self.chain is None or not _same_area(region, self.region):
            chain = self._compared(lambda seen: chained(seen.bundle, region, progress))
            self.chain, self.region = chain, region
        return self.chain

    def register(self, found: Any) -> None:
        """Lays the leaves as was found; the proof still holds, and so do marks. Raises VeneerError
        before anything is changed."""
        from veneerwb.host.sequence import apply_registers

        registers = {leaf.number: leaf.register for leaf in found.bundle.leaves}
        apply_registers(self.obj, registers, FOLLOWS[found.what])
        if found.what == "marks":
            self.keep_marks()
        self._stand_on(Reading.of(self.obj))
        self.followed = found

    @property
    def marks_differ(self) -> bool:
        """Whether other marks are picked than are kept on the leaves."""
        return dict(self.marks) != self._kept

    def keep_marks(self) -> None:
        """Keeps the marks on the leaves."""
        set_picked(self.obj, self.marks)
        self._kept = dict(self.marks)

    def unregister(self) -> None:
        """Lays the leaves as they were photographed; the proof and marks hold on."""
        from veneerwb.host.sequence import unregister

        unregister(self.obj)
        self._stand_on(Reading.of(self.obj))
        self.followed = None

    @property
    def registered(self) -> bool:
        from veneerwb.core.checks.faces import unregistered

        return self.obj.Follows != FOLLOWS["photographs"] or unregistered(self.bundle) is None

    def log(self) -> dict[str, Any]:
        """What is known of where the log lies on the leaves: their frames, or its figure's wander
        from leaf to leaf."""
        frames = self.frames()
        if frames is None:
            return {}
        return {"wander": frames.step} if frames.step else {"frames": frames.motions}

    def compared(self, progress: Progress, match: Any = None) -> Any:
        """The choices side by side; without figure, those that need none. Raises VeneerError, and
        what `progress` raises."""
        from veneerwb.core import VeneerError
        from veneerwb.core.sequence.chain import WITHOUT_FIGURE
        from veneerwb.core.sequence.follow import compared

        try:
            chain = self._chained(progress, match)
        except VeneerError as error:
            if error.code not in WITHOUT_FIGURE:
                raise
            chain = None
        marks = self.marks if len(self.marks) == len(self.numbers) else None
        laid, _ = self.top(match)
        return compared(self.bundle, marks=marks, chain=chain, layout=laid(), **self.log())

    # --- the top that it is for ---------------------------------------------------------------

    def matches(self) -> list[Any]:
        """The matches of the document that are laid from these leaves."""
        objects = self.obj.Document.Objects
        return [one for one in objects if kind_of(one) == "Match" and one.Bundle == self.obj]

    def top(self, match: Any = None) -> tuple[Callable[[], Any], str]:
        """What lays a match, or the first that can be laid, else a usual ring, and its name. It
        gives None where there are too few leaves for a ring, and raises VeneerError for a match
        that cannot be laid."""
        from veneerwb.host.objects import layout

        sound = [one for one in self.matches() if not one.Message]
        match = match or next(iter(sound), None)
        if match is not None:
            return partial(layout, match), match.Label
        return lambda: ring_of(self.bundle), translate(HERE, "A usual ring")


def ring_of(bundle: Any) -> Any:
    """The layout of a usual ring; None for a bundle that is too small for any."""
    from veneerwb.core import Top, VeneerError, radial

    ways = min(USUAL, len(bundle.numbers) // 2 * 2)
    if ways < FEWEST:
        return None
    width, length = bundle.size
    try:
        return radial(bundle, Top.round(SHARE * min(width, length)), ways, first=bundle.numbers[0])
    except VeneerError:
        return None


def _same_area(a: Any, b: Any) -> bool:
    return a is b or (a is not None and b is not None and a.equals(b))


def region_of(match: Any) -> Any:
    """The area of the bundle that the pieces of a match are cut from. Raises VeneerError for one
    that cannot be laid."""
    from shapely.ops import unary_union

    from veneerwb.host.objects import layout

    return unary_union([cut.outline for cut in layout(match).cuts])


def _face(leaf: Any) -> tuple[Any, ...]:
    """All of a leaf that is compared; photographs are the same if they are one object."""
    return leaf.number, leaf.face, leaf.usable, leaf.faults


def _stuck(bundle: Any, leaves: Any) -> dict[int, dict[str, tuple[float, float]]]:
    """The paper marks on the leaves, by leaf number and the mark's own, mm on the photographs."""
    found = {}
    for obj in leaves:
        face = bundle.leaf(obj.Number).face
        onto_photo = face.view @ face.register.inverse()
        places = {f"{m.z:.0f}": onto_photo.apply((m.x, m.y)) for m in obj.Marks}
        found[obj.Number] = {name: (float(x), float(y)) for name, (x, y) in places.items()}
    return found
