"""Why a finding about a planting's place is one: soil, paths, reach, supports, covers."""

from collections.abc import Callable

from gardencanvas.fit import thresholds as limits
from gardencanvas.fit.report import Finding
from gardencanvas.words.plain import Measure, percent


def _no_support(_: Finding, measure: Measure) -> str:
    return (
        f"A climber finds a support within {measure.small(limits.SUPPORT_REACH_M)}, or the stems of a crop "
        "that holds it and is up in time. A planting "
        f"counts as held when {percent(limits.AIDED_SHARE)} of its stations are (common practice)."
    )


def _support_full(_: Finding, __: Measure) -> str:
    return (
        "A support carries as many stations as fit along it at the closest spacing the sources give, on both "
        "sides of a row, or round a stake (common practice)."
    )


def _stands_alone(_: Finding, measure: Measure) -> str:
    return (
        f"Beans that do not climb and grow {measure.small(limits.LEANING_M)} tall or more hold each other "
        f"up; from {limits.LOOSE} times the usual distance they cannot reach each other (common practice)."
    )


def _open_to_wind(_: Finding, measure: Measure) -> str:
    return (
        "A crop that the sources say wants a stake or net, or one that stands "
        f"{measure.small(limits.WIND_M)} tall and free, is blown over where nothing holds or shelters it. It "
        f"counts as held by a support within {measure.small(limits.SUPPORT_REACH_M)}, and as sheltered "
        f"near what is built or grown on the plot, out to {limits.LEE:.0f} times its height, or with "
        f"{limits.AMONG} or more of its own planting within {measure.small(limits.AMONG_M)} (common "
        "practice)."
    )


def _outgrows_cover(_: Finding, __: Measure) -> str:
    return (
        f"Grown to more than {limits.COVER_TIGHT} times the cover's height, a plant bends under it, and "
        "frost and pests reach the leaves that touch it (common practice)."
    )


def _no_bees(_: Finding, __: Measure) -> str:
    return (
        "Its fruits set only where insects reach the flowers, and a closed cover lies over it while it "
        f"flowers: from {limits.FRUIT_SET_D} days before the first harvest to {limits.LAST_SET_D} before the "
        f"last. It is told from {limits.SHUT_IN_D} days on (common practice)."
    )


def _shallow_soil(_: Finding, __: Measure) -> str:
    return (
        "The bed's depth of soil is set against the least effective root depth that the sources give, or "
        "what the roots reach before the crop is out, where that is less."
    )


def _on_path(_: Finding, measure: Measure) -> str:
    return (
        f"Stations on a path, more than {measure.small(limits.PATH_EDGE_M)} from its edge, stand in trodden "
        "soil (common practice)."
    )


def _on_bare_plan(_: Finding, __: Measure) -> str:
    return "Beds are drawn where the soil is prepared; stations outside all of them are counted."


def _dug_beside(_: Finding, measure: Measure) -> str:
    return (
        "Lifting it with a fork breaks the soil as wide as its roots or tubers spread and "
        f"{measure.small(limits.FORK_M)} "
        "beyond. A neighbour there that still grows and roots no deeper than "
        f"{measure.small(limits.SHALLOW_ROOTED_M)} loses roots (common practice)."
    )


def _out_of_reach(_: Finding, measure: Measure) -> str:
    return (
        f"From a path or a bed's edge one reaches {measure.small(limits.ARM_M)} into a bed without stepping "
        "on it, which is why beds are made twice as wide at most. What is picked again and again must lie "
        "within reach on some side, and no dense crop taller than "
        f"{measure.small(limits.LEAN_OVER_M)} may close every way to it (common practice)."
    )


WHY: dict[str, Callable[[Finding, Measure], str]] = {
    "no support": _no_support,
    "support full": _support_full,
    "stands alone": _stands_alone,
    "open to wind": _open_to_wind,
    "outgrows cover": _outgrows_cover,
    "no bees": _no_bees,
    "shallow soil": _shallow_soil,
    "on path": _on_path,
    "on bare plan": _on_bare_plan,
    "dug beside": _dug_beside,
    "out of reach": _out_of_reach,
}
