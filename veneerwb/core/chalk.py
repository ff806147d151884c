# SPDX-License-Identifier: LGPL-2.1-or-later
"""The list by which the real stack is marked with chalk: number, top end and side of every leaf,
as the photographs show them, or as a proof of their order proposes.
"""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Mapping
from dataclasses import asdict, astuple, dataclass
from typing import Any

from veneerwb.core.files import write_beside
from veneerwb.core.inventory import TIGHT_SIDES, guarded
from veneerwb.core.leaf import Bundle
from veneerwb.core.renumbering import lies_end_for_end
from veneerwb.words import filled, marked, word

HEADINGS = (
    marked("chalk"), marked("photograph"), marked("now"), marked("top end"), marked("side up"),
    marked("to do"),
)  # fmt: skip
HOW = marked(
    "Lay each leaf as its picture shows it, the side named below up. Chalk the number near the top "
    "end, with a line along that end, on the side that is up."
)


@dataclass(frozen=True)
class Mark:
    """A leaf of the list: the number to chalk on it, the name of its photograph, the number that it
    has now, which end of it is the top one, which side is chalked, and what else is to be done."""

    chalk: int
    photograph: str
    now: int
    top_end: str
    side_up: str
    to_do: str


def chalk_list(
    bundle: Bundle, proof: Any = None, names: Mapping[int, str] | None = None,
    tight_side: str = TIGHT_SIDES[0],
) -> tuple[Mark, ...]:
    """The leaves in the order of the numbers to chalk.

    `proof`: a SequenceProof, whose proposal gives the numbers and whose suspects say which leaf
    lay end for end or the other side up. `names`: of the photographs by number now. `tight_side`:
    which side is the tight one, "face" or "back".
    """
    proposed = dict(getattr(proof, "proposal", None) or {})
    suspects: dict[int, list[Any]] = {}
    for suspect in getattr(proof, "suspects", ()):
        suspects.setdefault(suspect.leaf, []).append(suspect)
    marks = []
    for leaf in bundle.leaves:
        here = suspects.get(leaf.number, [])
        ended = any(lies_end_for_end(one) for one in here)
        over = any(one.kind == "turned" for one in here)
        marks.append(Mark(
            proposed.get(leaf.number, leaf.number),
            (names or {}).get(leaf.number) or leaf.face.image.name,
            leaf.number,
            word("the lower end of the picture") if ended else word("the upper end of the picture"),
            _side("back" if over else "face", tight_side),
            " ".join(str(one.text) for one in here),
        ))
    return tuple(sorted(marks, key=lambda mark: mark.chalk))


def _side(photographed: str, tight_side: str) -> str:
    face = photographed == "face"
    if tight_side == TIGHT_SIDES[0]:
        return word("face") if face else word("back")
    if tight_side == photographed:
        return word("face, tight side") if face else word("back, tight side")
    return word("face, loose side") if face else word("back, loose side")


def as_csv(marks: tuple[Mark, ...]) -> str:
    """The list as comma-separated text."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerows([(word("marking list"), word(HOW)), ()])
    table.writerow([word(name) for name in HEADINGS])
    for mark in marks:
        table.writerow([guarded(v) if isinstance(v, str) else v for v in astuple(mark)])
    return out.getvalue()


def as_text(marks: tuple[Mark, ...]) -> str:
    """The list to print: a line for each leaf."""
    lines = [word(HOW), ""]
    for mark in marks:
        template = word("{chalk}  {photograph}: top is {top_end}; {side_up} up.")
        if mark.chalk != mark.now:
            template = word("{chalk} (now {now})  {photograph}: top is {top_end}; {side_up} up.")
        line = filled(template, {**asdict(mark), "chalk": f"{mark.chalk:>4}"})
        lines.append(f"{line} {mark.to_do}".rstrip())
    return "\n".join(lines) + "\n"


def write_csv(marks: tuple[Mark, ...], path: str | os.PathLike[str]) -> None:
    """Writes the list; VeneerError, and the old file untouched, if that cannot be done."""
    write_beside(path, lambda file: file.write(as_csv(marks).encode("utf-8")))
