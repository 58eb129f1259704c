"""Laws that need no expected value: what must not change a verdict, and what may only better it."""

import math
from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.pattern import Spots
from gardencanvas.garden.site import Climate, DayOfYear, Frost
from tests.fit.makers import WIDE, judged, rows, spot, words
from tests.garden.makers import MEANS, garden, site
from tests.strategies import gardens, layouts


def everything(made, layout_id="l1"):
    return [item.id for item in (*made.layout(layout_id).items(), *made.fixtures)]


def verdicts(report):
    """Verdict of every planting and of every station."""
    return {p.id: (p.verdict, p.station_verdicts.tolist()) for p in report.plantings.values()}


def rounded(report):
    """What a grower reads: verdicts, and light to a hundredth."""
    return {p.id: (p.verdict, round(p.light + 1e-5, 2)) for p in report.plantings.values()}


def near_limit(report):
    """Whether a light share lies so near a need that the last digit decides."""
    return any(
        abs(f.numbers["light_left"] - f.numbers[need]) < 1e-6
        for f in report.findings
        if "light_left" in f.numbers
        for need in ("light_needed", "light_least")
    )


def as_spots(made):
    """The garden with every planting's stations as loose spots, which can be mirrored."""
    layout = made.layout("l1")
    loose = [
        edits.rebuilt(p, pattern=Spots(points=tuple(map(tuple, p.stations.tolist()))))
        for p in layout.plantings
    ]
    return edits.rebuilt(made, layouts=(edits.rebuilt(layout, plantings=tuple(loose)),))


def mirrored(made):
    """East and west changed over, on a plan with north on top."""

    def flip(points):
        return tuple((-x, y) for x, y in points)

    layout = made.layout("l1")
    flipped = edits.rebuilt(
        layout,
        beds=tuple(edits.rebuilt(b, outline=flip(b.outline)) for b in layout.beds),
        supports=tuple(
            edits.rebuilt(s, centre=flip([s.centre])[0])
            if hasattr(s, "centre")
            else edits.rebuilt(s, begin=flip([s.begin])[0], end=flip([s.end])[0])
            for s in layout.supports
        ),
        covers=tuple(edits.rebuilt(c, outline=flip(c.outline)) for c in layout.covers),
        plantings=tuple(
            edits.rebuilt(p, pattern=edits.rebuilt(p.pattern, points=flip(p.pattern.points)))
            for p in layout.plantings
        ),
    )
    fixtures = tuple(edits.rebuilt(f, outline=flip(f.outline)) for f in made.fixtures)
    return edits.rebuilt(made, layouts=(flipped,), fixtures=fixtures)


@given(layouts(most=0), gardens())
def test_an_empty_layout_has_no_findings(layout, made):
    empty = edits.rebuilt(made, layouts=(edits.rebuilt(layout, plantings=()),))
    report = check(empty)
    assert report.findings == ()
    assert report.plantings == {}


@given(gardens(), st.integers(-40, 40), st.integers(-40, 40))
def test_moving_the_whole_garden_changes_no_verdict(made, dx, dy):
    moved = edits.shift(made, "l1", everything(made), dx / 4, dy / 4)
    assert verdicts(check(moved, "l1")) == verdicts(check(made, "l1"))


@given(gardens(), st.sampled_from([20.0, 90.0, 135.0, 270.0]))
def test_turning_the_garden_with_its_bearing_changes_no_verdict(made, angle):
    turned = edits.turn(made, "l1", everything(made), angle, (1.0, 1.0))
    site = edits.rebuilt(made.site, bearing_deg=(made.site.bearing_deg - angle) % 360)
    before, after = check(made, "l1"), check(edits.rebuilt(turned, site=site), "l1")
    assert near_limit(before) or rounded(after) == rounded(before)


@given(gardens())
def test_mirroring_the_garden_east_to_west_changes_no_verdict(made):
    made = as_spots(edits.rebuilt(made, site=edits.rebuilt(made.site, bearing_deg=0.0)))
    before, after = check(made), check(mirrored(made))
    assert {k: v for k, (v, _) in rounded(after).items()} == {k: v for k, (v, _) in rounded(before).items()}


@given(gardens(), st.data())
def test_the_order_of_plantings_changes_nothing_at_all(made, data):
    layout = made.layout("l1")
    shuffled = edits.rebuilt(layout, plantings=tuple(data.draw(st.permutations(layout.plantings))))
    assert check(edits.with_layout(made, shuffled), "l1").same_as(check(made, "l1"))


