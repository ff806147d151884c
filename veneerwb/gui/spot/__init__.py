# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window in which a match is tried here and there on the leaf: its parts."""
