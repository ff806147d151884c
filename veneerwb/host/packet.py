# SPDX-License-Identifier: LGPL-2.1-or-later
"""The packet of a bench: every sheet, template, plan and list that goes to the shop, as files.

A part that cannot be made is left out, and the contents page says so and why; without sheets or
without cut lists there is no packet.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from pathlib import Path
from typing import Any

from veneerwb.core.layout import Layout
from veneerwb.core.progress import Progress, part, unheard
from veneerwb.core.shop import cost as costs
from veneerwb.core.shop import packet as packets
from veneerwb.core.shop.cutlist import as_csv
from veneerwb.core.shop.cutting.offcuts import offcuts
from veneerwb.core.shop.cutting.piles import Pile, piles
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.drawing.lettering import clean
from veneerwb.core.shop.drawing.page import Look, Page, numbered
from veneerwb.core.shop.drawing.paper import paper_of
from veneerwb.core.shop.packet import LeftOut, PacketFile
from veneerwb.core.shop.pages import closing as closing_pages
from veneerwb.core.shop.pages import contents
from veneerwb.core.shop.pages import cost as cost_pages
from veneerwb.core.shop.pages import cutting as cutting_pages
from veneerwb.core.shop.pages import notes as notes_pages
from veneerwb.core.shop.pages import pinning as pinning_pages
from veneerwb.core.shop.pages import press as press_pages
from veneerwb.core.shop.pages.template import pages as template_pages
from veneerwb.core.shop.pinning.chalking import chalking
from veneerwb.core.shop.pinning.plan import Pinning, pinning
from veneerwb.core.shop.planning import planned_for
from veneerwb.core.shop.templates.make import stack_cuts, templates
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.template import Pin, Template
from veneerwb.core.shop.wedge import is_ring
from veneerwb.host import bench as benches
from veneerwb.host.bench import AtBench, Drawn
from veneerwb.host.bench_press import press_day, price_of
from veneerwb.host.objects.base import Refused, sentence
from veneerwb.host.objects.closing import closings_of
from veneerwb.words import marked, say, word

SHEETS, FILES = 0.5, 0.95
"""Shares of the work that are done when the sheets are drawn, and when all files are made."""
STEPS = 10.0
"""About as many files as a packet has, by which the progress is told."""
LONGEST_NAME = 48
"""Characters of a layout's name on a template."""
ALIKE = 0.005
"""Degrees: angles over that differ by less are one."""
STOPPED = marked("STOP, do not cut by this packet: {why}")
NOT_AS_ADVISED = marked(
    "The sheet on closing the ring advises to cut every wedge {advised:.2f} degrees over; the "
    "templates of this packet are cut {over:.2f} degrees over."
)
NOT_RECKONED = marked(
    "How exact template and knife are was not said, so there is no sheet on closing the ring: "
    "Close the Ring reckons how much over to cut, never under."
)
UNFORESEEN = marked("it failed for a reason that the addon does not know ({why})")


@dataclass(frozen=True)
class Written:
    """A packet that was written: its folder, and the parts that it lacks."""

    folder: Path
    left_out: tuple[LeftOut, ...] = ()


def write(
    bench: Any, folder: str, progress: Progress = unheard, drawn: Drawn | None = None
) -> Written:
    """Writes the packet of a bench into a new folder in `folder`, with its sheets if they are
    `drawn` already. `progress` hears the share that is done, and stops it by raising. Raises
    Refused or VeneerError; nothing is left then."""
    drawn = drawn or benches.drawn(bench, part(progress, 0.0, SHEETS))
    packet = Packet(drawn.there, drawn.pages)
    made: list[PacketFile] = []
    left_out: list[LeftOut] = []
    for name, needed, files in packet.parts():
        found: list[PacketFile] = []
        while True:
            try:
                file = next(files, None)
            except Exception as error:
                if needed:
                    raise
                left_out.append(LeftOut(word(name), sentence(error, UNFORESEEN)))
                found = []
                break
            if file is None:
                break
            found.append(file)
            done = len(made) + len(found)
            progress(SHEETS + (FILES - SHEETS) * done / (STEPS + done))
        made += found
    return Written(packet.written(folder, made, left_out), tuple(left_out))


