# SPDX-License-Identifier: LGPL-2.1-or-later
"""Document objects, one file each: the proxy, and the function that adds it to a document.

Nothing here imports the core at its top, and no module or class name may ever change: documents
hold them.
"""

from __future__ import annotations

from veneerwb.host.objects.bench import add_bench
from veneerwb.host.objects.buildup import add_build_up, parts_of
from veneerwb.host.objects.bundle import add_bundle, add_bundle_from_photos, core_bundle
from veneerwb.host.objects.closing import add_closing, closing_of, closings_of
from veneerwb.host.objects.drawing import add_drawing
from veneerwb.host.objects.facing import add_facing, faced, set_faces
from veneerwb.host.objects.leaf import add_leaf
from veneerwb.host.objects.match import add_match, layout
from veneerwb.host.objects.run import add_run, run_of
from veneerwb.host.objects.spot import add_spot
from veneerwb.host.objects.stock import add_stock

__all__ = [
    "add_bench",
    "add_build_up",
    "add_bundle",
    "add_bundle_from_photos",
    "add_closing",
    "add_drawing",
    "add_facing",
    "add_leaf",
    "add_match",
    "add_run",
    "add_spot",
    "add_stock",
    "closing_of",
    "closings_of",
    "core_bundle",
    "faced",
    "layout",
    "parts_of",
    "run_of",
    "set_faces",
]
