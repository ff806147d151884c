# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan on paper: each stack, its steps with a picture each, and its offcuts."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from shapely.geometry import box as rectangle

from veneerwb.core.leaf import ranges
from veneerwb.core.shop.cutting.offcuts import LeafRest
from veneerwb.core.shop.cutting.piles import PileCut
from veneerwb.core.shop.cutting.plan import CuttingPlan, Leaning, StackPlan
from veneerwb.core.shop.cutting.said import ERROR, Said, in_units
from veneerwb.core.shop.cutting.steps import Step, turned_said
from veneerwb.core.shop.drawing.drawn import DASHED, MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.page import Look, Page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages import cutting_pictures as pictures
from veneerwb.core.shop.pages import offcuts
from veneerwb.core.shop.pages.cutting_cells import Told, told_pages
from veneerwb.words import figure, marked, say, word

Length = Callable[[float], str]
CODE, TITLE = "cutting", marked("Cutting plan")


def pages(plan: CuttingPlan, rests: Sequence[LeafRest], look: Look) -> list[Page]:
    """The pages of a plan, and of what is left of its leaves (`offcuts`)."""
    length, error = in_units(look.lengths), in_units(look.lengths, ERROR)
    cells = []
    for alike in _groups(plan.stacks):
        for stack in alike:
            cells += _overview(plan, stack, alike[0], length, error)
        cells += [_step(plan, alike, step, length) for step in alike[0].steps]
    return told_pages(look, CODE, TITLE, cells) + offcuts.pages(rests, look)


def _groups(stacks: Sequence[StackPlan]) -> list[list[StackPlan]]:
    """Stacks that are cut by the same steps, together: these are shown once."""
    groups: dict[tuple[object, ...], list[StackPlan]] = {}
    for stack in stacks:
        key = tuple((step.kind, step.what.template, step.what.values.get("side"), step.held,
                     step.waste_held) for step in _own(stack))
        groups.setdefault(key, []).append(stack)
    return list(groups.values())


def _own(stack: StackPlan) -> list[Step]:
    """The steps without the trial, which is made once."""
    return [step for step in stack.steps if step.kind != "test"]


def _names(alike: Sequence[StackPlan], plan: CuttingPlan) -> str:
    """What stacks are called in a heading: A; A to F; A, C, D; A and 8 like it."""
    names = [stack.pile.name for stack in alike]
    places = [plan.stacks.index(stack) for stack in alike]
    if len(names) > 2 and places[-1] - places[0] == len(places) - 1:
        return say("{first} to {last}", first=names[0], last=names[-1])
    if len(names) < 5:
        return ", ".join(names)
    return say("{first} and {count} like it", first=names[0], count=len(names) - 1)


# --- a stack --------------------------------------------------------------------------------------


def _overview(
    plan: CuttingPlan, stack: StackPlan, like: StackPlan, length: Length, error: Length
) -> list[Told]:
    """What there is to know of a stack; its steps are those of the stack `like` it."""
    name = (
        say("Stack {stack}", stack=stack.pile.name) if len(plan.stacks) > 1
        else word("The stack")
    )  # fmt: skip

    def from_above(drawing: Drawing, box: Box) -> None:
        view = pictures.above(drawing, box, stack, None, plan.how)
        pictures.named(drawing, view, stack)

    def from_beside(drawing: Drawing, box: Box) -> None:
        pictures.beside(drawing, box, stack, plan.how)

    seen, lying = _above_said(plan, stack, length), _beside_said(plan, stack, length)
    if stack is not like:
        seen = (*seen, say("Its steps are those of stack {name}.", name=like.pile.name))
    told = [Told(say("{name} from above", name=name), seen, from_above, 72.0),
            Told(say("{name} from the side, not to scale", name=name), lying, from_beside)]
    if len(stack.order) == 1:
        told = [Told(name, (*seen, *lying), from_above, 72.0)]
    if stack is plan.stacks[0]:
        texts = tuple(note.text(length) for note in plan.notes)
        texts += tuple(_lean_said(one, plan, error) for one in _different(plan.leaning))
        shown = pictures.leaning if plan.how.lean else from_beside
        told.append(Told(word("Before you cut"), (*texts, plan.caution), shown))
    return told


def _above_said(plan: CuttingPlan, stack: StackPlan, length: Length) -> tuple[str, ...]:
    size = " x ".join(map(length, stack.board_size))
    pins = next(one for one in plan.pinning.stacks if one.pile == stack.pile)
    many, tops = len(stack.pile.cuts) > 1, len({cut.top for cut in stack.pile.cuts})
    served = tuple(
        _served_said(cut, k if many else 0, tops, plan.how.key != "machine")
        for k, cut in enumerate(stack.pile.cuts, start=1)
    )
    values = {"apart": length(pins.apart), "free": length(pins.free)}
    return (
        word("Seen from the faces of the leaves, grain upright."),
        *served,
        f"{_boards(plan, stack)}: {size}.",
        say(KEY_SAW if plan.how.through else KEY, **values),
    )


