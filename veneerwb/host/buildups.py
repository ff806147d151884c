# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a BuildUp object says, in the core's terms, and the panel of a match that is built so."""

from __future__ import annotations

from typing import Any

from veneerwb.core.buildup import (
    Backer,
    Border,
    BuildUp,
    Core,
    Crossband,
    Disc,
    Lipping,
    Show,
    Star,
    Stringing,
)
from veneerwb.core.errors import VeneerError
from veneerwb.core.wood import Climate, Coefficients
from veneerwb.host.objects.base import kind_of

ANY_THICKNESS = 1.0
"""mm of the show veneer where there is no match to ask for it."""


def built(match: Any) -> BuildUp | None:
    """The build-up of a Match, None where it has none; its show veneer is the match's own."""
    obj = getattr(match, "BuildUp", None)
    if kind_of(obj) != "BuildUp":
        return None
    leaves = match.Bundle
    thickness = leaves.Thickness.Value if leaves is not None else ANY_THICKNESS
    return core_build_up(obj, thickness, species(leaves))


def species(leaves: Any) -> str:
    """The wood of a Bundle or Stock object as far as it is said."""
    return getattr(leaves, "Species", "")


def core_build_up(
    obj: Any, show_thickness: float = ANY_THICKNESS, show_wood: str = ""
) -> BuildUp:
    """The core's build-up of a BuildUp object under a show veneer. Raises VeneerError."""
    above, below = (
        _given(thickness.Value, Crossband, obj.CrossbandMaterial, obj.CrossbandGrain.Value)
        for thickness in (obj.CrossbandAbove, obj.CrossbandBelow)
    )
    return BuildUp(
        Show(show_thickness, show_wood),
        Core(
            obj.CoreThickness.Value, obj.CoreMaterial, obj.CoreGrain.Value, obj.CoreKind,
            obj.CoreSawn, coefficients(obj.CoreMoves),
        ),
        _backer(obj),
        above,
        below,
        _given(
            obj.LippingWidth.Value, Lipping, obj.LippingMaterial, obj.LippingSegments,
            obj.LippingWhen, obj.LippingSawn, coefficients(obj.LippingMoves),
        ),
        _given(
            obj.BorderWidth.Value, Border, obj.BorderMaterial, obj.BorderSegments, obj.BorderKind,
            obj.BorderGrain,
        ),
        _given(obj.LineWidth.Value, Stringing, obj.LineMaterial, obj.LineSegments),
        _inlay(obj),
    )  # fmt: skip


def _given(size: float, part: Any, *rest: Any) -> Any:
    """A part of that thickness or width; 0 leaves it out."""
    return part(size, *rest) if size else None


def _backer(obj: Any) -> Backer | None:
    """Out of a bundle or stock of the document it is as thick as that, and of its wood."""
    leaves, grain = obj.BackerFrom, obj.BackerGrain.Value
    if kind_of(leaves) not in ("Bundle", "Stock"):
        return _given(obj.BackerThickness.Value, Backer, obj.BackerMaterial, grain)
    wood = species(leaves) or obj.BackerMaterial
    return Backer(leaves.Thickness.Value, wood, grain, kind_of(leaves).lower(), leaves.Label)


def _inlay(obj: Any) -> Disc | Star | None:
    material, grain = obj.InlayMaterial, obj.InlayGrain.Value
    if obj.Inlay == "disc":
        return Disc(obj.InlayDiameter.Value, material, grain)
    if obj.Inlay == "star":
        outer, inner = obj.InlayOuter.Value, obj.InlayInner.Value
        return Star(obj.InlayPoints, outer, inner, material, obj.InlayTurn.Value, grain)
    return None


def coefficients(text: str) -> Coefficients | None:
    """Those written as two numbers, radial and tangential; None for an empty text."""
    if not text.strip():
        return None
    try:
        radial, tangential = (float(one.replace(",", ".")) for one in text.split())
    except ValueError:
        raise VeneerError(
            "coefficients-unreadable",
            "The movement {text!r:.40} cannot be read; write two numbers, radial and tangential, "
            "such as 0.0019 0.00274, or nothing to go by the material's name.",
            text=text,
        ) from None
    return Coefficients(radial, tangential)


def climates(obj: Any) -> tuple[Climate, Climate] | None:
    """The air of a BuildUp object's workshop and that of its place; None where they are not
    said."""
    if not obj.ClimateKnown:
        return None
    made = Climate(obj.MadeTemperature, obj.MadeHumidity)
    return made, Climate(obj.StandsTemperature, obj.StandsHumidity)
