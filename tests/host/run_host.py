# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs this folder's tests in FreeCAD without a window: `freecadcmd tests/host/run_host.py`.

The host takes no options on 0.20.2, so more arguments for pytest come in VENEERWB_PYTEST_ARGS. It
must be left by os._exit: else it goes on to its own console, and its exit code is not pytest's.
VENEERWB_RESULT is a path, written to say that the tests were run at all.
"""

import os
import shlex
import sys
import traceback

HERE = os.path.dirname(os.path.abspath(__file__))


def run() -> int:
    """pytest's exit code; 1 when pytest itself failed."""
    try:
        import pytest

        root = os.path.dirname(os.path.dirname(HERE))
        more = shlex.split(os.environ.get("VENEERWB_PYTEST_ARGS", ""))
        return int(pytest.main(["--rootdir", root, "-c", f"{root}/pyproject.toml", HERE, *more]))
    except BaseException:
        traceback.print_exc()
        return 1


sys.path.append(os.environ["VENEERWB_SITE"])  # 1.0.0 ignores PYTHONPATH
status = run()
if "VENEERWB_RESULT" in os.environ:
    with open(os.environ["VENEERWB_RESULT"], "w", encoding="ascii") as result:
        result.write(str(status))
sys.stdout.flush()
sys.stderr.flush()
os._exit(status)
