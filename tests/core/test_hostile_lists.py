# SPDX-License-Identifier: LGPL-2.1-or-later
"""Inventories that are anything but, and lists and folders named by whoever wrote the document."""

import csv
import io
import os
import threading
import time
from functools import partial
from pathlib import Path

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.buildup.bill import Row, bill_csv
from veneerwb.core.inventory import (
    COLUMNS,
    MOST_BYTES,
    Entry,
    Inventory,
    Particulars,
    as_csv,
    from_csv,
    read_csv,
    write_csv,
)
from veneerwb.core.shop import cutlist
from veneerwb.core.shop.packet import PacketFile, named, safe_name, write_packet

HEADINGS = [heading for heading, *_ in COLUMNS]
FORMULA = tuple("=+-@\t\r\n\uff1d\uff0b\uff0d\uff20")


def read_or_a_sentence(path):
    """An inventory, or the code of a refusal in one sentence; within 5 s."""
    began = time.monotonic()
    try:
        return read_csv(path)
    except VeneerError as error:
        assert "\n" not in str(error) and str(error).endswith(".") and len(str(error)) < 2000
        return error.code
    finally:
        assert time.monotonic() - began < 5.0


@pytest.fixture(scope="module")
def box(tmp_path_factory):
    """A folder for all examples of a test."""
    return tmp_path_factory.mktemp("lists")


# --- reading ------------------------------------------------------------------------------------

CELL = st.one_of(
    st.text(max_size=12),
    st.sampled_from([
        "", "1e999", "-1e999", "nan", "inf", "1e300", "-1", "0x10", "1_000", "1,5", "1.250,5",
        "9" * 400, "9" * 5000, "=1+1", "\0", '"', '""', "'", "a\nb", "face", "\u0661\u0662",
        "--1", "1e-320", "1,234", "\ud7ff", "12%", "x" * 6000,
    ]),
    st.floats().map(str), st.integers().map(str),
)  # fmt: skip
TABLE = st.tuples(
    st.lists(st.one_of(st.sampled_from(HEADINGS), st.text(max_size=6)), max_size=8),
    st.lists(st.lists(CELL, max_size=9), max_size=5),
)
ENCODINGS = ("utf-8", "utf-8-sig", "utf-16", "utf-16-le", "latin-1", "cp1252", "utf-32")


@settings(max_examples=150)
@given(TABLE, st.sampled_from(",;\t|"), st.sampled_from(ENCODINGS), st.booleans())
@example((["bundle", "cut"], [["=1+1", "'=1"], ["a\nb", "-1"]]), ",", "utf-8", True)
@example((["cost"], [["9" * 5000]]), ",", "utf-8", True)
@example((["leaves"], [["1e999"]]), ",", "utf-8", True)
@example((["bundle"] * 2, [["a", "b"]]), ",", "utf-8", True)
def test_any_table_is_read_or_refused_in_a_sentence(box, table, separator, encoding, proper):
    heads, rows = table
    if proper:
        out = io.StringIO()
        csv.writer(out, delimiter=separator).writerows([heads, *rows])
        text = out.getvalue()
    else:
        text = "\n".join(separator.join(cells) for cells in (heads, *rows))
    path = box / "table.csv"
    path.write_bytes(text.encode(encoding, "replace"))
    found = read_or_a_sentence(path)
    if isinstance(found, Inventory):  # and what was taken goes out and comes back
        written = as_csv(found.entries)
        assert as_csv(from_csv(written).entries) == written


@settings(max_examples=150)
@given(st.binary(max_size=400), st.sampled_from([
    b"", b"bundle,cost\n", b"bundle;cost\n", b"\xff\xfe", b'bundle,"', b"bundle\0,cost\n",
]))  # fmt: skip
def test_any_bytes_are_read_or_refused_in_a_sentence(box, data, head):
    path = box / "bytes.csv"
    path.write_bytes(head + data)
    read_or_a_sentence(path)


HUGE = {
    "field": lambda: "bundle,cost\n" + "x" * 3_000_000 + ",1\n",
    "quote": lambda: 'bundle,cost\n"' + "x\n" * 1_000_000,
    "quotes": lambda: "bundle,cost\n" + '"' * 2_000_001,
    "rows": lambda: "bundle,cost\n" + "a,1\n" * 1_000_000,
    "empty rows": lambda: "bundle,cost\n" + "\n" * 4_000_000,
    "columns": lambda: ",".join(["bundle"] * 500_000),
    "strange columns": lambda: "bundle," + ",".join(map(str, range(500_000))),
    "long row": lambda: "bundle,cost\n" + "," * 4_000_000,
    "figures": lambda: "bundle,cost\na," + "9" * 130_000,
    "groups": lambda: "bundle;cost\na;1" + ".000" * 30_000 + ".",
    "signs": lambda: "bundle;cost\na;" + "1," * 60_000,
}


@pytest.mark.parametrize("what", HUGE)
def test_enormous_tables_are_refused_in_time(box, what):
    path = box / "huge.csv"
    path.write_text(HUGE[what]())
    assert isinstance(read_or_a_sentence(path), str)


