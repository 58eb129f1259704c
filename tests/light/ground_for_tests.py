"""Fixtures and sites of these tests."""

import numpy as np

from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Site
from tests.season.crops_for_tests import site

SITE: Site = site()


def block(corners, height: float, kind: str = "wall", base: float = 0.0, clear: float = 0.0) -> Fixture:
    """A fixture with these corners."""
    return Fixture(
        id="f",
        name=kind,
        kind=kind,
        outline=tuple((float(x), float(y)) for x, y in corners),
        height_m=height,
        base_m=base,
        clear_share=clear,
    )


def box(x: float, y: float, width: float, depth: float, height: float, **own) -> Fixture:
    """A rectangle with its upper left corner at x, y."""
    return block(((x, y), (x + width, y), (x + width, y + depth), (x, y + depth)), height, **own)


def tree(x: float, y: float, radius: float, height: float, base: float, clear: float = 0.0) -> Fixture:
    """A round crown."""
    angles = np.arange(24) * (2 * np.pi / 24)
    ring = [(x + radius * np.cos(a), y + radius * np.sin(a)) for a in angles]
    return block(ring, height, kind="tree", base=base, clear=clear)


def moved(fixture: Fixture, change) -> Fixture:
    """The fixture with its corners changed by a function of (n, 2) arrays."""
    corners = change(np.asarray(fixture.outline))
    return block(corners, fixture.height_m, fixture.kind, fixture.base_m, fixture.clear_share)


GARDEN = (
    box(-3.0, -2.0, 8.0, 0.2, 2.0),
    box(6.0, -1.0, 0.3, 5.0, 1.8, kind="hedge", clear=0.1),
    tree(-4.0, 3.0, 1.5, 5.0, 2.0, clear=0.2),
    block([(2.0, 6.0), (5.0, 6.0), (5.0, 7.0), (3.0, 7.0), (3.0, 9.0), (2.0, 9.0)], 2.5, kind="shed"),
)
POINTS = np.random.default_rng(5).uniform(-6.0, 9.0, (60, 2))
