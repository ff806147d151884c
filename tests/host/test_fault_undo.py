# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two hundred random operations with undo and redo among them: every undo brings back what was, and
the document ends as a fresh recompute of the same properties makes it."""

import random

import FreeCAD
import pytest

from veneerwb.core import Fault, sawn_bundle
from veneerwb.core.plane import Motion
from veneerwb.host import areas, sequence, spots
from veneerwb.host.objects import (
    add_build_up,
    add_bundle,
    add_closing,
    add_match,
    add_stock,
    layout,
)
from veneerwb.host.objects.base import kind_of
from veneerwb.host.objects.bench import add_bench
from veneerwb.host.photos import sha256_of
from veneerwb.host.steps import one_step

OPERATIONS, MOST = 200, 19
HISTORY = {"ChangedPieces"}  # says what the last change altered
FILES = {"Photo", "BackPhoto", "Picture"}
SKIPPED = {"Proxy", "ExpressionEngine", "Shape", "ShapeMaterial"}
VALUES = {
    "Ways": (4, 6, 8), "Diameter": (200.0, 260.0, 320.0), "Oversize": (0.0, 4.0),
    "Turn": ("book", "slip"), "First": (1, 2, 3), "TipX": (90.0, 100.0, 110.0),
    "TipY": (150.0, 200.0, 230.0), "Axis": (80.0, 90.0, 100.0), "Margin": (0.0, 3.0),
    "Spares": (0, 1), "Kind": ("Radial", "Radial", "Box"),
    "WedgeAngle": (0.0, 59.5), "HiddenDisc": (0.0, 30.0),
}  # fmt: skip
ADDED = {"Match": 2, "Stock": 1, "Closing": 1, "BuildUp": 1, "Bench": 1}
"""How many there may be of each, so that the test takes seconds."""
OF_BUNDLE = {
    "Thickness": (0.6, 0.9), "Back": ("next", "previous", "own"), "EvenLight": (True, False),
    "Species": ("oak", "ash"), "Slope": (0.0, 2.0),
}  # fmt: skip


def shown(value):
    """A property's value as something that can be compared."""
    if hasattr(value, "Name") and hasattr(value, "Document"):
        return value.Name
    if isinstance(value, (list, tuple)):
        return [shown(one) for one in value]
    return str(value)


def looked_at(doc):
    """All that can be compared of a document: its objects, their properties and pictures."""
    found = {}
    for obj in doc.Objects:
        for name in obj.PropertiesList:
            if name in SKIPPED | HISTORY or name.startswith("_"):
                continue
            value = getattr(obj, name)
            if name in FILES and value:
                value = sha256_of(value)
            found[obj.Name, name] = shown(value)
        if "Shape" in obj.PropertiesList:
            shape = obj.Shape
            size = "" if shape.isNull() else f"{shape.Volume:.6f} {shape.Area:.6f}"
            found[obj.Name, "Shape"] = f"{len(shape.Faces)} {size}"
    return found


def differing(before, after):
    return {
        key: (before.get(key), after.get(key))
        for key in before.keys() | after.keys() if before.get(key) != after.get(key)
    }  # fmt: skip


