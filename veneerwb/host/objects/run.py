# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run: doors, drawer fronts or wall panels of other objects, veneered from one sequence."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from veneerwb.host import compat, kinds, known_faces, settings
from veneerwb.host.known_faces import OnFaces, set_faces
from veneerwb.host.objects.base import OUT, SECRET, Property, Refused, added, give, set_if_new
from veneerwb.host.objects.match import Match
from veneerwb.words import say

RUN_KINDS = (
    "Side by side", "End match", "Centre and butt", "Box", "Reverse box", "Diamond",
    "Reverse diamond", "Herringbone", "Radial",
)  # fmt: skip
"""The matches that panels can be laid in."""
AS_MATCH = (
    "Ways", "Turn", "Order", "Turned", "Strips", "Face", "EndKind", "Count", "StripWidth", "Rows",
    "Grain", "Slant", "CornerWay", "Seed", "First", "Rim", "Start", "Oversize", "AutoPlacement",
    "TipX", "TipY", "Axis", "Margin", "Spares",
)  # fmt: skip
"""What says how a panel is laid, as it does of a Match."""
RECENT = 4


class Run(OnFaces):
    """Panels on faces in one plane. Its Shape is a compound of one solid a piece, the back of the
    veneer on the faces, in the order of the panels' numbers and of the positions in each; it lies
    where the faces are in the world.

    Panels are numbered by elevation: in rows from the top, each left to right as seen from outside.
    """

    kind = "Run"
    needs = ("Bundle",)
    busy = False
    """Its results are being set one by one, and do not fit together yet."""
    found: tuple[Any, ...] = ()
    """The core's findings, as last listed in Findings."""
    recent: tuple[Any, ...] = ()
    """How it lay when it was last recomputed, the latest first: undo goes back to one of them."""
    properties = (
        Property("LinkSubListGlobal", "Faces", "Run", "The flat faces in one plane, one a panel"),
        Property("LinkGlobal", "Bundle", "Run", "The bundle or stock that the run is cut from"),
        Property(
            "LinkGlobal", "Second", "Run", "A second bundle, used when the leaves of the first end"
        ),
        Property(
            "Integer", "Missing", "Run", "How many leaves are thought lost between the bundles", 1
        ),
        Property(
            "Enumeration",
            "Mode",
            "Run",
            "Sequence: panels of one size, each from the next leaves; blueprint: one field on all",
            ("sequence", "blueprint"),
        ),
        Property(
            "Enumeration",
            "Gaps",
            "Run",
            "Of a blueprint. Closed: gaps take none of the figure; laid through: what lies in them "
            "is lost",
            ("closed", "laid through"),
        ),
        Property("Enumeration", "Kind", "Match", "How the leaves are laid", RUN_KINDS),
        *(one for one in Match.properties if one.name in AS_MATCH),
        Property(
            "StringList", "Findings", "Result", "What is to be said, the gravest first", [], OUT
        ),
        Property("String", "Revision", "Result", "A mark that changes with the picture", "", OUT),
        Property("StringList", "Panels", "Result", "Each panel's face and leaves", [], OUT),
        Property(
            "IntegerList", "PanelNumbers", "Result", "The number of the panel on each face", [], OUT
        ),
        Property("IntegerList", "Leaves", "Result", "The leaves that it takes", [], OUT),
        Property("String", "ChosenBy", "Result", "What the leaves were chosen by", "", SECRET),
        Property("String", "ShapeMark", "Result", "What the shape was made from", "", SECRET),
        *known_faces.PROPERTIES,
    )

    def ensure_properties(self, obj: Any) -> None:
        super().ensure_properties(obj)
        _hide_unused(obj)

    def onChanged(self, obj: Any, name: str) -> None:
        """Another kind of match has no use for what the last one could have."""
        if name not in ("Kind", "Mode") or "Spares" not in obj.PropertiesList:
            return
        if obj.Document is None or obj.Document.Restoring or "Restore" in obj.State:
            return
        if name == "Kind" and not obj.Document.Transacting:
            kinds.settle(obj)
        _hide_unused(obj)

    def update(self, obj: Any) -> None:
        from veneerwb.core.runs import run_findings
        from veneerwb.host import runs

        links, shapes = known_faces.taken(obj)
        chosen_by = _chosen_by(obj, links)
        _refuse_missing(obj, runs.leaves_of(obj).numbers, chosen_by)
        run = runs.on_faces(obj, links, shapes)
        found = tuple(run_findings(run.laid, obj.Margin.Value, obj.Spares))
        mark = run.shape_mark(obj)
        shape = None
        if mark != obj.ShapeMark or obj.Shape.isNull() or not obj.Placement.isIdentity():
            shape = run.compound(obj)
        self.busy = True
        try:
            if shape is not None:
                known_faces.put_shape(obj, shape)
            set_if_new(
                obj,
                ShapeMark=mark,
                Findings=[str(finding) for finding in found],
                Revision=run.revision,
                Panels=run.words,
                PanelNumbers=run.numbers,
                Leaves=list(run.laid.leaves),
                ChosenBy=chosen_by,
            )
            known_faces.keep(obj, links)
            self.found = found
            others = [one for one in self.recent if one.revision != run.revision]
            self.recent = (run, *others[: RECENT - 1])
        finally:
            self.busy = False
        compat.redraw(obj)


