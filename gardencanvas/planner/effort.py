"""How much a remedy changes, in one measure, so that the smallest comes first.

One unit is a change that a grower would hardly notice. What makes a unit is common practice put into numbers:
five centimetres, a week, one plant or one harvest day in twenty. Building a support, or getting another
variety's seed, is worth four. Up to ten a change is small: half a metre, ten weeks, half the plants or half
the harvest.
"""

from gardencanvas.fit.report import Remedy
from gardencanvas.planner.codes import Change

MOVE_M = 0.05
TIME_D = 7.0
SHARE = 0.05  # of the plants, of the harvest, of the size
SUPPORT, VARIETY = 4.0, 4.0
OTHER_SIDE = 8.0  # on the other side of the same bed: on paper one stroke, however wide the bed is
LARGEST = 10.0


def number(remedy: Remedy, key: str) -> float:
    """A number that a remedy carries; 0 where it carries none of that name."""
    value = remedy.numbers.get(key, 0)
    return float(value) if isinstance(value, int | float) else 0.0


def effort(remedy: Remedy) -> float:
    """How much a remedy changes: the sum of its parts, each in units of its own.

    Distance / 5 cm + days / 7 + plants lost / 5 % + harvest days lost / 5 % + size lost / 5 %. Moving some of
    the plants counts between half (one of many) and all of that.
    """
    moved = number(remedy, "distance_m") / MOVE_M
    if remedy.numbers.get("toward") == "poleward":
        moved = min(moved, OTHER_SIDE)
    if remedy.code == Change.SHIFT_STATIONS:
        moved *= 0.5 + 0.5 * number(remedy, "count") / max(number(remedy, "plants"), 1.0)
    total = moved + abs(number(remedy, "days")) / TIME_D
    total += number(remedy, "fewer") / max(number(remedy, "plants"), 1.0) / SHARE
    total += number(remedy, "harvest_lost_d") / max(number(remedy, "harvest_d"), 1.0) / SHARE
    if "size" in remedy.numbers:
        total += (1.0 - number(remedy, "size")) / SHARE
    if remedy.code == Change.SUPPORT:
        total += SUPPORT * number(remedy, "supports")
    if remedy.code == Change.VARIETY:
        total += VARIETY
    return total + (effort(remedy.also) if remedy.also is not None else 0.0)
