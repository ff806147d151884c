# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD when its window starts, whatever is used in it: makes the workbench known.

FreeCAD runs this inside a function, so that the class's methods see no name of this file.
"""

import FreeCADGui

from veneerwb.gui import starting

starting.begin()


class VeneerWorkbench(FreeCADGui.Workbench):
    """The workbench; nothing heavy is imported before it is first chosen."""

    import os

    from FreeCAD import Qt

    from veneerwb.gui import resources

    MenuText = Qt.translate("VeneerWorkbench", "Veneer Layup")
    ToolTip = Qt.translate("VeneerWorkbench", "Lay up table tops from consecutive veneer leaves")
    Icon = os.path.join(resources("icons"), "veneer-layup.svg")
    del Qt, os, resources

    def Initialize(self) -> None:
        from veneerwb.gui import commands
        from veneerwb.host import compat

        compat.begin_screens()
        names = commands.register()
        self.appendToolbar(commands.TITLE, names)
        self.appendMenu(commands.MENU, names)

    def GetClassName(self) -> str:
        return "Gui::PythonWorkbench"


FreeCADGui.addWorkbench(VeneerWorkbench())
