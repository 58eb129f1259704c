"""Spacing inside a planting against the catalogue's sources, and room in closed form."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.ground import ground_of, usual_spacing
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.pattern import Block
from gardencanvas.garden.planting import Planting, Start
from tests.fit.makers import judged, rows, spot, words

ON = date(2027, 5, 1)


def block(crop, spacing, per_station=1, staggered=False):
    pattern = Block(length_m=2.0, width_m=2.0, spacing_m=spacing, staggered=staggered)
    start = Start(kind="raised", on=ON)
    return Planting(id="one", crop=crop, pattern=pattern, start=start, per_station=per_station)


def test_the_closest_spacing_a_source_gives_is_clear():
    """Cabbage: 12 inches each way in K-State's beds, the least of all sources."""
    low = catalogue().resolve("cabbage").in_row_m.low
    assert words(judged(block("cabbage", low))) == {"one": "clear"}
    assert judged(block("cabbage", low - 0.02)).worst is Verdict.STRAINS


@given(st.sampled_from(["cabbage", "lettuce", "leek", "carrot", "potato", "tomato"]), st.floats(0.2, 3.0))
def test_closer_is_never_better(crop_id, factor):
    along, across = usual_spacing(catalogue().resolve(crop_id))
    length = 6 * max(along, 0.2)

    def at(scale):
        return judged(
            rows("one", crop_id, length, 3, max(along * scale, 0.01), max(across * scale, 0.01), ON)
        )

    assert at(factor * 0.8).worst >= at(factor).worst


def test_a_clump_counts_as_one_station():
    """Onions four to the clump every 25 cm, as usual; single ones that far apart are far too."""
    crop = catalogue().resolve("onion")
    apart, seedlings = crop.clump_spacing_m.mid, round(crop.clump_plants.mid)
    assert judged(block("onion", apart, seedlings)).worst is Verdict.CLEAR
    assert judged(block("onion", apart / 2, seedlings)).worst is Verdict.CLASHES


def test_a_clump_of_twice_as_many_wants_twice_the_ground():
    crop = catalogue().resolve("onion")
    usual = round(crop.clump_plants.mid)
    one, two = ground_of(block("onion", 0.3, usual), crop), ground_of(block("onion", 0.3, 2 * usual), crop)
    assert two.need_m2 == pytest.approx(2 * one.need_m2)


def test_loose_spots_are_judged_one_by_one():
    least = catalogue().resolve("cabbage").in_row_m.low
    near = judged(spot("one", "cabbage", [(0.0, 0.0), (0.8 * least, 0.0), (5.0, 0.0)]))
    (finding,) = near.findings
    assert finding.stations.tolist() == [0, 1]
    assert finding.numbers["distance_m"] == pytest.approx(0.8 * least)
    assert near.plantings["one"].station_verdicts.tolist() == [2, 2, 0]


def test_a_wide_planting_leaves_its_room_to_others():
    """Cabbages twice as far apart as usual take lettuce between them that usual ones do not."""
    lettuce = spot("two", "cabbage", [(1.8, 0.75)], ON)
    usual = rows("one", "cabbage", 3.6, 3, 0.45, 0.5, ON)
    wide = rows("one", "cabbage", 3.6, 2, 0.9, 1.0, ON)
    assert judged(wide, spot("two", "cabbage", [(1.8, 1.0)], ON)).worst is Verdict.CLEAR
    assert judged(usual, spot("two", "cabbage", [(1.8, 1.0)], ON)).worst >= Verdict.STRAINS
    assert judged(usual, lettuce).worst >= Verdict.STRAINS
