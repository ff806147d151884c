# SPDX-License-Identifier: LGPL-2.1-or-later
"""Documents that were edited by hand: opened, recomputed, and what is wrong said in one sentence;
nothing in them is run, imported or asked of the network."""

import re
import shutil
import time
import zipfile
from contextlib import contextmanager
from pathlib import Path

import FreeCAD
import pytest
from FreeCAD import Vector

from veneerwb.core import VeneerError
from veneerwb.host import bench as benches
from veneerwb.host import shop_pages
from veneerwb.host.objects.base import Refused, kind_of

ROOT = Path(__file__).parents[2]
FIXTURES = {
    name: next((ROOT / "tests" / "fixtures").glob(f"{name}-0.20.2.FCStd"))
    for name in ("schema2", "shop1", "spots2", "screens1")
}
NAN, INF = float("nan"), float("inf")


@pytest.fixture(scope="module")
def bare(tmp_path_factory):
    """The fixtures without their pages, which take most of the time."""
    folder, found = tmp_path_factory.mktemp("bare"), {}
    for name, path in FIXTURES.items():
        doc = FreeCAD.openDocument(str(shutil.copy(path, folder)))
        for bench in [one for one in doc.Objects if kind_of(one) == "Bench"]:
            shop_pages.remove_pages(bench)
        again(doc)
        doc.saveAs(str(folder / f"{name}.FCStd"))
        found[name] = doc.FileName
        FreeCAD.closeDocument(doc.Name)
    return found


@pytest.fixture
def opened(bare, tmp_path):
    """Opens a fixture whose Document.xml was changed by a function; recomputed."""

    def opened(name, change=lambda text: text):
        path = tmp_path / f"{name}.FCStd"
        with zipfile.ZipFile(bare[name]) as old, zipfile.ZipFile(path, "w") as new:
            for one in old.infolist():
                data = old.read(one)
                if one.filename == "Document.xml":
                    before = data.decode()
                    data = change(before).encode()
                new.writestr(one, data)
        doc = FreeCAD.openDocument(str(path))
        again(doc)
        return doc

    yield opened
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


def again(doc):
    """Recomputes all that is ours."""
    for obj in ours(doc):
        obj.touch()
    doc.recompute()


def settle(obj):
    """Recomputes an object and what of ours follows it."""
    obj.Document.recompute([obj, *(one for one in obj.InListRecursive if kind_of(one))])


def ours(doc):
    return [obj for obj in doc.Objects if type(getattr(obj, "Proxy", None)).__module__.startswith(
        "veneerwb."
    )]  # fmt: skip


def messages(doc):
    """What the objects say; each is one foreseen sentence."""
    said = {obj.Name: obj.Message for obj in ours(doc) if obj.Message}
    for text in said.values():
        assert "\n" not in text and text.endswith(".") and "could not be recomputed" not in text
    return said


@contextmanager
def quiet(capfd, seconds=10.0):
    """Within: no traceback in the host's output, and not too long."""
    began = time.monotonic()
    yield
    assert time.monotonic() - began < seconds
    shown = "".join(capfd.readouterr())
    assert "Traceback" not in shown and "Error:" not in shown, shown[-2000:]


# --- values that cannot be ----------------------------------------------------------------------

