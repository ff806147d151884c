# SPDX-License-Identifier: LGPL-2.1-or-later
"""The zip that users install holds what runs and what is to be read, and not what tests it."""

import re
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
INSTALLED = ROOT / "tests" / "installed"
MOST = 8e6
"""Bytes; it was 4.6 million in 2026-11, a quarter of it the example and a quarter README's
pictures."""
WITHIN = {"package.xml", "Init.py", "InitGui.py", "LICENSE", "README.md", "CHANGELOG.md",
          "docs/README.md", "resources/examples/round-top.FCStd", "resources/demo/view.png",
          "resources/translations/veneer_de.qm", "resources/translations/veneer_fr.qm",
          "veneerwb/__init__.py"}  # fmt: skip


@pytest.fixture(scope="module")
def by_rules(tmp_path_factory):
    made = tmp_path_factory.mktemp("zip") / "picked.zip"
    subprocess.run([sys.executable, INSTALLED / "picked.py", made, "Folder"], check=True)
    return made


def names(path):
    """Of the files in a zip, within its one folder."""
    with zipfile.ZipFile(path) as opened:
        found = [name for name in opened.namelist() if not name.endswith("/")]
    assert {name.split("/")[0] for name in found} == {"Folder"}
    return {name.removeprefix("Folder/") for name in found}


def test_the_zip_holds_what_a_user_needs(by_rules):
    found = names(by_rules)
    assert found >= WITHIN
    on_disk = {
        path.relative_to(ROOT).as_posix()
        for folder in ("veneerwb", "docs", "resources/ui", "resources/icons", "resources/templates")
        for path in (ROOT / folder).rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    assert found >= on_disk


def test_the_zip_leaves_out_what_a_user_does_not_need(by_rules):
    kept = re.compile(r"(tests|\.ci|\.deps|\.git.*|out)(/|$)|.*(__pycache__|\.pyc|\.ts)$")
    assert not [name for name in names(by_rules) if kept.match(name)]
    assert by_rules.stat().st_size < MOST


@pytest.mark.skipif(
    shutil.which("git") is None or not (ROOT / ".git").exists(), reason="no repository here"
)
def test_git_picks_the_same_and_the_repository_stays_as_it_is(by_rules, tmp_path):
    def state():
        ask = ["git", "--no-optional-locks", "status", "--porcelain"]
        return subprocess.run(ask, cwd=ROOT, capture_output=True, check=True).stdout

    before = state()
    made = tmp_path / "git.zip"
    subprocess.run(["bash", INSTALLED / "zip.sh", made, "Folder"], check=True)
    assert names(made) == names(by_rules)
    assert state() == before
