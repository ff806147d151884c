# SPDX-License-Identifier: LGPL-2.1-or-later
"""Picture files made to break what reads them: pixels or one sentence, within bounds of time and
memory, whichever way the product takes to the file."""

import io
import os
import resource
import struct
import subprocess
import sys
import textwrap
import time
import zlib
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from PIL import Image

from veneerwb.core import Bundle, VeneerError
from veneerwb.core.photos.decode import decoded, glimpse, sha256_of
from veneerwb.core.photos.preparing import Preparation, prepared
from veneerwb.core.photos.reading import Photo, photo_files, working_copy

ROOT = Path(__file__).parents[2]
KINDS = {  # suffix: (Pillow's format, its modes)
    ".png": ("PNG", ("1", "L", "LA", "P", "RGB", "RGBA", "I", "I;16")),
    ".jpg": ("JPEG", ("L", "RGB", "CMYK")),
    ".tif": ("TIFF", ("1", "L", "LA", "P", "PA", "RGB", "RGBA", "CMYK", "LAB", "I",
                      "I;16", "F")),
    ".bmp": ("BMP", ("1", "L", "P", "RGB", "RGBA")),
    ".webp": ("WEBP", ("RGB", "RGBA")),
}  # fmt: skip
EACH = [(suffix, mode) for suffix, (_, modes) in KINDS.items() for mode in modes]


@cache
def picture(suffix, mode):
    """A sound file of 24 x 16 pixels."""
    colours = np.random.default_rng(1).integers(0, 256, (16, 24, 3), np.uint8)
    image = Image.fromarray(colours)
    if mode in ("I", "F", "I;16"):
        image = Image.fromarray(colours[..., 0].astype({"I": "i4", "F": "f4", "I;16": "u2"}[mode]))
    elif mode == "LAB":
        image = Image.frombytes("LAB", image.size, colours.tobytes())
    elif mode == "PA":
        image = image.convert("P").convert("PA")
    else:
        image = image.convert(mode)
    assert image.mode == mode
    more = {"exif": EXIF} if suffix in (".jpg", ".webp") else {}
    stream = io.BytesIO()
    image.save(stream, KINDS[suffix][0], **more)
    return stream.getvalue()


def exif(value, kind=3, count=1):
    """EXIF whose orientation (tag 0x0112, a short by the standard) is written as something else."""
    entry = struct.pack(">HHI", 0x0112, kind, count) + value
    return b"Exif\0\0MM\0*" + struct.pack(">IH", 8, 1) + entry + bytes(4)


EXIF = exif(struct.pack(">HH", 6, 0))


def pixels_or_a_sentence(path):
    """What becomes of a file: upright pixels, or the code of a refusal in one sentence."""
    began = time.monotonic()
    try:
        pixels, _ = decoded(Path(path))
    except VeneerError as error:
        said = str(error)
        assert "\n" not in said and said.endswith(".") and Path(path).name in said
        return error.code
    finally:
        assert time.monotonic() - began < 10.0
    assert pixels.dtype == np.uint8 and pixels.ndim == 3 and pixels.shape[2] == 3
    return pixels


@pytest.fixture(scope="module")
def box(tmp_path_factory):
    """A folder for all examples of a test."""
    return tmp_path_factory.mktemp("hostile")


# --- bytes turned over --------------------------------------------------------------------------

EDITS = st.lists(
    st.tuples(st.floats(0.0, 1.0), st.one_of(st.binary(min_size=1, max_size=4), st.sampled_from([
        b"\xff\xff\xff\xff", b"\x7f\xff\xff\xff", b"\x80\0\0\0", b"\0\0\0\0", b"\0\0\0\x01",
        b"\xff\xff\xff\x7f", b"\xff\xda",
    ]))), max_size=6,
)  # fmt: skip


