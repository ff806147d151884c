# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the proxies of all document objects share.

Data lives in properties, never in the proxy. A proxy's module and class name are in every saved
document: they must not change.
"""

from __future__ import annotations

import traceback
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from typing import Any, ClassVar, NamedTuple

from veneerwb.host import compat

OUT = compat.OUTPUT | compat.READ_ONLY
SECRET = compat.OUTPUT | compat.HIDDEN


class Refused(Exception):
    """A sentence for the user, raised where the core may be missing."""


class Property(NamedTuple):
    """A property: `kind` without "App::Property", the `value` it starts with (a tuple of choices
    for an Enumeration), and compat's attribute bits."""

    kind: str
    name: str
    group: str
    text: str
    value: Any = None
    attributes: int = 0


class Proxy:
    """The base of the proxies: properties that are there on every object however old, and an
    `execute` that never raises: it leaves a sentence in Message and everything else as it was."""

    kind: ClassVar[str] = ""
    version: ClassVar[int] = 1
    properties: ClassVar[Sequence[Property]] = ()
    needs: ClassVar[Sequence[str]] = ()
    """Links without which there is nothing to recompute it from."""
    refused: Exception | None = None
    """What Message says, as it was raised: screens show its lengths in the user's unit."""
    upgrades: ClassVar[Mapping[int, Callable[[Any], None]]] = {}
    """By schema version: the step from it to the next."""

    def __init__(self, obj: Any) -> None:
        obj.Proxy = self
        self.ensure_properties(obj)
        compat.show(obj, self.kind)

    def onDocumentRestored(self, obj: Any) -> None:
        self.ensure_properties(obj)
        compat.show(obj, self.kind)
        if any(getattr(obj, name) is None for name in self.needs):
            self.execute(obj)  # copied without what it hangs on, it says so

    def dumps(self) -> dict[str, str]:
        return {"kind": self.kind}

    def loads(self, state: Any) -> None:
        """Nothing to take back: all data is in properties."""

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

    def ensure_properties(self, obj: Any) -> None:
        """Adds what `obj` lacks and brings an older object up to date, step by step."""
        new = compat.add_property(
            obj, "Integer", "SchemaVersion", "Base", "Which form of this object was saved", SECRET
        )
        if new:
            obj.SchemaVersion = self.version
        for step in range(obj.SchemaVersion, self.version):
            self.upgrades[step](obj)
            obj.SchemaVersion = step + 1
        for wanted in (*self.properties, MESSAGE):
            _ensure(obj, wanted)

    def execute(self, obj: Any) -> None:
        """Recomputes; what goes wrong becomes one sentence in Message, and the last good state
        stays."""
        try:
            if obj.SchemaVersion > self.version:
                raise Refused(
                    "It was made by a newer version of this addon; update the addon to change it."
                )
            self.update(obj)
            message = ""
        except Exception as error:
            message = sentence(error, "It could not be recomputed ({why}); undo the last change.")
            self.refused = error.with_traceback(None)  # else all that it was laid from would stay
        if obj.Message != message:
            obj.Message = message
            if message and not _elsewhere:
                compat.say(f"{obj.Label}: {message}")

    def update(self, obj: Any) -> None:
        """Sets the outputs of `obj`; raises before it has set any."""


MESSAGE = Property(
    "String", "Message", "Result", "Why the last change was refused; empty if it was not", "", OUT
)


_elsewhere: list[bool] = []


@contextmanager
def told_elsewhere() -> Iterator[None]:
    """While a panel shows messages itself, the console need not."""
    _elsewhere.append(True)
    try:
        yield
    finally:
        _elsewhere.pop()


def _ensure(obj: Any, wanted: Property) -> None:
    new = compat.add_property(obj, *wanted[:4], wanted.attributes)
    if wanted.kind == "Enumeration":
        if new or tuple(obj.getEnumerationsOfProperty(wanted.name) or ()) != wanted.value:
            chosen = None if new else getattr(obj, wanted.name)
            setattr(obj, wanted.name, list(wanted.value))
            setattr(obj, wanted.name, chosen if chosen in wanted.value else wanted.value[0])
    elif new and wanted.value is not None:
        setattr(obj, wanted.name, wanted.value)


UNFORESEEN = (
    "That failed for a reason the addon does not know ({why}); try it another way, or cancel."
)


def sentence(error: Exception, unforeseen: str = UNFORESEEN) -> str:
    """What to tell the user of `error`; `unforeseen` where nobody thought of it."""
    if isinstance(error, Refused) or hasattr(error, "template"):
        return str(error)
    compat.log("".join(traceback.format_exception(type(error), error, error.__traceback__)))
    if isinstance(error, ImportError):
        package = (error.name or str(error)).split(".")[0]
        return f"The Python package {package} is missing; install it, then try again."
    first = (str(error).strip() or "no reason given").splitlines()[0]
    return unforeseen.format(why=f"{type(error).__name__}: {first}")


def rests_on(source: Any, obj: Any) -> bool:
    """Whether `source` is `obj` or is made, by however many links, from it."""
    seen, left = set(), [source]
    while left:
        one = left.pop()
        if one == obj:
            return True
        if (key := (one.Document.Name, one.Name)) not in seen:
            seen.add(key)
            left += one.OutList
    return False


def set_if_new(obj: Any, **values: Any) -> None:
    """Sets the properties whose value differs, so that nothing is recorded for undo in vain."""
    for name, value in values.items():
        if getattr(obj, name) != value:
            setattr(obj, name, value)


def kind_of(obj: Any) -> str:
    """ "Leaf", "Bundle", "Stock" or "Match"; "" for objects that are not ours."""
    return getattr(getattr(obj, "Proxy", None), "kind", "")
