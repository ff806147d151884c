# SPDX-License-Identifier: LGPL-2.1-or-later
"""In which order the pieces are taped to each other."""
