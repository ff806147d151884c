# SPDX-License-Identifier: LGPL-2.1-or-later
"""What goes to the bench, inside FreeCAD: sheets, packet, closing the ring, largest tops; with the
plain way as the peer where there is one."""

from __future__ import annotations

import itertools
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import FreeCAD
import numpy as np
from shapely.geometry import Point, box

from veneerwb.core import Stock, Top, sawn_bundle
from veneerwb.core.shop.closing import (
    Errors,
    least_over,
    replayed,
)
from veneerwb.core.shop.closing.over import hows
from veneerwb.core.yields.largest import largest_tops
from veneerwb.host import bench as benches
from veneerwb.host import packet
from veneerwb.host.objects import add_bundle, add_match
from veneerwb.host.objects.bench import add_bench

sys.path.insert(0, str(Path(__file__).parent))
from table import Row, give, seconds

WAYS, RUNS = 12, 10_000
LEAF = 300.0, 900.0


def once(work: Callable[[], Any]) -> tuple[float, Any]:
    begun = time.perf_counter()
    done = work()
    return time.perf_counter() - begun, done


def on_paper(folder: Path) -> None:
    """Sheets on the host's pages, and the packet, of a top of 1200 mm in 12 ways."""
    doc = FreeCAD.newDocument("Shop")
    bundle = add_bundle(doc, sawn_bundle(
        leaves=WAYS, width=380, length=1000, thickness=0.6, mm_per_px=0.8, figure="ripple", seed=11,
    ))  # fmt: skip
    match = add_match(doc, bundle, Ways=WAYS, Diameter=1200.0, Oversize=10.0)
    doc.recompute()
    bench = add_bench(doc, match, Title="Round top")
    doc.recompute()
    benches.refresh(bench)  # once for what is imported on first use

    def refreshed() -> None:
        benches.refresh(bench)
        doc.recompute()

    taken = seconds(refreshed, 3)
    what = f"of a top of 1200 mm in {WAYS} ways"
    give(Row("shop", f"all sheets {what} made anew on the host's pages", taken, "s"))
    packet.write(bench, str(folder))
    taken, written = once(lambda: packet.write(bench, str(folder)))
    if written.left_out:
        raise RuntimeError(f"left out of the packet: {written.left_out}")
    files = len(list(written.folder.iterdir()))
    theirs = seconds(lambda: doc.saveCopy(str(folder / "copy.FCStd")), 3)
    give(Row(
        "shop", f"packet {what}, {files} files", taken, "s",
        "the host's saving of the same document", theirs,
    ))  # fmt: skip
    FreeCAD.closeDocument(doc.Name)


def closing() -> None:
    """How much over to cut, reckoned; the plain way tries 10,000 rings for each over, half by half
    of the range as we do."""
    errors = Errors(template=0.05, piece=0.05)
    how = hows(WAYS)[0]
    ours = seconds(lambda: least_over(WAYS, errors, 0.95, how), 5)
    over = least_over(WAYS, errors, 0.95, how)
    rng = np.random.default_rng(1)

    def trues(cut: float) -> bool:
        template = rng.normal(0.0, errors.template, (RUNS, 1))
        angles = cut + template + rng.normal(0.0, errors.piece, (RUNS, WAYS))
        halves = angles.reshape(RUNS, 2, WAYS // 2).sum(axis=2)
        return bool((halves >= 180.0).all(axis=1).mean() >= 0.95)

    def simulated() -> float:
        low, high = 360.0 / WAYS, 360.0 / WAYS + 1.0
        while high - low > 0.01:
            middle = (low + high) / 2
            low, high = (low, middle) if trues(middle) else (middle, high)
        return high - 360.0 / WAYS

    theirs = seconds(simulated, 1)
    give(Row(
        "shop", f"closing: least over to cut, {WAYS} ways, true in 95 of 100", 1e3 * ours, "ms",
        f"the plain way: {RUNS} rings drawn for each over", 1e3 * theirs,
    ))  # fmt: skip
    give(Row(
        "shop", "the over that it advises", over.degrees, "deg", "by the drawn rings", simulated()
    ))
    give(Row(
        "shop", "rings that true with that over, drawn one by one", replayed(over, RUNS) / RUNS, "",
        "what it claims", over.claimed, "ours >= 0.945",
    ))  # fmt: skip


def largest() -> None:
    """The largest top in 12 ways of plain leaves, against spots 20 mm and 6 degrees apart."""
    stock = Stock(*LEAF, WAYS, 0.6)
    ours, (row,) = once(lambda: largest_tops(stock, Top.round(200.0), ways=WAYS))
    every, rows = once(lambda: largest_tops(stock, Top.round(200.0)))
    theirs, reach = once(plain)
    give(Row(
        "shop", f"largest round top in {WAYS} ways, leaves of {LEAF[0]:g} x {LEAF[1]:g} mm", ours,
        "s", "the plain way: spots 20 mm, directions 6 deg apart", theirs,
    ))  # fmt: skip
    give(Row("shop", "its diameter", row.size, "mm", "the plain way's", 2 * reach, "ratio >= 1"))
    give(Row("shop", f"table of the largest tops in {len(rows)} numbers of ways", every, "s"))


def plain() -> float:
    """The largest reach by trial: at each spot the nearest point of the edge within the wedge."""
    edge = box(0.0, 0.0, *LEAF).exterior
    points = np.array([edge.interpolate(s).coords[0] for s in np.arange(0.0, edge.length, 2.0)])
    best, inside = 0.0, box(0.0, 0.0, *LEAF)
    across, along = np.arange(5.5, LEAF[0] - 5, 20.0), np.arange(5.5, LEAF[1] - 5, 20.0)
    for x, y in itertools.product(across, along):
        if not inside.contains(Point(x, y)):
            continue
        away = np.hypot(*(points - (x, y)).T)
        turns = np.degrees(np.arctan2(points[:, 1] - y, points[:, 0] - x))
        for angle in np.arange(0.0, 360.0, 6.0):
            off = np.abs((turns - angle + 180.0) % 360.0 - 180.0)
            best = max(best, away[off <= 180.0 / WAYS].min(initial=np.inf))
    return best


def main() -> None:
    with tempfile.TemporaryDirectory(prefix="shop-") as folder:
        on_paper(Path(folder))
    closing()
    largest()


if __name__ == "__main__":
    main()
