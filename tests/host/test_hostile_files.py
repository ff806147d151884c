# SPDX-License-Identifier: LGPL-2.1-or-later
"""Files given to a document and files that it keeps, made to break what reads them; what it writes
stays in the folder chosen, and nothing is asked of the network."""

import os
import socket
import struct
import time
import zipfile
import zlib
from pathlib import Path

import FreeCAD
import numpy as np
import pytest
from PIL import Image

from veneerwb.core import VeneerError
from veneerwb.core.photos.preparing import Preparation
from veneerwb.host import backs, inventory, packet, photos, values
from veneerwb.host import bench as benches
from veneerwb.host.bringing_in import bring_in
from veneerwb.host.objects import (
    add_bench,
    add_bundle,
    add_bundle_from_photos,
    add_facing,
    add_leaf,
    add_match,
)
from veneerwb.host.objects.base import Refused
from veneerwb.host.turning import changed_copy


def png(width, height):
    head = b"IHDR" + struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + head
            + struct.pack(">I", zlib.crc32(head)))  # fmt: skip


STRANGE = {
    "text1.jpg": lambda path: path.write_text("A leaf.\n" * 99),
    "empty2.jpg": lambda path: path.write_bytes(b""),
    "wide3.png": lambda path: path.write_bytes(png(60_000, 60_000)),
    "half4.png": lambda path: path.write_bytes(png(60, 60)),
    "folder5.jpg": lambda path: path.mkdir(),
    "pipe6.jpg": lambda path: os.mkfifo(path),
    "zero7.jpg": lambda path: path.symlink_to("/dev/zero"),
    "loop8.jpg": lambda path: path.symlink_to(path),
    "gone9.jpg": lambda path: None,
    "eps10.jpg": lambda path: Image.new("RGB", (60, 90)).save(path, "EPS"),
    "gif11.jpg": lambda path: Image.new("RGB", (60, 90)).save(path, "GIF"),
    "dot12.png": lambda path: Image.new("RGB", (1, 1)).save(path),
}
BY_SCALE = Preparation(mm_per_px=1.0)
WAYS = {
    "a leaf": lambda doc, path: add_leaf(doc, path, 1, 1.0),
    "a bundle": lambda doc, path: add_bundle_from_photos(doc, [path], 1.0, 0.6),
    "leaves": lambda doc, path: bring_in(doc, [path], BY_SCALE, 0.6),
    "leaves with backs": lambda doc, path: bring_in(
        doc, [good(path)], BY_SCALE, 0.6, backs={1: path}),
    "a size": lambda doc, path: photos.shape_of(path),
    "a photograph": lambda doc, path: photos.included(str(path), 1.0),
    "a turned copy": lambda doc, path: changed_copy(
        str(path), lambda p: p[::-1], str(path.parent), "turned"),
}  # fmt: skip


def good(path):
    there = path.with_name("good1.png")
    grain = np.random.default_rng(1).integers(60, 200, (90, 60, 3), np.uint8)
    Image.fromarray(grain).save(there)
    return there


def refused(call, *args):
    """The one sentence with which a call is refused, without waiting."""
    began = time.monotonic()
    with pytest.raises((VeneerError, Refused)) as caught:
        call(*args)
    text = str(caught.value)
    assert time.monotonic() - began < 5.0 and "\n" not in text and text.endswith(".")
    return text


@pytest.mark.parametrize("way", WAYS)
def test_no_way_into_a_document_takes_what_is_no_photograph(way, doc, tmp_path):
    for name, make in STRANGE.items():
        path = tmp_path / name
        make(path)
        refused(WAYS[way], doc, path)
        assert doc.Objects == [] and doc.UndoCount == 0, name


def test_no_photograph_of_a_back_is_taken_that_is_none(doc, sawn, tmp_path):
    bundle = add_bundle(doc, sawn)
    doc.recompute()
    for name, make in STRANGE.items():
        path = tmp_path / name
        make(path)
        refused(backs.made_ready, bundle, {2: path}, str(tmp_path))


KEPT = {name: STRANGE[name] for name in ("text1.jpg", "empty2.jpg", "wide3.png", "half4.png",
                                         "eps10.jpg", "gif11.jpg", "dot12.png")}  # fmt: skip


