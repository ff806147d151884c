# SPDX-License-Identifier: LGPL-2.1-or-later
"""Template files read back by general libraries: DXF by ezdxf, SVG by svgelements."""

from __future__ import annotations

import io
import math
import sys
import xml.etree.ElementTree as ElementTree

import pytest

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.matches.quarters import quarters
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.templates.arcs import TOLERANCE, vertices
from veneerwb.core.shop.templates.dxf import dxf, write_dxf
from veneerwb.core.shop.templates.make import StackCut, templates
from veneerwb.core.shop.templates.marks import AXIS, BARS, CUT, HOLES, NET, PINS, RIM, SEAM, TOOL
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.svg import svg, write_svg
from veneerwb.core.shop.templates.template import Pin

ezdxf = pytest.importorskip("ezdxf")
ezmath = pytest.importorskip("ezdxf.math")

STOCK = Stock(900.0, 3000.0, 64, 0.6)
NASTY = 'Table <1> & "best" %%d ^J \\U+0041 100 \N{LATIN SMALL LETTER AE}\u2190'
MM, INCH = 1.0, 25.4


def made():
    """Templates of every kind of segment, by name."""
    hole = Top.of_edges(
        Top.rectangle(1200.0, 800.0).edge, [[edges.Arc((150.0, 120.0), 60.0, 0.0, 360.0)]]
    )
    return {
        "round": templates(radial(STOCK, Top.round(1200.0), 12, oversize=10.0))[0],
        "round over": templates(
            radial(STOCK, Top.round(1200.0), 12, oversize=10.0), Over(angle=0.4), tool=3.2)[0],
        "oval cut": templates(radial(STOCK, Top.oval(1500.0, 900.0), 24, oversize=10.0))[0],
        "oval piece": templates(radial(STOCK, Top.oval(1500.0, 900.0), 24), Over(width=1.0))[3],
        "boat": templates(radial(STOCK, Top.boat(1800.0, 900.0, 500.0), 12, oversize=8.0),
                          singly=True)[2],
        "diamond with a hole": templates(quarters(STOCK, hole, "diamond", oversize=8.0),
                                         cuts=[StackCut((1, 2, 3, 4), "A", (
                                             Pin((100.0, 120.0), "A", 4.0),))], name=NASTY)[0],
    }  # fmt: skip


MADE = made()
every = pytest.mark.parametrize("name", MADE)


# --- DXF ----------------------------------------------------------------------------------------


def once(read):
    """What is read of one of MADE is read once."""
    known = {}

    def reading(template, *args):
        if not any(template is one for one in MADE.values()):
            return read(template, *args)
        key = (id(template), *args)
        if key not in known:
            known[key] = read(template, *args)
        return known[key]

    return reading


@once
def read_dxf(template, unit="mm"):
    data = dxf(template, unit)
    doc = ezdxf.read(io.StringIO(data.decode("cp1252")))
    return doc, doc.modelspace()


def on(space, layer):
    return [entity for entity in space if entity.dxf.layer == layer]


def texts_of(space):
    return [entity for entity in space if entity.dxftype() == "TEXT"]


def area_of(line):
    """By the library's own arcs: the polygon of the vertices and the segments of its bulges."""
    points = [tuple(map(float, p)) for p in line.get_points("xyb")]
    total = 0.0
    for (x, y, bulge), (u, v, _) in zip(points, [*points[1:], points[0]]):
        total += 0.5 * (x * v - u * y)
        if bulge:
            _, begin, end, radius = ezmath.bulge_to_arc((x, y), (u, v), bulge)
            turn = (end - begin) % (2.0 * math.pi)
            total += math.copysign(0.5 * radius**2 * (turn - math.sin(turn)), bulge)
    return total


