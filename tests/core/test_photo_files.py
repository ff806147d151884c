# SPDX-License-Identifier: LGPL-2.1-or-later
"""Folders of photos, their numbers, working copies, and files written whole or not at all."""

from __future__ import annotations

import errno
import hashlib
import os
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import write_beside
from veneerwb.core.photos.preparing import Troubles
from veneerwb.core.photos.reading import (
    MOST_NUMBER,
    Photo,
    by_number,
    by_number_or_name,
    names_apart,
    photo_files,
    save_png,
    sha256_of,
    working_copy,
)


def grain(rows: int = 30, columns: int = 20, seed: int = 1) -> np.ndarray:
    """Noise, unlike its own mirror image in any direction."""
    return np.random.default_rng(seed).integers(0, 256, (rows, columns, 3), dtype=np.uint8)


def saved(path: Path, pixels: np.ndarray, **options: object) -> Path:
    Image.fromarray(pixels).save(path, **options)
    return path


def test_photos_of_a_folder_come_in_natural_order(tmp_path: Path) -> None:
    names = ["leaf 10.png", "leaf 2.JPG", "Leaf 1.tiff", "chêne 3.png", "maker's \"oak\" 4.bmp"]
    for name in (*names, "notes.txt", "._leaf 2.JPG", "cut list.csv"):
        (tmp_path / name).touch()
    (tmp_path / "old.png").mkdir()
    found = [path.name for path in photo_files(tmp_path)]
    assert found == ["chêne 3.png", "Leaf 1.tiff", "leaf 2.JPG", "leaf 10.png", names[4]]
    assert found == [path.name for path in photo_files(str(tmp_path))]


@pytest.mark.parametrize("name", ["leaf 3 été.png", "it's \"oak\" 3.png", "{0} %s {file} 3.png"])
def test_odd_names_are_read_and_named_in_sentences(tmp_path: Path, name: str) -> None:
    assert Photo.read(saved(tmp_path / name, grain()), 1).name == name
    (tmp_path / name).write_bytes(b"")
    with pytest.raises(VeneerError) as caught:
        Photo.read(tmp_path / name, 1)
    assert name in str(caught.value)


def test_a_png_of_which_a_checksum_is_wrong_is_damaged(tmp_path: Path) -> None:
    """Its picture would unfold all the same, with other colours."""
    path = saved(tmp_path / "leaf.png", grain())
    data = bytearray(path.read_bytes())
    data[data.index(b"IEND") - 5] ^= 1  # the last byte of the picture's checksum
    path.write_bytes(data)
    assert Image.open(path).load()  # Pillow sees nothing of it
    with pytest.raises(VeneerError) as caught:
        Photo.read(path, 1)
    assert caught.value.code == "photo-damaged"


