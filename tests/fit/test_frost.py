"""Frost and ripening against common practice at a site with last frost on 28 April, first on 20 October."""

from datetime import date

import pytest

from gardencanvas.fit.report import Kind, Verdict
from tests.fit.makers import judged, rows


def _found(crop, on, kind):
    report = judged(rows("p", crop, 3.0, 1, 0.3, 0.3, on, kind))
    return {f.code: f for f in report.findings}, report.plantings["p"]


@pytest.mark.parametrize(
    ("crop", "on", "kind"),
    [
        ("tomato", date(2027, 5, 25), "raised"),  # four weeks after the last frost
        ("dwarf-bean", date(2027, 5, 20), "sown"),
        ("broad-bean", date(2027, 2, 25), "sown"),  # hardy: frost does it no harm
        ("garlic", date(2026, 10, 20), "set"),
        ("leek", date(2027, 6, 5), "raised"),
        ("kale", date(2027, 6, 20), "raised"),
        ("radish", date(2027, 4, 10), "sown"),
    ],
)
def test_what_is_started_as_usual_has_no_frost_finding(crop, on, kind):
    found, _ = _found(crop, on, kind)
    assert "frost to come" not in found
    assert "seldom ripe" not in found


@pytest.mark.parametrize("crop", ["tomato", "basil", "courgette", "cucumber"])
def test_a_tender_crop_out_three_weeks_before_the_last_frost_is_told(crop):
    found, fit = _found(crop, date(2027, 4, 7), "raised")
    finding = found["frost to come"]
    assert finding.kind is Kind.FROST
    # With the frost date spread by 16 days, 21 days early is caught in about Φ(21/16) = 90 of 100 years.
    assert finding.numbers["risk_after"] == pytest.approx(0.905, abs=0.08)
    assert fit.verdict is Verdict.CLASHES


def test_planted_on_the_frost_date_itself_the_odds_are_even():
    found, _ = _found("tomato", date(2027, 4, 28), "raised")
    assert found["frost to come"].numbers["risk_after"] == pytest.approx(0.5, abs=0.1)
    assert found["frost to come"].verdict is Verdict.STRAINS


@pytest.mark.parametrize(
    ("crop", "kind"), [("winter-squash", "raised"), ("dwarf-bean", "sown"), ("sweetcorn", "sown")]
)
def test_a_warm_crop_begun_in_august_does_not_ripen(crop, kind):
    found, fit = _found(crop, date(2027, 8, 20), kind)
    assert found["seldom ripe"].numbers["ripens"] < 0.5
    assert found["seldom ripe"].kind is Kind.TIMING
    assert fit.verdict is Verdict.CLASHES


def test_later_is_never_at_more_risk_from_spring_frost():
    """Risk after a date can only fall as the date moves on (Thom's F(d) is a distribution)."""
    risks = []
    for on in (date(2027, 4, 1), date(2027, 4, 15), date(2027, 4, 28), date(2027, 5, 6)):
        found, _ = _found("tomato", on, "raised")
        risks.append(found["frost to come"].numbers["risk_after"] if "frost to come" in found else 0.0)
    assert risks == sorted(risks, reverse=True)
