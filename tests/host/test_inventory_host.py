# SPDX-License-Identifier: LGPL-2.1-or-later
"""The inventory of a document's bundles as a CSV file."""

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Side
from veneerwb.core.inventory import read_csv
from veneerwb.core.photos.reading import Photo
from veneerwb.host import inventory
from veneerwb.host.objects import add_bundle


@pytest.fixture
def two(doc):
    photo = Photo.of(np.full((60, 40, 3), 90, np.uint8), 5.0)  # 200 x 300 mm
    made = []
    for name, species in (("Oak 7", "Oak"), ("Ash 2", "Ash")):
        obj = add_bundle(doc, Bundle((Leaf(1, Side(photo)), Leaf(2, Side(photo))), 0.6, "own"))
        obj.Label, obj.Species, obj.TightSide = name, species, "back"
        obj.Moisture, obj.Cost, obj.Currency, obj.Origin = 9.5, 120.0, "EUR", "=own wood"
        made.append(obj)
    doc.recompute()
    doc.clearUndos()
    return made


def test_bundles_go_out_with_their_particulars(doc, two, tmp_path):
    path = tmp_path / "inventory.csv"
    inventory.write_inventory(inventory.bundles(doc), path)
    first, second = read_csv(path).entries
    assert (first.particulars.name, second.particulars.name) == ("Oak 7", "Ash 2")
    assert (second.particulars.species, second.particulars.cost) == ("Ash", 120.0)
    assert (first.particulars.moisture, first.particulars.origin) == (9.5, "=own wood")
    assert second.extent.full_m2 == pytest.approx(0.12)
