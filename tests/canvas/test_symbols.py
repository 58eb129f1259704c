"""Symbols of the twelve habits: they keep to their footprint, differ from each other, and are stable."""

from itertools import combinations

import numpy as np
import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage, QPainter

from gardencanvas.canvas.palette import tint_of
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.canvas.symbols.stamps import LARGEST, Stamps, bucket, station_variants
from gardencanvas.crops.model import Habit

TINT = tint_of("Solanaceae", "any", False)


@pytest.fixture(autouse=True)
def _gui(qapp):
    """Pixmaps need the application."""


def drawn(habit, radius, *, seed=1, ripe=False, detail=None):
    """RGBA of a plant in the middle of a field three radii wide, shape (n, n, 4)."""
    side = int(radius * 3) // 2 * 2 + 2
    image = QImage(side, side, QImage.Format.Format_RGBA8888)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    draw_plant(
        painter,
        habit,
        TINT,
        QPointF(side / 2, side / 2),
        radius,
        seed=seed,
        detail=detail_for(radius) if detail is None else detail,
        ripe=ripe,
    )
    painter.end()
    return np.frombuffer(image.constBits(), np.uint8).reshape(side, side, 4).astype(float)


@pytest.mark.parametrize("habit", Habit)
@pytest.mark.parametrize("radius", [4, 10, 30, 100])
def test_a_symbol_fills_its_footprint_and_keeps_to_it(habit, radius):
    for seed in range(4):
        alpha = drawn(habit, radius, seed=seed, ripe=bool(seed % 2))[:, :, 3] / 255
        n = len(alpha)
        y, x = np.mgrid[:n, :n] + 0.5 - n / 2
        away = np.hypot(x, y)
        assert alpha[away > radius * 1.12 + 1].max() < 0.05  # no leaf beyond it but by a tenth
        assert away[alpha > 0.1].max() > radius * 0.8
        assert alpha[away < radius].mean() > 0.12


def test_habits_can_be_told_apart_at_eight_pixels():
    """With the same tint, silhouette and light tell them apart."""
    small = {habit: drawn(habit, 4, seed=3) for habit in Habit}
    for one, two in combinations(Habit, 2):
        assert np.abs(small[one] - small[two]).mean() > 3.0, (one, two)


@pytest.mark.parametrize("habit", Habit)
def test_the_same_seed_draws_the_same_plant_and_another_seed_another(habit):
    assert np.array_equal(drawn(habit, 24, seed=5), drawn(habit, 24, seed=5))
    assert not np.array_equal(drawn(habit, 24, seed=5), drawn(habit, 24, seed=6))


@pytest.mark.parametrize("habit", [Habit.BUSH, Habit.SHRUB, Habit.SPIRE, Habit.SPRAWLER, Habit.CLIMBER])
def test_ripe_plants_show_it(habit):
    assert not np.array_equal(drawn(habit, 30), drawn(habit, 30, ripe=True))


def test_detail_grows_with_size():
    assert [detail_for(r) for r in (2, 6, 10, 20, 100)] == sorted(detail_for(r) for r in (2, 6, 10, 20, 100))
    assert detail_for(2) == 0
    assert detail_for(100) == 3


def test_buckets_are_near_and_few():
    radii = np.linspace(1.0, LARGEST, 3000)
    made = np.array([bucket(r) for r in radii])
    small = radii < 5
    assert np.abs(made / radii - 1)[~small].max() < 0.06  # a stamp is at most 6 % off …
    assert np.abs(made - radii)[small].max() <= 0.25 + 1e-9  # … or a quarter of a pixel
    assert len(set(made)) < 100
    assert bucket(5000) == LARGEST


def test_sheets_are_kept_and_dropped_by_weight():
    stamps = Stamps(budget=600_000)
    first = stamps.sheet(Habit.BUSH, TINT, 20.0)
    assert stamps.sheet(Habit.BUSH, TINT, 20.1) is first
    for radius in (24, 28, 32, 36, 40, 46, 52):
        stamps.sheet(Habit.BUSH, TINT, float(radius))
    assert stamps.sheet(Habit.BUSH, TINT, 20.0) is not first


def test_when_time_is_up_another_size_stands_in():
    stamps = Stamps()
    known = stamps.sheet(Habit.HEAD, TINT, 20.0)
    stamps.begin_frame(seconds=0.0)
    assert stamps.sheet(Habit.HEAD, TINT, 26.0) is known
    assert stamps.owed
    assert stamps.sheet(Habit.TUFT, TINT, 26.0).radius_px == bucket(26.0)  # nothing could stand in
    stamps.begin_frame(seconds=1.0)
    assert stamps.sheet(Habit.HEAD, TINT, 26.0).radius_px == bucket(26.0)
    assert not stamps.owed


def test_neighbours_in_a_row_are_not_the_same_plant():
    shown = station_variants(500, 7)
    for count in (6, 4):
        alike = (np.diff(shown % count) == 0).mean()
        assert alike < 0.25
    assert np.array_equal(shown, station_variants(500, 7))
