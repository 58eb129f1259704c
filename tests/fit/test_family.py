"""Neighbours: what trials say of them, told with their evidence and never more than they carry."""

from datetime import date
from itertools import combinations

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.interactions import Effect, among, interactions
from gardencanvas.fit.known import TRIALS, known
from gardencanvas.fit.report import Verdict
from tests.fit.makers import codes, judged, rows, words

CROPS = catalogue()
BY_ID = {i.id: i for i in interactions()}
MAY = date(2027, 5, 10)


def side_by_side(one, two, apart, on=MAY):
    a, b = CROPS.resolve(one), CROPS.resolve(two)
    return judged(
        rows("one", one, 3.0, 1, a.in_row_m.mid, 0.3, on, a.starts[0].value),
        rows("two", two, 3.0, 1, b.in_row_m.mid, 0.3, on, b.starts[0].value, y=apart),
    )


def family_findings(report):
    return [f for f in report.findings if f.kind.value == "family"]


def test_celery_beside_leek_gains_and_says_who_pays():
    """Baumann, Kropff & Bastiaans (2000): relative yield total about 1.10, leeks thinner, fewer weeds."""
    (finding,) = family_findings(side_by_side("leek", "celery", 0.3))
    assert (finding.code, finding.verdict) == ("trials", Verdict.SHARES)
    numbers = finding.numbers
    assert (numbers["low"], numbers["mid"], numbers["high"]) == (1.1, 1.1, 1.1)
    assert finding.plantings == ("one", "two")  # the leek, which pays
    assert BY_ID[numbers["cost"]].b == ("leek",)
    assert BY_ID[numbers["life"]].effect is Effect.FEWER_WEEDS
    assert numbers["evidence"] == "one trial"


def test_gain_is_told_with_range_and_number_of_observations():
    """Strawberry with broad bean: LER 1.91 (1.74–2.08), 6 observations in 1 paper (Paut et al. 2024)."""
    (finding,) = family_findings(side_by_side("strawberry", "broad-bean", 0.35, date(2027, 3, 20)))
    numbers = finding.numbers
    assert (numbers["low"], numbers["mid"], numbers["high"]) == (1.74, 1.91, 2.08)
    assert (numbers["observations"], numbers["papers"]) == (6, 1)
    assert finding.verdict is Verdict.SHARES


def test_pests_are_told_without_any_number():
    """Onion beside carrot: fewer carrot flies (Uvah & Coaker 1984); how many fewer here, nobody knows."""
    (finding,) = family_findings(side_by_side("carrot", "onion", 0.22, date(2027, 4, 10)))
    assert set(finding.numbers) <= {"life", "life_for", "evidence", "stations"}
    for crop_a, crop_b in combinations(("carrot", "onion", "leek", "cabbage", "white-clover", "tomato"), 2):
        about = known(CROPS.crop(crop_a), CROPS.crop(crop_b))
        if about.life is not None and about.gain is None:
            for f in family_findings(side_by_side(crop_a, crop_b, 0.2)):
                assert not {"low", "mid", "high"} & set(f.numbers)


def test_trials_that_report_a_loss_strain_the_loser_where_the_other_reaches_it():
    """Onions between tomatoes had fewer thrips and significantly less yield (Madras Agricultural Journal)."""
    report = side_by_side("onion", "tomato", 0.25, date(2027, 5, 1))
    (finding,) = family_findings(report)
    assert (finding.code, finding.verdict, finding.plantings[0]) == ("trials", Verdict.STRAINS, "one")
    assert BY_ID[finding.numbers["cost"]].id == "tomato-onion-loss"
    apart = family_findings(side_by_side("onion", "tomato", 0.45, date(2027, 5, 1)))
    assert all(f.verdict is Verdict.SHARES for f in apart)


def test_where_books_disagree_no_loss_is_charged():
    """Beans cost cabbage in two trials and not in a third (Guvenc & Yildirim 2006)."""
    about = known(CROPS.crop("cabbage"), CROPS.crop("dwarf-bean"))
    assert about.disputed
    found = family_findings(side_by_side("cabbage", "dwarf-bean", 0.25, date(2027, 5, 15)))
    assert found
    assert all(f.verdict is Verdict.SHARES for f in found)
    assert all(f.numbers.get("disputed") for f in found if "cost" in f.numbers)


def test_neighbours_of_one_family_share_and_are_told_what():
    report = side_by_side("cabbage", "kale", 0.5)
    (finding,) = family_findings(report)
    assert finding.code == "same family"
    assert finding.verdict is Verdict.SHARES
    assert finding.numbers["family"] == "Brassicaceae"
    assert "one trial" not in finding.numbers.values()
    foes = BY_ID[finding.numbers["foes"]]
    assert foes.effect in (Effect.SHARED_PEST, Effect.SHARED_DISEASE)


def test_far_ones_and_ones_after_another_are_no_neighbours():
    assert family_findings(side_by_side("cabbage", "kale", 1.5)) == []
    early = rows("one", "radish", 2.0, 1, 0.05, 0.2, date(2027, 4, 1), "sown")
    late = rows("two", "kale", 2.0, 1, 0.45, 0.5, date(2027, 7, 1), y=0.1)
    assert family_findings(judged(early, late)) == []


@pytest.mark.parametrize("crop_id", ["cabbage", "lettuce", "carrot", "tomato"])
def test_a_crop_beside_its_own_kind_is_nothing_to_tell(crop_id):
    assert not known(CROPS.crop(crop_id), CROPS.crop(crop_id)).matters


# Held in many gardening books, found in no trial of the pair: crops.interactions has them as tradition only.
TRADITION = [("dwarf-bean", "onion"), ("potato", "winter-squash"), ("beetroot", "climbing-bean")]


@pytest.mark.parametrize(("one", "two"), TRADITION)
def test_tradition_alone_says_nothing(one, two):
    crop_a, crop_b = CROPS.crop(one), CROPS.crop(two)
    told = [i for i in among(interactions(), crop_a, crop_b) if i.evidence == "tradition only"]
    assert told
    for finding in family_findings(side_by_side(one, two, 0.3, date(2027, 5, 20))):
        said = {finding.numbers.get(k) for k in ("gain", "cost", "life", "foes")}
        assert not said & {i.id for i in told}
    about = known(crop_a, crop_b)
    for said in (about.gain, *about.costs, about.life):
        assert said is None or said.evidence in TRIALS


def test_what_is_known_of_a_pair_is_the_same_seen_from_either():
    ids = [
        "leek",
        "celery",
        "carrot",
        "onion",
        "cabbage",
        "tomato",
        "sweetcorn",
        "winter-squash",
        "thyme",
        "lettuce",
    ]
    for one, two in combinations(ids, 2):
        a, b = known(CROPS.crop(one), CROPS.crop(two)), known(CROPS.crop(two), CROPS.crop(one))
        assert (a.gain, a.life, a.foes, a.family, a.disputed) == (
            b.gain,
            b.life,
            b.foes,
            b.family,
            b.disputed,
        )
        assert a.costs == tuple(reversed(b.costs))
        assert a.unlike_water == b.unlike_water


def test_both_plantings_of_a_pair_are_marked():
    report = side_by_side("carrot", "parsley", 0.25, date(2027, 4, 20))
    assert words(report) == {"one": "shares", "two": "shares"}
    assert "trials" in codes(report, "two")
