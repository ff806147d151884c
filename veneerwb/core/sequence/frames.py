# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaves' own frames: where the leaf itself lies on each photograph, whatever its figure does.

Told by marks stuck on it where a template says, so that they lie alike from each other on all
leaves; by its outline, where it was found on its background and is of one shape on all leaves (as
true as the saw or the trim that made it); or by photographed backs, which show how far the figure
goes from surface to surface, taken to be the same through the whole stack.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from shapely.geometry import box

from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import rigid
from veneerwb.core.leaf import Bundle, Leaf
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sides.outline import STEP, Edge, fits
from veneerwb.core.sides.wander import measured_wander

CLOSE = 1.5
"""mm rms that the marks or the outline of a leaf may lie off the first leaf's."""
SHARED = 0.5
"""Share of the outline that must agree: corners break off, but a leaf keeps its edges."""
SHOWN = 0.5
"""Share of its outline that a photograph must show: a torn corner alone tells nothing."""
_WHOLE = 0.5  # mm2: an outline that lacks less of its photograph is the photograph's own edge

Marks = Mapping[int, Mapping[str, Sequence[float]]]


@dataclass(frozen=True)
class Frames:
    """How each leaf lies, `by` its "marks", its "outline", or the "backs".

    By marks and outlines, `motions` lay what was looked at of the first leaf on that of each, mm on
    the first photograph to mm on its own. By backs, `step` is how far the figure goes from leaf to
    leaf (mm across and along).
    """

    by: str
    motions: Mapping[int, Motion] | None = None
    step: tuple[float, float] | None = None

    def on(self, views: Mapping[int, Motion]) -> dict[int, Motion]:
        """For each leaf the motion from one frame of all leaves to mm on its photograph, where the
        figure lies as `views` say (bundle mm to mm on the photograph)."""
        if self.step is None:
            return dict(self.motions or {})
        x, y = self.step
        first = min(views)
        return {n: view @ Motion(dx=-x * (n - first), dy=-y * (n - first))
                for n, view in views.items()}  # fmt: skip


def leaf_frames(bundle: Bundle, marks: Marks | None = None) -> Frames | None:
    """The frames by the marks (by leaf number and name, mm on the photograph), else by the
    outlines, else by the backs; None where none of them is known well enough."""
    if len(bundle.leaves) < 2:
        return None
    return _by_marks(bundle, marks or {}) or _by_outline(bundle) or _by_backs(bundle)


def _by_marks(bundle: Bundle, marks: Marks) -> Frames | None:
    first, *others = bundle.numbers
    found = {first: IDENTITY}
    for number in others:
        here, there = marks.get(first, {}), marks.get(number, {})
        shared = sorted(set(here) & set(there))
        if len(shared) < 2:
            return None
        points = [np.array([one[name] for name in shared], float) for one in (here, there)]
        try:
            found[number], off = rigid(*points)
        except VeneerError:  # on one spot
            return None
        if off > CLOSE:
            return None
    return Frames("marks", found)


def _by_outline(bundle: Bundle) -> Frames | None:
    if not all(map(_outlined, bundle.leaves)):
        return None
    first, *others = bundle.leaves
    edge, found = _edge(first), {first.number: IDENTITY}
    for leaf in others:
        here = _edge(leaf)
        if edge is None or here is None:
            return None
        fit = min(fits(edge, here), key=lambda fit: abs(fit.motion.angle))
        if fit.rms > CLOSE or fit.share < SHARED:
            return None
        found[leaf.number] = fit.motion
    return Frames("outline", found)


def _by_backs(bundle: Bundle) -> Frames | None:
    """The next leaf shows on its face what this one shows on its back, or the other way about."""
    way = {"next": 1.0, "previous": -1.0}.get(bundle.back)
    tied = tuple(leaf if _tied(leaf) else replace(leaf, back=None) for leaf in bundle.leaves)
    if way is None or not any(leaf.back.source == "photo" for leaf in bundle.leaves):
        return None
    try:
        found = measured_wander(replace(bundle, leaves=tied))
    except VeneerError:
        return None
    if not found.agree or sum(passage.sure for passage in found.passages) < 2:
        return None
    return Frames("backs", step=(way * found.across, way * found.along))


def _tied(leaf: Leaf) -> bool:
    """Whether its back was laid on it: as photographed it lies anywhere, and where it happened to
    lie would pass for wander."""
    return leaf.back.source == "photo" and leaf.back.view != leaf.back.register


def _outlined(leaf: Leaf) -> bool:
    whole = box(0.0, 0.0, *leaf.size)
    return leaf.usable.geom_type == "Polygon" and whole.area - leaf.usable.area > _WHOLE


def _edge(leaf: Leaf) -> Edge | None:
    """None where the photograph cuts most of it off."""
    edge = Edge.of(leaf.usable, leaf.size)
    return edge if len(edge.points) * STEP >= SHOWN * leaf.usable.exterior.length else None
