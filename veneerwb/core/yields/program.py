# SPDX-License-Identifier: LGPL-2.1-or-later
"""The largest wedge between straight lines, for many directions at once.

A wedge with its tip at p that reaches r keeps to the side n . x <= c of a line where
n . p + r k <= c (k: what the wedge reaches along n for every mm of r). The largest r and its p are
a linear programme of three unknowns. It is solved from its dual (basic columns (n, k), simplex
steps), so that every step takes in the line that is crossed furthest; all of a batch step together.
"""

from __future__ import annotations

import numpy as np

MOST_STEPS = 300
"""Simplex steps; some ten are usual."""
NOUGHT = 1e-9
CROSSED = 1e-11
"""Share of the largest limit by which a line may be crossed: rounding."""
_FAR = 4.0
"""The triangle that the search starts from stands so many times further off than all lines."""
_STARTING = np.array([(0.0, 1.0), (-np.sqrt(0.75), -0.5), (np.sqrt(0.75), -0.5)])


def largest(
    normals: np.ndarray, rises: np.ndarray, limits: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """Tips (B x 2) and reaches (B, -inf where no tip keeps to all lines) of the largest wedges.

    normals (B x M x 2, of length 1), rises (B x M, k above, not below 0), limits (B x M, c).
    """
    count = len(limits)
    far = _FAR * (1.0 + np.abs(limits).max(axis=1, keepdims=True))
    columns = np.concatenate([normals, rises[..., None]], axis=2)
    start = np.broadcast_to(np.column_stack([_STARTING, np.ones(3)]), (count, 3, 3))
    columns = np.concatenate([start, columns], axis=1)
    limits = np.concatenate([np.repeat(far, 3, axis=1), limits], axis=1)
    chosen = np.tile(np.arange(3), (count, 1))
    found = np.full((count, 3), -np.inf)
    going, far = np.arange(count), far[:, 0]
    for _ in range(MOST_STEPS):
        row = np.arange(len(going))
        held = row[:, None], chosen
        inverse = np.linalg.inv(columns[held])  # rows of a basis are its columns (n, k)
        here = np.einsum("bij,bj->bi", inverse, limits[held])
        slack = limits - np.einsum("bmi,bi->bm", columns, here)
        slack[held] = 0.0
        worst = slack.argmin(axis=1)
        crossed = slack[row, worst] < -CROSSED * far
        found[going[~crossed]] = here[~crossed]
        into = np.einsum("bj,bji->bi", columns[row, worst], inverse)
        with np.errstate(divide="ignore", invalid="ignore"):
            # What each of the three lines weighs, and the new one of it.
            share = np.where(into > NOUGHT, inverse[:, 2] / into, np.inf)
        leaving = share.argmin(axis=1)
        chosen[row, leaving] = worst
        on = crossed & np.isfinite(share[row, leaving])
        if not on.any():
            break
        if not on.all():
            going, columns, limits, chosen, far = (
                part[on] for part in (going, columns, limits, chosen, far)
            )
    return found[:, :2], found[:, 2]
