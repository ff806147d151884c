# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of help: a page for each command, every link and picture there, every label told."""

import ast
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PIL import Image

from veneerwb import core

ROOT = Path(__file__).parents[2]
DOCS = ROOT / "docs"
PAGES = sorted(DOCS.rglob("*.md"))
FORMS = sorted((ROOT / "resources/ui").glob("*.ui"))
LINK = re.compile(r"(!?)\[[^\]]*\]\(([^)\s]+)\)")
SIGNS = re.compile(r"[<>+\-0-9:]*")
"""Labels of buttons that are signs; their tool tips say what they do."""
BUTTONS = ("PushButton", "ToolButton", "CheckBox")
CHOICES = ("choices", "cuts", "spot_compare")
"""Windows that are told in the text of their command's page."""
MOST_BYTES = 2_000_000


def commands():
    """The arguments of each Command in the table, as far as they are texts: name, icon, menu, tip.
    Read and not imported, for that takes the host."""
    tree = ast.parse((ROOT / "veneerwb/gui/commands.py").read_text("utf-8"))
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Command":
            texts = [one.args[1] if isinstance(one, ast.Call) else one for one in node.args[:4]]
            found.append(tuple(ast.literal_eval(one) for one in texts))
    return found


COMMANDS = commands()


def page_of(command):
    words = re.findall("[A-Z][a-z]*", command.removeprefix("Veneer_"))
    return DOCS / "commands" / f"{'-'.join(words).lower()}.md"


def one_line(text):
    return " ".join(text.split())


def links(page):
    """What a page points at: (whether it is a picture, the address)."""
    return [(mark == "!", to) for mark, to in LINK.findall(page.read_text("utf-8"))]


def said(widget, name):
    found = widget.find(f"property[@name='{name}']/string")
    return "" if found is None else (found.text or "")


def labels(form):
    """What a form calls its boxes, buttons and tabs; not sentences, which tell by themselves."""
    root = ElementTree.parse(form)
    for widget in root.iter("widget"):
        text = said(widget, "text").replace("&", "")
        is_label = widget.get("class") == "QLabel" and said_buddy(widget)
        named = is_label or widget.get("class").endswith(BUTTONS)
        if named and not SIGNS.fullmatch(text):
            yield text
    for tab in root.iter("attribute"):
        if tab.get("name") == "title":
            yield tab.find("string").text.replace("&", "")


def said_buddy(widget):
    found = widget.find("property[@name='buddy']")
    return "" if found is None else "".join(found.itertext()).strip()


INPUTS = ("ComboBox", "LineEdit", "SpinBox", "Button", "CheckBox", "Slider")


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_every_input_of_a_form_says_what_it_is_for(form):
    """By a tool tip, a label that leads to it, or a key in its own words."""
    root = ElementTree.parse(form)
    led_to = {said_buddy(widget) for widget in root.iter("widget")}
    silent = [
        widget.get("name")
        for widget in root.iter("widget")
        if widget.get("class").endswith(INPUTS)
        and widget.get("name") not in led_to
        and not said(widget, "toolTip")
        and "&" not in said(widget, "text")
    ]
    assert silent == []


def page_of_form(form):
    """The page that a form leads to by What's This; the host's own preferences lead nowhere."""
    if form.stem.startswith("preferences"):
        return DOCS / "preferences.md"
    return page_of(said(ElementTree.parse(form).getroot().find("widget"), "whatsThis"))


def test_there_are_commands():
    assert len(COMMANDS) >= 23 and all(name.startswith("Veneer_") for name, *_ in COMMANDS)


def test_every_command_has_a_page_and_every_page_a_command():
    assert {page_of(name) for name, *_ in COMMANDS} == set((DOCS / "commands").glob("*.md"))


@pytest.mark.parametrize("command", COMMANDS, ids=lambda command: command[0])
def test_a_page_is_called_what_the_menu_calls_its_command(command):
    """And the command has an icon and a tip that says more than its name."""
    name, picture, menu, tip = command
    assert page_of(name).read_text("utf-8").splitlines()[0] == f"# {menu.replace('&', '')}"
    assert (ROOT / f"resources/icons/{picture}.svg").is_file()
    assert len(tip) > len(menu) and not tip.endswith(".")
    assert "**Select first:**" in page_of(name).read_text("utf-8")


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.relative_to(DOCS).as_posix())
def test_every_link_leads_to_a_file(page):
    for _, to in links(page):
        if not to.startswith("https://"):
            assert (page.parent / to).is_file(), to


