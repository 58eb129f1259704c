"""Sentences about frost, cold ground and ripening."""

from gardencanvas.words.amounts import shown
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import percent
from gardencanvas.words.told import Told

_TOLD = 0.005  # a smaller share is told as none: it would be shown as 0 %


def frost_to_come(t: Told) -> str:
    """Killing frost after the plants show."""
    return say(
        "In {share} of simulated years killing frost still comes after {who} stands open to it on {exposed}; "
        "the typical last one is on {last_frost}.",
        share=percent(t.number("risk_after")),
        who=t.who,
        exposed=t.day("exposed"),
        last_frost=t.day("last_frost"),
    )


def killed_in_winter(t: Told) -> str:
    """Frost kills what has to stand over winter."""
    ripens, ready, frost = t.number("ripens"), t.date("ready"), t.date("killing_frost")
    if ripens >= _TOLD:
        said = say(
            "{who} has to stand over winter to be ready on {ready}, and lives to it in only {share} of "
            "simulated years: killing frost is usual from {frost}.",
            who=t.who,
            ready=ready,
            share=percent(ripens),
            frost=frost,
        )
    else:
        said = say(
            "{who} has to stand over winter to be ready on {ready}, and lives to it in no simulated year: "
            "killing frost is usual from {frost}.",
            who=t.who,
            ready=ready,
            frost=frost,
        )
    if not t.has("hardier_c"):
        return said
    least = shown("frost_kill_c", t.number("hardier_c"), t.measure)
    hardier = say("Its hardiest kinds, which live down to {least}, come through.", least=least)
    return f"{said} {hardier}"


def seldom_ripe(t: Told) -> str:
    """Too few years bring a harvest."""
    ripens = t.number("ripens")
    if ripens >= _TOLD:
        said = say("{who} ripens in only {share} of simulated years.", who=t.who, share=percent(ripens))
    else:
        said = say("{who} ripens in no simulated year.", who=t.who)
    return f"{said} {_why_seldom(t)}"


def _why_seldom(t: Told) -> str:
    if not t.has("ready"):
        return say("It never finds warmth enough here.")
    if not t.has("killing_frost"):
        return say("It would be ready on {ready}, if no colder year keeps it.", ready=t.date("ready"))
    return say(
        "Without frost it would be ready on {ready}, and killing frost is usual from {frost}.",
        ready=t.date("ready"),
        frost=t.date("killing_frost"),
    )


def too_early(t: Told) -> str:
    """Ground too cold to be started in."""
    least, since = shown("least_c", t.number("least_c"), t.measure), t.day("warm_from")
    waits = say_many(
        "{who} waits {n} day in cold ground.",
        "{who} waits {n} days in cold ground.",
        t.count("days"),
        who=t.who,
    )
    if t.text("kind") == "sown":
        need = say(
            "Its seed wants {least}, and a seed bed is as warm by day from {since}.", least=least, since=since
        )
    else:
        need = say(
            "It wants {least} to grow, and a day's mean is as warm from {since}.", least=least, since=since
        )
    return f"{waits} {need}"
