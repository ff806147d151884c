# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is more than can be shown is said in a sentence."""

from veneerwb.host.objects.base import kind_of


def test_a_ring_of_more_ways_than_can_be_is_no_table(opened, panels):
    """It once took all memory."""
    doc = opened()
    match = next(obj for obj in doc.Objects if kind_of(obj) == "Match")
    match.Ways = 2**31 - 1
    doc.recompute()
    assert panels(doc, lambda panel: None, (), "CloseRing")
    assert match.Message.endswith(".")
