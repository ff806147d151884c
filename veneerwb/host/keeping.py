# SPDX-License-Identifier: LGPL-2.1-or-later
"""Files that a document keeps for its objects (photographs, pictures of spots), and saving it.

The host keeps such a file in a folder of the open document and puts it into the archive on saving.
It cuts a copy short without a word where the disk is full, saves no document of which a file has
gone, and gives an archive that was cut short the name of the whole one. So copies are compared,
what has gone is taken out of the archive again, and a document that was saved in part is undone.
"""

from __future__ import annotations

import math
import os
import shutil
import tempfile
import zipfile
from collections.abc import Iterator
from contextlib import suppress
from typing import Any
from xml.etree import ElementTree

from veneerwb.host import compat, watching
from veneerwb.host.objects.base import Refused, kind_of
from veneerwb.words import marked, say

FILES = ("Photo", "BackPhoto", "Picture")
"""The properties that hold them."""
BLOCK = 4096
"""Bytes: the last part of a file takes as much of a disk."""
FORMER = ".former"
"""Ending of the second name, hidden, that a document has while it is being saved."""
ASIDE = "veneer-kept-"
"""How a folder of the system's begins where a document is kept that could not be saved."""


def keep(obj: Any, **paths: str) -> None:
    """Gives an object files, by the names of its properties; Refused if the host could not copy all
    of each. Where their disk has no room for all, none is given."""
    needed = sum(_size(path) + BLOCK for path in paths.values())
    for name, path in paths.items():
        if needed <= _room(obj.Document):
            with suppress(OSError):  # newer hosts notice what others do not
                setattr(obj, name, path)
                needed -= _size(path) + BLOCK
                if _size(getattr(obj, name)) == _size(path):
                    continue
        raise Refused(
            say(
                "The picture {file} could not be copied into the document; make room on the disk "
                "that holds {folder}, then try again.",
                file=os.path.basename(path), folder=obj.Document.TransientDir,
            )
        )  # fmt: skip


def _room(doc: Any) -> float:
    """Bytes that find room where the host keeps a document's files."""
    try:
        return shutil.disk_usage(doc.TransientDir).free
    except OSError:
        return math.inf  # it may be there later


def gone(obj: Any, name: str) -> bool:
    """Whether the file that an object keeps is no longer there, or has nothing in it."""
    return _size(getattr(obj, name)) <= 0


def _size(path: str) -> int:
    try:
        return os.path.getsize(path)
    except (OSError, ValueError):
        return -1


def _where(obj: Any, name: str) -> str:
    """Where the file of an object is or should be: under another name of the document the host has
    moved its folder already, and does not say so yet."""
    path = getattr(obj, name)
    moved = os.path.join(obj.Document.TransientDir, os.path.basename(path))
    return moved if os.path.isdir(obj.Document.TransientDir) else path


def kept(doc: Any) -> Iterator[tuple[Any, str]]:
    """What of our objects keeps a file: object and property."""
    for obj in doc.Objects:
        for name in FILES if kind_of(obj) else ():
            if getattr(obj, name, ""):
                yield obj, name


def put_back(obj: Any, name: str) -> bool:
    """Takes a file that has gone out of the document as it was saved; whether it was there, and
    the object was given no other since."""
    there = _where(obj, name) if getattr(obj, name) else ""
    if not there or not obj.Document.FileName or _key(obj, name) in _given:
        return False
    try:
        with zipfile.ZipFile(obj.Document.FileName) as archive:
            entry = os.path.basename(there)
            if _entry(archive, obj.Name, name) != entry:
                return False
            os.makedirs(os.path.dirname(there), exist_ok=True)
            with archive.open(entry) as source, open(there, "wb") as target:
                shutil.copyfileobj(source, target)
    except (OSError, KeyError, ValueError, zipfile.BadZipFile, ElementTree.ParseError):
        _unlink(there)  # or half a picture would stand for the whole one
        return False
    if _size(there) <= 0:
        return False
    text = marked("{name}: the picture {file} had gone and was taken out of the saved document.")
    compat.say(say(text, name=obj.Label, file=entry))
    return True


_given: set[tuple[str, str, str]] = set()
"""What was given a file since its document was opened or saved."""


def _key(obj: Any, name: str) -> tuple[str, str, str]:
    return obj.Document.Name, obj.Name, name


def _forget(doc: Any) -> None:
    _given.difference_update([key for key in _given if key[0] == doc.Name])


def _entry(archive: zipfile.ZipFile, obj: str, name: str) -> str:
    """The file that an archive has for a property of an object; empty for none."""
    tree = ElementTree.fromstring(archive.read("Document.xml"))
    for one in tree.iterfind("ObjectData/Object"):
        for wanted in one.iterfind("Properties/Property") if one.get("name") == obj else ():
            if wanted.get("name") == name and len(wanted):
                return wanted[0].get("file", "")
    return ""


