"""Remedies in any garden: each keeps its promise, and the garden asked about stays as it was."""

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from gardencanvas.garden.planting import Planting
from gardencanvas.planner.effort import LARGEST, effort
from gardencanvas.planner.remedies import apply, remedies
from tests.planner.gardens import troubles
from tests.planner.replay import replay
from tests.strategies import gardens


def _marked(layout, planting_id):
    planting = layout.by_id[planting_id]
    assert isinstance(planting, Planting)
    return planting


@settings(max_examples=15)
@given(garden=gardens(most=5), which=st.integers(0, 20))
def test_a_remedy_mends_and_worsens_nothing(garden, which):
    checker, findings = troubles(garden, "l1")
    assume(findings)
    finding = findings[which % len(findings)]
    as_it_was = garden.model_dump_json()
    for remedy in remedies(garden, "l1", finding, checker):
        assert replay(garden, "l1", finding, remedy) == [], (finding.id, remedy)
        assert effort(remedy) <= LARGEST
        planting = _marked(garden.layout("l1"), remedy.numbers["planting"])
        assert planting.id in finding.plantings
        assert not planting.locked
        if remedy.code == "start":
            assert not planting.start.pinned
        after = apply(garden, "l1", remedy)
        assert after == apply(garden, "l1", remedy)
        assert after != garden
        assert after.layouts[1] is garden.layouts[1]
        others = zip(after.layouts[0].plantings, garden.layouts[0].plantings, strict=True)
        assert all(a is b for a, b in others if b.id != planting.id)
    assert garden.model_dump_json() == as_it_was