@dataclass(frozen=True)
class Packet:
    """What the parts of a packet are made from; several of them share pins and templates."""

    there: AtBench
    sheets: Sequence[Page] = ()
    """Of the bench, where they are drawn already."""

    @property
    def look(self) -> Look:
        return self.there.look

    @property
    def layout(self) -> Layout:
        return self.there.layout

    def parts(self) -> Iterator[tuple[str, bool, Iterator[PacketFile]]]:
        """The parts in the order in which the shop needs them, but for the contents: name, whether
        there is no packet without it, files."""
        yield marked("Sheets"), True, self._sheets()
        yield marked("Pinning"), False, self._pinning()
        yield marked("Marking"), False, self._marking()
        yield marked("Cutting plan"), False, self._cutting()
        yield marked("Templates at 1:1"), False, self._tiled()
        yield marked("Templates as DXF"), False, self._dxf()
        yield marked("Templates as SVG"), False, self._svg()
        yield marked("Closing the ring"), False, self._closing()
        yield marked("Press day"), False, self._press()
        yield marked("Yield and cost"), False, self._yields()
        yield marked("Cut list"), True, self._cut_lists()
        yield marked("Bill of materials"), False, self._bill()
        yield marked("Picture of the top"), False, self._picture()

    def written(self, folder: str, made: list[PacketFile], left_out: list[LeftOut]) -> Path:
        """Writes the files and their contents page into a new folder."""
        named = packets.named(made, first=2)
        listed = contents.pages(self.look, named, left_out, self.warnings)
        first = packets.named([self._pdf(marked("Contents"), word("This list."), listed)])
        name, revision = self.look.title, self.layout.revision
        return packets.write_packet(folder, name, revision, [*first, *named])

    @property
    def warnings(self) -> list[str]:
        """What must be known before anything is cut by this packet."""
        lengths = self.look.lengths
        stops = [
            notes_pages.in_lengths(one, lengths)
            for one in self.there.findings if one.level == "stop"
        ]
        return [*(say(STOPPED, why=one.text) for one in stops), *self._not_as_advised()]

    def _not_as_advised(self) -> Iterator[str]:
        """Where a ring is to be trued: that nothing was reckoned, or that the templates are not as
        far over as is advised."""
        closings = [one for one in closings_of(self.there.match) if not one.Message]
        if not closings and is_ring(self.layout):
            yield word(NOT_RECKONED)
        bench = self.there.bench
        over = bench.SeamAngle.Value if bench.SeamsCut == "over by an angle" else 0.0
        if closings and bench.SeamsCut != "over by a width" and not closings[0].TemplateStays:
            advised = closings[0].Over
            if abs(advised - over) > ALIKE:
                yield say(NOT_AS_ADVISED, advised=advised, over=over)

    def _name(self, top: int) -> str:
        """What the layout of a top is called."""
        return self.look.title if top == 1 else self.there.others[top - 2].Label

    def _pdf(self, name: str, about: str, pages: list[Page]) -> PacketFile:
        from veneerwb.paint.pdf import pdf

        title = f"{self.look.title} {self.layout.revision}: {word(name)}"
        return PacketFile(name, ".pdf", about, pdf(numbered(pages), title))

    def _sheets(self) -> Iterator[PacketFile]:
        about = word("Notes, plan, pieces, stack, section, lists, taping.")
        yield self._pdf("Sheets", about, list(self.sheets) or benches.sheets(self.there))

    # --- the stack ----------------------------------------------------------------------------

    @cached_property
    def over(self) -> Over:
        """How much over seams are cut."""
        bench = self.there.bench
        return {
            "exact": Over(),
            "over by an angle": Over(angle=bench.SeamAngle.Value),
            "over by a width": Over(width=bench.SeamWidth.Value),
        }[bench.SeamsCut]

    @cached_property
    def piles(self) -> tuple[Pile, ...]:
        """The stacks as they are cut, spare leaves or not."""
        return piles(self.there.layouts, over=self.over)

    @cached_property
    def pins(self) -> Pinning:
        """Where the stacks are pinned. Raises VeneerError."""
        there = self.there
        return pinning(there.layouts, there.marks, there.picked, there.method,
                       there.bench.PinMargin.Value, spares=there.match.Spares,
                       over=self.over)  # fmt: skip

    @property
    def stack_look(self) -> Look:
        """Sheets of a stack carry the marks of all tops that are cut from it."""
        matches = [self.there.match, *self.there.others]
        if len(matches) == 1:
            return self.look
        return replace(
            self.look,
            revision=" ".join(one.revision for one in self.there.layouts),
            top=", ".join(f"{k}: {one.Label}" for k, one in enumerate(matches, start=1)),
        )

    def _pinning(self) -> Iterator[PacketFile]:
        pages = pinning_pages.pages(self.pins, self.stack_look)
        yield self._pdf("Pinning", word("Where the pin holes go on every leaf."), pages)

    def _marking(self) -> Iterator[PacketFile]:
        there = self.there
        marks = chalking(there.layouts, spares=there.match.Spares)
        pages = pinning_pages.marking_pages(marks, there.layouts, self.stack_look)
        yield self._pdf("Marking", word("What is chalked on every leaf before it is cut."), pages)

    def _cutting(self) -> Iterator[PacketFile]:
        there, spares = self.there, self.there.match.Spares
        if there.method.through and not there.method.board:
            raise Refused(word("A saw cuts a stack between boards; say how thick these are."))
        plan = cutting_plan(there.layouts, there.method, spares, pins=self.pins, over=self.over)
        left = offcuts(there.layouts, there.method, spares, over=self.over)
        yield self._pdf("Cutting plan", word("The stack, its cuts in order, what is left over."),
                        cutting_pages.pages(plan, left, self.stack_look))  # fmt: skip

    # --- templates ----------------------------------------------------------------------------

    @cached_property
    def templates(self) -> list[Template]:
        """Of the stack, or of single leaves for a machine, of every top that is cut from it; with
        pin holes where the stack can be pinned."""
        there, bench = self.there, self.there.bench
        singly = bench.CutBy == "machine"
        stacks, holes = self._stacks()
        found: list[Template] = []
        for top, layout in enumerate(there.layouts, start=1):
            name = short(self._name(top))
            cuts = stack_cuts(stacks, holes, top)
            made = templates(layout, self.over, bench.Tool.Value, singly, name, cuts,
                             self.look.rests, bench.Base.Value)  # fmt: skip
            if len(there.layouts) > 1:
                made = [_of_top(one, top) for one in made]
            found += made
        return found

    def _stacks(self) -> tuple[list[Pile], dict[str, list[Pin]]]:
        try:
            pinned = self.pins.stacks
        except Exception:  # the part Pinning says why
            return list(self.piles), {}
        holes = {
            one.pile.name: [
                Pin(at, say("pin {number}", number=k)) for k, at in enumerate(one.places, start=1)
            ]
            for one in pinned
        }
        return [one.pile for one in pinned], holes

    def _tiled(self) -> Iterator[PacketFile]:
        from veneerwb.paint.pdf import pdf

        paper = paper_of(self.there.bench.TilePaper)
        look = replace(self.look, paper=paper)
        for one in self.templates:
            title = f"{one.name} {one.revision}: {one.shown}"
            data = pdf(template_pages(one, replace(look, revision=one.revision)), title)
            about = say(
                "{name} at 1:1 on {paper}; print at 100 %.", name=one.shown,
                paper=paper.called,
            )
            yield PacketFile(one.title, ".pdf", about, data)

    def _dxf(self) -> Iterator[PacketFile]:
        from veneerwb.core.shop.templates.dxf import dxf

        unit = self.there.bench.FileUnit
        for one in self.templates:
            about = say("{name} for a machine, in {unit}.", name=one.shown, unit=unit)
            yield PacketFile(one.title, ".dxf", about, dxf(one, unit, self.look.lengths))

    def _svg(self) -> Iterator[PacketFile]:
        from veneerwb.core.shop.templates.svg import svg

        for one in self.templates:
            about = say("{name} for a machine or a printer, in mm.", name=one.shown)
            data = svg(one, self.look.lengths).encode("utf-8")
            yield PacketFile(one.title, ".svg", about, data)

    # --- plans --------------------------------------------------------------------------------

    def _closing(self) -> Iterator[PacketFile]:
        closing = self.there.closing
        if closing is not None:
            about = word("How much over to cut; where and how to true.")
            pages = closing_pages.pages(closing, self.look)
            yield self._pdf("Closing the ring", about, pages)

    def _press(self) -> Iterator[PacketFile]:
        there = self.there
        species = getattr(there.match.Bundle, "Species", "")
        pages = press_pages.pages(press_day(there), self.look, there.bench.Gauge, species)
        yield self._pdf(
            "Press day", word("Centre and axes, press, adhesive, order of the day."), pages
        )

    def _yields(self) -> Iterator[PacketFile]:
        there, match, tops = self.there, self.there.match, self.there.bench.Tops
        found = costs.yields(there.layout)
        price = price_of(there)
        what = costs.cost(found, price, tops) if price else None
        least = planned_for(there.layout, match.Spares, match.Margin.Value, tops)
        pages = [*cost_pages.pages(found, self.look, what),
                 *cost_pages.planning_pages(least, self.look)]  # fmt: skip
        about = word("What is used, bought and left; what it costs; what to buy.")
        yield self._pdf("Yield and cost", about, pages)

    # --- lists and picture --------------------------------------------------------------------

    def _cut_lists(self) -> Iterator[PacketFile]:
        there = self.there
        for top, layout in enumerate(there.layouts, start=1):
            name = self._name(top)
            file_name = "Cut list" + (f" of top {top}" if len(there.layouts) > 1 else "")
            data = as_csv(layout, name, self.look.rests).encode("utf-8")
            yield PacketFile(file_name, ".csv", word("Every piece, for a spreadsheet."), data)

    def _bill(self) -> Iterator[PacketFile]:
        from veneerwb.core.buildup.bill import bill, bill_csv

        if self.there.built:
            rows = bill(self.there.built.parts)
            marked = f"{self.look.title} {self.layout.revision}"
            data = bill_csv(rows, marked).encode("utf-8")
            about = word("What the panel takes, for a spreadsheet.")
            yield PacketFile("Bill of materials", ".csv", about, data)

    def _picture(self) -> Iterator[PacketFile]:
        from veneerwb.core.shop.pages.captioned import captioned
        from veneerwb.paint.drawn_picture import jpeg

        pictures = self.there.pictures
        if pictures is not None and pictures.finished is not None:
            drawn = captioned(self.layout, self.look, pictures.finished, self.there.built)
            yield PacketFile("Picture of the top", ".jpg", word("The finished top."), jpeg(drawn))


def _of_top(one: Template, top: int) -> Template:
    """A template of one of several tops."""
    shown = say("{title}, top {top}", title=one.shown, top=top)
    return replace(one, title=f"{one.title}, top {top}", shown=shown)


def short(name: str) -> str:
    """A name that leaves room for the mark behind it wherever it stands."""
    name = clean(name)
    return name if len(name) <= LONGEST_NAME else name[: LONGEST_NAME - 3].rstrip() + "..."
