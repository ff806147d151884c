# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where truing shows least: how much each seam is broken already.

Truing takes figure from both sides of a joint, and a last joint is never laid as surely as one
between two pieces. Where two leaves mirror each other or the figure runs through, the eye sees a
hair of that; where leaves that lay far apart in the log meet (leaf n and leaf 1) nothing runs
through that could be missed. So the joint that is made last goes where most surfaces lie between
those that meet; of joints with as many, where the colours differ most (CIEDE2000 in the
photographs, as from the viewing distance of `core.appeal`). That keeps mirrored mates together in
their pairs as well. Reasoned, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.appeal.maps import Maps, cell_for, maps_of
from veneerwb.core.appeal.measures import across_seams
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Bundle
from veneerwb.core.progress import Progress, unheard

COLOURS, SURFACES, ALIKE = "colours", "surfaces", "alike"
DIGITS = 4
"""Decimals, so that last bits choose nothing."""


@dataclass(frozen=True)
class Seen:
    """How much each seam of a layout is broken, in the order of its seams: the `steps` between the
    surfaces that meet, and by how much their `colours` differ (CIEDE2000; empty: not known)."""

    steps: tuple[float, ...]
    colours: tuple[float, ...] = ()

    def joint(self, layout: Layout, seams: Sequence[int]) -> tuple[float, ...]:
        """The means along a joint of several seams, the longer weighing more: of the steps, and of
        the colours where they are known."""
        longs = [layout.seams[k].line.length for k in seams]
        total = sum(longs) or 1.0
        kinds = (self.steps, self.colours) if self.colours else (self.steps,)
        return tuple(
            round(sum(values[k] * long for k, long in zip(seams, longs)) / total, DIGITS)
            for values in kinds
        )


def by_surfaces(layout: Layout) -> Seen:
    """From the steps between the surfaces that meet."""
    return Seen(tuple(float(seam.step) for seam in layout.seams))


def by_colours(
    layout: Layout, maps: Maps | None = None, progress: Progress = unheard
) -> Seen:
    """From the photographs of the layout's bundle too, or from `maps` of it that are there already.
    VeneerError for a stock of plain sizes."""
    if not isinstance(layout.bundle, Bundle):
        raise VeneerError(
            "no-pictures", "A stock of plain sizes has no photographs; lay the top from a bundle."
        )
    maps = maps or maps_of(
        layout.bundle, cell_for(layout.top.reach), lambda done, of, _: progress(done / of)
    )
    return replace(by_surfaces(layout), colours=tuple(across_seams(layout, maps)))


def seen_of(layout: Layout, maps: Maps | None = None, progress: Progress = unheard) -> Seen:
    """From the photographs where there are any, else from the surfaces alone."""
    pictured = isinstance(layout.bundle, Bundle)
    return by_colours(layout, maps, progress) if pictured else by_surfaces(layout)
