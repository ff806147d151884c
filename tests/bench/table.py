# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bench as a table: what each bench gives, a line for each figure, and its Markdown.

A bench says `give(Row(...))` or `give(Growth(...))`, which prints it plainly and, where the file
VENEERWB_ROWS is named, keeps it there. Inside FreeCAD, which prints things of its own, lines go to
the file VENEERWB_REPORT. `table.py begin ROWS` notes machine and date, `table.py
write ROWS` writes docs/bench.md and the short table of README.md, each between its two marks.
"""

from __future__ import annotations

import datetime
import json
import os
import platform
import re
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
MARKS = "<!-- bench -->", "<!-- /bench -->"
HEAD = ("what", "ours", "peer", "theirs", "ratio", "aim")
AIM = re.compile(r"(ratio|ours) (<=|>=) (-?[\d.]+)")
WORDS = {"<=": "at most", ">=": "at least"}


@dataclass(frozen=True)
class Row:
    """One figure beside its peer. `aim` as "ratio <= 1" (ours to theirs) or "ours >= 0.95";
    `reduced` is the command in full of what ran shorter here; `chosen` rows stand in the README."""

    bench: str
    what: str
    ours: float
    unit: str
    peer: str = ""
    theirs: float | None = None
    aim: str = ""
    reduced: str = ""
    chosen: bool = False

    @property
    def ratio(self) -> float | None:
        return self.ours / self.theirs if self.theirs else None

    @property
    def met(self) -> bool | None:
        """Whether the aim is met; None without one."""
        if not self.aim:
            return None
        of, sense, limit = AIM.fullmatch(self.aim).groups()
        value = self.ours if of == "ours" else self.ratio
        if value is None:
            return None
        return value <= float(limit) if sense == "<=" else value >= float(limit)

    @property
    def cells(self) -> tuple[str, ...]:
        what = f"{self.what} (shorter than in full)" if self.reduced else self.what
        theirs = "" if self.theirs is None else measure(self.theirs, self.unit)
        ratio = "" if self.ratio is None else figure(self.ratio)
        return what, measure(self.ours, self.unit), self.peer, theirs, ratio, self._judged()

    def _judged(self) -> str:
        if not self.aim:
            return ""
        of, sense, limit = AIM.fullmatch(self.aim).groups()
        unit = f" {self.unit}" if of == "ours" and self.unit else ""
        verdict = {True: "met", False: "**missed**", None: "not measured"}[self.met]
        return f"{of} {WORDS[sense]} {limit}{unit}: {verdict}"


@dataclass(frozen=True)
class Growth:
    """What the same work costs at several sizes of one thing."""

    bench: str
    what: str
    by: str
    sizes: tuple[float, ...]
    costs: tuple[float, ...]
    unit: str
    linear: bool = False
    """Whether no more than linear growth is the aim."""

    @property
    def times(self) -> float:
        return self.costs[-1] / self.costs[0]

    @property
    def met(self) -> bool | None:
        return self.times <= self.sizes[-1] / self.sizes[0] if self.linear else None

    @property
    def head(self) -> tuple[str, ...]:
        return "what", *(f"{figure(size)} {self.by}" for size in self.sizes), "growth", "aim"

    @property
    def cells(self) -> tuple[str, ...]:
        linear = figure(self.sizes[-1] / self.sizes[0])
        verdict = "met" if self.met else "**missed**"
        aim = f"at most {linear} (linear): {verdict}" if self.linear else f"linear is {linear}"
        costs = (measure(cost, self.unit) for cost in self.costs)
        return self.what, *costs, f"{figure(self.times)} times", aim


def figure(value: float) -> str:
    """Three digits that tell, never with an exponent."""
    if value == 0 or abs(value) >= 100:
        return f"{value:,.0f}"
    places = 2 - int(f"{abs(value):e}".split("e")[1])
    text = f"{value:.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def measure(value: float, unit: str) -> str:
    return f"{figure(value)} {unit}".strip()


def give(one: Row | Growth) -> None:
    """Prints a figure plainly, and keeps it for the table that is being made."""
    heads = one.head if isinstance(one, Growth) else HEAD
    told = (f"{head}: {cell}" for head, cell in zip(heads[1:], one.cells[1:]) if cell)
    tell("; ".join((f"{one.bench}: {one.cells[0]}", *told)))
    if rows := os.environ.get("VENEERWB_ROWS"):
        with open(rows, "a", encoding="utf-8") as file:
            file.write(json.dumps({type(one).__name__: asdict(one)}) + "\n")


def tell(line: str) -> None:
    """A line that is not for the table."""
    if report := os.environ.get("VENEERWB_REPORT"):
        with open(report, "a", encoding="utf-8") as file:
            file.write(line + "\n")
    else:
        print(line, flush=True)


def seconds(work: Callable[[], Any], rounds: int) -> float:
    """Median seconds of `work`, after one call that does not count."""
    work()
    taken = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return statistics.median(taken)


# --- the machine -------------------------------------------------------------------------------


def _line(path: str, start: str) -> str:
    lines = Path(path).read_text("utf-8").splitlines()
    return next((line.partition(":")[2].strip() for line in lines if line.startswith(start)), "?")


def _package(name: str) -> str:
    asked = ["dpkg-query", "-W", "-f", "${Version}", name]
    return subprocess.run(asked, capture_output=True, text=True).stdout.partition("+")[0] or "?"


def machine() -> str:
    """What the figures were taken on, and when; no name of it or of anybody."""
    memory = int(_line("/proc/meminfo", "MemTotal").split()[0]) / 1024**2
    debian = Path("/etc/debian_version").read_text("ascii").strip()
    return (
        f"{_line('/proc/cpuinfo', 'model name')}, {os.cpu_count()} cores, {memory:.0f} GB; Debian "
        f"{debian}, FreeCAD {_package('freecad')}, Python {platform.python_version()}; on one "
        f"thread, {datetime.date.today():%Y-%m-%d}, load {os.getloadavg()[0]:.1f} before it began"
    )


# --- Markdown ----------------------------------------------------------------------------------


def benches() -> tuple[str, ...]:
    """Every bench that exists: all files of this folder but this one."""
    return tuple(sorted(p.stem for p in Path(__file__).parent.glob("*.py") if p.stem != "table"))


def read(path: Path) -> tuple[str, list[Row], list[Growth]]:
    """Machine and date, rows and growths that were kept in a file."""
    told, rows, growths = "", [], []
    for line in path.read_text("utf-8").splitlines():
        ((kind, values),) = json.loads(line).items()
        if kind == "Machine":
            told = values
        elif kind == "Row":
            rows.append(Row(**values))
        else:
            lists = {name: tuple(values[name]) for name in ("sizes", "costs")}
            growths.append(Growth(**{**values, **lists}))
    return told, rows, growths


def table(head: Sequence[str], lines: Sequence[Sequence[str]]) -> str:
    cells = [head, ["---"] * len(head), *lines]
    return "\n".join("| " + " | ".join(c.replace("|", "/") for c in line) + " |" for line in cells)


def whole(told: str, rows: Sequence[Row], growths: Sequence[Growth]) -> str:
    """All figures, bench by bench, and how costs grow."""
    judged = [one.met for one in [*rows, *growths] if one.met is not None]
    parts = [f"{told}.", f"Of {len(judged)} aims {judged.count(False)} are missed."]
    for name in benches():
        its = [row for row in rows if row.bench == name]
        parts.append(f"## {name}")
        if full := next((row.reduced for row in its if row.reduced), ""):
            parts.append(f"Shorter here than in full, which is `{full}`.")
        if its:
            parts.append(table(HEAD, [row.cells for row in its]))
        grown = [one for one in growths if one.bench == name]
        for head in dict.fromkeys(one.head for one in grown):
            parts.append(table(head, [one.cells for one in grown if one.head == head]))
        if not its and not grown:
            parts.append("**Not measured in this run.**")
    return "\n\n".join(parts)


def short(told: str, rows: Sequence[Row], growths: Sequence[Growth]) -> str:
    """The figures that matter, for the README."""
    lines = [row.cells for row in rows if row.chosen]
    return f"{told}.\n\n{table(HEAD, lines)}"


def between(text: str, new: str) -> str:
    """`text` with what stands between its two marks replaced; ValueError if they are not whole."""
    begin, end = MARKS
    if text.count(begin) != 1 or text.count(end) != 1 or text.index(begin) > text.index(end):
        raise ValueError(f"the text must hold {begin} and {end} once each, in this order")
    return f"{text[: text.index(begin)]}{begin}\n\n{new}\n\n{text[text.index(end) :]}"


def main(what: str, path: Path) -> None:
    if what == "begin":
        path.write_text(json.dumps({"Machine": machine()}) + "\n", "utf-8")
        return
    found = read(path)
    pages = {ROOT / "docs/bench.md": whole(*found), ROOT / "README.md": short(*found)}
    texts = {page: between(page.read_text("utf-8"), new) for page, new in pages.items()}
    for page, text in texts.items():  # both or, where marks are not whole, none
        page.write_text(text, "utf-8")


if __name__ == "__main__":
    main(sys.argv[1], Path(sys.argv[2]))