@settings(max_examples=700)
@given(st.sampled_from(EACH), EDITS, st.floats(0.0, 1.0), st.booleans())
@example((".png", "RGB"), [], 0.0, False)
@example((".bmp", "P"), [(30 / 1500, b"\x01\0\0\0")], 1.0, False)
def test_files_with_bytes_turned_over_and_cut_short(box, kind, edits, kept, cut):
    data = bytearray(picture(*kind))
    for where, new in edits:
        at = int(where * len(data)) if where < 0.5 else int((where - 0.5) * 256)  # or in the head
        data[at : at + len(new)] = new
    path = box / f"leaf{kind[0]}"
    path.write_bytes(data[: int(kept * len(data))] if cut else data)
    pixels_or_a_sentence(path)


@settings(max_examples=100)
@given(st.sampled_from(sorted(KINDS)), st.sampled_from([
    b"", b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff", b"II*\0", b"MM\0*", b"II+\0\x08\0\0\0", b"BM",
    b"RIFF\xff\xff\xff\xffWEBPVP8X", b"%!PS-Adobe-3.0 EPSF-3.0\n", b"GIF89a", b"<svg>", b"\x00\x00",
    b"leaf 1\n",
]), st.binary(max_size=300))  # fmt: skip
def test_files_of_junk_behind_any_beginning(box, suffix, head, rest):
    path = box / f"junk{suffix}"
    path.write_bytes(head + rest)
    assert isinstance(pixels_or_a_sentence(path), str)


@pytest.mark.parametrize("suffix, mode", EACH)
def test_every_mode_is_read_whole_and_refused_halved(box, suffix, mode):
    path = box / f"whole{suffix}"
    path.write_bytes(picture(suffix, mode))
    shape = pixels_or_a_sentence(path).shape
    assert shape in ((16, 24, 3), (24, 16, 3))
    path.write_bytes(picture(suffix, mode)[: len(picture(suffix, mode)) // 2])
    assert pixels_or_a_sentence(path) in ("photo-damaged", "not-a-photo")


def test_what_is_no_photograph_is_not_opened_by_any_other_reader(box):
    """Only five readers are let near a file: that of EPS, say, would run a program."""
    path = box / "eps.jpg"
    Image.new("RGB", (8, 8)).save(path, "EPS")
    assert pixels_or_a_sentence(path) == "not-a-photo"
    for format in ("GIF", "PPM", "ICO", "TGA", "SGI", "PCX", "JPEG2000", "DDS", "MSP", "IM"):
        try:
            Image.new("1" if format == "MSP" else "RGB", (8, 8)).save(path, format)
        except (KeyError, OSError):  # Pillow here cannot write it
            continue
        assert pixels_or_a_sentence(path) == "not-a-photo", format


# --- what the camera says -----------------------------------------------------------------------


@pytest.mark.parametrize("said", [
    exif(struct.pack(">HH", 0, 0)), exif(struct.pack(">HH", 9, 0)),
    exif(struct.pack(">HH", 65535, 0)), exif(struct.pack(">i", -6), kind=9),
    exif(struct.pack(">f", float("nan")), kind=11), exif(b"six\0", kind=2, count=4),
    exif(struct.pack(">I", 0xFFFFFFF0), kind=5), exif(bytes(4), kind=99),
    exif(struct.pack(">I", 8), kind=3, count=0x7FFFFFFF), exif(b"\0\6\0\0", count=0),
    b"Exif\0\0MM\0*" + struct.pack(">I", 8) + b"\xff\xff" * 40, b"Exif\0\0",
    b"Exif\0\0II*\0" + struct.pack("<IH", 8, 1) + bytes(12) + struct.pack("<I", 8),
], ids=lambda said: "nonsense")  # fmt: skip
@pytest.mark.parametrize("suffix", [".jpg", ".webp"])
def test_nonsense_about_the_cameras_turn_leaves_the_picture_as_it_is(box, suffix, said):
    path = box / f"turned{suffix}"
    image = Image.fromarray(np.zeros((16, 24, 3), np.uint8))
    image.save(path, exif=said)
    assert pixels_or_a_sentence(path).shape == (16, 24, 3)


@pytest.mark.parametrize("turn", range(1, 9))
def test_a_true_turn_is_heeded(box, turn):
    path = box / "turned.jpg"
    path.write_bytes(b"")
    said = exif(struct.pack(">HH", turn, 0))
    Image.fromarray(np.zeros((16, 24, 3), np.uint8)).save(path, exif=said)
    assert pixels_or_a_sentence(path).shape == ((16, 24, 3) if turn < 5 else (24, 16, 3))


# --- headers and bombs --------------------------------------------------------------------------


def png(width, height, depth=8, colour=2, data=b"", method=0, lace=0):
    def chunk(name, body):
        return struct.pack(">I", len(body)) + name + body + struct.pack(
            ">I", zlib.crc32(name + body)
        )

    head = struct.pack(">IIBBBBB", width, height, depth, colour, 0, method, lace)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head)
            + (chunk(b"PLTE", bytes(768)) if colour == 3 else b"")
            + chunk(b"IDAT", zlib.compress(data)) + chunk(b"IEND", b""))  # fmt: skip


