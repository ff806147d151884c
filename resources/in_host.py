# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs the Python file named by VENEERWB_RUN inside FreeCAD and leaves with that file's exit code.

Used as `freecadcmd resources/in_host.py`. Left to itself the host runs a script that raises a
second time and then exits 0. VENEERWB_SITE is the folder of packages that the set-up filled;
writing VENEERWB_RESULT (a path) says that this file was reached at all.
"""

import os
import runpy
import sys
import traceback

import FreeCAD


def run(path: str) -> int:
    """The exit code of the Python file at `path`; a traceback is printed and counts as 1."""
    sys.path.insert(0, os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
    sys.argv = [path]
    try:
        # The host's own commands look for these names in __main__: the file's, while it runs.
        names = {"App": FreeCAD, "Gui": sys.modules.get("FreeCADGui")}
        runpy.run_path(path, names, "__main__")
    except SystemExit as leaving:
        if leaving.code is None or isinstance(leaving.code, int):
            return leaving.code or 0
        print(leaving.code, file=sys.stderr)
        return 1
    except BaseException:
        traceback.print_exc()
        return 1
    return 0


sys.path.append(os.environ["VENEERWB_SITE"])  # 1.0.0 ignores PYTHONPATH
status = run(os.environ["VENEERWB_RUN"])
sys.stdout.flush()
sys.stderr.flush()
with open(os.environ["VENEERWB_RESULT"], "w", encoding="ascii") as result:
    result.write(str(status))
os._exit(status)
