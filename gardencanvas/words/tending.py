"""Sentences for what a grower's own work needs: room to lift, and reach to pick."""

from gardencanvas.words.language import say
from gardencanvas.words.plain import day, span
from gardencanvas.words.told import Told


def dug_beside(t: Told) -> str:
    """A neighbour lifted with a fork within reach of its roots."""
    return say(
        "{others} is dug up {days}, {distance} from {who}, which roots only {depth} deep and grows on until "
        "{until}: the fork tears its roots. It reaches {reach}.",
        others=t.others,
        days=span(t.finding.first, t.finding.last),
        distance=t.small("distance_m"),
        who=t.who,
        depth=t.small("root_depth_m"),
        until=t.day("until"),
        reach=t.small("reach_m"),
    )


def out_of_reach(t: Told) -> str:
    """Picked often, and no arm reaches it."""
    since = day(t.finding.first)
    if t.several:
        return say(
            "{who} is picked often from {since}, and {others} fill every way to it: leave a gap, or change "
            "them over.",
            who=t.who,
            since=since,
            others=t.others,
        )
    if len(t.names) > 1:
        return say(
            "{who} is picked often from {since}, and {others} fills every way to it: leave a gap, or change "
            "the two over.",
            who=t.who,
            since=since,
            others=t.others,
        )
    return say(
        "{who} is picked often from {since} and stands {distance} from the nearest path or edge of the bed; "
        "an arm reaches {arm}.",
        who=t.who,
        since=since,
        distance=t.small("distance_m"),
        arm=t.small("arm_m"),
    )
