# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a document says of how its objects are shown, edited by hand: they are shown as ours are,
and their panels open; what makes no sense of it is left aside."""

import random
import re
import shutil
import time
import zipfile
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest

from veneerwb.gui.pictured import PICTURES
from veneerwb.host import compat
from veneerwb.host.objects.base import kind_of

VERSION = ".".join(map(str, compat.version()))
SAVED = Path(__file__).parents[2] / "fixtures" / f"screens1-{VERSION}.FCStd"
OURS = r'module="veneerwb[^"]*" class="[^"]*"'
NUMBERS = ("nan", "inf", "-inf", "1e300", "-1", "0", "1e-300")
WHOLE = ("-1", "99", "2147483647", "-2147483648")


def making(module, kind):
    """Has the host make a view provider of that class."""
    return lambda text: re.sub(OURS, f'module="{module}" class="{kind}"', text)


def python(value, encoded="yes"):
    """Has a view provider's own words be others (null, in base64, as we write it)."""
    made = f'<Python value="{value}" encoded="{encoded}"'
    return lambda text: re.sub(r'<Python value="[^"]*" encoded="yes"', made, text)


def no_proxy(text):
    return re.sub(r"<Python [^>]*/>", '<Python value=""/>', text)


def proxy_of(kind, inside):
    old = r'type="App::PropertyPythonObject"([^>]*>\s*)<Python [^>]*/>'
    return lambda text: re.sub(old, rf'type="App::Property{kind}"\1{inside}', text)


def switch_of(kind, inside):
    old = r'(name="(?:Seams|Numbers)" type=")App::PropertyBool("[^>]*>\s*)<Bool [^>]*/>'
    return lambda text: re.sub(old, rf"\1App::Property{kind}\2{inside}", text)


def also(inside):
    """One property more."""

    def change(text):
        return re.sub(
            r'<Properties Count="(\d+)"([^>]*)>',
            lambda found: f'<Properties Count="{int(found[1]) + 1}"{found[2]}>{inside}', text,
        )  # fmt: skip

    return change


def twice(text):
    """Each view provider, and with it each property."""
    return re.sub(r"<ViewProvider .*</ViewProvider>", r"\g<0>\g<0>", text, flags=re.DOTALL)


HANDS = [
    making("string", "Formatter"), making("os", "getcwd"), making("no.such.module", "Thing"),
    making("veneerwb.gui.view", "Gone"), making("../../x", "&lt;b&gt;"), making("", ""),
    making("veneerwb.gui.items", "ItemView"), making("veneerwb.gui.view", "MatchView"),
    making("veneerwb.gui.facing", "FacingView"), making("veneerwb.gui.run", "RunView"),
    making("veneerwb.gui.buildup", "PartsView"), making("veneerwb.gui.buildup", "BuildUpView"),
    making("veneerwb.gui.pictured", "Pictured"), making("veneerwb.host.objects.match", "Match"),
    no_proxy, python("MTI="), python("ImhlbGxvIg=="), python("eyJvYmoiOiAxLCAicm9vdCI6IDJ9"),
    proxy_of("String", '<String value="x"/>'), proxy_of("Bool", '<Bool value="maybe"/>'),
    switch_of("String", '<String value="&lt;b&gt;"/>'), switch_of("Link", '<Link value="Match"/>'),
    switch_of("Float", '<Float value="nan"/>'),
    lambda text: re.sub(r'name="(Visibility|Seams)" type="[^"]*"', r'name="\1" type="x"', text),
    lambda text: re.sub(r'<Bool value="\w+"', '<Bool value="maybe"', text),
    also('<Property name="No" type="App::PropertyString" group="g" doc="d" attr="0" ro="0" '
         'hide="0"><String value="x"/></Property>'),
    lambda text: re.sub(r'name="DisplayMode"', f'name="{"D" * 100000}"', text),
    lambda text: text.replace('doc="', 'doc="&lt;img src=\'//host/x.png\'&gt;' + "d" * 100000),
    lambda text: re.sub(r'<PropertyColor value="\d+"', '<PropertyColor value="-5"', text),
    lambda text: re.sub(r'name="(\w+)" expanded', r'name="\1" expanded="many" was', text),
    twice,
]  # fmt: skip


def with_numbers(rnd):
    """Numbers that cannot be."""

    def change(text):
        for kind, values in (("Float", NUMBERS), ("Integer", WHOLE)):
            old, new = rf'<{kind} value="[^"]*"', f'<{kind} value="{rnd.choice(values)}"'
            text = re.sub(old, new, text)
        return text

    return change


