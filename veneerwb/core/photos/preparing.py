# SPDX-License-Identifier: LGPL-2.1-or-later
"""A batch of photographs as people take them, made into leaves.

Photographs are read one at a time and only their working copies are kept, as files; a photograph is
never changed. Light is evened over the batch by gains that are applied when a working copy is
decoded, so that it can be taken back at any time.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import scratch
from veneerwb.core.leaf import Bundle, Leaf, Side, measures
from veneerwb.core.listing import few
from veneerwb.core.photos.decode import decoded
from veneerwb.core.photos.evening import Evening, Light, Three, evenings
from veneerwb.core.photos.preparation import LIGHTS, Preparation, made
from veneerwb.core.photos.reading import AnyPath, Photo, names_apart, save_jpeg
from veneerwb.core.photos.report import batch_report, said_of
from veneerwb.words import filled, marked, say, word

__all__ = [
    "LIGHTS", "Batch", "Cancelled", "Preparation", "Prepared", "Progress", "Troubles",
    "each_evening", "prepared",
]

LIKE = 0.1
"""A share: leaves and scales that differ by more from the batch's middle one are mentioned."""

_own_folders: set[Any] = set()
"""Kept here, or a folder would go while photographs are still to be read from it."""

Progress = Callable[[int, int, str], Any]
"""progress(done, total, text): False stops the batch."""


class Cancelled(VeneerError):
    """The batch was stopped by its progress; nothing of it is left."""

    def __init__(self) -> None:
        super().__init__("cancelled", marked("Stopped: none of the photographs was brought in."))


class Troubles(VeneerError):
    """What is wrong with photographs of a batch: `each`, (name, sentence) of every one that will
    not do, in the order of the batch; files of several folders that share a name are called by
    their folders too. `lines` are the sentences with alike ones put together; the text is one
    sentence that names the photographs."""

    def __init__(self, each: Sequence[tuple[str, str]], total: int) -> None:
        self.each = tuple(each)
        self.lines = said_of(self.each)
        names = list(dict.fromkeys(name for name, _ in self.each))
        first = self.each[0][1]
        if len(self.each) == 1:
            super().__init__("photo-will-not-do", "{said}", said=first, count=1, total=total)
            return
        alike = len(self.lines) == 1
        told = marked("{count} of {total} photographs will not do ({names}); the first: {said}")
        if alike:
            told = marked("{count} of {total} photographs will not do ({names}): {said}")
        super().__init__(
            "photos-will-not-do", told,
            count=len(names), total=total, names=few(names),
            said=self.lines[0].removeprefix(f"{few(names)}: ") if alike else first,
        )

    def __reduce__(self) -> tuple[Any, ...]:
        return Troubles, (self.each, self.values["total"])


@dataclass(frozen=True)
class Prepared:
    """A photograph that is ready to be a leaf's: its working copy `file` (JPEG, at most 3
    megapixels, as photographed) of `shape` (rows, columns) at `mm_per_px`; `usable`, the leaf's
    outline in mm on it (shapely; None: all of it); `gains` that even its light (None: not
    measured); name (with its folder's where another of the batch has it too), SHA-256 and mm per
    pixel of the photograph itself; `trust`, mm that a click one pixel off moves a corner (None
    without clicks); and `notes`, sentences for the user."""

    file: Path
    shape: tuple[int, int]
    mm_per_px: float
    usable: Any
    gains: Three | None
    name: str
    sha256: str
    original_mm_per_px: float
    trust: float | None
    notes: tuple[str, ...] = ()
    evening: Evening | None = None

    @property
    def size(self) -> tuple[float, float]:
        """(width, length) in mm of the working copy."""
        return self.shape[1] * self.mm_per_px, self.shape[0] * self.mm_per_px

    @property
    def leaf_size(self) -> tuple[float, float]:
        """(width, length) in mm of the leaf on it."""
        if self.usable is None:
            return self.size
        return measures(self.usable)

    def photo(self, even: bool = True) -> Photo:
        """The working copy as a photograph, its light evened or as photographed."""
        return Photo.read(self.file, self.mm_per_px, gains=self.gains if even else None)

    def leaf(self, leaf_number: int, even: bool = True) -> Leaf:
        """A leaf whose face this is."""
        return Leaf(leaf_number, Side(self.photo(even)), usable=self.usable)


