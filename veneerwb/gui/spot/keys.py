# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the keys do on the leaf and on the top while a spot is chosen:

arrows: move the wedge by 1 mm; with Shift by 0.1 mm · Alt and arrows, or [ and ]: turn it by
0.5 deg; with Shift by 0.05 deg · , and .: fewer and more ways · M: one leaf mirrored or the true
leaves · Ctrl+Z and Ctrl+Y: undo and redo
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide import QtCore

from veneerwb.core import Placement, VeneerError
from veneerwb.core.matches.radial import LEAST_WAYS, MOST_WAYS
from veneerwb.gui.canvas import Action
from veneerwb.gui.spot.state import SpotState

Qt = QtCore.Qt

NUDGE, TURN = 1.0, 0.5
"""mm and degrees of a key."""
FINE = 0.1
"""The share of them with Shift."""
PLACES = 4
"""Decimals to which nudges are kept."""


class SpotKeys:
    """For the hands of the spot's window: `undone` undoes (False) or redoes (True), `refused` is
    given what cannot be, `paged` the leaves to go on by; `escaped` hears of Esc."""

    def listen(self, state: SpotState) -> None:
        """`state` is what the keys change."""
        self.state = state
        self.undone: Callable[[bool], None] = lambda again: None
        self.refused: Callable[[Exception], None] = lambda error: None
        self.paged: Callable[[int], None] = lambda steps: None
        self.escaped: Action = lambda: None

    def forget_spot(self) -> None:
        """Nobody is told any more."""
        self.undone, self.refused = (lambda again: None), (lambda error: None)
        self.paged, self.escaped = (lambda steps: None), (lambda: None)

    @property
    def spot_keys(self) -> Mapping[Any, Action]:
        return {
            Qt.Key_BracketLeft: lambda: self.turn_by(TURN),
            Qt.Key_BracketRight: lambda: self.turn_by(-TURN),
            Qt.Key_BraceLeft: lambda: self.turn_by(FINE * TURN),
            Qt.Key_BraceRight: lambda: self.turn_by(-FINE * TURN),
            Qt.Key_Comma: lambda: self.step_ways(-1), Qt.Key_Period: lambda: self.step_ways(1),
            Qt.Key_M: lambda: self.state.look(mirrored=not self.state.mirrored),
        }  # fmt: skip

    @property
    def keys_with_ctrl(self) -> Mapping[Any, Action]:
        """What the hand has besides; the host's undo would take back a step that is not ours."""
        ours = {Qt.Key_Z: lambda: self.undone(False), Qt.Key_Y: lambda: self.undone(True)}
        return {**super().keys_with_ctrl, **ours}

    def arrow(self, across: int, down: int, steps: int) -> None:
        far = NUDGE if steps == 1 else FINE * NUDGE
        here = self.state.placement
        x, y = here.x + far * across, here.y - far * down
        self.go(placement=Placement(round(x, PLACES), round(y, PLACES), here.angle))

    def arrow_with_alt(self, across: int, down: int, steps: int) -> None:
        """Left and up turn counter-clockwise."""
        self.turn_by(-(across or down) * TURN * (1.0 if steps == 1 else FINE))

    def turn_by(self, degrees: float) -> None:
        """Turns the wedge about its tip, counter-clockwise."""
        here = self.state.placement
        self.go(placement=Placement(here.x, here.y, round(here.angle + degrees, PLACES)))

    def step_ways(self, steps: int) -> None:
        """So many sizes of ring on, as far as there are any; a book ring has even ways."""
        recipe = self.state.recipe
        pace = 2 if recipe.turn == "book" else 1
        least = LEAST_WAYS + LEAST_WAYS % pace
        ways = recipe.ways + pace * steps
        self.go(ways=min(max(ways, least), MOST_WAYS))

    def go(self, **where: Any) -> None:
        """Goes on with a run of small changes."""
        try:
            self.state.go(**where, run=True)
        except VeneerError as error:
            self.refused(error)
