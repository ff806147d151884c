# SPDX-License-Identifier: LGPL-2.1-or-later
"""All matches in one table, each with a sample of it for any top: what the gallery draws and the
tests go through.

Keys, titles and lines are those of the families' own tables; names differ by region, so a name is
always shown with a drawing.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from shapely.geometry import Point

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.end import END_KINDS, end
from veneerwb.core.matches.quarters import QUARTER_KINDS, quarters
from veneerwb.core.matches.radial import Radial, radial
from veneerwb.core.matches.rings import RING_KINDS, rings
from veneerwb.core.matches.rows import Kind
from veneerwb.core.matches.side import FACE_KINDS, TURN_KINDS, side
from veneerwb.core.outlines import edge as edges
from veneerwb.core.top import Top
from veneerwb.words import marked, word

MIRROR, SHIFT, HALF_TURN, TURN = "mirror", "shift", "half turn", "turn"
SHIFTED_MIRROR = "shifted mirror"
"""How a piece lies to the one across its seam: their motions differ by the mirror in the seam, by a
translation, by a half turn, by a turn about the centre, or by a mirror and a translation."""

Sample = Callable[[Leaves, Top], Layout]


class Match(NamedTuple):
    """A match: its `kind`, the `family` (the function that lays it), which `joints` are in it, and
    a `sample`: what lays it on a top from 24 leaves or fewer, sized to the top."""

    kind: Kind
    family: str
    joints: tuple[str, ...]
    sample: Sample

    @property
    def key(self) -> str:
        return self.kind.key

    @property
    def title(self) -> str:
        """In the language spoken, as `line`."""
        return word(self.kind.title)

    @property
    def line(self) -> str:
        return word(self.kind.line)


def _span(top: Top, degrees: float) -> float:
    low, high = edges.extent(top.edge, degrees)
    return high - low


def _round_centre(top: Top) -> float:
    """The diameter of the largest circle about the middle that leaves edge and openings alone."""
    return 2.0 * top.polygon_mm.boundary.distance(Point(0.0, 0.0))


def _side(turn: str, face: str, count: int) -> Sample:
    return lambda bundle, top: side(bundle, top, turn, face, count)


def _running(bundle: Leaves, top: Top) -> Layout:
    return side(bundle, top, face="running", width=0.3 * _span(top, 0.0))


def _end(kind: str) -> Sample:
    return lambda bundle, top: end(bundle, top, kind, 8)


def _quarters(kind: str) -> Sample:
    return lambda bundle, top: quarters(bundle, top, kind)


def _herringbone(bundle: Leaves, top: Top) -> Layout:
    strip = 0.12 * (_span(top, 0.0) / 2.0 + _span(top, 90.0))
    return quarters(bundle, top, "herringbone", strip=strip)


def _two_rings(bundle: Leaves, top: Top) -> Layout:
    return rings(bundle, top, Radial(8), Radial(16, first=9), 0.55 * _round_centre(top))


def _round_a_disc(bundle: Leaves, top: Top) -> Layout:
    return radial(bundle, top, 12, disc=0.3 * _round_centre(top))


def _off_the_middle(bundle: Leaves, top: Top) -> Layout:
    centre = (0.12 * _span(top, 0.0), 0.1 * _span(top, 90.0))
    return radial(bundle, top, 12, centre=centre)


def _of(kinds: Sequence[Kind], key: str) -> Kind:
    return next(kind for kind in kinds if kind.key == key)


_RADIAL = _of(RING_KINDS, "radial")

_BOX = (MIRROR, SHIFTED_MIRROR, HALF_TURN)
"""On a top as wide as it is long all are mirrors."""

MATCHES = (
    Match(_of(TURN_KINDS, "random"), "side", (SHIFT,), _side("random", "balance", 5)),
    Match(_of(TURN_KINDS, "slip"), "side", (SHIFT,), _side("slip", "balance", 4)),
    Match(_of(TURN_KINDS, "book"), "side", (MIRROR,), _side("book", "balance", 4)),
    Match(_of(TURN_KINDS, "reverse slip"), "side", (HALF_TURN,),
          _side("reverse slip", "balance", 4)),
    Match(_of(FACE_KINDS, "running"), "side", (MIRROR,), _running),
    Match(_of(FACE_KINDS, "balance"), "side", (MIRROR,), _side("book", "balance", 5)),
    Match(_of(FACE_KINDS, "centre balance"), "side", (MIRROR,),
          _side("book", "centre balance", 6)),
    Match(_of(FACE_KINDS, "slip-centre-book"), "side", (SHIFT, MIRROR),
          _side("slip", "slip-centre-book", 6)),
    Match(_of(END_KINDS, "architectural"), "end", (MIRROR,), _end("architectural")),
    Match(_of(END_KINDS, "panel"), "end", (MIRROR,), _end("panel")),
    Match(_of(END_KINDS, "continuous"), "end", (MIRROR,), _end("continuous")),
    Match(_of(QUARTER_KINDS, "centre and butt"), "quarters", (MIRROR,),
          _quarters("centre and butt")),
    Match(_of(QUARTER_KINDS, "box"), "quarters", _BOX, _quarters("box")),
    Match(_of(QUARTER_KINDS, "reverse box"), "quarters", _BOX, _quarters("reverse box")),
    Match(_of(QUARTER_KINDS, "diamond"), "quarters", (MIRROR,), _quarters("diamond")),
    Match(_of(QUARTER_KINDS, "reverse diamond"), "quarters", (MIRROR,),
          _quarters("reverse diamond")),
    Match(_of(QUARTER_KINDS, "herringbone"), "quarters", (MIRROR, SHIFT), _herringbone),
    Match(_RADIAL._replace(key="radial book", title=marked("Radial book match"), parity="even",
                           least=4,
                           line=marked("Wedges meet at a point, every second one turned over.")),
          "radial", (MIRROR,), lambda bundle, top: radial(bundle, top, 12)),
    Match(_RADIAL._replace(key="radial slip", title=marked("Radial slip match"),
                           line=marked("Wedges meet at a point, all with the same side up.")),
          "radial", (TURN,), lambda bundle, top: radial(bundle, top, 12, "slip")),
    Match(_of(RING_KINDS, "radial in strips"), "radial", (MIRROR, SHIFT),
          lambda bundle, top: radial(bundle, top, 8, strips=3)),
    Match(_of(RING_KINDS, "rings"), "rings", (MIRROR,), _two_rings),
    Match(_RADIAL._replace(key="radial round a disc", title=marked("Radial match round a disc"),
                           parity="even", least=4,
                           line=marked("An inlaid disc takes the place of the tips.")),
          "radial", (MIRROR,), _round_a_disc),
    Match(_RADIAL._replace(key="radial off the middle",
                           title=marked("Radial match off the middle"), parity="even", least=4,
                           line=marked("The wedges meet at a point that is not the middle of the "
                                       "top.")),
          "radial", (MIRROR,), _off_the_middle),
)  # fmt: skip
"""In the order of the trade's lists: leaf to leaf, across a face, end to end, about a centre,
radial."""