KEY = marked(
    "Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps "
    "grey is what is kept, dashed what falls, red the cut with its direction."
)
KEY_SAW = marked(
    "Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps "
    "grey is what is kept, dashed what falls, red the cut with its direction, a crossed ring a "
    "screw, a square a clamp."
)


def _served_said(cut: PileCut, number: int, tops: int, again: bool) -> str:
    """Which positions a cut is for; `number`: its own where there are several. `again`: what is cut
    a second time is told."""
    positions = ranges(cut.positions)
    if tops > 1:
        positions = say("{positions} of top {top}", positions=positions, top=cut.top)
    said = [
        say("Cut {number}: positions {positions}.", number=number, positions=positions)
        if number
        else say("For positions {positions}.", positions=positions)
    ]
    if cut.again and again:
        said.append(say("Of these {positions} need a second cut.", positions=ranges(cut.again)))
    if cut.trimmed and again:
        said.append(say("The rims of {positions} are too long.", positions=ranges(cut.trimmed)))
    return " ".join(said)


def _boards(plan: CuttingPlan, stack: StackPlan) -> str:
    """What has that size. Boards are sawn up with what lies between them."""
    if not plan.how.board:
        return word("Stack") if plan.how.key != "machine" else word("Leaf")
    first = stack is plan.stacks[0]
    count = 2 * (len(stack.lifts) + first)
    if first:
        return say("{count} boards, two of them for the trial", count=count)
    return say("{count} boards", count=count)


def _beside_said(plan: CuttingPlan, stack: StackPlan, length: Length) -> tuple[str, ...]:
    order = " ".join(map(str, stack.order))
    if plan.how.key == "machine":
        return _singly_said(stack)
    shown = _runs(stack.order)
    if len(order) < 60 and list(stack.order) != sorted(stack.order):
        shown = order
    values = {"count": len(stack.order), "high": length(stack.high), "total": length(stack.total)}
    texts = [
        say("From the top down, all faces up: leaves {leaves}.", leaves=shown),
        word("Leaves that will be turned over are turned after the cut."),
        say("{count} leaves are {high} high, with both boards {total}.", **values)
        if plan.how.board and len(stack.lifts) == 1
        else say("{count} leaves are {high} high.", **values),
    ]
    if stack.pile.spares:
        texts.append(say("Spares among them: {leaves}.", leaves=ranges(stack.pile.spares)))
    if len(stack.lifts) > 1 and plan.how.most:
        lifts = "; ".join(f"{k}: {ranges(lift)}" for k, lift in enumerate(stack.lifts, start=1))
        texts.append(say(
            "Cut in {count} lifts of {high} at most: {lifts}.", count=len(stack.lifts),
            high=length(stack.lift_high), lifts=lifts,
        ))  # fmt: skip
    return tuple(texts)


def _singly_said(stack: StackPlan) -> tuple[str, ...]:
    texts = [say("One leaf at a time on the two pins: leaves {order}.", order=_runs(stack.order))]
    turned = turned_said(stack.pile)
    if turned:
        texts.append(
            say(
                "Positions {turned} show their backs: their leaves lie back up, and their files "
                "are mirror images with the pins in their places. All others lie face up.",
                turned=turned,
            )
        )
    if stack.pile.spares:
        texts.append(say("Spares among them: {spares}, face up.", spares=ranges(stack.pile.spares)))
    return tuple(texts)


def _runs(numbers: Sequence[int]) -> str:
    """Numbers in their order, rising or falling runs as one: 24-1."""
    if len(numbers) > 1 and numbers[0] > numbers[-1] and (
        numbers[0] - numbers[-1] == len(numbers) - 1
    ):
        return f"{numbers[0]}-{numbers[-1]}"
    return ranges(numbers)


def _different(found: Sequence[Leaning]) -> list[Leaning]:
    seen: dict[tuple[object, ...], Leaning] = {}
    for one in found:
        seen.setdefault(tuple(round(v or 0.0, 4) for v in (one.lowest, one.slide, one.gap)), one)
    return list(seen.values())


