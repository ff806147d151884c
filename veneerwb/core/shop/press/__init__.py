# SPDX-License-Identifier: LGPL-2.1-or-later
"""Glue, pressing and the day on which it is done."""
