# SPDX-License-Identifier: LGPL-2.1-or-later
"""The search under strain: it ends, it takes little memory, it tells how far it is, and what it
cannot do it says plainly."""

from __future__ import annotations

import itertools
import tracemalloc
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Polygon, box

from veneerwb.core import (
    Bundle,
    Fault,
    Placement,
    Stock,
    Top,
    VeneerError,
    find_placements,
    largest_tops,
    sawn_bundle,
)
from veneerwb.core.appeal import Stopped, maps_of, weighed
from veneerwb.core.matches.radial import Radial
from veneerwb.core.raster import Frame
from veneerwb.core.search import find, searched
from veneerwb.core.search.room import room_of
from veneerwb.core.search.sweep import Sweep, swept
from veneerwb.core.search.task import Task
from veneerwb.core.shop.room import ROOM
from veneerwb.core.yields import nowhere
from veneerwb.core.yields.packing import _Packing
from veneerwb.core.yields.places import Places

TOP = Top.round(300)


def log_of(figure: str, leaves: int, **more) -> Bundle:
    return sawn_bundle(leaves=leaves, figure=figure, **more)


@pytest.fixture(scope="module")
def cathedral() -> Bundle:
    return log_of("cathedral", 8, width=240.0, length=400.0, mm_per_px=2.0)


@pytest.fixture(scope="module")
def maps(cathedral):
    return maps_of(cathedral)


# --- what must not run on, or take all memory ---------------------------------------------------


def picture_of(shape: tuple[int, int, int]) -> Sweep:
    scores = np.random.default_rng(7).normal(size=shape).astype(np.float32)
    scores[scores < -1.0] = -np.inf
    return Sweep(Frame(0.0, 0.0, 2.0, shape[1:]), np.arange(shape[0]) * 2.0, scores)


