# SPDX-License-Identifier: LGPL-2.1-or-later
"""Words of the sequence's screens that stand for the core's names."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

import FreeCAD

from veneerwb.gui.panels import fields

translate = FreeCAD.Qt.translate
HERE = "VeneerSequenceWindow"

REGISTERED, FIGURE, PHOTOGRAPHED = "registered", "figure", "photographed"


def laid_as(key: str) -> str:
    """The name of a laying, for a box."""
    return {
        REGISTERED: translate(HERE, "As registered"),
        FIGURE: translate(HERE, "On the figure"),
        PHOTOGRAPHED: translate(HERE, "As photographed"),
    }.get(key, key)


def followed_as(what: str) -> str:
    """The name of what a stack follows."""
    return {
        "figure": translate(HERE, "The figure"),
        "log": translate(HERE, "The log"),
        "marks": translate(HERE, "Two picked marks"),
        "photographs": translate(HERE, "As photographed"),
    }[what]


def marked_as(kind: str) -> tuple[str, bool]:
    """A word or two for a kind of suspect, and whether that is said of the place after the leaf."""
    words = {
        "out of place": (translate(HERE, "out of place"), False),
        "missing": (translate(HERE, "one missing?"), True),
        "thickness": (translate(HERE, "thickness"), False),
        "turned": (translate(HERE, "turned over"), False),
        "end for end": (translate(HERE, "end for end"), False),
        "duplicate": (translate(HERE, "twice"), False),
        "foreign": (translate(HERE, "foreign"), False),
    }
    return words.get(kind, (kind, False))


def remedy(kind: str) -> str:
    """What to do about a kind of suspect."""
    return {
        "out of place": translate(HERE, "Renumber as proposed."),
        "missing": translate(
            HERE, "Look for a leaf that was not photographed, or measure there."
        ),
        "thickness": translate(HERE, "Measure the thickness of leaves on both sides of it."),
        "turned": translate(HERE, "Go to it, then press Turn leaf over."),
        "end for end": translate(HERE, "Go to it, then press Turn leaf end for end."),
        "duplicate": translate(HERE, "Take one of the two out of the bundle (in the tree)."),
        "foreign": translate(HERE, "Take it out of the bundle (in the tree)."),
    }.get(kind, "")


def renumbering(proposal: Mapping[int, int]) -> str:
    """What a proposal changes: "3 becomes 4, 4 becomes 3"."""
    becomes = translate(HERE, "{now} becomes {new}")
    moved = [(now, new) for now, new in sorted(proposal.items()) if now != new]
    return ", ".join(becomes.format(now=now, new=new) for now, new in moved)


def listed(numbers: Iterable[int]) -> str:
    """Leaf numbers as a person writes them."""
    from veneerwb.core.leaf import ranges

    return ranges(sorted(numbers))


def doubt(found: Any) -> str:
    """What speaks against registers that a proof's were made exact to (core's Exact); "" if
    nothing."""
    said = []
    if found.refused is not None:
        said.append(translate(
            HERE, "Its register could not be made exact and may be some millimetres off. {why}"
        ).format(why=fields.in_words(found.refused)))
    if found.doubts:
        pair = translate(HERE, "from leaf {a} to {b}")
        said.append(translate(
            HERE, "How the figure goes on {pairs} is in doubt: look at those leaves one over the "
            "other before you cut."
        ).format(pairs=", ".join(pair.format(a=a, b=b) for a, b in found.doubts)))
    return " ".join(said)
