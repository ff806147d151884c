# SPDX-License-Identifier: LGPL-2.1-or-later
"""How spots and their measures are put into words."""

from __future__ import annotations

from typing import Any

import FreeCAD

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotWords"


def laid_as(recipe: Any) -> str:
    """How a top is laid, in a line."""
    turn = {"book": translate(HERE, "book"), "slip": translate(HERE, "slip")}[recipe.turn]
    if isinstance(recipe.order, str):
        text = translate(HERE, "{ways}\u00a0ways, {turn}, from leaf\u00a0{first}")
        if recipe.order == "spread":
            text = translate(HERE, "{ways}\u00a0ways, {turn}, spread from leaf\u00a0{first}")
    else:
        text = translate(HERE, "{ways}\u00a0ways, {turn}, leaves listed")
    return text.format(ways=recipe.ways, turn=turn, first=recipe.first)


def measured(values: Any) -> str:
    """Measures (contrast, variety, seams, closing) in words; "" where there are none."""
    if not values:
        return ""
    from veneerwb.core.appeal import Appeal
    from veneerwb.core.appeal.words import in_words

    said = in_words(Appeal(*values))
    return ", ".join(map(str, said))
