# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the product's own code may reach: no network, no other program, nothing that runs a text."""

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
SOURCES = sorted([ROOT / "Init.py", ROOT / "InitGui.py", *(ROOT / "veneerwb").rglob("*.py")])
MODULES = {  # by which a program reaches the network, starts another one, or runs what it is given
    "asyncio", "code", "codeop", "ctypes", "dbm", "ftplib", "http", "imaplib", "imp", "marshal",
    "multiprocessing", "nntplib", "pickle", "poplib", "pty", "requests", "runpy", "select",
    "selectors", "shelve", "smtplib", "socket", "socketserver", "ssl", "subprocess", "telnetlib",
    "urllib", "webbrowser", "xmlrpc", "aiohttp", "httpx", "urllib3", "QtNetwork", "QtWebEngine",
}  # fmt: skip
NAMES = {"eval", "exec", "compile", "__import__", "breakpoint"}
ATTRIBUTES = {
    "system", "popen", "startfile", "openUrl", "QDesktopServices", "QNetworkAccessManager",
    "QTcpSocket", "QProcess", "execv", "execve", "spawnl", "spawnv", "fork", "runString",
    "doCommand",
}  # fmt: skip


def reaches(tree):
    """What a source reaches that it may not, line by line."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names = [node.module or "", *(alias.name for alias in node.names)]
            names = [] if names[0].startswith("veneerwb") else names
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            names = [node.func.id] if node.func.id in NAMES else []
            names = [f"{name}()" for name in names]
        elif isinstance(node, ast.Attribute):
            names = [f"{node.attr}()"] if node.attr in ATTRIBUTES else []
        else:
            continue
        for name in names:
            if name.endswith("()") or MODULES & set(name.split(".")):
                yield f"line {node.lineno}: {name}"


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: str(path.relative_to(ROOT)))
def test_no_source_reaches_network_programs_or_runs_texts(path):
    assert list(reaches(ast.parse(path.read_text(encoding="utf-8")))) == []


def test_what_is_not_allowed_would_be_found():
    for line in ("import socket", "from urllib.request import urlopen", "eval('1')",
                 "import os; os.system('x')", "from PySide import QtNetwork", "exec(text)",
                 "import http.client as c", "QtGui.QDesktopServices.openUrl(u)"):  # fmt: skip
        assert list(reaches(ast.parse(line))), line


def test_modules_are_imported_only_by_names_that_stand_in_the_source():
    """`import_module` takes f-strings about our own packages, and names of tables in the source."""
    found = {}
    for path in SOURCES:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func).endswith("import_module"):
                found[str(path.relative_to(ROOT / "veneerwb"))] = ast.unparse(node.args[0])
    assert found == {
        "gui/commands.py": "f'veneerwb.gui.{module}'",
        "gui/spot/window.py": "f'veneerwb.gui.{module}'",
        "host/compat.py": "name",
        "packages.py": "package.module",
    }
