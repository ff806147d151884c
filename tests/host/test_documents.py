# SPDX-License-Identifier: LGPL-2.1-or-later
"""Documents: saved, reopened, opened without the addon or its packages, by older and newer
versions."""

import importlib
import json
import os
import subprocess
import sys
import textwrap
from pathlib import Path

import FreeCAD
import pytest

from veneerwb.host import compat
from veneerwb.host.objects import add_bundle, add_match, add_stock
from veneerwb.host.objects.base import Proxy

ROOT = Path(__file__).parents[2]
FIXTURES = sorted((ROOT / "tests" / "fixtures").glob("schema1-*.FCStd"))
SECOND = sorted((ROOT / "tests" / "fixtures").glob("schema2-*.FCStd"))
NAMES = [  # in every saved document: never to change
    ("veneerwb.host.objects.leaf", "Leaf"),
    ("veneerwb.host.objects.bundle", "Bundle"),
    ("veneerwb.host.objects.stock", "Stock"),
    ("veneerwb.host.objects.match", "Match"),
    ("veneerwb.host.objects.facing", "Facing"),
    ("veneerwb.host.objects.drawing", "Drawing"),
    ("veneerwb.host.objects.spot", "Spot"),
    ("veneerwb.host.objects.closing", "Closing"),
    ("veneerwb.host.objects.buildup", "BuildUp"),
    ("veneerwb.host.objects.buildup", "Parts"),
    ("veneerwb.host.objects.run", "Run"),
]


@pytest.mark.parametrize(("module", "name"), NAMES)
def test_proxy_names_are_frozen(module, name):
    proxy = getattr(importlib.import_module(module), name)
    assert (proxy.__module__, proxy.__qualname__, proxy.kind) == (module, name, name)


def test_a_proxy_holds_nothing_but_small_json(doc, stock):
    for proxy in (stock.Proxy, add_match(doc, stock).Proxy):
        assert vars(proxy) == {}
        for dumped in (proxy.dumps(), proxy.__getstate__()):
            assert len(json.dumps(dumped)) < 100
        proxy.loads({"kind": "Match"})
        proxy.__setstate__(None)


def test_saved_and_reopened_a_document_is_the_same_and_alive(doc, sawn, tmp_path):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    other = add_match(doc, add_stock(doc, 500.0, 900.0, 12), Ways=12, Top="Polygon")
    doc.recompute()
    before = {obj.Name: contents(obj) for obj in doc.Objects}
    marks = [obj.ShapeMark for obj in (match, other)]
    volumes = [obj.Shape.Volume for obj in (match, other)]
    doc.saveAs(str(tmp_path / 'it\'s "größer".FCStd'))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / 'it\'s "größer".FCStd'))
    assert {obj.Name: contents(obj) for obj in again.Objects} == before
    matches = again.getObject("Match"), again.getObject("Match001")
    assert [obj.Shape.Volume for obj in matches] == pytest.approx(volumes, rel=1e-12)
    for obj in again.Objects:
        obj.touch()
    again.recompute()
    assert [obj.Message for obj in matches] == ["", ""]
    assert [obj.ShapeMark for obj in matches] == marks
    matches[0].Ways = 6
    again.recompute()
    assert len(matches[0].Shape.Solids) == 6


def contents(obj):
    """The properties of an object that can be compared."""
    skipped = (
        "Proxy",
        "Shape",
        "Photo",
        "BackPhoto",
        "ExpressionEngine",
        "Leaves",
        "Bundle",
        "ChangedPieces",
        "ShapeMaterial",
    )
    kept = [name for name in obj.PropertiesList if name not in skipped and not name.startswith("_")]
    return {name: str(getattr(obj, name)) for name in kept}


def test_outputs_are_not_for_editing(doc, stock):
    match = add_match(doc, stock)
    for name in ("Findings", "Revision", "Message", "LeafOrder"):
        assert "ReadOnly" in match.getEditorMode(name)
    for name in ("SchemaVersion", "PieceMarks"):
        assert "Hidden" in match.getEditorMode(name)


def test_a_document_that_lacks_a_property_gets_it_on_opening(doc, stock):
    match = add_match(doc, stock)
    match.setPropertyStatus("Spares", "-LockDynamic")
    match.removeProperty("Spares")
    match.Proxy.onDocumentRestored(match)
    assert match.Spares == 0
    doc.recompute()
    assert match.Message == ""


def test_older_objects_are_brought_up_step_by_step(doc):
    class Third(Proxy):
        kind = "Third"
        version = 3
        upgrades = {
            1: lambda obj: setattr(obj, "Label", obj.Label + "+2"),
            2: lambda obj: setattr(obj, "Label", obj.Label + "+3"),
        }

    obj = doc.addObject("App::FeaturePython", "Old")
    obj.Label = "1"
    compat.add_property(obj, "Integer", "SchemaVersion", "Base", "")
    obj.SchemaVersion = 1
    Third(obj)
    assert (obj.Label, obj.SchemaVersion) == ("1+2+3", 3)
    Third.onDocumentRestored(obj.Proxy, obj)
    assert obj.Label == "1+2+3"


