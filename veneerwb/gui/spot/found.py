# SPDX-License-Identifier: LGPL-2.1-or-later
"""Found spots: what is to count, the search, the best tops side by side, and where they lie."""

from __future__ import annotations

from dataclasses import astuple, replace
from typing import Any

import FreeCAD
import numpy as np
from PySide import QtCore, QtGui

from veneerwb.core import Placement
from veneerwb.core.appeal import UNITS, WEIGHTS, Stopped, cell_for, maps_of
from veneerwb.core.search import searched
from veneerwb.core.search.task import Task
from veneerwb.gui.canvas import Canvas, Hand, Place
from veneerwb.gui.panels import fields
from veneerwb.gui.spot.tab import GalleryHand, Progress, Tab
from veneerwb.gui.spot.words import measured
from veneerwb.host.objects.base import Refused
from veneerwb.paint import ground, ink
from veneerwb.paint.gallery import Tile

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotFound"
COUNT = 12
MAPPED = 600
"""Of a thousand steps of a search, those that making its maps takes."""
MIDDLE = 4
"""The notch of a slider at which a measure counts as it commonly does."""
LEGEND, SAID = 20, 30
"""Pixels of what is below the map."""


class FoundTab(Tab):
    """The tab. `keep` takes a layout and its measures; it is the tab of the kept spots'."""

    drawn = "spot_found"

    def __init__(self, state: Any, keep: Any) -> None:
        super().__init__(state)
        self.keep = keep
        self.found: Any = None
        """What the last search found, and of which state."""
        self._of: tuple[Any, ...] = ()
        self._maps: tuple[Any, Any] | None = None
        for name in UNITS:
            getattr(self.form, name).setValue(MIDDLE)
        self.hand, self.map = GalleryHand(lines=4), MapHand(self)
        self.hand.empty = self._idle()
        self.hand.canvas, self.map.canvas = (
            self.canvas("tiles", self.hand), self.canvas("map", self.map),
        )  # fmt: skip
        self.hand.seen = lambda: self.form.area.height()
        self.hand.chose = self._go
        self.works("search", self._find)
        self.form.keep.clicked.connect(lambda *_: self.attempt(self._keep))
        self._filling = False
        fields.watch(self.form.hidden, lambda *_: self._cover())
        self.fill("hidden", state.hidden)
        if "HiddenDisc" in state.locked:
            self.form.hidden.setEnabled(False)
        state.changed(self._follow)
        self._bound()

    def arrange(self, tall: bool) -> None:
        """The map below the boxes where the place is high, else right of the tops."""
        form = self.form
        (form.column if tall else form.all).addWidget(form.map, 2)

    @staticmethod
    def _idle() -> str:
        return translate(
            HERE, "Nothing has been looked for yet. Find spots tries every spot and direction on "
            "the leaves, with the ways, the turn and the size that the top has now."
        )

    def say(self, text: str) -> None:
        """In the place of the tops where there are none, for there is more room."""
        super().say(text)
        if self.form is not None and not self.hand.tiles:
            self.form.trouble.setVisible(False)
            self.hand.empty = text or self._idle()
            self.hand.canvas.refresh()

    @property
    def weights(self) -> dict[str, float]:
        """What each measure counts, as the sliders stand: in the middle, what it commonly does."""
        return {
            name: common * getattr(self.form, name).value() / MIDDLE
            for name, common in WEIGHTS.items()
        }

    def _cover(self) -> None:
        """What covers the centre was changed by hand: the match has it."""
        if self.form is None or self._filling:
            return
        if self.value("hidden") != self.state.hidden:
            self.attempt(lambda: self.state.go(hidden=self.value("hidden"), run=True))
            self._date()

    def _asked(self) -> tuple[Any, ...]:
        """All that another search would find something else for: not where the wedge lies now."""
        state = self.state
        recipe = replace(state.recipe, placement=None)
        if isinstance(recipe.order, str):
            recipe = replace(recipe, first=1)
        return state.bundle, recipe, state.size, state.margin, state.hidden

    # --- searching ----------------------------------------------------------------------------

    def _find(self, progress: Progress) -> None:
        state, asked, weights = self.state, self._asked(), self.weights
        top, recipe, hidden = state.top, state.recipe, state.covered
        try:
            if not any(weights.values()):
                raise Refused(translate(HERE, "Nothing counts; let one of the measures count."))
            maps = self._mapped(state.bundle, top.reach, recipe, progress)
            found = searched(
                asked[0], top, recipe, COUNT, weights, state.margin, hidden, maps=maps,
                progress=lambda done, total, text: progress(
                    MAPPED + (1000 - MAPPED) * done // max(1, total), 1000, text),
            )
        except Stopped:
            if self.form is None:
                return
            raise Refused(translate(HERE, "Stopped; nothing was changed.")) from None
        except Exception:
            self._forget()
            raise
        if self.form is not None:
            self._of, self._covered = (*asked, top, recipe), hidden
            self._show(found)

    def _forget(self) -> None:
        """What was found was for another top than the one that cannot be found."""
        if self.form is not None:
            self.found = None
            self.hand.show([])
            self.map.show(None)
            self._bound()

    def _mapped(self, bundle: Any, reach: float, recipe: Any, progress: Progress) -> Any:
        """The bundle's maps, made once for as long as it stays."""
        key = bundle, cell_for(reach)
        known = self._maps
        if known is None or known[0][0] is not bundle or known[0][1] != key[1]:
            self._maps = None
            if len(bundle.numbers) < recipe.ways:
                return None  # the search says so before photographs are read
            self._maps = key, maps_of(*key, lambda done, total, text: progress(
                MAPPED * done // max(1, total), 1000, text))
        return self._maps[1]

    def _show(self, found: Any) -> None:
        self.found = found
        bundle, *_, top, recipe = self._of
        tiles = []
        for k, one in enumerate(found.candidates, start=1):
            how = replace(recipe, placement=one.placement, first=one.first)
            title = translate(HERE, "{k}: from leaf {first}").format(k=k, first=one.first)
            tiles.append(Tile(how.lay(bundle, top), title, measured(astuple(one.appeal))))
        self.hand.show(tiles)
        self.map.show(found.sweep)
        self._date()

    def _follow(self) -> None:
        if self.form is not None and self.value("hidden") != self.state.hidden:
            self._filling = True
            self.fill("hidden", self.state.hidden)
            self._filling = False
        self._date()

    def _date(self) -> None:
        """Says if what is shown was found for another top."""
        if self.form is None or self.found is None:
            return
        now = self._asked()  # bundles that are alike are one object
        fits = now[0] is self._of[0] and now[1:] == self._of[1 : len(now)]
        self.say("" if fits else translate(
            HERE, "The leaves or the top have changed since. Find spots again."
        ))
        self._bound()

    def _bound(self) -> None:
        self.form.keep.setEnabled(self.found is not None and self.hand.chosen is not None)

    # --- going and keeping --------------------------------------------------------------------

    def _go(self, k: int) -> None:
        one, recipe = self.found.candidates[k], self._of[-1]
        self.attempt(lambda: self.state.go(
            placement=one.placement, first=one.first, ways=recipe.ways, turn=recipe.turn,
            order=recipe.order, turned=recipe.turned,
        ))
        self._date()
        self.map.canvas.refresh()

    def _keep(self) -> None:
        k = self.hand.chosen
        tile, one = self.hand.tiles[k], self.found.candidates[k]
        self.keep(tile.layout, astuple(one.appeal))

    def go_near(self, x: float, y: float) -> None:
        """Goes to the best direction and first leaf for a tip on that place of the bundle."""
        bundle, _, _, margin, _, top, recipe = self._of
        task = Task(bundle, top, recipe, margin, self._covered)
        place, first = best_at(self.found.sweep, task, x, y)
        self.state.go(
            placement=place, first=first, ways=recipe.ways, turn=recipe.turn,
            order=recipe.order, turned=recipe.turned,
        )
        self.hand.chosen = None
        self.hand.canvas.refresh()

    def let_go(self) -> None:
        self.map.tab = None
        self.keep = lambda *_: None
        self._maps = self.found = None
        super().let_go()


def best_at(sweep: Any, task: Task, x: float, y: float) -> tuple[Placement, int]:
    """The placement with its tip on a place, and the first leaf, that the sweep has as the best of
    those that fit. Refused where none does."""
    column, row = (int(round(float(n))) for n in sweep.frame.places(np.array([(x, y)]))[0])
    rows, columns = sweep.frame.shape
    if 0 <= row < rows and 0 <= column < columns:
        scores = sweep.scores[:, row, column]
        for k in np.argsort(-scores, kind="stable"):
            if not np.isfinite(scores[k]):
                break
            place = Placement(round(x, 3), round(y, 3), float(sweep.angles[k]))
            for first in task.firsts:
                if task.fits(task.layout(place, first)):
                    return place, first
    raise Refused(translate(HERE, "No wedge of this top fits with its tip there."))


class MapHand(Hand):
    """The leaf with how good the tops are that have their tip there; a click goes there."""

    def __init__(self, tab: FoundTab) -> None:
        self.tab = tab
        self.canvas: Canvas | None = None
        self.sweep: Any = None
        self._image: QtGui.QImage | None = None

    def show(self, sweep: Any) -> None:
        self.sweep, self._image = sweep, None if sweep is None else ground.heat(sweep.best)
        self.canvas.refresh()

    def _ground(self, size: tuple[int, int]) -> ground.Ground:
        bundle = self.tab._of[0]
        return ground.ground_of(bundle, size, (10.0, 10.0, 10.0, LEGEND + SAID + 10.0))

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if self.tab is None or self.sweep is None:
            ink.say(painter, size, translate(HERE, "Where good spots lie is drawn here."))
            return
        ink.begin(painter, size)
        on = self._ground(size)
        found = self.tab.found.candidates
        ground.draw_leaf(painter, on, self.tab._of[0], self.tab._of[0].numbers[0])
        ground.draw_heat(painter, on, self._image, self.sweep.frame)
        places = [(one.placement.x, one.placement.y) for one in found]
        ground.draw_dots(painter, on, places, self.tab.hand.chosen)
        below = size[1] - LEGEND - SAID
        words = translate(HERE, "weak"), translate(HERE, "strong")
        ground.draw_legend(painter, (6.0, below, size[0] - 12.0, LEGEND - 2), *words)
        painter.setPen(ink.colour(ink.FAINT))
        said = translate(HERE, "with the tip here; pale: none fits")
        ink.write(painter, said, (4, below + LEGEND - 2, size[0] - 8, SAID), "top", wrap=True)

    def clicked(self, at: Place) -> None:
        if self.sweep is not None:
            x, y = self._ground(self.canvas.size).mm(at.x, at.y)
            self.tab.attempt(lambda: self._go(x, y))

    def _go(self, x: float, y: float) -> None:
        """To the numbered spot that is clicked, or to the best there."""
        on = self._ground(self.canvas.size)
        here = on.pixel(x, y)
        for k, one in enumerate(self.tab.found.candidates):
            px, py = on.pixel(one.placement.x, one.placement.y)
            if abs(px - here[0]) <= 8.0 and abs(py - here[1]) <= 8.0:
                self.tab.hand.choose(k)
                return
        self.tab.go_near(x, y)

    def cursor(self, at: Place) -> Any:
        return QtCore.Qt.ArrowCursor if self.sweep is None else QtCore.Qt.CrossCursor
