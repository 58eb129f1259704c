"""Why a finding is one: its equation in words, its limit and where both come from, one paragraph each."""

from collections.abc import Callable

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.fit import thresholds as limits
from gardencanvas.fit.report import Finding
from gardencanvas.words import why_place, why_weather
from gardencanvas.words.language import figure, say
from gardencanvas.words.plain import Measure, percent
from gardencanvas.words.sources import cited

Why = Callable[[Finding, Measure], str]


def _rule() -> str:
    return say("The limits are common practice put into numbers, not measurements.")


def _crowded(_: Finding, __: Measure) -> str:
    said = say(
        "Leaves mixed at one height share the light by their area times extinction, k L (Spitters and "
        "Aerts 1983): with others' leaves x times its own on its ground a plant captures (1 − exp(−k L (1 "
        "+ x))) / (1 + x), set against what it captures among its like at the usual spacing. Footprints "
        "are discs of the ground the leaves cover, overlap is exact, all neighbours add up as far as they "
        "are alike in height (from 0, one {unlike} as high as the other, to 1 from {alike} on), and each "
        "week counts by the size of the plant. With less than {strains} left it strains, with less than "
        "{clashes} it clashes.",
        unlike=percent(limits.UNLIKE),
        alike=percent(limits.ALIKE),
        strains=percent(limits.KEPT_STRAINS),
        clashes=percent(limits.KEPT_CLASHES),
    )
    return f"{said} {_rule()}"


def _too_close(_: Finding, __: Measure) -> str:
    said = say(
        "The distance in the row, and the ground each station has, are set against the usual spacing and "
        "the closest one in any source; a clump is one station, at the spacing times the root of its "
        "seedlings. Closer than the closest source strains; where there are {plants} plants for each one "
        "the usual spacing has room for, it clashes.",
        plants=figure(limits.DENSE_AND_CLOSE),
    )
    return f"{said} {_size()}"


def _smaller_each(_: Finding, __: Measure) -> str:
    said = say(
        "The spacing lies within what the sources allow, and closer than usual: more plants, each "
        "smaller. It is told from {plants} plants for each one of the usual spacing.",
        plants=figure(limits.CLOSE_TOLD, ".2f"),
    )
    return f"{said} {_size()}"


def _size() -> str:
    return say(
        "Size follows the yield–density relation 1/w = a + bN (w: weight of a plant, N: plants per m²; "
        "Shinozaki and Kira 1956): with D times the usual number a plant weighs 1/(1 − c + cD) of the "
        "usual, where c, how far plants hold each other back at the usual spacing, follows from published "
        "densities of onion and maize, and is taken as {low} to {high} of all others (common practice).",
        low=figure(limits.HELD_BACK_LOW, ".1f"),
        high=figure(limits.HELD_BACK_HIGH, ".1f"),
    )


def _shaded(_: Finding, __: Measure) -> str:
    return say(
        "Light that reaches a plant is that of the open sky, less what fixtures hide, less what taller "
        "leaves over it take (Beer–Lambert: 1 − exp(−k × leaf area), on the part of its footprint they "
        "cover, and less the slenderer they are, because light comes in from the side), less what taller "
        "plants beside it hide of the sky and of the sun's path at this latitude, month by month. Each "
        "week counts by its sunlight and by how large the plant is. Below what a full crop needs it "
        "strains, below what it needs to crop at all it clashes."
    )


def _layered(_: Finding, __: Measure) -> str:
    return say(
        "Taller leaves take 1 − exp(−k × leaf area) of the light over the part of the plant they cover "
        "(Beer–Lambert, Monsi and Saeki 1953), and the lower plant catches its own share of what is left. "
        "It is told from {taken} taken, and stays in order while the lower plant keeps the light a full "
        "crop needs.",
        taken=percent(limits.TAKEN_SHOWN),
    )


def _fixtures(_: Finding, __: Measure) -> str:
    return say(
        "Walls, fences, hedges, trees and sheds hide part of the sky and of the sun's path at this "
        "latitude; what is left is averaged over the plant's own time, by sunlight and by its size. Below "
        "what a full crop needs it strains, below what it needs to crop at all it clashes."
    )


