"""The year's work from a layout: dates against the engine's, order, stable ids, common practice."""

from datetime import date, timedelta

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import open_garden
from gardencanvas.fit import check
from gardencanvas.garden import edits
from gardencanvas.garden.doing import mark_done, unmark
from gardencanvas.garden.ground import Cover, LineSupport
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import Climate
from gardencanvas.measures.jobs import Job, JobKind, jobs
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.resources_folder import resources
from gardencanvas.season.radiation import monthly_evapotranspiration
from gardencanvas.words.jobs import JobWords, jobs_table
from gardencanvas.words.plain import Measure
from tests.garden.makers import MEANS, bed, garden, row, site


def by_kind(found, planting_id):
    return {j.kind: j for j in found if j.item == planting_id}


@pytest.fixture(scope="module")
def demo():
    return open_garden(resources() / "demo" / "demo.gardencanvas")


def test_a_raised_crop_is_sown_pricked_out_hardened_off_planted_and_picked_in_that_order():
    value = garden(row("p", "leek", kind="raised", on=date(2027, 5, 20)))
    found = by_kind(jobs(value, "l1"), "p")
    order = [JobKind.RAISE, JobKind.PRICK_OUT, JobKind.HARDEN_OFF, JobKind.PLANT_OUT, JobKind.LIFT]
    days = [found[k].on for k in order]
    assert days == sorted(days)
    nursery = catalogue().resolve("leek", None).nursery_d.mid
    assert found[JobKind.PLANT_OUT].on == date(2027, 5, 20)
    assert (date(2027, 5, 20) - found[JobKind.RAISE].on).days == round(nursery)
    assert found[JobKind.HARDEN_OFF].until == date(2027, 5, 19)
    assert 7 <= found[JobKind.HARDEN_OFF].numbers["days"] <= 10  # a week to ten days, common practice


def test_harvest_days_are_those_of_the_engine(demo):
    layout = demo.layouts[0]
    fits = check(demo, layout.id).plantings
    for job in jobs(demo, layout.id):
        if job.kind in (JobKind.PICK, JobKind.LIFT):
            assert (job.on, job.until) == (fits[job.item].harvest_first, fits[job.item].harvest_last)


def test_what_is_sown_in_place_has_no_nursery_and_large_seed_is_not_thinned():
    value = garden(row("bean", "dwarf-bean", on=date(2027, 5, 25)), row("carrot", "carrot", y=0.6))
    found = jobs(value, "l1")
    assert set(by_kind(found, "bean")) == {JobKind.SOW, JobKind.PICK, JobKind.CLEAR}
    assert {JobKind.SOW, JobKind.THIN, JobKind.LIFT} <= set(by_kind(found, "carrot"))


def test_a_volunteer_is_not_started_by_anybody():
    value = garden(row("p", "calendula", kind="volunteer"))
    assert not {JobKind.SOW, JobKind.SET, JobKind.RAISE} & set(by_kind(jobs(value, "l1"), "p"))


def test_a_support_is_up_before_its_climber_and_a_cover_on_and_off_in_its_time():
    net = LineSupport(id="net", kind="net", name="Net", begin=(0.0, 0.25), end=(3.0, 0.25), height_m=1.8)
    fleece = Cover(
        id="fleece", kind="fleece", name="Fleece", height_m=0.5, last=date(2027, 5, 20),
        outline=((0.0, 0.4), (3.2, 0.4), (3.2, 1.0), (0.0, 1.0)),
    )  # fmt: skip
    rows = Rows(origin=(0.0, 0.1), length_m=3.0, spacing_m=0.2, row_spacing_m=0.3)
    value = garden(
        row("bean", "climbing-bean", pattern=rows, on=date(2027, 5, 25)),
        row("carrot", "carrot", y=0.55, on=date(2027, 4, 1)),
        beds=(bed(),),
    )
    found = jobs(edits.add(value, "l1", [net, fleece]), "l1")
    up = next(j for j in found if j.kind is JobKind.SUPPORT)
    assert up.until < date(2027, 5, 25)
    on, off = (next(j for j in found if j.kind is k) for k in (JobKind.COVER, JobKind.UNCOVER))
    assert on.on == date(2027, 4, 1)
    assert off.on == date(2027, 5, 20)


