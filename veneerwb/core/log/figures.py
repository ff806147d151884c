# SPDX-License-Identifier: LGPL-2.1-or-later
"""The figures of a generated log: one recipe each, and the wood it is shown in.

A recipe fills the grid of one surface with two maps: the radius (mm) at which the ring table is
read, and a tone added to it (0 light, 1 dark). How wood of each figure looks is judged by
eye: no source.
"""

from __future__ import annotations

import numpy as np
from scipy.ndimage import gaussian_filter

from veneerwb.core.log.grain import LAYERS, Sheet, Wood
from veneerwb.core.plane import tand


def _cathedral(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """Tangential cut: r = hypot(x - pith, distance + depth + bow), crowns where x is near the pith.

    Only a stem parallel to the leaf is bowed: in a sloping one the slope alone makes the crowns.
    """
    stem = s.stem
    bow = 0.0 if stem.slope else 0.055 * 2 / stem.length * s.y[:, None] ** 2
    calm = 6.0 if stem.slope else 1.0
    distance = 48 + stem.clearance + s.march[:, None] + bow
    distance = distance + 4.2 * s.lay("lean", 100, 190 * calm, 60)
    distance += 0.8 * s.lay("wave", 22, 60 * calm, 14)
    pith = 7 * s.lay("pith", 4000, 420 * calm, 80)[:, :1]
    # Sideways, for a wave in the distance itself would carry crowns far up and down.
    across = s.x - pith + 0.25 * s.stir("shiver", 18, 50, 8)
    return np.hypot(across, distance), _zones(s) + np.float32(0.1) * s.stir("shade", 6, 36, 7)


def _stripe(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """Radial cut: the leaf's plane holds the pith, and rings are straight lines along the leaf."""
    radius = _from_pith(s, 8)
    return radius, _zones(s) + np.float32(0.05) * s.noise("ribbon", 5, 140, 7)


def _ripple(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """Fibres that wave: bars of light and shade across the grain, some 10 mm apart."""
    swing = 1.1 * s.lay("swing", 40, 90, 30) + 0.22 * s.noise("sway", 14, 24, 14)
    wave = np.sin(np.float32(2 * np.pi) * (s.y[:, None].astype(np.float32) / 10 + swing))
    strength = np.clip(0.11 + 0.05 * s.noise("strength", 60, 70, 40), 0.01, 0.22)
    strength = strength * (1 + 0.5 * s.stir("flicker", 20, 25, 10))
    radius = _from_pith(s, 8) + np.float32(0.25) * wave
    tone = _zones(s) + np.float32(0.04) * s.stir("shade", 9, 36, 10)
    return radius, tone + strength * (wave + np.float32(0.35) * wave * wave)


def _plain(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """Cut between radial and tangential: quiet lines without figure."""
    return _from_pith(s, 110 + s.stem.clearance), _zones(s)


def _burl(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """Grain that swirls round eyes: each eye a bud whose trace runs on through the leaves."""
    radius = 260 + 30 * s.lay("swirl", 55, 55, 30) + 7 * s.lay("curl", 19, 19, 12)
    radius += 1.3 * s.noise("twist", 8, 8, 6)
    tone = _zones(s) + np.float32(0.09) * s.noise("cloud", 30, 30, 20)
    for rise, shade, window in _eyes(s):
        radius[window] += rise
        tone[window] += shade
    return radius, tone


def _eyes(s: Sheet) -> list[tuple[np.ndarray, np.ndarray, tuple[slice, slice]]]:
    """Rise of the radius, added tone and grid window of each eye on this surface."""
    stem, rng = s.stem, s.stem.rng("eyes")
    count = int(stem.width * stem.length / 420) + 1
    clusters = rng.uniform(-0.5, 0.5, (count // 9 + 1, 2)) * (stem.width, stem.length)
    home = clusters[rng.integers(0, len(clusters), count)] + rng.normal(0, 22, (count, 2))
    drift, size = rng.normal(0, 0.12, (count, 2)), rng.gamma(5.0, 0.36, count) + 0.7
    phase, pace = rng.uniform(0, 6.28, count), rng.uniform(15, 40, count)
    depth = s.depth[0] + tand(stem.slope) * (home[:, 1] - s.y[0])
    life = np.clip(0.55 + 0.75 * np.sin(depth / pace + phase), 0, 1)
    centre = home + drift * depth[:, None]
    eyes = []
    for (cx, cy), r, alive in zip(centre, size, life):
        window = _window(s, cx, cy, 5 * r)
        if alive <= 0 or window is None:
            continue
        far = np.hypot(s.x[window[1]] - cx, (s.y[window[0]] - cy)[:, None]) / r
        fade = np.clip(1 - far / 5, 0, 1) ** 2
        rise = (alive * 9 * r * fade).astype(np.float32)
        eyes.append((rise, (alive * 0.42 * np.exp(-far * far)).astype(np.float32), window))
    return eyes


def _crotch(s: Sheet) -> tuple[np.ndarray, np.ndarray]:
    """A stem forking upwards: rings round two piths, and between them a plume whose barbs leave the
    middle line steeply and bend outwards."""
    stem = s.stem
    up = s.y[:, None] + stem.length / 2
    middle = 5 * s.lay("middle", 4000, 160, 50)[:, :1] + 1.2 * s.lay("seam", 60, 28, 12)
    off = s.x - middle
    side = np.sqrt(off * off + 4)
    part = 0.10 * up + 6
    distance = 18 + stem.clearance + s.march[:, None] + 3 * s.lay("lean", 90, 200, 50)
    radius = np.hypot(side - part, distance) + 0.5 * s.noise("wave", 20, 40, 12)
    spread = 0.13 * stem.width + 0.03 * up
    barb = up - 1.9 * spread * np.log1p(side / spread * 1.6) + 5 * s.lay("bend", 50, 60, 25)
    feather = _barbs(s, barb, off) * (1 + 0.75 * s.stir("fringe", 20, 32, 9))
    plume = np.exp(-((side / (1.7 * spread)) ** 2)).astype(np.float32)
    seam = np.exp(-side / (0.3 * spread)).astype(np.float32)
    calm = radius + (8 * plume * feather).astype(np.float32)
    tone = _zones(s) + np.float32(0.07) * s.stir("shade", 7, 40, 7)
    return calm, tone + plume * (0.16 * feather + 0.05) + np.float32(0.16) * seam


def _barbs(s: Sheet, along: np.ndarray, off: np.ndarray) -> np.ndarray:
    """Random shading over the plume's own coordinate `along` (mm), each side of the middle its own,
    changing in depth over some 9 mm."""
    rng = s.stem.rng("barbs")
    table = sum(
        gaussian_filter(rng.standard_normal((LAYERS, 2, 8192)), (0, 0, wide), mode="wrap") * gain
        for wide, gain in ((3, 2.2), (9, 5.0))
    ).astype(np.float32)
    layer = np.floor(s.march / 9).astype(int)
    part = (s.march / 9 - layer).astype(np.float32)[:, None]
    at = along * 2
    node = np.floor(at).astype(np.int32)
    share = (at - node).astype(np.float32)
    # Both sides mix across the middle within a few millimetres, so that no edge runs along it.
    right = np.float32(0.5) + np.float32(0.5) * np.tanh(off / 2).astype(np.float32)
    out = np.zeros(along.shape, np.float32)
    for lift, deep in ((0, 1 - part), (1, part)):
        start = ((layer + lift) % LAYERS * 2 * 8192).astype(np.int32)[:, None]
        for step, near in ((0, 1 - share), (1, share)):
            index = start + ((node + step) & 8191)
            left_tone, right_tone = table.ravel()[index], table.ravel()[index + 8192]
            out += deep * near * (left_tone + right * (right_tone - left_tone))
    return out


def _from_pith(s: Sheet, under: float) -> np.ndarray:
    """mm from the pith, which lies beside the leaf and `under` mm below the first; the rings wander
    slightly."""
    lean = 3.0 * s.lay("lean", 400, 520, 80) + 0.35 * s.noise("wave", 40, 160, 14)
    return np.hypot(s.x + s.stem.width / 2 + 140 + lean, under + s.march[:, None])


def _zones(s: Sheet) -> np.ndarray:
    """Slow changes of tone and streaks along the grain."""
    return (
        np.float32(0.30)
        + np.float32(0.045) * s.noise("zone", 110, 420, 50)
        + np.float32(0.03) * s.noise("streak", 9, 260, 9)
    )


def _window(s: Sheet, x: float, y: float, reach: float) -> tuple[slice, slice] | None:
    """Rows and columns of the grid within `reach` mm of a point; None where there are none."""
    rows = np.searchsorted(s.y, [y - reach, y + reach])
    columns = np.searchsorted(s.x, [x - reach, x + reach])
    if rows[0] == rows[1] or columns[0] == columns[1]:
        return None
    return slice(*rows), slice(*columns)


FIGURES: dict[str, Wood] = {
    "cathedral": Wood(
        _cathedral, 4.2, 0.42, 0.05, (0.4, 1.6), 0.11, 2,
        (196, 151, 105), (72, 44, 27), (224, 196, 154),
    ),
    "stripe": Wood(
        _stripe, 5.5, 0.24, 0.09, (0.4, 1.6), 0.12, 1,
        (186, 112, 73), (78, 34, 20), (218, 180, 140),
    ),
    "burl": Wood(
        _burl, 3.6, 0.36, 0.06, (0.7, 0.9), 0.10, 0,
        (205, 150, 95), (66, 37, 20), (225, 190, 140), straight=False,
    ),
    "ripple": Wood(
        _ripple, 6.0, 0.13, 0.03, (0.4, 1.6), 0.05, 1,
        (238, 210, 166), (136, 88, 48), (244, 226, 192),
    ),
    "crotch": Wood(
        _crotch, 4.6, 0.24, 0.05, (0.4, 1.2), 0.10, 0,
        (200, 125, 78), (66, 28, 18), (222, 184, 142),
    ),
    "plain": Wood(
        _plain, 3.2, 0.22, 0.03, (0.4, 1.6), 0.13, 2,
        (216, 180, 132), (110, 74, 44), (230, 204, 162),
    ),
}
