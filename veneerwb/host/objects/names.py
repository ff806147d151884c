# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is written on pages follows the names in the document, which the host counts as no
change."""

from __future__ import annotations

from typing import Any

from veneerwb.host import watching
from veneerwb.host.objects.base import kind_of

NAMED = ("Match", "Bundle", "Stock")
WRITTEN = ("Drawing", "Bench")
"""The kinds whose pages name those."""


class Names:
    """Has drawings and benches recomputed when what they name is renamed."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name != "Label" or obj.Document is None or obj.Document.Restoring:
            return
        if kind_of(obj) in NAMED:
            for one in obj.InListRecursive:
                if kind_of(one) in WRITTEN:
                    one.touch()


def watch() -> None:
    """From the first drawing or bench on, names are watched."""
    watching.watch(Names)
