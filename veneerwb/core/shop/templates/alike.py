# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which pieces, outlines and templates are alike, so that one template serves them."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from veneerwb.core.outlines.edge import Edge
from veneerwb.core.plane import TOUCH
from veneerwb.core.shop.templates.template import Pin, Template

_ALIKE = 10.0 * TOUCH
NEAR = 1000.0 * TOUCH
"""mm: where seams meet is less sure than where they run."""


@dataclass(frozen=True)
class Look:
    """A piece as its template shows it."""

    blank: Edge
    net: Edge
    grain: float
    mirrored: bool
    pins: tuple[Pin, ...]

    def like(self, other: Look) -> bool:
        return (
            self.mirrored == other.mirrored
            and abs(math.remainder(self.grain - other.grain, 360.0)) < 1e-6
            and same(self.blank, other.blank)
            and same(self.net, other.net)
            and _at_one(self.pins, other.pins)
        )


def _at_one(a: Sequence[Pin], b: Sequence[Pin]) -> bool:
    return len(a) == len(b) and all(math.dist(p.at, q.at) <= NEAR for p, q in zip(a, b))


def serves_too(a: Template, b: Template) -> bool:
    """Whether the template of one stack serves another."""
    return (
        same(a.cut, b.cut)
        and len(a.nets) == len(b.nets)
        and all(any(same(net, one) for one in b.nets) for net in a.nets)
        and len(a.holes) == len(b.holes)
        and all(any(same(hole, one) for one in b.holes) for hole in a.holes)
        and abs(math.remainder(a.grain - b.grain, 360.0)) < 1e-6
        and _at_one(a.pins, b.pins)
    )


def both(a: Template, b: Template) -> Template:
    """A template that serves what two like ones do, by position."""
    pairs = sorted(zip((*a.positions, *b.positions), (*a.leaves, *b.leaves)))
    return replace(
        a, positions=tuple(p for p, _ in pairs), leaves=tuple(leaf for _, leaf in pairs),
        turned=tuple(sorted((*a.turned, *b.turned))),
    )


def kinds_of(looks: Iterable[Look]) -> list[list[int]]:
    """The numbers of the looks that one template serves, together."""
    kinds: list[tuple[Look, list[int]]] = []
    for k, look in enumerate(looks):
        members = next((members for known, members in kinds if known.like(look)), None)
        if members is None:
            kinds.append((look, [k]))
        else:
            members.append(k)
    return [members for _, members in kinds]


def different(outlines: Sequence[Edge]) -> list[int]:
    """The numbers of the outlines that no earlier one is like."""
    found: list[int] = []
    for k, outline in enumerate(outlines):
        if not any(same(outline, outlines[j]) for j in found):
            found.append(k)
    return found


def same(a: Edge, b: Edge) -> bool:
    return len(a) == len(b) and bool(np.abs(_marks(a) - _marks(b)).max() <= _ALIKE)


def _marks(edge: Edge) -> np.ndarray:
    """Start and middle of each segment, from the lowest (of several the leftmost) corner on."""
    corners = [(round(y, 4), round(x, 4)) for x, y in (segment.start for segment in edge)]
    first = corners.index(min(corners))
    run = [*edge[first:], *edge[:first]]
    return np.array([p for segment in run for p in (segment.start, segment.at(0.5))])
