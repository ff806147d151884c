# SPDX-License-Identifier: LGPL-2.1-or-later
"""The table of the bench: every bench in it, missed aims marked, marks whole. Nothing is timed."""

import importlib.util
import json
import sys
from dataclasses import asdict
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
BENCH = ROOT / "tests/bench"
NAMES = sorted(path.stem for path in BENCH.glob("*.py") if path.stem != "table")


@pytest.fixture(scope="module")
def table():
    spec = importlib.util.spec_from_file_location("bench_table", BENCH / "table.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules["bench_table"] = module
    spec.loader.exec_module(module)
    yield module
    del sys.modules["bench_table"]


def test_the_table_names_every_bench_that_exists_and_those_that_did_not_run(table):
    page = table.whole("A machine", [table.Row("bench", "work", 1.0, "ms")], [])
    for name in NAMES:
        own = page.partition(f"## {name}\n")[2].partition("\n## ")[0]
        assert ("**Not measured in this run.**" in own) == (name != "bench")


def test_the_run_for_the_table_runs_every_bench(table):
    script = (BENCH / "run.sh").read_text("utf-8")
    runs = script.partition("local runs=(")[2].partition(")")[0]
    assert [name for name in NAMES if name not in runs] == []


@pytest.mark.parametrize("ours, theirs, aim, met", [
    (2.0, 1.0, "ratio <= 1", False), (1.0, 1.0, "ratio <= 1", True),
    (34.0, None, "ours <= 33", False), (0.96, None, "ours >= 0.95", True),
    (0.94, 5.0, "ours >= 0.95", False), (-0.1, None, "ours >= -0.0001", False),
])  # fmt: skip
def test_a_missed_aim_is_marked_as_missed(table, ours, theirs, aim, met):
    row = table.Row("bench", "work", ours, "s", "peer", theirs, aim)
    assert row.met is met
    assert row.cells[-1].endswith(": met" if met else ": **missed**")
    assert f"Of 1 aims {int(not met)} are missed." in table.whole("", [row], [])


def test_an_aim_without_its_peer_is_neither(table):
    row = table.Row("bench", "work", 1.0, "s", "peer", None, "ratio <= 1")
    assert row.met is None and row.cells[-1].endswith("not measured")


def test_more_than_linear_growth_is_missed(table):
    for last, met in ((8.0, True), (8.1, False)):
        one = table.Growth("bench", "work", "ways", (8, 64), (1.0, last), "ms", linear=True)
        assert one.met is met and ("**missed**" in one.cells[-1]) == (not met)


def test_what_ran_shorter_says_so(table):
    row = table.Row("proof", "work", 1.0, "s", reduced="bash tests/bench/run.sh proof")
    assert "shorter than in full" in row.cells[0]
    assert row.reduced in table.whole("", [row], [])


@pytest.mark.parametrize("value, text", [
    (1.0, "1"), (0.0, "0"), (0.0000412, "0.0000412"), (13618.2, "13,618"), (0.3333, "0.333"),
    (-0.00061, "-0.00061"), (10.0, "10"), (99.96, "100"),
])  # fmt: skip
def test_figures_have_three_digits_and_no_exponent(table, value, text):
    assert table.figure(value) == text


def test_what_was_kept_is_read_again(table, tmp_path):
    row = table.Row("bench", "work", 1.0, "s", "peer", 2.0, "ratio <= 1", chosen=True)
    grown = table.Growth("bench", "work", "ways", (8, 64), (1.0, 2.0), "ms")
    lines = [{"Machine": "it"}, {"Row": asdict(row)}, {"Growth": asdict(grown)}]
    (tmp_path / "rows").write_text("\n".join(map(json.dumps, lines)), "utf-8")
    assert table.read(tmp_path / "rows") == ("it", [row], [grown])


@pytest.mark.parametrize("page", ["README.md", "docs/bench.md"])
def test_the_marks_are_whole_and_only_what_is_between_them_changes(table, page):
    text = (ROOT / page).read_text("utf-8")
    new = table.between(text, "new")
    begin, end = table.MARKS
    assert new.partition(begin)[0] == text.partition(begin)[0]
    assert new.partition(end)[2] == text.partition(end)[2]
    assert f"{begin}\n\nnew\n\n{end}" in new and table.between(new, "new") == new


@pytest.mark.parametrize("text", ["", "<!-- bench -->", "<!-- /bench --> <!-- bench -->"])
def test_broken_marks_are_refused(table, text):
    with pytest.raises(ValueError):
        table.between(text, "new")
