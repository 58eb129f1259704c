"""Whether parts of a garden are the same objects: an edit keeps those it does not change."""

from collections.abc import Sequence
from typing import TypeVar

T = TypeVar("T")


def same_items(one: Sequence[object], two: Sequence[object]) -> bool:
    """Whether two sequences hold the identical items in the same order (the sequences may be new)."""
    return one is two or (len(one) == len(two) and all(a is b for a, b in zip(one, two, strict=True)))


def differing(one: Sequence[T], two: Sequence[T]) -> list[T]:
    """Items that only one of two sequences holds."""
    first, second = {id(x) for x in one}, {id(x) for x in two}
    return [x for x in one if id(x) not in second] + [x for x in two if id(x) not in first]
