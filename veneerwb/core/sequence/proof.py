# SPDX-License-Identifier: LGPL-2.1-or-later
"""The proof of a bundle's order from its photographs, and what speaks against it.

All leaves are compared with each other, wherever and however they were photographed; numbers and
registers that the bundle has play no part but one: where the photographs do not clearly say
otherwise, the order given stands, and nothing is accused.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from hashlib import sha256
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.leaf import Bundle, Leaf, ranges
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.exact import exact
from veneerwb.core.sequence.grid import LEAST_CONTRAST, check_scale, no_figure
from veneerwb.core.sequence.likeness import Album
from veneerwb.core.sequence.orientation import Lying, lying
from veneerwb.core.sequence.picture import FLIPS, Picture, picture
from veneerwb.core.sequence.suspects import Suspect
from veneerwb.core.sequence.verdict import Verdict, verdict
from veneerwb.words import marked, word

FEWEST = 4
"""Fewer leaves prove no order."""
PLAIN = 0.68
"""Figure that, slid along the grain, stays so like itself (as a share of the likeness of
neighbours) is too plain to tell."""
ACROSS = 1.25
"""A photograph so many times as wide as long, among others that are as much longer than wide, lies
across."""
_LOOKED_AT = 3
"""Leaves that are slid along themselves."""
_READING = 0.3
"""Share of the time that the photographs take to be read, about."""


@dataclass(frozen=True)
class SequenceProof:
    """`order`: the numbers of the leaves that belong to the bundle, in the order that the
    photographs show (of the two directions that nearest to the numbers). `suspects`: what speaks
    against the bundle as numbered; empty when clean. `rough`: bundle mm to mm on each leaf's
    photograph, to some millimetres, the first that lies right the identity; that of a leaf
    photographed turned over is mirrored. `sure`: whether the photographs prove it; if not, `text`
    says what cannot be told. `likeness`: n x n, leaves by number, as they lie. `proposal`: the new
    number of each leaf whose number would change. `ways`: how some leaves lie, as picture.FLIPS.
    """

    order: list[int]
    suspects: list[Suspect]
    rough: dict[int, Motion]
    sure: bool
    likeness: np.ndarray = field(repr=False, compare=False)
    proposal: dict[int, int]
    template: str
    values: dict[str, Any] = field(default_factory=dict)
    ways: Mapping[int, str] = field(default_factory=dict)
    bundle: Bundle | None = field(default=None, repr=False, compare=False)

    @cached_property
    def registers(self) -> dict[int, Motion]:
        """`rough`, made exact along the order proved when it is first asked for; see `exact`."""
        return exact(self.bundle, self.order, self.rough, self.ways)

    @property
    def text(self) -> str:
        return sentence(self.template, self.values)


def prove_sequence(
    bundle: Bundle, progress: Callable[[float], None] | None = None
) -> SequenceProof:
    """The order of a bundle's leaves from the photographs of their faces.

    Photographs are read one at a time; `progress` is told the share done. Raises VeneerError for a
    photograph that shows no figure, lies across the others or has an absurd scale, naming the leaf.
    """
    for leaf in bundle.leaves:
        check_scale(leaf)
    _check_upright(bundle)
    tell = progress or (lambda share: None)
    once, copies = _once(_read(bundle.leaves, tell))
    album = Album(once)
    likeness, motions = album.all_pairs(lambda share: tell(_READING + (1 - _READING) * share))
    found = lying(album, likeness, motions)
    told = verdict([p.number for p in once], found, copies)
    template = _in_doubt(album, found, told)
    sure = template is None
    suspects = told.suspects if sure else [s for s in told.suspects if _certain(s)]
    return SequenceProof(
        order := told.order if sure else list(bundle.numbers),
        suspects,
        _registers(found, told, bundle),
        sure,
        _by_number(likeness, bundle.numbers, [p.number for p in once], copies),
        _renumbered(order, suspects) if sure else {},
        _told(template, suspects, found.same),
        {
            "leaves": len(bundle.numbers), "suspects": len(suspects), "belong": len(told.path),
            "named": ranges({s.leaf for s in suspects}),
        },
        _ways(found, told),
        bundle,
    )


def _read(leaves: Sequence[Leaf], tell: Callable[[float], None]) -> list[Picture]:
    pictures = []
    for leaf in leaves:
        pictures.append(_seen(leaf))
        tell(_READING * len(pictures) / len(leaves))
    return pictures


def _seen(leaf: Leaf) -> Picture:
    found = picture(leaf)
    if found.contrast < LEAST_CONTRAST:
        raise no_figure(leaf.number)
    return found


def _check_upright(bundle: Bundle) -> None:
    """A leaf whose photograph lies across the others: VeneerError."""
    shapes = {leaf.number: leaf.size[1] / leaf.size[0] for leaf in bundle.leaves}
    usual = float(np.median(list(shapes.values())))
    for number, shape in shapes.items():
        low, high = sorted((shape, usual))
        if len(shapes) > 2 and low * ACROSS < 1 < high / ACROSS:
            raise VeneerError(
                "photo-across",
                "The photograph of leaf {leaf} lies across those of the other leaves; turn it by "
                "90 degrees.",
                leaf=number,
            )


def _once(pictures: Sequence[Picture]) -> tuple[list[Picture], dict[int, int]]:
    """The pictures without those that equal an earlier one, and the number of that for each of
    them."""
    known: dict[bytes, int] = {}
    once, copies = [], {}
    for p in pictures:
        first = known.setdefault(sha256(p.fine.figure.tobytes()).digest(), p.number)
        if first == p.number:
            once.append(p)
        else:
            copies[p.number] = first
    return once, copies


# --- how sure ----------------------------------------------------------------------------------


def _told(doubt: str | None, suspects: Sequence[Suspect], same: Sequence[str]) -> str:
    """The sentences of a proof, `doubt` what cannot be told."""
    said = [word(_summary(suspects))] if doubt is None else [word(doubt), _stands(suspects)]
    return " ".join(one for one in (*said, _same(same)) if one)


def _in_doubt(album: Album, found: Lying, told: Verdict) -> str | None:
    """What cannot be told from the photographs; None where they prove the order."""
    if len(album.pictures) == 1:
        if told.copies:
            return marked(
                "All {leaves} photographs are one and the same, so there is no order to prove."
            )
        return marked("One leaf has no order to prove.")
    if not found.belong:
        return marked(
            "No two of these photographs show the same figure, so nothing can be proved; are they "
            "of one bundle, upright and at their true scale?"
        )
    if len(told.path) < FEWEST:
        return marked("{belong} leaves are too few to prove an order.")
    looked_at = found.belong[:: max(1, len(found.belong) // _LOOKED_AT)][:_LOOKED_AT]
    if np.median([album.slid(p) for p in looked_at]) > PLAIN * found.usual:
        return marked(
            "The figure is too plain to tell: it runs so straight that it looks the same all along "
            "the leaf, and neither the order nor a gap can be proved from these photographs."
        )
    if not told.tells:
        return marked(
            "The order cannot be told: leaves further apart look as much like each other as "
            "neighbours do."
        )
    return None


def _certain(suspect: Suspect) -> bool:
    """What holds also where no order can be proved."""
    return suspect.kind in ("turned", "end for end") or suspect.values.get("same", False)


def _stands(suspects: Sequence[Suspect]) -> str:
    """That what is certain of some leaves does not need the order, which cannot be told."""
    if not suspects:
        return ""
    if len({s.leaf for s in suspects}) == 1:
        return word("What is said of leaf {named} holds without it.")
    return word("What is said of leaves {named} holds without it.")


def _summary(suspects: Sequence[Suspect]) -> str:
    if not suspects:
        return marked(
            "The photographs prove the order of the {leaves} leaves as they are numbered."
        )
    if len(suspects) == 1:
        return marked("The photographs prove an order of the {leaves} leaves, and one suspect.")
    return marked(
        "The photographs prove an order of the {leaves} leaves, and {suspects} suspects."
    )


def _same(ways: Sequence[str]) -> str:
    if not ways:
        return ""
    if len(ways) == len(FLIPS):
        return word(
            "Whether a leaf is turned over or end for end cannot be told: it looks the same so."
        )
    if ways == ("both",):
        return word(
            "In this figure a leaf turned over looks like one that lies end for end: look at the "
            "leaf itself."
        )
    if "turned" in ways or "both" in ways:
        return word(
            "Whether a leaf is turned over cannot be told: the figure equals its mirror image."
        )
    return word("Whether a leaf lies end for end cannot be told: the figure looks the same so.")


# --- what follows from it ----------------------------------------------------------------------


def _registers(found: Lying, told: Verdict, bundle: Bundle) -> dict[int, Motion]:
    """Along the path from the first leaf that lies right, both ways; doubles from the leaf that
    they show."""
    path, number = told.path, told.numbers
    if not path:
        return {bundle.numbers[0]: IDENTITY}
    upright = [p for p in path if p not in found.ways] or path
    first = min(upright, key=lambda p: number[p])
    placed = {first: IDENTITY}
    at = path.index(first)
    for walk in (path[at:], path[at::-1]):
        for a, b in zip(walk, walk[1:]):
            placed[b] = _motion(found, a, b) @ placed[a]
    for p, of in reversed(told.doubles.items()):  # which may be a double found later
        placed[p] = _motion(found, of, p) @ placed[of]
    out = {number[p]: motion for p, motion in placed.items()}
    out |= {n: out[m] for n, m in told.copies.items() if m in out}
    return dict(sorted(out.items()))


def _ways(found: Lying, told: Verdict) -> dict[int, str]:
    """How leaves lie, copies as the photograph that they equal."""
    ways = {told.numbers[p]: way for p, way in found.ways.items()}
    return ways | {n: ways[m] for n, m in told.copies.items() if m in ways}


def _motion(found: Lying, a: int, b: int) -> Motion:
    return found.motions[a, b] if a < b else found.motions[b, a].inverse()


def _by_number(
    likeness: np.ndarray, numbers: Sequence[int], once: Sequence[int], copies: Mapping[int, int]
) -> np.ndarray:
    """The likeness with rows and columns for copies too."""
    places = [once.index(copies.get(n, n)) for n in numbers]
    return likeness[np.ix_(places, places)]


def _renumbered(order: Sequence[int], suspects: Sequence[Suspect]) -> dict[int, int]:
    out = {s.leaf for s in suspects if s.kind in ("duplicate", "foreign")}
    kept = [n for n in order if n not in out]
    return {now: new for now, new in zip(kept, sorted(kept)) if now != new}
