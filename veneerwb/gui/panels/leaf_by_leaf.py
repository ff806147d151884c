# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel that goes through a bundle leaf by leaf, with the photograph of each in a window to point
at."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from typing import Any

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.photos.frame import Picture
from veneerwb.gui.photos.window import PhotoWindow
from veneerwb.host.objects.base import Refused, kind_of
from veneerwb.host.steps import Step

HERE = "VeneerLeafByLeafPanel"


class LeafByLeaf(Panel):
    """What is pointed out goes into the document with OK, in one step; until then it is kept in
    `book`, which has a core `bundle`. Books of other bundles that were changed are kept with it,
    whatever happens to the document: until OK or Cancel nothing that was pointed out is lost.

    The form has the boxes `bundle` and `leaf` and the button `look`. `title` is the window's;
    `done` names the undo step; in `lists` of the form Delete removes what the row is of.
    """

    title = done = ""
    lists: tuple[str, ...] = ()

    def __init__(
        self, doc: Any, form: str, picture: str, bundles: list[Any], number: int | None
    ) -> None:
        super().__init__(doc, form, picture)
        self.window: PhotoWindow | None = None
        self.picture: Picture | None = None
        self.book: Any = None
        self._books: dict[str, Any] = {}
        """By the bundle's name: those that are open."""
        self._name = ""
        """Of the bundle whose book is open."""
        self.chosen: Any = None
        """An entry of the book, or None."""
        self._filling = False
        form = self.form
        fields.offer(form.bundle, [one.Name for one in bundles], [one.Label for one in bundles])
        self.show_row(form.bundle, len(bundles) > 1)
        self.prepare()
        fields.watch(form.bundle, lambda *_: self._open_book())
        fields.watch(form.leaf, self._turned)
        self._open_book(number)

    # --- what a panel makes of it -------------------------------------------------------------

    def prepare(self) -> None:
        """Offers and watches the panel's own boxes."""

    def read(self) -> Any:
        """The book of the bundle that is chosen."""
        raise NotImplementedError

    def opened(self) -> None:
        """Another book is open, or (None) none could be."""

    def point_out(self, view: Any) -> None:
        """Says what the view of a window that was opened is to tell the panel."""

    def lay_out(self, chosen: Any = None) -> None:
        """The items and the lists anew, from the book; `chosen` is chosen then."""

    def clear(self) -> None:
        """There is nothing to lay out."""

    def pick(self, index: Any) -> None:
        """Chooses what stands in that row of a list."""

    def remove(self) -> None:
        """Takes away what is chosen."""

    def write(self) -> None:
        """Puts the book into the document. Nothing is written where nothing changed."""

    def changed(self) -> bool:
        """Whether there is something to write. Raises where it cannot be."""
        return False

    def begun(self) -> bool:
        """Whether there is work in the book that OK would not write."""
        return False

    # --- the bundle and its leaves ------------------------------------------------------------

    @property
    def obj(self) -> Any:
        """The Bundle object. Refused if it is gone."""
        found = self.doc.getObject(self._name) if self.doc and self._name else None
        if kind_of(found) != "Bundle":
            raise Refused(translate(HERE, "The bundle is gone; close this panel."))
        return found

    @property
    def number(self) -> int | None:
        """The number of the leaf that is shown."""
        return self.form.leaf.currentData()

    def _open_book(self, number: int | None = None) -> None:
        self._books = {name: book for name, book in self._books.items() if self._differs(name)}
        self._name = self.form.bundle.currentData() or ""
        self.chosen = self.book = None
        self.form.leaf.blockSignals(True)
        self.form.leaf.clear()
        if self.attempt(self._read):
            numbers = list(self.book.bundle.numbers)
            fields.offer(self.form.leaf, numbers, [_leaf(one) for one in numbers])
            self.form.leaf.setCurrentIndex(numbers.index(number) if number in numbers else 0)
        self.form.leaf.blockSignals(False)
        self.opened()
        if self.window is not None:
            self._offer_pages()
        self._turned()

    def _read(self) -> None:
        if self._name not in self._books:
            self._books[self._name] = self.read()
        self.book = self._books[self._name]

    @contextmanager
    def _over(self, name: str) -> Iterator[None]:
        """The book of that bundle is open meanwhile."""
        shown = self._name, self.book
        self._name, self.book = name, self._books[name]
        try:
            yield
        finally:
            self._name, self.book = shown

    def _differs(self, name: str) -> bool:
        """Whether OK would write something of that bundle, or could not, or something is begun."""
        with self._over(name):
            try:
                return self.changed() or self.begun()
            except Exception:
                return True

    def delete(self) -> None:
        """Takes away what the row is of."""
        for box in (getattr(self.form, name) for name in self.lists):
            if box.hasFocus() and box.currentIndex().isValid():
                self.pick(box.currentIndex())
                self.attempt(self.remove)

    # --- what happens to the document ---------------------------------------------------------

    def unsaved(self) -> bool:
        drawn = self.window is not None and self.window.view.pointing.drawn is not None
        return drawn or any(map(self._differs, self._books))

    def renew(self) -> None:
        """Reads the bundles again; what was changed in the books is changed in the new ones."""
        gone: list[int] = []
        for name, old in list(self._books.items()):
            with self._over(name):
                self.attempt(partial(self._read_under, name, old, gone))
        number, view = self.number, self.window.view if self.window is not None else None
        drawn = view.pointing.drawn if view is not None else None
        self._open_book(number)
        if drawn is not None and self.number == number:
            view.pointing.drawn = drawn
        said = [translate(
            HERE,
            "Something was undone or redone. What you pointed out is kept here; see that it "
            "still fits, then OK.",
        )]
        if gone:
            said.append(translate(
                HERE, "The photographs that were those of leaves {leaves} are no longer there, and "
                "what you pointed out on them went with them.",
            ).format(leaves=", ".join(map(str, gone))))
        self.say(" ".join(said))

    def _read_under(self, name: str, old: Any, gone: list[int]) -> None:
        fresh = self.read()
        gone += fresh.take_over(old)
        self._books[name] = fresh

    # --- the window ---------------------------------------------------------------------------

    def look(self) -> None:
        """Opens the window with the leaf's photograph, or brings it to the front."""
        if self.book is None:
            return
        if self.window is None:
            self.window = PhotoWindow(self.title, (), self._page_turned, self._window_closed)
            self.point_out(self.window.view)
            self._offer_pages()
            self._turned()
        self.window.to_front()

    def _window_closed(self) -> None:
        self.window = None

    def _offer_pages(self) -> None:
        numbers = list(self.book.bundle.numbers) if self.book is not None else []
        self.window.offer([_leaf(one) for one in numbers], max(0, self.form.leaf.currentIndex()))

    def _page_turned(self, page: int) -> None:
        self.form.leaf.setCurrentIndex(page)

    def _turned(self, *_: Any) -> None:
        """Another leaf is shown."""
        self.chosen = self.picture = None
        if self.book is not None and self.attempt(self._show):
            return
        self.clear()
        if self.window is not None:
            self.window.view.pointing.marks, self.window.view.pointing.areas = [], []
            self.window.show(None)

    def _show(self) -> None:
        face = self.book.bundle.leaf(self.number).face
        self.picture = Picture(face.photo, face.mm_per_px)
        if self.window is not None:
            if self.window.page != self.form.leaf.currentIndex():
                self.window.turn_to(self.form.leaf.currentIndex())
            self.window.show(self.picture, keep=True)
        self.lay_out()

    # --- the end ------------------------------------------------------------------------------

    def finish(self) -> None:
        shown = self._name
        try:
            self._finish()
        except Exception:
            if self._name != shown:  # the trouble is in another book: that is shown
                fields.fill(self.form.bundle, self._name)
            raise

    def _finish(self) -> None:
        todo = []
        for name, book in self._books.items():
            self._name, self.book = name, book
            if self.changed():
                todo.append(name)
        if not todo:
            return
        self.step = Step(self.doc, self.done)
        try:
            for name in todo:
                self._name, self.book = name, self._books[name]
                self.write()
        except Exception:
            super().take_back()
            self.step = None
            raise

    def let_go(self) -> None:
        window, self.window = self.window, None
        self.book = self.picture = self.chosen = None
        self._books = {}
        super().let_go()
        if window is not None:
            window.close()


def _leaf(number: int) -> str:
    return translate(HERE, "Leaf {number}").format(number=number)
