"""A garden takes in what it plants of the grower's library, and nothing else."""

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Basis, Quantity, Variety
from gardencanvas.files import garden_from_bytes, garden_to_bytes
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.own import adopted, put_crop, put_variety, without_crop, without_variety
from tests.garden.makers import garden, row


def figure(mid):
    """A grower's own figure; invented for the test."""
    return Quantity(low=mid, mid=mid, high=mid, source="user", basis=Basis.USER)


def own_crop(crop_id="yard-leek"):
    return edits.rebuilt(catalogue().crop("leek"), id=crop_id, name="Yard leek")


def variety(variety_id="leek-short", crop="leek", **changes):
    return Variety(id=variety_id, crop=crop, name="short", height_m=figure(0.4), **changes)


def library(crops=(), varieties=()):
    return catalogue().with_own(crops, varieties)


def planted(crop="leek", varieties=()):
    return edits.add(garden(), "l1", [row(crop=crop, varieties=varieties)])


def test_a_planted_library_crop_is_taken_in_and_the_file_stands_alone():
    known = library([own_crop()], [variety(crop="yard-leek")])
    after = adopted(garden(), planted("yard-leek", ("leek-short",)), known, catalogue())
    assert [c.id for c in after.crops] == ["yard-leek"]
    assert [v.id for v in after.varieties] == ["leek-short"]
    again = garden_from_bytes(garden_to_bytes(after), "it")  # refuses crops that are not known
    assert again == after


def test_shipped_crops_and_varieties_are_not_taken_in():
    shipped = catalogue().varieties[0]
    after = planted(shipped.crop, (shipped.id,))
    assert adopted(garden(), after, library([own_crop()]), catalogue()) is after


def test_what_is_not_planted_is_not_taken_in():
    after = planted("leek")
    assert adopted(garden(), after, library([own_crop()], [variety()]), catalogue()) is after


def test_the_gardens_own_version_stays():
    mine = variety(note="as it grows here")
    before = put_variety(garden(), mine)
    known = library(varieties=[variety()]).with_own((), before.varieties)
    after = edits.add(before, "l1", [row(varieties=("leek-short",))])
    assert adopted(before, after, known, catalogue()).varieties == (mine,)


def test_a_variety_kept_in_the_garden_brings_its_library_crop():
    after = put_variety(garden(), variety(crop="yard-leek"))
    assert [c.id for c in adopted(garden(), after, library([own_crop()]), catalogue()).crops] == ["yard-leek"]


def test_a_variety_of_the_same_id_under_another_crop_is_another():
    known = library(varieties=[variety("small", "leek"), variety("small", "celery")])
    after = adopted(garden(), planted("celery", ("small",)), known, catalogue())
    assert [(v.crop, v.id) for v in after.varieties] == [("celery", "small")]


def test_putting_one_again_replaces_it():
    twice = put_crop(put_crop(garden(), own_crop()), own_crop())
    assert len(twice.crops) == 1


def test_what_is_planted_is_not_taken_out():
    grown = put_crop(planted("yard-leek"), own_crop())
    with pytest.raises(Refusal, match="1 planting grows it"):
        without_crop(grown, "yard-leek")
    bare = put_variety(put_crop(garden(), own_crop()), variety(crop="yard-leek"))
    assert without_crop(bare, "yard-leek") == garden()
    with pytest.raises(Refusal, match="1 planting grows it"):
        without_variety(put_variety(planted("leek", ("leek-short",)), variety()), "leek", "leek-short")
    assert without_variety(put_variety(garden(), variety()), "leek", "leek-short") == garden()
