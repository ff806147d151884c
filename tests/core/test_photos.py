# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photos as objects: scale, memory, and the bad ones refused in a sentence with their name."""

from __future__ import annotations

import errno
import gc
import os
import threading
import warnings
import weakref
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos import decode
from veneerwb.core.photos import reading as photos
from veneerwb.core.photos.reading import Photo


def grain(rows: int = 30, columns: int = 20, seed: int = 1) -> np.ndarray:
    """Noise, unlike its own mirror image in any direction."""
    return np.random.default_rng(seed).integers(0, 256, (rows, columns, 3), dtype=np.uint8)


def saved(path: Path, pixels: np.ndarray, **options: object) -> Path:
    Image.fromarray(pixels).save(path, **options)
    return path


def refused(path: Path, code: str) -> VeneerError:
    """Reading `path` must fail with `code`, in one sentence that names the file."""
    with pytest.raises(VeneerError) as caught:
        Photo.read(path, 0.5)
    text = str(caught.value)
    assert caught.value.code == code
    assert path.name in text and str(path.parent) not in text
    assert text.endswith(".") and "\n" not in text
    return caught.value


@pytest.fixture
def kept(monkeypatch: pytest.MonkeyPatch) -> photos._Kept:
    """A small store of decoded photos in place of the process's own: 10 photos of 30 x 20."""
    store = photos._Kept(10 * 30 * 20 * 3)
    monkeypatch.setattr(photos, "_kept", store)
    return store


def test_a_photo_knows_its_shape_size_and_name(tmp_path: Path) -> None:
    photo = Photo.read(saved(tmp_path / "leaf 1.png", grain()), 0.5)
    assert photo.shape == (30, 20)
    assert photo.size == (10.0, 15.0)
    assert photo.name == "leaf 1.png"
    assert photo.mm_per_px == 0.5


def test_pixels_are_bytes_contiguous_and_read_only(tmp_path: Path) -> None:
    path = saved(tmp_path / "a.png", grain())
    for photo in (Photo.read(path, 1), Photo.read(path, 1, mirrored=True), Photo.of(grain(), 1)):
        assert photo.pixels.dtype == np.uint8
        assert photo.pixels.flags.c_contiguous
        with pytest.raises(ValueError):
            photo.pixels[0, 0, 0] = 1


def test_a_photo_of_an_array_keeps_it_without_copying_or_locking_it() -> None:
    array = grain()
    photo = Photo.of(array, 0.5, name="made")
    assert np.shares_memory(photo.pixels, array)
    assert array.flags.writeable
    assert photo.name == "made" and photo.sha256 == ""


def test_photos_are_hashed_by_identity_and_can_be_weakly_held() -> None:
    array = grain()
    one, other = Photo.of(array, 0.5), Photo.of(array, 0.5)
    assert one != other and len({one, other, one}) == 2
    link = weakref.ref(one)
    del one
    gc.collect()
    assert link() is None


def test_a_photo_of_a_back_is_flipped_left_right(tmp_path: Path) -> None:
    path = saved(tmp_path / "back.png", grain())
    assert np.array_equal(Photo.read(path, 1, mirrored=True).pixels, grain()[:, ::-1])


@pytest.mark.parametrize("scale", [0, -0.5, 10.1, float("nan"), float("inf"), "fine", None])
def test_an_absurd_scale_is_refused(tmp_path: Path, scale: object) -> None:
    path = saved(tmp_path / "a.png", grain())
    with pytest.raises(VeneerError, match="scale"):
        Photo.read(path, scale)
    with pytest.raises(VeneerError, match="scale"):
        Photo.of(grain(), scale)


@pytest.mark.parametrize(
    "array",
    [grain().astype(float), grain()[..., 0], np.zeros((4, 4, 4), np.uint8), np.uint8(3), "leaf"],
)
def test_an_array_that_is_no_picture_is_refused(array: object) -> None:
    with pytest.raises(VeneerError) as caught:
        Photo.of(array, 0.5)
    assert caught.value.code == "not-pixels"


