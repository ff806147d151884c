# SPDX-License-Identifier: LGPL-2.1-or-later
"""The templates of a layout.

For a stack there is one for each cut (`Layout.cuts`), and where the pieces of a cut differ one for
each differing piece besides, to mark it on its own leaf; all are seen from the faces of the leaves.
For cutting single leaves there is one for each differing piece with the show face up: of a turned
piece it is the mirror image, since there the back of the leaf is up. Templates that are laid on
whole leaves have the pins' holes, mirrored with the rest: by them the leaf and the tool agree.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from veneerwb.core.layout import Layout, Piece, Recipe
from veneerwb.core.matches.asked import between
from veneerwb.core.matches.quarters import Quarters
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line, Point
from veneerwb.core.outlines.region import joined
from veneerwb.core.plane import IDENTITY, LONGEST, Motion
from veneerwb.core.shop.drawing.lettering import runs
from veneerwb.core.shop.templates.alike import (
    NEAR,
    Look,
    both,
    different,
    kinds_of,
    same,
    serves_too,
)
from veneerwb.core.shop.templates.over import EXACT, Over, cut_over, overs_for, seams_of, tip_of
from veneerwb.core.shop.templates.template import (
    BACK,
    FACE,
    PIECE,
    SINGLE,
    STACK,
    Pin,
    Template,
    axis_of,
)
from veneerwb.core.shop.templates.union import unions
from veneerwb.words import filled, marked, word

if TYPE_CHECKING:
    from veneerwb.core.shop.cutting.piles import Pile

MOST_TOOL = 50.0
"""mm: no kerf and no cutter is wider."""
_MIRROR = Motion(mirrored=True)


@dataclass(frozen=True)
class StackCut:
    """The positions that are cut at once, the letter of the stack that lies there, its pins
    (bundle mm), and the positions in `again` whose own outline is marked on their leaf first, since
    a seam of theirs lies within that of the cut."""

    positions: tuple[int, ...]
    stack: str = ""
    pins: tuple[Pin, ...] = ()
    again: tuple[int, ...] = ()


def stack_cuts(
    stacks: Sequence[Pile], pins: Mapping[str, Sequence[Pin]] | None = None, top: int = 1
) -> list[StackCut]:
    """The cuts of a cutting plan for its `top`-th top, with each stack's pins by its letter."""
    return [
        StackCut(cut.positions, pile.name if len(stacks) > 1 else "",
                 tuple((pins or {}).get(pile.name, ())), cut.again)
        for pile in stacks for cut in pile.cuts if cut.top == top
    ]  # fmt: skip


def templates(
    layout: Layout,
    overs: Over | Sequence[Over] = EXACT,
    tool: float = 0.0,
    singly: bool = False,
    name: str = "",
    cuts: Sequence[StackCut] = (),
    rests: str = "",
    base: float = 0.0,
) -> list[Template]:
    """The templates of a layout.

    overs:  how much over seams are cut: one for all, or one for each seam edge of each outline,
            counter-clockwise. The rim is cut with the layout's oversize.
    tool:   width in mm of the kerf or the cutter, for the line that its middle runs on.
    singly: for cutting single leaves, the show face up, in place of the stack.
    name:   the layout's name on the templates; the top's if empty.
    cuts:   what is cut at once, where that is not as `Layout.cuts` has it; see `stack_cuts`.
    rests:  the sentence on what the registers rest.
    base:   length in mm over which angles are set out; 0 to have it chosen.

    VeneerError for overs that cannot be cut.
    """
    wide = between(marked("width of the tool"), tool, 0.0, MOST_TOOL)
    long = between(marked("base of the set-out"), base, 0.0, LONGEST)
    maker = _Maker(layout, overs, wide, singly, name or layout.top.name, rests, long)
    at_once = cuts or [StackCut(cut.pieces) for cut in layout.cuts]
    return maker.single(at_once) if singly else maker.stack(at_once)


def outlines_over(
    layout: Layout, pieces: Sequence[Piece], over: Over
) -> list[tuple[Edge, Edge, list[Piece]]]:
    """What one cut through these pieces runs along: round each group of them that hangs together,
    exactly and as its template has it, with seams over (bundle mm). VeneerError as for
    `templates`."""
    maker = _Maker(layout, over, 0.0, False, "", "", 0.0)
    found = []
    for outline, served in _groups(pieces):
        frame, tip = maker._frame(outline, served)
        cut = maker._over(edges.moved(outline, frame), tip and frame.point(tip), word("The cut"))
        found.append((outline, edges.moved(cut, frame.inverse()), served))
    return found


_Title = tuple[str, str]


