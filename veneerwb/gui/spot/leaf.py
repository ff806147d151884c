# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf's photograph with the wedge on it: dragged by its tip or anywhere on it, turned by the
corners of its rim, made larger or smaller by the rim's middle. For the keys see keys.py."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any, NamedTuple

import numpy as np
from PySide import QtCore, QtGui

from veneerwb.core import Placement
from veneerwb.gui.canvas import Action
from veneerwb.gui.photos import looks
from veneerwb.gui.photos.frame import Place
from veneerwb.gui.photos.items import Item
from veneerwb.gui.photos.view import PhotoView
from veneerwb.gui.spot import looks as spot_looks
from veneerwb.gui.spot.fit import Misfit
from veneerwb.gui.spot.keys import SpotKeys
from veneerwb.gui.spot.state import SpotState
from veneerwb.paint import ink
from veneerwb.paint.picture import qt_transform

Qt = QtCore.Qt

DECIMALS = 2
"""To which a place (mm) or an angle is kept that the mouse chose."""
EDITING = (
    Qt.Key_Return, Qt.Key_Enter, Qt.Key_Delete, Qt.Key_Backspace, Qt.Key_Insert, Qt.Key_N, Qt.Key_C,
)
"""Keys that would change what is pointed at."""
SIZE_STEP, LEAST_SIZE = 0.5, 10.0
"""mm: to which a size is kept that the mouse chose, and the least that it chooses."""


class _Held(NamedTuple):
    """How the wedge lay when the mouse took hold of it, and where that was (bundle mm)."""

    placement: Placement
    size: float
    start: Place


class SpotView(SpotKeys, PhotoView):
    """`began` and `ended` are told when the mouse takes hold of the wedge and lets it go, `put_off`
    when that is to be as if it had not been; `misfits` says what forbids the wedge."""

    def __init__(self, widget: Any, state: SpotState) -> None:
        super().__init__(widget)
        self.listen(state)
        self.misfits: Callable[[], list[Misfit]] = list
        self.began = self.ended = self.put_off = lambda: None
        self.areas: list[Item] = []
        """What may be used of the leaf, and its faults."""
        self._still: tuple[Any, QtGui.QImage] | None = None
        self._wedge = Item([(0.0, 0.0)], "spot", follow=self._follow)
        self._shape: tuple[Any, np.ndarray] | None = None
        self._held: _Held | None = None
        self.pointing.areas = [self._wedge]
        self.pointing.within = lambda place: place  # a handle may lie off the photograph

    def let_go(self) -> None:
        super().let_go()
        self.began = self.ended = self.put_off = lambda: None
        self.misfits, self._still = list, None
        self.forget_spot()

    # --- where the wedge is -------------------------------------------------------------------

    @property
    def onto_picture(self) -> QtGui.QTransform:
        """From bundle mm to (column, row) of the picture."""
        scale, rows = self.picture.mm_per_px, self.picture.size[1]
        up = QtGui.QTransform(1.0 / scale, 0.0, 0.0, -1.0 / scale, 0.0, rows)
        return qt_transform(self.state.onto_leaf(self.state.number)) * up

    @property
    def onto_widget(self) -> QtGui.QTransform:
        """From bundle mm to pixels of the widget."""
        return self.onto_picture * self.frame.transform

    def show_leaf(self, picture: Any, areas: list[Item]) -> None:
        """Another leaf, seen where the one before was if it is as large."""
        self.areas, self._still = areas, None
        self.show(picture, keep=True)
        self.follow()

    def follow(self) -> None:
        """The wedge lies elsewhere, or is another one."""
        if self.picture is not None:
            self._wedge.corners[:] = self._corners()
            self.refresh()

    def _corners(self) -> list[Place]:
        """The wedge's outline on the picture, which begins at its tip."""
        piece = self.state.wedge.pieces[0]
        if self._shape is None or self._shape[0] != piece.edge:
            outline, middle = spot_looks.outline(piece.edge, self.state.recipe.axis(1))
            self._shape = piece.edge, outline
            self._wedge.grips = (0, 1, middle, len(outline) - 1)
        onto = qt_transform(piece.onto_bundle) * self.onto_picture
        return [onto.map(x, y) for x, y in self._shape[1]]

    def _follow(self, corner: int | None, start: Place, end: Place) -> list[Place]:
        """The wedge goes with the mouse."""
        back = self.onto_picture.inverted()[0]
        if self._held is None:
            self._held = _Held(self.state.placement, self.state.size, back.map(*start))
        (here, size, (xa, ya)), (xb, yb) = self._held, back.map(*end)
        if corner in (None, 0):
            self.go(placement=_kept(here.x + xb - xa, here.y + yb - ya, here.angle))
        elif corner == self._wedge.grips[2]:
            grabbed = math.hypot(xa - here.x, ya - here.y)  # a tiny wedge even at its tip
            share = math.hypot(xb - here.x, yb - here.y) / max(grabbed, size / 4.0)
            self.go(size=max(LEAST_SIZE, round(size * share / SIZE_STEP) * SIZE_STEP))
        else:
            a, b = (math.atan2(y - here.y, x - here.x) for x, y in ((xa, ya), (xb, yb)))
            turned = math.remainder(math.degrees(b - a), 360.0)
            self.go(placement=_kept(here.x, here.y, here.angle + turned))
        return self._corners()

    # --- the hand -----------------------------------------------------------------------------

    def pressed(self, at: Place) -> bool:
        self._held = None
        held = super().pressed(at)
        if held:
            self.began()
        return held

    def released(self) -> None:
        super().released()
        self._held = None
        self.ended()

    def doubled(self, at: Place) -> None:
        """Nothing is drawn here."""

    def _magnify(self, at: Place | None) -> None:
        """The top shows what matters."""

    def cursor(self, at: Place) -> Any:
        grip = self.pointing.at(self.frame.to_picture(at), self._reach)
        if self.picture is None or grip is None:
            return Qt.ArrowCursor
        return Qt.SizeAllCursor if grip.corner in (None, 0) else Qt.PointingHandCursor

    @property
    def keys(self) -> Mapping[Any, Action]:
        """The wedge is not taken away."""
        ours = dict(super().keys)
        for key in EDITING:
            del ours[key]
        return {**ours, **self.spot_keys}

    def _escape(self) -> None:
        if self._dragging:
            self._dragging, self._held = False, None
            self.events.let_fall()
            self.put_off()
        else:
            self.escaped()

    # --- painting -----------------------------------------------------------------------------

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        painter.drawImage(0, 0, self._photograph(size, ink.ratio_of(painter)))
        if self.picture is not None:
            painter.setRenderHint(QtGui.QPainter.Antialiasing)
            corners = [self.frame.to_widget(one) for one in self._wedge.corners]
            spot_looks.draw(painter, corners, self._wedge.grips, self.misfits(), self.onto_widget)

    def _photograph(self, size: tuple[int, int], ratio: float) -> QtGui.QImage:
        """With what may be used and the faults on it, which stay as long as it does."""
        plain = super()._photograph(size, ratio)
        if self._still is None or self._still[0] is not self._behind:
            image = plain.copy()
            painter = QtGui.QPainter(image)
            try:
                painter.setRenderHint(QtGui.QPainter.Antialiasing)
                for area in self.areas:
                    looks.draw_area(painter, self.frame, area, None)
            finally:
                painter.end()
            self._still = self._behind, image
        return self._still[1]


def _kept(x: float, y: float, angle: float) -> Placement:
    return Placement(round(x, DECIMALS), round(y, DECIMALS), round(angle, DECIMALS))
