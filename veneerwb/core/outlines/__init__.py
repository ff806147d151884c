# SPDX-License-Identifier: LGPL-2.1-or-later
"""True outlines: segments, regions cut along straights, joints, offsets."""
