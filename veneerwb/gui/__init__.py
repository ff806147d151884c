# SPDX-License-Identifier: LGPL-2.1-or-later
"""Screens: the workbench's commands, panels, view providers and the scene in the 3-D view."""
