# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the stack is pinned, and the marks chalked on its leaves for that."""
