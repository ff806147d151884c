# SPDX-License-Identifier: LGPL-2.1-or-later
"""A build-up drawn apart, its bill of materials, and what of it is refused."""

import csv
import io
import math

import pytest

from veneerwb.core import Top, VeneerError
from veneerwb.core.buildup import (
    Backer,
    Border,
    BuildUp,
    Core,
    Crossband,
    Disc,
    Lipping,
    Show,
    Star,
    Stringing,
    bill,
    bill_csv,
    write_bill,
)
from veneerwb.core.inventory import SQUARE_FOOT

ROUND, SQUARE = Top.round(1200.0), Top.polygon(4, 1200.0)


def build_up(**changed):
    """A panel with everything in it."""
    band = Crossband(1.5, "poplar")
    of = {
        "show": Show(0.6, "walnut, black"), "core": Core(18.0, "birch ply"),
        "backer": Backer(0.6, "walnut, black"), "crossband_above": band, "crossband_below": band,
        "lipping": Lipping(12.0, "walnut, black"), "stringing": Stringing(2.0, "maple, sugar"),
        "border": Border(60.0, "walnut, black", 8, "following"), "inlay": Disc(50.0),
    }  # fmt: skip
    return BuildUp(**of | changed)


def only(**parts):
    return BuildUp(Show(0.6), Core(18.0), **parts)


# --- exploded, bill ----------------------------------------------------------------------------


def test_exploded_the_core_stays_and_nothing_crosses():
    panel = build_up()
    lifted = panel.exploded(30.0)
    assert lifted["core"] == 0.0 and lifted["backer"] == -60.0
    assert set(lifted) == {part.item for part in panel.parts(ROUND)}
    flat = only(inlay=Disc(50.0))
    assert flat.exploded(10.0) == {"core": 0.0, "field": 10.0, "inlay": 20.0}


def test_the_bill_adds_up():
    panel = build_up()
    rows = {row.item: row for row in bill(panel.parts(ROUND))}
    border = rows["border"]
    assert border.count == 8 and border.thickness == pytest.approx(0.6)
    assert border.area_m2 == pytest.approx(math.pi * (0.6**2 - 0.54**2), rel=1e-12)
    assert border.length == pytest.approx(2 * 600.0 * math.sin(math.pi / 8))
    assert border.width == pytest.approx(600.0 - 540.0 * math.cos(math.pi / 8))
    assert border.area_sq_ft == pytest.approx(border.area_m2 / SQUARE_FOOT)
    assert rows["core"].volume_m3 == pytest.approx(math.pi * 0.588**2 * 0.018, rel=1e-12)
    assert (rows["core"].length, rows["core"].width) == pytest.approx((1176.0, 1176.0))
    assert rows["stringing line"].length == pytest.approx(math.tau * 540.0)
    assert rows["stringing line"].width == 2.0
    total = math.fsum(row.volume_m3 for row in rows.values())
    assert total == pytest.approx(math.pi * 0.6**2 * 0.0222, rel=1e-9)


def test_strips_of_two_sizes_have_two_rows():
    rows = bill(only(border=Border(90.0, kind="straight")).parts(SQUARE))
    found = [(r.count, round(r.length, 6)) for r in rows if r.item == "border"]
    assert found == [(2, 1200.0), (2, 1020.0)]


def test_the_bill_as_csv_is_read_back_and_holds_no_formula(tmp_path):
    panel = build_up(
        core=Core(18.0, "=1+1"), backer=Backer(0.6, "@x"), stringing=Stringing(2.0, "+s"),
        border=Border(60.0, "-a,b", 8, "following"),
    )  # fmt: skip
    rows = bill(panel.parts(ROUND))
    write_bill(rows, ROUND.name, tmp_path / "bill.csv")
    text = (tmp_path / "bill.csv").read_text("utf-8")
    assert text == bill_csv(rows, ROUND.name)
    table = list(csv.reader(io.StringIO(text)))
    assert all(not cell.startswith(("=", "+", "-", "@")) for line in table for cell in line)
    at = next(n for n, line in enumerate(table) if line[:1] == ["item"])
    body = [dict(zip(table[at], line)) for line in table[at + 1:]]
    assert [line["count"] for line in body] == [str(row.count) for row in rows]
    assert {line["item"]: line["material"] for line in body}["core"] == "'=1+1"
    for line, row in zip(body, rows):
        assert float(line["area m2"]) == pytest.approx(row.area_m2, abs=5e-4)
        assert float(line["volume m3"]) == pytest.approx(row.volume_m3, abs=1e-9)


