# SPDX-License-Identifier: LGPL-2.1-or-later
"""Templates that are cut over ask more room of the leaves: what goes to the bench says so; and a
template that a test cut found good is not called wrong."""

import pytest

from veneerwb.host import packet
from veneerwb.host.bench import at_bench
from veneerwb.host.objects import add_closing, add_match, add_stock
from veneerwb.host.objects.bench import add_bench


@pytest.fixture
def bench(doc):
    """A wedge of 90 degrees to 105 mm is 148.49 mm wide."""
    match = add_match(doc, add_stock(doc, 148.9, 400.0, 8), Ways=4, Diameter=200.0, Oversize=5.0)
    made = add_bench(doc, match, Title="Small")
    doc.recompute()
    return made


def codes(bench):
    bench.Document.recompute()
    return [(one.level, one.code) for one in at_bench(bench).findings]


def test_leaves_without_room_for_the_templates_angle_are_a_stop(bench):
    wider = ("stop", "wider-off-leaf")
    assert wider not in codes(bench)
    bench.SeamsCut, bench.SeamAngle = "over by an angle", 0.2  # 0.26 mm more: there is room
    assert wider not in codes(bench)
    bench.SeamAngle = 0.5  # 0.65 mm more
    assert codes(bench)[0] == wider
    bench.Match.WedgeAngle = 90.5  # told once, whoever asks
    assert codes(bench).count(wider) == 1
    bench.SeamsCut, bench.Match.WedgeAngle = "exact", 0.0
    assert wider not in codes(bench)


def test_a_template_that_may_stay_is_not_called_other_than_advised(bench):
    closing = add_closing(bench.Document, bench.Match)
    bench.Document.recompute()
    warned = "advises to cut every wedge"
    bench.SeamsCut, bench.SeamAngle = "over by an angle", closing.Over + 0.2

    def told():
        bench.Document.recompute()
        return " ".join(packet.Packet(at_bench(bench)).warnings)

    assert warned in told()
    closing.TrialCount, closing.TrialSum = 2, 2.0 * (90.0 + closing.Over + 0.2)
    bench.Document.recompute()
    assert closing.TemplateStays and warned not in told()
