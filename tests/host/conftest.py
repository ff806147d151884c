# SPDX-License-Identifier: LGPL-2.1-or-later
"""A document for each test and what is often in one; a packet as it is read."""

import subprocess

import FreeCAD
import pytest

from veneerwb.core import Bundle, sawn_bundle
from veneerwb.host import packet
from veneerwb.host.objects import add_bench, add_bundle, add_match, add_stock


@pytest.fixture
def doc():
    document = FreeCAD.newDocument("Test")
    document.UndoMode = 1
    yield document
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture
def stock(doc):
    """Sixty-four leaves of 900 x 1200 mm, 0.5 mm thick."""
    return add_stock(doc, 900.0, 1200.0, 64, 0.5)


@pytest.fixture(scope="session")
def sawn() -> Bundle:
    """Six leaves of 200 x 400 mm, disturbed, the backs of leaves 1 and 3 photographed too."""
    return sawn_bundle(
        leaves=6,
        width=200.0,
        length=400.0,
        mm_per_px=2.0,
        seed=3,
        disturb={},
        backs=[1, 3],
        slope=4.0,
    )


@pytest.fixture
def bundle(doc, sawn):
    """Those leaves in the document, and nothing to undo."""
    made = add_bundle(doc, sawn)
    doc.recompute()
    doc.clearUndos()
    return made


@pytest.fixture
def match(doc, stock):
    """Sixteen ways of the stock."""
    made = add_match(doc, stock, Ways=16, Diameter=1200.0, Oversize=10.0)
    doc.recompute()
    return made


@pytest.fixture
def crate(doc):
    """A box of 60 x 80 x 100 mm with its corner at the world's origin."""
    made = doc.addObject("Part::Box", "Crate")
    made.Length, made.Width, made.Height = 60.0, 80.0, 100.0
    doc.recompute()
    return made


class Made:
    """A packet that was written, and what is in it."""

    def __init__(self, written):
        self.folder, self.left_out = written.folder, written.left_out

    @property
    def names(self):
        return sorted(one.name for one in self.folder.iterdir())

    @property
    def lacks(self):
        """Why, by the parts that it lacks."""
        return {one.name: one.why for one in self.left_out}

    def pages(self, pdf):
        """The text of each page of a PDF as poppler reads it, on one line; `pdf` ends its name."""
        (path,) = [one for one in self.folder.glob("*.pdf") if one.name.endswith(pdf)]
        found = subprocess.run(
            ["pdftotext", "-layout", str(path), "-"], capture_output=True, check=True
        )
        return [" ".join(page.split()) for page in found.stdout.decode().split("\f")[:-1]]

    def text(self, pdf):
        return " ".join(self.pages(pdf))

    @property
    def contents(self):
        return self.text("01 Contents.pdf")


@pytest.fixture(scope="session")
def written():
    """Writes the packet of a bench into a folder."""

    def written(bench, folder):
        bench.Document.recompute()
        assert bench.Message == "" and bench.Match.Message == ""
        return Made(packet.write(bench, str(folder)))

    return written


@pytest.fixture
def bench(doc):
    """A ring of four on a stock without photographs: the quickest packet there is."""
    match = add_match(doc, add_stock(doc, 300.0, 400.0, 8), Ways=4, Diameter=200.0, Oversize=5.0)
    made = add_bench(doc, match, Title="Small")
    doc.recompute()
    return made
