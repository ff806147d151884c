# SPDX-License-Identifier: LGPL-2.1-or-later
"""The preferences: what is set reaches new objects, what cannot be does not, documents keep theirs.
"""

from pathlib import Path
from xml.etree import ElementTree

import FreeCAD
import pytest

from veneerwb.core.shop.cutting.methods import SAW
from veneerwb.host import settings
from veneerwb.host.objects import (
    add_bench,
    add_closing,
    add_drawing,
    add_match,
    add_run,
    add_stock,
)

UI = Path(__file__).parents[2] / "resources" / "ui"
TYPES = ("Bool", "Int", "Float", "String", "Unsigned")
UNITS = "User parameter:BaseApp/Preferences/Units"


@pytest.fixture
def kept():
    """The host's own group; afterwards nothing is left in it."""
    group = FreeCAD.ParamGet(settings.PATH)
    yield group
    for kind, name, *_ in group.GetContents() or ():
        getattr(group, f"Rem{'Unsigned' if kind.startswith('Unsigned') else _plain(kind)}")(name)
    assert not group.GetContents()


def _plain(kind):
    return {"Boolean": "Bool", "Integer": "Int"}.get(kind, kind)


@pytest.fixture
def inches():
    before = FreeCAD.Units.getSchema() if hasattr(FreeCAD.Units, "getSchema") else 0
    FreeCAD.Units.setSchema(3)  # imperial, decimal
    yield
    FreeCAD.Units.setSchema(before)


def match_of(doc, **properties):
    made = add_match(doc, add_stock(doc, 400.0, 1000.0, 16), Ways=8, Diameter=600.0, **properties)
    doc.recompute()
    return made


# --- what is set reaches new objects ------------------------------------------------------------


def test_new_objects_begin_with_what_is_set(doc, kept):
    for name, value in (("Thickness", 0.9), ("Oversize", 8.0), ("Margin", 3.0), ("Tool", 6.0),
                        ("TemplateError", 0.01), ("PieceError", 0.08)):  # fmt: skip
        kept.SetFloat(name, value)
    kept.SetInt("Spares", 2)
    kept.SetInt("Paper", settings.PAPERS.index("A2"))
    kept.SetInt("TilePaper", settings.TILES.index("A3"))
    kept.SetInt("SheetUnit", settings.UNITS.index("both"))
    kept.SetInt("CutBy", settings.CUT_BY.index("saw"))
    kept.SetBool("FaceDown", True)
    kept.SetString("Owner", " The shop ")
    kept.SetString("DrawnBy", "M. Ü.")
    kept.SetString("ApprovedBy", "Nobody")

    match = match_of(doc)
    assert match.Bundle.Thickness.Value == 0.9
    assert (match.Oversize.Value, match.Margin.Value, match.Spares) == (8.0, 3.0, 2)
    assert match.Message == ""
    bench = add_bench(doc, match)
    assert (bench.Paper, bench.TilePaper, bench.Unit, bench.CutBy) == ("A2", "A3", "both", "saw")
    assert (bench.Kerf.Value, bench.Lean.Value, bench.AtOnce.Value, bench.Boards.Value) == (
        SAW.kerf, SAW.lean, SAW.most, SAW.board
    )  # fmt: skip
    assert bench.Tool.Value == 6.0 and bench.FaceDown
    assert (bench.Owner, bench.CreatedBy, bench.ApprovedBy) == ("The shop", "M. Ü.", "Nobody")
    closing = add_closing(doc, match)
    assert (closing.TemplateError.Value, closing.PieceError.Value) == (0.01, 0.08)
    assert add_drawing(doc, match).DrawnBy == "M. Ü."
    run = add_run(doc, match.Bundle)
    assert (run.Oversize.Value, run.Margin.Value, run.Spares) == (8.0, 3.0, 2)


def test_what_is_asked_for_goes_before_what_is_set(doc, kept):
    kept.SetFloat("Thickness", 0.9)
    kept.SetFloat("Oversize", 8.0)
    kept.SetInt("CutBy", settings.CUT_BY.index("saw"))
    assert add_stock(doc, 400.0, 1000.0, 16, 0.5).Thickness.Value == 0.5
    match = match_of(doc, Oversize=1.0)
    assert match.Oversize.Value == 1.0
    bench = add_bench(doc, match, CutBy="knife")
    assert (bench.CutBy, bench.Kerf.Value, bench.AtOnce.Value) == ("knife", 0.0, 2.4)


KEPT = ("Margin", "Oversize", "Spares"), ("Paper", "Owner", "Tool", "Unit")


def test_a_document_keeps_its_own(doc, kept, tmp_path):
    """Neither what is set later nor opening it again changes what is in it."""
    match = match_of(doc, Margin=1.0)
    bench = add_bench(doc, match)
    doc.recompute()
    before = [repr(getattr(match, name)) for name in KEPT[0]]
    before += [repr(getattr(bench, name)) for name in KEPT[1]]
    path = str(tmp_path / "kept.FCStd")
    doc.saveAs(path)
    for name in ("Margin", "Oversize", "Tool"):
        kept.SetFloat(name, 9.0)
    kept.SetInt("Spares", 5)
    kept.SetInt("Paper", 2)
    kept.SetString("Owner", "Another")

    def now(where):
        found = [where.getObject(name) for name in (match.Name, bench.Name)]
        return [repr(getattr(one, name)) for one, names in zip(found, KEPT) for name in names]

    match.touch()
    doc.recompute()
    assert now(doc) == before
    opened = FreeCAD.openDocument(path)
    opened.recompute(None, True)
    assert now(opened) == before