@dataclass(frozen=True)
class Batch:
    """The photographs of a batch in the order given, and the `report` on them, a sentence a line.
    A folder that is the batch's own lives until `discard`, or until the program ends."""

    photos: tuple[Prepared, ...]
    report: str
    _folder: Any = field(default=None, repr=False, compare=False)

    def discard(self) -> None:
        """Removes the working copies."""
        for one in self.photos:
            one.file.unlink(missing_ok=True)
        if self._folder is not None:
            _own_folders.discard(self._folder)
            self._folder.cleanup()

    def bundle(self, thickness: float, back: str = "next", even: bool = True) -> Bundle:
        """A core bundle of them as faces, numbered from 1."""
        leaves = [one.leaf(k, even) for k, one in enumerate(self.photos, start=1)]
        return Bundle(tuple(leaves), thickness, back)


def prepared(
    paths: Sequence[AnyPath],
    how: Preparation | Sequence[Preparation],
    folder: AnyPath | None = None,
    progress: Progress | None = None,
) -> Batch:
    """The photographs at `paths` made ready as `how` says (one for all, taken by one camera that
    stood still, or one for each), their working copies in `folder` (None: one of the batch's own).

    One photograph is in memory at a time. `progress` is called before each and at the end; when it
    returns False `Cancelled` is raised. All are tried before `Troubles` is raised, which names
    every photograph that will not do. In both cases no file is left.
    """
    hows = _hows(paths, how)
    own = scratch("leaves") if folder is None else None
    into = Path(own.name if own else folder)
    called = names_apart(paths)
    work = _Work(into, len(hows))
    try:
        for k, (path, one) in enumerate(zip(map(Path, paths), hows)):
            _tell(progress, k, len(hows), called[path])
            work.take(path, called[path], one)
        _tell(progress, len(hows), len(hows), "")
        ready, report = work.together(hows[0].light)
    except BaseException:
        work.clear()
        if own:
            own.cleanup()
        raise
    if own:
        _own_folders.add(own)
    return Batch(ready, report, own)


def _hows(
    paths: Sequence[AnyPath], how: Preparation | Sequence[Preparation]
) -> list[Preparation]:
    if isinstance(paths, (str, os.PathLike)) or not len(paths):
        raise VeneerError("no-photos-given", "Give the photographs as a list of at least one file.")
    hows = [how] * len(paths) if isinstance(how, Preparation) else list(how)
    if len(hows) != len(paths):
        raise VeneerError(
            "as-many-ways",
            "There are {photos} photographs and {ways} ways to prepare them; give one for all, or "
            "one for each.",
            photos=len(paths), ways=len(hows),
        )
    if len({one.light for one in hows}) > 1:
        raise VeneerError(
            "one-light",
            "The light must be measured in the same way on all photographs of a batch.",
        )
    return hows


def _tell(progress: Progress | None, done: int, total: int, text: str) -> None:
    if progress is not None and progress(done, total, text) is False:
        raise Cancelled


