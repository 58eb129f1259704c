"""A crop's year in words: what is done from when until when."""

from collections.abc import Iterable
from typing import Literal, NamedTuple

from gardencanvas.season.crop_year import ALWAYS, Task, Way, YearSpan
from gardencanvas.words.language import mark, say
from gardencanvas.words.plain import yearly

Part = Literal["nursery", "growing", "harvest"]

_INTO_BED = {"sown": mark("Sow in place"), "raised": mark("Plant out"), "set": mark("Set")}
_TASKS = {
    Task.SOW: mark("sow"),
    Task.SOW_UNDER_GLASS: mark("sow under glass"),
    Task.PLANT_OUT: mark("plant out"),
    Task.SET: mark("set"),
}


class Lane(NamedTuple):
    """Something done through a part of the year; ``part`` as on the season ribbon."""

    name: str
    part: Part
    span: YearSpan | None  # None: never at this site


def lanes(ways: Iterable[Way]) -> tuple[tuple[Lane, ...], ...]:
    """The lanes of each way of starting; the harvest of a grown perennial once, at the end."""
    found: list[tuple[Lane, ...]] = []
    grown: YearSpan | None = None
    for way in ways:
        group = [Lane(say(_INTO_BED[way.kind]), "growing", way.in_bed)]
        if way.under_glass is not None:
            group.insert(0, Lane(say("Sow under glass"), "nursery", way.under_glass))
        if way.later_year:
            grown = grown or way.harvest
        elif way.harvest is not None:
            group.append(Lane(say("Harvest"), "harvest", way.harvest))
        found.append(tuple(group))
    return (*found, (Lane(say("Harvest, grown"), "harvest", grown),)) if grown is not None else tuple(found)


def span_words(span: YearSpan | None) -> str:
    """``5 March – 25 June``; ``all year``; ``not at this site``."""
    if span is None:
        return say("not at this site")
    return say("all year") if span.days == ALWAYS.days else f"{yearly(span.first)} – {yearly(span.last)}"


def year_words(ways: Iterable[Way]) -> str:
    """The whole year in sentences, for those who do not see the strip."""
    groups = ("; ".join(map(_lane_words, group)) for group in lanes(ways))
    return " ".join(f"{group}." for group in groups)


def _lane_words(lane: Lane) -> str:
    return say("{task} {when}", task=lane.name, when=span_words(lane.span))


def tasks_words(tasks: Iterable[Task]) -> str:
    """``sow, or plant out``."""
    first, *more = (say(_TASKS[task]) for task in tasks)
    for task in more:
        first = say("{one}, or {other}", one=first, other=task)
    return first
