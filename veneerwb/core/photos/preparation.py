# SPDX-License-Identifier: LGPL-2.1-or-later
"""One photograph as people take it, made into the picture of a leaf: scaled or squared, the leaf
found on its background, cut out, turned, shrunk.

Clicks are places on the photograph held upright, (column, row) in its own pixels, row 0 at the top,
pixel centres at half-integers.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

import numpy as np
from shapely.geometry import Polygon, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.background import around, leaf_on_background
from veneerwb.core.photos.cutting_out import grown, moved, turned, valid, within
from veneerwb.core.photos.evening import BRIGHTEST, DARKEST, FEWEST, Light, measured
from veneerwb.core.photos.reading import COARSEST, shrunk, too_large
from veneerwb.core.photos.squaring import Box, Squaring, scale_between, squaring
from veneerwb.core.plane import choice, positive
from veneerwb.core.targets.scaling import (
    DOUBTFUL,
    UNEVEN,
    clicked,
    distances_of,
    scale_of,
    squared_by_distances,
    unevenness,
)
from veneerwb.words import in_unit, marked, say, word

LIGHTS = marked("as photographed"), marked("background"), marked("patch"), marked("grey patch")
TURNS = (0, 90, 180, 270)
MEGAPIXELS = 3.0
"""Of a working copy, at most."""
CLEAR = 0.02
"""Beside the leaf its shadow falls: so far from it, as a share of the picture's shorter side, the
background is not asked for the light."""
TOLERANCE = 0.5
"""mm to which a found outline is simplified; never less than a pixel of the photograph."""
LOOSE = 2.0
"""mm: where one pixel of a click moves a corner further, that is said."""
_EVERY = 8  # rows and columns apart that are looked at for a photograph without a picture

Click = tuple[float, float]


@dataclass(frozen=True)
class Preparation:
    """How a photograph becomes a leaf. Its scale is said in one of four ways:

    `mm_per_px`, of the photograph itself; or two `points` that lie `distance` mm apart; or four
    `corners`, clicked in any order, of a `rectangle` (width, length in mm), by which the photograph
    is squared up too. The corners are those of the leaf, or with `beside` of a sheet or frame that
    lies flat with it: its longer side is then either, and the photograph's own up stays up. Or two
    paper `marks` or more, clicked roughly: without `distances` by their rings, as printed; two and
    their distance; or four and the six (A to B, BC, CD, DA, AC, BD, in mm), by which the photograph
    is squared up, its own up staying up.

    `find`: the leaf lies on a plain background and its outline becomes the usable area; or
    `outline`: it was drawn by clicks (3 or more). `margin`: mm of the picture kept round the leaf
    (found, drawn, or clicked); None keeps all of the picture, so that leaves that were photographed
    in one jig keep their places. Without any of the three the picture is all leaf.

    `turn`: then the picture is turned so many degrees, counter-clockwise (0, 90, 180, 270).
    `mirrored`: then flipped left-right: the photograph of a leaf's back, as seen from its face.
    `light`: where it is measured, so that the bundle can be evened: nowhere, on the background, on
    a `patch` (clicks, 3 or more) of one and the same thing in every photograph, or on one that is
    known to be grey.
    """

    mm_per_px: float | None = None
    points: tuple[Click, ...] = ()
    distance: float | None = None
    corners: tuple[Click, ...] = ()
    rectangle: tuple[float, float] | None = None
    beside: bool = False
    marks: tuple[Click, ...] = ()
    distances: tuple[float, ...] = ()
    find: bool = False
    outline: tuple[Click, ...] = ()
    margin: float | None = 10.0
    turn: int = 0
    mirrored: bool = False
    light: str = "as photographed"
    patch: tuple[Click, ...] = ()

    def __post_init__(self) -> None:
        for name in ("points", "corners", "marks", "outline", "patch"):
            object.__setattr__(self, name, _clicks(getattr(self, name)))
        if self.rectangle is not None:
            width, length = self.rectangle
            sides = positive("width", width), positive("length", length)
            object.__setattr__(self, "rectangle", sides)
        if self.points and len(self.points) != 2:
            raise VeneerError("two-points", "Click 2 points on the picture, each once.")
        if self.marks or self.distances:
            known = distances_of(len(self.marks), self.distances)
            object.__setattr__(self, "distances", known)
        given = (self.mm_per_px, self.distance, self.rectangle, self.marks or None)
        complete = bool(self.points) == (self.distance is not None) and bool(self.corners) == (
            self.rectangle is not None
        )
        if sum(one is not None for one in given) != 1 or not complete:
            raise VeneerError(
                "scale-not-said",
                "Say the scale of the photograph in one way: mm per pixel, two points and their "
                "distance, four corners and the rectangle's width and length, or paper marks.",
            )
        if self.mm_per_px is not None:
            positive("scale of the photo in mm per pixel", self.mm_per_px, COARSEST)
        if self.margin:
            positive("margin", self.margin)
        choice("light", self.light, LIGHTS)
        if self.turn not in TURNS:
            raise VeneerError(
                "not-a-quarter-turn",
                "A photograph can be turned by 90, 180 or 270 degrees, not by {turn}.",
                turn=self.turn,
            )
        for name, clicks in ((marked("outline"), self.outline), (marked("patch"), self.patch)):
            if 0 < len(clicks) < 3:
                raise VeneerError(
                    "too-few-clicks", "The {name} has only {count} corners; click at least 3.",
                    name=word(name), count=len(clicks),
                )
        if self.find and self.outline:
            raise VeneerError(
                "found-or-drawn", "The leaf's outline is either found or drawn; choose one."
            )
        if ("patch" in self.light) != bool(self.patch):
            raise VeneerError(
                "patch-or-not",
                "Draw the patch on which the light is measured, and choose to measure it there.",
            )
        if self.light == "background" and not self._known:
            raise VeneerError(
                "no-background",
                "To measure the light on the background the tool must know where the leaf is: let "
                "it be found, draw its outline, or click its corners.",
            )

    @property
    def _known(self) -> bool:
        """Whether it is said where the leaf is."""
        return self.find or bool(self.outline) or (bool(self.corners) and not self.beside)


def _clicks(points: Iterable[Any]) -> tuple[Click, ...]:
    try:
        return tuple((float(column), float(row)) for column, row in points)
    except (TypeError, ValueError):
        raise VeneerError(
            "not-points", "Places on a photograph are pairs of numbers: column and row."
        ) from None


@dataclass(frozen=True, eq=False)
class Made:
    """What became of one photograph: the working `pixels` at `mm_per_px`, `original_mm_per_px` of
    the photograph, `usable` (shapely, leaf mm; None: all), the `light` (None: not measured),
    `trust` (mm that a click one pixel off moves a corner; None without clicks) and what is to be
    said."""

    pixels: np.ndarray
    mm_per_px: float
    original_mm_per_px: float
    usable: Any
    light: Light | None
    trust: float | None
    notes: tuple[str, ...]


def made(pixels: np.ndarray, how: Preparation, name: str = "") -> Made:
    """The leaf of a photograph, uint8 rows x columns x 3. Raises VeneerError for what cannot be
    found, squared or measured on it."""
    _refuse_empty(pixels, name)
    plane = _plane(pixels, how, name)
    leaf, notes = _leaf(pixels, how, plane)
    notes = plane.notes + notes
    light = None
    if how.light == "background":
        light = measured(pixels, _background(leaf, pixels.shape), name)
    elif how.patch:
        light = measured(pixels, Polygon(how.patch).buffer(0), name)
    outline = None if leaf is None else valid(Polygon(plane.to_mm(leaf.exterior.coords)))
    area = plane.whole
    if outline is None and isinstance(plane, _Slanted):
        _check_extent(area, name)
    else:
        check_leaf_size(area if outline is None else outline.bounds, how.turn, name)
    if outline is not None and how.margin is not None:
        area = grown(outline.bounds, how.margin, plane.whole)
    picture, scale, corner = plane.picture(pixels, area)
    if outline is not None:
        outline = moved(outline, -corner[0], -corner[1])
    if plane.trust is not None and plane.trust > LOOSE:
        notes += (say(
            "A click one pixel off moves a corner by up to {length}; zoom in, or click points "
            "further apart.", length=in_unit(plane.trust),
        ),)
    picture, outline = turned(picture, outline, scale, how.turn, how.mirrored)
    return Made(picture, scale, plane.scale, within(outline, picture, scale), light, plane.trust,
                notes)


def check_leaf_size(bounds: Box, turn: int = 0, name: str = "") -> None:
    """Raises VeneerError for a leaf within `bounds` (mm, before the picture is turned) that is
    larger than any."""
    width, length = bounds[2] - bounds[0], bounds[3] - bounds[1]
    if not too_large(width, length):
        return
    if turn % 180:
        width, length = length, width
    raise VeneerError(
        "leaf-too-large",
        "{photo} would show a leaf {width} m across and {length} m along, larger than any; check "
        "the scale.",
        photo=name or word("The photo"), width=round(width / 1e3, 1), length=round(length / 1e3, 1),
    )


def _check_extent(bounds: Box, name: str) -> None:
    """Raises VeneerError where a squared photograph, of which nobody said where the leaf is, shows
    more than a leaf: taken from the side it shows far more of the table than of the leaf."""
    width, length = bounds[2] - bounds[0], bounds[3] - bounds[1]
    if too_large(width, length):
        raise VeneerError(
            "shows-more-than-a-leaf",
            "{photo} would show {width} m by {length} m, more than a leaf; let the leaf be found, "
            "draw its outline, or check what the photograph is squared up by.",
            photo=name or word("The photo"),
            width=round(width / 1e3, 1), length=round(length / 1e3, 1),
        )



def _refuse_empty(pixels: np.ndarray, name: str) -> None:
    seen = pixels[::_EVERY, ::_EVERY]
    if np.quantile(seen, 0.99) < DARKEST or np.quantile(seen, 0.01) >= BRIGHTEST:
        told = marked("{photo} is white all over; photograph the leaf again.")
        if seen.mean() < DARKEST:
            told = marked("{photo} is black all over; photograph the leaf again.")
        raise VeneerError("nothing-on-it", told, photo=name or word("The photo"))


# --- the plane of the leaf ---------------------------------------------------------------------


@dataclass(frozen=True)
class _Straight:
    """A photograph taken square on, at `scale` mm per pixel; mm from its lower left."""

    scale: float
    shape: tuple[int, ...]
    trust: float | None = None
    notes: tuple[str, ...] = ()

    @property
    def whole(self) -> Box:
        return 0.0, 0.0, self.shape[1] * self.scale, self.shape[0] * self.scale

    def to_mm(self, points: Any) -> np.ndarray:
        p = np.asarray(points, dtype=float)
        return np.column_stack([p[:, 0], self.shape[0] - p[:, 1]]) * self.scale

    def picture(self, pixels: np.ndarray, area: Box) -> tuple[np.ndarray, float, Click]:
        """What lies within `area`, to whole pixels outwards: the working pixels, their scale, and
        where their lower left corner lies."""
        rows, columns = self.shape[:2]
        left, low = (max(0, math.floor(v / self.scale + 1e-6)) for v in area[:2])
        right = min(columns, math.ceil(area[2] / self.scale - 1e-6))
        high = min(rows, math.ceil(area[3] / self.scale - 1e-6))
        copy, factor = shrunk(pixels[rows - high : rows - low, left:right], MEGAPIXELS)
        return copy, self.scale * factor, (left * self.scale, low * self.scale)


@dataclass(frozen=True)
class _Slanted:
    """A photograph that is squared; mm from the lower left of the rectangle."""

    squaring: Squaring
    whole: Box
    trust: float | None = None
    notes: tuple[str, ...] = ()

    @property
    def scale(self) -> float:
        """mm per pixel of the photograph, on the mean over the rectangle."""
        seen = Polygon(self.squaring.corners).area
        return math.sqrt(self.squaring.width * self.squaring.length / seen)

    def to_mm(self, points: Any) -> np.ndarray:
        return self.squaring.to_mm(np.asarray(points, dtype=float))

    def picture(self, pixels: np.ndarray, area: Box) -> tuple[np.ndarray, float, Click]:
        size = (area[2] - area[0]) * (area[3] - area[1])
        # A thousandth more, so that rounding to whole pixels does not take it beyond.
        scale = max(self.scale, 1.001 * math.sqrt(size / (MEGAPIXELS * 1e6)))
        return self.squaring.picture(pixels, scale, area), scale, (area[0], area[1])


def _plane(pixels: np.ndarray, how: Preparation, name: str) -> _Straight | _Slanted:
    shape = pixels.shape
    if how.corners:
        found = squaring(how.corners, *how.rectangle, shape, turn=not how.beside)
        if how.beside:
            return _Slanted(found, found.whole(shape), found.trust(shape))
        try:
            whole = found.whole(shape)
        except VeneerError:  # a horizon: all that can be kept is near the leaf
            if how.margin is None:
                raise
            whole = found.around(max(found.width, found.length))
        return _Slanted(found, whole, found.trust())
    if how.points:
        scale = scale_between(*how.points, how.distance, shape)
        # The scale is off by the share 1 / d for a pixel, and the longer side with it.
        return _Straight(scale, shape, max(shape[:2]) * scale / math.dist(*how.points))
    if how.marks:
        return _by_marks(pixels, how, name)
    return _Straight(float(how.mm_per_px), shape)


def _by_marks(pixels: np.ndarray, how: Preparation, name: str) -> _Straight | _Slanted:
    marks = clicked(pixels, how.marks, name)
    notes: tuple[str, ...] = ()
    if len(marks) == 4 and how.distances:
        found, off = squared_by_distances(marks, how.distances, pixels.shape)
        if off > DOUBTFUL:
            notes = (say(
                "The six distances between the marks disagree by {off}, so one may be misread; "
                "measure them again.", off=in_unit(off),
            ),)
        return _Slanted(found, found.whole(pixels.shape), notes=notes)
    uneven = unevenness(marks)
    if uneven > UNEVEN:
        notes = (say(
            "The rings differ by {share} %; photograph it square on, or use four marks.",
            share=round(100 * uneven),
        ),)
    return _Straight(scale_of(marks, how.distances), pixels.shape, notes=notes)


# --- the leaf on it ----------------------------------------------------------------------------


def _leaf(
    pixels: np.ndarray, how: Preparation, plane: _Straight | _Slanted
) -> tuple[Any, tuple[str, ...]]:
    """The leaf's outline on the photograph, if anything says where it is, and what to say of it."""
    frame = box(0.0, 0.0, pixels.shape[1], pixels.shape[0])
    if how.find:
        leaf = leaf_on_background(pixels, max(1.0, TOLERANCE / plane.scale))
    elif how.outline:
        leaf = valid(Polygon(how.outline)).intersection(frame)
        leaf = max(getattr(leaf, "geoms", [leaf]), key=lambda part: part.area)
        if leaf.geom_type != "Polygon" or leaf.is_empty:
            raise VeneerError(
                "outline-off-photo",
                "The outline of the leaf encloses nothing of the photograph; draw it on the leaf.",
            )
        return leaf, ()
    elif how.corners and not how.beside:
        return Polygon(plane.squaring.corners), ()
    else:
        return None, ()
    edge = frame.exterior.buffer(1.5)
    out = leaf.exterior.intersection(edge).length
    if out < 0.01 * leaf.exterior.length:
        return leaf, ()
    share = max(1, round(100 * out / leaf.exterior.length))
    return leaf, (say(
        "The leaf runs out of the picture along {share} % of its outline; what lies beyond is not "
        "known.", share=share,
    ),)


def _background(leaf: Any, shape: tuple[int, ...]) -> Any:
    area = around(leaf, shape, CLEAR * min(shape[:2]))
    if area.area < FEWEST:
        raise VeneerError(
            "no-background-shown",
            "The leaf fills the picture, so that no background is left to measure the light on; "
            "choose a patch instead.",
        )
    return area
