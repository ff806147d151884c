# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times the main job beside its peers, inside FreeCAD, and prints one line a figure."""

from __future__ import annotations

import itertools
import statistics
import time
from collections.abc import Callable
from typing import Any

import Draft
import FreeCAD
import numpy as np
import Part

from veneerwb.core import Placement, Stock, Top, radial, sawn_bundle
from veneerwb.host.objects import add_match, add_stock
from veneerwb.paint import picture
from veneerwb.paint.live import LivePicture

ROUNDS = 15


def seconds(work: Callable[[], Any], rounds: int = ROUNDS) -> float:
    """Median seconds of `work`, after one call that does not count."""
    work()
    taken = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return statistics.median(taken)


def say(what: str, ours: float, peer: str, theirs: float) -> None:
    print(f"{what}: {1e3 * ours:.1f} ms; {peer}: {1e3 * theirs:.1f} ms; ratio {ours / theirs:.2f}")


def alternating(doc: Any, change: Callable[[float], None]) -> Callable[[], None]:
    """A recompute of the document after a change of size, another one at each call."""
    state = {"by": 0.0}

    def work() -> None:
        state["by"] = 1.0 - state["by"]
        change(state["by"])
        doc.recompute()

    return work


def our_recompute(ways: int) -> float:
    """Changing the diameter of a match on plain leaf sizes."""
    doc = FreeCAD.newDocument("Ours")
    stock = add_stock(doc, width=1500.0, length=1500.0, leaves=64, thickness=0.6)
    match = add_match(doc, stock, Ways=ways)
    work = alternating(doc, lambda by: setattr(match, "Diameter", 1200.0 + by))
    taken = seconds(work)
    assert len(match.Shape.Solids) == ways
    FreeCAD.closeDocument(doc.Name)
    return taken


def polar_array_recompute(ways: int) -> float:
    """Changing the same wedge, drawn by hand, under the host's polar array."""
    doc = FreeCAD.newDocument("Peer")
    wedge = doc.addObject("Part::Feature", "Wedge")

    def draw(by: float) -> None:
        (piece, *_) = radial(Stock(1500, 1500, 64, 0.6), Top.round(1200 + by), ways=ways).pieces
        ends = [FreeCAD.Vector(*segment.start) for segment in piece.edge]
        middle = FreeCAD.Vector(*piece.edge[1].middle)
        edges = [
            Part.makeLine(ends[0], ends[1]),
            Part.Arc(ends[1], middle, ends[2]).toShape(),
            Part.makeLine(ends[2], ends[0]),
        ]
        wedge.Shape = Part.Face(Part.Wire(edges)).extrude(FreeCAD.Vector(0, 0, 0.6))

    draw(0.0)
    array = Draft.make_polar_array(wedge, ways, 360.0, FreeCAD.Vector(0, 0, 0), False)
    taken = seconds(alternating(doc, draw))
    assert len(array.Shape.Solids) == ways
    FreeCAD.closeDocument(doc.Name)
    return taken


def remapped(layout: Any, px_per_mm: float, size: int) -> np.ndarray:
    """The picture as a C++ image library makes it: maps for each wedge's window, bilinear remap,
    mask."""
    import cv2

    out = np.zeros((size, size, 3), np.uint8)
    for piece in layout.pieces:
        corners = np.asarray(piece.outline.exterior.coords)
        pixels = np.column_stack(
            (corners[:, 0] * px_per_mm + size / 2, size / 2 - corners[:, 1] * px_per_mm)
        )
        low = np.maximum(np.floor(pixels.min(0)).astype(int), 0)
        high = np.minimum(np.ceil(pixels.max(0)).astype(int), size)
        side = layout.bundle.leaf(piece.leaf).side(piece.turned)
        motion = side.view @ piece.onto_bundle
        a, b, d, e = motion.matrix
        x = ((np.arange(low[0], high[0], dtype=np.float32) + 0.5 - size / 2) / px_per_mm)[None, :]
        y = ((size / 2 - np.arange(low[1], high[1], dtype=np.float32) - 0.5) / px_per_mm)[:, None]
        per_mm = 1.0 / side.mm_per_px
        across = (a * x + b * y + motion.dx) * per_mm - 0.5
        down = side.photo.shape[0] - (d * x + e * y + motion.dy) * per_mm - 0.5
        warped = cv2.remap(
            side.photo,
            across.astype(np.float32),
            down.astype(np.float32),
            cv2.INTER_LINEAR,
            borderMode=cv2.BORDER_REPLICATE,
        )
        mask = np.zeros(warped.shape[:2], np.uint8)
        cv2.fillPoly(mask, [np.round(pixels - low - 0.5).astype(np.int32)], 255)
        cv2.copyTo(warped, mask, out[low[1] : high[1], low[0] : high[0]])
    return out


def pictures() -> None:
    try:
        import cv2
    except ImportError:
        print("picture: not compared, OpenCV is not here")
        return
    cv2.setNumThreads(1)
    bundle = sawn_bundle(
        leaves=12, width=380, length=700, thickness=0.6, mm_per_px=1.0, figure="ripple", seed=3
    )
    layout = radial(bundle, Top.round(1024), ways=12)
    ours = picture(layout, px_per_mm=1.0)[..., :3].astype(float)
    theirs = remapped(layout, 1.0, 1024).astype(float)
    inside = np.hypot(*np.mgrid[-511.5:512, -511.5:512]) < 505
    print(f"picture, mean difference of the two: {np.abs(ours - theirs)[inside].mean():.2f} of 255")
    say(
        "picture, 12 ways at 1024 x 1024",
        seconds(lambda: picture(layout, px_per_mm=1.0)),
        "OpenCV remap with its maps, one thread",
        seconds(lambda: remapped(layout, 1.0, 1024)),
    )


def dragging() -> None:
    """The live top while a wedge is dragged: another placement each time."""
    try:
        import cv2
    except ImportError:
        print("live: not compared, OpenCV is not here")
        return
    cv2.setNumThreads(1)
    bundle = sawn_bundle(
        leaves=24, width=380, length=700, thickness=0.6, mm_per_px=1.0, figure="ripple", seed=3
    )
    top, scale, size = Top.round(790), 1.0, 800
    layouts = [
        radial(bundle, top, ways=24, placement=Placement(190 + k, 150 + 2 * k, 90 + k))
        for k in range(7)
    ]
    live, turns = LivePicture(size, size, scale), itertools.count()

    def ours() -> None:
        live.paint(layouts[next(turns) % len(layouts)])

    def theirs() -> None:
        remapped(layouts[next(turns) % len(layouts)], scale, size)

    say(
        "live top, 24 ways at 800 x 800", seconds(ours, 3 * ROUNDS),
        "OpenCV remap with its maps, one thread", seconds(theirs, 3 * ROUNDS),
    )


def main() -> None:
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document").SetBool("SaveThumbnail", False)
    say(
        "recompute of a 24-way match",
        our_recompute(24),
        "the host's polar array",
        polar_array_recompute(24),
    )
    few, many = our_recompute(8), our_recompute(64)
    print(
        f"growth from 8 to 64 ways: {1e3 * few:.1f} ms to {1e3 * many:.1f} ms, {many / few:.1f} "
        f"times "
        "(8 times would be linear)"
    )
    pictures()
    dragging()


if __name__ == "__main__":
    main()
