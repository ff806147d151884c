# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the panel says of the photographs that were chosen: how many leaves, how large they are."""

from __future__ import annotations

from pathlib import Path

import FreeCAD

from veneerwb.core.photos.squaring import scale_between
from veneerwb.gui.leaves.plan import WANTED, Plan, counted
from veneerwb.host.photos import shape_of, shows_background

translate = FreeCAD.Qt.translate
HERE = "VeneerLeavesPanel"


def summary(faces: dict[int, Path], backs: dict[int, Path], plan: Plan) -> str:
    """What is in the folder, and what its photographs measure. Raises VeneerError for a scale that
    cannot be."""
    numbers = list(faces)
    if len(numbers) == 1:
        text = translate(HERE, "One photograph, leaf {first}.")
    else:
        text = translate(HERE, "{count} photographs, leaves {first} to {last}.")
    text = text.format(count=len(numbers), first=numbers[0], last=numbers[-1])
    missing = numbers[-1] - numbers[0] + 1 - len(numbers)
    if missing:
        text += " " + translate(HERE, "{count} in between are missing.").format(count=missing)
    if counted(faces):
        text += " " + translate(
            HERE, "Counted in the order of their names, which hold no leaf numbers."
        )
    if backs:
        text += " " + translate(HERE, "Backs: {count}.").format(count=len(backs))
    text = f"{text} {_clicks(plan, [*faces.values(), *backs.values()])}".rstrip()
    if plan.leaf == "whole" and shows_background(next(iter(faces.values()))):
        text += " " + translate(
            HERE, "Background shows round the leaf: choose Found on the page Prepare."
        )
    return text


def _clicks(plan: Plan, paths: list[Path]) -> str:
    """How many clicks are still wanted, and what the first photograph measures."""
    if plan.scale not in WANTED:
        return _size(plan, paths[0])
    lacking = len(plan.missing(paths))
    if lacking and not plan.each:
        return translate(HERE, "One is still to be clicked on.")
    if lacking:
        return translate(HERE, "Still to be clicked on: {count}.").format(count=lacking)
    text = translate(HERE, "All are clicked on.")
    return text if plan.scale not in ("points", "two marks") else f"{text} {_size(plan, paths[0])}"


def _size(plan: Plan, first: Path) -> str:
    """What the first photograph measures, as it will stand."""
    shape = shape_of(first)
    if plan.scale in WANTED:
        scale = scale_between(*plan.clicked(first), plan.known, shape)
    else:
        scale = plan.mm_per_px(shape)
    rows, columns = shape if plan.turn % 180 == 0 else shape[::-1]
    width, length = (
        FreeCAD.Units.Quantity(pixels * scale, FreeCAD.Units.Length).UserString
        for pixels in (columns, rows)
    )
    return translate(HERE, "The first is {width} across, {length} along.").format(
        width=width, length=length
    )
