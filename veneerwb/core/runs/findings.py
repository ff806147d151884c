# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is to be said of a run: its leaves, its gaps, where two bundles meet, and what the checks of
its panels find. The `pieces` of these findings are numbers of panels."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from veneerwb.core.checks import check
from veneerwb.core.checks.finding import LEVELS, Finding
from veneerwb.core.layout import Layout, Piece, Seam
from veneerwb.core.matches.rows import LEAST_STRIP
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import TOUCH, whole
from veneerwb.core.runs.run import LaidRun
from veneerwb.words import marked, say, word

RUN_SAYS = ("leaves-used", "spares-missing", "inner-piece")
"""What of a panel's own findings is said of the run as a whole, or says nothing of a part of it."""


def run_findings(laid: LaidRun, margin: float = 0.0, spares: int = 0) -> list[Finding]:
    """All findings on a run, the gravest first.

    margin: mm to keep between every blank and the edge of its leaf's usable area.
    spares: unused leaves that should be left over.
    """
    spares = whole("number of spare leaves", spares, 0, 1000)
    found = [
        *_count(laid, spares),
        *_where_bundles_meet(laid),
        *_gaps(laid),
        *_slivers(laid),
        *_of_panels(laid, margin),
    ]
    return sorted(found, key=lambda finding: LEVELS.index(finding.level))


def _count(laid: LaidRun, spares: int) -> Iterator[Finding]:
    left = sorted(set(laid.bundle.numbers) - set(laid.leaves))
    values = {
        "panels": len(laid.panels),
        "used": len(laid.leaves),
        "each": len(laid.each[0]),
        "left": len(left),
        "leaves_left": tuple(left),
        "spares": spares,
        "missing": spares - len(left),
    }
    each = "one" if len(laid.panels) == 1 else "field" if laid.field else "each"
    if len(left) < spares:
        remedy = marked("Take fewer panels, or a bundle with {missing} more.")
        yield Finding("spares-missing", "warn", _MISSING[each], remedy, values)
    else:
        yield Finding("leaves-used", "note", _USED[each], "", values)


_MISSING = {
    "one": marked(
        "The panel takes {used} leaves, which leaves {left} spare where {spares} are asked for."
    ),
    "field": marked(
        "The {panels} panels take {used} leaves, which leaves {left} spare where {spares} are "
        "asked for."
    ),
    "each": marked(
        "The {panels} panels take {used} leaves, {each} each, which leaves {left} spare where "
        "{spares} are asked for."
    ),
}
_USED = {
    "one": marked("The panel takes {used} leaves; {left} stay over."),
    "field": marked("The {panels} panels take {used} leaves; {left} stay over."),
    "each": marked("The {panels} panels take {used} leaves, {each} each; {left} stay over."),
}
"""What is said of one panel, of several that share a field, and of those with leaves of their
own."""


# --- where two bundles meet --------------------------------------------------------------------


def _where_bundles_meet(laid: LaidRun) -> Iterator[Finding]:
    """At seams of panels; or else between two panels, if both bundles are used."""
    joint = getattr(laid.bundle, "joint", None)
    if joint is None:
        return
    values = {"before": joint[0], "after": joint[1], "missing": joint[1] - joint[0] - 1}
    one = values["missing"] == 1
    met = [
        (panel, seams)
        for panel, layout in zip(laid.panels, laid.layouts)
        if (seams := bundle_seams(layout))
    ]
    for panel, seams in met:
        words = ", ".join(say("{a} and {b}", a=seam.a, b=seam.b) for seam in seams)
        told = marked(
            "On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf "
            "{after} the second's first), at the seam of positions {seams}, counted as {missing} "
            "missing leaves: a step of {step} surfaces."
        )
        if one:
            told = marked(
                "On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf "
                "{after} the second's first), at the seam of positions {seams}, counted as "
                "{missing} missing leaf: a step of {step} surfaces."
            )
        remedy = marked("Begin at another leaf to have them meet between two panels.")
        yield Finding(
            "bundle-joint",
            "warn",
            told,
            remedy if laid.field is None else "",
            {**values, "panel": panel.number, "seams": words, "step": max(s.step for s in seams)},
            (panel.number,),
        )
    if not met:
        yield from _between_panels(laid, joint, values, one)


def bundle_seams(layout: Layout) -> list[Seam]:
    """The seams of a layout where a leaf of the first bundle meets one of the second; none where
    there is but one bundle."""
    joint = getattr(layout.bundle, "joint", None)
    if joint is None:
        return []
    of_first = {piece.position: piece.leaf <= joint[0] for piece in layout.pieces}
    return [seam for seam in layout.seams if of_first[seam.a] != of_first[seam.b]]


