# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said of runs: leaves over all panels, gaps, slivers, and where two bundles meet."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import box

from veneerwb.core import Bundle, Leaf, Radial, Side, SideMatch, Stock, Top, VeneerError
from veneerwb.core.checks import trials
from veneerwb.core.photos.reading import Photo
from veneerwb.core.runs import Run, elevation, joined, run_findings

STOCK = Stock(260.0, 2600.0, 200, 0.6)


def codes(laid, **asked):
    return [finding.code for finding in run_findings(laid, **asked)]


def said(laid, code, **asked):
    (found,) = [f for f in run_findings(laid, **asked) if f.code == code]
    return found


# --- what is said ------------------------------------------------------------------------------


def test_leaves_are_counted_over_all_panels_and_spares_asked_for(doors):
    laid = Run(SideMatch(count=2)).lay(Stock(260.0, 2600.0, 12, 0.6), doors)
    assert str(said(laid, "leaves-used")).startswith(
        "note: The 5 panels take 10 leaves, 2 each; 2 stay over."
    )
    short = said(laid, "spares-missing", spares=5)
    assert short.level == "warn" and "with 3 more" in short.remedy
    assert "leaves-used" not in codes(laid, spares=5)


def test_what_a_panel_s_checks_find_is_told_once_with_its_panels(doors):
    laid = Run(SideMatch(count=1)).lay(STOCK, doors)  # 500 mm from leaves of 260 mm
    off = said(laid, "off-leaf")  # of each panel another leaf
    assert off.pieces == (1, 2, 3, 4, 5) and off.values["leaves"] == (1, 2, 3, 4, 5)
    assert str(off).startswith("stop: Panels 1-5: The blanks at position")
    short = joined(Stock(260.0, 2600.0, 4, 0.6), Stock(260.0, 600.0, 20, 0.6))
    laid = Run(SideMatch(count=2, placement=(130.0, 0.0))).lay(short, doors)
    assert said(laid, "off-leaf").pieces == (3, 4, 5)
    steps = said(Run(SideMatch(count=2)).lay(STOCK, doors), "steps")
    assert steps.text.startswith("Panels 1-5: ") and steps.pieces == (1, 2, 3, 4, 5)


def test_what_would_fit_is_sought_once_for_panels_that_are_alike(monkeypatch):
    """Their places in the plane differ, and with them the last digits of their outlines."""
    tried, pieces = [], Radial.pieces
    narrow = Stock(150.0, 1200.0, 200, 0.6)

    def counted(recipe, bundle, top):
        tried.append(recipe)
        return pieces(recipe, bundle, top)

    outlines = [Top.outline(box(x, 0.0, x + 500.0, 700.0)) for x in (0.1, 503.3, 1009.7, 1600.9)]
    laid = Run(Radial(8)).lay(narrow, elevation(outlines))
    alone = Run(Radial(8)).lay(narrow, elevation(outlines[:1]))
    monkeypatch.setattr(Radial, "pieces", counted)
    counts = []
    for one in (alone, laid):
        trials._from_any.cache_clear()
        tried.clear()
        found = said(one, "off-leaf")
        counts.append(len(tried))
        assert "fits in 18," in found.remedy and len(found.values["panels"]) == len(one.panels)
    assert counts[1] == counts[0] > 10


def test_a_gap_wider_than_a_strip_is_told_with_the_leaves_that_it_takes(wall):
    panels = wall(2, 1, 300.0, 400.0, gap=400.0)
    laid = Run(SideMatch(count=10), "blueprint", "laid through").lay(STOCK, panels)
    lost = said(laid, "gap-wider-than-leaf")
    assert lost.values["leaves"] == (4, 5, 6, 7) and "400 mm" in lost.text
    assert laid.leaves == tuple(range(1, 11))
    assert "lost" in said(laid, "gaps-laid-through").text
    closed = Run(SideMatch(count=10), "blueprint", "closed").lay(STOCK, panels)
    assert not {"gap-wider-than-leaf", "gaps-laid-through", "gap-stays"} & set(codes(closed))


def test_a_gap_that_does_not_run_through_is_told_to_stay():
    """Bricks: the upper row's gap lies over the middle of a lower panel."""
    bricks = [(0, 405, 295, 800), (305, 405, 900, 800), (0, 0, 595, 400), (605, 0, 900, 400)]
    panels = elevation([Top.outline(box(*one)) for one in bricks])
    laid = Run(SideMatch(count=5), "blueprint").lay(STOCK, panels)
    assert "gap-stays" in codes(laid) and laid.field.gaps == (5.0,)