def bmp(width, height, bits=24, compression=0, data=b""):
    head = struct.pack("<IiiHHIIiiII", 40, width, height, 1, bits, compression, len(data), 0, 0,
                       256 if bits == 8 else 0, 0)  # fmt: skip
    table = bytes(1024) if bits == 8 else b""
    offset = 14 + len(head) + len(table)
    return struct.pack("<2sIHHI", b"BM", offset + len(data), 0, 0, offset) + head + table + data


def tiff(width, height, bits=8, samples=3, compression=1, rows=None, kind=4):
    tags = {256: width, 257: height, 258: bits, 259: compression, 262: 2 if samples == 3 else 1,
            273: 8, 277: samples, 278: height if rows is None else rows, 279: 16}  # fmt: skip
    entries = b"".join(struct.pack("<HHIi", tag, kind, 1, tags[tag]) for tag in sorted(tags))
    return b"II*\0" + struct.pack("<I", 24) + bytes(16) + struct.pack(
        "<H", len(tags)
    ) + entries + bytes(4)


def webp(width, height):
    """A lossless one, whose head says its size in twice 14 bits."""
    stream = io.BytesIO()
    Image.new("RGB", (4, 4), "red").save(stream, "WEBP", lossless=True, method=0)
    data = bytearray(stream.getvalue())
    at = data.index(b"VP8L") + 9
    bits = struct.unpack("<I", data[at : at + 4])[0] >> 28 << 28
    data[at : at + 4] = struct.pack("<I", bits | (width - 1) | (height - 1) << 14)
    return bytes(data)


def jpeg(width, height):
    stream = io.BytesIO()
    Image.new("RGB", (16, 16), "red").save(stream, "JPEG")
    data = bytearray(stream.getvalue())
    at = data.index(b"\xff\xc0") + 5
    data[at : at + 4] = struct.pack(">HH", height, width)
    return bytes(data)


SIZES = st.sampled_from(
    [0, 1, 2, 3, 255, 256, 16383, 65535, 65536, 500_000, 2**31 - 1, 2**31]
)


