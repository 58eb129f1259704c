"""Sentences about frost and ripening."""

from gardencanvas.words.plain import percent
from gardencanvas.words.told import Told


def frost_to_come(t: Told) -> str:
    """Killing frost after the plants show."""
    return (
        f"In {percent(t.number('risk_after'))} of simulated years killing frost still comes after {t.who} "
        f"shows, in the bed from {t.day('in_bed')}. Start it later, or keep it covered."
    )


def seldom_ripe(t: Told) -> str:
    """Too few years bring a harvest."""
    return (
        f"{t.who}, in the bed from {t.day('in_bed')}, ripens in only {percent(t.number('ripens'))} "
        "of simulated years before frost or winter ends it."
    )
