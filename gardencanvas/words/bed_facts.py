"""Sentences about a bed as a whole: how it mixes families, and how much of its soil leaves cover."""

from datetime import date

import numpy as np

from gardencanvas.fit.cover_share import CoverShare
from gardencanvas.fit.mixing import BedMixing
from gardencanvas.words.plain import day, percent

HALF = 0.5
MIXING_WHY = (
    "Of all pairs of plants that come within a hand's breadth, the share of unlike families, u, is set "
    "against the share expected by chance, E: (u − E)/(1 − E). 1: every neighbour is of another family; 0: "
    "as by chance; below 0: families stand in clumps. Pests are often fewer where kinds are mixed "
    "(Letourneau and others 2011, over 500 experiments), but how much differs from pest to pest: no number "
    "is promised. Kinds: the reciprocal of Simpson's index over the ground that each family needs."
)
COVER_WHY = (
    "Share of the bed's soil under leaves, seen from above, week by week; ground that several plants cover "
    "counts once. Covered soil grows fewer weeds and loses less water; how much less depends on more than "
    "cover, so that nothing further is promised."
)


def mixing_words(mixing: BedMixing) -> str:
    """How a bed mixes families: ``3.2 kinds, mixed 0.71: most neighbours differ``."""
    if not mixing.ground:
        return "nothing grows in it"
    if len(mixing.ground) == 1:
        return "one family only"
    kinds = f"as of {mixing.kinds:.1f} families"
    if mixing.index is None:
        return kinds
    return f"{kinds}, mixed {mixing.index:.2f}: {_told(mixing.index)}"


def _told(index: float) -> str:
    if index >= 0.6:
        return "most neighbours differ"
    if index >= 0.2:
        return "more neighbours differ than by chance"
    if index > -0.2:
        return "about as by chance"
    return "families stand in clumps"


def cover_words(cover: CoverShare) -> str:
    """How much of the soil lies under leaves: mean, most, and while it is more than half."""
    share = cover.covered
    if not share.any():
        return "no leaves this season"
    best = int(share.argmax())
    said = f"{percent(float(share.mean()))} of the year, most {percent(float(share[best]))}"
    said += f" in the week of {day(_date(cover, best))}"
    over = np.flatnonzero(share > HALF)
    if len(over):
        said += f"; more than half from {day(_date(cover, over[0]))} to {day(_date(cover, over[-1]))}"
    return said


def _date(cover: CoverShare, week: int) -> date:
    starts: date = cover.weeks.starts[int(week)].astype(object)
    return starts
