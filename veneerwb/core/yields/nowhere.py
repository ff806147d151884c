# SPDX-License-Identifier: LGPL-2.1-or-later
"""What to say of a top that fits nowhere on its leaves: what would."""

from __future__ import annotations

from dataclasses import replace

from veneerwb.core.appeal.maps import Progress
from veneerwb.core.errors import VeneerError
from veneerwb.core.listing import one_of
from veneerwb.core.plane import TOUCH
from veneerwb.core.search.task import Task
from veneerwb.core.yields.largest import all_ways, tops_of
from veneerwb.words import marked


def fits_nowhere(task: Task, progress: Progress | None = None) -> VeneerError:
    """The error for a task whose top fits nowhere: the largest of its shape that would, and the
    ways in which it would."""
    ways = task.recipe.ways
    (here,) = tops_of(task, [ways], progress)
    rows = all_ways(task, progress)
    fitting = [row.ways for row in rows if row.reach >= task.top.reach - TOUCH]
    values = {
        "top": task.top.name, "ways": ways, "fitting": tuple(fitting),
        "others": one_of([str(n) for n in fitting]) if fitting else "",
        "reach": here.reach, "size": here.size, "largest": here.top.name if here.top else "",
    }
    if here.top is None and not any(row.top for row in rows):
        return _nothing(task, values, progress)
    return VeneerError("fits-nowhere", _WOULD_DO[here.top is not None, bool(fitting)], **values)


_WOULD_DO = {
    (False, True): marked(
        "This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and this "
        "one would fit in {others} ways."
    ),
    (False, False): marked(
        "This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and in no "
        "number of ways would this one fit."
    ),
    (True, True): marked(
        "This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is "
        "{largest} (reach {reach} mm), and this one would fit in {others} ways."
    ),
    (True, False): marked(
        "This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is "
        "{largest} (reach {reach} mm), and in no number of ways would this one fit."
    ),
}
"""Whether a smaller one, and other numbers of ways, would fit: what is said."""


def _nothing(task: Task, values: dict[str, object], progress: Progress | None) -> VeneerError:
    """Where no size fits in any ways."""
    bare = tuple(replace(leaf, faults=()) for leaf in task.bundle.leaves)
    without = replace(task, bundle=replace(task.bundle, leaves=bare))
    if any(row.top for row in all_ways(without, progress)):
        sentence = marked(
            "Between the faults, the edges and the margin no top of this shape fits in any number "
            "of ways; look at the faults, or take another bundle."
        )
    else:
        sentence = marked(
            "Nothing of the leaves can be used for a top of this shape; look at the usable areas, "
            "the margin and the oversize."
        )
    return VeneerError("fits-nowhere", sentence, **values)
