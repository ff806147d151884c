# SPDX-License-Identifier: LGPL-2.1-or-later
"""A packet is whole or not there, and never takes the place of an older one."""

import os
from dataclasses import replace

import pytest

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.buildup import Border, BuildUp, Core, Show
from veneerwb.core.shop import packet
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import Letters, Stroke
from veneerwb.core.shop.drawing.legible import bounds
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS, Box
from veneerwb.core.shop.packet import (
    LONGEST_NAME,
    LeftOut,
    PacketFile,
    named,
    safe_name,
    write_packet,
)
from veneerwb.core.shop.pages import captioned, contents
from veneerwb.core.shop.pages.pictures import Pictured

FILES = named(
    [PacketFile("contents", ".pdf", "What is in the packet.", b"%PDF-1"),
     PacketFile("cut list: <all> pieces", ".csv", "The pieces.", b"a,b\n")]
)  # fmt: skip


def test_files_are_numbered_in_their_order():
    names = [file.file_name for file in FILES]
    assert names == ["01 contents.pdf", "02 cut list- -all- pieces.csv"]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Hall table", "Hall table"), ("a/b\\c:d", "a-b-c-d"), ("../../etc", "etc"),
        ("..", "top"), ("", "top"), ("CON", "top CON"), ("a\x00b\nc", "a b c"),
        ("x" * 300, "x" * LONGEST_NAME), ("name. ", "name"),
    ],
)  # fmt: skip
def test_names_are_such_as_every_system_takes(text, name):
    assert safe_name(text) == name


def test_a_packet_is_written_whole_and_an_older_one_stays(tmp_path):
    first = write_packet(tmp_path, "Table", "AB12CD", FILES)
    assert first.name == "Table AB12CD"
    (first / "01 contents.pdf").write_bytes(b"older")
    second = write_packet(tmp_path, "Table", "AB12CD", FILES)
    assert second.name == "Table AB12CD (2)"
    assert (first / "01 contents.pdf").read_bytes() == b"older"
    assert {one.name: one.read_bytes() for one in second.iterdir()} == {
        file.file_name: file.data for file in FILES
    }
    assert sorted(one.name for one in tmp_path.iterdir()) == [first.name, second.name]


def test_a_full_disk_leaves_nothing(tmp_path, monkeypatch):
    real, calls = os.fsync, []

    def full(handle):
        calls.append(handle)
        if len(calls) == 2:
            raise OSError(28, "No space left on device")
        real(handle)

    monkeypatch.setattr(packet.os, "fsync", full)
    with pytest.raises(VeneerError, match="No space left on device.*has room"):
        write_packet(tmp_path, "Table", "AB12CD", FILES)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", ["missing", "file"])
def test_a_folder_that_is_none_is_refused_in_one_sentence(tmp_path, name):
    (tmp_path / "file").write_text("kept")
    with pytest.raises(VeneerError, match="could not be written"):
        write_packet(tmp_path / name, "Table", "AB12CD", FILES)
    assert [one.name for one in tmp_path.iterdir()] == ["file"]
    assert (tmp_path / "file").read_text() == "kept"


def test_two_files_of_one_name_are_refused(tmp_path):
    """For some systems large and small letters are the same."""
    for name in ("01 Contents.pdf", "01 CONTENTS.pdf"):
        with pytest.raises(VeneerError, match="01 contents.pdf"):
            write_packet(tmp_path, "Table", "AB12CD", [FILES[0], replace(FILES[0], file_name=name)])
    with pytest.raises(VeneerError, match="nothing"):
        write_packet(tmp_path, "Table", "AB12CD", [])
    assert list(tmp_path.iterdir()) == []


def test_the_contents_list_all_that_is_there_what_lacks_and_what_must_be_known():
    one = [PacketFile(f"Template {k}", ".pdf", "For one piece.", b"%PDF") for k in range(80)]
    files = named(one)
    look = Look(paper=PAPERS["A4 upright"], title="Table", revision="AB12CD", rests="It rests.")
    left_out = [LeftOut("Pinning", "No two pins find room."), LeftOut("Press day", "No size.")]
    made = contents.pages(look, files, left_out, ["STOP: too wide."])
    said = [" ".join(m.text for m in p.drawing.marks if isinstance(m, Letters)) for p in made]
    whole = " ".join(said)
    assert all(file.file_name in whole for file in files)
    assert "left out: Pinning" in whole and "No two pins find room." in whole
    assert "STOP: too wide." in said[0] and "2 parts are left out" in said[0]
    assert all("AB12CD" in text and "Dry-lay before glue" in text for text in said)


@pytest.mark.parametrize("size", [(1000.0, 600.0), (100.0, 1400.0)])
def test_the_picture_by_itself_has_its_caption_below_the_whole_top(size):
    layout = radial(Stock(900.0, 1500.0, 8, 0.6), Top.rectangle(*size), ways=4)
    how = BuildUp(Show(0.6), core=Core(18.0), border=Border(20.0, "walnut"))
    look = Look(title="Table", revision="AB12CD", rests="It rests on the figure.")
    built = Built(how, Top.rectangle(size[0] + 40.0, size[1] + 40.0))
    shown = Pictured(Box(-size[0] / 2, -size[1] / 2, *size), b"picture")
    drawn = captioned.captioned(layout, look, shown, built)
    letters = [m for m in drawn.marks if isinstance(m, Letters)]
    said = " ".join(m.text for m in letters)
    assert "Table, revision AB12CD" in said and "without a photograph: border" in said
    assert "It rests on the figure." in said and "..." not in said
    tinted = [m for m in drawn.marks if isinstance(m, Stroke) and m.fill]
    lowest = min(p[1] for m in tinted for s in m.edge for p in (s.start, s.end))
    assert tinted and all(m.at[1] + m.height < lowest for m in letters)
    box = bounds(drawn.marks)
    assert box.x >= 0.0 and box.y >= 0.0 and box.right <= drawn.wide and box.top <= drawn.high
