"""Years are simulated only where the odds are in doubt: held against simulating them all."""

from datetime import date, timedelta

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Harvest
from gardencanvas.fit.outlook import outlook_of
from gardencanvas.fit.stands import grid
from gardencanvas.fit.thresholds import FROST_STRAINS, RIPENS_STRAINS
from gardencanvas.garden.planting import Start
from gardencanvas.season.course import Growing
from gardencanvas.season.growth import follow
from gardencanvas.season.windows import windows
from tests.fit.test_frost import SHORT
from tests.garden.makers import site

SEASON = date(2027, 1, 1), date(2027, 12, 31)
CLEARLY = 0.02  # either side of a limit the odds of 200 years say nothing


@pytest.mark.parametrize("where", [site(), SHORT], ids=["mild", "short summer"])
def test_where_no_year_is_simulated_the_odds_are_good(where):
    crops = [catalogue().resolve(c.id) for c in catalogue().crops[::3]]
    growing = [
        Growing(crop, Start(kind=crop.starts[0].value, on=date(2027, 2, 15) + timedelta(days=day)))
        for number, crop in enumerate(crops)
        for day in range(number % 20, 240, 20)
    ]
    course = follow(where, growing, grid(SEASON))
    simulated = 0
    for row, each in enumerate(growing):
        outlook = outlook_of(where, each, course, row, SEASON)
        if outlook.odds is not None:
            simulated += 1
        elif not outlook.lasting:
            (window,) = windows(where, [each], grid(SEASON))
            assert window.frost_after < FROST_STRAINS + CLEARLY, each
            if each.crop.harvest is not Harvest.NONE:
                assert window.ripens >= RIPENS_STRAINS - CLEARLY, each
    assert 0 < simulated < 0.7 * len(growing)