def test_the_last_picking_is_the_day_before_the_neighbour_closes_over_it():
    wide = Rows(origin=(0.0, 0.5), length_m=3.0, spacing_m=0.6, row_spacing_m=0.3)
    made = garden(
        row("catch", "spinach", y=0.3, on=date(2027, 5, 1)),
        row("main", "courgette", pattern=wide, kind="raised", on=date(2027, 5, 10)),
    )
    (closes,) = [f.numbers["closes"] for f in check(made, "l1").findings if f.code == "too late"]
    (last,) = [j for j in jobs(made, "l1") if j.kind is JobKind.LAST_PICKING]
    assert (last.item, last.until, last.day("closes")) == ("catch", closes - timedelta(days=1), closes)
    pick = by_kind(jobs(made, "l1"), "catch")[JobKind.PICK]
    assert pick.on <= last.on < pick.until
    words = JobWords(made, made.layouts[0], catalogue(), Measure())
    assert "Courgette closes over it from 9 July" in words.detail(last)
    assert closes == date(2027, 7, 9)


def test_the_harvest_names_the_neighbour_it_must_be_out_for(demo):
    layout = demo.layouts[0]
    words = JobWords(demo, layout, catalogue(), Measure())
    lift = by_kind(jobs(demo, layout.id), "p-radish")[JobKind.LIFT]
    (finding,) = [f for f in check(demo, layout.id).findings if f.code == "out in time"]
    assert lift.day("closes") == finding.numbers["closes"] > lift.until
    assert "Cauliflower closes over it" in words.detail(lift)


def test_what_never_ripens_is_not_picked_but_cleared():
    found = by_kind(jobs(garden(row("p", "pepper", on=date(2027, 8, 20))), "l1"), "p")
    assert JobKind.SOW in found
    assert JobKind.CLEAR in found
    assert not {JobKind.PICK, JobKind.LIFT} & set(found)


def test_what_was_planted_years_ago_is_picked_but_not_set_again():
    found = by_kind(jobs(garden(row("p", "strawberry", kind="set", on=date(2024, 8, 20))), "l1"), "p")
    assert set(found) == {JobKind.PICK}
    assert found[JobKind.PICK].on.year == 2027


def test_garlic_of_last_autumn_is_work_of_this_layout():
    found = by_kind(jobs(garden(row("p", "garlic", kind="set", on=date(2026, 10, 20))), "l1"), "p")
    assert found[JobKind.SET].on == date(2026, 10, 20)


def test_seeds_to_sow_are_those_of_the_order(demo):
    layout = demo.layouts[0]
    lots = [SeedLot(id="l", crop="carrot", seeds=9, year=2026, tested=0.9, tested_on=date(2027, 3, 1))]
    order = {(x.crop, x.variety): x for x in seed_order(demo, layout.id, lots)}
    sown = {}
    for job in jobs(demo, layout.id, lots=lots):
        if "seeds" in job.numbers:
            sown[job.crop, job.variety] = sown.get((job.crop, job.variety), 0) + job.numbers["seeds"]
    assert len(sown) > 10
    assert sown == {k: order[k].sow for k in sown}
    assert order["carrot", None].tested
    untested = seed_order(demo, layout.id)
    assert order["carrot", None].sow < next(x.sow for x in untested if x.crop == "carrot")


DRY = {"mean_c": MEANS, "min_c": tuple(m - 5 for m in MEANS), "max_c": tuple(m + 5 for m in MEANS)}


def watering(rain_mm, crop="carrot"):
    place = site(climate=Climate(**DRY, rain_mm=(rain_mm,) * 12))
    made = garden(row("p", crop, on=date(2027, 5, 1)), site=place)
    return place, jobs(made, "l1")


def test_without_rain_a_bed_is_watered_while_something_stands_in_it():
    place, found = watering(0.0)
    (water,) = [j for j in found if j.kind is JobKind.WATER]
    (lift,) = [j for j in found if j.kind is JobKind.LIFT]
    assert abs((water.on - date(2027, 5, 1)).days) < 7
    assert abs((water.until - lift.until).days) < 7
    # Kc is 1.05 in the middle of a carrot's time (FAO-56 table 12); ET₀ of its month, seven days
    takes = monthly_evapotranspiration(place)
    assert water.count("litres") == pytest.approx(1.05 * 7 * takes[5:8].max(), rel=0.05)
    assert water.day("dry").month in (6, 7)


