# SPDX-License-Identifier: LGPL-2.1-or-later
"""Observers of all documents, each from when it is first wanted on."""

from __future__ import annotations

from typing import Any

import FreeCAD

_observers: dict[type, Any] = {}


def watch(kind: type) -> None:
    """From now on one observer of this class hears what becomes of documents."""
    if kind not in _observers:
        _observers[kind] = kind()
        FreeCAD.addDocumentObserver(_observers[kind])
