# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times the main job beside its peers, inside FreeCAD: a match recomputed, its picture, the live
top, and what each costs with more ways."""

from __future__ import annotations

import itertools
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import Draft
import FreeCAD
import numpy as np
import Part

from veneerwb.core import Placement, Stock, Top, check, radial, sawn_bundle
from veneerwb.host.objects import add_match, add_stock
from veneerwb.paint import picture
from veneerwb.paint.live import LivePicture

sys.path.insert(0, str(Path(__file__).parent))
from table import Growth, Row, give, seconds, tell

ROUNDS = 15
WAYS = 8, 16, 32, 64
OPENCV = "OpenCV's remap and the making of its maps"


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
    taken = seconds(work, ROUNDS)
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
    taken = seconds(alternating(doc, draw), ROUNDS)
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


def recomputes() -> None:
    costs = {ways: our_recompute(ways) for ways in (*WAYS, 24)}
    give(Row(
        "bench", "a match of 24 ways recomputed: laid, checked, 24 solids, numbers",
        1e3 * costs.pop(24), "ms", "the host's polar array of the same solid",
        1e3 * polar_array_recompute(24), "ratio <= 1", chosen=True,
    ))  # fmt: skip
    grown("a match recomputed", [1e3 * cost for cost in costs.values()])


def grown(what: str, costs: list[float]) -> None:
    give(Growth("bench", what, "ways", WAYS, tuple(costs), "ms", linear=True))


def opencv() -> bool:
    """Whether the peer is here; it may use one thread, as we do."""
    try:
        import cv2
    except ImportError:
        return False
    cv2.setNumThreads(1)
    return True


def pictures() -> None:
    bundle = sawn_bundle(
        leaves=12, width=380, length=700, thickness=0.6, mm_per_px=1.0, figure="ripple", seed=3
    )
    layout = radial(bundle, Top.round(1024), ways=12)
    ours = picture(layout, px_per_mm=1.0)[..., :3].astype(float)
    theirs = remapped(layout, 1.0, 1024).astype(float)
    inside = np.hypot(*np.mgrid[-511.5:512, -511.5:512]) < 505
    give(Row(
        "bench", "the two pictures of 12 ways, mean difference of 255 levels",
        float(np.abs(ours - theirs)[inside].mean()), "", "OpenCV's remap", aim="ours <= 2",
    ))
    give(Row(
        "bench", "picture of 12 ways, 1024 x 1024",
        1e3 * seconds(lambda: picture(layout, px_per_mm=1.0), ROUNDS), "ms", OPENCV,
        1e3 * seconds(lambda: remapped(layout, 1.0, 1024), ROUNDS), "ratio <= 0.333", chosen=True,
    ))


def dragged(bundle: Any, ways: int) -> list[Any]:
    """Layouts while a wedge is dragged: another placement each time."""
    return [
        radial(bundle, Top.round(790), ways, placement=Placement(190 + k, 150 + 2 * k, 90 + k))
        for k in range(7)
    ]


def painted_live(layouts: list[Any]) -> float:
    live, turns = LivePicture(800, 800, 1.0), itertools.count()
    return seconds(lambda: live.paint(layouts[next(turns) % len(layouts)]), 3 * ROUNDS)


def dragging() -> None:
    bundle = sawn_bundle(
        leaves=24, width=380, length=700, thickness=0.6, mm_per_px=1.0, figure="ripple", seed=3
    )
    layouts, turns = dragged(bundle, 24), itertools.count()
    theirs = seconds(
        lambda: remapped(layouts[next(turns) % len(layouts)], 1.0, 800), 3 * ROUNDS
    )
    give(Row(
        "bench", "live top of 24 ways while it is dragged, 800 x 800", 1e3 * painted_live(layouts),
        "ms", OPENCV, 1e3 * theirs, "ratio <= 0.333",
    ))


def growth() -> None:
    """The same with more ways, from one bundle that has leaves enough for all."""
    bundle = sawn_bundle(
        leaves=64, width=380, length=700, thickness=0.6, mm_per_px=2.0, figure="ripple", seed=3
    )
    tops = {ways: radial(bundle, Top.round(790), ways) for ways in WAYS}
    for what, work in (
        ("laid and checked", lambda n: check(radial(bundle, Top.round(790), n))),
        ("picture, 800 x 800", lambda n: picture(tops[n], px_per_mm=1.0)),
    ):
        grown(what, [1e3 * seconds(lambda n=n, work=work: work(n), 7) for n in WAYS])
    grown("live top, 800 x 800", [1e3 * painted_live(dragged(bundle, n)) for n in WAYS])


def main() -> None:
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document").SetBool("SaveThumbnail", False)
    recomputes()
    if opencv():
        pictures()
        dragging()
    else:
        tell("pictures: not compared, OpenCV is not here")
    growth()


if __name__ == "__main__":
    main()
