"""Sentences about ground used twice: who is out when, and with how many days to spare."""

from gardencanvas.words.language import say, say_many
from gardencanvas.words.told import Told


def out_in_time(t: Told) -> str:
    """Out before its neighbour closes over it."""
    said = say_many(
        "{who} is out by {day}, {n} day before {others} closes over it.",
        "{who} is out by {day}, {n} days before {others} closes over it.",
        t.count("days"),
        who=t.who,
        day=t.day("harvest_last"),
        others=t.others,
    )
    return f"{said}{_odds(t)}{_shaded_earlier(t)}{t.kinds}"


def too_late(t: Told) -> str:
    """Still there when its neighbour closes over it."""
    said = say_many(
        "{others} closes over {who} on {day}, {n} day before its last harvest, {last}.",
        "{others} closes over {who} on {day}, {n} days before its last harvest, {last}.",
        -t.count("days"),
        others=t.others,
        who=t.who,
        day=t.day("closes"),
        last=t.day("harvest_last"),
    )
    return f"{said}{_odds(t)}"


def in_turns(t: Told) -> str:
    """The same ground at another date."""
    return say(
        "{who} is out by {out} and {others} goes in on {in_bed}: the same ground is used twice.",
        who=t.who,
        out=t.day("out"),
        others=t.others,
        in_bed=t.day("in_bed"),
    )


def _odds(t: Told) -> str:
    """The scantier of a cold and a warm year, one in ten each, where it differs from the usual one."""
    some = {name: t.count(f"days_{name}") for name in ("cold", "warm") if t.has(f"days_{name}")}
    if not some:
        return ""
    name = min(some, key=lambda n: some[n])
    if some[name] >= t.count("days"):
        return ""
    return f" {_cold(some[name]) if name == 'cold' else _warm(some[name])}"


def _cold(days: int) -> str:
    if days >= 0:
        return say_many(
            "In one year of ten, as cold as few are, only {n} day to spare is left.",
            "In one year of ten, as cold as few are, only {n} days to spare are left.",
            days,
        )
    return say_many(
        "In one year of ten, as cold as few are, {n} day late.",
        "In one year of ten, as cold as few are, {n} days late.",
        -days,
    )


def _warm(days: int) -> str:
    if days >= 0:
        return say_many(
            "In one year of ten, as warm as few are, only {n} day to spare is left.",
            "In one year of ten, as warm as few are, only {n} days to spare are left.",
            days,
        )
    return say_many(
        "In one year of ten, as warm as few are, {n} day late.",
        "In one year of ten, as warm as few are, {n} days late.",
        -days,
    )


def _shaded_earlier(t: Told) -> str:
    """What the ground gains by it."""
    if not t.has("earlier") or t.count("earlier") <= 0:
        return ""
    sooner = say_many(
        "The ground lies under leaves {n} day sooner.",
        "The ground lies under leaves {n} days sooner.",
        t.count("earlier"),
    )
    return f" {sooner}"
