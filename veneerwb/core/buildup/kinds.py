# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a panel is built of: its plies, strips and inlays, each with its size and its material.

Thicknesses and widths in mm; grain in degrees, counter-clockwise from x on the top. Strips and
inlays of the show face are as thick as the show veneer.
"""

from __future__ import annotations

from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge
from veneerwb.core.plane import LONGEST, SHORTEST, choice, cosd, finite, polar, whole
from veneerwb.core.wood import SAWN, Coefficients
from veneerwb.words import marked, say, word

CORES = marked("sheet goods"), marked("solid wood")
SOURCES = ("stock", "bundle")
LIPPED = ("before veneering", "after veneering")
BORDERS = ("mitred", "straight", "following")
GRAINS = ("along", "across")
MOST_PARTS = 200
MOST_POINTS = 64


def _size(part: object, name: str, what: str, out: str = "") -> None:
    """Settles a length of a part; VeneerError says what would do, and which part may be left
    `out`."""
    value = finite(what, getattr(part, name))
    if not SHORTEST <= value <= LONGEST:
        told = marked("The {what} cannot be {value} mm; give from {least} to {most} mm.")
        if out:
            told = marked(
                "The {what} cannot be {value} mm; give from {least} to {most} mm, or leave the "
                "{out} out."
            )
        raise VeneerError(
            "out-of-range", told,
            what=word(what), value=value, least=SHORTEST, most=LONGEST, out=word(out),
        )  # fmt: skip
    object.__setattr__(part, name, value)


def _direction(part: object, name: str, what: str) -> None:
    """Settles a direction in degrees."""
    object.__setattr__(part, name, finite(what, getattr(part, name)))


def _words(material: object) -> str:
    return "" if material is None else str(material).strip()


def _material(part: object) -> None:
    object.__setattr__(part, "material", _words(part.material))


def _moves(part: object) -> None:
    if part.moves is not None and not isinstance(part.moves, Coefficients):
        raise VeneerError(
            "no-coefficients",
            "How the {what} moves cannot be {value!r:.40}; give Coefficients, or nothing.",
            what=word(part.what), value=part.moves,
        )  # fmt: skip


@dataclass(frozen=True)
class Ply:
    """A flat layer with its grain."""

    thickness: float
    material: str = ""
    grain: float = 0.0

    def __post_init__(self) -> None:
        _size(self, "thickness", say("thickness of the {what}", what=word(self.what)))
        _direction(self, "grain", marked("direction of the grain"))
        _material(self)

    @property
    def what(self) -> str:
        return marked("layer")


@dataclass(frozen=True)
class Show(Ply):
    """The show veneer, as thick as the bundle's leaves; the grain of the field is its match's."""

    @property
    def what(self) -> str:
        return marked("show veneer")


@dataclass(frozen=True)
class Crossband(Ply):
    """A layer between core and veneer, its grain across that of the core."""

    grain: float = 90.0

    @property
    def what(self) -> str:
        return marked("crossband")


@dataclass(frozen=True)
class Core(Ply):
    """The ground. Solid wood moves across its `grain`, by the coefficients of its material or by
    `moves`, as it was `sawn`."""

    kind: str = "sheet goods"
    sawn: str = "plain"
    moves: Coefficients | None = None

    def __post_init__(self) -> None:
        super().__post_init__()
        choice("kind of core", self.kind, CORES)
        choice("sawing", self.sawn, SAWN)
        _moves(self)

    @property
    def what(self) -> str:
        return marked("core")

    @property
    def solid(self) -> bool:
        return self.kind == "solid wood"


@dataclass(frozen=True)
class Backer(Ply):
    """The veneer of the under side, from a stock or from a bundle of its own (`bundle` names
    it)."""

    source: str = "stock"
    bundle: str = ""

    def __post_init__(self) -> None:
        super().__post_init__()
        choice("source of the backer", self.source, SOURCES)

    @property
    def what(self) -> str:
        return marked("backer")


@dataclass(frozen=True)
class Strip:
    """A strip round the top. `segments`: into how many parts each run of it between two corners is
    parted; of an edge without corners 1 is a strip bent round in one."""

    width: float
    material: str = ""
    segments: int = 1

    def __post_init__(self) -> None:
        what = word(self.what)
        _size(self, "width", say("width of the {what}", what=what), self.what)
        named = say("number of segments of the {what}", what=what)
        count = whole(named, self.segments, 1, MOST_PARTS)
        object.__setattr__(self, "segments", count)
        _material(self)

    @property
    def what(self) -> str:
        return marked("strip")


@dataclass(frozen=True)
class Lipping(Strip):
    """A strip of solid wood round the core: glued on before veneering it lies under the veneer,
    after it is as high as the panel and shows. It may be of one's own coefficients (`moves`)."""

    when: str = "before veneering"
    sawn: str = "plain"
    moves: Coefficients | None = None

    def __post_init__(self) -> None:
        super().__post_init__()
        choice("time of the lipping", self.when, LIPPED)
        choice("sawing", self.sawn, SAWN)
        _moves(self)

    @property
    def what(self) -> str:
        return marked("lipping")

    @property
    def shows(self) -> bool:
        return self.when == "after veneering"


