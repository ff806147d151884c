# SPDX-License-Identifier: LGPL-2.1-or-later
"""The one exception of the core: a code, a template and values; as text it is a plain sentence in
mm, in the language spoken (English where no screen has set another)."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from veneerwb.words import filled, number, word

__all__ = ["VeneerError", "number", "sentence"]


def sentence(template: str, values: Mapping[str, Any]) -> str:
    """`template` in the language spoken, filled with `values`, numbers written plainly."""
    return filled(word(template), values)


class VeneerError(ValueError):
    """What is wrong, with which leaf or value, and what would do.

    `code` names the case, `template` is the sentence with {names}, `values` fills it (mm,
    degrees), so that a screen can translate the sentence and show the user's own units.
    """

    def __init__(self, code: str, template: str, **values: Any) -> None:
        super().__init__(sentence(template, values))
        self.code = code
        self.template = template
        self.values = values

    def __reduce__(self) -> tuple[Any, ...]:
        return (_rebuilt, (self.code, self.template, self.values))


def _rebuilt(code: str, template: str, values: dict[str, Any]) -> VeneerError:
    return VeneerError(code, template, **values)
