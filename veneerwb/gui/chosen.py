# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a command works on: the objects of its kinds, those that are meant before the others."""

from __future__ import annotations

from typing import Any

from veneerwb.host.objects.base import kind_of

Found = list[Any]


def of_kind(doc: Any, *kinds: str) -> list[Any]:
    """The objects of those kinds in a document (None: none)."""
    return [obj for obj in (doc.Objects if doc else ()) if kind_of(obj) in kinds]


def sources(doc: Any) -> list[Any]:
    """What a match can be cut from: the bundles and stocks of a document."""
    return of_kind(doc, "Bundle", "Stock")


def selected() -> list[Any]:
    """What is selected in the document."""
    import FreeCADGui

    return FreeCADGui.Selection.getSelection()


def before(candidates: list[Any], meant: list[Any]) -> list[Any]:
    """`candidates`, those that are meant before the others."""
    return sorted(candidates, key=lambda one: one not in meant)


def chosen_first(candidates: list[Any]) -> list[Any]:
    """`candidates`, those that are selected before the others."""
    return before(candidates, selected())


def leaves_chosen() -> list[Any]:
    return [one for one in selected() if kind_of(one) == "Leaf"]


def holding_first(bundles: Found) -> Found:
    """Bundles, first the one that is selected or holds a selected leaf."""
    return before(chosen_first(bundles), [up for leaf in leaves_chosen() for up in leaf.InList])


def seen_first(drawings: Found) -> Found:
    """Drawings, first the one whose page or view is selected or whose page is seen."""
    import FreeCADGui

    from veneerwb.host.sheets import drawing_of

    seen = getattr(FreeCADGui.activeView(), "getPage", lambda: None)()
    meant = [drawing_of(one) for one in [*selected(), seen] if one]
    return before(chosen_first(drawings), meant)


def benched_first(matches: Found) -> Found:
    """Matches, first the one that is selected or whose bench is."""
    meant = [one.Match for one in selected() if kind_of(one) == "Bench"]
    return before(chosen_first(matches), meant)


def sheets_seen_first(benches: Found) -> Found:
    """Benches, first the one that is selected with its match or a page, or whose page is seen."""
    import FreeCADGui

    from veneerwb.host.shop_pages import bench_of

    seen = getattr(FreeCADGui.activeView(), "getPage", lambda: None)()
    meant = [bench_of(one) for one in [*selected(), seen] if one]
    meant += [one for match in selected() for one in match.InList
              if kind_of(one) == "Bench" and one.Match == match]  # fmt: skip
    return before(chosen_first(benches), meant)


def cut_here_first(matches: Found) -> Found:
    """Matches, first the one that is selected or whose kept spot is."""
    kept = [one.Match for one in selected() if kind_of(one) == "Spot"]
    return before(chosen_first(matches), kept)
