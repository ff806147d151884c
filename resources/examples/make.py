# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes round-top.FCStd, which the command Open Example opens a copy of.

Runs inside FreeCAD without a window (`bash resources/demo/run.sh example`): on the oldest host, so
that every host opens it. A generated bundle, a round top in 12 ways, its build-up and its bench.
"""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD

from veneerwb.core import sawn_bundle
from veneerwb.host.objects import add_bench, add_build_up, add_bundle, add_closing, add_match

HERE = Path(__file__).resolve().parent
LEAVES = {
    "leaves": 14, "width": 340.0, "length": 900.0, "thickness": 0.6, "mm_per_px": 1.4,
    "figure": "cathedral", "seed": 11, "knots": 0,
}  # fmt: skip
PANEL = {
    "CoreThickness": 18.0, "CoreMaterial": "Birch plywood", "BackerThickness": 0.6,
    "BackerMaterial": "Ash", "LippingWidth": 8.0, "LippingMaterial": "Ash", "LippingSegments": 4,
}  # fmt: skip


def main() -> None:
    doc = FreeCAD.newDocument("Example")
    bundle = add_bundle(doc, sawn_bundle(**LEAVES))
    bundle.Label, bundle.Species = "Example bundle", "Ash"
    match = add_match(doc, bundle, Ways=12, Diameter=1000.0, Oversize=10.0, Margin=3.0)
    match.Label = "Round top"
    doc.recompute()
    add_build_up(doc, match, **PANEL)
    closing = add_closing(doc, match)
    doc.recompute()
    bench = add_bench(
        doc, match, Title="Round top", SeamsCut="over by an angle", SeamAngle=closing.Over
    )
    doc.recompute()
    said = [obj.Message for obj in doc.Objects if getattr(obj, "Message", "")]
    if said or len(match.Shape.Solids) != 12 or bench.Match is not match:
        sys.exit("\n".join(said) or "The example is not whole.")
    doc.saveAs(str(HERE / "round-top.FCStd"))
    for old in HERE.glob("*.FCStd1"):
        old.unlink()


if __name__ == "__main__":
    main()
