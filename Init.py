# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD at start, window or not: makes the package known and imports nothing heavy."""

import veneerwb  # noqa: F401
