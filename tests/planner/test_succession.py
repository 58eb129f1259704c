"""Successions in a garden: laid out three ways, edited as a group, refused in clear words."""

from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Start
from gardencanvas.planner.succession import (
    Between,
    Part,
    Rhythm,
    Way,
    evenness,
    interval_of,
    members,
    respace,
    shift_group,
    succeed,
    told,
    weekly_harvest,
)
from gardencanvas.season.course import Weeks
from gardencanvas.season.growth import follow
from gardencanvas.season.windows import Window
from tests import strategies
from tests.garden.makers import bed, garden, row, site
from tests.planner.cuts import cuts
from tests.season.crops_for_tests import planted

CROPS = catalogue()
FOUR_ROWS = Rows(origin=(0.0, 0.0), length_m=3.0, rows=4, spacing_m=0.05, row_spacing_m=0.15)
HARVESTS_14 = Rhythm(14, Between.HARVESTS)


def radishes(**changes):
    fields = {"on": date(2027, 3, 25), "pattern": FOUR_ROWS}
    return garden(row("r", "radish", **{**fields, **changes}), beds=[bed(width=2.4)])


def again(value, rhythm=HARVESTS_14, way=Way.ROWS, parts=None):
    return succeed(value, "l1", "r", rhythm, way, CROPS, parts)


def parts_in(result):
    return members(result.garden.layout("l1"), result.group)


WAYS = st.sampled_from(Way)
RHYTHMS = st.builds(Rhythm, st.integers(3, 25), st.sampled_from(Between))


@given(cuts(5), RHYTHMS, st.sampled_from([1, 4]))
def test_splitting_keeps_every_plant_where_it_stood(cutting, rhythm, clump):
    pattern, way, parts = cutting
    result = again(radishes(pattern=pattern, per_station=clump), rhythm, way, parts)
    own = parts_in(result)
    assert len(own) == parts
    assert sum(p.plants for p in own) == pattern.count * clump
    together = np.concatenate([p.stations for p in own])
    apart = np.hypot(*(together[:, None] - pattern.stations[None]).transpose(2, 0, 1))
    assert apart.min(axis=0).max() < 1e-5
    assert apart.min(axis=1).max() < 1e-5


@given(WAYS, RHYTHMS, st.dates(date(2027, 3, 10), date(2027, 6, 30)))
def test_parts_come_one_after_the_other(way, rhythm, on):
    result = again(radishes(on=on), rhythm, way, 3)
    days = [p.on for p in result.parts]
    assert days[0] == on
    assert days == sorted(set(days))
    assert [p.start.on for p in parts_in(result)] == days
    if rhythm.between is Between.STARTS:
        assert [(b - on).days for b in days[1:]] == [rhythm.days, 2 * rhythm.days]
    else:
        first = result.parts[0].first
        assert all(abs((p.first - first).days - n * rhythm.days) <= 1 for n, p in enumerate(result.parts))


def test_harvests_told_are_those_of_the_engine():
    result = again(radishes())
    report = check(result.garden)
    for part in result.parts:
        fit = report.plantings[part.id]
        assert (fit.harvest_first, fit.harvest_last) == (part.first, part.last)
        early, _, late = part.window.first
        assert early <= part.first <= late


def test_as_many_parts_as_ripen_and_no_more():
    """Dwarf beans are tender: the last part ripens before the first frost, another would not."""
    beans = garden(row("r", "dwarf-bean", on=date(2027, 5, 20)), beds=[bed(length=12, width=6)])
    result = succeed(beans, "l1", "r", Rhythm(14), Way.COPIES, CROPS)
    assert all(p.first < date(2027, 10, 20) for p in result.parts)
    more = planted(CROPS.resolve("dwarf-bean"), result.parts[-1].on + timedelta(days=14))
    assert not follow(site(), [more], Weeks(date(2027, 1, 1), 53)).ripe[0]