def test_rain_puts_watering_off_and_enough_of_it_does_away_with_it():
    _, some = watering(50.0)
    (water,) = [j for j in some if j.kind is JobKind.WATER]
    (dry,) = [j for j in watering(0.0)[1] if j.kind is JobKind.WATER]
    assert water.count("litres") < dry.count("litres")
    assert dry.on <= water.on <= water.until <= dry.until
    assert not [j for j in watering(400.0)[1] if j.kind is JobKind.WATER]


def test_where_rain_is_not_known_nothing_is_said_of_watering():
    assert JobKind.WATER not in {j.kind for j in jobs(garden(row("p", "carrot")), "l1")}


@pytest.mark.parametrize(
    ("crop", "kind", "said"),
    [
        ("dwarf-bean", JobKind.PICK, "boil hard"),
        ("parsnip", JobKind.THIN, "Gloves"),
        ("parsnip", JobKind.LIFT, "Gloves"),
        ("potato", JobKind.LIFT, "discard bitter"),
    ],
)
def test_cautions_come_with_the_job_they_matter_to(crop, kind, said):
    start = "set" if crop == "potato" else "sown"
    made = garden(row("p", crop, kind=start, on=date(2027, 5, 1)))
    words = JobWords(made, made.layouts[0], catalogue(), Measure())
    found = by_kind(jobs(made, "l1"), "p")
    assert said in words.detail(found[kind])
    first = min(found.values(), key=Job.key)
    assert "Caution" not in words.detail(first)  # nothing is picked or handled yet


def test_parts_of_a_succession_are_numbered_by_their_start():
    parts = [
        row(f"p{i}", "radish", y=0.2 * i, on=date(2027, 4, 1) + timedelta(days=14 * i), succession="s")
        for i in range(3)
    ]
    sown = [j for j in jobs(garden(*reversed(parts)), "l1") if j.kind is JobKind.SOW]
    assert [(j.item, j.numbers["part"], j.numbers["parts"]) for j in sown] == [
        ("p0", 1, 3), ("p1", 2, 3), ("p2", 3, 3),
    ]  # fmt: skip


def test_ids_stay_when_dates_change_and_none_comes_twice(demo):
    layout = demo.layouts[0]
    found = jobs(demo, layout.id)
    assert len({j.id for j in found}) == len(found)
    first = next(p for p in layout.plantings if p.start.kind == "raised")
    later = edits.change(
        demo, layout.id, first.id,
        start=Start(kind="raised", on=first.start.on + timedelta(days=3)),
    )  # fmt: skip
    again = {j.id: j for j in jobs(later, layout.id) if j.item == first.id}
    before = {j.id: j for j in found if j.item == first.id}
    assert JobKind.PLANT_OUT in {j.kind for j in again.values()}
    assert again[f"{first.id}:plant-out"].on == before[f"{first.id}:plant-out"].on + timedelta(days=3)


def test_jobs_come_in_the_order_of_the_year_and_say_what_to_do(demo):
    layout = demo.layouts[0]
    found = jobs(demo, layout.id)
    assert [j.on for j in found] == sorted(j.on for j in found)
    words = JobWords(demo, layout, catalogue(), Measure())
    table = jobs_table(found, words, {found[0].id: date(2027, 3, 1)})
    assert len(table) == len(found) + 1
    assert table[1][-1] == "2027-03-01"
    assert all(len(r) == len(table[0]) and r[4] for r in table)
    canes = next(j for j in found if j.kind is JobKind.SUPPORT)
    assert "eye height" in words.detail(canes)


def test_marks_of_what_was_done_are_kept_and_taken_back(demo):
    layout_id = demo.layouts[0].id
    done = mark_done(demo, layout_id, "p-1:sow", date(2027, 4, 2))
    assert [(d.job, d.on) for d in done.layout(layout_id).done] == [("p-1:sow", date(2027, 4, 2))]
    again = mark_done(done, layout_id, "p-1:sow", date(2027, 4, 3))
    assert len(again.layout(layout_id).done) == 1
    assert unmark(again, layout_id, "p-1:sow").layout(layout_id).done == ()
    assert unmark(demo, layout_id, "p-1:sow") is demo
