# SPDX-License-Identifier: LGPL-2.1-or-later
"""Has packages be as if they were not installed, from the host's start on. `start.sh` puts it into
an addon of its own: an Init.py runs inside a function, where a class would lose its names."""

import sys


class Refusing:
    """The first that Python asks where a module is."""

    def __init__(self, packages):
        self.packages = packages

    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in self.packages:
            raise ModuleNotFoundError(f"No module named {name!r}", name=name)
        return None


def refuse(packages):
    """`packages` are names, parted by spaces."""
    sys.meta_path.insert(0, Refusing(packages.split()))
