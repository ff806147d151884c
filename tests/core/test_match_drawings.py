# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawings of matches and tops, which are shown beside their names."""

import importlib.util
from pathlib import Path
from xml.etree import ElementTree

from veneerwb.core.matches.kinds import MATCHES

ICONS = Path(__file__).resolve().parents[2] / "resources" / "icons"
SVG = "{http://www.w3.org/2000/svg}"


def file_of(name):
    return ICONS / "matches" / f"{name.replace(' ', '-').lower()}.svg"


def drawn():
    """resources/icons/draw.py"""
    spec = importlib.util.spec_from_file_location("draw", ICONS / "draw.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_every_match_is_drawn_small_and_large_and_nothing_else_but_tops():
    wanted = {name for match in MATCHES for name in (match.key, f"{match.key}-large")}
    names = set(drawn().drawings())
    assert {name for name in names if not name.startswith("top ")} == wanted
    assert set((ICONS / "matches").iterdir()) == {file_of(name) for name in names}


def test_a_drawing_shows_every_piece_and_only_leaves_of_the_match():
    draw = drawn()
    for name, one in draw.drawings().items():
        paths = ElementTree.parse(file_of(name)).findall(f"{SVG}path")
        filled = [path for path in paths if path.get("fill") != "none"]
        assert len(filled) == len(one.layout.pieces), name
        dark = [path for path in filled if path.get("fill") == draw.OVER]
        assert len(dark) == sum(piece.turned for piece in one.layout.pieces), name
        texts = ElementTree.parse(file_of(name)).findall(f"{SVG}text")
        assert {int(text.text) for text in texts} <= {piece.leaf for piece in one.layout.pieces}
        assert bool(texts) == bool(one.number), name


def test_drawn_leaves_are_numbered_as_published():
    # Architectural Woodwork Standards, 1st ed. (2009, superseded), 1.2.19 to 1.2.22, pp. 73-76
    published = {
        "architectural-large": [[1, 3, 5, 7], [2, 4, 6, 8]],
        "panel-large": [[1, 2, 3, 4], [8, 7, 6, 5]],
    }
    for name, rows in published.items():
        texts = ElementTree.parse(file_of(name)).findall(f"{SVG}text")
        places = {(float(t.get("y")), float(t.get("x"))): int(t.text) for t in texts}
        leaves = [places[place] for place in sorted(places)]
        assert [leaves[:4], leaves[4:]] == rows
