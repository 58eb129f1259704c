"""Sentences about what came up by itself."""

from gardencanvas.garden.planting import Start
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import day


def came_up_words(start: Start) -> str:
    """When a volunteer came up, and how sure that is."""
    on = day(start.on)
    if start.within_d is None:
        return on
    within = say_many("{n} day", "{n} days", start.within_d)
    return say("{day} ± {days}, estimated", day=on, days=within)


def meaning_words(start: Start) -> str:
    """What being a volunteer means for the rest of the plan."""
    if start.kept:
        return say("Nobody sowed it; it was decided to keep it. No seed is ordered and no sowing is listed.")
    return say(
        "Nobody sowed it. Its dates are reckoned from the day it is thought to have come up; "
        "no seed is ordered and no sowing is listed. Keep it, thin it or remove it."
    )
