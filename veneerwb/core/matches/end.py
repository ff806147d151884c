# SPDX-License-Identifier: LGPL-2.1-or-later
"""End matches: rows of leaves that meet end to end, each joint a mirror.

A piece is turned over where row + column is odd (or even), so that each is mirrored in the joints
at its sides and, turned over and end for end, in those at its ends. Every piece is cut from the
same field of the bundle, whose foot has its middle on the placement's point. Words, rules and
numbering: Architectural Woodwork Standards, 1st ed. (2009), 1.2.19 to 1.2.22, pp. 73-76.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches import asked
from veneerwb.core.matches import rows as strips
from veneerwb.core.matches.cells import Cell, laid
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.rows import LEAST_STRIP, Field, Kind
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import TOUCH, choice, whole
from veneerwb.core.top import Top
from veneerwb.words import marked, word

END_KINDS = (
    Kind(marked("architectural"), marked("Architectural end match"),
         marked("Leaves go in order down a column, then to the column beside it."), 2, "even"),
    Kind(marked("panel"), marked("Panel end match"),
         marked("The upper row goes in order to the right, the lower row comes back."), 2, "even"),
    Kind(marked("continuous"), marked("Continuous end match"),
         marked("Row upon row, each in order, end to end up the wall."), 2, "rows"),
)  # fmt: skip
KINDS = tuple(kind.key for kind in END_KINDS)
TURNED = ("odd", "even")
MOST_ROWS = 50


@dataclass(frozen=True)
class End(asked.CutBy):
    """The recipe of an end match; see `end`. `lay` makes the layout."""

    kind: str = "architectural"
    count: int | None = None
    width: float | None = None
    placement: Placement | None = None
    first: int = 1
    order: str | tuple[int, ...] = "sequence"
    rows: int = 2
    turned: str = "odd"
    grain: float = 90.0
    oversize: float = 0.0

    all_book = True
    """Every joint mirrors."""

    def __post_init__(self) -> None:
        choice("kind", self.kind, KINDS)
        choice("turned pieces", self.turned, TURNED)
        rows = whole("number of rows", self.rows, 2, MOST_ROWS)
        object.__setattr__(self, "rows", rows)
        if rows != 2 and self.kind != "continuous":
            raise VeneerError(
                "rows-unfit",
                "The {kind} end match has two rows and not {rows}: take 2, or the continuous one.",
                kind=word(self.kind),
                rows=rows,
            )
        strips.settle(self)
        if self.count is not None and self.count % rows:
            raise VeneerError(
                "wrong-count",
                "An end match in {rows} rows has as many leaves in each, and {count} do not go "
                "into {rows}: take {nearest}.",
                rows=rows,
                count=self.count,
                nearest=strips.nearest(self.count, rows, rows),
            )

    def columns(self, bundle: Leaves, field: Field) -> int:
        """How many leaves lie side by side."""
        if self.count is not None:
            return self.count // self.rows
        most = self.width or strips.leaf_width(bundle, self.first, self.oversize)
        return strips.even_count(field.width, most, 1, 1)

    def numbering(self, columns: int) -> list[list[int]]:
        """Which of the leaves, counted from 0, lies where: row by row, each left to right; the
        first row is the upper one, in a continuous match the lowest."""
        across, up = range(columns), range(self.rows)
        if self.kind == "architectural":
            return [[c * self.rows + r for c in across] for r in up]
        back = self.kind == "panel"
        return [
            [r * columns + (columns - 1 - c if back and r % 2 else c) for c in across] for r in up
        ]

    def cells(self, bundle: Leaves, region: Region) -> list[Cell]:
        field = Field.of(region, self.grain)
        columns = self.columns(bundle, field)
        width = strips.equal_width(field.width, columns)
        length = _row_length(field.length, self.rows)
        count = columns * self.rows
        leaves = strips.leaves_for(self, bundle, count, marked("{count} pieces"), self.rows)
        grid = self.numbering(columns)
        if not isinstance(self.order, str):  # listed as they lie
            grid = [[r * columns + c for c in range(columns)] for r in range(self.rows)]
        seams = [field.before(field.left + c * width) for c in range(1, columns)]
        ends = [field.below(field.foot + r * length) for r in range(1, self.rows)]
        cells = []
        for r, row in enumerate(grid):
            level = r if self.kind == "continuous" else self.rows - 1 - r
            for c, k in enumerate(row):
                over, ended = (r + c) % 2 == (self.turned == "odd"), r % 2 == 1
                frame = field.frame(
                    field.left + (c + 0.5) * width, field.foot + level * length, length, over, ended
                )
                halves = (*strips.between(seams, c), *strips.between(ends, level))
                cells.append(Cell(halves, leaves[k], over, frame))
        return cells

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        return laid(self, bundle, top)


def _row_length(length: float, rows: int) -> float:
    """The length in mm of each of `rows` end to end; VeneerError for slivers."""
    most = int((length + TOUCH) / LEAST_STRIP)
    if rows > most:
        told = marked(
            "{rows} rows end to end would be {row} mm long each, slivers under {least} mm: make "
            "the top longer."
        )
        if most >= 2:
            told = marked(
                "{rows} rows end to end would be {row} mm long each, slivers under {least} mm: "
                "take {most} or fewer."
            )
        raise VeneerError(
            "slivers",
            told,
            rows=rows,
            row=length / rows,
            least=LEAST_STRIP,
            most=most,
        )
    return length / rows


def end(
    bundle: Leaves,
    top: Top,
    kind: str = "architectural",
    count: int | None = None,
    width: float | None = None,
    placement: Placement | None = None,
    first: int = 1,
    order: str | Sequence[int] = "sequence",
    rows: int = 2,
    turned: str = "odd",
    grain: float = 90.0,
    oversize: float = 0.0,
    cuts: str = CUTS[0],
) -> Layout:
    """Rows of leaves end to end over `top`, every joint a mirror. Pieces are counted row by row,
    each left to right with the grain upright.

    bundle:    a Bundle, or a Stock where no picture is needed.
    kind:      "architectural" (of 8 leaves the rows 1 3 5 7 and 2 4 6 8, the first above), "panel"
               (1 2 3 4 and 8 7 6 5) or "continuous" (in order, row upon row from the lowest up).
    count:     how many leaves in all; a multiple of the rows.
    width:     instead of a count: mm that a piece may be wide from seam to seam. With neither, what
               the leaves from `first` on have room for.
    placement: where on the bundle the middle of a piece's foot lies, and the way its grain points
               (90: along the leaf); in the middle of the leaves if not given.
    first:     the first leaf; `count` leaves from it on are used.
    order:     "sequence", or the leaf number of each piece as it lies.
    rows:      how many rows: 2, in a continuous match more too.
    turned:    which pieces are turned over, by the sum of row and column: "odd" or "even".
    grain:     direction in degrees of the pieces on the top; 90 is upright.
    oversize:  mm that the blanks reach beyond the finished edge.
    cuts:      how what differs is cut: "stack" (all at once, by what all of it takes together),
               "shape" (a lot of leaves for each outline) or "own" (each piece by itself).

    Raises VeneerError for counts and choices that cannot be, and for slivers; a piece that does not
    fit its leaf is left to `check`.
    """
    recipe = End(
        kind, count, width, placement, first, order, rows, turned, grain, oversize, cuts=cuts
    )  # fmt: skip
    return recipe.lay(bundle, top)
