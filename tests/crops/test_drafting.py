"""Own crops get ids of their own, keep the hazards of their species, and make sense."""

import re

from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.drafting import drafted, free_id, hazards_of_kind
from gardencanvas.crops.model import Basis, Quantity

KNOWN = catalogue()


def figure(low, mid, high):
    return Quantity(low=low, mid=mid, high=high, source="user", basis=Basis.USER)


@given(st.text(max_size=90), st.sets(st.sampled_from(["own", "own-2", "early-round", "a"])))
def test_an_id_is_a_slug_that_nothing_else_has(name, taken):
    made = free_id(name, taken)
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", made)
    assert len(made) <= 60
    assert made not in taken


def test_ids_read_like_the_name():
    assert free_id("Early Round", ()) == "early-round"
    assert free_id("Früher Köhl", {"fruher-kohl"}) == "fruher-kohl-2"
    assert free_id("<b>", ()) == "b"
    assert free_id("蕪", ()) == "own"


def test_another_bean_keeps_the_warning_of_its_species():
    """Raw seed of Phaseolus vulgaris is poisonous whatever its name: FDA Bad Bug Book."""
    found = hazards_of_kind("phaseolus vulgaris", KNOWN.crops)
    assert any("haemagglutinin" in h.hazard and h.severity == "high" for h in found)
    assert hazards_of_kind("Phaseolus", KNOWN.crops) == ()
    assert hazards_of_kind("Plantago testis", KNOWN.crops) == ()


def test_a_hybrid_sign_does_not_hide_a_hazard():
    assert (
        hazards_of_kind("Rheum hybridum", KNOWN.crops)
        == hazards_of_kind("Rheum × hybridum", KNOWN.crops)
        != ()
    )


def test_other_days_leave_the_stages_open_and_other_sizes_do_not():
    leek = KNOWN.crop("leek")
    taller, _ = drafted(leek, id="tall", height_m=figure(0.8, 0.9, 1.0))
    assert taller.stage_initial_d == leek.stage_initial_d
    slower, _ = drafted(leek, id="slow", harvest_from_planting_d=figure(130, 150, 170))
    assert slower.stage_initial_d is None
    assert KNOWN.complete(slower).stage_initial_d.basis is Basis.FALLBACK


def test_what_does_not_make_sense_is_said_in_one_line():
    crop, why = drafted(None, id="x", name="x")
    assert crop is None
    assert why == "botanical: this field is missing"
    _, why = drafted(KNOWN.crop("leek"), family="Rosaceae")
    assert why.startswith("family: Allium ampeloprasum")
    assert why.endswith("is of the family Amaryllidaceae, not Rosaceae")
    _, why = drafted(KNOWN.crop("leek"), spread_m=figure(3, 4, 5))
    assert why.startswith("spread: 4 m does not go with")
