# SPDX-License-Identifier: LGPL-2.1-or-later
"""For the shop: lists and plans made from a layout."""
