# SPDX-License-Identifier: LGPL-2.1-or-later
"""What an installed addon does without a window, for tests/host/test_install.py: opens the example,
recomputes all of it, writes a template as DXF and as SVG, saves."""

import json
import os
import sys
import traceback

import FreeCAD


def solids(doc):
    """Number and volume of the solids, by object."""
    return {
        obj.Name: [len(obj.Shape.Solids), obj.Shape.Volume]
        for obj in doc.Objects
        if hasattr(obj, "Shape") and obj.Shape.Solids
    }


def messages(doc):
    return sorted({obj.Message for obj in doc.Objects if getattr(obj, "Message", "")})


def templates(doc):
    """What becomes of a template of the example, by format."""
    from veneerwb.core.shop.templates.dxf import dxf
    from veneerwb.core.shop.templates.make import templates
    from veneerwb.core.shop.templates.svg import svg
    from veneerwb.host.objects import layout

    made, found = templates(layout(doc.getObject("Match")))[0], {}
    for name, write in {"dxf": dxf, "svg": svg}.items():
        try:
            found[name] = len(write(made)) > 1000
        except ValueError as error:
            found[name] = str(error)
    return found


def found():
    import veneerwb

    started = sorted(name for name in sys.modules if name.split(".")[0] == "veneerwb")
    root = os.path.dirname(os.path.dirname(os.path.abspath(veneerwb.__file__)))
    doc = FreeCAD.openDocument(os.path.join(root, "resources", "examples", "round-top.FCStd"))
    told = {"started": started, "root": root, "solids": [solids(doc)], "opened": messages(doc)}
    for obj in doc.Objects:
        obj.touch()
    doc.recompute()
    told |= {"recomputed": messages(doc)}
    told["solids"].append(solids(doc))
    doc.saveAs(os.path.join(os.environ["HOME"], "saved.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(os.path.join(os.environ["HOME"], "saved.FCStd"))
    told["solids"].append(solids(again))
    if not told["recomputed"]:
        told["templates"] = templates(again)
    return told


try:
    result = found()
except BaseException:
    result = {"failed": traceback.format_exc()}
with open(os.environ["VENEERWB_TOLD"], "w", encoding="utf-8") as file:
    json.dump(result, file)
sys.stdout.flush()
os._exit(0)
