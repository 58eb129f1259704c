"""Sentences for what happens below ground."""

from gardencanvas.words.plain import percent, span
from gardencanvas.words.told import Told


def _depths(t: Told) -> str:
    return f"{t.small('depth_m')} and {t.small('other_depth_m')}"


def same_roots(t: Told) -> str:
    """Roots that want the same soil."""
    return (
        f"The roots of {t.others} take {percent(t.number('share'))} of the soil of {t.who}, "
        f"{span(t.finding.first, t.finding.last)}: {_depths(t)} deep, they overlap by "
        f"{percent(t.number('depth_overlap'))} and want the same water and food."
    )


def roots_unknown(t: Told) -> str:
    """Roots of which nothing is known, so that nothing was checked."""
    return (
        f"{t.who} and {t.others} share ground; roots: not known, since no source says how deep they reach. "
        "Whether they compete below ground was not checked."
    )


def roots_apart(t: Told) -> str:
    """Roots in the same ground at different depths."""
    return (
        f"{t.who} and {t.others} root in the same ground to different depths, {_depths(t)}: "
        f"{percent(1 - t.number('depth_overlap'))} of their roots keep out of each other's way.{t.kinds}"
    )
