# SPDX-License-Identifier: LGPL-2.1-or-later
"""Documents that older windows saved, opened in this one."""

from pathlib import Path

import FreeCAD
import pytest

from veneerwb.gui.drawing import save_pdf
from veneerwb.gui.facing import FacingView
from veneerwb.gui.items import ItemView
from veneerwb.gui.view import PICTURES, MatchView
from veneerwb.host import compat
from veneerwb.host.objects.drawing import page_of

SCREENS = sorted(Path(__file__).parents[1].glob("fixtures/screens*.FCStd"))


def version_of(path):
    return tuple(int(part) for part in path.stem.split("-")[1].split("."))


@pytest.mark.parametrize("path", SCREENS, ids=lambda path: path.stem)
def test_what_an_older_window_saved_looks_the_same(user, path, tmp_path):
    if version_of(path) > compat.version():
        pytest.skip("saved by a newer host")
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    doc = FreeCAD.openDocument(str(copy))
    match, facing, drawing = map(doc.getObject, ("Match", "Facing", "Drawing"))
    bundle = user.only(doc, "Bundle")
    proxies = [type(obj.ViewObject.Proxy) for obj in (match, facing, drawing, bundle)]
    assert proxies == [MatchView, FacingView, ItemView, ItemView]
    assert match.ViewObject.DisplayMode == facing.ViewObject.DisplayMode == PICTURES
    assert not match.ViewObject.Seams and match.ViewObject.Numbers
    assert match.ViewObject.Visibility and facing.ViewObject.Visibility
    assert len(match.ViewObject.Proxy.laid.pieces) == 6 and facing.ViewObject.Proxy.faced
    save_pdf(page_of(drawing), tmp_path / "page.pdf")
    user.double_click(match, "Ways")
    user.cancel()
    user.wait_closed()
