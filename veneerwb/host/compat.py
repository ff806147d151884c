# SPDX-License-Identifier: LGPL-2.1-or-later
"""The only file that knows how FreeCAD versions differ, and whether there is a window.

Seen working on 0.20.2, 1.0.0 and 1.1.3. Features are asked for where they can be; versions are
compared as tuples, never by the major number alone.
"""

from __future__ import annotations

import importlib
import os
import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from typing import Any, NamedTuple

import FreeCAD

from veneerwb import packages

READ_ONLY, HIDDEN, OUTPUT = 1, 4, 8
"""Bits of addProperty's `attr`. READ_ONLY binds the editor alone; an OUTPUT leaves its object
untouched."""


def version() -> tuple[int, ...]:
    """The host's version: (0, 20, 2), (1, 0, 0), (1, 1, 3), (26, 3, 0)."""
    numbers = []
    for part in FreeCAD.Version()[:3]:
        digits = "".join(c for c in part.split(" ")[0] if c.isdigit())
        if not digits:
            break
        numbers.append(int(digits))
    return tuple(numbers)


def recompute(doc: Any, objects: Sequence[Any] = ()) -> None:
    """Recomputes a document, or some of its objects, while somebody may be typing. The host's
    progress bar takes away every key and click that comes meanwhile: of 702.25 typed at a common
    pace it left 705."""
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document")
    name = "CanAbortRecompute"  # without it there is no bar
    before = [settings.GetBool(name, default) for default in (False, True)]
    settings.SetBool(name, False)
    try:
        doc.recompute(*([list(objects)] if objects else []))
    finally:
        if before[0] == before[1]:
            settings.SetBool(name, before[0])
        else:  # it was not set
            settings.RemBool(name)


def _users_packages() -> str:
    """The folder into which the host's own Addon Manager puts packages for the host's Python."""
    folder = os.path.join(FreeCAD.getUserAppDataDir(), "AdditionalPythonPackages")
    python = "py{}{}".format(*sys.version_info)
    return folder if version() < (1, 0) else os.path.join(folder, python)


packages.put_into(_users_packages())


def say(text: str) -> None:
    """One line to the host's console and report view, and to its status bar or notices: every host
    shows it there as it is written, whatever looks like markup in it."""
    FreeCAD.Console.PrintWarning(" ".join(text.split()) + "\n")


def log(text: str) -> None:
    """For developers: shown only where the host's log level asks for it."""
    FreeCAD.Console.PrintLog(text.rstrip() + "\n")


alarms: list[Callable[[Any, str, str], None]] = []
"""What else is done when a document is in danger; the screens, where there are any, add to it."""


def alarm(doc: Any, text: str, path: str) -> None:
    """Says what must not be missed, for the work in a document that could not be saved at `path`
    might be lost."""
    say(text)
    begin_screens()
    for one in alarms:
        one(doc, text, path)


def count_as_unsaved(doc: Any, bundle: Any) -> None:
    """Has the window ask before it closes `doc`; older hosts do so only after a change, and that of
    an output (of a Bundle object in it) touches nothing."""
    import FreeCADGui

    try:
        FreeCADGui.getDocument(doc.Name).Modified = True
    except AttributeError:
        bundle.Report = bundle.Report


def has_window() -> bool:
    return bool(FreeCAD.GuiUp)


def add_property(
    obj: Any, kind: str, name: str, group: str, text: str, attributes: int = 0
) -> bool:
    """Adds a property unless `obj` has it (adding it again raises on newer hosts); whether it was
    added.

    `kind` is the property's type without "App::Property". It cannot be removed by the user where
    the host knows how to lock it.
    """
    if name in obj.PropertiesList:
        return False
    obj.addProperty(
        f"App::Property{kind}",
        name,
        group,
        text,
        attributes,
        bool(attributes & READ_ONLY),
        bool(attributes & HIDDEN),
    )
    try:
        obj.setPropertyStatus(name, "LockDynamic")
    except (ValueError, TypeError, RuntimeError):  # a host that cannot lock
        log(f"{name} is not locked")
    return True


def is_of(obj: Any, name: str, kind: str) -> bool:
    """Whether a property of `obj` is of a type, given without "App::Property"."""
    return obj.getTypeIdOfProperty(name) == f"App::Property{kind}"


def drop_property(obj: Any, name: str) -> None:
    """Takes away a property that `add_property` may have locked."""
    with suppress(ValueError, TypeError, RuntimeError):  # a host that cannot lock
        obj.setPropertyStatus(name, "-LockDynamic")
    obj.removeProperty(name)


def set_hidden(obj: Any, name: str, hidden: bool) -> None:
    """Keeps a property out of the property editor, or has it there again."""
    if ("Hidden" in obj.getEditorMode(name)) != hidden:
        obj.setEditorMode(name, 2 if hidden else 0)


def support_name(obj: Any) -> str:
    """What the property is called that says what an object is attached to."""
    return "AttachmentSupport" if hasattr(obj, "AttachmentSupport") else "Support"


def make_attachable(obj: Any) -> None:
    """Gives a Part feature the properties by which it is attached to a face or a datum."""
    if "MapMode" not in obj.PropertiesList:
        obj.addExtension("Part::AttachExtensionPython")


def attach(obj: Any, support: Any, parts: Sequence[str] = ("",), mode: str = "FlatFace") -> None:
    """Attaches `obj` to parts of `support` ("Face6"; "" for a datum plane)."""
    setattr(obj, support_name(obj), [(support, part) for part in parts])
    obj.MapMode = mode


