"""Botanical families against a published list: FAO EcoCrop binomials, families after APG IV."""

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.genera import family_of
from tests.oracles.handbooks import table

PUBLISHED = {
    row["botanical_name"].replace("×", " ").split()[0]: row["family_apg4"] for row in table("families")
}


def genus(crop):
    return crop.botanical.replace("×", " ").split()[0]


def test_every_genus_of_the_list_has_its_family():
    assert {g: family_of(g) for g in PUBLISHED} == PUBLISHED


def test_every_crop_of_a_listed_genus_is_in_its_family():
    crops = [c for c in catalogue().crops if genus(c) in PUBLISHED]
    assert len(crops) >= 150
    assert {c.id: c.family for c in crops} == {c.id: PUBLISHED[genus(c)] for c in crops}


def test_every_genus_of_the_catalogue_is_in_the_table():
    assert [c.id for c in catalogue().crops if family_of(c.botanical) is None] == []
