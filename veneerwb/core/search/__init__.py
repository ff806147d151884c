# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where on a bundle a wedge makes the best top: every spot and direction, then the best refined.

task    what is asked: bundle, top, recipe, what will be seen; exact layouts and checks
stand   whether a top may be cut at a spot, exactly and soon
room    what bars a wedge on each leaf, cell by cell
sweep   the measures of every spot by correlation
refine  the best spots moved to where they are best
find    the whole of it
"""

from __future__ import annotations

from veneerwb.core.search.find import Candidate, Found, find_placements, searched

__all__ = ["Candidate", "Found", "find_placements", "searched"]
