"""The parts of a succession and their harvest in words."""

from collections.abc import Sequence

from gardencanvas.planner.succession import Part
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import percent, span


def how_even() -> str:
    """How the evenness of a harvest is reckoned."""
    return say(
        "Coefficient of variation: the standard deviation of the weekly harvests divided by their mean, from "
        "the first harvest to the last. Every plant's harvest is spread evenly over its own harvest time in "
        "an average year (common practice where no picking dates are known)."
    )


def harvest_words(part: Part) -> str:
    """When a part is harvested: eight years in ten, or what little there is to say."""
    if part.first is None or part.last is None:
        return say("no harvest")
    window = part.window
    if window.first is None or window.last is None:
        return say(
            "{days} at best; ripens in {share} of years",
            days=span(part.first, part.last),
            share=percent(window.ripens),
        )
    return span(window.first[0], window.last[2])


def evenness_words(value: float | None) -> str:
    """How even a harvest is, in a sentence; empty where there is nothing to compare."""
    if value is None:
        return ""
    return say(
        "The weekly harvest varies by {share} of its mean; 0 would be wholly even.", share=percent(value)
    )


def weekly_words(weekly: Sequence[float]) -> str:
    """The harvest of each week, for those who do not see the bars."""
    if not len(weekly):
        return say("nothing is harvested")
    amounts = ", ".join(f"{amount:.0f}" for amount in weekly)
    return say_many(
        "{n} week, in plants: {amounts}", "{n} weeks, in plants: {amounts}", len(weekly), amounts=amounts
    )


def aside_words(stayed: int, crowded: int) -> str:
    """What is not as asked: parts that stay where they are, copies without ground of their own."""
    said = []
    if stayed:
        said.append(
            say_many(
                "{n} part stays on its day: it is pinned or locked.",
                "{n} parts stay on their days: they are pinned or locked.",
                stayed,
            )
        )
    if crowded:
        said.append(
            say_many(
                "{n} part finds no free ground in the bed.",
                "{n} parts find no free ground in the bed.",
                crowded,
            )
        )
    return " ".join(said)