def test_the_best_of_each_block_comes_first_and_the_next_best_where_that_is_refused():
    sweep = picture_of((4, 9, 7))
    refused = {tuple(spot) for spot in np.argwhere(sweep.scores > 1.0).tolist()}
    got = list(sweep.picked(3, 2, lambda *at: None if at in refused else at))
    best: dict[tuple[int, ...], tuple[int, int, int]] = {}
    for at in sorted(np.ndindex(sweep.scores.shape), key=lambda at: -sweep.scores[at]):
        if at not in refused and np.isfinite(sweep.scores[at]):
            best.setdefault((at[0] // 2, at[1] // 3, at[2] // 3), at)
    assert got == list(best.values())


def test_spots_of_small_tops_take_little_memory():
    sweep = picture_of((60, 60, 60))
    tracemalloc.start()
    try:
        assert next(sweep.picked(1, 1, lambda *at: at)) is not None
        assert tracemalloc.get_traced_memory()[1] < 60 * sweep.scores.size
    finally:
        tracemalloc.stop()


def test_looking_in_vain_comes_to_an_end(monkeypatch):
    monkeypatch.setattr("veneerwb.core.search.sweep.MOST_REFUSED", 50)
    looked = []
    assert list(picture_of((4, 9, 7)).picked(3, 2, lambda *at: looked.append(at))) == []
    assert len(looked) == 50


def cracked(every: int) -> Bundle:
    """Leaves with straight cracks between the centres of all cells."""
    bundle = log_of("stripe", leaves=4, width=120.0, length=240.0, mm_per_px=2.0, knots=0)
    cracks = tuple(Fault(box(x - 0.3, 0, x + 0.3, 240)) for x in range(4, 120, every))
    return Bundle(tuple(replace(leaf, faults=cracks) for leaf in bundle.leaves), 0.6)


def test_cracks_thinner_than_a_cell_are_known_to_the_sweep():
    bundle, count = cracked(20), itertools.count()
    with pytest.raises(VeneerError, match="fits nowhere"):
        find_placements(bundle, Top.round(160), 4, progress=lambda *_: next(count) < 3000)
    task, maps = Task(cracked(60), Top.round(70), Radial(4)), maps_of(cracked(60), 2.0)
    sweep = swept(task, maps, room_of(task, maps), weighed(None))
    x, y = sweep.frame.centres()
    scored = np.isfinite(sweep.scores)
    spots = np.argwhere(np.ones_like(scored))[::389]
    stands = [
        bool(task.standing(Placement(x[i], y[j], sweep.angles[k]), (1,))) for k, j, i in spots
    ]
    ours = scored[tuple(spots.T)]
    assert sum(stands) > 100
    assert ours[stands].all()  # nothing that stands is left out
    assert ours.sum() < 1.4 * sum(stands)  # and little that does not is let through


def test_memory_for_the_scores_is_counted(cathedral, monkeypatch):
    cells = 60 * 100 * 9
    monkeypatch.setattr("veneerwb.core.appeal.maps.MOST_CELLS", 3 * cells)
    with pytest.raises(VeneerError, match="too much to search"):
        maps_of(cathedral)


# --- told plainly -------------------------------------------------------------------------------


@pytest.mark.parametrize("weights, words", [
    ("contrast", "Weights cannot be 'contrast'"),
    ([1, 2], "Weights cannot be"),
    (dict.fromkeys(("contrast", "variety", "seams", "closing"), 0), "All weights are 0"),
])
def test_weights_that_say_nothing_are_told(cathedral, weights, words):
    with pytest.raises(VeneerError, match=words):
        find_placements(cathedral, TOP, 8, weights=weights)


@pytest.mark.parametrize("nothing", [None, [1, 2]])
def test_what_is_no_bundle_is_not_called_a_stock(nothing):
    with pytest.raises(VeneerError, match="needs a bundle of leaves") as caught:
        find_placements(nothing, TOP, 8)
    assert "plain sizes" not in str(caught.value)


def test_what_is_hidden_may_be_drawn_across_itself(cathedral, maps):
    bow = Polygon([(0, 0), (40, 40), (40, 0), (0, 40)])
    assert not bow.is_valid
    assert searched(cathedral, TOP, Radial(8), count=1, maps=maps, hidden=bow).candidates


# --- progress -----------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def small() -> Bundle:
    return log_of("stripe", 8, width=120.0, length=400.0, mm_per_px=2.0, knots=0)


def faulty(bundle: Bundle, *outlines) -> Bundle:
    faults = tuple(map(Fault, outlines))
    return replace(bundle, leaves=tuple(replace(n, faults=faults) for n in bundle.leaves))


@pytest.mark.parametrize("module, name", [(find, "standing"), (nowhere, "tops_of")])
def test_looking_for_what_would_fit_tells_and_never_goes_back(small, monkeypatch, module, name):
    told, seen = [], []
    work = getattr(module, name)

    def spied(*args):
        before = len(told)
        found = work(*args)
        seen.append(len(told) - before)
        return found

    monkeypatch.setattr(module, name, spied)
    bundle = faulty(small, box(50.0, 100.0, 60.0, 110.0))
    with pytest.raises(VeneerError, match="fits nowhere"):
        searched(bundle, TOP, Radial(6), progress=lambda *step: told.append(step))
    shares = [done / total for done, total, _ in told]
    assert shares == sorted(shares)
    assert seen and min(seen) > 20
    count = itertools.count(1)
    with pytest.raises(Stopped):
        searched(bundle, TOP, Radial(6), progress=lambda *_: next(count) < len(told) - 10)


# --- what is said -------------------------------------------------------------------------------


def test_faults_are_blamed_only_where_without_them_a_top_would_fit(small):
    pin = box(3.0, 3.0, 4.0, 4.0)
    with pytest.raises(VeneerError, match="Nothing of the leaves can be used"):
        searched(faulty(small, pin), Top.round(100.0), Radial(6), margin=70.0)
    with pytest.raises(VeneerError, match="Between the faults, the edges and the margin"):
        searched(faulty(small, box(-1, -1, 121, 401)), Top.round(100.0), Radial(6))


def test_a_listed_order_is_for_as_many_ways_as_it_lists():
    stock, listed = Stock(300.0, 900.0, 8, 0.6), [8, 2, 6, 1, 3, 5]
    for ways in (6, [6], None):
        (row,) = largest_tops(stock, TOP, ways=ways, order=listed)
        assert row.ways == 6 and row.reach > 300.0
    with pytest.raises(VeneerError, match="lists 6 leaves is for 6 ways"):
        largest_tops(stock, TOP, ways=8, order=listed)
    with pytest.raises(VeneerError, match="no leaf 9"):
        largest_tops(stock, TOP, ways=4, order=[9, 1, 2, 3])
    # The leaves that are listed are those that count.
    bad = (Fault(box(-1, -1, 121, 401)),)
    bundle = log_of("stripe", 6, width=120.0, length=400.0, mm_per_px=4.0, knots=0)
    leaves = (replace(n, faults=bad) if n.number == 5 else n for n in bundle.leaves)
    bundle = replace(bundle, leaves=tuple(leaves))
    assert largest_tops(bundle, TOP, "slip", ways=4, order=[1, 2, 3, 5])[0].top is None
    assert largest_tops(bundle, TOP, "slip", ways=4, order=[1, 2, 3, 6])[0].reach > 100.0


# --- straight rims, and cuts beside each other --------------------------------------------------


@pytest.mark.parametrize("oversize", [0.0, 4.0])
@pytest.mark.parametrize("knot", [False, True])
def test_the_largest_top_with_a_straight_rim_fits_and_none_is_larger(knot, oversize):
    bundle = log_of("stripe", 6, width=300.0, length=900.0, mm_per_px=8.0, knots=0)
    if knot:
        bundle = faulty(bundle, box(140.0, 400.0, 160.0, 420.0))
    recipe = {"rim": "straight", "oversize": oversize}
    (row,) = largest_tops(bundle, TOP, ways=6, **recipe)
    for more, good in ((0.0, True), (1.0, False)):
        top = row.top.scaled(1.0 + more / row.reach)
        task = Task(bundle, top, Radial(6, **recipe))
        assert task.fits(task.layout(row.placement, row.first)) is good
    if not knot and not oversize:
        # Its blank is an even triangle, as high as the leaf is wide, for the rim lies outside.
        assert row.reach == pytest.approx(300.0, abs=0.2)


def test_where_the_next_wedge_may_not_lie_is_a_sound_outline():
    """Straights that are all but in line cross each other when they are moved."""
    leaves = sawn_bundle(leaves=8, width=240.0, length=500.0, mm_per_px=4.0, seed=3)
    recipe = Radial(6, start=10.0, rim="straight", turned="even")
    task = Task(leaves, Top.round(140.0), recipe)
    packing = _Packing(task, Places(leaves, 0.0).of(task)[0], ROOM, lambda: None)
    spots = np.random.default_rng(4).uniform(-100.0, 500.0, (300, 2)).round(3)
    for x, y in spots.tolist():
        assert packing._about(Placement(x, y, 300.0), 120.0).is_valid
