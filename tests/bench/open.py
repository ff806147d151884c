# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times the opening of a document of 48 leaves with photographs of 3 megapixels, and a match of all
of them: without a window, or in one until its pictures are on the screen. The peer is the host's
own opening of a document of as many pictures of its own (image planes); what the bare reading of
the archive and of its photographs takes is told besides."""

from __future__ import annotations

import io
import statistics
import sys
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
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import add_bundle, add_match

sys.path.insert(0, str(Path(__file__).parent))
from table import Growth, Row, give, tell

LEAVES, WIDTH, LENGTH, MM_PER_PX = (12, 24, 48), 400.0, 1200.0, 0.4
SAWN, TIMES = 8, 5
PLANE = "Image::ImagePlane"


def bundle(count: int) -> Bundle:
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
    for number in range(1, count + 1):
        pixels = large[number % SAWN] + np.roll(noise, 37 * number, axis=(0, 1))
        photo = Photo.of(np.clip(pixels, 0, 255).astype(np.uint8), MM_PER_PX)
        leaves.append(Leaf(number, Side(photo)))
    return Bundle(tuple(leaves), 0.6, "next")


def made(path: Path, count: int) -> None:
    """Saves the document at `path`."""
    doc = FreeCAD.newDocument("Made")
    match = add_match(doc, add_bundle(doc, bundle(count)), Ways=count, Diameter=1600.0)
    doc.recompute()
    if match.Message:
        raise RuntimeError(match.Message)
    doc.saveAs(str(path))
    FreeCAD.closeDocument(doc.Name)


def of_the_host(path: Path, ours: Path) -> None:
    """Saves a document with the photographs of ours as the host's own image planes."""
    doc = FreeCAD.newDocument("Peer")
    with tempfile.TemporaryDirectory(prefix="open-") as folder, zipfile.ZipFile(ours) as archive:
        for name in archive.namelist():
            if name.endswith(".jpg"):
                plane = doc.addObject(PLANE, "Picture")
                plane.ImageFile = archive.extract(name, folder)
                plane.XSize, plane.YSize = WIDTH, LENGTH
        doc.recompute()
        doc.saveAs(str(path))
    FreeCAD.closeDocument(doc.Name)


def opened_by_host(path: Path, count: int) -> float:
    """Seconds until the host has opened that, in a window until it is painted."""
    begun = time.perf_counter()
    doc = FreeCAD.openDocument(str(path))
    if FreeCAD.GuiUp:
        painted(doc)
    taken = time.perf_counter() - begun
    if len(doc.findObjects(PLANE)) != count:
        raise RuntimeError("the host's own document is not whole")
    FreeCAD.closeDocument(doc.Name)
    return taken


def painted(doc: Any) -> None:
    import FreeCADGui
    from PySide import QtGui

    QtGui.QApplication.processEvents()
    FreeCADGui.getDocument(doc.Name).ActiveView.redraw()
    QtGui.QApplication.processEvents()


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


def opened(path: Path, count: int) -> tuple[float, float, float]:
    """Seconds until the host has opened the document, until its window shows the pictures, and of
    the processor."""
    begun, worked = time.perf_counter(), time.process_time()
    doc = FreeCAD.openDocument(str(path))
    there = time.perf_counter() - begun
    if FreeCAD.GuiUp:
        shown(doc)
    seen, worked = time.perf_counter() - begun, time.process_time() - worked
    match = doc.getObject("Match")
    if match.Message or len(match.Shape.Solids) != count:
        raise RuntimeError(f"the document is not whole: {match.Message}")
    FreeCAD.closeDocument(doc.Name)
    return there, seen, worked


def shown(doc: Any) -> None:
    """Waits until the view has painted the match with its leaves' pictures."""
    from PySide import QtGui

    view = doc.getObject("Match").ViewObject
    for _ in range(10_000):
        QtGui.QApplication.processEvents()
        if view.Proxy.laid is not None:
            break
    else:
        raise RuntimeError("the pictures never came")
    painted(doc)


def median(path: Path, count: int) -> list[float]:
    """What `opened` gives, its medians."""
    opened(path, count)  # once for what is imported on first use
    return [statistics.median(each) for each in zip(*[opened(path, count) for _ in range(TIMES)])]


def main() -> None:
    where = "until its pictures are on the screen" if FreeCAD.GuiUp else "without a window"
    if FreeCAD.GuiUp:
        import FreeCADGui

        FreeCADGui.activateWorkbench("VeneerWorkbench")
    costs, most = [], LEAVES[-1]
    counts = LEAVES[-1:] if FreeCAD.GuiUp else LEAVES
    with tempfile.TemporaryDirectory(prefix="open-") as folder:
        peer = Path(folder) / "Peer.FCStd"
        for count in counts:
            path = Path(folder) / f"{count}.FCStd"
            made(path, count)
            there, seen, worked = median(path, count)
            costs.append(seen)
        of_the_host(peer, path)
        opened_by_host(peer, most)
        theirs = statistics.median(opened_by_host(peer, most) for _ in range(TIMES))
        taken, decoded = (statistics.median(each) for each in zip(*[read(path) for _ in range(3)]))
        size = path.stat().st_size / 1e6
    tell(
        f"{size:.0f} MB; bare reading of the archive {taken:.2f} s, with its photographs decoded "
        f"{decoded:.2f} s; opened after {there:.2f} s, {worked:.2f} s of the processor in all"
    )
    pixels = WIDTH / MM_PER_PX * LENGTH / MM_PER_PX / 1e6
    give(Row(
        "open", f"document of {most} leaves of {pixels:.0f} megapixels opened {where}", costs[-1],
        "s", "the host's own, of as many image planes", theirs, "ours <= 3",
        chosen=bool(FreeCAD.GuiUp),
    ))  # fmt: skip
    if len(costs) > 1:
        give(Growth("open", f"document opened {where}", "leaves", LEAVES, tuple(costs), "s"))


main()
