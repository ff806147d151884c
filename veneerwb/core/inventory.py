# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bundle is, for the shelf and the bill: its particulars, its areas, and both as a CSV file
of one or many bundles. Columns are named in plain words with their units.
"""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, fields, replace
from typing import Any

from veneerwb.core.cells import guarded, unguarded
from veneerwb.core.errors import VeneerError, number
from veneerwb.core.faults import remains
from veneerwb.core.files import read_plain, reason, shown_name, write_beside
from veneerwb.core.leaf import MOST_LEAVES, THICKEST, Bundle, Leaf, measures
from veneerwb.core.numerals import decimal_marks, value_of
from veneerwb.core.plane import choice, finite, positive, whole
from veneerwb.words import marked, word

SQUARE_FOOT = 0.09290304
"""m2, exactly: the international foot is 0.3048 m by definition (since 1959)."""
WETTEST = 40.0
"""%: veneer wetter than this would not have been photographed as leaves to lay up."""
DEAREST = 1e9
LONGEST_TEXT = 5000
MOST_BYTES, MOST_ROWS, MOST_COLUMNS = 16_000_000, 10_000, 1000
"""Of a file: no shelf holds so much, and a file of anything else may."""
TIGHT_SIDES = marked("not known"), marked("face"), marked("back")
"""Which side of a leaf is the tight one; the face is the side that was photographed as such."""


@dataclass(frozen=True)
class Particulars:
    """What is known of a bundle beside its photographs. Texts are free; "" and None are not known.

    `thickness` of a leaf in mm, `moisture` in % of the dry mass when photographed, `cost` of the
    whole bundle in `currency`, `origin`: where it comes from, and its papers.
    """

    name: str = ""
    species: str = ""
    cut: str = ""
    thickness: float | None = None
    tight_side: str = TIGHT_SIDES[0]
    flitch: str = ""
    lot: str = ""
    moisture: float | None = None
    cost: float | None = None
    currency: str = ""
    origin: str = ""

    def __post_init__(self) -> None:
        for one in fields(self):
            if one.type == "str":
                object.__setattr__(self, one.name, _text(one.name, getattr(self, one.name)))
        choice("tight side", self.tight_side, TIGHT_SIDES)
        if self.thickness is not None:
            self._settle("thickness", positive("leaf thickness", self.thickness, THICKEST))
        if self.moisture is not None:
            self._settle("moisture", _between(marked("moisture in %"), self.moisture, WETTEST))
        if self.cost is not None:
            self._settle("cost", _between(marked("cost"), self.cost, DEAREST))

    def _settle(self, name: str, value: float) -> None:
        object.__setattr__(self, name, value)


@dataclass(frozen=True)
class Extent:
    """How much there is: so many `leaves`, of which each is at least `width` x `length` mm;
    `full_m2`, the sum of the rectangles round the leaves' outlines, and `usable_m2`, of what of the
    leaves may be used, faults left out."""

    leaves: int | None = None
    width: float | None = None
    length: float | None = None
    full_m2: float | None = None
    usable_m2: float | None = None

    def __post_init__(self) -> None:
        if self.leaves is not None:
            whole("number of leaves", self.leaves, 1, MOST_LEAVES)
        for name, called in (("width", marked("leaf width")), ("length", marked("leaf length"))):
            value = getattr(self, name)
            if value is not None:
                object.__setattr__(self, name, positive(called, value))
        for name in ("full_m2", "usable_m2"):
            value = getattr(self, name)
            if value is not None:
                object.__setattr__(self, name, _between(marked("area in m2"), value, 1e6))

    @property
    def full_sq_ft(self) -> float | None:
        return None if self.full_m2 is None else square_feet(self.full_m2)

    @property
    def usable_sq_ft(self) -> float | None:
        return None if self.usable_m2 is None else square_feet(self.usable_m2)


@dataclass(frozen=True)
class Entry:
    """A bundle in an inventory."""

    particulars: Particulars = field(default_factory=Particulars)
    extent: Extent = field(default_factory=Extent)


@dataclass(frozen=True)
class Inventory:
    """What was read from a file: its entries, and the names of columns that are none of ours, which
    were left out."""

    entries: tuple[Entry, ...]
    unknown_columns: tuple[str, ...] = ()


# --- areas -------------------------------------------------------------------------------------


def square_feet(m2: float) -> float:
    """Square metres in square feet."""
    return m2 / SQUARE_FOOT


def leaf_areas(leaf: Leaf) -> tuple[float, float]:
    """(full, usable) of a leaf in m2; see Extent."""
    width, length = _size(leaf)
    return width * length * 1e-6, remains(leaf).area * 1e-6


def extent(bundle: Bundle) -> Extent:
    """How much there is of a bundle."""
    sizes = [_size(leaf) for leaf in bundle.leaves]
    full, usable = zip(*map(leaf_areas, bundle.leaves))
    return Extent(
        len(sizes), min(w for w, _ in sizes), min(h for _, h in sizes), sum(full), sum(usable)
    )


def entry(bundle: Bundle, particulars: Particulars | None = None) -> Entry:
    """A bundle as it stands in an inventory; its own thickness counts."""
    known = particulars or Particulars()
    return Entry(replace(known, thickness=bundle.thickness), extent(bundle))


def _size(leaf: Leaf) -> tuple[float, float]:
    return measures(leaf.usable)


# --- the file ----------------------------------------------------------------------------------

_Column = tuple[str, str, str, int | None]
COLUMNS: tuple[_Column, ...] = (  # heading, of which, attribute, decimals (None: text; -1: whole)
    ("bundle", "particulars", "name", None),
    ("species", "particulars", "species", None),
    ("cut", "particulars", "cut", None),
    ("thickness mm", "particulars", "thickness", 3),
    ("tight side", "particulars", "tight_side", None),
    ("leaves", "extent", "leaves", -1),
    ("width mm", "extent", "width", 1),
    ("length mm", "extent", "length", 1),
    ("full area m2", "extent", "full_m2", 3),
    ("full area sq ft", "extent", "full_sq_ft", 2),
    ("usable area m2", "extent", "usable_m2", 3),
    ("usable area sq ft", "extent", "usable_sq_ft", 2),
    ("flitch", "particulars", "flitch", None),
    ("lot mark", "particulars", "lot", None),
    ("moisture when photographed %", "particulars", "moisture", 1),
    ("cost", "particulars", "cost", 2),
    ("currency", "particulars", "currency", None),
    ("origin and papers", "particulars", "origin", None),
)


def as_csv(entries: Iterable[Entry]) -> str:
    """The inventory as comma-separated text with decimal points, a bundle a line. A text that a
    spreadsheet would run as a formula is given an apostrophe in front."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerow([heading for heading, *_ in COLUMNS])
    for one in entries:
        table.writerow([
            _cell(getattr(getattr(one, part), name), decimals)
            for _, part, name, decimals in COLUMNS
        ])
    return out.getvalue()


