# SPDX-License-Identifier: LGPL-2.1-or-later
"""The only file that knows how FreeCAD versions differ, and whether there is a window.

Seen working on 0.20.2, 1.0.0 and 1.1.3. Features are asked for where they can be; versions are
compared as tuples, never by the major number alone.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD

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


def say(text: str) -> None:
    """One line to the host's console and report view."""
    FreeCAD.Console.PrintWarning(" ".join(text.split()) + "\n")


def log(text: str) -> None:
    """For developers: shown only where the host's log level asks for it."""
    FreeCAD.Console.PrintLog(text.rstrip() + "\n")


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


viewers: dict[str, Callable[[Any], Any]] = {}
"""View providers by kind of object; the screens, where there are any, put theirs here."""


def show(obj: Any, kind: str) -> None:
    """Gives `obj` the view provider of its kind, or the host's own; nothing without a window.

    A document saved without a window holds no view providers, and the host then hides what it
    restores: so this is asked for on restore too, and shows what has a shape.
    """
    view = obj.ViewObject if has_window() else None
    if view is None or getattr(view, "Proxy", 1) not in (None, 0):
        return
    fresh = view.Proxy is None
    if kind in viewers:
        viewers[kind](view)
    elif fresh:
        view.Proxy = 0
    if fresh and "Shape" in obj.PropertiesList:
        view.Visibility = True
