"""Frost, cold ground and ripening against common practice.

The site has its last frost on 28 April and its first on 20 October, and a mild climate; frost dates vary by
16 days from year to year.
"""

from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.garden.ground import Cover
from gardencanvas.garden.site import Climate, DayOfYear, Frost
from gardencanvas.season.starting import start_window
from gardencanvas.season.usual_start import usual_start
from tests.fit.makers import WIDE, judged, rows
from tests.garden.makers import garden, site

WEATHER = {"frost to come", "killed in winter", "seldom ripe", "too early"}
# Short summers: last frost at midsummer's door, first in mid-September, as far inland and north as 60°.
SHORT = site(
    latitude_deg=60.0,
    frost=Frost(last=DayOfYear(month=6, day=1), first=DayOfYear(month=9, day=15)),
    climate=Climate(mean_c=(-8.0, -8.0, -4.0, 2.0, 8.0, 14.0, 16.5, 14.5, 9.5, 4.0, -1.0, -5.5)),
)


def _found(crop, on, kind, **changes):
    own = {k: changes.pop(k) for k in ("end",) if k in changes}
    report = judged(rows("p", crop, 3.0, 1, 0.3, 0.3, on, kind, **own), **changes)
    return {f.code: f for f in report.findings if f.code in WEATHER}, report.plantings["p"]


@pytest.mark.parametrize(
    ("crop", "on", "kind"),
    [
        ("tomato", date(2027, 5, 25), "raised"),  # four weeks after the last frost
        ("tomato", date(2027, 5, 8), "raised"),  # ten days after it
        ("dwarf-bean", date(2027, 5, 15), "sown"),  # from mid-May
        ("climbing-bean", date(2027, 5, 20), "sown"),
        ("winter-squash", date(2027, 5, 25), "raised"),
        ("broad-bean", date(2027, 2, 15), "sown"),  # hardy: neither frost nor cold ground does it harm
        ("pea", date(2027, 3, 1), "sown"),
        ("parsnip", date(2027, 3, 1), "sown"),
        ("onion", date(2027, 3, 20), "set"),
        ("potato", date(2027, 4, 15), "set"),  # up when the frosts are all but over
        ("garlic", date(2026, 10, 20), "set"),
        ("garlic", date(2027, 2, 10), "set"),
        ("rhubarb", date(2027, 2, 20), "set"),  # dormant
        ("strawberry", date(2027, 9, 1), "raised"),
        ("corn-salad", date(2027, 8, 25), "sown"),
        ("leek", date(2027, 6, 5), "raised"),
        ("kale", date(2027, 6, 20), "raised"),
        ("radish", date(2027, 4, 10), "sown"),
    ],
)
def test_what_is_started_as_usual_has_nothing_against_it(crop, on, kind):
    found, _ = _found(crop, on, kind)
    assert found == {}, [f.key() for f in found.values()]


@pytest.mark.parametrize("crop", ["tomato", "basil", "courgette", "cucumber"])
def test_a_tender_crop_out_three_weeks_before_the_last_frost_is_told(crop):
    found, fit = _found(crop, date(2027, 4, 7), "raised")
    finding = found["frost to come"]
    assert finding.kind is Kind.FROST
    # With the frost date spread by 16 days, 21 days early is caught in Φ(21/16) = 90.5 of 100 years.
    assert finding.numbers["risk_after"] == pytest.approx(0.905, abs=0.001)
    assert finding.numbers["last_frost"] == date(2027, 4, 28)
    assert finding.numbers["exposed"] == date(2027, 4, 7)
    assert fit.verdict is Verdict.CLASHES


def test_planted_on_the_frost_date_itself_the_odds_are_even():
    found, _ = _found("tomato", date(2027, 4, 28), "raised")
    assert found["frost to come"].numbers["risk_after"] == pytest.approx(0.5, abs=0.001)
    assert found["frost to come"].verdict is Verdict.STRAINS