def _both_titles(template: str, values: Mapping[str, object]) -> _Title:
    return filled(template, values), filled(word(template), values)


def _title_of(stacks: Sequence[str], k: int = 1, count: int = 1) -> _Title:
    """What the template of a cut is called, in files and on paper: the `k`-th of `count`, of stacks
    with these letters."""
    letters = sorted(set(filter(None, stacks)), key=lambda name: (len(name), name))
    many = "many" if len(letters) > 1 else "one" if letters else "none"
    values = {"number": k, "count": count, "stack": ", ".join(letters)}
    return _both_titles(TITLES[count > 1, many], values)


TITLES = {
    (False, "none"): marked("Template of the cut"),
    (False, "one"): marked("Template of the cut, stack {stack}"),
    (False, "many"): marked("Template of the cut, stacks {stack}"),
    (True, "none"): marked("Template of the cut {number} of {count}"),
    (True, "one"): marked("Template of the cut {number} of {count}, stack {stack}"),
    (True, "many"): marked("Template of the cut {number} of {count}, stacks {stack}"),
}


@dataclass(frozen=True)
class _Maker:
    layout: Layout
    overs: Over | Sequence[Over]
    tool: float
    singly: bool
    name: str
    rests: str
    base: float

    def stack(self, at_once: Sequence[StackCut]) -> list[Template]:
        pieces = {piece.position: piece for piece in self.layout.pieces}
        cuts = [(cut, [pieces[position] for position in cut.positions]) for cut in at_once]
        groups = [(cut, *group) for cut, served in cuts for group in _groups(served)]
        kinds: list[tuple[Template, list[str]]] = []
        for cut, outline, served in groups:
            made = self._made(STACK, 0, _title_of([cut.stack]), outline, served, served, cut.pins)
            known = next((k for k, (one, _) in enumerate(kinds) if serves_too(one, made)), None)
            if known is None:
                kinds.append((made, [cut.stack]))
            else:
                one, letters = kinds[known]
                kinds[known] = both(one, made), [*letters, cut.stack]
        found = []
        for k, (one, letters) in enumerate(kinds, start=1):
            title = _title_of(letters, k, len(kinds))
            found.append(replace(one, number=k, title=title[0], shown=title[1]))
        differing = [p for _, served in cuts if len(kinds_of(map(self._look, served))) > 1
                     for p in served]
        pinned = {position: cut.pins for cut, _ in cuts for position in cut.again}
        return [*found, *self._of_pieces(differing, PIECE, pinned)]

    def single(self, at_once: Sequence[StackCut]) -> list[Template]:
        pinned = {position: cut.pins for cut in at_once for position in cut.positions}
        return self._of_pieces(self.layout.pieces, SINGLE, pinned)

    def _of_pieces(
        self, pieces: Sequence[Piece], kind: str, pinned: Mapping[int, Sequence[Pin]]
    ) -> list[Template]:
        """One for all pieces that look alike, their pins with them."""
        found = []
        pins = [pinned.get(piece.position, ()) for piece in pieces]
        for members in kinds_of(map(self._look, pieces, pins)):
            alike = [pieces[k] for k in members]
            first, numbers = alike[0], runs(piece.position for piece in alike)
            title = _both_titles(
                marked("Template of pieces {numbers}") if len(alike) > 1
                else marked("Template of piece {numbers}"),
                {"numbers": numbers},
            )  # fmt: skip
            outline = _drawn(first.blank_edge, self._seen(first) @ first.onto_bundle)
            found.append(self._made(kind, first.position, title, outline, alike, alike[:1],
                                    pins[members[0]]))
        return found

    def _seen(self, piece: Piece) -> Motion:
        """Bundle mm to mm as seen from the side that is up."""
        return _MIRROR if self.singly and piece.turned else IDENTITY

    def _look(self, piece: Piece, pins: Sequence[Pin] = ()) -> Look:
        seen = self._seen(piece)
        blank = _drawn(piece.blank_edge, seen @ piece.onto_bundle)
        frame, _ = self._frame(blank, [piece])
        way = frame @ seen
        net = _drawn(piece.edge, way @ piece.onto_bundle)
        holes = tuple(pin.moved(way) for pin in pins)
        return Look(edges.moved(blank, frame), net, _grain(way), seen.mirrored, holes)

    def _frame(self, outline: Edge, served: Sequence[Piece]) -> tuple[Motion, Point | None]:
        """What takes an outline (mm as seen) to its template's frame, and its tip, if that is where
        the pieces of the top meet."""
        tip, centres = tip_of(outline), _centres(self.layout.recipe)
        ways = (self._seen(piece) @ piece.onto_bundle for piece in served)
        places = [way.point(centre) for way in ways for centre in centres]
        if tip is None or all(math.dist(tip, place) > NEAR for place in places):
            x, y = (edges.extent(outline, turn)[0] for turn in (0.0, 90.0))
            return Motion(dx=-x, dy=-y), None
        first, angle = _directions(outline, tip)[0], _angle(outline, tip)
        turn = axis_of(angle) - angle / 2.0 - first
        return Motion(turn) @ Motion(dx=-tip[0], dy=-tip[1]), tip

    def _over(self, blank: Edge, tip: Point | None, title: str) -> Edge:
        """An outline in its frame with its seams over."""
        return cut_over(blank, overs_for(blank, self.overs, title), tip, title)

    def _made(
        self, kind: str, number: int, title: _Title, outline: Edge, served: Sequence[Piece],
        shown: Sequence[Piece], pins: Sequence[Pin] = (),
    ) -> Template:  # fmt: skip
        """A template of an outline (mm as seen from the side up) that shows these pieces."""
        seen = self._seen(served[0])
        frame, tip = self._frame(outline, served)
        blank, way = edges.moved(outline, frame), frame @ seen
        tip = frame.point(tip) if tip else None
        nets = [_drawn(p.edge, way @ p.onto_bundle) for p in shown]
        holes = [edges.moved(h, way @ p.onto_bundle) for p in shown for h in p.holes]
        return Template(
            kind=kind,
            number=number,
            title=title[0],
            shown=title[1],
            cut=self._over(blank, tip, title[1]),
            nets=tuple(nets[k] for k in different(nets)),
            holes=tuple(holes[k] for k in different(holes)),
            overs=tuple(overs_for(blank, self.overs, title[1])),
            oversize=_oversize(self.layout.recipe),
            tip=tip,
            angle=_angle(blank, tip),
            grain=_grain(way),
            up=BACK if seen.mirrored else FACE,
            positions=tuple(p.position for p in served),
            leaves=tuple(p.leaf for p in served),
            turned=tuple(p.position for p in served if p.turned),
            tool=self.tool,
            pins=tuple(pin.moved(way) for pin in pins),
            name=self.name,
            revision=self.layout.revision,
            rests=self.rests,
            base=self.base,
        )


