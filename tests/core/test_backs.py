# SPDX-License-Identifier: LGPL-2.1-or-later
"""What turned pieces show, against the generated log's own surfaces."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Point

from veneerwb.core import (
    Bundle,
    Disturbance,
    Motion,
    Placement,
    Side,
    Top,
    check,
    radial,
    sawn_bundle,
)
from veneerwb.core.checks.faces import may_miss
from veneerwb.core.log.sawn import Log

SIZE = {
    "width": 160.0,
    "length": 320.0,
    "thickness": 0.6,
    "figure": "cathedral",
    "seed": 4,
    "slope": 10.0,
}
WANDER = 3.4028  # mm: 0.6 / tan 10 deg, plane geometry


def bundle(**options) -> Bundle:
    return sawn_bundle(leaves=6, mm_per_px=1.0, knots=0, **{**SIZE, **options})


def layout(leaves: Bundle):
    return radial(leaves, Top.round(180), ways=6, placement=Placement(80, 110, 90))


def grid(piece) -> np.ndarray:
    """Points well inside a piece, top mm."""
    x0, y0, x1, y1 = piece.outline.bounds
    points = np.stack(np.meshgrid(np.arange(x0, x1, 1.0), np.arange(y0, y1, 1.0)), -1).reshape(
        -1, 2
    )
    inner = piece.outline.buffer(-3.0)

    return points[[inner.contains(Point(p)) for p in points]]


def shown(side: Side, points: np.ndarray) -> np.ndarray:
    """The colours of a side's photo at points of the bundle, nearest pixel."""
    at = side.view.apply(points)
    rows = (side.photo.shape[0] - at[:, 1] / side.mm_per_px).astype(int)
    columns = (at[:, 0] / side.mm_per_px).astype(int)
    return side.photo[rows, columns].astype(float)


def nearest(points: np.ndarray) -> np.ndarray:
    """The centres of the pixels (1 mm) that `points` fall in."""
    return np.floor(points) + 0.5


@pytest.mark.parametrize("slope", [3.0, 10.0])
def test_backs_photographed_show_the_logs_own_surface(slope):
    leaves = bundle(slope=slope, backs=True)
    log = Log(**{**SIZE, "slope": slope, "knots": 0})
    turned = [piece for piece in layout(leaves).pieces if piece.turned]
    assert len(turned) == 3
    for piece in turned:
        points = nearest(piece.onto_bundle.apply(grid(piece)))
        side = leaves.leaf(piece.leaf).side(True)
        assert side.source == "photo" and may_miss(leaves, piece) == 0.0
        truth = log.colours(points, surface=piece.leaf).astype(float)  # S_k: the back of leaf k
        other = log.colours(points, surface=piece.leaf - 1).astype(float)
        difference = np.abs(shown(side, points) - truth).mean()
        assert difference < 0.5
        assert np.abs(shown(side, points) - other).mean() > 4 * difference + 1.0


def test_backs_photographed_askew_still_show_the_logs_own_surface():
    leaves = bundle(backs=True, disturb=Disturbance(shift=5.0, turn=1.0, exposure=0.0, noise=0.0))
    log = Log(**{**SIZE, "knots": 0})
    for piece in layout(leaves).pieces:
        if piece.turned:
            side = leaves.leaf(piece.leaf).side(True)
            assert side.view != side.register
            at = side.view.apply(piece.onto_bundle.apply(grid(piece)))
            points = side.view.inverse().apply(nearest(at))
            truth = log.colours(points, surface=piece.leaf).astype(float)
            assert np.abs(shown(side, points) - truth).mean() < 0.5


def true_miss(leaves: Bundle, log: Log, piece, following: float) -> float:
    """mm along the grain between what is pictured on a turned piece and what its leaf shows there.

    The leaf is cut where its register says; the log's frame on it is `following` mm a leaf away,
    because the registers follow the figure. The shift is the one that makes the true surface look
    like the picture.
    """
    points = piece.onto_bundle.apply(grid(piece))
    side = leaves.leaf(piece.leaf).side(True)
    picture = shown(side, points)
    in_log = side.register.apply(points)  # undisturbed photos: leaf mm are log mm
    shifts = np.arange(-12.0, 12.01, 0.25)
    errors = [
        np.abs(log.colours(in_log + [0.0, s], surface=piece.leaf).astype(float) - picture).mean()
        for s in shifts
    ]
    return abs(float(shifts[int(np.argmin(errors))]))


@pytest.mark.parametrize("back", ["next", "own"])
@pytest.mark.parametrize("following", [0.0, -WANDER])
def test_what_seams_may_miss_by_covers_the_true_miss(back, following):
    plain = bundle()
    moved = [
        replace(
            leaf, back=None, face=Side(leaf.face.image, *2 * [Motion(dy=following * leaf.number)])
        )
        for leaf in plain.leaves
    ]
    leaves = Bundle(tuple(moved), plain.thickness, back, slope=10.0)
    log = Log(**{**SIZE, "knots": 0})
    laid = radial(leaves, Top.round(160), ways=6, placement=Placement(80, 130, 90))
    misses = {p.position: true_miss(leaves, log, p, following) for p in laid.pieces if p.turned}
    stated = {p.position: may_miss(leaves, p) for p in laid.pieces if p.turned}
    for position, miss in misses.items():
        assert miss <= stated[position] + 0.3
    # The statement is not empty: where face stands for back, or the figure is followed, seams do
    # miss.
    expected = 0.0 if back == "next" and following == 0.0 else WANDER
    assert np.mean(list(misses.values())) == pytest.approx(expected, abs=0.6)
    (finding,) = [f for f in check(laid) if f.code == "backs-assumed"]
    assert finding.values["may_miss"] == pytest.approx(max(stated.values()))


def test_an_unknown_slope_is_said_to_be_assumed():
    plain = bundle()
    unknown = replace(plain, slope=None)
    (finding,) = [f for f in check(layout(unknown)) if f.code == "backs-assumed"]
    assert "nobody measured" in finding.text
    assert finding.values["may_miss"] == pytest.approx(0.6 / np.tan(np.radians(5.0)))


def test_leaves_that_nobody_registered_are_said_to_lie_as_they_were_photographed():
    loose, registered = bundle(), bundle(disturb=Disturbance(5, 1, 0, 0))
    codes = {finding.code: finding for finding in check(layout(loose))}
    assert codes["not-registered"].level == "note"
    assert "6 leaves are laid as they were photographed" in codes["not-registered"].text
    assert "not-registered" not in {finding.code for finding in check(layout(registered))}