def test_the_rest_of_the_garden_is_shared():
    value = radishes()
    result = again(value, way=Way.COPIES, parts=3)
    assert result.garden.layouts[0].beds[0] is value.layouts[0].beds[0]
    assert result.garden.site is value.site
    assert value == radishes()


def test_the_first_part_keeps_its_id_and_start_and_the_same_garden_gives_the_same_parts():
    one, two = again(radishes()), again(radishes())
    assert one.garden == two.garden
    first, *rest = parts_in(one)
    assert first.id == "r"
    assert first.start == radishes().layouts[0].plantings[0].start
    assert [p.id for p in rest] == ["r-2", "r-3", "r-4"]
    assert {p.succession for p in (first, *rest)} == {"r"}


def test_copies_lie_on_free_ground_and_say_where_they_do_not():
    wide = again(radishes(), way=Way.COPIES, parts=3)
    assert wide.crowded == frozenset()
    crowd = garden(
        row("r", "radish", on=date(2027, 3, 25), pattern=FOUR_ROWS),
        row("k", "leek", on=date(2027, 3, 1), pattern=edits.rebuilt(FOUR_ROWS, origin=(0.0, 0.6))),
        beds=[bed(width=1.2, length=3.0)],
    )  # fmt: skip
    result = succeed(crowd, "l1", "r", Rhythm(7), Way.COPIES, CROPS, 3)
    assert result.crowded == {"r-2", "r-3"}


def test_raised_plants_keep_their_nursery_time_and_ends_follow_the_harvest():
    start = Start(kind="raised", on=date(2027, 4, 20), sown_on=date(2027, 3, 23), pinned=True)
    planting = row("r", "lettuce", start=start, end=date(2027, 7, 31))
    value = garden(planting, beds=[bed(width=3.0)])
    first, second, _ = parts_in(succeed(value, "l1", "r", Rhythm(10), Way.COPIES, CROPS, 3))
    assert second.start.on - second.start.sown_on == timedelta(days=28)
    assert first.start.pinned
    assert not second.start.pinned
    told_ = told(succeed(value, "l1", "r", Rhythm(10), Way.COPIES, CROPS, 3).garden, "l1", "r", CROPS)
    one, two, _ = told_.parts
    assert second.end - first.end == two.first - one.first


def test_varieties_go_on_where_the_row_before_ended():
    pattern = Rows(length_m=1.0, rows=2, spacing_m=0.2, row_spacing_m=0.3)  # five plants a row: A B A B A
    value = garden(
        row("r", "cabbage", pattern=pattern, varieties=("tall", "small"), on=date(2027, 4, 15)),
        varieties=strategies.VARIETIES,
    )
    crops = catalogue().with_own(value.crops, value.varieties)
    result = succeed(value, "l1", "r", Rhythm(14), Way.ROWS, crops, 2)
    assert [p.varieties for p in parts_in(result)] == [("tall", "small"), ("small", "tall")]


# evenness


def part(first, last, plants=10, on=date(2027, 4, 1)):
    return Part("p", on, plants, first, last, Window(None, None, 1.0, 0.0))


def test_an_even_supply_has_no_variation():
    """Four parts of 14 days, one after the other: as much each week."""
    days = [date(2027, 6, 1) + timedelta(days=14 * n) for n in range(4)]
    weekly = weekly_harvest([part(d, d + timedelta(days=13)) for d in days])
    assert weekly == pytest.approx([5.0] * 8)
    assert evenness(weekly) == pytest.approx(0.0)


def test_a_week_with_and_a_week_without_varies_by_its_own_mean():
    """Weeks of 10, 0, 10, 0, 10: mean 6, standard deviation √24, by hand √24 / 6 = 0.8165."""
    days = [date(2027, 6, 1) + timedelta(days=14 * n) for n in range(3)]
    weekly = weekly_harvest([part(d, d + timedelta(days=6)) for d in days])
    assert weekly == pytest.approx([10, 0, 10, 0, 10])
    assert evenness(weekly) == pytest.approx(0.8165, abs=1e-4)


