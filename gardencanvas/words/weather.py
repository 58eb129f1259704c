"""Sentences about frost, cold ground and ripening."""

from gardencanvas.words.amounts import shown
from gardencanvas.words.plain import counted, percent
from gardencanvas.words.told import Told


def frost_to_come(t: Told) -> str:
    """Killing frost after the plants show."""
    return (
        f"In {percent(t.number('risk_after'))} of simulated years killing frost still comes after {t.who} "
        f"stands open to it on {t.day('exposed')}; the typical last one is on {t.day('last_frost')}."
    )


def _share(of_years: float) -> str:
    """A share of simulated years that is too small."""
    return f"only {percent(of_years)} of simulated years" if of_years >= 0.005 else "no simulated year"


def killed_in_winter(t: Told) -> str:
    """Frost kills what has to stand over winter."""
    hardier = ""
    if t.has("hardier_c"):
        least = shown("frost_kill_c", t.number("hardier_c"), t.measure)
        hardier = f" Its hardiest kinds, which live down to {least}, come through."
    return (
        f"{t.who} has to stand over winter to be ready on {t.date('ready')}, and lives to it in "
        f"{_share(t.number('ripens'))}: killing frost is usual from {t.date('killing_frost')}.{hardier}"
    )


def seldom_ripe(t: Told) -> str:
    """Too few years bring a harvest."""
    ripens = f"{t.who} ripens in {_share(t.number('ripens'))}"
    if not t.has("ready"):
        return f"{ripens}: it never finds warmth enough here."
    if not t.has("killing_frost"):
        return f"{ripens}: it would be ready on {t.date('ready')}, if no colder year keeps it."
    return (
        f"{ripens}: without frost it would be ready on {t.date('ready')}, and killing frost is usual from "
        f"{t.date('killing_frost')}."
    )


def too_early(t: Told) -> str:
    """Ground too cold to be started in."""
    least = shown("least_c", t.number("least_c"), t.measure)
    need = f"it wants {least} to grow, and a day's mean is as warm from {t.day('warm_from')}"
    if t.text("kind") == "sown":
        need = f"its seed wants {least}, and a seed bed is as warm by day from {t.day('warm_from')}"
    return f"{t.who} waits {counted(t.count('days'), 'day', 'days')} in cold ground: {need}."
