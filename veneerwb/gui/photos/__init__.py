# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph shown and pointed at: the view, its items and hands, the window around it."""
