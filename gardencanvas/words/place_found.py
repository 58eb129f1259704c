"""Sentences for what a planting's place does to it: soil, paths, supports and covers."""

from gardencanvas.words.plain import counted, span
from gardencanvas.words.told import Told


def _some(t: Told) -> str:
    """Whom it is about: the planting, or so many of its stations."""
    some, of = t.count("stations"), t.count("of")
    return t.who if some == of else f"{some} of {of} stations of {t.who}"


def on_bare_plan(t: Told) -> str:
    """Stations in no bed."""
    if t.count("stations") == t.count("of"):
        return f"{t.who} stands on bare plan, outside every bed."
    return f"{_some(t)} lie outside every bed."


def shallow_soil(t: Told) -> str:
    """A bed with less soil than the roots need."""
    return (
        f"The bed holds {t.small('soil_m')} of soil; {_some(t)} wants at least {t.small('needed_m')}: "
        "it dries out sooner and stays smaller."
    )


def on_path(t: Told) -> str:
    """Stations where one walks."""
    stand = "stands" if t.count("stations") == t.count("of") else "stand"
    return f"{_some(t)} {stand} on a path, where the soil is trodden."


def no_support(t: Told) -> str:
    """A climber with nothing to climb."""
    return (
        f"{t.who} climbs to {t.small('height_m')} and has no {t.text('support')} within reach: "
        "along the ground it bears less, rots more and covers what grows beside it."
    )


def support_full(t: Told) -> str:
    """More stations on one support than it carries."""
    return (
        f"{t.count('on_it')} stations climb on one {t.text('support')}; at its closest spacing there is room "
        f"for {t.count('room')} of {t.who}."
    )


def stands_alone(t: Told) -> str:
    """Tall beans out of each other's reach."""
    stations = counted(t.count("stations"), "station", "stations")
    return (
        f"{stations} of {t.who} stand too far from the next to lean on it; {t.small('usual_m')} is usual. "
        f"At {t.small('height_m')} they want stakes and string."
    )


def open_to_wind(t: Told) -> str:
    """Tall, and neither held nor sheltered."""
    what = "a stake" if t.text("support") == "none" else f"a {t.text('support')}"
    return (
        f"{_some(t)} grows {t.small('height_m')} tall with nothing to hold it and no shelter from wind: "
        f"give it {what}, or set it in a block or in the lee of a hedge."
    )


def outgrows_cover(t: Told) -> str:
    """Taller than what lies over it."""
    return (
        f"{t.who} grows to {t.small('height_m')} and touches the {t.text('cover')}, "
        f"{t.small('cover_m')} high, from {t.day('on')}: take it off by then or raise it."
    )


def no_bees(t: Told) -> str:
    """Covered while it flowers."""
    return (
        f"{t.who} needs bees at its flowers and lies under {t.text('cover')} "
        f"{span(t.finding.first, t.finding.last)}: open it by day, or few fruits set."
    )
