# SPDX-License-Identifier: LGPL-2.1-or-later
"""The room that work in the shop takes on a leaf."""

from __future__ import annotations

ROOM = 15.0
"""mm between two cuts on one leaf, for knife, tape and holding: common practice, no source."""