# --- what is refused ---------------------------------------------------------------------------


@pytest.mark.parametrize(("make", "said"), [
    (lambda: Core(-3.0), "thickness of the core cannot be -3 mm; give from"),
    (lambda: Show(0.0), "thickness of the show veneer cannot be 0 mm"),
    (lambda: Crossband(math.nan), "thickness of the crossband cannot be"),
    (lambda: Stringing(0.0), "stringing line cannot be 0 mm; .* or leave the stringing line out"),
    (lambda: Border(-1.0), "width of the border cannot be -1 mm"),
    (lambda: Lipping("wide"), "width of the lipping cannot be 'wide'"),
    (lambda: Disc(0.0), "diameter of the inlay cannot be 0 mm; .* or leave the inlay out"),
    (lambda: Star(2, 50.0, 20.0), "points of the star cannot be 2; give a whole number from 3"),
    (lambda: Star(8, 50.0, 60.0), "has no hollows .* give less than 46.194 mm"),
    (lambda: Star(8, 50.0, -5.0), "inner radius of the star cannot be -5"),
    (lambda: Border(60.0, segments=0), "segments of the border cannot be 0; give a whole"),
    (lambda: Border(60.0, kind="round"), "choose one of: mitred, straight, following"),
    (lambda: Core(18.0, kind="ply"), "choose one of: sheet goods, solid wood"),
])  # fmt: skip
def test_a_part_that_cannot_be_is_refused(make, said):
    with pytest.raises(VeneerError, match=said):
        make()


@pytest.mark.parametrize(("panel", "top", "said"), [
    (only(border=Border(600.0, kind="following")), ROUND,
     "The border would take 600 mm from every side and leave nothing .* give at most 599.[34] mm"),
    (build_up(border=Border(598.0, "", 8, "following")), ROUND,
     "The border and the stringing line would take 600 mm"),
    (only(lipping=Lipping(2000.0)), SQUARE, "The lipping would take 2000 mm"),
    (only(inlay=Disc(1200.0)), SQUARE, "the field only 600 mm; give it a diameter less than 1200"),
    (build_up(inlay=Disc(1100.0)), ROUND, "reaches 550 mm .* a diameter less than 107[56]"),
    (only(inlay=Star(4, 700.0, 300.0, turn=0.0)), SQUARE, "give it an outer radius less than 600"),
    (only(border=Border(60.0)), ROUND, "The border has no corner to mitre on this top"),
    (only(border=Border(60.0, kind="straight")), ROUND, "border needs a top with straight sides"),
    (only(border=Border(290.0, kind="straight")), Top.polygon(8, 900.0),
     "straight border 290 mm wide cannot be made on this edge; make it at most 131.8 mm wide"),
])  # fmt: skip
def test_what_does_not_fit_is_said_in_one_sentence_with_what_would(panel, top, said):
    with pytest.raises(VeneerError, match=said) as raised:
        panel.parts(top)
    assert str(raised.value).count(". ") == 0 and str(raised.value).endswith(".")


def test_what_is_said_would_do_does():
    with pytest.raises(VeneerError) as raised:
        only(border=Border(700.0, kind="following")).parts(ROUND)
    most = raised.value.values["most"]
    assert only(border=Border(most, kind="following")).parts(ROUND)
    with pytest.raises(VeneerError) as raised:
        only(inlay=Disc(1300.0)).parts(ROUND)
    assert only(inlay=Disc(raised.value.values["most"] - 0.01)).parts(ROUND)
    with pytest.raises(VeneerError) as raised:
        only(border=Border(200.0, kind="straight")).parts(Top.polygon(8, 900.0))
    most = raised.value.values["most"]
    assert only(border=Border(most, kind="straight")).parts(Top.polygon(8, 900.0))
    with pytest.raises(VeneerError):
        only(border=Border(most + 0.1, kind="straight")).parts(Top.polygon(8, 900.0))


@pytest.mark.parametrize("width", [60.125, 12.345, 77.775])
def test_parts_that_differ_by_rounding_alone_share_a_row(width):
    panel = BuildUp(Show(0.6), Core(18.0), border=Border(width))
    rows = [row for row in bill(panel.parts(Top.polygon(8, 900.0))) if row.item == "border"]
    assert [row.count for row in rows] == [8]
