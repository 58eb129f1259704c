"""What the ribbon draws: one bar a planting, grouped by bed, as plain values."""

from dataclasses import dataclass
from datetime import date
from itertools import pairwise

import numpy as np

from gardencanvas.app.session import Session
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.plain import planting_name


@dataclass(frozen=True)
class Bar:
    """A planting through the season."""

    id: str
    name: str
    crop: str
    family: str
    sown: date
    in_bed: date
    harvest_first: date
    harvest_last: date
    out: date
    verdict: Verdict
    days_to_spare: int | None
    locked: bool
    succession: str | None = None


@dataclass(frozen=True)
class Group:
    """The bars of one bed."""

    name: str
    bars: tuple[Bar, ...]


def _day(value: np.datetime64) -> date:
    return date.fromordinal(date(1970, 1, 1).toordinal() + int(value.astype("datetime64[D]").astype(int)))


def bar_of(session: Session, planting: Planting) -> Bar:
    """The bar of one planting."""
    course = session.course(planting)
    fit = session.shown_report.plantings.get(planting.id)
    return Bar(
        id=planting.id,
        name=planting_name(session.catalogue, planting),
        crop=planting.crop,
        family=session.catalogue.crop(planting.crop).family,
        sown=_day(course.sown[0]),
        in_bed=_day(course.in_bed[0]),
        harvest_first=_day(course.harvest_first[0]),
        harvest_last=_day(course.harvest_last[0]),
        out=_day(course.out[0]),
        verdict=fit.verdict if fit else Verdict.CLEAR,
        days_to_spare=fit.days_to_spare if fit else None,
        locked=planting.locked,
        succession=planting.succession,
    )


def groups(session: Session, plantings: tuple[Planting, ...], bare: str) -> list[Group]:
    """The bars of some plantings of the shown layout, bed by bed in drawing order.

    Early ones first; the parts of a succession follow each other from where its first one stands.
    """
    layout = session.layout
    by_bed: dict[str, list[Bar]] = {bed.id: [] for bed in layout.beds}
    names = {bed.id: bed.name for bed in layout.beds}
    for planting in plantings:
        bed = bed_of(layout, planting)
        by_bed.setdefault(bed.id if bed else "", []).append(bar_of(session, planting))
    names[""] = bare
    return [Group(names[bed_id], _ordered(bars)) for bed_id, bars in by_bed.items() if bars]


def _ordered(bars: list[Bar]) -> tuple[Bar, ...]:
    early = sorted(bars, key=lambda b: (b.in_bed, b.name, b.id))
    lead: dict[tuple[bool, str], int] = {}
    for place, bar in enumerate(early):
        lead.setdefault(_together(bar), place)
    return tuple(sorted(early, key=lambda b: lead[_together(b)]))


def _together(bar: Bar) -> tuple[bool, str]:
    """What bars that follow each other share: their succession, or else nothing but themselves."""
    return bar.succession is not None, bar.succession or bar.id


def joined(bars: tuple[Bar, ...]) -> list[tuple[int, int]]:
    """Neighbours of one succession: the places of each two bars that a line joins."""
    pairs = pairwise(enumerate(bars))
    return [(i, j) for (i, a), (j, b) in pairs if a.succession is not None and a.succession == b.succession]


def frost_spans(session: Session) -> list[tuple[date, date]]:
    """The parts of the layout's year in which frost is usual; empty where it never comes."""
    frost = session.garden.site.frost
    first, last = session.layout.season
    if frost.last is None or frost.first is None:
        return []
    days = np.arange(first.toordinal(), last.toordinal() + 1)
    safe = np.array([_frost_free(date.fromordinal(int(d)), frost.last, frost.first) for d in days])
    spans: list[tuple[date, date]] = []
    begin: int | None = None
    for day, free in zip(days.tolist(), safe.tolist(), strict=True):
        if not free and begin is None:
            begin = day
        if free and begin is not None:
            spans.append((date.fromordinal(begin), date.fromordinal(day)))
            begin = None
    if begin is not None:
        spans.append((date.fromordinal(begin), last))
    return spans


def _frost_free(on: date, last: DayOfYear, first: DayOfYear) -> bool:
    spring, autumn = (last.month, last.day), (first.month, first.day)
    now = (on.month, on.day)
    return spring < now < autumn if spring < autumn else not autumn <= now <= spring