@settings(max_examples=150)
@given(SIZES, SIZES, st.integers(0, 33), st.integers(0, 7), st.integers(0, 4))
@example(2, 2**31 - 1, 8, 2, 0)
def test_headers_that_promise_anything(box, width, height, depth, colour, what):
    signed = min(width, 2**31 - 1), min(height, 2**31 - 1)
    suffix, data = [
        (".png", png(width, height, depth, colour)),
        (".bmp", bmp(signed[0], -signed[1] if depth % 2 else signed[1], (8, 24, depth)[depth % 3],
                     colour)),
        (".tif", tiff(*signed, depth, 1 + colour, (1, 5, 8, 32773, 7, 50000)[depth % 6])),
        (".webp", webp(*(min(max(one, 1), 16383) for one in (width, height)))),
        (".jpg", jpeg(min(width, 65535), min(height, 65535))),
    ][what]  # fmt: skip
    path = box / f"promised{suffix}"
    path.write_bytes(data)
    found = pixels_or_a_sentence(path)
    # Of one colour all over, a WebP has no more bytes for more pixels: that one keeps its promise.
    assert suffix == ".webp" or width * height <= 300**2 or isinstance(found, str)


BOMBS = {
    "jump.bmp": lambda: bmp(70_000_000, 2, 8, 1, b"\0\2\xff\xff" * 8),
    "jumps.bmp": lambda: bmp(30_000, 5_000, 8, 1, b"\0\2\0\1" * 2000),
    "wide.webp": lambda: webp(16383, 9000),
    "scans.jpg": lambda: scanned(2000),
    "colour.jpg": lambda: one_colour_again(3000),
    "text.png": lambda: texts(),
}


def scanned(times, side=1200):
    """A progressive JPEG whose last scan comes again and again."""
    stream = io.BytesIO()
    Image.new("RGB", (side, side), "red").save(stream, "JPEG", progressive=True)
    data = stream.getvalue()
    last = data.rindex(b"\xff\xda")
    return data[:last] + data[last:-2] * times + b"\xff\xd9"


def one_colour_again(times):
    """A JPEG that is not progressive, its colours stored apart, the first of them many times."""
    data = jpeg(4000, 3000)
    scan = b"\xff\xda\0\x08\1%c%c\0\x3f\0\0"
    scans = scan % (1, 0) * times + scan % (2, 0x11) + scan % (3, 0x11)
    return data[: data.index(b"\xff\xda")] + scans + b"\xff\xd9"


def texts():
    """A PNG whose remark is small, and unfolds to 200 MB."""
    folded = b"Comment\0\0" + zlib.compress(bytes(200_000_000), 9)
    chunk = b"zTXt" + folded
    body = png(16, 16, data=bytes(16 * 49))
    return (body[:33] + struct.pack(">I", len(folded)) + chunk
            + struct.pack(">I", zlib.crc32(chunk)) + body[33:])  # fmt: skip


@pytest.mark.parametrize("name", BOMBS)
def test_small_files_that_unfold_without_end_are_refused_at_once(box, name):
    path = box / name
    path.write_bytes(BOMBS[name]())
    began, before = time.monotonic(), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    assert pixels_or_a_sentence(path) in ("photo-damaged", "photo-packed", "photo-too-large")
    assert time.monotonic() - began < 5.0
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 400_000  # kB


def test_a_progressive_photograph_as_cameras_write_them_is_read(box):
    path = box / "progressive.jpg"
    path.write_bytes(scanned(12))
    assert pixels_or_a_sentence(path).shape == (1200, 1200, 3)


def test_a_film_behind_a_photograph_and_pictures_in_its_remarks_are_no_scans(box):
    path, many = box / "with-film.jpg", b"\xff\xda" * 3000
    Image.new("RGB", (1200, 1200), "red").save(path, "JPEG", comment=many)
    path.write_bytes(path.read_bytes() + many)
    assert pixels_or_a_sentence(path).shape == (1200, 1200, 3)


@pytest.mark.parametrize("name", ["scans.jpg", "colour.jpg"])
def test_a_glance_at_a_file_without_end_is_refused_as_well(box, name):
    path = box / name
    path.write_bytes(BOMBS[name]())
    with pytest.raises(VeneerError, match="is damaged"):
        glimpse(path, 10, 10)


