"""Single measures against closed forms and counts by hand."""

from datetime import date, timedelta

import numpy as np
import pytest
import shapely

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.beside import vault
from gardencanvas.fit.standing import Standing
from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.pattern import Rows
from gardencanvas.measures.codes import Code, Through
from gardencanvas.measures.comparison import measured
from gardencanvas.measures.reckoned.spots import places
from gardencanvas.measures.yields.bed_yields import sole_yield
from gardencanvas.measures.yields.bedful import bedfuls
from gardencanvas.measures.yields.draws import (
    COUNT,
    between_years,
    estimate,
    factor,
    normal,
    outer,
    weather,
    within,
)
from gardencanvas.measures.yields.mingling import local_density
from gardencanvas.measures.yields.relative import shared
from tests.garden.makers import bed
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout


def _bedful(made):
    stands = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    return bedfuls(made.layouts[0], stands)[0]


def test_ground_in_use_counts_need_times_days():
    planting = filled("a", "cabbage")
    made = garden_of(layout("l1", [ground_of(planting)], planting))
    stand = _bedful(made).stands[0]
    result = measured(made, "l1")
    days = result.whole.of(Code.GROUND_DAYS).value / (4 * 10 * 0.45 * 0.5)
    assert days == pytest.approx((stand.times.out - stand.times.in_bed).days, abs=7)
    assert result.whole.of(Code.GROUND_SHARE).value == pytest.approx(days / 365, rel=1e-9)


def test_ground_in_use_is_never_more_than_the_bed():
    planting = filled("a", "leek")
    crowded = [filled(name, "leek") for name in "abc"]
    made = garden_of(layout("l1", [ground_of(planting)], *crowded))
    assert measured(made, "l1").whole.of(Code.GROUND_SHARE).value <= 1.0


@pytest.mark.parametrize(("crop", "least", "most"), [("onion", 0.745, 0.806), ("sweetcorn", 0.71, 0.86)])
def test_half_the_plants_of_a_crop_yield_what_published_densities_say(crop, least, most):
    """20 onions to the m² against 40, by the law fitted to either place (Ratkowsky 1983), and 2.4 maize
    plants against 4.8, by the authors' own y = x a k^x fitted to eight hybrids (Carmer & Jackobs 1965).
    """
    half = filled("a", crop, share=0.5)
    made = garden_of(layout("l1", [ground_of(filled("a", crop))], half))
    assert least <= shared(_bedful(made), vault(made.site)).relative[0] <= most


def test_two_like_crops_of_half_density_share_the_light_of_one():
    """Two halves of one crop, sown by turns, are the whole crop."""
    one, two = filled("a", "leek", share=0.5), filled("b", "leek", share=0.5, y=0.1)
    made = garden_of(layout("l1", [ground_of(filled("a", "leek"))], one, two))
    relative = shared(_bedful(made), vault(made.site)).relative
    assert relative.sum() == pytest.approx(1.0, rel=1e-9)


def test_the_taller_of_two_crops_loses_less():
    """As in trials of sweetcorn over beans: 0.91 and 0.40 in rows, added (Paut et al. 2024)."""
    tall, low = filled("a", "sweetcorn", share=0.5), filled("b", "dwarf-bean", rows=6, columns=21, share=0.5)
    made = garden_of(layout("l1", [ground_of(tall)], tall, low))
    left = shared(_bedful(made), vault(made.site)).left
    assert left[0] > left[1]


def test_crops_at_two_ends_of_a_bed_do_not_compete():
    one = filled("a", "lettuce", columns=12)
    two = filled("b", "cabbage", columns=12, x=8.0)
    made = garden_of(layout("l1", [bed(length=14.0, width=1.2)], one, two))
    assert shared(_bedful(made), vault(made.site)).left == pytest.approx([1.0, 1.0], abs=0.01)


def test_local_density_keeps_the_plants_of_the_bed():
    one = filled("a", "lettuce", rows=2)
    made = garden_of(layout("l1", [bed(length=4.0, width=1.5)], one))
    bedful = _bedful(made)
    near = local_density(bedful)
    assert near.mean(axis=0) == pytest.approx(bedful.density, rel=1e-9)
    assert near.min() >= 0.0


