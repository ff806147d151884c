# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bill of materials: what of which material and size a panel takes, finished sizes."""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.buildup.panel import PanelPart
from veneerwb.core.errors import number
from veneerwb.core.files import write_beside
from veneerwb.core.inventory import guarded, square_feet
from veneerwb.core.plane import stepped
from veneerwb.words import marked, word

HEADINGS = (
    marked("item"), marked("layer"), marked("material"), marked("count"), marked("thickness mm"),
    marked("length mm"), marked("width mm"), marked("area m2"), marked("area sq ft"),
    marked("volume m3"), marked("note"),
)  # fmt: skip
BENT = marked("bent round; its length on the outer side")
MATCHED = marked("whole field; its pieces are in the cut list")
CAUTION = marked("Finished sizes: add what is trimmed off and wasted.")


@dataclass(frozen=True)
class Row:
    """Parts that are alike: `length` along the grain and `width` across it in mm of the least
    rectangle that holds one; `area_m2` and `volume_m3` of them all, without that waste."""

    item: str
    layer: str
    material: str
    count: int
    thickness: float
    length: float
    width: float
    area_m2: float
    volume_m3: float
    note: str = ""

    @property
    def area_sq_ft(self) -> float:
        return square_feet(self.area_m2)

    @property
    def cells(self) -> tuple[str | int | float, ...]:
        """What stands under HEADINGS, in the language spoken; lengths to 0.01 mm."""
        return (
            word(self.item), word(self.layer), self.material, self.count, round(self.thickness, 3),
            round(self.length, 2), round(self.width, 2), round(self.area_m2, 6),
            round(self.area_sq_ft, 4), round(self.volume_m3, 9), word(self.note),
        )  # fmt: skip


def bill(parts: Sequence[PanelPart]) -> list[Row]:
    """The rows in the order of the parts; parts of one item, material and size (to 0.01 mm) share
    one."""
    lots: dict[tuple[object, ...], list[PanelPart]] = {}
    for part in parts:
        size = (*stepped(part.size, 0.01), *stepped([part.thickness], 0.001))
        key = (part.item, part.layer, part.material, size)
        lots.setdefault(key, []).append(part)
    return [_row(lot) for lot in lots.values()]


def _row(lot: Sequence[PanelPart]) -> Row:
    first = lot[0]
    note = MATCHED if first.item == "field" else BENT if first.bent else ""
    return Row(
        first.item, first.layer, first.material, len(lot), first.thickness, *first.size,
        sum(part.area for part in lot) * 1e-6, sum(part.volume for part in lot) * 1e-9, note,
    )  # fmt: skip


def bill_csv(rows: Sequence[Row], top: str) -> str:
    """The rows as comma-separated text, numbers with a decimal point, no cell that a spreadsheet
    takes for a formula. `top` is the top's name."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    head = (
        (word("bill of materials"),), (word("top"), top), (word("caution"), word(CAUTION)), (),
        [word(heading) for heading in HEADINGS],
    )  # fmt: skip
    for line in (*head, *(row.cells for row in rows)):
        table.writerow([guarded(c) if isinstance(c, str) else _number(c) for c in line])
    return out.getvalue()


def _number(value: float) -> str:
    """Plainly; what is less than a thousandth keeps its figures."""
    if isinstance(value, int):
        return str(value)
    return number(value) if abs(value) >= 1.0 else f"{value:.9f}".rstrip("0").rstrip(".")


def write_bill(rows: Sequence[Row], top: str, path: str | os.PathLike[str]) -> None:
    """Write the bill to `path`; VeneerError, and the old file untouched, if that cannot be done."""
    write_beside(path, lambda file: file.write(bill_csv(rows, top).encode("utf-8")))
