"""Sentences for what a planting's place does to it: soil, paths, supports and covers."""

from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import span
from gardencanvas.words.structures import cover_name, support_name, supports_counted
from gardencanvas.words.told import Told


def _whole(t: Told) -> bool:
    """Whether it is about every station of the planting."""
    return t.count("stations") == t.count("of")


def on_bare_plan(t: Told) -> str:
    """Stations in no bed."""
    if _whole(t):
        return say("{who} stands on bare plan, outside every bed.", who=t.who)
    return say_many(
        "{n} of {of} stations of {who} lies outside every bed.",
        "{n} of {of} stations of {who} lie outside every bed.",
        t.count("stations"),
        of=t.count("of"),
        who=t.who,
    )


def shallow_soil(t: Told) -> str:
    """A bed with less soil than the roots need."""
    soil, needed = t.small("soil_m"), t.small("needed_m")
    if _whole(t):
        return say(
            "The bed holds {soil} of soil; {who} wants at least {needed}: it dries out sooner and stays "
            "smaller.",
            soil=soil,
            who=t.who,
            needed=needed,
        )
    return say_many(
        "The bed holds {soil} of soil; {n} of {of} stations of {who} wants at least {needed}: it dries out "
        "sooner and stays smaller.",
        "The bed holds {soil} of soil; {n} of {of} stations of {who} want at least {needed}: they dry out "
        "sooner and stay smaller.",
        t.count("stations"),
        soil=soil,
        of=t.count("of"),
        who=t.who,
        needed=needed,
    )


def on_path(t: Told) -> str:
    """Stations where one walks."""
    if _whole(t):
        return say("{who} stands on a path, where the soil is trodden.", who=t.who)
    return say_many(
        "{n} of {of} stations of {who} stands on a path, where the soil is trodden.",
        "{n} of {of} stations of {who} stand on a path, where the soil is trodden.",
        t.count("stations"),
        of=t.count("of"),
        who=t.who,
    )


def no_support(t: Told) -> str:
    """A climber with nothing to climb."""
    return say(
        "{who} climbs to {height} and has no {support} within reach: along the ground it bears less, rots "
        "more and covers what grows beside it.",
        who=t.who,
        height=t.small("height_m"),
        support=support_name(t.text("support")),
    )


def support_full(t: Told) -> str:
    """More stations on one support than it carries."""
    return say_many(
        "{n} station climbs on one {support}; at its closest spacing there is room for {room} of {who}.",
        "{n} stations climb on one {support}; at its closest spacing there is room for {room} of {who}.",
        t.count("on_it"),
        support=support_name(t.text("support")),
        room=t.count("room"),
        who=t.who,
    )


def stands_alone(t: Told) -> str:
    """Tall beans out of each other's reach."""
    return say_many(
        "{n} station of {who} stands too far from the next to lean on it; {usual} is usual. At {height} it "
        "wants stakes and string.",
        "{n} stations of {who} stand too far from the next to lean on it; {usual} is usual. At {height} they "
        "want stakes and string.",
        t.count("stations"),
        who=t.who,
        usual=t.small("usual_m"),
        height=t.small("height_m"),
    )


def open_to_wind(t: Told) -> str:
    """Tall, and neither held nor sheltered."""
    wanted = t.text("support")
    support = supports_counted("stake" if wanted == "none" else wanted, 1)
    if _whole(t):
        return say(
            "{who} grows {height} tall with nothing to hold it and no shelter from wind: give it {support}, "
            "or set it in a block or in the lee of a hedge.",
            who=t.who,
            height=t.small("height_m"),
            support=support,
        )
    return say_many(
        "{n} of {of} stations of {who} grows {height} tall with nothing to hold it and no shelter from "
        "wind: give it {support}, or set it in a block or in the lee of a hedge.",
        "{n} of {of} stations of {who} grow {height} tall with nothing to hold them and no shelter from "
        "wind: give them {support}, or set them in a block or in the lee of a hedge.",
        t.count("stations"),
        of=t.count("of"),
        who=t.who,
        height=t.small("height_m"),
        support=support,
    )


def outgrows_cover(t: Told) -> str:
    """Taller than what lies over it."""
    return say(
        "{who} grows to {height} and touches the {cover}, {high} high, from {since}: take it off by then or "
        "raise it.",
        who=t.who,
        height=t.small("height_m"),
        cover=cover_name(t.text("cover")),
        high=t.small("cover_m"),
        since=t.day("on"),
    )


def no_bees(t: Told) -> str:
    """Covered while it flowers."""
    return say(
        "{who} needs bees at its flowers and lies under {cover} {days}: open it by day, or few fruits set.",
        who=t.who,
        cover=cover_name(t.text("cover")),
        days=span(t.finding.first, t.finding.last),
    )
