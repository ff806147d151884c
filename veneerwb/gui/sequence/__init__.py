# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window of the order of the leaves and of their registers."""
