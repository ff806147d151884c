# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan on paper: each stack, its steps with a picture each, and its offcuts."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from shapely.geometry import box as rectangle

from veneerwb.core.errors import number
from veneerwb.core.leaf import ranges
from veneerwb.core.shop.cutting import CuttingPlan, Leaning, StackPlan
from veneerwb.core.shop.cutting_said import ERROR, Said, in_units
from veneerwb.core.shop.cutting_steps import Step, turned_said
from veneerwb.core.shop.drawn import DASHED, MEDIUM, THIN, Drawing
from veneerwb.core.shop.lettering import SMALL
from veneerwb.core.shop.offcuts import LeafRest
from veneerwb.core.shop.page import Look, Page
from veneerwb.core.shop.pages import cutting_pictures as pictures
from veneerwb.core.shop.pages.cutting_cells import Told, table_pages, told_pages
from veneerwb.core.shop.paper import Box

Length = Callable[[float], str]
CODE, TITLE = "cutting", "Cutting plan"


def pages(plan: CuttingPlan, rests: Sequence[LeafRest], look: Look) -> list[Page]:
    """The pages of a plan, and of what is left of its leaves (`offcuts`)."""
    length, error = in_units(look.lengths), in_units(look.lengths, ERROR)
    cells = []
    for alike in _groups(plan.stacks):
        for stack in alike:
            cells += _overview(plan, stack, alike[0], length, error)
        cells += [_step(plan, alike, step, length) for step in alike[0].steps]
    return told_pages(look, CODE, TITLE, cells) + _offcut_pages(rests, look)


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
        return f"{names[0]} to {names[-1]}"
    return ", ".join(names) if len(names) < 5 else f"{names[0]} and {len(names) - 1} like it"


# --- a stack --------------------------------------------------------------------------------------


def _overview(
    plan: CuttingPlan, stack: StackPlan, like: StackPlan, length: Length, error: Length
) -> list[Told]:
    """What there is to know of a stack; its steps are those of the stack `like` it."""
    name = f"Stack {stack.pile.name}" if len(plan.stacks) > 1 else "The stack"

    def from_above(drawing: Drawing, box: Box) -> None:
        view = pictures.above(drawing, box, stack, None, plan.how)
        pictures.named(drawing, view, stack)

    def from_beside(drawing: Drawing, box: Box) -> None:
        pictures.beside(drawing, box, stack, plan.how)

    seen, lying = _above_said(plan, stack, length), _beside_said(plan, stack, length)
    if stack is not like:
        seen = (*seen, f"Its steps are those of stack {like.pile.name}.")
    told = [Told(f"{name} from above", seen, from_above, 72.0),
            Told(f"{name} from the side, not to scale", lying, from_beside)]
    if len(stack.order) == 1:
        told = [Told(name, (*seen, *lying), from_above, 72.0)]
    if stack is plan.stacks[0]:
        texts = tuple(note.text(length) for note in plan.notes)
        texts += tuple(_lean_said(one, plan, error) for one in _different(plan.leaning))
        shown = pictures.leaning if plan.how.lean else from_beside
        told.append(Told("Before you cut", (*texts, plan.caution), shown))
    return told


def _above_said(plan: CuttingPlan, stack: StackPlan, length: Length) -> tuple[str, ...]:
    size = " x ".join(map(length, stack.board_size))
    pins = next(one for one in plan.pinning.stacks if one.pile == stack.pile)
    many = len(stack.pile.cuts) > 1
    cuts = [f"Cut {k}: positions" if many else "For positions"
            for k in range(1, len(stack.pile.cuts) + 1)]
    served = tuple(
        f"{name} {ranges(cut.positions)}"
        + (f" of top {cut.top}" if len({c.top for c in stack.pile.cuts}) > 1 else "")
        + (f"; of these {ranges(cut.again)} need a second cut"
           if cut.again and plan.how.key != "machine" else "")
        + (f"; the rims of {ranges(cut.trimmed)} are too long"
           if cut.trimmed and plan.how.key != "machine" else "") + "."
        for name, cut in zip(cuts, stack.pile.cuts)
    )
    return (
        "Seen from the faces of the leaves, grain upright.",
        *served,
        f"{_boards(plan, stack)}: {size}.",
        f"Dots: the two pins, {length(pins.apart)} apart, {length(pins.free)} from the nearest "
        "cut. On the pictures of the steps grey is what is kept, dashed what falls, red the cut "
        "with its direction"
        + (", a crossed ring a screw, a square a clamp." if plan.how.through else "."),
    )


