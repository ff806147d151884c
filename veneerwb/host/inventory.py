# SPDX-License-Identifier: LGPL-2.1-or-later
"""The inventory of a document's bundles, out to a CSV file."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from veneerwb.core.inventory import Entry, entry, extent, write_csv
from veneerwb.host import values
from veneerwb.host.objects.base import kind_of


def bundles(doc: Any) -> list[Any]:
    """The Bundle objects of a document."""
    return [obj for obj in doc.Objects if kind_of(obj) == "Bundle"]


def entry_of(bundle_obj: Any) -> Entry:
    """A Bundle object as it stands in an inventory. Raises VeneerError or Refused."""
    made = entry(values.plain_bundle(bundle_obj), values.particulars(bundle_obj))
    usable = extent(values.core_bundle(bundle_obj)).usable_m2
    return replace(made, extent=replace(made.extent, usable_m2=usable))


def write_inventory(bundle_objs: Sequence[Any], path: str | os.PathLike[str]) -> None:
    """Writes the inventory of Bundle objects as CSV. Raises VeneerError or Refused, and the old
    file stays."""
    write_csv([entry_of(obj) for obj in bundle_objs], path)
