"""Water: common practice of neighbours that want it alike, and of those that do not."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.water import sensitive, suffers_wet
from tests.fit.makers import judged, rows, spot
from tests.garden.makers import garden, site

CROPS = catalogue()


def water_findings(report):
    return [f for f in report.findings if f.kind.value == "water"]


@pytest.mark.parametrize("herb", ["thyme", "sage", "lavender", "rosemary"])
def test_dry_ground_herbs_strain_beside_a_thirsty_crop(herb):
    """Mediterranean herbs rot where the soil is kept moist: any herb growing leaflet."""
    report = judged(
        spot("herb", herb, [(0.0, 0.0)], date(2026, 4, 1), "set"),
        rows("wet", "celery", 2.0, 1, 0.3, 0.4, date(2027, 5, 25), x=-1.0, y=0.1),
    )
    (finding,) = water_findings(report)
    assert (finding.code, finding.verdict, finding.plantings) == (
        "unlike water", Verdict.STRAINS, ("herb", "wet"),
    )  # fmt: skip


def test_annuals_of_dry_ground_stand_water():
    report = judged(
        rows("dry", "french-marigold", 2.0, 1, 0.25, 0.3, date(2027, 5, 25)),
        rows("wet", "tomato", 2.0, 1, 0.45, 0.6, date(2027, 5, 25), y=0.35),
    )
    (finding,) = water_findings(report)
    assert (finding.code, finding.verdict) == ("unlike water", Verdict.SHARES)


@pytest.mark.parametrize(("one", "two"), [("thyme", "carrot"), ("leek", "celery"), ("thyme", "sage")])
def test_needs_one_step_apart_or_alike_are_nothing_to_tell(one, two):
    report = judged(
        rows("one", one, 2.0, 1, 0.25, 0.3, date(2027, 5, 1), "set"),
        rows("two", two, 2.0, 1, 0.25, 0.3, date(2027, 5, 1), y=0.3),
    )
    assert not [f for f in water_findings(report) if f.code == "unlike water"]


def test_no_crop_is_both_thirsty_and_harmed_by_wet():
    harmed = {c.id for c in CROPS.crops if suffers_wet(c)}
    assert {"thyme", "sage", "lavender", "rosemary"} <= harmed
    assert not harmed & {"celery", "mint", "french-marigold", "courgette"}


def one_stand(crop_id, kind, on=date(2027, 5, 1)):
    planting = spot("p", crop_id, [(0.0, 0.0)], on, kind)
    made = garden(planting)
    (stand,) = Standing(CROPS, site(), made.layouts[0]).of(made.layouts[0])["p"]
    return stand


def test_head_and_fruit_crops_are_sensitive_when_grown_and_no_longer_after_the_harvest():
    """UNL water tables: cabbage during head formation to harvest, tomato in flowering and fruiting."""
    cabbage = one_stand("cabbage", "raised")
    weeks = np.flatnonzero(sensitive(cabbage))
    assert cabbage.begin + 3 < weeks[0] <= weeks[-1] <= cabbage.weeks.index(cabbage.times.harvest_first)
    assert len(weeks) >= 3
    tomato = one_stand("tomato", "raised")
    assert np.flatnonzero(sensitive(tomato))[-1] <= tomato.weeks.index(tomato.times.harvest_last)


def test_whole_season_and_establishment_mean_what_they_say():
    spinach = one_stand("spinach", "sown", date(2027, 4, 1))  # "whole season" (Knott)
    assert sensitive(spinach).sum() == spinach.end - spinach.begin
    parsley = one_stand("parsley", "sown", date(2027, 4, 1))  # "establishment" (Knott)
    assert np.flatnonzero(sensitive(parsley)).tolist() == [
        parsley.begin,
        parsley.begin + 1,
        parsley.begin + 2,
    ]


def test_a_crop_without_a_known_sensitive_stage_has_none():
    assert CROPS.crop("kale").water_critical is None
    assert not sensitive(one_stand("kale", "raised")).any()


def test_thirsty_crops_on_the_same_ground_are_told_when():
    report = judged(
        rows("tall", "tomato", 3.0, 2, 0.45, 0.8, date(2027, 5, 25)),
        rows("low", "celery", 3.0, 1, 0.3, 0.8, date(2027, 5, 25), y=0.4),
    )
    (finding,) = [f for f in water_findings(report) if f.code == "thirsty together"]
    assert finding.verdict is Verdict.SHARES
    assert date(2027, 6, 10) < finding.first < finding.last < date(2027, 11, 1)
    assert finding.numbers["days"] >= 14
