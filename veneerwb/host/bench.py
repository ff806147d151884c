# SPDX-License-Identifier: LGPL-2.1-or-later
"""What goes to the bench with a match: its sheets, made from the core's pages."""

from __future__ import annotations

import datetime
import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from veneerwb.core.checks.wider import wider_findings
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.progress import Progress, part, unheard
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.cutting.methods import Method
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look, Page, numbered
from veneerwb.core.shop.drawing.paper import paper_of
from veneerwb.core.shop.pages import gather, taping
from veneerwb.core.shop.pages.pictures import Pictures
from veneerwb.core.shop.rests import rests
from veneerwb.core.shop.taping.plan import TapingPlan
from veneerwb.core.shop.taping.plan import taping as taping_plan
from veneerwb.core.shop.taping.seen import seen_of
from veneerwb.host import areas, buildups, compat, cutlists, shop_pages, values
from veneerwb.host.objects.base import Refused, kind_of, set_if_new
from veneerwb.host.objects.bench import OTHER_HOST, Bench
from veneerwb.host.objects.closing import closings_of
from veneerwb.host.sheets import host_mark
from veneerwb.words import say, word

RESULTS = "Result"
PICTURED, SEEN, DRAWN = 0.3, 0.7, 0.85
"""Shares of the work on sheets that are done when the pictures are painted, when the seams are
judged for taping, and when the pages are there, which then go into the document."""


@dataclass(frozen=True)
class AtBench:
    """All that the pages of a bench are made from, read from the document once."""

    bench: Any
    layout: Layout
    look: Look
    progress: Progress = unheard
    """Is told while what takes its time is made, the first time that it is asked for."""

    @property
    def match(self) -> Any:
        return self.bench.Match

    @cached_property
    def others(self) -> list[Any]:
        """The matches that are cut from the same stack. Refused for one that cannot be."""
        return _others(self.bench)

    @cached_property
    def layouts(self) -> tuple[Layout, ...]:
        """Of all that is cut from the stack, that of the bench first."""
        bundle = self.layout.bundle
        return (self.layout, *(_layout_of(one, bundle) for one in self.others))

    @cached_property
    def built(self) -> Built | None:
        """The panel that the match is built up into."""
        how = buildups.built(self.match)
        return Built(how, values.finished_top(self.match)) if how else None

    @cached_property
    def findings(self) -> list[Any]:
        """What stands against cutting it, the gravest first; also that leaves have no room for
        wedges by the templates' angle."""
        found = values.findings(self.match, self.layout)
        over = self.bench.SeamAngle.Value if self.bench.SeamsCut == "over by an angle" else 0.0
        if not over or not hasattr(self.layout.recipe, "ways"):
            return found
        known = {one.code for one in found}
        angle = 360.0 / self.layout.recipe.ways + over
        wider = wider_findings(self.layout, angle, self.match.Margin.Value)
        return [*(one for one in wider if one.code not in known), *found]

    @cached_property
    def pictures(self) -> Pictures | None:
        from veneerwb.paint.sheet_pictures import sheet_pictures

        return sheet_pictures(self.layout, part(self.progress, 0.0, PICTURED))

    @cached_property
    def marks(self) -> dict[int, Any]:
        """The paper marks of the leaves (leaf mm), 0 for mark A."""
        return {leaf.Number: areas.marks_of(leaf) for leaf in _marked(self.match)}

    @cached_property
    def picked(self) -> dict[int, Any]:
        """The points of the figure that were picked on the leaves (leaf mm)."""
        if kind_of(self.match.Bundle) != "Bundle":
            return {}
        leaves = self.match.Bundle.Leaves
        return {n.Number: [(p.x, p.y) for p in n.Picked] for n in leaves if n.Picked}

    @property
    def method(self) -> Method:
        bench = self.bench
        return Method(
            bench.CutBy, bench.Kerf.Value, bench.Lean.Value, bench.AtOnce.Value,
            bench.Boards.Value, bench.BoardsBeyond.Value, bench.PinsClear.Value,
            through=bench.CutBy == "saw",
        )  # fmt: skip

    @property
    def closing(self) -> Any:
        """What is known of how the ring closes, a core Closing; None where nobody said."""
        from veneerwb.host.closing import closing_of

        return closing_of(self._closings[0]) if self._closings else None

    @property
    def _closings(self) -> list[Any]:
        return [one for one in closings_of(self.match) if not one.Message]

    @cached_property
    def taping(self) -> TapingPlan:
        """As the bench, or else the measured ring, says which joint is closed last."""
        close = tuple(self.bench.CloseBetween) or None
        if close is None and getattr(self.layout.recipe, "strips", 1) == 1:
            close = _measured(self._closings) or None  # it counts wedges: positions, without strips
        quarters = _by_quarters(self._closings)
        seen = seen_of(self.layout, progress=part(self.progress, PICTURED, SEEN))
        return taping_plan(self.layout, seen, close, self.bench.FaceDown, quarters)


