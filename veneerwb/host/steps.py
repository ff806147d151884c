# SPDX-License-Identifier: LGPL-2.1-or-later
"""Undo steps for what is done to a document outside a panel."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import FreeCAD


@contextmanager
def one_step(doc: Any, name: str) -> Iterator[None]:
    """What is done within is one undo step, or a part of the step that is open already; if it
    fails, a step of its own is taken back."""
    if FreeCAD.getActiveTransaction() or doc.HasPendingTransaction:
        yield
        return
    doc.openTransaction(name)
    try:
        yield
    except BaseException:
        doc.abortTransaction()
        doc.recompute()  # or what was taken back would stay touched
        raise
    doc.commitTransaction()
