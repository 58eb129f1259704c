"""A crop put down as each pattern, and between the rows of a planted bed, with mouse and digits."""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from shapely import Point, Polygon

from gardencanvas.fit import check
from gardencanvas.garden import edits, outlines
from gardencanvas.garden.ground import Bed, Path, RingSupport
from tests.garden.makers import garden
from tests.window.hand import Hand, two_rows

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, two_rows())


def carry(hand, crop, x, y, mode="rows"):
    place = hand.view.viewport().mapToGlobal(hand.pixel((x, y)))
    hand.view.carry(crop, None, mode)
    hand.view.carry_move(place)
    hand.view._flush()


def added(hand):
    (planting,) = [p for p in hand.layout.plantings if p.id not in {"leeks", "beets"}]
    return planting


@pytest.mark.parametrize(
    ("key", "kind"),
    [
        (KEY.Key_4, "strip"),
        (KEY.Key_5, "block"),
        (KEY.Key_6, "ring"),
        (KEY.Key_7, "edging"),
        (KEY.Key_8, "drift"),
    ],
)
def test_digits_choose_the_pattern_and_no_plant_stands_outside_the_bed(hand, key, kind):
    carry(hand, "lettuce", 1.8, 2.6)
    hand.key(key)
    hand.view.carry_drop()
    pattern = added(hand).pattern
    assert pattern.kind == kind
    if kind == "block":
        assert pattern.staggered
    ground = Polygon(hand.layout.beds[1].outline).buffer(1e-6)
    assert all(ground.covers(Point(*xy)) for xy in pattern.stations)


def test_a_ring_goes_round_the_canes_that_are_near(hand):
    canes = RingSupport(
        id="canes", kind="cane ring", name="Canes", centre=(1.8, 2.6), radius_m=0.35, height_m=2.0
    )
    hand.session.propose(edits.add(hand.session.garden, hand.session.layout_id, [canes]), "Add")
    carry(hand, "runner-bean", 1.95, 2.7, "ring")
    hand.view.carry_drop()
    away = np.hypot(*(added(hand).stations - np.array((1.8, 2.6))).T)
    assert away == pytest.approx(np.full(len(away), 0.35))


def test_an_edging_follows_the_side_of_a_path_that_is_nearer(hand):
    path = Path(id="path", line=((5.0, 0.0), (5.0, 3.0)), width_m=0.4)
    hand.session.propose(edits.add(hand.session.garden, hand.session.layout_id, [path]), "Add")
    hand.view.zoom_out()
    hand.view.fit()
    hand.view.zoom_out()
    carry(hand, "french-marigold", 5.3, 1.5, "edging")
    hand.view.carry_drop()
    planting = added(hand)
    half = planting.pattern.spacing_m / 2
    assert planting.stations[:, 0] == pytest.approx(np.full(planting.pattern.count, 5.2 + half))


CURVED = outlines.curved(((0.5, 2.2), (2.0, 1.9), (3.2, 2.6), (2.6, 3.6), (1.0, 3.4)))
SHAPES = {
    "round": outlines.circle((1.8, 2.8), 0.9),
    "curved": CURVED,
    "keyhole": outlines.keyhole((1.8, 2.8), 0.95, 0.3, 0.3),
    "corner": ((0.5, 2.0), (3.0, 2.0), (3.0, 2.8), (1.5, 2.8), (1.5, 3.6), (0.5, 3.6)),
}


@pytest.mark.parametrize("shape", SHAPES)
def test_an_edging_follows_corners_and_curves_half_its_spacing_within_the_rim(qtbot, shape):
    rim = Polygon(SHAPES[shape])
    edged = Bed(id="edged", name="Edged", outline=SHAPES[shape])
    hand = Hand(qtbot, garden(beds=(edged,)))
    hand.view.fit()
    at = rim.exterior.interpolate(0.1, normalized=True)
    inside = at.x + (1.8 - at.x) * 0.1, at.y + (2.8 - at.y) * 0.1
    carry(hand, "french-marigold", *inside, "edging")
    hand.view.carry_drop()
    pattern = hand.layout.plantings[0].pattern
    assert pattern.kind == "edging"
    away = [rim.exterior.distance(Point(*xy)) for xy in pattern.stations]
    assert min(away) >= pattern.spacing_m / 2 - 0.002
    assert max(away) <= pattern.spacing_m / 2 * 2**0.5 + 0.002  # round a corner that points inwards
    assert all(rim.covers(Point(*xy)) for xy in pattern.stations)
    # they go all the way round, as many as the line within the rim holds
    line = rim.buffer(-pattern.spacing_m / 2, join_style="mitre").exterior.length
    assert len(away) == pytest.approx(line / pattern.spacing_m, abs=1)


def test_between_the_rows_lies_midway_and_every_place_gets_its_verdict(hand, qtbot):
    """Leeks stand in a row at y = 0.25, beetroot at 0.85 of the bed: midway is 0.55."""
    carry(hand, "lettuce", 1.8, 0.5, "between")
    offers = hand.view.place._offers
    assert {p.where for p in offers.places} == {"between rows", "beside a row", "corners", "rim"}
    qtbot.waitUntil(lambda: len(offers.verdicts) == len(offers.places), timeout=20_000)
    for place, verdict in offers.verdicts.items():
        one = hand.view.place._carried.planting(place.pattern)
        report = check(edits.add(hand.session.garden, "l1", [one]), "l1", hand.session.catalogue)
        own = max((f.verdict for f in report.of(one.id)), default=report.plantings[one.id].verdict)
        assert verdict >= own
    hand.view.carry_drop()
    assert added(hand).stations[:, 1] == pytest.approx(np.full(added(hand).pattern.count, 0.55), abs=1e-6)
    assert offers.places == ()


def test_plus_and_minus_space_the_crop_by_a_centimetre(hand):
    carry(hand, "lettuce", 1.8, 2.6)
    before = hand.view.plan.parts[hand.view.place.ghost_id].value.pattern.spacing_m
    hand.key(KEY.Key_Plus)
    hand.key(KEY.Key_Plus)
    after = hand.view.plan.parts[hand.view.place.ghost_id].value.pattern.spacing_m
    assert after == pytest.approx(before + 0.02)
    hand.key(KEY.Key_Minus)
    assert hand.view.plan.parts[hand.view.place.ghost_id].value.pattern.spacing_m == pytest.approx(
        before + 0.01
    )


def test_no_rim_near_is_said(hand):
    hand.view.zoom_out()
    carry(hand, "lettuce", 4.6, 1.6, "edging")
    assert any("there is none near here" in sentence for sentence in hand.said)
    hand.view.carry_drop()
    assert len(hand.layout.plantings) == 2


@pytest.mark.parametrize(
    ("handle", "to", "kind"), [("radius", (2.6, 2.6), "ring"), ("end", (3.0, 2.6), "strip")]
)
def test_handles_of_rings_and_strips_are_pulled_and_typed(hand, handle, to, kind):
    carry(hand, "lettuce", 1.8, 2.6, kind)
    hand.view.carry_drop()
    planting = added(hand)
    grip = next(h for h in hand.view._handles if h.name == handle)
    start = hand.view.mapFromScene(grip.pos())
    hand.press(start)
    hand.move(start + QPoint(30, 0))
    hand.key(KEY.Key_8)
    hand.key(KEY.Key_0)
    hand.release(hand.pixel(to))
    after = hand.planting(planting.id).pattern
    assert (after.radius_m if kind == "ring" else after.length_m) == pytest.approx(0.8)
    hand.session.history.undo()
    assert hand.planting(planting.id) == planting
