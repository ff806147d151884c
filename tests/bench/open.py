# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times the opening of a document of 48 leaves with photographs of 3 megapixels, and a match of all
of them: without a window, or in one until its pictures are on the screen. The peer is the bare
reading of the same file from its archive, and of its photographs. Run inside FreeCAD, with or
without its window; what it says goes to the file VENEERWB_REPORT, or is printed."""

from __future__ import annotations

import io
import os
import statistics
import tempfile
import time
import zipfile
from pathlib import Path
from typing import Any

import FreeCAD
import numpy as np
from PIL import Image

from veneerwb.core import sawn_bundle
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos import Photo
from veneerwb.host.objects import add_bundle, add_match

LEAVES, WIDTH, LENGTH, MM_PER_PX = 48, 400.0, 1200.0, 0.4
SAWN, TIMES = 8, 5


def bundle() -> Bundle:
    """So many leaves of 1000 x 3000 pixels: a few are sawn and serve for the others, each with its
    own noise of the camera, so that no two files are alike."""
    sawn = sawn_bundle(
        leaves=SAWN, width=WIDTH, length=LENGTH, thickness=0.6, mm_per_px=2.0 * MM_PER_PX,
        figure="cathedral", seed=5,
    )  # fmt: skip
    size = round(WIDTH / MM_PER_PX), round(LENGTH / MM_PER_PX)
    rng = np.random.default_rng(5)
    noise = rng.normal(0.0, 4.0, (size[1], size[0], 3)).astype(np.int16)
    large = [
        np.asarray(Image.fromarray(leaf.photo).resize(size, Image.BICUBIC)).astype(np.int16)
        for leaf in sawn.leaves
    ]
    leaves = []
    for number in range(1, LEAVES + 1):
        pixels = large[number % SAWN] + np.roll(noise, 37 * number, axis=(0, 1))
        photo = Photo.of(np.clip(pixels, 0, 255).astype(np.uint8), MM_PER_PX)
        leaves.append(Leaf(number, Side(photo)))
    return Bundle(tuple(leaves), 0.6, "next")


def made(path: Path) -> None:
    """Saves the document at `path`."""
    doc = FreeCAD.newDocument("Made")
    match = add_match(doc, add_bundle(doc, bundle()), Ways=LEAVES, Diameter=1600.0)
    doc.recompute()
    if match.Message:
        raise RuntimeError(match.Message)
    doc.saveAs(str(path))
    FreeCAD.closeDocument(doc.Name)


def read(path: Path) -> tuple[float, float]:
    """Seconds to take all files out of the archive, and to decode its photographs besides."""
    begun = time.perf_counter()
    with zipfile.ZipFile(path) as archive:
        files = {name: archive.read(name) for name in archive.namelist()}
    taken = time.perf_counter() - begun
    for name, data in files.items():
        if name.endswith(".jpg"):
            Image.open(io.BytesIO(data)).load()
    return taken, time.perf_counter() - begun


def opened(path: Path) -> tuple[float, float, float]:
    """Seconds until the host has opened the document, until its window shows the pictures, and of
    the processor."""
    begun, worked = time.perf_counter(), time.process_time()
    doc = FreeCAD.openDocument(str(path))
    there = time.perf_counter() - begun
    if FreeCAD.GuiUp:
        shown(doc)
    seen, worked = time.perf_counter() - begun, time.process_time() - worked
    match = doc.getObject("Match")
    if match.Message or len(match.Shape.Solids) != LEAVES:
        raise RuntimeError(f"the document is not whole: {match.Message}")
    FreeCAD.closeDocument(doc.Name)
    return there, seen, worked


def shown(doc: Any) -> None:
    """Waits until the view has painted the match with its leaves' pictures."""
    import FreeCADGui
    from PySide import QtGui

    view = doc.getObject("Match").ViewObject
    for _ in range(10_000):
        QtGui.QApplication.processEvents()
        if view.Proxy.laid is not None:
            break
    else:
        raise RuntimeError("the pictures never came")
    FreeCADGui.getDocument(doc.Name).ActiveView.redraw()
    QtGui.QApplication.processEvents()


def seconds(all_of_them: list[float]) -> str:
    return f"{statistics.median(all_of_them):.2f} s (at most {max(all_of_them):.2f})"


def main() -> None:
    if FreeCAD.GuiUp:
        import FreeCADGui

        FreeCADGui.activateWorkbench("VeneerWorkbench")
    with tempfile.TemporaryDirectory(prefix="open-") as folder:
        path = Path(folder) / "Leaves.FCStd"
        made(path)
        opened(path)  # once for what is imported on first use
        taken, decoded = zip(*[read(path) for _ in range(TIMES)])
        there, seen, worked = zip(*[opened(path) for _ in range(TIMES)])
        lines = [
            f"{LEAVES} leaves of {WIDTH / MM_PER_PX:.0f} x {LENGTH / MM_PER_PX:.0f} pixels, "
            f"{path.stat().st_size / 1e6:.0f} MB, a match of {LEAVES} ways; {TIMES} times:",
            f"peer: all files out of the archive {seconds(list(taken))}, and the photographs "
            f"decoded {seconds(list(decoded))}",
            f"opened: {seconds(list(there))}, {seconds(list(worked))} of the processor with all "
            f"that is shown; {statistics.median(there) / statistics.median(taken):.1f} times the "
            "peer",
        ]
        if FreeCAD.GuiUp:
            lines.append(f"on the screen: {seconds(list(seen))}")
    if report := os.environ.get("VENEERWB_REPORT"):
        Path(report).write_text("\n".join(lines) + "\n", encoding="utf-8")
    else:
        print("\n".join(lines))


main()