@pytest.mark.parametrize("name", KEPT)
def test_a_kept_photograph_that_was_exchanged_is_told_by_all_that_show_it(
    name, doc, sawn, tmp_path, capfd
):
    """As the archive of a document may be changed by hand."""
    bundle = add_bundle(doc, sawn)
    doc.recompute()
    doc.saveAs(str(tmp_path / "whole.FCStd"))
    kept = Path(bundle.Leaves[0].Photo).name
    FreeCAD.closeDocument(doc.Name)
    KEPT[name](tmp_path / name)
    whole, changed = tmp_path / "whole.FCStd", tmp_path / "changed.FCStd"
    with zipfile.ZipFile(whole) as old, zipfile.ZipFile(changed, "w") as new:
        for one in old.namelist():
            there = (tmp_path / name).read_bytes() if one == kept else old.read(one)
            new.writestr(one, there)
    capfd.readouterr()
    again = FreeCAD.openDocument(str(changed))
    bundle = again.getObject("Bundle")
    block = again.addObject("Part::Box", "Block")
    match = add_match(again, bundle, Ways=4, Diameter=150.0)
    facing = add_facing(again, bundle.Leaves[0], [(block, "Face6")])
    for obj in again.Objects:
        obj.touch()
    again.recompute()
    for obj in (bundle.Leaves[0], bundle, match, facing):
        text = obj.Message
        assert text.endswith(".") and "could not be recomputed" not in text and "\n" not in text
    assert "Traceback" not in "".join(capfd.readouterr())
    refused(values.core_bundle, bundle)


# --- what is written ----------------------------------------------------------------------------

TITLES = ("../../x", "/etc/x", "..", "a\\..\\b", "\U0001f600" * 90, "nul", "-rf *", "%2e%2e/x",
          "=cmd|' /C x'!A0", "<script>&\"'")  # fmt: skip


def test_a_packet_named_by_a_document_stays_in_the_folder_chosen(doc, stock, tmp_path, no_network):
    match = add_match(doc, stock, Ways=4, Diameter=300.0)
    bench = add_bench(doc, match)
    doc.recompute()
    into = tmp_path / "around" / "chosen"
    into.mkdir(parents=True)
    for k, title in enumerate(TITLES, start=1):
        bench.Title = bench.Owner = match.Label = title
        doc.recompute()
        if k == 1 or title.startswith("<"):  # whole packets take their time
            folder = packet.write(bench, str(into)).folder
        else:
            there = benches.at_bench(bench)
            folder = packet.Packet(there).written(str(into), list(cut_lists(there)), [])
        assert folder.parent == into
        for path in folder.rglob("*.csv"):
            assert not any(line.startswith(("=", "+", "@", "-r")) or ",=" in line
                           for line in path.read_text().splitlines())  # fmt: skip
        for path in folder.rglob("*.svg"):
            assert "<script>" not in path.read_text()
    assert [path.name for path in tmp_path.iterdir()] == ["around"]
    assert [path.name for path in (tmp_path / "around").iterdir()] == ["chosen"]
    assert len(list(into.iterdir())) == len(TITLES)


def cut_lists(there):
    return packet.Packet(there)._cut_lists()


def test_the_sheets_of_a_document_run_no_cell(doc, stock):
    match = add_match(doc, stock, Ways=4, Diameter=300.0)
    bench = add_bench(doc, match, Title="=1+1")
    match.Label = "=2+2"
    doc.recompute()
    benches.refresh(bench)
    doc.recompute()
    sheet = next(one for one in doc.Objects if one.isDerivedFrom("Spreadsheet::Sheet"))
    cells = [sheet.getContents(f"{column}{row}") for column in "ABCD" for row in range(1, 20)]
    assert any("=1+1" in cell for cell in cells)
    assert not any(cell.startswith("=") for cell in cells)


@pytest.fixture
def no_network(monkeypatch):
    """Whoever opens a socket fails."""

    def refuse(*args, **kwargs):
        raise AssertionError("a socket was opened")

    for name in ("socket", "create_connection", "getaddrinfo", "socketpair"):
        monkeypatch.setattr(socket, name, refuse)


def test_from_photographs_to_sheets_nothing_is_asked_of_the_network(doc, tmp_path, no_network):
    bundle = bring_in(doc, [good(tmp_path / "x.png")], Preparation(mm_per_px=5.0), 0.6)
    match = add_match(doc, bundle, Kind="Side by side", Top="Rectangle", Length=200, Width=120)
    doc.recompute()
    assert match.Message == ""
    benches.refresh(add_bench(doc, match))
    inventory.write_inventory([bundle], tmp_path / "list.csv")
