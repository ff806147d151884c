# SPDX-License-Identifier: LGPL-2.1-or-later
"""A generated log, sawn into consecutive leaves whose faults are known: for demonstration and
tests."""

from veneerwb.core.log.sawn import Disturbance, Log, sawn_bundle

__all__ = ["Disturbance", "Log", "sawn_bundle"]
