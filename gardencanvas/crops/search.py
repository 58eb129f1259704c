"""Find crops as one types: by any name, in any listed language, with a typo; and filter them."""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from weakref import WeakKeyDictionary

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.fallback import FIRST_HARVEST
from gardencanvas.crops.model import Crop, Fact, Group, Layer, Start
from gardencanvas.crops.spelling import folded, forgiven, slips, words

__all__ = ["Wanted", "folded", "ready_d", "search"]

LONGEST = 80  # characters of what is typed that are looked at


@dataclass(frozen=True)
class Wanted:
    """Filters; ``None`` lets everything through."""

    group: Group | None = None
    layer: Layer | None = None
    family: str | None = None
    rooting: str | None = None  # shallow, medium, deep
    light: str | None = None  # full sun, partial sun, partial shade, shade
    water: str | None = None  # low, medium, high
    start: Start | None = None  # one of the ways in which it can be started
    quick_d: float | None = None  # first harvest within so many days in the bed

    def lets(self, crop: Crop) -> bool:
        """Whether a crop passes; what is not known of it passes no filter."""
        return (
            self.group in (None, crop.group)
            and self.layer in (None, crop.layer)
            and self.family in (None, crop.family)
            and _is(self.rooting, crop.rooting)
            and _is(self.light, crop.light)
            and _is(self.water, crop.water)
            and (self.start is None or self.start in crop.starts)
            and (self.quick_d is None or ((days := ready_d(crop)) is not None and days <= self.quick_d))
        )


def _is(wanted: str | None, fact: Fact | None) -> bool:
    return wanted is None or (fact is not None and fact.value == wanted)


def ready_d(crop: Crop) -> float | None:
    """Days in the bed to the first harvest, by the crop's quickest way of starting; None: not known."""
    days = [getattr(crop, FIRST_HARVEST[start]) for start in crop.starts]
    return min((q.mid for q in days if q is not None), default=None)


def search(catalogue: Catalogue, text: str, wanted: Wanted | None = None) -> tuple[Crop, ...]:
    """Crops that match every word typed, the best first.

    Better is, for each word: the beginning of the crop's name, of a word in it, of another name, of a name in
    another language, of the botanical name, of the family, of a variety; then a part of any. A word in no
    name is taken for one with a slip or two. Among equals the shorter name comes first, so that ``pea``
    finds the pea before the asparagus pea.
    """
    index = _index(catalogue)
    asked = words(text[:LONGEST])
    ranks = index.ranks(asked) if asked else dict.fromkeys(range(len(catalogue.crops)), 0)
    found = []
    for at, rank in ranks.items():
        crop = catalogue.crops[at]
        if wanted is None or wanted.lets(crop):
            name = index.names[at]
            found.append((rank, len(name) if asked else 0, name, at))
    return tuple(catalogue.crops[at] for *_, at in sorted(found))


_PART, _SLIP = 10, 20  # added to the place for matches inside a word, and for each slip
_SHORTEST_PART = 3  # letters; shorter parts are in every other word


class _Word:
    """A word of any name: the crops it stands for, and where in their names it stands."""

    __slots__ = ("crops", "letters", "pairs", "text")

    def __init__(self, text: str) -> None:
        self.text = text
        self.letters = frozenset(text)
        self.pairs = _pairs(text)
        self.crops: dict[int, int] = {}  # number of the crop -> place, as ``_places`` counts them


class _Index:
    """All words of a catalogue."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.names = [folded(crop.name) for crop in catalogue.crops]
        known: dict[str, _Word] = {}
        varieties: dict[str, list[str]] = {}
        for variety in catalogue.varieties:
            varieties.setdefault(variety.crop, []).append(variety.name)
        for at, crop in enumerate(catalogue.crops):
            family = f"{crop.family} {catalogue.families.get(crop.family, '')}"
            for place, names in enumerate(_places(crop, family, varieties.get(crop.id, []))):
                for word in (w for name in names for w in words(name)):
                    known.setdefault(word, _Word(word)).crops.setdefault(at, place)
        self._words = list(known.values())

    def ranks(self, asked: list[str]) -> dict[int, int]:
        """Rank of each crop that matches every word, by its number: that of its worst match; 0 is best."""
        ranks: dict[int, int] | None = None
        for word in asked:
            found = self._as_typed(word) or self._slipped(word)
            if ranks is not None:
                found = {at: max(rank, ranks[at]) for at, rank in found.items() if at in ranks}
            if not found:
                return {}
            ranks = found
        return ranks or {}

    def _as_typed(self, asked: str) -> dict[int, int]:
        begins: dict[int, int] = {}
        parts: dict[int, int] = {}
        for word in self._words:
            if word.text.startswith(asked):
                _better(begins, word, 0)
            elif len(asked) >= _SHORTEST_PART and asked in word.text:
                _better(parts, word, _PART)
        return parts | begins

    def _slipped(self, asked: str) -> dict[int, int]:
        found: dict[int, int] = {}
        most = forgiven(len(asked))
        letters, pairs = frozenset(asked), _pairs(asked)
        least = len(asked) - most
        for word in self._words if most else ():
            # A slip takes one letter away and at most three pairs of neighbours: few words are left.
            if len(word.text) < least or len(letters - word.letters) > most:
                continue
            if len(pairs - word.pairs) > 3 * most:
                continue
            number = slips(asked, word.text, most)
            if number is not None:
                _better(found, word, _SLIP * number)
        return found


def _pairs(text: str) -> frozenset[str]:
    return frozenset(map("".join, pairwise(text)))


def _better(ranks: dict[int, int], word: _Word, more: int) -> None:
    for at, place in word.crops.items():
        if place + more < ranks.get(at, 1000):
            ranks[at] = place + more


def _places(crop: Crop, family: str, varieties: Iterable[str]) -> tuple[Iterable[str], ...]:
    """Names of a crop by where they stand, the best place first."""
    first, _, rest = folded(crop.name).partition(" ")
    return (first,), (rest,), crop.other_names, crop.names.values(), (crop.botanical,), (family,), varieties


_known: WeakKeyDictionary[Catalogue, _Index] = WeakKeyDictionary()


def _index(catalogue: Catalogue) -> _Index:
    """The words of a catalogue, gathered once."""
    index = _known.get(catalogue)
    if index is None:
        index = _known[catalogue] = _Index(catalogue)
    return index
