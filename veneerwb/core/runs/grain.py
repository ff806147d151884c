# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which way the grain runs on a panel, to be marked there."""

from __future__ import annotations

import math

from veneerwb.core.layout import Layout, Piece

NEAR = 0.01
"""Degrees: directions that differ by less are one."""


def grain_on(piece: Piece) -> float:
    """The direction on the panel of a piece's grain, 0 to less than 180 degrees."""
    back = piece.onto_bundle.inverse()
    _, x, _, y = back.matrix  # where the leaf's y goes
    turn = math.degrees(math.atan2(y, x)) % 180.0
    return 0.0 if 180.0 - turn < NEAR else round(turn, 6)


def grain_of(layout: Layout) -> float | None:
    """The direction that the grain of all pieces has; None where they differ."""
    turns = [grain_on(piece) for piece in layout.pieces]
    apart = max(abs(math.remainder(turn - turns[0], 180.0)) for turn in turns)
    return turns[0] if apart < NEAR else None