def test_the_largest_photographs_take_less_than_two_gigabytes(tmp_path):
    """By what 20 megapixels take, in a process whose memory is bounded to what 150 may take."""
    size = (5000, 4000)
    Image.new("F", size, 0.5).save(tmp_path / "1.tif", compression="tiff_adobe_deflate")
    Image.new("RGBA", size, (9, 9, 9, 128)).save(tmp_path / "2.png", compress_level=1)
    Image.new("RGB", size, "tan").save(tmp_path / "3.jpg")
    body = """
        import resource, sys
        sys.path.insert(0, sys.argv[1])
        from pathlib import Path
        from veneerwb.core.photos.decode import decoded
        most = lambda: resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024
        for name in sys.argv[2:]:
            decoded(Path(sys.argv[2]).parent / "small.png")
            before = most()
            decoded(Path(name))
            print((most() - before) / 20e6)
    """
    Image.new("RGB", (8, 8)).save(tmp_path / "small.png")
    for name in ("1.tif", "2.png", "3.jpg"):
        told = subprocess.run(
            [sys.executable, "-c", textwrap.dedent(body), str(ROOT), str(tmp_path / name)],
            capture_output=True, text=True, timeout=60, check=True,
        )  # fmt: skip
        assert float(told.stdout) < 12.0, name  # bytes a pixel: 150 million of them are 1.8 GB


# --- what is no file ----------------------------------------------------------------------------


@pytest.fixture
def strange(tmp_path):
    """Things in a folder that are called like photographs."""
    (tmp_path / "folder1.jpg").mkdir()
    os.mkfifo(tmp_path / "pipe2.jpg")
    (tmp_path / "zero3.jpg").symlink_to("/dev/zero")
    (tmp_path / "loop4.jpg").symlink_to("loop4.jpg")
    (tmp_path / "nowhere5.jpg").symlink_to("gone.jpg")
    (tmp_path / "text6.jpg").write_text("A leaf.\n" * 50)
    (tmp_path / "empty7.jpg").write_bytes(b"")
    with open(tmp_path / "sparse8.png", "wb") as file:
        file.write(png(64, 64))
        file.truncate(3 << 30)
    (tmp_path / "half9.png").write_bytes(picture(".png", "RGB")[:200])
    return [*sorted(tmp_path.iterdir()), tmp_path / "nul\0.jpg", tmp_path / ("long" * 100 + ".jpg"),
            Path("/proc/self/mem"), Path("/dev/full"), tmp_path]  # fmt: skip


WAYS = {
    "photo": lambda path: Photo.read(path, 0.5),
    "copy": lambda path: working_copy(path),
    "bundle": lambda path: Bundle.from_photos([path], mm_per_px=0.5, thickness=0.6),
    "prepared": lambda path: prepared([path], Preparation(mm_per_px=0.5)),
    "found": lambda path: prepared([path], Preparation(mm_per_px=0.5, find=True)),
}


@pytest.mark.parametrize("way", WAYS)
def test_what_is_no_photograph_is_refused_in_a_sentence_without_waiting(strange, way):
    for path in strange:
        began = time.monotonic()
        with pytest.raises(VeneerError) as caught:
            WAYS[way](path)
        assert "\n" not in str(caught.value) and time.monotonic() - began < 5.0, path


def test_a_folder_lists_only_files_and_links_to_them(strange, tmp_path):
    (tmp_path / "link10.jpg").symlink_to("text6.jpg")
    names = [path.name for path in photo_files(tmp_path)]
    assert names == ["empty7.jpg", "half9.png", "link10.jpg", "sparse8.png", "text6.jpg"]
    with pytest.raises(VeneerError):
        sha256_of(tmp_path / "sparse8.png")


def test_a_link_to_a_photograph_is_read(tmp_path):
    (tmp_path / "leaf.png").write_bytes(picture(".png", "RGB"))
    (tmp_path / "link.png").symlink_to("leaf.png")
    assert pixels_or_a_sentence(tmp_path / "link.png").shape == (16, 24, 3)