@dataclass(frozen=True)
class Border(Strip):
    """The band of veneer round the field.

    kind:  "mitred" (one strip between two corners), "straight" (the strips of straight sides,
           butted: every second one runs through) or "following" (an edge of any shape, each run
           between corners in so many `segments`).
    grain: "along" the edge or "across" it.
    """

    kind: str = "mitred"
    grain: str = "along"

    def __post_init__(self) -> None:
        super().__post_init__()
        choice("kind of border", self.kind, BORDERS)
        choice("grain of the border", self.grain, GRAINS)

    @property
    def what(self) -> str:
        return marked("border")


@dataclass(frozen=True)
class Stringing(Strip):
    """The line between border and field, mitred at corners."""

    @property
    def what(self) -> str:
        return marked("stringing line")


@dataclass(frozen=True)
class Disc:
    """A round inlay about the match's centre, where it hides the tips."""

    diameter: float
    material: str = ""
    grain: float = 0.0

    def __post_init__(self) -> None:
        _size(self, "diameter", marked("diameter of the inlay"), marked("inlay"))
        _direction(self, "grain", marked("direction of the grain"))
        _material(self)

    @property
    def outline(self) -> Edge:
        return (Arc((0.0, 0.0), self.diameter / 2.0, -90.0, 360.0),)

    @property
    def reach(self) -> float:
        return self.diameter / 2.0

    def would_do(self, room: float) -> tuple[str, float]:
        """What to say of making it smaller, and how large it may be, where it has `room` mm about
        its centre."""
        return marked(
            "The inlay reaches {reach} mm from the centre and the field only {room} mm; give it a "
            "diameter less than {most} mm."
        ), 2.0 * room


@dataclass(frozen=True)
class Star:
    """A star inlay about the match's centre: `points` tips at `outer` mm, the corners between them
    at `inner` mm, the first tip in direction `turn` (degrees)."""

    points: int
    outer: float
    inner: float
    material: str = ""
    turn: float = 90.0
    grain: float = 0.0

    def __post_init__(self) -> None:
        count = whole("number of points of the star", self.points, 3, MOST_POINTS)
        object.__setattr__(self, "points", count)
        _size(self, "outer", marked("outer radius of the star"), marked("inlay"))
        _size(self, "inner", marked("inner radius of the star"))
        _direction(self, "turn", marked("turn of the star"))
        _direction(self, "grain", marked("direction of the grain"))
        _material(self)
        most = self.outer * cosd(180.0 / count)
        if self.inner >= most:
            raise VeneerError(
                "no-star",
                "A star of {points} points with an outer radius of {outer} mm has no hollows with "
                "an inner radius of {inner} mm; give less than {most} mm.",
                points=count, outer=self.outer, inner=self.inner, most=most,
            )  # fmt: skip

    @property
    def outline(self) -> Edge:
        half = 180.0 / self.points
        tips = range(2 * self.points)
        radii = (self.outer, self.inner)
        return edges.straights([polar(radii[k % 2], self.turn + k * half) for k in tips])

    @property
    def reach(self) -> float:
        return self.outer

    def would_do(self, room: float) -> tuple[str, float]:
        return marked(
            "The inlay reaches {reach} mm from the centre and the field only {room} mm; give it an "
            "outer radius less than {most} mm."
        ), room


Inlay = Disc | Star