def test_objects_from_a_newer_addon_are_left_alone(doc, stock):
    match = add_match(doc, stock)
    doc.recompute()
    volume = match.Shape.Volume
    match.SchemaVersion = 99
    match.Diameter = 500.0
    doc.recompute()
    assert "newer version" in match.Message
    assert match.Shape.Volume == volume


# --- in a host of its own ------------------------------------------------------------------------


def host_program():
    """freecadcmd of the host that runs these tests."""
    for name in ("freecadcmd", "FreeCADCmd"):
        for folder in os.environ.get("PATH", "").split(os.pathsep):
            if os.access(os.path.join(folder, name), os.X_OK):
                return os.path.join(folder, name)
    pytest.skip("no freecadcmd on the path")


def told_by_host(tmp_path, body, path_first=()):
    """What `body` puts into the dictionary `told`, run in a fresh host without the addon, and its
    output."""
    script, answer = tmp_path / "inner.py", tmp_path / "told.json"
    script.write_text(
        "import json, os, sys, traceback\nimport FreeCAD\n"
        f"sys.path[:0] = {list(path_first)!r}\ntold = {{}}\n"
        "try:\n"
        + textwrap.indent(textwrap.dedent(body), "    ")
        + "\nexcept BaseException:\n    told['failed'] = traceback.format_exc()\n"
        f"open({str(answer)!r}, 'w').write(json.dumps(told))\n"
        "sys.stdout.flush(); sys.stderr.flush(); os._exit(0)\n"
    )
    home = tmp_path / "home"
    home.mkdir(exist_ok=True)
    env = {**os.environ, "HOME": str(home), "PYTHONPATH": "", "PYTHONDONTWRITEBYTECODE": "1"}
    ran = subprocess.run(
        [host_program(), str(script)],
        env=env,
        cwd=tmp_path,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=120,
    )
    told = json.loads(answer.read_text())
    assert "failed" not in told, told["failed"]
    return told, ran.stdout + ran.stderr


@pytest.fixture
def saved(doc, sawn, tmp_path):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    doc.recompute()
    doc.saveAs(str(tmp_path / "saved.FCStd"))
    return doc.FileName, match.Shape.Volume


OPENED = """
doc = FreeCAD.openDocument({path!r})
match = doc.getObject("Match")
told["ours"] = any(name.startswith("veneerwb") for name in sys.modules)
told["volume"] = match.Shape.Volume
match.Ways = 6
match.touch()
doc.recompute()
told["after"] = match.Shape.Volume
told["solids"] = len(match.Shape.Solids)
told["message"] = match.Message
doc.saveAs({again!r})
"""


def test_without_the_addon_a_document_opens_and_keeps_its_shapes(saved, tmp_path):
    path, volume = saved
    again = str(tmp_path / "again.FCStd")
    told, _ = told_by_host(tmp_path, OPENED.format(path=path, again=again))
    assert told["ours"] is False
    assert told["volume"] == pytest.approx(volume, rel=1e-12)
    assert told["after"] == pytest.approx(volume, rel=1e-12)
    assert told["solids"] == 4


def test_without_shapely_a_document_opens_and_says_what_is_missing(saved, tmp_path):
    path, volume = saved
    again = str(tmp_path / "again.FCStd")
    told, output = told_by_host(
        tmp_path,
        "sys.modules['shapely'] = None\nimport veneerwb\n" + OPENED.format(path=path, again=again),
        [str(ROOT)],
    )
    assert told["ours"] is True
    assert told["after"] == pytest.approx(volume, rel=1e-12)
    assert "needs shapely" in told["message"] and "python3-shapely" in told["message"]
    assert output.count("needs shapely") >= 1
    assert "Traceback" not in output
    reopened = FreeCAD.openDocument(again)
    match = reopened.getObject("Match")
    match.touch()
    reopened.recompute()
    assert (match.Message, len(match.Shape.Solids)) == ("", 6)


# --- fixtures ------------------------------------------------------------------------------------


def fixture_version(path):
    return tuple(int(part) for part in path.stem.split("-")[1].split("."))


