"""Supports, covers, beds and varieties: what they change in the verdict, and for whom."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Quantity, Variety
from gardencanvas.fit import Checker, check
from gardencanvas.fit.aids import supported, warmed
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Cover, LineSupport, RingSupport
from tests.fit.makers import WIDE, judged, rows, spot
from tests.garden.makers import bed, garden

BEANS = rows("beans", "climbing-bean", 3.0, 1, 0.15, 0.3, date(2027, 5, 20), "sown")
BEAN = catalogue().resolve("climbing-bean")


def net(y=0.15, length=3.0):
    return LineSupport(id="net", kind="net", name="net", begin=(0.0, y), end=(length, y), height_m=1.8)


def cover(kind="fleece", length=3.0, **dates):
    outline = ((0.0, 0.0), (length, 0.0), (length, 0.3), (0.0, 0.3))
    return Cover(id="cover", kind=kind, name=kind, outline=outline, height_m=0.5, **dates)


@pytest.mark.parametrize(
    ("support", "reached"),
    [(net(), True), (net(y=0.44), True), (net(y=0.46), False), (net(length=1.0), False)],
)
def test_a_climber_is_supported_where_most_of_it_stands_within_a_hands_reach(support, reached):
    assert supported(BEANS, BEAN, [support]) is reached


def test_canes_in_a_ring_support_what_stands_round_them():
    canes = RingSupport(
        id="canes", kind="cane ring", name="canes", centre=(0.0, 0.0), radius_m=0.4, height_m=2
    )
    inside = spot("beans", "climbing-bean", [(0.0, 0.4), (0.4, 0.0), (-0.5, -0.4)])
    outside = spot("beans", "climbing-bean", [(1.0, 0.4), (0.0, 1.0), (-0.5, -0.4)])
    assert supported(inside, BEAN, [canes])
    assert not supported(outside, BEAN, [canes])
    assert not supported(inside, catalogue().resolve("lettuce"), [canes])


def test_a_warming_cover_counts_if_it_is_on_when_the_planting_goes_in():
    assert warmed(BEANS, [cover()])
    assert not warmed(BEANS, [cover("mesh")])
    assert not warmed(BEANS, [cover(length=1.0)])
    assert not warmed(BEANS, [cover(last=date(2027, 5, 19))])
    assert not warmed(BEANS, [cover(first=date(2027, 5, 21))])
    assert warmed(BEANS, [cover(first=date(2027, 5, 20), last=date(2027, 5, 20))])


def test_a_support_put_up_and_taken_down_is_seen_at_once():
    made = garden(BEANS, rows("low", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 6, 10), y=0.3), beds=WIDE)
    checker = Checker()
    bare = checker.update(made, "l1")
    trained = checker.update(edits.add(made, "l1", [net()]), "l1")
    assert trained.plantings["low"].light != bare.plantings["low"].light
    assert checker.update(made, "l1").same_as(bare)


def test_stations_on_a_beds_rim_lie_in_it():
    beside_it = spot("one", "lettuce", [(1.0, 0.0), (0.0, 0.5), (0.4, -0.01), (2.0, 0.5)])
    report = check(garden(beside_it, beds=(bed(length=2.0, width=1.0),)))
    (finding,) = report.findings
    assert finding.stations.tolist() == [2]


def test_holes_and_gaps_between_beds_are_bare_plan():
    hole = ((0.5, 0.5), (1.5, 0.5), (1.5, 0.9), (0.5, 0.9))
    ground = bed(length=2.0, width=1.4, holes=(hole,))
    report = check(garden(spot("one", "lettuce", [(0.25, 0.7), (1.0, 0.7)]), beds=(ground,)))
    assert [f.stations.tolist() for f in report.findings] == [[1]]


def spread(metres):
    return Quantity(low=metres, mid=metres, high=metres, source="user", basis="user")


VARIETIES = (
    Variety(id="small", crop="cabbage", name="small", spread_m=spread(0.25), in_row_m=spread(0.2)),
    Variety(id="wide", crop="cabbage", name="wide", spread_m=spread(0.8), in_row_m=spread(0.7)),
)


def test_varieties_of_one_planting_are_judged_each_by_its_own_size():
    """Every second cabbage is a small one: only the wide ones reach the broccoli."""
    mixed = rows("mixed", "cabbage", 3.6, 1, 0.45, 0.5, date(2027, 5, 1), varieties=("small", "wide"))
    two = rows("two", "broccoli", 3.6, 1, 0.45, 0.5, date(2027, 5, 1), y=0.25)
    made = garden(mixed, two, beds=WIDE, varieties=VARIETIES)
    report = check(made)
    crowded = next(f for f in report.findings if f.id == "crowding:two:mixed")
    assert crowded.stations.tolist() == [1, 3, 5, 7]  # each broccoli opposite a wide one
    assert len(report.plantings["mixed"].station_verdicts) == 8
    small = check(edits.change(made, "l1", "mixed", varieties=("small",)))
    assert small.plantings["two"].verdict <= Verdict.SHARES


def test_a_perennial_is_judged_by_the_season_that_is_asked_about():
    report = judged(
        rows("sage", "sage", 3.0, 1, 0.5, 0.5, date(2026, 4, 1)),
        rows("tall", "tomato", 3.0, 1, 0.45, 0.9, date(2027, 5, 25), y=0.1),
    )
    finding = report.of("sage")[0]
    assert finding.first.year == finding.last.year == 2027
    assert np.all(report.plantings["sage"].light < 1.0)


def test_an_early_fleece_warms_only_while_it_lies():
    """Taken off again after three weeks it brings the harvest forward less than one that stays."""
    beans = rows("beans", "dwarf-bean", 3.0, 1, 0.1, 0.4, date(2027, 5, 20), "sown", y=0.5)

    def harvest(*covers):
        made = edits.add(garden(beans, beds=(bed(length=20.0, width=6.0),)), "l1", covers)
        return check(made).plantings["beans"].harvest_first

    def fleece(last):
        outline = ((-1, -1), (5, -1), (5, 2), (-1, 2))
        return Cover(id="c", kind="fleece", name="c", outline=outline, height_m=0.5, last=last)

    bare, brief, long = harvest(), harvest(fleece(date(2027, 6, 10))), harvest(fleece(None))
    assert long < brief < bare
