# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs on their way into a bundle: the list, the plan and its words."""
