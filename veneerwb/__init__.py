# SPDX-License-Identifier: LGPL-2.1-or-later
"""Veneer matching for FreeCAD: see core (the job itself), paint (pictures) and host (documents)."""

__version__ = "0.1.0"
