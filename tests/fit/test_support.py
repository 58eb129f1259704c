"""Support: what climbers need, how many one support carries, and beans that hold each other up."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import Checker, check
from gardencanvas.fit.aids import growing_of
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.support import leans, room_for, wants_support
from gardencanvas.garden import edits
from gardencanvas.garden.ground import LineSupport, RingSupport
from gardencanvas.season.course import Weeks
from gardencanvas.season.growth import follow
from tests.fit.makers import WIDE, rows, spot
from tests.garden.makers import garden

CROPS = catalogue()
MAY = date(2027, 5, 20)


def net(y=0.15, length=3.0, x=0.0, name="net"):
    return LineSupport(id=name, kind="net", name=name, begin=(x, y), end=(x + length, y), height_m=1.8)


def ring(radius, kind="cane ring"):
    return RingSupport(id="canes", kind=kind, name="canes", centre=(0.0, 0.0), radius_m=radius, height_m=2.2)


def found(plantings, supports=()):
    made = garden(*plantings, beds=WIDE)
    report = check(edits.add(made, "l1", list(supports)) if supports else made)
    return [f for f in report.findings if f.kind.value == "support"]


CLIMBERS = ["climbing-bean", "runner-bean", "pea", "cucumber", "sweet-pea", "hop"]


@pytest.mark.parametrize("crop_id", CLIMBERS)
def test_a_climber_wants_a_support_within_reach(crop_id):
    assert wants_support(CROPS.crop(crop_id))
    row = rows("p", crop_id, 3.0, 1, CROPS.crop(crop_id).in_row_m.mid, 0.3, MAY, "raised")
    (bare,) = found([row])
    assert (bare.code, bare.verdict) == ("no support", Verdict.STRAINS)
    assert bare.numbers["stations"] == bare.numbers["of"] == row.pattern.count
    assert found([row], [net()]) == []
    assert [f.code for f in found([row], [net(y=0.5)])] == ["no support"]


@pytest.mark.parametrize(
    "crop_id", ["dwarf-bean", "courgette", "winter-squash", "lettuce", "tomato", "cabbage"]
)
def test_bushes_and_what_grows_along_the_ground_want_none(crop_id):
    assert found([rows("p", crop_id, 3.0, 1, 0.5, 0.5, MAY)]) == []


def test_maize_holds_the_beans_sown_among_it():
    """The milpa: beans climb the stems (several trials); beside lettuce they have nothing to climb."""
    beans = rows("beans", "climbing-bean", 3.0, 1, 0.15, 0.3, date(2027, 6, 5), "sown")
    corn = rows("tall", "sweetcorn", 3.0, 1, 0.4, 0.3, date(2027, 5, 10), "sown", y=0.1)
    assert found([beans, corn]) == []
    # and they grow as tall as on a net
    height = [
        follow_height(garden(beans, *some, beds=WIDE), supports)
        for some, supports in (((corn,), ()), ((), (net(),)), ((), ()))
    ]
    assert height[0] == height[1] > height[2]
    low = rows("low", "lettuce", 3.0, 1, 0.25, 0.3, MAY, y=0.1)
    assert [f.code for f in found([beans, low])] == ["no support"]


def follow_height(made, supports):
    """How tall the beans are on the first of August."""
    layout = edits.add(made, "l1", list(supports)).layout("l1") if supports else made.layout("l1")
    planting = layout.plantings[0]
    growing = growing_of(layout, planting, CROPS.resolve(planting.crop))
    weeks = Weeks(date(2027, 1, 4), 52)
    return float(follow(made.site, [growing], weeks).height_m[0, weeks.index(date(2027, 8, 1))])


def test_maize_not_yet_knee_high_holds_nothing():
    """Beans are sown when the maize is knee-high, or they pull it down (Mt. Pleasant 2016)."""
    corn = rows("tall", "sweetcorn", 3.0, 1, 0.4, 0.3, MAY, "sown", y=0.1)
    beans = rows("beans", "climbing-bean", 3.0, 1, 0.15, 0.3, MAY, "sown")
    assert [f.code for f in found([beans, corn])] == ["no support"]


def test_maize_that_is_gone_or_far_holds_nothing():
    beans = rows("beans", "climbing-bean", 3.0, 1, 0.15, 0.3, date(2027, 6, 5), "sown")
    far = rows("tall", "sweetcorn", 3.0, 1, 0.4, 0.3, date(2027, 5, 10), "sown", y=0.7)
    assert [f.code for f in found([beans, far])] == ["no support"]
    early = rows(
        "tall", "sweetcorn", 3.0, 1, 0.4, 0.3, date(2027, 4, 10), "sown", y=0.1, end=date(2027, 5, 10)
    )
    assert [f.code for f in found([beans, early])] == ["no support"]


def test_room_on_a_net_is_a_row_on_each_side():
    """3 m at 10 cm, the closest in the books: 31 stations in a row, a row on either side."""
    bean = CROPS.crop("climbing-bean")
    close = bean.in_row_m.low
    assert room_for(bean, net()) == 2 * (int(3.0 / close + 1e-9) + 1)
    # canes in a ring of 0.5 m, plants a hand's breadth outside: 2π · 0.6 m
    assert room_for(bean, ring(0.5)) == int(2 * 3.14159 * 0.6 / close)
    assert room_for(CROPS.crop("hop"), ring(0.0, "stake")) == 1


def test_two_double_rows_on_one_net_are_too_many_and_one_is_not():
    def double(name, y):
        return rows(name, "climbing-bean", 3.0, 2, 0.1, 0.1, MAY, "sown", y=y)

    assert not [f for f in found([double("a", 0.1)], [net(y=0.2)]) if f.code == "support full"]
    full = [f for f in found([double("a", 0.0), double("b", 0.2)], [net(y=0.2)]) if f.code == "support full"]
    assert {f.plantings[0] for f in full} == {"a", "b"}
    for finding in full:
        assert finding.verdict is Verdict.STRAINS
        assert finding.numbers["on_it"] > finding.numbers["room"]


def test_broad_beans_hold_each_other_in_rows_and_want_stakes_when_set_wide():
    """Any leaflet on broad beans: tall kinds set apart need stakes and string."""
    usual = CROPS.crop("broad-bean").in_row_m.mid
    assert leans(CROPS.crop("broad-bean"))
    assert not leans(CROPS.crop("dwarf-bean"))
    early = date(2027, 3, 1)
    close = rows("p", "broad-bean", 3.0, 2, usual, 0.2, early, "sown")
    wide = rows("p", "broad-bean", 3.0, 2, 2 * usual, 2 * usual, early, "sown")
    assert found([close]) == []
    (finding,) = found([wide])
    assert (finding.code, finding.verdict) == ("stands alone", Verdict.STRAINS)
    staked = [net(y=usual, length=3.0, name="a"), net(y=3 * usual, length=3.0, name="b")]
    assert found([wide], staked) == []


def test_one_bean_out_of_a_row_is_the_only_one_to_lean():
    points = [(0.2 * k, 0.0) for k in range(8)] + [(3.0, 0.0)]
    (finding,) = found([spot("p", "broad-bean", points, date(2027, 3, 1), "sown")])
    assert finding.stations.tolist() == [8]


def test_a_support_put_up_beside_maize_that_goes_is_seen_at_once():
    beans = rows("beans", "climbing-bean", 3.0, 1, 0.15, 0.3, date(2027, 6, 5), "sown")
    corn = rows("tall", "sweetcorn", 3.0, 1, 0.4, 0.3, date(2027, 5, 10), "sown", y=0.1)
    both = garden(beans, corn, beds=WIDE)
    checker = Checker()
    for made in (both, edits.remove(both, "l1", ["tall"]), edits.add(both, "l1", [net()]), both):
        assert checker.update(made, "l1").same_as(check(made, "l1"))
