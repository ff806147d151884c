# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures of the screens for docs, taken on the way of docs/first-top.md as a user goes it.

Runs in FreeCAD's window (`bash resources/demo/run.sh pictures`): the photographs of a generated
bundle are brought in, proved, laid, drawn. What is written to docs/pictures is the whole window or
a part of it, in few colours, so that a second run differs by no more than the host's own drawing.
"""

from __future__ import annotations

import io
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
from PIL import Image
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.gui.panels.base import shown

OUT = Path(__file__).resolve().parents[2] / "docs/pictures"
WIDE = 720
"""Pixels: of a picture, so that it fits the window of help."""
COLOURS = 256
PATIENCE = 60.0
"""Seconds that a step may take."""
LEAVES = {
    "leaves": 14, "width": 340.0, "length": 900.0, "thickness": 0.6, "mm_per_px": 0.9,
    "figure": "cathedral", "seed": 11, "knots": 0, "disturb": {"shift": 4.0, "turn": 0.5},
}  # fmt: skip


def main() -> None:
    """Every step of the way, each with its picture."""
    OUT.mkdir(parents=True, exist_ok=True)
    quiet_window()
    with tempfile.TemporaryDirectory() as folder:
        leaves = Path(folder) / "ash leaves"
        leaves.mkdir()
        for leaf in sawn_bundle(**LEAVES).leaves:
            Image.fromarray(leaf.photo).save(leaves / f"ash {leaf.number:02d}.png")
        for step in (bring_in, prove, lay, choose_spot, draw, to_the_bench, build_up):
            step(leaves)
    example()


# --- the steps ----------------------------------------------------------------------------------


def bring_in(leaves: Path) -> None:
    FreeCAD.newDocument("HallTable")
    panel = run("Veneer_BringInLeaves")
    panel.form.folder.setText(str(leaves))
    panel.form.folder.editingFinished.emit()
    type_in(panel.form.known, f"{LEAVES['length']:g} mm")
    type_in(panel.form.thickness, "0.6 mm")
    choose(panel.form.back, "next")
    choose(panel.form.side, "face")
    unfocus()
    panel.form.folder.setText("~/ash leaves")  # not where this script put them
    take("bring-in", (0, 152, 276, 572))
    panel.form.folder.setText(str(leaves))
    press(QtGui.QDialogButtonBox.Ok)
    wait(lambda: not shown() and FreeCAD.ActiveDocument.Objects, "the leaves are there")


def prove(leaves: Path) -> None:
    panel = run("Veneer_Sequence")
    panel.form.prove.click()
    wait(lambda: panel.form.summary.text() and panel.form.register.isEnabled(), "it is proved")
    settle()
    wait(lambda: panel.form.prove.isEnabled(), "it is through")
    take("sequence")
    panel.form.register.click()
    wait(lambda: only("Bundle").Follows == "figure", "they are registered")
    press(QtGui.QDialogButtonBox.Ok)
    wait(lambda: not shown(), "the panel closes")


def lay(leaves: Path) -> None:
    panel = run("Veneer_NewRadialMatch")
    type_in(panel.form.Diameter, "1000 mm")
    panel.form.Ways.setValue(12)
    type_in(panel.form.Oversize, "10 mm")
    wait(lambda: len(only("Match").Shape.Solids) == 12, "the match follows")
    fit()
    take("match")
    press(QtGui.QDialogButtonBox.Ok)
    wait(lambda: not shown(), "the panel closes")


def choose_spot(leaves: Path) -> None:
    select(only("Match"))
    run("Veneer_ChooseSpot")
    settle(2.0)
    take("spot")
    press(QtGui.QDialogButtonBox.Cancel)
    wait(lambda: not shown(), "the panel closes")


def draw(leaves: Path) -> None:
    select(only("Match"))
    panel = run("Veneer_DrawMatch")
    panel.form.Title.setText("Hall table")
    panel.form.Title.editingFinished.emit()
    press(QtGui.QDialogButtonBox.Ok)
    wait(lambda: not shown(), "the panel closes")
    from veneerwb.host.objects.drawing import page_of

    show_page(page_of(only("Drawing")))
    take("drawing")


def to_the_bench(leaves: Path) -> None:
    from veneerwb.host import shop_pages

    select(only("Match"))
    run("Veneer_Bench")
    press(QtGui.QDialogButtonBox.Ok)
    wait(lambda: not shown() and only("Bench").Revision, "the sheets are made")
    pages = shop_pages.pages_of(only("Bench"))
    show_page(pages["stack"] if "stack" in pages else next(iter(pages.values())))
    select(only("Match"))
    run("Veneer_Bench")
    FreeCADGui.SendMsgToActiveView("ViewFit")
    take("bench")
    press(QtGui.QDialogButtonBox.Cancel)
    wait(lambda: not shown(), "the panel closes")


def build_up(leaves: Path) -> None:
    show_model()
    select(only("Match"))
    panel = run("Veneer_BuildUp")
    for name, text in {
        "CrossbandAbove": "1.5 mm", "CrossbandBelow": "1.5 mm", "BackerThickness": "0.6 mm",
        "LippingWidth": "10 mm", "BorderWidth": "60 mm", "LineWidth": "4 mm", "Explode": "60 mm",
    }.items():  # fmt: skip
        type_in(getattr(panel.form, name), text)
    choose(panel.form.BorderKind, "following")
    panel.form.BorderSegments.setValue(12)
    settle(1.5)
    FreeCADGui.activeDocument().activeView().viewIsometric()
    fit()
    take("build-up")
    press(QtGui.QDialogButtonBox.Cancel)
    wait(lambda: not shown(), "the panel closes")


def example() -> None:
    FreeCAD.closeDocument(FreeCAD.ActiveDocument.Name)
    FreeCADGui.runCommand("Veneer_OpenExample")
    FreeCADGui.activeDocument().activeView().viewTop()
    fit()
    take("example")


# --- the user's hands ---------------------------------------------------------------------------


def quiet_window() -> None:
    """The workbench, in a window of one size, without what changes from run to run."""
    view = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    for name in ("ShowNaviCube", "CornerCoordSystem", "UseNavigationAnimations"):
        view.SetBool(name, False)
    for name in ("Gradient", "RadialGradient"):
        view.SetBool(name, False)
    view.SetBool("Simple", True)
    view.SetUnsigned("BackgroundColor", 0xF2F1EEFF)
    window = FreeCADGui.getMainWindow()
    window.showMaximized()
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    for area in window.findChildren(QtGui.QMdiArea):
        area.closeAllSubWindows()
    settle(1.0)


def settle(seconds: float = 0.4) -> None:
    """Lets everything be drawn that is due."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        FreeCADGui.updateGui()
        QtGui.QApplication.processEvents()


