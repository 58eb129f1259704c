"""The usual start of a crop against what seed packets and extension calendars advise (common practice)."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.site import DayOfYear, Frost
from gardencanvas.season.usual_start import usual_start
from tests.garden.makers import MEANS, site

LAST_FROST = date(2027, 4, 28)  # of tests.garden.makers.site


def start(crop_id, where=None, **layout):
    return usual_start(where or site(), catalogue().crop(crop_id), **{"year": 2027, **layout})


@pytest.mark.parametrize("crop_id", ["tomato", "courgette", "pepper", "basil", "cucumber"])
def test_tender_crops_go_out_after_the_last_frost(crop_id):
    begun = start(crop_id)
    assert begun.kind == "raised"
    assert LAST_FROST < begun.on <= date(2027, 6, 30)


@pytest.mark.parametrize("crop_id", ["pea", "broad-bean", "onion", "carrot", "spinach", "radish"])
def test_hardy_crops_start_four_to_six_weeks_before_it(crop_id):
    assert 28 <= (LAST_FROST - start(crop_id).on).days <= 42


def test_warm_seeds_wait_for_warm_soil():
    """Beans are sown into warm soil, from mid-May in such a climate: not on the day of the last frost."""
    assert start("dwarf-bean").on >= date(2027, 5, 10)


def test_a_southern_year_begins_in_july():
    """Mirrored half a year: last frost on 28 October, the year from July."""
    south = site(
        latitude_deg=-52.0,
        frost=Frost(last=DayOfYear(month=10, day=28), first=DayOfYear(month=4, day=20)),
        climate={"mean_c": (*MEANS[6:], *MEANS[:6])},
    )
    begun = start("tomato", south, first_month=7)
    assert date(2027, 10, 28) < begun.on < date(2028, 1, 1)


def test_where_frost_never_comes_there_is_a_day_too():
    warm = site(frost=Frost(basis="none"), climate={"mean_c": tuple(m + 14 for m in MEANS)})
    begun = start("tomato", warm)
    assert date(2027, 1, 1) <= begun.on <= date(2027, 12, 31)


@pytest.mark.parametrize("first_month", range(1, 13))
def test_every_crop_starts_within_the_layouts_year(first_month):
    first = date(2027, first_month, 1)
    for crop in catalogue().crops[::7]:
        on = start(crop.id, first_month=first_month).on
        assert first <= on < date(2028, first_month, 1)
        assert start(crop.id, first_month=first_month).kind == crop.starts[0]