def test_a_large_shelf_is_read(box):
    path = box / "shelf.csv"
    path.write_text(as_csv([Entry(Particulars(name=f"bundle {k}", cost=k)) for k in range(3000)]))
    assert len(read_or_a_sentence(path).entries) == 3000


def test_what_is_no_file_is_refused_without_waiting(tmp_path):
    os.mkfifo(tmp_path / "pipe.csv")
    writer = partial((tmp_path / "pipe.csv").write_text, "species\noak\n")
    threading.Thread(target=writer, daemon=True).start()  # would be read, or waited for for ever
    (tmp_path / "zero.csv").symlink_to("/dev/zero")
    (tmp_path / "loop.csv").symlink_to("loop.csv")
    with open(tmp_path / "sparse.csv", "wb") as file:
        file.truncate(4 << 30)
    (tmp_path / "large.csv").write_bytes(b"x" * (MOST_BYTES + 1))
    strange = [*tmp_path.iterdir(), tmp_path, tmp_path / "gone.csv", tmp_path / "nul\0.csv"]
    assert {read_or_a_sentence(path) for path in strange} == {"no-inventory"}


# --- formulas -----------------------------------------------------------------------------------

NASTY = st.one_of(
    st.text(max_size=12),
    st.sampled_from([
        "=cmd|' /C calc'!A0", "@SUM(1)", "+1", "-1+1", "\t=1", "\r=1", "\n=1", "'=1", "''=1",
        "\uff1d1+1", '"=1', "=1\n=2", "\0=1", "\x0b=1", " =1", "\ufeff=1",
    ]),
)


def cells_of(text):
    return [cell for row in csv.reader(io.StringIO(text, newline="")) for cell in row]


def runs(cell):
    """Whether a spreadsheet would run it. What is a plain number is a number."""
    try:
        float(cell)
    except ValueError:
        return cell.startswith(FORMULA)
    return False


@settings(max_examples=150)
@given(NASTY, NASTY)
@example("=1+1", "\n=1")
@example("\uff1d1+1", "\uff0b1")
@example("", "\r=1")
def test_no_list_holds_a_cell_that_a_spreadsheet_runs(name, other):
    inventory = as_csv([Entry(Particulars(name=name, species=other, origin=name + other))])
    ring = radial(Stock(900, 1200, 12, 0.6), Top.round(600), ways=6, turn="slip")
    cuts = cutlist.as_csv(ring, name, other)
    bill = bill_csv([Row(name, other, name, 1, *[1.0] * 5, other)], name)
    for text in (inventory, cuts, bill):
        assert not [cell for cell in cells_of(text) if runs(cell)]


# --- names --------------------------------------------------------------------------------------

NAMES = st.one_of(
    st.text(max_size=120),
    st.sampled_from([
        "../../x", "..", ".", "/etc/passwd", "\\\\host\\share", "C:\\x", "~", "~root", "$HOME",
        "`x`", "a\0b", "a\nb", "con", "NUL.txt", "com1", "\u202egnp", "x" * 500, "\U0001f600" * 90,
        "\u00e4" * 300, "-rf", " ", ".hidden", "%2e%2e%2f", "a/../../b", "\ufe64\uff0f..\uff0f",
    ]),
)  # fmt: skip


@settings(max_examples=200)
@given(NAMES)
@example("\U0001f600" * 90)
@example("a" + "\u0301" * 200)
def test_a_name_from_a_document_is_one_plain_name(text):
    name = safe_name(text)
    assert name and name == os.path.basename(name) and "\\" not in name and "\0" not in name
    assert name not in (".", "..") and name[0] not in ".-" and not name.endswith((" ", "."))
    assert len(name.encode()) < 200 and len(name.encode("utf-16-le")) < 400


@settings(max_examples=40)
@given(NAMES, NAMES)
@example("../../x", "../../y")
@example("\U0001f600" * 90, "\U0001f600" * 90)
def test_a_packet_writes_nothing_outside_the_folder_chosen(tmp_path_factory, title, part):
    around = tmp_path_factory.mktemp("around")
    into = around / "chosen"
    into.mkdir()
    files = named([PacketFile(part, ".csv", "A list.", b"x"), PacketFile("b", ".pdf", "B.", b"y")])
    made = write_packet(into, title, "R1", files)
    assert made.parent == into and [p.name for p in around.iterdir()] == ["chosen"]
    found = sorted(Path(folder) / name for folder, _, names in os.walk(around) for name in names)
    assert len(found) == 2 and {path.parent for path in found} == {made}


def test_a_list_is_written_through_a_link_only_where_it_points(tmp_path):
    (tmp_path / "inside").mkdir()
    link = tmp_path / "inside" / "list.csv"
    link.symlink_to(tmp_path / "list.csv")
    write_csv([Entry(Particulars(name="a"))], link)
    assert link.is_symlink() and "a" in (tmp_path / "list.csv").read_text()
    assert sorted(p.name for p in tmp_path.iterdir()) == ["inside", "list.csv"]


