# SPDX-License-Identifier: LGPL-2.1-or-later
"""Kept spot: where on the leaves a match may be cut, kept by name with the picture of the top."""

from __future__ import annotations

from typing import Any

from veneerwb.host.objects.base import (
    OUT,
    SECRET,
    Property,
    Proxy,
    Refused,
    added,
    give,
    kind_of,
    set_if_new,
)
from veneerwb.words import word


class Spot(Proxy):
    """A spot of a match, and what goes with it: how many ways, which leaves. It changes nothing in
    the match until one goes there. It hangs on the match, so that what the leaves show is compared
    with its picture whenever the match is recomputed."""

    kind = "Spot"
    properties = (
        Property("Link", "Match", "Spot", "The match that would be cut here"),
        Property("Distance", "TipX", "Spot", "Where the wedges' tip lies, across the leaf", 0.0),
        Property("Distance", "TipY", "Spot", "Where the wedges' tip lies, along the grain", 0.0),
        Property("Angle", "Axis", "Spot", "Which way the axis points; 90 is along the grain", 90.0),
        Property("Integer", "Ways", "Spot", "How many wedges meet at the centre", 8),
        Property("Enumeration", "Turn", "Spot", "Book or slip", ("book", "slip")),
        Property("Enumeration", "Turned", "Spot", "Which positions show their leaf's back",
                 ("auto", "odd", "even", "none", "all")),
        Property("Integer", "First", "Spot", "The first leaf that is used", 1),
        Property("String", "Order", "Spot", "As in a match", "sequence"),
        Property("FileIncluded", "Picture", "Spot", "The top as it looked when the spot was kept"),
        Property("FloatList", "Measures", "Spot",
                 "Colour change, grain change, seams and closing seam as they were measured; empty "
                 "if they were not", [], OUT),
        Property("Bool", "Old", "Result",
                 "The leaves or the top have changed since the picture was made", False, OUT),
        Property("String", "PictureMark", "Result", "What the picture was made from", "", SECRET),
    )  # fmt: skip

    def onDocumentRestored(self, obj: Any) -> None:
        from veneerwb.host.objects.leaf import part_from_copies

        super().onDocumentRestored(obj)
        part_from_copies(obj, "Picture")

    def update(self, obj: Any) -> None:
        from veneerwb.host import spots

        if kind_of(obj.Match) != "Match":
            raise Refused(word("This kept spot belongs to no match; link it to one, or delete it."))
        set_if_new(obj, Old=bool(obj.PictureMark) and spots.mark(obj) != obj.PictureMark)


def add_spot(doc: Any, match: Any, name: str, **properties: Any) -> Any:
    """A kept Spot of a Match by that name, with the properties given. Recompute to see it."""
    with added(doc, "App", Spot) as obj:
        obj.Label = name
        obj.Match = match
        give(obj, properties)
    return obj


def kept(match: Any) -> list[Any]:
    """The Spot objects of a Match, in the order in which they were kept."""
    mine = {one.Name: one for one in match.InList if kind_of(one) == "Spot" and one.Match == match}
    return sorted(mine.values(), key=lambda one: one.ID)
