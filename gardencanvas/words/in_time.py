"""Sentences about ground used twice: who is out when, and with how many days to spare."""

from gardencanvas.words.plain import counted
from gardencanvas.words.told import Told


def out_in_time(t: Told) -> str:
    """Out before its neighbour closes over it."""
    spare = counted(t.count("days"), "day", "days")
    return (
        f"{t.who} is out by {t.day('harvest_last')}, {spare} before {t.others} closes over it{_odds(t)}."
        f"{_shaded_earlier(t)}{t.kinds}"
    )


def too_late(t: Told) -> str:
    """Still there when its neighbour closes over it."""
    late = counted(-t.count("days"), "day", "days")
    return (
        f"{t.others} closes over {t.who} on {t.day('closes')}, {late} before its last harvest, "
        f"{t.day('harvest_last')}{_odds(t)}."
    )


def in_turns(t: Told) -> str:
    """The same ground at another date."""
    return (
        f"{t.who} is out by {t.day('out')} and {t.others} goes in on {t.day('in_bed')}: "
        "the same ground is used twice."
    )


def _odds(t: Told) -> str:
    """The scantier of a cold and a warm year, one in ten each, where it differs from the usual one."""
    some = {name: t.count(f"days_{name}") for name in ("cold", "warm") if t.has(f"days_{name}")}
    if not some:
        return ""
    name = min(some, key=lambda n: some[n])
    days = some[name]
    if days >= t.count("days"):
        return ""
    said = f"{counted(days, 'day', 'days')} to spare" if days >= 0 else f"{-days} days late"
    return f"; in one year of ten, as {name} as few are, {'only ' if days >= 0 else ''}{said}"


def _shaded_earlier(t: Told) -> str:
    """What the ground gains by it."""
    if not t.has("earlier") or t.count("earlier") <= 0:
        return ""
    return f" The ground lies under leaves {counted(t.count('earlier'), 'day', 'days')} sooner."
