"""Searching: names people use find the crop they mean; slips and accents do not hide it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Crop, Group, Start, Variety
from gardencanvas.crops.search import Wanted, ready_d, search
from gardencanvas.crops.spelling import folded, slips, words

CROPS = catalogue()
crops = st.sampled_from(CROPS.crops)


def found(text, wanted=None):
    return [c.id for c in search(CROPS, text, wanted)]


# Common, German, French and Spanish names, botanical names and families as dictionaries give them.
@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("carrot", "carrot"), ("Karotte", "carrot"), ("zanahoria", "carrot"), ("carotte", "carrot"),
        ("aubergine", "aubergine"), ("eggplant", "aubergine"), ("berenjena", "aubergine"),
        ("zucchini", "courgette"), ("calabacín", "courgette"), ("laitue", "lettuce"), ("poireau", "leek"),
        ("Zwiebel", "onion"), ("betterave", "beetroot"), ("swiss chard", "chard"), ("arugula", "rocket"),
        ("cilantro", "coriander"), ("Solanum tuberosum", "potato"), ("daucus", "carrot"),
        ("fava", "broad-bean"), ("romaine", "cos-lettuce"), ("pot marigold", "calendula"),
    ],
)  # fmt: skip
def test_a_name_finds_its_crop(typed, meant):
    assert meant in found(typed)[:4]


@pytest.mark.parametrize(
    "typed", ["pea", "leek", "radish", "kale", "basil", "dill", "onion", "chives", "garlic"]
)
def test_the_plain_name_comes_first(typed):
    assert found(typed)[0] == typed


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("tomatoe", "tomato"), ("tmoato", "tomato"), ("brocolli", "broccoli"), ("cauliflwoer", "cauliflower"),
        ("courgete", "courgette"), ("letuce", "lettuce"), ("rhubrab", "rhubarb"), ("parsely", "parsley"),
        ("onoin", "onion"), ("raddish", "radish"), ("potatoe", "potato"), ("asparagras", "asparagus"),
        ("marygold", "french-marigold"), ("lavendar", "lavender"), ("corriander", "coriander"),
    ],
)  # fmt: skip
def test_usual_misspellings_find_the_crop(typed, meant):
    assert meant in found(typed)[:4]


@given(crops, st.data())
def test_every_beginning_of_every_name_finds_the_crop(crop, data):
    name = data.draw(st.sampled_from([crop.name, crop.botanical, *crop.other_names, *crop.names.values()]))
    length = data.draw(st.integers(1, len(name)))
    assert crop.id in found(name[:length])


@given(crops, st.data())
def test_one_slip_in_a_long_word_still_finds_the_crop(crop, data):
    long = [w for w in words(crop.name) if len(w) >= 5]
    if not long:
        return
    word = data.draw(st.sampled_from(long))
    at = data.draw(st.integers(1, len(word) - 1))
    letter = data.draw(st.sampled_from("abcdefghijklmnopqrstuvwxyz"))
    slip = data.draw(
        st.sampled_from(
            [
                word[:at] + word[at + 1 :],  # left out
                word[:at] + letter + word[at:],  # one too many
                word[:at] + letter + word[at + 1 :],  # wrong
                word[: at - 1] + word[at] + word[at - 1] + word[at + 1 :],  # swapped
            ]
        )
    )
    if any(slip in w for c in CROPS.crops for n in _names(c) for w in words(n)):
        return  # the slip is (part of) a word of its own, and is taken at its word
    assert crop.id in found(slip)


def _names(crop: Crop):
    family = CROPS.families[crop.family]
    own = [v.name for v in CROPS.varieties if v.crop == crop.id]
    return (crop.name, crop.botanical, crop.family, family, *crop.other_names, *crop.names.values(), *own)


@given(st.text(max_size=200))
def test_any_text_is_answered_and_case_and_space_do_not_matter(text):
    answer = found(text)
    assert found("  " + text) == answer or len(text) > 75
    assert len(set(answer)) == len(answer)


@pytest.mark.parametrize(
    ("one", "two"), [("MÖHRE", "mohre"), ("céleri", "celeri"), ("espárrago", "esparrago")]
)
def test_accents_and_case_do_not_matter(one, two):
    assert found(one) == found(two) != []


def test_all_words_must_match():
    assert found("dwarf bean") == found("bean dwarf")
    assert "dwarf-bean" in found("dwarf bean")
    assert set(found("dwarf bean")) <= set(found("bean"))
    assert found("bean xqzzy") == []


def test_nothing_typed_lists_everything():
    assert len(found("")) == len(CROPS.crops) == len(found("  - "))


def test_a_family_finds_its_members_by_either_name():
    members = {c.id for c in CROPS.crops if c.family == "Solanaceae"}
    assert set(found("solanaceae")) == members
    assert set(found("nightshade")) >= members


def test_names_of_varieties_and_of_own_crops_are_found():
    mine = Crop.model_validate({**CROPS.crop("leek").model_dump(), "id": "my-leek", "name": "Zzyzx porrum"})
    variety = Variety(id="v", crop="my-leek", name="blue wonder")
    both = CROPS.with_own([mine], [variety])
    assert [c.id for c in search(both, "zzyzx")] == ["my-leek"]
    assert [c.id for c in search(both, "blue wond")] == ["my-leek"]
    assert found("zzyzx") == []


# Edit distances printed in textbooks; ca to abc is 3 under optimal string alignment, 2 under Damerau's own.
@pytest.mark.parametrize(
    ("one", "two", "distance"), [("kitten", "sitting", 3), ("ca", "abc", 3), ("ab", "ba", 1)]
)
def test_the_definition_below_gives_the_textbook_distances(one, two, distance):
    assert _alignment(one, two) == distance


def _alignment(a, b):
    """Optimal string alignment by its recursive definition."""
    if not a or not b:
        return len(a) + len(b)
    least = min(
        _alignment(a[:-1], b) + 1, _alignment(a, b[:-1]) + 1, _alignment(a[:-1], b[:-1]) + (a[-1] != b[-1])
    )
    if len(a) > 1 and len(b) > 1 and a[-1] == b[-2] and a[-2] == b[-1]:
        least = min(least, _alignment(a[:-2], b[:-2]) + 1)
    return least


@given(st.text("abc", max_size=5), st.text("abc", max_size=5), st.integers(0, 3))
def test_slips_are_those_of_the_definition(one, two, most):
    least = min(_alignment(one, two[:n]) for n in range(len(two) + 1))
    assert slips(one, two, most) == (least if least <= most else None)


def test_folding():
    assert folded("Möhre Ærø Łódź") == "mohre aero lodz"


@pytest.mark.parametrize(
    "wanted",
    [
        Wanted(group=Group.HERB), Wanted(rooting="deep"), Wanted(light="partial shade"), Wanted(water="low"),
        Wanted(family="Fabaceae"), Wanted(start=Start.SET), Wanted(quick_d=45),
        Wanted(group=Group.FLOWER, water="low", start=Start.SOWN, quick_d=60),
    ],
)  # fmt: skip
def test_filters_let_through_just_what_they_say(wanted):
    def passes(c):
        return (
            wanted.group in (None, c.group)
            and wanted.family in (None, c.family)
            and wanted.rooting in (None, c.rooting and c.rooting.value)
            and wanted.light in (None, c.light and c.light.value)
            and wanted.water in (None, c.water and c.water.value)
            and (wanted.start is None or wanted.start in c.starts)
            and (wanted.quick_d is None or (ready_d(c) is not None and ready_d(c) <= wanted.quick_d))
        )

    expected = {c.id for c in CROPS.crops if passes(c)}
    assert set(found("", wanted)) == expected
    assert 0 < len(expected) < len(CROPS.crops)


def test_radish_is_quick_and_parsnip_is_not():
    """Missouri G6201: radish 25-30 days, parsnip 100-120."""
    quick = found("", Wanted(quick_d=35))
    assert "radish" in quick
    assert "parsnip" not in quick
