"""Reach: what is picked often must lie within an arm's length of where one can stand.

Common practice: beds of 1.2 m, 1.5 m at most, are reached from both sides. There is no table; the cases are
those for which beds are made so.
"""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.reach import _crosses, picked_often
from gardencanvas.fit.report import Verdict
from gardencanvas.fit.thresholds import OUTSIDE_M
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Fixture, Path
from tests.fit.makers import rows
from tests.garden.makers import bed, garden

ON = date(2027, 5, 25)


def reached_from(width, *others, fixtures=(), y=None, crop="dwarf-bean"):
    """Beans along the middle of a bed of some width."""
    middle = width / 2 if y is None else y
    beans = rows("picked", crop, 3.0, 1, 0.1, 0.3, ON, "sown", x=0.3, y=middle - 0.15)
    return garden(beans, *others, beds=(bed(width=width),), fixtures=fixtures)


def found(made):
    return [f for f in check(made, "l1").findings if f.code == "out of reach"]


@pytest.mark.parametrize("width", [0.8, 1.2, 1.5])
def test_the_middle_of_a_usual_bed_is_reached_from_both_sides(width):
    assert not found(reached_from(width))


def test_the_middle_of_a_bed_too_wide_is_not():
    (finding,) = found(reached_from(1.8))
    assert finding.verdict is Verdict.STRAINS
    assert finding.plantings == ("picked",)
    assert finding.numbers["distance_m"] == pytest.approx(0.9)
    # those near the ends of the row are reached from the head of the bed
    assert 0 < finding.numbers["stations"] < finding.numbers["of"]


def test_a_path_through_it_brings_it_within_reach_and_ground_wider_than_a_bed_is_walked_on():
    path = Path(id="path", line=((0.0, 1.4), (3.6, 1.4)), width_m=0.3)
    assert not found(edits.add(reached_from(1.8), "l1", [path]))
    assert not found(reached_from(6.0))


def test_from_along_a_wall_nobody_reaches_in():
    wall = Fixture(
        id="w", name="Wall", kind="wall", outline=((-1.0, -0.2), (5.0, -0.2), (5.0, -0.1), (-1.0, -0.1)),
        height_m=0.5,
    )  # fmt: skip
    assert not found(reached_from(1.2, y=0.3))
    assert found(reached_from(1.2, y=0.3, fixtures=(wall,)))


def test_what_is_lifted_once_may_stand_out_of_reach():
    assert not found(reached_from(1.8, crop="beetroot"))
    assert picked_often(catalogue().resolve("courgette"))
    assert not picked_often(catalogue().resolve("cabbage"))
    assert not picked_often(catalogue().resolve("rhubarb"))


def test_dense_tall_crops_on_all_sides_close_every_way():
    """A short row of beans, sweetcorn sown thick all round it; with one side left open it is reached."""
    beans = rows("picked", "dwarf-bean", 0.6, 1, 0.1, 0.3, ON, "sown", x=1.5, y=0.45)

    def corn(name, x, y, length):
        return rows(name, "sweetcorn", length, 1, 0.15, 0.3, date(2027, 5, 1), "sown", x=x, y=y)

    north, south = corn("north", 0.0, 0.0, 3.6), corn("south", 0.0, 0.9, 3.6)
    ends = [corn("west", 0.7, 0.45, 0.6), corn("east", 2.3, 0.45, 0.6)]
    shut = [f for f in found(garden(beans, north, south, *ends, beds=(bed(),))) if len(f.plantings) > 1]
    (finding,) = shut
    assert finding.plantings[0] == "picked"
    assert {"north", "south"} <= set(finding.plantings)
    assert not found(garden(beans, north, *ends, beds=(bed(),)))


@given(
    st.lists(st.tuples(st.floats(-1, 1), st.floats(-1, 1)), min_size=1, max_size=5),
    st.lists(st.tuples(st.floats(-1, 1), st.floats(-1, 1)), min_size=1, max_size=5),
)
def test_a_way_crosses_a_disc_as_points_along_it_do(ways, discs):
    """Against a thousand points along each way."""
    ends, centres = np.array(ways), np.array(discs)
    along = np.linspace(0.0, 1.0, 1001)[:, None, None] * ends
    least = np.hypot(*(along[:, :, None, :] - centres).transpose(3, 0, 1, 2)).min(axis=0)
    sure = np.abs(least - 0.2) > 0.005
    way, disc = (k.ravel() for k in np.indices(least.shape))
    crossed = _crosses(ends[way], centres[disc], np.full(len(way), 0.2 + OUTSIDE_M)).reshape(least.shape)
    assert np.array_equal(crossed[sure], (least < 0.2)[sure])
