# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan: in which steps the cut pieces become one face.

Pairs, then quarters, then halves, each half trued along a straightedge, then the last joint; gum
tape on the show face, drawn tight: common practice, no source. Steps are made from the tree of
`tree`, so that they hold for any number of ways and any match: a step tapes all that can be
taped at once.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.listing import all_of
from veneerwb.core.matches.end import End
from veneerwb.core.matches.quarters import Quarters
from veneerwb.core.matches.rings import Rings
from veneerwb.core.shop.taping.seen import ALIKE, COLOURS, SURFACES, Seen, by_surfaces
from veneerwb.core.shop.taping.tree import Assembly, Candidate, Tree, units_of
from veneerwb.words import marked, say, word

LAY, TAPE, TRUE, CLOSE = "lay", "tape", "true", "close"
"""Kinds of steps: laid out dry, taped, edges trued, the last joint closed."""
FACES = ("face", "back")
ASKED, ONLY = "asked", "only"


@dataclass(frozen=True)
class TapedPiece:
    """A piece as it comes to hand: `side_up` is the side of its leaf that one sees while taping,
    "face" or "back"."""

    position: int
    leaf: int
    side_up: str


@dataclass(frozen=True)
class Closing:
    """A joint that is made last: its `seams` (places in the layout's list), the `pairs` of
    positions that meet there, `broken`, how much it is broken (`taping.seen`: surfaces, colours
    where they are known), and `others`, least and most of that of the joints that it was chosen
    from. `why`: what sets it apart from the least, "surfaces" or "colours"; "alike" where nothing
    did; "asked", or "only" where there was no choice."""

    seams: tuple[int, ...]
    pairs: tuple[tuple[int, int], ...]
    broken: tuple[float, ...]
    others: tuple[tuple[float, float], ...]
    count: int
    why: str


@dataclass(frozen=True)
class Step:
    """One step. `made` is what is put together in it, `groups` what lies apart once it is done
    (positions), `closes` the seams that it closes and `closed` those that were closed before, in
    what is shown. Of a step that trues edges, `closes` are the seams that they will make."""

    number: int
    kind: str
    title: str
    made: tuple[Assembly, ...]
    groups: tuple[tuple[int, ...], ...]
    closes: tuple[int, ...]
    closed: tuple[int, ...]

    @property
    def joins(self) -> tuple[str, ...]:
        """What is put to what, in words: "1 + 2", "1-3 + 4-6"; nothing where a run closes upon
        itself."""
        return tuple(
            " + ".join(named(part.positions) for part in one.parts)
            for one in self.made if len(one.parts) > 1
        )  # fmt: skip

    @property
    def trues(self) -> bool:
        """Whether edges over several pieces meet in it, which are trued before they are taped."""
        return self.kind == TAPE and any(one.trued for one in self.made)


@dataclass(frozen=True)
class TapingPlan:
    """The plan of a layout: its pieces in the order in which they lie, the steps, and the last
    joints. `face_down`: pieces lie with their show face down, so that all is seen mirrored."""

    layout: Layout
    pieces: tuple[TapedPiece, ...]
    steps: tuple[Step, ...]
    closings: tuple[Closing, ...]
    roots: tuple[Assembly, ...]
    face_down: bool

    @property
    def tape(self) -> float:
        """mm of tape that runs once along every seam."""
        return sum(seam.line.length for seam in self.layout.seams)


def taping(
    layout: Layout,
    seen: Seen | None = None,
    close: tuple[int, int] | int | None = None,
    face_down: bool = False,
    quarters: bool = False,
) -> TapingPlan:
    """The taping plan of a layout.

    seen:      how much each seam is broken (`taping.seen`); by the surfaces' steps if not given.
    close:     two positions whose seam is to be in the last joint, as the measured closure wants
               it (of a ring of even ways it is then the diameter through that seam); of a plain
               ring the position after that seam will do (`closing.Places.first`).
    face_down: the pieces are taped with their show face down.
    quarters:  where a ring has quarters these are trued, instead of its halves.

    Raises VeneerError where no last joint can have that seam.
    """
    seen = seen or by_surfaces(layout)
    close = _pair_of(layout, close)
    tree = Tree(layout, lambda seams: seen.joint(layout, seams), close)
    roots = tree.roots()
    closings = tuple(_closing(layout, seen, close, choice) for choice in tree.choices)
    if close and not any(set(close) == set(pair) for c in closings for pair in c.pairs):
        raise _no_such_joint(layout, close, tree.choices)
    order = [p for root in roots for p in root.positions]
    known = {piece.position: piece for piece in layout.pieces}
    pieces = tuple(
        TapedPiece(p, known[p].leaf, FACES[known[p].turned != face_down]) for p in order
    )
    steps = tuple(_steps(layout, roots, quarters))
    return TapingPlan(layout, pieces, steps, closings, roots, face_down)


