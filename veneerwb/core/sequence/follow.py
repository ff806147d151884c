# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the stack follows, which is the maker's choice: the figure, the log, or picked marks.

Where the figure of leaf k lies is the chain's register R_k. It is the place of the log on that
photograph, D_k, after the figure's wander from surface to surface, w: R_k = D_k o (move by w).
Following the log means D_k = R_k o (move by -w), and a face is looked up on its photograph where it
is cut, whatever the stack follows: so its view is its register. What w is comes from outside (the
log's own frames, the wander measured on backs, the slope of the stem), or is the drift that the
registers share (see `drift`); each choice says which.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from veneerwb.core.checks.faces import unregistered
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Bundle
from veneerwb.core.plane import IDENTITY, Motion, choice, finite, tand
from veneerwb.core.sequence.chain import WITHOUT_FIGURE, Chain, chained, registered
from veneerwb.core.sequence.drift import Place, drifted
from veneerwb.core.sequence.follow_text import Known, figure_findings, log_findings, marks_findings
from veneerwb.core.sequence.marks import Marks, by_marks
from veneerwb.core.sequence.trust import Trust, trust_findings, trusted

FOLLOWED = ("figure", "log", "marks", "photographs")
"""What a stack may follow; "photographs": they are simply laid over each other."""
Progress = Callable[[float], None] | None


@dataclass(frozen=True)
class Cost:
    """mm across and along that all leaves have in common (`common`) and that the smallest leaf has
    (`leaf`), and `area`, the common area in mm2: usable areas, over each other as registered."""

    common: Place
    leaf: Place
    area: float

    @property
    def lost(self) -> Place:
        """mm of width and length that no cut through the whole stack can use."""
        return self.leaf[0] - self.common[0], self.leaf[1] - self.common[1]


@dataclass(frozen=True)
class Followed:
    """The `bundle` with the registers and views of a choice, `what` it follows, its `cost`, how far
    each leaf's register is to be `trust`ed (empty where no figure was compared), and `wander`: mm
    by which the figure of each leaf lies off where the stack is cut (0 if it follows the figure,
    empty if that is not known)."""

    what: str
    bundle: Bundle
    cost: Cost
    trust: tuple[Trust, ...]
    wander: Mapping[int, Place]
    findings: tuple[Finding, ...]

    @property
    def text(self) -> str:
        """All findings, a sentence or two each."""
        return " ".join(
            part for finding in self.findings for part in (finding.text, finding.remedy) if part
        )


@dataclass(frozen=True)
class Choice:
    """One of the choices side by side: what it gives, and `layout`, the same top laid from it (None
    if none was given), to be painted beside the others'."""

    followed: Followed
    layout: Layout | None

    @property
    def what(self) -> str:
        return self.followed.what


def follow(
    bundle: Bundle, what: str = "figure", region: Any = None, marks: Marks | None = None,
    chain: Chain | None = None, wander: Place | None = None,
    frames: Mapping[int, Motion] | None = None, progress: Progress = None,
) -> Followed:
    """The bundle registered so that the stack follows `what` (one of FOLLOWED).

    `region` (shapely polygon, bundle mm) weights the figure; `chain`: the chain, if it is known
    already. For "marks": points in leaf mm by leaf number, two or more a leaf. For "log", if known:
    `frames`, for each leaf the motion from any frame fixed to the log to leaf mm (from targets or
    outlines), or `wander`, the mm in the bundle (x, y) by which the figure goes from leaf to leaf.
    `progress` is told the share of the leaves compared. Raises VeneerError for what is missing or
    contradicts itself.
    """
    choice("what to follow", what, FOLLOWED)
    if what == "photographs":
        return _stacked(bundle)
    if what == "marks":
        return _by_marks(bundle, marks or {})
    if what == "log" and frames is not None and chain is None:
        held = _in_first(bundle, frames)
        try:
            chain = chained(bundle, region, progress)
        except VeneerError as error:
            if error.code not in WITHOUT_FIGURE:
                raise
            return _by_frames_alone(bundle, held)
    chain = _covering(bundle, chained(bundle, region, progress) if chain is None else chain)
    if what == "figure":
        return _by_figure(bundle, chain)
    return _by_log(bundle, chain, wander, frames)


def compared(
    bundle: Bundle, region: Any = None, marks: Marks | None = None, chain: Chain | None = None,
    wander: Place | None = None, frames: Mapping[int, Motion] | None = None,
    layout: Layout | None = None, progress: Progress = None,
) -> tuple[Choice, ...]:
    """The choices side by side, in the order of FOLLOWED; by marks only if there are any.

    With a `layout` the same top is laid from the bundle of each, at the same place. Arguments as
    for `follow`; the figure is compared once. Where a leaf shows none, the choices that need none
    are given, and say so.
    """
    lacking: tuple[Finding, ...] = ()
    if chain is None:
        try:
            chain = chained(bundle, region, progress)
        except VeneerError as error:
            if error.code not in WITHOUT_FIGURE:
                raise
            lacking = (Finding(error.code, "warn", error.template, "", error.values),)
    wanted = [what for what in FOLLOWED if what != "marks" or marks]
    if lacking:
        wanted = [w for w in wanted if w != "figure" and (w != "log" or frames is not None)]
    found = [follow(bundle, w, region, marks, chain, wander, frames) for w in wanted]
    return tuple(
        Choice(replace(done, findings=lacking + done.findings), _laid(layout, done.bundle))
        for done in found
    )


def _laid(layout: Layout | None, bundle: Bundle) -> Layout | None:
    if layout is None:
        return None
    if layout.recipe is None:
        raise VeneerError(
            "no-recipe", "This layout does not know how it was made, so it cannot be laid again."
        )
    return layout.recipe.lay(bundle, layout.top)


def cost(bundle: Bundle) -> Cost:
    """What all leaves of a registered bundle have in common, beside the smallest of them."""
    sizes = []
    for n in bundle.numbers:
        here = bundle.register(n, False).inverse().apply_to(bundle.usable(n))
        sizes.append(_extent(here))
    common = bundle.common_area(bundle.numbers)
    leaf = tuple(float(v) for v in np.min(sizes, axis=0))
    return Cost(_extent(common), leaf, float(common.area))


def _extent(area: Any) -> Place:
    if area.is_empty:
        return 0.0, 0.0
    x0, y0, x1, y1 = area.bounds
    return x1 - x0, y1 - y0


# --- the choices -------------------------------------------------------------------------------


def _stacked(bundle: Bundle) -> Followed:
    done = registered(bundle, dict.fromkeys(bundle.numbers, IDENTITY))
    price = cost(done)
    note = unregistered(done)
    notes = [note] if note else []
    return Followed("photographs", done, price, (), {}, (*notes, *_cost_findings(price, done)))


def _by_figure(bundle: Bundle, chain: Chain) -> Followed:
    done = registered(bundle, chain.registers)
    price = cost(done)
    none = dict.fromkeys(bundle.numbers, (0.0, 0.0))
    findings = (*figure_findings(done), *_cost_findings(price, done), *trust_findings(chain))
    return Followed("figure", done, price, trusted(chain), none, findings)


def _by_log(
    bundle: Bundle, chain: Chain, wander: Place | None, frames: Mapping[int, Motion] | None
) -> Followed:
    gone, known = _wandered(bundle, chain, wander, frames)
    if frames is not None:
        registers = _in_first(bundle, frames)
    else:
        registers = {
            n: chain.registers[n] @ Motion(dx=-gone[n][0], dy=-gone[n][1]) for n in bundle.numbers
        }
    done = registered(bundle, registers)
    price = cost(done)
    findings = (*log_findings(done, known), *_cost_findings(price, done), *trust_findings(chain))
    return Followed("log", done, price, trusted(chain), gone, findings)


def _by_frames_alone(bundle: Bundle, held: Mapping[int, Motion]) -> Followed:
    done = registered(bundle, held)
    price = cost(done)
    known = Known("frames-alone", (0.0, 0.0))
    findings = (*log_findings(done, known), *_cost_findings(price, done))
    return Followed("log", done, price, (), {}, findings)


def _by_marks(bundle: Bundle, marks: Marks) -> Followed:
    found = by_marks(bundle, marks)
    done = registered(bundle, found.registers)
    price = cost(done)
    findings = (*marks_findings(found), *_cost_findings(price, done))
    return Followed("marks", done, price, (), {}, findings)


# --- the figure's wander -----------------------------------------------------------------------


def _wandered(
    bundle: Bundle, chain: Chain, wander: Place | None, frames: Mapping[int, Motion] | None
) -> tuple[dict[int, Place], Known]:
    """mm in the bundle by which the figure of each leaf lies off the first's on the log, and how
    that is known."""
    first = bundle.numbers[0]
    steps = {n: n - first for n in bundle.numbers}
    registers = {n: chain.registers[n] for n in bundle.numbers}
    middle = tuple(v / 2 for v in bundle.leaf(first).size)
    if frames is not None:
        held = _in_first(bundle, frames)
        gone = {n: _apart(held[n], registers[n], middle) for n in steps}
        return gone, Known("frames", _mean(gone, first))
    seen = drifted(registers, middle)
    if wander is not None:
        x, y = _pair(wander)
        return {n: (x * k, y * k) for n, k in steps.items()}, Known("wander", (x, y), seen)
    if bundle.slope is not None:
        y = _along(bundle, seen)
        return {n: (0.0, y * k) for n, k in steps.items()}, Known("slope", (0.0, y), seen)
    if seen is None:
        return dict.fromkeys(steps, (0.0, 0.0)), Known("nothing", (0.0, 0.0))
    gone = {n: seen.after(k) for n, k in steps.items()}
    return gone, Known("drift" if any(seen.clear) else "nothing", _mean(gone, first), seen)


def _along(bundle: Bundle, seen: Any) -> float:
    """mm along y that the figure goes from leaf to leaf by the stem's slope: t / tan(slope).

    Towards -y for a positive slope and leaves that lie under each other, as in a sawn log; but
    whoever measured a slope may have left its sign away, so a clear drift has the last word on it.
    """
    if not bundle.slope:
        return 0.0
    sign = -1.0 if (bundle.slope > 0) != (bundle.back == "previous") else 1.0
    if seen is not None and seen.clear[1]:
        sign = float(np.sign(seen.after(bundle.numbers[-1] - bundle.numbers[0])[1]))
    return sign * bundle.thickness / tand(abs(bundle.slope))


def _in_first(bundle: Bundle, frames: Mapping[int, Motion]) -> dict[int, Motion]:
    """Frames as motions from bundle mm, which are those of the first leaf."""
    lacking = [n for n in bundle.numbers if n not in frames]
    if lacking:
        raise VeneerError(
            "frames-missing",
            "Leaf {leaf} has no frame of the log; give one for every leaf (targets or its outline) "
            "or for none.",
            leaf=lacking[0],
        )
    onto = frames[bundle.numbers[0]].inverse()
    return {n: IDENTITY if n == bundle.numbers[0] else frames[n] @ onto for n in bundle.numbers}


def _apart(held: Motion, register: Motion, middle: Place) -> Place:
    x, y = held.inverse().apply(register.apply(middle)) - np.asarray(middle)
    return float(x), float(y)


def _mean(gone: Mapping[int, Place], first: int) -> Place:
    """mm from leaf to leaf, over the whole bundle."""
    last = max(gone)
    steps = max(1, last - first)
    return gone[last][0] / steps, gone[last][1] / steps


def _pair(wander: Sequence[float]) -> Place:
    try:
        x, y = wander
    except (TypeError, ValueError):
        raise VeneerError(
            "not-a-list", "Give the wander of the figure as two numbers: mm across and mm along."
        ) from None
    return finite("wander across", x), finite("wander along", y)


def _covering(bundle: Bundle, chain: Chain) -> Chain:
    lacking = [n for n in bundle.numbers if n not in chain.registers]
    if lacking:
        raise VeneerError(
            "chain-lacks-leaf",
            "Leaf {leaf} was not registered with the others; register the bundle again.",
            leaf=lacking[0],
        )
    return chain


def _cost_findings(price: Cost, bundle: Bundle) -> list[Finding]:
    if len(bundle.leaves) == 1:
        return []
    if not price.area:
        return [Finding(
            "nothing-in-common", "stop",
            "Stacked so, the usable areas of the leaves have no place in common.",
            "Use fewer leaves of the bundle, or let the stack follow something else.",
        )]
    values = {
        "leaves": len(bundle.leaves),
        **{name: round(v) for name, v in zip(("across", "along"), price.common)},
        **{f"lost_{name}": round(v) for name, v in zip(("across", "along"), price.lost)},
    }
    return [Finding(
        "cost", "note",
        "Stacked so, the {leaves} leaves have {across} x {along} mm in common, {lost_along} mm of "
        "length and {lost_across} mm of width less than the smallest leaf.",
        "", values,
    )]