def write_csv(entries: Iterable[Entry], path: str | os.PathLike[str]) -> None:
    """Writes the inventory, UTF-8; VeneerError, and the old file untouched, if that cannot be
    done."""
    text = as_csv(entries)
    write_beside(path, lambda file: file.write(text.encode("utf-8")))


def read_csv(path: str | os.PathLike[str]) -> Inventory:
    """The inventory in a file. Raises VeneerError for one that cannot be read, naming row and
    column of a cell that cannot be."""
    name = shown_name(path)
    try:
        data = read_plain(path, MOST_BYTES)
    except (OSError, ValueError) as error:
        raise VeneerError(
            "no-inventory", "The file {file} cannot be read ({reason}); check its name.",
            file=name, reason=reason(error),
        ) from error
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise VeneerError(
            "not-utf-8", "The file {file} is not text in UTF-8; save it as CSV in UTF-8.", file=name
        ) from error
    return from_csv(text, name)


def from_csv(text: str, file: str = "") -> Inventory:
    """The inventory in a text of comma- or semicolon-separated lines, columns in any order; see
    `read_csv`."""
    file = file or word("the list")
    table, separator = _table(text, file)
    headings = [cell.strip().casefold() for cell in table[0]]
    doubled = [h for h in headings if h in _OURS and headings.count(h) > 1]
    if doubled:
        raise VeneerError(
            "column-twice", "The file {file} has the column {column} twice; keep one.",
            file=file, column=doubled[0],
        )
    unknown = tuple(
        shown.strip() for shown, known in zip(table[0], headings) if known and known not in _OURS
    )
    rows = [
        (line, _cells(line, headings, row))
        for line, row in enumerate(table[1:], start=2)
        if any(cell.strip() for cell in row)
    ]
    read = _Numbers(separator, [cells for _, cells in rows])
    return Inventory(tuple(_entry(line, cells, read) for line, cells in rows), unknown)


_OURS = {heading: (part, name, decimals) for heading, part, name, decimals in COLUMNS}


def _table(text: str, file: str) -> tuple[list[list[str]], str]:
    """The cells of the text, cut at the separator that finds most of our columns; that separator.
    """
    text, best, separator = text.removeprefix("\ufeff"), 0, ""
    for one in ",;\t":
        known = _known(_first(_reader(text, one, strict=False)))
        if known > best:
            best, separator = known, one
    if not separator:
        raise VeneerError(
            "not-an-inventory",
            "The file {file} holds none of the columns of an inventory; its first line must name "
            "them, such as {columns}.",
            file=file, columns=", ".join(heading for heading, *_ in COLUMNS[:4]),
        )
    reader, table, begun = _reader(text, separator, strict=True), [], 1
    try:
        for row in reader:
            table.append(row)
            if len(table) > MOST_ROWS or len(row) > MOST_COLUMNS:
                raise VeneerError(
                    "inventory-too-long",
                    "The file {file} has more than {rows} rows or {columns} columns, which is no "
                    "inventory; choose another file.",
                    file=file, rows=MOST_ROWS, columns=MOST_COLUMNS,
                )
            begun = reader.line_num + 1
    except csv.Error as error:
        raise VeneerError(
            "open-quotes",
            "In the file {file} a text that begins in line {line} has quotation marks that do not "
            "close at its end; close them, or write those inside a text twice.",
            file=file, line=begun,
        ) from error
    return table, separator


