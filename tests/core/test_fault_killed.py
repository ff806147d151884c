# SPDX-License-Identifier: LGPL-2.1-or-later
"""Killed at every single step of writing: what was there is whole, nothing half-made passes for
good, the next run succeeds, and what the killed one left is cleared away in time."""

import csv
import io
import os
import signal
import sys
import tempfile
import time

import numpy as np
import pytest
from PIL import Image

from veneerwb.core.files import LEFT, scratch, write_beside
from veneerwb.core.photos.preparing import Preparation, prepared
from veneerwb.core.photos.reading import Photo, save_jpeg, save_png
from veneerwb.core.shop.packet import PacketFile, named, write_packet

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="children are made by fork")
STEPS = ("open", "os.mkdir", "os.rename", "os.remove", "os.rmdir", "os.scandir", "os.listdir")
FILES = named([PacketFile(f"part {k}", ".csv", "A part.", b"x" * 70_000) for k in range(6)])
MOST = 200


def killed_at(step, action):
    """Runs `action` in a child that is killed just before its so-manieth step on the disk; whether
    it was."""
    child = os.fork()
    if not child:
        counted = 0

        def hook(event, args):
            nonlocal counted
            if event in STEPS:
                counted += 1
                if counted == step:
                    os.kill(os.getpid(), signal.SIGKILL)

        sys.addaudithook(hook)
        try:
            action()
        finally:
            os._exit(0)
    return os.WIFSIGNALED(os.waitpid(child, 0)[1])


def at_every_step(action, whole):
    """Kills `action` at each of its steps, and asks `whole` after each; how many there were."""
    for step in range(1, MOST):
        gone = killed_at(step, action)
        whole()
        if not gone:
            return step - 1
    raise AssertionError("it never came to its end")


def shown(folder):
    """What a person sees in a folder."""
    return sorted(one.name for one in folder.iterdir() if not one.name.startswith("."))


def hidden(folder):
    return [one for one in folder.iterdir() if one.name.startswith(".")]


def test_a_packet_is_whole_or_not_there(tmp_path):
    first = write_packet(tmp_path, "Table", "AB12CD", FILES)

    def whole():
        for name in shown(tmp_path):
            there = {one.name: one.read_bytes() for one in (tmp_path / name).iterdir()}
            assert there == {file.file_name: file.data for file in FILES}, name

    steps = at_every_step(lambda: write_packet(tmp_path, "Table", "AB12CD", FILES), whole)
    assert steps > len(FILES) and first.name in shown(tmp_path)
    assert hidden(tmp_path), "nothing was killed while it was writing"
    before = len(shown(tmp_path))
    assert write_packet(tmp_path, "Table", "AB12CD", FILES).name == f"Table AB12CD ({before + 1})"


def test_what_killed_runs_left_is_cleared_away_a_day_later(tmp_path):
    at_every_step(lambda: write_packet(tmp_path, "Table", "AB12CD", FILES), lambda: None)
    at_every_step(lambda: write_beside(tmp_path / "a", lambda s: s.write(b"a")), lambda: None)
    (tmp_path / ".mine.part").write_text("kept")
    (tmp_path / "0123456789abcdef.part").write_text("kept")
    left, yesterday = len(hidden(tmp_path)), time.time() - LEFT - 60.0
    write_packet(tmp_path, "Table", "AB12CD", FILES)
    assert len(hidden(tmp_path)) == left > 2  # another run may be writing them
    for one in tmp_path.iterdir():
        os.utime(one, (yesterday, yesterday))
    seen = shown(tmp_path)
    write_beside(tmp_path / "a", lambda stream: stream.write(b"new"))
    assert [one.name for one in hidden(tmp_path)] == [".mine.part"] and shown(tmp_path) == seen


def test_folders_of_photographs_on_their_way_are_cleared_away_a_day_later(tmp_path, monkeypatch):
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))

    def work():
        with scratch("leaves") as folder:
            save_png(os.path.join(folder, "leaf.png"), np.zeros((4, 4, 3), np.uint8))

    (tmp_path / "veneerwb-other").mkdir()
    assert at_every_step(work, lambda: None) > 4
    assert len(shown(tmp_path)) > 3
    work()
    assert len(shown(tmp_path)) > 3
    for one in tmp_path.iterdir():
        os.utime(one, (0, 0))
    work()
    assert shown(tmp_path) == ["veneerwb-other"]


def test_a_folder_stays_for_as_long_as_its_process_lives(tmp_path, monkeypatch):
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    ours, dead = scratch("backs"), os.fork()
    if not dead:
        os._exit(0)
    os.waitpid(dead, 0)
    for name in (f"veneerwb-backs-{dead}-abcdefgh", "veneerwb-backs-abcdefgh"):
        (tmp_path / name).mkdir()
    for one in tmp_path.iterdir():
        os.utime(one, (0, 0))
    assert not killed_at(MOST, lambda: scratch("leaves").cleanup())
    assert shown(tmp_path) == [os.path.basename(ours.name)]
    ours.cleanup()


PIXELS = np.random.default_rng(1).integers(0, 255, (90, 60, 3), np.uint8)
KINDS = {
    "picture.png": lambda path: save_png(path, PIXELS),
    "picture.jpg": lambda path: save_jpeg(path, PIXELS),
    "list.csv": lambda path: write_beside(path, lambda s: s.write(b"leaf,cut\n" + b"1,2\n" * 9)),
}


def good(path):
    if path.suffix == ".csv":
        return len(list(csv.reader(io.StringIO(path.read_text())))) == 10
    with Image.open(path) as image:
        return np.asarray(image).shape == PIXELS.shape


@pytest.mark.parametrize("name", KINDS)
def test_a_file_stays_as_it_was_or_is_the_new_one(tmp_path, name):
    path = tmp_path / name
    path.write_bytes(b"former")
    seen = set()

    def whole():
        former = path.read_bytes() == b"former"
        assert former or good(path)
        seen.add(former)

    assert at_every_step(lambda: KINDS[name](path), whole) >= 2
    assert seen == {True, False} and shown(tmp_path) == [name]


def test_photographs_stay_whole_while_they_are_prepared(tmp_path, monkeypatch):
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "temp"))
    (tmp_path / "temp").mkdir()
    paths = [tmp_path / f"leaf {k}.png" for k in (1, 2)]
    for k, path in enumerate(paths):
        Image.fromarray(np.roll(PIXELS, 7 * k, axis=0)).save(path)
    originals = [path.read_bytes() for path in paths]
    how = Preparation(mm_per_px=1.0)

    def whole():
        assert [path.read_bytes() for path in paths] == originals

    assert at_every_step(lambda: prepared(paths, how), whole) > 6
    assert [one.mm_per_px for one in prepared(paths, how).photos] == [1.0, 1.0]
    assert all(Photo.read(one.file, 1.0).shape == (90, 60) for one in prepared(paths, how).photos)
