"""The grower's own library: what goes in comes out; hostile files are refused, or are plain data."""

import os
import re
import stat
import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import CatalogueError, catalogue
from gardencanvas.crops.errors import CannotKeep
from gardencanvas.crops.model import Crop, Record, Variety
from gardencanvas.crops.own import (
    Own,
    load_own,
    merged,
    own_file,
    own_from_bytes,
    own_to_text,
    save_own,
)
from gardencanvas.crops.tin import SeedLot
from gardencanvas.crops.toml_writing import toml_of

CROPS = catalogue()

# Any character but what a library refuses: invisible ones, and lone surrogates, which UTF-8 cannot hold.
visible = st.characters(
    exclude_categories=("Cc", "Cs"),
    exclude_characters="\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069",
)
names = st.text(visible, min_size=1, max_size=80).filter(lambda t: 0 < len(t.strip()) <= 80)
lots = st.builds(
    SeedLot,
    id=st.sampled_from(["a", "b2", "c-3"]),
    crop=st.sampled_from([c.id for c in CROPS.crops]),
    grams=st.floats(0.01, 1e6),
    year=st.integers(1950, 2100),
    tested=st.none() | st.floats(0, 1),
    tested_on=st.none() | st.dates(),
    note=st.text(visible, max_size=200),
)  # fmt: skip


@st.composite
def libraries(draw):
    shipped = draw(st.lists(st.sampled_from(CROPS.crops), max_size=3, unique_by=lambda c: c.id))
    crops = [Crop.model_validate({**c.model_dump(), "name": draw(names)}) for c in shipped]
    some = draw(st.lists(st.sampled_from(CROPS.varieties), max_size=3, unique_by=lambda v: v.id))
    varieties = [Variety.model_validate({**v.model_dump(), "name": draw(names)}) for v in some]
    return Own(
        crops=tuple(crops),
        varieties=tuple(varieties),
        lots=tuple(draw(st.lists(lots, max_size=3, unique_by=lambda lot: lot.id))),
    )


@given(libraries())
def test_what_is_written_is_read_again(own):
    assert own_from_bytes(own_to_text(own).encode(), "own.toml") == own


class Anything(Record):
    text: str
    words: dict[str, str]
    many: tuple[str, ...]
    number: float
    yes: bool


@given(
    st.builds(
        Anything,
        text=st.text(st.characters(exclude_categories=("Cs",))),
        words=st.dictionaries(st.text(st.characters(exclude_categories=("Cs",))), st.text(visible)),
        many=st.lists(st.text(st.characters(exclude_categories=("Cs",)))).map(tuple),
        number=st.floats(allow_nan=False, allow_infinity=False),
        yes=st.booleans(),
    )
)
def test_the_writer_is_understood_by_the_standard_reader(record):
    table = tomllib.loads(toml_of([("thing", record)]))["thing"][0]
    assert Anything.model_validate(table) == record


def test_saved_and_loaded(tmp_path):
    own = Own(crops=CROPS.crops[:3], varieties=CROPS.varieties[:2])
    path = tmp_path / "new folder" / "own.toml"
    assert load_own(path) == Own()
    save_own(own, path)
    assert load_own(path) == own
    assert list(path.parent.iterdir()) == [path]


def test_the_default_place_is_the_users_data_folder():
    assert str(own_file()).startswith(os.environ["XDG_DATA_HOME"])
    assert load_own() == Own()


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="permissions do not bind here")
def test_a_folder_that_cannot_be_written_is_named(tmp_path):
    tmp_path.chmod(stat.S_IRUSR | stat.S_IXUSR)
    with pytest.raises(CannotKeep, match=r"own\.toml could not be written"):
        save_own(Own(), tmp_path / "own.toml")


def test_a_file_in_the_way_is_named_and_left_alone(tmp_path):
    (tmp_path / "data").write_text("mine", encoding="utf-8")
    with pytest.raises(CannotKeep, match=r"own\.toml could not be written: .+\."):
        save_own(Own(crops=CROPS.crops[:1]), tmp_path / "data" / "own.toml")
    assert (tmp_path / "data").read_text(encoding="utf-8") == "mine"


def test_own_ones_win_in_the_catalogue():
    mine = Crop.model_validate({**CROPS.crop("leek").model_dump(), "name": "My leek"})
    assert Own(crops=(mine,)).over(CROPS).resolve("leek").name == "My leek"


