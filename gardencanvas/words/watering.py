"""Sentences for what neighbours mean for watering."""

from gardencanvas.fit.report import Verdict
from gardencanvas.words.language import say
from gardencanvas.words.plain import span
from gardencanvas.words.told import Told


def unlike_water(t: Told) -> str:
    """The one wants little water, the other much."""
    if t.finding.verdict is Verdict.STRAINS:
        return say(
            "{who} wants dry ground and {others} much water: watered together, {who} suffers.",
            who=t.who,
            others=t.others,
        )
    return say(
        "{who} needs little water and {others} much: water {others} at its foot.", who=t.who, others=t.others
    )


def thirsty_together(t: Told) -> str:
    """Both need most water at the same time."""
    return say(
        "{who} and {others} share their ground and both need water most at the same time, {days}: "
        "water here first in a dry spell.",
        who=t.who,
        others=t.others,
        days=span(t.finding.first, t.finding.last),
    )