def test_an_array_of_one_row_or_too_many_pixels_is_refused() -> None:
    with pytest.raises(VeneerError, match="1 pixels"):
        Photo.of(np.zeros((1, 9, 3), np.uint8), 0.5)
    huge = np.broadcast_to(np.zeros(3, np.uint8), (20_000, 10_000, 3))
    with pytest.raises(VeneerError, match="200 megapixels"):
        Photo.of(huge, 0.5)


def test_what_is_not_there_is_refused_by_name(tmp_path: Path) -> None:
    refused(tmp_path / "nowhere.png", "photo-missing")
    refused(tmp_path / "no folder" / "leaf.png", "photo-missing")


def test_a_folder_is_refused(tmp_path: Path) -> None:
    (tmp_path / "leaf.png").mkdir()
    refused(tmp_path / "leaf.png", "photo-is-folder")


def test_an_empty_file_is_refused(tmp_path: Path) -> None:
    (tmp_path / "leaf.png").touch()
    refused(tmp_path / "leaf.png", "photo-empty")


@pytest.mark.parametrize("content", [b"leaf one, leaf two\n" * 50, b"\0", b"%PDF-1.4 ...", b"BM"])
def test_a_text_named_png_is_refused(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "leaf.png").write_bytes(content)
    refused(tmp_path / "leaf.png", "not-a-photo")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes on this system")
def test_a_pipe_is_refused_without_waiting(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "leaf.png")
    refused(tmp_path / "leaf.png", "not-a-photo")


def test_a_file_that_may_not_be_read_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def forbidden(self: Path, *_: object, **__: object) -> None:
        raise PermissionError(errno.EACCES, "Permission denied", str(self))

    path = saved(tmp_path / "leaf.png", grain())
    monkeypatch.setattr(Path, "open", forbidden)  # root may read anything, so a mode would not do
    assert "Permission denied" in str(refused(path, "photo-unreadable"))


@pytest.mark.parametrize("part", [0.3, 0.6, 0.9, 0.99])
@pytest.mark.parametrize("suffix", [".jpg", ".png", ".tif", ".bmp"])
def test_a_file_cut_short_is_refused_when_read(tmp_path: Path, suffix: str, part: float) -> None:
    path = saved(tmp_path / f"leaf{suffix}", grain(200, 300))
    whole = path.read_bytes()
    path.write_bytes(whole[: int(len(whole) * part)])
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # of a TIFF Pillow warns before it raises
        refused(path, "photo-damaged")


