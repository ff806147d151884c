# SPDX-License-Identifier: LGPL-2.1-or-later
"""Doing something when the events at hand are through."""

from __future__ import annotations

from collections.abc import Callable

from PySide import QtCore

_waiting: list[Callable[[], object]] = []
_timers: list[QtCore.QTimer] = []


def later(action: Callable[[], object]) -> None:
    """Calls `action` from the event loop, in the order of asking. One timer with one slot serves
    all, so that nothing hangs on slots that come and go."""
    if not _timers:
        timer = QtCore.QTimer()
        timer.setSingleShot(True)
        timer.timeout.connect(_run)
        _timers.append(timer)
    _waiting.append(action)
    _timers[0].start(0)


def _run() -> None:
    """One action a turn, so that one that raises does not take the others with it."""
    action = _waiting.pop(0)
    if _waiting:
        _timers[0].start(0)
    action()
