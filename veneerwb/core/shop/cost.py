# SPDX-License-Identifier: LGPL-2.1-or-later
"""Yield and cost: what of the leaves is used, cut, opened, bought and left, and what a top costs.

    used     the finished pieces (net)
    cut      their blanks, with oversize
    opened   the leaves that were cut into
    bought   the whole bundle
    left     bought less opened: whole leaves; and opened less cut: offcuts

Factors are written plainly: used / bought, bought / used, and waste of the purchase, 1 - used /
bought. "50 % extra" on the net area is therefore a waste of 1 - 1 / 1.5 = 33.3 % of the purchase.
Areas of leaves are those of the rectangles round them, as veneer is sold.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.inventory import SQUARE_FOOT, Particulars
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves, measures
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import choice, finite, whole
from veneerwb.words import marked

PER = (marked("bundle"), marked("leaf"), marked("m2"), marked("sq ft"))
DEAREST = 1e9
MOST_TOPS = 1000
MM2 = 1e-6


@dataclass(frozen=True)
class Factors:
    """Two areas set against each other: `used` of `bought`, m2."""

    used: float
    bought: float

    @property
    def used_of_bought(self) -> float:
        return self.used / self.bought

    @property
    def bought_to_used(self) -> float:
        return self.bought / self.used

    @property
    def waste(self) -> float:
        """Of the purchase, as a share of 1."""
        return 1.0 - self.used_of_bought


@dataclass(frozen=True)
class LeafYield:
    """A leaf: its `full` area, what is `used` and `cut` of it, m2, and the positions it serves
    (none: a leaf that is left)."""

    leaf: int
    full: float
    used: float
    cut: float
    positions: tuple[int, ...]

    @property
    def factors(self) -> Factors:
        return Factors(self.used, self.full)


@dataclass(frozen=True)
class Yields:
    """Of a layout and its bundle, all areas in m2. `top`: the finished top."""

    leaves: tuple[LeafYield, ...]
    top: float

    @property
    def opened(self) -> tuple[LeafYield, ...]:
        return tuple(one for one in self.leaves if one.positions)

    @property
    def whole_leaves(self) -> tuple[int, ...]:
        """The numbers of the leaves that are left whole."""
        return tuple(one.leaf for one in self.leaves if not one.positions)

    @property
    def used(self) -> float:
        return math.fsum(one.used for one in self.leaves)

    @property
    def cut(self) -> float:
        return math.fsum(one.cut for one in self.leaves)

    @property
    def opened_area(self) -> float:
        return math.fsum(one.full for one in self.opened)

    @property
    def bought(self) -> float:
        return math.fsum(one.full for one in self.leaves)

    @property
    def offcuts(self) -> float:
        return self.opened_area - self.cut

    @property
    def left(self) -> float:
        """Whole leaves."""
        return self.bought - self.opened_area

    @property
    def of_opened(self) -> Factors:
        """What is used of the leaves that are cut into."""
        return Factors(self.used, self.opened_area)

    @property
    def of_bundle(self) -> Factors:
        """What is used of the whole purchase."""
        return self.shared_by(1)

    def shared_by(self, tops: int) -> Factors:
        """What so many tops like this use of the whole purchase."""
        return Factors(tops * self.used, self.bought)


def yields(layout: Layout) -> Yields:
    """The yields of a layout from its bundle or stock."""
    bundle = layout.bundle
    rows = []
    for number in bundle.numbers:
        own = [piece for piece in layout.pieces if piece.leaf == number]
        used = math.fsum(piece.area for piece in own) * MM2
        cut = math.fsum(edges.area(piece.blank_edge) for piece in own) * MM2
        positions = tuple(piece.position for piece in own)
        rows.append(LeafYield(number, full_area(bundle, number), used, cut, positions))
    return Yields(tuple(rows), layout.top.area * MM2)


def full_area(bundle: Leaves, number: int) -> float:
    """m2 of the rectangle round a leaf."""
    width, length = measures(bundle.usable(number))
    return width * length * MM2


# --- cost ---------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Price:
    """So much money `per` bundle, leaf, m2 or sq ft of veneer."""

    amount: float
    per: str = PER[0]
    currency: str = ""

    def __post_init__(self) -> None:
        choice(marked("what the price is for"), self.per, PER)
        amount = finite(marked("price"), self.amount)
        if not 0.0 <= amount <= DEAREST:
            raise VeneerError(
                "out-of-range", "The price cannot be {value}; give a number from 0 to {most}.",
                value=amount, most=DEAREST,
            )  # fmt: skip
        object.__setattr__(self, "amount", amount)

    @staticmethod
    def of(particulars: Particulars) -> Price | None:
        """That of a bundle whose cost is known."""
        if particulars.cost is None:
            return None
        return Price(particulars.cost, "bundle", particulars.currency)

    def of_leaves(self, areas: Sequence[float], bundle: float) -> float:
        """What leaves of these areas (m2) cost, of a bundle of so many m2."""
        area = math.fsum(areas)
        rates = {"bundle": self.amount * area / bundle, "leaf": self.amount * len(areas)}
        rates |= {"m2": self.amount * area, "sq ft": self.amount * area / SQUARE_FOOT}
        return rates[self.per]


@dataclass(frozen=True)
class Cost:
    """Veneer of one top: `bundle`, what the whole purchase costs; `opened`, the leaves that are cut
    into; `per_top`, the purchase shared by all tops that are made of it. `top` is the area of one
    finished top, m2."""

    price: Price
    bundle: float
    opened: float
    tops: int
    top: float

    @property
    def per_top(self) -> float:
        return self.bundle / self.tops

    def per_m2(self, amount: float) -> float:
        """An amount for each m2 of finished top."""
        return amount / self.top

    def per_sq_ft(self, amount: float) -> float:
        return amount / self.top * SQUARE_FOOT


def cost(found: Yields, price: Price, tops: int = 1) -> Cost:
    """What the veneer of a top costs. `tops`: how many such tops are made of the bundle."""
    tops = whole(marked("number of tops"), tops, 1, MOST_TOPS)
    every = [one.full for one in found.leaves]
    opened = [one.full for one in found.opened]
    area = math.fsum(every)
    return Cost(
        price, price.of_leaves(every, area), price.of_leaves(opened, area), tops, found.top
    )  # fmt: skip