# --- saving -------------------------------------------------------------------------------------


class Saving:
    """Sees that a document with pictures is saved whole, or stays as it was saved before."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name in FILES and not obj.Document.Restoring:
            _given.add(_key(obj, name))

    def slotDeletedDocument(self, doc: Any) -> None:
        _forget(doc)
        _settle(doc)

    def slotStartSaveDocument(self, doc: Any, path: str) -> None:
        if _aside or not any(kept(doc)):
            return
        _settle(doc)
        for obj, name in kept(doc):
            if not os.path.exists(_where(obj, name)) and not put_back(obj, name):
                _stand_in(obj, name)
        path = os.path.realpath(path)  # a link stays one: the host replaces what it leads to
        former = _former(path)
        _clear(path)  # of a host that was killed
        try:
            os.link(path, former)
            _begun[doc.Name] = path
        except OSError:
            return  # the document is new, or its disk knows no second names

    def slotFinishSaveDocument(self, doc: Any, path: str) -> None:
        if _aside:
            return
        real = os.path.realpath(path)
        former = _former(real)
        _begun.pop(doc.Name, None)
        if not any(kept(doc)) or _whole(real):
            _unlink(former)
            if path == doc.FileName:
                _forget(doc)
            return
        text = marked(
            "{file} could not be saved, there was no room for all of it. Make room, or save it "
            "elsewhere, before you close it."
        )
        if _undone(former, real):
            text = marked(
                "{file} could not be saved, there was no room for all of it; it is as it was saved "
                "before. Make room, or save it elsewhere, before you close it."
            )
        compat.alarm(doc, say(text, file=os.path.basename(path)), path)


_begun: dict[str, str] = {}
"""Where a document is being saved. Newer hosts tell no end of what they refuse."""
_aside: list[str] = []
"""The copy that is being set aside, of which nothing is to be said."""


def set_aside(doc: Any, path: str) -> str:
    """A whole copy of a document that could not be saved at `path`, in a folder of the system's;
    empty where there is no room either."""
    folder = ""
    try:
        folder = tempfile.mkdtemp(prefix=ASIDE)
        _aside.append(os.path.join(folder, os.path.basename(path)))
        doc.saveCopy(_aside[0])
        if _whole(_aside[0]):
            return _aside[0]
    except Exception as error:  # hosts raise what they like
        compat.log(str(error))
    finally:
        _aside.clear()
    if folder:
        shutil.rmtree(folder, ignore_errors=True)
    return ""


def _settle(doc: Any) -> None:
    """Ends what was begun to save a document and refused."""
    if doc.Name in _begun:
        _clear(_begun.pop(doc.Name))


def _clear(path: str) -> None:
    """Takes the second name of a document away, unless it is all that is left of it that is
    whole: then it is the document again."""
    former = _former(path)
    try:
        if not _same(path, former) and not _whole(path) and _whole(former):
            os.replace(former, path)
            return
    except OSError:
        return
    _unlink(former)


def _undone(former: str, path: str) -> bool:
    """Whether a document that was saved in part is again as it was before. It is not where there
    was none, or where the host has written into that very file, as it can be set to do."""
    try:
        if not _same(path, former):
            os.replace(former, path)
            return True
    except OSError:
        pass
    _unlink(former)
    _unlink(path)
    return False


def _same(path: str, former: str) -> bool:
    """Whether both are names of one file. OSError where there is no `former`."""
    return os.path.exists(path) and os.path.samefile(former, path)


def _stand_in(obj: Any, name: str) -> None:
    """An empty file for one that is lost, or the host could not save the document any more."""
    there = _where(obj, name)
    try:
        os.makedirs(os.path.dirname(there), exist_ok=True)
        open(there, "wb").close()
    except OSError:
        return
    text = marked("{name} has lost its picture {file}; the document is saved without it.")
    compat.say(say(text, name=obj.Label, file=os.path.basename(there)))


def _whole(path: str) -> bool:
    """Whether an archive was written to its end, where its list of contents stands."""
    try:
        with zipfile.ZipFile(path) as archive:
            return "Document.xml" in archive.namelist()
    except (OSError, zipfile.BadZipFile):
        return False


def _former(path: str) -> str:
    folder, name = os.path.split(path)
    return os.path.join(folder, f".{name}{FORMER}")


def _unlink(path: str) -> None:
    try:
        os.unlink(path)
    except OSError:
        return


def watch() -> None:
    """From the first object with a picture on, saving is watched."""
    watching.watch(Saving)
