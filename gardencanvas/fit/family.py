"""Family: what trials say of two crops side by side, and neighbours that share pests and diseases."""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.interactions import Interaction
from gardencanvas.fit.adjoining import Adjoining
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, Number, finding_of
from gardencanvas.fit.known import Known
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import SOURCE

Ints = NDArray[np.intp]


class Touching(NamedTuple):
    """Stations of two stands whose footprints overlap for weeks while both stand."""

    of_a: Ints
    of_b: Ints


def family(side: Adjoining, known: Known, touching: Touching | None) -> tuple[Judged, ...]:
    """What is known of two stands that adjoin.

    Trials that report a loss make a crop strain only where the other's leaves reach over it for weeks, as in
    the trials; and not where other trials of the pair report a gain of both together, or no loss. Everything
    else is told as sharing, once for both: gains with their range and number of observations, pests and their
    enemies without any number, since the evidence carries none to another garden. Nothing that rests on
    tradition is told.

    Parameters
    ----------
    known
        Of the crops of ``side.a`` and ``side.b``, in that order.
    """
    if touching is not None and known.gain is None and not known.disputed:
        strained = [
            _trials(side, known, stand, some, Verdict.STRAINS, cost)
            for stand, some, cost in (
                (side.a, touching.of_a, known.costs[0]),
                (side.b, touching.of_b, known.costs[1]),
            )
            if cost is not None and len(some)
        ]
        if strained:
            return tuple(strained)
    if known.tried:
        loser = side.b if known.costs[0] is None and known.costs[1] is not None else side.a
        cost = known.costs[0] or known.costs[1]
        return (_trials(side, known, loser, side.of(loser), Verdict.SHARES, cost),)
    return (_same_family(side, known),) if known.family else ()


def _trials(
    side: Adjoining, known: Known, stand: Stand, some: Ints, verdict: Verdict, cost: Interaction | None
) -> Judged:
    """A finding from trials, about the stand that loses where one does."""
    other = side.b if stand is side.a else side.a
    numbers: dict[str, Number] = {"stations": len(some)}
    for name, said in (("gain", known.gain), ("cost", cost), ("life", known.life), ("foes", known.foes)):
        if said is not None:
            numbers[name] = said.id
    if cost is not None and known.disputed:
        numbers["disputed"] = 1
    if known.life is not None:
        a, b = side.a, side.b
        good = [x for x, y in ((a, b), (b, a)) if known.life.acts(x.crop, y.crop)]
        numbers |= {"life_for": good[0].planting.id} if len(good) == 1 else {}
    chief = (cost if verdict is Verdict.STRAINS else None) or known.gain or known.life or cost
    if chief is not None:
        numbers["evidence"] = chief.evidence
        numbers |= _size(chief)
    marks = np.full(len(some), verdict, dtype=np.uint8)
    finding = finding_of(
        Kind.FAMILY, Code.TRIALS, stand, (other,), some, marks, side.days, numbers,
        source=chief.source if chief else SOURCE,
    )  # fmt: skip
    return Judged(finding, marks)


def _size(said: Interaction) -> dict[str, Number]:
    """Total yield against the crops alone (land equivalent ratio), and how much was tried."""
    numbers: dict[str, Number] = {}
    if said.size is not None and said.size.unit == "LER":
        numbers |= {"low": said.size.low, "mid": said.size.mid, "high": said.size.high}
    if said.observations:
        numbers["observations"] = said.observations
    if said.papers:
        numbers["papers"] = said.papers
    return numbers


def _same_family(side: Adjoining, known: Known) -> Judged:
    why = side.a.crop.rotation_why
    numbers: dict[str, Number] = {"family": known.family, "stations": len(side.of_a)}
    source = why.source if why else SOURCE
    if known.foes is not None:
        numbers["foes"] = known.foes.id
        source = known.foes.source
    elif why is not None:
        numbers["why"] = why.value
    marks = np.full(len(side.of_a), Verdict.SHARES, dtype=np.uint8)
    finding = finding_of(
        Kind.FAMILY, Code.SAME_FAMILY, side.a, (side.b,), side.of_a, marks, side.days, numbers, source=source
    )
    return Judged(finding, marks)
