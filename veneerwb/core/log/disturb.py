# SPDX-License-Identifier: LGPL-2.1-or-later
"""How far photographs of generated leaves may be off: how the leaf lay, the light, the camera."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

import numpy as np
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import Motion, choice, finite

CAMERA = 1500.0
"""mm: the camera above the middle of the photograph."""
_LIMITS = {
    "shift": 1000.0, "turn": 180.0, "exposure": 0.9, "noise": 0.5, "lens": 0.1, "buckle": 150.0,
}
_CELL = 32
"""Pixels of a bent picture between which places are taken to go evenly: good to some microns."""


@dataclass(frozen=True)
class Disturbance:
    """How far photographs may be off, each drawn evenly within plus and minus: `shift` in mm along
    x and y, `turn` in degrees, `exposure` as a share of the light; `noise` is a deviation as a
    share of full scale.

    Two spoil every photograph, the first too, and no rigid motion mends them: `lens` is the share
    of its distance from the middle by which a corner lies too far in (the lens is one for all);
    `buckle` the mm by which the highest place of a leaf stands up from the table, in a wave of its
    own, under a camera CAMERA mm above its middle.
    """

    shift: float = 15.0
    turn: float = 2.0
    exposure: float = 0.15
    noise: float = 0.01
    lens: float = 0.0
    buckle: float = 0.0

    def __post_init__(self) -> None:
        for name, most in _LIMITS.items():
            value = finite(name, getattr(self, name))
            if not 0.0 <= value <= most:
                raise VeneerError(
                    "out-of-range", "The {name} cannot be {value}; give a number from 0 to {most}.",
                    name=name, value=value, most=most,
                )

    def optics(self, size: tuple[float, float], seed: list[int]) -> Optics | None:
        """Lens and buckle of one photograph, `size` in mm; None where it shows all in its place."""
        if not self.lens and not self.buckle:
            return None
        # A generator of its own: what else is drawn for this photograph stays as it is.
        rng = np.random.default_rng([*seed, 1])
        across, along = rng.uniform(-0.5, 0.5), rng.uniform(0.5, 1.5)
        return Optics(size, self.lens, self.buckle, (across, along, rng.uniform(0, 1)))


def disturbance(given: Disturbance | Mapping[str, float] | None) -> Disturbance | None:
    """A disturbance from its settings by name; VeneerError for a setting that there is not."""
    if not isinstance(given, Mapping):
        return given
    known = tuple(f.name for f in fields(Disturbance))
    return Disturbance(**{choice("disturbance", name, known): v for name, v in given.items()})


@dataclass(frozen=True)
class Optics:
    """What a photograph of `size` mm shows where, if it was not taken straight.

    At q from the middle it shows what an ideal one shows at q (1 + lens (|q| / |corner|)^2), radial
    distortion, and, what stands up by z looking larger, at q (1 - z / CAMERA) of that; z = buckle
    (1 + cos(2 pi (u x / width + v y / length + start))) / 2 with `wave` = (u, v, start).
    """

    size: tuple[float, float]
    lens: float
    buckle: float
    wave: tuple[float, float, float]

    def height(self, points: Any) -> np.ndarray:
        """mm above the table at places on the photograph (... x 2, mm)."""
        u, v, start = self.wave
        share = np.asarray(points, float) / self.size
        turns = u * share[..., 0] + v * share[..., 1] + start
        return self.buckle / 2 * (1 + np.cos(2 * np.pi * turns))

    def ideal(self, points: Any) -> np.ndarray:
        """Where an ideal photograph shows what this one shows at `points` (... x 2, mm)."""
        points = np.asarray(points, float)
        middle = np.asarray(self.size) / 2
        out = points - middle
        far = np.sum(out**2, axis=-1) / np.sum(middle**2)
        share = (1 + self.lens * far) * (1 - self.height(points) / CAMERA)
        return middle + out * share[..., None]


def shown(
    optics: Optics, frame: Motion, scale: float, left: np.ndarray, low: np.ndarray
) -> np.ndarray:
    """Bundle mm that a photograph shows at pixel edges `left` from its left edge and `low` from its
    lower one (arrays that broadcast), the leaf moved by `frame`."""
    x, y = np.broadcast_arrays(left, low)
    return frame.inverse().apply(optics.ideal(np.stack([x, y], axis=-1) * scale))


def bent(image: Image.Image, onto: Any, shape: tuple[int, int]) -> np.ndarray:
    """An image drawn in `shape` (rows, columns) from where `onto` looks every pixel up.

    `onto` takes columns and rows (arrays that broadcast; edges of pixels, from the upper left) to
    columns and rows of the image (... x 2).
    """
    rows, columns = shape
    downs = [*range(0, rows, _CELL), rows]
    rights = [*range(0, columns, _CELL), columns]
    at = onto(np.array(rights, float), np.array(downs, float)[:, None])
    mesh = [
        ((rights[j], downs[i], rights[j + 1], downs[i + 1]),
         (*at[i, j], *at[i + 1, j], *at[i + 1, j + 1], *at[i, j + 1]))
        for i in range(len(downs) - 1) for j in range(len(rights) - 1)
    ]
    return np.asarray(image.transform((columns, rows), Image.MESH, mesh, Image.BILINEAR))
