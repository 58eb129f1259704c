"""Covers: common practice of when to take them off."""

from datetime import date, timedelta

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import Checker, check
from gardencanvas.fit.covering import needs_bees
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Cover
from tests.fit.makers import WIDE, rows
from tests.garden.makers import garden

CROPS = catalogue()


def under(planting, kind="mesh", height=0.5, **dates):
    x, y = planting.pattern.origin
    outline = ((x - 0.5, y - 0.5), (x + 4.0, y - 0.5), (x + 4.0, y + 2.0), (x - 0.5, y + 2.0))
    cover = Cover(id="cover", kind=kind, name=kind, outline=outline, height_m=height, **dates)
    report = check(edits.add(garden(planting, beds=WIDE), "l1", [cover]))
    return [f for f in report.findings if f.kind.value == "cover"]


CARROTS = rows("p", "carrot", 3.0, 3, 0.05, 0.25, date(2027, 4, 15), "sown")
KALE = rows("p", "kale", 3.0, 1, 0.45, 0.5, date(2027, 5, 1))


def test_carrots_stay_under_a_mesh_of_half_a_metre():
    """They grow to some 0.4 m (catalogue): that is what carrot-fly mesh is for."""
    assert under(CARROTS, height=0.5) == []


def test_kale_outgrows_a_low_tunnel_from_the_day_it_reaches_it_until_that_is_taken_off():
    (finding,) = under(KALE, height=0.4)
    assert (finding.code, finding.verdict) == ("outgrows cover", Verdict.STRAINS)
    assert date(2027, 5, 15) < finding.numbers["on"] < date(2027, 8, 1)
    later = [under(KALE, height=h)[0].numbers["on"] for h in (0.3, 0.4, 0.5)]
    assert later == sorted(later)
    off = finding.numbers["on"] - timedelta(days=1)
    assert under(KALE, height=0.4, last=off) == []
    assert under(KALE, height=2.5) == []


def test_plants_beside_a_cover_are_free():
    beside = rows("p", "kale", 3.0, 1, 0.45, 0.5, date(2027, 5, 1))
    outline = ((0.0, 1.0), (3.0, 1.0), (3.0, 2.0), (0.0, 2.0))
    cover = Cover(id="c", kind="mesh", name="c", outline=outline, height_m=0.2)
    report = check(edits.add(garden(beside, beds=WIDE), "l1", [cover]))
    assert report.findings == ()


NEED_BEES = [
    "courgette",
    "cucumber",
    "winter-squash",
    "melon",
    "strawberry",
    "runner-bean",
    "broad-bean",
    "raspberry",
]
SET_ALONE = [
    "tomato",
    "pepper",
    "pea",
    "dwarf-bean",
    "climbing-bean",
    "lettuce",
    "carrot",
    "sweetcorn",
    "white-clover",
    "grape",
]


@pytest.mark.parametrize("crop_id", NEED_BEES)
def test_gourds_soft_fruit_runner_and_broad_beans_need_bees(crop_id):
    assert needs_bees(CROPS.crop(crop_id))


@pytest.mark.parametrize("crop_id", SET_ALONE)
def test_what_sets_by_itself_or_by_wind_or_is_no_fruit_needs_none(crop_id):
    assert not needs_bees(CROPS.crop(crop_id))


COURGETTES = rows("p", "courgette", 3.0, 1, 0.9, 0.9, date(2027, 5, 25))


@pytest.mark.parametrize("kind", ["fleece", "mesh"])
def test_fleece_left_on_flowering_courgettes_keeps_the_bees_out(kind):
    """US extension: fleece left on at flowering means few fruits."""
    (finding,) = under(COURGETTES, kind, height=1.0)
    assert (finding.code, finding.verdict) == ("no bees", Verdict.STRAINS)
    harvest = check(garden(COURGETTES, beds=WIDE)).plantings["p"]
    assert finding.first < harvest.harvest_first < finding.last < harvest.harvest_last
    assert under(COURGETTES, kind, height=1.0, last=finding.first - timedelta(days=1)) == []


def test_a_frame_or_cloche_is_opened_as_a_matter_of_course():
    assert under(COURGETTES, "frame", height=1.0) == []


def test_a_cover_put_on_moved_and_taken_off_is_seen_at_once():
    made = garden(COURGETTES, beds=WIDE)
    outline = ((-0.5, -0.5), (4.0, -0.5), (4.0, 1.5), (-0.5, 1.5))
    cover = Cover(id="c", kind="mesh", name="c", outline=outline, height_m=0.3)
    on = edits.add(made, "l1", [cover])
    checker = Checker()
    for step in (made, on, edits.shift(on, "l1", ["c"], 20.0, 0.0), on, made):
        assert checker.update(step, "l1").same_as(check(step, "l1"))
    assert {f.code for f in check(on).findings} == {"outgrows cover", "no bees"}
