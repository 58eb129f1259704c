"""The checker: the same report as a fresh check, whatever came before."""

from datetime import date, timedelta

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.fit import Checker, check
from gardencanvas.garden import edits
from gardencanvas.garden.planting import Start
from tests.garden.makers import bed, garden, row
from tests.strategies import edited, gardens


def assert_same(kept, fresh):
    assert [f.key() for f in kept.findings] == [f.key() for f in fresh.findings]
    assert kept.same_as(fresh)


@settings(deadline=None)
@given(gardens(), st.data())
def test_a_kept_report_equals_a_fresh_one_after_any_edits_undos_and_switches(garden, data):
    checker = Checker()
    past, layout_id = [garden], "l1"
    for _ in range(12):
        step = data.draw(st.sampled_from(["edit", "edit", "edit", "edit", "undo", "switch"]))
        if step == "edit":
            past.append(edited(data.draw, past[-1], layout_id))
        elif step == "undo" and len(past) > 1:
            past.pop()
        elif step == "switch":
            layout_id = "l2" if layout_id == "l1" else "l1"
        assert_same(checker.update(past[-1], layout_id), check(past[-1], layout_id))


def test_three_hundred_drags_and_changes_in_a_full_bed():
    """Plain numpy draws, so that the run is long: every plant here has neighbours."""
    rng = np.random.default_rng(20270501)
    crops = ("lettuce", "cabbage", "leek", "tomato", "radish", "sweetcorn", "winter-squash", "carrot")
    plantings = [
        row(f"p-{k}", crops[k % 8], x=0.3 * (k % 3), y=0.25 * k, on=date(2027, 4, 1) + timedelta(days=9 * k))
        for k in range(12)
    ]
    now = garden(*plantings, beds=(bed(length=4, width=3.2),))
    checker, worst = Checker(), set()
    for step in range(300):
        item = f"p-{rng.integers(12)}"
        if step % 5 < 3:
            now = edits.shift(now, "l1", [item], *rng.uniform(-0.3, 0.3, 2).tolist())
        elif step % 5 == 3:
            on = date(2027, 3, 1) + timedelta(days=int(rng.integers(120)))
            now = edits.change(now, "l1", item, start=Start(kind="raised", on=on))
        else:
            now = edits.change(now, "l1", item, crop=str(rng.choice(crops)))
        kept = checker.update(now, "l1")
        assert_same(kept, check(now, "l1"))
        worst.update((f.code, f.verdict.word) for f in kept.findings)
    assert {("crowded", "clashes"), ("shaded", "strains"), ("layered", "shares"), ("out in time", "shares")} <= worst
