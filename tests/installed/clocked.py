# SPDX-License-Identifier: LGPL-2.1-or-later
"""Has the files named say what they cost when a host runs them: `clocked.py Init.py InitGui.py`.

Each adds a line to the file VENEERWB_CLOCK: its name, milliseconds by the wall's clock and of the
processor, and the modules that it imported.
"""

import sys
from pathlib import Path

BEFORE = """\
import sys, time
_before, _began, _worked = set(sys.modules), time.perf_counter(), time.thread_time()
"""
AFTER = """
_took, _worked = time.perf_counter() - _began, time.thread_time() - _worked
_imported = sorted(set(sys.modules) - _before)
import json, os
with open(os.environ["VENEERWB_CLOCK"], "a") as _clock:
    _told = {{"file": {name!r}, "wall": 1e3 * _took, "processor": 1e3 * _worked}}
    _told["imported"] = _imported
    _clock.write(json.dumps(_told) + "\\n")
"""

for path in map(Path, sys.argv[1:]):
    if (path.parent / "package.xml").exists():
        text = path.read_text("utf-8")
        path.write_text(BEFORE + text + AFTER.format(name=path.name), "utf-8")