def test_lengths_on_sheets_follow_the_host_unless_it_is_set(doc, kept, inches):
    assert settings.shows_inches() and add_bench(doc, None).Unit == "inch"
    kept.SetInt("SheetUnit", settings.UNITS.index("mm"))
    assert add_bench(doc, None).Unit == "mm"


@pytest.mark.parametrize(("schema", "inch"), [
    (0, False), (1, False), (2, True), (3, True), (4, False), (5, True), (6, False), (7, True),
])  # fmt: skip
def test_the_host_is_asked_whether_it_shows_inches(schema, inch):
    """0 mm, 1 m, 2 and 3 inch, 4 cm, 5 building feet, 6 mm/min, 7 civil feet (FreeCAD's list)."""
    before = FreeCAD.Units.getSchema()
    FreeCAD.Units.setSchema(schema)
    try:
        assert settings.shows_inches() == inch
    finally:
        FreeCAD.Units.setSchema(before)


# --- what cannot be counts as not set -----------------------------------------------------------

ABSURD = (float("nan"), float("inf"), -float("inf"), 1e100, -1.0)
"""The host writes numbers into 256 letters, and 0.20.2 ends the process at a longer one."""


@pytest.mark.parametrize("name", [n for n, s in settings.SETTINGS.items() if s.most or s.choices
                                  or isinstance(s.default, bool)])  # fmt: skip
def test_absurd_values_count_as_not_set(kept, name):
    row = settings.SETTINGS[name]
    hostile = {"Float": ABSURD, "Int": (-1, 10**6, -(2**31)), "Bool": (True,), "Unsigned": (7,),
               "String": ("x" * 5000, "two\nlines", "\u202egnorw")}  # fmt: skip
    own = {bool: "Bool", int: "Int", float: "Float", str: "String"}[type(row.default)]
    own = "Int" if row.choices else own
    for kind in TYPES:
        for value in hostile[kind]:
            if kind == own == "Bool":
                continue
            getattr(kept, f"Set{kind}")(name, value)
            assert settings.setting(name) == row.default, (kind, value)
        getattr(kept, f"Rem{kind}")(name)


def test_a_match_is_laid_whatever_is_set(doc, kept):
    for name in ("Thickness", "Oversize", "Margin"):
        kept.SetFloat(name, float("nan"))
    kept.SetInt("Spares", -7)
    match = match_of(doc)
    assert match.Message == "" and match.Margin.Value == 0.0
    assert match.Bundle.Thickness.Value == 0.6


def test_colours_are_what_is_set_whatever_the_fourth_byte(kept):
    assert settings.colour("WedgeColour") == settings.COLOURS["WedgeColour"]
    for last in (0, 255):
        kept.SetUnsigned("WedgeColour", 0x0A141E00 | last)
        assert settings.colour("WedgeColour") == (10, 20, 30)
    kept.SetString("SplitColour", "red")
    kept.SetInt("SplitColour", 5)
    assert settings.colour("SplitColour") == settings.COLOURS["SplitColour"]


# --- the pages ----------------------------------------------------------------------------------


def said(widget, name):
    found = widget.find(f"property[@name='{name}']")
    return None if found is None else "".join(found.itertext()).strip()


def boxes():
    """Name: box of each on the pages that keeps something."""
    found = [
        one for page in ("preferences", "preferences_colours")
        for one in ElementTree.parse(UI / f"{page}.ui").iter("widget")
        if said(one, "prefEntry")
    ]  # fmt: skip
    assert all(said(one, "prefPath") == settings.GROUP for one in found)
    return {said(one, "prefEntry"): one for one in found}


def test_the_pages_ask_for_all_of_it_and_for_nothing_else():
    assert list(boxes()) and set(boxes()) == {*settings.SETTINGS, *settings.COLOURS}


@pytest.mark.parametrize("name", settings.SETTINGS)
def test_a_box_begins_and_ends_where_the_setting_does(name):
    row, box = settings.SETTINGS[name], boxes()[name]
    kind = box.get("class").removeprefix("Gui::Pref")
    if row.choices:
        assert kind == "ComboBox" and len(box.findall("item")) == len(row.choices)
        assert row.choices.index(row.default) == int(said(box, "currentIndex") or 0)
    elif isinstance(row.default, bool):
        assert kind == "CheckBox" and (said(box, "checked") == "true") == row.default
    elif isinstance(row.default, str):
        assert kind == "LineEdit" and int(said(box, "maxLength")) == row.most
    else:
        start = "value" if isinstance(row.default, int) else "rawValue"
        assert kind == ("SpinBox" if start == "value" else "UnitSpinBox")
        limits = (float(said(box, at)) for at in ("minimum", "maximum", start))
        assert tuple(limits) == (row.least, row.most, row.default)


@pytest.mark.parametrize("name", settings.COLOURS)
def test_a_colour_begins_as_it_is(name):
    parts = boxes()[name].find("property[@name='color']/color")
    assert tuple(int(part.text) for part in parts) == settings.COLOURS[name]


def test_choices_are_those_of_the_objects(doc):
    bench = add_bench(doc, None)
    for name, choices in (("Paper", settings.PAPERS), ("TilePaper", settings.TILES),
                          ("CutBy", settings.CUT_BY), ("Unit", settings.UNITS[1:])):  # fmt: skip
        assert set(choices) == set(bench.getEnumerationsOfProperty(name))
