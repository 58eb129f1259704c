"""Sentences for findings: one for each code of ``fit.codes``."""

from collections.abc import Callable

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Finding, FitReport, Verdict
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.words import below, company_kept, in_time, place_found, tending, watering, weather
from gardencanvas.words.plain import THIN, Measure, crop_name, day, percent, span
from gardencanvas.words.told import Told


def _crowded(t: Told) -> str:
    when = span(t.finding.first, t.finding.last)
    share = percent(t.number("share"))
    left = f" and leaves {percent(t.number('left'))}" if t.has("left") else ""
    takes = "take" if len(set(t.names[1:])) > 1 else "takes"
    return (
        f"{t.others}, of the same height, {takes} {share} of the light and ground of {t.who}{left}, {when}. "
        f"They stand {t.measure.small(t.number('distance_m'))} apart; usual is "
        f"{t.measure.small(t.number('usual_m'))}."
    )


def _too_close(t: Told) -> str:
    return (
        f"{t.who} stands every {t.measure.small(t.number('distance_m'))}; the closest spacing in the books "
        f"is {t.measure.small(t.number('minimum_m'))}, usual is {t.measure.small(t.number('usual_m'))} by "
        f"{t.measure.small(t.number('usual_across_m'))}. "
        f"There are {t.number('density'):.1f} plants where one has room{_smaller(t)}."
    )


def _smaller(t: Told) -> str:
    """What so many plants cost in size, where that is told."""
    return f", each about {_between(t, 'size')} of its usual size" if t.has("size_low") else ""


def _smaller_each(t: Told) -> str:
    return (
        f"{t.who} stands closer than usual, {t.number('density'):.1f} plants where one has room: each "
        f"reaches about {_between(t, 'size')} of its usual size, all together {_between(t, 'yield')} of the "
        "usual crop."
    )


def _between(t: Told, key: str) -> str:
    low, high = percent(t.number(f"{key}_low")), percent(t.number(f"{key}_high"))
    return low if low == high else f"{low.split(THIN)[0]}–{high}"


def _light(t: Told) -> str:
    left, good, least = t.number("light_left"), t.number("light_needed"), t.number("light_least")
    if left < least:
        need = f"it crops from {percent(least)}, fully from {percent(good)}"
        return f"{percent(left)} of open-sky light is left; {need}."
    return f"{percent(left)} of open-sky light is left; a full crop wants {percent(good)}."


def _fixtures(t: Told) -> str:
    return f"{t.who} stands in the shade of what is built or grown there: {_light(t)}"


def _shaded(t: Told) -> str:
    taken = percent(t.number("taken"))
    return f"{t.others} takes {taken} of the light of {t.who} from {day(t.finding.first)}: {_light(t)}"


def _layered(t: Told) -> str:
    return (
        f"{t.who} grows in the light shade of {t.others} and keeps {percent(t.number('light_left'))} "
        f"of open-sky light; it wants {percent(t.number('light_needed'))}. {_twice(t)}{t.kinds}"
    )


def _twice(t: Told) -> str:
    """What the second storey catches of the light that the first one lets through."""
    if not t.has("caught"):
        return "The light is used twice."
    return (
        f"The light is used twice: together they catch {percent(t.number('caught'))} of it, {t.others} alone "
        f"{percent(t.number('taken'))}."
    )


SENTENCES: dict[str, Callable[[Told], str]] = {
    "crowded": _crowded,
    "too close": _too_close,
    "smaller each": _smaller_each,
    "fixtures": _fixtures,
    "shaded": _shaded,
    "layered": _layered,
    "same roots": below.same_roots,
    "roots apart": below.roots_apart,
    "roots not known": below.roots_unknown,
    "trials": company_kept.trials,
    "same family": company_kept.same_family,
    "unlike water": watering.unlike_water,
    "thirsty together": watering.thirsty_together,
    "out in time": in_time.out_in_time,
    "too late": in_time.too_late,
    "in turns": in_time.in_turns,
    "dug beside": tending.dug_beside,
    "out of reach": tending.out_of_reach,
    "frost to come": weather.frost_to_come,
    "killed in winter": weather.killed_in_winter,
    "seldom ripe": weather.seldom_ripe,
    "too early": weather.too_early,
    "no support": place_found.no_support,
    "support full": place_found.support_full,
    "stands alone": place_found.stands_alone,
    "open to wind": place_found.open_to_wind,
    "outgrows cover": place_found.outgrows_cover,
    "no bees": place_found.no_bees,
    "shallow soil": place_found.shallow_soil,
    "on path": place_found.on_path,
    "on bare plan": place_found.on_bare_plan,
}


def _names(finding: Finding, garden: Garden, layout_id: str, catalogue: Catalogue) -> tuple[str, ...]:
    items = garden.layout(layout_id).by_id
    names = []
    for planting_id in finding.plantings:
        item = items.get(planting_id)
        if isinstance(item, Planting):
            names.append(crop_name(catalogue, item.crop, item.variety))
        else:
            names.append(planting_id)
    return tuple(names)


def reason(
    finding: Finding, garden: Garden, layout_id: str, catalogue: Catalogue, measure: Measure | None = None
) -> str:
    """Why, in one or two sentences with dates and numbers."""
    names = _names(finding, garden, layout_id, catalogue)
    told = Told(finding, names, measure or Measure(), catalogue.families)
    sentence = SENTENCES[finding.code](told)
    return sentence[0].upper() + sentence[1:]


def headline(
    report: FitReport, planting_id: str, garden: Garden, catalogue: Catalogue, measure: Measure | None = None
) -> tuple[str, str]:
    """What is said at the cursor: the verdict with whom and from when, and one line of why.

    Both come from the worst finding that the planting suffers, or else causes.
    """
    planting = garden.layout(report.layout).by_id[planting_id]
    name = (
        crop_name(catalogue, planting.crop, planting.variety)
        if isinstance(planting, Planting)
        else planting_id
    )
    fit = report.plantings.get(planting_id)
    findings = sorted(report.of(planting_id), key=lambda f: (-f.verdict, f.plantings[0] != planting_id))
    if fit is None or not findings:
        return f"{name}: clear", "Nothing else uses this space while it stands."
    worst = findings[0]
    why = reason(worst, garden, report.layout, catalogue, measure)
    names = _names(worst, garden, report.layout, catalogue)
    if worst.code == "on bare plan":
        return f"{name}: outside every bed", why
    partner = next((n for n, i in zip(names, worst.plantings, strict=True) if i != planting_id), None)
    if worst.plantings[0] != planting_id and worst.verdict > Verdict.SHARES:
        return f"{name}: {names[0]} {worst.verdict.word} from {day(worst.first)}", why
    title = f"{name}: {worst.verdict.word}"
    if partner is not None:
        title += f" with {partner}"
    if worst.verdict >= Verdict.STRAINS:
        title += f" from {day(worst.first)}"
    return title, why