def test_places_lie_evenly_in_a_bed():
    """Every quarter of the bed holds a quarter of them, to a few."""
    ground = bed(length=3.6, width=1.2)
    xy = places(ground)
    assert 850 <= len(xy) <= 1000
    for x in (0.0, 1.8):
        for y in (0.0, 0.6):
            inside = (xy[:, 0] >= x) & (xy[:, 0] < x + 1.8) & (xy[:, 1] >= y) & (xy[:, 1] < y + 0.6)
            assert inside.mean() == pytest.approx(0.25, abs=0.01)
    hollow = bed(holes=(((1.0, 0.2), (2.0, 0.2), (2.0, 1.0), (1.0, 1.0)),))
    x, y = places(hollow).T
    polygon = shapely.Polygon(hollow.outline, hollow.holes)
    assert shapely.contains_xy(polygon, x, y).all()


def test_harvest_is_the_usual_yield_on_a_full_bed():
    """Cabbage 2.24–3.36–4.48 kg/m² (New England Vegetable Management Guide, table 15)."""
    planting = filled("a", "cabbage")
    result = measured(garden_of(layout("l1", [ground_of(planting)], planting)), "l1")
    harvest = result.whole.of(Code.HARVEST)
    area = 4 * 10 * 0.45 * 0.5
    assert harvest.value == pytest.approx(3.36 * area, rel=1e-6)
    assert harvest.low == pytest.approx(2.24 * area, rel=0.12)
    assert harvest.high == pytest.approx(4.48 * area, rel=0.12)
    assert result.crops["cabbage"].of(Code.HARVEST_PIECES).value == 40.0


def test_the_weeks_of_a_harvest_add_up_to_it():
    planting = filled("a", "dwarf-bean")
    result = measured(garden_of(layout("l1", [ground_of(planting)], planting)), "l1")
    (series,) = [s for s in result.series if s.code == Through.HARVEST]
    assert sum(series.values) == pytest.approx(result.whole.of(Code.HARVEST).value, rel=1e-9)
    picked = [week for week, kg in zip(series.weeks, series.values, strict=True) if kg > 0]
    told = check(garden_of(layout("l1", [ground_of(planting)], planting))).plantings["a"]
    assert picked[0] <= told.harvest_first <= picked[0] + timedelta(days=6)
    assert picked[-1] <= told.harvest_last <= picked[-1] + timedelta(days=6)


def test_gap_weeks_lie_between_harvests():
    early = filled("a", "radish", on=date(2027, 4, 20), rows=2)
    late = filled("b", "radish", on=date(2027, 8, 1), rows=2, y=0.5)
    result = measured(garden_of(layout("l1", [bed(length=1.0, width=1.2)], early, late)), "l1")
    fits = check(garden_of(layout("l1", [bed(length=1.0, width=1.2)], early, late))).plantings
    between = (fits["b"].harvest_first - fits["a"].harvest_last).days // 7
    assert result.whole.of(Code.GAP_WEEKS).value == pytest.approx(between, abs=1)


def test_what_frost_kills_brings_nothing():
    late = filled("a", "sweetcorn", on=date(2027, 9, 1))
    result = measured(garden_of(layout("l1", [ground_of(late)], late)), "l1")
    assert result.whole.of(Code.HARVEST).value == 0.0
    assert result.crops["sweetcorn"].of(Code.ALONE).value == 0.0  # nor alone, in the same weeks


def test_a_crop_that_fails_in_some_years_keeps_its_ratio_and_may_bring_nothing():
    doubtful = filled("a", "sweetcorn")
    result = measured(garden_of(layout("l1", [ground_of(doubtful)], doubtful)), "l1")
    ler, harvest = result.whole.of(Code.LER), result.whole.of(Code.HARVEST)
    assert (ler.low, ler.value, ler.high) == pytest.approx((1.0, 1.0, 1.0))
    assert harvest.low < harvest.value < harvest.high
    drawn = result.whole.draws[Code.HARVEST]
    (stand,) = _bedful(garden_of(layout("l1", [ground_of(doubtful)], doubtful))).stands
    assert 0.5 < stand.outlook.odds.ripens < 1.0
    assert np.mean(drawn > 0.0) == pytest.approx(stand.outlook.odds.ripens, abs=0.06)


def test_verdicts_are_those_of_the_check():
    one, two = filled("a", "cabbage"), filled("b", "cabbage", y=0.1)
    made = garden_of(layout("l1", [ground_of(one)], one, two))
    report = check(made)
    result = measured(made, "l1")
    for code in (Code.CLEAR, Code.SHARES, Code.STRAINS, Code.CLASHES):
        expected = sum(p.verdict.word == code.value for p in report.plantings.values())
        assert result.whole.of(code).value == expected


