# SPDX-License-Identifier: LGPL-2.1-or-later
"""Makes shapely 2.1.0 (Debian 13's) as quick as its other versions.

There every call reads the signature of the function anew, to warn of arguments by place; that takes
longer than much of what is computed. A function that carries its signature is not read. Other
versions read none, and nothing changes there.
"""

from __future__ import annotations

import inspect
import sys
from collections.abc import Iterator
from types import FunctionType

import shapely.geometry  # noqa: F401 (so that there is something to find)


def carry_signatures() -> None:
    """Gives each function of shapely's that is wrapped in another its signature."""
    for value in _functions():
        while isinstance(value := getattr(value, "__wrapped__", None), FunctionType):
            value.__signature__ = inspect.signature(value)


def _functions() -> Iterator[FunctionType]:
    for name, module in list(sys.modules.items()):
        if name.split(".")[0] == "shapely" and module is not None:
            for value in list(vars(module).values()):
                of_class = vars(value).values() if isinstance(value, type) else ()
                yield from (f for f in (value, *of_class) if isinstance(f, FunctionType))
