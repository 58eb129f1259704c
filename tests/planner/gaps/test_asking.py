"""The three questions: replayed through the check, against brute force, and with odd input."""

from datetime import date, timedelta

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.edits import add
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import Climate, Frost
from gardencanvas.planner.gaps.answers import QUICK_D, Part, Weights, Why, Wishes
from gardencanvas.planner.gaps.asking import Question, by_date, by_place, finished
from gardencanvas.planner.gaps.claims import STEM_M
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.resources_folder import resources
from tests.fit.makers import spot
from tests.garden.makers import bed, garden, row, site
from tests.planner.gaps.askers import LAYOUT, ask_crop, ask_date, ask_place, day, surveyed


def demo():
    return open_garden(resources() / "demo" / "demo.gardencanvas")


def clashing(report):
    """Clashing stations of each planting."""
    return {p.id: int((p.station_verdicts == Verdict.CLASHES).sum()) for p in report.plantings.values()}


def replayed(some, proposal, layout_id=LAYOUT, before=None):
    """Plant a proposal and check the garden afresh: nothing new clashes, and its verdict is as told."""
    before = before if before is not None else clashing(check(some, layout_id))
    after = check(plant(some, layout_id, proposal), layout_id)
    fit = after.plantings[proposal.planting.id]
    assert fit.verdict < Verdict.CLASHES
    assert fit.verdict == proposal.verdict
    assert (fit.harvest_first, fit.harvest_last) == (proposal.harvest_first, proposal.harvest_last)
    assert fit.light == pytest.approx(proposal.light)
    for name, stations in clashing(after).items():
        assert stations <= before.get(name, 0)
    for finding in after.of(fit.id):
        assert finding.verdict < Verdict.CLASHES
        if finding.verdict is Verdict.STRAINS:
            assert finding.id in {f.id for f in proposal.strains}
    for effect in proposal.effects:
        assert after.plantings[effect.planting].verdict == effect.after


def middle_of(there):
    x, y = np.mean(there.outline, axis=0)
    return float(x), float(y)


def test_every_proposal_for_every_bed_of_the_demo_holds_in_the_check():
    some = demo()
    layout = some.layouts[0]
    before = clashing(check(some, layout.id))
    for there in (layout.beds[0], layout.beds[3]):
        answer = ask_place(some, middle_of(there), day(6, 10, layout.year), layout.id)
        assert answer.proposals
        for proposal in answer.proposals:
            assert proposal.bed == there.id
            replayed(some, proposal, layout.id, before)
        assert [p.score for p in answer.proposals] == sorted(
            (p.score for p in answer.proposals), reverse=True
        )
        assert len({p.crop for p in answer.proposals}) == len(answer.proposals)


def test_every_proposal_by_crop_and_by_date_holds_too():
    some = demo()
    layout = some.layouts[0]
    answer = ask_crop(some, "lettuce", day(6, 10, layout.year), layout.id)
    assert answer.proposals
    assert {p.crop for p in answer.proposals} == {"lettuce"}
    weekly = ask_date(some, day(6, 10, layout.year), layout.id)
    assert weekly.proposals
    before = clashing(check(some, layout.id))
    for proposal in (*answer.proposals, *weekly.proposals):
        replayed(some, proposal, layout.id, before)
    for proposal in weekly.proposals:
        assert day(6, 10, layout.year) in (proposal.planting.start.on, proposal.sow_on)


def test_planting_is_a_pure_edit():
    some = garden(row())
    proposal = ask_place(some, (1.8, 0.9), day(6, 1)).proposals[0]
    twice = plant(plant(some, LAYOUT, proposal), LAYOUT, proposal)
    assert len(some.layouts[0].plantings) == 1
    assert len(twice.layouts[0].plantings) == 3
    assert twice.layouts[0].plantings[0] is some.layouts[0].plantings[0]


SMALL = [
    # crop asked for, its start, what stands there
    ("lettuce", day(6, 4), spot("p", "cabbage", [(0.35, 0.3)], on=day(5, 10))),
    ("radish", day(5, 7), spot("p", "tomato", [(0.3, 0.3), (0.7, 0.3)], on=day(5, 20))),
    ("cabbage", day(6, 4), spot("p", "cabbage", [(0.2, 0.3)], on=day(5, 10))),
    ("cabbage", day(6, 4), spot("p", "cauliflower", [(0.25, 0.3), (0.75, 0.3)], on=day(5, 10))),
    ("winter-squash", day(5, 25), spot("p", "winter-squash", [(0.5, 0.3)], on=day(5, 20))),
    ("beetroot", day(6, 4), spot("p", "leek", [(0.15 + 0.15 * k, 0.3) for k in range(5)], on=day(5, 10))),
]


