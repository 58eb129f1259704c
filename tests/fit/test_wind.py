"""Wind: common practice stakes tall plants that stand by themselves, and none in a block or by a hedge."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.wind import stands_free
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Fixture, RingSupport
from tests.fit.makers import WIDE, judged, rows, spot
from tests.garden.makers import garden

ALONE = spot("tall", "sunflower", [(0.0, 0.0), (4.0, 0.0)], date(2027, 5, 15))


def open_to_wind(report):
    return [f for f in report.findings if f.code == "open to wind"]


def hedge(x, height_m=1.5, **changes):
    ring = ((x, -10.0), (x + 0.5, -10.0), (x + 0.5, 10.0), (x, 10.0))
    return Fixture(id="h", name="Hedge", kind="hedge", outline=ring, height_m=height_m, **changes)


def test_tall_annuals_by_themselves_stand_open_to_wind():
    (found,) = open_to_wind(judged(ALONE))
    assert found.verdict is Verdict.STRAINS
    assert found.numbers["stations"] == found.numbers["of"] == 2
    assert found.numbers["height_m"] == catalogue().resolve("sunflower").height_m.mid


def test_a_stake_holds_one_and_half_of_them_held_count_as_held():
    stake = RingSupport(id="s", kind="stake", name="stake", centre=(0.0, 0.0), radius_m=0.0, height_m=1.8)
    assert not open_to_wind(check(edits.add(garden(ALONE, beds=WIDE), "l1", [stake])))


def test_in_a_block_they_shelter_each_other():
    """Sweetcorn is set in blocks, for the wind and for its pollen."""
    assert not open_to_wind(judged(rows("tall", "sweetcorn", 2.0, 3, 0.4, 0.7, date(2027, 5, 15), "sown")))


@pytest.mark.parametrize(("fixture", "shelters"), [
    (hedge(8.0), True),
    (hedge(40.0), False),  # farther than ten times its height
    (hedge(8.0, 0.6), False),  # knee-high
    (hedge(8.0, 6.0, base_m=2.0), False),  # wind passes under the crown
])  # fmt: skip
def test_a_hedge_shelters_out_to_ten_times_its_height(fixture, shelters):
    assert bool(open_to_wind(judged(ALONE, fixtures=(fixture,)))) is not shelters


def test_low_crops_climbers_and_shrubs_are_none_of_its_business():
    known = catalogue()
    assert stands_free(known.resolve("sweetcorn"))
    for crop in ("lettuce", "climbing-bean", "blackcurrant", "rosemary", "leek"):
        assert not stands_free(known.resolve(crop)), crop
