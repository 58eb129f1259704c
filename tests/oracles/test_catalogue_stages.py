"""Growth stages of the catalogue against FAO-56 table 11.

A note says which row a crop's stages were scaled from, and to how many days. The test reads the row again and
scales it itself. The length of a row is the sum of its stages: the total printed for green gram differs.
"""

import csv
import re

import pytest

from gardencanvas.crops.catalogue import catalogue
from tests.oracles.handbooks import DATA

STAGES = ("stage_initial_d", "stage_development_d", "stage_middle_d", "stage_late_d")
COLUMNS = ("Lini", "Ldev", "Lmid", "Llate")
SCALED = re.compile(
    r"Table 11 proportions(?: of a long-(?:picked|standing) crop)? "
    r"\((?P<crop>[^,]+), (?P<region>.+), (?P<total>\d+) d: (?P<days>[\d/]+)\) to (?P<to>\d+) d"
)
AS_PRINTED = re.compile(r"Table 11 row (?P<crop>[^,]+), (?P<region>.+), (?P<total>\d+) d;")
_CRUCIFERS = ("crucifers", "cabbage", "broccoli", "cauliflower")
# Crops that the table has rows of; its cabbages are a line of their own and "crucifers" together.
OWN_ROWS = {
    "beetroot": ("beets table",), "carrot": ("carrots",), "celery": ("celery",), "lettuce": ("lettuce",),
    "spinach": ("spinach",), "radish": ("radish",), "onion": ("onion dry",), "spring-onion": ("onion green",),
    "cucumber": ("cucumber",), "courgette": ("squash zucchini",), "winter-squash": ("pumpkin winter squash",),
    "melon": ("sweet melons",), "watermelon": ("water melons",), "potato": ("potato",),
    "sweet-potato": ("sweet potato",), "tomato": ("tomato",), "pepper": ("sweet peppers bell",),
    "aubergine": ("eggplant",), "dwarf-bean": ("beans green",), "pea": ("peas",), "soya": ("soybeans",),
    "lentil": ("lentil",), "peanut": ("groundnut",), "sweetcorn": ("maize sweet",),
    "sunflower": ("sunflower",),
    "cabbage": _CRUCIFERS, "broccoli": _CRUCIFERS, "cauliflower": _CRUCIFERS,
}  # fmt: skip

with (DATA / "fao56_table11.csv").open(encoding="utf-8", newline="") as file:
    ROWS = tuple(csv.DictReader(file))
CROPS = {c.id: c for c in catalogue().crops if c.stage_initial_d is not None}
CITING = sorted(c.id for c in CROPS.values() if "Table 11" in c.stage_initial_d.note)


def days_of(crop):
    return [getattr(crop, stage).mid for stage in STAGES]


def stages_of(row) -> list[int]:
    return [int(row[column]) for column in COLUMNS if row[column]]


def rows_of(crop_id) -> list[list[int]]:
    return [stages_of(row) for row in ROWS if row["Crop"] in OWN_ROWS[crop_id]]


def row_of(found) -> list[int]:
    """The days of the row a note names; fails where the table has no such row."""
    rows = [
        stages_of(row) for row in ROWS if (row["Crop"], row["Region"]) == (found["crop"], found["region"])
    ]
    rows = [row for row in rows if sum(row) == int(found["total"])]
    assert rows, f"table 11 has no row {found['crop']}, {found['region']}, {found['total']} d"
    return rows[0]


@pytest.mark.parametrize("crop_id", CITING)
def test_stages_follow_from_the_row_that_the_note_names(crop_id):
    crop = CROPS[crop_id]
    note = crop.stage_initial_d.note
    if found := SCALED.search(note):
        row = row_of(found)
        assert "/".join(map(str, row)) == found["days"]
        to = int(found["to"])
        expected = [to * days / sum(row) for days in row]
        assert days_of(crop) == pytest.approx(expected, abs=1.0)
        assert sum(days_of(crop)) == pytest.approx(to, abs=2.0)
    elif found := AS_PRINTED.search(note):
        assert days_of(crop) == row_of(found)
    else:
        assert re.search(r"has no|Table 11 row", note), f"the note names no row: {note!r}"


def test_most_crops_with_stages_cite_the_table():
    assert len(CITING) >= 120


@pytest.mark.parametrize("crop_id", OWN_ROWS)
def test_shares_of_the_stages_lie_between_those_of_the_table(crop_id):
    """Whatever the length of its season, a crop divides it as one of the rows of its own does."""
    shares = [[days / sum(row) for days in row] for row in rows_of(crop_id)]
    days = days_of(CROPS[crop_id])
    for at, stage in enumerate(STAGES):
        least, most = min(s[at] for s in shares), max(s[at] for s in shares)
        assert least - 0.02 <= days[at] / sum(days) <= most + 0.02, stage


@pytest.mark.parametrize("crop_id", OWN_ROWS)
def test_the_season_is_as_long_as_in_the_table_or_the_note_says_it_was_scaled(crop_id):
    totals = [sum(row) for row in rows_of(crop_id)]
    crop = CROPS[crop_id]
    if not min(totals) <= sum(days_of(crop)) <= max(totals):
        assert SCALED.search(crop.stage_initial_d.note)
