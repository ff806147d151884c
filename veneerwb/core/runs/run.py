# SPDX-License-Identifier: LGPL-2.1-or-later
"""A run of panels laid from one sequence: panel after panel, or as one field over all of them.

In sequence every panel, all of one size, is laid by the same match from the next leaves, all cut
from one place of the bundle. As a blueprint one match is laid out over the whole run beforehand,
and each panel gets what of it lies there, its leaves running on from panel to panel.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.cells import Cell
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.side import SideMatch
from veneerwb.core.plane import choice
from veneerwb.core.runs.field import Field, Share, shared
from veneerwb.core.runs.panels import Panel, of_one_size
from veneerwb.words import marked

MODES = ("sequence", "blueprint")
GAPS = ("closed", "laid through")


@dataclass(frozen=True)
class LaidRun:
    """What a run came to: a layout for each of its `panels` in its own coordinates, from `bundle`.
    `each`: the leaves that belong to each panel, used or not. `field`: the one that a blueprint is
    laid over."""

    run: Run
    panels: tuple[Panel, ...]
    layouts: tuple[Layout, ...]
    bundle: Leaves
    each: tuple[tuple[int, ...], ...]
    field: Field | None = None

    @property
    def leaves(self) -> tuple[int, ...]:
        """All leaves that it takes, those lost in gaps too."""
        return tuple(sorted({n for numbers in self.each for n in numbers}))


@dataclass(frozen=True)
class Run:
    """The recipe of a run. `lay` makes its layouts.

    recipe: the match that is laid: a SideMatch, End, Quarters or Radial, its leaves in sequence
            from its `first` on.
    mode:   "sequence" (panels of one size, each laid by itself from the next leaves) or "blueprint"
            (one field over all panels).
    gaps:   of a blueprint: "closed" (gaps that run right through the run take nothing of the
            figure) or "laid through" (what lies in the gaps is cut away).
    """

    recipe: Any = SideMatch()
    mode: str = "sequence"
    gaps: str = "closed"

    def __post_init__(self) -> None:
        choice("mode of a run", self.mode, MODES)
        choice("way with gaps", self.gaps, GAPS)
        if not all(hasattr(self.recipe, name) for name in ("cells", "first", "order")):
            raise VeneerError(
                "run-unfit",
                "That match cannot be laid over a run of panels; take a side, end, four-piece or "
                "plain radial match.",
            )
        if not isinstance(self.recipe.order, str):
            raise VeneerError(
                "run-order",
                "The leaves of a run go on from panel to panel, so they cannot be listed for one; "
                "take them in sequence from a first leaf.",
            )
        straight = getattr(self.recipe, "rim", "arc") == "straight"
        if self.mode == "blueprint" and (straight or getattr(self.recipe, "disc", 0.0)):
            raise VeneerError(
                "blueprint-unfit",
                "One field over several panels has no disc in its middle and no straight rim; "
                "leave them out, or lay the panels in sequence.",
            )

    def lay(self, bundle: Leaves, panels: Sequence[Panel]) -> LaidRun:
        """The layouts of `panels` (of `elevation`) from `bundle`.

        Raises VeneerError for panels of unlike size in sequence, for too few leaves, and for what
        the match itself refuses; pieces that do not fit their leaves are left to `run_findings`.
        """
        if not panels:
            raise VeneerError("no-panels", "The run has no panels; choose at least one face.")
        lay = _in_sequence if self.mode == "sequence" else _as_blueprint
        return lay(self, bundle, tuple(panels))


# --- in sequence -------------------------------------------------------------------------------


def _in_sequence(run: Run, bundle: Leaves, panels: tuple[Panel, ...]) -> LaidRun:
    of_one_size(panels)
    cells = run.recipe.cells(bundle, panels[0].top.region)
    count = len({cell.leaf for cell in cells})
    numbers = [n for n in bundle.numbers if n >= run.recipe.first]
    if len(numbers) < count * len(panels):
        raise _too_few(run, count * len(panels), len(numbers), len(numbers) // count, len(panels))
    each = [tuple(numbers[k * count : (k + 1) * count]) for k in range(len(panels))]
    recipe = run.recipe
    if recipe.placement is None:
        trial = replace(recipe, placement=Placement(0.0, 0.0)).lay(bundle, panels[0].top)
        place = _centred(trial.pieces, bundle, numbers[: count * len(panels)])
        recipe = replace(recipe, placement=place)
    layouts = tuple(
        replace(recipe, first=leaves[0]).lay(bundle, panel.top)
        for leaves, panel in zip(each, panels)
    )
    return LaidRun(replace(run, recipe=recipe), panels, layouts, bundle, tuple(each))


def _centred(pieces: Iterable[Piece], bundle: Leaves, numbers: Sequence[int]) -> Placement:
    """The placement that puts pieces laid at the origin into the middle of what those leaves have
    in common."""
    boxes = [piece.onto_bundle.apply_to(piece.blank).bounds for piece in pieces]
    left, low, right, high = (f(side) for f, side in zip((min, min, max, max), zip(*boxes)))
    area = bundle.common_area(numbers)
    x0, y0, x1, y1 = (0.0, 0.0, *bundle.size) if area.is_empty else area.bounds
    return Placement((x0 + x1 - left - right) / 2.0, (y0 + y1 - low - high) / 2.0)


# --- as a blueprint ----------------------------------------------------------------------------


def _as_blueprint(run: Run, bundle: Leaves, panels: tuple[Panel, ...]) -> LaidRun:
    field = Field.of(panels, run.gaps == "closed")
    cells = _field_cells(run, bundle, panels, field)
    recipe = run.recipe
    shares = [shared(cells, at, panel.size) for at, panel in zip(field.places, panels)]
    if recipe.placement is None:
        trial = _laid(replace(recipe, placement=Placement(0.0, 0.0)), shares, bundle, panels)
        pieces = [piece for layout in trial for piece in layout.pieces]
        place = _centred(pieces, bundle, sorted({piece.leaf for piece in pieces}))
        recipe = replace(recipe, placement=place)
    layouts = _laid(recipe, shares, bundle, panels)
    taken = tuple(sorted({cell.leaf for cell in cells}))
    return LaidRun(
        replace(run, recipe=recipe), panels, layouts, bundle, (taken,) * len(panels), field
    )


def _laid(
    recipe: Any, shares: Sequence[tuple[Cell, ...]], bundle: Leaves, panels: Sequence[Panel]
) -> tuple[Layout, ...]:
    """Each panel's share laid on it."""
    grain = getattr(recipe, "grain", None)
    return tuple(
        Share(share, recipe.placement, recipe.oversize, grain, cuts=recipe.cuts).lay(
            bundle, panel.top
        )
        for share, panel in zip(shares, panels)
    )