@pytest.mark.parametrize("path", FIXTURES, ids=lambda path: path.stem)
def test_documents_of_older_hosts_open_and_recompute_to_the_same(path, tmp_path):
    if fixture_version(path) > compat.version():
        pytest.skip("saved by a newer host")
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    doc = FreeCAD.openDocument(str(copy))
    try:
        names = [
            (type(o.Proxy).__module__, type(o.Proxy).__name__)
            for o in doc.Objects
            if hasattr(o, "Proxy")
        ]
        assert set(names) == set(NAMES[:4])  # the kinds that there were when they were saved
        assert all(o.SchemaVersion == o.Proxy.version for o in doc.Objects if hasattr(o, "Proxy"))
        matches = [o for o in doc.Objects if o.Name.startswith("Match")]
        before = [(o.Shape.Volume, o.Revision, o.Findings, o.LeafOrder) for o in matches]
        assert [len(o.Shape.Solids) for o in matches] == [4, 8]
        assert all(volume > 0.0 for volume, *_ in before)
        for o in doc.Objects:
            o.touch()
        doc.recompute()
        assert [o.Message for o in matches] == ["", ""]
        for o, (volume, revision, _, leaves) in zip(matches, before):
            assert o.Shape.Volume == pytest.approx(volume, rel=1e-12)
            assert (o.Revision, o.LeafOrder) == (revision, leaves)
        doc.getObject("Cells").set("A1", "6")
        doc.recompute()
        assert len(matches[1].Shape.Solids) == 6
    finally:
        FreeCAD.closeDocument(doc.Name)


@pytest.mark.parametrize("path", SECOND, ids=lambda path: path.stem)
def test_documents_of_schema_two_open_and_recompute_to_the_same(path, tmp_path):
    if fixture_version(path) > compat.version():
        pytest.skip("saved by a newer host")
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    doc = FreeCAD.openDocument(str(copy))
    try:
        ours = [o for o in doc.Objects if hasattr(o, "Proxy")]
        assert {type(o.Proxy).__name__ for o in ours} == {
            "Leaf", "Bundle", "Stock", "Match", "Drawing"
        }  # fmt: skip
        assert all(o.SchemaVersion == o.Proxy.version for o in ours)
        bundle, book, drawing = map(doc.getObject, ("Bundle", "Match", "Drawing"))
        assert list(bundle.Wander) == pytest.approx([1.5, -2.0, 0.5])
        assert (bundle.Follows, bundle.PinBacks, bundle.TightSide) == ("figure", "figure", "face")
        assert (bundle.Species, bundle.LotMark, bundle.EvenLight) == ("Walnut", "B 7", False)
        assert (bundle.Slope.Value, bundle.Moisture, bundle.Cost) == (4.0, 8.5, 120.0)
        assert [len(o.Shape.Solids) for o in ours if hasattr(o, "PieceMarks")] == [4, 8]
        sizes = ("LeastWidth", "LeastLength")  # by GEOS, whose rectangles differ by 0.01 mm
        was = [getattr(bundle, name).Value for name in sizes]
        before = {o.Name: contents(o) for o in ours}
        volumes = {o.Name: o.Shape.Volume for o in ours if hasattr(o, "PieceMarks")}
        for o in doc.Objects:
            o.touch()
        doc.recompute()
        after = {o.Name: contents(o) for o in ours}
        changed = {
            (name, key): (value, after[name][key])
            for name, kept in before.items()
            for key, value in kept.items()
            if after[name][key] != value and key not in ("PictureMark", *sizes)  # heeds the host
        }
        assert changed == {}
        assert [getattr(bundle, name).Value for name in sizes] == pytest.approx(was, abs=0.02)
        for name, volume in volumes.items():
            assert doc.getObject(name).Shape.Volume == pytest.approx(volume, rel=1e-12)
        bundle.PinBacks, book.Diameter = "face", 200.0  # what was saved is alive
        doc.recompute()
        assert [o.Message for o in ours] == [""] * len(ours)
        assert drawing.Revision == book.Revision != before["Match"]["Revision"]
    finally:
        FreeCAD.closeDocument(doc.Name)


def test_there_is_a_document_of_some_host_to_open():
    assert any(fixture_version(path) <= compat.version() for path in FIXTURES)
    assert sys.version_info >= (3, 11)


SCREENS = sorted((ROOT / "tests" / "fixtures").glob("screens*.FCStd"))


@pytest.mark.parametrize("path", SCREENS, ids=lambda path: path.stem)
def test_documents_that_a_window_saved_open_and_recompute_to_the_same(path, tmp_path):
    if fixture_version(path) > compat.version():
        pytest.skip("saved by a newer host")
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    doc = FreeCAD.openDocument(str(copy))
    try:
        facing, match, drawing = map(doc.getObject, ("Facing", "Match", "Drawing"))
        before = (facing.Revision, facing.Shape.Area, match.Revision, drawing.Revision)
        assert before[1] == pytest.approx(120.0 * 150.0 + 150.0 * 40.0)
        for obj in doc.Objects:
            obj.touch()
        doc.recompute()
        assert (facing.Message, match.Message, drawing.Message) == ("", "", "")
        assert facing.Shape.Area == pytest.approx(before[1])
        assert (facing.Revision, match.Revision, drawing.Revision) == (before[0], *before[2:])
        match.Ways = 5
        doc.recompute()
        assert drawing.Revision == match.Revision != before[2] and drawing.Message == ""
    finally:
        FreeCAD.closeDocument(doc.Name)
