# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whatever is asked of the public functions, what cannot be is refused in one sentence."""

from __future__ import annotations

import itertools

import numpy as np
import pytest

from veneerwb.core import (
    Border,
    BuildUp,
    Climate,
    Coefficients,
    Core,
    Crossband,
    Disc,
    Lipping,
    Radial,
    Show,
    Star,
    Stock,
    Top,
    VeneerError,
    buildup_findings,
    check,
    end,
    movement,
    quarters,
    radial,
    rings,
    side,
)
from veneerwb.core.outlines.curves import EllipseArc
from veneerwb.core.outlines.edge import Arc, Line

STOCK, ROUND = Stock(900.0, 3000.0, 30, 0.6), Top.round(800.0)
ODD = (
    float("nan"), float("inf"), -1, 1e9, 10**400, "x", "", None, [], [1, 2], {}, object(),
    np.array([1, 2, 3]), itertools.count(1), range(10**9),
)  # fmt: skip
MATCHES = {
    radial: ("ways", "turn", "placement", "first", "order", "turned", "rim", "start", "oversize",
             "strips", "centre", "disc"),
    side: ("turn", "face", "count", "width", "placement", "first", "order", "turned", "seed",
           "grain", "oversize"),
    end: ("kind", "count", "width", "placement", "first", "order", "rows", "turned", "grain",
          "oversize"),
    quarters: ("kind", "turn", "slant", "strip", "corners", "placement", "first", "order",
               "turned", "oversize"),
    rings: ("inner", "outer", "within"),
}  # fmt: skip


@pytest.mark.parametrize(
    ("match", "name"), [(match, name) for match, names in MATCHES.items() for name in names]
)
def test_a_match_is_laid_or_refused_in_words(match, name):
    refused = 0
    for value in ODD:
        ways = {"ways": 8} if match is radial else {}
        try:
            match(STOCK, ROUND, **{**ways, name: value})
        except VeneerError as error:
            refused += 1
            assert len(str(error)) < 250
    assert refused >= 5


OUTLINES = [
    None, 5, [5], [None], ["x"],
    [Line((None, 0), (1, 1))], [Line(("a", 0), (1, 1))], [Arc(None, 5.0, 0.0, 360.0)],
    [Line((0, 0, 0), (100, 0, 0)), Line((100, 0, 0), (0, 100, 0)), Line((0, 100, 0), (0, 0, 0))],
    [Arc((0.0, 0.0), 500.0, 0.0, 1e9)], [Arc((0.0, 0.0), 500.0, 0.0, -720.0)],
    [EllipseArc((0.0, 0.0), 500.0, 300.0, 0.0, 0.0, 1e9)],
]  # fmt: skip


@pytest.mark.parametrize("edge", OUTLINES, ids=range(len(OUTLINES)))
def test_what_is_no_outline_is_refused_in_words(edge):
    with pytest.raises(VeneerError):
        Top.of_edges(edge)
    if edge is not None:
        with pytest.raises(VeneerError):
            Top.of_edges(ROUND.edge, edge if edge == 5 else [edge])


def test_a_top_grows_and_scales_by_plain_numbers_only():
    for value in (*ODD[:3], 1e9, "x", None, []):
        with pytest.raises(VeneerError):
            ROUND.scaled(value)
    for value in (float("nan"), 1e9, -1e9, "x", None):
        with pytest.raises(VeneerError):
            Top.oval(900.0, 500.0).grown(value)
    assert ROUND.scaled("0.5").size == 400.0


PLAIN = {"show": Show(0.6), "core": Core(18.0)}


@pytest.mark.parametrize("name", [
    "show", "core", "backer", "crossband_above", "crossband_below", "lipping", "border",
    "stringing", "inlay",
])  # fmt: skip
def test_a_build_up_takes_only_parts_of_their_kind(name):
    needed = name in PLAIN
    odd = [value for value in ODD if value is not None or needed]
    for value in [*odd, Show(0.6) if name != "show" else Core(18.0)]:
        with pytest.raises(VeneerError) as refused:
            BuildUp(**{**PLAIN, name: value})
        assert refused.value.code == "no-part"
        assert ("leave it out" in str(refused.value)) is not needed


def test_numbers_given_as_text_are_numbers():
    panel = BuildUp(
        Show(0.6, grain="30"), Core(18.0, grain="45"), crossband_above=Crossband(1.0, grain="90"),
        border=Border("60"), inlay=Star(8, 100.0, 40.0, turn="90", grain="200"),
    )  # fmt: skip
    grains = {part.item: part.grain for part in panel.parts(Top.square(800.0))}
    assert grains["core"] == 45.0 and grains["inlay"] == 20.0
    assert Disc(50.0, None, "10") == Disc(50.0, "", 10.0)
    assert movement(100.0, "0.002", "8", 10) == pytest.approx(0.4)
    assert Coefficients("0.001", "0.002").across() == 0.002


def test_climates_and_coefficients_are_asked_for_by_name():
    panel = BuildUp(Show(0.6), Core(18.0, "oak, red", kind="solid wood"))
    for value in (5, "x", (), [Climate(20.0, 50.0)], (20.0, 50.0)):
        with pytest.raises(VeneerError) as refused:
            buildup_findings(panel, ROUND, value)
        assert refused.value.code == "no-climates"
    assert buildup_findings(panel, ROUND, [Climate(20.0, 50.0), Climate(20.0, 30.0)])
    for part in (lambda: Core(18.0, moves=0.002), lambda: Lipping(5.0, moves="oak")):
        with pytest.raises(VeneerError) as refused:
            part()
        assert refused.value.code == "no-coefficients"


def test_a_border_in_one_is_advised_to_be_parted():
    panel = BuildUp(**PLAIN, border=Border(60.0, kind="following"))
    (found,) = (f for f in buildup_findings(panel, ROUND) if f.code == "border-in-one")
    assert found.remedy.startswith("Part it in segments")


def test_a_check_takes_plain_numbers_only():
    layout = side(STOCK, ROUND)
    for name in ("margin", "spares"):
        for value in (float("nan"), -1, "x", None, []):
            with pytest.raises(VeneerError):
                check(layout, **{name: value})


def test_an_outer_band_for_which_no_leaf_is_left_is_refused():
    for inner in (24, Radial(8, first=17)):
        with pytest.raises(VeneerError) as refused:
            rings(Stock(900.0, 3000.0, 24, 0.6), ROUND, inner, 8)
        assert "none is left for the outer band" in str(refused.value)
