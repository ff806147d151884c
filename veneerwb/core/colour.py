# SPDX-License-Identifier: LGPL-2.1-or-later
"""Colour: sRGB, CIELAB (D65) and the difference CIEDE2000, on arrays with the colour as last axis.

sRGB after IEC 61966-2-1, primaries and white as chromaticities; CIELAB after CIE 15; CIEDE2000
after G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30 (2005) 21-30.
"""

from __future__ import annotations

from typing import Any

import numpy as np


def encode(linear: Any) -> np.ndarray:
    """Linear light, 0..1, as sRGB, 0..1 (IEC 61966-2-1); the straight part goes on below 0."""
    v = np.asarray(linear, dtype=float)
    return np.where(v <= 0.0031308, 12.92 * v, 1.055 * np.maximum(v, 0.0) ** (1 / 2.4) - 0.055)


def decode(encoded: Any) -> np.ndarray:
    """sRGB values, 0..1, as linear light, 0..1 (IEC 61966-2-1)."""
    v = np.asarray(encoded, dtype=float)
    return np.where(v <= 0.04045, v / 12.92, ((np.maximum(v, 0.0) + 0.055) / 1.055) ** 2.4)


def _xyz(x: float, y: float) -> np.ndarray:
    """The colour of chromaticity (x, y) at Y = 1."""
    return np.array([x / y, 1.0, (1.0 - x - y) / y])


_WHITE = _xyz(0.3127, 0.3290)  # D65
_PRIMARIES = np.stack([_xyz(0.64, 0.33), _xyz(0.30, 0.60), _xyz(0.15, 0.06)], axis=1)
# Each primary as bright as makes the three together white; rows then divided by the white.
_TO_XYZ = _PRIMARIES * np.linalg.solve(_PRIMARIES, _WHITE) / _WHITE[:, None]
_DECODED = decode(np.arange(256) / 255.0)
_KNEE = 6 / 29  # where CIELAB's cube root passes into a straight line
_OPPOSITE = 180.0 + 1e-9  # degrees: hues that are opposite but for rounding count as opposite


def srgb_to_lab(rgb: Any) -> np.ndarray:
    """sRGB, ... x 3, uint8 or floating 0..1, as CIELAB, float, ... x 3 (L 0..100, a, b)."""
    rgb = np.asarray(rgb)
    return light_to_lab(_DECODED[rgb] if rgb.dtype == np.uint8 else decode(rgb))


def light_to_lab(linear: Any) -> np.ndarray:
    """Linear light, ... x 3 (1: white), as CIELAB, float, ... x 3."""
    t = np.asarray(linear) @ _TO_XYZ.T
    f = np.where(t > _KNEE**3, np.cbrt(t), t / (3 * _KNEE**2) + 4 / 29)
    x, y, z = f[..., 0], f[..., 1], f[..., 2]
    return np.stack([116 * y - 16, 500 * (x - y), 200 * (y - z)], axis=-1)


def ciede2000(one: Any, other: Any) -> np.ndarray:
    """The colour difference between CIELAB colours, ... x 3 each (broadcast), as an array.

    The weights kL, kC, kH are 1. Names follow the paper, in small letters: c chroma, h hue in
    degrees, dx differences, mx means, sx the weighting functions.
    """
    l1, a1, b1 = np.moveaxis(np.asarray(one, dtype=float), -1, 0)
    l2, a2, b2 = np.moveaxis(np.asarray(other, dtype=float), -1, 0)
    g = 0.5 * (1 - _saturation((np.hypot(a1, b1) + np.hypot(a2, b2)) / 2))
    a1, a2 = (1 + g) * a1, (1 + g) * a2
    c1, c2 = np.hypot(a1, b1), np.hypot(a2, b2)
    h1, h2 = (np.degrees(np.arctan2(b, a)) % 360.0 for a, b in ((a1, b1), (a2, b2)))

    grey = c1 * c2 == 0.0  # a grey has no hue
    turn = h2 - h1
    dh = turn - 360.0 * (turn > _OPPOSITE) + 360.0 * (turn < -_OPPOSITE)
    dl, dc = l2 - l1, c2 - c1
    dhue = np.where(grey, 0.0, 2 * np.sqrt(c1 * c2) * np.sin(np.radians(dh / 2)))

    ml, mc, total = (l1 + l2) / 2, (c1 + c2) / 2, h1 + h2
    across = np.abs(turn) > _OPPOSITE  # the shorter way between the two hues passes 0
    mh = np.where(across, total + np.where(total < 360.0, 360.0, -360.0), total) / 2
    mh = np.where(grey, total, mh)

    t = (
        1 - 0.17 * _cos(mh - 30) + 0.24 * _cos(2 * mh)
        + 0.32 * _cos(3 * mh + 6) - 0.20 * _cos(4 * mh - 63)
    )
    sl = 1 + 0.015 * (ml - 50) ** 2 / np.sqrt(20 + (ml - 50) ** 2)
    sc = 1 + 0.045 * mc
    sh = 1 + 0.015 * mc * t
    rotation = np.radians(60 * np.exp(-(((mh - 275) / 25) ** 2)))
    rt = -2 * np.sin(rotation) * _saturation(mc)
    light, chroma, hue = dl / sl, dc / sc, dhue / sh
    squared = light**2 + chroma**2 + hue**2 + rt * chroma * hue
    return np.sqrt(np.maximum(squared, 0.0))


def _saturation(chroma: np.ndarray) -> np.ndarray:
    """sqrt(C^7 / (C^7 + 25^7))."""
    seventh = chroma**7
    return np.sqrt(seventh / (seventh + 25.0**7))


def _cos(degrees: np.ndarray) -> np.ndarray:
    return np.cos(np.radians(degrees))