@pytest.mark.parametrize(("crop", "since", "there"), SMALL, ids=[f"{c}-{p.crop}" for c, _, p in SMALL])
def test_a_place_is_found_wherever_brute_force_finds_one(crop, since, there):
    """Every point of a 2 cm grid, each tried as a single plant on the engine, on the same days."""
    some = garden(there, beds=(bed(length=1.0, width=0.6),))
    answer = ask_crop(some, crop, since)
    starts = [(p.planting.start.kind, p.planting.start.on) for p in answer.proposals]
    free = brute(some, crop, starts[0] if starts else ("raised", since))
    assert bool(answer.proposals) or not free
    for proposal in answer.proposals:
        replayed(some, proposal)


def brute(some, crop, start):
    """Whether one plant more, at any point of a 2 cm grid, does not clash.

    Points are left out within a hand's breadth of a stem, and within the books' closest spacing of its like.
    """
    from gardencanvas.fit import Checker

    checker = Checker()
    before = clashing(checker.update(some, LAYOUT))
    there = some.layouts[0].plantings
    own = catalogue().crop(crop).in_row_m.low
    least = {p.crop: max(STEM_M, own) if p.crop == crop else STEM_M for p in there}
    for x in np.arange(0.02, 1.0, 0.02):
        for y in np.arange(0.02, 0.6, 0.02):
            if any(np.hypot(*(p.stations - (x, y)).T).min() < least[p.crop] for p in there):
                continue
            one = spot("new", crop, [(float(x), float(y))], on=start[1], kind=start[0])
            report = checker.update(add(some, LAYOUT, [one]), LAYOUT)
            after = clashing(report)
            if all(n <= before.get(name, 0) for name, n in after.items()):
                return True
    return False


def test_a_full_bed_has_no_place_and_says_what_is_missing():
    """A cabbage in the middle of a small area: a second one has to wait, and is told for what."""
    some = garden(spot("p", "cabbage", [(0.9, 0.6)], on=day(5, 20)))
    area = ((0.65, 0.35), (1.15, 0.35), (1.15, 0.85), (0.65, 0.85))
    answer = ask_place(some, area, day(5, 25), wishes=Wishes(tin=frozenset({"cabbage"})))
    assert not answer.proposals
    (miss,) = answer.misses[:1]
    assert miss.why in (Why.ROOM, Why.CLASH)
    assert miss.crop == "cabbage"
    assert miss.numbers["by" if miss.why is Why.ROOM else "other"] == "p"


def test_outside_every_bed():
    answer = ask_place(garden(), (20.0, 20.0), day(6, 1))
    assert not answer.proposals
    assert [m.why for m in answer.misses] == [Why.OUTSIDE]
    area = ((20.0, 20.0), (21.0, 20.0), (21.0, 21.0))
    assert [m.why for m in ask_place(garden(), area, day(6, 1)).misses] == [Why.OUTSIDE]


def test_frozen_months_bring_the_next_day_to_start():
    answer = ask_place(garden(), (1.0, 0.6), day(12, 20))
    for proposal in answer.proposals:  # what is hardy enough for December, if anything
        replayed(garden(), proposal)
    tender = ask_crop(garden(), "tomato", day(12, 1))
    assert not tender.proposals
    (miss,) = tender.misses
    assert miss.why is Why.SEASON
    assert miss.numbers["next"] > day(12, 31)


def test_an_area_smaller_than_any_plant():
    corner = ((0.5, 0.5), (0.51, 0.5), (0.51, 0.51), (0.5, 0.51))
    answer = ask_place(garden(), corner, day(6, 1))
    assert not answer.proposals
    assert {m.why for m in answer.misses} == {Why.ROOM}
    assert all(m.numbers["short_m"] > 0.0 for m in answer.misses)


def test_an_area_that_crosses_itself_or_is_no_area():
    bow = ((0.0, 0.0), (2.0, 1.0), (2.0, 0.0), (0.0, 1.0))
    assert ask_place(garden(), bow, day(6, 1)).proposals
    assert [m.why for m in ask_place(garden(), ((0.0, 0.0), (1.0, 0.0)), day(6, 1)).misses] == [Why.OUTSIDE]


def test_an_area_keeps_its_plants():
    area = ((0.4, 0.2), (1.6, 0.2), (1.6, 1.0), (0.4, 1.0))
    for proposal in ask_place(garden(), area, day(5, 20)).proposals:
        x, y = proposal.planting.stations.T
        assert x.min() >= 0.4
        assert x.max() <= 1.6
        assert y.min() >= 0.2
        assert y.max() <= 1.0


@pytest.mark.parametrize(
    ("latitude", "mean", "frost"),
    [(1.0, 27.0, Frost(basis="none")), (78.0, -8.0, Frost(basis="none"))],
    ids=["tropics", "always frozen"],
)
def test_places_without_seasons(latitude, mean, frost):
    there = site(latitude_deg=latitude, climate=Climate(mean_c=(mean,) * 12), frost=frost)
    some = garden(site=there)
    answer = ask_place(some, (1.0, 0.6), day(6, 1))
    if mean > 0:
        assert answer.proposals
        replayed(some, answer.proposals[0])
    else:
        assert not answer.proposals
        assert answer.misses


