"""Bad files get one clear sentence, quickly, and change nothing."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.files import FileRefused, NewerFormat, garden_from_bytes, garden_to_bytes, open_garden
from gardencanvas.files.reading import MAX_BYTES
from tests.garden.makers import garden, row

SOUND = garden_to_bytes(garden(row()))


def _with(change):
    document = json.loads(SOUND)
    change(document)
    return json.dumps(document).encode()


def _set(*path):
    def change(document):
        *steps, last, value = path
        for step in steps:
            document = document[step]
        document[last] = value

    return change


LAYOUT = ("layouts", 0)
PLANTING = (*LAYOUT, "plantings", 0)
BED = (*LAYOUT, "beds", 0)

HOSTILE = {
    "empty": (b"", "is empty"),
    "blank": (b" \n\t ", "is empty"),
    "binary": (bytes(range(256)) * 40, "not text in UTF-8"),
    "truncated": (SOUND[: len(SOUND) // 2], "cut short"),
    "a list": (b"[]", "not a garden file"),
    "a number": (b"7", "not a garden file"),
    "another JSON": (b'{"name": "x"}', "no format number"),
    "format true": (b'{"format": true}', "no format number"),
    "format 0": (b'{"format": 0}', "no format number"),
    "deep lists": (b"[" * 100_000, "nested too deeply"),
    "deep maps": (b'{"a":' * 100_000, "nested too deeply"),
    "deep inside": (_with(_set("note", json.loads("[" * 300 + "]" * 300))), "nested too deeply"),
    "same key twice": (SOUND.replace(b'"name": "Test"', b'"name": "A", "name": "B"'), "'name' stands there"),
    "not a number": (SOUND.replace(b"0.15", b"NaN", 1), "NaN"),
    "infinite": (SOUND.replace(b"0.15", b"1e999", 1), "finite"),
    "five thousand digits": (SOUND.replace(b"2027,", b"9" * 5000 + b",", 1), "digits"),
    "huge number": (SOUND.replace(b"0.15", b"9e300", 1), "at most"),
    "unknown field": (_with(_set("weather", "fine")), "weather: this field is not known"),
    "missing name": (_with(lambda d: d.pop("name")), "name: this field is missing"),
    "name of 10,000": (_with(_set("name", "x" * 10_000)), "at most 200 characters"),
    "crossed bed": (_with(_set(*BED, "outline", [[0, 0], [1, 1], [1, 0], [0, 1]])), "crosses itself"),
    "bed with 3 million corners": (_with(_set(*BED, "outline", [[0, 0]] * 30_000)), "at most 2000"),
    "zero spacing": (_with(_set(*PLANTING, "pattern", "spacing_m", 0)), "spacing_m"),
    "million stations": (
        _with(lambda d: d["layouts"][0]["plantings"][0]["pattern"].update(length_m=900, rows=1000)),
        "at most 20,000",
    ),
    "end before start": (_with(_set(*PLANTING, "end", "2020-01-01")), "after the start"),
    "succession that is no id": (_with(_set(*PLANTING, "succession", "again & again")), "succession"),
    "succession by number": (_with(_set(*PLANTING, "succession", 3)), "succession"),
    "date of nonsense": (_with(_set(*PLANTING, "start", "on", "the 5th")), "on"),
    "unknown crop": (_with(_set(*PLANTING, "crop", "triffid")), "triffid"),
    "text for a number": (_with(_set(*PLANTING, "pattern", "spacing_m", "0.3")), "spacing_m"),
    "same id twice": (
        _with(lambda d: d["layouts"][0]["plantings"].append(d["layouts"][0]["plantings"][0])), "used twice"
    ),
    "no layout": (_with(_set("layouts", [])), "at least 1"),
    "latitude 91": (_with(_set("site", "latitude_deg", 91)), "at most 90"),
    "mean above maximum": (_with(_set("site", "climate", "max_c", [-20] * 12)), "must lie between"),
}  # fmt: skip


@pytest.mark.parametrize(("data", "words"), HOSTILE.values(), ids=HOSTILE.keys())
def test_a_bad_file_is_refused_in_one_sentence(data, words):
    with pytest.raises(FileRefused) as told:
        garden_from_bytes(data, "g.gardencanvas")
    sentence = str(told.value)
    assert words in sentence
    assert sentence.startswith("g.gardencanvas")
    assert len(sentence) < 400
    assert "\n" not in sentence


def test_a_newer_file_names_its_version():
    with pytest.raises(NewerFormat, match=r"newer Garden Canvas \(format 99"):
        garden_from_bytes(_with(_set("format", 99)), "g.gardencanvas")


def test_a_file_from_before_successions_opens():
    older = _with(lambda d: d["layouts"][0]["plantings"][0].pop("succession"))
    assert garden_from_bytes(older, "g") == garden(row())


def test_an_enormous_file_is_refused_before_it_is_read(tmp_path):
    path = tmp_path / "g.gardencanvas"
    with path.open("wb") as file:
        file.truncate(MAX_BYTES + 1)  # a sparse file: nothing is really written
    with pytest.raises(FileRefused, match="at most"):
        open_garden(path)


def test_a_folder_and_a_missing_file_are_told(tmp_path):
    with pytest.raises(FileRefused, match="is a folder"):
        open_garden(tmp_path)
    with pytest.raises(FileRefused, match="no file"):
        open_garden(tmp_path / "none.gardencanvas")


def test_markup_in_names_is_kept_as_it_is():
    name = '<img src="x"> & <b>Rows</b>'
    assert garden_from_bytes(_with(_set("name", name)), "g").name == name


@given(st.binary(max_size=400))
def test_any_bytes_are_refused_not_crashed_on(data):
    with pytest.raises(FileRefused):
        garden_from_bytes(data, "g")


@given(st.integers(0, len(SOUND) - 1), st.binary(min_size=1, max_size=8))
def test_a_damaged_file_opens_or_is_refused(at, noise):
    damaged = SOUND[:at] + noise + SOUND[at + len(noise) :]
    said = ""
    try:
        garden_from_bytes(damaged, "g")
    except FileRefused as error:
        said = str(error)
    assert "\n" not in said
