"""Roots: published distributions, laws of sharing, and what growers know to compete below ground."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit import check
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.rooting import by_band, held_above, overlap
from gardencanvas.fit.roots import draw
from tests.fit.makers import WIDE, codes, judged, rows
from tests.garden.makers import garden
from tests.oracles.oracle_rows import expected, tolerance

CROPS = catalogue()
EARLY_SUMMER = date(2027, 5, 20)


def test_share_above_a_depth_is_that_of_gerwitz_and_page():
    assert held_above(np.array([0.20]), 5.0)[0] == pytest.approx(expected("O074"), abs=tolerance("O074"))


def test_jacksons_mean_of_all_plants_is_the_same_curve():
    """β of 0.966 per centimetre is a fading of −100 ln β a metre."""
    held = held_above(np.array([0.10, 0.20, 0.40]), -100 * np.log(0.966))
    assert held == pytest.approx(expected("O075"), abs=tolerance("O075"))


def test_overlap_of_shallow_and_deep_roots():
    shallow, deep = by_band(np.array([0.4])), by_band(np.array([1.1]))
    assert overlap(shallow, deep)[0] == pytest.approx(expected("O076"), abs=tolerance("O076"))
    # shares by band worked out by hand for the same row (five bands; none below 1.5 m)
    assert shallow[:3, 0] == pytest.approx([0.7107, 0.2307, 0.0585], abs=1e-4)
    assert deep[:5, 0] == pytest.approx([0.3533, 0.2347, 0.2595, 0.1361, 0.0164], abs=1e-4)


depths = st.floats(0.05, 4.0)


@given(depths, depths)
def test_overlap_is_mutual_at_most_whole_and_whole_with_itself(one, two):
    a, b = by_band(np.array([one])), by_band(np.array([two]))
    assert a.sum() == pytest.approx(1.0)
    assert overlap(a, a)[0] == pytest.approx(1.0)
    assert overlap(a, b)[0] == overlap(b, a)[0]
    assert 0.0 < overlap(a, b)[0] <= 1.0 + 1e-12


@given(depths, st.floats(0.05, 1.0), st.floats(0.05, 1.0))
def test_the_further_apart_two_depths_the_less_they_overlap(shallow, more, most):
    near, far = shallow + more, shallow + more + most
    a, b, c = (by_band(np.array([z])) for z in (shallow, near, far))
    assert overlap(a, c)[0] <= overlap(a, b)[0] + 1e-9


def test_roots_reach_at_least_as_far_as_leaves_in_every_crop_with_a_spread_on_record():
    """Why the canopy stands in for root spread where that is not known: it is never the wider one."""
    known = [c for c in CROPS.crops if c.root_spread_m and c.spread_m]
    assert len(known) >= 50
    for crop in known:
        along, across = usual_spacing(crop)
        own = np.sqrt(along * across / np.pi)
        assert min(crop.root_spread_m.mid / 2, own) >= 0.99 * min(crop.spread_m.mid / 2, own), crop.id


def found(report, code):
    return [f for f in report.findings if f.code == code]


def corn_and_squash(apart):
    """Squash in every row middle of sweetcorn: two hungry, thirsty crops that root alike."""
    corn = rows("corn", "sweetcorn", 6.0, 4, 0.4, apart, EARLY_SUMMER, "sown")
    return corn, rows("squash", "winter-squash", 6.0, 3, 1.0, apart, EARLY_SUMMER, y=apart / 2)


def test_squash_in_every_row_middle_of_corn_strains_both_and_never_clashes_by_roots():
    """Maize with pumpkin gave no more than either alone in 18 trials (median LER 0.90, Paut et al. 2024)."""
    report = judged(*corn_and_squash(0.5))
    both = found(report, "same roots")
    assert {f.plantings[0] for f in both} == {"corn", "squash"}
    for finding in both:
        assert finding.verdict is Verdict.STRAINS
        assert 0.3 <= finding.numbers["share"] < 1.0
        assert finding.first >= EARLY_SUMMER


def test_the_wider_their_rows_the_less_soil_they_take_from_each_other():
    shares = []
    for apart in (0.5, 0.6, 0.8, 1.0, 1.8):
        report = judged(*corn_and_squash(apart))
        some = [f.numbers["share"] for f in found(report, "same roots") if f.plantings[0] == "corn"]
        shares.append(max(some, default=0.0))
    assert shares == sorted(shares, reverse=True)
    assert shares[-1] == 0.0


def test_shallow_under_deep_roots_share_and_say_by_how_much():
    """Basil roots to 0.25 m, tomatoes to 1.1 m (Zr in the catalogue)."""
    tomatoes = rows("tall", "tomato", 3.0, 3, 0.45, 0.6, date(2027, 5, 25))
    report = judged(tomatoes, rows("low", "basil", 3.0, 2, 0.3, 0.6, date(2027, 6, 1), y=0.3))
    (finding,) = found(report, "roots apart")
    assert finding.verdict is Verdict.SHARES
    zr = {i: CROPS.resolve(i).root_depth_m.mid for i in ("basil", "tomato")}
    own, other = (by_band(np.array([zr[i]])) for i in ("basil", "tomato"))
    # both root deeper as they grow: near what grown ones share
    assert finding.numbers["depth_overlap"] == pytest.approx(overlap(own, other)[0], abs=0.1)
    assert finding.plantings == ("low", "tall")  # it is the smaller one whose soil is shared most


NEIGHBOURS = [("carrot", "onion"), ("tomato", "celery"), ("leek", "celery"), ("sweetcorn", "courgette")]


@pytest.mark.parametrize(("one", "two"), NEIGHBOURS)
def test_rows_by_turns_at_usual_distances_share_no_more_soil_than_their_like(one, two):
    a, b = CROPS.resolve(one), CROPS.resolve(two)
    apart = (a.between_rows_m.mid + b.between_rows_m.mid) / 2
    report = judged(
        rows("one", one, 4.0, 3, a.in_row_m.mid, 2 * apart, EARLY_SUMMER, a.starts[0].value),
        rows("two", two, 4.0, 3, b.in_row_m.mid, 2 * apart, EARLY_SUMMER, b.starts[0].value, y=apart),
    )
    assert not {"same roots", "roots apart"} & codes(report, "one")


def test_one_after_another_never_meet_below_ground():
    report = judged(
        rows("first", "spinach", 3.0, 3, 0.1, 0.25, date(2027, 4, 1), "sown"),
        rows("second", "leek", 3.0, 3, 0.15, 0.3, date(2027, 7, 20)),
    )
    assert {f.kind.value for f in report.findings} == {"timing"}


def test_roots_that_are_not_known_are_not_judged_and_are_named():
    squash = CROPS.crop("winter-squash")
    fields = {k: getattr(squash, k) for k in Crop.model_fields if k != "root_depth_m"}
    mine = Crop(**{**fields, "id": "mine"})
    corn, other = corn_and_squash(0.5)
    unknown = type(other)(**{**dict(other), "crop": "mine"})
    report = check(garden(corn, unknown, beds=WIDE, crops=(mine,)))
    assert not found(report, "same roots")
    assert "root_depth_m" in report.plantings["squash"].estimated
    (said,) = found(report, "roots not known")  # and never green because nothing was checked
    assert said.plantings == ("squash", "corn")
    assert said.numbers["unknown"] == "mine"
    assert report.plantings["squash"].verdict >= Verdict.SHARES


def test_draw_is_what_both_want():
    crop = CROPS.crop
    assert draw(crop("sweetcorn"), crop("courgette")) == 1.0  # both thirsty and hungry
    assert draw(crop("thyme"), crop("celery")) == 0.5  # thyme wants little of either
    for one, two in NEIGHBOURS:
        assert draw(crop(one), crop(two)) == draw(crop(two), crop(one))
