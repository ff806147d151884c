# SPDX-License-Identifier: LGPL-2.1-or-later
"""The Python packages that the addon needs, and how a user gets those that are not there.

Below all layers, as `words` is, and without any of those packages: it is asked when one is missing.
"""

from __future__ import annotations

import os
import sys
import traceback
from importlib import import_module
from typing import NamedTuple

from veneerwb.words import say


class Package(NamedTuple):
    """`module` is what is imported, `name` what pip and the host's Addon Manager call it."""

    module: str
    name: str
    debian: str


NEEDED = (
    Package("numpy", "numpy", "python3-numpy"),
    Package("scipy", "scipy", "python3-scipy"),
    Package("shapely", "shapely", "python3-shapely"),
    Package("PIL", "pillow", "python3-pil"),
)
EZDXF = Package("ezdxf", "ezdxf", "python3-ezdxf")
"""For DXF files alone."""

_folder = [""]
_DEBIAN = "/var/lib/dpkg/status"


def put_into(folder: str) -> None:
    """From now on users are told to put packages there, where the host's Python looks for them."""
    _folder[0] = folder


def told(error: Exception) -> str:
    """One sentence about everything that is needed and missing, with what to do; where all is there
    about the one that did not load; empty where `error` is about something else."""
    modules = _module(error), _being_loaded(error)
    asked = next((one for one in (*NEEDED, EZDXF) if one.module in modules), None)
    if asked is None and not isinstance(error, ImportError):
        return ""
    lacking = [one for one in NEEDED if not _found(one)]
    if asked is EZDXF and not _found(EZDXF):
        lacking.append(EZDXF)
    if lacking:
        return _lacking(lacking)
    if asked is None:
        return ""
    return say(
        "The Python package {package} is there but cannot be loaded ({why}); remove it, run this "
        "in a terminal and start FreeCAD again: {command}",
        package=asked.name, why=str(error).strip().partition("\n")[0], command=command(asked),
    )  # fmt: skip


def command(*packages: Package) -> str:
    """What to type in a terminal to get them for the Python that runs this."""
    if _is_debians():
        return " ".join(["sudo apt install", *(one.debian for one in packages)])
    into = ["--target", _quoted(_folder[0])] if _folder[0] else []
    pip = [_quoted(_python()), "-m pip install", *into, *(one.name for one in packages)]
    return " ".join(pip)


def _lacking(packages: list[Package]) -> str:
    values = {"packages": ", ".join(one.name for one in packages), "command": command(*packages)}
    if _is_debians():
        return say(
            "This needs {packages}, which FreeCAD's Python does not have; run this in a terminal "
            "and start FreeCAD again: {command}", **values,
        )  # fmt: skip
    return say(
        "This needs {packages}, which FreeCAD's Python does not have; install the addon anew by "
        "the Addon Manager, or run this in a terminal, and start FreeCAD again: {command}",
        **values,
    )


def _found(package: Package) -> bool:
    """Whether it is there, in order or not."""
    try:
        import_module(package.module)
    except ModuleNotFoundError as error:
        return _module(error) != package.module
    except Exception:  # one made for another numpy raises what it likes
        return True
    return True


def _module(error: Exception) -> str:
    """The package that `error` names; empty where it names none."""
    name = error.name if isinstance(error, ImportError) else ""
    return (name or "").split(".")[0]


def _being_loaded(error: Exception) -> str:
    """The package that was being loaded when `error` was raised, which may be of any kind; empty
    where none was."""
    loading = ""
    for frame, _ in traceback.walk_tb(error.__traceback__):
        if frame.f_code.co_name == "<module>":
            loading = frame.f_globals.get("__name__", "").split(".")[0]
    return loading


def _is_debians() -> bool:
    """Whether this Python, and with it its packages, are Debian's or a relative's, and not those of
    a host that brings its own along."""
    return sys.prefix == "/usr" and os.path.exists(_DEBIAN)


def _python() -> str:
    """The program of the Python that runs this; in a host `sys.executable` may be the host."""
    version = f"python{sys.version_info[0]}.{sys.version_info[1]}"
    folders = (os.path.join(sys.prefix, "bin"), sys.prefix)
    for name in (version, "python3", "python.exe", "python"):
        for folder in folders:
            if os.path.isfile(os.path.join(folder, name)):
                return os.path.join(folder, name)
    return version


def _quoted(path: str) -> str:
    return f'"{path}"' if " " in path else path
