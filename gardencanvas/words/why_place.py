"""Why a finding about a planting's place is one: soil, paths, reach, supports, covers."""

from collections.abc import Callable

from gardencanvas.fit import thresholds as limits
from gardencanvas.fit.report import Finding
from gardencanvas.words.language import figure, say
from gardencanvas.words.plain import Measure, percent


def _no_support(_: Finding, measure: Measure) -> str:
    return say(
        "A climber finds a support within {reach}, or the stems of a crop that holds it and is up in "
        "time. A planting counts as held when {share} of its stations are (common practice).",
        reach=measure.small(limits.SUPPORT_REACH_M),
        share=percent(limits.AIDED_SHARE),
    )


def _support_full(_: Finding, __: Measure) -> str:
    return say(
        "A support carries as many stations as fit along it at the closest spacing the sources give, on "
        "both sides of a row, or round a stake (common practice)."
    )


def _stands_alone(_: Finding, measure: Measure) -> str:
    return say(
        "Beans that do not climb and grow {height} tall or more hold each other up; from {times} times "
        "the usual distance they cannot reach each other (common practice).",
        height=measure.small(limits.LEANING_M),
        times=figure(limits.LOOSE),
    )


def _open_to_wind(_: Finding, measure: Measure) -> str:
    return say(
        "A crop that the sources say wants a stake or net, or one that stands {height} tall and free, is "
        "blown over where nothing holds or shelters it. It counts as held by a support within {reach}, "
        "and as sheltered near what is built or grown on the plot, out to {lee} times its height, or with "
        "{among} or more of its own planting within {near} (common practice).",
        height=measure.small(limits.WIND_M),
        reach=measure.small(limits.SUPPORT_REACH_M),
        lee=figure(limits.LEE),
        among=limits.AMONG,
        near=measure.small(limits.AMONG_M),
    )


def _outgrows_cover(_: Finding, __: Measure) -> str:
    return say(
        "Grown to more than {times} times the cover's height, a plant bends under it, and frost and pests "
        "reach the leaves that touch it (common practice).",
        times=figure(limits.COVER_TIGHT),
    )


def _no_bees(_: Finding, __: Measure) -> str:
    return say(
        "Its fruits set only where insects reach the flowers, and a closed cover lies over it while it "
        "flowers: from {set_days} days before the first harvest to {last_days} before the last. It is "
        "told from {days} days on (common practice).",
        set_days=limits.FRUIT_SET_D,
        last_days=limits.LAST_SET_D,
        days=limits.SHUT_IN_D,
    )


def _shallow_soil(_: Finding, __: Measure) -> str:
    return say(
        "The bed's depth of soil is set against the least effective root depth that the sources give, or "
        "what the roots reach before the crop is out, where that is less."
    )


def _on_path(_: Finding, measure: Measure) -> str:
    return say(
        "Stations on a path, more than {edge} from its edge, stand in trodden soil (common practice).",
        edge=measure.small(limits.PATH_EDGE_M),
    )


def _on_bare_plan(_: Finding, __: Measure) -> str:
    return say("Beds are drawn where the soil is prepared; stations outside all of them are counted.")


def _dug_beside(_: Finding, measure: Measure) -> str:
    return say(
        "Lifting it with a fork breaks the soil as wide as its roots or tubers spread and {fork} beyond. "
        "A neighbour there that still grows and roots no deeper than {depth} loses roots (common "
        "practice).",
        fork=measure.small(limits.FORK_M),
        depth=measure.small(limits.SHALLOW_ROOTED_M),
    )


def _out_of_reach(_: Finding, measure: Measure) -> str:
    return say(
        "From a path or a bed's edge one reaches {arm} into a bed without stepping on it, which is why "
        "beds are made twice as wide at most. What is picked again and again must lie within reach on "
        "some side, and no dense crop taller than {height} may close every way to it (common practice).",
        arm=measure.small(limits.ARM_M),
        height=measure.small(limits.LEAN_OVER_M),
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
