# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel built up on its finished top: what its pages are drawn from."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from veneerwb.core.buildup import BuildUp, PanelPart
from veneerwb.core.top import Top


@dataclass(frozen=True)
class Built:
    """A build-up and the finished `top` that it is built on, in the millimetres of the layout,
    whose own top is the field within border, line and inlay."""

    build_up: BuildUp
    top: Top

    @cached_property
    def parts(self) -> tuple[PanelPart, ...]:
        return self.build_up.parts(self.top)

    @property
    def face(self) -> tuple[PanelPart, ...]:
        """What is seen from above, the field left out."""
        top = max(part.z[1] for part in self.parts)
        return tuple(p for p in self.parts if p.z[1] >= top - 1e-9 and p.item != "field")
