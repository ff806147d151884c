# SPDX-License-Identifier: LGPL-2.1-or-later
"""The main job without a screen: a generated bundle is proved and registered from its photographs,
then laid as a round top in 16 ways, then 12 by a spreadsheet cell, and that goes to the bench.

Runs inside FreeCAD (`bash resources/demo/run.sh`) and writes into out/.
"""

from __future__ import annotations

import shutil
import sys
from pathlib import Path
from typing import Any

import FreeCAD
import numpy as np

from veneerwb.core import (
    Bundle,
    Disturbance,
    Motion,
    VeneerError,
    check,
    prove_sequence,
    register,
    sawn_bundle,
)
from veneerwb.core.checks.finding import report
from veneerwb.core.files import write_beside
from veneerwb.core.photos.reading import save_png
from veneerwb.core.sequence import registered
from veneerwb.core.shop.cutlist import write_csv
from veneerwb.core.shop.cutting.methods import SAW
from veneerwb.host import bench as benches
from veneerwb.host import packet
from veneerwb.host.objects import add_bundle, add_match, layout
from veneerwb.host.objects.base import Refused
from veneerwb.host.objects.bench import add_bench
from veneerwb.host.objects.closing import add_closing
from veneerwb.paint import picture

OUT = Path(__file__).resolve().parents[2] / "out"
PX_PER_MM = 0.75
TITLE = "Round table top"
SHOP = {
    "CutBy": "saw", "Kerf": SAW.kerf, "Lean": SAW.lean, "AtOnce": SAW.most, "Boards": SAW.board,
    "SeamsCut": "over by an angle",
    "Press": "vacuum bag", "PressWidth": 1500.0, "PressLength": 1600.0, "MostPressure": 85.0,
    "Altitude": 250.0, "Price": 480.0, "PricePer": "bundle", "Currency": "EUR",
}  # fmt: skip
"""An invented shop: a saw with sandwich boards, a vacuum bag with its pump, the bundle's price."""


def main() -> None:
    """A round table of 1200 mm from 24 leaves of 380 x 1000 mm, backs photographed too."""
    OUT.mkdir(exist_ok=True)
    doc = FreeCAD.newDocument("RoundTop")
    bundle = add_bundle(doc, register(proved(photographed())))
    bundle.Follows = "figure"  # what `register` goes by
    sheet = doc.addObject("Spreadsheet::Sheet", "Sizes")
    sheet.set("A1", "ways")
    sheet.set("B1", "16")
    sheet.setAlias("B1", "ways")
    match = add_match(doc, bundle, Diameter=1200.0, Oversize=10.0, Margin=3.0, Order="spread")
    match.setExpression("Ways", "Sizes.ways")
    shown = []
    for ways in (16, 12):
        sheet.set("B1", str(ways))
        doc.recompute()
        if match.Message:
            sys.exit(match.Message)
        write(match, f"top-{ways}-ways")
        shown.append(picture(layout(match), px_per_mm=0.4))
    save_png(OUT / "both.png", np.hstack(shown))
    to_the_bench(match)
    doc.saveAs(str(OUT / "round-top.FCStd"))


def photographed() -> Bundle:
    """24 leaves and their backs, every photograph shifted and turned a little, unnoted."""
    sawn = sawn_bundle(
        leaves=24,
        width=380,
        length=1000,
        thickness=0.6,
        mm_per_px=0.8,
        figure="cathedral",
        seed=11,
        disturb=Disturbance(shift=6.0, turn=0.8, exposure=0.0, noise=0.005),
        backs=True,
        knots=0,
    )
    return registered(sawn, {number: Motion() for number in sawn.numbers})


def proved(bundle: Bundle) -> Bundle:
    """The bundle, if its photographs prove its order."""
    proof = prove_sequence(bundle)
    said = "\n".join([proof.text, *(suspect.text for suspect in proof.suspects)])
    write_beside(OUT / "proof.txt", lambda file: file.write(f"{said}\n".encode()))
    if proof.suspects or not proof.sure:
        sys.exit(said)
    print(said)
    return bundle


def write(match: Any, name: str) -> None:
    """The picture, the cut list and the checks of a match as it stands now."""
    laid = layout(match)
    save_png(OUT / f"{name}.png", picture(laid, px_per_mm=PX_PER_MM))
    save_png(
        OUT / f"{name}-numbered.png", picture(laid, px_per_mm=PX_PER_MM, seams=True, numbers=True)
    )
    write_csv(laid, OUT / f"{name}-cut-list.csv")
    found = report(check(laid, margin=float(match.Margin), spares=match.Spares))
    write_beside(OUT / f"{name}-checks.txt", lambda file: file.write(found.encode("utf-8")))
    solids, area = len(match.Shape.Solids), match.Shape.Volume / laid.bundle.thickness
    print(f"{name}: {solids} solids, {area / 1e6:.6f} m2, revision {laid.revision}")


def to_the_bench(match: Any) -> None:
    """The sheets of a match in its document, and its packet in a fresh folder."""
    doc = match.Document
    closing = add_closing(doc, match)
    doc.recompute()
    bench = add_bench(doc, match, Title=TITLE, SeamAngle=closing.Over, **SHOP)
    doc.recompute()
    benches.refresh(bench)
    doc.recompute()
    if bench.Message or bench.State:
        sys.exit(bench.Message or bench.State)
    packets = OUT / "packet"
    packets.mkdir(exist_ok=True)
    for old in packets.glob(f"{TITLE} *"):
        shutil.rmtree(old)
    written = packet.write(bench, str(packets))
    if written.left_out:
        sys.exit("\n".join(f"{part.name}: {part.why}" for part in written.left_out))
    print(f"\nthe packet: {written.folder.relative_to(OUT.parent)}")


if __name__ == "__main__":
    try:
        main()
    except (VeneerError, Refused) as refused:
        sys.exit(str(refused))
