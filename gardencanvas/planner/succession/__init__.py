"""Successions: the same planting started again every so many days, part by part."""

from gardencanvas.planner.succession.cutting import most_parts
from gardencanvas.planner.succession.group import Shifted, interval_of, members, shift_group, stays
from gardencanvas.planner.succession.harvest import Part, evenness, weekly_harvest
from gardencanvas.planner.succession.making import Succession, succeed
from gardencanvas.planner.succession.respacing import respace, told
from gardencanvas.planner.succession.rhythm import LONGEST_D, MOST_PARTS, Between, Rhythm, Way

__all__ = [
    "LONGEST_D",
    "MOST_PARTS",
    "Between",
    "Part",
    "Rhythm",
    "Shifted",
    "Succession",
    "Way",
    "evenness",
    "interval_of",
    "members",
    "most_parts",
    "respace",
    "shift_group",
    "stays",
    "succeed",
    "told",
    "weekly_harvest",
]
