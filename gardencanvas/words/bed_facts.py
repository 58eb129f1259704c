"""Sentences about a bed as a whole: how it mixes families, and how much of its soil leaves cover."""

from datetime import date
from math import inf

import numpy as np

from gardencanvas.fit.cover_share import CoverShare
from gardencanvas.fit.mixing import BedMixing
from gardencanvas.words.language import figure, mark, say
from gardencanvas.words.plain import day, percent

HALF = 0.5
_MIXING_WHY = mark(
    "Of all pairs of plants that come within a hand's breadth, the share of unlike families, u, is set "
    "against the share expected by chance, E: (u − E)/(1 − E). 1: every neighbour is of another family; 0: "
    "as by chance; below 0: families stand in clumps. Pests are often fewer where kinds are mixed "
    "(Letourneau and others 2011, over 500 experiments), but how much differs from pest to pest: no number "
    "is promised. Kinds: the reciprocal of Simpson's index over the ground that each family needs."
)
_COVER_WHY = mark(
    "Share of the bed's soil under leaves, seen from above, week by week; ground that several plants cover "
    "counts once. Covered soil grows fewer weeds and loses less water; how much less depends on more than "
    "cover, so that nothing further is promised."
)


_MIXED = (  # from this index on
    (0.6, mark("as of {kinds} families, mixed {index}: most neighbours differ")),
    (0.2, mark("as of {kinds} families, mixed {index}: more neighbours differ than by chance")),
    (-0.2, mark("as of {kinds} families, mixed {index}: about as by chance")),
    (-inf, mark("as of {kinds} families, mixed {index}: families stand in clumps")),
)


def mixing_why() -> str:
    """How mixing is reckoned, and what it promises."""
    return say(_MIXING_WHY)


def cover_why() -> str:
    """How cover is reckoned, and what it promises."""
    return say(_COVER_WHY)


def mixing_words(mixing: BedMixing) -> str:
    """How a bed mixes families: ``as of 3.2 families, mixed 0.71: most neighbours differ``."""
    if not mixing.ground:
        return say("nothing grows in it")
    if len(mixing.ground) == 1:
        return say("one family only")
    kinds = figure(mixing.kinds, ".1f")
    if mixing.index is None:
        return say("as of {kinds} families", kinds=kinds)
    index = mixing.index
    told = next(told for least, told in _MIXED if index >= least)
    return say(told, kinds=kinds, index=figure(index, ".2f").replace("-", "−"))


def cover_words(cover: CoverShare) -> str:
    """How much of the soil lies under leaves: mean, most, and while it is more than half."""
    share = cover.covered
    if not share.any():
        return say("no leaves this season")
    best = int(share.argmax())
    mean, most = percent(float(share.mean())), percent(float(share[best]))
    week = day(_date(cover, best))
    over = np.flatnonzero(share > HALF)
    if not len(over):
        return say("{mean} of the year, most {most} in the week of {week}", mean=mean, most=most, week=week)
    return say(
        "{mean} of the year, most {most} in the week of {week}; more than half from {first} to {last}",
        mean=mean,
        most=most,
        week=week,
        first=day(_date(cover, over[0])),
        last=day(_date(cover, over[-1])),
    )


def _date(cover: CoverShare, week: int) -> date:
    starts: date = cover.weeks.starts[int(week)].astype(object)
    return starts
