# SPDX-License-Identifier: LGPL-2.1-or-later
"""The photograph of a leaf's back tied to that of its face: by the leaf's outline, or by marks."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from shapely.geometry import box

from veneerwb.core.errors import VeneerError, sentence
from veneerwb.core.faults import leaf_outline
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion, finite
from veneerwb.core.sequence import aligned, grids
from veneerwb.core.sequence.grid import LEAST_CONTRAST
from veneerwb.core.sides.lying import laid
from veneerwb.core.sides.outline import Edge, Fit, fits
from veneerwb.core.targets.measuring import frame
from veneerwb.words import marked, word

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
    told which end is which: "outline", "figure", "marks", "said" (by the maker) or "unsure".
    `likeness` is how alike face and back are under it (-1 to 1; 0 where not looked at). `sure`:
    nothing speaks against it.
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


def tied(
    leaf: Leaf,
    by: Any = "outline",
    outlines: tuple[Any, Any] | None = None,
    turn: float | None = None,
) -> Tie:
    """The tie of a leaf's photographed back.

    `by`: "outline", or a pair of lists of the same marks in the same order, N x 2 each, in mm on
    the face's photo and on the back's. `outlines`: the leaf as drawn by hand on face and back
    (shapely polygons, mm on each photo), where there is no plain background to find it on. Photos
    of backs are mirrored on reading, so that outline and marks have the same sense on both.
    `turn`: about how many degrees the back's picture is turned, where somebody says so.

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
    if isinstance(by, str) and by == "outline":
        return _by_outline(leaf, outlines, turn)
    if isinstance(by, Sequence | np.ndarray) and not isinstance(by, str) and len(by) == 2:
        return _by_marks(leaf, by)
    raise VeneerError(
        "unknown-tie",
        "A back cannot be tied by {by}; choose the outline, or give the marks on the face and "
        "those on the back.",
        by=f"{by!r:.40}",
    )


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
    found = frame(*marks)
    # Each mark is off by s in x and y; 2 N - 3 numbers are left to tell it. A mean of N is off by
    # s / root N.
    count = len(found.off)
    error = found.rms / math.sqrt(2 * count - 3)
    sure = found.worst <= MOST_RMS
    values = {
        "leaf": leaf.number, "rms": round(found.rms, 2), "marks": count,
        "worst": round(found.worst, 1),
    }
    said = [
        word("The back of leaf {leaf} is tied by {marks} marks, which lie {rms} mm apart (rms).")
    ]
    if count == 2:
        said.append(word("Two marks check nothing but their distance."))
    if not sure:
        over = frame(*marks, mirrored=True)
        said.append(
            word("They fit turned over: see whether the photograph was mirrored already.")
            if over.worst <= MOST_RMS else
            word("One misses by {worst} mm, too much for one leaf: see whether the marks are "
                 "paired rightly, and both scales.")
        )
    return Tie(
        leaf.number, found.motion, found.rms, error, "marks", "marks", 0.0, sure, " ".join(said),
        values,
    )


# --- outline -----------------------------------------------------------------------------------


def _by_outline(leaf: Leaf, outlines: tuple[Any, Any] | None, turn: float | None) -> Tie:
    number = leaf.number
    if turn is not None:
        turn = finite("turn of the back", turn)
    if outlines is None:
        back = _found(leaf.back.image, number, "back")
        face = _outline_of(leaf)
    else:
        face, back = _drawn(outlines, number)
    ways = fits(
        _edge(face, leaf.face.image, number, "face"), _edge(back, leaf.back.image, number, "back")
    )
    if turn is not None:
        said = min(ways, key=lambda fit: abs(math.remainder(fit.motion.angle - turn, 360.0)))
        return _told(number, said, "said", _likenesses(leaf, face, [said])[0])
    likely = [f for f in ways if f.misfit <= CLEARLY * ways[0].misfit + 0.3]
    likenesses = _likenesses(leaf, face, ways[: max(2, len(likely))])
    best, ends = _chosen(ways, likely, likenesses)
    return _told(number, best, ends, likenesses[ways.index(best)])


