"""Sentences for what neighbours mean for watering."""

from gardencanvas.fit.report import Verdict
from gardencanvas.words.plain import span
from gardencanvas.words.told import Told


def unlike_water(t: Told) -> str:
    """The one wants little water, the other much."""
    if t.finding.verdict is Verdict.STRAINS:
        return f"{t.who} wants dry ground and {t.others} much water: watered together, {t.who} suffers."
    return f"{t.who} needs little water and {t.others} much: water {t.others} at its foot."


def thirsty_together(t: Told) -> str:
    """Both need most water at the same time."""
    return (
        f"{t.who} and {t.others} share their ground and both need water most at the same time, "
        f"{span(t.finding.first, t.finding.last)}: water here first in a dry spell."
    )
