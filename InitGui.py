# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD when its window starts: shows matches by their leaves' pictures."""

from veneerwb.gui import view

view.register()
