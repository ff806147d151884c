# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every kind of picture file is read true."""

from __future__ import annotations

import struct
import warnings
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PIL import Image, ImageCms, features

from veneerwb.core.photos import decode
from veneerwb.core.photos.reading import Photo

BROWN = (140, 90, 50)


def needs(feature: str) -> pytest.MarkDecorator:
    return pytest.mark.skipif(not features.check(feature), reason=f"this Pillow has no {feature}")


def grain(rows: int = 30, columns: int = 20, seed: int = 1) -> np.ndarray:
    """Noise, unlike its own mirror image in any direction."""
    return np.random.default_rng(seed).integers(0, 256, (rows, columns, 3), dtype=np.uint8)


def saved(path: Path, pixels: np.ndarray, **options: object) -> Path:
    Image.fromarray(pixels).save(path, **options)
    return path


def plain(mode: str, colour: object) -> Image.Image:
    return Image.new(mode, (6, 4), colour)


def seen(path: Path) -> list[int]:
    """The one colour of a plain picture, as it is read."""
    pixels = Photo.read(path, 0.5).pixels
    assert pixels.shape == (4, 6, 3)
    assert (pixels == pixels[0, 0]).all()
    return pixels[0, 0].tolist()


@pytest.mark.parametrize("suffix", [".png", ".tif", ".bmp", ".PNG"])
def test_lossless_files_come_back_exactly(tmp_path: Path, suffix: str) -> None:
    path = saved(tmp_path / f"a{suffix}", grain())
    assert np.array_equal(Photo.read(path, 1).pixels, grain())


@needs("webp")
def test_lossless_webp_comes_back_exactly(tmp_path: Path) -> None:
    path = saved(tmp_path / "a.webp", grain(), lossless=True)
    assert np.array_equal(Photo.read(path, 1).pixels, grain())


def test_jpeg_comes_back_nearly(tmp_path: Path) -> None:
    assert seen(saved(tmp_path / "a.jpg", np.full((4, 6, 3), BROWN, np.uint8))) == pytest.approx(
        BROWN, abs=2
    )


@pytest.mark.parametrize(
    ("mode", "colour", "suffix", "rgb"),
    [
        ("1", 1, ".png", [255, 255, 255]),
        ("1", 0, ".tif", [0, 0, 0]),
        ("L", 77, ".png", [77, 77, 77]),
        ("L", 77, ".bmp", [77, 77, 77]),
        ("LA", (100, 255), ".png", [100, 100, 100]),
        ("LA", (100, 0), ".png", [255, 255, 255]),
        ("LA", (100, 51), ".tif", [224, 224, 224]),
        ("RGB", BROWN, ".png", [140, 90, 50]),
        ("RGBA", (*BROWN, 255), ".png", [140, 90, 50]),
        ("RGBA", (*BROWN, 0), ".png", [255, 255, 255]),
        ("RGBA", (*BROWN, 51), ".tif", [232, 222, 214]),
        ("CMYK", (0, 0, 0, 0), ".tif", [255, 255, 255]),
        ("CMYK", (0, 102, 204, 0), ".tif", [255, 153, 51]),
    ],
)
def test_each_mode_gives_its_colour(
    tmp_path: Path, mode: str, colour: object, suffix: str, rgb: list[int]
) -> None:
    path = tmp_path / f"a{suffix}"
    plain(mode, colour).save(path)
    assert seen(path) == pytest.approx(rgb, abs=1)


def test_cmyk_jpeg_is_not_inverted(tmp_path: Path) -> None:
    # Pillow writes CMYK JPEG the way the common picture editor does: inverted, with its marker.
    path = tmp_path / "a.jpg"
    plain("CMYK", (0, 102, 204, 0)).save(path, quality=98)
    assert seen(path) == pytest.approx([255, 153, 51], abs=4)


@needs("libtiff")
def test_jpeg_inside_a_tiff_gives_its_colour(tmp_path: Path) -> None:
    path = tmp_path / "a.tif"
    plain("RGB", BROWN).convert("YCbCr").save(path, compression="jpeg")
    assert seen(path) == pytest.approx(BROWN, abs=3)


def test_luma_and_chroma_are_converted() -> None:
    pixels = decode._rgb(plain("RGB", BROWN).convert("YCbCr"))
    assert pixels[0, 0].tolist() == pytest.approx(BROWN, abs=2)


@pytest.mark.parametrize(
    ("lab", "rgb"),
    [
        ((100, 0, 0), [255, 255, 255]),
        ((0, 0, 0), [0, 0, 0]),
        ((50, 0, 0), [119, 119, 119]),  # CIELAB's and sRGB's own formulas
        ((70, 5, 10), [187, 167, 153]),  # the same, and bytes are coarse
    ],
)
def test_lab_tiff_gives_its_colour(tmp_path: Path, lab: tuple[int, ...], rgb: list[int]) -> None:
    path = tmp_path / "a.tif"
    plain("LAB", (round(lab[0] * 2.55), 128 + lab[1], 128 + lab[2])).save(path)
    with Image.open(path) as image:
        assert image.mode == "LAB"
    assert seen(path) == pytest.approx(rgb, abs=3)


