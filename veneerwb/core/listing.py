# SPDX-License-Identifier: LGPL-2.1-or-later
"""Phrases put together in the language spoken: lists as a person says them, and a template set
into another, whose own {names} are still to be filled (by a screen, in the user's units)."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.words import filled, say, word

FEW = 5
"""Names that are listed one by one."""
LONGEST = 60
"""Letters of a name that are shown: a file may hold one of any length."""


def all_of(parts: Sequence[str]) -> str:
    """What is said of all `parts`: a, b and c."""
    return _joined(parts, word("{others} and {last}"))


def one_of(parts: Sequence[str]) -> str:
    """What is said of any of `parts`: a, b or c."""
    return _joined(parts, word("{others} or {last}"))


def few(names: Sequence[str]) -> str:
    """Names one after the other; of many the first, and how many more there are."""
    more = len(names) - FEW
    cut = (f"{n[:LONGEST]}..." if len(n) > LONGEST + 3 else n for n in names[:FEW])
    shown = ", ".join(cut)
    return say("{names} and {more} more", names=shown, more=more) if more > 0 else shown


def put_in(template: str, **parts: str) -> str:
    """A translated template, some of its {names} replaced by other templates."""
    for name, part in parts.items():
        template = template.replace(f"{{{name}}}", part)
    return template


def _joined(parts: Sequence[str], template: str) -> str:
    *others, last = parts
    return filled(template, {"others": ", ".join(others), "last": last}) if others else last
