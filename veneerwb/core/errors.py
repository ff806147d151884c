# SPDX-License-Identifier: LGPL-2.1-or-later
"""The one exception of the core: a code, a template and values; as text it is plain English in
mm."""

from __future__ import annotations

from string import Formatter
from typing import Any


class _Plain(Formatter):
    """Formats floats the way a rule is read: at most three decimals, no trailing noughts."""

    def format_field(self, value: Any, format_spec: str) -> str:
        if not format_spec and isinstance(value, float):
            return number(value)
        return super().format_field(value, format_spec)


def number(value: float) -> str:
    """`value` with at most three decimals, without trailing noughts: 3.5, 12, 0.605, 1e+300."""
    if abs(value) >= 1e15:
        return f"{value:g}"
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def sentence(template: str, values: dict[str, Any]) -> str:
    """`template` filled with `values`, numbers written plainly."""
    return _Plain().vformat(template, (), values)


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
