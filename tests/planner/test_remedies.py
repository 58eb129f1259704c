"""Every remedy offered keeps its promise; the smallest is offered; what is pinned or locked stays."""

from datetime import date, timedelta

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit.checker import Checker, check
from gardencanvas.fit.report import Kind, Remedy, Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.ground import LineSupport
from gardencanvas.planner import remedies as room
from gardencanvas.planner.case import case_of
from gardencanvas.planner.changes.poleward import poleward
from gardencanvas.planner.changes.starting import starts
from gardencanvas.planner.effort import LARGEST, effort
from gardencanvas.planner.ladder import Ladder
from gardencanvas.planner.pairs import pair
from gardencanvas.planner.remedies import MOST, apply, remedies
from gardencanvas.resources_folder import resources
from tests.garden.makers import bed, garden
from tests.planner.gardens import (
    GARDENS,
    LAYOUT,
    clumps,
    day,
    late_lettuce,
    loose_plants,
    off_the_bed,
    quick_kind,
    ring_of_beans,
    rows,
    sown_too_close,
    sprawling_beans,
    troubles,
    two_brassicas,
    under_maize,
    walled_tomato,
)
from tests.planner.replay import replay


def found(garden_, layout_id=LAYOUT):
    """Each trouble with its remedies."""
    checker, findings = troubles(garden_, layout_id)
    return [(f, remedies(garden_, layout_id, f, checker)) for f in findings]


def with_code(garden_, code, finding_id=None):
    """Remedies of one code, with their findings."""
    return [
        (f, r) for f, some in found(garden_) for r in some if r.code == code and finding_id in (None, f.id)
    ]


@pytest.mark.parametrize("name", GARDENS)
def test_what_is_offered_mends_and_worsens_nothing(name):
    before = GARDENS[name]()
    offered = found(before)
    assert offered, "this garden is made to have a trouble"
    assert any(some for _, some in offered), "and one that can be mended"
    for finding, some in offered:
        assert len(some) <= MOST
        assert [effort(r) for r in some] == sorted(effort(r) for r in some)
        assert all(effort(r) <= LARGEST for r in some)
        assert len({(r.code, r.numbers["planting"]) for r in some}) == len(some)
        for remedy in some:
            assert replay(before, LAYOUT, finding, remedy) == [], remedy


def test_what_is_offered_for_the_demo_garden_mends_it():
    before = open_garden(resources() / "demo" / "demo.gardencanvas")
    count = 0
    for layout in before.layouts:
        for finding, some in found(before, layout.id):
            for remedy in some:
                count += 1
                assert replay(before, layout.id, finding, remedy) == [], (finding.id, remedy)
    assert count > 0


# the smallest: against trying every smaller step on a fresh check


def gone(garden_, finding_id):
    report = check(garden_, LAYOUT)
    return all(f.id != finding_id or f.verdict < Verdict.STRAINS for f in report.findings)


def test_no_shorter_move_in_its_direction_would_do():
    before = two_brassicas()
    ((finding, remedy), *_) = with_code(before, "shift")
    n = remedy.numbers
    cm = round(100 * n["distance_m"])
    assert cm > 1
    for step in range(1, cm):
        part = step / cm
        tried = edits.shift(before, LAYOUT, [n["planting"]], part * n["dx_m"], part * n["dy_m"])
        assert not gone(tried, finding.id), f"{step} cm would do"


def test_no_fewer_days_would_do():
    before = two_brassicas()
    ((finding, remedy), *_) = with_code(before, "start")
    planting = before.find(LAYOUT, remedy.numbers["planting"])
    days = remedy.numbers["days"]
    for fewer in range(1, abs(days)):
        on = planting.start.on + timedelta(days=fewer if days > 0 else -fewer)
        tried = edits.change(before, LAYOUT, planting.id, start=edits.rebuilt(planting.start, on=on))
        assert not gone(tried, finding.id), f"{fewer} days would do"


def test_a_move_to_the_spacing_of_the_books_is_the_most_that_is_asked():
    """Handbook spacings keep plants apart that do not crowd: moving to them must do, so less is offered."""
    for finding, remedy in with_code(two_brassicas(), "shift"):
        n = finding.numbers
        assert remedy.numbers["distance_m"] <= n["usual_m"] - n["distance_m"] + 0.15


# each change where it is the fitting one


