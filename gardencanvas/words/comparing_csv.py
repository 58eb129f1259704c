"""A comparison as a .csv table: numbers for a spreadsheet, not rounded for the eye."""

from collections.abc import Iterable, Iterator

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.garden import Garden
from gardencanvas.measures.comparison import Comparison
from gardencanvas.measures.csv_writing import Cell, csv_text
from gardencanvas.measures.estimates import Estimate, Measure, Series
from gardencanvas.words.comparing import NOT_KNOWN, label
from gardencanvas.words.plain import crop_name

_SIDES = ("first", "second", "first if grown apart", "second if grown apart", "difference")


def comparison_csv(comparison: Comparison, garden: Garden, crops: Catalogue) -> str:
    """Every measure of the whole, of each bed and of each crop, then the weeks of both layouts.

    Parts of the table are parted by an empty line, and each begins with its own heading.
    """
    return csv_text([*_measures(comparison, garden, crops), [], *_weeks(comparison, garden, crops)])


def _measures(comparison: Comparison, garden: Garden, crops: Catalogue) -> Iterator[list[Cell]]:
    names = [garden.layout(m.layout).name for m in (comparison.a, comparison.b)]
    yield ["first layout", names[0]]
    yield ["second layout", names[1]]
    yield []
    columns = [c for side in _SIDES for c in (side, f"{side}, low", f"{side}, high")]
    yield ["part", "measure", "unit", *columns, "better", "more than uncertainty"]
    yield from (_row("whole", m) for m in comparison.measures)
    beds = {b.id: b.name for m in (comparison.b, comparison.a) for b in garden.layout(m.layout).beds}
    for bed, measures in comparison.beds.items():
        yield from (_row(f"bed: {beds.get(bed, bed)}", m) for m in measures)
    for crop, measures in comparison.crops.items():
        yield from (_row(f"crop: {crop_name(crops, crop)}", m) for m in measures)


def _row(part: str, measure: Measure) -> list[Cell]:
    sides = (measure.a, measure.b, measure.apart, measure.apart_b, measure.difference)
    numbers = [cell for side in sides for cell in _cells(side)]
    winner = {"a": "first", "b": "second", None: ""}[measure.winner]
    exceeds = {True: "yes", False: "no", None: NOT_KNOWN}[measure.exceeds_uncertainty]
    return [part, label(measure.code), measure.unit, *numbers, winner, exceeds]


def _cells(estimate: Estimate) -> tuple[Cell, Cell, Cell]:
    if estimate.value is None:
        return NOT_KNOWN, None, None
    low, high = (None if x is None else round(x, 6) for x in (estimate.low, estimate.high))
    return round(estimate.value, 6), low, high


def _weeks(comparison: Comparison, garden: Garden, crops: Catalogue) -> Iterator[list[Cell]]:
    yield ["layout", "by week", "crop", "unit", "week from", "value", "low", "high"]
    for measured in (comparison.a, comparison.b):
        name = garden.layout(measured.layout).name
        for series in measured.series:
            crop = "" if series.crop is None else crop_name(crops, series.crop)
            yield from ([name, label(series.code), crop, series.unit, *cells] for cells in _through(series))


def _through(series: Series) -> Iterable[list[Cell]]:
    for k, week in enumerate(series.weeks):
        around: list[Cell] = [round(x[k], 6) if x else None for x in (series.low, series.high)]
        yield [week.isoformat(), round(series.values[k], 6), *around]