def _measured(closings: Sequence[Any]) -> int:
    """The piece before which the measured ring is closed last; 0 where nothing is measured."""
    return next((one.Diameter for one in closings if one.Diameter), 0)


def _by_quarters(closings: Sequence[Any]) -> bool:
    return bool(closings) and closings[0].How == "quarters"


def at_bench(bench: Any, progress: Progress = unheard) -> AtBench:
    """What a bench holds; its date is that of its sheets, today's where they are old. Refused where
    its match stands in a state that it refused."""
    layout = layout_of(bench)
    made = bench.Date if bench.SheetMark == mark_of(bench) else ""
    return AtBench(bench, layout, look_of(bench, layout, made or today()), progress)


def today() -> str:
    return datetime.date.today().isoformat()


def bench_of_match(match: Any) -> Any:
    """The first Bench of a Match; None where there is none."""
    mine = [one for one in match.InList if kind_of(one) == "Bench" and one.Match == match]
    return min(mine, key=lambda one: one.ID, default=None)


def layout_of(bench: Any) -> Layout:
    """The layout that goes to the bench."""
    if kind_of(bench.Match) != "Match":
        raise Refused(word("The bench has no match; link it to one, or delete it."))
    return _layout_of(bench.Match, values.leaves_of(bench.Match.Bundle))


def _others(bench: Any) -> list[Any]:
    """The matches of Together, without the bench's own."""
    found = [one for one in dict.fromkeys(bench.Together) if one != bench.Match]
    for one in found:
        if kind_of(one) != "Match" or one.Bundle != bench.Match.Bundle:
            raise Refused(
                say(
                    "{name} is not laid from {bundle}, so it cannot be cut together with {match}; "
                    "take it out of Together.",
                    name=one.Label, bundle=bench.Match.Bundle.Label, match=bench.Match.Label,
                )
            )
    return found


def _layout_of(match: Any, bundle: Leaves) -> Layout:
    if match.Message:
        raise Refused(say(
            "{name} was refused, nothing can be cut by it: {why}",
            name=match.Label, why=match.Message,
        ))
    return values.layout_on(match, bundle)


def look_of(bench: Any, layout: Layout, date: str) -> Look:
    """How the pages of a bench look and what their title blocks say."""
    match = bench.Match
    lengths = Lengths(bench.Unit, int(bench.Fraction.split("/")[1]))
    return Look(
        paper=paper_of(bench.Paper),
        lengths=lengths,
        title=bench.Title.strip() or match.Label,
        number=bench.Number,
        owner=bench.Owner,
        drawn_by=bench.CreatedBy,
        approved_by=bench.ApprovedBy,
        date=date,
        revision=layout.revision,
        top=layout.top.name,
        bundle=match.Bundle.Label,
        rests=_rests(match, layout, lengths),
    )


def _rests(match: Any, layout: Layout, lengths: Lengths) -> str:
    follows = getattr(match.Bundle, "Follows", "")
    follows = "" if follows == "nothing" else follows
    return rests(layout.bundle, follows, used=layout.pieces, lengths=lengths)


