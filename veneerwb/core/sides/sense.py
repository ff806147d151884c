# SPDX-License-Identifier: LGPL-2.1-or-later
"""The stack's sense proved by photographs of backs: which neighbour's face shows the same surface.

The back of leaf k and the face of the leaf that lay against it are the two sides of one cut, and
their pictures are as good as one. Its own face is one leaf's thickness away, as its neighbours'
faces are from its own, so that the bundle itself says how alike a step of one is; what is clearly
more alike is the same surface.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import Any

import numpy as np

from veneerwb.core.errors import sentence
from veneerwb.core.leaf import Bundle, Leaf, ranges
from veneerwb.core.listing import put_in
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import Motion
from veneerwb.core.sequence import Grid, aligned, grids
from veneerwb.core.sides.lying import laid, tie_of
from veneerwb.words import marked, word

CLEARLY = 0.25
"""The share of what a step of one leaf falls short of a likeness of 1 by which the same surface
must be more alike than that, and than anything else."""
LEAST_LIKE = 0.3
"""Correlation below which no two pictures are of one surface."""
_GLANCE = 0.25  # correlation on the coarsest grid that makes a way round worth a closer look
_ASTRAY = 0.8

WAYS = ("as read", "mirrored", "end for end", "mirrored, end for end")
"""How a back's picture may lie against the face's; only the first is as it should be."""


@dataclass(frozen=True)
class Reading:
    """What the back of one leaf says: `same` is whose face shows the same surface ("next",
    "previous", "face" for the leaf's own, None where that is not told), in which of WAYS.

    `likeness`: of the back to each of those that there are (-1 to 1); `step`: of the leaf's face to
    its likelier neighbour's, a step of one. `margin`: by how much the best beats the rest, as a
    share of what a step of one falls short of 1.
    """

    leaf: int
    same: str | None
    way: str
    likeness: Mapping[str, float]
    step: float
    margin: float


@dataclass(frozen=True)
class Note:
    """One sentence: `template` filled with `values`."""

    code: str
    template: str
    values: Mapping[str, Any] = field(default_factory=dict)

    @property
    def text(self) -> str:
        return sentence(self.template, dict(self.values))


@dataclass(frozen=True)
class Sense:
    """`back`: "next" if leaf k + 1 lay under leaf k, "previous" if over it, None where the
    photographs do not tell. `agrees`: whether the bundle says the same (None where one of them
    says nothing). `readings` back by back, `notes` in sentences."""

    back: str | None
    agrees: bool | None
    readings: tuple[Reading, ...]
    notes: tuple[Note, ...]

    @property
    def text(self) -> str:
        return " ".join(note.text for note in self.notes)


def proved_sense(
    bundle: Bundle, numbers: Sequence[int] | None = None,
    progress: Callable[[float], Any] | None = None,
) -> Sense:
    """What the photographed backs (of leaves `numbers`, or all) prove of the stack's sense.

    Backs lie on their leaves as the bundle has it (tie them first), and faces as photographed.
    `progress` is told the share done before each back.
    """
    tell = progress or (lambda share: None)
    chosen = [bundle.leaf(n) for n in (bundle.numbers if numbers is None else numbers)]
    backs = [leaf for leaf in chosen if leaf.back.source == "photo"]

    @lru_cache(maxsize=4)
    def face(number: int) -> tuple[Grid, ...]:
        return grids(bundle.leaf(number))

    readings = []
    for leaf in backs:
        tell(len(readings) / len(backs))
        readings.append(_reading(bundle, leaf, face))
    senses = {r.same for r in readings if r.same in ("next", "previous")}
    back = senses.pop() if len(senses) == 1 else None
    agrees = None if back is None or bundle.back == "own" else back == bundle.back
    return Sense(back, agrees, tuple(readings), tuple(_notes(bundle, readings, back, agrees)))


# --- one back ----------------------------------------------------------------------------------


def _reading(bundle: Bundle, leaf: Leaf, face: Any) -> Reading:
    """The first way that tells, else the likeliest.

    Only the leaf's own face is searched for; from there the steps to its neighbours lead to theirs.
    """
    beside = {"next": leaf.number + 1, "previous": leaf.number - 1}
    own = face(leaf.number)
    others = {name: face(n) for name, n in beside.items() if n in bundle.numbers}
    steps = {name: aligned(own, other) for name, other in others.items()}
    step = max((found.likeness for found in steps.values()), default=1.0)
    readings = []
    for way in WAYS:
        back = grids(_lying(leaf, way))
        start = aligned(back[:1], own[:1])
        if start.likeness < _GLANCE:  # no need of a closer look
            readings.append(_judged(leaf.number, way, {"face": start.likeness}, step))
            continue
        here = aligned(back, own, at=start.motion)
        likeness = {
            # A step that is far less alike than the other has gone astray and leads nowhere.
            name: _near(back, others[name], found.motion @ here.motion)
            if found.likeness >= _ASTRAY * step else aligned(back, others[name]).likeness
            for name, found in steps.items()
        }
        readings.append(_judged(leaf.number, way, {**likeness, "face": here.likeness}, step))
        if readings[-1].same is not None or here.likeness >= LEAST_LIKE:
            break  # no picture is alike in two ways
    return max(readings, key=lambda r: round(max(r.likeness.values()), 6))


def _near(back: Sequence[Grid], other: Sequence[Grid], at: Motion) -> float:
    # So near that the coarsest grid would only lead off.
    return aligned(back[1:], other[1:], at=at).likeness


def _judged(number: int, way: str, likeness: Mapping[str, float], step: float) -> Reading:
    best = max(likeness, key=lambda name: round(likeness[name], 6))
    rest = max([step, *(v for name, v in likeness.items() if name != best)])
    margin = (likeness[best] - rest) / max(1e-6, 1.0 - step)
    told = step < 1.0 and margin >= CLEARLY and likeness[best] >= LEAST_LIKE
    return Reading(number, best if told else None, way, likeness, step, margin)


def _lying(leaf: Leaf, way: str) -> Leaf:
    """The back laid on its leaf, its picture first flipped or turned within its frame."""
    photo, tie = leaf.back.image, tie_of(leaf)
    if way == WAYS[0]:
        return laid(photo, tie, leaf)
    width, length = photo.size
    middle = np.array(leaf.usable.centroid.coords[0])
    x, y = tie.apply(middle)
    pixels, turn = photo.pixels, tie.angle
    if "mirrored" in way:
        pixels, x, turn = pixels[:, ::-1], width - x, -turn
    if "end" in way:
        pixels, x, y = pixels[::-1, ::-1], width - x, length - y
    at = Motion(turn)
    dx, dy = np.array((x, y)) - at.apply(middle)
    flipped = Photo.of(np.ascontiguousarray(pixels), photo.mm_per_px, photo.name)
    return laid(flipped, replace(at, dx=float(dx), dy=float(dy)), leaf)


# --- what is said ------------------------------------------------------------------------------


def _notes(
    bundle: Bundle, readings: Sequence[Reading], back: str | None, agrees: bool | None
) -> Iterator[Note]:
    if not readings:
        yield Note(
            "no-backs",
            marked(
                "No back was photographed, so that the stack's sense is as it was said, not "
                "proved; photograph the back of one leaf to prove it."
            ),
        )
        return
    for reading in readings:
        yield _said(reading)
        if reading.same is not None and reading.way != WAYS[0]:
            yield _wrong_way(reading)
    if back is not None:
        yield _verdict(bundle.back, back, agrees, [r.leaf for r in readings if r.same == back])
    elif {r.same for r in readings} >= {"next", "previous"}:
        yield Note(
            "sense-contradicted",
            marked(
                "The backs contradict each other: part of the bundle is numbered the other way, or "
                "leaves are out of place."
            ),
        )
    else:
        yield Note("sense-untold", marked("The stack's sense is not proved."))


def _said(reading: Reading) -> Note:
    values = {
        "leaf": reading.leaf, "step": round(reading.step, 2),
        "likeness": round(max(reading.likeness.values()), 2),
    }
    if reading.same is None:
        return Note(
            "back-untold",
            marked(
                "The back of leaf {leaf} is not clearly one surface with any face (at best "
                "{likeness} alike, and a step of one leaf is {step})."
            ),
            values,
        )
    if reading.same == "face":
        return Note(
            "face-again",
            marked(
                "The photograph of the back of leaf {leaf} shows its face again ({likeness} alike, "
                "and a step of one leaf is {step}); photograph the other side."
            ),
            values,
        )
    values["other"] = reading.leaf + (1 if reading.same == "next" else -1)
    return Note(
        "back-told",
        marked(
            "The back of leaf {leaf} and the face of leaf {other} are one surface ({likeness} "
            "alike, and a step of one leaf is {step})."
        ),
        values,
    )


def _wrong_way(reading: Reading) -> Note:
    values = {"leaf": reading.leaf, "way": reading.way}
    if "mirrored" in reading.way and reading.same == "face":
        # A face that was photographed again and then mirrored on reading as a back is.
        said = marked("Its picture is mirrored, as a back's is on reading.")
        return Note("mirrored-face", said, values)
    if "mirrored" in reading.way:
        return Note(
            "mirrored-already",
            marked(
                "Its picture is left-right reversed: the photograph was mirrored already before it "
                "was read; bring in the original."
            ),
            values,
        )
    return Note(
        "end-for-end",
        marked("Its picture lies end for end to the face's; tie the back to the face first."),
        values,
    )


def _verdict(said: str, back: str, agrees: bool | None, by: Sequence[int]) -> Note:
    values = {"back": back, "said": said, "leaves": ranges(by)}
    leaves = word("the back of leaf {leaves}") if len(by) == 1 else word(
        "the backs of leaves {leaves}"
    )
    told = word(_PROVED[back == "next", agrees])
    return Note(
        "sense-wrong" if agrees is False else "sense-proved", put_in(told, by=leaves), values
    )


_PROVED = {
    (True, None): marked(
        "Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}; the "
        "bundle does not say so yet."
    ),
    (True, True): marked(
        "Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, as "
        "the bundle says."
    ),
    (True, False): marked(
        "Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, and "
        "the bundle says the opposite: change it."
    ),
    (False, None): marked(
        "Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}; the "
        "bundle does not say so yet."
    ),
    (False, True): marked(
        "Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, as "
        "the bundle says."
    ),
    (False, False): marked(
        "Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, and "
        "the bundle says the opposite: change it."
    ),
}
"""Whether the next leaf lay under, and whether the bundle says so: what is said."""
