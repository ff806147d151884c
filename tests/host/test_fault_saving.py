# SPDX-License-Identifier: LGPL-2.1-or-later
"""Killed, a full disk and places that may not be written to, while a document is saved, leaves are
brought in or a packet is written: what was there is whole, and the next run succeeds."""

import os
import signal
import subprocess
import time
import zipfile
from contextlib import suppress
from pathlib import Path

import FreeCAD
import pytest
from PIL import Image

from veneerwb.core import VeneerError
from veneerwb.core.photos.preparing import Preparation, Troubles
from veneerwb.core.photos.reading import sha256_of
from veneerwb.host import keeping, packet, sequence
from veneerwb.host.bringing_in import bring_in
from veneerwb.host.objects import add_bundle, add_bundle_from_photos, add_match, add_stock
from veneerwb.host.objects.base import Refused
from veneerwb.host.objects.bench import add_bench

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="children are made by fork")
NOBODY = 65534


def child(action, seconds=None):
    """Runs `action` in a copy of this process, killed after so many seconds; how it ended: "killed"
    or its exit code. How long it took is the second."""
    begun = time.monotonic()
    number = os.fork()
    if not number:
        status = 1
        try:
            status = action() or 0
        finally:
            os._exit(status)
    while seconds is None or time.monotonic() - begun < seconds:
        ended, status = os.waitpid(number, os.WNOHANG)
        if ended:
            return os.waitstatus_to_exitcode(status), time.monotonic() - begun
        time.sleep(0.001)
    os.kill(number, signal.SIGKILL)
    os.waitpid(number, 0)
    return "killed", seconds


def many_moments(action, whole, count=8):
    """Kills `action` at moments spread over the time that it takes, and asks `whole` after each."""
    status, takes = child(action)
    assert status == 0
    whole()
    ended = []
    for k in range(count):
        ended.append(child(action, takes * (k + 0.5) / count)[0])
        whole()
    assert "killed" in ended


@pytest.fixture
def match(doc, sawn, tmp_path):
    made = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    doc.recompute()
    doc.saveAs(str(tmp_path / "Table.FCStd"))
    return made


def opened(path):
    """The document at `path`, whole, all its photographs there; the match's diameter."""
    doc = FreeCAD.openDocument(str(path))
    try:
        for one in doc.Objects:
            one.touch()
        doc.recompute()
        assert [one.Message for one in doc.Objects if one.Message] == []
        return doc.getObject("Match").Diameter.Value
    finally:
        FreeCAD.closeDocument(doc.Name)


def seen(folder):
    return sorted(name for name in os.listdir(folder) if not name.startswith("."))


# --- killed -------------------------------------------------------------------------------------


def test_killed_while_it_is_saved_a_document_is_the_former_or_the_new_one(doc, match, tmp_path):
    path = tmp_path / "Table.FCStd"

    def save():
        match.Diameter = 260.0
        doc.recompute()
        doc.save()

    def whole():
        with zipfile.ZipFile(path) as archive:
            assert archive.testzip() is None
            assert sum(name.endswith(".jpg") for name in archive.namelist()) == 8

    many_moments(save, whole, count=12)
    assert opened_copy(path) in (260.0, 300.0)
    doc.save()
    assert opened_copy(path) == 300.0
    assert not [name for name in os.listdir(tmp_path) if name.endswith(keeping.FORMER)]


def test_killed_while_leaves_are_brought_in(doc, match, tmp_path):
    photos = tmp_path / "photographs"
    photos.mkdir()
    paths = [photos / f"leaf {k}.png" for k in range(1, 5)]
    for k, path in enumerate(paths):
        Image.effect_noise((300, 600), 60 + k).convert("RGB").save(path)
    before = [path.read_bytes() for path in paths]

    def bring():
        bring_in(doc, paths, Preparation(mm_per_px=1.0), 0.6)
        doc.save()

    def whole():
        assert [path.read_bytes() for path in paths] == before
        with zipfile.ZipFile(tmp_path / "Table.FCStd") as archive:
            assert archive.testzip() is None

    many_moments(bring, whole)
    assert len(bring_in(doc, paths, Preparation(mm_per_px=1.0), 0.6).Leaves) == 4


def test_killed_while_a_packet_is_written(doc, tmp_path):
    top = add_match(doc, add_stock(doc, 300.0, 400.0, 8), Ways=4, Diameter=200.0, Oversize=5.0)
    bench = add_bench(doc, top, Title="Small")
    doc.recompute()
    first = packet.write(bench, str(tmp_path)).folder
    names = seen(first)
    whole_one = {name: os.path.getsize(first / name) > 0 for name in names}

    def whole():
        for folder in seen(tmp_path):
            there = {n: os.path.getsize(tmp_path / folder / n) > 0 for n in seen(tmp_path / folder)}
            assert there == whole_one, folder

    many_moments(lambda: packet.write(bench, str(tmp_path)) and 0, whole, count=3)
    assert seen(packet.write(bench, str(tmp_path)).folder) == names


# --- a full disk --------------------------------------------------------------------------------