def test_hungry_and_fixing_ground():
    cabbage, bean = filled("a", "cabbage"), filled("b", "dwarf-bean", x=30.0)
    made = garden_of(layout("l1", [ground_of(cabbage), ground_of(bean, "bed-2")], cabbage, bean))
    result = measured(made, "l1")
    assert result.beds["bed-1"].of(Code.HUNGRY).value == pytest.approx(1.0)
    assert result.beds["bed-2"].of(Code.FIXING).value == pytest.approx(1.0)
    whole = result.whole
    assert whole.of(Code.HUNGRY).value + whole.of(Code.FIXING).value == pytest.approx(1.0)


def test_grown_apart_the_same_ground_is_full_and_its_ratio_is_one():
    main, catch = filled("a", "cabbage"), filled("b", "lettuce")
    result = measured(garden_of(layout("l1", [ground_of(main)], main, catch)), "l1")
    assert result.whole.of_apart(Code.LER).value == pytest.approx(1.0)
    apart = {k: part.of_apart(Code.HARVEST).value for k, part in result.crops.items()}
    shares = [apart[k] / result.crops[k].of(Code.ALONE).value for k in ("cabbage", "lettuce")]
    assert sum(shares) == pytest.approx(1.0)


def test_a_wall_takes_of_the_harvest_what_it_takes_of_the_light_and_leaves_ratios():
    planting = filled("a", "cabbage")
    open_ = garden_of(layout("l1", [ground_of(planting)], planting))
    outline = ((-1.0, 2.3), (6.0, 2.3), (6.0, 2.6), (-1.0, 2.6))
    wall = Fixture(id="w", name="wall", kind="wall", outline=outline, height_m=2.5)
    shaded = open_.model_copy(update={"fixtures": (wall,)})
    light = check(shaded).plantings["a"].light
    assert light < 0.95
    one, two = measured(open_, "l1"), measured(shaded, "l1")
    share = two.whole.of(Code.HARVEST).value / one.whole.of(Code.HARVEST).value
    assert share == pytest.approx(light, abs=0.03)
    assert two.whole.of(Code.LER) == one.whole.of(Code.LER)


def test_draws_are_the_same_each_time_and_hold_eight_of_ten():
    assert np.array_equal(normal("x"), normal("x"))
    assert not np.array_equal(normal("x"), normal("y"))
    crop = catalogue().resolve("cabbage")
    quantity = sole_yield(crop)
    drawn = within(quantity, "many")
    assert len(drawn) == COUNT
    assert np.mean((drawn >= quantity.low) & (drawn <= quantity.high)) == pytest.approx(0.8, abs=0.06)
    share = factor(0.5, 2.0, "many")
    assert np.mean((share >= 0.5) & (share <= 2.0)) == pytest.approx(0.8, abs=0.06)
    years = between_years(np.array([1.0]), np.array([2.0]), np.array([4.0]))[:, 0]
    assert (np.diff(years[np.argsort(weather())]) >= 0.0).all()
    told = estimate(3.0, np.full(COUNT, 2.0))
    assert (told.low, told.value, told.high) == (2.0, 3.0, 3.0)


@pytest.mark.parametrize("shape", [(200,), (50, 7), (11,), (1,)])
def test_the_outer_draws_are_numpys_quantiles(shape):
    drawn = np.random.default_rng(3).normal(size=shape)
    low, high = np.quantile(drawn, (0.1, 0.9), axis=0)
    assert outer(drawn)[0] == pytest.approx(low)
    assert outer(drawn)[1] == pytest.approx(high)


def test_a_crop_weighed_by_the_plant_has_its_yield_over_its_ground():
    """For crops of which only the yield of a plant is known."""
    some = [c for c in catalogue().crops if c.yield_kg_m2 is None and c.yield_kg_plant is not None]
    crop = catalogue().resolve(some[0].id)
    ground = crop.in_row_m.mid * crop.between_rows_m.mid
    assert sole_yield(crop).mid == pytest.approx(crop.yield_kg_plant.mid / ground)


def test_cover_of_rows_is_that_of_their_discs():
    """n π r² / area as long as no leaves touch, whatever the rows keep step with."""
    pattern = Rows(origin=(0.0, 0.0), length_m=3.6, rows=4, spacing_m=0.3, row_spacing_m=0.3)
    leek = filled("a", "leek").model_copy(update={"pattern": pattern})
    made = garden_of(layout("l1", [bed()], leek))
    (series,) = [s for s in measured(made, "l1").series if s.code == Through.COVER]
    discs = _bedful(made).cover[0, 52 : 52 + len(series.values)]
    assert discs.max() > 0.1
    assert np.array(series.values) == pytest.approx(discs, abs=0.03)