def test_a_crop_off_the_bed_is_moved_into_it():
    before = off_the_bed()
    ((_, remedy),) = with_code(before, "shift")
    assert remedy.numbers["toward"] == "into"
    after = apply(before, LAYOUT, remedy)
    y = after.find(LAYOUT, "leek").stations[:, 1]
    assert ((y >= 0.0) & (y <= 1.2)).all()


def test_only_the_plant_that_is_too_near_is_moved():
    before = loose_plants()
    moved = [r for _, r in with_code(before, "shift stations") if r.numbers["planting"] == "cabbage"]
    assert moved
    was, now = (g.find(LAYOUT, "cabbage").stations for g in (before, apply(before, LAYOUT, moved[0])))
    assert (was != now).any(axis=1).tolist() == [True, False, False]


def test_too_close_a_sowing_is_widened():
    before = sown_too_close()
    ((_, remedy),) = with_code(before, "widen")
    after = apply(before, LAYOUT, remedy)
    was, now = before.find(LAYOUT, "carrot"), after.find(LAYOUT, "carrot")
    assert remedy.numbers["fewer"] == was.plants - now.plants > 0
    assert remedy.numbers["spacing_m"] == now.pattern.spacing_m


def test_too_full_a_clump_is_thinned():
    before = clumps()
    ((_, remedy), *_) = with_code(before, "thin")
    after = apply(before, LAYOUT, remedy)
    assert 1 <= after.find(LAYOUT, "onion").per_station < 6


def test_a_sprawling_climber_is_given_a_support():
    before = sprawling_beans()
    ((_, remedy), *_) = with_code(before, "support")
    after = apply(before, LAYOUT, remedy)
    (support,) = after.layout(LAYOUT).supports
    assert isinstance(support, LineSupport)
    assert support.height_m == pytest.approx(remedy.numbers["height_m"])
    y = after.find(LAYOUT, "bean").stations[0, 1]
    assert support.begin[1] == support.end[1] == pytest.approx(y)


def test_a_ring_of_climbers_is_given_a_ring_of_canes():
    before = ring_of_beans()
    some = with_code(before, "support")
    assert some
    (support,) = apply(before, LAYOUT, some[0][1]).layout(LAYOUT).supports
    assert (support.kind, support.centre, support.radius_m) == ("cane ring", (1.0, 0.5), 0.35)


def test_a_support_goes_where_its_climber_goes():
    before = garden(
        rows("climbing-bean", "bean", 0.2, day(5, 20), "sown", 0.2, 0.5),
        rows("sweetcorn", "sweetcorn", 0.42, day(5, 20), "sown", 0.2, 0.4),
    )
    net = LineSupport(id="net", kind="net", name="Net", begin=(0.3, 0.45), end=(3.3, 0.45), height_m=2.0)
    before = edits.add(before, LAYOUT, [net])
    moved = [r for _, r in with_code(before, "shift") if r.numbers["planting"] == "bean"]
    assert moved
    for remedy in moved:
        after = apply(before, LAYOUT, remedy)
        assert after.find(LAYOUT, "net").begin == pytest.approx(
            (0.3 + remedy.numbers["dx_m"], 0.45 + remedy.numbers["dy_m"])
        )


def test_a_quicker_variety_is_proposed_where_the_grower_has_one():
    before = edits.rebuilt(late_lettuce(), varieties=(quick_kind(8.0),))
    some = [r for r in _timing(before) if r.code == "variety"]
    assert [r.numbers["variety"] for r in some] == ["quick"]
    assert apply(before, LAYOUT, some[0]).find(LAYOUT, "lettuce").varieties == ("quick",)


def _timing(garden_):
    checker, findings = troubles(garden_)
    (late,) = [f for f in findings if f.kind == "timing"]
    return remedies(garden_, LAYOUT, late, checker)


def test_a_late_catch_crop_is_out_before_its_neighbour_closes():
    before = late_lettuce()
    some = _timing(before)
    assert some
    for remedy in some:
        spare = check(apply(before, LAYOUT, remedy), LAYOUT).plantings["lettuce"].days_to_spare
        assert spare is None or spare >= 0


# what stays


def test_locked_plantings_stay_as_they_are():
    before = two_brassicas()
    before = edits.change(before, LAYOUT, "cabbage", locked=True)
    offered = [r for _, some in found(before) for r in some]
    assert offered
    assert {r.numbers["planting"] for r in offered} == {"cauliflower"}


