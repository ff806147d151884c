# SPDX-License-Identifier: LGPL-2.1-or-later
"""A document for each test, and a small bundle that is sawn once."""

import FreeCAD
import pytest

from veneerwb.core import Bundle, sawn_bundle
from veneerwb.host.objects import add_stock


@pytest.fixture
def doc():
    document = FreeCAD.newDocument("Test")
    document.UndoMode = 1
    yield document
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture
def stock(doc):
    """Sixty-four leaves of 900 x 1200 mm, 0.5 mm thick."""
    return add_stock(doc, 900.0, 1200.0, 64, 0.5)


@pytest.fixture(scope="session")
def sawn() -> Bundle:
    """Six leaves of 200 x 400 mm, disturbed, the backs of leaves 1 and 3 photographed too."""
    return sawn_bundle(
        leaves=6,
        width=200.0,
        length=400.0,
        mm_per_px=2.0,
        seed=3,
        disturb={},
        backs=[1, 3],
        slope=4.0,
    )
