"""Sentences about gaps and proposals: what they must name."""

from datetime import date

from gardencanvas.planner.gaps.answers import Miss, Why, Wishes
from gardencanvas.planner.gaps.open_ground import gaps
from gardencanvas.words import gaps as words
from gardencanvas.words.plain import Measure
from tests.fit.makers import spot
from tests.garden.makers import bed, garden, row
from tests.planner.gaps.askers import ask_place, day, surveyed

METRIC, IMPERIAL = Measure(), Measure("imperial")


def test_a_gap_names_its_area_neighbour_days_and_light():
    survey, _ = surveyed(garden(spot("p", "cabbage", [(0.3, 0.6)], on=day(5, 1))))
    (gap,) = gaps(survey, day(7, 1))
    said = words.gap_words(gap, survey.layout, survey.catalogue, METRIC)
    assert "m² beside Cabbage" in said
    assert "free" in said
    assert said.endswith("light")
    assert "sq" in words.gap_words(gap, survey.layout, survey.catalogue, IMPERIAL)


def test_the_years_figure():
    assert words.unused_words(0.375).startswith("38")
    assert "no bed" in words.unused_words(None)


def test_a_proposal_names_number_days_weight_and_why():
    some = garden(row())
    survey, _ = surveyed(some)
    answer = ask_place(some, (1.8, 0.9), day(6, 10), wishes=Wishes(tin=frozenset({"carrot"})))
    (proposal,) = answer.proposals
    assert words.title(proposal, survey.catalogue).startswith(f"{proposal.plants} × Carrot")
    assert words.start_words(proposal) == "sow on 10 June"
    weight = words.harvest_words(proposal, METRIC)
    assert "kg (" in weight
    assert "lb (" in words.harvest_words(proposal, IMPERIAL)
    low, high = weight.split("(")[1].rstrip(")").split("–")
    assert float(low) < float(high)
    assert f"{proposal.days} days" in words.why_words(proposal, METRIC)
    assert words.family_words(proposal) == ""


def test_raised_plants_tell_when_they_are_sown():
    some = garden()
    answer = ask_place(some, (1.8, 0.9), day(5, 25), wishes=Wishes(tin=frozenset({"tomato"})))
    said = words.start_words(answer.proposals[0], day(5, 25))
    assert said.startswith("plant out on")
    assert "from plants sown by" in said
    assert words.start_words(answer.proposals[0], day(1, 1)).startswith("sow under glass on")


def test_every_miss_has_a_sentence():
    some = garden(spot("p", "leek", [(0.3, 0.6)]), beds=(bed(),))
    survey, _ = surveyed(some)
    numbers = {
        Why.SEASON: {"next": date(2028, 3, 1)},
        Why.LIGHT: {"light": 0.31, "least": 0.5},
        Why.ROOM: {"short_m": 0.12, "spacing_m": 0.5, "by": "p", "until": date(2027, 9, 1)},
        Why.CLASH: {"code": "crowded", "kind": "crowding", "other": "p", "last": date(2027, 9, 1)},
    }
    must = {
        Why.SEASON: "1 March 2028", Why.LIGHT: "31", Why.ROOM: "Leek", Why.CLASH: "Leek",
        Why.OUTSIDE: "no bed", Why.NOTHING_LEFT: "No crop",
    }  # fmt: skip
    for why, said in must.items():
        miss = Miss(why, "carrot", None, numbers.get(why, {}))
        assert said in words.miss_words(miss, survey.layout, survey.catalogue, METRIC)
    never = Miss(Why.SEASON, "tomato")
    assert "no day in the year" in words.miss_words(never, survey.layout, survey.catalogue, METRIC)
