"""Numbers that stand in: laws for any crop with any fields missing, and how far off they are."""

from statistics import median

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.bounds import BOUNDS
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.fallback import FIRST_HARVEST, STAGES, complete, estimated
from gardencanvas.crops.model import Basis, Crop, Habit, Layer, Quantity, Start
from gardencanvas.crops.peers import Peers
from gardencanvas.season.traits import base_top, traits
from tests.oracles.handbooks import rooting_depth

CROPS = catalogue()
PEERS = Peers(CROPS.crops)
ALWAYS = {
    "height_m", "spread_m", "root_depth_m", "leaf_area_index", "extinction", "grown_at_c",
    "base_temperature_c", "top_temperature_c", "frost_kill_c", "light_good", "light_least",
    "harvest_length_d",
}  # fmt: skip
BY_NEED = {"nursery_d", *FIRST_HARVEST.values(), *STAGES}


def without(crop, fields):
    return Crop.model_validate({**{k: getattr(crop, k) for k in Crop.model_fields}, **dict.fromkeys(fields)})


def bare(crop_id):
    """Only what must be said of a crop, as a grower would begin with."""
    crop = CROPS.crop(crop_id)
    return without(crop, (*crop.quantities, *crop.facts))


stripped = st.builds(
    without,
    st.sampled_from(CROPS.crops),
    st.sets(st.sampled_from(sorted(ALWAYS | BY_NEED | {"frost", "light"}))),
)


@given(stripped)
def test_what_the_engine_needs_is_there(crop):
    done = complete(crop, PEERS)
    assert set(done.quantities) >= ALWAYS
    assert all(FIRST_HARVEST[start] in done.quantities for start in crop.starts)
    assert ("nursery_d" in done.quantities) or Start.RAISED not in crop.starts
    if crop.life != "perennial":
        assert set(done.quantities) >= set(STAGES)
    base_top(done)
    for start in done.starts:
        traits(done, start.value, None, supported=False)  # raises where a number is missing


@given(stripped)
def test_what_is_known_stays_and_what_is_filled_is_marked(crop):
    done = complete(crop, PEERS)
    filled = set(done.quantities) - set(crop.quantities)
    assert set(estimated(done)) == filled
    for field in Crop.model_fields:
        if field not in filled:
            assert getattr(done, field) is getattr(crop, field) or getattr(done, field) == getattr(
                crop, field
            )
    for field in filled:
        quantity = done.quantities[field]
        assert quantity.basis is Basis.FALLBACK
        assert quantity.source in CROPS.sources
        assert quantity.note
        assert BOUNDS[field].least <= quantity.low <= quantity.mid <= quantity.high <= BOUNDS[field].most


@given(stripped)
def test_completing_twice_changes_nothing(crop):
    done = complete(crop, PEERS)
    assert complete(done, PEERS) is done


@given(st.permutations(CROPS.crops))
def test_the_order_of_the_catalogue_does_not_matter(crops):
    crop = bare("carrot")
    assert complete(crop, Peers(crops)) == complete(crop, PEERS)


@given(stripped, st.sampled_from(sorted(Habit)), st.sampled_from(sorted(Layer)))
def test_without_any_relatives_the_constants_stand_in(crop, habit, layer):
    lone = Crop.model_validate(
        {**bare(crop.id).model_dump(), "habit": habit, "layer": layer, "life": "annual"}
    )
    done = complete(lone, Peers(()))
    assert set(done.quantities) >= ALWAYS | set(STAGES)
    assert all(done.quantities[f].source in CROPS.sources for f in estimated(done))


def test_a_median_is_that_of_the_named_relatives():
    """Reckoned here from the crops themselves."""
    crop = without(CROPS.crop("kohlrabi"), ["height_m"])
    done = complete(crop, PEERS)
    kin = [
        c.height_m.mid
        for c in CROPS.crops
        if (c.family, c.layer, c.habit) == (crop.family, crop.layer, crop.habit)
    ]
    assert (done.height_m.low, done.height_m.mid, done.height_m.high) == (min(kin), median(kin), max(kin))
    assert done.height_m.note == f"median of {len(kin)} crops of the same family and layer and habit"


def test_perennials_without_stages_are_left_to_the_season():
    crop = CROPS.crop("lavender")
    assert crop.life == "perennial"
    assert not set(STAGES) & set(complete(crop, PEERS).quantities)


def test_stages_that_are_filled_in_sum_to_the_end_of_the_harvest():
    for crop in CROPS.crops:
        if crop.life == "perennial":
            continue
        done = complete(without(crop, STAGES), PEERS)
        first = getattr(done, FIRST_HARVEST[done.starts[0]])
        total = sum(getattr(done, s).mid for s in STAGES)
        assert total == pytest.approx(first.mid + done.harvest_length_d.mid), crop.id


def test_sowing_is_planting_and_the_days_under_glass():
    crop = without(CROPS.crop("cabbage"), ["harvest_from_sowing_d"])
    done = complete(crop, PEERS)
    assert done.harvest_from_sowing_d.mid == crop.harvest_from_planting_d.mid + crop.nursery_d.mid


def test_estimates_that_only_concern_other_starts_are_left_out():
    done = complete(without(CROPS.crop("cabbage"), ["harvest_from_sowing_d", "nursery_d", "height_m"]), PEERS)
    assert set(estimated(done)) == {"harvest_from_sowing_d", "nursery_d", "height_m"}
    assert set(estimated(done, "raised")) == {"nursery_d", "height_m"}
    assert set(estimated(done, "sown")) == {"harvest_from_sowing_d", "height_m"}


def test_erect_leaves_let_more_light_through_than_flat_ones():
    """Models of light: k 0.5 for onion, 0.65 in general, 0.8 for broad flat leaves (WOFOST, SWAT)."""
    found = {c: complete(bare(c), PEERS).extinction.mid for c in ("onion", "carrot", "cabbage")}
    assert found == {"onion": 0.5, "carrot": 0.65, "cabbage": 0.8}


def test_root_depths_from_relatives_meet_the_published_ranges():
    """FAO-56 table 22: leave each crop out and reckon it from the others; most ranges meet the published."""
    met = tried = 0
    for crop_id, published in rooting_depth().items():
        crop = CROPS.crop(crop_id)
        others = Peers([c for c in CROPS.crops if c.id != crop_id])
        guess = complete(without(crop, ["root_depth_m"]), others).root_depth_m
        tried += 1
        met += guess.low <= published.high and guess.high >= published.low
    assert tried >= 30
    assert met / tried >= 0.9


def test_days_to_harvest_from_relatives_are_within_a_factor_of_two_for_most():
    """A variety's days differ by as much within a crop (Knott's ranges); a guess should do no worse."""
    near = tried = 0
    for crop in CROPS.crops:
        field = FIRST_HARVEST[crop.starts[0]]
        if crop.life == "perennial" or getattr(crop, field) is None:
            continue
        others = Peers([c for c in CROPS.crops if c.id != crop.id])
        guess: Quantity = getattr(complete(without(crop, (*FIRST_HARVEST.values(), *STAGES)), others), field)
        tried += 1
        near += 0.5 <= guess.mid / getattr(crop, field).mid <= 2.0
    assert near / tried >= 0.85
