# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bundle: consecutive leaves, their thickness and the stack's sense."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Sequence
from typing import Any

from veneerwb.host.objects.base import OUT, Property, Proxy, set_if_new

BACKS = ("next", "previous", "own")


class Bundle(Proxy):
    """A bundle of leaves; everyone else links to it."""

    kind = "Bundle"
    properties = (
        Property("LinkList", "Leaves", "Bundle", "The leaves, in any order: their numbers count"),
        Property("Length", "Thickness", "Bundle", "Thickness of a leaf", 0.6),
        Property(
            "Enumeration",
            "Back",
            "Bundle",
            "Whose photograph shows a leaf's back: the next leaf's, the previous one's, or its own",
            BACKS,
        ),
        Property(
            "Angle", "Slope", "Bundle", "Angle between figure and leaf; 0 if it is not known", 0.0
        ),
        Property("Bool", "SlopeKnown", "Bundle", "A slope of 0 is known, not unknown", False),
        Property("IntegerList", "Numbers", "Result", "The leaves' numbers", [], OUT),
    )

    def update(self, obj: Any) -> None:
        from veneerwb.host import values

        set_if_new(obj, Numbers=list(values.core_bundle(obj).numbers))


def add_bundle(doc: Any, bundle: Any) -> Any:
    """A Bundle with its leaves from a core Bundle."""
    from veneerwb.host import imports

    with tempfile.TemporaryDirectory(prefix="leaves-") as folder:
        ready = [imports.from_leaf(leaf, folder) for leaf in bundle.leaves]
        return imports.make_bundle(doc, ready, bundle.thickness, bundle.back, bundle.slope)


def add_bundle_from_photos(
    doc: Any,
    paths: Sequence[str | os.PathLike[str]],
    mm_per_px: float,
    thickness: float,
    back: str = "next",
    slope: float | None = None,
) -> Any:
    """A Bundle whose leaf k is photographed in paths[k-1]. Raises VeneerError, and the document
    stays as it was, for a photograph that cannot be read and for values that cannot be."""
    from veneerwb.host import imports

    imports.check_bundle(len(paths), thickness, back)
    with tempfile.TemporaryDirectory(prefix="leaves-") as folder:
        ready = [imports.from_file(p, folder, k, mm_per_px) for k, p in enumerate(paths, start=1)]
        return imports.make_bundle(doc, ready, thickness, back, slope)


def core_bundle(obj: Any) -> Any:
    """The veneerwb.core.Bundle that a Bundle object stands for; its photographs are read when asked
    for."""
    from veneerwb.host import values

    return values.core_bundle(obj)