def _boards(plan: CuttingPlan, stack: StackPlan) -> str:
    """What has that size. Boards are sawn up with what lies between them."""
    if not plan.how.board:
        return "Stack" if plan.how.key != "machine" else "Leaf"
    first = stack is plan.stacks[0]
    count = 2 * (len(stack.lifts) + first)
    return f"{count} boards" + (", two of them for the trial" if first else "")


def _beside_said(plan: CuttingPlan, stack: StackPlan, length: Length) -> tuple[str, ...]:
    order = " ".join(map(str, stack.order))
    if plan.how.key == "machine":
        return _singly_said(stack)
    texts = [
        f"From the top down, all faces up: leaves {_runs(stack.order)}.",
        "Leaves that will be turned over are turned after the cut.",
        f"{len(stack.order)} leaves are {length(stack.high)} high"
        + (f", with both boards {length(stack.total)}." if plan.how.board and
           len(stack.lifts) == 1 else "."),
    ]
    if len(order) < 60 and list(stack.order) != sorted(stack.order):
        texts[0] = f"From the top down, all faces up: leaves {order}."
    if stack.pile.spares:
        texts.append(f"Spares among them: {ranges(stack.pile.spares)}.")
    if len(stack.lifts) > 1 and plan.how.most:
        lifts = "; ".join(f"{k}: {ranges(lift)}" for k, lift in enumerate(stack.lifts, start=1))
        texts.append(f"Cut in {len(stack.lifts)} lifts of {length(stack.lift_high)} at most: "
                     f"{lifts}.")
    return tuple(texts)


def _singly_said(stack: StackPlan) -> tuple[str, ...]:
    texts = [f"One leaf at a time on the two pins: leaves {_runs(stack.order)}."]
    turned = turned_said(stack.pile)
    if turned:
        texts.append(
            f"Positions {turned} show their backs: their leaves lie back up, and "
            "their files are mirror images with the pins in their places. All others lie face up."
        )
    if stack.pile.spares:
        texts.append(f"Spares among them: {ranges(stack.pile.spares)}, face up.")
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
        return "The tool stands square: nothing is said of lean."
    said = (
        f"A lean of {number(plan.how.lean)} deg puts the lowest leaf of a lift "
        f"{error(one.lowest)} off its line."
    )
    if one.slide is None:
        return said + " Joints of two such pieces open by up to twice that."
    return (
        f"{said} Alike all along both seams it moves that piece's tip by {error(one.slide)} along "
        "its axis, and the ring still closes. Coming up along every seam it would open or overlap "
        f"the ring by {one.opens:.2f} deg, {error(one.gap)} at the rim, at the most."
    )


# --- steps ----------------------------------------------------------------------------------------


def _step(
    plan: CuttingPlan, alike: Sequence[StackPlan], step: Step, length: Length
) -> Told:
    texts = [_for_all(alike, step).text(length)]
    if step.held:
        texts.append(f"Holds the piece: {step.held}.")
    if step.waste_held:
        texts.append(f"Holds what falls: {step.waste_held}.")
    texts.append(f"Caution: {step.caution}")
    called = step.what.values.get("side") or CALLED[step.kind]
    heading = f"Step {step.number}: {called}"
    if len(plan.stacks) > 1 and step.kind != "test":
        heading = f"Stack{'s' if len(alike) > 1 else ''} {_names(alike, plan)}, {heading.lower()}"
    return Told(heading, tuple(texts), _picture(plan, alike[0], step))


