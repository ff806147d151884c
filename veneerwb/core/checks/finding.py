# SPDX-License-Identifier: LGPL-2.1-or-later
"""A finding: what a check saw, how grave it is, and what would do."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from veneerwb.core.errors import sentence
from veneerwb.core.leaf import ranges
from veneerwb.core.plane import choice
from veneerwb.words import marked, word

LEVELS = marked("stop"), marked("warn"), marked("note")
LENGTHS = re.compile(r"(\{\w+\}(?:(?: x | to | bis | \u00e0 )\{\w+\})*) mm\b")
"""In a sentence's template, English or translated: one length, or several before one unit."""


@dataclass(frozen=True)
class Finding:
    """One finding. `level` is "stop" (do not cut), "warn" (cut knowing it) or "note".

    `text` says what is so and `remedy` what would do (may be empty), in plain English and mm;
    `template`, `remedy_template` and `values` (numbers by name, mm and degrees) serve translation.
    `pieces` are the positions concerned.
    """

    code: str
    level: str
    template: str
    remedy_template: str = ""
    values: Mapping[str, Any] = field(default_factory=dict)
    pieces: tuple[int, ...] = ()

    def __post_init__(self) -> None:
        choice("level", self.level, LEVELS)

    @property
    def text(self) -> str:
        return sentence(self.template, self._words())

    @property
    def remedy(self) -> str:
        return sentence(self.remedy_template, self._words())

    def _words(self) -> dict[str, Any]:
        return {
            name: ranges(value) if isinstance(value, (tuple, list)) else value
            for name, value in self.values.items()
        }

    def __str__(self) -> str:
        return " ".join(part for part in (f"{word(self.level)}:", self.text, self.remedy) if part)


def report(findings: Iterable[Finding]) -> str:
    """Findings as text, one a line."""
    return "\n".join(str(finding) for finding in findings) + "\n"
