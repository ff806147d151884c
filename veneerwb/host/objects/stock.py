# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock: leaves known by their size alone."""

from __future__ import annotations

from typing import Any

from veneerwb.host import settings
from veneerwb.host.objects.base import Property, Proxy, added
from veneerwb.host.objects.bundle import BACKS


class Stock(Proxy):
    """So many leaves of one size, without photographs. A Match takes it like a Bundle."""

    kind = "Stock"
    properties = (
        Property("Length", "Width", "Stock", "Size across the leaf", 300.0),
        Property("Length", "Length", "Stock", "Size along the grain", 1200.0),
        Property("Integer", "Leaves", "Stock", "How many leaves there are", 24),
        Property("Length", "Thickness", "Stock", "Thickness of a leaf", 0.6),
        Property("Enumeration", "Back", "Stock", "Which way the stack lay in the log", BACKS),
    )

    def update(self, obj: Any) -> None:
        from veneerwb.host import values

        values.core_stock(obj)


def add_stock(
    doc: Any, width: float, length: float, leaves: int, thickness: float | None = None,
    back: str = "next",
) -> Any:  # fmt: skip
    """A Stock, of leaves as thick as the user has set where it is not said. Raises VeneerError, and
    the document stays as it was, for values that cannot be."""
    from veneerwb.core.leaf import Stock as CoreStock

    thick = settings.setting("Thickness") if thickness is None else thickness
    stock = CoreStock(width, length, leaves, thick, back)
    with added(doc, "App", Stock) as obj:
        obj.Width, obj.Length, obj.Leaves = stock.width, stock.length, int(stock.leaves)
        obj.Thickness, obj.Back = stock.thickness, stock.back
    return obj