def test_a_png_with_one_byte_changed_is_refused(tmp_path: Path) -> None:
    path = saved(tmp_path / "leaf.png", grain(200, 300))
    data = bytearray(path.read_bytes())
    data[len(data) // 2] ^= 0x10
    path.write_bytes(data)
    refused(path, "photo-damaged")


def test_200_megapixels_are_refused_from_the_header_alone(tmp_path: Path, png: Callable) -> None:
    path = tmp_path / "great leaf.png"
    path.write_bytes(png(20_000, 10_000, 8, 2, b""))
    error = refused(path, "photo-too-large")
    assert error.values["megapixels"] == 200.0
    assert "200 megapixels" in str(error) and "150" in str(error) and "smaller" in str(error)


@pytest.mark.parametrize("size", [(1, 5), (5, 1), (1, 1)])
def test_less_than_two_pixels_are_refused(tmp_path: Path, size: tuple[int, int]) -> None:
    Image.new("RGB", size).save(tmp_path / "leaf.png")
    refused(tmp_path / "leaf.png", "photo-too-small")


def test_pillows_own_limit_neither_warns_nor_is_lost(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = saved(tmp_path / "a.png", grain())
    for limit in (500, 100):  # 600 pixels: over a limit Pillow warns, over twice a limit it raises
        monkeypatch.setattr(Image, "MAX_IMAGE_PIXELS", limit)
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            assert Photo.read(path, 1).shape == (30, 20)
        assert limit == Image.MAX_IMAGE_PIXELS


def test_too_little_memory_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise MemoryError

    path = saved(tmp_path / "leaf.png", grain())
    monkeypatch.setattr(decode, "_rgb", full)
    refused(path, "no-memory")


def test_memory_is_bounded_and_dropped_photos_come_back(
    tmp_path: Path, kept: photos._Kept
) -> None:
    paths = [saved(tmp_path / f"{k}.png", grain(seed=k)) for k in range(25)]
    read = [Photo.read(path, 0.5) for path in paths]
    for k in (*range(25), 0, 24, 12):
        assert np.array_equal(read[k].pixels, grain(seed=k))
        assert kept.bytes == sum(p.nbytes for p in kept._photos.values()) <= kept.most_bytes


def test_the_photo_longest_unused_is_dropped_first(tmp_path: Path, kept: photos._Kept) -> None:
    read = [Photo.read(saved(tmp_path / f"{k}.png", grain(seed=k)), 1) for k in range(10)]
    used = read[0].pixels
    Photo.read(saved(tmp_path / "more.png", grain(seed=99)), 1)
    paths = [origin.path.name for origin in kept._photos]
    assert "1.png" not in paths
    assert read[0].pixels is used


def test_one_file_read_twice_is_kept_once(tmp_path: Path, kept: photos._Kept) -> None:
    path = saved(tmp_path / "a.png", grain())
    one, other = Photo.read(path, 0.5), Photo.read(path, 0.25)
    assert one.pixels is other.pixels
    assert kept.bytes == 30 * 20 * 3


def test_a_photo_larger_than_the_store_is_still_read(tmp_path: Path, kept: photos._Kept) -> None:
    photo = Photo.read(saved(tmp_path / "a.png", grain(300, 200)), 1)
    assert np.array_equal(photo.pixels, grain(300, 200))
    assert kept.bytes == 0


def test_a_file_that_has_gone_since_is_said(tmp_path: Path, kept: photos._Kept) -> None:
    path = saved(tmp_path / "leaf 3.png", grain())
    photo = Photo.read(path, 1)
    kept.__init__(kept.most_bytes)
    path.unlink()
    with pytest.raises(VeneerError, match=r"leaf 3\.png") as caught:
        _ = photo.pixels
    assert caught.value.code == "photo-missing"


def test_a_file_that_has_changed_since_is_said(tmp_path: Path, kept: photos._Kept) -> None:
    path = saved(tmp_path / "leaf 3.png", grain())
    photo = Photo.read(path, 1)
    kept.__init__(kept.most_bytes)
    saved(path, grain(seed=2))
    with pytest.raises(VeneerError, match=r"leaf 3\.png has changed") as caught:
        _ = photo.pixels
    assert caught.value.code == "photo-changed"


def test_a_file_only_touched_since_is_taken(tmp_path: Path, kept: photos._Kept) -> None:
    path = saved(tmp_path / "a.png", grain())
    photo = Photo.read(path, 1, mirrored=True)
    kept.__init__(kept.most_bytes)
    os.utime(path, (1, 1))
    assert np.array_equal(photo.pixels, grain()[:, ::-1])


def test_a_relative_path_survives_a_change_of_folder(
    tmp_path: Path, kept: photos._Kept, monkeypatch: pytest.MonkeyPatch
) -> None:
    saved(tmp_path / "a.png", grain())
    monkeypatch.chdir(tmp_path)
    photo = Photo.read("a.png", 1)
    kept.__init__(kept.most_bytes)
    monkeypatch.chdir(tmp_path.parent)
    assert photo.pixels.shape == (30, 20, 3)


def test_several_threads_may_read_at_once(tmp_path: Path, kept: photos._Kept) -> None:
    read = [Photo.read(saved(tmp_path / f"{k}.png", grain(seed=k)), 1) for k in range(20)]
    wrong: list[int] = []

    def look(first: int) -> None:
        for k in (*range(first, 20), *range(first)):
            if not np.array_equal(read[k].pixels, grain(seed=k)):
                wrong.append(k)

    threads = [threading.Thread(target=look, args=(first,)) for first in (0, 7, 13)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert not wrong
    assert kept.bytes == sum(p.nbytes for p in kept._photos.values()) <= kept.most_bytes
