"""Spacing inside a planting against the catalogue's sources, and room in closed form."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.density import size_at
from gardencanvas.fit.ground import ground_of, usual_spacing
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.pattern import Block
from gardencanvas.garden.planting import Planting, Start
from tests.fit.makers import judged, rows, spot, words
from tests.oracles.oracle_rows import expected, tolerance

ON = date(2027, 5, 1)


def block(crop, spacing, per_station=1, staggered=False):
    pattern = Block(length_m=2.0, width_m=2.0, spacing_m=spacing, staggered=staggered)
    start = Start(kind="raised", on=ON)
    return Planting(id="one", crop=crop, pattern=pattern, start=start, per_station=per_station)


def test_the_closest_spacing_a_source_gives_is_in_order_and_costs_size():
    """Cabbage: 12 inches each way in K-State's beds, the least of all sources: more heads, smaller ones."""
    low = catalogue().resolve("cabbage").in_row_m.low
    report = judged(block("cabbage", low))
    assert words(report) == {"one": "shares"}
    (finding,) = report.findings
    assert finding.code == "smaller each"
    assert finding.numbers["size_low"] < finding.numbers["size_high"] < 1.0 <= finding.numbers["yield_low"]
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


def test_closer_spacing_costs_size_before_it_fails():
    """At each step closer plants are smaller; only then too close, at last a clash."""
    along, across = usual_spacing(catalogue().resolve("cabbage"))
    found = []
    for scale in (1.0, 0.85, 0.7, 0.55, 0.45):
        report = judged(rows("one", "cabbage", 4.0, 3, along * scale, across * scale, ON))
        found.append((report.worst, [f.numbers["size_high"] for f in report.findings]))
    assert [worst for worst, _ in found] == sorted(worst for worst, _ in found)
    assert found[0] == (Verdict.CLEAR, [])
    assert [worst for worst, _ in found[1:3]] == [Verdict.SHARES, Verdict.SHARES]
    assert found[-1][0] is Verdict.CLASHES
    sizes = [size for _, some in found for size in some]
    assert sizes == sorted(sizes, reverse=True)
    assert len(sizes) == 4


def test_size_at_a_density_follows_the_reciprocal_yield_law():
    """1/w = a + bN (Shinozaki & Kira 1956; Scaife & Jones 1976), a 0.5, b 0.2, 16 plants: row O068."""
    a, b, usual = 0.5, 0.2, 8.0
    held_back = b * usual / (a + b * usual)
    at_usual = 1.0 / (a + b * usual)
    assert at_usual * size_at(16.0 / usual, held_back) == pytest.approx(
        expected("O068"), abs=tolerance("O068")
    )
    assert 16.0 * at_usual * size_at(16.0 / usual, held_back) == pytest.approx(4.3243, abs=1e-4)
    # constant final yield: twice as many plants of half the size
    assert size_at(2.0, 1.0) == pytest.approx(0.5)
    assert size_at(5.0, 0.0) == 1.0


def test_a_clump_counts_as_one_station():
    """Onions four to the clump every 25 cm, as usual; single ones that far apart are far too."""
    crop = catalogue().resolve("onion")
    apart, seedlings = crop.clump_spacing_m.mid, round(crop.clump_plants.mid)
    assert judged(block("onion", apart, seedlings)).worst is Verdict.CLEAR
    assert judged(block("onion", apart / 2, seedlings)).worst is Verdict.CLASHES


def test_a_clump_without_a_spacing_of_its_own_takes_the_root_of_its_number():
    """s √k each way: k plants on k times the ground."""
    crop = catalogue().resolve("cauliflower")
    assert crop.clump_spacing_m is None
    one = usual_spacing(crop)
    assert usual_spacing(crop, 4) == pytest.approx((2 * one[0], 2 * one[1]))


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


@pytest.mark.parametrize("apart", [0.035, 0.08, 0.15])
def test_two_plantings_of_one_crop_fail_where_no_head_grows(apart):
    """Cabbages every 8 and 15 cm in the row made no heads of market size (Stoffella & Fleming 1990)."""
    for later in (0, 30):  # beside one that is young, and one that stands there
        on = date.fromordinal(ON.toordinal() + later)
        report = judged(spot("one", "cabbage", [(0.0, 0.0)], ON), spot("two", "cabbage", [(apart, 0.0)], on))
        assert report.plantings["two"].verdict is Verdict.CLASHES


@pytest.mark.parametrize("apart", [0.23, 0.30, 0.38])
def test_two_plantings_of_one_crop_do_not_fail_where_heads_grow(apart):
    """The same trial: from 23 cm on they did, smaller ones than from wider rows."""
    report = judged(spot("one", "cabbage", [(0.0, 0.0)], ON), spot("two", "cabbage", [(apart, 0.0)], ON))
    assert report.worst < Verdict.CLASHES


def test_a_young_plant_may_be_set_beside_one_of_its_kind_that_is_soon_cut():
    """Common practice of succession: the next plants go in among the last ones in their last weeks."""
    one = spot("one", "cabbage", [(0.0, 0.0)], ON)
    harvest = judged(one).plantings["one"].harvest_last
    soon = date.fromordinal(harvest.toordinal() - 14)
    report = judged(one, spot("two", "cabbage", [(0.1, 0.0)], soon))
    assert report.worst < Verdict.CLASHES
