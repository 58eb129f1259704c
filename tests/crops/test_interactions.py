"""Interactions: sound, found in either direction, and tradition bears on nothing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from gardencanvas.crops.catalogue import CatalogueError, catalogue
from gardencanvas.crops.interactions import (
    ANY,
    Effect,
    Interaction,
    among,
    between,
    interactions,
    load_interactions,
)

CROPS = catalogue()
crops = st.sampled_from(CROPS.crops)


def ids(one, two):
    return {i.id for i in between(CROPS.crop(one), CROPS.crop(two))}


def test_every_side_is_a_known_crop_or_family():
    known = {c.id for c in CROPS.crops} | {c.family for c in CROPS.crops} | {ANY}
    assert {side for i in interactions() for side in (*i.a, *i.b)} <= known


def test_ids_are_unique_and_all_grades_are_there():
    every = interactions()
    assert len({i.id for i in every}) == len(every) >= 100
    assert {i.evidence for i in every} == {"several trials", "one trial", "common practice", "tradition only"}
    needed = {"fewer pests", "competition", "allelopathy", "shared disease", "support", "harvest disturbs"}
    assert needed <= {str(i.effect) for i in every}


@given(crops, crops)
def test_what_is_known_does_not_depend_on_the_order_of_the_pair(one, two):
    assert {i.id for i in between(one, two)} == {i.id for i in between(two, one)}


@given(crops, crops)
def test_stronger_evidence_comes_first(one, two):
    order = ["several trials", "one trial", "common practice", "tradition only"]
    grades = [order.index(i.evidence) for i in between(one, two)]
    assert grades == sorted(grades)


def test_direction_is_kept():
    """Undersown clover keeps root flies off brassicas (Finch & Collier 2000), not the other way about."""
    [found] = [i for i in between(CROPS.crop("cabbage"), CROPS.crop("white-clover")) if "flies" in i.id]
    assert found.acts(on_b=CROPS.crop("cabbage"), by_a=CROPS.crop("white-clover"))
    assert not found.acts(on_b=CROPS.crop("white-clover"), by_a=CROPS.crop("cabbage"))


def test_tradition_bears_on_nothing():
    tradition = [i for i in interactions() if i.evidence == "tradition only"]
    assert len(tradition) >= 8
    assert all(i.bearing == 0 and not i.counts and i.size is None and i.share_a is None for i in tradition)


def test_tradition_cannot_be_given_a_size():
    said = {"id": "x", "a": ("basil",), "b": ("tomato",), "effect": "yield gain", "what": "growth"}
    said |= {"evidence": "tradition only", "source": "garden-tradition"}
    Interaction.model_validate(said)
    with pytest.raises(ValidationError, match="tradition only"):
        Interaction.model_validate({**said, "size": {"low": 1.0, "mid": 1.1, "high": 1.2, "unit": "LER"}})
    with pytest.raises(ValidationError, match="tradition only"):
        Interaction.model_validate({**said, "share_a": 1.0})


@given(crops, crops)
def test_a_sum_of_bearings_is_the_same_without_tradition(one, two):
    every = interactions()
    tried = [i for i in every if i.counts]
    assert sum(i.bearing for i in among(every, one, two)) == sum(i.bearing for i in among(tried, one, two))


def test_land_equivalent_ratios_are_the_sums_of_their_parts():
    """Mead & Willey 1980: LER is the sum of the relative yields; medians of sums differ a little."""
    sized = [i for i in interactions() if i.size and i.size.unit == "LER" and i.share_a is not None]
    assert len(sized) >= 35
    for i in sized:
        assert 0.85 * i.size.low <= i.share_a + i.share_b <= 1.15 * i.size.high, i.id
        gain = {True: Effect.YIELD_GAIN, False: Effect.YIELD_LOSS}[i.size.mid > 1.0]
        assert i.effect is (Effect.NO_EFFECT if i.size.mid == 1.0 else gain), i.id


def test_known_findings_are_there():
    """Carrot fly among young onions (Uvah & Coaker 1984); fennel beside dill below 1 (Carrubba 2008)."""
    assert "onion-carrot-fly" in ids("carrot", "onion")
    [fennel] = [i for i in between(CROPS.crop("fennel"), CROPS.crop("dill")) if i.size]
    assert fennel.size.mid < 1.0
    assert fennel.bearing == -1
    assert {"late-blight", "verticillium"} <= ids("tomato", "potato")
    assert "clubroot" in ids("turnip", "white-mustard")


def test_a_faulty_file_is_named(tmp_path):
    path = tmp_path / "interactions.toml"
    path.write_text('[[interaction]]\nid = "x"\na = ["leek"]\nb = []\n', encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"interactions\.toml: x, b: "):
        load_interactions(path, tmp_path)
