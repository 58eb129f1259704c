"""Every code has a sentence; sentences name who, when and how much, and never markup."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import garden_from_bytes
from gardencanvas.fit import check
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Finding, FitReport, Kind, Verdict
from gardencanvas.resources_folder import resources
from gardencanvas.words.findings import SENTENCES, headline, reason
from gardencanvas.words.plain import THIN, Measure, day, percent, span
from tests.garden.makers import garden, row


def test_every_code_of_the_engine_has_a_sentence():
    assert set(SENTENCES) == {str(code) for code in Code}


def _demo():
    return garden_from_bytes((resources() / "demo" / "demo.gardencanvas").read_bytes(), "demo")


def test_every_finding_of_the_demo_can_be_said():
    value = _demo()
    report = check(value)
    assert report.findings
    for finding in report.findings:
        said = reason(finding, value, report.layout, catalogue())
        assert said.endswith(".")
        assert said[0].isupper()
        assert "p-" not in said  # names, not ids
        assert len(said) < 260


def test_a_sentence_carries_the_names_dates_and_numbers_of_its_finding():
    finding = Finding(
        id="shading:p-1:p-2", kind=Kind.SHADING, verdict=Verdict.CLASHES, plantings=("p-1", "p-2"),
        first=date(2027, 7, 3), last=date(2027, 8, 1), code="shaded",
        numbers={"light_left": 0.41, "light_needed": 0.6, "light_least": 0.45, "taken": 0.5, "stations": 3},
        source="monsi-saeki", place=(0.0, 0.0), stations=np.array([0], dtype=np.int32),
    )  # fmt: skip
    value = garden(row("p-1", "kohlrabi"), row("p-2", "leek"))
    said = reason(finding, value, "l1", catalogue())
    for part in ("Kohlrabi", "Leek", "3 July", f"41{THIN}%", f"60{THIN}%", f"45{THIN}%"):
        assert part in said
    report = FitReport("l1", (date(2027, 1, 1), date(2027, 12, 31)), check(value).plantings, (finding,))
    title, why = headline(report, "p-1", value, catalogue())
    assert title == "Kohlrabi: clashes with Leek from 3 July"
    assert why == said


@pytest.mark.parametrize(
    ("others", "said"),
    [
        ({"days_cold": 21, "days_warm": 3}, "as warm as few are, only 3 days to spare"),
        ({"days_cold": -4, "days_warm": 30}, "as cold as few are, 4 days late"),
        ({"days_cold": 14, "days_warm": 13}, None),
        ({}, None),
    ],
)
def test_days_to_spare_are_told_with_the_scantier_of_a_cold_and_a_warm_year(others, said):
    finding = Finding(
        id="timing:p-1:p-2", kind=Kind.TIMING, verdict=Verdict.SHARES, plantings=("p-1", "p-2"),
        first=date(2027, 7, 1), last=date(2027, 7, 13), code="out in time",
        numbers={"days": 12, "closes": date(2027, 7, 13), "harvest_last": date(2027, 7, 1), **others},
        source="common-practice", place=(0.0, 0.0), stations=np.array([0], dtype=np.int32),
    )  # fmt: skip
    words = reason(finding, garden(row("p-1", "radish"), row("p-2", "leek")), "l1", catalogue())
    assert "12 days before" in words
    assert ("one year of ten" in words) is (said is not None)
    assert said is None or said in words


@pytest.mark.parametrize(
    ("first", "last", "words"),
    [
        (date(2027, 6, 12), date(2027, 7, 3), "12 June – 3 July"),
        (date(2027, 6, 12), date(2027, 6, 30), "12 – 30 June"),
        (date(2027, 6, 12), date(2027, 6, 12), "12 June"),
        (date(2027, 11, 1), date(2028, 2, 1), "1 November 2027 – 1 February 2028"),
    ],
)
def test_spans(first, last, words):
    assert span(first, last) == words


def test_units():
    """1 in = 2.54 cm and 1 ft = 12 in by definition (international yard and pound agreement, 1959)."""
    metric, imperial = Measure("metric"), Measure("imperial")
    assert metric.small(0.3) == f"30{THIN}cm"
    assert metric.small(1.5) == f"1.5{THIN}m"
    assert imperial.small(0.3048) == f"12{THIN}in"
    assert imperial.large(3.048) == f"10′{THIN}0″"
    assert metric.sides(3.6, 1.2) == f"3.60 × 1.20{THIN}m"
    assert imperial.area(9.290304) == f"100{THIN}sq{THIN}ft"
    assert metric.range(0.25, 0.4) == f"25–40{THIN}cm"
    assert percent(0.725) in {f"72{THIN}%", f"73{THIN}%"}
    assert day(date(2027, 7, 12)) == "12 July"
