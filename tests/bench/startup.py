# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times what the installed addon costs a start of FreeCAD in which another workbench is used: its
Init.py and InitGui.py, in real starts of a home of its own, the first of which compiles. Beside it
stands what was spared: the bare import of the packages that the addon needs, which it leaves until
it is used. Milliseconds are the processor's, which others on the machine hardly change; those by
the wall's clock stand in brackets."""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from table import Row, give

INSTALLED = Path(__file__).parents[1] / "installed"
STARTS, MOST = 5, 50.0
PEER = """
import time
began = time.thread_time()
import numpy, scipy.ndimage, scipy.optimize, shapely.geometry, PIL.Image
print(1e3 * (time.thread_time() - began))
"""
PROBE = """
import os, sys
import FreeCAD
def leave():
    import FreeCADGui
    from PySide import QtCore
    window = FreeCADGui.getMainWindow()
    if window is None or not window.isVisible():
        QtCore.QTimer.singleShot(20, leave)
        return
    open(os.environ["VENEERWB_TOLD"], "w").write(".".join(FreeCAD.Version()[:3]))
    os._exit(0)
if FreeCAD.GuiUp:
    leave()
else:
    open(os.environ["VENEERWB_TOLD"], "w").write(".".join(FreeCAD.Version()[:3]))
    os._exit(0)
"""


def screen() -> tuple[subprocess.Popen[bytes], str]:
    """A screen of its own, and its name."""
    read, write = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(write), "-screen", "0", "1280x900x24", "-nolisten", "tcp"],
        pass_fds=[write], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    os.close(write)
    with os.fdopen(read) as told:
        return server, ":" + told.readline().strip()


def starts(folder: Path, display: str) -> tuple[str, list[dict]]:
    """The host's version, and what each file said in each of several starts."""
    probe, told, clock = folder / "probe.py", folder / "told", folder / "clock"
    probe.write_text(PROBE, "utf-8")
    env = {name: value for name, value in os.environ.items() if name != "DISPLAY"}
    env |= {"VENEERWB_TOLD": str(told), "VENEERWB_CLOCK": str(clock)}
    env |= {"DISPLAY": display} if display else {}
    env.pop("PYTHONDONTWRITEBYTECODE", None)
    command = ["bash", INSTALLED / "start.sh", folder / "addon.zip", probe]
    env["VENEERWB_STARTS"] = str(STARTS)
    subprocess.run(command, env=env, stdout=subprocess.DEVNULL, check=False)
    return told.read_text("utf-8"), [json.loads(one) for one in clock.read_text().splitlines()]


def say(title: str, rows: list[dict]) -> float:
    """Prints a line for one file; the median of its later starts by the processor's clock."""
    processor, wall = ([row[kind] for row in rows] for kind in ("processor", "wall"))
    later, seen = statistics.median(processor[1:]), statistics.median(wall[1:])
    ours = sum(name.split(".")[0] == "veneerwb" for name in rows[0]["imported"])
    print(
        f"  {title:28} {later:6.1f} ms ({seen:.1f} by the wall), first {processor[0]:.1f};"
        f" {ours} modules of ours, {len(rows[0]['imported']) - ours} others"
    )
    return later


def main() -> int:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        subprocess.run(["bash", INSTALLED / "zip.sh", folder / "addon.zip"], check=True)
        print(f"the zip: {(folder / 'addon.zip').stat().st_size / 1e6:.1f} MB")
        server, display = screen()
        try:
            version, rows = starts(folder, display)
        finally:
            server.terminate()
        print(f"FreeCAD {version}, {time.strftime('%Y-%m-%d')}, {STARTS} starts in a window:")
        files = ("Init.py", "InitGui.py")
        spent = sum(say(file, [row for row in rows if row["file"] == file]) for file in files)
        peer = [float(subprocess.check_output([sys.executable, "-c", PEER])) for _ in range(STARTS)]
        what = "start of FreeCAD while another workbench is used: ours in it"
        theirs = "importing the packages it needs"
        give(Row(
            "startup", what, spent, "ms", theirs, statistics.median(peer),
            aim=f"ours <= {MOST:g}", chosen=True,
        ))  # fmt: skip
        return 0 if spent < MOST else 1


if __name__ == "__main__":
    sys.exit(main())