@pytest.fixture
def tiny(tmp_path):
    """A disk of 400 KB, where this user may make one."""
    folder = tmp_path / "tiny"
    folder.mkdir()
    made = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=400k", "none", str(folder)], capture_output=True
    )
    if made.returncode:
        pytest.skip("only root can mount a small disk")
    yield folder
    subprocess.run(["umount", "-l", str(folder)], check=True)


def fill(folder, but):
    with open(folder / "filling", "wb", buffering=0) as stream:
        try:
            while stream.write(b"x" * 4096):
                pass
        except OSError:
            pass
    os.truncate(folder / "filling", os.path.getsize(folder / "filling") - but)


def refused(save, said, capfd):
    """Older hosts take it for saved, and we say so; newer ones refuse."""
    try:
        save()
    except OSError as error:
        assert "No space left" in str(error)
    else:
        assert said in capfd.readouterr().err


@pytest.mark.parametrize("room", [0, 8192, 65536])
def test_a_disk_that_is_full_keeps_the_document_as_it_was_saved(doc, match, tiny, capfd, room):
    path = tiny / "Table.FCStd"
    doc.saveAs(str(path))
    match.Diameter = 260.0
    doc.recompute()
    fill(tiny, room)
    for _ in range(3):  # each time an older host would take a worse one for its backup
        refused(doc.save, "Table.FCStd could not be saved", capfd)
        assert zipfile.ZipFile(path).testzip() is None
    assert opened_copy(path) == 300.0
    os.unlink(tiny / "filling")
    doc.save()
    assert "could not be saved" not in capfd.readouterr().err
    assert opened_copy(path) == 260.0
    assert not [name for name in os.listdir(tiny) if name.endswith(keeping.FORMER)]


@pytest.mark.parametrize("then", ["saved elsewhere", "closed"])
def test_a_refused_save_leaves_no_second_name_behind(doc, match, tmp_path, then):
    """Newer hosts tell that it begins, and no end."""
    path = tmp_path / "Table.FCStd"
    keeping.Saving().slotStartSaveDocument(doc, str(path))
    assert names(tmp_path) == [".Table.FCStd.former", "Table.FCStd"]
    if then == "closed":
        FreeCAD.closeDocument(doc.Name)
    else:
        doc.saveAs(str(tmp_path / "Other.FCStd"))
    assert ".Table.FCStd.former" not in names(tmp_path) and opened_copy(path) == 300.0


@pytest.mark.parametrize("left", ["half of it", "nothing", "all of it"])
def test_a_second_name_that_alone_is_whole_becomes_the_document_again(tmp_path, left):
    path, former = tmp_path / "Table.FCStd", tmp_path / ".Table.FCStd.former"
    for one in (path, former):
        with zipfile.ZipFile(one, "w") as archive:
            archive.writestr("Document.xml", one.name)
    if left == "half of it":
        os.truncate(path, path.stat().st_size // 2)
    elif left == "nothing":
        path.unlink()
    keeping._clear(str(path))
    assert names(tmp_path) == ["Table.FCStd"]
    wanted = path if left == "all of it" else former
    assert zipfile.ZipFile(path).read("Document.xml").decode() == wanted.name


def names(folder):
    return sorted(os.listdir(folder))


def test_a_document_behind_a_link_is_kept_as_well(doc, match, tiny, tmp_path, capfd):
    path, link = tiny / "Table.FCStd", tmp_path / "Link.FCStd"
    doc.saveAs(str(path))
    link.symlink_to(path)
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(link))
    again.getObject("Match").Diameter = 260.0
    again.recompute()
    fill(tiny, 8192)
    refused(again.save, "Link.FCStd could not be saved", capfd)
    assert link.is_symlink() and opened_copy(path) == 300.0
    os.unlink(tiny / "filling")
    again.save()
    assert link.is_symlink() and opened_copy(path) == 260.0
    assert not [n for n in (*os.listdir(tiny), *os.listdir(tmp_path)) if n.endswith(keeping.FORMER)]


def test_a_host_that_writes_into_the_file_itself_is_not_said_to_have_kept_it(
    doc, match, tiny, capfd
):
    path = tiny / "Table.FCStd"
    doc.saveAs(str(path))
    host = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document")
    host.SetBool("BackupPolicy", False)
    try:
        doc.addObject("App::FeaturePython", "Large").addProperty("App::PropertyString", "Text")
        doc.Large.Text = os.urandom(60_000).hex()
        fill(tiny, 4096)
        with suppress(OSError):
            doc.save()
    finally:
        host.RemBool("BackupPolicy")
    assert zipfile.is_zipfile(path) or "saved before" not in capfd.readouterr().err


def opened_copy(path):
    """As `opened`, of a copy: the document itself is open."""
    copy = path.parent.parent / f"{path.stem}-copy.FCStd"
    copy.write_bytes(path.read_bytes())
    return opened(copy)


def test_a_new_document_that_finds_no_room_is_not_there(doc, match, tiny, capfd):
    fill(tiny, 8192)
    refused(lambda: doc.saveAs(str(tiny / "New.FCStd")), "New.FCStd could not be saved", capfd)
    assert "New.FCStd" not in seen(tiny)


