# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is done when the host's window starts: what the host must know of us while another workbench
is in use, and no more. The rest waits until an object of ours is there or the workbench is chosen.
"""

from __future__ import annotations

import FreeCADGui

from veneerwb.gui import language, preferences, resources
from veneerwb.host import compat


def begin() -> None:
    FreeCADGui.addIconPath(resources("icons"))
    language.begin()
    preferences.add_pages()
    compat.awaited.append(_watch)


def _watch() -> None:
    """From now on objects are shown by our views, and what is shown follows the user's colours."""
    from veneerwb.gui import view

    view.register()
    preferences.follow_colours()