def _for_all(alike: Sequence[StackPlan], step: Step) -> Said:
    """What to do, for all of some stacks: numbers that are not the same in each are listed with
    the stack."""
    if step.kind == "test":
        return step.what
    at = _own(alike[0]).index(step)
    others = [_own(stack)[at].what.values for stack in alike]
    return Said(step.what.template, {
        name: value if all(one[name] == value for one in others) else "as listed"
        for name, value in step.what.values.items()
    })


CALLED = {
    "test": "trial", "mark": "chalk", "prick": "holes", "shorten": "length", "lay": "lay",
    "close": "hold", "part": "part", "free": "take off", "again": "second cut",
    "round": "round the piece", "outline": "own outlines",
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


# --- offcuts --------------------------------------------------------------------------------------


def _offcut_pages(rests: Sequence[LeafRest], look: Look) -> list[Page]:
    if not rests:
        return []
    first = rests[0]

    def draw(drawing: Drawing, box: Box) -> None:
        _leaf_rest(drawing, box, first)

    texts = (
        f"Leaf {first.leaf} as it is left, seen from its face; letters are those of the table.",
        *_shares(rests, look),
        "Sizes are of rectangles along the grain that fit; larger ones may be found by hand. What "
        "an offcut is kept for, and from which size on, is common practice: set your own.",
        "Number every offcut as its leaf: a patch or a strip from the same leaf, or the next, "
        "matches in colour and figure.",
    )
    cell = Told("What is left", texts, draw, 80.0)
    return table_pages(look, "offcuts", "Offcuts", HEADINGS, _rows(rests, look), [cell])


def _shares(rests: Sequence[LeafRest], look: Look) -> list[str]:
    area = look.lengths.area
    used, kerf, left, usable = (
        sum(getattr(r, name) for r in rests) / 1e6 for name in ("cuts", "kerf", "left", "usable")
    )
    return [
        f"Of {area(usable)} of usable area in {len(rests)} leaves, {area(used)} lie in the cuts, "
        f"{area(kerf)} go with the kerf and {area(left)} are left."
    ]


HEADINGS = ("leaves", "offcut", "across x along", "can serve")


def _rows(rests: Sequence[LeafRest], look: Look) -> list[tuple[str, ...]]:
    groups: dict[tuple[object, ...], list[int]] = {}
    for rest in rests:
        kept = sorted((k for one in rest.offcuts for k in one.kept),
                      key=lambda k: -k.size[0] * k.size[1])
        key = tuple(((int(k.size[0]), int(k.size[1])), k.uses) for k in kept)
        groups.setdefault(key, []).append(rest.leaf)
    rows: list[tuple[str, ...]] = []
    for kept, leaves in groups.items():
        if not kept:
            rows.append((ranges(leaves), "-", "-", "nothing large enough"))
        for k, (size, uses) in enumerate(kept):
            rows.append((ranges(leaves) if k == 0 else "", _letter(k),
                         look.lengths.size(*map(float, size)), ", ".join(uses)))
    return rows


def _leaf_rest(drawing: Drawing, box: Box, rest: LeafRest) -> None:
    areas = [one.area for one in rest.offcuts]
    if not areas:
        return
    bounds = [f(v) for f, v in zip((min, min, max, max), zip(*(a.bounds for a in areas)))]
    view = pictures.View.of(bounds, box.inset(3.0))
    for area in areas:
        view.area(drawing, area, MEDIUM, pictures.WOOD)
    kept = sorted((k for one in rest.offcuts for k in one.kept),
                  key=lambda k: -k.size[0] * k.size[1])
    for k, one in enumerate(kept):
        view.area(drawing, rectangle(*one.rectangle), THIN, "", DASHED)
        x, y = view.point(((one.rectangle[0] + one.rectangle[2]) / 2.0,
                           (one.rectangle[1] + one.rectangle[3]) / 2.0))
        if one.size[0] * view.factor > 2.6 and one.size[1] * view.factor > 3.6:
            drawing.text((x, y - SMALL / 2.0), _letter(k))


def _letter(k: int) -> str:
    letters = "abcdefghijklmnopqrstuvwxyz"
    return letters[k] if k < len(letters) else f"{letters[k % 26]}{k // 26}"