def _between_panels(
    laid: LaidRun, joint: tuple[int, int], values: Mapping[str, Any], one: bool
) -> Iterator[Finding]:
    used = [{piece.leaf for piece in layout.pieces} for layout in laid.layouts]
    first = [p.number for p, leaves in zip(laid.panels, used) if min(leaves) <= joint[0]]
    second = [p.number for p, leaves in zip(laid.panels, used) if max(leaves) > joint[0]]
    if first and second:
        told = marked(
            "The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the first "
            "(up to leaf {before}), counted as {missing} missing leaves."
        )
        if one:
            told = marked(
                "The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the "
                "first (up to leaf {before}), counted as {missing} missing leaf."
            )
        yield Finding(
            "bundle-joint",
            "warn",
            told,
            "",
            {**values, "a": first[-1], "b": second[0]},
            (first[-1], second[0]),
        )


# --- a field and its gaps ----------------------------------------------------------------------


def _gaps(laid: LaidRun) -> Iterator[Finding]:
    if laid.field is None:
        return
    used = {piece.leaf for layout in laid.layouts for piece in layout.pieces}
    lost = tuple(sorted(set(laid.leaves) - used))
    widest = max(laid.field.gaps, default=0.0)
    values = {"leaves": lost, "gap": round(widest, 3), "gaps": len(laid.field.gaps)}
    through = laid.run.gaps == "laid through"
    if lost:
        told = marked(
            "Nothing of leaves {leaves} comes onto a panel: they would lie wholly beside the "
            "panels."
        )
        if through and widest:
            told = marked(
                "Nothing of leaves {leaves} comes onto a panel: they would lie wholly in a gap "
                "(the widest is {gap} mm) or beside the panels."
            )
        remedy = marked("Make a run of its own of what lies apart.")
        if through:
            remedy = marked("Close the gaps, or make a run of its own of what lies beyond.")
        yield Finding("gap-wider-than-leaf", "warn", told, remedy, values)
    if through and widest:
        yield Finding(
            "gaps-laid-through",
            "note",
            "The figure behind the gaps ({gaps}, up to {gap} mm wide) is lost.",
            "",
            values,
        )
    elif not through and _is_open(laid):
        yield Finding(
            "gap-stays",
            "note",
            "Gaps that do not run right through the run cannot be closed; the figure in them is "
            "lost.",
        )


def _is_open(laid: LaidRun) -> bool:
    """Whether the panels leave something of the field uncovered, their own roundings apart."""
    covered = sum(wide * high for wide, high in (panel.size for panel in laid.panels))
    return laid.field.width * laid.field.height - covered > 1e-6 * covered


def _slivers(laid: LaidRun) -> Iterator[Finding]:
    """Of a blueprint: a panel's edge may leave little of a strip."""
    grain = getattr(laid.run.recipe, "grain", None)
    if laid.field is None or grain is None:
        return
    narrow = [
        (width, panel.number, piece.position)
        for panel, layout in zip(laid.panels, laid.layouts)
        for piece in layout.pieces
        if (width := _width(piece, grain)) < LEAST_STRIP - TOUCH
    ]
    if narrow:
        width, panel, position = min(narrow)
        yield Finding(
            "sliver",
            "warn",
            "Pieces of panels {panels} are slivers under {least} mm; the narrowest, position {a} "
            "of panel {b}, is {width} mm wide.",
            "Take another number of leaves or width of strip.",
            {
                "panels": (found := tuple(sorted({number for _, number, _ in narrow}))),
                "least": LEAST_STRIP,
                "a": position,
                "b": panel,
                "width": round(width, 3),
            },
            found,
        )


def _width(piece: Piece, grain: float) -> float:
    low, high = edges.extent(piece.edge, grain - 90.0)
    return high - low


# --- what the checks of the panels find --------------------------------------------------------


def _of_panels(laid: LaidRun, margin: float) -> Iterator[Finding]:
    """Those that differ in their leaves at most once, with the panels that they speak of; notes
    only where they hold for all."""
    told: dict[str, list[tuple[int, Finding]]] = {}
    for panel, layout in zip(laid.panels, laid.layouts):
        for finding in check(layout, margin):
            if finding.code not in RUN_SAYS:
                told.setdefault(_apart_from_leaves(finding), []).append((panel.number, finding))
    for alike in told.values():
        numbers = tuple(number for number, _ in alike)
        finding = alike[0][1]
        if finding.level != "note" or len(numbers) == len(laid.panels):
            leaves = {n for _, one in alike for n in one.values.get("leaves", ())}
            yield _on_panels(finding, numbers, tuple(sorted(leaves)))


def _apart_from_leaves(finding: Finding) -> str:
    """What a finding says, whichever leaves it is of."""
    values = {name: value for name, value in finding.values.items() if name != "leaves"}
    return str(replace(finding, values={**values, "leaves": ()}))


def _on_panels(finding: Finding, numbers: tuple[int, ...], leaves: tuple[int, ...]) -> Finding:
    words = word("Panel {panels}:") if len(numbers) == 1 else word("Panels {panels}:")
    return replace(
        finding,
        template=f"{words} {word(finding.template)}",
        values={**finding.values, "panels": numbers, **({"leaves": leaves} if leaves else {})},
        pieces=numbers,
    )
