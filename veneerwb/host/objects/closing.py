# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closing: how the ring of a radial match closes, before it is cut and after."""

from __future__ import annotations

from typing import Any

from veneerwb.host import settings
from veneerwb.host.objects.base import (
    OUT,
    Property,
    Proxy,
    Refused,
    added,
    give,
    kind_of,
    set_if_new,
)
from veneerwb.words import word

READINGS = ("nothing yet", "each wedge", "halves", "gaps")
HOWS = ("both ends", "one end", "quarters")


class Closing(Proxy):
    """What the shop knows of the errors of its cutting, and what it measured; it changes nothing in
    the match. An empty reading is 0."""

    kind = "Closing"
    properties = (
        Property("Link", "Match", "Closing", "The radial match whose ring is to close"),
        Property("Angle", "TemplateError", "Before cutting",
                 "Standard error of the template's angle, the same in every wedge of one stack",
                 0.03),
        Property("Angle", "PieceError", "Before cutting",
                 "Standard error of each wedge for itself: knife, lean, edge", 0.05),
        Property("Enumeration", "Confidence", "Before cutting",
                 "How sure it is to be that truing suffices", ("95 %", "99 %")),
        Property("Angle", "WedgesTo", "Before cutting",
                 "Standard error of the measured wedges by which the diameter is chosen; 0: it is "
                 "fixed beforehand", 0.0),
        Property("Length", "Base", "Before cutting",
                 "Length of the base that the template is set out over; 0: as the seams want", 0.0),
        Property("Integer", "TrialCount", "Before cutting",
                 "Wedges of a test cut by the template as it is set; 0: none was made. The "
                 "template's error then comes from it", 0),
        Property("Angle", "TrialSum", "Before cutting",
                 "What the wedges of the test cut make, laid tip to tip", 0.0),
        Property("Angle", "TrialUnsure", "Before cutting",
                 "Standard error of that", 0.05),
        Property("Bool", "MoistureKnown", "Moisture",
                 "The veneer's moisture is known when it is photographed, cut and taped", False),
        Property("Float", "Photographed", "Moisture", "Moisture in % when photographed", 9.0),
        Property("Float", "WhenCut", "Moisture", "Moisture in % when cut", 9.0),
        Property("Float", "WhenTaped", "Moisture", "Moisture in % when taped", 9.0),
        Property("Float", "MoistureUnsure", "Moisture",
                 "Standard error in % of the change from cut to taping", 0.5),
        Property("String", "Moves", "Moisture",
                 "The wood by name, or its change of width for each % of moisture; empty: the wood "
                 "of the bundle", ""),
        Property("Enumeration", "Sawn", "Moisture", "How the leaves were cut from the log",
                 ("plain", "quarter")),
        Property("Enumeration", "Reading", "After cutting", "What was measured", READINGS),
        Property("Integer", "FirstPiece", "After cutting",
                 "The piece that begins the first of two measured halves", 1),
        Property("Angle", "Common", "After cutting",
                 "The protractor's own standard error, alike in all readings", 0.0),
        Property("FloatList", "Wedges", "After cutting", "Angle of each wedge, degrees", []),
        Property("FloatList", "WedgesUnsure", "After cutting", "Their standard error", []),
        Property("FloatList", "Halves", "After cutting", "Angle of both halves, degrees", []),
        Property("FloatList", "HalvesUnsure", "After cutting", "Their standard error", []),
        Property("FloatList", "Gaps", "After cutting",
                 "Gap in mm under a straightedge on each half: at the tip; less than 0: at an end",
                 []),
        Property("FloatList", "GapsAt", "After cutting",
                 "How far from the tip it rests or gapes, mm", []),
        Property("FloatList", "GapsUnsure", "After cutting", "Standard error of the gaps, mm", []),
        Property("Distance", "Shifted", "After cutting",
                 "By how much all edges are out alike, square to them; less than 0: in", 0.0),
        Property("Enumeration", "How", "After cutting", "How the ring is trued", HOWS),
        Property("Float", "Over", "Result", "The least over to cut every wedge, degrees", 0.0, OUT),
        Property("Float", "CutTo", "Result", "The angle that the template gets, degrees", 0.0, OUT),
        Property("Float", "Claimed", "Result",
                 "The share of rings that truing then suffices for", 0.0, OUT),
        Property("Bool", "TemplateStays", "Result",
                 "Whether the test cut says that the template will do as it is", False, OUT),
        Property("IntegerList", "NoRoom", "Result",
                 "Leaves that have no room for wedges of the advised angle", [], OUT),
        Property("Integer", "Missing", "Result", "How many readings are missing", 0, OUT),
        Property("Float", "Error", "Result", "Degrees that the measured ring is over 360", 0.0,
                 OUT),
        Property("Integer", "Diameter", "Result",
                 "The piece before which the diameter to leave open begins; 0: none is known", 0,
                 OUT),
        Property("String", "Revision", "Result", "A mark that changes with all of this", "", OUT),
    )  # fmt: skip

    def update(self, obj: Any) -> None:
        from veneerwb.host import closing

        if kind_of(obj.Match) != "Match":
            raise Refused(word("It belongs to no match; link it to a radial one, or delete it."))
        found = closing.closing_of(obj)
        before, after = found.before, found.after
        over = before.least.over
        set_if_new(
            obj,
            Over=over.degrees,
            CutTo=over.cut,
            Claimed=before.advised.over.claimed,
            TemplateStays=before.stays,
            NoRoom=list(before.no_room),
            Missing=closing.missing(obj, found.ring.ways),
            Error=after.error if after else 0.0,
            Diameter=after.best.first if after and after.diameters else 0,
            Revision=closing.revision(found),
        )


def add_closing(doc: Any, match: Any, **properties: Any) -> Any:
    """A Closing of a Match, with the properties given, else as the user has set. Recompute to see
    it."""
    from veneerwb.host.objects.bench import follow_closings

    with added(doc, "App", Closing) as obj:
        obj.Label = "Closing"
        obj.Match = match
        give(obj, {**settings.for_closing(), **properties})
        follow_closings(match)
    return obj


def closings_of(match: Any) -> list[Any]:
    """The Closing objects of a Match, the oldest first."""
    mine = {
        one.Name: one for one in match.InList if kind_of(one) == "Closing" and one.Match == match
    }
    return sorted(mine.values(), key=lambda one: one.ID)


def closing_of(obj: Any) -> Any:
    """The veneerwb.core.shop.closing.Closing of a Closing object. Raises VeneerError where execute
    would refuse."""
    from veneerwb.host import closing

    return closing.closing_of(obj)
