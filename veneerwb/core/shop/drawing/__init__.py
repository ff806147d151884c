# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings as plain data, mm of the paper: marks, letters, lengths, scales, pages. Nothing
of the job."""
