# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which woods are named as sensitising, and what is to be said of dust.

That wood dust can cause asthma, that of western red cedar most of all, skin troubles, and that of
hardwoods cancer of the nose: Health and Safety Executive, COSHH and woodworkers (web page, read
2026). That wood dust causes cancer in man: IARC Monographs vol. 100C (2012), as reported. The names
are those marked as sensitisers in a chart of toxic woods that a woodturners' journal printed in
June 1990 and that is often reprinted (secondary). No such list is complete: a wood that is not
named is not thereby harmless.
"""

from __future__ import annotations

from veneerwb.core.wood import words
from veneerwb.words import marked, say, word

SENSITISING = (
    "beech", "birch", "blackwood", "boxwood", "cocobolo", marked("cypress, bald"), "ebony",
    marked(
        "goncalo alves"
    ), "greenheart", "iroko", "mahogany", "mansonia", marked(
        "maple, spalted"
    ), "myrtle",
    "oak", "obeche", "olivewood", "opepe", "padauk", marked("pau ferro"), "redwood", "rosewood",
    "sassafras", "spruce", "teak", marked(
        "walnut, black"
    ), "wenge", marked(
        "western red cedar"
    ), "zebrawood",
)  # fmt: skip
LIMITS = marked(
    "Limits in air (check the current text): wood dust, NIOSH 1 mg/m3; OSHA 29 CFR 1910.1000 as "
    "particulates 15 mg/m3 total, 5 respirable."
)


def named_as(species: str) -> str:
    """The name in the list that a species falls under, "" for none: "Santos rosewood" under
    rosewood."""
    have = words(species.replace("(", " ").replace(")", " ").replace("-", " "))
    return next((name for name in SENSITISING if words(name) <= have), "")


def dust_caution(species: str) -> str:
    """What is to be said of the dust of a wood ("": not known which)."""
    name = named_as(species)
    if name:
        return say(
            "Dust: this wood ({species}) is named among the sensitising ones ({name}): once "
            "sensitised, a body answers to the least trace of it with skin, nose or asthma. Wood "
            "dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off "
            "where it is made, wear a fitted mask, do not blow or sweep it.",
            species=species, name=name,
        )  # fmt: skip
    if species:
        return say(
            "Dust: {species} is not named in the list of sensitising woods used here, which is not "
            "complete: take it as one until you know better. Wood dust of any kind can bring "
            "asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a "
            "fitted mask, do not blow or sweep it.",
            species=species,
        )
    return word(
        "Dust: which wood this is was not entered: take it as a sensitising one. Wood dust of any "
        "kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is "
        "made, wear a fitted mask, do not blow or sweep it."
    )