def test_fleece_lessens_the_risk_of_frost():
    """It shields by about a degree, and the mean rises by a degree in a good week of April."""
    planting = rows("p", "tomato", 3.0, 1, 0.3, 0.3, date(2027, 4, 20), "raised")
    fleece = Cover(
        id="c", kind="fleece", name="fleece", height_m=0.6,
        outline=((-1.0, -1.0), (4.0, -1.0), (4.0, 1.0), (-1.0, 1.0)),
    )  # fmt: skip
    bare, covered = (
        {f.code: f for f in check(_with_covers(planting, covers)).findings} for covers in ((), (fleece,))
    )
    assert bare["frost to come"].numbers["risk_after"] == pytest.approx(0.6915, abs=0.001)  # Φ(8/16)
    risk = covered["frost to come"].numbers["risk_after"] if "frost to come" in covered else 0.0
    assert risk < bare["frost to come"].numbers["risk_after"] - 0.1


def _with_covers(planting, covers):
    made = garden(planting, beds=WIDE)
    layout = made.layouts[0].model_copy(update={"covers": covers})
    return made.model_copy(update={"layouts": (layout,)})


@pytest.mark.parametrize(
    ("crop", "kind"), [("winter-squash", "raised"), ("dwarf-bean", "sown"), ("sweetcorn", "sown")]
)
def test_a_warm_crop_begun_in_august_does_not_ripen(crop, kind):
    found, fit = _found(crop, date(2027, 8, 20), kind)
    finding = found["seldom ripe"]
    assert finding.numbers["ripens"] < 0.5
    assert finding.kind is Kind.TIMING
    assert finding.numbers["killing_frost"] == date(2027, 10, 20) < finding.numbers["ready"]
    assert fit.verdict is Verdict.CLASHES


@pytest.mark.parametrize("crop", ["winter-squash", "melon", "sweetcorn", "aubergine"])
def test_what_needs_a_long_summer_fails_in_a_short_one(crop):
    """Even started as early as frost allows: so far north these are grown under glass."""
    start = usual_start(SHORT, catalogue().crop(crop), 2027)
    found, fit = _found(crop, start.on, start.kind, site=SHORT)
    assert found["seldom ripe"].numbers["ripens"] < 0.5
    assert fit.verdict is Verdict.CLASHES


@pytest.mark.parametrize("crop", ["radish", "pea", "carrot", "spinach", "kale", "potato-early"])
def test_what_grows_quickly_or_in_the_cool_does_well_in_a_short_summer(crop):
    start = usual_start(SHORT, catalogue().crop(crop), 2027)
    on = max(start.on, date(2027, 5, 25))
    found, _ = _found(crop, on, start.kind, site=SHORT)
    assert "seldom ripe" not in found or found["seldom ripe"].verdict < Verdict.CLASHES
    assert "frost to come" not in found


def test_half_hardy_roots_do_not_stand_over_a_hard_winter():
    """Beetroot sown in September would be ready in the next year: frost kills it, and it is not just late."""
    found, _ = _found("beetroot", date(2027, 8, 25), "sown", site=SHORT)
    assert found["killed in winter"].kind is Kind.FROST
    assert found["killed in winter"].numbers["ready"].year == 2028


def test_of_broad_beans_only_winter_kinds_are_sown_in_november():
    """Sources give −10 °C and lower for winter kinds, −5 to −7 °C for others."""
    found, fit = _found("broad-bean", date(2027, 11, 5), "sown")
    assert found["killed in winter"].numbers["hardier_c"] == pytest.approx(-10.0)
    assert fit.verdict is Verdict.STRAINS


