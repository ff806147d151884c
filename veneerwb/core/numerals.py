# SPDX-License-Identifier: LGPL-2.1-or-later
"""Numbers as spreadsheets of all countries write them: 1250.5, 1.250,5, 1'250.50, 1 250,5.

A lone mark before three figures (2,450) divides thousands in one country and decimals in the next.
What the other numbers of the same file show decides; where they show nothing it is refused.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable

from veneerwb.core.errors import VeneerError

_SPACES = dict.fromkeys(map(ord, "\u00a0\u2007\u2009\u202f\u2019'"), " ")
_PLAIN = re.compile(r"[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?", re.IGNORECASE | re.ASCII)
_GROUPED = re.compile(r"[+-]?[1-9]\d{0,2}(?P<mark>[ .,])\d{3}((?P=mark)\d{3})*(?P<rest>[.,]\d*)?",
                      re.ASCII)
_EITHER = re.compile(r"[+-]?[1-9]\d{0,2}[.,]\d{3}", re.ASCII)


def decimal_marks(cells: Iterable[str]) -> set[str]:
    """The decimal marks, of "." and ",", that the numbers among `cells` show by themselves."""
    return {_shown(_spaced(cell)) for cell in cells} - {""}


def value_of(cell: str, marks: Collection[str] = ()) -> float:
    """The number in a cell of a file that has these decimal marks. Raises VeneerError for what is
    none, and for what may be either of two."""
    text = _spaced(cell)
    if _EITHER.fullmatch(text):
        large, small = re.sub("[.,]", "", text), text.replace(",", ".")
        if len(marks) != 1:
            raise VeneerError(
                "either-number",
                "{cell} may mean {large} or {small}; write {large} for the first and {longer} for "
                "the second.", cell=cell, large=large, small=f"{float(small):g}", longer=f"{text}0",
            )
        return float(small if set(marks) <= set(text) else large)
    grouped = _GROUPED.fullmatch(text)
    if grouped and grouped["mark"] != (grouped["rest"] or "")[:1]:
        whole, rest = grouped["mark"], grouped["rest"] or ""
        return float(text[: len(text) - len(rest)].replace(whole, "") + rest.replace(",", "."))
    if _PLAIN.fullmatch(text):
        return float(text.replace(",", "."))
    raise VeneerError(
        "not-a-number", "{cell!r:.40} is not a number that can be read; write it plainly, such as "
        "1250.5.", cell=cell,
    )


def _spaced(cell: str) -> str:
    """The cell with every kind of narrow space, and the apostrophe, as a plain space."""
    return cell.translate(_SPACES).strip()


def _shown(text: str) -> str:
    """The decimal mark that a number shows by itself."""
    marks = [one for one in text if one in ".,"]
    if not marks or _EITHER.fullmatch(text):
        return ""
    grouped = _GROUPED.fullmatch(text)
    if grouped:
        other = {".": ",", ",": "."}
        mark, rest = grouped["mark"], (grouped["rest"] or "")[:1]
        return rest or other.get(mark, "")
    return marks[0] if _PLAIN.fullmatch(text) else ""