def _first(reader: Any) -> list[str]:
    """The first line's cells; none where they cannot be read."""
    try:
        return next(reader, [])
    except csv.Error:  # a text longer than any, as of quotation marks that never close
        return []


def _reader(text: str, separator: str, strict: bool) -> Any:
    return csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=strict)


def _known(headings: Sequence[str]) -> int:
    return len(_OURS.keys() & {cell.strip().casefold() for cell in headings})


def _cells(line: int, headings: Sequence[str], row: Sequence[str]) -> dict[str, str]:
    """The cells of a row by their headings."""
    if any(cell.strip() for cell in row[len(headings) :]):
        raise VeneerError(
            "more-cells",
            "Row {row} has more cells than the first row names; put a text or number that holds "
            "the separator of cells into quotation marks.", row=line,
        )
    cells = {heading: cell.strip() for heading, cell in zip(headings, row)}
    if cells.get("currency", "").isdecimal():
        raise VeneerError(
            "number-for-currency",
            "Row {row} has the number {cell} where the currency should be; put a number that holds "
            "the separator of cells into quotation marks.", row=line, cell=cells["currency"],
        )
    return cells


class _Numbers:
    """Reads the numbers of a file by the decimal mark that they show."""

    def __init__(self, separator: str, rows: Sequence[dict[str, str]]) -> None:
        kinds = {heading: kind for heading, (_, _, kind) in _OURS.items() if kind is not None}
        self.marks = decimal_marks(row.get(heading, "") for row in rows for heading in kinds)
        self.ours = separator == "," and not self.marks
        """Files of our own have decimal points, and may hold none that shows it."""

    def __call__(self, cell: str) -> float:
        return value_of(cell, {"."} if self.ours and "," not in cell else self.marks)


def _entry(line: int, cells: dict[str, str], read: _Numbers, singly: bool = False) -> Entry:
    """`singly` judges each value as it comes: slower, but the error names the cell."""
    made: dict[str, Any] = {"particulars": Particulars(), "extent": Extent()}
    values: dict[str, dict[str, Any]] = {part: {} for part in made}
    for heading, (part, name, kind) in _OURS.items():
        cell = cells.get(heading, "")
        if not cell or name.endswith("_sq_ft"):  # follows from m2
            continue
        try:
            values[part][name] = unguarded(cell) if kind is None else _number(read(cell), kind)
            if singly:
                made[part] = replace(made[part], **{name: values[part][name]})
        except VeneerError as error:
            raise VeneerError(
                "bad-cell", "Row {row}, column {column}: {said}",
                row=line, column=heading, said=str(error),
            ) from error
    if singly:
        return Entry(**made)
    try:
        return Entry(Particulars(**values["particulars"]), Extent(**values["extent"]))
    except VeneerError:
        return _entry(line, cells, read, singly=True)


def _number(value: float, kind: int) -> float | int:
    return whole("number of leaves", value, 1, MOST_LEAVES) if kind < 0 else finite("value", value)


def _cell(value: Any, decimals: int | None) -> str:
    if value is None:
        return ""
    if decimals is None:
        return guarded(value)
    return str(value) if decimals < 0 else number(round(value, decimals))


_CALLED = {called.replace(" ", "_"): called for called in (
    marked("name"), marked("species"), marked("cut"), marked("tight side"), marked("flitch"),
    marked("lot"), marked("currency"), marked("origin"),
)}


def _text(name: str, value: Any) -> str:
    if not isinstance(value, str):
        raise VeneerError(
            "not-a-text", "The {name} cannot be {value!r:.40}; give a text.",
            name=word(_CALLED[name]), value=value,
        )
    settled = "\n".join(value.replace("\0", "").splitlines()).strip()
    if len(settled) > LONGEST_TEXT:
        raise VeneerError(
            "text-too-long", "The {name} has {count} characters; give at most {most}.",
            name=word(_CALLED[name]), count=len(settled), most=LONGEST_TEXT,
        )
    return settled


def _between(name: str, value: Any, most: float) -> float:
    found = finite(name, value)
    if not 0.0 <= found <= most:
        raise VeneerError(
            "out-of-range", "The {name} cannot be {value}; give a number from 0 to {most}.",
            name=word(name), value=found, most=most,
        )
    return found
