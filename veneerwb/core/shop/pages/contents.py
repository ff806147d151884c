# SPDX-License-Identifier: LGPL-2.1-or-later
"""The contents of a packet: its files and what each is for."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page
from veneerwb.core.shop.packet import LeftOut, Named
from veneerwb.core.shop.pages.tables import table_pages
from veneerwb.words import marked, say

CODE, TITLE = "contents", marked("Contents of the packet")
HEADINGS = (marked("file"), marked("what it is for"))
WHOLE = marked(
    "All files are made from one layout and carry its revision mark. Do not mix them with those "
    "of another mark: an older packet is kept beside this one, and nothing in it is changed."
)
LACKS = marked(
    "This packet is not whole: one part is left out. Why stands at the foot of the list."
)
LACK = marked(
    "This packet is not whole: {count} parts are left out. Why stands at the foot of the list."
)


def pages(
    look: Look, files: Sequence[Named], left_out: Sequence[LeftOut] = (),
    warnings: Sequence[str] = (),
) -> list[Page]:  # fmt: skip
    """The list of the files as they are named in the folder, and of what is left out; above it what
    must be known before anything is cut."""
    rows = [(file.file_name, file.about) for file in files]
    rows += [(say("left out: {name}", name=part.name), part.why) for part in left_out]
    texts = list(warnings)
    if left_out:
        texts.append(say(LACK if len(left_out) > 1 else LACKS, count=len(left_out)))
    return table_pages(look, CODE, TITLE, HEADINGS, rows, texts, (WHOLE, DRY_LAY))
