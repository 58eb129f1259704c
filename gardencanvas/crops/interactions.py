"""What two crops do to one another, with direction, size where it is known, and the strength of evidence.

Tradition alone never changes a verdict: an interaction that rests on it carries no size, its ``bearing`` is 0
and ``counts`` is false; it can only be shown.
"""

import tomllib
from collections.abc import Iterable
from enum import StrEnum
from functools import cache
from pathlib import Path
from typing import Annotated, Literal, Self

from pydantic import Field, TypeAdapter, ValidationError, model_validator

from gardencanvas.crops.built import built, digest
from gardencanvas.crops.errors import CatalogueError, Complaint, complaints_of
from gardencanvas.crops.model import Basis, Crop, Record, Slug, Text
from gardencanvas.resources_folder import resources

ANY = "any"


class Effect(StrEnum):
    """What the one does to the other."""

    FEWER_PESTS = "fewer pests"
    MORE_PESTS = "more pests"
    FEWER_WEEDS = "fewer weeds"
    MORE_HELPERS = "more helpers"  # hoverflies, parasitoids, pollinators
    COMPETITION = "competition"
    ALLELOPATHY = "allelopathy"
    SHARED_DISEASE = "shared disease"
    SHARED_PEST = "shared pest"
    SUPPORT = "support"
    HARVEST_DISTURBS = "harvest disturbs"
    YIELD_GAIN = "yield gain"
    YIELD_LOSS = "yield loss"
    NO_EFFECT = "no effect"


_GOOD = {Effect.FEWER_PESTS, Effect.FEWER_WEEDS, Effect.MORE_HELPERS, Effect.SUPPORT, Effect.YIELD_GAIN}
Evidence = Literal["several trials", "one trial", "common practice", "tradition only"]
_STRENGTH = ("several trials", "one trial", "common practice", "tradition only")
Sides = Annotated[tuple[str, ...], Field(min_length=1)]


class Size(Record):
    """How much, as published: a range with a central value."""

    low: float
    mid: float
    high: float
    unit: Text  # what it is: "LER" (total land equivalent ratio), "share of sole yield", "change"

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if not self.low <= self.mid <= self.high:
            raise ValueError(f"size is out of order: low {self.low:g}, mid {self.mid:g}, high {self.high:g}")
        return self


class Interaction(Record):
    """What crops ``a`` do to crops ``b``; where ``mutual``, each to the other."""

    id: Slug
    a: Sides  # crop ids, families (APG IV), or "any"
    b: Sides
    mutual: bool = False
    effect: Effect
    what: Text  # the pest, the measure, the part
    size: Size | None = None
    share_a: float | None = None  # median yield of a in the mixture, of its yield alone
    share_b: float | None = None
    observations: int | None = None
    papers: int | None = None
    evidence: Evidence
    source: Slug
    basis: Basis = Basis.SEEN
    note: Text = ""

    @model_validator(mode="after")
    def _tradition_has_no_size(self) -> Self:
        if self.evidence == "tradition only" and (self.size or self.share_a or self.share_b):
            raise ValueError("what rests on tradition only has no size")
        return self

    @property
    def counts(self) -> bool:
        """Whether it may weigh in a verdict."""
        return self.evidence != "tradition only"

    @property
    def bearing(self) -> int:
        """1 good, −1 bad, 0 neither or not to be counted."""
        if not self.counts or self.effect is Effect.NO_EFFECT:
            return 0
        return 1 if self.effect in _GOOD else -1

    def acts(self, on_b: Crop, by_a: Crop) -> bool:
        """Whether it says what one crop does to another, in this direction."""
        if _among(by_a, self.a) and _among(on_b, self.b):
            return True
        return self.mutual and _among(by_a, self.b) and _among(on_b, self.a)


def _among(crop: Crop, side: tuple[str, ...]) -> bool:
    return crop.id in side or crop.family in side or ANY in side


def between(crop_a: Crop, crop_b: Crop) -> tuple[Interaction, ...]:
    """What is known of two crops, in either direction; the strongest evidence first."""
    return among(interactions(), crop_a, crop_b)


def among(known: Iterable[Interaction], crop_a: Crop, crop_b: Crop) -> tuple[Interaction, ...]:
    """Those of some interactions that concern two crops; the strongest evidence first."""
    found = [i for i in known if i.acts(crop_b, crop_a) or i.acts(crop_a, crop_b)]
    return tuple(sorted(found, key=lambda i: _STRENGTH.index(i.evidence)))


@cache
def interactions() -> tuple[Interaction, ...]:
    """The shipped interactions."""
    return load_interactions(resources() / "interactions.toml")


def load_interactions(path: Path, cache_in: Path | None = None) -> tuple[Interaction, ...]:
    """Read a file of ``[[interaction]]`` tables.

    Raises
    ------
    CatalogueError
        Naming file, interaction, field and why.
    """
    data = path.read_bytes()
    kind = TypeAdapter(tuple[Interaction, ...])
    return built("interactions", digest([(path.name, data)]), kind, lambda: _parse(data, path.name), cache_in)


def _parse(data: bytes, name: str) -> tuple[Interaction, ...]:
    try:
        tables = tomllib.loads(data.decode("utf-8")).get("interaction", [])
    except (UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise CatalogueError([Complaint(name, "", "", "not-toml", str(error))]) from error
    sound: list[Interaction] = []
    faults: list[Complaint] = []
    for at, table in enumerate(tables):
        try:
            sound.append(Interaction.model_validate(table))
        except ValidationError as error:
            faults += complaints_of(error, name, str(table.get("id", f"no. {at + 1}"))[:60])
    if faults:
        raise CatalogueError(faults)
    return tuple(sound)
