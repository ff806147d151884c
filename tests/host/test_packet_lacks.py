# SPDX-License-Identifier: LGPL-2.1-or-later
"""A packet that lacks a part says so; one that cannot be written leaves nothing; several tops of
one stack share it."""

import re

import pytest

from veneerwb.core import VeneerError
from veneerwb.core.shop import packet as packets
from veneerwb.host import bench as benches
from veneerwb.host import packet
from veneerwb.host.objects import add_match, add_stock
from veneerwb.host.objects.base import Refused
from veneerwb.host.objects.bench import add_bench


def test_a_stack_that_cannot_be_pinned_is_told_and_the_rest_is_there(bench, written, tmp_path):
    bench.PinMargin = 190.0
    made = written(bench, tmp_path)
    assert list(made.lacks) == ["Pinning", "Cutting plan"]
    assert "This packet is not whole: 2 parts are left out" in made.contents
    assert made.lacks["Pinning"][:40] in made.contents
    assert any("Marking" in name for name in made.names)
    assert any(name.endswith(".dxf") for name in made.names)


def test_a_finding_that_says_not_to_cut_heads_the_contents(bench, written, tmp_path):
    assert "STOP" not in written(bench, tmp_path).contents
    bench.Match.Diameter = 700.0
    made = written(bench, tmp_path)
    assert made.left_out == () or "Pinning" in made.lacks
    assert "STOP, do not cut by this packet" in made.contents


def test_what_not_to_cut_by_is_said_in_the_units_of_the_sheets(bench):
    bench.Match.Diameter, bench.Unit = 700.0, "inch"
    bench.Document.recompute()
    there = benches.at_bench(bench)
    stops = [one.text for one in there.findings if one.level == "stop"]
    said = packet.Packet(there).warnings
    assert any(re.search(r"\d mm\b", one) for one in stops)
    assert len(said) >= len(stops) and not any(re.search(r"\d mm\b", one) for one in said)
    assert any(re.search(r"\d in\b", one) for one in said)


def test_a_saw_without_boards_gets_no_plan(bench, written, tmp_path):
    bench.CutBy, bench.Boards = "saw", 0.0
    made = written(bench, tmp_path)
    assert "between boards" in made.lacks["Cutting plan"]


def test_a_press_without_sizes_is_told(bench, written, tmp_path):
    bench.Press = "press"
    made = written(bench, tmp_path)
    assert list(made.lacks) == ["Press day"] and "platen" in made.lacks["Press day"]
    assert "left out: Press day" in made.contents


def test_without_ezdxf_the_packet_says_how_to_get_it(bench, written, tmp_path, monkeypatch):
    monkeypatch.setitem(__import__("sys").modules, "ezdxf", None)
    made = written(bench, tmp_path)
    assert list(made.lacks) == ["Templates as DXF"]
    assert "python3-ezdxf" in made.contents
    assert not [name for name in made.names if name.endswith(".dxf")]
    assert [name for name in made.names if name.endswith(".svg")]


def test_what_nobody_foresaw_leaves_out_its_part_only(bench, written, tmp_path, monkeypatch):
    def broken(*_):
        raise ZeroDivisionError("nought")

    monkeypatch.setattr(packet, "press_day", broken)
    made = written(bench, tmp_path)
    assert "ZeroDivisionError: nought" in made.lacks["Press day"]


def test_a_part_of_which_one_file_fails_is_left_out_whole(doc, written, tmp_path, monkeypatch):
    from veneerwb.core.shop.templates import svg as template_svg

    real, calls = template_svg.svg, []

    def second_fails(*given):
        calls.append(given)
        if len(calls) == 2:
            raise OSError(5, "broken")
        return real(*given)

    monkeypatch.setattr(template_svg, "svg", second_fails)
    match = add_match(doc, add_stock(doc, 400.0, 500.0, 8), Kind="Diamond", Top="Rectangle",
                      Length=400.0, Width=300.0)  # fmt: skip
    made = written(add_bench(doc, match, CutBy="machine", AtOnce=0.0), tmp_path)
    assert list(made.lacks) == ["Templates as SVG"] and len(calls) == 2
    assert not [name for name in made.names if name.endswith(".svg")]