# --- sheets ---------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Drawn:
    """The sheets of a bench as its match is now, and what they were made from; not in the document
    yet."""

    there: AtBench
    mark: str
    pages: list[Page]


def refresh(bench: Any, progress: Progress = unheard) -> list[Page]:
    """Makes the sheets of a bench as its match is now; the core's pages. Raises Refused or
    VeneerError before anything is changed. `progress` hears the share that is done, and stops it
    by raising: then some sheets may be new and others not, so let it be one step."""
    made = drawn(bench, part(progress, 0.0, DRAWN))
    put(made, part(progress, DRAWN, 1.0))
    return made.pages


def drawn(bench: Any, progress: Progress = unheard) -> Drawn:
    """The sheets of a bench; nothing is changed. Raises as `refresh` does."""
    compat.use_drawing_font()
    there = at_bench(bench, progress)
    return Drawn(there, mark_of(bench), sheets(there))


def put(made: Drawn, progress: Progress = unheard) -> None:
    """Puts sheets into their document."""
    there, bench = made.there, made.there.bench
    shop_pages.put(bench, made.pages, progress)
    cutlists.fill_sheet(bench, there.layout, there.look)
    set_if_new(
        bench, Revision=there.layout.revision, SheetMark=made.mark, Date=there.look.date, State="",
        HostMark=host_mark(), Closings=closings_of(bench.Match),
    )  # fmt: skip
    shop_pages.say_stale(bench, "")


def sheets(there: AtBench) -> list[Page]:
    """All sheets of a bench, numbered."""
    base, pictures, taped = there.bench.Base.Value, there.pictures, there.taping
    found = gather.sheet_pages(
        there.layout, there.look, there.built, there.findings, pictures, base, there.marks,
        part(there.progress, SEEN, 1.0),
    )
    return numbered([*found, *taping.pages(taped, there.look)])


def mark_of(bench: Any) -> str:
    """A mark of all that the sheets are made from."""
    match = bench.Match
    marks = [match.Revision, match.Label, match.Bundle.Label if match.Bundle else ""]
    marks += [f"{one.name} {getattr(bench, one.name)}" for one in Bench.properties
              if one.group != RESULTS and not one.kind.startswith("Link")]  # fmt: skip
    closings = [one for one in closings_of(match) if not one.Message]
    marks.append(f"{_measured(closings)} {_by_quarters(closings)}")
    marks += [f"{leaf.Number} {leaf.Marks}" for leaf in _marked(match)]
    marks.append(getattr(match.Bundle, "Follows", ""))
    marks += [*match.Findings, _built_mark(match)]
    return hashlib.sha256("\n".join(marks).encode()).hexdigest()[:16]


def _marked(match: Any) -> list[Any]:
    """The leaves on which paper marks were found."""
    if kind_of(match.Bundle) != "Bundle":
        return []
    return [leaf for leaf in match.Bundle.Leaves if leaf.Marks]


def _built_mark(match: Any) -> str:
    """What the panel is built of; empty for a bare match or a build-up that is refused."""
    from veneerwb.core.errors import VeneerError

    try:
        return repr(buildups.built(match))
    except VeneerError as refused:
        return str(refused)


def why_old(bench: Any) -> str:
    """Why the sheets of a bench are not up to date; empty if they are, or if there are none."""
    if not shop_pages.pages_of(bench):
        return ""
    if bench.Match.Message:
        return say(
            "{match} was refused: {why}", match=bench.Match.Label, why=bench.Match.Message
        )
    if bench.Revision != bench.Match.Revision:
        return say(
            "the match is now {revision}; refresh the sheets.", revision=bench.Match.Revision
        )
    if mark_of(bench) != bench.SheetMark:
        return word("something changed; refresh the sheets.")
    return "" if bench.HostMark == host_mark() else word(OTHER_HOST)
