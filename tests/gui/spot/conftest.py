# SPDX-License-Identifier: LGPL-2.1-or-later
"""A match on eight leaves, and the panel open on it."""

import FreeCAD
import FreeCADGui
import pytest

from veneerwb.host.objects import add_match


@pytest.fixture
def match(fresh, bundle):
    """Eight ways of 300 mm from the middle of eight leaves of 240 x 500 mm; nothing to undo."""
    made = add_match(fresh, bundle, Ways=8, Diameter=300.0)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def spot(user, match, panel):
    """The panel, open on the match."""
    user.open_panel("Veneer_ChooseSpot", "TipX")
    user.wait_for(lambda: panel().window.top.painted, "the top is painted")
    return panel()


@pytest.fixture
def hand(user, spot):
    """The mouse and the keys on the leaf."""
    return user.hand(spot.window.view)


@pytest.fixture
def on_picture():
    """A point of the bundle as (column, row) of the picture that is looked at."""

    def made(spot, x, y):
        return spot.window.view.onto_picture.map(float(x), float(y))

    return made


@pytest.fixture
def tip():
    """Where the document has the wedge."""

    def made(match):
        return match.TipX.Value, match.TipY.Value, match.Axis.Value

    return made


@pytest.fixture
def in_inches():
    """The user's lengths are in inches."""
    units = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
    was = units.GetInt("UserSchema", 0)
    FreeCAD.Units.setSchema(3)
    yield
    FreeCAD.Units.setSchema(was)
