# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said of backs."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import FreeCAD

from veneerwb.gui.panels import fields

translate = FreeCAD.Qt.translate
HERE = "VeneerBacksPanel"


def left_told(numbers: Iterable[int]) -> str:
    """Which backs the maker tied, so that their outlines were not asked."""
    text = translate(HERE, "Left as tied by marks or by hand: {leaves}.")
    return text.format(leaves=", ".join(map(str, numbers)))


def kept_told(number: int, tie: Any) -> str:
    """What the document knows of the tie of a leaf's back."""
    text = {
        "outline": translate(
            HERE, "The back of leaf {leaf} is tied by its outline: the two lie {off} apart."
        ),
        "marks": translate(
            HERE, "The back of leaf {leaf} is tied by marks, which lie {off} apart."
        ),
    }.get(tie.by, translate(
        HERE, "The back of leaf {leaf} was laid on its face by a script, which says not how."
    ))
    return text.format(leaf=number, off=fields.length(tie.rms, 2))


def sense_told(book: Any) -> str:
    """What the backs prove, or why they do not; where they do, each by itself is left out."""
    if book.sense is not None:
        *each, verdict = book.sense.notes
        proved = book.sense.back is not None
        said = [verdict, *(note for note in each if not proved or note.code != "back-told")]
        return " ".join(map(fields.in_words, said))
    return {
        "next": translate(HERE, "The bundle says that leaf 2 lay under leaf 1."),
        "previous": translate(HERE, "The bundle says that leaf 2 lay over leaf 1."),
        "own": translate(HERE, "The bundle does not say how the leaves lay."),
    }[book.bundle.back] + " " + translate(HERE, "One back can prove it.")


def wander_told(book: Any) -> str:
    """The wander and what it is used for, or what book seams may miss by without."""
    if book.wander is not None:
        said = [fields.in_words(book.wander)]
    elif book.kept:
        said = [_measured_before(*book.kept)]
    else:
        from veneerwb.core.sides import measured_wander

        unknown = measured_wander(book.bundle, numbers=())
        said = [fields.in_words(unknown)]
    if book.kept:
        said.append(_use(book))
    return " ".join(said)


def _measured_before(across: float, along: float, left: float) -> str:
    lengths = (fields.length(abs(one), 2) for one in (across, along, left))
    return translate(
        HERE, "Measured before: from face to back the figure wanders {along} {up} the leaf and "
        "{across} to the {right}, known to {left}.",
    ).format(
        **dict(zip(("across", "along", "left"), lengths)),
        up=translate(HERE, "up") if along > 0 else translate(HERE, "down"),
        right=translate(HERE, "right") if across > 0 else translate(HERE, "left"),
    )


def _use(book: Any) -> str:
    if book.follows == "as photographed":
        return translate(
            HERE, "The leaves are not registered: it counts once they follow the figure."
        )
    if book.follows == "log":
        return translate(HERE, "The stack follows the log, in which surfaces lie as they are.")
    left = fields.length(book.kept[2], 2)
    if book.pin == "figure":
        return translate(
            HERE, "Turned leaves are pinned by their backs' figure, which may miss by {left}."
        ).format(left=left)
    return translate(
        HERE, "Turned leaves are shown as their backs will come out, to {left}."
    ).format(left=left)