def test_a_cut_last_week_counts_at_its_rate():
    assert weekly_harvest([part(date(2027, 6, 1), date(2027, 6, 10))]) == pytest.approx([7.0, 7.0])


@given(
    st.lists(st.tuples(st.integers(0, 90), st.integers(0, 40), st.integers(1, 99)), min_size=1, max_size=9)
)
def test_no_harvest_is_lost_between_weeks(spans):
    day = date(2027, 6, 1)
    parts = [part(day + timedelta(days=a), day + timedelta(days=a + n), plants) for a, n, plants in spans]
    weekly = weekly_harvest(parts)
    begin, end = min(p.first for p in parts), max(p.last for p in parts)
    cut = ((end - begin).days + 1) % 7
    lengths = np.full(len(weekly), 1.0)
    lengths[-1] = cut / 7 if cut else 1.0
    assert float(weekly @ lengths) == pytest.approx(sum(p.plants for p in parts))


def test_nothing_harvested_has_no_evenness():
    assert evenness(weekly_harvest([part(None, None)])) is None


def test_harvests_apart_are_evener_than_starts_apart_in_spring():
    """Why degree-days do the work: evenly sown, the first parts ripen all at once."""
    starts, harvests = (again(radishes(), Rhythm(10, b)) for b in (Between.STARTS, Between.HARVESTS))
    gaps = [np.diff([p.first.toordinal() for p in r.parts]) for r in (starts, harvests)]
    assert np.ptp(gaps[1]) < np.ptp(gaps[0])


# as a group


def test_moving_a_group_moves_all_but_what_is_pinned_or_locked():
    result = again(radishes())
    value = edits.change(result.garden, "l1", "r-3", locked=True)
    pinned = edits.rebuilt(value.find("l1", "r-2").start, pinned=True)
    value = edits.change(value, "l1", "r-2", start=pinned)
    shifted = shift_group(value, "l1", result.group, 5)
    assert shifted.stayed == {"r-2", "r-3"}
    for before in members(value.layout("l1"), "r"):
        after = shifted.garden.find("l1", before.id)
        by = 0 if before.id in shifted.stayed else 5
        assert after.start.on - before.start.on == timedelta(days=by)


@given(st.integers(-60, 60))
def test_moving_there_and_back_changes_nothing(days):
    value = again(radishes()).garden
    there = shift_group(value, "l1", "r", days).garden
    assert shift_group(there, "l1", "r", -days).garden == value


@given(st.integers(3, 20), st.integers(3, 20), st.sampled_from(Between))
def test_another_interval_is_that_of_a_succession_made_so(one, two, between):
    made = again(radishes(), Rhythm(two, between)).garden
    changed = respace(again(radishes(), Rhythm(one)).garden, "l1", "r", Rhythm(two, between), CROPS)
    assert changed.garden == made


def test_pinned_and_locked_parts_keep_their_day_when_the_interval_changes():
    result = again(radishes())
    value = edits.change(result.garden, "l1", "r-3", locked=True)
    pinned = edits.rebuilt(value.find("l1", "r-2").start, pinned=True)
    value = edits.change(value, "l1", "r-2", start=pinned)
    changed = respace(value, "l1", "r", Rhythm(6), CROPS)
    assert changed.stayed == {"r-2", "r-3"}
    for name in ("r", "r-2", "r-3"):
        assert changed.garden.find("l1", name) is value.find("l1", name)
    assert changed.garden.find("l1", "r-4").start.on == date(2027, 3, 25) + timedelta(days=18)


def test_the_interval_of_a_succession_is_read_from_its_starts():
    assert interval_of(parts_in(again(radishes(), Rhythm(9)))) == 9


# refusals


def locked(value):
    return edits.change(value, "l1", "r", locked=True)


