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

import re

from veneerwb.core.wood import words
from veneerwb.words import marked, say, word

SENSITISING = (
    marked("beech"), marked("birch"), marked("blackwood"), marked("boxwood"),
    marked("cocobolo"), marked("cypress, bald"), marked("ebony"), marked("goncalo alves"),
    marked("greenheart"), marked("iroko"), marked("mahogany"), marked("mansonia"),
    marked("maple, spalted"), marked("myrtle"), marked("oak"), marked("obeche"),
    marked("olivewood"), marked("opepe"), marked("padauk"), marked("pau ferro"),
    marked("redwood"), marked("rosewood"), marked("sassafras"), marked("spruce"),
    marked("teak"), marked("walnut, black"), marked("wenge"), marked("western red cedar"),
    marked("zebrawood"),
)  # fmt: skip
LIMITS = marked(
    "Limits in air (check the current text): wood dust, NIOSH 1 mg/m3; OSHA 29 CFR 1910.1000 as "
    "particulates 15 mg/m3 total, 5 respirable."
)


def named_as(species: str) -> str:
    """The name in the list that a species falls under, in the language spoken, "" for none: "Santos
    rosewood" under rosewood. It may be given in English or in that language, where a name counts
    within longer words too, as German ones are; a translation may have other names in brackets."""
    have = words(re.sub("[()-]", " ", species))
    text = " ".join(have)
    for name in SENSITISING:
        called = [one for one in map(str.strip, re.split("[()]", word(name))) if one]
        if words(name) <= have or (
            word(name) != name
            and any(all(part in text for part in words(one)) for one in called)
        ):
            return called[0]
    return ""


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
