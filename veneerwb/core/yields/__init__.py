# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bundle makes: the largest tops, and how many of one size.

wedge    the wedge of a top, and how it grows
places   what bounds a wedge on the leaves of a top: usable area and faults
program  the largest wedge between straight lines
growing  the largest wedge in a convex place, and one grown where it stands
rays     spots worth growing from, where areas are not convex or have faults
largest  the table of ways and largest tops
packing  tops of one size side by side
nowhere  what is said of a top that fits nowhere
"""
