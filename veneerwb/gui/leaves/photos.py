# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window in which photographs are clicked on before they are brought in: points, corners or
paper marks for their scale, a patch for their light, the outlines of leaves."""

from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path
from typing import Any

import FreeCAD

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.background import leaf_on_background
from veneerwb.core.photos.reading import Photo, names_apart
from veneerwb.core.photos.squaring import scale_between, squaring
from veneerwb.core.targets.mark import LETTERS
from veneerwb.core.targets.scaling import clicked, scale_of, squared_by_distances
from veneerwb.gui.leaves.plan import MARKED, MOST, WANTED, Plan
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.items import Grip, Item, mark
from veneerwb.gui.photos.window import PhotoWindow

translate = FreeCAD.Qt.translate
HERE = "VeneerLeavesPanel"
SCALE, PATCH, OUTLINE = "scale", "patch", "outline"
COARSE = 1500
"""A found outline is simplified to the photograph's longer side by this: few corners to drag."""


class LeavesPhotos:
    """`plan` gives the panel's choices as they are now; clicks go into its `clicks`, and `changed`
    is called. `attempt` runs an action and tells the user what goes wrong."""

    def __init__(
        self, plan: Callable[[], Plan], attempt: Callable[[Any], bool], changed: Callable[[], None]
    ) -> None:
        self.plan, self.attempt, self.changed = plan, attempt, changed
        self.window: PhotoWindow | None = None
        self.goal, self.paths = SCALE, []
        self._found: dict[Path, list[Place] | VeneerError] = {}

    def open(self, goal: str, paths: list[Path]) -> None:
        """Opens the window on these photographs, or turns it to another goal."""
        self.goal = goal
        if self.window is None:
            self.window = PhotoWindow(
                translate(HERE, "Photographs"), (), lambda page: self._turned(), self._closed
            )
            self.window.view.pointing.changed = self._clicked
            self.paths = []
        if paths != self.paths:
            self.paths = paths
            called = names_apart(paths)
            self.window.offer([called[path] for path in paths])
        self._turned()
        self.window.to_front()

    def close(self) -> None:
        window, self.window = self.window, None
        if window is not None:
            window.close()

    def _closed(self) -> None:
        self.window = None

    @property
    def path(self) -> Path:
        """The photograph that is shown."""
        return self.paths[self.window.page]

    # --- a photograph -------------------------------------------------------------------------

    def _turned(self) -> None:
        if not self.attempt(self._show):
            self.window.show(None)
            self.window.say("")

    def _show(self) -> None:
        pixels = Photo.read(self.path, 1.0).pixels
        self.window.show(Picture(pixels, self._scale(pixels.shape)), keep=True)
        self._lay_out()

    def _scale(self, shape: tuple[int, ...]) -> float | None:
        """mm per pixel of the photograph, if it has one all over."""
        plan = self.plan()
        try:
            if plan.scale in ("points", "two marks"):
                return scale_between(*plan.clicked(self.path), plan.known, shape)
            return None if plan.scale in WANTED else plan.mm_per_px(shape[:2])
        except (VeneerError, TypeError):  # not clicked yet
            return None

    def refresh(self) -> None:
        """The panel's choices have changed."""
        if self.window is not None and self.window.view.picture is not None:
            self._rescale()
            self._lay_out()

    def _rescale(self) -> None:
        shown = self.window.view.picture
        shown.mm_per_px = self._scale(shown.pixels.shape)
        self.window.form.grid.setEnabled(shown.mm_per_px is not None)

    def _lay_out(self) -> None:
        """Marks and areas, from what was clicked."""
        plan, path = self.plan(), self.path
        pointing = self.window.view.pointing
        pointing.drawn = pointing.grip = None
        scaling = self.goal == SCALE and plan.scale in WANTED
        places = plan.clicked(path) if plan.scale in WANTED else []
        pointing.marks = [
            mark(place, letter, held=not scaling) for place, letter in zip(places, LETTERS)
        ]
        pointing.most = MOST[plan.scale] if scaling else 0
        pointing.letters = LETTERS[: pointing.most]
        outline, patch = self._outline(plan), self._patch(plan)
        pointing.areas = [*filter(None, (self._frame(plan), outline, patch))]
        pointing.kind = ""
        if self.goal == PATCH and "patch" in plan.light and patch is None:
            pointing.kind = "light"
        elif self.goal == OUTLINE and outline is None:
            pointing.kind = "usable"
        elif self.goal == OUTLINE or (self.goal == PATCH and patch is not None):
            pointing.grip = Grip(outline if self.goal == OUTLINE else patch)
        self.window.say(self._hint(plan, pointing))
        self.window.view.refresh()

    def _frame(self, plan: Plan) -> Item | None:
        """The rectangle between four corners, in the order of a round."""
        places = plan.clicked(self.path)
        if WANTED.get(plan.scale) != 4 or len(places) < 4:
            return None
        column, row = (sum(one) / 4 for one in zip(*places))
        ring = sorted(places, key=lambda p: math.atan2(p[1] - row, p[0] - column))
        return Item(ring, "frame", held=True)

    def _patch(self, plan: Plan) -> Item | None:
        corners = plan.clicks.patch.get(plan.key(self.path), [])
        if "patch" not in plan.light or not corners:
            return None
        word = translate(HERE, "grey card" if plan.light == "grey patch" else "patch")
        return Item(list(corners), "light", word, self.goal != PATCH, PATCH)

    def _outline(self, plan: Plan) -> Item | None:
        if plan.leaf == "whole":
            return None
        corners = plan.clicks.outline.get(self.path) or self._find()
        if not corners:
            return None
        word = translate(HERE, "leaf")
        return Item(list(corners), "usable", word, self.goal != OUTLINE, OUTLINE)

    def _find(self) -> list[Place]:
        """The corners of the leaf found on the photograph; none where it cannot be found."""
        if self.path not in self._found:
            pixels = self.window.view.picture.pixels
            try:
                found = leaf_on_background(pixels, max(1.0, max(pixels.shape) / COARSE))
                self._found[self.path] = list(found.exterior.coords)[:-1]
            except VeneerError as error:
                self._found[self.path] = error
        found = self._found[self.path]
        return [] if isinstance(found, VeneerError) else found

    # --- clicks -------------------------------------------------------------------------------

    def _clicked(self, item: Item) -> None:
        """The user placed, moved, drew or deleted something."""
        plan, pointing = self.plan(), self.window.view.pointing
        key, clicks = plan.key(self.path), plan.clicks
        if item.is_mark:
            marks = sorted(pointing.marks, key=lambda one: one.text)
            plan.scale_clicks[key] = [one.place for one in marks]
            self.attempt(lambda: self._check(plan, marks))
            plan.scale_clicks[key] = [one.place for one in marks]
            pointing.areas = [area for area in pointing.areas if area.kind != "frame"]
            pointing.areas += filter(None, [self._frame(plan)])
            self._rescale()
            self.window.say(self._hint(plan, pointing))
            self.window.view.refresh()
        else:
            kept, where = (
                (clicks.patch, key) if item.kind == "light" else (clicks.outline, self.path)
            )
            if item in pointing.areas:
                kept[where] = item.corners
            else:
                kept.pop(where, None)
            if item.meant is None or item not in pointing.areas:
                self._lay_out()
        self.changed()

    def _check(self, plan: Plan, marks: list[Item]) -> None:
        """Raises VeneerError for clicks that will not do, as soon as all are there; paper marks are
        centred first, one by one."""
        pixels = self.window.view.picture.pixels
        shape, places = pixels.shape, [one.place for one in marks]
        found = clicked(pixels, places, self.path.name) if plan.scale in MARKED else []
        for mark_, one in zip(marks, found):
            mark_.corners[0] = one.centre
        if len(places) >= WANTED[plan.scale]:
            if plan.scale == "four marks":
                squared_by_distances(found, plan.distances, shape)
            elif found:
                scale_of(found, plan.distances)
            elif plan.scale == "corners":
                squaring(places, *plan.rectangle, shape, turn=not plan.beside)
            else:
                scale_between(*places, plan.known, shape)

    def _hint(self, plan: Plan, pointing: Any) -> str:
        if self.goal == OUTLINE:
            if pointing.kind:
                found = self._found.get(self.path)
                why = f"{fields.in_words(found)} " if isinstance(found, VeneerError) else ""
                return why + translate(HERE, "Click round the leaf.")
            return translate(
                HERE, "Drag corners; a double click on an edge adds one; Delete finds it anew."
            )
        if self.goal == PATCH:
            if pointing.kind:
                return translate(HERE, "Click round the patch, back to the first corner or Enter.")
            return translate(HERE, "Drag its corners; Delete, to draw it anew.") + self._next(plan)
        if plan.scale not in WANTED:
            return ""
        if len(pointing.marks) >= WANTED[plan.scale]:
            text = translate(HERE, "Drag the crosses, or move them with the arrow keys.")
            if plan.scale in MARKED:
                text = translate(HERE, "Drag a cross to another mark.")
            return text + self._next(plan)
        if plan.scale == "points":
            return translate(HERE, "Click two points whose distance you know.")
        if plan.scale == "rings":
            return translate(HERE, "Click two paper marks or more, far apart.")
        if plan.scale == "two marks":
            return translate(HERE, "Click the two paper marks whose distance you know.")
        if plan.scale == "four marks":
            return translate(HERE, "Click the paper marks A, B, C, D, one after the other round.")
        if plan.beside:
            return translate(HERE, "Click the four corners of the sheet, in any order.")
        return translate(HERE, "Click the four corners of the leaf, in any order.")

    def _next(self, plan: Plan) -> str:
        if not plan.each or len(self.paths) < 2:
            return ""
        return " " + translate(HERE, "Page Down: the next photograph.")