def edited_all(rnd):
    """Another hand at each of our view providers. Those that are not made as ours keep their
    numbers: the host itself draws for ever what is to be drawn as finely as nothing."""
    hands = [*HANDS, *(with_numbers(rnd) for _ in range(8))]

    def change(text):
        parts, left = re.split(r"(?=<ViewProvider )", text), []
        for k, part in enumerate(parts):
            if re.search(OURS, part):
                left = left or rnd.sample(hands, len(hands))
                end = part.index("</ViewProvider>") + len("</ViewProvider>")
                parts[k] = left.pop()(part[:end]) + part[end:]
        return "".join(parts)

    return change


def look(doc, settled, pictures=None):
    """Selects each object, asks of each what the tree does, recomputes; each is shown as its kind
    is."""
    ours = [obj for obj in doc.Objects if kind_of(obj)]
    assert len(ours) >= 7
    for obj in ours:
        view = obj.ViewObject
        assert type(view.Proxy) is compat.viewers[kind_of(obj)], obj.Name
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(obj)
        view.Proxy.getIcon()
        getattr(view.Proxy, "claimChildren", list)()
        if pictures and kind_of(obj) in ("Match", "Facing", "Run"):
            assert PICTURES in view.listDisplayModes()
        obj.touch()
    settled(2)
    FreeCADGui.Selection.clearSelection()
    doc.recompute()
    settled(2)
    assert [obj.Message for obj in ours if obj.Message] == []


@pytest.mark.parametrize("seed", range(2))
def test_each_view_edited_by_another_hand_is_shown_as_its_kind_is(opened, settled, panels, seed):
    began = time.monotonic()
    doc = opened(GuiDocument=edited_all(random.Random(seed)))
    look(doc, settled, pictures=True)
    assert len(panels(doc, names=("Match", "Facing", "Bench"), commands="none")) == 3
    assert time.monotonic() - began < 10.0


WHOLLY = {
    "none at all": lambda text: None,
    "no XML": lambda text: "hello",
    "cut short": lambda text: text[: len(text) // 2],
    "counts that cannot be": lambda text: re.sub(r'Count="\d+"', 'Count="2000000000"', text),
    "of others": lambda text: text.replace('<ViewProvider name="', '<ViewProvider name="X'),
    "each other's": lambda text: re.sub(
        r'name="(Match|Bundle|Facing|Leaf)"',
        lambda found: 'name="{}"'.format(
            {"Match": "Bundle", "Bundle": "Facing", "Facing": "Leaf", "Leaf": "Match"}[found[1]]
        ), text),
    "a camera nowhere": lambda text: re.sub(
        r"(position|focalDistance|height|farDistance) [-\d][^&\"]*", r"\1 nan nan nan ", text),
}  # fmt: skip


@pytest.mark.parametrize("what", WHOLLY)
def test_what_cannot_be_read_of_the_views_is_left_aside(opened, settled, what):
    doc = opened(GuiDocument=WHOLLY[what])
    look(doc, settled)


def test_words_that_are_no_words_are_the_hosts_to_say(opened, settled, report, capfd):
    """It says so, and shows them by ours."""
    doc = opened(GuiDocument=lambda text: python("e2E=")(python("!", "no")(text)))
    settled()
    shown = report().toPlainText() + "".join(capfd.readouterr())
    assert "veneerwb" not in shown.lower()
    report().clear()
    look(doc, settled)


def test_a_document_that_a_window_saved_long_ago(user, settled, panels, tmp_path):
    if not SAVED.exists():
        pytest.skip(f"no document was saved by {VERSION}")
    path = tmp_path / "saved.FCStd"
    shutil.copy(SAVED, path)
    with zipfile.ZipFile(SAVED) as old, zipfile.ZipFile(path, "w") as new:
        for one in old.infolist():
            data = old.read(one)
            if one.filename == "GuiDocument.xml":
                data = edited_all(random.Random(9))(data.decode()).encode()
            new.writestr(one, data)
    doc = FreeCAD.openDocument(str(path))
    look(doc, settled, pictures=True)
    assert panels(doc, names=("Match",), commands="none") == ["Match"]


def test_no_script_has_the_host_draw_a_top_for_ever(opened, settled):
    view = opened().getObject("Match").ViewObject
    for value in (float("nan"), -1.0, 0.0, 1e-300):
        view.Deviation = view.AngularDeflection = value
        settled(2)
        assert 0.01 <= view.Deviation < 1.0
        assert getattr(view.AngularDeflection, "Value", view.AngularDeflection) >= 1.0