def test_a_palette_gives_its_colours(tmp_path: Path) -> None:
    path = tmp_path / "a.png"
    image = Image.new("P", (6, 4), 1)
    image.putpalette([0, 0, 0, *BROWN])
    image.save(path)
    assert seen(path) == list(BROWN)


@pytest.mark.parametrize("transparency", [1, b"\xff\x00"])
def test_a_clear_palette_colour_is_white(tmp_path: Path, transparency: object) -> None:
    path = tmp_path / "a.png"
    image = Image.new("P", (6, 4), 1)
    image.putpalette([0, 0, 0, *BROWN])
    image.save(path, transparency=transparency)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        assert seen(path) == [255, 255, 255]


@pytest.mark.parametrize(("mode", "colour"), [("RGB", BROWN), ("L", 90), ("1", 1)])
def test_a_colour_named_as_clear_is_white(tmp_path: Path, mode: str, colour: object) -> None:
    path = tmp_path / "a.png"
    plain(mode, colour).save(path, transparency=255 if mode == "1" else colour)
    assert seen(path) == [255, 255, 255]


@pytest.mark.parametrize("suffix", [".png", ".tif"])
@pytest.mark.parametrize(("value", "byte"), [(65535, 255), (0, 0), (257 * 77, 77), (40, 0)])
def test_sixteen_bit_grey_is_scaled(tmp_path: Path, suffix: str, value: int, byte: int) -> None:
    path = tmp_path / f"a{suffix}"
    Image.fromarray(np.full((4, 6), value, np.uint16)).save(path)
    assert seen(path) == [byte] * 3


def test_sixteen_bit_grey_with_the_high_byte_first_is_scaled(tmp_path: Path) -> None:
    path = tmp_path / "a.tif"
    data = np.full((4, 6), 257 * 77, ">u2").tobytes()
    Image.frombytes("I;16B", (6, 4), data).save(path)
    assert seen(path) == [77] * 3


@pytest.mark.parametrize(("kind", "samples"), [(2, BROWN), (6, (*BROWN, 255))])
def test_sixteen_bit_colour_png_gives_its_colour(
    tmp_path: Path, kind: int, samples: tuple[int, ...], png: Callable
) -> None:
    path = tmp_path / "a.png"
    row = b"\0" + struct.pack(f">{len(samples)}H", *(257 * s for s in samples)) * 6
    path.write_bytes(png(6, 4, 16, kind, row * 4))
    assert seen(path) == pytest.approx(BROWN, abs=1)


@pytest.mark.parametrize(
    ("values", "bytes_"),
    [
        ([0.0, 0.5, 1.0], [0, 128, 255]),
        ([0.0, 77.0, 200.0], [0, 77, 200]),
        ([0.0, 257.0 * 77, 65535.0], [0, 77, 255]),
        ([-1.0, 0.0, 1.0], [0, 128, 255]),
        ([float("nan"), 0.0, 1.0], [0, 0, 255]),
    ],
)
def test_floating_point_is_scaled_by_its_range(
    tmp_path: Path, values: list[float], bytes_: list[int]
) -> None:
    path = tmp_path / "a.tif"
    Image.fromarray(np.array([values, values], np.float32)).save(path)
    assert Photo.read(path, 1).pixels[0, :, 0].tolist() == bytes_


@pytest.mark.parametrize(
    ("values", "bytes_"),
    [
        ([0, 77, 200], [0, 77, 200]),
        ([0, 257 * 77, 65535], [0, 77, 255]),
        ([-1000, 0, 1000], [0, 128, 255]),
        ([0, 500_000, 1_000_000], [0, 128, 255]),
        ([-7, -7, -7], [0, 0, 0]),
    ],
)
def test_thirty_two_bit_numbers_are_scaled_by_their_range(
    tmp_path: Path, values: list[int], bytes_: list[int]
) -> None:
    path = tmp_path / "a.tif"
    Image.fromarray(np.array([values, values], np.int32)).save(path)
    assert Photo.read(path, 1).pixels[0, :, 0].tolist() == bytes_


