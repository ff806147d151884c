# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pressure in the units of gauges, and that of the air.

1 psi is 4.4482216152605 N on 645.16 mm2, by the definitions of pound, inch and standard gravity;
1 inHg is 25.4 mm of mercury of 13 595.1 kg/m3 under 9.80665 m/s2 (the conventional one, at 0
degrees C).
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import choice, finite
from veneerwb.words import figure, marked

_PSI = 4.4482216152605 / 0.64516
KPA: Mapping[str, float] = MappingProxyType(
    {
        "kPa": 1.0,
        "bar": 100.0,
        "MPa": 1000.0,
        "psi": _PSI,
        "inHg": 13.5951 * 9.80665 * 0.0254,
        "lb/ft2": _PSI / 144.0,
    }
)
"""kPa in one of each unit."""
UNITS = tuple(KPA)
DECIMALS: Mapping[str, int] = MappingProxyType(
    {"kPa": 0, "bar": 2, "MPa": 3, "psi": 1, "inHg": 1, "lb/ft2": 0}
)
SEA_LEVEL = 101.325
"""kPa: the standard atmosphere."""
HIGHEST = 5000.0
"""m: no workshop lies higher; larger numbers are slips of the keyboard."""
MOST = 1e5
"""kPa: ten times the hydraulics of any veneer press."""


def kpa(value: float, unit: str) -> float:
    """A pressure in kPa; VeneerError for a unit that is none, or no pressure."""
    return pressure(value) * KPA[choice(marked("unit of pressure"), unit, UNITS)]


def in_unit(value: float, unit: str) -> float:
    """kPa in a unit."""
    return value / KPA[choice(marked("unit of pressure"), unit, UNITS)]


def written(value: float, unit: str) -> str:
    """kPa as a gauge of that unit shows it: 84 kPa, 12.2 psi."""
    return f"{figure(in_unit(value, unit), f'.{DECIMALS[unit]}f')} {unit}"


def pressure(value: float) -> float:
    """A pressure from 0 to MOST; else VeneerError."""
    number = finite(marked("pressure"), value)
    if not 0.0 <= number <= MOST:
        raise VeneerError(
            "out-of-range", "The pressure cannot be {value}; give a number from 0 to {most}.",
            value=number, most=MOST,
        )  # fmt: skip
    return number


def of_the_air(altitude: float) -> float:
    """kPa of the standard air so many m above the sea: P0 (1 - h / 44330.8)^5.255876, 288.15 K over
    6.5 K a km (U.S. Standard Atmosphere, 1976, up to 11 km). Weather moves it by a few per cent."""
    height = finite(marked("altitude"), altitude)
    if not -500.0 <= height <= HIGHEST:
        raise VeneerError(
            "out-of-range",
            "The altitude cannot be {value} m; give a number from -500 to {most}.",
            value=height,
            most=HIGHEST,
        )
    return SEA_LEVEL * (1.0 - 6.5e-3 * height / 288.15) ** 5.255876
