# SPDX-License-Identifier: LGPL-2.1-or-later
"""Press day in words: which tape when, in which order, how the edge is cut, and what can hurt.

Common practice of the trade where no source is named.
"""

from __future__ import annotations

from veneerwb.core.shop.press.day import Bag, PressDay, Pressing
from veneerwb.core.shop.press.units import of_the_air, written
from veneerwb.words import marked, say, word

TAPES = (
    marked("Gum tape, on the show face: comes off after pressing; it holds the seams in the press. "
           "Damp it, wait, scrape or sand it off along the grain."),
    marked("Tape of any kind, on the glue side: comes off before glue; no adhesive bonds through "
           "it: a strip left there lets go and shows as a ridge."),
    marked("Masking or plastic tape, on the show face: comes off before pressing, once gum tape is "
           "on; it prints, and its gum stays in the pores."),
    marked("Chalk and pencil, on the glue side and the show face: come off before glue; they "
           "stain, and weaken the bond."),
    marked("Pins, on the oversize: come off after pressing; they mark the plates: sink them, or "
           "draw them once the face is held."),
)  # fmt: skip
"""Which tape or mark comes off when, and why."""
WINS = marked(
    "The maker's sheet of the adhesive wins over all that stands here: pressure, spread, open "
    "time, time in the press, temperature, moisture of the wood."
)
PRESSURE_CAUTION = marked(
    "A press, its hydraulics and a vacuum vessel hold energy: work only with what is rated for it "
    "and tested, never beyond its plate or its gauge's red mark, hands clear while it closes. A "
    "rigid vacuum vessel can collapse, a hose can burst. Follow local rules for pressure "
    "equipment, and leave repair to those who hold the licence."
)
ADHESIVE_CAUTION = marked(
    "Adhesives: read label and safety sheet, ventilate, wear gloves and glasses. Urea, phenol and "
    "melamine resins give off formaldehyde, more so in heat; limits in air are 0.75 ppm over 8 h "
    "and 2 ppm over 15 min (29 CFR 1910.1048; check the current text). Isocyanates sensitise."
)
EDGE_CAUTION = marked(
    "Saws and routers at the edge: support the panel, cut with the feed against the cutter, "
    "guards on, eyes and ears covered."
)


def order_of_the_day(day: PressDay) -> list[str]:
    """What is done, one after another."""
    said = [
        word("Dry run: lay all in the press without adhesive, find the centre, close, look, open."),
        word(
            "Mark the centre and the two axes on the back of the core's edge and on the tape of "
            "the face, by the distances given."
        ),
        word("Take tape and chalk off the glue side; vacuum both."),
    ]
    if day.backer:
        said.append(word(
            "Have the backer ready: both faces are glued in one go, or the panel cups."
        ))
    said += [
        word("Spread, lay the face on its marks, set the pins in the oversize, caul and film on "
             "it.")
        if day.pins
        else word("Spread, lay the face on its marks, caul and film on it."),
        _press_words(day),
        word(
            "Leave it in for the maker's time; then stand it on edge with air on both faces until "
            "the moisture is even."
        ),
    ]  # fmt: skip
    return said


def _press_words(day: PressDay) -> str:
    if isinstance(day.press, Bag):
        return word(
            "Close the bag, pump, listen for leaks, and watch that the face stays on its marks."
        )
    return word(
        "Close from the centre outwards to the pressure; look at the gauge again as glue flows."
    )


def edge_cut(day: PressDay, radius: str = "") -> list[str]:
    """How the edge is cut, worked from the centre; `radius` as it is to be read, where there is
    one."""
    by = (
        say(
            "From it strike the edge with a trammel of {radius} from the centre; measure from the "
            "centre to the edge on all four axes.", radius=radius,
        )
        if day.trammel is not None and radius
        else word(
            "From it lay the template of the edge on centre and axes and draw round it; measure "
            "from the centre to the edge on all four axes."
        )
    )  # fmt: skip
    return [
        word("Find the centre again: stretch two threads between opposite marks of the axes."),
        by,
        word("Score the show face on the line before the saw, so that nothing lifts."),
        word(
            "Saw off the oversize clear of the line, show face up for a hand saw or router bit "
            "that cuts down, face down for a saw that cuts up."
        ),
        word(
            "Trim to the line in light passes, with the grain running off the edge; at each wedge "
            "it runs another way."
        ),
    ]


def pressure_words(day: PressDay, unit: str) -> list[str]:
    """What the gauge must show, in its unit."""
    p = day.pressing
    if p.wanted is None:
        said = [word("Pressure: look it up in the maker's sheet of the adhesive.")]
    else:
        said = [say(
            "Pressure on the face, as entered from the maker's sheet: {wanted}.",
            wanted=written(p.wanted, unit),
        )]  # fmt: skip
    if isinstance(day.press, Bag):
        said += _bag_words(day.press, p, unit)
        return said
    if p.force is not None:
        said.append(say("Force on the panel: {force:.1f} kN.", force=p.force))
    if p.gauge is not None:
        said.append(
            say(
                "The hydraulic gauge shows {gauge} for it, friction and springs of the rams left "
                "out.",
                gauge=written(p.gauge, unit),
            )
        )
    if p.gauge is not None and p.most is None:
        said.append(word("The most that the press may show was not entered: see its plate."))
    if p.ok is False:
        said.append(
            say(
                "That is not enough: the press gives {most} on this panel at most. Take another "
                "press, or an adhesive whose sheet allows less.",
                most=written(p.most, unit),
            )
        )
    return said


def _bag_words(bag: Bag, p: Pressing, unit: str) -> list[str]:
    """What the vacuum gauge must show, and the most that it can."""
    air = written(of_the_air(bag.altitude), unit)
    said = [
        say(
            "The air outside has {air} at {altitude:g} m (weather moves it a little): no bag "
            "presses with more, and no pump reaches all of it.",
            air=air, altitude=bag.altitude,
        )
        if bag.pulls is None
        else say(
            "The bag presses with {most} at most: what its pump pulls here, or the air outside "
            "({air} at {altitude:g} m) where that is less.",
            most=written(bag.most, unit), air=air, altitude=bag.altitude,
        )
    ]
    if p.ok is False:
        said.append(
            word(
                "That is not enough for this adhesive: take a press with plates, or an adhesive "
                "whose sheet allows less."
            )
        )
    elif p.gauge is not None:
        said.append(
            say(
                "The vacuum gauge shows {gauge} below the air, or more, before the time in the "
                "press begins.",
                gauge=written(p.gauge, unit),
            )
        )
    return said
