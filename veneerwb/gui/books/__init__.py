# SPDX-License-Identifier: LGPL-2.1-or-later
"""What panels that go through a bundle leaf by leaf keep: backs, faults, marks, the stack."""
