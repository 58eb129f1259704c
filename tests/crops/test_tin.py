"""Seed lots: age against the published life of seed, and how many seeds a weight is."""

from datetime import date

import pytest
from pydantic import ValidationError

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.tin import Age, SeedLot, age_warning, seeds_in

CROPS = catalogue()
ON = date(2027, 3, 1)


def lot(crop, year, **more):
    return SeedLot(id="l", crop=crop, year=year, **{"grams": 5.0, **more})


# Years of relative longevity: Iowa State, after Knott: parsnip 1, leek 2, tomato 4, cucumber 5.
@pytest.mark.parametrize(("crop", "life"), [("parsnip", 1), ("leek", 2), ("tomato", 4), ("cucumber", 5)])
def test_seed_within_its_published_life_does_not_warn(crop, life):
    assert age_warning(lot(crop, ON.year - 1), CROPS.crop(crop), ON) is None
    old = age_warning(lot(crop, ON.year - 20), CROPS.crop(crop), ON)
    assert old.code is Age.PAST
    assert old.age_y == 20
    assert CROPS.crop(crop).seed_life_y.low <= life <= CROPS.crop(crop).seed_life_y.high


def test_between_the_books_it_is_getting_old():
    crop = CROPS.crop("tomato")  # four years by the one, five by the other
    assert (crop.seed_life_y.low, crop.seed_life_y.high) == (4, 5)
    codes = [age_warning(lot("tomato", ON.year - age), crop, ON) for age in (4, 5, 6)]
    assert [c and c.code for c in codes] == [None, Age.GETTING_OLD, Age.PAST]


def test_no_warning_without_a_known_life_or_for_next_years_seed():
    crop = next(c for c in CROPS.crops if c.seed_life_y is None)
    assert age_warning(lot(crop.id, 1950), crop, ON) is None
    assert age_warning(lot("leek", 2028), CROPS.crop("leek"), ON) is None


def test_a_fresh_test_speaks_instead_of_the_age():
    """7 CFR 201.31: parsnip seed for sale germinates at least 60 %."""
    crop = CROPS.crop("parsnip")
    assert crop.germination_share.low == 0.60
    good = lot("parsnip", 2020, tested=0.7, tested_on=date(2027, 1, 1))
    poor = lot("parsnip", 2026, tested=0.3, tested_on=date(2027, 1, 1))
    assert age_warning(good, crop, ON) is None
    found = age_warning(poor, crop, ON)
    assert (found.code, found.tested, found.usual) == (Age.POOR, 0.3, crop.germination_share)


@pytest.mark.parametrize("tested_on", [date(2024, 1, 1), date(2027, 6, 1), None])
def test_an_old_or_undated_test_does_not(tested_on):
    found = age_warning(lot("parsnip", 2020, tested=0.9, tested_on=tested_on), CROPS.crop("parsnip"), ON)
    assert found.code is Age.PAST


def test_seeds_in_a_weight():
    crop = CROPS.crop("leek")
    weight = crop.seeds_per_gram
    assert seeds_in(lot("leek", 2026, grams=2.0), crop) == (2 * weight.low, 2 * weight.mid, 2 * weight.high)
    assert seeds_in(lot("leek", 2026, seeds=300), crop) == (300, 300, 300)
    unknown = next(c for c in CROPS.crops if c.seeds_per_gram is None)
    assert seeds_in(lot(unknown.id, 2026), unknown) is None


@pytest.mark.parametrize(
    "wrong",
    [
        {"grams": None}, {"grams": -1.0}, {"grams": float("inf")}, {"tested": 80.0}, {"year": 20260},
        {"crop": "<b>"},
    ],
)  # fmt: skip
def test_impossible_lots_are_refused(wrong):
    with pytest.raises(ValidationError):
        SeedLot.model_validate({"id": "l", "crop": "leek", "year": 2026, "grams": 5.0, **wrong})
