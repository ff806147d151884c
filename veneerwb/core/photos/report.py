# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said of a batch of photographs that was made into leaves."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from veneerwb.core.listing import few
from veneerwb.core.photos.evening import Evening
from veneerwb.words import figure, filled, in_unit, say, word


def batch_report(photos: Sequence[Any], light: str) -> str:
    """The report on photographs (see preparing.Prepared), a sentence a line; `light` as a
    Preparation has it."""
    lines = [_scales(photos)]
    trusts = [(one.trust, one.name) for one in photos if one.trust is not None]
    if trusts:
        worst, name = max(trusts)
        lines.append(say(
            "A click one pixel off moves a corner by at most {worst} ({photo}).",
            worst=in_unit(worst, 2), photo=name,
        ))
    lines += light_report([one.evening for one in photos if one.evening is not None], light)
    return "\n".join([*lines, *_notes(photos)])


def said_of(each: Sequence[tuple[str, str]]) -> tuple[str, ...]:
    """What is said of photographs, (name, sentence), as lines: what is said alike, once."""
    names: dict[str, list[str]] = {}
    for name, said in each:
        names.setdefault(said.removeprefix(f"{name}: "), []).append(name)
    return tuple(
        said if len(of) == 1 and of[0] in said else f"{few(of)}: {said}"
        for said, of in names.items()
    )


def _notes(photos: Sequence[Any]) -> list[str]:
    """What is said of each photograph; of all alike, once."""
    every = [one.notes for one in photos]
    alike = [note for note in every[0] if len(every) > 1 and all(note in one for one in every)]
    return [say("All photographs: {note}", note=note) for note in alike] + [
        _named(one.name, note) for one in photos for note in one.notes if note not in alike
    ]


def _named(name: str, note: str) -> str:
    return note if name in note else f"{name}: {note}"


def _scales(photos: Sequence[Any]) -> str:
    template = word(
        "{count} photographs at {original} mm per pixel; working copies at {copies} mm per pixel."
    )
    if len(photos) == 1:
        template = word(
            "{count} photograph at {original} mm per pixel; working copies at {copies} mm per "
            "pixel."
        )
    return filled(template, {
        "count": len(photos), "original": _span([one.original_mm_per_px for one in photos]),
        "copies": _span([one.mm_per_px for one in photos]),
    })


def light_report(even: Sequence[Evening], light: str) -> list[str]:
    """What was done to the light of photographs, in sentences; `light` as a Preparation has it."""
    if not even:
        return [say("The light is as photographed.")]
    gains = np.array([one.gains for one in even])
    lines = [say(
        "Light evened from the {light}, as measured on these photographs: gains from {least} to "
        "{most}; the photographs themselves are unchanged.",
        light=word(light), least=round(float(gains.min()), 2), most=round(float(gains.max()), 2),
    )]
    burnt = sorted(((max(e.burnt), e.name) for e in even if max(e.burnt) >= 0.001), reverse=True)
    if burnt:
        lost = few([f"{name} {figure(round(100 * s, 1))} %" for s, name in burnt])
        lines.append(say("Too bright when photographed, and lost: {lost}.", lost=lost))
    return lines


def _span(values: Sequence[float]) -> str:
    least, most = (figure(float(f"{v:.3g}")) for v in (min(values), max(values)))
    return least if least == most else say("{least} to {most}", least=least, most=most)
