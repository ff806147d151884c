# SPDX-License-Identifier: LGPL-2.1-or-later
"""Five hundred recomputes of a match on photographs leave no more in memory than a few megabytes.
"""

import ctypes
import gc
import sys

import pytest

from veneerwb.host.objects import add_bundle, add_match

RECOMPUTES, WARM, MOST = 500, 60, 20.0


def resident():
    """MB of memory that this process holds."""
    gc.collect()
    ctypes.CDLL(None).malloc_trim(0)
    with open("/proc/self/status", encoding="ascii") as status:
        line = next(line for line in status if line.startswith("VmRSS"))
    return int(line.split()[1]) / 1024.0


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="read from /proc")
def test_recomputes_do_not_pile_up(doc, sawn):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    leaf = doc.getObject("Bundle").Leaves[1]

    def recompute(k):
        match.Diameter = 200.0 + k % 40
        match.Ways = (4, 6)[k % 2]
        if k % 10 == 0:
            leaf.RegisterX = (k % 7) / 3.0
        doc.recompute()
        assert match.Message == ""

    doc.UndoMode = 0
    for k in range(WARM):
        recompute(k)
    before = resident()
    for k in range(RECOMPUTES):
        recompute(k)
    assert resident() - before < MOST
