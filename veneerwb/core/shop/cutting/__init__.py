# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the stack is cut: by which method, in which piles and order, and what
is left of the leaves."""
