# SPDX-License-Identifier: LGPL-2.1-or-later
"""Measures in words, for whoever looks at a gallery of tops.

Where one word ends and the next begins is chosen, by the generated figures; a colour difference of
2 reads as another colour (see `core.colour`).
"""

from __future__ import annotations

import bisect
from collections.abc import Mapping
from types import MappingProxyType

from veneerwb.core.appeal.measures import Appeal

BANDS: Mapping[str, tuple[tuple[float, ...], tuple[str, ...]]] = MappingProxyType({
    "contrast": (
        (3.0, 6.0, 9.0),
        ("little colour change", "some colour change", "clear colour change",
         "strong colour change"),
    ),
    "variety": (
        (1.0, 3.0, 8.0),
        ("even grain", "some grain change", "clear grain change", "lively grain"),
    ),
    "seams": ((1.0, 2.0), ("quiet seams", "soft seams", "seams show")),
    "closing": ((2.0, 4.0), ("", "closing seam shows", "closing seam shows clearly")),
})
"""By measure: the values from which the next words are said, and the words, for the least first. A
closing seam that does not show is not spoken of."""


def in_words(appeal: Appeal) -> tuple[str, ...]:
    """What a top is like, a few words for each measure that has something to say, in plain
    English."""
    said = (_word(name, getattr(appeal, name)) for name in BANDS)
    return tuple(words for words in said if words)


def _word(name: str, value: float) -> str:
    limits, words = BANDS[name]
    return words[bisect.bisect_right(limits, value)]
