"""Sentences of remedies: they say exactly what will change, in the units that are set."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Variety
from gardencanvas.fit.checker import check
from gardencanvas.fit.report import Remedy, Verdict
from gardencanvas.garden.edits import rebuilt
from gardencanvas.planner.codes import Change
from gardencanvas.words.plain import THIN, Measure
from gardencanvas.words.remedies import REMEDIES, remedy_text
from tests.planner.gardens import LAYOUT, two_brassicas

VARIETY = Variety(id="small", crop="cabbage", name="small <b>round</b>")
GARDEN = rebuilt(two_brassicas(), varieties=(VARIETY,))
KNOWN = catalogue().with_own((), (VARIETY,))
FINDING = next(f for f in check(GARDEN, LAYOUT).findings if f.verdict >= Verdict.STRAINS)
CABBAGE, CAULIFLOWER = "cabbage", "cauliflower"
AWAY = {"distance_m": 0.06, "toward": "away", "other": CAULIFLOWER}
DAY = date(2027, 6, 14)


def said(code, planting=CABBAGE, measure=None, **numbers):
    assert FINDING.plantings[0] == CABBAGE
    remedy = Remedy(code, {"planting": planting, **numbers})
    return remedy_text(remedy, FINDING, GARDEN, LAYOUT, KNOWN, measure).replace(THIN, " ")


@pytest.mark.parametrize(
    ("sentence", "code", "numbers"),
    [
        ("Start 12 days earlier (16 March)", "start", {"days": -12, "on": date(2027, 3, 16)}),
        ("Start 1 day later (14 June)", "start", {"days": 1, "on": DAY}),
        ("Move 6 cm away from Cauliflower", "shift", AWAY),
        (
            "Move 6 cm south across the bed",
            "shift",
            {**AWAY, "toward": "across", "other": "", "dx_m": 0.0, "dy_m": 0.06},
        ),
        ("Move 6 cm into bed-1", "shift", {**AWAY, "toward": "into", "other": "bed-1"}),
        ("Move 2 plants 6 cm away from Cauliflower", "shift stations", {**AWAY, "count": 2}),
        ("Widen to 32 cm (2 plants fewer)", "widen", {"field": "spacing_m", "spacing_m": 0.32, "fewer": 2}),
        ("Widen to 32 cm between rows", "widen", {"field": "across_m", "spacing_m": 0.32, "fewer": 0}),
        ("Clear it by 14 June", "end", {"on": DAY}),
        (
            "Clear it by 14 June, 9 of 40 harvest days fewer",
            "end",
            {"on": DAY, "harvest_lost_d": 9, "harvest_d": 40},
        ),
        (
            "Clear it by 14 June, young (8 days early, 93 % of its size)",
            "end",
            {"on": DAY, "early_d": 8, "size": 0.93},
        ),
        ("Thin to 3 in each clump (12 plants fewer)", "thin", {"per_station": 3, "fewer": 12}),
        (
            "Leave out 1 row next to Cauliflower (6 plants fewer)",
            "leave out",
            {"side": "last", "lines": 1, "other": CAULIFLOWER, "fewer": 6},
        ),
        (
            "Make the rows 2 plants shorter (2 plants fewer)",
            "leave out",
            {"side": "end", "lines": 2, "other": "", "fewer": 2},
        ),
        ("Leave out 1 plant", "leave out stations", {"fewer": 1}),
        ("Grow Cabbage “small <b>round</b>”", "variety", {"variety": "small"}),
        ("Give it a net, 1.8 m high", "support", {"kind": "net", "height_m": 1.8, "supports": 1}),
        (
            "Give it 2 rows of canes, 2 m high",
            "support",
            {"kind": "cane row", "height_m": 2.0, "supports": 2},
        ),
    ],
)
def test_a_remedy_says_exactly_what_will_change(sentence, code, numbers):
    assert said(code, **numbers) == sentence


def test_a_change_of_the_neighbour_names_it():
    assert (
        said("shift", CAULIFLOWER, **{**AWAY, "other": CABBAGE}) == "Move Cauliflower 6 cm away from Cabbage"
    )
    assert said("end", CAULIFLOWER, on=DAY) == "Clear Cauliflower by 14 June"
    assert said("start", CAULIFLOWER, on=DAY, days=3) == "Start Cauliflower 3 days later (14 June)"


def test_a_direction_is_that_of_the_compass_however_the_plan_lies():
    """With east at the top of the plan, its right is south."""
    turned = rebuilt(GARDEN, site=rebuilt(GARDEN.site, bearing_deg=90.0))
    along = {**AWAY, "toward": "along", "other": "", "dx_m": 0.06, "dy_m": 0.0}
    remedy = Remedy("shift", {"planting": CABBAGE, **along})
    said = remedy_text(remedy, FINDING, turned, LAYOUT, KNOWN)
    assert said.replace(THIN, " ") == "Move 6 cm south along the bed"


def test_lengths_are_told_in_the_growers_units():
    assert said("shift", measure=Measure("imperial"), **AWAY) == "Move 2.36 in away from Cauliflower"


def test_every_code_has_a_sentence():
    assert set(REMEDIES) == set(Change)
