# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures of layouts, painted by Qt, with or without a screen. Nothing here knows FreeCAD."""

from __future__ import annotations

from veneerwb.paint.picture import picture

__all__ = ["picture"]
