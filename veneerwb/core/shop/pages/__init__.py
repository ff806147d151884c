# SPDX-License-Identifier: LGPL-2.1-or-later
"""The packet's pages, one file a subject: each turns values of the job into pages, and reckons
nothing that those values do not hold. `gather` has those of the layout itself in their order."""
