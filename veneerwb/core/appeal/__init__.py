# SPDX-License-Identifier: LGPL-2.1-or-later
"""How strong a pattern is: maps of what the eye judges on a bundle, and measures of a top."""

from __future__ import annotations

from veneerwb.core.appeal.maps import CELL, Maps, Stopped, cell_for, maps_of
from veneerwb.core.appeal.measures import UNITS, WEIGHTS, Appeal, appraised, weighed
from veneerwb.core.appeal.words import in_words

__all__ = [
    "CELL", "UNITS", "WEIGHTS", "Appeal", "Maps", "Stopped", "appraised", "cell_for", "in_words",
    "maps_of", "weighed",
]
