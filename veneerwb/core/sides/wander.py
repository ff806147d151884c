# SPDX-License-Identifier: LGPL-2.1-or-later
"""How far the figure wanders from one surface of a leaf to the other, measured on leaves whose two
sides were photographed.

The leaf itself ties its two photographs, so that the motion of the figure from face to back is the
wander alone, free of the shift of either photograph. Ring planes at the angle a to the leaf move
along it by t / tan a through a leaf of thickness t (plane geometry).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, ClassVar

import numpy as np

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.leaf import ASSUMED_SLOPE, Bundle, Leaf, Side
from veneerwb.core.listing import put_in
from veneerwb.core.plane import Motion, choice
from veneerwb.core.sequence import aligned, grids
from veneerwb.core.sides.lying import laid, tie_of
from veneerwb.core.sides.tie import Tie
from veneerwb.words import marked, word

LEAST_LIKE = 0.2
"""Correlation below which face and back are not known to show the same figure."""
WORST_ERROR = 1.0
"""mm: a back whose wander may be further off (standard error) does not count."""
ALIKE = 0.5
"""mm, or that share of a quarter of the wander if more: backs that scatter less agree."""
STEADY = 0.3
"""mm: less than this is no wander, and no slope is told from it."""


@dataclass(frozen=True)
class Passage:
    """The figure's way through one leaf, from its face to its back: mm `across` (x) and `along` (y)
    in the bundle's frame at the leaf's middle, `turn` in degrees, `likeness` of the two sides, and
    `error_mm`, the standard error of the place by the residuals of figure and tie.

    `motion`, leaf mm to leaf mm, is all of it.
    """

    leaf: int
    across: float
    along: float
    turn: float
    likeness: float
    error_mm: float
    motion: Motion

    @property
    def sure(self) -> bool:
        return self.likeness >= LEAST_LIKE and self.error_mm <= WORST_ERROR


@dataclass(frozen=True)
class Wander:
    """The wander from face to back, in the bundle's frame: the median of the `passages` that are
    sure, mm `across` and `along`, and `spread`, by how much they scatter (mm, a deviation of one
    back; 0 with one).

    `known`: whether any is sure. `agree`: whether they scatter little. `slope`: degrees between
    leaf and ring planes that would wander as far, None where the figure hardly wanders along the
    grain. (Of a sloping stem the rings wander, while eyes, streaks and bars may stay: what is
    measured is the figure as a whole.)
    `miss`: mm by which book seams may miss where backs are pinned as their faces are: the wander;
    unknown, what the bundle's slope gives, or ASSUMED_SLOPE. `left`: mm by which they may where
    backs are pinned by the wander: the spread (with one back what ALIKE allows), or the standard
    error where that is more.
    """

    passages: tuple[Passage, ...]
    across: float
    along: float
    spread: float
    known: bool
    agree: bool
    slope: float | None
    miss: float
    left: float
    template: str = field(repr=False)
    values: Mapping[str, Any] = field(repr=False)

    @property
    def length(self) -> float:
        return math.hypot(self.across, self.along)

    @property
    def text(self) -> str:
        return sentence(self.template, dict(self.values))


def measured_wander(
    bundle: Bundle, ties: Mapping[int, Tie] | None = None, numbers: Collection[int] | None = None,
    progress: Callable[[float], Any] | None = None,
) -> Wander:
    """The wander that the photographed backs (of leaves `numbers`, or all) show, each where its
    sides' registers and views tie it to its leaf; `ties` (by leaf number) adds how far those may be
    off. `progress` is told the share done before each back."""
    tell = progress or (lambda share: None)
    backs = [
        leaf for leaf in bundle.leaves
        if (numbers is None or leaf.number in numbers)
        and leaf.back.source == "photo" and not _one_picture(leaf)
    ]
    passages: tuple[Passage, ...] = ()
    for leaf in backs:
        tell(len(passages) / len(backs))
        passages += (_passage(leaf, (ties or {}).get(leaf.number)),)
    sure = np.array([(p.across, p.along) for p in passages if p.sure])
    if not len(sure):
        return _unknown(bundle, passages)
    across, along = (float(v) for v in np.median(sure, axis=0))
    length = math.hypot(across, along)
    spread = 0.0
    if len(sure) > 1:
        off = ((sure - sure.mean(axis=0)) ** 2).sum() / (len(sure) - 1)
        spread = math.sqrt(float(off))
    alike = max(ALIKE, length / 4)
    agree = spread <= alike
    # What one back does not tell is taken to be as much as backs that agree may differ.
    unsteady = spread if len(sure) > 1 else alike
    left = max(unsteady, *(p.error_mm for p in passages if p.sure))
    wanders = length >= max(STEADY, 2 * left) and abs(along) > 2 * abs(across)
    slope = math.degrees(math.atan2(bundle.thickness, length)) if wanders else None
    values = {
        "count": len(sure), "across": round(across, 2), "along": round(along, 2),
        "length": round(length, 2), "spread": round(spread, 2), "slope": slope and round(slope, 1),
        "thickness": bundle.thickness, "miss": round(length, 2),
        "up": abs(round(along, 2)), "aside": abs(round(across, 2)),
    }
    ways = "up" if along > 0 else "down", "right" if across > 0 else "left"
    template = " ".join(_sentences(len(sure), ways, agree, slope))
    return Wander(
        passages, across, along, spread, True, agree, slope, length, left, template, values
    )


def _one_picture(leaf: Leaf) -> bool:
    """Whether one photograph stands for both sides, as where a leaf was turned over."""
    face, back = leaf.face.image, leaf.back.image
    return face is back or bool(face.sha256) and face.sha256 == back.sha256


def _passage(leaf: Leaf, tie: Tie | None) -> Passage:
    face, back = grids(leaf), grids(laid(leaf.back.image, tie_of(leaf), leaf))
    found = aligned(face, back)
    through = leaf.register.inverse() @ found.motion @ leaf.register
    middle = leaf.register.inverse().apply(leaf.usable.centroid.coords[0])
    across, along = through.apply(middle) - middle
    error = math.hypot(found.error_mm, tie.error_mm if tie else 0.0)
    return Passage(
        leaf.number, float(across), float(along), through.angle, found.likeness, error, found.motion
    )


def _unknown(bundle: Bundle, passages: tuple[Passage, ...]) -> Wander:
    miss = bundle.wander()
    values = {
        "miss": round(miss, 2), "thickness": bundle.thickness,
        "slope": ASSUMED_SLOPE if bundle.slope is None else abs(bundle.slope),
        "backs": len(passages),
    }
    if passages:
        why = word(
            "The photographs of {backs} backs do not show how far the figure wanders from surface "
            "to surface; book seams may miss by {miss} mm {basis}."
        )
    elif any(leaf.back.source == "photo" for leaf in bundle.leaves):
        why = word(
            "How far the figure wanders from surface to surface is not measured yet; book seams "
            "may miss by {miss} mm {basis}."
        )
    else:
        why = word(
            "No back was photographed, so that how far the figure wanders from surface to surface "
            "is unknown; book seams may miss by {miss} mm {basis}."
        )
    basis = word("by the slope of {slope} deg that was given")
    if bundle.slope is None:
        basis = word("if it slopes {slope} deg to the leaf, which is assumed and not measured")
    template = f"{put_in(why, basis=basis)} {word('Photograph two or three backs.')}"
    return Wander(passages, 0.0, 0.0, 0.0, False, False, None, miss, miss, template, values)


def _sentences(
    count: int, ways: tuple[str, str], agree: bool, slope: float | None
) -> list[str]:
    of = word("the back of one leaf") if count == 1 else word("the backs of {count} leaves")
    said = [put_in(word(_MEASURED[ways]), of=of)]
    if slope is not None:
        said.append(word("Ring planes at {slope} deg to the leaf would wander as far."))
    if count == 1:
        said.append(word("One back tells nothing of how steady that is; photograph another."))
    elif agree:
        said.append(word("The backs agree to {spread} mm."))
    else:
        said.append(word(
            "The backs differ by {spread} mm, so that this wander holds for no other leaf; "
            "photograph all that are turned."
        ))
    said.append(word("Book seams miss by {miss} mm where backs are pinned as their faces are."))
    return said


_MEASURED = {
    ("up", "right"): marked(
        "Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm "
        "to the right."
    ),
    ("up", "left"): marked(
        "Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm "
        "to the left."
    ),
    ("down", "right"): marked(
        "Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} "
        "mm to the right."
    ),
    ("down", "left"): marked(
        "Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} "
        "mm to the left."
    ),
}


# --- backs that were not photographed ------------------------------------------------------------


@dataclass(frozen=True)
class WanderedBundle(Bundle):
    """A bundle, registered on its figure, whose wander from face to back is measured: (across,
    along) in mm in its frame, known to `left` mm. `pin`: see `with_wander`; or "log" where it is
    registered on the log, or "" where nobody knows how its leaves lie.

    Backs that were not photographed have the source "wander": the neighbour's photo of the same
    surface, where the wander puts it. One without such a neighbour is its own face, put there too.
    They follow when the registers change. Photographed ones keep the place that they have, if it is
    not their face's.
    """

    basis: ClassVar[str] = marked("by the wander measured on photographed backs")
    """What `wander` rests on, for a sentence."""

    wandered: tuple[float, float] = (0.0, 0.0)
    left: float = 0.0
    pin: str = "face"

    def _with_back(self, leaf: Leaf, known: dict[int, Leaf]) -> Leaf:
        filled = super()._with_back(leaf, known)
        back = filled.back
        if not self.pin:
            return filled
        if back.source == "photo":
            moved = back.register != leaf.register
            return filled if moved and self.pin != "log" else pinned(leaf, self.wandered, self.pin)
        shift = Motion(dx=self.wandered[0], dy=self.wandered[1])
        register, view, source = back.register, back.view, back.source
        if self.pin == "figure":
            register = register @ shift
        elif self.pin == "face" or source == "own face":
            view = view @ shift.inverse()
        source = "wander" if source == "neighbour" else source
        return replace(filled, back=Side(back.image, register, view, source))

    def wander(self) -> float:
        """mm by which the figure may lie otherwise than the measured wander has it."""
        return self.left


def with_wander(bundle: Bundle, wander: Wander, pin: str = "face") -> WanderedBundle:
    """The bundle, registered on its figure, whose backs show what the wander puts there.

    The back of leaf k is seen on the neighbour's photo of the same surface; the figure of the
    bundle's point b lies on it at register(b + w), with w the wander in the bundle's frame.
    `pin="face"`: a turned leaf is pinned by its face's register, and its picture shows the figure w
    off, as it will come out. `pin="figure"`: it is pinned w further on, so that the figure of its
    back meets its neighbour's at a book seam. Photographed backs keep their own picture and, pinned
    by the figure, follow their own passage where it is sure. (Where registers follow the log and
    not the figure a neighbour's photo is in place without this.) Raises VeneerError where the
    wander is not known.
    """
    choice("way to pin backs", pin, ("face", "figure"))
    if not wander.known:
        raise VeneerError(
            "wander-unknown",
            "How far the figure wanders is not measured, so that backs cannot be set by it; "
            "photograph two or three backs.",
        )
    own = {p.leaf: p.motion for p in wander.passages if p.sure}
    leaves = tuple(
        pinned(leaf, (wander.across, wander.along), pin, own.get(leaf.number))
        if leaf.back.source == "photo" else leaf
        for leaf in bundle.leaves
    )
    slope = None if wander.slope is None else math.copysign(wander.slope, -wander.along)
    return _wandered(
        replace(bundle, leaves=leaves, slope=slope),
        (wander.across, wander.along), wander.left, pin,
    )


def kept_wander(
    bundle: Bundle, wandered: tuple[float, float], left: float, follows: str, pin: str
) -> WanderedBundle:
    """The bundle with a wander that was measured and kept, as `with_wander` makes it; photographed
    backs stay pinned as they are. `follows`: what its registers follow.

    By the log, surfaces lie over each other without any shift. As photographed, nobody knows how
    they lie: backs stay where they are, and the figure may miss by all of the wander.
    """
    if follows == "log":
        return _wandered(bundle, wandered, left, "log")
    if follows == "as photographed":
        return _wandered(bundle, wandered, math.hypot(*wandered) + left, "")
    return _wandered(bundle, wandered, left, pin)


def _wandered(
    bundle: Bundle, wandered: tuple[float, float], left: float, pin: str
) -> WanderedBundle:
    return WanderedBundle(
        bundle.leaves, bundle.thickness, bundle.back, bundle.slope, bundle.edition,
        wandered, left, pin,
    )


def pinned(
    leaf: Leaf, wandered: tuple[float, float], pin: str, own: Motion | None = None
) -> Leaf:
    """A photographed back pinned as its face is, or where its figure lies: by its `own` passage
    (leaf mm), or by the wander of the bundle. It is seen at the same place of the leaf as before.
    """
    register = leaf.face.register
    if pin == "figure":
        register = register @ Motion(dx=wandered[0], dy=wandered[1]) if own is None else (
            own @ register
        )
    return replace(leaf, back=Side(leaf.back.image, register, tie_of(leaf) @ register, "photo"))
