"""The order of measures is the grower's choice, and nothing else follows from it."""

from gardencanvas.measures.codes import OF_A_LAYOUT, Code
from gardencanvas.measures.comparison import compare
from gardencanvas.measures.importance import MOST, NONE, by_importance, weight
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout


def _measures():
    one = filled("a", "leek")
    ground = [ground_of(one)]
    return compare(garden_of(layout("l1", ground, one), layout("l2", ground, one)), "l1", "l2").measures


def test_what_matters_most_comes_first_and_the_rest_keeps_its_order():
    codes = [m.code for m in by_importance(_measures(), {Code.WATER: MOST, Code.HOURS: MOST})]
    assert codes[:2] == [c for c in OF_A_LAYOUT if c in (Code.WATER, Code.HOURS)]
    assert codes[2:] == [c for c in OF_A_LAYOUT if c not in (Code.WATER, Code.HOURS)]


def test_what_does_not_matter_is_left_out():
    assert Code.MIXING not in [m.code for m in by_importance(_measures(), {Code.MIXING: NONE})]


def test_weights_change_no_number():
    measures = _measures()
    assert set(by_importance(measures, {Code.WATER: MOST})) == set(measures)
    weights = [weight(m.code) for m in by_importance(measures)]
    assert weights == sorted(weights, reverse=True)