@pytest.mark.parametrize("orientation", range(1, 9))
@pytest.mark.parametrize(
    ("suffix", "options"),
    [
        (".png", {}), (".tif", {}),
        pytest.param(".tif", {"compression": "tiff_lzw"}, marks=needs("libtiff")),
        pytest.param(".webp", {"lossless": True}, marks=needs("webp")),
    ],
)
def test_a_photo_turned_by_the_camera_stands_upright(
    tmp_path: Path, orientation: int, suffix: str, options: dict[str, object]
) -> None:
    # EXIF: 1 row 0 top, column 0 left; 2 top, right; 3 bottom, right; 4 bottom, left; 5 left, top;
    # 6 right, top; 7 right, bottom; 8 left, bottom.
    upright = grain()
    rows = upright[::-1] if orientation in (3, 4, 7, 8) else upright
    stored = rows[:, ::-1] if orientation in (2, 3, 6, 7) else rows
    stored = stored.swapaxes(0, 1) if orientation > 4 else stored
    exif = Image.Exif()
    exif[0x0112] = orientation
    path = saved(tmp_path / f"a{suffix}", np.ascontiguousarray(stored), exif=exif, **options)
    assert np.array_equal(Photo.read(path, 0.5).pixels, upright)


def test_exif_6_turns_a_jpeg_a_quarter_clockwise(tmp_path: Path) -> None:
    pixels = np.zeros((16, 32, 3), np.uint8)
    pixels[:8, :8] = 255  # white at the upper left: after a quarter clockwise at the upper right
    exif = Image.Exif()
    exif[0x0112] = 6
    photo = Photo.read(saved(tmp_path / "a.jpg", pixels, exif=exif, quality=95), 0.5)
    assert photo.shape == (32, 16)
    assert photo.pixels[2, 13].min() > 230 and photo.pixels[2, 2].max() < 25


def test_a_damaged_camera_note_does_not_lose_the_picture(tmp_path: Path) -> None:
    path = saved(tmp_path / "a.jpg", grain(), exif=b"Exif\0\0MM\0*\0\0\0\x08\xff\xff junk")
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        assert Photo.read(path, 1).shape == (30, 20)


def profile(gamma: float) -> bytes:
    """A small ICC profile (version 2): sRGB's primaries, adapted to D50, with a plain gamma."""
    white, *primaries = (
        (0.9642, 1.0, 0.8249),
        (0.4361, 0.2225, 0.0139), (0.3851, 0.7169, 0.0971), (0.1431, 0.0606, 0.7139),
    )
    tags = [(b"desc", b"desc" + struct.pack(">4xI", 6) + b"plain\0" + bytes(78))]
    for name, xyz in zip((b"wtpt", b"rXYZ", b"gXYZ", b"bXYZ"), (white, *primaries), strict=True):
        tags.append((name, b"XYZ " + struct.pack(">4x3i", *(round(v * 65536) for v in xyz))))
    curve = b"curv" + struct.pack(">4xIHxx", 1, round(gamma * 256))
    tags += [(name, curve) for name in (b"rTRC", b"gTRC", b"bTRC")]
    table, data, start = struct.pack(">I", len(tags)), b"", 128 + 4 + 12 * len(tags)
    for name, content in tags:
        table += name + struct.pack(">II", start + len(data), len(content))
        data += content + bytes(-len(content) % 4)
    head = bytearray(128)
    struct.pack_into(">I4xI12s", head, 0, start + len(data), 0x02100000, b"mntrRGB XYZ ")
    head[36:40] = b"acsp"
    struct.pack_into(">3i", head, 68, *(round(v * 65536) for v in white))
    return bytes(head) + table + data


@pytest.mark.parametrize("suffix", [".png", ".tif"])
def test_another_profile_is_converted_to_srgb(tmp_path: Path, suffix: str) -> None:
    # Linear light 46 / 255 is 118 in sRGB (IEC 61966-2-1: encode(0.18) = 0.461).
    path = tmp_path / f"a{suffix}"
    plain("RGB", (46, 46, 46)).save(path, icc_profile=profile(1.0))
    assert seen(path) == pytest.approx([118, 118, 118], abs=1)
    plain("RGBA", (46, 46, 46, 255)).save(path, icc_profile=profile(1.0))
    assert seen(path) == pytest.approx([118, 118, 118], abs=1)


def test_a_profile_for_another_kind_of_colour_is_ignored(tmp_path: Path) -> None:
    plain("L", 46).save(tmp_path / "a.png", icc_profile=profile(1.0))
    assert seen(tmp_path / "a.png") == [46, 46, 46]


def test_the_profile_of_srgb_changes_nothing(tmp_path: Path) -> None:
    srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    same = saved(tmp_path / "srgb.png", grain(), icc_profile=srgb)
    assert np.array_equal(Photo.read(same, 1).pixels, grain())


def test_a_profile_that_is_junk_is_ignored(tmp_path: Path) -> None:
    path = saved(tmp_path / "a.png", grain(), icc_profile=b"no profile at all")
    assert np.array_equal(Photo.read(path, 1).pixels, grain())