def follow_support(obj: Any) -> None:
    """Places an attachable object on what it is attached to (execute must ask for it)."""
    if getattr(obj, "MapMode", "Deactivated") != "Deactivated":
        obj.positionBySupport()


def whole(flag: Any) -> int:
    """A flag of Qt's as the whole number that the host's interface takes: in Qt 6 flags are
    enumerations."""
    return int(getattr(flag, "value", flag))


def pointer(event: Any) -> tuple[float, float]:
    """The point of its widget that an event of the mouse or the wheel happened at."""
    at = event.position() if hasattr(event, "position") else event.localPos()  # Qt 6, Qt 5
    return at.x(), at.y()


def forget(form: Any) -> None:
    """Ends what Qt for Python knows of a form made by the host's loader, and of what is in it. The
    loader of every host keeps one reference too many, so that the names would outlive the widgets.
    """
    form.__dict__.clear()
    for name in ("shiboken6", "shiboken2"):
        try:
            importlib.import_module(name).invalidate(form)
        except ImportError:
            continue


viewers: dict[str, Callable[[Any], Any]] = {}
"""View providers by kind of object; the screens, where there are any, put theirs here."""
awaited: list[Callable[[], None]] = []
"""What the screens do once, when the first object of ours is there: a host that has none is not
kept waiting for it at start."""


def begin_screens() -> None:
    """Does what is `awaited`."""
    while awaited:
        awaited.pop()()


def show(obj: Any, kind: str) -> None:
    """Gives `obj` the view provider of its kind, or the host's own; nothing without a window.

    A document saved without a window holds no view providers, and the host then hides what it
    restores: so this is asked for on restore too, and shows what has a shape. One that somebody
    wrote into the file by hand, of another kind, twice, or not of ours at all, gives way.
    """
    view = obj.ViewObject if has_window() else None
    begin_screens()
    wanted = viewers.get(kind)
    if not hasattr(view, "Proxy"):
        return
    if type(view.Proxy) is wanted and hasattr(view.Proxy, "obj"):  # attached
        return
    fresh = view.Proxy is None
    if wanted is not None:
        wanted(view)
        view.signalChangeIcon()  # the tree may have asked for it before
    elif fresh:
        view.Proxy = 0
    if fresh and "Shape" in obj.PropertiesList:
        view.Visibility = True


MESHED = {"Deviation": (1e-4, 100.0, 0.2), "AngularDeflection": (0.05, 180.0, 28.65)}
"""How finely a view draws curves: least, most, usual."""


def keep_meshable(view: Any) -> None:
    """Takes back what a view would mesh its shape by and never come to an end: less than nothing or
    no number, as a file edited by hand can say."""
    for name, (least, most, usual) in MESHED.items():
        found = getattr(view, name, usual)
        if not least <= getattr(found, "Value", found) <= most:
            setattr(view, name, usual)


def redraw(obj: Any) -> None:
    """Lets the view provider of `obj`, if it has one of ours, look at it again."""
    proxy = getattr(obj.ViewObject, "Proxy", None) if has_window() else None
    if hasattr(proxy, "updateData"):
        proxy.updateData(obj, "")


def colour_faces(view: Any, colours: Sequence[tuple[float, float, float]]) -> None:
    """Gives each face of a shape its colour (red, green, blue of 0..1), in the order of faces.
    Without a fourth number, which on older hosts is the transparency and on newer the opposite.
    Newer hosts make faces shine, so that those that are seen from straight above look white."""
    view.DiffuseColor = [tuple(rgb) for rgb in colours]
    if hasattr(view, "ShapeAppearance"):
        view.ShapeAppearance = [
            FreeCAD.Material(
                DiffuseColor=rgb, AmbientColor=rgb, SpecularColor=(0.0, 0.0, 0.0), Shininess=0.0
            )
            for rgb in map(tuple, colours)
        ]


# --- drawing pages ------------------------------------------------------------------------------


class Lettering(NamedTuple):
    """How a page's annotation view sets its text, measured on the PDF of each host with the
    drawing font; all but `trailing` are shares of the capitals' height."""

    size: float
    """The property TextSize."""
    line: float
    """From line to line at a LineSpace of 100."""
    drop: float
    """From the top of the text block to the first line's foot."""
    trailing: int
    """Empty lines that the host adds at the end of the block."""


def lettering() -> Lettering:
    """How this host's annotation views set text."""
    if version() < (0, 21):
        return Lettering(1.353, 2.278, 1.75, 1)
    return Lettering(1.0, 1.44, 0.97, 0)


def reads_escapes() -> bool:
    """Whether annotation views take a line with a \\x in it for one of an old version's, with
    escapes."""
    return version() >= (0, 21)


def symbol_scale() -> float:
    """The Scale at which a symbol view draws an SVG that gives its size in mm at that size: older
    hosts take a mm for 90/25.4 units and a unit for 25.4/96 mm."""
    return 96.0 / 90.0 if version() < (1, 1) else 1.0


def use_drawing_font() -> None:
    """Pages that are painted get the host's drawing font, for which their letters are reckoned."""
    from pathlib import Path

    from veneerwb.paint.pdf import use_font

    fonts = Path(FreeCAD.getResourceDir()) / "Mod" / "TechDraw" / "Resources" / "fonts"
    for path in sorted(fonts.glob("osifont*.ttf"))[:1]:
        use_font(str(path))


def hide_frames(page: Any) -> None:
    """Shows a page as it is printed, without a frame and a name round each view."""
    view = page.ViewObject if has_window() else None
    if view is not None and "ShowFrames" in view.PropertiesList:
        view.ShowFrames = False