def _field_cells(run: Run, bundle: Leaves, panels: Sequence[Panel], field: Field) -> Sequence[Cell]:
    try:
        return run.recipe.cells(bundle, field.region)
    except VeneerError as error:
        if error.code != "too-few-leaves":
            raise
        fits = next(
            (k for k in range(len(panels) - 1, 0, -1) if _can_lay(run, bundle, panels[:k])), 0
        )
        raise _too_few(
            run, error.values["count"], error.values["have"], fits, len(panels)
        ) from None


def _can_lay(run: Run, bundle: Leaves, panels: Sequence[Panel]) -> bool:
    try:
        run.recipe.cells(bundle, Field.of(panels, run.gaps == "closed").region)
    except VeneerError:
        return False
    return True


def _too_few(run: Run, count: int, have: int, fits: int, panels: int) -> VeneerError:
    """How many leaves are missing, and how many panels can be laid."""
    told = marked(
        "The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, "
        "{missing} missing: enough for no panel; take fewer panels, wider strips, or a second "
        "bundle after this one."
    )
    if fits:
        told = marked(
            "The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, "
            "{missing} missing: enough for {fits} of {panels}; take fewer panels, wider strips, or "
            "a second bundle after this one."
        )
    return VeneerError(
        "too-few-leaves",
        told,
        panels=panels,
        count=count,
        first=run.recipe.first,
        have=have,
        missing=count - have,
        fits=fits,
    )
