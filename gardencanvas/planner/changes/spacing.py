"""Wider spacing, and fewer seedlings in a clump."""

from collections.abc import Iterator
from math import cos, floor, radians, sin

from gardencanvas.fit.report import Remedy
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Drift, Edging, Pattern, RingPattern, Rows, Strip, how_many
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.case import Case
from gardencanvas.planner.codes import Change, Numbers
from gardencanvas.planner.ladder import Ladder, coarsely, highest

FINE_M, STEP_M = 0.005, 0.01  # steps of spacings below and from FINE_BELOW_M on
FINE_BELOW_M = 0.15
WIDEST = 2.0  # times the spacing: half the plants are gone


def wider(case: Case) -> Iterator[Ladder]:
    """Ladders that widen the spacing of each planting, in the row and between rows, and thin its clumps."""
    for planting in case.changeable:
        for field in _fields(planting.pattern):
            yield _wider(planting, field)
        if planting.per_station > 1:
            yield _thinner(planting)


def _fields(pattern: Pattern) -> tuple[str, ...]:
    if isinstance(pattern, Rows):
        return ("spacing_m", "row_spacing_m") if pattern.rows > 1 else ("spacing_m",)
    if isinstance(pattern, Strip):
        return ("spacing_m", "across_m")
    return ("spacing_m",) if isinstance(pattern, Block | RingPattern | Edging | Drift) else ()


def _wider(planting: Planting, field: str) -> Ladder:
    now = float(getattr(planting.pattern, field))
    unit = FINE_M if now < FINE_BELOW_M else STEP_M
    begin = floor(now / unit + 1e-6)
    steps = floor(now * WIDEST / unit + 1e-6) - begin

    def at(step: int) -> Remedy | None:
        spacing = round((begin + step) * unit, 6)
        try:
            pattern = widened(planting.pattern, field, spacing)
        except Refusal:
            return None
        if field != "spacing_m" and _rows(pattern) < 2:  # one row has no spacing to others
            return None
        fewer = planting.pattern.count - pattern.count
        numbers: Numbers = {
            "planting": planting.id, "field": field, "spacing_m": spacing,
            "plants": planting.plants, "fewer": fewer * planting.per_station,
        }  # fmt: skip
        return Remedy(Change.WIDEN, numbers)

    steps = highest(steps, at)
    return Ladder(Change.WIDEN, planting.id, steps, at, coarsely(1, steps))


def _rows(pattern: Pattern) -> int:
    if isinstance(pattern, Strip):
        return how_many(pattern.width_m, pattern.across_m)
    return pattern.rows if isinstance(pattern, Rows) else 1


def widened(pattern: Pattern, field: str, spacing_m: float) -> Pattern:
    """A pattern at another spacing on the same ground; raises ``Refusal`` where no station fits.

    Rows that become fewer lie in the middle of the ground they had. A drift keeps its plants per area.
    """
    if isinstance(pattern, Rows) and field == "row_spacing_m":
        rows = how_many(pattern.width_m, spacing_m)
        slack = (pattern.width_m - rows * spacing_m) / 2
        return rebuilt(pattern, rows=rows, row_spacing_m=spacing_m, origin=moved(pattern, 0.0, slack))
    if isinstance(pattern, Drift):
        plants = floor(pattern.count * (pattern.spacing_m / spacing_m) ** 2)
        return rebuilt(pattern, spacing_m=spacing_m, plants=plants)
    return rebuilt(pattern, **{field: spacing_m})


def moved(pattern: Pattern, along_m: float, across_m: float) -> tuple[float, float]:
    """The origin of a pattern shifted along its own axes."""
    angle = radians(pattern.angle_deg)
    x = pattern.origin[0] + along_m * cos(angle) - across_m * sin(angle)
    y = pattern.origin[1] + along_m * sin(angle) + across_m * cos(angle)
    return round(x, 6), round(y, 6)


def _thinner(planting: Planting) -> Ladder:
    def at(step: int) -> Remedy:
        fewer = step * planting.pattern.count
        numbers: Numbers = {
            "planting": planting.id, "per_station": planting.per_station - step,
            "plants": planting.plants, "fewer": fewer,
        }  # fmt: skip
        return Remedy(Change.THIN, numbers)

    steps = highest(planting.per_station - 1, at)
    return Ladder(Change.THIN, planting.id, steps, at, coarsely(1, steps))