@pytest.mark.parametrize(("crop", "on"), [("dwarf-bean", date(2027, 4, 20)), ("gherkin", date(2027, 4, 15))])
def test_warm_seed_in_cold_ground_waits_and_rots(crop, on):
    found, _ = _found(crop, on, "sown")
    finding = found["too early"]
    assert (finding.kind, finding.verdict) == (Kind.TIMING, Verdict.STRAINS)
    # Knott's least for both is 60 °F; the mean of the day reaches 3 °C less between April and June's
    # monthly means of 9.5 and 15.9 °C, in the second ten days of May.
    assert finding.numbers["least_c"] == pytest.approx(15.6)
    assert date(2027, 5, 8) <= finding.numbers["warm_from"] <= date(2027, 5, 20)
    assert on + timedelta(days=finding.numbers["days"]) == finding.numbers["warm_from"]


def test_carrots_sown_into_frozen_ground_are_told():
    found, _ = _found("carrot", date(2027, 2, 20), "sown", site=SHORT)
    assert found["too early"].numbers["days"] > 28


def test_what_a_grower_clears_young_is_not_the_weathers_doing():
    found, _ = _found("lettuce", date(2027, 5, 1), "raised", end=date(2027, 5, 28))
    assert found == {}


def test_where_frost_never_comes_nothing_is_said_of_it():
    warm = site(frost=Frost(basis="none"), climate=Climate(mean_c=(26.0,) * 12))
    for crop, kind in (("tomato", "raised"), ("dwarf-bean", "sown"), ("basil", "raised")):
        assert _found(crop, date(2027, 1, 5), kind, site=warm)[0] == {}


@given(
    st.sampled_from(
        [("tomato", "raised"), ("courgette", "raised"), ("sweetcorn", "sown"), ("potato", "set")]
    ),
    st.dates(date(2027, 2, 1), date(2027, 6, 1)),
    st.integers(1, 40),
)
@settings(max_examples=25, deadline=None)
def test_a_later_start_in_spring_never_runs_more_risk_of_frost(started, on, days):
    """Risk after a date can only fall as the date moves on (F(d) in Thom 1959 is a distribution)."""
    crop, kind = started
    risks = []
    for day in (on, on + timedelta(days=days)):
        found, _ = _found(crop, day, kind)
        risks.append(found["frost to come"].numbers["risk_after"] if "frost to come" in found else 0.0)
    assert risks[1] <= risks[0]


@given(
    st.sampled_from(["winter-squash", "tomato", "pepper", "melon"]),
    st.dates(date(2027, 6, 1), date(2027, 9, 15)),
    st.integers(1, 40),
)
@settings(max_examples=25, deadline=None)
def test_a_later_start_in_summer_never_ripens_more_often(crop, on, days):
    """Up to the killing frosts: what is started after them is meant for the next year."""
    ripens = []
    for day in (on, min(on + timedelta(days=days), date(2027, 10, 10))):
        found, _ = _found(crop, day, "raised")
        ripens.append(found["seldom ripe"].numbers["ripens"] if "seldom ripe" in found else 1.0)
    assert ripens[1] <= ripens[0] or ripens[1] == 1.0 > ripens[0] >= 0.8


@pytest.mark.parametrize("crop_id", [c.id for c in catalogue().crops[::3]])
def test_the_start_a_crop_is_given_first_is_neither_frosted_nor_cold(crop_id):
    """Where it can be grown: a tool must not offer what it then finds fault with."""
    crop = catalogue().resolve(crop_id)
    start = usual_start(site(), crop, 2027)
    window = start_window(site(), crop, start.kind)
    if window.first is None and not window.always:
        pytest.skip("it does not grow there")
    found, _ = _found(crop_id, start.on, start.kind)
    assert not {"frost to come", "too early", "killed in winter"} & set(found)


def test_a_tender_perennial_is_planted_in_spring():
    """Dahlias are set when frosts are nearly over, never in autumn, where frost kills them."""
    start = usual_start(site(), catalogue().crop("dahlia"), 2027)
    assert date(2027, 4, 15) <= start.on <= date(2027, 5, 31)
