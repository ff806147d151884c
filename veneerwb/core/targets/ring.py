# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ring fitted to the picture itself: its centre to a few hundredths of a pixel.

A pixel at d from the centre (pixels) lies at u = M d / (1 + g d) on the mark, in outer radii; M is
symmetric, as a ring may be turned without being seen to, and g is the slant. d = 0 is u = 0: the
centre found is the image of the mark's centre, not that of the ellipse. With rho = |u| and
s = |grad rho| the blurred ring is

    S = Phi((1 - rho) / (s b)) - Phi((q - rho) / (s b)),   light = W - K S,

b the blur in pixels, q the inner by the outer radius (ink spreads, and bright paper eats into the
ring), W and K linear over the mark, for the light is uneven. All fifteen are found at once by
weighted least squares (Gauss-Newton with Levenberg's damping); pixels that do not fit, such as
dirt, weigh less (the biweight of A. E. Beaton and J. W. Tukey, Technometrics 16 (1974) 147-185).

A disc of radius R seen at an angle t from a distance D has the centre of its image some
R^2 sin(t) / D off the image of its centre: 0.02 mm for 10 mm at 20 degrees from 1.5 m, 0.07 mm from
0.5 m. g undoes that; where noise leaves g unknown it is held near 0 (GENTLE), and what is then left
is no more than the figures above. Not undone is the edge of a shadow across the mark: one that
takes a third of the light moved the centre by 0.05 to 0.15 mm in our tests, two to four deviations
as stated. What a lens distorts within one mark is too little to matter; that of a whole leaf is
not undone.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.special import ndtr

from veneerwb.core.targets.mark import MARK

INNER = MARK.inner / MARK.outer
FROM, TO = 0.33, 1.22
"""Outer radii: the pixels between are fitted; the cross and a pin's hole lie within, the arrow
outside."""
GENTLE = 0.003
"""Deviation of g in outer radii: a camera tilted by some 15 degrees at a metre."""
ROUGH = 0.06
"""By the contrast: no deviation of the pixels is taken to be less, or the edges of a lens or a
sharpening that blur otherwise than the normal curve would count as dirt."""
PATCH = 0.4
"""Outer radii: the width of the patches in which pixels may miss together."""
SPREAD = 0.05
"""Deviation of q from what was printed."""
SHARPEST = 0.25
"""px: a pixel's own width blurs as much (1 / sqrt 12)."""
STEPS = 40
# Where the fifteen stand: column, row, three of M, two of g, the logarithm of b, q, W and K.
_SLANT, _BLUR, _INNER, _PAPER, _INK = slice(5, 7), 7, 8, slice(9, 12), slice(12, 15)
_TUKEY = 4.685  # biweight: 95 % efficient on normal noise
_ROOT = 1 / np.sqrt(2 * np.pi)


@dataclass(frozen=True)
class Ring:
    """What was fitted, in pixels of the picture given: `centre` (column, row), `shape` (M, per
    pixel), `slant` (g, per pixel), `blur`, `deviation` (of the centre, column and row), `paper` and
    `ink` (the light at the centre), `explained` (share of the variance of the pixels that fit),
    `sound` (share of the pixels that fit), `inner` (by the outer radius)."""

    centre: tuple[float, float]
    shape: np.ndarray
    slant: np.ndarray
    blur: float
    deviation: tuple[float, float]
    paper: float
    ink: float
    explained: float
    sound: float
    inner: float

    @property
    def radii(self) -> tuple[float, float]:
        """The outer ellipse's half axes, longer first."""
        low, high = np.linalg.eigvalsh(self.shape)
        return float(1 / low), float(1 / high)

    def to_pixels(self, places: np.ndarray) -> np.ndarray:
        """Places on the mark, N x 2 in outer radii (turned somehow), as (column, row)."""
        lines = self.shape - places[:, :, None] * self.slant  # (M - u g) d = u
        return np.linalg.solve(lines, places[:, :, None])[:, :, 0] + self.centre


def fitted(light: np.ndarray, centre: tuple[float, float], radius: float) -> Ring | None:
    """The ring near `centre` (column, row) of about `radius` pixels (outer) in `light`, rows x
    columns; None where the fit runs away."""
    now = np.array([0, 0, 1, 0, 1, 0, 0, np.log(0.12), INNER, 0, 0, 0, 0, 0, 0], float)
    places, values = _around(light, centre, radius, 1.15 * TO)
    if len(values) < 60:
        return None
    best = _settled(now, places, values, radius, None)
    for _ in range(3):  # where the ring is decides which pixels belong to it, and what noise is
        if best is None or np.hypot(*best[:2]) > 1.5 or not 0.4 < _size(best) < 2.5:
            return None
        rho = _plane(best, places)[5]
        within = (rho > FROM) & (rho < TO)
        if within.sum() < 60:
            return None
        used, seen = places[within], values[within]
        off = seen - _light(best, used)
        noise = max(1.4826 * np.median(np.abs(off)), ROUGH * _contrast(best), 1e-4)
        best = _settled(best, used, seen, radius, noise)
    return None if best is None else _described(best, used, seen, centre, radius)


def _contrast(now: np.ndarray) -> float:
    return abs(float(now[_INK][0]))


def _size(now: np.ndarray) -> float:
    a, b, c = now[2:5]
    return float(np.sqrt(abs(a * c - b * b)))


def _around(
    light: np.ndarray, centre: tuple[float, float], radius: float, reach: float
) -> tuple[np.ndarray, np.ndarray]:
    """Pixel centres within reach x radius of `centre`, from it and in radii; and their light."""
    rows, columns = light.shape
    far = reach * radius
    left, right = max(0, int(centre[0] - far)), min(columns, int(centre[0] + far) + 1)
    top, low = max(0, int(centre[1] - far)), min(rows, int(centre[1] + far) + 1)
    row, column = np.mgrid[top:max(top, low), left:max(left, right)]
    places = np.stack([column + 0.5 - centre[0], row + 0.5 - centre[1]], axis=-1) / radius
    near = (places**2).sum(axis=-1) < reach**2
    return places[near], light[top:low, left:right][near].astype(float)


def _plane(now: np.ndarray, places: np.ndarray) -> tuple[np.ndarray, ...]:
    """x, y from the centre, w, the unit (p, q) of u, rho, and d rho / d(x, y)."""
    column, row, a, b, c, g, h = now[:7]
    x, y = places[:, 0] - column, places[:, 1] - row
    w = 1.0 + g * x + h * y
    u, v = (a * x + b * y) / w, (b * x + c * y) / w
    rho = np.maximum(np.hypot(u, v), 1e-9)
    p, q = u / rho, v / rho
    return x, y, w, p, q, rho, (p * a + q * b - rho * g) / w, (p * b + q * c - rho * h) / w


def _edges(now: np.ndarray, rho: np.ndarray, steep: np.ndarray) -> tuple[np.ndarray, ...]:
    """How far within the outer and the inner edge, in blurs; and a blur in rho."""
    soft = np.maximum(steep, 1e-3) * np.exp(now[_BLUR])
    return (1.0 - rho) / soft, (now[_INNER] - rho) / soft, soft


def _evenly(places: np.ndarray) -> np.ndarray:
    """What W and K are sums of: 1, x, y."""
    return np.column_stack([np.ones(len(places)), places])


def _light(now: np.ndarray, places: np.ndarray) -> np.ndarray:
    """The light at `places`."""
    *_, rho, across, down = _plane(now, places)
    outer, inner, _ = _edges(now, rho, np.hypot(across, down))
    paper, ink = _evenly(places) @ now[_PAPER], _evenly(places) @ now[_INK]
    return paper - ink * (ndtr(outer) - ndtr(inner))


def _model(now: np.ndarray, places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The light at `places` and its slopes with all fifteen."""
    x, y, w, p, q, rho, across, down = _plane(now, places)
    outer, inner, soft = _edges(now, rho, np.hypot(across, down))
    ring = ndtr(outer) - ndtr(inner)
    at_outer, at_inner = _ROOT * np.exp(-outer**2 / 2), _ROOT * np.exp(-inner**2 / 2)
    terms = _evenly(places)
    paper, ink = terms @ now[_PAPER], terms @ now[_INK]
    by_rho = ink * (at_outer - at_inner) / soft
    by_blur = ink * (at_outer * outer - at_inner * inner)
    slopes = [-across, -down, p * x / w, (p * y + q * x) / w, q * y / w, -rho * x / w, -rho * y / w]
    columns = [*(by_rho * slope for slope in slopes), by_blur, ink * at_inner / soft]
    jacobian = np.column_stack([*columns, terms, -ring[:, None] * terms])
    return paper - ink * ring, jacobian


def _with_light(now: np.ndarray, places: np.ndarray, values: np.ndarray,
                weights: np.ndarray) -> np.ndarray:
    """W and K as they fit best to the geometry."""
    terms = _model(now, places)[1][:, _INNER + 1 :]
    root = np.sqrt(weights)[:, None]
    found = np.linalg.lstsq(terms * root, values * root[:, 0], rcond=None)[0]
    return np.concatenate([now[: _INNER + 1], found])


def _weights(off: np.ndarray, noise: float | None) -> np.ndarray:
    if noise is None:
        return np.ones_like(off)
    return np.maximum(0.0, 1.0 - (off / (_TUKEY * noise)) ** 2) ** 2


def _held() -> np.ndarray:
    """1 / deviation^2 of what is known beforehand: g is small, q near what was printed."""
    known = np.zeros(15)
    known[_SLANT], known[_INNER] = GENTLE**-2, SPREAD**-2
    return known


def _settled(
    now: np.ndarray, places: np.ndarray, values: np.ndarray, radius: float, noise: float | None
) -> np.ndarray | None:
    """All fifteen, where the weighted squares are least; None where they are not to be had."""
    least = np.log(SHARPEST / radius)
    weights = np.ones(len(values))
    if noise is None:
        now = _with_light(now, places, values, weights)
    spread = noise or 0.05
    known, expected, damping = _held() * spread**2, np.zeros_like(now), 1e-3
    expected[_INNER] = INNER

    def cost(at: np.ndarray, weights: np.ndarray) -> float:
        off = values - _light(at, places)
        return float(weights @ off**2 + known @ (at - expected) ** 2)

    for _ in range(STEPS):
        light, slopes = _model(now, places)
        off = values - light
        weights = _weights(off, noise)
        if weights.sum() < 30:
            return None
        matrix = slopes.T @ (weights[:, None] * slopes) + np.diag(known)
        right = slopes.T @ (weights * off) - known * (now - expected)
        before = float(weights @ off**2 + known @ (now - expected) ** 2)
        for _ in range(8):
            damped = matrix + damping * np.diag(np.diag(matrix) + 1e-12)
            step = np.linalg.lstsq(damped, right, rcond=None)[0]
            step[:7] = np.clip(step[:7], -0.2, 0.2)
            step[_BLUR] = np.clip(step[_BLUR], -0.5, 0.5)
            new = now + step
            new[_BLUR] = np.clip(new[_BLUR], least, np.log(0.5))
            if cost(new, weights) <= before * (1 + 1e-12):
                damping = max(damping / 5, 1e-9)
                break
            damping *= 8
        else:
            return now
        now = new
        if np.abs(step[:5]).max() < 2e-4:
            break
    return now


def _scatter(places: np.ndarray, scores: np.ndarray) -> np.ndarray:
    """The scatter of the sums of `scores` over patches: what pixels side by side miss together (a
    shadow's edge, JPEG's blocks, a lens that blurs otherwise) counts in full (K.-Y. Liang, S. L.
    Zeger, Biometrika 73 (1986) 13-22)."""
    _, patch = np.unique(np.floor(places / PATCH) @ (1.0, 1e4), return_inverse=True)
    sums = np.stack([np.bincount(patch, column) for column in scores.T])
    return sums @ sums.T


def _described(
    now: np.ndarray, places: np.ndarray, values: np.ndarray, centre: tuple[float, float],
    radius: float,
) -> Ring:
    light, slopes = _model(now, places)
    off = values - light
    noise = max(1.4826 * float(np.median(np.abs(off))), ROUGH * _contrast(now), 1e-4)
    weights = _weights(off, noise)
    free = max(1.0, weights.sum() - len(now))
    variance = float(weights @ off**2) / free
    known = _held()
    back = np.linalg.pinv(slopes.T @ (weights[:, None] * slopes) + variance * np.diag(known))
    scatter = _scatter(places, slopes * (weights * off)[:, None]) + variance**2 * np.diag(known)
    inverse = back @ scatter @ back
    a, b, c = now[2:5] / radius
    mean = np.average(values, weights=weights)
    return Ring(
        centre=(centre[0] + radius * float(now[0]), centre[1] + radius * float(now[1])),
        shape=np.array([[a, b], [b, c]]),
        slant=now[_SLANT] / radius,
        blur=float(np.exp(now[_BLUR])) * radius,
        deviation=tuple(float(d) * radius for d in np.sqrt(np.diag(inverse)[:2])),
        paper=float(now[_PAPER][0]), ink=float(now[_INK][0]),
        explained=1.0 - float(weights @ off**2 / max(weights @ (values - mean) ** 2, 1e-12)),
        sound=float((np.abs(off) < _TUKEY * noise).mean()),
        inner=float(now[_INNER]),
    )
