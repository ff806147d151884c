# SPDX-License-Identifier: LGPL-2.1-or-later
"""The photograph of a leaf's back tied to that of its face: by the leaf's outline, or by marks."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.faults import leaf_outline
from veneerwb.core.fitting import rigid
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos import Photo
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence import aligned, grids
from veneerwb.core.sequence.chain import LEAST_FIGURE
from veneerwb.core.sides.lying import laid
from veneerwb.core.sides.outline import Edge, Fit, fits

MOST_RMS = 1.0
"""mm: outlines, or marks, that lie further apart (rms) are not known to be of one leaf."""
LEAST_SHARE = 0.6
"""The share of the face's outline on which the back's must lie."""
WORST_ERROR = 0.7
"""mm: a tie that may be further off (standard error) is in doubt."""
CLEARLY = 2.0
"""How many times worse the outline must fit the other way round to tell the leaf's ends."""
LIKER = 0.15
"""Correlation by which the figure must fit better one way round to tell the leaf's ends."""
LEAST_LIKE = 0.2
"""Correlation below which face and back are not known to show one leaf's figure."""
_RIM = 6.0  # mm
LONELY = 50.0
"""mm of outline that a photo must show at least."""


@dataclass(frozen=True)
class Tie:
    """How a back's photograph lies on its leaf: `motion` takes mm on the face's photo to mm on the
    back's.

    `rms` is how far outlines or marks lie apart under it, `error_mm` how far the middle may be off
    (a standard error, from those residuals), in mm. `by` is "outline" or "marks"; `ends` says what
    told which end is which: "outline", "figure", "marks" or "unsure". `likeness` is how alike face
    and back are under it (-1 to 1; 0 where not looked at). `sure`: nothing speaks against it.
    `text` says all of it in a sentence or two, from `template` and `values`.
    """

    leaf: int
    motion: Motion
    rms: float
    error_mm: float
    by: str
    ends: str
    likeness: float
    sure: bool
    template: str = field(repr=False)
    values: Mapping[str, Any] = field(repr=False)

    @property
    def text(self) -> str:
        return sentence(self.template, dict(self.values))


def tied(leaf: Leaf, by: Any = "outline", outlines: tuple[Any, Any] | None = None) -> Tie:
    """The tie of a leaf's photographed back.

    `by`: "outline", or a pair of lists of the same marks in the same order, N x 2 each, in mm on
    the face's photo and on the back's. `outlines`: the leaf as drawn by hand on face and back
    (shapely polygons, mm on each photo), where there is no plain background to find it on. Photos
    of backs are mirrored on reading, so that outline and marks have the same sense on both.

    A leaf's outline is nearly the same end for end: where it does not tell the ends the figure
    does, and where that does not either the tie is unsure and says so. Raises VeneerError for a
    leaf without a photographed back, for an outline that is not to be found and for marks that do
    not pair.
    """
    if leaf.back is None or leaf.back.source != "photo":
        raise VeneerError(
            "no-back",
            "The back of leaf {leaf} was not photographed; add its photograph first.",
            leaf=leaf.number,
        )
    if isinstance(by, str):
        if by != "outline":
            raise VeneerError(
                "unknown-tie",
                "A back cannot be tied by {by!r:.40}; choose the outline or give marks.", by=by,
            )
        return _by_outline(leaf, outlines)
    return _by_marks(leaf, by)


def with_tie(leaf: Leaf, tie: Tie) -> Leaf:
    """The leaf whose back lies as the tie says: pinned by the face's register, for it is the same
    leaf, and seen through the tie."""
    register = leaf.face.register
    return replace(leaf, back=Side(leaf.back.image, register, tie.motion @ register, "photo"))


def tie_backs(
    bundle: Bundle, outlines: Mapping[int, tuple[Any, Any]] | None = None
) -> tuple[Bundle, dict[int, Tie]]:
    """The bundle with every photographed back tied by its outline, and the ties by leaf number.

    `outlines`: those drawn by hand. Raises VeneerError as `tied` does.
    """
    given = outlines or {}
    ties = {
        leaf.number: tied(leaf, outlines=given.get(leaf.number))
        for leaf in bundle.leaves if leaf.back.source == "photo"
    }
    leaves = tuple(
        with_tie(leaf, ties[leaf.number]) if leaf.number in ties else leaf
        for leaf in bundle.leaves
    )
    return replace(bundle, leaves=leaves), ties


# --- marks -------------------------------------------------------------------------------------


