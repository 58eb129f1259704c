"""Why a finding about frost, cold ground or ripening is one."""

from collections.abc import Callable

from gardencanvas.fit import thresholds as limits
from gardencanvas.fit.report import Finding
from gardencanvas.words.plain import Measure, percent

_YEARS = (
    "Two hundred years are simulated day by day from this place's monthly climate: the warmth of the year, "
    "weather that lasts some days, and the dates of frost."
)


def _frost_to_come(_: Finding, __: Measure) -> str:
    return (
        f"{_YEARS} Counted are the years in which frost that kills the crop comes after the day its plants "
        f"stand open to it. From {percent(limits.FROST_STRAINS)} it strains, from "
        f"{percent(limits.FROST_CLASHES)} it clashes: after the typical last frost half of all years still "
        "have one, and growers wait a week or more."
    )


def _ripens() -> str:
    return (
        "Growth goes by warmth gathered above the crop's base temperature. Fewer than "
        f"{percent(limits.RIPENS_STRAINS)} of years with a harvest strain, fewer than "
        f"{percent(limits.RIPENS_CLASHES)} clash (common practice)."
    )


def _killed_in_winter(_: Finding, __: Measure) -> str:
    return (
        f"{_YEARS} The crop must stand through the winter to be harvested, and frost colder than it lives "
        f"through ends it. {_ripens()}"
    )


def _seldom_ripe(_: Finding, __: Measure) -> str:
    return f"{_YEARS} Counted are the years in which it ripens before killing frost. {_ripens()}"


def _too_early(_: Finding, __: Measure) -> str:
    return (
        "Seed does not germinate, and plants do not grow, below a temperature that the sources give. Days "
        "from the start until an average year offers it are counted: "
        f"{limits.COLD_GROUND_D} days do no harm to tender and half-hardy crops, "
        f"{limits.COLD_GROUND_HARDY_D} to hardy ones (common practice)."
    )


WHY: dict[str, Callable[[Finding, Measure], str]] = {
    "frost to come": _frost_to_come,
    "killed in winter": _killed_in_winter,
    "seldom ripe": _seldom_ripe,
    "too early": _too_early,
}
