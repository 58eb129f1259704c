"""Why a finding about frost, cold ground or ripening is one."""

from collections.abc import Callable

from gardencanvas.fit import thresholds as limits
from gardencanvas.fit.report import Finding
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure, percent


def _years() -> str:
    return say(
        "Two hundred years are simulated day by day from this place's monthly climate: the warmth of the "
        "year, weather that lasts some days, and the dates of frost."
    )


def _frost_to_come(_: Finding, __: Measure) -> str:
    said = say(
        "Counted are the years in which frost that kills the crop comes after the day its plants stand "
        "open to it. From {strains} it strains, from {clashes} it clashes: after the typical last frost "
        "half of all years still have one, and growers wait a week or more.",
        strains=percent(limits.FROST_STRAINS),
        clashes=percent(limits.FROST_CLASHES),
    )
    return f"{_years()} {said}"


def _ripens() -> str:
    return say(
        "Growth goes by warmth gathered above the crop's base temperature. Fewer than {strains} of years "
        "with a harvest strain, fewer than {clashes} clash (common practice).",
        strains=percent(limits.RIPENS_STRAINS),
        clashes=percent(limits.RIPENS_CLASHES),
    )


def _killed_in_winter(_: Finding, __: Measure) -> str:
    said = say(
        "The crop must stand through the winter to be harvested, and frost colder than it lives through "
        "ends it."
    )
    return f"{_years()} {said} {_ripens()}"


def _seldom_ripe(_: Finding, __: Measure) -> str:
    said = say("Counted are the years in which it ripens before killing frost.")
    return f"{_years()} {said} {_ripens()}"


def _too_early(_: Finding, __: Measure) -> str:
    return say(
        "Seed does not germinate, and plants do not grow, below a temperature that the sources give. Days "
        "from the start until an average year offers it are counted: {days} days do no harm to tender and "
        "half-hardy crops, {hardy_days} to hardy ones (common practice).",
        days=limits.COLD_GROUND_D,
        hardy_days=limits.COLD_GROUND_HARDY_D,
    )


WHY: dict[str, Callable[[Finding, Measure], str]] = {
    "frost to come": _frost_to_come,
    "killed in winter": _killed_in_winter,
    "seldom ripe": _seldom_ripe,
    "too early": _too_early,
}