def test_every_page_is_reached_from_the_first():
    reached, ahead = set(), [DOCS / "README.md"]
    while ahead:
        page = ahead.pop()
        if page not in reached:
            reached.add(page)
            ahead += [(page.parent / to).resolve() for drawn, to in links(page)
                      if not drawn and to.endswith(".md")]  # fmt: skip
    assert reached == set(PAGES)


def test_every_picture_is_shown_and_all_together_are_small():
    shown = {(page.parent / to).resolve() for page in PAGES for drawn, to in links(page) if drawn}
    there = set((DOCS / "pictures").iterdir())
    assert shown == there and all(path.suffix == ".png" for path in there)
    assert sum(path.stat().st_size for path in there) < MOST_BYTES
    for path in there:
        with Image.open(path) as picture:
            assert picture.width <= 760, path.name  # as wide as the window of help


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_whats_this_on_a_form_leads_to_a_page(form):
    assert page_of_form(form).is_file()


@pytest.mark.parametrize("form", [f for f in FORMS if f.stem not in CHOICES], ids=lambda f: f.stem)
def test_every_label_of_a_form_is_told_on_its_page(form):
    """In bold or italics, or as a heading."""
    text = page_of_form(form).read_text("utf-8")
    told = {one_line(one) for one in re.findall(r"\*{1,2}([^*]+)\*{1,2}", text)}
    told |= set(re.findall(r"^## (.*)$", text, re.MULTILINE))
    assert {one for one in labels(form) if one not in told} == set()


def scripts():
    """What stands indented on the page about scripts, by the headings above it."""
    parts = (DOCS / "scripting.md").read_text("utf-8").split("\n## ")
    lines = {part.splitlines()[0]: re.findall(r"^(?:    .*|)$", part, re.M) for part in parts}
    return {head: "\n".join(line[4:] for line in found) for head, found in lines.items()}


IN_A_HOST = ("The shortest top", "What is drawn on leaves")
"""What test_examples runs."""


def test_the_scripts_run_one_after_the_other(tmp_path, capsys):
    sawn = core.sawn_bundle(leaves=4, width=160, length=300, mm_per_px=1.0, seed=3, knots=0)
    for leaf in sawn.leaves:
        Image.fromarray(leaf.photo).save(tmp_path / f"oak {leaf.number}.png")
    shared = {}
    for head, script in scripts().items():
        if script.strip() and head not in IN_A_HOST:
            exec(compile(script.replace("/home/me/leaves", str(tmp_path)), head, "exec"), shared)
            assert capsys.readouterr().out.strip(), head  # whatever there is to see


ASKED = """
    from_photos leaves thickness number size usable faults side photo mm_per_px register view source
    round oval polygon rectangle racetrack outline edge polygon_mm reach placement order turned
    start oversize pieces seams cuts top bundle position leaf blank onto_bundle line step apply
    inverse mirrored code level text remedy values total error rim_gap suspects kind registers sure
    appeal score picture
"""
"""What of the core's objects scripts use; it is kept."""


def test_all_that_a_script_may_ask_for_is_told():
    text = (DOCS / "scripting.md").read_text("utf-8")
    code = set(re.findall(r"\w+", " ".join(re.findall(r"`[^`]+`|^    .*$", text, re.M))))
    assert {*core.__all__, *re.findall(r"\w+", ASKED)} - code == set()
    for file in ("host/objects/__init__.py", "host/areas.py"):
        tree = ast.parse((ROOT / "veneerwb" / file).read_text("utf-8"))
        named = {one.name for one in tree.body if isinstance(one, ast.FunctionDef)}
        named |= {one.name for node in tree.body if isinstance(node, ast.ImportFrom)
                  for one in node.names if one.name.startswith("add_")}  # fmt: skip
        assert {name for name in named if not name.startswith("_")} - code == set()
