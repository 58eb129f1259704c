"""The year's work from a layout: dates against the engine's, order, stable ids, common practice."""

from datetime import date, timedelta

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit import check
from gardencanvas.garden import edits
from gardencanvas.garden.doing import mark_done, unmark
from gardencanvas.garden.ground import Cover, LineSupport
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Start
from gardencanvas.measures.jobs import JobKind, jobs
from gardencanvas.resources_folder import resources
from gardencanvas.words.jobs import JobWords, jobs_table
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row


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


def test_the_last_picking_is_the_day_before_the_neighbour_closes_over_it(demo):
    layout = demo.layouts[0]
    closing = {
        f.plantings[0]: f.numbers["closes"]
        for f in check(demo, layout.id).findings
        if f.code in ("out in time", "too late")
    }
    for job in jobs(demo, layout.id):
        if job.kind is JobKind.LAST_PICKING:
            assert job.until == closing[job.item] - timedelta(days=1)


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
