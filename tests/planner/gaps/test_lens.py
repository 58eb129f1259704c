"""The lens formula turned round, against the formula itself."""

import numpy as np
import pytest

from gardencanvas.fit.geometry import lens_area
from gardencanvas.planner.gaps.lens import least_distance

# r, s, d and the area of the lens: worked by hand from two circular segments (unit circles one apart: the
# textbook's 2π/3 − √3/2)
WORKED = [(1.0, 1.0, 1.0, 2 * np.pi / 3 - np.sqrt(3) / 2), (0.3, 0.2, 0.4, 0.0198979)]


@pytest.mark.parametrize(("r", "s", "d", "area"), WORKED)
def test_worked_lenses(r, s, d, area):
    share = np.array([area / (np.pi * r * r)])
    assert least_distance(np.array([r]), np.array([s]), share) == pytest.approx(d, abs=0.004)


def test_the_area_at_the_distance_is_the_share_asked_for():
    draw = np.random.default_rng(7)
    r, s = draw.uniform(0.02, 0.5, (2, 2000))
    share = draw.uniform(0.05, 0.9, 2000)
    d = least_distance(r, s, share)
    some = d > 0.0
    found = lens_area(r[some], s[some], d[some]) / (np.pi * r[some] ** 2)
    assert np.abs(found - share[some]).max() < 0.01
    assert (
        some == (np.minimum(s / r, 1.0) ** 2 > share)
    ).all()  # else a disc that small cannot cover so much


def test_touching_discs_share_nothing():
    assert least_distance(np.array([0.3]), np.array([0.2]), np.array([0.0])) == pytest.approx(0.5)
