"""Laws that any search keeps, whatever is typed and whatever filters are set."""

from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.model import Group, Layer, Start
from gardencanvas.crops.search import Wanted, search

CROPS = catalogue()
NAMES = [
    (crop, name)
    for crop in CROPS.crops
    for name in (crop.name, *crop.other_names, *crop.names.values(), crop.botanical)
]
_CLASSES = {
    "group": st.sampled_from(Group),
    "layer": st.sampled_from(Layer),
    "family": st.sampled_from(sorted({c.family for c in CROPS.crops})),
    "rooting": st.sampled_from(["shallow", "medium", "deep"]),
    "light": st.sampled_from(["full sun", "partial sun", "partial shade", "shade"]),
    "water": st.sampled_from(["low", "medium", "high"]),
    "start": st.sampled_from(Start),
    "quick_d": st.floats(1.0, 400.0),
}
filters = st.fixed_dictionaries({k: st.none() | v for k, v in _CLASSES.items()}).map(lambda k: Wanted(**k))
typed = st.sampled_from([name for _, name in NAMES]) | st.text(max_size=8)


def test_a_crop_is_found_by_each_of_its_names_in_any_case():
    for crop, name in NAMES:
        for text in (name, name.upper(), f"  {name} "):
            assert crop in search(CROPS, text), text


def test_a_crop_is_first_under_its_own_name_unless_another_bears_it_too():
    for crop in CROPS.crops:
        first = search(CROPS, crop.name)[0]
        bears = {name.casefold() for name in (*first.other_names, first.name)}
        assert first is crop or crop.name.casefold() in bears, crop.id


@given(st.sampled_from("aäßłİﬀ\0\u0301\u200b\u202e🥕中 -'\"\\%("), filters)
def test_ten_thousand_of_any_letter_are_answered(letter, wanted):
    found = search(CROPS, letter * 10_000, wanted)
    assert len(found) == len({c.id for c in found})
    assert all(wanted.lets(c) for c in found)


@given(typed, filters)
def test_filters_leave_out_and_never_reorder(text, wanted):
    assert search(CROPS, text, wanted) == tuple(c for c in search(CROPS, text) if wanted.lets(c))


@given(typed)
def test_the_order_is_the_same_each_time_and_for_an_equal_catalogue(text):
    again = Catalogue(CROPS.crops, CROPS.varieties, CROPS.sources, CROPS.families)
    assert search(CROPS, text) == search(CROPS, text) == search(again, text)