def test_a_folder_missing_or_empty_or_a_file_is_refused(tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()
    (tmp_path / "notes.txt").touch()
    for name, code in (("none", "no-folder"), ("notes.txt", "no-folder"), ("empty", "no-photos")):
        with pytest.raises(VeneerError, match=name) as caught:
            photo_files(tmp_path / name)
        assert caught.value.code == code


def test_files_are_numbered_by_the_last_number_in_the_name() -> None:
    paths = ["b/oak 2 (10).jpg", "a/leaf_03 back.png", "leaf 7.5.tif", "2024-05-01 12.png"]
    assert by_number(paths) == {
        3: Path("a/leaf_03 back.png"), 5: Path("leaf 7.5.tif"),
        10: Path("b/oak 2 (10).jpg"), 12: Path("2024-05-01 12.png"),
    }
    assert list(by_number(paths)) == [3, 5, 10, 12]


def test_a_name_without_a_number_is_refused() -> None:
    with pytest.raises(VeneerError, match=r"oak\.mp4") as caught:
        by_number(["leaf 1.png", "oak.mp4"])
    assert caught.value.code == "no-number"


@pytest.mark.parametrize("name", ["leaf 0.png", "scan_20240501.jpg", f"leaf {MOST_NUMBER + 1}.jpg"])
def test_a_number_that_no_leaf_has_is_refused(name: str) -> None:
    with pytest.raises(VeneerError, match=f"{name}.*from 1 to {MOST_NUMBER}") as caught:
        by_number(["leaf 1.png", name])
    assert caught.value.code == "number-of-no-leaf"
    assert list(by_number([f"leaf {MOST_NUMBER}.png"])) == [MOST_NUMBER]


@pytest.mark.parametrize("names", [
    ["IMG_20240501.jpg", "IMG_20240502.jpg", "IMG_20240510.jpg"],
    ["20240501_095959.jpg", "20240501_100003.jpg", "20240501_100100.jpg"],
    ["oak a.jpg", "oak b.jpg", "oak c.jpg"],
    ["at 9.41.58.png", "at 9.42.03.png", "at 10.02.44.png"],  # the last number counts seconds
    ["leaf 1 of 3.png", "leaf 2 of 3.png", "leaf 3 of 3.png"],
])  # fmt: skip
def test_names_without_leaf_numbers_are_counted_in_their_order(names: list[str]) -> None:
    found = by_number_or_name(names[::-1])
    assert {number: path.name for number, path in found.items()} == dict(enumerate(names, 1))


def test_leaf_numbers_in_names_hold_however_the_names_are_ordered() -> None:
    for names, numbers in (
        (["IMG_20240501_101.jpg", "IMG_20240501_103.jpg"], [101, 103]),
        (["z 1.png", "a 2.png"], [1, 2]),
        (["b 2.png", "scan 3.png", "a 10.png"], [2, 3, 10]),
    ):
        assert list(by_number_or_name(names)) == numbers
    for names, code in (
        (["leaf 1.png", "IMG_20240501.jpg"], "number-of-no-leaf"),
        (["leaf 1.png", "oak.png"], "no-number"),
        (["a/leaf 1.png", "b/leaf 1.png"], "two-photos-one-number"),
        (["leaf 3.png", "leaf 03.png", "leaf 4.png"], "two-photos-one-number"),
        (["a/oak.png", "b/oak.png"], "no-number"),
    ):
        with pytest.raises(VeneerError) as caught:
            by_number_or_name(names)
        assert caught.value.code == code


def test_files_of_one_name_are_called_by_their_folders() -> None:
    assert names_apart(["a/leaf 1.png", "b/leaf 1.png", "a/leaf 2.png"]) == {
        Path("a/leaf 1.png"): "a/leaf 1.png", Path("b/leaf 1.png"): "b/leaf 1.png",
        Path("a/leaf 2.png"): "leaf 2.png",
    }
    deep = [Path("/x/a/leaf 1.png"), Path("/y/a/leaf 1.png")]
    assert names_apart(deep) == {path: str(path) for path in deep}
    with pytest.raises(VeneerError, match=r"a/leaf 1\.png and b/leaf 1\.png both"):
        by_number(["a/leaf 1.png", "b/leaf 1.png"])


def test_two_files_with_one_number_are_both_named() -> None:
    with pytest.raises(VeneerError, match=r"leaf 3\.png.*leaf_03\.jpg.*number 3") as caught:
        by_number(["leaf 3.png", "leaf 4.png", "leaf_03.jpg"])
    assert caught.value.code == "two-photos-one-number"


def test_what_is_wrong_with_many_photographs_alike_is_said_once() -> None:
    names = [f"leaf {k}.png" for k in range(1, 8)]
    line = "Three of the corners lie almost on a line."
    alike = Troubles([(name, f"{name}: {line}") for name in names], 9)
    called = "leaf 1.png, leaf 2.png, leaf 3.png, leaf 4.png, leaf 5.png and 2 more"
    assert str(alike) == f"7 of 9 photographs will not do ({called}): {line}"
    assert alike.lines == (f"{called}: {line}",)
    black = ("leaf 8.png", "leaf 8.png is black all over.")
    mixed = Troubles([*alike.each[:2], black], 9)
    assert mixed.lines == (f"leaf 1.png, leaf 2.png: {line}", black[1])
    assert str(mixed).endswith(f"leaf 2.png, leaf 8.png); the first: leaf 1.png: {line}")


def test_the_hash_is_that_of_the_file(tmp_path: Path) -> None:
    path = saved(tmp_path / "a.png", grain())
    expected = hashlib.sha256(path.read_bytes()).hexdigest()
    assert sha256_of(path) == Photo.read(path, 1).sha256 == expected
    with pytest.raises(VeneerError, match=r"none\.png"):
        sha256_of(tmp_path / "none.png")


def test_a_small_photo_is_its_own_working_copy() -> None:
    photo = Photo.of(grain(), 0.5)
    pixels, factor = working_copy(photo)
    assert pixels is photo.pixels and factor == 1.0


@pytest.mark.parametrize("shape", [(1000, 700), (700, 1000), (997, 331), (2400, 64), (801, 800)])
@pytest.mark.parametrize("most", [0.1, 0.0377, 0.5])
def test_a_working_copy_keeps_to_its_size_and_scale(shape: tuple[int, int], most: float) -> None:
    rows, columns = shape
    pixels, factor = working_copy(Photo.of(np.zeros((*shape, 3), np.uint8), 0.5), most)
    assert pixels.shape[0] * pixels.shape[1] <= most * 1e6
    assert pixels.shape[1] * factor == pytest.approx(columns, rel=1e-12)
    assert 0.0 <= rows - pixels.shape[0] * factor + 1e-9 < factor + 1e-9


def test_a_point_keeps_its_place_in_a_working_copy() -> None:
    # A ramp along each axis: the copy's pixel at (x, y) mm must show the ramp's value there.
    rows, columns, scale = 1003, 701, 0.5
    y = (rows - np.arange(rows) - 0.5) * scale
    x = (np.arange(columns) + 0.5) * scale
    image = np.zeros((rows, columns, 3), np.uint8)
    image[..., 0] = np.rint(x / 2)[None, :]
    image[..., 1] = np.rint(y / 2.5)[:, None]
    copy, factor = working_copy(Photo.of(image, scale), 0.05)
    new = scale * factor
    copied_y = (copy.shape[0] - np.arange(copy.shape[0]) - 0.5) * new
    copied_x = (np.arange(copy.shape[1]) + 0.5) * new
    inner = slice(5, -5)
    off_x = copy[inner, inner, 0] - (copied_x / 2)[None, inner]
    off_y = copy[inner, inner, 1] - (copied_y / 2.5)[inner, None]
    assert abs(off_x.mean()) < 0.02 and np.abs(off_x).max() <= 1.0
    assert abs(off_y.mean()) < 0.02 and np.abs(off_y).max() <= 1.0


def test_a_working_copy_averages_and_does_not_pick() -> None:
    checks = np.zeros((400, 400, 3), np.uint8)
    checks[::2, ::2] = checks[1::2, 1::2] = 200
    copy, factor = working_copy(Photo.of(checks, 1), 0.01)
    assert factor == 4.0
    assert np.abs(copy[5:-5, 5:-5].astype(int) - 100).max() <= 3


def test_a_working_copy_can_be_made_from_a_file(tmp_path: Path) -> None:
    pixels, factor = working_copy(saved(tmp_path / "a.png", grain(400, 300)), 0.03)
    assert pixels.shape == (200, 150, 3) and factor == 2.0
    with pytest.raises(VeneerError, match=r"none\.png"):
        working_copy(tmp_path / "none.png")
    with pytest.raises(VeneerError, match="megapixels"):
        working_copy(tmp_path / "a.png", 0)


@pytest.mark.parametrize("channels", [3, 4])
def test_a_saved_png_comes_back_exactly(tmp_path: Path, channels: int) -> None:
    pixels = np.random.default_rng(5).integers(0, 256, (9, 7, channels), dtype=np.uint8)
    save_png(tmp_path / "out.png", pixels[:, ::-1])
    with Image.open(tmp_path / "out.png") as image:
        assert np.array_equal(np.asarray(image), pixels[:, ::-1])
    assert os.listdir(tmp_path) == ["out.png"]


def test_saving_something_else_than_pixels_is_a_mistake_of_the_caller(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="uint8"):
        save_png(tmp_path / "out.png", np.zeros((4, 4, 3)))
    assert os.listdir(tmp_path) == []


def test_a_file_that_cannot_be_written_is_said_in_a_sentence(tmp_path: Path) -> None:
    (tmp_path / "plain file").touch()
    (tmp_path / "a folder").mkdir()
    for place in ("no folder/out.png", "plain file/out.png", "a folder"):
        with pytest.raises(VeneerError, match=Path(place).name) as caught:
            save_png(tmp_path / place, grain())
        assert caught.value.code == "cannot-write"
        assert str(tmp_path) not in str(caught.value)
    assert sorted(os.listdir(tmp_path)) == ["a folder", "plain file"]


@pytest.mark.parametrize(
    ("error", "raised"),
    [(OSError(errno.ENOSPC, "No space left on device"), VeneerError), (KeyError("x"), KeyError)],
)
def test_what_was_there_stays_when_writing_fails(
    tmp_path: Path, error: Exception, raised: type[Exception]
) -> None:
    def write(stream: object) -> None:
        stream.write(b"half a")
        raise error

    (tmp_path / "list.csv").write_bytes(b"old")
    with pytest.raises(raised):
        write_beside(tmp_path / "list.csv", write)
    assert (tmp_path / "list.csv").read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["list.csv"]


def test_a_read_only_folder_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def forbidden(*_: object) -> None:
        raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr("builtins.open", forbidden)  # a mode would not stop root
    with pytest.raises(VeneerError, match=r"out\.png could not be written \(Permission denied\)"):
        save_png(tmp_path / "out.png", grain())


def test_a_written_file_has_the_usual_rights_and_goes_through_a_link(tmp_path: Path) -> None:
    (tmp_path / "usual").touch()
    (tmp_path / "link").symlink_to(tmp_path / "real")
    write_beside(tmp_path / "link", lambda stream: stream.write(b"text"))
    assert (tmp_path / "link").is_symlink()
    assert (tmp_path / "real").read_bytes() == b"text"
    assert (tmp_path / "real").stat().st_mode == (tmp_path / "usual").stat().st_mode
