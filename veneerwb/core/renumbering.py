# SPDX-License-Identifier: LGPL-2.1-or-later
"""Putting right what a proof of the order finds: leaves renumbered, turned end for end or over.

A leaf's numbers, areas and registers are carried to where they lie on the leaf as it then is, so
that they mean the same wood.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos.reading import MOST_NUMBER, Photo
from veneerwb.core.plane import IDENTITY, Motion, whole

Change = Callable[[np.ndarray], np.ndarray]
Picture = Callable[[Photo, Change], Photo]


# --- numbers -----------------------------------------------------------------------------------


def all_numbers(numbers: Sequence[int], proposal: Mapping[int, int]) -> dict[int, int]:
    """The new number of every leaf: those of `proposal` (number now: new number), the others' own.

    Raises VeneerError for a leaf that is not there, and where two leaves would share a number.
    """
    unknown = [now for now in proposal if now not in numbers]
    if unknown:
        raise VeneerError(
            "no-such-leaf-to-renumber",
            "The bundle has no leaf {leaf}, so that it cannot be given another number.",
            leaf=unknown[0],
        )
    new = {now: whole("number of a leaf", to, 1, MOST_NUMBER) for now, to in proposal.items()}
    settled = {now: new.get(now, now) for now in numbers}
    holders: dict[int, int] = {}
    for now, new in settled.items():
        if new in holders:
            raise VeneerError(
                "number-given-twice",
                "Leaves {one} and {other} would both get the number {number}; give each its own.",
                one=holders[new], other=now, number=new,
            )
        holders[new] = now
    return settled


def numbers_now(old: Bundle, new: Bundle) -> dict[int, int]:
    """What numbers the leaves of a bundle have that was read anew: {number in old: number in new}.

    A leaf is known by its photograph, however its light is evened; one that is no longer there, or
    shows another photograph by now, is left out.
    """
    there = {leaf.number: leaf.face.image.as_photographed() for leaf in new.leaves}
    numbers = {image: number for number, image in reversed(there.items())}
    found = {}
    for leaf in old.leaves:
        image = leaf.face.image.as_photographed()
        number = leaf.number if there.get(leaf.number) is image else numbers.get(image)
        if number is not None:
            found[leaf.number] = number
    return found


def renumbered(bundle: Bundle, proposal: Mapping[int, int]) -> Bundle:
    """The bundle with leaves renumbered, {number now: new number}; two may change places. What
    stands for a back that was not photographed follows the new order."""
    new = all_numbers(bundle.numbers, proposal)
    leaves = tuple(replace(leaf, number=new[leaf.number]) for leaf in bundle.leaves)
    return replace(bundle, leaves=leaves, edition=bundle.edition + 1)


def lies_end_for_end(suspect: Any) -> bool:
    """Whether a suspect of a proof lies end for end, the right or the other side up."""
    return suspect.kind == "end for end" or suspect.values.get("how") == "both"


# --- one leaf ----------------------------------------------------------------------------------


def pictured(photo: Photo, change: Change) -> Photo:
    """A photo whose pixels are changed, its light as it is evened."""
    return Photo.of(change(photo.pixels), photo.mm_per_px, photo.name)


def end_for_end(pixels: np.ndarray) -> np.ndarray:
    """A picture, rows x columns, turned by 180 degrees."""
    return pixels[::-1, ::-1]


def mirrored(pixels: np.ndarray) -> np.ndarray:
    """A picture, rows x columns, flipped left-right."""
    return pixels[:, ::-1]


def half_turn(photo: Photo) -> Motion:
    """From mm on a photo to mm on the same photo turned by 180 degrees."""
    width, length = photo.size
    return Motion(180.0, width, length)


def flip(photo: Photo) -> Motion:
    """From mm on a photo to mm on the same photo flipped left-right."""
    return Motion(0.0, photo.size[0], 0.0, mirrored=True)


def turned_end_for_end(leaf: Leaf, carry: bool = True, picture: Picture = pictured) -> Leaf:
    """The leaf with its photographs turned by 180 degrees, its areas with them.

    With `carry` its registers too, so that they mean the same wood; without, they stay, for a leaf
    that lies as it was photographed. `picture` makes the photographs, of unchanged size.
    """
    turn = half_turn(leaf.face.image)
    back = None
    if _photographed(leaf):
        back = _turned(leaf.back, turn, carry, picture)
    return replace(
        _moved(leaf, turn), face=_turned(leaf.face, turn, carry, picture), back=back
    )


def _turned(side: Side, turn: Motion, carry: bool, picture: Picture) -> Side:
    register = turn @ side.register if carry else side.register
    on_photo = half_turn(side.image)
    if side.view == side.register and on_photo == turn:
        view = register
    else:
        view = on_photo @ _tie(side) @ turn.inverse() @ register
    return Side(picture(side.image, end_for_end), register, view, side.source)


def over(leaf: Leaf) -> Motion:
    """From leaf mm to mm on the leaf once it is known that its photographs show the other sides."""
    if not _photographed(leaf):
        return flip(leaf.face.image)
    return flip(leaf.back.image) @ _tie(leaf.back)


def turned_over(
    leaf: Leaf, register: Motion = IDENTITY, picture: Picture = pictured
) -> Leaf:
    """The leaf whose photograph shows its back, and that of its back, if there is one, its face.

    Photographs are flipped left-right, for they are kept as seen from the face, and areas with
    them. Where there is no other, the photograph stands for both sides. `register`: of the leaf as
    it then is, since what was found on the wrong side means nothing.
    """
    onto = over(leaf)
    behind = picture(leaf.face.image, mirrored)
    if _photographed(leaf):
        image = picture(leaf.back.image, mirrored)
        tie = flip(leaf.face.image) @ _tie(leaf.face) @ onto.inverse()
    else:
        image, tie = behind, IDENTITY
    face = Side(image, register, register)
    back = Side(behind, register, tie @ register)
    return replace(_moved(leaf, onto), face=face, back=back)


def _photographed(leaf: Leaf) -> bool:
    return leaf.back is not None and leaf.back.source == "photo"


def _tie(side: Side) -> Motion:
    """From leaf mm to mm on the side's photo."""
    return IDENTITY if side.view == side.register else side.view @ side.register.inverse()


def _moved(leaf: Leaf, motion: Motion) -> Leaf:
    faults = tuple(replace(f, outline=motion.apply_to(f.outline)) for f in leaf.faults)
    moved: Any = replace(leaf, usable=motion.apply_to(leaf.usable), faults=faults)
    return moved
