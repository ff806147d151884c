# SPDX-License-Identifier: LGPL-2.1-or-later
"""The inventory of a document's bundles as a CSV file, out and in."""

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Side, VeneerError
from veneerwb.core.inventory import Particulars, read_csv
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


def test_bundles_go_out_and_their_particulars_come_back(doc, two, tmp_path):
    path = tmp_path / "inventory.csv"
    inventory.write_inventory(inventory.bundles(doc), path)
    names = [one.particulars.name for one in read_csv(path).entries]
    assert names == ["Oak 7", "Ash 2"]
    assert read_csv(path).entries[1].extent.full_m2 == pytest.approx(0.12)
    path.write_text(
        path.read_text("utf-8").replace("Ash,", "White ash,").replace("120", "150.5"), "utf-8"
    )
    said = inventory.read_inventory(doc, path)
    doc.recompute()
    assert said == "Particulars were taken for Oak 7, Ash 2."
    assert (two[1].Species, two[1].Cost, two[1].Origin) == ("White ash", 150.5, "=own wood")
    assert (two[0].Species, two[0].Moisture, two[0].Message) == ("Oak", 9.5, "")
    doc.undo()
    doc.recompute()
    assert (two[1].Species, two[1].Cost, two[0].Cost) == ("Ash", 120.0, 120.0)


def test_what_is_not_here_is_told(doc, two, tmp_path):
    path = tmp_path / "inventory.csv"
    path.write_text("bundle;colour;species\nElm;red;Elm\nOak 7;;Red oak\n", "utf-8")
    said = inventory.read_inventory(doc, path)
    assert said == (
        "Particulars were taken for Oak 7. Not in this document: Elm. Columns that were not read: "
        "colour."
    )
    assert (two[0].Species, two[0].Cost, two[1].Species) == ("Red oak", 120.0, "Ash")


def test_of_many_names_a_few_are_told(doc, two, tmp_path):
    path = tmp_path / "inventory.csv"
    rows = "".join(f"{'x' * 200}{k},Elm\n" for k in range(3000))
    path.write_text(f"bundle,species\n{rows}", "utf-8")
    said = inventory.read_inventory(doc, path)
    assert "and 2995 more." in said and len(said) < 500


def test_a_bad_file_changes_nothing(doc, two, tmp_path):
    path = tmp_path / "inventory.csv"
    for row, said in (("Oak 7,Elm,much", "Row 3, column cost"), ("Ash 2,Oak,2", "one line for")):
        path.write_text(f"bundle,species,cost\nAsh 2,Elm,1\n{row}\n", "utf-8")
        with pytest.raises(VeneerError, match=said):
            inventory.read_inventory(doc, path)
    assert [one.Species for one in two] == ["Oak", "Ash"] and doc.UndoCount == 0


def test_one_bundles_particulars_are_taken(doc, two):
    known = inventory.entry_of(two[0]).particulars
    inventory.take(two[1], known)
    doc.recompute()
    assert (two[1].Label, two[1].Species) == ("Ash 2", "Oak") and doc.UndoCount == 1
    inventory.take(two[1], Particulars())
    assert (two[1].Species, two[1].Cost, two[1].TightSide) == ("", 0.0, "not known")
