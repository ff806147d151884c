# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the proxies of all document objects share.

Data lives in properties, never in the proxy. A proxy's module and class name are in every saved
document: they must not change.
"""

from __future__ import annotations

import traceback
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from typing import Any, ClassVar, NamedTuple

from veneerwb import packages
from veneerwb.host import compat
from veneerwb.words import filled, marked, say, word

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
        if _ensure(obj, SCHEMA):
            obj.SchemaVersion = self.version
        for step in range(max(1, obj.SchemaVersion), self.version):
            self.upgrades[step](obj)
            obj.SchemaVersion = step + 1
        for wanted in (*self.properties, MESSAGE):
            _ensure(obj, wanted)

    def execute(self, obj: Any) -> None:
        """Recomputes; what goes wrong becomes one sentence in Message, and the last good state
        stays."""
        try:
            if obj.SchemaVersion > self.version:
                raise Refused(say(
                    "It was made by a newer version of this addon; update the addon to change it."
                ))  # fmt: skip
            self.update(obj)
            message = ""
        except Exception as error:
            message = sentence(error, NOT_RECOMPUTED)
            self.refused = error.with_traceback(None)  # else all that it was laid from would stay
        if obj.Message != message:
            obj.Message = message
            if message and not _elsewhere:
                _say(obj, message, self.refused)

    def update(self, obj: Any) -> None:
        """Sets the outputs of `obj`; raises before it has set any."""


@contextmanager
def added(doc: Any, module: str, proxy: type[Proxy], name: str = "") -> Iterator[Any]:
    """A new object of the host's `module` (Part: with a shape) for a proxy, called like its kind;
    it goes again where it cannot be given what it should have."""
    obj = doc.addObject(f"{module}::FeaturePython", name or proxy.kind)
    try:
        proxy(obj)
        yield obj
    except Exception:
        doc.removeObject(obj.Name)
        raise


def give(obj: Any, values: Mapping[str, Any]) -> None:
    """Sets properties in the order given."""
    for name, value in values.items():
        setattr(obj, name, value)


MESSAGE = Property(
    "String", "Message", "Result", "Why the last change was refused; empty if it was not", "", OUT
)

SCHEMA = Property(
    "Integer", "SchemaVersion", "Base", "Which form of this object was saved", None, SECRET
)


_elsewhere: list[bool] = []
_lacked: set[str] = set()


def _say(obj: Any, message: str, error: Exception | None) -> None:
    """On the console; of a package that is missing once, and not for every object."""
    if not isinstance(error, ImportError):
        compat.say(f"{obj.Label}: {message}")
    elif message not in _lacked:
        _lacked.add(message)
        compat.say(message)


@contextmanager
def told_elsewhere() -> Iterator[None]:
    """While a panel shows messages itself, the console need not."""
    _elsewhere.append(True)
    try:
        yield
    finally:
        _elsewhere.pop()


def _ensure(obj: Any, wanted: Property) -> bool:
    """Has `obj` hold the property; whether it did not. One of another type, or a choice that there
    is not, as somebody may have written into the file by hand, is made anew, with its value where
    that will do."""
    name, kept = wanted.name, None
    if wanted.kind == "Enumeration" and getattr(obj, name, "") is None:
        compat.drop_property(obj, name)
    elif name in obj.PropertiesList and not compat.is_of(obj, name, wanted.kind):
        kept = getattr(obj, name)
        compat.drop_property(obj, name)
    new = compat.add_property(obj, *wanted[:4], wanted.attributes)
    if wanted.kind == "Enumeration":
        if new or tuple(obj.getEnumerationsOfProperty(wanted.name) or ()) != wanted.value:
            chosen = None if new else getattr(obj, wanted.name)
            setattr(obj, wanted.name, list(wanted.value))
            setattr(obj, wanted.name, chosen if chosen in wanted.value else wanted.value[0])
    elif new and wanted.value is not None:
        setattr(obj, wanted.name, wanted.value)
    if kept is not None:
        with suppress(Exception):  # the host raises what it likes
            setattr(obj, name, kept)
    return new


UNFORESEEN = marked(
    "That failed for a reason the addon does not know ({why}); try it another way, or cancel."
)
NOT_RECOMPUTED = marked("It could not be recomputed ({why}); undo the last change.")


def sentence(error: Exception, unforeseen: str = UNFORESEEN) -> str:
    """What to tell the user of `error`; `unforeseen` where nobody thought of it."""
    if isinstance(error, Refused) or hasattr(error, "template"):
        return str(error)
    compat.log("".join(traceback.format_exception(type(error), error, error.__traceback__)))
    if missing := packages.told(error):
        return missing
    first = (str(error).strip() or say("no reason given")).splitlines()[0]
    return filled(word(unforeseen), {"why": f"{type(error).__name__}: {first}"})


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
    proxy = getattr(obj, "Proxy", None)
    return proxy.kind if isinstance(proxy, Proxy) else ""