def test_a_sliver_at_a_panel_s_edge_is_told(wall):
    laid = Run(SideMatch(count=10), "blueprint", "laid through").lay(STOCK, wall(2, gap=80.0))
    assert "sliver" not in codes(laid)
    narrow = wall(2, 1, 500.0, 700.0, gap=22.0)  # strips of 102.2 mm: 11 mm short of the gap
    laid = Run(SideMatch(width=103.0), "blueprint", "laid through").lay(STOCK, narrow)
    assert "sliver" not in codes(laid)
    uneven = elevation([Top.outline(box(0, 0, 505, 700)), Top.outline(box(505, 0, 1000, 700))])
    sliver = said(Run(SideMatch(count=10), "blueprint").lay(STOCK, uneven), "sliver")
    assert sliver.values["width"] == 5.0 and sliver.pieces == (1,) and sliver.values["a"] == 6


# --- two bundles -------------------------------------------------------------------------------


def test_a_second_bundle_s_leaves_go_on_after_a_gap():
    both = joined(Stock(260.0, 2600.0, 4, 0.6), Stock(240.0, 2500.0, 6, 0.6), missing=3)
    assert both.numbers == (1, 2, 3, 4, 8, 9, 10, 11, 12, 13)
    assert both.size == (240.0, 2500.0) and both.joint == (4, 8)
    assert both.usable(4).bounds[2] == 260.0 and both.usable(8).bounds[2] == 240.0
    with pytest.raises(VeneerError, match="0.6 mm thick and those of the second 0.9"):
        joined(STOCK, replace(STOCK, thickness=0.9))
    with pytest.raises(VeneerError, match="turn one of them over"):
        joined(STOCK, replace(STOCK, back="previous"))
    with pytest.raises(VeneerError, match="missing leaves"):
        joined(STOCK, STOCK, missing=0)


def test_photographed_bundles_keep_their_pictures_and_backs():
    def bundle(count, first, shade):
        pictures = [Photo.of(np.full((30, 20, 3), shade + k, np.uint8), 5.0) for k in range(count)]
        return Bundle(
            tuple(Leaf(first + k, Side(one)) for k, one in enumerate(pictures)), 0.6, slope=4.0
        )

    one, other = bundle(3, 1, 10), bundle(2, 7, 90)
    both = joined(one, other, missing=2)
    assert isinstance(both, Bundle) and both.numbers == (1, 2, 3, 6, 7) and both.joint == (3, 6)
    assert [both.leaf(n).photo[0, 0, 0] for n in both.numbers] == [10, 11, 12, 90, 91]
    assert both.leaf(2).side(True).source == "neighbour"
    assert both.leaf(2).side(True).image is one.leaf(3).face.image
    assert both.leaf(3).side(True).source == "own face"  # the next leaf is another log's
    assert both.leaf(6).side(True).image is other.leaf(8).face.image
    assert both.slope == 4.0 and both.wander() == one.wander()


def test_where_two_bundles_meet_on_a_panel_its_seam_and_step_are_told(doors, leaves):
    both = joined(Stock(260.0, 2600.0, 5, 0.6), STOCK, missing=4)
    laid = Run(SideMatch("slip", count=2)).lay(both, doors)
    assert leaves(laid)[2] == [5, 10]
    met = said(laid, "bundle-joint")
    assert met.level == "warn" and met.pieces == (3,)
    assert "panel 3" in met.text and "positions 1 and 2, counted as 4 missing leaves" in met.text
    assert met.values["step"] == 5 == laid.layouts[2].seams[0].step


def test_where_two_bundles_meet_between_panels_both_are_told(doors):
    both = joined(Stock(260.0, 2600.0, 4, 0.6), STOCK)
    laid = Run(SideMatch(count=2)).lay(both, doors)
    met = said(laid, "bundle-joint")
    assert met.pieces == (2, 3) and "begins with panel 3 (leaf 6), beside panel 2" in met.text
    assert "1 missing leaf." in met.text
    one = Run(SideMatch(count=2)).lay(both, doors[:2])  # the second is not reached
    assert "bundle-joint" not in codes(one)
    only = Run(SideMatch(count=2, first=6)).lay(both, doors)
    assert "bundle-joint" not in codes(only)


def test_in_a_field_every_panel_where_they_meet_is_told(wall):
    both = joined(Stock(260.0, 2600.0, 4, 0.6), STOCK)
    laid = Run(SideMatch(count=10), "blueprint", "laid through").lay(both, wall(4, 2))
    met = [f for f in run_findings(laid) if f.code == "bundle-joint"]
    assert [f.pieces for f in met] == [(2,), (6,)]