def test_an_import_says_what_it_replaced():
    old = Crop.model_validate({**CROPS.crop("leek").model_dump(), "name": "My leek"})
    both = merged(Own(crops=(old, CROPS.crop("kale"))), Own(crops=(CROPS.crop("leek"), CROPS.crop("kale"))))
    assert both.replaced == ("leek",)
    assert both.own.crops == (CROPS.crop("leek"), CROPS.crop("kale"))


CROP = """
[[crop]]
id = "mine"
name = "Mine"
botanical = "Allium porrum"
family = "Amaryllidaceae"
group = "allium"
habit = "upright"
layer = "low"
starts = ["sown"]
harvest = "single"
"""
VARIETY = '[[variety]]\nid = "{0}"\ncrop = "{1}"\nname = "x"\n'
SIZE = 'height_m = {{ low = {0}, mid = {0}, high = {0}, source = "user", basis = "user" }}\n'


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (CROP + SIZE.format(-1), "mine, height_m: -1 to -1 lies outside"),
        (CROP + SIZE.format("1e300"), "mine, height_m: 1e+300"),
        (CROP + SIZE.format("inf"), "mine, height_m.low: inf: a finite number is needed"),
        (CROP + SIZE.format("1" * 5000), "too many digits"),
        (CROP + VARIETY.format("x", "nothing"), "x, crop: there is no crop nothing"),
        (VARIETY.format("x", "x"), "x, crop: a variety cannot be a variety of itself"),
        (VARIETY.format("x", "y") + VARIETY.format("y", "x"), "x, crop: y is a variety; a variety belongs"),
        (CROP + CROP, "mine, id: this id stands there twice"),
        (CROP.replace('"Mine"', '"Mi\\u202Ene"'), "mine, name: there is an invisible character in it"),
        (CROP.replace('"Mine"', '"Mi\\u001B[2Jne"'), "mine, name: there is an invisible character in it"),
        (CROP.replace('"Mine"', '"' + "M" * 81 + '"'), "at most 80 characters"),
        (CROP.replace('"Mine"', "1979-05-27"), "mine, name: Input should be a valid string"),
        (CROP.replace('id = "mine"', 'id = "../../etc"'), "small letters, digits and single hyphens"),
        (CROP.replace("Amaryllidaceae", "Apiaceae"), "is of the family Amaryllidaceae, not Apiaceae"),
        (CROP + SIZE.format(1).replace("user", "no-such-book", 1), "there is no source no-such-book"),
        (CROP + "run = 'rm -rf /'\n", "mine, run: this field is not known"),
        ("crop = 3\n", "each crop is a table of its own"),
        ("[nonsense]\n", "nonsense: this table is not known"),
        ("x = " + "[" * 10_000, "nested too deeply"),
        ("\x00", "not a sound TOML file"),
    ],
)  # fmt: skip
def test_hostile_files_are_refused_in_one_sentence(text, says):
    with pytest.raises(CatalogueError, match=re.escape(says)) as caught:
        own_from_bytes(text.encode(), "own.toml")
    said = str(caught.value)
    assert said.isprintable()
    assert len(said) < 400


def test_bytes_that_are_not_text_are_refused():
    with pytest.raises(CatalogueError, match="not text in UTF-8"):
        own_from_bytes(b"\xff\xfe\x00\xd8", "own.toml")


def test_ten_thousand_crops_are_refused():
    text = "".join(CROP.replace('"mine"', f'"c{n}"') for n in range(10_000))
    with pytest.raises(CatalogueError, match="there are 10000 of them; a file holds at most 1000"):
        own_from_bytes(text.encode(), "own.toml")


def test_a_huge_file_is_refused_unread(tmp_path):
    path = tmp_path / "own.toml"
    with path.open("wb") as file:
        file.truncate(3_000_000_000)  # takes no room on the disk
    with pytest.raises(CatalogueError, match="a crop file has at most"):
        load_own(path)


def test_a_folder_is_refused(tmp_path):
    with pytest.raises(CatalogueError, match="cannot be read"):
        load_own(tmp_path)


def test_markup_is_plain_data():
    text = CROP.replace('"Mine"', "\"<img src='x' onerror=alert(1)> & {0} %s $(ls)\"")
    own = own_from_bytes(text.encode(), "own.toml")
    assert own.crops[0].name == "<img src='x' onerror=alert(1)> & {0} %s $(ls)"
    assert own_from_bytes(own_to_text(own).encode(), "own.toml") == own


def test_a_bare_own_crop_can_be_grown():
    crop = own_from_bytes(CROP.encode(), "own.toml").over(CROPS).resolve("mine")
    assert crop.height_m is not None
    assert crop.stage_initial_d is not None