NUMBERS = {
    "schema2": {
        "Leaf": ("RegisterX", "RegisterY", "RegisterAngle", "MmPerPx", "BackMmPerPx"),
        "Bundle": ("Thickness", "Slope", "Moisture", "Cost"),
        "Stock": ("Width", "Length", "Thickness"),
        "Match": ("Diameter", "Oversize", "TipX", "Axis", "Start", "Margin", "WedgeAngle",
                  "CentreX", "DiscDiameter", "HiddenDisc"),
        "Drawing": ("Base",),
    },
    "shop1": {
        "BuildUp": ("CoreThickness", "CrossbandAbove", "BackerThickness", "LippingWidth",
                    "BorderWidth", "LineWidth", "InlayDiameter", "CoreGrain"),
        "Closing": ("TemplateError", "PieceError", "WedgesTo", "Base", "Common", "Shifted",
                    "MoistureUnsure"),
        "Run": ("Oversize", "StripWidth", "Grain", "Margin"),
        "Bench": ("Kerf", "Lean", "AtOnce", "PressMargin", "Altitude", "Price", "SeamAngle"),
    },
    "spots2": {"Spot": ("TipX", "TipY", "Axis")},
    "screens1": {"Facing": ("Grain", "Across", "Along")},
}  # fmt: skip
COUNTS = {
    "schema2": {"Leaf": ("Number",), "Stock": ("Leaves",),
                "Match": ("Ways", "Strips", "First", "Spares", "Sides")},
    "shop1": {"BuildUp": ("BorderSegments", "LippingSegments", "InlayPoints", "MadeHumidity"),
              "Closing": ("TrialCount", "FirstPiece"), "Run": ("Missing", "First", "Count"),
              "Bench": ("Tops", "Rams")},
    "spots2": {"Spot": ("Ways", "First")},
}  # fmt: skip
MANY = [
    Vector(k % 90 + x, k // 90 + y, k) for k in range(9000) for x, y in ((0, 0), (1, 0), (0, 1))
]
LISTS = {
    "schema2": {
        "Leaf": {
            "View": ([NAN] * 4, [1e300] * 3, [INF], [1.0]),
            "BackView": ([NAN] * 4, [INF] * 3),
            "BackRegister": ([NAN] * 4, [1e300] * 3),
            "Gains": ([NAN] * 3, [1.0], [-1.0] * 3),
            "Usable": (
                [Vector(NAN, 0, 0)] * 4, [Vector(1e300, 0, 0), Vector(0, 1e300, 0), Vector()],
                [Vector(0, 0, NAN)] * 3, [Vector(0, 0, 1e300)] * 3, [Vector(1, 1, 0)] * 5,
                [Vector(), Vector(1, 1, 0), Vector(2, 2, 0)], [Vector()], [Vector(INF, 1, 0)] * 3,
                [Vector(), Vector(90, 90, 0), Vector(90, 0, 0), Vector(0, 90, 0)], MANY,
            ),
            "FaultOutlines": ([Vector(NAN, 0, 0)] * 4, [Vector(0, 0, NAN)] * 3, [Vector()], MANY),
            "Marks": ([Vector(NAN, NAN, NAN)], [Vector(1e300, 0, -1e300)] * 30),
        },
        "Bundle": {
            "Wander": ([NAN] * 3, [1e300] * 3, [1.0], [INF] * 3, [-1.0] * 3),
            "FaultOutlines": ([Vector(NAN, 0, 0)] * 4, [Vector(1e300, 0, 0)] * 4),
        },
        "Match": {"LeafOrder": ([-1] * 9,), "PieceMarks": ([""] * 500,)},
    },
    "shop1": {
        "Closing": {"Wedges": ([NAN] * 8, [1e300] * 8, [-1.0] * 8, [1.0] * 5000),
                    "WedgesUnsure": ([NAN] * 8, [INF] * 8, [-1.0])},
        "Bench": {"CloseBetween": ([-1], [2**31 - 1] * 2, [1, 1])},
        "Run": {"FaceCounts": ([-1], []), "FacePlanes": ([Vector(NAN, NAN, NAN)] * 4,)},
    },
}  # fmt: skip
TEXTS = {
    "schema2": {"Match": ("Order", "Label"), "Bundle": ("Species", "Label"), "Drawing": ("Title",)},
    "shop1": {"BuildUp": ("CoreMoves", "CoreMaterial"), "Closing": ("Moves",),
              "Bench": ("Title", "Owner")},
    "spots2": {"Spot": ("Order",)},
}  # fmt: skip
WORDS = ("", "=1+1", "../../x", "1,2,3", "x" * 6000, '{"a":', "<b>&\"'", "%s {x} {0}", "\u202e\x7f",
         "9" * 5000, "1e999 nan")  # fmt: skip
FAILED = {  # once
    ("Leaf", "RegisterX"): (INF, 1e300), ("Bundle", "Slope"): (INF, -1e300, 1e9, 90.0, 180.0),
    ("Match", "DiscDiameter"): (1e-300, 2e-6), ("Facing", "Across"): (1e300,),
    ("Facing", "Along"): (-1e300,), ("Drawing", "Title"): ("\u202e\x7f",),
    ("Bundle", "Label"): ("\u202e\x7f",),
}  # fmt: skip


def turns(table, all_values, always=()):
    """The cases of a table: each property gets what always must be, two more in turn, and what
    once failed."""
    k = 0
    for name, objects in table.items():
        for obj, props in objects.items():
            for prop in props:
                chosen = [all_values[(k + step) % len(all_values)] for step in (0, 1)]
                yield name, obj, prop, (*always, *chosen, *FAILED.get((obj, prop), ()))
                k += 2


CASES = [
    *turns(NUMBERS, (-1.0, 1e300, INF, -INF), (NAN,)),
    *turns(COUNTS, (-1, 0, 2**31 - 1)),
    *turns(TEXTS, WORDS),
    *((name, obj, prop, values) for name, objects in LISTS.items()
      for obj, props in objects.items() for prop, values in props.items()),
]  # fmt: skip


@pytest.mark.parametrize("name", FIXTURES)
def test_a_document_of_values_that_cannot_be_says_so_in_sentences(name, opened, capfd):
    doc = opened(name)
    assert messages(doc) == {}
    capfd.readouterr()
    for fixture, obj_name, prop, values in CASES:
        if fixture != name:
            continue
        obj = doc.getObject(obj_name)
        was = getattr(obj, prop)
        for value in values:
            with quiet(capfd):
                try:
                    setattr(obj, prop, value)
                except (ValueError, TypeError):  # the host itself takes no such value
                    continue
                settle(obj)
                messages(doc)
        setattr(obj, prop, was)
        settle(obj)
        assert messages(doc) == {}, (obj_name, prop)


# --- Document.xml edited by hand ----------------------------------------------------------------


def edited(obj, prop, old, new):
    """Changes the first `old` (a pattern) in what Document.xml says of a property to `new`."""

    def change(text):
        data = text.index("<ObjectData")
        start = text.index(f'<Object name="{obj}"', data)
        start = text.index(f'name="{prop}" type=', start) - len("<Property ")
        end = text.index("</Property>", start)
        found = re.sub(old, new, text[start:end], count=1, flags=re.DOTALL)
        assert found != text[start:end], (obj, prop)
        return text[:start] + found + text[end:]

    return change


def retyped(obj, prop, kind):
    """Changes the type of a property."""
    return edited(obj, prop, r'type="App::Property\w+"', f'type="App::Property{kind}"')


def linked(obj, prop, to):
    return edited(obj, prop, r'<Link value="[^"]*"/>', f'<Link value="{to}"/>')


def proxied(obj, module, kind):
    making = f'module="{module}" class="{kind}"'
    return edited(obj, "Proxy", r'module="[^"]*" class="[^"]*"', making)


EDITS = {
    "a match without a bundle": ("schema2", linked("Match", "Bundle", "")),
    "a match of nothing that is there": ("schema2", linked("Match", "Bundle", "Gone")),
    "a match of itself": ("schema2", linked("Match", "Bundle", "Match")),
    "a match of cells": ("schema2", linked("Match", "Bundle", "Cells")),
    "a match of its drawing": ("schema2", linked("Match", "Bundle", "Drawing")),
    "a match built up of a stock": ("shop1", linked("Match", "BuildUp", "Stock")),
    "a match built up of itself": ("shop1", linked("Match", "BuildUp", "Match")),
    "a drawing of a stock": ("schema2", linked("Drawing", "Match", "Stock")),
    "a bundle of what is no leaf": (
        "schema2", edited("Bundle", "Leaves", 'value="Leaf"', 'value="Cells"')),
    "a bundle of a leaf twice": (
        "schema2", edited("Bundle", "Leaves", 'value="Leaf"', 'value="Leaf001"')),
    "a leaf of a bundle": ("schema2", edited("Bundle", "Leaves", 'value="Leaf"', 'value="Bundle"')),
    "a text for a size": ("schema2", retyped("Match", "Diameter", "String")),
    "a link for a size": ("schema2", retyped("Match", "Oversize", "Link")),
    "a text for a count": ("schema2", retyped("Match", "Ways", "String")),
    "a number for a text": ("schema2", retyped("Match", "Order", "Integer")),
    "a number for a choice": ("schema2", retyped("Match", "Turn", "Integer")),
    "a text for a link": ("schema2", retyped("Match", "Bundle", "String")),
    "a link for links": ("schema2", retyped("Bundle", "Leaves", "Link")),
    "texts for corners": ("schema2", retyped("Leaf", "Usable", "StringList")),
    "a text for the version": ("schema2", retyped("Match", "SchemaVersion", "String")),
    "a text for a message": ("schema2", retyped("Match", "Message", "Integer")),
    "a word for a size": ("schema2", edited("Match", "Diameter", 'value="[^"]*"', 'value="wide"')),
    "nan for a size": ("schema2", edited("Match", "Diameter", 'value="[^"]*"', 'value="nan"')),
    "inf for a size": ("schema2", edited("Match", "Oversize", 'value="[^"]*"', 'value="inf"')),
    "less than nothing": ("schema2", edited("Match", "Oversize", 'value="[^"]*"', 'value="-9"')),
    "a choice that there is not": (
        "schema2", edited("Match", "Turn", 'Integer value="[^"]*"', 'Integer value="99"')),
    "a choice of something else": (
        "shop1", edited("Match", "Kind", 'Enum value="Radial"', 'Enum value="../x"')),
    "a version from the future": (
        "schema2", edited("Match", "SchemaVersion", 'value="[^"]*"', 'value="2000000000"')),
    "a version before any": (
        "schema2", edited("Match", "SchemaVersion", 'value="[^"]*"', 'value="-2000000000"')),
    "a photograph that is not there": (
        "schema2", edited("Leaf", "Photo", 'file="[^"]*"', 'file="gone.jpg"')),
    "no photograph": ("schema2", edited("Leaf", "Photo", 'file="[^"]*"', 'file=""')),
    "a leaf of another making": ("schema2", proxied("Leaf", "textwrap", "TextWrapper")),
    "a bundle of another making": ("schema2", proxied("Bundle", "string", "Formatter")),
    "a match of another making": ("schema2", proxied("Match", "string", "Template")),
    "a stock that is a match": (
        "schema2", proxied("Stock", "veneerwb.host.objects.match", "Match")),
    "a leaf that is a bundle": (
        "schema2", proxied("Leaf", "veneerwb.host.objects.bundle", "Bundle")),
    "a match that is a leaf": ("schema2", proxied("Match", "veneerwb.host.objects.leaf", "Leaf")),
    "an object without a making": (
        "schema2", edited("Match", "Proxy", r"<Python [^>]*/>", '<Python value=""/>')),
    "a spot of a leaf": ("spots2", linked("Spot", "Match", "Leaf")),
    "a spot without a match": ("spots2", linked("Spot", "Match", "")),
    "a spot's picture for a number": ("spots2", retyped("Spot", "Picture", "Integer")),
    "a facing of a match": ("screens1", linked("Facing", "Leaf", "Match")),
    "a facing of nothing": ("screens1", linked("Facing", "Leaf", "")),
    "faces that are not there": ("screens1", edited("Facing", "Faces", "Face6", "Face600")),
    "faces that are edges": ("screens1", edited("Facing", "Faces", "Face6", "Edge1")),
    "faces of itself": ("screens1", edited("Facing", "Faces", 'obj="Block"', 'obj="Facing"')),
    "parts of a stock": ("shop1", linked("PanelParts", "Match", "Stock")),
    "parts without a match": ("shop1", linked("PanelParts", "Match", "")),
    "a closing of a run": ("shop1", linked("Closing", "Match", "Run")),
    "a closing without a match": ("shop1", linked("Closing", "Match", "")),
    "a run of a match": ("shop1", linked("Run", "Bundle", "Match")),
    "a run without a bundle": ("shop1", linked("Run", "Bundle", "")),
    "a run's second is its match": ("shop1", linked("Run", "Second", "Match")),
    "a run on what is not there": ("shop1", edited("Run", "Faces", "Door001", "Gone")),
    "a backer from a bench": ("shop1", linked("BuildUp", "BackerFrom", "Bench")),
    "a bench of a door": ("shop1", linked("Bench", "Match", "Door")),
    "a bench without a match": ("shop1", linked("Bench", "Match", "")),
    "a paper that there is not": (
        "shop1", edited("Bench", "Paper", 'Integer value="[^"]*"', 'Integer value="-3"')),
    "texts for readings": ("shop1", retyped("Closing", "Wedges", "StringList")),
    "a text for a bench's size": ("shop1", retyped("Bench", "Kerf", "String")),
}  # fmt: skip


@pytest.mark.parametrize("what", EDITS)
def test_a_document_edited_by_hand_opens_and_says_what_is_wrong(what, opened, capfd):
    with quiet(capfd):
        doc = opened(*EDITS[what])
        messages(doc)
        again(doc)
        messages(doc)
        for bench in [one for one in doc.Objects if kind_of(one) == "Bench"]:
            with one_sentence():
                benches.refresh(bench)


@contextmanager
def one_sentence():
    """Within: nothing is raised but one sentence."""
    try:
        yield
    except (VeneerError, Refused) as error:
        assert "\n" not in str(error) and str(error).endswith(".")
