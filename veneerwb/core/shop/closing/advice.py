# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closing a ring, the whole of it: what is advised before cutting, what was found after.

Of the ways of truing that a ring has, the one is advised that needs the least over; of those that
need the same, the one that moves the seams least.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property

from veneerwb.core.checks.closure import closure
from veneerwb.core.checks.wider import too_wide, widest
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.matches.asked import between
from veneerwb.core.plane import sind, tand
from veneerwb.core.shop.closing.expected import MOST, Errors, Expected
from veneerwb.core.shop.closing.measured import Measured, tips_move
from veneerwb.core.shop.closing.over import Over, chance, hows, least_over
from veneerwb.core.shop.closing.readings import Trial, set_out_error, trial_error
from veneerwb.core.shop.closing.ring import Ring
from veneerwb.core.shop.closing.swaps import Swap, swaps
from veneerwb.core.shop.closing.trued import Costs, Places, as_trued, costs, places
from veneerwb.core.shop.setout import SetOut, set_out
from veneerwb.words import marked

CONFIDENCES = (0.95, 0.99)


@dataclass(frozen=True)
class Offer:
    """One way to cut over and true: the `over`, how the ring lies then if every wedge comes out at
    its mean (`at`), what that `costs`, and by how much wider each wedge is at the longest seam
    (mm): 2 R (sin(a / 2) - sin(180 / n))."""

    over: Over
    at: Places
    costs: Costs
    wider: float


@dataclass(frozen=True)
class Before:
    """Before cutting: the ring of a `layout`, the `errors` to expect, the `confidence` wanted, and
    how well each wedge will be `measured` to choose the diameter by (degrees, standard; None: the
    diameter is fixed beforehand). `reading`: how well a rule is read, mm (standard). `trial`: a
    test cut by the template as it is set; the template's error is then what that leaves open."""

    layout: Layout
    errors: Errors
    confidence: float = 0.95
    measured: float | None = None
    base: float = 0.0
    reading: float = 0.25
    trial: Trial | None = None

    def __post_init__(self) -> None:
        between(marked("confidence"), self.confidence, 0.5, 0.9999)
        if self.measured is not None:
            between(marked("standard error of a measured wedge"), self.measured, 0.0, 10.0)

    @cached_property
    def ring(self) -> Ring:
        return Ring.of(self.layout)

    @cached_property
    def settled(self) -> Errors:
        """The errors with what is known of the template."""
        if self.trial is None:
            return self.errors
        if abs(self.trial.angle.value - self.ring.angle) > MOST:
            raise VeneerError(
                "trial-wild",
                "{count} wedges that make {sum} deg have {each} deg each, and this ring wants "
                "{true}: mend the number of wedges of the test cut, or what they make.",
                count=self.trial.count, sum=self.trial.sum.value, each=self.trial.angle.value,
                true=self.ring.angle,
            )  # fmt: skip
        return replace(self.errors, template=self.trial.angle.uncertainty)

    @cached_property
    def exact(self) -> Expected:
        """What to expect of wedges that are cut to 360/n without any over."""
        return Expected(self.ring.ways, self.ring.angle, self.settled)

    @property
    def opens(self) -> float:
        """By how much such a ring opens at the rim on the mean (overlaps: less than 0), mm: the
        moisture's doing."""
        return closure([self.exact.angle] * self.ring.ways, self.ring.reach).rim_gap

    @property
    def spread_at_rim(self) -> float:
        """The standard deviation of that, mm."""
        return closure([360.0 - self.exact.ring.spread], self.ring.reach).rim_gap

    @cached_property
    def offers(self) -> tuple[Offer, ...]:
        """Every way of truing, for 95 and 99 % and what else is wanted."""
        wanted = sorted({*CONFIDENCES, self.confidence})
        return tuple(
            self._offer(how, sure) for sure in wanted for how in hows(self.ring.ways)
        )

    def _offer(self, how: str, sure: float) -> Offer:
        return self._costed(least_over(self.ring.ways, self.settled, sure, how, self.measured))

    def _costed(self, over: Over) -> Offer:
        at = places(self.ring, [over.expected.angle] * self.ring.ways, over.how)
        wider = 2.0 * self.ring.reach * (sind(over.cut / 2.0) - sind(self.ring.angle / 2.0))
        return Offer(over, at, costs(at), wider)

    @cached_property
    def least(self) -> Offer:
        """The one that needs the least over for the confidence wanted."""
        wanted = [offer for offer in self.offers if offer.over.confidence == self.confidence]
        return min(wanted, key=lambda one: (round(one.over.degrees, 6), one.costs.shift))

    @cached_property
    def as_tried(self) -> Offer | None:
        """What comes of the template as the test cut found it; None without a test cut."""
        if self.trial is None:
            return None
        how, angle = self.least.over.how, self.trial.angle.value
        expected = Expected(self.ring.ways, angle, self.settled)
        claimed = chance(expected, how, self.measured)
        over = angle - self.ring.angle
        return self._costed(Over(over, self.confidence, how, self.measured, expected, claimed))

    @property
    def stays(self) -> bool:
        """Whether the template may stay as the test cut found it: sure enough as it is."""
        return self.trial is not None and self.as_tried.over.claimed >= self.confidence

    @property
    def advised(self) -> Offer:
        """The one that is advised: the template as it is where a test cut says that it will do,
        else the least."""
        return self.as_tried if self.stays else self.least

    @property
    def mark_moves(self) -> float:
        """By how much the marks at the end of the base lie out for the least over to be met by the
        template that was tried, mm each (in: less than 0); 0 without a test cut."""
        if self.trial is None:
            return 0.0
        base, now = self.set_out.base, self.trial.angle.value
        return base * (tand(self.least.over.cut / 2.0) - tand(now / 2.0))

    @cached_property
    def no_room(self) -> tuple[int, ...]:
        """The leaves that have room for their wedges, and none for the advised over."""
        off = too_wide(self.layout, self.advised.over.cut)
        return tuple(sorted({piece.leaf for piece, _ in off}))

    @cached_property
    def room(self) -> float:
        """The largest angle up to the advised one for which all those leaves have room."""
        angle = self.advised.over.cut
        return widest(self.layout, angle) if self.no_room else angle

    @cached_property
    def trued(self) -> Layout:
        """The layout as it is cut and trued then, for its picture."""
        return as_trued(self.layout, self.advised.at)

    @property
    def set_out(self) -> SetOut:
        """The template's angle as offsets at the end of a long base."""
        longest = self.ring.reach + getattr(self.layout.recipe, "oversize", 0.0)
        return set_out(self.advised.over.cut, longest, self.base)

    @property
    def set_out_error(self) -> float:
        """How surely the set-out gives the angle, degrees (standard)."""
        return set_out_error(self.set_out, self.reading)

    @property
    def base_wanted(self) -> float:
        """The least base over which rules that are read so set an angle as surely as the template's
        error was entered, mm; 0 where the set-out is that sure, or a test cut was made."""
        sure, wanted = self.set_out_error, self.errors.template
        if self.trial is not None or sure <= wanted * (1.0 + 1e-9) or not wanted:
            return 0.0
        return self.set_out.base * sure / wanted

    @property
    def trial_count(self) -> int:
        """How many wedges a test cut should have: half a ring, which a straightedge tells."""
        return self.ring.ways // 2

    @property
    def trial_error(self) -> float:
        """How surely such a test cut tells the template's error, degrees (standard): its sum as
        surely as `set_out_error` tells an angle."""
        return trial_error(self.trial_count, self.set_out_error, self.errors.piece)

    @property
    def figure_moves(self) -> float:
        """How far the figure at a wedge's rim lies off the photograph by the moisture between
        photograph and cut, mm (outwards: more than 0)."""
        wet = self.errors.moisture
        return wet.figure(self.ring.reach * sind(self.ring.angle / 2.0)) if wet else 0.0