class Maker:
    """Does one random thing at a time, each in a step of its own."""

    def __init__(self, doc, seed):
        self.doc, self.random = doc, random.Random(seed)
        self.kinds = [
            self.match_value, self.match_value, self.match_value, self.bundle_value,
            self.leaf_value, self.registers, self.faults, self.turn, self.add, self.delete,
            self.delete, self.spot,
        ]  # fmt: skip

    def some(self, kind):
        return [obj for obj in self.doc.Objects if kind_of(obj) == kind]

    def one(self, kind):
        found = self.some(kind)
        return self.random.choice(found) if found else None

    def change(self):
        """Does something, in a step; its name."""
        what = self.random.choice(self.kinds)
        with one_step(self.doc, what.__name__):
            what()
            self.doc.recompute()
        return what.__name__

    def small(self, most):
        """Of three decimals: a file keeps no more than sixteen digits."""
        return round(self.random.uniform(-most, most), 3)

    def set_value(self, obj, values):
        name = self.random.choice(sorted(values))
        if obj is not None:
            setattr(obj, name, self.random.choice(values[name]))

    def match_value(self):
        self.set_value(self.one("Match"), VALUES)

    def bundle_value(self):
        self.set_value(self.one("Bundle"), OF_BUNDLE)

    def leaf_value(self):
        leaf = self.one("Leaf")
        leaf.RegisterX, leaf.RegisterAngle = self.small(3.0), self.small(1.0)

    def registers(self):
        bundle = self.one("Bundle")
        found = {
            leaf.Number: Motion(self.small(1.0), self.small(3.0), 1.0)
            for leaf in bundle.Leaves
        }
        if self.random.random() < 0.7:
            sequence.apply_registers(bundle, found, "figure")
        else:
            sequence.unregister(bundle)

    def faults(self):
        from shapely.geometry import box

        x, y = 60.0 + self.small(40.0), 160.0 + self.small(140.0)
        faults = [Fault(box(x, y, x + 20, y + 30), "knot")]
        if self.random.random() < 0.5:
            areas.set_faults(self.one("Leaf"), faults)
        else:
            areas.set_through_faults(self.one("Bundle"), faults)

    def turn(self):
        sequence.turn_end(self.one("Leaf"))

    def add(self):
        match, made = self.one("Match"), self.random.choice([*ADDED])
        if len(self.some(made)) >= ADDED[made]:
            return
        if made == "Match" or match is None:
            add_match(self.doc, self.one("Bundle"), Ways=6, Diameter=240.0)
        elif made == "Stock":
            add_stock(self.doc, 200.0, 400.0, 12)
        elif made == "Closing":
            add_closing(self.doc, match)
        elif made == "Bench":
            add_bench(self.doc, match)
        elif match.BuildUp is None:
            add_build_up(self.doc, match, BorderWidth=20.0, BorderKind="following")

    def delete(self):
        obj = self.one(self.random.choice(["Match", "Closing", "Bench", "Stock", "Spot"]))
        if obj is not None and not obj.InList:
            self.doc.removeObject(obj.Name)

    def spot(self):
        match = self.one("Match")
        if match is None or self.some("Spot"):
            return
        if match.Kind == "Radial" and not match.Message and match.BuildUp is None:
            spots.keep(match, layout(match), f"Spot {self.random.randrange(9)}")


@pytest.fixture(scope="module")
def leaves():
    return sawn_bundle(leaves=12, width=200.0, length=400.0, mm_per_px=8.0, seed=3, backs=[1, 3])


@pytest.mark.parametrize("seed", [1])
def test_two_hundred_operations_and_a_fresh_recompute_agree(doc, leaves, tmp_path, seed):
    with one_step(doc, "start"):
        add_match(doc, add_bundle(doc, leaves), Ways=6, Diameter=240.0)
        doc.recompute()
    doc.clearUndos()
    maker, chance = Maker(doc, seed), random.Random(seed + 100)
    past, future, done = [looked_at(doc)], [], []
    for _ in range(OPERATIONS):
        roll = chance.random()
        if roll < 0.2 and len(past) > 1 and doc.UndoCount:
            done.append(f"undo {doc.UndoNames[0]}")
            doc.undo()
            future.append(past.pop())
        elif roll < 0.35 and future and doc.RedoCount:
            done.append(f"redo {doc.RedoNames[0]}")
            doc.redo()
            past.append(future.pop())
        else:
            if doc.UndoCount == MOST:  # the host drops the oldest, which we could not see
                doc.clearUndos()
                past = past[-1:]
            steps = doc.UndoCount
            done.append(maker.change())
            assert doc.UndoCount - steps in (0, 1), done[-3:]
            if doc.UndoCount == steps:  # nothing was changed
                assert not differing(past[-1], looked_at(doc)), done[-3:]
            else:
                past, future = [*past, looked_at(doc)], []
            continue
        doc.recompute()
        assert not differing(past[-1], looked_at(doc)), done[-5:]
    kinds = {name.split()[0] for name in done}
    assert kinds >= {"undo", "redo", "match_value", "registers", "faults", "turn", "add", "delete"}
    add_match(doc, maker.one("Bundle"), Ways=6, Diameter=240.0)
    doc.recompute()
    assert any(kind_of(obj) == "Match" and not obj.Message for obj in doc.Objects)
    before = looked_at(doc)
    for obj in doc.Objects:
        obj.touch()
    doc.recompute()
    assert not differing(before, looked_at(doc))
    doc.saveAs(str(tmp_path / "end.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "end.FCStd"))
    for obj in again.Objects:
        if "ShapeMark" in obj.PropertiesList and not obj.Message:
            obj.ShapeMark = ""  # so that shapes are made anew
        obj.touch()
    again.recompute()
    assert not differing(before, looked_at(again))
