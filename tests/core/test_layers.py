# SPDX-License-Identifier: LGPL-2.1-or-later
"""Imports run downwards only (gui, host, paint, core); each layer keeps to its own libraries."""

import ast
import importlib.util
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "veneerwb"
QT = {"PySide", "PySide2", "PySide6", "PyQt5", "PyQt6", "shiboken2", "shiboken6"}
WINDOW = QT | {"FreeCADGui", "PartGui", "TechDrawGui", "SpreadsheetGui", "pivy"}
NUMERIC = {"numpy", "scipy", "shapely", "PIL", "ezdxf"}
HOST = {"FreeCAD", "Part", "Sketcher", "TechDraw", "Spreadsheet", "Units", "Points", "Mesh"}
ALLOWED = {"core": NUMERIC, "paint": NUMERIC, "host": NUMERIC | HOST}
"""Outside the standard library, by layer; gui may import anything."""
EXCEPTIONS = {("paint", "qt.py"): QT, ("host", "compat.py"): WINDOW}
"""The one file of a layer that may import more."""
BELOW = {"core": {"core"}, "paint": {"core", "paint"}, "host": {"core", "paint", "host"}}


def imported(source: str, package: str) -> list[str]:
    """Every module that `source`, a module in `package`, names in an import wherever it stands."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found += [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            name = "." * node.level + (node.module or "")
            base = importlib.util.resolve_name(name, package) if node.level else name
            within = base.split(".") == ["veneerwb"]  # from veneerwb import host
            found += [f"{base}.{alias.name}" for alias in node.names] if within else [base]
        elif isinstance(node, ast.Call) and node.args and isinstance(node.args[0], ast.Constant):
            called = getattr(node.func, "attr", getattr(node.func, "id", ""))
            if called in ("import_module", "__import__"):
                found.append(str(node.args[0].value))
    return found


def trespasses(source: str, layer: str, name: str, package: str = "") -> list[str]:
    """The imports of the file `name` of `layer` that its layer may not make."""
    may = ALLOWED[layer] | EXCEPTIONS.get((layer, name), set()) | set(sys.stdlib_module_names)
    wrong = []
    for module in imported(source, package or f"veneerwb.{layer}"):
        top, *rest = module.split(".")
        if top == "veneerwb":
            if rest and rest[0] not in BELOW[layer] | {"__version__", "words", "packages"}:
                wrong.append(module)
        elif top not in may:
            wrong.append(module)
    return wrong


FILES = [path for layer in ALLOWED for path in sorted(PACKAGE.glob(f"{layer}/**/*.py"))]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(PACKAGE).as_posix())
def test_file_imports_downwards_only(path: Path) -> None:
    layer, *inner = path.relative_to(PACKAGE).parts
    package = ".".join(path.relative_to(ROOT).parts[:-1])
    assert trespasses(path.read_text("utf-8"), layer, "/".join(inner), package) == []


def test_the_scan_found_the_core() -> None:
    assert any(path.name == "plane.py" for path in FILES)


@pytest.mark.parametrize(
    ("layer", "name", "source"),
    [
        ("core", "leaf.py", "import FreeCAD"),
        ("core", "leaf.py", "def f():\n    from PySide import QtGui"),
        ("core", "leaf.py", "from veneerwb.host import solids"),
        ("core", "leaf.py", "from veneerwb import paint"),
        ("core", "leaf.py", "from ..paint import picture"),
        ("core", "leaf.py", "import cv2"),
        ("core", "leaf.py", "__import__('Part')"),
        ("paint", "picture.py", "from PySide2 import QtGui"),
        ("paint", "qt.py", "import FreeCAD"),
        ("host", "solids.py", "def f():\n    import FreeCADGui"),
        ("host", "objects/match.py", "from veneerwb.gui import scene"),
        ("host", "objects/compat.py", "import pivy"),
    ],
)
def test_the_scan_sees_a_trespass(layer: str, name: str, source: str) -> None:
    assert len(trespasses(source, layer, name)) == 1


@pytest.mark.parametrize(
    ("layer", "name", "source"),
    [
        ("core", "leaf.py", "import numpy.linalg\nfrom veneerwb.core.plane import Motion"),
        ("core", "leaf.py", "from .plane import Motion\nfrom veneerwb import __version__"),
        ("paint", "qt.py", "from PySide6 import QtGui"),
        ("host", "compat.py", "import FreeCADGui"),
        ("host", "solids.py", "import Part\nfrom veneerwb.core import Layout"),
    ],
)
def test_the_scan_lets_what_is_right_pass(layer: str, name: str, source: str) -> None:
    assert trespasses(source, layer, name) == []


def loaded_by(module: str) -> set[str]:
    """Top names of all that a fresh interpreter holds once it has imported `module`."""
    code = f"import sys, {module}; print(*{{name.split('.')[0] for name in sys.modules}})"
    ran = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    return set(ran.stdout.split())


def test_importing_the_package_loads_nothing_heavy() -> None:
    assert not loaded_by("veneerwb") & (NUMERIC | HOST | WINDOW)


def test_importing_the_core_loads_neither_host_nor_qt() -> None:
    loaded = loaded_by("veneerwb.core")
    assert "numpy" in loaded
    assert not loaded & (HOST | WINDOW)