def full_below(doc, size):
    """A small disk where the host keeps the files of an open document."""
    os.makedirs(doc.TransientDir, exist_ok=True)
    made = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", f"size={size}k", "none", doc.TransientDir],
        capture_output=True,
    )
    if made.returncode:
        pytest.skip("only root can mount a small disk")


@pytest.mark.parametrize("way", ["from photographs", "a batch", "from the core"])
def test_leaves_that_find_no_room_leave_the_document_alone(doc, sawn, tmp_path, way):
    paths = [tmp_path / f"leaf {k}.png" for k in range(1, 5)]
    for k, path in enumerate(paths):
        Image.effect_noise((150, 300), 60 + k).convert("RGB").save(path)
    add_stock(doc, 100.0, 200.0, 4)
    doc.recompute()
    full_below(doc, 64)
    made = {
        "from photographs": lambda: add_bundle_from_photos(doc, paths, 1.0, 0.6),
        "a batch": lambda: bring_in(doc, paths, Preparation(mm_per_px=1.0), 0.6),
        "from the core": lambda: [add_bundle(doc, sawn) for _ in range(4)],
    }[way]
    try:
        with pytest.raises(Refused, match="could not be copied into the document; make room"):
            made()
        kinds = {obj.Name for obj in doc.Objects}
        assert "Stock" in kinds and (way == "from the core" or kinds == {"Stock"})
        assert all(os.path.getsize(o.Photo) for o in doc.Objects if o.Name.startswith("Leaf"))
    finally:
        subprocess.run(["umount", "-l", doc.TransientDir], check=True)


@pytest.mark.parametrize("turn", [sequence.turn_end, sequence.turn_over])
def test_a_leaf_that_finds_no_room_to_be_turned_stays_as_it_was(doc, sawn, turn):
    """Within the step of a panel too, which may be kept: of two photographs one had found room."""
    full_below(doc, 400)
    try:
        leaf = add_bundle(doc, sawn).Leaves[0]
        doc.recompute()

        def state():
            shown = {name: str(getattr(leaf, name)) for name in leaf.PropertiesList}
            return shown, sha256_of(leaf.Photo), sha256_of(leaf.BackPhoto)

        before, largest = state(), max(map(os.path.getsize, (leaf.Photo, leaf.BackPhoto)))
        fill(Path(doc.TransientDir), round(1.5 * largest))
        doc.openTransaction("panel")
        with pytest.raises(Refused, match="could not be copied into the document; make room"):
            turn(leaf)
        assert state() == before
    finally:
        subprocess.run(["umount", "-l", doc.TransientDir], check=True)


def test_a_batch_whose_copies_find_no_room_is_said_in_a_sentence(doc, tiny, tmp_path, monkeypatch):
    path = tmp_path / "leaf 1.png"
    Image.effect_noise((900, 1200), 60).convert("RGB").save(path)
    monkeypatch.setattr("tempfile.tempdir", str(tiny))
    with pytest.raises((VeneerError, Troubles), match="could not be written.*No space left"):
        bring_in(doc, [path], Preparation(mm_per_px=1.0), 0.6)
    assert doc.Objects == [] and seen(tiny) == []


# --- what may not be written to -----------------------------------------------------------------


def as_nobody(action):
    """Runs `action` in a child without root's rights; what it said."""
    reading, writing = os.pipe()

    def run():
        os.close(reading)
        os.setegid(NOBODY)
        os.seteuid(NOBODY)
        said = "nothing"
        try:
            action()
        except Exception as error:
            said = f"{type(error).__name__}: {error}"
        os.write(writing, said.encode())

    child(run)
    os.close(writing)
    with os.fdopen(reading) as stream:
        return stream.read()


def test_a_folder_that_may_not_be_written_to_is_said_and_stays_empty(doc, tmp_path):
    top = add_match(doc, add_stock(doc, 300.0, 400.0, 8), Ways=4, Diameter=200.0, Oversize=5.0)
    bench = add_bench(doc, top, Title="Small")
    doc.recompute()
    folder = tmp_path / "locked"
    folder.mkdir(mode=0o555)
    said = as_nobody(lambda: packet.write(bench, str(folder)))
    assert said.startswith("VeneerError: The packet could not be written into locked (Permission")
    assert "choose a folder" in said and os.listdir(folder) == []
    assert top.Message == "" and len(top.Shape.Solids) == 4


def test_a_document_that_may_only_be_read_opens_and_goes_elsewhere(doc, match, tmp_path):
    path = tmp_path / "Table.FCStd"
    FreeCAD.closeDocument(doc.Name)
    path.chmod(0o444)
    former = path.read_bytes()
    again = FreeCAD.openDocument(str(path))
    match = again.getObject("Match")
    match.Diameter = 260.0
    again.recompute()
    assert match.Message == ""
    again.saveAs(str(tmp_path / "Other.FCStd"))
    assert path.read_bytes() == former and opened_copy(tmp_path / "Other.FCStd") == 260.0
