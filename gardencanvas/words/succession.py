"""The parts of a succession and their harvest in words."""

from collections.abc import Sequence

from gardencanvas.planner.succession import Part
from gardencanvas.words.plain import counted, percent, span

HOW_EVEN = (
    "Coefficient of variation: the standard deviation of the weekly harvests divided by their mean, from "
    "the first harvest to the last. Every plant's harvest is spread evenly over its own harvest time in an "
    "average year (common practice where no picking dates are known)."
)


def harvest_words(part: Part) -> str:
    """When a part is harvested: eight years in ten, or what little there is to say."""
    if part.first is None or part.last is None:
        return "no harvest"
    window = part.window
    if window.first is None or window.last is None:
        return f"{span(part.first, part.last)} at best; ripens in {percent(window.ripens)} of years"
    return span(window.first[0], window.last[2])


def evenness_words(value: float | None) -> str:
    """How even a harvest is, in a sentence; empty where there is nothing to compare."""
    if value is None:
        return ""
    return f"The weekly harvest varies by {percent(value)} of its mean; 0 would be wholly even."


def weekly_words(weekly: Sequence[float]) -> str:
    """The harvest of each week, for those who do not see the bars."""
    if not len(weekly):
        return "nothing is harvested"
    amounts = ", ".join(f"{amount:.0f}" for amount in weekly)
    return f"{counted(len(weekly), 'week', 'weeks')}, in plants: {amounts}"


def aside_words(stayed: int, crowded: int) -> str:
    """What is not as asked: parts that stay where they are, copies without ground of their own."""
    said = []
    if stayed == 1:
        said.append("1 part stays on its day: it is pinned or locked.")
    elif stayed:
        said.append(f"{stayed} parts stay on their days: they are pinned or locked.")
    if crowded:
        find = "finds" if crowded == 1 else "find"
        said.append(f"{counted(crowded, 'part', 'parts')} {find} no free ground in the bed.")
    return " ".join(said)