def _pair_of(layout: Layout, close: tuple[int, int] | int | None) -> tuple[int, int] | None:
    if close is None or not isinstance(close, int):
        return None if close is None else (int(close[0]), int(close[1]))
    return (close - 2) % len(layout.pieces) + 1, close


def _closing(
    layout: Layout, seen: Seen, close: tuple[int, int] | None, choice: Sequence[Candidate]
) -> Closing:
    broken = [seen.joint(layout, candidate.seams) for candidate in choice]
    pairs = _pairs(layout, choice[0].seams)
    asked = close and any(set(close) == set(pair) for pair in pairs)
    why = ASKED if asked else ONLY if len(choice) == 1 else _apart_by(broken[0], broken[-1])
    others = tuple((min(some), max(some)) for some in zip(*(broken[1:] or broken)))
    return Closing(choice[0].seams, pairs, broken[0], others, len(choice), why)


def _apart_by(one: tuple[float, ...], other: tuple[float, ...]) -> str:
    """What sets the chosen joint apart from the least of all."""
    kinds = (SURFACES, COLOURS)
    return next((kind for kind, a, b in zip(kinds, one, other) if a != b), ALIKE)


def _pairs(layout: Layout, seams: Iterable[int]) -> tuple[tuple[int, int], ...]:
    pairs = [(layout.seams[k].a, layout.seams[k].b) for k in seams]
    return tuple(dict.fromkeys(pairs))


def _no_such_joint(
    layout: Layout, close: tuple[int, int], choices: Sequence[Sequence[Candidate]]
) -> VeneerError:
    could = [pair for some in choices for c in some for pair in _pairs(layout, c.seams)]
    return VeneerError(
        "no-such-joint",
        "The last joint cannot have the seam of positions {a} and {b}; it can have that of "
        "{could}." if could else "The pieces of this top leave no choice of the last joint.",
        a=close[0],
        b=close[1],
        could=", ".join(all_of([str(a), str(b)]) for a, b in sorted(set(could))),
    )


# --- steps --------------------------------------------------------------------------------------


def _steps(layout: Layout, roots: Sequence[Assembly], quarters: bool) -> Iterator[Step]:
    flow = [
        step for root in roots for step in _flow(layout, root, _Titles(layout, root), quarters)
    ]
    everything = tuple((piece.position,) for piece in layout.pieces)
    yield Step(1, LAY, word("Lay out"), (), everything, (), ())
    for number, (kind, title, made, groups, closed) in enumerate(flow, start=2):
        closes = tuple(k for one in made for k in one.seams)
        if kind == TRUE:
            closes = _trued(roots, made, closes)
        yield Step(number, kind, title, made, groups, closes, closed)


def _trued(
    roots: Sequence[Assembly], made: Sequence[Assembly], closes: tuple[int, ...]
) -> tuple[int, ...]:
    """Of quarters all edges are trued, those of the last joint too."""
    for root in (one for top in roots for one in top.every()):
        if len(made) > 1 and root.parts == tuple(made):
            return (*closes, *root.seams)
    return closes


_Stage = tuple[str, str, tuple[Assembly, ...], tuple[tuple[int, ...], ...], tuple[int, ...]]


def _flow(
    layout: Layout, root: Assembly, titles: _Titles, quarters: bool
) -> Iterator[_Stage]:
    """The steps of an assembly; of two rings one after the other, then both."""
    nested = isinstance(layout.recipe, Rings) and titles.rings(root) > 1
    closed: tuple[int, ...] = ()
    nodes = [one for one in root.every() if one.parts]
    if nested:
        for part in root.parts:
            yield from _flow(layout, part, titles, quarters)
        closed, nodes = tuple(k for one in nodes[:-1] for k in one.seams), [root]
    by_quarters = quarters and titles.has_quarters(root)
    for height in sorted({one.height for one in nodes}):
        made = tuple(one for one in nodes if one.height == height)
        last = made == (root,)
        before, after = (_apart(root, limit) for limit in (height - 1, height))
        if by_quarters and made == root.parts:
            yield TRUE, titles.truing(root, "quarters"), made, before, closed
        if last and root.trued and not by_quarters:
            yield TRUE, titles.truing(root), made, before, closed
        yield CLOSE if last else TAPE, titles.of(made), made, after, closed
        closed += tuple(k for one in made for k in one.seams)


