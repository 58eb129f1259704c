"""Sentences for what a grower's own work needs: room to lift, and reach to pick."""

from gardencanvas.words.plain import day, span
from gardencanvas.words.told import Told


def dug_beside(t: Told) -> str:
    """A neighbour lifted with a fork within reach of its roots."""
    when = span(t.finding.first, t.finding.last)
    return (
        f"{t.others} is dug up {when}, {t.small('distance_m')} from {t.who}, which roots only "
        f"{t.small('root_depth_m')} deep and grows on until {t.day('until')}: the fork tears its roots. "
        f"It reaches {t.small('reach_m')}."
    )


def out_of_reach(t: Told) -> str:
    """Picked often, and no arm reaches it."""
    from_when = f"is picked often from {day(t.finding.first)}"
    if len(t.names) > 1:
        return (
            f"{t.who} {from_when}, and {t.others} fills every way to it: leave a gap, or change the two over."
        )
    return (
        f"{t.who} {from_when} and stands {t.small('distance_m')} from the nearest path or edge of the bed; "
        f"an arm reaches {t.small('arm_m')}."
    )