@given(gardens(), st.data())
def test_moving_a_planting_far_away_worsens_no_verdict(made, data):
    layout = edits.rebuilt(made.layout("l1"), beds=WIDE, supports=(), covers=())
    made = edits.rebuilt(made, layouts=(layout,), fixtures=())
    item = data.draw(st.sampled_from([p.id for p in layout.plantings]))
    before, after = check(made), check(edits.shift(made, "l1", [item], 30.0, 30.0))
    assert all(after.plantings[p].verdict <= before.plantings[p].verdict for p in before.plantings)
    assert all(after.plantings[p].light >= before.plantings[p].light for p in before.plantings)


PAIRS = [
    ("lettuce", "cabbage"), ("lettuce", "tomato"), ("basil", "sweetcorn"), ("cabbage", "broccoli"),
    ("radish", "courgette"), ("pepper", "tomato"), ("spinach", "winter-squash"),
]  # fmt: skip


@pytest.mark.parametrize(("one", "two"), PAIRS)
@pytest.mark.parametrize("direction", [0.0, 45.0, 180.0])
def test_a_plant_does_no_worse_the_farther_its_neighbour_stands(one, two, direction):
    east, south = math.sin(math.radians(direction)), -math.cos(math.radians(direction))
    worst, light = [], []
    for d in np.arange(0.02, 3.0, 0.07):
        report = judged(
            spot("one", one, [(0.0, 0.0)], date(2027, 5, 20)),
            spot("two", two, [(d * east, d * south)], date(2027, 5, 12)),
        )
        # what a plant suffers alone, a tall one in the wind, says nothing of its neighbour
        worst.append(max((f.verdict for f in report.findings if len(f.plantings) > 1), default=Verdict.CLEAR))
        light.append(report.plantings["one"].light)
    assert worst == sorted(worst, reverse=True)
    assert np.all(np.diff(light) >= -1e-3)
    assert worst[-1] is Verdict.CLEAR


@given(gardens())
def test_another_planting_never_gives_a_plant_more_light(made):
    layout = made.layout("l1")
    without = edits.rebuilt(made, layouts=(edits.rebuilt(layout, plantings=layout.plantings[:-1]),))
    some, every = check(without), check(made, "l1")
    assert all(every.plantings[p].light <= some.plantings[p].light + 1e-9 for p in some.plantings)


def test_a_tall_row_to_the_north_takes_less_than_one_to_the_south():
    """North of the tropics the sun stands in the south: the oldest rule of laying out rows."""
    low = rows("low", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 8, 1))
    north = judged(low, rows("tall", "tomato", 3.0, 1, 0.45, 0.3, date(2027, 5, 1), y=-0.6))
    south = judged(low, rows("tall", "tomato", 3.0, 1, 0.45, 0.3, date(2027, 5, 1), y=0.6))
    assert south.plantings["low"].light < north.plantings["low"].light < 1.0


def test_south_of_the_tropics_it_is_the_other_way_round():
    """Half a year later at 40° south the sun stands in the north."""
    low = rows("low", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 2, 1))
    turned = Climate(mean_c=MEANS[6:] + MEANS[:6])
    frost = Frost(last=DayOfYear(month=10, day=20), first=DayOfYear(month=4, day=28))
    there = site(latitude_deg=-40.0, climate=turned, frost=frost)

    def light(y):
        tall = rows("tall", "tomato", 3.0, 1, 0.45, 0.3, date(2026, 11, 1), y=y)
        return judged(low, tall, site=there).plantings["low"].light

    assert light(-0.6) < light(0.6) < 1.0


def test_verdicts_and_findings_agree():
    """A planting's verdict is that of its worst station, and no finding names a better one than it has."""
    made = garden(
        rows("a", "cabbage", 3.0, 3, 0.45, 0.6, date(2027, 5, 1)),
        rows("b", "lettuce", 3.0, 2, 0.25, 0.6, date(2027, 6, 5), y=0.3),
        rows("c", "tomato", 3.0, 1, 0.3, 0.6, date(2027, 5, 20), y=0.5),
    )
    report = check(made)
    assert "clear" not in words(report).values()
    for planting in report.plantings.values():
        assert planting.verdict == planting.station_verdicts.max()
    for finding in report.findings:
        fit = report.plantings[finding.plantings[0]]
        assert fit.station_verdicts[finding.stations].max() >= finding.verdict
        assert finding.first <= finding.last
        assert finding.numbers["stations"] <= len(finding.stations)
    ranks = [f.verdict for f in report.findings]
    assert ranks == sorted(ranks, reverse=True)
    assert len({f.id for f in report.findings}) == len(report.findings)
