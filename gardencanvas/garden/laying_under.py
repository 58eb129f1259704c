"""Edits of the background picture: lay one under the plan, scale, move, turn and dim it, take it away."""

from typing import Any

from gardencanvas.garden.backdrop import COARSEST_M, FINEST_M, Backdrop, apart
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.value import Point


def with_backdrop(garden: Garden, backdrop: Backdrop | None) -> Garden:
    """The garden with that picture under it, or with none."""
    return garden if backdrop is garden.backdrop else rebuilt(garden, backdrop=backdrop)


def backdrop_of(garden: Garden) -> Backdrop:
    """The garden's background picture; raises ``Refusal`` where there is none."""
    if garden.backdrop is None:
        raise Refusal("There is no background picture yet.")
    return garden.backdrop


def changed(garden: Garden, **fields: Any) -> Garden:
    """Change fields of the picture that do not move it: ``dimmed``, ``shown``, ``locked``, ``name``."""
    before = backdrop_of(garden)
    after = rebuilt(before, **fields)
    return garden if after == before else with_backdrop(garden, after)


def placed(garden: Garden, **fields: Any) -> Garden:
    """Change where and how large the picture lies; raises ``Refusal`` if it is locked."""
    if backdrop_of(garden).locked:
        raise Refusal("The background picture is locked; unlock it first.")
    return changed(garden, **fields)


def shifted(garden: Garden, dx_m: float, dy_m: float) -> Garden:
    """Move the picture on the plan."""
    x, y = backdrop_of(garden).centre
    return placed(garden, centre=(x + dx_m, y + dy_m))


def turned(garden: Garden, angle_deg: float) -> Garden:
    """Turn the picture clockwise about its middle."""
    return placed(garden, angle_deg=(backdrop_of(garden).angle_deg + angle_deg) % 360)


def scaled(garden: Garden, a: Point, b: Point, distance_m: float) -> Garden:
    """Scale the picture so that what lies at two plan points comes to lie ``distance_m`` apart; then lock it.

    What lies at ``a`` stays there and the line keeps its direction: a similarity about ``a`` with the factor
    ``distance_m / |b - a|``.

    Raises
    ------
    Refusal
        If the points coincide, the picture is locked, or a pixel would be finer or coarser than allowed.
    """
    before = backdrop_of(garden)
    if apart(a, b) < 1e-4:
        raise Refusal("The two points lie on top of each other; choose two that are farther apart.")
    factor = distance_m / apart(a, b)
    scale = before.metres_per_pixel * factor
    if not FINEST_M <= scale <= COARSEST_M:
        raise Refusal(
            "That would make one pixel of the picture {scale:.3g} m; "
            "it can be from {finest:g} to {coarsest:g} m.",
            scale=scale,
            finest=FINEST_M,
            coarsest=COARSEST_M,
        )
    centre = tuple(a[i] + (before.centre[i] - a[i]) * factor for i in (0, 1))
    return placed(garden, metres_per_pixel=scale, centre=centre, locked=True)
