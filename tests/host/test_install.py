# SPDX-License-Identifier: LGPL-2.1-or-later
"""The zip that users install, unpacked into a home of its own and started without a window: with
all packages, without the optional one, and without those that are needed."""

import json
import math
import os
import re
import subprocess
from pathlib import Path

import pytest

INSTALLED = Path(__file__).parents[1] / "installed"
NEEDED = ("scipy", "shapely", "PIL")
NAMES = ("scipy", "shapely", "pillow")


@pytest.fixture(scope="module")
def addon(tmp_path_factory):
    made = tmp_path_factory.mktemp("zip") / "addon.zip"
    subprocess.run(
        ["bash", INSTALLED / "zip.sh", made, "veneer-layup-main"], check=True, timeout=60
    )
    return made


@pytest.fixture(scope="module")
def started(addon, tmp_path_factory):
    """What headless.py tells of a host without certain packages, and what the host printed."""
    folder = tmp_path_factory.mktemp("told")

    def start(*packages):
        told, clock = folder / "told", folder / "clock"
        clock.unlink(missing_ok=True)
        env = {name: value for name, value in os.environ.items() if name != "DISPLAY"}
        env |= {"VENEERWB_TOLD": str(told), "VENEERWB_CLOCK": str(clock)}
        command = ["bash", INSTALLED / "start.sh", addon, INSTALLED / "headless.py", *packages]
        done = subprocess.run(command, env=env, stdout=subprocess.PIPE, text=True, timeout=120)
        found = json.loads(told.read_text("utf-8"))
        assert "failed" not in found, found["failed"]
        assert "Traceback" not in done.stdout
        lines = [json.loads(line) for line in clock.read_text("utf-8").splitlines()]
        return found, {line["file"]: line["imported"] for line in lines}

    return start


def assert_kept(solids):
    """The solids of the example: as they were opened, recomputed and opened again."""
    opened, *later = solids
    assert {name: count for name, (count, _) in opened.items()} == {"Match": 12, "PanelParts": 6}
    for one in later:
        assert one.keys() == opened.keys()
        for name, (count, volume) in one.items():
            assert count == opened[name][0]
            assert math.isclose(volume, opened[name][1], rel_tol=1e-6)


def test_it_starts_from_its_own_folder_and_imports_next_to_nothing(started):
    told, imported = started()
    assert told["root"].endswith("/Mod/veneer-layup-main")
    assert told["started"] == ["veneerwb"] and imported == {"Init.py": ["veneerwb"]}
    assert told["opened"] == told["recomputed"] == []
    assert told["templates"] == {"dxf": True, "svg": True}
    assert_kept(told["solids"])


def test_without_the_optional_package_only_its_files_are_refused(started):
    told, _ = started("ezdxf")
    assert told["opened"] == told["recomputed"] == []
    assert told["templates"].pop("svg") is True
    assert re.search(r"ezdxf.* SVG .*: (sudo apt install python3-ezdxf|.*pip install .*ezdxf)$",
                     told["templates"]["dxf"])  # fmt: skip
    assert_kept(told["solids"])


def test_without_what_is_needed_a_document_keeps_its_shapes_and_says_what_to_do(started):
    told, _ = started(*NEEDED, "ezdxf")
    assert told["opened"] == []
    (sentence,) = told["recomputed"]
    assert sentence.startswith(f"This needs {', '.join(NAMES)}, which FreeCAD's Python does not")
    if os.path.exists("/var/lib/dpkg/status"):
        assert sentence.endswith(": sudo apt install python3-scipy python3-shapely python3-pil")
    assert "templates" not in told
    assert_kept(told["solids"])
