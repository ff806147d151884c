# SPDX-License-Identifier: LGPL-2.1-or-later
"""FreeCAD's App layer, no GUI. What belongs here: document objects and what turns core results into
shapes.

`compat` knows the differences between host versions, `objects` holds the proxies (they import the
core only inside their methods, so that a document opens and keeps its shapes when a package is
missing), `values` reads core values out of document objects, `photos` reads and makes the pictures
inside a document, `solids` makes the shapes.
"""
