"""Bed outlines from other programs' files: what is wrong with one, and what was passed over."""

from collections import Counter

from gardencanvas.files.outlines.refusing import OutlinesRefused, Why
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import Measure


def refused(refusal: OutlinesRefused, name: str, measure: Measure) -> str:
    """Why nothing of a file can be used, as a sentence."""
    values = refusal.values
    why = refusal.why
    if why is Why.UNREADABLE and values.get("reason"):
        return say("{name} cannot be read: {reason}.", name=name, reason=values["reason"])
    if why is Why.TOO_LONG:
        return say("{name} is larger than {most} MB.", name=name, most=values["most_mb"])
    if why is Why.TOO_MANY:
        return say(
            "{name} holds too much to draw beds from: {count} parts, and at most {most} are taken.",
            name=name,
            count=values["count"],
            most=values["most"],
        )
    if why is Why.TOO_WIDE:
        return say(
            "The outlines in {name} reach {span} across; a plan reaches {most}. "
            "Its numbers may mean something else.",
            name=name,
            span=measure.large(_metres(values["span_m"])),
            most=measure.large(_metres(values["most_m"])),
        )
    return _plain(why, name)


def _metres(value: object) -> float:
    return value if isinstance(value, float) else 0.0


def _plain(why: Why, name: str) -> str:
    if why is Why.ENTITIES:
        return say(
            "{name} declares entities of its own, which can be used to do harm; save it as plain SVG first.",
            name=name,
        )
    if why is Why.TOO_DEEP:
        return say("{name} is nested too deeply to be a drawing or a map.", name=name)
    if why is Why.NOT_THAT_KIND:
        return say("{name} is neither a GeoJSON map nor an SVG drawing.", name=name)
    if why is Why.NO_OUTLINE:
        return say("{name} holds no closed outline that could be a bed.", name=name)
    if why is Why.UNREADABLE:
        return say("{name} is not a file.", name=name)
    return say("{name} is damaged, or is neither a GeoJSON map nor an SVG drawing.", name=name)


def fault(why: Why) -> str:
    """Why one outline cannot become a bed, in a few words."""
    return {
        Why.CROSSES: say("crosses itself"),
        Why.TOO_MANY_CORNERS: say("more than 2,000 corners"),
        Why.TOO_FEW_CORNERS: say("fewer than three corners"),
        Why.TOO_SMALL: say("smaller than 1 cm²"),
        Why.HOLE_OUTSIDE: say("a hole lies outside it"),
        Why.TOO_MANY_HOLES: say("more than 50 holes"),
    }.get(why, say("cannot be read"))


def would_come(beds: int, area: str) -> str:
    """How many beds would be drawn, their area together, and where."""
    return say_many(
        "{n} bed, {area}, to the right of what is drawn. It can be moved from there.",
        "{n} beds, {area} together, to the right of what is drawn. They can be moved from there.",
        beds,
        area=area,
    )


def passed_over(passed: Counter[Why]) -> str:
    """What of a file was not looked at, as sentences; empty where that is nothing."""
    told = []
    for why, count in sorted(passed.items()):
        if why is Why.OPEN:
            told.append(say_many("{n} open line was left out.", "{n} open lines were left out.", count))
        elif why is Why.NO_AREA:
            told.append(
                say_many("{n} point or line was left out.", "{n} points or lines were left out.", count)
            )
        elif why is Why.BAD_PATH:
            told.append(say_many("{n} shape cannot be read.", "{n} shapes cannot be read.", count))
        else:
            told.append(
                say_many(
                    "{n} part of another kind was left out.", "{n} parts of other kinds were left out.", count
                )
            )
    return " ".join(told)