@every
@pytest.mark.parametrize(("unit", "scale"), [("mm", MM), ("inch", INCH)])
def test_a_dxf_is_sound_closed_and_as_large_as_the_model(name, unit, scale):
    template = MADE[name]
    doc, space = read_dxf(template, unit)
    # The format's reference: AC1015 is release 2000; $INSUNITS 4 is mm, 1 is inches.
    assert doc.dxfversion == "AC1015"
    assert doc.header["$INSUNITS"] == {"mm": 4, "inch": 1}[unit]
    audit = doc.audit()
    assert not audit.errors and not audit.fixes
    (cut,) = on(space, CUT)
    assert cut.dxftype() == "LWPOLYLINE" and cut.closed and cut.dxf.flags & 1
    assert area_of(cut) * scale**2 == pytest.approx(template.area, rel=1e-6)
    nets = on(space, NET)
    assert len(nets) == len(template.nets) and all(net.closed for net in nets)
    for line, net in zip(nets, template.nets):
        assert area_of(line) * scale**2 == pytest.approx(edges.area(net), rel=1e-6)
    holes = on(space, HOLES)
    assert sum(map(area_of, holes)) * scale**2 == pytest.approx(
        sum(map(edges.area, template.holes)), rel=1e-6)
    tools = on(space, TOOL)
    assert len(tools) == bool(template.tool) and all(tool.closed for tool in tools)
    pins = on(space, PINS)
    assert [p.dxf.radius * scale for p in pins] == pytest.approx(
        [p.diameter / 2.0 for p in template.pins])


@every
def test_angles_in_a_dxf_are_the_model_s(name):
    template = MADE[name]
    _, space = read_dxf(template)
    (cut,) = on(space, CUT)
    points = [(p[0], p[1]) for p in cut.get_points("xy")]
    tip = min(points, key=lambda p: math.dist(p, template.tip_cut))
    k = points.index(tip)
    assert math.dist(tip, template.tip_cut) < 1e-6
    ways = [math.degrees(math.atan2(q[1] - tip[1], q[0] - tip[0]))
            for q in (points[(k + 1) % len(points)], points[k - 1])]
    assert (ways[1] - ways[0]) % 360.0 == pytest.approx(template.cut_angle, abs=1e-6)


# The format's reference: bulge = tan(angle / 4): 30 deg -> .131652, 45 deg -> .198912.
@pytest.mark.parametrize(("ways", "bulge"), [(12, 0.131652), (8, 0.198912)])
def test_the_rim_of_a_round_top_is_one_true_arc(ways, bulge):
    (template,) = templates(radial(STOCK, Top.round(1200.0), ways, oversize=10.0))
    _, space = read_dxf(template)
    (cut,) = on(space, CUT)
    points = list(cut.get_points("xyb"))
    (k,) = [k for k, p in enumerate(points) if p[2]]
    assert points[k][2] == pytest.approx(bulge, abs=5e-7)
    (x, y, b), (u, v, _) = points[k], points[(k + 1) % len(points)]
    centre, begin, end, radius = ezmath.bulge_to_arc((x, y), (u, v), b)
    assert radius == pytest.approx(610.0, abs=1e-9)
    assert math.hypot(centre.x, centre.y) < 1e-9
    assert math.degrees(end - begin) == pytest.approx(360.0 / ways, abs=1e-9)


@every
def test_curves_in_a_dxf_are_arcs_within_the_tolerance(name):
    """Measured at many points of every arc, by the library's own arcs."""
    template = MADE[name]
    fine = edges.polygon(template.cut, 1e-5).exterior
    from shapely.geometry import Point

    points = vertices(template.cut)
    for (x, y, bulge), (u, v, _) in zip(points, [*points[1:], points[0]]):
        places = [((x + u) / 2.0, (y + v) / 2.0)]
        if bulge:
            centre, begin, end, radius = ezmath.bulge_to_arc((x, y), (u, v), bulge)
            turns = (begin + s * ((end - begin) % (2.0 * math.pi)) for s in (0.1, 0.3, 0.5, 0.8))
            places = [(centre[0] + radius * math.cos(t), centre[1] + radius * math.sin(t))
                      for t in turns]
        assert max(fine.distance(Point(p)) for p in places) < TOLERANCE + 2e-5


