# SPDX-License-Identifier: LGPL-2.1-or-later
"""Kept spots: keep the one that is seen, name it, compare, go back to it."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.core import VeneerError
from veneerwb.gui.later import later
from veneerwb.gui.spot.compare import LEAST, MOST, CompareWindow
from veneerwb.gui.spot.tab import GalleryHand, Tab, told
from veneerwb.gui.spot.words import laid_as, measured
from veneerwb.host import spots
from veneerwb.host.objects.base import Refused, kind_of
from veneerwb.paint.gallery import Tile

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotKept"
SOON = 60
"""Milliseconds after a change of the document when the tiles are looked at again."""


class Watch:
    """Hears what becomes of kept spots in a document: the tree and undo change them too."""

    def __init__(self, tab: KeptTab) -> None:
        self.tab = tab
        FreeCAD.addDocumentObserver(self)

    def forget(self) -> None:
        self.tab = None
        FreeCAD.removeDocumentObserver(self)

    def _heard(self, obj: Any) -> None:
        if self.tab is not None and kind_of(obj) == "Spot":
            self.tab.soon()

    def slotCreatedObject(self, obj: Any) -> None:
        """A copy has no proxy yet when it is told of."""
        if self.tab is not None:
            self.tab.soon()

    def slotDeletedObject(self, obj: Any) -> None:
        self._heard(obj)

    def slotChangedObject(self, obj: Any, name: str) -> None:
        self._heard(obj)


class KeptTab(Tab):
    """The tab: a tile for each kept spot, and what can be done with the one that is chosen."""

    drawn = "spot_kept"

    def __init__(self, state: Any) -> None:
        super().__init__(state)
        self.hand = GalleryHand(lines=5)
        self.hand.empty = translate(
            HERE, "No spot is kept yet. Keep the one that is seen, go on, and come back to it."
        )
        self.hand.canvas = self.canvas("tiles", self.hand)
        self.hand.seen = lambda: self.form.area.height()
        self.hand.chose, self.hand.took = self._chose, lambda k: self._do(self._go)
        self.hand.ticked = lambda k: self._bound()
        self.went: Callable[[], None] = lambda: None
        """Called when one has gone to a kept spot."""
        self.chosen = ""
        """The name of the kept spot that is chosen."""
        self._ticked: set[str] = set()
        self._names: list[str] = []
        self._pictures: dict[str, tuple[Any, QtGui.QImage]] = {}
        self._window: CompareWindow | None = None
        self._timer = QtCore.QTimer()
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.refresh)
        self._watch = Watch(self)
        form = self.form
        for name, action in (
            ("keep", self._keep), ("go", self._go), ("anew", self._anew), ("drop", self._drop),
            ("compare", self._compare),
        ):  # fmt: skip
            getattr(form, name).clicked.connect(lambda *_, action=action: self._do(action))
        form.name.editingFinished.connect(lambda: self._do(self._rename))
        state.rested(self.soon)
        self.refresh()

    # --- what is shown ------------------------------------------------------------------------

    def soon(self) -> None:
        if self.form is not None:
            self._timer.start(SOON)

    def refresh(self) -> None:
        """Shows the kept spots that the document has now."""
        if self.form is None:
            return
        self._note_ticks()
        objs = self._objs()
        self._names = [obj.Name for obj in objs]
        if self.chosen not in self._names:
            self.chosen = ""
        tiles = [self._tile(obj) for obj in objs]
        self.hand.show(tiles, self._names.index(self.chosen) if self.chosen else None)
        self._bound()
        if self._window is not None:
            self._compare_again()

    def _objs(self) -> list[Any]:
        try:
            return spots.kept(self.state.match)
        except Refused:  # the match is gone
            return []

    def _tile(self, obj: Any) -> Tile:
        trouble = obj.Message
        if obj.Old and not trouble:
            trouble = translate(HERE, "Old picture: the leaves or the top have changed since")
        return Tile(
            None, obj.Label, self._said(obj), trouble, obj.Name in self._ticked, self._image(obj)
        )

    @staticmethod
    def _said(obj: Any) -> str:
        try:
            text = laid_as(spots.recipe(obj))
        except VeneerError as error:
            return told(error)
        return "\n".join(filter(None, (text, measured(obj.Measures))))

    def _image(self, obj: Any) -> QtGui.QImage | None:
        """The kept picture, read once for as long as it stays."""
        path = obj.Picture
        if not path or not os.path.exists(path):
            return None
        stamp = path, os.stat(path).st_mtime_ns
        known = self._pictures.get(obj.Name)
        if known is None or known[0] != stamp:
            known = self._pictures[obj.Name] = stamp, QtGui.QImage(path)
        return known[1]

    def _note_ticks(self) -> None:
        self._ticked = {n for n, tile in zip(self._names, self.hand.tiles) if tile.ticked}

    def _bound(self) -> None:
        """What can be done now, and to which spot."""
        form, obj = self.form, self._chosen()
        for name in ("go", "anew", "drop", "name"):
            getattr(form, name).setEnabled(obj is not None)
        form.name.setText(obj.Label if obj is not None else "")
        form.compare.setEnabled(sum(bool(tile.ticked) for tile in self.hand.tiles) >= LEAST)

    def _chosen(self) -> Any:
        return next((obj for obj in self._objs() if obj.Name == self.chosen), None)

    def _chose(self, k: int) -> None:
        self.chosen = self._names[k]
        self._bound()

    # --- what is done -------------------------------------------------------------------------

    def _do(self, action: Any) -> None:
        if self.form is not None:
            self.attempt(action)
            self.refresh()

    def _keep(self) -> None:
        self.keep(self.state.layout())

    def keep(self, layout: Any, measures: Sequence[float] = ()) -> None:
        """Keeps a spot under the next free name, and chooses it."""
        self.state.settle()
        taken = {obj.Label for obj in self._objs()}
        names = (translate(HERE, "Spot {n}").format(n=n) for n in range(1, len(taken) + 2))
        name = next(name for name in names if name not in taken)
        self.chosen = spots.keep(self.state.match, layout, name, measures).Name

    def _rename(self) -> None:
        obj = self._chosen()
        if obj is not None:
            self.state.settle()
            spots.rename(obj, self.form.name.text().strip())

    def _go(self) -> None:
        obj = self._chosen()
        if obj is not None:
            self.go(obj)

    def go(self, obj: Any) -> None:
        how = spots.recipe(obj)
        self.state.go(
            placement=how.placement, first=how.first, ways=how.ways, turn=how.turn,
            order=how.order, turned=how.turned,
        )
        self.went()

    def take_up(self, obj: Any) -> None:
        """Chooses a kept spot and goes there."""
        self.chosen = obj.Name
        self._do(self._go)

    def _anew(self) -> None:
        self.state.settle()
        spots.picture_anew(self._chosen())

    def _drop(self) -> None:
        self.state.settle()
        spots.drop([self._chosen()])

    # --- side by side -------------------------------------------------------------------------

    def _compare(self) -> None:
        self._note_ticks()
        count = len(self._ticked)
        if not LEAST <= count <= MOST:
            raise Refused(translate(
                HERE, "Tick two to six kept spots to compare them; {count} are ticked."
            ).format(count=count))
        self._uncompare()
        self._compared = [name for name in self._names if name in self._ticked]
        self._window = CompareWindow(self._live(), self._take, self._compare_closed)
        self._window.to_front()

    def _live(self) -> list[Tile]:
        """The compared spots as their leaves are now; those that cannot be laid as they were."""
        tiles = []
        for obj in self._objs():
            if obj.Name not in self._compared:
                continue
            try:
                tiles.append(Tile(spots.laid(obj), obj.Label, self._said(obj)))
            except VeneerError as error:
                tiles.append(Tile(None, obj.Label, trouble=told(error), image=self._image(obj)))
        return tiles

    def _compare_again(self) -> None:
        names = set(self._names)
        self._compared = [name for name in self._compared if name in names]
        self._window.show_tiles(self._live())

    def _take(self, k: int) -> None:
        """Goes to a compared spot; its window closes when the click is through."""
        name = self._compared[k]

        def go() -> None:
            self._uncompare()
            if self.form is not None and name in self._names:
                self.chosen = name
                self._do(self._go)

        later(go)

    def _uncompare(self) -> None:
        window, self._window = self._window, None
        if window is not None:
            window.close()

    def _compare_closed(self) -> None:
        self._window = None

    def let_go(self) -> None:
        self._watch.forget()
        self._timer.stop()
        self._timer.timeout.disconnect(self.refresh)
        self._uncompare()
        super().let_go()
