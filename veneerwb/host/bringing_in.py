# SPDX-License-Identifier: LGPL-2.1-or-later
"""A batch of photographs brought into a document as a bundle, in one go or not at all."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from veneerwb.core import Leaf, Side, VeneerError
from veneerwb.core.files import scratch
from veneerwb.core.photos.preparing import Preparation, Prepared, Progress, prepared
from veneerwb.core.photos.reading import MOST_NUMBER
from veneerwb.core.plane import whole
from veneerwb.host import compat, imports
from veneerwb.host.objects.base import Refused
from veneerwb.host.photos import included
from veneerwb.host.steps import one_step
from veneerwb.words import marked, say, word

AnyPath = str | os.PathLike[str]


def bring_in(
    doc: Any,
    paths: Sequence[AnyPath],
    how: Preparation | Sequence[Preparation],
    thickness: float,
    back: str = "next",
    progress: Progress | None = None,
    *,
    numbers: Sequence[int] | None = None,
    backs: Mapping[int, AnyPath] | None = None,
    backs_how: Preparation | Mapping[int, Preparation] | None = None,
    slope: float | None = None,
) -> Any:
    """The Bundle object of leaves photographed at `paths`, made ready as `how` says (one for all,
    or one for each), numbered from 1 or by `numbers`.

    `backs`: photographs of backs by leaf number, made ready as `backs_how` says (None: as the faces
    are, if there is one way for all) and flipped, for they are kept as seen from the face. Their
    light is evened together with the faces'. `progress(done, total, text)` returns False to stop.

    The document is touched, in one undo step, when everything is ready: `Cancelled` or `Troubles`
    (see core.photos.preparing) and VeneerErrors leave it as it was. What was said of the batch is
    in the Bundle's Report, and of each photograph in its Leaf's Notes. Recomputed when it returns.
    """
    imports.check_bundle(len(paths), thickness, back)
    leaf_numbers = _numbers(numbers, len(paths))
    rear = dict(sorted((backs or {}).items()))
    lost = [number for number in rear if number not in leaf_numbers]
    if lost:
        raise VeneerError(
            "back-without-face",
            "There is a photograph of the back of leaf {leaf}, but none of its face; leave it out "
            "or add that of the face.",
            leaf=lost[0],
        )
    hows = [how] * len(paths) if isinstance(how, Preparation) else list(how)
    hows += [_of_back(number, how, backs_how) for number in rear]
    with scratch("leaves") as folder:
        batch = prepared([*paths, *rear.values()], hows, folder, progress)
        behind = dict(zip(rear, batch.photos[len(paths) :]))
        ready = [
            _ready(number, face, behind.get(number))
            for number, face in zip(leaf_numbers, batch.photos)
        ]
        with one_step(doc, word("Bring in leaves")):
            obj = imports.make_bundle(doc, ready, thickness, back, slope)
            obj.Report = batch.report.split("\n")
            compat.recompute(doc)
    return obj


def take_out(bundle_obj: Any) -> None:
    """Removes a Bundle object and its leaves from their document, in one undo step. Refused, and
    nothing is changed, while something else uses them."""
    doc, leaves = bundle_obj.Document, list(bundle_obj.Leaves)
    ours = [bundle_obj, *leaves]
    users = [
        user for one in ours for user in one.InList
        if user not in ours and not user.hasExtension("App::GroupExtension")
    ]
    if users:
        raise Refused(
            say(
                "{name} uses these leaves, so that they cannot be taken out; delete it first, or "
                "keep them.",
                name=users[0].Label,
            )
        )
    with one_step(doc, word("Take leaves out")):
        for name in [one.Name for one in ours]:
            doc.removeObject(name)


def _numbers(numbers: Sequence[int] | None, count: int) -> list[int]:
    if numbers is None:
        return list(range(1, count + 1))
    settled = [whole(marked("number of a leaf"), number, 1, MOST_NUMBER) for number in numbers]
    if len(settled) != count:
        raise VeneerError(
            "as-many-numbers",
            "There are {photos} photographs and {numbers} numbers; give each its own.",
            photos=count, numbers=len(settled),
        )
    twice = [number for number in settled if settled.count(number) > 1]
    if twice:
        raise VeneerError(
            "same-number", "Two leaves carry the number {leaf}; give each its own.", leaf=twice[0]
        )
    return settled


def _of_back(
    number: int,
    how: Preparation | Sequence[Preparation],
    backs_how: Preparation | Mapping[int, Preparation] | None,
) -> Preparation:
    found = backs_how if isinstance(backs_how, Preparation) else (backs_how or {}).get(number)
    if found is None and isinstance(how, Preparation):
        found = how
    if found is None:
        raise VeneerError(
            "back-not-said",
            "It is not said how the photograph of the back of leaf {leaf} is to be made ready.",
            leaf=number,
        )
    return replace(found, mirrored=True)


def _ready(number: int, face: Prepared, back: Prepared | None) -> imports.Ready:
    leaf = Leaf(number, _side(face), None if back is None else _side(back), face.usable)
    notes = face.notes + (
        tuple(say("Back: {note}", note=note) for note in back.notes) if back else ()
    )
    copies = imports.copy_of(face), None if back is None else imports.copy_of(back)
    return imports.Ready(leaf, *copies, notes)


def _side(one: Prepared) -> Side:
    return Side(included(str(one.file), one.mm_per_px, one.gains))
