# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the 3-D view looks at when something new is laid, and when it is a person's own."""

from __future__ import annotations

import math
from itertools import product
from typing import Any

import FreeCADGui
from pivy import coin
from PySide import QtCore

from veneerwb.gui.panels.base import Panel
from veneerwb.gui.side_window import OFTEN, beside_panel

AIR = 1.08
"""How much more is seen than the object, at least."""

_seen: set[str] = set()
"""The documents, by their Uid, whose first object was looked at from above."""
_looks: list[FirstLook] = []
"""The first look that is kept up."""


def look_at(panel: Panel, obj: Any) -> None:
    """Has an object that was just made in a panel seen: the first of its document from straight
    above, any other by stepping back where not all of it is in sight."""
    doc = obj.Document
    if doc.Uid not in _seen and not _others(obj):
        _seen.add(doc.Uid)
        _looks[:] = [FirstLook(panel, obj)]
        return
    for view in _views(doc):
        if not in_sight(view, obj):
            view.fitAll()


def _others(obj: Any) -> list[Any]:
    """What else there is to see in the document of an object."""
    there = obj.Document.findObjects("App::GeoFeature")
    return [one for one in there if one != obj]


def _views(doc: Any) -> list[Any]:
    return FreeCADGui.getDocument(doc.Name).mdiViewsOfType("Gui::View3DInventor")


class FirstLook:
    """All of an object from straight above, beside a panel that newer hosts lay over the view. It
    is kept up while the panel is open, until a hand turns or moves the view."""

    def __init__(self, panel: Panel, obj: Any) -> None:
        self.panel, self.obj = panel, obj
        self.left: tuple[float, ...] | None = None
        """How the camera was left."""
        self.timer = QtCore.QTimer()  # the host brings the panel over the view without a word
        self.timer.timeout.connect(self.look)
        self.timer.start(OFTEN)
        self.look()

    def look(self) -> None:
        there = self.panel.form is not None and self.panel.doc is not None
        views = _views(self.panel.doc) if there else []
        if not views or self.left not in (None, camera_of(views[0])):
            self.timer.stop()
            self.panel = self.obj = None
        elif not self.obj.Shape.isNull() and not (self.left and in_sight(views[0], self.obj)):
            self._frame(views[0])

    def _frame(self, view: Any) -> None:
        """Sets the camera itself: the host's own way there may take half a second."""
        box, camera, (wide, high) = self.obj.Shape.BoundBox, view.getCameraNode(), _size(view)
        left, right = _covered(view)
        scale = AIR * max(box.XLength / (wide - left - right), box.YLength / high)  # mm per pixel
        seen, away = scale * min(wide, high), box.DiagonalLength
        if hasattr(camera, "height"):
            camera.height = seen
        else:
            away += seen / 2 / math.tan(camera.heightAngle.getValue() / 2)
        camera.orientation = coin.SbRotation(0, 0, 0, 1)
        across = box.Center.x + scale * (right - left) / 2
        camera.position = (across, box.Center.y, box.ZMax + away)
        camera.focalDistance = away
        self.left = camera_of(view)


def camera_of(view: Any) -> tuple[float, ...]:
    """What a hand changes of the camera of a view."""
    camera = view.getCameraNode()
    size = camera.height.getValue() if hasattr(camera, "height") else 0.0
    turned = camera.orientation.getValue().getValue()
    return (*camera.position.getValue().getValue(), *turned, size)


def _size(view: Any) -> tuple[int, int]:
    shown = view.graphicsView()
    return max(1, shown.width()), max(1, shown.height())


def _covered(view: Any) -> tuple[int, int]:
    """Pixels left and right in a view that a panel lies over."""
    return beside_panel(view.graphicsView())


def in_sight(view: Any, obj: Any) -> bool:
    """Whether all of an object is seen in a view, and nothing of it behind a panel; so is what has
    no shape."""
    if obj.Shape.isNull():
        return True
    box, (wide, high), (left, right) = obj.Shape.BoundBox, _size(view), _covered(view)
    volume = view.getCameraNode().getViewVolume(wide / high)
    if wide < high:  # the height of the camera is then how much is seen across
        volume.scale(high / wide)
    sides = (box.XMin, box.XMax), (box.YMin, box.YMax), (box.ZMin, box.ZMax)
    for corner in product(*sides):
        x, y, _ = volume.projectToScreen(coin.SbVec3f(*corner)).getValue()
        if not (left <= x * wide <= wide - right and 0 <= y <= 1):
            return False
    return True
