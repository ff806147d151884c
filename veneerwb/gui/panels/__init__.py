# SPDX-License-Identifier: LGPL-2.1-or-later
"""Task panels, one file each, on what base.py gives them. A panel is one undo step."""
