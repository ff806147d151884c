# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture of a ring as cut and trued: every piece's figure is where truing puts it."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Top, radial, sawn_bundle
from veneerwb.core.shop.closing import Ring, as_trued, places

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import picture  # noqa: E402


def colour(pixels, x, y):
    """The mean of 3 x 3 pixels about a point of the top (1 px a mm)."""
    rows, columns = pixels.shape[:2]
    r, c = int(rows / 2 - y), int(x + columns / 2)
    return pixels[r - 1 : r + 2, c - 1 : c + 2, :3].reshape(-1, 3).mean(axis=0)


@pytest.mark.parametrize("how", ["both ends", "one end"])
def test_figure_turns_with_its_piece_about_the_tip(how):
    bundle = sawn_bundle(leaves=8, width=260, length=460, thickness=0.6, mm_per_px=1.0,
                         figure="burl", seed=3)  # fmt: skip
    layout = radial(bundle, Top.round(360.0), 8)
    at = places(Ring.of(layout), [47.0] * 8, how)
    planned, real = picture(layout, 1.0), picture(as_trued(layout, at), 1.0)
    near, stayed = [], []
    for position, piece in enumerate(at.pieces, start=1):
        turn = math.remainder(piece.axis - layout.recipe.axis(position), 360.0)
        for radius in (90.0, 120.0, 150.0):
            for aside in (-12.0, -4.0, 4.0, 12.0):
                before = math.radians(layout.recipe.axis(position) + aside)
                after = before + math.radians(turn)
                was = colour(planned, radius * math.cos(before), radius * math.sin(before))
                now = colour(real, radius * math.cos(after), radius * math.sin(after))
                same = colour(real, radius * math.cos(before), radius * math.sin(before))
                near.append(np.abs(was - now).mean())
                if abs(turn) > 1.5:
                    stayed.append(np.abs(was - same).mean())
    assert np.mean(near) < 0.5 * np.mean(stayed)


def test_a_half_that_is_under_shows_figure_from_behind_its_tips():
    bundle = sawn_bundle(leaves=8, width=260, length=460, thickness=0.6, mm_per_px=1.0,
                         figure="burl", seed=3)  # fmt: skip
    layout = radial(bundle, Top.round(360.0), 8)
    laid = as_trued(layout, places(Ring.of(layout), [43.0] * 8, "both ends"))
    pixels = picture(laid, 1.0)
    assert pixels[180, 180, 3] == 255 and (pixels[..., 3] > 0).mean() == pytest.approx(
        math.pi / 4.0, abs=0.01
    )
    lost = 180.0 * math.sin(math.radians(4.0))
    place = layout.recipe.placement
    for piece in laid.pieces:
        centre = piece.onto_bundle.point((0.0, 0.0))
        assert math.dist(centre, (place.x, place.y)) == pytest.approx(lost)