def test_without_sheets_there_is_no_packet(bench, tmp_path):
    bench.CloseBetween = [1, 3]
    bench.Document.recompute()
    with pytest.raises(VeneerError, match="last joint"):
        packet.write(bench, str(tmp_path))
    assert list(tmp_path.iterdir()) == []


def test_a_refused_match_makes_no_packet(bench, tmp_path):
    bench.Match.Ways = 7
    bench.Document.recompute()
    with pytest.raises(Refused, match="nothing can be cut by it"):
        packet.write(bench, str(tmp_path))
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("when", [1, 4, 9, 16])
def test_a_packet_that_is_stopped_leaves_nothing(bench, tmp_path, when):
    heard = []

    def stop(share):
        heard.append(share)
        if len(heard) == when:
            raise Refused("Stopped.")

    with pytest.raises(Refused, match="Stopped"):
        packet.write(bench, str(tmp_path), stop)
    assert len(heard) == when and heard == sorted(heard)
    assert list(tmp_path.iterdir()) == []


def test_a_second_packet_lies_beside_the_first(bench, written, tmp_path):
    first = written(bench, tmp_path)
    before = {one.name: one.read_bytes() for one in first.folder.iterdir()}
    second = written(bench, tmp_path)
    assert second.folder.name == f"{first.folder.name} (2)" and second.names == first.names
    assert {one.name: one.read_bytes() for one in first.folder.iterdir()} == before


def test_a_folder_that_vanished_and_one_that_is_a_file(bench, tmp_path):
    (tmp_path / "file").write_text("kept")
    for name in ("gone", "file"):
        with pytest.raises(VeneerError, match="could not be written"):
            packet.write(bench, str(tmp_path / name))
    assert [one.name for one in tmp_path.iterdir()] == ["file"]


def test_a_folder_that_may_not_be_written_to(bench):
    with pytest.raises(VeneerError, match="may write to"):
        packet.write(bench, "/proc")


def test_a_full_disk(bench, tmp_path, monkeypatch):
    real, calls = packets.os.fsync, []

    def full(handle):
        calls.append(handle)
        if len(calls) == 5:
            raise OSError(28, "No space left on device")
        real(handle)

    monkeypatch.setattr(packets.os, "fsync", full)
    with pytest.raises(VeneerError, match="has room"):
        packet.write(bench, str(tmp_path))
    assert list(tmp_path.iterdir()) == []


# --- several tops from one stack ----------------------------------------------------------------


def test_tops_of_one_stack_share_pins_plan_and_offcuts(doc, written, tmp_path):
    stock = add_stock(doc, 300.0, 900.0, 8)
    match, other = (
        add_match(doc, stock, Ways=4, Diameter=200.0, Oversize=5.0, AutoPlacement=False,
                  TipX=150.0, TipY=y)
        for y in (200.0, 500.0)
    )  # fmt: skip
    other.Label = "Second"
    bench = add_bench(doc, match, Title="First", Together=[other])
    made = written(bench, tmp_path)
    assert made.left_out == ()
    plan = made.text("Cutting plan.pdf")
    assert match.Revision in plan and other.Revision in plan and "of top 2" in plan
    assert len(list(made.folder.glob("*.dxf"))) == 2 == len(list(made.folder.glob("*.csv")))
    (second,) = made.folder.glob("*top 2.svg")
    said = second.read_text("utf-8")
    assert other.Revision in said and "Second" in said
    assert benches.bench_of_match(other) is None


def test_what_lies_in_another_bundle_is_not_cut_together(doc, bench, tmp_path):
    other = add_match(doc, add_stock(doc, 300.0, 400.0, 8), Ways=4, Diameter=200.0)
    bench.Together = [other]
    doc.recompute()
    with pytest.raises(Refused, match="cannot be cut together"):
        made = packet.write(bench, str(tmp_path))
        raise AssertionError(made.left_out)
    assert list(tmp_path.iterdir()) == []
