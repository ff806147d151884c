# SPDX-License-Identifier: LGPL-2.1-or-later
"""Do the angles close to 360: the sum, the gap at the rim, and what truing the halves costs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.plane import finite, positive, sind
from veneerwb.words import marked, word

CLOSED = 1e-9
"""Degrees: a ring whose angles miss 360 by less is closed."""


@dataclass(frozen=True)
class Closure:
    """`total` of the angles, `error` = total - 360 (degrees), `rim_gap` in mm at the reach: open +,
    overlap -."""

    total: float
    error: float
    rim_gap: float


def closure(angles: Sequence[float], reach: float) -> Closure:
    """How wedges of these angles (degrees) close at `reach` mm.

    The rim opens 2 R sin(d / 2) where the ring is d short of 360 (plane geometry). Raises
    VeneerError for an angle that is not between 0 and 360, and for an empty list.
    """
    if not len(angles):
        raise VeneerError("no-angles", "There are no angles to close; give one for each wedge.")
    values = [positive("wedge angle", angle, 360.0) for angle in angles]
    total = sum(values)
    error = total - 360.0
    gap = 2.0 * positive("reach", reach) * sind(min(180.0, abs(error) / 2.0))
    return Closure(total, error, -gap if error > 0.0 else gap)


def wedge_findings(layout: Layout, wedge_angle: float | None) -> Iterator[Finding]:
    """What a template of `wedge_angle` degrees does to a ring (nothing for other matches)."""
    if wedge_angle is None or not isinstance(layout.recipe, Radial):
        return
    ways, reach = layout.recipe.ways, layout.top.reach
    angle = finite("wedge angle", wedge_angle)
    found = closure([angle] * ways, reach)
    values = {
        "ways": ways,
        "angle": angle,
        "true_angle": 360.0 / ways,
        "total": found.total,
        "error": found.error,
        "short": -found.error,
        "rim_gap": found.rim_gap,
        "overlap": -found.rim_gap,
        "reach": reach,
    }
    if abs(found.error) <= CLOSED:
        yield Finding("closes", "note", "{ways} wedges of {angle} deg close to 360.", "", values)
    elif found.error < 0.0:
        yield _under(values)
    else:
        yield _over(values, layout.recipe.turn == "book", layout.cut_as == "own")


def _under(values: dict[str, float]) -> Finding:
    """Halves short of 180 by d lose R sin(d/2) at every tip when trued (plane geometry)."""
    template = marked(
        "{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at the "
        "rim."
    )
    costs = {}
    if values["ways"] % 2 == 0:
        template = marked(
            "{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at "
            "the rim, and truing the halves takes {tip_lost} mm off every tip."
        )
        costs["tip_lost"] = values["reach"] * sind(values["short"] / 4.0)
    return Finding(
        "closure-under",
        "stop",
        template,
        "Cut over, never under: at {true_angle} deg or a little more.",
        {**values, **costs},
    )


def _over(values: dict[str, float], book: bool, single: bool) -> Finding:
    """Halves over 180 are trimmed alike at both ends; the seams between keep the template's angle
    and so leave their places by up to the shift given (plane geometry). The wedges at the ends,
    which came from the same outline as the rest, are then narrower: a book joint there mirrors only
    where as much was taken off both sides of it. `single`: each wedge is cut by itself."""
    ways, reach = int(values["ways"]), values["reach"]
    if ways % 2:
        return Finding(
            "closure-over",
            "warn",
            "{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at "
            "the rim; the excess must be trued off before the last joint.",
            "For less truing cut nearer to {true_angle} deg, never under.",
            values,
        )
    half = ways // 2
    trim = (half * values["angle"] - 180.0) / 2.0
    shifts = [abs(k * (values["angle"] - values["true_angle"]) - trim) for k in range(1, half)]
    costs = {
        "trim": trim,
        "rim_lost": reach * sind(trim),
        "seam_shift": 2.0 * reach * sind(max(shifts) / 2.0),
    }
    said = word(
        "{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at the "
        "rim; trued along the diameter, each half loses {trim} deg at both ends ({rim_lost} mm at "
        "the rim) and the seams between lie up to {seam_shift} mm off their places."
    )
    if book:
        said += " " + word(
            "The wedges there are then unlike the rest, and their joints mirror only where both "
            "sides lose the same."
        )
    remedy = marked(
        "For less truing cut nearer to {true_angle} deg, never under, or cut single pieces, each "
        "fitted to its place."
    )
    if single:
        remedy = marked(
            "For less truing cut nearer to {true_angle} deg, never under, or fit each piece to its "
            "place as it is cut."
        )
    return Finding("closure-over", "warn", word(said), remedy, {**values, **costs})
