# SPDX-License-Identifier: LGPL-2.1-or-later
"""How far the register of each leaf can be trusted, from the chain that led to it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.checks.finding import Finding
from veneerwb.core.sequence.chain import Chain

TESTED = Finding(
    "registers-tested", "note",
    "In our tests, on generated leaves of 300 x 900 mm at 1 mm per pixel, the registers of 12 "
    "leaves came out the same to {least} to {most} mm (rms at the corners, by the figure) however "
    "they were photographed; with leaves that stood up 5 mm under a camera at 1.5 m to "
    "{least_buckled} to {most_buckled} mm, besides what the picture itself was bent by.",
    "Flatten the leaves first and photograph them under glass.",
    {"least": 0.02, "most": 0.07, "least_buckled": 0.18, "most_buckled": 0.32},
)
"""What our tests say of registers in general: `tests/bench/registers.py --spoilt --leaves 12
--width 300 --length 900 --scale 1`, seed 1."""


@dataclass(frozen=True)
class Trust:
    """Of one leaf's register, all from the residuals of the photographs: `likeness` is the
    correlation with the leaf before it (1: the same), `step_mm` the standard error predicted at the
    leaf's corner against that leaf, `total_mm` against the first leaf, `sure` whether no doubt was
    found on the way from there."""

    leaf: int
    likeness: float
    step_mm: float
    total_mm: float
    sure: bool


def trusted(chain: Chain) -> tuple[Trust, ...]:
    """One for every leaf, in order; the first is the bundle's own frame and cannot be wrong."""
    doubtful = {step.second for step in chain.doubts}
    found = [Trust(next(iter(chain.registers)), 1.0, 0.0, 0.0, True)]
    for step in chain.steps:
        last = found[-1]
        total = math.hypot(last.total_mm, step.corner_mm)
        sure = last.sure and step.second not in doubtful
        found.append(Trust(step.second, step.likeness, step.corner_mm, total, sure))
    return tuple(found)


def trust_findings(chain: Chain) -> list[Finding]:
    """What is to be said of the registers of a chain."""
    found = trusted(chain)
    if len(found) == 1:
        return [Finding(
            "one-leaf", "note", "There is one leaf, so there is nothing to register it against."
        )]
    last = found[-1]
    step = max(found, key=lambda trust: trust.step_mm)
    findings = []
    if all(math.isfinite(trust.step_mm) for trust in found):
        findings.append(Finding(
            "registers-error", "note",
            "From the residuals of your photographs, one standard error at a leaf's corner is at "
            "most {step} mm from leaf to leaf (leaf {leaf}), and {total} mm from leaf {first} to "
            "leaf {last}.",
            "", {"step": round(step.step_mm, 2), "leaf": step.leaf,
                 "total": round(last.total_mm, 2), "first": found[0].leaf, "last": last.leaf},
        ))
    doubtful = tuple(sorted({step.second for step in chain.doubts}))
    if doubtful:
        findings.append(Finding(
            "registers-doubtful", "warn",
            "It is in doubt how leaf {leaves} lies on the leaf before, and with it where all "
            "leaves after lie: their photographs are too unlike, or contradict each other.",
            "Look at those leaves one over the other, prove the order, photograph them again, or "
            "pick marks by hand.",
            {"leaves": doubtful},
        ))
    return findings
