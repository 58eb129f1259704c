"""Sentences about filling ground with as many plants as fit."""

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.edits import add
from gardencanvas.garden.garden import Garden
from gardencanvas.planner.filling.ground import FreeStrip
from gardencanvas.planner.filling.searching import Answer, Filled, Filling, Lack, Unfilled
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.words.findings import reason
from gardencanvas.words.gaps import pattern_words
from gardencanvas.words.language import mark, say, say_many
from gardencanvas.words.plain import Measure, crop_name

_VERDICTS = {
    Verdict.CLEAR: mark("Nothing else uses this space while they stand."),
    Verdict.SHARES: mark("They share the space with what grows there, and it works."),
    Verdict.STRAINS: mark("It works at a cost:"),
}
_WORST_REASONS = 2


def strip_words(strip: FreeStrip, measure: Measure) -> str:
    """A free strip of a bed by its distances from the bed's edge."""
    return say(
        "free strip {begin} – {end} from its edge",
        begin=measure.small(strip.begin_m) if strip.begin_m else "0",
        end=measure.small(strip.end_m),
    )


def answer_words(
    answer: Answer, filling: Filling, garden: Garden, layout_id: str, known: Catalogue, measure: Measure
) -> str:
    """What was found, in a few sentences: how many, in what pattern, at what cost; or why nothing fits."""
    if isinstance(answer, Unfilled):
        return _why_not(answer, filling, garden, layout_id, known, measure)
    return " ".join([_how_many(answer, measure), *_cost(answer, garden, layout_id, known, measure)])


def _how_many(answer: Filled, measure: Measure) -> str:
    planting = answer.planting
    return say_many(
        "{n} plant fits: {pattern}.",
        "{n} plants fit: {pattern}.",
        planting.plants,
        pattern=pattern_words(planting.pattern, measure),
    )


def _cost(answer: Filled, garden: Garden, layout_id: str, known: Catalogue, measure: Measure) -> list[str]:
    worst = max([answer.verdict, *(f.verdict for f in answer.strains)])
    if worst < Verdict.STRAINS:
        return [say(_VERDICTS[worst])]
    after = plant(garden, layout_id, answer)
    told = [reason(f, after, layout_id, known, measure) for f in answer.strains[:_WORST_REASONS]]
    rest = len(answer.strains) - len(told)
    more = [say_many("One more thing strains.", "{n} more things strain.", rest)] if rest else []
    return [say(_VERDICTS[Verdict.STRAINS]), *told, *more]


def _why_not(
    answer: Unfilled, filling: Filling, garden: Garden, layout_id: str, known: Catalogue, measure: Measure
) -> str:
    name = crop_name(known, filling.crop, filling.variety)
    if answer.lack is Lack.NO_GROUND:
        return say("Nothing there can be planted.")
    if answer.lack is Lack.TOO_MANY:
        return say("That would be more plants than one planting may hold: choose a part of the bed.")
    if answer.finding is not None and answer.planting is not None:
        tried = add(garden, layout_id, [answer.planting])
        why = reason(answer.finding, tried, layout_id, known, measure)
        return say("No {crop} fits there. {why}", crop=name, why=why)
    return say(
        "No {crop} fits there: no place keeps its distance from the edge and from what grows there.",
        crop=name,
    )
