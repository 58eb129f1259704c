"""Germination temperatures against the trials of Harrington & Minges (1954), in Knott's Handbook.

Days to emergence were counted at nine soil temperatures, five degrees apart.
"""

import pytest

from gardencanvas.crops.catalogue import catalogue
from tests.oracles.handbooks import table

CROPS = catalogue()
IDS = {
    "asparagus": ("asparagus",), "aubergine (eggplant)": ("aubergine",), "beetroot": ("beetroot",),
    "cabbage": ("cabbage", "pointed-cabbage", "red-cabbage"), "carrot": ("carrot",),
    "cauliflower": ("cauliflower",), "celery": ("celery",), "cucumber": ("cucumber", "gherkin"),
    "lettuce": ("lettuce", "cos-lettuce", "lettuce-leaf"), "lima bean": ("lima-bean",),
    "melon (muskmelon)": ("melon",), "okra": ("okra",), "onion": ("onion",), "parsley": ("parsley",),
    "parsnip": ("parsnip",), "pea": ("pea",), "pepper": ("pepper", "chilli"), "radish": ("radish",),
    "snap bean": ("dwarf-bean", "climbing-bean"), "spinach": ("spinach",), "sweet corn": ("sweetcorn",),
    "tomato": ("tomato", "tomato-bush"), "turnip": ("turnip",), "watermelon": ("watermelon",),
}  # fmt: skip
CASES = [(name, crop) for name, ids in IDS.items() for crop in ids]
ROUNDED_C = 1.0  # handbooks that print °F round to five: 60 °F is 15.6 °C


def emerged(name):
    """Days to emergence by soil temperature, where any came up."""
    rows = [r for r in table("germination_days") if r["crop"] == name and r["status"] == "emerged"]
    return {float(r["soil_temperature_c"]): float(r["days_to_emergence"]) for r in rows}


def test_every_crop_of_the_trials_is_held_against_them():
    assert {r["crop"] for r in table("germination_days")} == set(IDS)


@pytest.mark.parametrize(("name", "crop_id"), CASES)
def test_seed_sprouts_where_it_did(name, crop_id):
    """Limits lie at or outside the coldest and warmest soil from which any came up."""
    crop, days = CROPS.crop(crop_id), emerged(name)
    assert crop.germination_min_c.low <= min(days) + ROUNDED_C
    assert crop.germination_max_c.high >= max(days) - ROUNDED_C


@pytest.mark.parametrize(("name", "crop_id"), CASES)
def test_the_best_range_holds_the_quickest_temperature(name, crop_id):
    best, days = CROPS.crop(crop_id).germination_best_c, emerged(name)
    quickest = [t for t, d in days.items() if d == min(days.values())]
    assert any(best.low - ROUNDED_C <= t <= best.high + ROUNDED_C for t in quickest)


@pytest.mark.parametrize(("name", "crop_id"), CASES)
def test_the_central_best_temperature_is_quicker_than_the_coldest(name, crop_id):
    best, days = CROPS.crop(crop_id).germination_best_c, emerged(name)
    nearest = min(days, key=lambda t: abs(t - best.mid))
    assert days[nearest] < days[min(days)]
