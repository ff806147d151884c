# SPDX-License-Identifier: LGPL-2.1-or-later
"""The macro and the document that come with the workbench do what they say."""

import re
import runpy
from pathlib import Path

import FreeCAD
import pytest
from PIL import Image

from veneerwb.core import sawn_bundle
from veneerwb.host import areas
from veneerwb.host.objects import core_bundle
from veneerwb.host.objects.base import kind_of

EXAMPLES = Path(__file__).parents[2] / "resources/examples"
MOST_BYTES = 1_500_000


@pytest.fixture(scope="module")
def photographs(tmp_path_factory):
    """Eight leaves of 160 x 300 mm at 1 mm for each pixel."""
    folder = tmp_path_factory.mktemp("leaves")
    sawn = sawn_bundle(
        leaves=8, width=160, length=300, mm_per_px=1.0, figure="cathedral", seed=3, knots=0
    )
    for leaf in sawn.leaves:
        Image.fromarray(leaf.photo).save(folder / f"oak {leaf.number}.png")
    return folder


def macro(tmp_path, said, size="260.0, 200.0", **values):
    """The macro as a user has it who set what stands in capitals; its document."""
    text = (EXAMPLES / "first_top.FCMacro").read_text("utf-8")
    for name, value in values.items():
        text, count = re.subn(rf"^{name} = .*$", f"{name} = {value!r}", text, flags=re.MULTILINE)
        assert count == 1, f"the macro has no {name}"
    text = text.replace("LENGTH, WIDTH = 1100.0, 800.0", f"LENGTH, WIDTH = {size}")
    text = text.replace("FreeCAD.Console.PrintMessage(", "SAID.append(")
    file = tmp_path / "first_top.py"
    file.write_text(text, "utf-8")
    runpy.run_path(str(file), {"SAID": said})
    return FreeCAD.ActiveDocument


def test_the_macro_goes_from_photographs_to_a_packet(doc, photographs, tmp_path):
    said = []
    made = macro(
        tmp_path, said, FOLDER=str(photographs), MM_PER_PIXEL=1.0, SHOP=str(tmp_path)
    )
    (match,) = [obj for obj in made.Objects if kind_of(obj) == "Match"]
    assert match.Message == "" and len(match.Shape.Solids) == 8, said
    assert match.Bundle.Follows == "figure"
    (packet,) = [one for one in tmp_path.iterdir() if one.is_dir()]
    assert packet.name.startswith("Hall table") and len(list(packet.iterdir())) > 8
    assert str(packet) in said[-1]


def test_the_macro_writes_nothing_while_a_finding_stands_against_cutting(
    doc, photographs, tmp_path
):
    said = []
    made = macro(
        tmp_path, said, "600.0, 500.0", FOLDER=str(photographs), MM_PER_PIXEL=1.0,
        SHOP=str(tmp_path),
    )  # fmt: skip
    kinds = [kind_of(obj) for obj in made.Objects]
    assert "Match" in kinds and "Bench" not in kinds
    assert not [one for one in tmp_path.iterdir() if one.is_dir()]
    assert any(one.startswith("stop: ") for one in said)


def test_the_macro_lays_nothing_when_the_order_is_not_proved(doc, photographs, tmp_path):
    mixed = tmp_path / "mixed"
    mixed.mkdir()
    for file in photographs.iterdir():
        number = int(file.stem.split()[-1])
        (mixed / f"oak {({3: 6, 6: 3}).get(number, number)}.png").write_bytes(file.read_bytes())
    said = []
    made = macro(tmp_path, said, FOLDER=str(mixed), MM_PER_PIXEL=1.0, SHOP=str(tmp_path))
    assert not [obj for obj in made.Objects if kind_of(obj) == "Match"]
    assert any("Leaf 3" in one or "Leaf 6" in one for one in said)


def test_the_example_is_small_whole_and_up_to_date():
    file = EXAMPLES / "round-top.FCStd"
    assert file.stat().st_size < MOST_BYTES
    made = FreeCAD.openDocument(str(file))
    try:
        kinds = {kind_of(obj): obj for obj in made.Objects}
        assert {"Bundle", "Match", "BuildUp", "Parts", "Bench", "Closing"} <= set(kinds)
        match = kinds["Match"]
        before = match.Revision
        for obj in made.Objects:
            obj.touch()
        made.recompute()
        assert [obj.Message for obj in made.Objects if getattr(obj, "Message", "")] == []
        assert match.Revision == before and len(match.Shape.Solids) == 12
        assert len(core_bundle(match.Bundle).leaves) == 14
    finally:
        FreeCAD.closeDocument(made.Name)


def help_script(head):
    """What stands indented under a heading of the page about scripts."""
    text = (EXAMPLES.parents[1] / "docs/scripting.md").read_text("utf-8")
    part = text.partition(f"## {head}\n")[2].partition("\n## ")[0]
    return "\n".join(line[4:] for line in re.findall(r"^(?:    .*|)$", part, re.M))


def test_the_scripts_of_the_help_lay_a_top_and_draw_on_its_leaves(doc, photographs, capsys):
    script = help_script("The shortest top").replace("/home/me/leaves", str(photographs))
    script = script.replace("Ways=12, Diameter=1200", "Ways=8, Diameter=120")
    shared = {}
    exec(script, shared)
    match = shared["match"]
    assert match.Message == "" and len(match.Shape.Solids) == 8
    exec(help_script("What is drawn on leaves"), shared)
    bundle = shared["bundle"]
    leaf, second = core_bundle(bundle).leaves[:2]
    assert leaf.usable.bounds == pytest.approx((2, 2, 78, 148))
    assert [fault.kind for fault in leaf.faults] == ["knot", "split"]
    assert [fault.kind for fault in second.faults] == ["split"]
    assert areas.marks_of(bundle.Leaves[0]) == {0: (10.0, 10.0), 2: (70.0, 140.0)}
    assert areas.picked(bundle) == {
        1: ((20.0, 30.0), (40.0, 90.0)), 2: ((21.0, 30.0), (41.0, 91.0)),
    }  # fmt: skip
    assert bundle.Message == match.Message == "" and capsys.readouterr().out.strip()