def _by_marks(leaf: Leaf, marks: Sequence[Any]) -> Tie:
    face, back = marks
    motion, rms = rigid(face, back)
    points = np.asarray(face, float).reshape(-1, 2)
    # Each mark is off by s in x and y; 2 N - 3 numbers are left to tell it. A mean of N is off by
    # s / root N.
    free = 2 * len(points) - 3
    error = rms * np.sqrt(1.0 / free)
    sure = rms <= MOST_RMS
    values = {"leaf": leaf.number, "rms": round(rms, 2), "marks": len(points)}
    template = "The back of leaf {leaf} is tied by {marks} marks, which lie {rms} mm apart (rms)."
    if not sure:
        template += " That is too much for one leaf: look whether the marks are paired rightly."
    return Tie(
        leaf.number, motion, rms, float(error), "marks", "marks", 0.0, sure, template, values
    )


# --- outline -----------------------------------------------------------------------------------


def _by_outline(leaf: Leaf, outlines: tuple[Any, Any] | None) -> Tie:
    face, back = outlines or (
        _found(leaf.face.image, leaf.number, "face"), _found(leaf.back.image, leaf.number, "back")
    )
    ways = fits(
        _edge(face, leaf.face.image, leaf.number), _edge(back, leaf.back.image, leaf.number)
    )
    likely = [f for f in ways if f.misfit <= CLEARLY * ways[0].misfit + 0.3]
    likenesses = _likenesses(leaf, face, ways[: max(2, len(likely))])
    best, ends = _chosen(ways, likely, likenesses)
    return _told(leaf.number, best, ends, likenesses[ways.index(best)])


def _found(photo: Photo, number: int, side: str) -> Any:
    try:
        return leaf_outline(photo)
    except VeneerError as error:
        raise VeneerError(
            "no-outline-to-tie",
            "The photograph of the {side} of leaf {leaf} does not show the leaf on a plain "
            "background, so that its outline cannot tie the two sides; draw the outline, or mark "
            "the same points on both sides.",
            leaf=number, side=side,
        ) from error


def _edge(outline: Any, photo: Photo, number: int) -> Edge:
    edge = Edge.of(outline, photo.size)
    if len(edge.points) < LONELY:
        raise VeneerError(
            "no-outline-to-tie",
            "The photographs of leaf {leaf} are cut off at the leaf's edge, so that its outline "
            "cannot tie the two sides; mark the same points on both sides.",
            leaf=number,
        )
    return edge


def _likenesses(leaf: Leaf, outline: Any, ways: Sequence[Fit]) -> list[float]:
    """How alike face and back are, each way round; 0 where they show no figure."""
    area = outline.buffer(-_RIM)  # the edge itself fits either way
    face = grids(laid(leaf.face.image, IDENTITY, leaf, area))[:2]
    found = []
    for fit in ways:
        back = grids(laid(leaf.back.image, fit.motion, leaf, area))[:2]
        shown = min(face[0].contrast, back[0].contrast) >= LEAST_FIGURE
        found.append(aligned(face, back).likeness if shown else 0.0)
    return found


def _chosen(
    ways: Sequence[Fit], likely: Sequence[Fit], likenesses: Sequence[float]
) -> tuple[Fit, str]:
    """The way round, and what told it. The figure decides where it can; the outline alone is not
    believed where the figure contradicts it."""
    order = sorted(range(len(likenesses)), key=lambda k: (-round(likenesses[k], 3), k))
    first, second = order[0], order[1]
    told = likenesses[first] - likenesses[second] >= LIKER and likenesses[first] >= LEAST_LIKE
    if len(likely) == 1:
        return ways[0], "unsure" if told and first != 0 else "outline"
    if told and ways[first] in likely:
        return ways[first], "figure"
    return min(likely, key=lambda fit: abs(fit.motion.angle)), "unsure"


def _told(number: int, fit: Fit, ends: str, likeness: float) -> Tie:
    doubts = []
    if fit.rms > MOST_RMS or fit.share < LEAST_SHARE:
        doubts.append(
            "The outlines agree on only {share} of their length: look whether both photographs are "
            "of this leaf and whole, and whether the back's was mirrored already."
        )
    if fit.error_mm > WORST_ERROR:
        doubts.append("The middle may be off by {error} mm; mark points on both sides instead.")
    if ends == "unsure":
        doubts.append(
            "Neither outline nor figure tells which end is which; say so, or mark two points."
        )
    values = {
        "leaf": number, "rms": round(fit.rms, 2), "error": round(fit.error_mm, 2),
        "share": f"{fit.share:.0%}", "turn": round(fit.motion.angle, 1), "ends": ends,
    }
    told = {
        "outline": " The outline tells its ends.", "figure": " The figure tells its ends.",
    }.get(ends, "")
    base = (
        "The back of leaf {leaf} is tied by its outline, turned by {turn} deg; the two outlines "
        "lie {rms} mm apart (rms)."
    )
    return Tie(
        number, fit.motion, fit.rms, fit.error_mm, "outline", ends, likeness, not doubts,
        " ".join([base + told, *doubts]), values,
    )
