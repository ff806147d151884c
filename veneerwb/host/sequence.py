# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a proof of the order and a registration do to a bundle in a document, each in one undo step.

Nothing is recomputed here but what a step needs; whoever calls recomputes the document. Each raises
VeneerError before the document is touched.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from FreeCAD import Vector

from veneerwb.core import Bundle, Leaf, Motion, VeneerError
from veneerwb.core.files import scratch
from veneerwb.core.plane import IDENTITY, choice
from veneerwb.core.renumbering import (
    all_numbers,
    end_for_end,
    half_turn,
    mirrored,
    over,
    turned_end_for_end,
    turned_over,
)
from veneerwb.core.sequence import registered
from veneerwb.core.sides import Tie, with_tie
from veneerwb.host import imports, values
from veneerwb.host.keeping import keep
from veneerwb.host.objects.base import kind_of, set_if_new
from veneerwb.host.objects.bundle import FOLLOWS
from veneerwb.host.steps import one_step
from veneerwb.host.turning import changed_copy
from veneerwb.words import marked, say, word


def leaf_objects(bundle_obj: Any) -> dict[int, Any]:
    """The Leaf objects of a Bundle object by their numbers, rising. Raises VeneerError where two
    share one."""
    found: dict[int, Any] = {}
    for obj in bundle_obj.Leaves:
        if kind_of(obj) == "Leaf" and found.setdefault(obj.Number, obj) is not obj:
            values.plain_bundle(bundle_obj)  # says which
    return dict(sorted(found.items()))


# --- registers ---------------------------------------------------------------------------------


def apply_registers(
    bundle_obj: Any, registers: Mapping[int, Motion], follows: str = "figure"
) -> None:
    """Gives every leaf of a Bundle object its register (bundle mm to leaf mm) and notes what they
    follow: "figure", "log", "marks" or "as photographed". Photographed backs keep their place on
    their leaves. Raises VeneerError for a leaf without register, and for one that mirrors."""
    choice(marked("follows"), follows, FOLLOWS)
    objects = leaf_objects(bundle_obj)
    bundle = _by_themselves(bundle_obj, objects.values())
    for number in bundle.numbers:
        if number not in registers:
            raise VeneerError(
                "no-register-for-leaf",
                "Leaf {leaf} has no register; register all leaves of the bundle together.",
                leaf=number,
            )
        if registers[number].mirrored:
            raise VeneerError(
                "register-mirrors",
                "The photograph of leaf {leaf} shows its other side; turn the leaf over first.",
                leaf=number,
            )
    placed = registered(bundle, registers)
    with one_step(bundle_obj.Document, word("Register leaves")):
        for number, obj in objects.items():
            _set_registers(obj, placed.leaf(number))
        set_if_new(bundle_obj, Follows=follows)


def _by_themselves(bundle_obj: Any, objects: Iterable[Any]) -> Bundle:
    """The leaves as they were written down: what a wander that is kept adds to their backs is added
    whenever they are read, and would be added again."""
    leaves = tuple(values.core_leaf(obj) for obj in objects)
    return Bundle(leaves, bundle_obj.Thickness.Value, bundle_obj.Back)


def _set_registers(obj: Any, leaf: Leaf) -> None:
    own_back = bool(obj.BackRegister), bool(obj.BackView)
    imports.place_registers(obj, leaf)
    if obj.BackPhoto:  # what was not said apart is still not
        set_if_new(obj, **{
            name: [] for name, said in zip(("BackRegister", "BackView"), own_back) if not said
        })


def unregister(bundle_obj: Any) -> None:
    """Lays all leaves as they were photographed."""
    identity = dict.fromkeys(leaf_objects(bundle_obj), IDENTITY)
    apply_registers(bundle_obj, identity, FOLLOWS[0])


def apply_ties(bundle_obj: Any, ties: Mapping[int, Tie]) -> None:
    """Lays the photographed backs of a Bundle object on their leaves as ties by number say
    (core.sides.tie_backs finds them). Raises VeneerError for a leaf that the bundle lacks."""
    bundle, objects = values.plain_bundle(bundle_obj), leaf_objects(bundle_obj)
    tied = [with_tie(bundle.leaf(number), tie) for number, tie in ties.items()]
    with one_step(bundle_obj.Document, word("Tie backs")):
        for leaf in tied:
            obj, tie = objects[leaf.number], ties[leaf.number]
            imports.place_registers(obj, leaf)
            set_if_new(obj, BackTie=tie.by, BackTieRms=tie.rms, BackTieError=tie.error_mm)


# --- numbers -----------------------------------------------------------------------------------


def renumber(bundle_obj: Any, proposal: Mapping[int, int]) -> None:
    """Gives leaves of a Bundle object new numbers, {number now: new number}; two may change places.
    Labels that say the number follow. Raises VeneerError where two would share a number."""
    objects = leaf_objects(bundle_obj)
    new = all_numbers(list(objects), proposal)
    moved = [(obj, now, new[now]) for now, obj in objects.items() if new[now] != now]
    if not moved:
        return
    with one_step(bundle_obj.Document, word("Renumber leaves")):
        labelled = [(obj, to) for obj, now, to in moved if obj.Label == f"Leaf {now}"]
        for obj, _ in labelled:  # out of the way, or the host would make them "Leaf 002"
            obj.Label = f"{obj.Name} renumbered"
        for obj, _, to in moved:
            obj.Number = to
        for obj, to in labelled:
            obj.Label = f"Leaf {to}"
        bundle_obj.Edition += 1


