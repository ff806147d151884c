# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ways of cutting in words: what each takes and what it costs."""

from __future__ import annotations

from typing import Any

import FreeCAD

from veneerwb.core.leaf import ranges
from veneerwb.gui.panels import fields
from veneerwb.words import figure

translate = FreeCAD.Qt.translate
HERE = "VeneerCuts"


def name_of(how: str) -> str:
    """What a way of cutting, one of the core's CUTS, is called."""
    return {
        "stack": translate(HERE, "One stack"),
        "shape": translate(HERE, "Lots by shape"),
        "own": translate(HERE, "Single pieces"),
    }[how]


def in_short(ways: Any) -> str:
    """Those that take different areas, one a line."""
    said = {
        "stack": translate(HERE, "One stack: {lots}, {share} % used"),
        "shape": translate(HERE, "By shape: {lots}, {share} % used"),
    }
    return "\n".join(
        said[way.how].format(lots=_set_outs(way), share=round(100.0 * way.used))
        for way in ways
        if way.how in said
    )


def alike() -> str:
    """What is said where there is nothing to choose."""
    return translate(HERE, "All pieces are alike: one stack serves them.")


def _set_outs(way: Any) -> str:
    """How often an outline is set out on leaves."""
    count = len(way.lots)
    if count == 1:
        return translate(HERE, "1 set-out")
    return translate(HERE, "{count} set-outs").format(count=count)


def leaves(count: int) -> str:
    if count == 1:
        return translate(HERE, "1 leaf")
    return translate(HERE, "{count} leaves").format(count=count)


def more(count: int) -> str:
    return translate(HERE, "and {count} more").format(count=count)


def in_full(way: Any) -> str:
    """What one takes, what it costs, and whether it lies on its leaves."""
    said = (_lots(way), _area(way), _lies(way), _cost(way))
    return "\n".join(f"\N{BULLET} {one}" for one in said)


def _lots(way: Any) -> str:
    fewest, most = min(way.leaves), max(way.leaves)
    each = leaves(most)
    if fewest != most:
        each = translate(HERE, "{fewest} to {most} leaves").format(fewest=fewest, most=most)
    text = translate(HERE, "{count} lots of {each}, each {once}; cuts along seams: {strokes}.")
    if len(way.lots) == 1:
        text = translate(HERE, "1 lot of {each}, {once}; cuts along seams: {strokes}.")
    once = translate(HERE, "set out once")
    return text.format(count=len(way.lots), each=each, once=once, strokes=way.strokes)


def _area(way: Any) -> str:
    return translate(
        HERE, "{area} m2 are cut out, {taken} % of these leaves; the pieces need {net} m2, {used} "
        "% of that."
    ).format(
        area=_m2(way.area), taken=round(100.0 * way.taken), net=_m2(way.net),
        used=round(100.0 * way.used),
    )  # fmt: skip


def _m2(mm2: float) -> str:
    return figure(mm2 / 1e6, ".3f")


def _lies(way: Any) -> str:
    if way.fits:
        return translate(HERE, "Every outline lies on its leaves.")
    return translate(HERE, "Reaches up to {over} off the usable area of leaves {numbers}.").format(
        over=fields.length(max(way.over.values())), numbers=ranges(list(way.over))
    )


def _cost(way: Any) -> str:
    said = {
        "stack": translate(
            HERE, "Quickest: one template, one cut through all. What a piece needs less is trimmed "
            "off and lost."
        ),
        "shape": translate(
            HERE, "Least leaf, but set out anew for each lot. Mirror images share a lot where one "
            "of them is turned over."
        ),
        "own": translate(
            HERE, "As little leaf as by shape, and the most work. Leaves need not lie on each "
            "other, and each piece can be fitted."
        ),
    }[way.how]  # fmt: skip
    within = sum(lot.within for lot in way.lots)
    if within:
        said += " " + translate(
            HERE, "{count} seams lie within the outline and are cut piece by piece."
        ).format(count=within)
    return said