def wait(predicate: Callable[[], Any], what: str) -> None:
    until = time.monotonic() + PATIENCE
    while not predicate():
        if time.monotonic() > until:
            (OUT.parents[1] / "out/stuck.png").write_bytes(grabbed())
            sys.exit(f"Waited in vain: {what}.")
        settle(0.05)


def run(command: str) -> Any:
    """The panel that a command opens."""
    FreeCADGui.runCommand(command)
    wait(shown, f"{command} opens its panel")
    settle()
    return shown()[0]


def press(button: Any) -> None:
    """The host's own OK, Cancel or Close."""
    for box in QtGui.QApplication.allWidgets():
        if isinstance(box, QtGui.QDialogButtonBox) and box.isVisible() and box.button(button):
            box.button(button).click()
    settle()


def type_in(box: Any, text: str) -> None:
    line = box.findChild(QtGui.QLineEdit)
    line.selectAll()
    for letter in text:
        line.insert(letter)
    settle(0.1)


def choose(box: Any, data: str) -> None:
    box.setCurrentIndex(box.findData(data))
    settle(0.1)


def unfocus() -> None:
    """No box with a cursor in it, that blinks."""
    focused = QtGui.QApplication.focusWidget()
    if focused is not None:
        focused.clearFocus()


def only(kind: str) -> Any:
    from veneerwb.gui.chosen import of_kind

    return of_kind(FreeCAD.ActiveDocument, kind)[0]


def select(obj: Any) -> None:
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj)


def fit() -> None:
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle()


def show_model() -> None:
    """The 3-D view before the pages."""
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    for frame in area.subWindowList():
        if "View3DInventor" in frame.widget().metaObject().className():
            area.setActiveSubWindow(frame)
    settle()


def show_page(page: Any) -> None:
    """A drawing's page, whole."""
    page.ViewObject.doubleClicked()
    settle(1.5)
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle()


# --- the pictures -------------------------------------------------------------------------------


def grabbed(kind: str = "PNG") -> bytes:
    """The screen as it is."""
    held = QtCore.QBuffer()
    held.open(QtCore.QIODevice.WriteOnly)
    QtGui.QApplication.primaryScreen().grabWindow(0).save(held, kind)
    return bytes(held.data())


def take(name: str, part: tuple[int, int, int, int] | None = None) -> None:
    """The window as it is now, as wide as the help shows it; or a part of it (left, top, right,
    bottom), as large as it is."""
    unfocus()
    settle(0.8)
    with Image.open(io.BytesIO(grabbed())) as image:
        whole = image.convert("RGB")
    if part:
        seen = whole.crop(part)
    else:
        seen = whole.resize((WIDE, round(WIDE * whole.height / whole.width)), Image.LANCZOS)
    seen.quantize(COLOURS, dither=Image.Dither.NONE).save(OUT / f"{name}.png", optimize=True)
    print(f"{name}: docs/pictures/{name}.png")


if __name__ == "__main__":
    main()