def test_wishes():
    some, at, since = garden(), (1.0, 0.6), day(5, 20)
    own = ask_place(some, at, since, wishes=Wishes(tin=frozenset({"leek", "radish"})))
    assert {p.crop for p in own.proposals} == {"leek", "radish"}
    both = Wishes(tin=frozenset({"leek", "radish"}), wanted=frozenset({"radish", "basil"}))
    assert {p.crop for p in ask_place(some, at, since, wishes=both).proposals} == {"radish"}
    for proposal in ask_place(some, at, since, wishes=Wishes(no_raising=True)).proposals:
        assert proposal.planting.start.kind in ("sown", "set")
        assert proposal.sow_on == proposal.planting.start.on
    known = surveyed(some)[0].catalogue
    for proposal in ask_place(some, at, since, wishes=Wishes(quick=True)).proposals:
        crop = known.resolve(proposal.crop, proposal.variety)
        sown = proposal.planting.start.kind == "sown"
        assert (crop.harvest_from_sowing_d if sown else crop.harvest_from_planting_d).mid <= QUICK_D
    nothing = ask_place(some, at, since, wishes=Wishes(tin=frozenset()))
    assert [m.why for m in nothing.misses] == [Why.NOTHING_LEFT]


def test_a_family_grown_here_last_year_rests():
    some = garden()
    last = some.layouts[0].model_copy(
        update={"id": "l0", "name": "Before", "year": 2026, "kept": True, "plantings": (row(crop="cabbage"),)}
    )
    some = some.model_copy(update={"layouts": (last, *some.layouts)})
    wishes = Wishes(tin=frozenset({"kale", "turnip", "lettuce"}))
    at, since = (1.0, 0.1), day(5, 20)
    every = ask_place(some, at, since, wishes=wishes)
    assert {p.family_last for p in every.proposals if p.crop in ("kale", "turnip")} == {2026}
    rested = Wishes(tin=wishes.tin, new_family=True)
    assert {p.crop for p in ask_place(some, at, since, wishes=rested).proposals} == {"lettuce"}


def test_weights_change_the_order():
    some, at, since = garden(), (1.0, 0.6), day(5, 20)
    wishes = Wishes(tin=frozenset({"radish", "cabbage", "parsnip"}))
    soon = ask_place(some, at, since, wishes=wishes, weights=Weights(0.0, 0.0, 1.0, 0.0, 0.0))
    assert soon.proposals[0].crop == "radish"
    much = ask_place(some, at, since, wishes=wishes, weights=Weights(0.0, 1.0, 0.0, 0.0, 0.0))
    harvests = [p.harvest_kg[1] for p in much.proposals]
    assert harvests == sorted(harvests, reverse=True)
    for proposal in (*soon.proposals, *much.proposals):
        assert all(0.0 <= proposal.parts[part] <= 1.0 for part in Part)


def test_the_expected_harvest_is_the_books_yield_of_the_ground():
    """An unshaded bed: 12 heads of a crop that is given by the square metre bear what their ground does."""
    some = garden(beds=(bed(length=1.2, width=1.2),))
    known = surveyed(some)[0].catalogue
    crop = known.crop("carrot")
    (proposal,) = ask_place(some, (0.6, 0.6), day(5, 20), wishes=Wishes(tin=frozenset({"carrot"}))).proposals
    resolved = known.resolve("carrot", proposal.variety)
    ground = proposal.plants * resolved.in_row_m.mid * resolved.between_rows_m.mid
    assert proposal.ground_m2 == pytest.approx(ground)
    assert proposal.harvest_kg == pytest.approx(
        tuple(ground * getattr(crop.yield_kg_m2, k) for k in ("low", "mid", "high"))
    )


def test_cancelling_stops_and_brings_nothing():
    survey, checker = surveyed(garden(row()))
    answer = finished(by_place(survey, checker, (1.0, 0.8), Question(day(6, 1))), lambda: True)
    assert answer.proposals == ()


def test_a_search_tells_how_far_it_is():
    survey, checker = surveyed(garden(row()))
    seen = list(by_date(survey, checker, Question(day(6, 1))))
    assert all(0 <= p.done <= p.of for p in seen)
    assert [len(p.proposals) for p in seen] == sorted(len(p.proposals) for p in seen)


def test_nothing_is_started_before_the_day_asked_about():
    for proposal in ask_place(garden(row()), (1.0, 0.8), day(7, 14)).proposals:
        assert proposal.planting.start.on >= day(7, 14)
        assert isinstance(proposal.planting, Planting)
        assert proposal.harvest_first - proposal.planting.start.on > timedelta(days=10)
        assert proposal.out <= date(2028, 12, 31)