def _outline_of(leaf: Leaf) -> Any:
    """The outline on the face's photo: found there, or the usable area that is known."""
    try:
        return _found(leaf.face.image, leaf.number, "face")
    except VeneerError:
        if leaf.usable.equals(box(0.0, 0.0, *leaf.size)):
            raise
        return max(getattr(leaf.usable, "geoms", [leaf.usable]), key=lambda part: part.area)


def _found(photo: Photo, number: int, side: str) -> Any:
    try:
        return leaf_outline(photo)
    except VeneerError as error:
        raise VeneerError(
            "no-outline-to-tie",
            "The photograph of the {side} of leaf {leaf} does not show the leaf on a plain "
            "background, so that its outline cannot tie the two sides; draw the outline, or mark "
            "the same points on both sides.",
            leaf=number, side=word(side),
        ) from error


def _drawn(outlines: Any, number: int) -> list[Any]:
    """The outlines of face and back as they were drawn, the largest part of each."""
    pair = tuple(outlines) if isinstance(outlines, Sequence) else ()
    found = []
    for side, outline in zip(("face", "back"), (*pair, None, None)):
        parts = [
            part for part in getattr(outline, "geoms", [outline])
            if getattr(part, "geom_type", "") == "Polygon" and part.area > 0.0
        ]
        if not parts:
            raise VeneerError(
                "outline-encloses-nothing",
                "The outline drawn on the {side} of leaf {leaf} encloses nothing; draw it round "
                "the leaf.",
                leaf=number, side=word(side),
            )
        found.append(max(parts, key=lambda part: part.area))
    return found


def _edge(outline: Any, photo: Photo, number: int, side: str) -> Edge:
    left, low, right, high = outline.bounds
    if min(right, high) <= 0.0 or left >= photo.size[0] or low >= photo.size[1]:
        raise VeneerError(
            "outline-off-photo-of-side",
            "The outline drawn on the {side} of leaf {leaf} lies beside its photograph; draw it "
            "round the leaf.",
            leaf=number, side=word(side),
        )
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
        shown = min(face[0].contrast, back[0].contrast) >= LEAST_CONTRAST
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
        return ways[0], "contradicted" if told and first != 0 else "outline"
    if told and ways[first] in likely:
        return ways[first], "figure"
    return min(likely, key=lambda fit: abs(fit.motion.angle)), "unsure"


ENDS = {
    "outline": marked("This way round the outline fits more than twice as well as end for end."),
    "figure": marked(
        "Its ends are as the figure has them, which is more alike so than end for end."
    ),
    "said": marked("It lies the way round that was said."),
}
DOUBTED = {
    "unsure": marked(
        "Neither outline nor figure shows which end is which: say so, or mark points on both sides."
    ),
    "contradicted": marked(
        "The figure is more alike end for end than the way the outline fits: see whether both "
        "photographs are of this leaf."
    ),
}


def _told(number: int, fit: Fit, ends: str, likeness: float) -> Tie:
    doubts = []
    if fit.rms > MOST_RMS:
        doubts.append(word("They lie far apart for one leaf: see whether both scales are right."))
    if fit.error_mm > WORST_ERROR:
        doubts.append(
            word("The middle may be off by {error} mm; mark points on both sides instead.")
        )
    if ends in DOUBTED:
        doubts.append(word(DOUBTED[ends]))
    values = {
        "leaf": number, "rms": round(fit.rms, 2), "error": round(fit.error_mm, 2),
        "share": round(100 * fit.share), "turn": round(fit.motion.angle, 1), "ends": ends,
    }
    said = [
        word("The back of leaf {leaf} is tied by its outline, turned by {turn} deg; the two "
             "outlines agree on {share} % of their length, where they lie {rms} mm apart (rms)."),
        *([word(ENDS[ends])] if ends in ENDS else []), *doubts,
    ]
    if fit.share < LEAST_SHARE:
        said = doubts = [word(
            "The back of leaf {leaf} does not fit its face: the outlines agree on only {share} % "
            "of their length. See whether both photographs are of this leaf and whole, and whether "
            "the back's was mirrored already."
        )]
    return Tie(
        number, fit.motion, fit.rms, fit.error_mm, "outline",
        "unsure" if ends in DOUBTED else ends, likeness, not doubts, " ".join(said), values,
    )
