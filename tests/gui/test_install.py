# SPDX-License-Identifier: LGPL-2.1-or-later
"""The zip that users install, unpacked into a home of its own and started in a window of its own:
what it costs while another workbench is in use, and what every command says where packages are
missing. tests/host/test_install.py has the same without a window."""

import json
import os
import subprocess
from pathlib import Path

import pytest

INSTALLED = Path(__file__).parents[1] / "installed"
NEEDED = ("scipy", "shapely", "PIL")
SENTENCE = "This needs scipy, shapely, pillow, which FreeCAD's Python does not have; "
NEED_NOTHING = {"Veneer_ShowSeams", "Veneer_ShowNumbers", "Veneer_OpenExample", "Veneer_Help"}
"""Commands that need none of the packages."""
AT_START = {
    "veneerwb", "veneerwb.words", "veneerwb.packages", "veneerwb.gui", "veneerwb.gui.starting",
    "veneerwb.gui.language", "veneerwb.gui.preferences", "veneerwb.gui.later", "veneerwb.host",
    "veneerwb.host.compat", "veneerwb.host.settings",
}  # fmt: skip
"""All of us that may be loaded before the workbench is chosen: about 10 ms of the 50 that a start
may cost (tests/bench/startup.py). What is added here is to be light."""
LIGHT = {"string", "_string", "unicodedata", "importlib", "PySide", "shiboken2", "shiboken6"}
"""Others that may come with it, where the host has not loaded them."""


@pytest.fixture(scope="module")
def screen():
    """Another screen: on this one the host would ask this process for what was copied, and this
    process waits."""
    command = ["Xvfb", "-displayfd", "1", "-screen", "0", "1280x900x24", "-nolisten", "tcp"]
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as server:
        yield f":{server.stdout.readline().strip()}"
        server.terminate()


@pytest.fixture(scope="module")
def started(tmp_path_factory, screen):
    """What window.py tells of a host without certain packages; what the host imported for us."""
    folder = tmp_path_factory.mktemp("installed")
    addon = folder / "addon.zip"
    subprocess.run(["bash", INSTALLED / "zip.sh", addon, "veneer-layup-main"], check=True)

    def start(*packages):
        told, clock = folder / "told", folder / "clock"
        clock.unlink(missing_ok=True)
        env = os.environ | {"VENEERWB_TOLD": str(told), "VENEERWB_CLOCK": str(clock)}
        env["DISPLAY"] = screen
        command = ["bash", INSTALLED / "start.sh", addon, INSTALLED / "window.py", *packages]
        done = subprocess.run(command, env=env, stdout=subprocess.PIPE, text=True, timeout=120)
        assert told.exists(), done.stdout[-4000:]
        found = json.loads(told.read_text("utf-8"))
        assert "failed" not in found, found["failed"]
        assert "Traceback" not in done.stdout and "Traceback" not in found["report"]
        lines = [json.loads(line) for line in clock.read_text("utf-8").splitlines()]
        return found, {line["file"]: line["imported"] for line in lines}

    return start


def said(seen):
    return seen["boxes"] + seen["troubles"]


def test_it_starts_light_and_all_but_dxf_works_without_the_optional_package(started):
    told, imported = started("ezdxf")
    assert told["workbench"] == "PartWorkbench" and told["chosen"] == "VeneerWorkbench"
    assert set(told["started"]) <= AT_START
    others = {one.split(".")[0] for one in imported["InitGui.py"]} - LIGHT
    assert imported["Init.py"] == ["veneerwb"] and others == {"veneerwb"}
    assert told["solids"] == [12, 12] and told["message"] == ""
    (written,) = told["commands"].pop("Veneer_WritePacket")["boxes"]
    assert written.count("ezdxf") >= 2 and "DXF" in written
    assert None not in told["commands"].values()
    everything = [one for seen in told["commands"].values() for one in said(seen)]
    assert not [one for one in everything if "Python" in one or "install" in one]
    assert sum(seen["panel"] for seen in told["commands"].values()) >= 15


def test_without_what_is_needed_every_command_says_what_to_get(started):
    told, _ = started(*NEEDED, "ezdxf")
    assert told["workbench"] == "PartWorkbench" and told["chosen"] == "VeneerWorkbench"
    for name, seen in told["commands"].items():
        if name in NEED_NOTHING:
            assert said(seen) == [], name
        elif seen is not None:  # not greyed
            (one,) = said(seen)
            assert one.startswith(SENTENCE), name
    greyed = [name for name, seen in told["commands"].items() if seen is None]
    assert greyed == ["Veneer_SaveDrawing"]
    for name in ("Bundle", "Match", "BuildUp", "PanelParts", "Closing", "Bench"):
        (one,) = said(told["double clicks"][name])
        assert one.startswith(SENTENCE), name
    assert told["solids"] == [12, 12] and told["message"].startswith(SENTENCE)
    assert "shown without pictures: This needs" in told["report"]  # so the report was read
    lines = [line for line in told["report"].splitlines() if "This needs" in line]
    assert sum("without pictures" not in line for line in lines) == 1  # not for every object
