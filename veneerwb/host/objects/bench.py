# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bench: how a match goes to the bench, and the sheets that go with it."""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat, settings
from veneerwb.host.objects import names
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
from veneerwb.words import marked, word

GAUGES = ("kPa", "bar", "MPa", "psi", "inHg", "lb/ft2")
PER = ("bundle", "leaf", "m2", "sq ft")
OTHER_HOST = marked("it was laid out by another version of FreeCAD; refresh the sheets.")


class Bench(Proxy):
    """What the shop says of its paper, its units and its ways of working. The sheets are the
    host's own pages, made and refreshed by `host.bench.refresh`; until then, pages that show what
    is no longer so say it."""

    kind = "Bench"
    properties = (
        Property("Link", "Match", "Bench", "The match that goes to the bench"),
        Property("LinkList", "Together", "Bench", "Other matches that are cut from the same stack"),
        # --- sheets
        Property("Enumeration", "Paper", "Sheets", "The paper of the sheets", settings.PAPERS),
        Property(
            "Enumeration", "Unit", "Sheets", "What lengths are written in", ("mm", "inch", "both")
        ),
        Property(
            "Enumeration",
            "Fraction",
            "Sheets",
            "The finest part of an inch that is written",
            ("1/32", "1/16", "1/64"),
        ),
        Property(
            "Length",
            "Base",
            "Sheets",
            "Length over which the wedge's angle is set out; 0 to have it chosen",
            0.0,
        ),
        Property("String", "Title", "Title block", "Title; empty for the match's name", ""),
        Property("String", "Number", "Title block", "Identification number of the drawing", ""),
        Property("String", "Owner", "Title block", "Whose drawing it is", ""),
        Property("String", "CreatedBy", "Title block", "Who answers for the drawing", ""),
        Property("String", "ApprovedBy", "Title block", "Who approved it", ""),
        # --- cutting: defaults of core.shop.cutting.methods, common practice
        Property(
            "Enumeration",
            "CutBy",
            "Cutting",
            "How the stack is cut: by knife in lifts, by saw in boards, by machine leaf by leaf",
            ("knife", "saw", "machine"),
        ),
        Property("Length", "Kerf", "Cutting", "What the blade takes, on the waste side", 0.0),
        Property("Angle", "Lean", "Cutting", "How far the blade may stand off square", 2.0),
        Property(
            "Length", "AtOnce", "Cutting", "Height of leaves cut at once; 0 for leaf by leaf", 2.4
        ),
        Property("Length", "Boards", "Cutting", "Thickness of each sandwich board; 0: none", 0.0),
        Property(
            "Length", "BoardsBeyond", "Cutting", "How far boards reach beyond the cuts", 100.0
        ),
        Property("Length", "PinsClear", "Cutting", "How far pins keep from every cut", 15.0),
        Property(
            "Length", "PinMargin", "Cutting", "How far pins keep from a leaf's edge and faults",
            10.0,
        ),  # fmt: skip
        # --- templates
        Property(
            "Enumeration",
            "SeamsCut",
            "Templates",
            "How much over the seams are cut: not at all, by an angle of the tip, or by a width",
            ("exact", "over by an angle", "over by a width"),
        ),
        Property("Angle", "SeamAngle", "Templates", "By what angle of the tip", 0.2),
        Property("Length", "SeamWidth", "Templates", "By what width on each seam", 1.0),
        Property(
            "Length", "Tool", "Templates", "Width of the tool that follows the line; 0: none", 0.0
        ),
        Property(
            "Enumeration", "FileUnit", "Templates", "What files for machines are in",
            ("mm", "inch"),
        ),  # fmt: skip
        Property(
            "Enumeration", "TilePaper", "Templates", "The paper that 1:1 templates are tiled on",
            settings.TILES,
        ),  # fmt: skip
        # --- taping
        Property("Bool", "FaceDown", "Taping", "The pieces are taped with their show face down"),
        Property(
            "IntegerList",
            "CloseBetween",
            "Taping",
            "Two positions whose seam is closed last; empty to have it chosen",
            [],
        ),
        # --- press
        Property(
            "Enumeration", "Press", "Press", "What presses the veneer",
            ("not said", "press", "vacuum bag"),
        ),  # fmt: skip
        Property("Length", "PressWidth", "Press", "Width of platen or bag", 0.0),
        Property("Length", "PressLength", "Press", "Length of platen or bag", 0.0),
        Property("Length", "PressMargin", "Press", "Room round the blank", 25.0),
        Property(
            "Length", "PressThickness", "Press",
            "Thickness of all that lies in it: core, veneers, cauls", 20.0,
        ),  # fmt: skip
        Property("Enumeration", "Gauge", "Press", "The unit of the gauge", GAUGES),
        Property("Integer", "Rams", "Press", "How many rams; 0 for a press without a gauge", 0),
        Property("Length", "RamDiameter", "Press", "Diameter of a ram", 0.0),
        Property(
            "Float", "MostPressure", "Press",
            "The most that gauge or pump can show, in the unit of the gauge; 0: not known", 0.0,
        ),  # fmt: skip
        Property("Float", "Altitude", "Press", "How high the shop lies above the sea, m", 0.0),
        Property("String", "Adhesive", "Press", "Name of the adhesive", ""),
        Property(
            "Float", "Pressure", "Press",
            "What the adhesive's sheet asks for, in the unit of the gauge; 0: not looked up", 0.0,
        ),  # fmt: skip
        Property(
            "Float", "OpenTime", "Press", "Open time by its sheet, minutes; 0: not looked up", 0.0
        ),
        Property(
            "Float", "PressTime", "Press", "Time in the press, minutes; 0: not looked up", 0.0
        ),
        Property("Float", "Spread", "Press", "g/m2 of a glue line; 0: not looked up", 0.0),
        # --- cost
        Property(
            "Float", "Price", "Cost", "Price of the veneer; 0: that of the bundle's particulars",
            0.0,
        ),  # fmt: skip
        Property("Enumeration", "PricePer", "Cost", "What the price is for", PER),
        Property("String", "Currency", "Cost", "The money that it is in", ""),
        Property("Integer", "Tops", "Cost", "How many such tops are made of the bundle", 1),
        # --- results
        Property("String", "Date", "Result", "When these sheets were made", "", OUT),
        Property("String", "Revision", "Result", "The mark of the layout on the sheets", "", OUT),
        Property("String", "State", "Result", "Why the sheets are to be refreshed", "", OUT),
        Property("String", "SheetMark", "Result", "What the sheets were made from", "", SECRET),
        Property("String", "HostMark", "Result", "Which host laid the sheets out", "", SECRET),
        Property(
            "LinkList", "Closings", "Result", "How the ring closes", None,
            compat.HIDDEN | compat.READ_ONLY,  # no output, so that one that goes is noticed
        ),  # fmt: skip
    )

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        names.watch()

    def onDocumentRestored(self, obj: Any) -> None:
        from veneerwb.host import shop_pages
        from veneerwb.host.sheets import host_mark

        super().onDocumentRestored(obj)
        names.watch()
        if obj.HostMark and obj.HostMark != host_mark():
            shop_pages.say_stale(obj, word(OTHER_HOST))
            set_if_new(obj, State=word(OTHER_HOST))

    def update(self, obj: Any) -> None:
        from veneerwb.host import bench, shop_pages

        if kind_of(obj.Match) != "Match":
            shop_pages.say_stale(obj, word("there is no match."))
            raise Refused(word("The bench has no match; link it to one, or delete it."))
        state = bench.why_old(obj)
        shop_pages.say_stale(obj, state)
        set_if_new(obj, State=state)


def add_bench(doc: Any, match: Any, **properties: Any) -> Any:
    """A Bench for a Match, with the properties given by name, else as the user has set;
    `host.bench.refresh` makes its sheets."""
    with added(doc, "App", Bench) as obj:
        obj.Match = match
        give(obj, {**settings.for_bench(properties), **properties})
    return obj


def follow_closings(match: Any) -> None:
    """Has the benches of a match look at all that says how its ring closes."""
    from veneerwb.host.objects.closing import closings_of

    for one in () if match is None else match.InList:
        if kind_of(one) == "Bench" and one.Match == match:
            set_if_new(one, Closings=closings_of(match))
