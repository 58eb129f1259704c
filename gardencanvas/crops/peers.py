"""Medians among related crops: what stands in for a number that no source gives."""

from collections.abc import Callable, Hashable, Iterable
from statistics import median
from typing import NamedTuple

from gardencanvas.crops.model import Crop

FEWEST = 3  # crops that a median is taken of; fewer are single plants (our convention)

Kinship = tuple[str, ...]  # fields in which crops are alike
Number = Callable[[Crop], float | None]


class Median(NamedTuple):
    """Smallest, middle and greatest of the central values of some crops."""

    low: float
    mid: float
    high: float
    crops: int
    kinship: Kinship


class Peers:
    """The crops that medians are taken of; each group of relatives is gathered once."""

    def __init__(self, crops: Iterable[Crop]) -> None:
        self._crops = tuple(crops)
        self._groups: dict[Kinship, dict[tuple[Hashable, ...], list[Crop]]] = {}

    def like(self, crop: Crop, kinship: Kinship) -> list[Crop]:
        """Crops alike in the fields of a kinship; none where a field is not known of the crop."""
        groups = self._groups.get(kinship)
        if groups is None:
            groups = self._groups[kinship] = {}
            for each in self._crops:
                groups.setdefault(_kind(each, kinship), []).append(each)
        kind = _kind(crop, kinship)
        return [] if None in kind else groups.get(kind, [])

    def median(self, crop: Crop, number: Number, kinships: Iterable[Kinship]) -> Median | None:
        """Median over the nearest kinship that has enough crops of which the number is known."""
        for kinship in kinships:
            known = [n for each in self.like(crop, kinship) if (n := number(each)) is not None]
            if len(known) >= FEWEST:
                return Median(min(known), median(known), max(known), len(known), kinship)
        return None


def _kind(crop: Crop, kinship: Kinship) -> tuple[Hashable, ...]:
    return tuple(_plain(getattr(crop, field)) for field in kinship)


def _plain(value: object) -> Hashable:
    """A fact's word; any other value as it is."""
    word = getattr(value, "value", value)
    return word if isinstance(word, Hashable) else None
