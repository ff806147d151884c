# SPDX-License-Identifier: LGPL-2.1-or-later
"""Paper marks: their design, how they are found on a photograph, and what is measured from
them."""

from __future__ import annotations

from veneerwb.core.targets.bench import Measured, carried_back
from veneerwb.core.targets.confirming import confirm
from veneerwb.core.targets.locating import Located, located
from veneerwb.core.targets.mark import MARK, Mark
from veneerwb.core.targets.measuring import (
    Frame,
    by_distances,
    frame,
    numbered,
    on_leaf,
    scale_from,
    seen_from_face,
    shared,
    squared_by,
)
from veneerwb.core.targets.seen import Pins, Seen
from veneerwb.core.targets.verdict import together

__all__ = [
    "MARK",
    "Frame",
    "Located",
    "Mark",
    "Measured",
    "Pins",
    "Seen",
    "by_distances",
    "carried_back",
    "confirm",
    "frame",
    "located",
    "numbered",
    "on_leaf",
    "scale_from",
    "seen_from_face",
    "shared",
    "squared_by",
    "together",
]
