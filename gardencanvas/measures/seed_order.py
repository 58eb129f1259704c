"""What to order and raise for a layout: plants, seeds to sow, grams, what the seed tin covers, cost."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.crops.tin import SeedLot, seeds_in
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.emergence import germination, good_lots, needed, seeds_of, stations_of
from gardencanvas.measures.jobs.leads import EARLIER_D


@dataclass(frozen=True, slots=True)
class SeedLine:
    """One crop or variety of the order. What is not known is None, never 0.

    ``plants`` and ``clumps`` are what the layout holds; ``sow`` seeds give them 95 times in 100 at
    ``germination``; ``in_tin`` is what usable lots hold, ``order`` what is missing. ``bought`` counts plants,
    sets, tubers or offsets that are not grown from seed.
    """

    crop: str
    variety: str | None
    plants: int
    clumps: int | None
    bought: int
    germination: float | None
    tested: bool
    sow: int | None
    sow_g: float | None
    in_tin: float | None
    order: int | None
    order_g: float | None
    cost: float | None
    first: date


def seed_order(
    garden: Garden, layout_id: str, lots: Sequence[SeedLot] = (), known: Catalogue | None = None
) -> tuple[SeedLine, ...]:
    """One line for each crop and variety of a layout, by name of the crop.

    Volunteers and what already stands as a perennial from an earlier year need nothing.

    Raises
    ------
    KeyError
        If there is no such layout.
    """
    layout = garden.layout(layout_id)
    known = known or catalogue().with_own(garden.crops, garden.varieties)
    earliest = layout.season[0] - timedelta(days=EARLIER_D)
    wanted: dict[tuple[str, str | None], list[Planting]] = {}
    for planting in layout.plantings:
        if planting.start.kind != "volunteer" and planting.start.on >= earliest:
            for variety in planting.varieties or (None,):
                wanted.setdefault((planting.crop, variety), []).append(planting)
    lines = [
        _line(known.resolve(crop, variety), crop, variety, plantings, lots)
        for (crop, variety), plantings in wanted.items()
    ]
    return tuple(sorted(lines, key=lambda line: (known.crop(line.crop).name, line.variety or "")))


def _line(
    crop: Crop, crop_id: str, variety: str | None, plantings: Sequence[Planting], lots: Sequence[SeedLot]
) -> SeedLine:
    first = min(needed(p, crop) for p in plantings)
    from_seed = [p for p in plantings if p.start.kind != "set"]
    mine = good_lots(lots, crop, crop_id, variety, first)
    share, tested = germination(crop, mine, first)
    sow: int | None = 0
    for planting in from_seed:
        number = seeds_of(planting, variety, share)
        sow = None if sow is None or number is None else sow + number
    per_gram = crop.seeds_per_gram.mid if crop.seeds_per_gram is not None else None
    held = _held(crop, mine)
    missing = None if sow is None else max(sow - int(held or 0), 0)
    clumps = sum(stations_of(p, variety) for p in from_seed if p.per_station > 1)
    return SeedLine(
        crop=crop_id,
        variety=variety,
        plants=sum(stations_of(p, variety) * p.per_station for p in plantings),
        clumps=clumps or None,
        bought=sum(stations_of(p, variety) * p.per_station for p in plantings if p.start.kind == "set"),
        germination=share,
        tested=tested,
        sow=sow if from_seed else None,
        sow_g=_grams(sow, per_gram) if from_seed else None,
        in_tin=held,
        order=missing if from_seed else None,
        order_g=_grams(missing, per_gram) if from_seed else None,
        cost=_cost(crop, mine, missing) if from_seed else None,
        first=first,
    )


def _held(crop: Crop, lots: Sequence[SeedLot]) -> float | None:
    """Seeds in the lots; None where one holds grams of a crop whose seeds have no known weight."""
    total = 0.0
    for lot in lots:
        amount = seeds_in(lot, crop)
        if amount is None:
            return None
        total += amount[1]
    return total


def _grams(seeds: int | None, per_gram: float | None) -> float | None:
    return None if seeds is None or per_gram is None else seeds / per_gram


def _cost(crop: Crop, lots: Sequence[SeedLot], missing: int | None) -> float | None:
    """What the missing seeds cost, at the price of the lots; None where no price is known."""
    if missing == 0:
        return 0.0
    prices = [
        x.price / amount[1]
        for x in lots
        if x.price is not None and (amount := seeds_in(x, crop)) is not None and amount[1] > 0
    ]
    return None if missing is None or not prices else min(prices) * missing