# --- turning -----------------------------------------------------------------------------------


def turn_end(leaf_obj: Any) -> None:
    """Turns a leaf end for end: its working copies by 180 degrees, without loss, and with them its
    usable area, faults and marks, and its register if it has one. A leaf that lies as photographed
    lies as the turned photograph then does."""
    leaf = values.core_leaf(leaf_obj)
    placed = (leaf.register, leaf.face.view) != (IDENTITY, IDENTITY)
    carry = placed or any(one.Follows != FOLLOWS[0] for one in values.bundles_of(leaf_obj))
    turned = turned_end_for_end(leaf, carry, _same)
    with scratch("leaves") as folder:
        photo = changed_copy(leaf_obj.Photo, end_for_end, folder, _stem(leaf_obj, "turned"))
        back = leaf_obj.BackPhoto and changed_copy(
            leaf_obj.BackPhoto, end_for_end, folder, _stem(leaf_obj, "back-turned")
        )
        with one_step(leaf_obj.Document, word("Turn leaf end for end")):
            keep(leaf_obj, Photo=photo, **({"BackPhoto": back} if back else {}))
            _rearrange(leaf_obj, turned, half_turn(leaf.face.image))


def turn_over(leaf_obj: Any, register: Motion | None = None) -> str:
    """Says that a leaf's photograph shows its back: it becomes the back's, mirrored, and that of
    the back, if there is one, the face's. What stands for the face then is told in the sentence
    that is returned, and kept in the leaf's Notes.

    `register`: the leaf's register as it was before (bundle mm to leaf mm, mirrored, as a proof
    finds it); None: as photographed.
    """
    leaf = values.core_leaf(leaf_obj)
    onto = over(leaf)
    settled = IDENTITY if register is None else onto @ register
    if settled.mirrored:
        raise VeneerError(
            "register-not-of-back",
            "The register given for leaf {leaf} is that of its face; the leaf need not be turned "
            "over.",
            leaf=leaf_obj.Number,
        )
    turned = turned_over(leaf, settled, _same)
    said = _told(leaf_obj)
    with scratch("leaves") as folder:
        behind = changed_copy(leaf_obj.Photo, mirrored, folder, _stem(leaf_obj, "back-over"))
        source = leaf_obj.BackPhoto or leaf_obj.Photo
        front = changed_copy(source, mirrored, folder, _stem(leaf_obj, "over"))
        with one_step(leaf_obj.Document, word("Turn leaf over")):
            had_back = bool(leaf_obj.BackPhoto)
            keep(leaf_obj, Photo=front, BackPhoto=behind)
            _swap(leaf_obj, had_back)
            _rearrange(leaf_obj, turned, onto)
            leaf_obj.Notes = [*leaf_obj.Notes, said]
    return said


def _told(obj: Any) -> str:
    if obj.BackPhoto:
        return say(
            "Leaf {leaf} was turned over: the photographs of its face and its back have changed "
            "places.", leaf=obj.Number,
        )  # fmt: skip
    return say(
        "Leaf {leaf} was turned over: its photograph shows its back. Its face was not "
        "photographed, and until it is the same picture stands for it, in which the figure lies as "
        "it does on the back.", leaf=obj.Number,
    )  # fmt: skip


_PAIRS = (
    ("MmPerPx", "BackMmPerPx"),
    ("Gains", "BackGains"),
    ("OriginalName", "BackOriginalName"),
    ("OriginalSha256", "BackOriginalSha256"),
    ("OriginalMmPerPx", "BackOriginalMmPerPx"),
)


def _swap(obj: Any, had_back: bool) -> None:
    """What is said of the face's photograph is said of the back's, and the other way about; where
    there was no other, of both."""
    for face, back in _PAIRS:
        ours, theirs = getattr(obj, face), getattr(obj, back)
        if had_back:
            set_if_new(obj, **{face: theirs})
        set_if_new(obj, **{back: ours})


def _rearrange(obj: Any, leaf: Leaf, motion: Motion) -> None:
    imports.place(obj, leaf)
    set_if_new(obj, Marks=_carried(obj.Marks, motion), Picked=_carried(obj.Picked, motion))
    for bundle in values.bundles_of(obj):
        bundle.Edition += 1


def _carried(marks: Sequence[Vector], motion: Motion) -> list[Vector]:
    moved = (motion.apply((mark.x, mark.y)) for mark in marks)
    return [Vector(float(x), float(y), mark.z) for (x, y), mark in zip(moved, marks)]


def _same(photo: Any, change: Any) -> Any:
    """Files are made apart; of the photograph only the size is asked, which stays."""
    return photo


def _stem(obj: Any, what: str) -> str:
    return f"leaf-{obj.Number:03d}-{what}"
