# SPDX-License-Identifier: LGPL-2.1-or-later
"""How wood moves: moisture from the air, and the change of size that a change of moisture brings.

Figures of the Wood Handbook (Forest Products Laboratory, FPL-GTR-190, 2010) for wood that is free
to move. Veneer that is glued down is not: see HELD.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import choice, finite, positive
from veneerwb.words import figure, marked, word

HELD = marked(
    "Glued veneer is held by its ground: this is the movement of free wood, not the gap of a joint."
)
DRIEST, WETTEST = 6.0, 14.0
"""Moisture in % between which the coefficients hold (Wood Handbook, Eq. 13-2)."""
COLDEST, HOTTEST = 0.0, 60.0
"""Degrees C: rooms, and the hottest figure that `moisture_in` was compared with (140 F)."""
DAMPEST = 95.0
"""% relative humidity: above it wood nears saturation and no workshop is fit for veneer."""
LARGEST = 0.01
"""Per % of moisture: over twice any coefficient of the table; larger numbers are slips of the
keyboard."""
SAWN = ("plain", "quarter")


@dataclass(frozen=True)
class Coefficients:
    """Change of size for each % of moisture, as a share of the size: `radial` across the rings,
    `tangential` along them. Along the grain wood hardly moves and this tool takes it as still."""

    radial: float
    tangential: float

    def __post_init__(self) -> None:
        names = {
            "radial": marked("radial coefficient"),
            "tangential": marked("tangential coefficient"),
        }
        for name, called in names.items():
            value = finite(called, getattr(self, name))
            if not 0.0 < value <= LARGEST:
                raise VeneerError(
                    "out-of-range",
                    "The {name} cannot be {shown}; give more than 0 and at most {most} for each % "
                    "of moisture.",
                    name=word(called), shown=figure(value, "g"), most=figure(LARGEST, "g"),
                )  # fmt: skip
            object.__setattr__(self, name, value)

    def across(self, sawn: str = "plain") -> float:
        """That of a board's width: of plain-sawn ones tangential, of quarter-sawn ones radial."""
        return self.tangential if choice("sawing", sawn, SAWN) == "plain" else self.radial


SPECIES = {
    marked("alder, red"): Coefficients(0.00151, 0.00256),
    marked("ash, white"): Coefficients(0.00169, 0.00274),
    marked("beech, American"): Coefficients(0.00190, 0.00431),
    marked("birch, yellow"): Coefficients(0.00256, 0.00338),
    marked("cherry, black"): Coefficients(0.00126, 0.00248),
    marked("elm, American"): Coefficients(0.00144, 0.00338),
    marked("maple, sugar"): Coefficients(0.00165, 0.00353),
    marked("oak, red"): Coefficients(0.00158, 0.00369),
    marked("oak, white"): Coefficients(0.00180, 0.00365),
    marked("sweetgum"): Coefficients(0.00183, 0.00365),
    marked("sycamore"): Coefficients(0.00172, 0.00296),
    marked("walnut, black"): Coefficients(0.00190, 0.00274),
}
"""Wood Handbook (FPL-GTR-190, 2010), Table 13-5."""


def coefficients(species: str) -> Coefficients:
    """Those of a species of the table: "oak, white", "White oak", or by its name in the language
    spoken; VeneerError where it has none."""
    asked = words(species)
    called = {words(word(name)): known for name, known in SPECIES.items()}
    found = _BY_WORDS.get(asked) or called.get(asked)
    if found is None:
        raise VeneerError(
            "unknown-species",
            "How much {species!r:.40} moves is not known here; give coefficients of your own or "
            "one of these: {known}.",
            species=str(species),
            known="; ".join(map(word, SPECIES)),
        )
    return found


def words(species: str) -> frozenset[str]:
    """The words of a wood's name, in any order and case: "Black walnut" is "walnut, black"."""
    return frozenset(str(species).lower().replace(",", " ").split())


_BY_WORDS = {words(name): known for name, known in SPECIES.items()}


@dataclass(frozen=True)
class Climate:
    """Air that wood settles in: `temperature` in degrees C, relative `humidity` in %."""

    temperature: float
    humidity: float

    def __post_init__(self) -> None:
        moisture_in(self.temperature, self.humidity)

    @property
    def moisture(self) -> float:
        """The moisture in % at which wood comes to rest in it."""
        return moisture_in(self.temperature, self.humidity)


def moisture_in(temperature: float, humidity: float) -> float:
    """The moisture in % (of the dry mass) at which wood comes to rest in air of `temperature`
    (degrees C) and relative `humidity` (%).

    Simpson, FPL-RN-0268 (1998); it gives Table 4-2 of the Wood Handbook within 0.06 at 70 F.
    """
    t = _between(marked("temperature"), temperature, COLDEST, HOTTEST, word("degrees C"))
    h = _between(marked("relative humidity"), humidity, 0.0, DAMPEST, "%") / 100.0
    water = 349.0 + 1.29 * t + 0.0135 * t**2
    k = 0.805 + 0.000736 * t - 0.00000273 * t**2
    k1 = 6.27 - 0.00938 * t - 0.000303 * t**2
    k2 = 1.91 + 0.0407 * t - 0.000293 * t**2
    kh = k * h
    second = k1 * k2 * kh**2
    return 1800.0 / water * (kh / (1.0 - kh) + (k1 * kh + 2.0 * second) / (1.0 + k1 * kh + second))


def movement(size: float, coefficient: float, before: float, after: float) -> float:
    """By how many mm a `size` across the grain grows (shrinks: below 0) from moisture `before` to
    `after` (%): dD = D C (M2 - M1), Wood Handbook, Eq. 13-2. It holds from DRIEST to WETTEST;
    `beyond` tells."""
    share = finite("coefficient", coefficient)
    return positive("size", size) * share * (_moisture(after) - _moisture(before))


def beyond(*moistures: float) -> Iterator[float]:
    """Those moistures in % that lie where the coefficients no longer hold."""
    return (m for m in moistures if not DRIEST <= m <= WETTEST)


def _moisture(value: float) -> float:
    return _between(marked("moisture"), value, 0.0, 30.0, "%")


def _between(name: str, value: float, least: float, most: float, unit: str) -> float:
    number = finite(name, value)
    if not least <= number <= most:
        raise VeneerError(
            "out-of-range",
            "The {name} cannot be {value} {unit}; give a number from {least} to {most}.",
            name=word(name), value=number, unit=unit, least=least, most=most,
        )  # fmt: skip
    return number
