# SPDX-License-Identifier: LGPL-2.1-or-later
"""How far work is: a share of 1 that is told while it is done. Who is told may raise to end it."""

from __future__ import annotations

from collections.abc import Callable

Progress = Callable[[float], None]


def unheard(share: float) -> None:
    """Nobody asks how far it is."""


def part(progress: Progress, start: float, end: float) -> Progress:
    """The progress of a part, from `start` to `end` of the whole."""
    return lambda share: progress(start + (end - start) * share)
