# SPDX-License-Identifier: LGPL-2.1-or-later
"""From the bench back to the screen: whether a photograph of what was pinned, or of a whole stack,
bears out the registers.

A register takes bundle mm to leaf mm; a leaf's marks are points in leaf mm. What a photograph shows
is laid on the plane of the topmost leaf (`seen`); leaves are compared there and judged (`verdict`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import Scaled, rigid, similar
from veneerwb.core.plane import Motion, positive
from veneerwb.core.targets.measuring import NEAREST, frame, points
from veneerwb.core.targets.seen import Pins, Plane, Seen, plane_of
from veneerwb.core.targets.verdict import Compared, Judge, tells_turn

FEWEST = 4
"""Marks of a stack without pins: two fit however the leaves lie, for scale, turn and place are
found from them."""
AGREED = 0.5
"""mm: a mark no further from where the register has it confirms the register."""
TURNED = 0.1
"""Degrees: nor turned by more; that is 1 mm at 600 mm."""


def confirm(
    leaves: Sequence[Seen], pins: Pins | None = None, tolerance: float = AGREED,
    turn: float = TURNED, error: float = 0.0, camera: float | None = None,
    middle: tuple[float, float] | None = None,
) -> list[Finding]:
    """Whether a photograph bears out the registers on the screen, a Finding for each leaf.

    Either leaves with at least two marks each, and the pins: the marks then say where on the leaf
    the pins stand, and that is compared with where the register has them. Or marks of several
    leaves of one stack (on tabs that stand out of it) without pins: all together say how the stack
    lies, those that stand apart from the others weighing less. Two leaves can only be compared with
    each other: one Finding then tells of both. Nor does it say which leaves lie wrong where no more
    than half of them agree.

    SQUARES marks on the topmost leaf square the photograph up; else it is taken to be square on.
    Its scale is found. A leaf is confirmed where nothing is further than `tolerance` mm from where
    its register has it, and turned by no more than `turn` degrees; else contradicted. If `error`
    (px, one deviation of a mark; say the largest `Located.error`), that of the pins or the misfit
    of a leaf's own marks is so large that nothing can be told, that is said.

    Leaves that lie `below` the topmost are seen smaller: with the `camera` at that many mm above
    the topmost, and the `middle` (column, row) of the photograph, this is set right. (14 mm of
    stack seen from 1.5 m move a mark that is 300 mm off the middle by 2.8 mm.) Raises VeneerError
    where there is nothing to compare with.
    """
    tolerance, turn = positive("tolerance", tolerance), positive("turn", turn, 180.0)
    _enough(leaves, pins)
    plane = plane_of(leaves, camera, middle, error)
    laid = [_Laid.on(plane, one, error) for one in leaves]
    judge = Judge(tolerance, turn, plane.squared)
    if pins is not None:
        clicked = plane.flat(points(pins.on_photo, None, 2))
        stand = points(pins.bundle, len(clicked), 2)
        blur = pins.error * plane.per_px(points(pins.on_photo, None, 2))
        at = _Used(clicked, plane.flat_if_off(pins.on_photo), blur)
        return [judge.told(_by_pins(one, at, stand)) for one in laid]
    if len(laid) == 2:
        return [judge.of_two(*_by_each_other(*laid))]
    return judge.of_many(_by_others(laid, tolerance))


def _enough(leaves: Sequence[Seen], pins: Pins | None) -> None:
    counts = {one.leaf: len(points(one.on_photo, None, 1)) for one in leaves}
    if not counts or (pins is None and len(counts) == 1):
        raise VeneerError(
            "nothing-to-compare",
            "One leaf's marks alone confirm nothing; click two pins too, or marks of other leaves "
            "of the stack.",
        )
    if pins is None and sum(counts.values()) < FEWEST:
        raise VeneerError(
            "too-few-to-compare",
            "{count} marks fit any photograph, so that they confirm nothing; click at least "
            "{least}, on two leaves or more.",
            count=sum(counts.values()), least=FEWEST,
        )
    if pins is not None and len(points(pins.on_photo, None, 1)) < 2:
        raise VeneerError(
            "too-few-pins", "One pin does not tell how a leaf is turned; click the other one too."
        )
    fewest = min(counts, key=counts.get)
    if pins is not None and counts[fewest] < 2:
        raise VeneerError(
            "too-few-marks",
            "One mark of leaf {leaf} does not tell where the pins stand on it; click another one.",
            leaf=fewest,
        )


# --- what lies where ---------------------------------------------------------------------------


@dataclass(frozen=True)
class _Used:
    """`places` on the plane of the topmost leaf, the same where that is `moved` by each of its
    marks' errors, and one deviation of a place by itself (`blur`), mm."""

    places: np.ndarray
    moved: list[np.ndarray]
    blur: float


