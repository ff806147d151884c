# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is known of the leaves of a Bundle object, what is said of it, and what is done to them. No
widget."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cache, partial
from typing import Any

import FreeCAD

from veneerwb.gui.sequence_state import MARKS, Stack
from veneerwb.gui.sequence_window import Told
from veneerwb.gui.sequence_words import FIGURE, PHOTOGRAPHED, REGISTERED, listed, marked_as

translate = FreeCAD.Qt.translate
HERE = "VeneerSequencePanel"
FOLLOWS = {
    "figure": "figure", "log": "log", "marks": "marks", "photographs": "as photographed",
}  # fmt: skip
"""What the stack may follow, as the core names it and as the document does."""


class Work:
    """`bundle` is the core's, as it was read last; `proof`, `chain` and `followed` (the choice that
    its registers come from) are of it, or None; `marks` were picked by hand, mm on the photographs.
    """

    def __init__(self, obj: Any) -> None:
        """Raises VeneerError for a bundle that cannot be."""
        self.obj, self.name = obj, obj.Name
        self.marks: Mapping[int, Sequence[tuple[float, float]]] = {}
        self.proof = self.chain = self.followed = None
        self.said = ""  # of the leaf that was turned over last
        self.bundle, self.frames = self._read()

    def _read(self) -> tuple[Any, Callable[[], Any]]:
        """The bundle as it is now, and what finds its leaves' frames when a point is picked."""
        from veneerwb.core.sequence.frames import leaf_frames
        from veneerwb.host.values import core_bundle, plain_bundle

        # Frames from the leaves' own outlines: a common usable area lies as the figure does.
        plain = plain_bundle(self.obj)
        return core_bundle(self.obj), cache(partial(leaf_frames, plain, _stuck(self.obj.Leaves)))

    def read_again(self) -> bool:
        """Whether the leaves are not as they were; then what was known of them is forgotten."""
        bundle, frames = self._read()
        if _alike(bundle, self.bundle):
            return False
        seen = {leaf.face.image: leaf.number for leaf in self.bundle.leaves}
        was = {leaf.number: seen.get(leaf.face.image) for leaf in bundle.leaves}
        self.marks = {n: self.marks[k] for n, k in was.items() if k in self.marks}
        self.bundle, self.frames = bundle, frames
        self.proof = self.chain = self.followed = None
        return True

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
            return self.proof.text
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
        across, along = (f"{value:.0f}" for value in self.followed.cost.lost)
        cost = translate(HERE, "Registered so: costs {along} mm of length, {across} mm of width.")
        grave = [found for found in self.followed.findings if found.level != "note"]
        said = [part for found in grave for part in (found.text, found.remedy) if part]
        return " ".join([cost.format(along=along, across=across), *said])

    def _on_marks(self) -> str:
        lacking = [n for n in self.numbers if len(self.marks.get(n, ())) < MARKS]
        if lacking:
            return translate(
                HERE, "Click the same two points of the figure on every leaf. Without: {leaves}."
            ).format(leaves=listed(lacking))
        return translate(HERE, "Every leaf has its two marks; a click moves the nearer one.")

    # --- what is done -------------------------------------------------------------------------

    def prove(self, progress: Callable[[float], None]) -> None:
        """Compares all photographs. Raises VeneerError, and what `progress` raises."""
        from veneerwb.core.sequence.proof import prove_sequence

        bundle, frames = self._read()
        proof = prove_sequence(bundle, progress)
        self.bundle, self.frames, self.proof, self.chain = bundle, frames, proof, None

    def renumber(self) -> None:
        """Gives the leaves the numbers that the proof proposes."""
        from veneerwb.host.sequence import renumber

        renumber(self.obj, dict(self.proof.proposal))

    def turn_end(self, number: int) -> None:
        from veneerwb.host.sequence import turn_end

        turn_end(self._leaf(number))

    def turn_over(self, number: int) -> None:
        from veneerwb.host.sequence import turn_over

        register = None
        if self.proof is not None and self.obj.Follows == "figure":
            register = self.proof.registers.get(number)
        self.said = turn_over(
            self._leaf(number), register if register and register.mirrored else None
        )

    def _leaf(self, number: int) -> Any:
        return next(leaf for leaf in self.obj.Leaves if leaf.Number == number)

    def register(self, what: str) -> None:
        """Lays the leaves so that the stack follows `what`; the proof still holds, and so do marks.
        Raises VeneerError before anything is changed."""
        from veneerwb.core.sequence.chain import chained
        from veneerwb.core.sequence.follow import follow
        from veneerwb.host.sequence import apply_registers

        if what in ("figure", "log") and self.chain is None:
            self.chain = chained(self.bundle)
        marks = self.marks if what == "marks" else None
        log = self.log() if what == "log" else {}
        found = follow(self.bundle, what, marks=marks, chain=self.chain, **log)
        registers = {leaf.number: leaf.register for leaf in found.bundle.leaves}
        apply_registers(self.obj, registers, FOLLOWS[what])
        self.bundle, self.frames = self._read()
        self.followed = found

    def log(self) -> dict[str, Any]:
        """What is known of where the log lies on the leaves: their frames, or its figure's wander
        from leaf to leaf."""
        frames = self.frames()
        if frames is None:
            return {}
        return {"wander": frames.step} if frames.step else {"frames": frames.motions}

    def compared(self) -> Any:
        """The choices side by side; without figure, those that need none. Raises VeneerError."""
        from veneerwb.core import VeneerError
        from veneerwb.core.sequence.chain import WITHOUT_FIGURE, chained
        from veneerwb.core.sequence.follow import compared
        from veneerwb.gui.choices_window import shown_on

        try:
            self.chain = chained(self.bundle) if self.chain is None else self.chain
        except VeneerError as error:
            if error.code not in WITHOUT_FIGURE:
                raise
        marks = self.marks if len(self.marks) == len(self.numbers) else None
        ring = shown_on(self.obj, self.bundle)
        return compared(self.bundle, marks=marks, chain=self.chain, layout=ring, **self.log())


def _alike(a: Any, b: Any) -> bool:
    """Whether two readings of a bundle are of the same leaves, lying alike."""
    if a.numbers != b.numbers or a.back != b.back:
        return False
    pairs = zip(a.leaves, b.leaves)
    return all(
        one.face.image is other.face.image and one.face.view == other.face.view
        and one.register == other.register and one.usable.equals(other.usable)
        for one, other in pairs
    )


def _stuck(leaves: Any) -> dict[int, dict[str, tuple[float, float]]]:
    """The paper marks on the leaves, by leaf number and the mark's own."""
    return {
        leaf.Number: {f"{mark.z:.0f}": (mark.x, mark.y) for mark in leaf.Marks}
        for leaf in leaves if "Marks" in leaf.PropertiesList
    }
