"""Accepted findings: kept with the layout, matched in any order, loud again when they get worse."""

from datetime import date

import pytest

from gardencanvas.files import garden_from_bytes, garden_to_bytes
from gardencanvas.garden.accepting import accept, accepted_as, no_longer
from gardencanvas.garden.garden import Accepted
from tests.garden.makers import garden, row


def known(**changes):
    fields = {"code": "crowded", "plantings": ("p-1", "p-2"), "verdict": "strains", "note": "an experiment"}
    return Accepted(**{**fields, "on": date(2027, 3, 1), **changes})


@pytest.fixture
def value():
    return accept(garden(row("p-1"), row("p-2", y=0.2)), "l1", known())


def test_it_is_found_whichever_planting_comes_first_and_survives_saving(value):
    again = garden_from_bytes(garden_to_bytes(value), "g")
    for layout in (value.layout("l1"), again.layout("l1")):
        assert accepted_as(layout, "crowded", ("p-2", "p-1"), "strains") == known()
        assert accepted_as(layout, "crowded", ("p-1",), "strains") is None
        assert accepted_as(layout, "shaded", ("p-1", "p-2"), "strains") is None


def test_what_got_worse_is_not_accepted_any_more(value):
    layout = value.layout("l1")
    assert accepted_as(layout, "crowded", ("p-1", "p-2"), "clashes") is None
    clash = accept(value, "l1", known(verdict="clashes")).layout("l1")
    assert accepted_as(clash, "crowded", ("p-1", "p-2"), "strains") is not None


def test_accepting_again_replaces_the_note_and_taking_back_leaves_none(value):
    other = accept(value, "l1", known(note="still trying"))
    assert len(other.layout("l1").accepted) == 1
    assert other.layout("l1").accepted[0].note == "still trying"
    assert no_longer(other, "l1", other.layout("l1").accepted[0]).layout("l1").accepted == ()
