# SPDX-License-Identifier: LGPL-2.1-or-later
"""Matches: one file a family, each a small function that returns a Layout of pieces."""
