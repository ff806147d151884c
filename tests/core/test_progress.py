# SPDX-License-Identifier: LGPL-2.1-or-later
"""What takes its time says how far it is, ever further, and ends where it is told to."""

from pathlib import Path

import pytest

from veneerwb.core import Top, radial, sawn_bundle
from veneerwb.core.progress import part
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.pages.gather import sheet_pages
from veneerwb.core.shop.taping.seen import seen_of
from veneerwb.core.spots import suggested
from veneerwb.paint.sheet_pictures import sheet_pictures

PACKAGE = Path(__file__).parents[2] / "veneerwb"


class Enough(Exception):
    """Somebody has stopped it."""


@pytest.fixture(scope="module")
def layout():
    bundle = sawn_bundle(
        leaves=4, width=200, length=400, thickness=0.6, mm_per_px=2.0, figure="burl", seed=2
    )
    return radial(bundle, Top.round(240.0), 4)


WORKS = {
    "suggesting": lambda layout, told: suggested(layout.bundle.leaf(1), told),
    "pictures": sheet_pictures,
    "seams": lambda layout, told: seen_of(layout, progress=told),
    "pages": lambda layout, told: [
        page.code for page in sheet_pages(layout, Look(), progress=told)
    ],
}


@pytest.mark.parametrize("work", WORKS.values(), ids=WORKS)
def test_it_is_told_how_far_it_is_and_ends_when_stopped(layout, work):
    heard = []
    quietly = work(layout, lambda share: None)
    assert work(layout, heard.append) == quietly
    assert len(heard) > 3 and heard == sorted(heard) and min(heard) >= 0.0 and max(heard) <= 1.0

    def stop(share):
        if share >= 0.5:
            raise Enough

    with pytest.raises(Enough):
        work(layout, stop)


def test_a_part_of_the_work_is_told_as_a_part_of_the_whole():
    heard = []
    for share in (0.0, 0.5, 1.0):
        part(heard.append, 0.2, 0.6)(share)
    assert heard == pytest.approx([0.2, 0.4, 0.6])


def test_screens_recompute_so_that_no_key_is_lost():
    """The host's own recompute has a progress bar that takes keys away: compat.recompute has none.
    """
    found = []
    for path in [*PACKAGE.glob("gui/**/*.py"), *PACKAGE.glob("host/**/*.py")]:
        for line in path.read_text(encoding="utf-8").splitlines():
            if ".recompute(" in line.replace("compat.recompute(", "") and path.name != "compat.py":
                found.append(f"{path.name}: {line.strip()}")
    assert found == []
