# SPDX-License-Identifier: LGPL-2.1-or-later
"""Templates of the cuts as values: made of a layout, cut over, and written for machines
(DXF, SVG)."""
