# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether a page can be read: what its letters cover, and what of it is in each other's way."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import cache

import numpy as np
from shapely.geometry import LineString, Polygon

from veneerwb.core.plane import cosd, sind
from veneerwb.core.shop.drawing.drawn import Letters, Mark, Stroke
from veneerwb.core.shop.drawing.page import Page
from veneerwb.core.shop.drawing.paper import Box

LEAST = 2.5
"""mm: no letters are smaller."""
SLACK = 0.15
"""mm: by so much letters may touch something; their widths are reckoned generously."""


def area(letters: Letters, less: float = 0.0) -> Polygon:
    """What letters cover at most, from the foot of their line to the top of the capitals; `less` mm
    inside it all round."""
    return Polygon(_corners(letters, less))


def _corners(letters: Letters, less: float = 0.0) -> list[tuple[float, float]]:
    wide, high, (x, y) = letters.wide, letters.height, letters.at
    left = -{"start": 0.0, "middle": 0.5, "end": 1.0}[letters.anchor] * wide
    less = min(less, 0.49 * wide, 0.49 * high)
    x0, y0, x1, y1 = left + less, less, left + wide - less, high - less
    c, s = cosd(letters.turn), sind(letters.turn)
    return [
        (x + c * dx - s * dy, y + s * dx + c * dy)
        for dx, dy in ((x1, y0), (x1, y1), (x0, y1), (x0, y0))
    ]


def line(stroke: Stroke) -> LineString:
    """What a stroke runs along."""
    return LineString(_points(stroke))


def _points(stroke: Stroke) -> list[tuple[float, float]]:
    return [*(p for segment in stroke.edge for p in segment.points()), stroke.edge[-1].end]


def troubles(page: Page, field: Box | None = None) -> list[str]:
    """What is in the way of reading a page, a sentence each: letters that leave the frame or are
    too small, that lie on each other, or through which a line runs. `field`: the frame, if not that
    of the paper."""
    return troubles_of(page.drawing.marks, field or page.paper.frame)


def troubles_of(marks: Iterable[Mark], field: Box) -> list[str]:
    """The same of marks that belong within a field."""
    marks = list(marks)
    texts = [(k, m) for k, m in enumerate(marks) if isinstance(m, Letters) and m.text.strip()]
    strokes = [(k, m, _points(m)) for k, m in enumerate(marks) if isinstance(m, Stroke)]
    corners = [_corners(text, SLACK) for _, text in texts]
    boxes, lines = _boxes(corners), _boxes([points for _, _, points in strokes])
    within = (field.x - 0.01, field.y - 0.01, field.right + 0.01, field.top + 0.01)
    found = [f"{t.text!r} is too small" for _, t in texts if t.height < LEAST]
    found += [f"{texts[k][1].text!r} leaves its field" for k in _outside(boxes, within)]
    found += [f"a line leaves the field at {lines[k]}" for k in _outside(lines, within)]
    # Shapes are made of what lies near something only: to make them takes longer than all else.
    area_of = cache(lambda k: Polygon(corners[k]))
    line_of = cache(lambda n: LineString(strokes[n][2]))
    ground_of = cache(lambda n: Polygon(strokes[n][2]))
    for k, near in enumerate(_meeting(boxes, boxes)):
        for j in np.flatnonzero(near[:k]):
            if area_of(k).intersects(area_of(j)):
                found.append(f"{texts[k][1].text!r} lies on {texts[j][1].text!r}")
    is_ground = np.array([bool(m.fill) and len(m.edge) != 3 for _, m, _ in strokes], bool)
    for k, near in enumerate(_meeting(boxes, lines)):
        at, text = texts[k]
        # What a ground under the letters covers is not seen.
        grounds = [n for n in np.flatnonzero(near & is_ground) if ground_of(n).contains(area_of(k))]
        seen = max((g for n in grounds if (g := strokes[n][0]) < at), default=-1)
        found += [
            f"a line crosses {text.text!r}" for n in np.flatnonzero(near)
            if strokes[n][0] > seen and line_of(n).intersects(area_of(k))
        ]  # fmt: skip
    return found


def _boxes(shapes: Sequence[Sequence[tuple[float, float]]]) -> np.ndarray:
    """The boxes round corners, n x 4."""
    return np.array([_box(corners) for corners in shapes]).reshape(-1, 4)


def _box(corners: Sequence[tuple[float, float]]) -> tuple[float, float, float, float]:
    xs, ys = zip(*corners)
    return min(xs), min(ys), max(xs), max(ys)


def _outside(boxes: np.ndarray, within: tuple[float, ...]) -> list[int]:
    low = (boxes[:, :2] < within[:2]).any(axis=1)
    return np.flatnonzero(low | (boxes[:, 2:] > within[2:]).any(axis=1)).tolist()


def _meeting(some: np.ndarray, others: np.ndarray) -> Iterator[np.ndarray]:
    """For each of some boxes, which of the others meet it."""
    x0, y0, x1, y1 = (np.ascontiguousarray(column) for column in others.T)
    for a, b, c, d in some:
        yield (x0 <= c) & (x1 >= a) & (y0 <= d) & (y1 >= b)


def bounds(marks: Iterable[Mark]) -> Box:
    """The box round marks, mm."""
    found = [_bounds(mark) for mark in marks]
    x0, y0 = (min(b[k] for b in found) for k in (0, 1))
    x1, y1 = (max(b[k] for b in found) for k in (2, 3))
    return Box(x0, y0, x1 - x0, y1 - y0)


def _bounds(mark: Mark) -> tuple[float, float, float, float]:
    if isinstance(mark, Letters | Stroke):
        return _box(_corners(mark) if isinstance(mark, Letters) else _points(mark))
    return mark.box.x, mark.box.y, mark.box.right, mark.box.top
