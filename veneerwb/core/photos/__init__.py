# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs: read with limits, squared or scaled, their leaf found, their light evened."""

from veneerwb.core.photos.reading import Photo, by_number, photo_files

__all__ = ["Photo", "by_number", "photo_files"]