def _chosen_by(obj: Any, links: Sequence[tuple[Any, str]]) -> str:
    """All that decides which leaves are used, apart from which there are."""
    bundles = [one.Name if one else "" for one in (obj.Bundle, obj.Second)]
    held = (getattr(obj, name) for name in ("Missing", "Mode", "Gaps", "Kind", *AS_MATCH))
    values = [getattr(value, "Value", value) for value in held]
    faces = [f"{one.Name}.{name}" for one, name in links]
    return "|".join(map(str, (*bundles, *values, *faces)))


def _refuse_missing(obj: Any, numbers: Sequence[int], chosen_by: str) -> None:
    """A leaf that was in use and has gone must not be replaced by another without a word."""
    gone = sorted(set(obj.Leaves) - set(numbers))
    if gone and chosen_by == obj.ChosenBy:
        names = ", ".join(map(str, gone))
        raise Refused(
            say("Leaf {leaf} is missing from the bundle; undo, add it again, or choose another "
                "first leaf.", leaf=names)
            if len(gone) == 1
            else say("Leaves {leaves} are missing from the bundle; undo, add them again, or choose "
                     "another first leaf.", leaves=names)
        )  # fmt: skip


def _hide_unused(obj: Any) -> None:
    """Shows in the property editor only what the kind of match and the mode make use of."""
    wanted = kinds.KINDS[obj.Kind]
    for name in {name for names in kinds.KINDS.values() for name in names} & set(AS_MATCH):
        compat.set_hidden(obj, name, name not in wanted)
    compat.set_hidden(obj, "Gaps", obj.Mode != "blueprint")


def add_run(doc: Any, bundle: Any, faces: Sequence[tuple[Any, str]] = (), **properties: Any) -> Any:
    """A Run of a Bundle or Stock object on faces [(door, "Face6"), ...], with the properties given
    by name. Recompute to see it."""
    with added(doc, "Part", Run) as obj:
        obj.Bundle = bundle
        set_faces(obj, faces)
        give(obj, {**settings.for_match(), **properties})
    return obj


def run_of(obj: Any) -> Any:
    """How a Run lies now (host.runs.OnFaces): its layouts, its panels and where they are. Raises
    VeneerError or Refused where execute would refuse."""
    from veneerwb.host import runs

    return runs.on_faces(obj, *known_faces.taken(obj))


def last_run(obj: Any) -> Any:
    """The same as it was last recomputed, if that is known."""
    recent = getattr(obj.Proxy, "recent", ())
    known = next((one for one in recent if one.revision == obj.Revision), None)
    return known or run_of(obj)


def found_on(obj: Any) -> list[Any]:
    """The core's findings on a Run as it stands; none where it refuses."""
    from veneerwb.core.runs import run_findings

    if obj.Message:
        return []
    found = getattr(obj.Proxy, "found", ())
    if [str(finding) for finding in found] == obj.Findings:
        return list(found)
    return run_findings(run_of(obj).laid, obj.Margin.Value, obj.Spares)