class LeavesLook:
    """The window in which the leaves of a core bundle are looked at, faces and backs, with what may
    be used of them."""

    def __init__(self, bundle: Any, attempt: Callable[[Any], bool]) -> None:
        self.attempt = attempt
        self.sides = [(leaf, False) for leaf in bundle.leaves]
        self.sides += [(leaf, True) for leaf in bundle.leaves if leaf.back.source == "photo"]
        self.window: PhotoWindow | None = PhotoWindow(
            translate(HERE, "Leaves"), [self._name(*one) for one in self.sides],
            lambda page: self._turned(), self.close,
        )  # fmt: skip
        self.window.say(translate(HERE, "As the leaves come in. OK keeps them."))
        self._turned()

    @staticmethod
    def _name(leaf: Any, turned: bool) -> str:
        if turned:
            return translate(HERE, "Leaf {number}, back").format(number=leaf.number)
        return translate(HERE, "Leaf {number}").format(number=leaf.number)

    def _turned(self) -> None:
        self.attempt(self._show)

    def _show(self) -> None:
        leaf, turned = self.sides[self.window.page]
        side = leaf.side(turned)
        picture = Picture(side.photo, side.mm_per_px)
        pointing = self.window.view.pointing
        pointing.areas = []
        if not turned:
            parts = getattr(leaf.usable, "geoms", [leaf.usable])
            pointing.areas = [
                Item([picture.place(mm) for mm in part.exterior.coords[:-1]], "usable", held=True)
                for part in parts
            ]
        self.window.show(picture, keep=True)

    def close(self) -> None:
        window, self.window = self.window, None
        if window is not None:
            window.close()
