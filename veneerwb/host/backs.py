# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs of backs added to leaves that are in a document already, what ties them to their
faces, and the figure's wander that they show. Each is one undo step, and raises VeneerError before
the document is touched; whoever calls recomputes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from veneerwb.core import Side, VeneerError
from veneerwb.core.files import shown_name
from veneerwb.core.leaf import BACKS, Leaf
from veneerwb.core.photos.preparing import Preparation, Prepared, Progress, prepared
from veneerwb.core.photos.reading import AnyPath, by_number
from veneerwb.core.plane import choice
from veneerwb.core.sides import Wander
from veneerwb.core.sides.wander import pinned
from veneerwb.host import imports, values
from veneerwb.host.objects.base import set_if_new
from veneerwb.host.objects.bundle import PINS
from veneerwb.host.photos import included
from veneerwb.host.sequence import leaf_objects
from veneerwb.host.steps import one_step
from veneerwb.words import marked, say, word


@dataclass(frozen=True)
class KeptTie:
    """What a document keeps of a tie: by "outline" or "marks", mm rms and the middle's error. `by`
    is "placed" where a back was laid on its leaf and nobody said how."""

    by: str
    rms: float = 0.0
    error_mm: float = 0.0


def kept_ties(bundle_obj: Any) -> dict[int, KeptTie]:
    """The ties of a Bundle object's backs by leaf number; no entry for one that is not tied."""
    found = {}
    for number, obj in leaf_objects(bundle_obj).items():
        if not obj.BackPhoto:
            continue
        if obj.BackTie:
            found[number] = KeptTie(obj.BackTie, obj.BackTieRms, obj.BackTieError)
        elif _placed(values.core_leaf(obj)):
            found[number] = KeptTie("placed")
    return found


def _placed(leaf: Leaf) -> bool:
    return leaf.back.view != leaf.back.register


def numbered(paths: list[AnyPath], numbers: tuple[int, ...]) -> dict[int, AnyPath]:
    """Photographs of backs by the last number in each name. Raises VeneerError for a number that
    two share or that no leaf has."""
    found = by_number(paths)
    lost = [(number, path) for number, path in found.items() if number not in numbers]
    if lost:
        raise VeneerError(
            "back-of-no-leaf",
            "{file} would be the back of leaf {leaf}, which the bundle does not have; name it by "
            "its leaf's number, or choose it for one leaf.",
            file=shown_name(lost[0][1]), leaf=lost[0][0],
        )
    return found


def made_ready(
    bundle_obj: Any,
    paths: Mapping[int, AnyPath],
    folder: str,
    mm_per_px: float | None = None,
    progress: Progress | None = None,
) -> dict[int, Prepared]:
    """Photographs of backs by leaf number as working copies in `folder`, mirrored, for they are
    kept as seen from the face. All of each is kept: its background tells the leaf's outline.

    `mm_per_px`: of the photographs themselves; None: each has the scale that its face was
    photographed at. Raises as core.photos.preparing does; the document is not touched.
    """
    objects = leaf_objects(bundle_obj)
    hows = [
        Preparation(mm_per_px=mm_per_px or _scale(objects[number]), mirrored=True)
        for number in paths
    ]
    batch = prepared(list(paths.values()), hows, folder, progress)
    return dict(zip(paths, batch.photos))


def _scale(obj: Any) -> float:
    return obj.OriginalMmPerPx or obj.MmPerPx


def side_of(one: Prepared, leaf: Leaf) -> Side:
    """The side that a photograph of a leaf's back makes, not tied yet."""
    image = included(str(one.file), one.mm_per_px, one.gains)
    return Side(image, leaf.register, leaf.register)


def add_backs(bundle_obj: Any, ready: Mapping[int, Prepared]) -> None:
    """Gives leaves of a Bundle object photographs of their backs, in place of those that they have;
    what tied those is forgotten."""
    objects = leaf_objects(bundle_obj)
    with one_step(bundle_obj.Document, word("Add backs")):
        for number, one in ready.items():
            obj = objects[number]
            imports.put(obj, "Back", imports.copy_of(one), "BackPhoto", "BackMmPerPx")
            set_if_new(
                obj, BackGains=list(one.gains or ()), BackRegister=[], BackView=[], BackTie="",
                BackTieRms=0.0, BackTieError=0.0,
                Notes=[*obj.Notes, *(say("Back: {note}", note=note) for note in one.notes)],
            )


def keep_wander(bundle_obj: Any, wander: Wander | None, pin: str = "face") -> None:
    """Keeps a measured wander on a Bundle object, so that its turned leaves are shown, judged and
    pinned by it; None forgets it. `pin` as `core.sides.with_wander` has it. Raises VeneerError for
    a wander that is not known."""
    choice(marked("way to pin backs"), pin, PINS)
    if wander is not None and not wander.known:
        raise VeneerError(
            "wander-unknown",
            "How far the figure wanders is not measured; photograph two or three backs.",
        )
    kept = [] if wander is None else [wander.across, wander.along, wander.left]
    own = {p.leaf: p.motion for p in wander.passages if p.sure} if wander else {}
    with one_step(bundle_obj.Document, word("Keep the figure's wander")):
        set_if_new(bundle_obj, Wander=kept, PinBacks=pin)
        _pin(bundle_obj, own)


def _pin(bundle_obj: Any, own: Mapping[int, Any] | None) -> None:
    """Pins the tied backs of a bundle as it says. By the log its surfaces lie over each other as
    they are. `own`: their passages, as measured now; None: a back that has one keeps it."""
    wander = values.kept_numbers(bundle_obj)
    known = wander and bundle_obj.Follows in ("figure", "marks")
    pin = bundle_obj.PinBacks if known else "face"
    for number, obj in leaf_objects(bundle_obj).items():
        if not obj.BackPhoto:
            continue
        leaf = values.core_leaf(obj)
        kept = own is None and bundle_obj.PinBacks == "figure" and obj.BackRegister
        if not _placed(leaf) or kept:
            continue
        shift = wander[:2] or (0.0, 0.0)
        imports.place_registers(obj, pinned(leaf, shift, pin, (own or {}).get(number)))


def set_pin(bundle_obj: Any, pin: str) -> None:
    """Pins turned leaves another way by the wander that is kept. By the figure, a photographed
    back that has a place of its own keeps it. As the faces are, all give theirs up: pinned by the
    figure again they get the bundle's wander, until it is measured anew (`keep_wander`)."""
    choice(marked("way to pin backs"), pin, PINS)
    with one_step(bundle_obj.Document, word("Pin backs")):
        set_if_new(bundle_obj, PinBacks=pin)
        _pin(bundle_obj, None)


def set_sense(bundle_obj: Any, back: str) -> None:
    """Says how the leaves of a Bundle object lay in the log."""
    choice(marked("back"), back, BACKS)
    with one_step(bundle_obj.Document, word("Say how the leaves lay")):
        set_if_new(bundle_obj, Back=back)


def with_backs(leaf: Leaf, one: Prepared) -> Leaf:
    """The leaf with another photograph of its back."""
    return replace(leaf, back=side_of(one, leaf))