class _Work:
    """What is known so far of a batch that is being made."""

    def __init__(self, folder: Path, total: int) -> None:
        self.folder, self.total = folder, total
        self.names: dict[str, int] = {}  # in the order of the batch
        self.files: list[Path] = []
        self.done: list[tuple[Prepared, Any]] = []
        self.troubles: list[tuple[str, str]] = []

    def take(self, path: Path, name: str, how: Preparation) -> None:
        """Makes one photograph ready; what is wrong with it is noted."""
        self.names.setdefault(name, len(self.names))
        try:
            pixels, sha256 = decoded(path)
            leaf = made(pixels, how, name)
            del pixels
        except VeneerError as error:
            self.trouble(name, str(error))
            return
        file = _free(self.folder, len(self.files) + 1)
        self.files.append(file)
        save_jpeg(file, leaf.pixels)
        ready = Prepared(
            file, leaf.pixels.shape[:2], leaf.mm_per_px, leaf.usable, None, name, sha256,
            leaf.original_mm_per_px, leaf.trust, leaf.notes,
        )
        self.done.append((ready, leaf.light))

    def trouble(self, name: str, said: str) -> None:
        self.troubles.append((name, said if name in said else f"{name}: {said}"))

    def clear(self) -> None:
        for file in self.files:
            file.unlink(missing_ok=True)

    def together(self, light: str) -> tuple[tuple[Prepared, ...], str]:
        """What only the whole batch tells: doubles, leaves on their side, the light."""
        self._doubles()
        self._sideways()
        even = self._evenings(light)
        if self.troubles:
            raise Troubles(sorted(self.troubles, key=lambda one: self.names[one[0]]), self.total)
        ready = tuple(
            _with_notes(one, evening, self._unlike(one))
            for (one, _), evening in zip(self.done, even)
        )
        return ready, batch_report(ready, light)

    def _doubles(self) -> None:
        first: dict[str, str] = {}
        for one, _ in self.done:
            there = first.get(one.sha256)
            if there is None:
                first[one.sha256] = one.name
                continue
            said = say("{photo} was given twice; leave one of them out.", photo=one.name)
            if there != one.name:
                said = say(
                    "{photo} is the same photograph as {other}; leave one of them out.",
                    photo=one.name, other=there,
                )
            self.trouble(one.name, said)

    def _sideways(self) -> None:
        slim = [_slimness(one) for one, _ in self.done]
        usual = float(np.median(slim)) if slim else 0.0
        for (one, _), here in zip(self.done, slim):
            if abs(usual) > np.log(1 + LIKE) and here * usual < 0 and abs(here) > abs(usual) / 2:
                self.trouble(one.name, say(
                    "{photo} shows its leaf turned by 90 degrees against the others; turn that "
                    "photograph and save it so.", photo=one.name,
                ))

    def _evenings(self, light: str) -> list[Evening | None]:
        lights = [measured for _, measured in self.done]
        if light == LIGHTS[0]:
            return [None] * len(lights)
        found, troubles = each_evening(lights, light == "grey patch")
        for name, said in troubles:
            self.trouble(name, said)
        return found

    def _unlike(self, one: Prepared) -> tuple[str, ...]:
        """What is said of a leaf that differs from the others in size or scale."""
        said = []
        for larger, smaller, of in (
            (marked("The leaf is {share} % larger than the others; check it."),
             marked("The leaf is {share} % smaller than the others; check it."),
             lambda p: p.leaf_size[0] * p.leaf_size[1]),
            (marked("The photograph is {share} % larger in mm per pixel than the others; check "
                    "it."),
             marked("The photograph is {share} % smaller in mm per pixel than the others; check "
                    "it."),
             lambda p: p.original_mm_per_px),
        ):
            usual = float(np.median([of(other) for other, _ in self.done]))
            off = of(one) / usual - 1.0
            if abs(off) > LIKE:
                template = word(larger) if off > 0 else word(smaller)
                said.append(filled(template, {"share": round(100 * abs(off))}))
        return tuple(said)


def each_evening(
    lights: Sequence[Light], grey: bool = False
) -> tuple[list[Evening | None], list[tuple[str, str]]]:
    """What evens each photo to the middle of all (see evening.evenings), and (name, sentence) of
    all whose light is too far off, for which there is None."""
    found: list[Evening | None] = []
    troubles = []
    aim = np.median([one.level for one in lights], axis=0) if lights else None
    for one in lights:
        try:
            found += evenings([one], grey, aim)
        except VeneerError as error:
            troubles.append((one.name, str(error)))
            found.append(None)
    return found, troubles


def _free(folder: Path, k: int) -> Path:
    """A name that nothing in the folder has: it may be where the photographs themselves are."""
    while (file := folder / f"photo-{k:03d}.jpg").exists():
        k += 1
    return file


def _slimness(one: Prepared) -> float:
    width, length = one.leaf_size
    return float(np.log(length / width))


def _with_notes(one: Prepared, evening: Evening | None, more: tuple[str, ...]) -> Prepared:
    notes = one.notes + more
    if evening is not None and max(*evening.clipped, *evening.burnt) >= 0.001:
        notes += (evening.text,)
    return replace(
        one, notes=notes, evening=evening, gains=None if evening is None else evening.gains
    )
