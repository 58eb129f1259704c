"""The checker: the same report as a fresh check, whatever came before."""

from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import UnknownCrop, catalogue
from gardencanvas.crops.model import Crop, Quantity
from gardencanvas.fit import Checker, check
from gardencanvas.fit.codes import Code
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Fixture, Path
from gardencanvas.garden.planting import Start
from tests.fit.makers import rows, spot
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
    assert {
        ("crowded", "clashes"),
        ("shaded", "strains"),
        ("layered", "shares"),
        ("out in time", "shares"),
    } <= worst


def _patch():
    """A bed too wide to reach across, a path, a hedge: what is dug, picked, climbed and blown over."""
    crops = (
        ("potato-early", 0.3, "set", 4, 1), ("strawberry", 0.35, "raised", 4, 1),
        ("dwarf-bean", 0.1, "sown", 5, 20), ("sweetcorn", 0.3, "sown", 5, 5),
        ("climbing-bean", 0.15, "sown", 6, 5), ("sunflower", 1.5, "raised", 5, 15),
        ("lettuce", 0.2, "raised", 5, 1), ("cabbage", 0.32, "raised", 5, 1),
        ("broccoli", 0.4, "raised", 5, 1),
    )  # fmt: skip
    plantings = [
        rows(crop, crop, 2.4, 1, spacing, 0.3, date(2027, month, day), kind, x=0.2, y=0.18 * k)
        for k, (crop, spacing, kind, month, day) in enumerate(crops)
    ]
    ring = ((0, -11.5), (3, -11.5), (3, -11.1), (0, -11.1))
    hedge = Fixture(id="hedge", name="hedge", kind="hedge", height_m=1.2, outline=ring)
    path = Path(id="path", line=((3.2, -1.0), (3.2, 3.0)), width_m=0.3)
    made = garden(*plantings, beds=(bed(length=3.0, width=1.9),), fixtures=(hedge,))
    return edits.add(made, "l1", [path])


def test_eighty_changes_where_things_are_dug_picked_climbed_and_blown_over():
    """Paths and hedges move too, and steps are taken back."""
    rng = np.random.default_rng(20270601)
    past = [_patch()]
    names = [p.id for p in past[0].layout("l1").plantings]
    checker, seen, together = Checker(), set(), 0
    for step in range(80):
        now, item = past[-1], str(rng.choice(names))
        by = rng.uniform(-0.25, 0.25, 2).tolist()
        if step % 9 == 8 and len(past) > 3:
            past = past[:-2]
        elif step % 9 == 4:
            past.append(edits.shift(now, "l1", [["path", "hedge"][step % 2]], *by))
        elif step % 9 == 2:
            on = date(2027, 4, 1) + timedelta(days=int(rng.integers(80)))
            past.append(edits.change(now, "l1", item, start=Start(kind="sown", on=on)))
        else:
            past.append(edits.shift(now, "l1", [item], *by))
        kept = checker.update(past[-1], "l1")
        assert_same(kept, check(past[-1], "l1"))
        seen |= {f.code for f in kept.findings}
        together += sum(f.code == "crowded" and len(f.plantings) > 2 for f in kept.findings)
    assert {"dug beside", "out of reach", "open to wind", "smaller each", "no support", "crowded"} <= seen
    assert together


@given(gardens())
def test_every_finding_has_a_known_code_and_a_source_in_full(made):
    report = check(made, "l1")
    sources = catalogue().sources
    for finding in report.findings:
        assert Code(finding.code)
        assert finding.source in sources
        assert f"{finding.id}:".startswith(":".join((finding.kind, *finding.plantings, "")))
        assert set(finding.plantings) <= set(report.plantings)


def test_findings_say_the_same_in_two_layouts_of_one_garden():
    made = garden(
        row("p-1", "cabbage", on=date(2027, 5, 1)), row("p-2", "broccoli", y=0.2, on=date(2027, 5, 1))
    )
    twice = edits.rebuilt(made, layouts=(made.layouts[0], edits.rebuilt(made.layouts[0], id="l2", name="l2")))
    checker = Checker()
    one, two = checker.update(twice, "l1"), checker.update(twice, "l2")
    assert [f.key() for f in one.findings] == [f.key() for f in two.findings]
    assert (one.layout, two.layout) == ("l1", "l2")


def test_a_layout_is_found_by_id_or_name_or_refused():
    made = garden(row())
    assert check(made, "First").layout == check(made, "l1").layout == check(made).layout == "l1"
    with pytest.raises(KeyError):
        check(made, "no such layout")


def test_a_crop_that_is_not_known_is_named():
    with pytest.raises(UnknownCrop, match="moonflower"):
        check(garden(row(crop="moonflower")))


def test_a_growers_own_crop_is_judged_and_may_change():
    """A wide cabbage meets its neighbour at half a metre, and a small one no longer."""
    cabbage = catalogue().resolve("cabbage")

    def own(spread):
        wide = Quantity(low=spread, mid=spread, high=spread, source="user", basis="user")
        room = Quantity(low=0.1, mid=spread, high=spread, source="user", basis="user")
        changes = {"id": "own", "spread_m": wide, "in_row_m": room, "between_rows_m": room}
        return Crop(**{**{k: getattr(cabbage, k) for k in Crop.model_fields}, **changes})

    plants = ((0.5, 0.0), (1.5, 0.0)), ((0.5, 0.5), (1.5, 0.5))
    made = garden(*[spot(f"p-{k + 1}", "own", some, date(2027, 5, 1)) for k, some in enumerate(plants)])
    checker = Checker()
    wide = checker.update(edits.rebuilt(made, crops=(own(1.0),)), "l1")
    small = checker.update(edits.rebuilt(made, crops=(own(0.15),)), "l1")
    assert "crowding:p-1:p-2" in {f.id for f in wide.findings}
    assert "crowding:p-1:p-2" not in {f.id for f in small.findings}
    assert_same(small, check(edits.rebuilt(made, crops=(own(0.15),)), "l1"))
