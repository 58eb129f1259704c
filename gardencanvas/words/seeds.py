"""The seed order in words and as a table."""

from collections.abc import Iterable, Sequence

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.measures.csv_writing import Cell
from gardencanvas.measures.nursery import CELLS_IN_TRAY, TrayWeek, most
from gardencanvas.measures.seed_order import SeedLine
from gardencanvas.words.language import figure, mark, say
from gardencanvas.words.plain import crop_name, day, day_year, percent

_HEADINGS = (
    mark("Crop"),
    mark("Plants"),
    mark("Clumps"),
    mark("Bought as plants or sets"),
    mark("Germination"),
    mark("Sow (seeds)"),
    mark("Sow (g)"),
    mark("In the tin (seeds)"),
    mark("Order (seeds)"),
    mark("Order (g)"),
    mark("Cost"),
    mark("First needed"),
)
_TRAY_HEADINGS = (mark("Week"), mark("From"), mark("Trays"), mark("Cells"), mark("Sowings to prick out"))


def headings() -> tuple[str, ...]:
    """What the columns of the order are called."""
    return tuple(say(h) for h in _HEADINGS)


def sow_why() -> str:
    """How many seeds are reckoned, and why so many."""
    return say(
        "As many seeds as give the plants wanted 95 times in 100: the binomial distribution, with the share "
        "that germinates (the lot's own test of the last year, else the usual one) times the share of those "
        "that come up: 0.95 under glass, 0.7 in the open (common practice)."
    )


def seeds_table(lines: Iterable[SeedLine], known: Catalogue) -> list[Sequence[Cell]]:
    """The order as rows of numbers under headings; what is not known is empty."""
    return [headings(), *(_row(line, known) for line in lines)]


def _row(line: SeedLine, known: Catalogue) -> Sequence[Cell]:
    return (
        crop_name(known, line.crop, line.variety),
        line.plants,
        line.clumps,
        line.bought or None,
        line.germination,
        line.sow,
        _rounded(line.sow_g),
        round(line.in_tin) if line.in_tin is not None else None,
        line.order,
        _rounded(line.order_g),
        round(line.cost, 2) if line.cost is not None else None,
        line.first.isoformat(),
    )


def trays_told(weeks: Sequence[TrayWeek]) -> str:
    """From when to when the nursery is in use, and when it is fullest; `weeks` must not be empty."""
    full = most(weeks)
    return say(
        "Nursery: in use from {first} to the week of {last}, fullest in that of {full}: "
        "trays {trays}, cells {cells}.",
        first=day(weeks[0].week),
        last=day(weeks[-1].week),
        full=day(full.week),
        trays=full.trays,
        cells=full.cells,
    )


def tray_week(week: TrayWeek) -> str:
    """One week of the nursery."""
    return say(
        "{day}: trays {trays}, cells {cells}, sowings to prick out {sowings}",
        day=day(week.week),
        trays=week.trays,
        cells=week.cells,
        sowings=week.sowings,
    )


def trays_why() -> str:
    """How trays and cells are counted."""
    return say(
        "Seedlings wait in one tray for each sowing; from pricking out to planting out each station has a "
        "cell. What is not pricked out is sown one seed, or one clump, to a cell. A tray is reckoned at "
        "{cells} cells (sold with 24 to 84: common practice).",
        cells=CELLS_IN_TRAY,
    )


def trays_table(weeks: Iterable[TrayWeek]) -> list[Sequence[Cell]]:
    """The nursery week by week as rows under headings; weeks as ISO 8601 writes them."""
    rows: list[Sequence[Cell]] = [[say(h) for h in _TRAY_HEADINGS]]
    for each in weeks:
        year, week, _ = each.week.isocalendar()
        rows.append((f"{year}-W{week:02d}", each.week.isoformat(), each.trays, each.cells, each.sowings))
    return rows


def shown_row(line: SeedLine, known: Catalogue) -> tuple[str, ...]:
    """The same row as one reads it: ``not known`` where a number is missing, a dash where none is wanted."""
    from_seed = line.order is not None or line.sow is not None or line.bought < line.plants
    return (
        crop_name(known, line.crop, line.variety),
        figure(line.plants, ","),
        figure(line.clumps, ",") if line.clumps else "–",
        figure(line.bought, ",") if line.bought else "–",
        _germination(line),
        _number(line.sow, from_seed),
        _grams(line.sow_g, from_seed),
        _number(None if line.in_tin is None else round(line.in_tin), from_seed),
        _number(line.order, from_seed),
        _grams(line.order_g, from_seed),
        figure(line.cost, ",.2f") if line.cost is not None else (say("not known") if from_seed else "–"),
        day_year(line.first),
    )


def _germination(line: SeedLine) -> str:
    if line.germination is None:
        return say("not known")
    share = percent(line.germination)
    return say("{share} (tested)", share=share) if line.tested else share


def _number(number: int | None, wanted: bool) -> str:
    if not wanted:
        return "–"
    return say("not known") if number is None else figure(number, ",")


def _grams(grams: float | None, wanted: bool) -> str:
    if not wanted:
        return "–"
    return say("not known") if grams is None else f"{figure(_weighed(grams))} g"


def _rounded(grams: float | None) -> float | None:
    return None if grams is None else _weighed(grams)


def _weighed(grams: float) -> float:
    """Grams to two figures, as one weighs them."""
    return float(f"{grams:.2g}") if grams < 10 else float(round(grams))