def _apart(root: Assembly, height: int) -> tuple[tuple[int, ...], ...]:
    """What lies apart when all up to a height is put together."""
    if root.height <= height:
        return (root.positions,)
    return tuple(group for part in root.parts for group in _apart(part, height))


class _Titles:
    """What a step is called by what is made in it."""

    def __init__(self, layout: Layout, root: Assembly) -> None:
        self._recipe, self._units = layout.recipe, units_of(layout)
        self._root = root
        self._sizes: dict[tuple[int, int, int], int] = {}
        for unit in self._units.values():
            self._sizes[unit] = self._sizes.get(unit, 0) + 1

    def rings(self, one: Assembly) -> int:
        return len({self._units[p][0] for p in one.positions})

    def of(self, made: Sequence[Assembly]) -> str:
        return self._of_ring(made[0], all_of(list(dict.fromkeys(map(self._name, made)))))

    def has_quarters(self, root: Assembly) -> bool:
        """Whether it is a ring whose halves are each made of two quarters, in one step."""
        ways = self._units[root.positions[0]][2]
        halves = [one for one in root.parts if len(one.parts) == 2]
        return bool(ways) and ways % 4 == 0 and len(halves) == 2 and (
            halves[0].height == halves[1].height
        )

    def truing(self, one: Assembly, what: str = "halves") -> str:
        what = "rows" if isinstance(self._recipe, End) else what
        return self._of_ring(one, word(TRUED[what]))

    def _of_ring(self, one: Assembly, said: str) -> str:
        if isinstance(self._recipe, Rings) and self.rings(one) == 1:
            inner = self._units[one.positions[0]][0] == 0
            return (
                say("Inner field: {step}", step=said) if inner
                else say("Outer band: {step}", step=said)
            )  # fmt: skip
        return said[0].upper() + said[1:]

    def _name(self, one: Assembly) -> str:
        units = {self._units[p] for p in one.positions}
        ways = self._units[one.positions[0]][2]
        if ways and self.rings(one) == 1:
            return self._in_ring(one, len(units), ways)
        if one is self._root:
            return self._last(one)
        if isinstance(self._recipe, End) and any(one is part for part in self._root.parts):
            return word("rows")
        return _counted(len(one.positions))

    def _last(self, one: Assembly) -> str:
        if isinstance(self._recipe, Rings):
            return word("both rings")
        if isinstance(self._recipe, End):
            return word("cross joint")
        return word("centre joint") if isinstance(self._recipe, Quarters) else word("last joint")

    def _in_ring(self, one: Assembly, count: int, ways: int) -> str:
        if count == 1:
            whole = len(one.positions) == self._sizes[self._units[one.positions[0]]]
            return word("wedges from strips") if whole else word("strips")
        if count == ways:
            if len(one.parts) == 1:
                return word("last seam")
            return word("last joint") if ways % 2 == 0 else word("both runs")
        parts = ways // count if ways % count == 0 else 0
        if parts in SHARES:
            return word((PAIRED if count == 2 else SHARES)[parts])
        return _counted(count)


TRUED = {
    "halves": marked("true the halves"), "quarters": marked("true the quarters"),
    "rows": marked("true the rows"),
}
SHARES = {2: marked("halves"), 4: marked("quarters")}
PAIRED = {2: marked("pairs, the halves"), 4: marked("pairs, the quarters")}
"""What steps are called; the first letter of a line is made a capital."""


def _counted(count: int) -> str:
    return word("pairs") if count == 2 else say("runs of {count}", count=count)


def named(positions: Sequence[int]) -> str:
    """Positions in their order, those that follow each other as a run: "1-4", and "11-2" where the
    count begins anew."""
    least, most = min(positions), max(positions)
    runs: list[list[int]] = []
    for p in positions:
        if runs and (p == runs[-1][-1] + 1 or (runs[-1][-1] == most and p == least)):
            runs[-1].append(p)
        else:
            runs.append([p])
    return ", ".join(f"{run[0]}-{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs)
