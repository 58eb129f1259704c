"""What came nearest to fitting, and what would make it possible."""

from collections.abc import Sequence
from datetime import date, timedelta

import numpy as np

from gardencanvas.fit.report import Finding
from gardencanvas.planner.gaps.answers import Miss, Why
from gardencanvas.planner.gaps.offers import Offers
from gardencanvas.planner.gaps.survey import Survey
from gardencanvas.planner.gaps.ways import Ways

MOST = 3
Clash = tuple[str, str | None, Finding]


def misses(
    offers: Sequence[Offers],
    clashes: Sequence[Clash],
    survey: Survey,
    ways: Ways,
    rows: Sequence[int],
    since: date,
) -> tuple[Miss, ...]:
    """The nearest misses, nearest first: what only clashes, then what lacks room, light, a day to start."""
    found = [_clash(*each) for each in clashes[:MOST]]
    short = _short(offers)
    found += short[: MOST - len(found)]
    if len(found) < MOST:
        found += _dark(offers)[: MOST - len(found)]
    if not found:
        found += _later(survey, ways, rows, since)
    return tuple(found[:MOST])


def _clash(crop: str, variety: str | None, finding: Finding) -> Miss:
    other = next((p for p in finding.plantings if not p.startswith(f"{crop[:34]}-")), "")
    numbers: dict[str, float | int | str | date] = {
        "code": finding.code, "kind": finding.kind.value, "other": other, "last": finding.last,
    }  # fmt: skip
    return Miss(Why.CLASH, crop, variety, numbers)


def _short(offers: Sequence[Offers]) -> list[Miss]:
    """What lacks room, the least first; and which planting is in its way until when."""
    found: list[tuple[float, Miss]] = []
    for offer in offers:
        want = np.flatnonzero((offer.plants <= 0) & offer.lit)
        least = want[np.argsort(offer.short_m[want], kind="stable")][:MOST].tolist()
        found += [(float(offer.short_m[row]), _room(offer, row)) for row in least]
    unique: dict[str | None, Miss] = {}
    for _, miss in sorted(found, key=lambda f: f[0]):
        unique.setdefault(miss.crop, miss)
    return list(unique.values())


def _room(offer: Offers, row: int) -> Miss:
    region, way = offer.ground.region, offer.sprouts.ways[row]
    numbers: dict[str, float | int | str | date] = {
        "short_m": float(offer.short_m[row]),
        "spacing_m": float(np.sqrt(offer.sprouts.station_m2[row])),
    }
    # with nothing there it would fit: then a plant is in its way, and that will be out one day
    room = np.flatnonzero(region.edge_m >= offer.margin_m[row] - region.surveyed.field.slip_m)
    if len(room) and len(region.surveyed.neighbours):
        away = region.away_m[:, room] - offer.apart[row][:, None]
        nearest = away.min(axis=0)
        at = int(nearest.argmax())
        if nearest[at] < 0.0:
            stand = region.surveyed.neighbours[int(away[:, at].argmin())].stand
            numbers |= {"by": stand.planting.id, "until": stand.times.out}
    return Miss(Why.ROOM, way.crop_id, way.variety, numbers)


def _dark(offers: Sequence[Offers]) -> list[Miss]:
    """What lacks light, the least first."""
    found: list[tuple[float, Miss]] = []
    for offer in offers:
        lack = offer.sprouts.light_least - offer.light
        dark = np.flatnonzero(~offer.lit)
        for row in dark[np.argsort(lack[dark], kind="stable")][:MOST]:
            way = offer.sprouts.ways[row]
            numbers = {"light": float(offer.light[row]), "least": float(offer.sprouts.light_least[row])}
            found.append((float(lack[row]), Miss(Why.LIGHT, way.crop_id, way.variety, numbers)))
    return [miss for _, miss in sorted(found, key=lambda f: f[0])]


def _later(survey: Survey, ways: Ways, rows: Sequence[int], since: date) -> list[Miss]:
    """What can be started soonest, this season or the next."""
    count = ways.good.shape[1]
    week = ways.week(since)
    found: list[tuple[date, Miss]] = []
    for row in rows:
        good = np.flatnonzero(ways.waited[row])
        way = ways.every[row]
        if len(good) == 0:
            continue
        ahead = good[good >= week]
        on = survey.season[0] + timedelta(weeks=int(ahead[0]) if len(ahead) else int(good[0]) + count)
        found.append((on, Miss(Why.SEASON, way.crop_id, way.variety, {"next": on})))
    if not found and rows:
        way = ways.every[rows[0]]
        return [Miss(Why.SEASON, way.crop_id, way.variety)]
    unique: dict[str | None, Miss] = {}
    for _, miss in sorted(found, key=lambda f: f[0]):
        unique.setdefault(miss.crop, miss)
    return list(unique.values())
