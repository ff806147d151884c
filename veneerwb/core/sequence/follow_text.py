# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said of a choice: what it rests on, what it brings, and what nobody knows."""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.checks.finding import Finding
from veneerwb.core.leaf import Bundle
from veneerwb.core.sequence.drift import CLEAR, Drift, Place
from veneerwb.core.sequence.marks import PICKED, Marked
from veneerwb.words import marked

AT_ODDS = 0.3
"""Share by which a wander given may differ from a clear drift seen (and its error) unremarked."""


@dataclass(frozen=True)
class Known:
    """How the figure's wander is known: by "frames" ("frames-alone" where no figure was compared),
    "wander", "slope", "drift" or "nothing"; the mean mm from leaf to leaf (x, y); and the drift
    that the registers share, if there are leaves enough."""

    by: str
    per_leaf: Place
    seen: Drift | None = None


def figure_findings(bundle: Bundle) -> list[Finding]:
    if len(bundle.leaves) == 1:
        return []
    return [Finding(
        "follows-figure", "note",
        "The stack follows the figure: crowns and rings meet all round, and knots and the leaves' "
        "edges march from piece to piece where the figure wanders.",
    )]


_RESTS = {
    "frames-alone": marked(
        "The log's place on each leaf was given, by targets or outlines. The figure could not be "
        "compared, so how it wanders is not known."
    ),
    "frames": marked(
        "The log's place on each leaf was given, by targets or outlines, so the figure's wander is "
        "measured: {across} mm across and {along} mm along from leaf to leaf in the mean (minus: "
        "to the left, and towards the photographs' lower edge)."
    ),
    "wander": marked(
        "The figure's wander was given: {across} mm across and {along} mm along from leaf to leaf "
        "(minus: to the left, and towards the photographs' lower edge)."
    ),
    "slope": marked(
        "The figure's wander follows from the slope of {slope} deg given: {along} mm along from "
        "leaf to leaf (minus: towards the photographs' lower edge)."
    ),
    "drift": marked(
        "Where the log lies was told from the drift that your photographs share, {across} mm "
        "across and {along} mm along from leaf to leaf in the mean (minus: to the left, and "
        "towards the photographs' lower edge), give or take {error} mm."
    ),
    "nothing": marked(
        "Your photographs share no clear drift and no slope, backs or targets are known, so the "
        "log cannot be told from the figure: here it is taken to lie where the figure does."
    ),
}


def log_findings(bundle: Bundle, known: Known) -> list[Finding]:
    if len(bundle.leaves) == 1:
        return []
    count = bundle.numbers[-1] - bundle.numbers[0]
    error = math.hypot(*known.seen.error) if known.seen else math.nan
    values = {
        "across": round(known.per_leaf[0], 2), "along": round(known.per_leaf[1], 2),
        "slope": 0.0 if bundle.slope is None else bundle.slope,
        "total": round(math.hypot(*known.per_leaf) * count, 1),
        "error": round(error, 2), "end": round(error * count, 1),
        "hidden": round(CLEAR * error, 1), "hidden_total": round(CLEAR * error * count, 1),
        "last": bundle.numbers[-1],
    }
    findings = []
    if known.by == "frames-alone":
        findings.append(Finding(
            "follows-log", "note",
            "The stack follows the log: knots and edges stay put.",
        ))
    elif known.by != "nothing":
        findings.append(Finding(
            "follows-log", "note",
            "The stack follows the log: knots and edges stay put, and the figure marches from "
            "piece to piece, {total} mm from the first leaf to leaf {last}.", "", values,
        ))
    warn = "note" if known.by in ("frames", "frames-alone", "wander") else "warn"
    findings.append(Finding(f"log-by-{known.by}", warn, _RESTS[known.by], "", values))
    return findings + _unknown(known, values) + _at_odds(known, values)


def _unknown(known: Known, values: dict[str, object]) -> list[Finding]:
    """What face photographs alone do not tell."""
    if known.by.startswith("frames"):
        return []
    if known.by == "nothing":
        remedy = marked(
            "Photograph two or three backs, stick targets on, or give the slope of the stem."
        )
        if known.seen is None:
            return [Finding(
                "log-unknown", "warn",
                "So few leaves share no drift that could be told from how each photograph lay.",
                remedy,
            )]
        return [Finding(
            "log-unknown", "warn",
            "How each photograph lay hides a drift of up to {hidden} mm from leaf to leaf, "
            "{hidden_total} mm by leaf {last}.",
            remedy, values,
        )]
    if known.by == "drift":
        return [Finding(
            "log-unknown", "warn",
            "By leaf {last} that makes {end} mm, and where the figure wanders otherwise on "
            "one leaf than on the rest is not known from faces alone.",
            "Photograph two or three backs, or stick targets on, to know.", values,
        )]
    return [Finding(
        "log-unknown", "note",
        "The wander is taken to be the same from leaf to leaf; where it is not, faces alone do not "
        "tell.", "", values,
    )]


def _at_odds(known: Known, values: dict[str, object]) -> list[Finding]:
    """A slope or wander given that the photographs contradict."""
    seen = known.seen
    if known.by not in ("slope", "wander") or seen is None:
        return []
    given, drift = known.per_leaf[1], seen.per_leaf[1]
    if abs(drift - given) <= CLEAR * seen.error[1] + AT_ODDS * abs(given):
        return []
    return [Finding(
        "wander-at-odds", "warn",
        "Your photographs drift {drift} mm along from leaf to leaf together, give or take "
        "{drift_error} mm, and not {along} mm.",
        "Check the thickness and the slope, or let the wander be told from the photographs.",
        {**values, "drift": round(drift, 2), "drift_error": round(seen.error[1], 2)},
    )]


def marks_findings(marked: Marked) -> list[Finding]:
    worst = max(marked.apart, key=lambda n: marked.apart[n])
    turned = tuple(n for n, motion in marked.registers.items() if abs(motion.angle) > 90.0)
    findings = [Finding(
        "follows-marks", "note",
        "The stack follows your marks: distances between them agree to {apart} mm (leaf {leaf}), "
        "and a mark picked {picked} mm off moves a leaf's corner by some {swing} mm. How the "
        "figure lies between them was not looked at.",
        "", {"apart": round(marked.apart[worst], 2), "leaf": worst, "picked": PICKED,
             "swing": round(marked.swing, 1)},
    )]
    if turned:
        findings.append(Finding(
            "marks-turned", "warn",
            "By its marks, leaf {leaves} lies the other way round.",
            "If it does not, pick its marks in the order of the first leaf's.", {"leaves": turned},
        ))
    return findings
