# SPDX-License-Identifier: LGPL-2.1-or-later
"""How leaves lie by a photograph, in words: confirmed, contradicted, or not to be told.

Between where a leaf's material should lie and where it does, right is x, up is y along the grain,
and turns run counter-clockwise, seen from the face.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.checks.finding import LEVELS, Finding
from veneerwb.core.listing import all_of, put_in
from veneerwb.core.targets.measuring import NEAREST, frame
from veneerwb.words import word

ASTRAY = 20.0
"""mm: a leaf that seems further off is another leaf, or its marks have other letters."""
SAID = 0.05
"""mm, and degrees: what is less is not said."""


@dataclass(frozen=True)
class Compared:
    """Where a leaf's material should lie and where it does (`known`, `lies`; bundle mm), how badly
    its own marks fit, what their and the clicks' errors leave unsure, and what parallax was set
    right (mm)."""

    leaf: int
    known: np.ndarray
    lies: np.ndarray
    misfit: float
    unsure: float
    parallax: float


def tells_turn(known: np.ndarray, lies: np.ndarray) -> bool:
    """Whether places lie as far apart as `frame` asks, so that a turn can be told by them."""
    return min(np.ptp(places, axis=0).max() for places in (known, lies)) >= NEAREST


@dataclass(frozen=True)
class Judge:
    """Confirms up to `tolerance` mm and `turn` degrees. `squared`: the photograph was."""

    tolerance: float
    turn: float
    squared: bool

    def told(self, found: Compared) -> Finding:
        """Of a leaf by what is known of how it should lie."""
        values = self._values(found)
        if values["unsure"] > self.tolerance:
            return _not_told(values)
        if self._agrees(values):
            return Finding(
                "register-confirmed", "note",
                "Leaf {leaf} lies where its register has it, to {off} mm and {turn} deg, which the "
                "photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm it.",
                "", values,
            )
        told = word("Leaf {leaf} lies {off} mm off its register.")
        if way := _way(values):
            told = put_in(word("Leaf {leaf} lies {off} mm off its register: {way}."), way=way)
        return Finding(
            "register-contradicted", "stop", word(told), word(self._remedy(values)), values
        )

    def of_many(self, found: list[Compared]) -> list[Finding]:
        """Of leaves by each other: those that most of them contradict lie wrong."""
        findings = [self.told(one) for one in found]
        agree = sum(one.code == "register-confirmed" for one in findings)
        if 2 * agree > len(findings):
            return findings
        return [one if one.code != "register-contradicted" else self._disagree(one.values)
                for one in findings]

    def of_two(self, base: Compared, other: Compared) -> Finding:
        """Of two leaves, which contradict each other or do not."""
        values = self._values(other) | {"other": base.leaf}
        values["unsure"] = round(max(other.unsure, other.misfit, base.misfit), 2)
        if values["unsure"] > self.tolerance:
            return _not_told(values)
        if self._agrees(values):
            return Finding(
                "register-confirmed", "note",
                "Leaves {other} and {leaf} lie on each other as their registers have it, to {off} "
                "mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} "
                "mm and {most} deg confirm them.", "", values,
            )
        told = word(
            "Leaf {leaf} lies {off} mm off where it belongs on leaf {other}; two leaves do not "
            "tell which of them lies wrong."
        )
        if way := _way(values):
            told = put_in(word(
                "Leaf {leaf} lies {off} mm off where it belongs on leaf {other}: {way}; two leaves "
                "do not tell which of them lies wrong."
            ), way=way)
        return Finding(
            "leaves-disagree", "stop", word(told),
            "Do not cut. Click marks of a third leaf, or of one leaf with its pins.", values,
        )

    def _disagree(self, values: dict[str, Any]) -> Finding:
        told = word(
            "Leaf {leaf} lies {off} mm off where all marks together have it; too few leaves agree "
            "to tell which lie wrong."
        )
        if way := _way(values):
            told = put_in(word(
                "Leaf {leaf} lies {off} mm off where all marks together have it: {way}; too few "
                "leaves agree to tell which lie wrong."
            ), way=way)
        return Finding(
            "leaves-disagree", "stop", word(told),
            "Do not cut. See that each mark has its own leaf and letter; then click marks of more "
            "leaves, or of one leaf with its pins.", values,
        )

    def _values(self, found: Compared) -> dict[str, Any]:
        off = found.lies - found.known
        angle = blurred = 0.0
        apart = float(np.linalg.norm(found.known - found.known[0], axis=1).max())
        unsure = max(found.unsure, found.misfit)
        if tells_turn(found.known, found.lies):
            angle = frame(found.known, found.lies).motion.angle
            blurred = math.degrees(math.sqrt(2.0) * unsure / apart)
        dx, dy = off.mean(axis=0).tolist()
        return {
            "leaf": found.leaf, "other": 0,
            "off": round(float(np.linalg.norm(off, axis=1).max()), 2),
            "dx": round(dx, 2), "dy": round(dy, 2), "angle": round(angle, 2),
            "across": abs(round(dx, 2)), "along": abs(round(dy, 2)), "turn": abs(round(angle, 2)),
            "unsure": round(unsure, 2), "blurred": round(blurred, 3), "tolerance": self.tolerance,
            "most": self.turn, "parallax": round(found.parallax, 2), "squared": self.squared,
        }

    def _agrees(self, values: dict[str, Any]) -> bool:
        return (values["off"] <= self.tolerance
                and values["turn"] <= self.turn + values["blurred"])

    def _remedy(self, values: dict[str, Any]) -> str:
        back = _way({**values, **{one: -values[one] for one in ("dx", "dy", "angle")}})
        if values["off"] > ASTRAY:
            said = word(
                "Do not cut. See that this is the leaf, that each mark has its own letter, and "
                "that the leaf lies face up."
            )
        elif back:
            said = put_in(word(
                "Do not cut. See that each mark has its own letter; then move the leaf back: "
                "{back}, or pin it again by its marks, and photograph it again."
            ), back=back)
        else:
            said = word(
                "Do not cut. See that each mark has its own letter; then move the leaf back, or "
                "pin it again by its marks, and photograph it again."
            )
        return said if self.squared else said + " " + word(
            "A camera that does not look straight down shows leaves off, too: with four marks on "
            "the topmost leaf the photograph is squared up."
        )


def together(findings: Sequence[Finding]) -> list[Finding]:
    """The findings to be read at a glance: the gravest first, those that confirm a leaf in one."""
    alike = [one for one in findings if one.code == "register-confirmed"]
    if len(alike) < 2:
        return sorted(findings, key=lambda one: LEVELS.index(one.level))
    most = {name: max(one.values[name] for one in alike)
            for name in ("off", "turn", "unsure", "parallax")}
    leaves = tuple(one.values["leaf"] for one in alike)
    one = Finding(
        "register-confirmed", "note",
        "Leaves {leaves} lie where their registers have them, to {off} mm and {turn} deg, which "
        "the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm them.",
        "", {**alike[0].values, **most, "leaves": leaves},
    )
    rest = [one for one in findings if one not in alike]
    return sorted([*rest, one], key=lambda one: LEVELS.index(one.level))


def _not_told(values: dict[str, Any]) -> Finding:
    return Finding(
        "register-not-told", "warn",
        "The marks of leaf {leaf} can be told to {unsure} mm only, and {tolerance} mm is asked: "
        "the photograph neither confirms nor contradicts its register.",
        "See that each mark has its own letter, and click on pins closer up; else photograph again "
        "from straight above and from nearer, sharp and in even light.", values,
    )


def _way(values: dict[str, Any]) -> str:
    """Which way a leaf lies off, to be filled with the values; "" where too little to be said."""
    said = []
    if abs(values["dx"]) >= SAID:
        right, left = word("{across} mm to the right"), word("{across} mm to the left")
        said.append(right if values["dx"] > 0 else left)
    if abs(values["dy"]) >= SAID:
        up, down = word("{along} mm up the grain"), word("{along} mm down the grain")
        said.append(up if values["dy"] > 0 else down)
    moved = [all_of(said)] if said else []
    if abs(values["angle"]) < max(SAID, values["blurred"]):
        return "".join(moved)
    turned = word("turned {turn} deg clockwise about the middle")
    if values["angle"] > 0:
        turned = word("turned {turn} deg counter-clockwise about the middle")
    return ", ".join([*moved, turned])