@every
def test_a_dxf_has_its_bars_its_words_and_layers_that_are_off(name):
    template = MADE[name]
    doc, space = read_dxf(template)
    bars = [list(line.get_points("xy")) for line in on(space, BARS)]
    spans = [(abs(b[0] - a[0]), abs(b[1] - a[1])) for a, b in bars]
    assert (100.0, 0.0) in [tuple(round(v, 9) for v in s) for s in spans]
    assert (0.0, 100.0) in [tuple(round(v, 9) for v in s) for s in spans]
    said = " ".join(text.plain_text() for text in texts_of(space))
    for part in (template.revision, "100 mm", "TIP", "GRAIN", "Dry-lay before glue."):
        assert part in said, part
    assert "only CUT is cut along" in said and ("or TOOL by" in said) == bool(template.tool)
    assert ("arcs within 0.0001 mm" in said) == ("oval" in name)
    assert ("BACK UP" in said) == (template.up == "back")
    assert doc.layers.get(SEAM).is_off() and doc.layers.get(RIM).is_off()
    assert doc.layers.get(CUT).is_on()
    seams, rims = on(space, SEAM), on(space, RIM)
    assert seams and rims and not any(line.closed for line in (*seams, *rims))
    assert len(on(space, AXIS)) == 1
    layers = {entity.dxf.layer for entity in space}
    assert "0" not in layers and all(doc.layers.has_entry(layer) for layer in layers)


def test_labels_do_no_harm_in_a_dxf():
    template = MADE["diamond with a hole"]
    recover = pytest.importorskip("ezdxf.recover")  # decodes what the code page has no letter for
    doc, audit = recover.read(io.BytesIO(dxf(template)))
    assert not audit.errors
    space = doc.modelspace()
    said = " ".join(text.plain_text() for text in texts_of(space))
    assert '<1> & "best"' in said and "\N{LATIN SMALL LETTER AE}" in said and "\u2190" in said
    raw = [text.dxf.text for text in texts_of(space)]
    assert not any("%%" in text or "^J" in text or "\\U+0041" in text for text in raw)
    assert any("% %d ^ J" in text for text in raw)


# --- SVG ----------------------------------------------------------------------------------------

SVG = "{http://www.w3.org/2000/svg}"


@once
def written(template):
    return svg(template)


@once
def read_svg(template):
    """The library's paths by group, in units of the drawing (its own mm are off by 5e-7)."""
    library = pytest.importorskip("svgelements")
    root = library.SVG.parse(io.StringIO(written(template)), ppi=96.0)
    found, unit = {}, root.viewbox.width / root.width
    for group in root.select(lambda e: isinstance(e, library.Group) and e.id):
        found[group.id] = [
            library.Path(p) * f"scale({unit:.15f})" for p in group
            if isinstance(p, library.Path)
        ]
    return library, root, found


def area_in(path):
    """Green's theorem over polygons of each of the library's segments, of two finenesses: what they
    lack falls with the square of it."""
    return abs(math.fsum(
        (4.0 * swept(segment, 200) - swept(segment, 100)) / 3.0 for segment in path.segments()
        if type(segment).__name__ not in ("Move", "Close")
    ))


def swept(segment, count):
    count = 1 if type(segment).__name__ == "Line" else count
    points = [segment.point(k / count) for k in range(count + 1)]
    return sum(0.5 * (p.x * q.y - q.x * p.y) for p, q in zip(points, points[1:]))


@every
def test_an_svg_is_closed_and_as_large_as_the_model(name):
    template = MADE[name]
    library, _, groups = read_svg(template)
    (cut,) = groups[CUT]
    assert isinstance(cut.segments()[-1], library.Close)
    assert area_in(cut) == pytest.approx(template.area, rel=1e-6)
    assert [area_in(net) for net in groups[NET]] == pytest.approx(
        [edges.area(net) for net in template.nets], rel=1e-6)
    if template.holes:
        assert sum(map(area_in, groups[HOLES])) == pytest.approx(
            sum(map(abs, map(edges.area, template.holes))), rel=1e-6)


