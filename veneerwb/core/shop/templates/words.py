# SPDX-License-Identifier: LGPL-2.1-or-later
"""What stands on a template, in words: each is a figure or a fact that the template holds."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.shop.drawing.lengths import INCH, Lengths
from veneerwb.core.shop.drawing.lettering import clean, degrees, runs
from veneerwb.core.shop.setout import STEP
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.template import BACK, SINGLE, STACK, Template
from veneerwb.words import figure, marked, say, word

CHECK = marked(
    "Check the scale before use: both bars measure 100 mm (3.937 in). Fit to page shrinks a sheet."
)
BAR = 100.0
"""mm: the length of the bars by which a print or a machine is checked."""
_FEW = 12
DRY = marked("Dry-lay before glue.")
CAUTION = marked(
    "Clamp the work, cut away from the hand and keep out of the blade's line; dust is caught "
    "where it is made. Local codes and the makers' sheets come first."
)


def heading(template: Template) -> str:
    """The template, the layout and its revision, for every page and label."""
    return f"{template.shown} - {called(template)}"


def called(template: Template) -> str:
    """The layout's name and its revision mark."""
    return say("{name}, revision {revision}", name=clean(template.name), revision=template.revision)


def side_up(template: Template) -> str:
    """The side up in two words, for labels."""
    return word("BACK UP") if template.up == BACK else word("FACE UP")


def said(template: Template, lengths: Lengths) -> list[str]:
    """All sentences, the most needed first; the heading is not among them."""
    found = [_lay(template), _serves(template), *_overs(template, lengths)]
    found.append(_tool(template, lengths))
    found.append(_set_out(template, lengths))
    found += [word(CHECK), word(DRY), template.rests, word(CAUTION)]
    return [clean(sentence) for sentence in found if sentence]


def _lay(template: Template) -> str:
    if template.up == BACK:
        said = [word("Mirror image: lay it on the BACK of the leaf, this side up (a turned piece "
                     "shows its back).")]  # fmt: skip
    elif template.kind == STACK:
        said = [word("Lay it on the stack with the leaves' FACES up, this side up.")]
    else:
        said = [word("Lay it on the FACE of the leaf, this side up.")]
    if template.pins:
        said.append(word("Its pin holes are the leaf's: set it, or the tool, by them."))
    if template.tip:
        said.append(word("The end marked TIP goes to the middle of the top."))
    said.append(
        word("The grain runs along the arrow, which points to the leaf's upper end.")
    )
    return " ".join(said)


def _serves(template: Template) -> str:
    """Which positions it serves, from which leaves: each by name where there are few."""
    places, leaves = template.positions, template.leaves
    many = len(places) > 1
    values: dict[str, object] = {"places": runs(places), "leaves": runs(leaves)}
    if places == leaves:
        text = say(SAME_MANY if many else SAME_ONE, **values)
    elif len(places) <= _FEW:
        text = say(EACH_MANY if many else EACH_ONE, pairs=", ".join(
            say("{place} (leaf {leaf})", place=place, leaf=leaf)
            for place, leaf in zip(places, leaves)
        ))  # fmt: skip
    else:
        text = say(
            "Positions {places}, leaves {leaves}; the cut list has which is which.", **values
        )
    if template.turned and template.kind != SINGLE:
        which = _which(template.turned, places)
        return f"{text} {say('Turned over when laid: {which}.', which=which)}"
    return text


SAME_ONE = marked("Position {places}, from the leaf of the same number.")
SAME_MANY = marked("Positions {places}, from the leaves of the same numbers.")
EACH_ONE = marked("Position {pairs}.")
EACH_MANY = marked("Positions {pairs}.")


def _which(some: Sequence[int], of: Sequence[int]) -> str:
    """Which numbers of several, in as few words as will do."""
    for said, rest in ((marked("the odd ones"), 1), (marked("the even ones"), 0)):
        if sorted(some) == sorted(n for n in of if n % 2 == rest):
            return word(said) if len(some) > 2 else runs(some)
    return word("all") if sorted(some) == sorted(of) else runs(some)


def _overs(template: Template, lengths: Lengths) -> list[str]:
    found = []
    if template.overs:
        found.append(_seams(template, lengths))
    if template.oversize:
        found.append(say(
            "The rim is cut {lengths} over.",
            lengths=_long(lengths, template.oversize),
        ))
    return found


def _seams(template: Template, lengths: Lengths) -> str:
    overs = template.overs
    if all(over.exact for over in overs):
        return word("The seam edges are cut exactly.")
    if len(set(overs)) > 1:
        each = ", ".join(_over(over, lengths) for over in overs)
        return say("The seam edges are cut over, counter-clockwise: {each}.", each=each)
    if overs[0].angle and template.cut_angle is not None:
        return say(
            "The seam edges are cut {angle} over in all: the tip has {cut_angle} for {angle_2}. "
            "True the halves.",
            angle=degrees(overs[0].angle), cut_angle=degrees(template.cut_angle),
            angle_2=degrees(template.angle),
        )
    over = _long(lengths, overs[0].width)
    if template.shift:
        return say(
            "The seam edges are cut {over} over, parallel: the tip lies {shift} further out.",
            over=over, shift=_long(lengths, template.shift),
        )
    return say("The seam edges are cut {over} over, parallel.", over=over)


def _over(over: Over, lengths: Lengths) -> str:
    if over.exact:
        return word("exactly")
    return degrees(over.angle / 2.0) if over.angle else _long(lengths, over.width)


def _tool(template: Template, lengths: Lengths) -> str:
    if template.tool:
        return say(
            "Cut outside the line: going round counter-clockwise as seen here, the tool is on its "
            "right, its middle {half} off, on the line for the tool.",
            half=_fine(lengths, template.tool / 2.0),
        )
    return word(
        "Cut outside the line: going round counter-clockwise as seen here, the tool is on its "
        "right."
    )


def _set_out(template: Template, lengths: Lengths) -> str:
    """Inches as decimals too, for an offset that is good to a 32nd is not good enough here."""
    out = template.set_out(10.0 * INCH if lengths.unit == "inch" else STEP)
    if out is None:
        return ""
    values = {
        "angle": degrees(out.angle), "base": _fine(lengths, out.base),
        "offset": _fine(lengths, out.offset),
    }  # fmt: skip
    if template.shift:
        return say(
            "Set out {angle} by hand: along its middle {base} from the tip as cut, then {offset} "
            "square to each side. Make a test cut.", **values,
        )  # fmt: skip
    return say(
        "Set out {angle} by hand: along its middle {base} from the tip, then {offset} square to "
        "each side. Make a test cut.", **values,
    )  # fmt: skip


def _long(lengths: Lengths, mm: float) -> str:
    """A length with its unit."""
    plain, inches = f"{figure(mm, '.1f')} mm", f"{lengths.inches(mm)} in"
    return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[lengths.unit]


def _fine(lengths: Lengths, mm: float) -> str:
    """A length to 0.01 mm or 0.001 in."""
    plain, inches = f"{figure(round(mm, 2))} mm", f"{figure(mm / INCH)} in"
    return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[lengths.unit]
