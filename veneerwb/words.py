# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said to people: English in the source, in the user's language where a screen has set one.

Every layer says its sentences by `say`, or by a template and values (VeneerError, Finding), so that
`resources/translations/texts.py` finds them. Keys, codes, file names, property names and values of
choices are data and are never translated. Imports nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from string import Formatter
from typing import Any

_language: list[Callable[[str], str]] = [str]
_point: list[Callable[[], str]] = [lambda: "."]


def _in_mm(mm: float) -> str:
    return f"{figure(mm)} mm"


_length: list[Callable[[float], str]] = [_in_mm]


def speak(
    language: Callable[[str], str] = str, decimal_sign: Callable[[], str] = lambda: ".",
    length: Callable[[float], str] = _in_mm,
) -> None:
    """From now on texts are passed through `language`, which returns the translated text, or the
    same one where it knows none, numbers in sentences have `decimal_sign`, and lengths are written
    by `length`, of mm and as exact as these are; without them they are plain English, in mm."""
    _language[0], _point[0], _length[0] = language, decimal_sign, length


def word(text: str) -> str:
    """A text, or a template with {names}, in the language spoken."""
    return _language[0](text) if text else text


def marked(text: str) -> str:
    """The same text: marks one that is kept in a table, and put through `word` when it is used."""
    return text


def say(template: str, **values: Any) -> str:
    """A sentence in the language spoken, its {names} filled in, numbers written plainly."""
    return filled(word(template), values)


def filled(template: str, values: Mapping[str, Any]) -> str:
    """`template`, which may be translated already, filled with `values`."""
    return _Plain().vformat(template, (), values)


def number(value: float) -> str:
    """`value` with at most three decimals, without trailing noughts: 3.5, 12, 0.605, 1e+300. The
    point is a point: for data, and for what is not said to a person in a sentence."""
    if abs(value) >= 1e15:
        return f"{value:g}"
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def figure(value: float, form: str = "") -> str:
    """`value` as `number` writes it, or in another form (".1f"), with the decimal sign spoken."""
    return (format(value, form) if form else number(value)).replace(".", _point[0]())


def in_unit(mm: float, decimals: int = 1) -> str:
    """A length with its unit, about as exact as so many decimals of a mm, in the user's unit where
    a screen has set one: for a sentence that is kept as text, so that no screen can write it anew
    from a template and values."""
    return _length[0](round(mm, decimals))


class _Plain(Formatter):
    """Formats floats the way a rule is read: at most three decimals, no trailing noughts."""

    def format_field(self, value: Any, format_spec: str) -> str:
        if isinstance(value, float):
            return figure(value, format_spec)
        return super().format_field(value, format_spec)
