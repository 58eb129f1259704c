"""Seed lots: what lies in the grower's own tin, and how old it is."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Self

from pydantic import Field, model_validator

from gardencanvas.crops.model import Crop, Quantity, Record, Slug, Text

Amount = Annotated[float, Field(gt=0.0, le=1e7)]
TEST_HOLDS_D = 365  # a germination test speaks for a lot until the next season (common practice)


class SeedLot(Record):
    """One packet or jar."""

    id: Slug
    crop: Slug
    variety: Slug | None = None
    grams: Amount | None = None
    seeds: Amount | None = None
    year: Annotated[int, Field(ge=1900, le=2200)]  # of harvest, or as printed on the packet
    tested: Annotated[float, Field(ge=0.0, le=1.0)] | None = None  # share that germinated in a test
    tested_on: date | None = None
    price: Annotated[float, Field(ge=0.0, le=1e6)] | None = None  # of the lot, in the grower's money
    note: Text = ""

    @model_validator(mode="after")
    def _has_amount(self) -> Self:
        if self.grams is None and self.seeds is None:
            raise ValueError("a lot needs an amount: grams or seeds")
        return self


class Age(StrEnum):
    """What is wrong with an old lot."""

    GETTING_OLD = "getting old"  # older than the least seed life in the books
    PAST = "past its life"  # older than the longest
    POOR = "poor test"  # its own test lies below the usual allowance


@dataclass(frozen=True, slots=True)
class AgeWarning:
    """A warning in numbers; sentences are made elsewhere."""

    code: Age
    age_y: int
    life_y: Quantity | None  # what the books give; None where only the test speaks
    tested: float | None = None
    usual: Quantity | None = None  # usual germination, share


def age_warning(lot: SeedLot, crop: Crop, on: date) -> AgeWarning | None:
    """Whether a lot is too old to rely on; None where it is sound, or where nothing is known of its life.

    Notes
    -----
    A germination test of the last year speaks instead of the age. Seed counts as a year old in the year
    after its own.
    """
    age = max(on.year - lot.year, 0)
    if _test_speaks(lot, on):
        usual = crop.germination_share
        if usual is not None and lot.tested is not None and lot.tested < usual.low:
            return AgeWarning(Age.POOR, age, crop.seed_life_y, lot.tested, usual)
        return None
    life = crop.seed_life_y
    if life is None or age <= life.low:
        return None
    return AgeWarning(Age.PAST if age > life.high else Age.GETTING_OLD, age, life)


def _test_speaks(lot: SeedLot, on: date) -> bool:
    return (
        lot.tested is not None
        and lot.tested_on is not None
        and 0 <= (on - lot.tested_on).days <= TEST_HOLDS_D
    )


def seeds_in(lot: SeedLot, crop: Crop) -> tuple[float, float, float] | None:
    """Fewest, likely and most seeds in a lot; None where neither they nor their weight are known."""
    if lot.seeds is not None:
        return lot.seeds, lot.seeds, lot.seeds
    weight = crop.seeds_per_gram
    if weight is None or lot.grams is None:
        return None
    return lot.grams * weight.low, lot.grams * weight.mid, lot.grams * weight.high