@dataclass(frozen=True)
class _Laid:
    """A leaf's `marks` (leaf mm), where its register expects them in the bundle, where they are
    `seen`, and the `shift` by which parallax was set right."""

    number: int
    register: Motion
    marks: np.ndarray
    expected: np.ndarray
    seen: _Used
    shift: np.ndarray

    @staticmethod
    def on(plane: Plane, one: Seen, error: float) -> _Laid:
        seen = points(one.on_photo, None, 1)
        marks, shift = points(one.marks, len(seen), 1), plane.shift(one)
        squares = plane.squared and one is plane.top
        return _Laid(
            one.leaf, one.register, marks, one.register.inverse().apply(marks),
            _Used(
                plane.flat(seen) + shift,
                [moved + shift for moved in plane.flat_if_off(seen, squares)],
                # What the marks are off that square it up is what the plane is off.
                0.0 if squares else error * plane.per_px(seen),
            ),
            shift,
        )

    @property
    def places(self) -> np.ndarray:
        return self.seen.places

    @property
    def spread(self) -> float:
        """Nought where its marks lie too near each other to tell scale and turn."""
        if np.ptp(self.marks, axis=0).max() < NEAREST:
            return 0.0
        return float(((self.places - self.places.mean(axis=0)) ** 2).sum())


def _compared(
    one: _Laid, known: np.ndarray, lies: np.ndarray, onto: Scaled, by: Sequence[_Laid], at: _Used,
    weights: np.ndarray | None = None,
) -> Compared:
    """`onto` was fitted to the places of leaves `by` on the plane, and used `at` others: two
    deviations of what is found there, by the least-squares variance of a fit of turn, scale and
    place, and by what the plane itself may be off."""
    used, blur = np.vstack([leaf.places for leaf in by]), max(leaf.seen.blur for leaf in by)
    middle = used.mean(axis=0)
    far = ((at.places - middle) ** 2).sum(axis=1).max() / ((used - middle) ** 2).sum()
    own = math.hypot(at.blur, blur * math.sqrt(1 / len(used) + far))
    return Compared(
        one.number, known, lies, _misfit(one.expected, onto.apply(one.places)),
        2 * math.hypot(onto.scale * own, _drift(onto, by, at, weights)),
        onto.scale * float(np.linalg.norm(one.shift, axis=1).max()),
    )


def _drift(
    onto: Scaled, by: Sequence[_Laid], at: _Used, weights: np.ndarray | None
) -> float:
    """The most, mm, that what is found `at` places moves with the marks that square the photograph
    up, each off by a deviation in column and row: the root of the sum of squares."""
    lay, found = (onto.apply(p) for p in (np.vstack([leaf.places for leaf in by]), at.places))
    moved = zip(zip(*(leaf.seen.moved for leaf in by)), at.moved)
    off = [similar(np.vstack(here), lay, weights).apply(there) - found for here, there in moved]
    return math.sqrt((np.square(off).sum(axis=(0, 2))).max()) if off else 0.0


def _misfit(known: np.ndarray, lies: np.ndarray) -> float:
    """mm by which a leaf's marks miss their own pattern, wherever the leaf lies."""
    return frame(known, lies).worst if tells_turn(known, lies) else 0.0


def _by_pins(one: _Laid, pins: _Used, stand: np.ndarray) -> Compared:
    """What lies at the pins, by the leaf's marks: where its register has it, and the pins."""
    onto = similar(one.places, one.expected)
    return _compared(one, onto.apply(pins.places), stand, onto, [one], pins)


def _by_each_other(one: _Laid, other: _Laid) -> tuple[Compared, Compared]:
    """Both leaves as the first lies, or the second if its marks tell more; that one first."""
    both = (one, other) if 2 * one.spread >= other.spread else (other, one)
    told = [leaf for leaf in both if leaf.spread]
    if not told:
        raise VeneerError(
            "marks-too-near",
            "The marks lie less than {least} mm apart, too near to tell a turn; use marks far "
            "apart.",
            least=NEAREST,
        )
    # Each by itself, for how they lie to each other is the question.
    scales = [similar(leaf.places, leaf.expected).scale for leaf in told]
    scale = float(np.average(scales, weights=[leaf.spread for leaf in told]))
    base = both[0]
    onto = Scaled(scale, rigid(scale * base.places, base.expected)[0])
    return tuple(
        _compared(leaf, leaf.expected, onto.apply(leaf.places), onto, [base], leaf.seen)
        for leaf in both
    )


def _by_others(laid: list[_Laid], tolerance: float) -> list[Compared]:
    """Every leaf's marks in the bundle, as all leaves' marks together have it."""
    places = np.vstack([one.places for one in laid])
    onto, weights = _robust(places, np.vstack([one.expected for one in laid]), tolerance)
    return [_compared(one, one.expected, onto.apply(one.places), onto, laid, one.seen, weights)
            for one in laid]


def _robust(
    places: np.ndarray, expected: np.ndarray, tolerance: float
) -> tuple[Scaled, np.ndarray]:
    """The fit with each mark weighing as 1 / its miss (least sum of distances), from
    `tolerance` / 4 on; at last of those alone, if they are enough, that then agree. And what each
    mark weighed."""
    weights = np.ones(len(places))
    for _ in range(50):
        used = weights
        found = similar(places, expected, used)
        off = np.linalg.norm(found.apply(places) - expected, axis=1)
        weights = 1.0 / np.maximum(off, tolerance / 4)
    agreed = off <= tolerance
    if agreed.sum() < FEWEST:
        return found, used
    return similar(places[agreed], expected[agreed]), agreed.astype(float)
