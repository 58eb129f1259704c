"""A comparison as a .csv table: numbers for a spreadsheet, not rounded for the eye."""

from collections.abc import Iterable, Iterator

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.garden import Garden
from gardencanvas.measures.comparison import Comparison
from gardencanvas.measures.csv_writing import Cell, csv_text
from gardencanvas.measures.estimates import Estimate, Measure, Series
from gardencanvas.words.comparing import NOT_KNOWN, label
from gardencanvas.words.language import mark, say
from gardencanvas.words.plain import crop_name

_SIDES = (
    (mark("first"), mark("first, low"), mark("first, high")),
    (mark("second"), mark("second, low"), mark("second, high")),
    (mark("first if grown apart"), mark("first if grown apart, low"), mark("first if grown apart, high")),
    (mark("second if grown apart"), mark("second if grown apart, low"), mark("second if grown apart, high")),
    (mark("difference"), mark("difference, low"), mark("difference, high")),
)
_UNITS = {
    "m2 days": mark("m2 days"),
    "share": mark("share"),
    "kg": mark("kg"),
    "pieces": mark("pieces"),
    "weeks": mark("weeks"),
    "ratio": mark("ratio"),
    "litres": mark("litres"),
    "litres a week": mark("litres a week"),
    "price": mark("price"),
    "hours": mark("hours"),
    "plantings": mark("plantings"),
    "days": mark("days"),
    "index": mark("index"),
    "kinds": mark("kinds"),
    "cautions": mark("cautions"),
}


def comparison_csv(comparison: Comparison, garden: Garden, crops: Catalogue) -> str:
    """Every measure of the whole, of each bed and of each crop, then the weeks of both layouts.

    Parts of the table are parted by an empty line, and each begins with its own heading.
    """
    return csv_text([*_measures(comparison, garden, crops), [], *_weeks(comparison, garden, crops)])


def _measures(comparison: Comparison, garden: Garden, crops: Catalogue) -> Iterator[list[Cell]]:
    names = [garden.layout(m.layout).name for m in (comparison.a, comparison.b)]
    yield [say("first layout"), names[0]]
    yield [say("second layout"), names[1]]
    yield []
    columns = [say(column) for side in _SIDES for column in side]
    last = (say("better"), say("more than uncertainty"))
    yield [say("part"), say("measure"), say("unit"), *columns, *last]
    yield from (_row(say("whole"), m) for m in comparison.measures)
    beds = {b.id: b.name for m in (comparison.b, comparison.a) for b in garden.layout(m.layout).beds}
    for bed, measures in comparison.beds.items():
        part = say("bed: {bed}", bed=beds.get(bed, bed))
        yield from (_row(part, m) for m in measures)
    for crop, measures in comparison.crops.items():
        part = say("crop: {crop}", crop=crop_name(crops, crop))
        yield from (_row(part, m) for m in measures)


def _row(part: str, measure: Measure) -> list[Cell]:
    sides = (measure.a, measure.b, measure.apart, measure.apart_b, measure.difference)
    numbers = [cell for side in sides for cell in _cells(side)]
    winner = {"a": say("first"), "b": say("second"), None: ""}[measure.winner]
    exceeds = {True: say("yes"), False: say("no"), None: say(NOT_KNOWN)}[measure.exceeds_uncertainty]
    return [part, label(measure.code), _unit(measure.unit), *numbers, winner, exceeds]


def _unit(code: str) -> str:
    return say(_UNITS[code])


def _cells(estimate: Estimate) -> tuple[Cell, Cell, Cell]:
    if estimate.value is None:
        return say(NOT_KNOWN), None, None
    low, high = (None if x is None else round(x, 6) for x in (estimate.low, estimate.high))
    return round(estimate.value, 6), low, high


def _weeks(comparison: Comparison, garden: Garden, crops: Catalogue) -> Iterator[list[Cell]]:
    about = (say("layout"), say("by week"), say("crop"), say("unit"), say("week from"))
    yield [*about, say("value"), say("low"), say("high")]
    for measured in (comparison.a, comparison.b):
        name = garden.layout(measured.layout).name
        for series in measured.series:
            crop = "" if series.crop is None else crop_name(crops, series.crop)
            what = (name, label(series.code), crop, _unit(series.unit))
            yield from ([*what, *cells] for cells in _through(series))


def _through(series: Series) -> Iterable[list[Cell]]:
    for k, week in enumerate(series.weeks):
        around: list[Cell] = [round(x[k], 6) if x else None for x in (series.low, series.high)]
        yield [week.isoformat(), round(series.values[k], 6), *around]
