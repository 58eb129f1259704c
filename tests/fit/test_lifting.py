"""Lifting: common practice keeps a fork's width between what is dug and what goes on growing.

No table gives the width; the limits name themselves as common practice. The cases are those every grower
knows: a root crop dug between rows that must stand on, and the same where either is out first.
"""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.lifting import lifted_wide
from gardencanvas.fit.report import Verdict
from tests.fit.makers import codes, judged, rows

POTATOES = rows("dug", "potato-early", 3.0, 2, 0.3, 0.6, date(2027, 4, 1), "set")


def beside(crop, on, apart=0.25, kind="raised"):
    return judged(POTATOES, rows("low", crop, 3.0, 1, 0.25, 0.3, on, kind, y=0.15 - apart))


def finding(report):
    return next(f for f in report.findings if f.code == "dug beside")


def test_a_shallow_crop_that_stands_on_beside_potatoes_is_torn_when_they_are_dug():
    report = judged(POTATOES, rows("low", "strawberry", 3.0, 1, 0.4, 0.3, date(2027, 4, 1), y=-0.1))
    found = finding(report)
    assert found.plantings == ("low", "dug")
    assert found.verdict is Verdict.STRAINS
    dug = report.plantings["dug"]
    assert (found.first, found.last) == (dug.harvest_first, dug.harvest_last)
    assert found.numbers["until"] > dug.harvest_last
    assert found.numbers["distance_m"] == pytest.approx(0.25, abs=0.03)
    assert found.numbers["distance_m"] < found.numbers["reach_m"]


def test_a_fork_away_it_is_not():
    far = judged(POTATOES, rows("low", "strawberry", 3.0, 1, 0.4, 0.3, date(2027, 4, 1), y=-0.45))
    assert "dug beside" not in codes(far, "low")


def test_what_is_out_first_or_goes_in_after_is_not():
    assert "dug beside" not in codes(beside("lettuce", date(2027, 4, 20)), "low")
    assert "dug beside" not in codes(beside("strawberry", date(2027, 8, 20)), "low")


def test_deep_roots_go_below_the_fork():
    """Parsnip and asparagus root a metre deep (FAO-56 table 22 for asparagus 1.2–1.8 m)."""
    report = judged(POTATOES, rows("low", "asparagus", 3.0, 1, 0.4, 0.3, date(2027, 4, 1), "set", y=-0.1))
    assert "dug beside" not in codes(report, "low")


def test_only_what_is_dug_breaks_the_soil_wide():
    known = catalogue()
    assert lifted_wide(known.resolve("potato"))
    assert not lifted_wide(known.resolve("carrot"))
    assert not lifted_wide(known.resolve("lettuce"))
