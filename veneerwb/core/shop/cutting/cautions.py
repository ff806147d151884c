# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cautions of the cutting plan, by kind of step, and by way of cutting where a blade is at
work."""

from __future__ import annotations

from veneerwb.words import marked, word

LOCAL = marked(
    "Local rules for the workshop, the makers' sheets for machine, blade and dust, and licensed "
    "practice come before this sheet."
)
QUIET = {
    "mark": marked(
        "Write with a light hand: chalk scores soft wood, and what is pressed in shows."
    ),
    "prick": marked(
        "Prick away from the hand that holds the leaf, into a soft board; prick square."
    ),
    "shorten": marked("Hold the leaf flat under a board along its whole width; a free end splits."),
    "lay": marked(
        "Pins are sharp: press leaves down with a block beside the pin, not with a finger."
    ),
    "free": marked("Carry the pieces on a board, flat: tips are thin and break."),
    "outline": marked("Mark with a hard, sharp pencil, not with a knife, on the side that is up."),
    "again": marked("Fresh blade, hand behind the blade and off the line, many light strokes."),
}
BLADE = {
    "knife": marked(
        "Fresh blade, hand behind the blade and off the line, many light strokes; the "
        "straightedge clamped at both ends and never held by hand alone."
    ),
    "saw": marked(
        "Guards and riving knife as the saw's maker has them; both hands behind the sled's fence; "
        "nothing is taken from the table before the blade stands still; dust drawn off, eyes and "
        "lungs protected."
    ),
    "machine": marked(
        "Nobody reaches in while the tool turns or burns; it never runs alone; dust or fumes "
        "drawn off; the piece held before the tool starts."
    ),
}
CLOSING = {
    "knife": marked(
        "Clamp the straightedge, then take the hands away from the line before the knife."
    ),
    "saw": marked(
        "Drive screws in the places shown and nowhere else, and count them: metal in the blade's "
        "way throws pieces."
    ),
    "machine": marked(
        "Hold-downs lie outside the tool's way; try the way once with the tool lifted."
    ),
}


def caution(kind: str, key: str) -> str:
    """The caution for a step of that kind with that way of cutting."""
    if kind in QUIET:
        return word(QUIET[kind])
    return word(CLOSING[key] if kind == "close" else BLADE[key])  # a trial stack cuts hands as well
