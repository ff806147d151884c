# SPDX-License-Identifier: LGPL-2.1-or-later
"""Both sides of a leaf: the back's photograph tied to the face, what the backs prove of the stack,
and how far the figure wanders from surface to surface.

Here belongs what needs photographs of backs. Leaf mm are those of the face's photo; a back's photo
is mirrored on reading.
"""

from __future__ import annotations

from veneerwb.core.sides.sense import Note, Reading, Sense, proved_sense
from veneerwb.core.sides.tie import Tie, tie_backs, tied, with_tie
from veneerwb.core.sides.wander import Passage, Wander, measured_wander, with_wander

__all__ = [
    "Note",
    "Passage",
    "Reading",
    "Sense",
    "Tie",
    "Wander",
    "measured_wander",
    "proved_sense",
    "tie_backs",
    "tied",
    "with_tie",
    "with_wander",
]
