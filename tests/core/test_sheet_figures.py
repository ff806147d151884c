# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawn figures of a sheet, read back from their SVG."""

import math
import re
from xml.etree import ElementTree

import pytest
from shapely import affinity
from shapely.geometry import LineString, box

from veneerwb.core import Stock, Top, radial
from veneerwb.core.shop.drawing.drawn import (
    Drawing,
)
from veneerwb.core.shop.drawing.lettering import width
from veneerwb.core.shop.drawing.svg import CAPITAL
from veneerwb.core.shop.one_sheet.sheet import Facts, sheet
from veneerwb.core.shop.wedge import kinds

SVG = "{http://www.w3.org/2000/svg}"
STOCK = Stock(4000.0, 4000.0, 64, 0.6)


class Read:
    """An SVG of ours: its texts with the rectangles they fill, and its lines, in mm, y down."""

    def __init__(self, svg):
        root = ElementTree.fromstring(svg)
        self.wide, self.high = (float(root.get(k)[:-2]) for k in ("width", "height"))
        (group,) = root
        moved = re.match(r"translate\(([-\d.]+) 0\) scale\(0.01\)", group.get("transform"))
        self.shift = float(moved[1])
        self.texts = [(t.text, self.letters(t)) for t in group.iter(SVG + "text")]
        self.lines = [
            LineString(self.points(p.get("d")))
            for p in group.iter(SVG + "path")
            if p.get("fill") == "none"
        ]
        self.heads = [
            LineString(self.points(p.get("d").removesuffix(" Z")))
            for p in group.iter(SVG + "path")
            if p.get("fill") != "none"
        ]

    def letters(self, text):
        height = float(text.get("font-size")) * CAPITAL / 100.0
        wide = width(text.text, height)
        x, y = (float(text.get(k)) / 100.0 for k in ("x", "y"))
        left = x - {"start": 0.0, "middle": 0.5, "end": 1.0}[text.get("text-anchor")] * wide
        area = box(left, y - height, left + wide, y)
        turned = re.match(r"rotate\(([-\d.]+)", text.get("transform") or "rotate(0")
        area = affinity.rotate(area, float(turned[1]), origin=(x, y))
        return affinity.translate(area, self.shift)

    def points(self, path):
        found = []
        for kind, numbers in re.findall(r"([MLA])([-\d. ]+)", path):
            values = [float(n) / 100.0 for n in numbers.split()]
            if kind == "A":
                found += bent(found[-1], values[-2:], values[0], numbers.split()[4] == "1")
            else:
                found.append(tuple(values))
        return [(x + self.shift, y) for x, y in found]


def bent(start, end, radius, clockwise):
    """Points of the smaller arc after `start`, y down."""
    (ax, ay), (bx, by) = start, end
    half = math.dist(start, end) / 2.0
    up = math.sqrt(max(radius**2 - half**2, 0.0)) / (2.0 * half)
    side = 1.0 if clockwise else -1.0
    cx, cy = (ax + bx) / 2.0 - side * up * (by - ay), (ay + by) / 2.0 + side * up * (bx - ax)
    first, last = (math.atan2(y - cy, x - cx) for x, y in (start, end))
    turn = math.remainder(last - first, 2.0 * math.pi)
    if abs(turn) > 3.14:
        turn = math.pi if clockwise else -math.pi
    angles = [first + turn * k / 24.0 for k in range(1, 25)]
    return [(cx + radius * math.cos(a), cy + radius * math.sin(a)) for a in angles]


def figure(role, ways, top, **options):
    turn = "slip" if ways % 2 else "book"
    layout = radial(STOCK, top, ways, turn=turn, **options)
    return layout, Read(sheet(layout, Facts("Top")).figures[role].svg)


ROUND = {d: Top.round(d) for d in (300.0, 1200.0, 3000.0)}
TOPS = [*ROUND.values(), Top.polygon(6, 900.0), Top.polygon(5, 700.0), Top.polygon(8, 2400.0)]
WAYS = [3, 4, 6, 8, 12, 16, 24, 36, 48, 64]


@pytest.mark.parametrize("ways", WAYS)
@pytest.mark.parametrize("top", TOPS, ids=lambda top: top.name)
@pytest.mark.parametrize(("oversize", "rim"), [(0.0, "arc"), (15.0, "arc"), (15.0, "straight")])
def test_nothing_is_cut_off_and_no_line_runs_through_a_text(top, ways, oversize, rim):
    turn = "slip" if ways % 2 else "book"
    layout = radial(STOCK, top, ways, turn=turn, oversize=oversize, rim=rim)
    made = sheet(layout, Facts("Top")).figures
    for role in ("plan", "wedge", "set-out", "title block"):
        assert_clean(Read(made[role].svg))


def assert_clean(read):
    page = box(0.0, 0.0, read.wide, read.high)
    inner = [(text, area.buffer(-0.15)) for text, area in read.texts]
    for text, area in inner:
        assert page.contains(area), text
    for line in (*read.lines, *read.heads):
        assert page.buffer(0.3).contains(line)
        for text, area in inner:
            assert not line.intersects(area), (text, list(line.coords)[:2])
    for k, (text, area) in enumerate(inner):
        for other, another in inner[k + 1 :]:
            assert not area.intersects(another), (text, other)


