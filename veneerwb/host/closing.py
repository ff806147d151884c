# SPDX-License-Identifier: LGPL-2.1-or-later
"""The closing of a match's ring: the core's value from a Closing object's properties."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Closing,
    Errors,
    Gap,
    Measured,
    Moisture,
    Ring,
    Trial,
    broken_of,
)
from veneerwb.core.shop.closing.over import hows
from veneerwb.core.wood import coefficients
from veneerwb.host import solids

CONFIDENCES = {"95 %": 0.95, "99 %": 0.99}


def closing_of(obj: Any) -> Closing:
    """That of a Closing object. Raises VeneerError, or Refused, where execute would refuse."""
    from veneerwb.host.objects.match import layout

    laid = layout(obj.Match)
    before = Before(
        laid,
        Errors(obj.TemplateError.Value, obj.PieceError.Value, moisture_of(obj, laid)),
        CONFIDENCES[obj.Confidence],
        obj.WedgesTo.Value or None,
        obj.Base.Value,
        trial=trial_of(obj),
    )
    ring = before.ring
    return Closing(before, measured_of(obj, ring, broken_of(laid)), obj.Shifted.Value)


def trial_of(obj: Any) -> Trial | None:
    """The test cut, where there was one and its sum is there."""
    if obj.TrialCount < 1 or obj.TrialSum.Value <= 0.0:
        return None
    made = Angle(obj.TrialSum.Value, obj.TrialUnsure.Value)
    return Trial(obj.TrialCount, made, made.value / obj.TrialCount, obj.PieceError.Value)


def moisture_of(obj: Any, laid: Layout) -> Moisture | None:
    """The moisture, where it is known; the grain as it lies in the wedges."""
    if not obj.MoistureKnown:
        return None
    Ring.of(laid)  # or there is no axis
    place = laid.recipe.placement
    grain = math.remainder(90.0 - place.angle, 180.0) if place is not None else 0.0
    return Moisture(
        obj.Photographed, obj.WhenCut, obj.WhenTaped, coefficient_of(obj), obj.MoistureUnsure, grain
    )


def coefficient_of(obj: Any) -> float:
    """How the veneer moves across its width: a number, a wood of the table, or the bundle's."""
    text = obj.Moves.strip() or getattr(obj.Match.Bundle, "Species", "").strip()
    if not text:
        raise VeneerError(
            "no-wood",
            "Say which wood it is, or how it moves: a number such as 0.0027, the change of width "
            "for each % of moisture.",
        )
    try:
        return float(text.replace(",", "."))
    except ValueError:
        return coefficients(text).across(obj.Sawn)


# --- what was measured --------------------------------------------------------------------------


def measured_of(obj: Any, ring: Ring, broken: tuple[float, ...] = ()) -> Measured | None:
    """The ring as measured, with how much its diameters are broken already; None while readings are
    missing."""
    if obj.Reading == "nothing yet" or missing(obj, ring.ways):
        return None
    how = obj.How if obj.How in hows(ring.ways) else hows(ring.ways)[0]
    common = obj.Common.Value
    if obj.Reading == "each wedge":
        wedges = _angles(obj.Wedges, obj.WedgesUnsure)
        return Measured(ring, wedges=wedges, common=common, how=how, broken=broken)
    if obj.Reading == "halves":
        halves = _angles(obj.Halves, obj.HalvesUnsure)
    else:
        halves = tuple(
            Gap(abs(gap), far, "end" if gap < 0.0 else "tip", unsure).half
            for gap, far, unsure in zip(obj.Gaps, obj.GapsAt, obj.GapsUnsure)
        )
        common = 0.0  # a rule is no protractor
    first = first_of(obj, ring.ways)
    return Measured(ring, halves=halves, first=first, common=common, how=how, broken=broken)


def _angles(values: Sequence[float], unsure: Sequence[float]) -> tuple[Angle, ...]:
    return tuple(map(Angle, values, unsure))


def first_of(obj: Any, ways: int) -> int:
    """The piece that begins the first half."""
    return (obj.FirstPiece - 1) % ways + 1


def wanted(obj: Any, ways: int) -> int:
    """How many readings there are to be."""
    return {"nothing yet": 0, "each wedge": ways}.get(obj.Reading, 2)


def missing(obj: Any, ways: int) -> int:
    """How many readings are missing; less than 0: there are more than pieces."""
    count = wanted(obj, ways)
    if obj.Reading == "each wedge":
        given = len(obj.Wedges)
        return count - (given if given > count else sum(value > 0.0 for value in obj.Wedges))
    if obj.Reading == "halves":
        return count - sum(value > 0.0 for value in obj.Halves[:count])
    return count - sum(far > 0.0 for far in obj.GapsAt[:count])


def revision(closing: Closing) -> str:
    """A mark that changes with the layout and with all that its closing rests on."""
    before, after = closing.before, closing.after
    rests = (before.errors, before.confidence, before.measured, before.base, before.trial)
    seen = (after.readings, after.first, after.common, after.how) if after else ()
    return solids.mark(closing.layout.revision, rests, seen, closing.shifted)