@dataclass(frozen=True)
class Closing:
    """All that a shop is told of the closing of a ring; `after` is None until it is measured.
    `shifted`: mm by which all edges are out alike (more than 0: pieces too wide)."""

    before: Before
    after: Measured | None = None
    shifted: float = 0.0

    @property
    def layout(self) -> Layout:
        return self.before.layout

    @property
    def ring(self) -> Ring:
        return self.before.ring

    @property
    def at(self) -> Places:
        """How the ring lies: as measured, else as advised."""
        return self.after.trued if self.after else self.before.advised.at

    @property
    def angles(self) -> tuple[float, ...]:
        """The angle of each piece at taping, degrees: as measured, else on the mean."""
        if self.after:
            return self.after.angles
        return (self.before.advised.over.expected.angle,) * self.ring.ways

    @property
    def slides(self) -> float:
        """How far each piece goes out along its axis by that, mm (in: less than 0)."""
        return math.copysign(tips_move(self.ring.ways, abs(self.shifted)), self.shifted)

    @property
    def oversize_left(self) -> float:
        """What is left of the oversize at the rim then, mm (less than 0: short of the edge)."""
        return getattr(self.layout.recipe, "oversize", 0.0) + self.slides

    @cached_property
    def trued(self) -> Layout:
        """The layout of that."""
        return as_trued(self.layout, self.at) if self.after else self.before.trued

    @cached_property
    def swaps(self) -> tuple[Swap, ...]:
        """Swaps of neighbours that would even the halves."""
        if self.after is None or len(self.layout.pieces) != self.ring.ways:
            return ()
        return swaps(self.after, self.layout)
