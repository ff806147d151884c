# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawing of one page that follows its match at once; documents hold it."""
