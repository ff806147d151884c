# SPDX-License-Identifier: LGPL-2.1-or-later
"""The host finds the addon where it was linked, and reads what package.xml says."""

import sys
from pathlib import Path

import FreeCAD

import veneerwb

ROOT = Path(__file__).parents[2]


def test_host_is_no_older_than_the_addon_asks_for() -> None:
    metadata = FreeCAD.Metadata(str(ROOT / "package.xml"))
    version = tuple(int(part) for part in FreeCAD.Version()[:2])
    assert version >= tuple(int(part) for part in str(metadata.FreeCADMin).split(".")[:2])


def test_host_reads_the_metadata() -> None:
    metadata = FreeCAD.Metadata(str(ROOT / "package.xml"))
    assert metadata.Name == "Veneer Layup"
    assert str(metadata.Version).startswith(veneerwb.__version__)
    assert metadata.Content["workbench"][0].Classname == "VeneerWorkbench"
    needs = ["numpy", "scipy", "shapely", "pillow", "ezdxf"]
    assert [one["package"] for one in metadata.Depend] == needs
    if "optional" in metadata.Depend[0]:  # newer hosts
        assert [one["package"] for one in metadata.Depend if one["optional"]] == ["ezdxf"]


def test_host_put_the_linked_addon_on_its_path() -> None:
    linked = [entry for entry in sys.path if entry.endswith("VeneerLayup")]
    assert [Path(entry).resolve() for entry in linked] == [ROOT]
