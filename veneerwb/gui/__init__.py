# SPDX-License-Identifier: LGPL-2.1-or-later
"""Screens: the workbench's commands, panels, view providers and the scene in the 3-D view."""

from __future__ import annotations

import os

import veneerwb


def resources(kind: str) -> str:
    """The path of the folder that holds resources of that kind: icons, ui, templates."""
    root = os.path.dirname(os.path.dirname(os.path.abspath(veneerwb.__file__)))
    return os.path.join(root, "resources", kind)


def tree_icon(name: str) -> str:
    """The icon of that name for the tree, which takes names only of icons that are loaded."""
    import FreeCADGui

    FreeCADGui.getIcon(name)
    return name
