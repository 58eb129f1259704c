"""Sentences for what happens below ground."""

from gardencanvas.words.language import say
from gardencanvas.words.plain import percent, span
from gardencanvas.words.told import Told


def same_roots(t: Told) -> str:
    """Roots that want the same soil."""
    return say(
        "The roots of {others} take {share} of the soil of {who}, {when}: {depth} and {other_depth} deep, "
        "they overlap by {overlap} and want the same water and food.",
        who=t.who,
        others=t.others,
        share=percent(t.number("share")),
        when=span(t.finding.first, t.finding.last),
        depth=t.small("depth_m"),
        other_depth=t.small("other_depth_m"),
        overlap=percent(t.number("depth_overlap")),
    )


def roots_unknown(t: Told) -> str:
    """Roots of which nothing is known, so that nothing was checked."""
    return say(
        "{who} and {others} share ground; roots: not known, since no source says how deep they reach. "
        "Whether they compete below ground was not checked.",
        who=t.who,
        others=t.others,
    )


def roots_apart(t: Told) -> str:
    """Roots in the same ground at different depths."""
    said = say(
        "{who} and {others} root in the same ground to different depths, {depth} and {other_depth}: {apart} "
        "of their roots keep out of each other's way.",
        who=t.who,
        others=t.others,
        depth=t.small("depth_m"),
        other_depth=t.small("other_depth_m"),
        apart=percent(1 - t.number("depth_overlap")),
    )
    return f"{said}{t.kinds}"
