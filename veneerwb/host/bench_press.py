# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bench says of press, adhesive and price."""

from __future__ import annotations

from typing import Any

from veneerwb.core.shop import cost as costs
from veneerwb.core.shop.press import day as presses
from veneerwb.core.shop.press.units import kpa
from veneerwb.host.bench import AtBench


def press_day(there: AtBench) -> presses.PressDay:
    """Press day as a bench has it."""
    bench = there.bench
    built = there.built
    return presses.press_day(
        there.layout, adhesive_of(bench), press_of(bench), bench.PressMargin.Value,
        thickness=bench.PressThickness.Value,
        build_up=built.build_up if built else None, panel=built.top if built else None,
    )  # fmt: skip


def adhesive_of(bench: Any) -> presses.Adhesive:
    """What was entered from the adhesive's sheet; 0 is what nobody looked up."""
    asked = kpa(bench.Pressure, bench.Gauge) if bench.Pressure else None
    return presses.Adhesive(
        bench.Adhesive, asked, bench.OpenTime or None, bench.PressTime or None,
        bench.Spread or None,
    )  # fmt: skip


def press_of(bench: Any) -> presses.Platen | presses.Bag | None:
    """The press or bag of a bench."""
    most = kpa(bench.MostPressure, bench.Gauge) if bench.MostPressure else None
    wide, long = bench.PressWidth.Value, bench.PressLength.Value
    if bench.Press == "press":
        return presses.Platen(wide, long, bench.Rams, bench.RamDiameter.Value, most)
    if bench.Press == "vacuum bag":
        return presses.Bag(wide, long, most, bench.Altitude)
    return None


def price_of(there: AtBench) -> costs.Price | None:
    """The price of the veneer: the bench's, or that of the bundle's particulars."""
    bench, bundle = there.bench, there.match.Bundle
    if bench.Price:
        return costs.Price(bench.Price, bench.PricePer, bench.Currency)
    if getattr(bundle, "Cost", 0.0):
        return costs.Price(bundle.Cost, "bundle", bundle.Currency)
    return None
