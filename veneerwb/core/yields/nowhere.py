# SPDX-License-Identifier: LGPL-2.1-or-later
"""What to say of a top that fits nowhere on its leaves: what would."""

from __future__ import annotations

from dataclasses import replace

from veneerwb.core.appeal.maps import Progress
from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import TOUCH
from veneerwb.core.search.task import Task
from veneerwb.core.yields.largest import all_ways, tops_of


def fits_nowhere(task: Task, progress: Progress | None = None) -> VeneerError:
    """The error for a task whose top fits nowhere: the largest of its shape that would, and the
    ways in which it would."""
    ways = task.recipe.ways
    (here,) = tops_of(task, [ways], progress)
    rows = all_ways(task, progress)
    fitting = [row.ways for row in rows if row.reach >= task.top.reach - TOUCH]
    values = {
        "top": task.top.name, "ways": ways, "others": _either(fitting), "fitting": tuple(fitting),
        "reach": here.reach, "size": here.size, "largest": here.top.name if here.top else "",
    }
    if here.top is None and not any(row.top for row in rows):
        return _nothing(task, values, progress)
    sentence = "This top ({top}) fits nowhere on the leaves in {ways} ways; "
    if here.top is None:
        sentence += "no size of it does"
    else:
        sentence += "the largest that would is {largest} (reach {reach} mm)"
    if fitting:
        sentence += ", and this one would fit in {others} ways."
    else:
        sentence += ", and in no number of ways would this one fit."
    return VeneerError("fits-nowhere", sentence, **values)


def _nothing(task: Task, values: dict[str, object], progress: Progress | None) -> VeneerError:
    """Where no size fits in any ways."""
    bare = tuple(replace(leaf, faults=()) for leaf in task.bundle.leaves)
    without = replace(task, bundle=replace(task.bundle, leaves=bare))
    if any(row.top for row in all_ways(without, progress)):
        sentence = (
            "Between the faults, the edges and the margin no top of this shape fits in any number "
            "of ways; look at the faults, or take another bundle."
        )
    else:
        sentence = (
            "Nothing of the leaves can be used for a top of this shape; look at the usable areas, "
            "the margin and the oversize."
        )
    return VeneerError("fits-nowhere", sentence, **values)


def _either(numbers: list[int]) -> str:
    """Numbers as one says them: 8, 10 or 12."""
    words = [str(n) for n in numbers]
    return " or ".join([", ".join(words[:-1]), words[-1]] if words[1:] else words)