LATE = garden(row("r", "dwarf-bean", on=date(2027, 9, 1)))
ONE_ROW = radishes(pattern=Rows(length_m=3.0, spacing_m=0.05, row_spacing_m=0.15))
BEAN = garden(row("r", "dwarf-bean", on=date(2027, 8, 1)))


@pytest.mark.parametrize(("value", "rhythm", "way", "parts", "words"), [
    (radishes(), Rhythm(0), Way.ROWS, None, "interval is 0 days: allowed is 1"),
    (radishes(), Rhythm(14), Way.ROWS, 1, "parts is 1: allowed is 2"),
    (radishes(), Rhythm(14), Way.ROWS, 5, "4 rows: too few for 5 parts"),
    (ONE_ROW, Rhythm(14), Way.ROWS, None, "one row only"),
    (LATE, Rhythm(14), Way.COPIES, None, "not ripe before frost or winter"),
    (BEAN, Rhythm(60), Way.COPIES, None, "too late in the year for a second part: started 60 days later"),
    (BEAN, Rhythm(60, Between.HARVESTS), Way.COPIES, None, "too late .* with a first harvest 60 days later"),
    (radishes(), Rhythm(60), Way.COPIES, 20, "only . parts would be ripe before frost or winter, not 20"),
    (locked(radishes()), Rhythm(14), Way.ROWS, None, "locked"),
    (garden(row("r", "rhubarb", kind="set")), Rhythm(14), Way.COPIES, None, "perennial is started once"),
    (radishes(kind="volunteer"), Rhythm(14), Way.ROWS, None, "Nobody starts a volunteer"),
    (radishes(end=date(2027, 4, 10)), Rhythm(14), Way.ROWS, None, "cleared before it is ripe"),
    (again(radishes()).garden, Rhythm(14), Way.COPIES, None, "part of a succession already"),
    (garden(row("other")), Rhythm(14), Way.COPIES, None, "no planting with the id 'r'"),
    (garden(), Rhythm(14), Way.COPIES, None, "no planting with the id 'r'"),
])  # fmt: skip
def test_what_cannot_be_done_is_said(value, rhythm, way, parts, words):
    with pytest.raises(Refusal, match=words):
        again(value, rhythm, way, parts)


def test_where_there_is_no_frost_a_year_is_the_limit():
    frostless = edits.rebuilt(radishes(), site=site(frost={"basis": "none"}))
    assert len(again(frostless, Rhythm(90), Way.COPIES).parts) == 5
    with pytest.raises(Refusal, match="5 parts would be ripe within a year, not 6"):
        again(frostless, Rhythm(90), Way.COPIES, 6)


def test_a_locked_planting_may_have_copies():
    assert len(again(locked(radishes()), way=Way.COPIES, parts=2).parts) == 2


@pytest.mark.parametrize("edit", [
    lambda g: shift_group(g, "l1", "nobody", 3),
    lambda g: respace(g, "l1", "nobody", Rhythm(7), CROPS),
    lambda g: told(g, "l1", "nobody", CROPS),
], ids=["move", "interval", "tell"])  # fmt: skip
def test_a_succession_that_is_not_there_is_told(edit):
    with pytest.raises(Refusal, match="no succession 'nobody'"):
        edit(radishes())


def test_a_move_beyond_all_years_is_refused():
    with pytest.raises(Refusal, match="allowed is at most"):
        shift_group(again(radishes()).garden, "l1", "r", 10**9)


def test_an_interval_that_runs_into_winter_is_refused_and_nothing_changes():
    value = again(radishes()).garden
    with pytest.raises(Refusal, match=r"only . parts would be ripe"):
        respace(value, "l1", "r", Rhythm(90), CROPS)


def test_a_last_part_alone_has_no_interval():
    value = edits.remove(again(radishes()).garden, "l1", ["r-2", "r-3", "r-4"])
    with pytest.raises(Refusal, match="one part left"):
        respace(value, "l1", "r", Rhythm(7), CROPS)
    assert len(again(value, way=Way.PARTS, parts=2).parts) == 2  # it may be started again
