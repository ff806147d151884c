# SPDX-License-Identifier: LGPL-2.1-or-later
"""What stands on a template, in words: each is a figure or a fact that the template holds."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.shop.lengths import INCH, Lengths
from veneerwb.core.shop.lettering import clean, degrees, runs
from veneerwb.core.shop.setout import STEP
from veneerwb.core.shop.template import BACK, SINGLE, STACK, Template
from veneerwb.core.shop.template_over import Over

CHECK = (
    "Check the scale before use: both bars measure 100 mm (3.937 in). Fit to page shrinks a sheet."
)
BAR = 100.0
"""mm: the length of the bars by which a print or a machine is checked."""
_FEW = 12
DRY = "Dry-lay before glue."
CAUTION = (
    "Clamp the work, cut away from the hand and keep out of the blade's line; dust is caught where "
    "it is made. Local codes and the makers' sheets come first."
)


def heading(template: Template) -> str:
    """The template, the layout and its revision, for every page and label."""
    return f"{template.title} - {called(template)}"


def called(template: Template) -> str:
    """The layout's name and its revision mark."""
    return f"{clean(template.name)}, revision {template.revision}"


def side_up(template: Template) -> str:
    """The side up in two words, for labels."""
    return "BACK UP" if template.up == BACK else "FACE UP"


def said(template: Template, lengths: Lengths) -> list[str]:
    """All sentences, the most needed first; the heading is not among them."""
    found = [_lay(template), _serves(template), *_overs(template, lengths)]
    found.append(_tool(template, lengths))
    found.append(_set_out(template, lengths))
    found += [CHECK, DRY, template.rests, CAUTION]
    return [clean(sentence) for sentence in found if sentence]


def _lay(template: Template) -> str:
    end = "The end marked TIP goes to the middle of the top. " if template.tip else ""
    grain = "The grain runs along the arrow, which points to the leaf's upper end."
    if template.up == BACK:
        seen = "Mirror image: lay it on the BACK of the leaf, this side up (a turned piece shows " \
               "its back)."
    elif template.kind == STACK:
        seen = "Lay it on the stack with the leaves' FACES up, this side up."
    else:
        seen = "Lay it on the FACE of the leaf, this side up."
    pins = "Its pin holes are the leaf's: set it, or the tool, by them. " if template.pins else ""
    return f"{seen} {pins}{end}{grain}"


def _serves(template: Template) -> str:
    """Which positions it serves, from which leaves: each by name where there are few."""
    places, leaves = template.positions, template.leaves
    many = "s" if len(places) > 1 else ""
    if places == leaves:
        own = "the leaves of the same numbers" if many else "the leaf of the same number"
        text = f"Position{many} {runs(places)}, from {own}."
    elif len(places) <= _FEW:
        pairs = ", ".join(f"{place} (leaf {leaf})" for place, leaf in zip(places, leaves))
        text = f"Position{many} {pairs}."
    else:
        text = f"Positions {runs(places)}, leaves {runs(leaves)}; the cut list has which is which."
    if template.turned and template.kind != SINGLE:
        text += f" Turned over when laid: {_which(template.turned, places)}."
    return text


def _which(some: Sequence[int], of: Sequence[int]) -> str:
    """Which numbers of several, in as few words as will do."""
    for word, rest in (("the odd ones", 1), ("the even ones", 0)):
        if sorted(some) == sorted(n for n in of if n % 2 == rest):
            return word if len(some) > 2 else runs(some)
    return "all" if sorted(some) == sorted(of) else runs(some)


def _overs(template: Template, lengths: Lengths) -> list[str]:
    found = []
    if template.overs:
        found.append(_seams(template, lengths))
    if template.oversize:
        found.append(f"The rim is cut {_long(lengths, template.oversize)} over.")
    return found


def _seams(template: Template, lengths: Lengths) -> str:
    overs = template.overs
    if all(over.exact for over in overs):
        return "The seam edges are cut exactly."
    if len(set(overs)) > 1:
        each = ", ".join(_over(over, lengths) for over in overs)
        return f"The seam edges are cut over, counter-clockwise: {each}."
    if overs[0].angle and template.cut_angle is not None:
        return (
            f"The seam edges are cut {degrees(overs[0].angle)} over in all: the tip has "
            f"{degrees(template.cut_angle)} for {degrees(template.angle)}. True the halves."
        )
    text = f"The seam edges are cut {_long(lengths, overs[0].width)} over, parallel"
    if template.shift:
        text += f": the tip lies {_long(lengths, template.shift)} further out"
    return text + "."


def _over(over: Over, lengths: Lengths) -> str:
    if over.exact:
        return "exactly"
    return degrees(over.angle / 2.0) if over.angle else _long(lengths, over.width)


def _tool(template: Template, lengths: Lengths) -> str:
    text = "Cut outside the line: going round counter-clockwise as seen here, the tool is on its " \
           "right"
    if template.tool:
        half = _fine(lengths, template.tool / 2.0)
        return f"{text}, its middle {half} off, on the line for the tool."
    return text + "."


def _set_out(template: Template, lengths: Lengths) -> str:
    """Inches as decimals too, for an offset that is good to a 32nd is not good enough here."""
    out = template.set_out(10.0 * INCH if lengths.unit == "inch" else STEP)
    if out is None:
        return ""
    place = "the tip as cut" if template.shift else "the tip"
    return (
        f"Set out {degrees(out.angle)} by hand: along its middle {_fine(lengths, out.base)} from "
        f"{place}, then {_fine(lengths, out.offset)} square to each side. Make a test cut."
    )


def _long(lengths: Lengths, mm: float) -> str:
    """A length with its unit."""
    plain, inches = f"{mm:.1f} mm", f"{lengths.inches(mm)} in"
    return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[lengths.unit]


def _fine(lengths: Lengths, mm: float) -> str:
    """A length to 0.01 mm or 0.001 in."""
    plain, inches = (f"{v:.{n}f}".rstrip("0").rstrip(".") + unit
                     for v, n, unit in ((mm, 2, " mm"), (mm / INCH, 3, " in")))
    return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[lengths.unit]
