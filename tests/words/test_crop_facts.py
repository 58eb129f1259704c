"""Every number told of a crop names its source; units and ranges read as in a book."""

import re

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Basis, Crop, Quantity
from gardencanvas.words.amounts import amount
from gardencanvas.words.crop_facts import citations, hazard_words, sections
from gardencanvas.words.plain import THIN, Measure

KNOWN = catalogue()
GROWN = [(c.id, None) for c in KNOWN.crops] + [(v.crop, v.id) for v in KNOWN.varieties]


def quantity(low, mid, high):
    return Quantity(low=low, mid=mid, high=high, source="user", basis=Basis.USER)


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("height_m", quantity(0.25, 0.35, 0.45), "35 cm (25–45)"),
        ("height_m", quantity(0.8, 1.2, 1.5), "1.2 m (80 cm – 1.5 m)"),
        ("in_row_m", quantity(0.3, 0.3, 0.3), "30 cm"),
        ("frost_kill_c", quantity(-18, -12, -7), "−12 °C (−18 to −7)"),
        ("germination_share", quantity(0.6, 0.75, 0.9), "75 % (60–90)"),
        ("seeds_per_gram", quantity(1200, 1400, 1600), "1,400 per g (1,200–1,600)"),
        ("harvest_from_sowing_d", quantity(50, 75, 95), "75 days (50–95)"),
        ("seed_life_y", quantity(3, 4, 5), "4 years (3–5)"),
        ("kc_middle", quantity(1.0, 1.05, 1.05), "1.05 (1–1.05)"),
    ],
)
def test_amounts(field, value, said):
    assert amount(field, value, Measure()).replace(THIN, " ") == said


def test_imperial_lengths():
    """0.3048 m is a foot by definition."""
    value = quantity(0.0254 * 6, 0.3048, 0.0254 * 18)
    assert amount("spread_m", value, Measure("imperial")).replace(THIN, " ") == "12 in (6–18)"


@pytest.mark.parametrize("units", ["metric", "imperial"])
def test_every_number_of_every_crop_and_variety_names_a_citation(units):
    for crop_id, variety in GROWN:
        crop = KNOWN.resolve(crop_id, variety)
        found = sections(crop, KNOWN, Measure(units))
        for told in (t for s in found for t in s.rows):
            if re.search(r"\d", told.value + told.around):
                assert told.source in KNOWN.sources, (crop_id, told.label)
                assert KNOWN.sources[told.source].title in told.origin, (crop_id, told.label)
        assert set(citations(found, crop, KNOWN)) <= set(KNOWN.sources), crop_id


def test_every_number_that_is_known_is_told():
    for crop in KNOWN.crops:
        told = {t.origin for s in sections(crop, KNOWN, Measure()) for t in s.rows if t.source}
        assert sum(bool(t.source) for s in sections(crop, KNOWN, Measure()) for t in s.rows) == len(
            crop.quantities
        ) + len(crop.facts), crop.id
        assert all(told)


def test_what_is_estimated_says_so():
    bare = {k: getattr(KNOWN.crop("leek"), k) for k in Crop.model_fields if not k.startswith("height")}
    crop = KNOWN.complete(Crop.model_validate(bare))
    (height,) = [t for s in sections(crop, KNOWN, Measure()) for t in s.rows if t.label == "Height"]
    assert height.estimated
    assert height.value.startswith("≈ ")
    assert "stimated" in height.origin


def test_every_hazard_carries_its_caution():
    for crop in KNOWN.crops:
        for hazard in crop.hazards:
            said = hazard_words(hazard)
            assert hazard.hazard in said
            assert hazard.caution in said
            assert said.endswith((".", "!"))
