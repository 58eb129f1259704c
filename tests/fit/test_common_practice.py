"""Verdicts against common practice: what growers know to work, and to fail.

The cases are those of extension leaflets and kitchen-garden handbooks in general: quick crops between slow
ones, storeys, usual and halved spacings. Spacings are the usual ones of the catalogue's sources.
"""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.support import wants_support
from gardencanvas.garden import edits
from gardencanvas.garden.ground import LineSupport
from tests.fit.makers import WIDE, codes, judged, rows, words
from tests.garden.makers import garden

CABBAGES = rows("main", "cabbage", 3.0, 3, 0.45, 0.6, date(2027, 5, 1))
COURGETTES = rows("main", "courgette", 3.0, 2, 0.9, 0.9, date(2027, 5, 20))
CELERIAC = rows("main", "celeriac", 3.0, 4, 0.3, 0.38, date(2027, 5, 20))
LEEKS = rows("main", "leek", 3.0, 4, 0.15, 0.4, date(2027, 6, 10))

TOGETHER = {
    "lettuce between cabbages": (
        CABBAGES, rows("quick", "lettuce", 3.0, 2, 0.25, 0.6, date(2027, 5, 1), y=0.3),
    ),
    "radish between cabbages": (
        CABBAGES, rows("quick", "radish", 3.0, 2, 0.05, 0.6, date(2027, 4, 25), "sown", y=0.3),
    ),
    "lettuce between courgettes": (
        COURGETTES, rows("quick", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 5, 10), y=0.75),
    ),
    "radish between celeriac": (
        CELERIAC, rows("quick", "radish", 3.0, 3, 0.05, 0.38, date(2027, 5, 10), "sown", y=0.19),
    ),
    "radish between leeks": (
        LEEKS, rows("quick", "radish", 3.0, 3, 0.05, 0.4, date(2027, 5, 20), "sown", y=0.2),
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", TOGETHER)
def test_a_quick_low_crop_between_slow_wide_ones_is_out_in_time_when_started_together(case):
    report = judged(*TOGETHER[case])
    assert report.worst <= Verdict.SHARES, [f.key() for f in report.findings]


LATE = {
    "lettuce between cabbages": (
        CABBAGES, rows("quick", "lettuce", 3.0, 2, 0.25, 0.6, date(2027, 6, 5), y=0.3),
    ),
    "lettuce between courgettes": (
        COURGETTES, rows("quick", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 6, 25), y=0.75),
    ),
    "spinach between courgettes": (
        COURGETTES, rows("quick", "spinach", 3.0, 2, 0.1, 0.3, date(2027, 6, 25), "sown", y=0.6),
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", LATE)
def test_the_same_started_late_does_not_work(case):
    report = judged(*LATE[case])
    assert report.plantings["quick"].verdict >= Verdict.STRAINS
    assert report.plantings["main"].verdict <= Verdict.SHARES


def test_days_to_spare_grow_shorter_as_the_catch_crop_starts_later_and_then_run_out():
    """Started later it is never out sooner, while its neighbour closes over it on about the same date."""
    spare = []
    for day in (date(2027, 5, 1), date(2027, 5, 15), date(2027, 5, 29), date(2027, 6, 12), date(2027, 6, 26)):
        report = judged(COURGETTES, rows("quick", "lettuce", 3.0, 1, 0.25, 0.3, day, y=0.75))
        spare.append(report.plantings["quick"].days_to_spare)
    assert spare == sorted(spare, reverse=True)
    assert spare[0] > 0 > spare[-1]


def test_a_tall_crop_in_full_leaf_smothers_a_sun_loving_low_one_between_its_rows():
    tomatoes = rows("tall", "tomato", 3.0, 3, 0.45, 0.6, date(2027, 5, 25))
    report = judged(tomatoes, rows("low", "basil", 3.0, 2, 0.3, 0.6, date(2027, 6, 1), y=0.3))
    assert words(report) == {"tall": "shares", "low": "clashes"}
    finding = report.of("low")[0]
    assert finding.code == "shaded"
    assert finding.numbers["light_left"] < finding.numbers["light_least"]


def test_ground_cover_between_wide_rows_of_a_tall_thin_crop_works():
    """Squash between rows of sweetcorn set as wide as for hoeing by horse."""
    corn = rows("tall", "sweetcorn", 6.0, 3, 0.45, 1.8, date(2027, 5, 15), "sown")
    report = judged(corn, rows("low", "winter-squash", 6.0, 2, 1.5, 1.8, date(2027, 5, 25), y=0.9))
    assert words(report) == {"tall": "shares", "low": "shares"}
    assert codes(report, "low") == {"layered", "trials"}


def test_a_low_crop_under_beans_trained_up_a_net_works():
    net = LineSupport(id="net", kind="net", name="net", begin=(0.0, 0.15), end=(3.0, 0.15), height_m=2.0)
    beans = rows("tall", "climbing-bean", 3.0, 1, 0.15, 0.3, date(2027, 5, 20), "sown")
    lettuce = rows("low", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 6, 10), y=0.2)
    report = check(edits.add(garden(beans, lettuce, beds=WIDE), "l1", [net]))
    assert words(report) == {"tall": "shares", "low": "shares"}


ROWS_BY_TURNS = {
    "leek and carrot": ("leek", 0.15, "carrot", 0.05, 0.25),
    "onion and carrot": ("onion", 0.1, "carrot", 0.05, 0.2),
    "leek and celeriac": ("leek", 0.15, "celeriac", 0.3, 0.35),
}


@pytest.mark.parametrize("case", ROWS_BY_TURNS)
def test_rows_by_turns_at_usual_distances_work(case):
    one, one_spacing, two, two_spacing, apart = ROWS_BY_TURNS[case]
    a = rows("one", one, 3.0, 3, one_spacing, 2 * apart, date(2027, 5, 15))
    b = rows("two", two, 3.0, 3, two_spacing, 2 * apart, date(2027, 5, 1), y=apart)
    assert judged(a, b).worst <= Verdict.SHARES


def usual(crop_id):
    crop = catalogue().resolve(crop_id)
    return crop, crop.in_row_m.mid, crop.between_rows_m.mid


SAME_LAYER = [
    ("cabbage", "broccoli"),
    ("kohlrabi", "beetroot"),
    ("lettuce", "endive"),
    ("pepper", "aubergine"),
]


@pytest.mark.parametrize(("one", "two"), SAME_LAYER)
def test_two_crops_of_one_layer_and_span_clash_at_half_their_spacings_and_work_at_them(one, two):
    _, along_a, across_a = usual(one)
    _, along_b, across_b = usual(two)
    along, across = (along_a + along_b) / 2, (across_a + across_b) / 2
    on = date(2027, 5, 10)

    def by_turns(factor):
        # rows by turns, each crop's own rows two row distances apart
        wide = 2 * across * factor
        a = rows("one", one, 8 * along, 3, along * factor, wide, on)
        return judged(a, rows("two", two, 8 * along, 3, along * factor, wide, on, y=across * factor))

    # some are of one family, which is told and takes nothing from anyone
    assert {f.kind.value for f in by_turns(1.0).findings if len(f.plantings) > 1} <= {"family"}
    assert by_turns(1.0).worst <= Verdict.SHARES
    close = by_turns(0.5)
    assert close.worst is Verdict.CLASHES
    assert min(p.verdict for p in close.plantings.values()) >= Verdict.STRAINS


def start_of(crop):
    return crop.starts[0].value


@pytest.mark.parametrize("crop_id", [c.id for c in catalogue().crops])
def test_every_crop_at_its_usual_spacing_is_clear_with_itself_and_its_like_beside_it(crop_id):
    crop = catalogue().resolve(crop_id)
    along, across = crop.in_row_m.mid, crop.between_rows_m.mid
    length = max(5 * along, 1.0)
    size = (length, 3, along, across, date(2027, 5, 1), start_of(crop))
    plantings = rows("one", crop_id, *size), rows("two", crop_id, *size, y=3 * across)
    nets = tuple(  # a row of them for each row of climbers
        LineSupport(
            id=f"net-{k}", kind="net", name="net", begin=(0.0, (k + 0.5) * across),
            end=(length, (k + 0.5) * across), height_m=2.0,
        )
        for k in range(6)
    )  # fmt: skip
    made = garden(*plantings, beds=WIDE)
    report = check(edits.add(made, "l1", list(nets)) if wants_support(crop) else made)
    # What the first of May is too cold or too late for says nothing of its spacing.
    weather = {Code.FROST_TO_COME, Code.KILLED_IN_WINTER, Code.SELDOM_RIPE, Code.TOO_EARLY}
    said = [f for f in report.findings if f.code not in weather]
    assert said == [], [f.key() for f in said]


def test_plants_of_one_planting_at_half_their_spacings_clash():
    crop, along, across = usual("cabbage")
    report = judged(rows("one", crop.id, 3.0, 3, along / 2, across / 2, date(2027, 5, 1)))
    assert words(report) == {"one": "clashes"}
    (finding,) = report.findings
    assert finding.code == "too close"
    assert finding.numbers["density"] == pytest.approx(4.0)  # halved both ways: four plants for one


def test_one_after_another_on_the_same_ground_shares_it():
    first = rows("first", "spinach", 3.0, 3, 0.1, 0.25, date(2027, 4, 1), "sown")
    second = rows("second", "leek", 3.0, 3, 0.15, 0.3, date(2027, 7, 20))
    report = judged(first, second)
    assert words(report) == {"first": "shares", "second": "shares"}
    assert codes(report, "second") == {"in turns"}


def test_far_plantings_have_nothing_to_do_with_each_other():
    report = judged(CABBAGES, rows("far", "tomato", 3.0, 2, 0.45, 0.9, date(2027, 5, 25), y=20.0))
    assert words(report) == {"main": "clear", "far": "clear"}
    assert report.findings == ()


def test_stations_on_bare_plan_strain_and_are_counted():
    report = judged(rows("one", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 5, 1), x=58.5))
    (finding,) = report.findings
    assert (finding.code, finding.verdict) == ("on bare plan", Verdict.STRAINS)
    # stations at 58.625, 58.875 … 61.375; the bed ends at 60
    assert dict(finding.numbers) == {"stations": 6, "of": 12}
    assert finding.stations.tolist() == list(range(6, 12))
