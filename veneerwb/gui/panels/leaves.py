# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that brings photographs of leaves into the document as a bundle."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, close_document, translate
from veneerwb.host import compat, settings
from veneerwb.host.objects.base import Refused
from veneerwb.host.steps import Step

HERE = "VeneerLeavesPanel"


def bring_in() -> LeavesPanel:
    """Opens the panel on the active document; on a new one where there is none, since 1.1 shows no
    panel without, and Cancel closes it again."""
    there = FreeCAD.ActiveDocument
    panel = LeavesPanel(there or FreeCAD.newDocument(), fresh=there is None)
    panel.show()
    return panel


SCALES = ("length", "width", "pixel", "points", "corners", "rings", "two marks", "four marks")
APART = {"ab": 300.0, "bc": 400.0, "cd": 300.0, "da": 400.0, "ac": 500.0, "bd": 500.0}
"""The boxes of the six distances between four paper marks, and what they say at first, in mm."""
LOW, HIGH = 120, 260
"""Pixels at least of the report: above the questions, and alone."""


class LeavesPanel(Panel):
    """Asks which photographs, how their scale is known, the leaves' thickness and the stack's
    sense; on its second page how the photographs are to be prepared.

    OK brings them in, which can be stopped. What was then said of them is shown, if there is
    anything to say: OK keeps them, Cancel takes them back, and so does `again`, to ask once more.
    """

    def __init__(self, doc: Any, fresh: bool = False) -> None:
        super().__init__(doc, "leaves", "veneer-bring-in")
        self.fresh, self.files, self.clicks = fresh, [], None
        self.photographs: Any = None  # the window to click in, or to look at what came in
        self.bundle: Any = None  # what has been brought in
        self.working = self.stopped = False
        self._asked_last: tuple[Any, ...] = ()
        self._paths, self._troubles = [], ()  # and what is said of those that will not do
        form = self.form
        fields.offer(form.scale, SCALES)
        fields.offer(form.corners_of, (False, True))
        fields.offer(form.each, (False, True))
        fields.offer(form.back, ("not known", "next", "previous", "own"))
        fields.offer(form.side, ("not known", "face", "back"))
        fields.offer(form.leaf, ("whole", "cut", "keep"))
        fields.offer(form.light, ("as photographed", "background", "patch", "grey patch"))
        fields.offer(form.turn, (0, 90, 180, 270))
        for name, start in (
            ("known", 2400.0), ("per_pixel", 0.5), ("rect_width", 297.0), ("rect_length", 420.0),
            ("thickness", settings.setting("Thickness")), *APART.items(),
        ):  # fmt: skip
            self.fill(name, start)
            self.take_mixed_numbers(name)
        form.pick_folder.clicked.connect(self._ask_folder)
        form.pick_files.clicked.connect(self._ask_files)
        form.pick_backs.clicked.connect(self._ask_backs)
        form.folder.textEdited.connect(lambda *_: self.files.clear())
        for box in self._summed:
            fields.watch(box, self._changed)
        for box in (form.scale, form.corners_of, form.each, form.leaf, form.light, form.back,
                    form.side):  # fmt: skip
            fields.watch(box, self._arrange)
        form.click_scale.clicked.connect(lambda: self._click("scale"))
        form.click_patch.clicked.connect(lambda: self._click("patch"))
        form.outlines.clicked.connect(lambda: self._click("outline"))
        form.stop.clicked.connect(self._stop)
        form.again.clicked.connect(self._ask_again)
        self._arrange()
        self._show_state("asking")

    @property
    def _summed(self) -> tuple[Any, ...]:
        """The boxes that the summary depends on."""
        form = self.form
        return (
            form.folder, form.backs, form.scale, form.known, form.per_pixel, form.rect_width,
            form.rect_length, form.each, form.turn, *(getattr(form, n) for n in ("leaf", *APART)),
        )  # fmt: skip

    # --- which photographs --------------------------------------------------------------------

    def _ask_folder(self) -> None:
        title = translate(HERE, "Folder of photographs")
        chosen = self._asked(title, self.form.folder.text())
        if chosen:
            self.files = []
            self.form.folder.setText(chosen)
            self._sum_up()

    def _ask_backs(self) -> None:
        title = translate(HERE, "Folder of photographs of backs")
        chosen = self._asked(title, self.form.backs.text() or self.form.folder.text())
        if chosen:
            self.form.backs.setText(chosen)
            self._sum_up()

    @staticmethod
    def _asked(title: str, start: str) -> str:
        return QtGui.QFileDialog.getExistingDirectory(FreeCADGui.getMainWindow(), title, start)

    def _ask_files(self) -> None:
        from veneerwb.core.photos.reading import SUFFIXES

        kinds = " ".join(f"*{suffix} *{suffix.upper()}" for suffix in SUFFIXES)
        title = translate(HERE, "Photographs of leaves")
        names, _ = QtGui.QFileDialog.getOpenFileNames(
            FreeCADGui.getMainWindow(), title, self.form.folder.text(), f"{title} ({kinds})"
        )
        if names:
            self.files = [Path(name) for name in names]
            self.form.folder.setText(str(self.files[0].parent))
            self._sum_up()

    def photos(self) -> tuple[dict[int, Path], dict[int, Path]]:
        """The photographs of faces and of backs by their leaves' numbers. Raises VeneerError."""
        from veneerwb.gui.leaves.plan import found

        return found(self.files, self.form.folder.text().strip(), self.form.backs.text().strip())

    def _changed(self, *_: Any) -> None:
        """A box that the keyboard only left has not changed."""
        asked = (*self.files, *(fields.value(box) for box in self._summed))
        if asked != self._asked_last:
            self._asked_last = asked
            self._sum_up()

    def _sum_up(self) -> None:
        """Says under the folder what is in it and how large that is, or why it will not do."""
        self.form.summary.setText("")
        if self.attempt(lambda: self.form.summary.setText(self._summary())) and self.photographs:
            self.photographs.refresh()

    def _summary(self) -> str:
        from veneerwb.gui.leaves.words import summary

        faces, backs = self.photos()
        self._meet([*faces.values(), *backs.values()])
        return summary(faces, backs, self.plan())

    def _meet(self, paths: list[Path]) -> None:
        """Photographs that none of those before are among have not been clicked on."""
        if paths != self._paths:
            self.form.report.setVisible(False)
            self._close_window()
            if not set(paths) & set(self._paths):
                self.clicks = None
        self._paths = paths

    # --- how they are prepared ----------------------------------------------------------------

    def plan(self) -> Any:
        """What the boxes say, with what was clicked."""
        from veneerwb.gui.leaves.plan import Clicks, Plan

        self.clicks = self.clicks or Clicks()
        return Plan(
            scale=self.value("scale"),
            known=self.value("known"),
            per_pixel=self.value("per_pixel"),
            rectangle=(self.value("rect_width"), self.value("rect_length")),
            apart=tuple(map(self.value, APART)),
            beside=self.value("corners_of"),
            each=self.value("each"),
            leaf=self.value("leaf"),
            light=self.value("light"),
            turn=self.value("turn"),
            clicks=self.clicks,
        )

    def _arrange(self, *_: Any) -> None:
        """Shows the rows that the present choices need."""
        form, scale = self.form, self.form.scale.currentData()
        clicked, patch = scale in SCALES[3:], "patch" in form.light.currentData()
        apart = scale in ("points", "two marks")
        self.show_row(form.known, apart or scale in ("length", "width"))
        words = translate(HERE, "&Apart") if apart else translate(HERE, "It &measures")
        form.known_label.setText(words)
        for name in APART:
            self.show_row(getattr(form, name), scale == "four marks")
        self.show_row(form.per_pixel, scale == "pixel")
        for box in (form.corners_of, form.rect_width, form.rect_length):
            self.show_row(box, scale == "corners")
        self.show_row(form.each, clicked or patch)
        self.show_row(form.side, form.back.currentData() in ("next", "previous"))
        form.sense_hint.setVisible(self._sense() == "own" and form.back.currentData() != "own")
        form.apart_hint.setVisible(scale in ("two marks", "four marks"))
        form.click_scale.setVisible(clicked)
        form.click_patch.setVisible(patch)
        form.outlines.setVisible(form.leaf.currentData() != "whole")
        if self.photographs is not None:
            self.photographs.refresh()

    def show_row(self, box: Any, shown: bool) -> None:
        for one in (box, getattr(self.form, f"{box.objectName()}_label")):
            one.setVisible(shown)

    def _click(self, goal: str) -> None:
        """Opens the photographs to be clicked on."""
        self.attempt(lambda: self._open_photographs(goal))

    def _open_photographs(self, goal: str) -> None:
        from veneerwb.gui.leaves.photos import LeavesPhotos

        faces, backs = self.photos()
        if self.photographs is None:
            self.photographs = LeavesPhotos(self.plan, self.attempt, self._sum_up_clicks)
        self.photographs.open(goal, [*faces.values(), *backs.values()])

    def _sum_up_clicks(self) -> None:
        """As `_sum_up`, but what was said of the clicks themselves stays."""
        try:
            self.form.summary.setText(self._summary())
        except Exception as error:
            self.say(fields.told(error))

    # --- OK -----------------------------------------------------------------------------------

    def _show_state(self, state: str) -> None:
        """asking, working or done: what the panel shows of itself."""
        form = self.form
        form.tabs.setVisible(state == "asking")  # so that what is below comes into sight
        for box in (form.progress_text, form.progress, form.stop):
            box.setVisible(state == "working")
        for box in (form.report, form.again):
            box.setVisible(state == "done")

    def accept(self) -> bool:
        if self.working or self.form is None or (self.bundle is None and not self._brought_in()):
            return False
        return super().accept()

    def unsaved(self) -> bool:
        return self.clicks is not None and any(vars(self.clicks).values())

    def _brought_in(self) -> bool:
        """Brings the photographs in; whether that is all, and nothing is to be looked at."""
        self.working, self.stopped, self._troubles = True, False, ()
        try:
            went_well = self.attempt(self._bring_in)
        finally:
            self.working = False
        if self.form is None:  # closed meanwhile
            return False
        said = list(self.bundle.Report) if went_well else []
        looked_at = went_well and not (self.plan().plain and len(said) <= 2)
        self._show_state("done" if looked_at else "asking")
        if looked_at:
            self.attempt(lambda: self._look_at(said))
        elif len(self._troubles) > 1:
            self._report(self._troubles)
        return went_well and not looked_at

    def _report(self, lines: Sequence[str]) -> None:
        """Shows what is to be said of the photographs."""
        self.form.report.clear()
        self.form.report.addItems(list(lines))
        self.form.report.setMinimumHeight(LOW if self.bundle is None else HIGH)
        self.form.report.setVisible(True)

    def _look_at(self, said: list[str]) -> None:
        """Shows what was said of the photographs, and the leaves as they come in."""
        from veneerwb.gui.leaves.photos import LeavesLook
        from veneerwb.host.objects import core_bundle

        self._report(said)
        self._close_window()
        self.photographs = LeavesLook(core_bundle(self.bundle), self.attempt)

    def _bring_in(self) -> None:
        from veneerwb.host.bringing_in import bring_in
        from veneerwb.host.photos import shape_of

        faces, backs = self.photos()
        paths = [*faces.values(), *backs.values()]
        hows = self.plan().preparations(paths, lambda: shape_of(paths[0]))
        self._show_state("working")
        try:
            self.bundle = bring_in(
                self.doc,
                list(faces.values()),
                hows[: len(faces)],
                self.value("thickness"),
                self._sense(),
                self._progressed,
                numbers=list(faces),
                backs=backs,
                backs_how=dict(zip(backs, hows[len(faces) :])),
            )
        except Exception as error:
            self._troubles = getattr(error, "lines", ())
            self._take_out()
            raise

    def _sense(self) -> str:
        """The stack's sense as seen from the side photographed, which becomes the face."""
        from veneerwb.gui.leaves.plan import SENSES

        return SENSES.get((self.value("back"), self.value("side")), "own")

    def _progressed(self, done: int, total: int, text: str) -> bool:
        """Shows how far it is and lets the user stop it; false when that has happened. The step
        begins when all photographs are ready."""
        if self.form is not None:
            self.form.progress.setRange(0, total)
            self.form.progress.setValue(done)
            self.form.progress_text.setText(text)
            QtGui.QApplication.processEvents()
        if self.stopped or self.form is None or self.doc is None:
            return False
        if done == total:
            self.step = Step(self.doc, translate(HERE, "Bring in leaves"))
        return True

    def _stop(self) -> None:
        self.stopped = True

    def _ask_again(self) -> None:
        if self.attempt(self._take_out):
            self._close_window()
            self._show_state("asking")

    def _take_out(self) -> None:
        """Takes back what was brought in; Refused, and it stays, where another command has ended
        the step and something uses the leaves by now."""
        if self.step is not None and self.step.goes_on:
            self.bundle = None  # what goes now the user has not deleted
            super().take_back()
        elif self.bundle is not None and self.doc is not None:
            from veneerwb.host.bringing_in import take_out

            made, self.bundle = self.bundle, None
            try:
                take_out(made)
            except Exception:
                self.bundle = made
                raise
        self.step = None

    def slotDeletedObject(self, obj: Any) -> None:
        """The bundle is deleted while it is looked at: the photographs may be brought in anew."""
        if self.bundle is not None and obj == self.bundle:
            self.bundle = None
            self.soon(self._say_deleted)

    def _say_deleted(self) -> None:
        if self.step is not None:
            self.step.keep()  # the deletion too can be undone
            self.step = None
        self._close_window()
        self._show_state("asking")
        self.say(translate(HERE, "The bundle was deleted; OK brings the photographs in again."))

    def finish(self) -> None:
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(self.bundle)

    # --- the ways out -------------------------------------------------------------------------

    def reject(self) -> bool:
        """While photographs are brought in, Cancel and Escape stop that and no more."""
        if self.working:
            self.stopped = True
            return False
        return self.attempt(self._take_out) and super().reject()

    def take_back(self) -> None:
        self.stopped = True
        try:
            self._take_out()
        except Refused as refused:  # nobody is there to be asked: the leaves stay
            compat.say(fields.told(refused))
        if self.fresh and self.doc is not None and not self.doc.Objects:
            name, self.doc = self.doc.Name, None
            later(lambda: close_document(name))

    def _close_window(self) -> None:
        photographs, self.photographs = self.photographs, None
        if photographs is not None:
            photographs.close()

    def let_go(self) -> None:
        self._close_window()
        super().let_go()