def test_where_all_is_locked_nothing_is_offered():
    assert all(some == () for _, some in found(two_brassicas(locked=True)))


def test_pinned_dates_stay_as_they_are():
    before = two_brassicas(start={"pinned": True})
    offered = [r for _, some in found(before) for r in some]
    assert offered
    assert all(r.code != "start" for r in offered)


def test_a_pinned_start_with_an_end_of_the_growers_own_keeps_that_end_too():
    before = late_lettuce()
    start = edits.rebuilt(before.find(LAYOUT, "lettuce").start, pinned=True)
    before = edits.change(before, LAYOUT, "lettuce", start=start, end=date(2027, 7, 22))
    offered = [r for _, some in found(before) for r in some if r.numbers["planting"] == "lettuce"]
    assert offered
    assert {r.code for r in offered}.isdisjoint({"start", "end"})


def test_perennials_are_not_started_or_cleared():
    before = garden(
        rows("rhubarb", "rhubarb", 0.3, day(3, 10), "set", 0.9),
        rows("lettuce", "lettuce", 0.4, day(5, 10)),
    )
    offered = [r for _, some in found(before) for r in some if r.numbers["planting"] == "rhubarb"]
    assert {r.code for r in offered}.isdisjoint({"start", "end"})


@pytest.mark.parametrize("crop", ["tomato", "courgette", "pepper"])
def test_tender_crops_are_never_started_before_the_frosts_are_over(crop):
    """The site's last frost is 28 April, its first 20 October; these three die of frost."""
    before = garden(
        rows(crop, "tender", 0.3, day(5, 20), spacing=0.6),
        rows("cabbage", "cabbage", 0.36, day(5, 20), spacing=0.45),
    )
    layout = before.layout(LAYOUT)
    report = check(before, LAYOUT)
    finding = next(f for f in report.findings if f.verdict >= Verdict.STRAINS)
    case = case_of(before, layout, finding, report, catalogue())
    earlier = [
        remedy.numbers["on"]
        for ladder in starts(case)
        if ladder.planting == "tender"
        for step in range(1, ladder.steps + 1)
        if (remedy := ladder.at(step)) is not None and remedy.numbers["days"] < 0
    ]
    assert earlier
    assert min(earlier) >= date(2027, 4, 28)


# no remedy, no search


def test_nothing_is_offered_where_nothing_small_helps():
    offered = found(walled_tomato())
    assert [f.code for f, _ in offered] == ["fixtures"]
    assert offered[0][1] == ()


def test_a_finding_that_is_gone_has_no_remedy():
    before = two_brassicas()
    checker, findings = troubles(before)
    apart = edits.shift(before, LAYOUT, ["cauliflower"], 0.0, 0.4)
    checker.update(apart, LAYOUT)
    assert remedies(apart, LAYOUT, findings[0], checker) == ()


def test_a_cancelled_search_ends_before_its_next_trial(monkeypatch):
    before = two_brassicas()
    checker, findings = troubles(before)
    trials = []
    monkeypatch.setattr(room.Trials, "promises", lambda *_: trials.append(1) or False)
    asked = []

    def is_cancelled():
        asked.append(1)
        return len(asked) > 3

    assert remedies(before, LAYOUT, findings[0], checker, is_cancelled=is_cancelled) == ()
    assert len(trials) == 2
    assert remedies(before, LAYOUT, findings[0], checker, is_cancelled=lambda: True) == ()
    assert len(trials) == 2


def test_a_search_leaves_the_checker_sound():
    before = under_maize()
    checker, findings = troubles(before)
    for finding in findings:
        remedies(before, LAYOUT, finding, checker)
        assert checker.update(before, LAYOUT).same_as(check(before, LAYOUT))


def test_the_search_is_the_same_each_time():
    before = late_lettuce()
    _, findings = troubles(before)
    one, two = (remedies(before, LAYOUT, findings[0], Checker()) for _ in range(2))
    assert one == two