@every
def test_angles_and_arcs_in_an_svg_are_the_model_s(name):
    template = MADE[name]
    library, _, groups = read_svg(template)
    segments = [s for s in groups[CUT][0].segments() if not isinstance(s, library.Move)]
    kinds = {"Line": library.Line, "Arc": library.Arc, "Curve": library.CubicBezier,
             "EllipseArc": library.Arc}
    drawn = [s for s in segments if not isinstance(s, library.Close)]
    assert [type(s) for s in drawn] == [kinds[type(s).__name__] for s in template.cut]
    lines = [s for s in drawn if isinstance(s, library.Line)]
    ways = [math.degrees(math.atan2(-(s.end.y - s.start.y), s.end.x - s.start.x)) for s in lines]
    true = [math.degrees(math.atan2(s.b[1] - s.a[1], s.b[0] - s.a[0]))
            for s in template.cut if isinstance(s, edges.Line)]
    assert [math.remainder(a - b, 360.0) for a, b in zip(ways, true)] == pytest.approx(
        [0.0] * len(true), abs=1e-6)
    for found, segment in zip(drawn, template.cut):
        if isinstance(segment, edges.Arc):
            assert found.rx == pytest.approx(segment.radius, rel=1e-6)
            assert abs(math.degrees(found.sweep)) == pytest.approx(abs(segment.sweep), abs=1e-6)


@every
def test_an_svg_is_in_millimetres_with_its_bars_and_words(name):
    template = MADE[name]
    root = ElementTree.fromstring(written(template))
    wide, high = (root.get(key) for key in ("width", "height"))
    assert wide.endswith("mm") and high.endswith("mm")
    assert [float(v) for v in root.get("viewBox").split()] == [
        0.0, 0.0, float(wide[:-2]), float(high[:-2])]
    _, whole, groups = read_svg(template)
    assert float(whole.width) * 25.4 / 96.0 == pytest.approx(float(wide[:-2]))
    boxes = [path.bbox() for path in groups[BARS]]
    spans = [(round(b[2] - b[0], 6), round(b[3] - b[1], 6)) for b in boxes]
    assert (100.0, 0.0) in spans and (0.0, 100.0) in spans
    said = " ".join(text.text for text in root.iter(f"{SVG}text"))
    for part in (template.revision, "100 mm", "TIP", "Dry-lay before glue."):
        assert part in said, part
    hidden = [g.get("id") for g in root.iter(f"{SVG}g") if g.get("display") == "none"]
    assert hidden == [SEAM, RIM]
    for box in (path.bbox() for paths in groups.values() for path in paths):
        assert box[0] >= 0.0 and box[1] >= 0.0
        assert box[2] <= float(wide[:-2]) and box[3] <= float(high[:-2])


def test_labels_do_no_harm_in_an_svg():
    root = ElementTree.fromstring(svg(MADE["diamond with a hole"], Lengths("both")))
    said = " ".join(text.text for text in root.iter(f"{SVG}text"))
    assert 'Table <1> & "best" %%d ^J' in said
    assert {e.tag.removeprefix(SVG) for e in root.iter()} <= {
        "svg", "g", "title", "desc", "path", "text"}


# --- files --------------------------------------------------------------------------------------


@pytest.mark.parametrize("write", [write_dxf, write_svg])
def test_a_file_is_whole_or_the_old_one_stays(write, tmp_path):
    path = tmp_path / "cut"
    write(MADE["round"], path)
    before = path.read_bytes()
    assert len(before) > 2000
    with pytest.raises(VeneerError) as caught:
        write(MADE["round"], tmp_path / "nowhere" / "cut")
    assert caught.value.code == "cannot-write"
    assert path.read_bytes() == before and [p.name for p in tmp_path.iterdir()] == ["cut"]


def test_another_unit_is_refused():
    with pytest.raises(VeneerError) as caught:
        dxf(MADE["round"], "cm")
    assert caught.value.code == "unknown-choice"


def test_without_the_library_a_sentence_says_what_to_install(monkeypatch):
    monkeypatch.setitem(sys.modules, "ezdxf", None)
    with pytest.raises(VeneerError) as caught:
        dxf(MADE["round"])
    assert caught.value.code == "no-ezdxf" and "python3-ezdxf" in str(caught.value)
    assert svg(MADE["round"]).startswith("<?xml")
