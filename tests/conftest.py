# SPDX-License-Identifier: LGPL-2.1-or-later
"""What all rings share: which of them can run here, and hypothesis made repeatable.

`host` needs FreeCAD's own interpreter and `gui` its window, so a plain `pytest` passes them by;
tests/run.sh starts each where it belongs.
"""

import os
import sys

import hypothesis

os.environ.setdefault("QT_QPA_PLATFORM", "xcb" if os.environ.get("VENEERWB_LOG") else "offscreen")

hypothesis.settings.register_profile("repeatable", derandomize=True, deadline=None)
hypothesis.settings.load_profile("repeatable")


def _hosted(with_window: bool) -> bool:
    app = sys.modules.get("FreeCAD")
    return app is not None and bool(app.GuiUp) >= with_window


collect_ignore = [name for name in ("host", "gui") if not _hosted(with_window=name == "gui")]