def tall_before_low(latitude, y_maize, y_bean):
    """Sweetcorn between the noon sun and dwarf beans, in a bed 3 m wide that runs east and west."""
    value = garden(
        rows("sweetcorn", "maize", y_maize, day(5, 15), "sown", 0.2, 0.4, 3),
        rows("dwarf-bean", "bean", y_bean, day(6, 1), "sown", 0.1),
        beds=(bed(length=3.6, width=3.0),),
    )
    return edits.rebuilt(value, site=edits.rebuilt(value.site, latitude_deg=latitude))


@pytest.mark.parametrize(("latitude", "sign"), [(52.0, -1.0), (-52.0, 1.0)])
def test_what_throws_shade_is_put_on_the_side_from_which_the_shade_falls_outside(latitude, sign):
    """Common practice: tall crops on the north side; south of the equator on the south side.

    On the plan y runs down and north is up, so north is towards smaller y.
    """
    value = tall_before_low(latitude, 1.9 if sign < 0 else 0.1, 1.7 if sign < 0 else 1.2)
    checker, findings = troubles(value)
    shading = [f for f in findings if f.kind is Kind.SHADING and f.plantings[0] == "bean"]
    assert shading
    case = case_of(value, value.layouts[0], shading[0], checker.update(value, LAYOUT), catalogue())
    (ladder,) = poleward(case)
    remedy = ladder.at(1)
    assert remedy.numbers["planting"] == "maize"
    assert remedy.numbers["dy_m"] * sign > 0
    assert abs(remedy.numbers["dx_m"]) < 1e-6
    moved = apply(value, LAYOUT, remedy)
    after = check(moved).plantings["bean"].light
    assert after > check(value).plantings["bean"].light


def test_between_the_tropics_no_side_is_the_shaded_one():
    value = tall_before_low(10.0, 1.9, 1.7)
    checker, findings = troubles(value)
    for finding in findings:
        case = case_of(value, value.layouts[0], finding, checker.update(value, LAYOUT), catalogue())
        assert list(poleward(case)) == []


class _Together:
    """Trials in which only what adds up to some days and centimetres mends."""

    def __init__(self, days, metres):
        self.light = self.full = 0
        self._days, self._metres = days, metres

    def _does(self, remedy):
        parts = [remedy, *([remedy.also] if remedy.also else [])]
        days = sum(p.numbers.get("days", 0) for p in parts)
        metres = sum(p.numbers.get("distance_m", 0) for p in parts)
        return days >= self._days and metres >= self._metres

    def promises(self, remedy):
        self.light += 1
        return self._does(remedy)

    def mends(self, remedy):
        self.full += 1
        return remedy if self._does(remedy) else None


def _step(code, key, size):
    def at(step):
        return Remedy(code, {"planting": "p", key: step * size})

    return Ladder(code, "p", 40, at, (1, 4, 16, 40))


def _run(search):
    try:
        while True:
            next(search)
    except StopIteration as end:
        return end.value


@pytest.mark.parametrize(
    ("days", "metres", "possible"), [(10, 0.08, True), (30, 0.2, True), (60, 0.2, False)]
)
def test_two_changes_are_offered_together_where_none_alone_does(days, metres, possible):
    """Each may cost half of what is small: 35 days, 25 cm; what is found is halved where it can be."""
    ladders = [_step("shift", "distance_m", 0.01), _step("start", "days", 1)]
    trials = _Together(days, metres)
    both = _run(pair(ladders, trials))
    assert (both is not None) is possible
    if both is not None:
        assert both.also is not None
        assert {both.code, both.also.code} == {"shift", "start"}
        assert effort(both) <= LARGEST
        assert trials.full <= 5


def test_one_row_of_several_is_moved_by_itself_or_less():
    """Of two rows of cabbages only the nearer one is crowded: moving its plants alone is offered or does."""
    value = garden(
        rows("cabbage", "cabbage", 0.1, day(5, 10), spacing=0.45, across=0.5, count=2),
        rows("cauliflower", "cauliflower", 0.98, day(5, 10), spacing=0.5, across=0.2),
        beds=(bed(length=3.6, width=2.4),),
    )
    some = [r for _, each in found(value) for r in each if r.code == "shift stations"]
    for remedy in some:
        after = apply(value, LAYOUT, remedy)
        before = value.find(LAYOUT, remedy.numbers["planting"])
        pattern = after.find(LAYOUT, remedy.numbers["planting"]).pattern
        assert pattern.kind == before.pattern.kind
        assert len(pattern.moved) == len(remedy.numbers["stations"].split())
