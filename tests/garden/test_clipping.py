"""Copied as text and pasted: everything comes over, under fresh ids; what is no clipping is refused."""

import json
from contextlib import suppress

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.clipping import clipping_from, clipping_of, is_clipping, prepared
from gardencanvas.garden.copies import add_shifted
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import FORMAT
from tests.garden.makers import bed, garden, row
from tests.strategies import gardens


@given(gardens(most=4))
@settings(max_examples=25)
def test_what_is_pasted_is_what_was_copied_but_for_ids_and_place(value):
    layout = value.layouts[0]
    ids = [i.id for i in layout.items()]
    if not ids:
        return
    known = catalogue().with_own(value.crops, value.varieties)
    pasted = prepared(value, clipping_from(clipping_of(value, layout.id, ids)), known)
    elsewhere = prepared(garden(), clipping_from(clipping_of(value, layout.id, ids)), catalogue())
    assert len(elsewhere.items) == len(pasted.items)
    after = add_shifted(pasted.garden, layout.id, pasted.items, 3.0, -2.0)
    fresh = after.layout(layout.id)
    for folder in ("beds", "paths", "supports", "covers", "plantings"):
        old, new = getattr(layout, folder), getattr(fresh, folder)
        assert len(new) == 2 * len(old)
        assert new[: len(old)] == old
    for old, new in zip(layout.plantings, fresh.plantings[len(layout.plantings) :], strict=True):
        assert new.id != old.id
        assert (new.crop, new.start, new.end) == (old.crop, old.start, old.end)
        np.testing.assert_allclose(new.stations, old.stations + np.array((3.0, -2.0)), atol=1e-9)


def test_a_bed_brings_along_what_lies_in_it():
    value = garden(row(), beds=(bed(),))
    pasted = prepared(value, clipping_from(clipping_of(value, "l1", ["bed-1"])), catalogue())
    assert sorted(type(i).__name__ for i in pasted.items) == ["Bed", "Planting"]


@pytest.mark.parametrize(
    "text", ["", "hello", "{}", '{"what": "something else"}', "[1, 2]", "<b>garden canvas clipping</b>"]
)
def test_other_text_is_refused_in_words(text):
    assert not is_clipping(text)
    with pytest.raises(Refusal, match="nothing that was copied"):
        clipping_from(text)


@given(st.data())
def test_a_damaged_clipping_is_refused_and_never_raises_else(data):
    text = clipping_of(garden(row()), "l1", ["bed-1"])
    at = data.draw(st.integers(0, len(text) - 1))
    damaged = text[:at] + data.draw(st.text(max_size=4)) + text[at + data.draw(st.integers(1, 40)) :]
    with suppress(Refusal):  # any other exception fails the test
        clipping_from(damaged)


def test_a_newer_clipping_and_an_unknown_crop_are_named():
    document = json.loads(clipping_of(garden(row()), "l1", ["p-1"]))
    with pytest.raises(Refusal, match="newer"):
        clipping_from(json.dumps({**document, "format": FORMAT + 1}))
    document["plantings"][0]["crop"] = "moonflower"
    with pytest.raises(Refusal, match="moonflower"):
        prepared(garden(), clipping_from(json.dumps(document)), catalogue())


def test_nothing_selected_is_refused():
    with pytest.raises(Refusal, match="Select"):
        clipping_of(garden(), "l1", [])
