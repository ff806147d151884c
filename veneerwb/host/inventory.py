# SPDX-License-Identifier: LGPL-2.1-or-later
"""The inventory of a document's bundles: out to a CSV file, and particulars back in."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.inventory import Entry, Particulars, entry, extent, read_csv, write_csv
from veneerwb.core.listing import few
from veneerwb.host import values
from veneerwb.host.objects.base import kind_of, set_if_new
from veneerwb.host.steps import one_step
from veneerwb.words import say, word

_TEXTS = {
    "species": "Species",
    "cut": "Cut",
    "tight_side": "TightSide",
    "flitch": "Flitch",
    "lot": "LotMark",
    "currency": "Currency",
    "origin": "Origin",
}
_NUMBERS = {"moisture": "Moisture", "cost": "Cost"}


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


def take(bundle_obj: Any, particulars: Particulars) -> None:
    """Sets the particulars of a Bundle object; its name, its thickness and its leaves stay."""
    with one_step(bundle_obj.Document, word("Take particulars")):
        set_if_new(bundle_obj, **_properties(particulars))


def _properties(particulars: Particulars) -> dict[str, Any]:
    texts = {name: getattr(particulars, field) for field, name in _TEXTS.items()}
    numbers = {name: getattr(particulars, field) or 0.0 for field, name in _NUMBERS.items()}
    return texts | numbers


def _known(particulars: Particulars) -> dict[str, Any]:
    """What is said of a bundle, as properties; an empty cell says nothing."""
    nothing = _properties(Particulars())
    return {name: v for name, v in _properties(particulars).items() if v != nothing[name]}


def read_inventory(doc: Any, path: str | os.PathLike[str]) -> str:
    """Takes the particulars in a CSV file for the Bundle objects of the same names, in one undo
    step; what was taken and what was left out, in sentences. An empty cell leaves what is there.
    Raises VeneerError, and nothing is changed, for a file that cannot be read."""
    found = read_csv(path)
    names = [one.particulars.name for one in found.entries]
    twice = [name for name, times in Counter(names).items() if times > 1 and name]
    if twice:
        raise VeneerError(
            "bundle-twice", "The file has more than one line for the bundle {name}; keep one.",
            name=twice[0],
        )
    by_name = {one.particulars.name: one.particulars for one in found.entries}
    here = {obj.Label: obj for obj in bundles(doc)}
    taken = [name for name in by_name if name in here]
    left = [name or word("without a name") for name in by_name if name not in here]
    with one_step(doc, word("Read inventory")):
        for name in taken:
            set_if_new(here[name], **_known(by_name[name]))
    said = [
        say("Particulars were taken for {bundles}.", bundles=few(taken)) if taken
        else word("The file names none of the bundles of this document.")
    ]  # fmt: skip
    if left:
        said.append(say("Not in this document: {bundles}.", bundles=few(left)))
    if found.unknown_columns:
        columns = few(found.unknown_columns)
        said.append(say("Columns that were not read: {columns}.", columns=columns))
    return " ".join(said)
