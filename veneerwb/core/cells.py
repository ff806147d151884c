# SPDX-License-Identifier: LGPL-2.1-or-later
"""Cells of lists that spreadsheets read."""

from __future__ import annotations

_FORMULA = (*"=+-@\uff1d\uff0b\uff0d\uff20", "\t", "\r", "\n")


def guarded(text: str) -> str:
    """A text that no spreadsheet takes for a formula; `unguarded` takes it back."""
    text = text.replace("\r", "\n")  # which the writer leaves without quotes: a line of its own
    return f"'{text}" if text.lstrip("'").startswith(_FORMULA) else text


def unguarded(text: str) -> str:
    return text[1:] if text[:1] == "'" and text.lstrip("'").startswith(_FORMULA) else text
