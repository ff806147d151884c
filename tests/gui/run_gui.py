# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs the tests of this folder inside FreeCAD's window: `xvfb-run freecad tests/gui/run_gui.py`.

What pytest prints goes to the file VENEERWB_LOG, because 1.x swallows the standard output of its
window. The tests start from the event loop, once the window is up, and may pump events themselves.
A run that takes longer than VENEERWB_GUI_SECONDS is ended, and the log says where it hung.
VENEERWB_RESULT is a path, written to say that the tests were run at all.
"""

import faulthandler
import os
import shlex
import sys
import traceback

import FreeCADGui
from PySide import QtCore

HERE = os.path.dirname(os.path.abspath(__file__))
LOG = open(os.environ["VENEERWB_LOG"], "w", encoding="utf-8", buffering=1)  # noqa: SIM115


def run() -> int:
    """pytest's exit code; 1 when pytest itself failed."""
    sys.stdout = sys.stderr = LOG
    try:
        import pytest

        root = os.path.dirname(os.path.dirname(HERE))
        more = shlex.split(os.environ.get("VENEERWB_PYTEST_ARGS", ""))
        return int(pytest.main(["--rootdir", root, "-c", f"{root}/pyproject.toml", HERE, *more]))
    except BaseException:
        traceback.print_exc()
        return 1


def when_ready() -> None:
    """Runs the tests and leaves if the window is up; else looks again a little later."""
    window = FreeCADGui.getMainWindow()
    if window is None or not window.isVisible():
        QtCore.QTimer.singleShot(50, when_ready)
        return
    status = run()
    with open(os.environ["VENEERWB_RESULT"], "w", encoding="ascii") as result:
        result.write(str(status))
    LOG.flush()
    os._exit(status)


sys.path.append(os.environ["VENEERWB_SITE"])  # no host's window heeds PYTHONPATH
for stream in (1, 2):
    os.dup2(LOG.fileno(), stream)
faulthandler.dump_traceback_later(
    float(os.environ.get("VENEERWB_GUI_SECONDS", "900")), exit=True, file=LOG
)
QtCore.QTimer.singleShot(0, when_ready)
