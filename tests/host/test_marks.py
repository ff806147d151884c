# SPDX-License-Identifier: LGPL-2.1-or-later
"""Points that were picked on leaves, kept in the document."""

import math

import FreeCAD
import numpy as np
import pytest

from veneerwb.core import VeneerError
from veneerwb.host.areas import picked, set_picked
from veneerwb.host.sequence import apply_registers, turn_end

PICKED = {1: [(30.0, 50.0), (150.0, 360.0)], 4: [(20.0, 40.0)]}
"""mm on the photographs."""


def alike(found, wanted):
    return found.keys() == wanted.keys() and all(
        np.allclose(found[n], wanted[n], atol=1e-9) for n in wanted
    )


def test_picked_points_are_kept_in_one_step_and_saved(doc, bundle, tmp_path):
    set_picked(bundle, PICKED)
    assert doc.UndoCount == 1 and alike(picked(bundle), PICKED)
    path = str(tmp_path / "picked.FCStd")
    doc.saveAs(path)
    doc.undo()
    assert picked(bundle) == {}
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(path)
    (found,) = [one for one in again.Objects if hasattr(one, "Leaves")]
    assert alike(picked(found), PICKED)
    set_picked(found, {4: PICKED[4]})
    assert alike(picked(found), {4: PICKED[4]}), "a leaf without any loses what it had"


def test_other_registers_leave_them_on_their_photographs(doc, bundle, sawn):
    set_picked(bundle, PICKED)
    apply_registers(bundle, {n: sawn.leaf(n).register.inverse() for n in sawn.numbers})
    doc.recompute()
    assert alike(picked(bundle), PICKED)


def test_they_turn_with_their_leaf(doc, bundle):
    set_picked(bundle, PICKED)
    leaf = bundle.Leaves[0]
    turn_end(leaf)
    doc.recompute()
    width, length = leaf.Width.Value, leaf.Length.Value
    turned = [(width - x, length - y) for x, y in PICKED[1]]
    assert alike(picked(bundle), {**PICKED, 1: turned})


def test_what_is_no_number_is_refused_before_anything_is_written(doc, bundle):
    with pytest.raises(VeneerError):
        set_picked(bundle, {1: [(10.0, 10.0)], 2: [(math.nan, 1.0)]})
    assert picked(bundle) == {} and doc.UndoCount == 0


def test_what_is_no_leaf_in_a_bundle_has_no_points(doc, bundle):
    stray = doc.addObject("App::FeaturePython", "Stray")
    bundle.Leaves = [*bundle.Leaves, stray]
    set_picked(bundle, PICKED)
    assert alike(picked(bundle), PICKED)
