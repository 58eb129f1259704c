"""What is known of two crops beside each other, with the strength of its evidence.

Tradition alone is told and changes nothing: only what a trial has found ``counts``.
"""

import tomllib
from enum import StrEnum
from functools import cache
from pathlib import Path
from typing import Annotated, Self

from pydantic import Field, TypeAdapter, model_validator

from gardencanvas.crops.model import Basis, Crop, Quantity, Record, Slug, Text
from gardencanvas.resources_folder import resources

ANY = "any"  # in place of a crop or family: every other crop
Party = Annotated[str, Field(pattern=r"^([a-z0-9]+(-[a-z0-9]+)*|[A-Z][a-z]+aceae)$", max_length=60)]


class Effect(StrEnum):
    """What one crop does to another."""

    PEST_CONFUSION = "pest confusion"  # fewer pests find their host; trap crops too
    HELPERS = "helpful insects"
    PESTS = "pests drawn"
    SHARED_DISEASE = "shared disease"  # a pest or disease of both
    COMPETITION = "competition"  # for light, water, food
    ALLELOPATHY = "allelopathy"
    SUPPORT = "physical support"
    DISTURBANCE = "harvest disturbance"
    WEEDS = "weed suppression"
    YIELD = "yield together"  # of both: land equivalent ratio


class Direction(StrEnum):
    """How the crop that is acted on fares."""

    BETTER = "better"
    WORSE = "worse"
    VARIES = "varies"  # trials, or treatments of a trial, disagree
    NONE = "no effect"  # looked for and not found


class Evidence(StrEnum):
    """Strength of the evidence."""

    SEVERAL = "several trials"
    ONE = "one trial"
    PRACTICE = "common practice"  # of advisers: host ranges, advice of extension services
    TRADITION = "tradition only"


class Interaction(Record):
    """One crop's effect on another.

    ``acting`` and ``on`` hold crop ids, families, or "any"; with ``mutual`` either may be the one that acts.
    """

    acting: tuple[Party, ...] = Field(min_length=1)
    on: tuple[Party, ...] = Field(min_length=1)
    mutual: bool = False
    effect: Effect
    direction: Direction
    text: Annotated[Text, Field(min_length=1)]  # what was seen, in the words of the record
    size: Quantity | None = None
    measure: Text = ""  # of what ``size`` is the number, with its unit
    evidence: Evidence
    source: Slug
    basis: Basis
    note: Text = ""

    @model_validator(mode="after")
    def _measured(self) -> Self:
        if (self.size is None) != (self.measure == ""):
            raise ValueError("a size needs a measure, and a measure a size")
        return self

    @property
    def counts(self) -> bool:
        """Whether it may bear on a verdict: it was seen in a trial, and not merely handed down."""
        return self.evidence in (Evidence.SEVERAL, Evidence.ONE) and self.direction is not Direction.NONE

    def acts(self, crop: Crop, other: Crop) -> bool:
        """Whether it is an effect of ``crop`` on ``other``."""
        if _names(self.acting, crop) and _names(self.on, other):
            return True
        return self.mutual and _names(self.acting, other) and _names(self.on, crop)


def _names(parties: tuple[str, ...], crop: Crop) -> bool:
    return crop.id in parties or crop.family in parties or ANY in parties


_ORDER = {evidence: place for place, evidence in enumerate(Evidence)}


class Interactions:
    """All that is known, found by a pair of crops."""

    def __init__(self, every: tuple[Interaction, ...]) -> None:
        self.every = every
        self._by_party: dict[str, list[int]] = {}
        for at, interaction in enumerate(every):
            for party in {*interaction.acting, *interaction.on}:
                self._by_party.setdefault(party, []).append(at)

    def between(self, a: Crop, b: Crop) -> tuple[Interaction, ...]:
        """Effects of either crop on the other, the best evidence first; none of a crop on itself."""
        if a.id == b.id:
            return ()
        found = [self.every[i] for i in sorted(self._of(a) & self._of(b))]
        found = [each for each in found if each.acts(a, b) or each.acts(b, a)]
        return tuple(sorted(found, key=lambda each: _ORDER[each.evidence]))

    def _of(self, crop: Crop) -> set[int]:
        return {i for party in (crop.id, crop.family, ANY) for i in self._by_party.get(party, ())}


def load(path: Path) -> Interactions:
    """Interactions of a file; raises ``pydantic.ValidationError`` and ``tomllib.TOMLDecodeError``."""
    tables = tomllib.loads(path.read_text(encoding="utf-8"))
    return Interactions(TypeAdapter(tuple[Interaction, ...]).validate_python(tables["interaction"]))


@cache
def interactions() -> Interactions:
    """The shipped interactions."""
    return load(resources() / "interactions.toml")


def between(a: Crop, b: Crop) -> tuple[Interaction, ...]:
    """What is known of two crops beside each other, the best evidence first."""
    return interactions().between(a, b)
