# SPDX-License-Identifier: LGPL-2.1-or-later
"""A full disk, as the system says it: one sentence, what was there stays, nothing is left."""

import errno
import os
import subprocess
from contextlib import contextmanager

import numpy as np
import pytest

from veneerwb.core import Stock, Top, VeneerError, chalk, files, radial, sawn_bundle
from veneerwb.core.buildup import BuildUp, Core, Show
from veneerwb.core.buildup.bill import bill, write_bill
from veneerwb.core.inventory import Entry, Particulars
from veneerwb.core.inventory import write_csv as write_inventory
from veneerwb.core.photos.reading import save_jpeg, save_png
from veneerwb.core.shop import cutlist
from veneerwb.core.shop.packet import PacketFile, named, write_packet
from veneerwb.core.shop.templates.dxf import write_dxf
from veneerwb.core.shop.templates.make import templates
from veneerwb.core.shop.templates.svg import write_svg
from veneerwb.paint.chalk import write_pdf
from veneerwb.paint.paper import targets_sheet

resource = pytest.importorskip("resource")
ROOM = 64
"""Bytes that still find room: less than any of the files has."""
PIXELS = np.random.default_rng(1).integers(0, 255, (90, 60, 3), np.uint8)


@pytest.fixture(scope="module")
def layout():
    return radial(Stock(400.0, 900.0, 12, 0.6), Top.round(500.0), ways=6)


WRITERS = {
    "cut list.csv": lambda path, laid: cutlist.write_csv(laid, path),
    "bundles.csv": lambda path, laid: write_inventory([Entry(Particulars(name="Oak"))], path),
    "bill.csv": lambda path, laid: write_bill(
        bill(BuildUp(Show(0.6), core=Core(18.0)).parts(Top.round(500.0))), "Table", path
    ),
    "template.dxf": lambda path, laid: write_dxf(templates(laid)[0], path),
    "template.svg": lambda path, laid: write_svg(templates(laid)[0], path),
    "picture.png": lambda path, laid: save_png(path, PIXELS),
    "picture.jpg": lambda path, laid: save_jpeg(path, PIXELS),
    "marks.pdf": lambda path, laid: targets_sheet(path, [1, 2]),
}


@contextmanager
def full():
    """Within it no file of this process may grow beyond ROOM: the system refuses it. It must end
    before pytest writes on, whose output may be a longer file."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (ROOM, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


@pytest.mark.parametrize("name", WRITERS)
def test_a_file_that_finds_no_room_leaves_the_former_one(tmp_path, layout, name):
    path = tmp_path / name
    WRITERS[name](path, layout)
    former = path.read_bytes()
    assert len(former) > ROOM
    with full(), pytest.raises(VeneerError, match="could not be written.*that has room") as caught:
        WRITERS[name](path, layout)
    assert name in str(caught.value) and "\n" not in str(caught.value)
    assert path.read_bytes() == former and os.listdir(tmp_path) == [name]


class Full:
    """A file whose disk is full at its so-manieth write, or when it is closed."""

    def __init__(self, stream, at):
        self.stream, self.at, self.closing = stream, at, at == "close"

    def write(self, data):
        if self.at == 0:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        self.at = self.at if self.closing else self.at - 1
        return self.stream.write(data)

    def __getattr__(self, name):
        return getattr(self.stream, name)

    def __enter__(self):
        return self

    def __exit__(self, *failed):
        self.stream.close()
        if self.closing:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


@pytest.mark.parametrize("at", [0, "close"])
@pytest.mark.parametrize("name", ["cut list.csv", "picture.png", "picture.jpg"])
def test_whenever_the_disk_is_full_it_is_said(tmp_path, layout, monkeypatch, name, at):
    path = tmp_path / name
    path.write_bytes(b"former")
    opened = lambda *a: Full(open(*a), at)  # noqa: E731, SIM115
    monkeypatch.setattr(files, "open", opened, raising=False)
    with pytest.raises(VeneerError, match="No space left on device"):
        WRITERS[name](path, layout)
    assert path.read_bytes() == b"former" and os.listdir(tmp_path) == [name]


def test_a_packet_that_finds_no_room_is_not_there(tmp_path):
    parts_of_it = named([PacketFile("a", ".csv", "A.", b"x" * 10 * k) for k in range(1, 12)])
    (tmp_path / "Table AB12CD").mkdir()
    with full(), pytest.raises(VeneerError, match="The packet could not be written.*that has room"):
        write_packet(tmp_path, "Table", "AB12CD", parts_of_it)
    assert os.listdir(tmp_path) == ["Table AB12CD"]


@pytest.fixture
def tiny(tmp_path):
    """A disk of 64 KB, where this user may make one."""
    made = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=64k", "none", str(tmp_path)], capture_output=True
    )
    if made.returncode:
        pytest.skip("only root can mount a small disk")
    yield tmp_path
    subprocess.run(["umount", "-l", str(tmp_path)], check=True)


def test_a_disk_that_is_full_in_truth(tiny, layout):
    (tiny / "picture.png").write_bytes(b"former")
    (tiny / "filling").write_bytes(b"x" * 56_000)
    with pytest.raises(VeneerError, match="No space left on device"):
        save_png(tiny / "picture.png", PIXELS)
    with pytest.raises(VeneerError, match="No space left on device"):
        write_packet(tiny, "Table", "AB12CD", named([PacketFile("a", ".csv", "A.", b"x" * 9_000)]))
    assert sorted(os.listdir(tiny)) == ["filling", "picture.png"]
    assert (tiny / "picture.png").read_bytes() == b"former"
    (tiny / "filling").unlink()
    save_png(tiny / "picture.png", PIXELS)
    assert (tiny / "picture.png").stat().st_size > ROOM


@pytest.mark.parametrize("ending", [".csv", ".pdf"])
def test_a_list_to_chalk_finds_no_room(tmp_path, ending):
    marks = chalk.chalk_list(sawn_bundle(leaves=2, width=60.0, length=120.0, mm_per_px=4.0))
    write = {".csv": chalk.write_csv, ".pdf": lambda m, path: write_pdf(m, "Marks", path)}[ending]
    path = tmp_path / f"chalk{ending}"
    write(marks, path)
    former = path.read_bytes()
    assert ending == ".csv" or former.startswith(b"%PDF-") and b"%%EOF" in former[-64:]
    with full(), pytest.raises(VeneerError, match="could not be written"):
        write(marks, path)
    assert path.read_bytes() == former and os.listdir(tmp_path) == [path.name]