def dashed(svg):
    found = ElementTree.fromstring(svg).iter(SVG + "path")
    return [p for p in found if (p.get("stroke-dasharray") or "").count(",") == 1]


@pytest.mark.parametrize(
    ("options", "shown"), [({}, 0), ({"oversize": 5.0}, 3), ({"rim": "straight"}, 3)], ids=str
)
def test_the_blank_is_dashed_wherever_it_differs_from_the_piece(options, shown):
    layout = radial(STOCK, ROUND[1200.0], 12, **options)
    assert len(dashed(sheet(layout, Facts()).figures["wedge"].svg)) == shown


@pytest.mark.parametrize("ways", [16, 12, 24])
def test_the_wedges_dimensions_are_the_models(ways):
    layout, read = figure("wedge", ways, ROUND[1200.0], oversize=10.0)
    half = math.pi / ways
    expected = [
        f"{600.0:.1f}",
        f"{1200.0 * math.sin(half):.1f}",
        f"rise {600.0 * (1.0 - math.cos(half)):.1f}",
        "oversize 10.0",
        f"{360.0 / ways:g}\N{DEGREE SIGN}",
        "grain",
    ]
    assert sorted(text for text, _ in read.texts) == sorted(expected)


def test_a_wedge_with_unlike_sides_shows_both():
    layout, read = figure("wedge", 16, Top.polygon(6, 900.0))
    one = kinds(layout.pieces)[0]
    said = [text for text, _ in read.texts]
    assert {f"{side:.1f}" for side in one.sides} <= set(said)
    assert len({f"{side:.1f}" for side in one.sides}) == 2


@pytest.mark.parametrize(
    ("top", "size"), [(ROUND[300.0], ["300.0"]), (Top.polygon(4, 800.0), ["800.0"] * 2)]
)
def test_the_plan_gives_the_tops_size(top, size):
    _, read = figure("plan", 4, top)
    said = [text.split()[-1] for text, _ in read.texts]
    assert sorted(said) == sorted([*size, "1", "2", "3", "4"])


@pytest.mark.parametrize("ways", [12, 64])
def test_the_plan_underlines_the_turned_and_counts_counter_clockwise(ways):
    layout, read = figure("plan", ways, ROUND[1200.0])
    numbers = {text: area for text, area in read.texts if text.isdigit()}
    assert sorted(map(int, numbers)) == list(range(1, ways + 1))
    rims = [line for line in read.lines if len(line.coords) > 40]
    x, y = max(rims, key=lambda line: line.length).convex_hull.centroid.coords[0]
    middles = {int(text): area.centroid for text, area in numbers.items()}
    turns = {k: math.degrees(math.atan2(y - c.y, c.x - x)) for k, c in middles.items()}
    for piece in layout.pieces:
        axis = 90.0 + (piece.position - 1) * 360.0 / ways
        assert abs(math.remainder(turns[piece.position] - axis, 360.0)) < 1.0
        area = numbers[str(piece.position)]
        below = affinity.translate(area.centroid, 0.0, 0.75 * (area.bounds[3] - area.bounds[1]))
        underlined = any(line.distance(below) < 0.05 and line.length < 5.0 for line in read.lines)
        assert underlined == piece.turned


def test_the_plan_is_to_scale():
    layout = radial(STOCK, ROUND[1200.0], 12)
    made = sheet(layout, Facts())
    read = Read(made.figures["plan"].svg)
    rim = max((line for line in read.lines if len(line.coords) > 40), key=lambda line: line.length)
    x0, _, x1, _ = rim.bounds
    assert str(made.scale) == "1:10"
    assert x1 - x0 == pytest.approx(120.0, abs=0.02)


def test_a_dimension_without_room_points_inwards_and_stands_outside():
    wide, tight = Drawing(60.0, 40.0), Drawing(60.0, 40.0)
    wide.distance((10.0, 20.0), (40.0, 20.0), "30.0", 8.0)
    tight.distance((10.0, 20.0), (12.0, 20.0), "2.0", 8.0)
    (_, inside), (_, outside) = Read(wide.svg()).texts[0], Read(tight.svg()).texts[0]
    assert inside.bounds[0] > 10.0 and inside.bounds[2] < 40.0
    assert outside.bounds[0] > 12.0
    tips = [head.coords[0][0] for head in Read(tight.svg()).heads]
    backs = [head.coords[1][0] for head in Read(tight.svg()).heads]
    assert tips == pytest.approx([10.0, 12.0]) and backs[0] < 10.0 and backs[1] > 12.0


def test_text_turns_to_be_read_from_below_or_from_the_right():
    for b, turn in (((40.0, 20.0), 0.0), ((10.0, 50.0), 90.0), ((10.0, -10.0), 90.0)):
        drawing = Drawing(60.0, 60.0)
        drawing.distance((10.0, 20.0), b, "30.0", 5.0)
        found = re.search(r"rotate\((-?[\d.]+)", drawing.svg().replace("translate", ""))
        assert float(found[1] if found else 0.0) == pytest.approx(-turn)
