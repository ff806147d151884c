# SPDX-License-Identifier: LGPL-2.1-or-later
"""Measures in words, for whoever looks at a gallery of tops.

Where one word ends and the next begins is chosen, by the generated figures; a colour difference of
2 reads as another colour (see `core.colour`).
"""

from __future__ import annotations

import bisect
from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

from veneerwb.core.appeal.measures import Appeal
from veneerwb.core.errors import sentence
from veneerwb.words import marked


@dataclass(frozen=True)
class Said:
    """What is said of one measure: `code` names the case, `template` are the words, `values` fills
    them and serves a screen that says more; as text it is plain English."""

    code: str
    template: str
    values: Mapping[str, Any] = field(default_factory=dict)

    def __str__(self) -> str:
        return sentence(self.template, dict(self.values))


BANDS: Mapping[str, tuple[tuple[float, ...], tuple[tuple[str, str], ...]]] = MappingProxyType({
    "contrast": ((3.0, 6.0, 9.0), (
        ("little-contrast", marked("little colour change")),
        ("some-contrast", marked("some colour change")),
        ("clear-contrast", marked("clear colour change")),
        ("strong-contrast", marked("strong colour change")),
    )),
    "variety": ((1.0, 3.0, 8.0), (
        ("little-variety", marked("even grain")),
        ("some-variety", marked("some grain change")),
        ("clear-variety", marked("clear grain change")),
        ("strong-variety", marked("lively grain")),
    )),
    "seams": ((1.0, 2.0), (
        ("little-seams", marked("quiet seams")),
        ("some-seams", marked("soft seams")),
        ("clear-seams", marked("seams show")),
    )),
    "closing": ((2.0, 4.0), (
        ("little-closing", ""),
        ("some-closing", marked("closing seam shows")),
        ("clear-closing", marked("closing seam shows clearly")),
    )),
})
"""By measure: the values from which the next words are said, and the words, for the least first,
each with its code. A closing seam that does not show is not spoken of."""


def in_words(appeal: Appeal) -> tuple[Said, ...]:
    """What a top is like, a few words for each measure that has something to say."""
    said = (_said(name, getattr(appeal, name)) for name in BANDS)
    return tuple(words for words in said if words.template)


def _said(name: str, value: float) -> Said:
    limits, words = BANDS[name]
    return Said(*words[bisect.bisect_right(limits, value)], {name: value})