def _groups(pieces: Sequence[Piece]) -> list[tuple[Edge, list[Piece]]]:
    """The outlines round the blanks of one cut (bundle mm), each with the pieces in it."""
    blanks = [_drawn(p.blank_edge, p.onto_bundle) for p in pieces]
    unlike = different(blanks)
    found = []
    for outline, members in unions([blanks[k] for k in unlike]):
        within = [blanks[unlike[m]] for m in members]
        served = [p for p, b in zip(pieces, blanks) if any(same(b, one) for one in within)]
        found.append((outline, served))
    return found


def _drawn(edge: Edge, way: Motion) -> Edge:
    """An edge of a piece moved, and whole where it is parted for its neighbours' sake."""
    return joined(edges.moved(edge, way))


# --- frames ---------------------------------------------------------------------------------------


def _centres(recipe: Recipe | None) -> list[Point]:
    """Where on the top the pieces of a match meet at their tips (top mm)."""
    if isinstance(recipe, Radial):
        return [recipe.centre]
    if isinstance(recipe, Rings):
        return [recipe.inner.centre, recipe.outer.centre]
    quarters = isinstance(recipe, Quarters) and recipe.kind != "herringbone"
    return [(0.0, 0.0)] if quarters else []


def _oversize(recipe: Recipe | None) -> float | None:
    """The oversize of the rim, where the recipe tells."""
    return getattr(recipe.outer if isinstance(recipe, Rings) else recipe, "oversize", None)


def _angle(outline: Edge, tip: Point | None) -> float | None:
    if tip is None:
        return None
    first, last = _directions(outline, tip)
    return (last - first) % 360.0


def _directions(outline: Edge, tip: Point) -> tuple[float, float]:
    """The directions from the tip along the seam that leaves it and along the one that comes to
    it."""
    ways = {}
    for seam in (outline[k] for k in seams_of(outline)):
        if isinstance(seam, Line):
            leaves = math.dist(seam.end, tip) > math.dist(seam.start, tip)
            x, y = seam.slope(0.0)
            ways[leaves] = math.degrees(math.atan2(y, x)) + (0.0 if leaves else 180.0)
    return ways[True], ways[False]


def _grain(way: Motion) -> float:
    """The direction in degrees of the leaf's upper end, after a way from the bundle."""
    (x0, y0), (x1, y1) = way.point((0.0, 0.0)), way.point((0.0, 1.0))
    return math.degrees(math.atan2(y1 - y0, x1 - x0))
