# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sides show, what meets at the seams, and what is not known about backs."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from contextlib import suppress
from dataclasses import replace

from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece, Seam
from veneerwb.core.leaf import ASSUMED_SLOPE, Bundle
from veneerwb.core.matches.radial import Radial
from veneerwb.core.plane import IDENTITY
from veneerwb.words import filled, marked, word


def face_findings(layout: Layout) -> list[Finding]:
    return [*_assumed_backs(layout), *_as_taken(layout), *_sides(layout), *_steps(layout)]


def _steps(layout: Layout) -> Iterator[Finding]:
    seams = _meeting(layout)
    if not seams:
        return
    steps = [seam.step for seam in seams]
    largest = max(seams, key=lambda seam: seam.step)
    values = {
        "steps": " ".join(map(str, steps)),
        "largest": largest.step,
        "a": largest.a,
        "b": largest.b,
    }
    text = marked(
        "The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, "
        "{largest}, is between positions {a} and {b}."
    )
    last = layout.seams[-1]
    if isinstance(layout.recipe, Radial) and last.a > last.b:  # a ring that closes
        values["closing"] = last.step
        text = marked(
            "The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, "
            "{largest}, is between positions {a} and {b}; the closing seam has {closing}."
        )
    values["spread"] = _spread_step(layout)
    better = values["spread"] < largest.step
    remedy = marked('In the order "spread" the largest step is {spread}.') if better else ""
    yield Finding("steps", "note", text, remedy, values, (largest.a, largest.b))


def _meeting(layout: Layout) -> list[Seam]:
    """The seams at which figure is to meet: not those along the line between two rings."""
    meets = getattr(layout.recipe, "meets", lambda a, b: True)
    by_position = {piece.position: piece for piece in layout.pieces}
    return [s for s in layout.seams if meets(by_position[s.a], by_position[s.b])]


def _spread_step(layout: Layout) -> int:
    """The largest step that the order "spread" has, or this one's where it is not to be had: only a
    single ring has that order."""
    spread = layout
    if isinstance(layout.recipe, Radial):
        with suppress(VeneerError):  # a list may use leaves before the first
            spread = replace(layout.recipe, order="spread").lay(layout.bundle, layout.top)
    return max(seam.step for seam in _meeting(spread))


def _sides(layout: Layout) -> Iterator[Finding]:
    turned = tuple(piece.position for piece in layout.pieces if piece.turned)
    values = {"pieces": turned, "count": len(turned)}
    if len(turned) == len(layout.pieces):
        yield Finding(
            "backs-show", "note", "All pieces show the backs of their leaves.", "", values
        )
    elif turned:
        reads = marked(
            "Positions {pieces} show the other side of their leaves, so light and stain read "
            "otherwise on them: natural where leaves are turned over, not a defect."
        )
        if _alternate(layout):
            reads = marked(
                "Positions {pieces} show the other side of their leaves, so tight and loose sides "
                "alternate and light and stain read in bars: natural to a book match, not a defect."
            )
        yield Finding(
            "loose-faces",
            "note",
            reads,
            "Try the finish on two leaves, one turned, before cutting.",
            values,
            turned,
        )


def _alternate(layout: Layout) -> bool:
    turned = {piece.position: piece.turned for piece in layout.pieces}
    return all(turned[seam.a] != turned[seam.b] for seam in layout.seams)


def _assumed_backs(layout: Layout) -> Iterator[Finding]:
    bundle = layout.bundle
    if not isinstance(bundle, Bundle):
        return
    assumed = [
        p for p in layout.pieces if p.turned and bundle.leaf(p.leaf).side(True).source != "photo"
    ]
    if not assumed:
        return
    miss = max(may_miss(bundle, piece) for piece in assumed)
    known = bundle.slope is not None
    values = {
        "pieces": tuple(p.position for p in assumed),
        "may_miss": miss,
        "thickness": bundle.thickness,
        "slope": ASSUMED_SLOPE if bundle.slope is None else abs(bundle.slope),
    }
    measured = getattr(bundle, "basis", "")
    if measured:
        basis = word(measured)
    elif known:
        basis = word("with the slope of {slope} deg given")
    else:
        basis = word("if the figure slopes {slope} deg to the leaf, which nobody measured")
    remedy = marked("Photograph the backs of those leaves, or give the bundle's slope.")
    if measured:
        remedy = marked("Photograph the backs of those leaves.")
    yield Finding(
        "backs-assumed",
        "warn",
        "The backs at positions {pieces} were not photographed: their pictures are taken from the "
        "neighbouring leaf or the face, and the seams may miss by {may_miss} mm {basis}.",
        remedy,
        {**values, "basis": filled(basis, values)},
        values["pieces"],
    )


def _as_taken(layout: Layout) -> Iterator[Finding]:
    """A bundle that was never registered: leaves laid by the frames of their photographs."""
    bundle = layout.bundle
    if isinstance(bundle, Bundle):
        found = unregistered(bundle, {piece.leaf for piece in layout.pieces})
        yield from [found] if found else []


def unregistered(bundle: Bundle, used: Collection[int] | None = None) -> Finding | None:
    """What is to be said if leaves (`used`: some, by number) are simply laid over each other."""
    used = bundle.numbers if used is None else used
    if len(used) < 2 or any(bundle.register(number, False) != IDENTITY for number in used):
        return None
    return Finding(
        "not-registered",
        "note",
        "The {count} leaves are laid as they were photographed: nothing says that the figure, or a "
        "knot, lies at the same place on all of them, and a photograph that is shifted against the "
        "others shifts its piece.",
        "Let the stack follow the figure, the log or marks, unless all were photographed in one "
        "jig.",
        {"count": len(used)},
    )


def may_miss(bundle: Bundle, piece: Piece) -> float:
    """mm by which a turned piece's picture may miss what its leaf really shows there; 0 with a
    photo.

    Without a photo the back is pinned by the face's register, and the figure wanders
    t / tan(slope) to its surface. The picture, whether the neighbour's or the face's, lies by its
    own register, so that how that photograph was shifted against the others is no miss.
    """
    side = bundle.leaf(piece.leaf).side(piece.turned)
    return 0.0 if side.source == "photo" else bundle.wander()
