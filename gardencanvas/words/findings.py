"""Sentences for findings: one for each code of ``fit.codes``."""

from collections.abc import Callable

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Finding, FitReport, Verdict
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.words import below, company_kept, in_time, place_found, tending, watering, weather
from gardencanvas.words.language import figure, mark, say
from gardencanvas.words.plain import THIN, Measure, crop_name, day, percent, span
from gardencanvas.words.told import Told


def _several(t: Told) -> bool:
    """Whether those that cause it bear more than one name."""
    return len(set(t.names[1:])) > 1


_CROWDED = {  # by whether several crowd it, and whether it is told what is left
    (False, False): mark(
        "{others}, of the same height, takes {share} of the light and ground of {who}, {when}."
    ),
    (True, False): mark(
        "{others}, of the same height, take {share} of the light and ground of {who}, {when}."
    ),
    (False, True): mark(
        "{others}, of the same height, takes {share} of the light and ground of {who} and leaves "
        "{left}, {when}."
    ),
    (True, True): mark(
        "{others}, of the same height, take {share} of the light and ground of {who} and leave "
        "{left}, {when}."
    ),
}


def _crowded(t: Told) -> str:
    said = say(
        _CROWDED[_several(t), t.has("left")],
        who=t.who,
        others=t.others,
        share=percent(t.number("share")),
        left=percent(t.number("left")) if t.has("left") else "",
        when=span(t.finding.first, t.finding.last),
    )
    apart = say(
        "They stand {distance} apart; usual is {usual}.",
        distance=t.small("distance_m"),
        usual=t.small("usual_m"),
    )
    return f"{said} {apart}"


def _too_close(t: Told) -> str:
    stands = say(
        "{who} stands every {distance}; the closest spacing in the books is {minimum}, usual is {usual} by "
        "{usual_across}.",
        who=t.who,
        distance=t.small("distance_m"),
        minimum=t.small("minimum_m"),
        usual=t.small("usual_m"),
        usual_across=t.small("usual_across_m"),
    )
    plants = figure(t.number("density"), ".1f")
    if not t.has("size_low"):
        return f"{stands} {say('There are {plants} plants where one has room.', plants=plants)}"
    smaller = say(
        "There are {plants} plants where one has room, each about {size} of its usual size.",
        plants=plants,
        size=_between(t, "size"),
    )
    return f"{stands} {smaller}"


def _smaller_each(t: Told) -> str:
    return say(
        "{who} stands closer than usual, {plants} plants where one has room: each reaches about {size} of "
        "its usual size, all together {crop} of the usual crop.",
        who=t.who,
        plants=figure(t.number("density"), ".1f"),
        size=_between(t, "size"),
        crop=_between(t, "yield"),
    )


def _between(t: Told, key: str) -> str:
    low, high = percent(t.number(f"{key}_low")), percent(t.number(f"{key}_high"))
    return low if low == high else f"{low.split(THIN)[0]}–{high}"


def _light(t: Told) -> str:
    left, good, least = (percent(t.number(f"light_{key}")) for key in ("left", "needed", "least"))
    if t.number("light_left") < t.number("light_least"):
        return say(
            "{left} of open-sky light is left; it crops from {least}, fully from {good}.",
            left=left,
            least=least,
            good=good,
        )
    return say("{left} of open-sky light is left; a full crop wants {good}.", left=left, good=good)


def _fixtures(t: Told) -> str:
    return say(
        "{who} stands in the shade of what is built or grown there: {light}", who=t.who, light=_light(t)
    )


def _shaded(t: Told) -> str:
    told = {"who": t.who, "others": t.others, "light": _light(t), "first": day(t.finding.first)}
    taken = percent(t.number("taken"))
    if _several(t):
        return say("{others} take {taken} of the light of {who} from {first}: {light}", taken=taken, **told)
    return say("{others} takes {taken} of the light of {who} from {first}: {light}", taken=taken, **told)


def _layered(t: Told) -> str:
    grows = say(
        "{who} grows in the light shade of {others} and keeps {left} of open-sky light; it wants {good}.",
        who=t.who,
        others=t.others,
        left=percent(t.number("light_left")),
        good=percent(t.number("light_needed")),
    )
    return f"{grows} {_twice(t)}{t.kinds}"


def _twice(t: Told) -> str:
    """What the second storey catches of the light that the first one lets through."""
    if not t.has("caught"):
        return say("The light is used twice.")
    return say(
        "The light is used twice: together they catch {caught} of it, {others} alone {taken}.",
        caught=percent(t.number("caught")),
        others=t.others,
        taken=percent(t.number("taken")),
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
        return say("{name}: clear", name=name), say("Nothing else uses this space while it stands.")
    worst = findings[0]
    names = _names(worst, garden, report.layout, catalogue)
    title = _title(name, names, worst, suffers=worst.plantings[0] == planting_id)
    return title, reason(worst, garden, report.layout, catalogue, measure)


_ALONE = {
    Verdict.CLEAR: mark("{name}: clear"),
    Verdict.SHARES: mark("{name}: shares"),
    Verdict.STRAINS: mark("{name}: strains from {first}"),
    Verdict.CLASHES: mark("{name}: clashes from {first}"),
}
_WITH = {
    Verdict.CLEAR: mark("{name}: clear with {partner}"),
    Verdict.SHARES: mark("{name}: shares with {partner}"),
    Verdict.STRAINS: mark("{name}: strains with {partner} from {first}"),
    Verdict.CLASHES: mark("{name}: clashes with {partner} from {first}"),
}
_OTHER_SUFFERS = {
    Verdict.STRAINS: mark("{name}: {sufferer} strains from {first}"),
    Verdict.CLASHES: mark("{name}: {sufferer} clashes from {first}"),
}


def _title(name: str, names: tuple[str, ...], worst: Finding, *, suffers: bool) -> str:
    """A planting's verdict with whom and from when; ``names`` are those of the finding's plantings."""
    if worst.code == "on bare plan":
        return say("{name}: outside every bed", name=name)
    first = day(worst.first)
    if not suffers and worst.verdict in _OTHER_SUFFERS:
        return say(_OTHER_SUFFERS[worst.verdict], name=name, sufferer=names[0], first=first)
    partners = names[1:] if suffers else names
    if partners:
        return say(_WITH[worst.verdict], name=name, partner=partners[0], first=first)
    return say(_ALONE[worst.verdict], name=name, first=first)
