# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the checks know of matches and of built-up panels is said of documents too."""

import pytest

from veneerwb.host.objects import add_build_up, add_match, parts_of

OVAL = {"Top": "Oval", "Length": 1000.0, "Width": 600.0}
BOOK = {"Kind": "Side by side", "Turn": "book", "Top": "Rectangle", "Length": 1000.0,
        "Width": 600.0, "Count": 5}  # fmt: skip

OF_A_MATCH = {
    "oval-axes": ({**OVAL, "Ways": 10, "Start": 0.0}, "their number must be divisible by 4"),
    "loose-faces": (BOOK, "natural to a book match, not a defect"),
    "inner-piece": (BOOK, "Architectural Woodwork Standards, 1st ed. (2009"),
    "box-mirrors": ({"Kind": "Box", **OVAL}, "only two mitres of a box can mirror"),
    "unequal-cuts": ({"Ways": 8, **OVAL}, "The pieces differ"),
    "not-sunburst": ({"Ways": 4}, "six leaves or more"),
    "fine-tips": ({"Ways": 48}, "plan a disc at the centre"),
    "off-leaf": ({"Ways": 4, "Diameter": 1800.0}, "off the usable area"),
    "spares-missing": ({"Ways": 48, "Spares": 40}, "spare where 40 are asked for"),
    "steps": ({"Ways": 12}, "steps apart, seam by seam"),
    "closure-over": ({"Ways": 12, "WedgeAngle": 30.2}, "overlaps"),
}  # fmt: skip

SOLID = {"CoreKind": "solid wood", "CoreMaterial": "White oak", "ClimateKnown": True}
OF_A_PANEL = {
    "one-sided": ({}, "it will cup"),
    "unlike-backer": ({"BackerThickness": 1.2}, "may cup"),
    "crossband-alone": ({"CrossbandAbove": 1.0}, "one side of the core only"),
    "crossband-along": ({"CrossbandAbove": 1.0, "CrossbandBelow": 1.0, "CrossbandGrain": 10.0},
                        "does not cross it"),
    "core-moves": (SOLID, "held by its ground"),
    "lipping-moves": ({"LippingWidth": 10.0, "LippingMaterial": "black walnut",
                       "ClimateKnown": True},
                      "held by its ground"),
    "lipping-across-core": ({**SOLID, "LippingWidth": 10.0}, "or the core split"),
    "no-climates": ({**SOLID, "ClimateKnown": False}, "Say in which air"),
    "moisture-outside": ({**SOLID, "StandsHumidity": 95}, "from 6 to 14 % only"),
    "species-unknown": ({**SOLID, "CoreMaterial": "pear"}, "name one of these"),
    "short-grain": ({"BorderWidth": 40.0, "BorderKind": "following", "BorderGrain": "across"},
                    "it is short and breaks"),
    "border-in-one": ({"BorderWidth": 40.0, "BorderKind": "following"}, "a ring in one"),
    "continuous-grain": ({"BorderWidth": 40.0, "BorderKind": "following", "BorderSegments": 8},
                         "number them round the edge"),
}  # fmt: skip


@pytest.mark.parametrize("code", OF_A_MATCH)
def test_what_is_found_on_a_match_stands_in_its_findings(doc, stock, code):
    settings, words = OF_A_MATCH[code]
    match = add_match(doc, stock, **settings)
    doc.recompute()
    assert match.Message == ""
    (found,) = [one for one in match.Proxy.found if one.code == code]
    assert str(found) in match.Findings and words in str(found)


@pytest.mark.parametrize("code", OF_A_PANEL)
def test_what_is_found_on_a_panel_stands_in_its_findings(doc, stock, code):
    settings, words = OF_A_PANEL[code]
    match = add_match(doc, stock, Ways=8, Diameter=600.0)
    how = add_build_up(doc, match, BackerThickness=0.5)
    doc.recompute()
    parts = parts_of(match)
    assert code not in [one.code for one in parts.Proxy.found]
    if code == "one-sided":
        how.BackerThickness = 0.0
    for name, value in settings.items():
        setattr(how, name, value)
    doc.recompute()
    assert parts.Message == ""
    (found,) = [one for one in parts.Proxy.found if one.code == code]
    assert str(found) in parts.Findings and words in str(found)


def test_seams_on_both_axes_of_an_oval_are_found_at_4_n_ways_only(doc, stock):
    match = add_match(doc, stock, Ways=12, Start=15.0, **OVAL)
    doc.recompute()
    for ways in (10, 12, 14, 16):
        match.Ways, match.Start = ways, 180.0 / ways  # a seam along the length
        doc.recompute()
        assert ("oval-axes" in [one.code for one in match.Proxy.found]) == bool(ways % 4)


def test_what_covers_the_centre_lies_where_the_wedges_meet(doc, stock):
    """On a ring off the middle as on any other; and where a disc is let in nothing is to cover."""
    match = add_match(doc, stock, Ways=48, CentreX=100.0, HiddenDisc=60.0)
    doc.recompute()
    assert "fine-tips" not in [one.code for one in match.Proxy.found]
    match.HiddenDisc = 0.0
    doc.recompute()
    assert "fine-tips" in [one.code for one in match.Proxy.found]
    assert "Hidden" not in match.getEditorMode("HiddenDisc")
    match.DiscDiameter = 60.0
    doc.recompute()
    assert "fine-tips" not in [one.code for one in match.Proxy.found]
    assert "Hidden" in match.getEditorMode("HiddenDisc")
    match.DiscDiameter = 0.0
    assert "Hidden" not in match.getEditorMode("HiddenDisc")


def test_an_inlay_of_the_panel_hides_the_tips(doc, stock):
    match = add_match(doc, stock, Ways=48, Diameter=600.0)
    add_build_up(doc, match, Inlay="disc", InlayDiameter=80.0)
    doc.recompute()
    assert "fine-tips" not in [one.code for one in match.Proxy.found]
