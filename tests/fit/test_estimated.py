"""A planting says which numbers of its crop no source gives: read from the crop files themselves."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit import check
from tests.fit.makers import WIDE, spot
from tests.garden.makers import garden

CROPS = catalogue()


def estimated(crop_id, kind, crops=()):
    planting = spot("p", crop_id, [(0.0, 0.0)], date(2027, 5, 10), kind)
    return check(garden(planting, beds=WIDE, crops=tuple(crops))).plantings["p"].estimated


def own(crop_id, *unknown, **changes):
    """A grower's own crop, like a shipped one but for the fields that are not known."""
    like = CROPS.crop(crop_id)
    fields = {k: getattr(like, k) for k in Crop.model_fields if k not in unknown}
    return Crop(**{**fields, "id": "mine", **changes})


@pytest.mark.parametrize("kind", ["sown", "raised"])
def test_a_crop_of_which_all_is_known_rests_on_no_fallback(kind):
    lettuce = CROPS.crop("lettuce")
    assert lettuce.harvest_from_sowing_d
    assert lettuce.harvest_from_planting_d
    assert estimated("lettuce", kind) == ()


@pytest.mark.parametrize(
    "field", ["height_m", "root_depth_m", "light_good", "frost_kill_c", "stage_middle_d"]
)
def test_what_a_file_lacks_is_named(field):
    assert estimated("mine", "raised", [own("lettuce", field)]) == (field,)


def test_only_what_the_way_of_starting_needs_is_named():
    mine = own("lettuce", "harvest_from_sowing_d")
    assert estimated("mine", "sown", [mine]) == ("harvest_from_sowing_d",)
    assert estimated("mine", "volunteer", [mine]) == ("harvest_from_sowing_d",)
    assert estimated("mine", "raised", [mine]) == ()


def test_days_of_an_unusual_start_are_reckoned_and_named():
    """Tomatoes are raised; no book at hand gives days from sowing in place, and their files lack them."""
    assert CROPS.crop("tomato").harvest_from_sowing_d is None
    assert "sown" not in CROPS.crop("tomato").starts
    assert estimated("tomato", "sown") == ("harvest_from_sowing_d",)
    assert estimated("tomato", "raised") == ()
