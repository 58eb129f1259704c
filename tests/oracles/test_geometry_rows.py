"""Geometry of beds and patterns against closed forms and counting."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.cover_share import cover_share
from gardencanvas.fit.own import usual_load
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import RADIUS, grid
from gardencanvas.garden.pattern import Block
from tests.fit.makers import spot
from tests.garden.makers import bed, garden
from tests.oracles.oracle_rows import expected


def plants(length, width, spacing, staggered):
    return Block(length_m=length, width_m=width, spacing_m=spacing, staggered=staggered).count


@pytest.mark.parametrize(
    ("row", "length", "width", "spacing"),
    [("O089", 3.6, 1.2, 0.30), ("O090", 2.4, 1.2, 0.25), ("O091", 10.0, 10.0, 0.30)],
)
def test_a_block_holds_as_many_plants_as_are_counted_by_hand(row, length, width, spacing):
    """Half a spacing from each edge; staggered rows either way round, whichever holds more."""
    square, triangles = expected(row)
    assert plants(length, width, spacing, staggered=False) == square
    both = plants(length, width, spacing, staggered=True), plants(width, length, spacing, staggered=True)
    assert max(both) == triangles


def test_discs_that_touch_cover_as_much_as_packings_do():
    """π/4 of a square lattice and π/(2√3) of a staggered one; the rim of a large block holds fewer."""
    r, s, side = 0.15, 0.3, 36.0
    assert usual_load(np.array([r]), s, s)[0] == 0.0  # they touch, and do not overlap
    for staggered, packing in zip((False, True), expected("O092"), strict=True):
        count = plants(side, side, s, staggered)
        assert count * np.pi * r * r / side**2 == pytest.approx(packing, abs=0.01)


def test_a_bed_lies_under_a_disc_that_reaches_beyond_it():
    """A plant of radius 1 in a square bed of half-side 0.8, to scale: segments cut off in closed form."""
    sprawling = spot("p", "winter-squash", [(1.0, 1.0)], date(2027, 5, 20))
    made = garden(sprawling)
    (stand,) = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])["p"]
    radius = stand.peak_m
    half = 0.8 * radius
    ground = bed(x=1.0 - half, y=1.0 - half, length=2 * half, width=2 * half)
    weeks = grid(made.layouts[0].season)
    share = cover_share([stand], ground, weeks).covered
    full = np.flatnonzero(stand.sizes[RADIUS] >= radius - 1e-9)
    week = int(full[full < stand.end][0])
    want = expected("O086") * radius**2 / (2 * half) ** 2
    assert share[week] == pytest.approx(want, abs=0.01)
