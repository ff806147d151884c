# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bundle makes: the largest tops, and how many of one size.

task     what is asked: Ask (bundle or stock, top, how it is laid), and the wedge of it
places   what bounds a wedge on the leaves of a top: usable area and faults
program  the largest wedge between straight lines
growing  the largest wedge in a convex place, and one grown where it stands
rays     spots worth growing from, where areas are not convex or have faults
largest  the table of ways and largest tops
packing  tops of one size side by side
"""
