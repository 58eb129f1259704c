"""Sentences about frost dates: estimated, or told from past years. Knows no widget."""

from typing import Literal

from gardencanvas.garden.site import DayOfYear, Frost
from gardencanvas.season.frost import Estimate
from gardencanvas.season.past_frosts import Told
from gardencanvas.words.language import mark, say, say_many
from gardencanvas.words.plain import yearly


def estimated(frost: Frost, estimate: Estimate | None, *, minima_known: bool) -> str:
    """The estimated dates, how rough they are and how they are made; with their spread if just made."""
    if frost.last is None or frost.first is None:
        found = say("Frost is not expected in most years.")
    elif estimate is not None and estimate.last is not None and estimate.first is not None:
        found = say(
            "Last frost about {last} ({last_days}), first frost about {first} ({first_days}), each in 8 "
            "years of 10.",
            last=yearly(frost.last),
            last_days=_between(estimate.last),
            first=yearly(frost.first),
            first_days=_between(estimate.first),
        )
    else:
        last, first = yearly(frost.last), yearly(frost.first)
        found = say("Last frost about {last}, first frost about {first}.", last=last, first=first)
    if minima_known:
        rough = say("A rough guess: simulated years of daily minima about the months’ minima.")
    else:
        rough = say(
            "A rough guess: simulated years of daily minima about minima guessed as 5\u00a0°C below the "
            "months’ means, which are all that is known."
        )
    own = say("A hollow, a slope or a town’s heart can shift it by weeks; your own dates are better.")
    return f"{found} {rough} {own}"


def _between(days: tuple[DayOfYear, DayOfYear, DayOfYear]) -> str:
    return f"{yearly(days[0])} – {yearly(days[2])}"


def told_of(last: Told | None, first: Told | None) -> str:
    """What the list of past years says so far."""
    if last is None and first is None:
        return say("Write the days of some years. With fewer than 5 only their mean and range are told.")
    return f"{_told('last', last)} {_told('first', first)}"


def _told(which: Literal["last", "first"], told: Told | None) -> str:
    spring = which == "last"
    if told is None:
        return say("Last frost: none so far.") if spring else say("First frost: none so far.")
    values = {
        "mean": yearly(told.mean),
        "earliest": yearly(told.earliest),
        "latest": yearly(told.latest),
        "years": _years(told),
    }
    if spring:
        sentences = [say("Last frost: mean {mean}, from {earliest} to {latest} ({years}).", **values)]
    else:
        sentences = [say("First frost: mean {mean}, from {earliest} to {latest} ({years}).", **values)]
    if told.safe is not None:
        after, before = (
            mark("Frost after {day} in 1 year of 10."),
            mark("Frost before {day} in 1 year of 10."),
        )
        sentences.append(say(after if spring else before, day=yearly(told.safe)))
        if told.trust == "wide limit":
            sentences.append(say("That limit is widened because the years are few."))
    return " ".join(sentences)


def _years(told: Told) -> str:
    years = say_many("{n} year", "{n} years", told.years)
    if told.frosty == told.years:
        return years
    return say("{years}, {n} without frost", years=years, n=told.years - told.frosty)