def _same_roots(_: Finding, __: Measure) -> str:
    return say(
        "Roots thin out with depth as 1 − exp(−3 x / depth) (Gerwitz and Page 1974); two crops' roots "
        "overlap by the lesser share in each band of depth, added up (Schoener 1970). Times the ground in "
        "which both root zones lie and the time both grow, that gives how much of a plant's soil the "
        "other takes, shared evenly among all roots in it. Times how much both want the same water or "
        "food, from {strains} on it strains; roots alone never make a clash. The limit is common practice "
        "put into a number.",
        strains=percent(limits.ROOTS_STRAINED),
    )


def _roots_apart(_: Finding, __: Measure) -> str:
    return say(
        "Roots thin out with depth as 1 − exp(−3 x / depth) (Gerwitz and Page 1974); the lesser share in "
        "each band of depth, added up, is their overlap (Schoener 1970). At {apart} or less they are told "
        "as apart. It is a matter of degree: most roots of all vegetables lie near the surface, and deep "
        "beside shallow ones still overlap by more than half.",
        apart=percent(limits.DEPTHS_APART),
    )


def _roots_unknown(_: Finding, __: Measure) -> str:
    return say(
        "Competition of roots is reckoned from how deep each crop roots. No source gives that for one of "
        "these, so nothing was reckoned: that nothing is said of their roots does not mean that all is "
        "well."
    )


def _trials(_: Finding, __: Measure) -> str:
    return say(
        "What trials of these two crops side by side report, with how many there are. Yield of both "
        "together is told as a land equivalent ratio: the ground that the crops alone would need for the "
        "same harvest. A reported loss strains only where leaves overlap for {days} days and no other "
        "trial found a gain or no loss. Pests and their enemies carry no number: what was counted in one "
        "place does not hold in another.",
        days=limits.ADJOIN_DAYS,
    )


def _same_family(_: Finding, __: Measure) -> str:
    return say(
        "Plants of one botanical family share many pests and diseases. Neighbours are plants whose leaves "
        "come within a hand's breadth for {days} days. It is told and changes nothing by itself: the "
        "evidence does not carry a number for one garden.",
        days=limits.ADJOIN_DAYS,
    )


def _unlike_water(_: Finding, __: Measure) -> str:
    return say(
        "The sources put each crop's need of water as low, medium or high. Low beside high is told; a "
        "perennial of dry ground strains, since kept moist it grows soft and rots (common practice)."
    )


def _thirsty_together(_: Finding, __: Measure) -> str:
    return say(
        "Both need much water, their leaves overlap, and the stages in which the sources say lack of "
        "water costs most fall together for {days} days or more.",
        days=limits.ADJOIN_DAYS,
    )


def _out_in_time(_: Finding, __: Measure) -> str:
    return say(
        "The neighbour closes over a plant in the first week from which on it leaves it less than a full "
        "crop needs: of the light from above (Beer–Lambert), times what it keeps among leaves of its own "
        "height. Days to spare are counted from the last harvest to that day, in an average year and in "
        "the coldest and warmest of ten. Below 0 it strains; where less than it needs to crop at all is "
        "left for a third of its time, it clashes. The limits are common practice put into numbers."
    )


def _in_turns(_: Finding, __: Measure) -> str:
    return say(
        "The one is out before the other goes in, and their footprints cover the same ground: {share} or "
        "more of a plant's (common practice). Growing times are those of the sources at this place's "
        "warmth.",
        share=percent(limits.TURNS),
    )


WHY: dict[str, Why] = {
    "crowded": _crowded,
    "too close": _too_close,
    "smaller each": _smaller_each,
    "shaded": _shaded,
    "layered": _layered,
    "fixtures": _fixtures,
    "same roots": _same_roots,
    "roots apart": _roots_apart,
    "roots not known": _roots_unknown,
    "trials": _trials,
    "same family": _same_family,
    "unlike water": _unlike_water,
    "thirsty together": _thirsty_together,
    "out in time": _out_in_time,
    "too late": _out_in_time,
    "in turns": _in_turns,
    **why_place.WHY,
    **why_weather.WHY,
}


def why(finding: Finding, known: Catalogue | None = None, measure: Measure | None = None) -> str:
    """One paragraph: the equation in words, the limit, and the source's citation.

    Parameters
    ----------
    known
        The catalogue whose sources are cited; the shipped one where none is given.
    """
    said = WHY[finding.code](finding, measure or Measure())
    source = say("Source: {source}.", source=cited(known or catalogue(), finding.source))
    return f"{said} {source}"
