"""The catalogue against the handbooks.

Each central value lies in the published range, or its note says why not.
"""

import re

import pytest

from gardencanvas.crops.catalogue import catalogue
from tests.oracles import handbooks
from tests.oracles.handbook_names import HANDBOOKS, HEIGHTS, LEFT_OUT, ROOTS, SEEDS
from tests.oracles.handbooks import table

CROPS = catalogue()

# field of a crop; published ranges; what a note must speak of to differ
CHECKS = {
    "root_depth_m": (handbooks.rooting_depth(), r"Table 22"),
    "depletion_fraction": (handbooks.depletion(), r"Table 22"),
    "kc_initial": (handbooks.coefficient("ini"), r"Table 12"),
    "kc_middle": (handbooks.coefficient("mid"), r"Table 12"),
    "kc_end": (handbooks.coefficient("end"), r"Table 12"),
    "height_m": (handbooks.plant_height(), r"table|bulletin|support"),
    "in_row_m": (handbooks.in_row(), r"Knott|Missouri|handbooks|table|bulletin"),
    "between_rows_m": (handbooks.between_rows(), r"Knott|Missouri|handbooks|table|bulletin"),
    "seeds_per_gram": (handbooks.seeds("seeds_per_gram"), r"Knott|handbooks"),
    "germination_share": (handbooks.seeds("min_germination_standard", 0.01), r"legal"),
    "seed_life_y": (handbooks.seeds("seed_life"), r"Knott|Watts"),
    "harvest_from_sowing_d": (handbooks.days_to_harvest("sowing"), r"Knott|Missouri|bulletin"),
    "harvest_from_planting_d": (handbooks.days_to_harvest("planting"), r"Knott|Missouri|bulletin"),
}
CASES = [(field, crop) for field, (ranges, _) in CHECKS.items() for crop in sorted(ranges)]
SURFACE = handbooks.crop_height()
_NAMES = re.compile(
    r"FAO-56|Table|Knott|Missouri|Watts|Bailey|K-State|Florida|Texas|EcoCrop|SWAT|UK|US|handbooks|bulletins"
    r"|herb|flower|table|beds|common practice|central value|[^A-Za-z]"
)


def explains(note: str, subject: str) -> bool:
    """Whether a note speaks of the table, and says more than whose number is which."""
    return re.search(subject, note) is not None and len(_NAMES.sub("", note)) >= 8


def test_a_note_of_numbers_alone_explains_nothing():
    assert not explains("Knott 0.457-0.914; common practice 0.25-0.35", "Knott")
    assert not explains("FAO-56 Table 12: 0.3 m", "Table 12")
    assert not explains("roots grown to full size", "Knott")
    assert explains("Knott 90; roots grown to full size", "Knott")


@pytest.mark.parametrize(("field", "crop_id"), CASES)
def test_a_central_value_is_as_published(field, crop_id):
    ranges, subject = CHECKS[field]
    published = ranges[crop_id]
    quantity = getattr(CROPS.crop(crop_id), field)
    assert quantity is not None, f"published is {published.low:g} to {published.high:g}"
    if not published.holds(quantity.mid, slack=0.02):  # inches and ounces turned metric and rounded
        assert explains(quantity.note, subject), (
            f"{quantity.mid:g} is outside {published.low:g} to {published.high:g}, and the note does not say "
            f"why: {quantity.note!r}"
        )


@pytest.mark.parametrize("crop_id", sorted(SURFACE))
def test_heights_agree_with_the_crop_surface_of_fao56(crop_id):
    """Table 12 gives the height of a field crop's surface, one number or one a line."""
    height = CROPS.crop(crop_id).height_m
    surface = SURFACE[crop_id]
    if height.low > surface.high or height.high < surface.low:
        assert explains(height.note, "Table 12"), f"{surface}: {height}"


def test_the_legal_minimum_of_germination_is_cited_as_printed():
    published = handbooks.seeds("min_germination_standard", 0.01)
    cited = {c.id: c.germination_share for c in CROPS.crops if c.germination_share is not None}
    legal = {i: q for i, q in cited.items() if q.source == "cfr-201-31" and i in published}
    assert len(legal) >= 60
    for crop_id, quantity in legal.items():
        assert published[crop_id].holds(quantity.low), crop_id
        assert published[crop_id].holds(quantity.high), crop_id


@pytest.mark.parametrize(
    ("name", "known"), [("spacing", HANDBOOKS), ("days_to_harvest", HANDBOOKS), ("seeds", SEEDS)]
)
def test_no_row_of_a_table_is_passed_over(name, known):
    assert {row["crop"] for row in table(name)} <= set(known) | set(LEFT_OUT)


def test_all_mapped_crops_are_in_the_catalogue():
    ids = {crop for names in (HANDBOOKS, SEEDS, ROOTS, HEIGHTS) for some in names.values() for crop in some}
    assert ids <= {c.id for c in CROPS.crops}
    assert len(ids) >= 130