def _lean_said(one: Leaning, plan: CuttingPlan, error: Length) -> str:
    if not plan.how.lean:
        return word("The tool stands square: nothing is said of lean.")
    values = {
        "lean": figure(plan.how.lean), "lowest": error(one.lowest), "slide": "", "turn": "",
        "gap": "",
    }  # fmt: skip
    if one.slide is None:
        return say(
            "A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Joints of "
            "two such pieces open by up to twice that.", **values,
        )  # fmt: skip
    values |= {"slide": error(one.slide), "turn": figure(one.opens, ".2f"), "gap": error(one.gap)}
    return say(
        "A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Alike all "
        "along both seams it moves that piece's tip by {slide} along its axis, and the ring still "
        "closes. Coming up along every seam it would open or overlap the ring by {turn} deg, {gap} "
        "at the rim, at the most.", **values,
    )  # fmt: skip


# --- steps ----------------------------------------------------------------------------------------


def _step(
    plan: CuttingPlan, alike: Sequence[StackPlan], step: Step, length: Length
) -> Told:
    texts = [_for_all(alike, step).text(length)]
    if step.held:
        texts.append(say("Holds the piece: {held}.", held=step.held))
    if step.waste_held:
        texts.append(say("Holds what falls: {waste_held}.", waste_held=step.waste_held))
    texts.append(say("Caution: {caution}", caution=step.caution))
    called = step.what.values.get("side") or word(CALLED[step.kind])
    values = {"number": step.number, "step": called, "stacks": _names(alike, plan)}
    if len(plan.stacks) == 1 or step.kind == "test":
        heading = say("Step {number}: {step}", **values)
    elif len(alike) > 1:
        heading = say("Stacks {stacks}, step {number}: {step}", **values)
    else:
        heading = say("Stack {stacks}, step {number}: {step}", **values)
    return Told(heading, tuple(texts), _picture(plan, alike[0], step))


def _for_all(alike: Sequence[StackPlan], step: Step) -> Said:
    """What to do, for all of some stacks: numbers that are not the same in each are listed with
    the stack."""
    if step.kind == "test":
        return step.what
    at = _own(alike[0]).index(step)
    others = [_own(stack)[at].what.values for stack in alike]
    return Said(step.what.template, {
        name: value if all(one[name] == value for one in others) else word("as listed")
        for name, value in step.what.values.items()
    })


CALLED = {
    "test": marked("trial"), "mark": marked("chalk"), "prick": marked("holes"),
    "shorten": marked("length"), "lay": marked("lay"), "close": marked("hold"),
    "part": marked("part"), "free": marked("take off"), "again": marked("second cut"),
    "round": marked("round the piece"), "outline": marked("own outlines"),
}


def _picture(
    plan: CuttingPlan, stack: StackPlan, step: Step
) -> Callable[[Drawing, Box], None]:
    how = plan.how

    def draw(drawing: Drawing, box: Box) -> None:
        if step.kind == "test" and how.lean:
            pictures.leaning(drawing, box)
        elif step.kind in ("test", "lay", "close"):
            pictures.beside(drawing, box, stack, how, step.kind != "lay", numbers=False)
        elif step.at_blade:
            pictures.above(drawing, box, stack, step, how)
        else:
            _quiet(drawing, box, stack, step, all(one.slide is not None for one in plan.leaning))

    return draw


def _quiet(drawing: Drawing, box: Box, stack: StackPlan, step: Step, to_tip: bool) -> None:
    """The picture of a step without a blade."""
    view = pictures.View.of(pictures.all_of(stack), box.inset(4.0))
    if step.kind == "shorten":
        x0, y0, x1, y1 = stack.board.bounds
        more = 0.25 * (y1 - y0)
        view = pictures.View.of((x0, y0 - more, x1, y1 + more), box.inset(4.0))
        view.area(drawing, rectangle(x0, y0 - more, x1, y1 + more), THIN, pictures.WOOD)
        for y in (y0, y1):
            pictures.blade(drawing, [view.point((x0, y)), view.point((x1, y))])
        return
    pieces = step.kind in ("free", "again")
    if not pieces:
        view.area(drawing, stack.board, THIN, pictures.WOOD)
    for cut in stack.pile.cuts:
        if pieces:
            for k in (2, 1, 0):
                shifted = pictures.View(view.factor, (view.at[0] + 1.2 * k, view.at[1] - 1.2 * k))
                shifted.area(drawing, cut.outline, MEDIUM, pictures.WOOD)
            continue
        view.area(drawing, cut.outline, MEDIUM, "", DASHED if step.kind == "mark" else ())
        if step.kind == "mark":
            pictures.chalk(drawing, view, cut, to_tip)
    if step.kind == "prick":
        for place in stack.pins:
            at = view.point(place)
            pictures.dot(drawing, at, 1.8, "#ffffff")
            pictures.dot(drawing, at, 0.5)
