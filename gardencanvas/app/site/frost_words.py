"""Sentences about frost dates: estimated, or told from past years. Knows no widget."""

from gardencanvas.garden.site import DayOfYear, Frost
from gardencanvas.season.frost import Estimate
from gardencanvas.season.past_frosts import Told
from gardencanvas.words.plain import yearly


def estimated(frost: Frost, estimate: Estimate | None, *, minima_known: bool) -> str:
    """The estimated dates, how rough they are and how they are made; with their spread if just made."""
    if frost.last is None or frost.first is None:
        found = "Frost is not expected in most years."
    elif estimate is not None and estimate.last is not None and estimate.first is not None:
        found = (
            f"Last frost about {yearly(frost.last)} ({_between(estimate.last)}), first frost about "
            f"{yearly(frost.first)} ({_between(estimate.first)}), each in 8 years of 10."
        )
    else:
        found = f"Last frost about {yearly(frost.last)}, first frost about {yearly(frost.first)}."
    minima = (
        "the months’ minima"
        if minima_known
        else "minima guessed as 5\u00a0°C below the months’ means, which are all that is known"
    )
    return (
        f"{found} A rough guess: simulated years of daily minima about {minima}. A hollow, a slope or a "
        "town’s heart can shift it by weeks; your own dates are better."
    )


def _between(days: tuple[DayOfYear, DayOfYear, DayOfYear]) -> str:
    return f"{yearly(days[0])} – {yearly(days[2])}"


def told_of(last: Told | None, first: Told | None) -> str:
    """What the list of past years says so far."""
    if last is None and first is None:
        return "Write the days of some years. With fewer than 5 only their mean and range are told."
    parts = [_told("Last frost", "after", last), _told("First frost", "before", first)]
    return " ".join(filter(None, parts))


def _told(name: str, side: str, told: Told | None) -> str:
    if told is None:
        return f"{name}: none so far."
    years = f"{told.years} year" + ("s" if told.years != 1 else "")
    if told.frosty < told.years:
        years += f", {told.years - told.frosty} without frost"
    sentence = (
        f"{name}: mean {yearly(told.mean)}, from {yearly(told.earliest)} to {yearly(told.latest)} ({years})"
    )
    if told.safe is None:
        return sentence + "."
    sentence += f"; frost {side} {yearly(told.safe)} in 1 year of 10"
    if told.trust == "wide limit":
        sentence += ", a limit widened because the years are few"
    return sentence + "."
