"""What is known of two crops that stand beside each other, looked up once for each pair of crops."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from gardencanvas.crops.interactions import Effect, Interaction, between
from gardencanvas.crops.model import Crop
from gardencanvas.fit.held import Held

TRIALS = ("several trials", "one trial")
# Known from trials of something else than neighbours: a cover of the season before, extracts, stubble.
_NOT_BESIDE = frozenset({"marigold-nematodes", "sunflower-seedlings", "rye-small-seeds"})
_COSTS = (Effect.COMPETITION, Effect.YIELD_LOSS)
_FRIENDS = (Effect.FEWER_PESTS, Effect.MORE_HELPERS, Effect.FEWER_WEEDS, Effect.MORE_PESTS)


@dataclass(frozen=True, slots=True)
class Known:
    """Of an ordered pair of crops.

    ``costs`` holds what the one loses and what the other loses, in trials; ``disputed`` whether other trials
    of the pair found no loss.
    """

    gain: Interaction | None  # total yield of both
    costs: tuple[Interaction | None, Interaction | None]
    disputed: bool
    life: Interaction | None  # pests, their enemies, weeds
    foes: Interaction | None  # pest or disease that both share, of one family
    family: str  # of both, where that is one and matters; else empty
    thirsty: tuple[bool, bool]  # high need of water
    dry: tuple[bool, bool]  # low need

    @property
    def tried(self) -> bool:
        """Whether trials of the pair are on record."""
        return bool(self.gain or self.life or any(self.costs))

    @property
    def unlike_water(self) -> bool:
        """Whether the one wants little water and the other much."""
        return (self.thirsty[0] and self.dry[1]) or (self.thirsty[1] and self.dry[0])

    @property
    def matters(self) -> bool:
        """Whether it matters that the two stand side by side."""
        return self.tried or bool(self.family) or self.unlike_water


def known(one: Crop, two: Crop) -> Known:
    """What is known of two crops; nothing of a crop beside its own kind, which every stand is."""
    return _known(Held(one), Held(two))


@lru_cache(maxsize=8192)
def _known(first: Held, second: Held) -> Known:
    one, two = first.crop, second.crop
    thirsty, dry = (
        (_water(one) == "high", _water(two) == "high"),
        (_water(one) == "low", _water(two) == "low"),
    )
    if one.id == two.id:
        return Known(None, (None, None), False, None, None, "", (False, False), (False, False))
    every = [i for i in between(one, two) if i.id not in _NOT_BESIDE]
    tried = [i for i in every if i.evidence in TRIALS]
    foes = _first(every, (Effect.SHARED_PEST, Effect.SHARED_DISEASE)) if one.family == two.family else None
    return Known(
        _best(i for i in tried if i.effect is Effect.YIELD_GAIN),
        (_cost(tried, one, two), _cost(tried, two, one)),
        any(i.effect is Effect.NO_EFFECT and "yield" in i.what for i in tried),
        _first(tried, _FRIENDS),
        foes,
        one.family if one.family == two.family and (foes or _same_reason(one, two)) else "",
        thirsty,
        dry,
    )


def _water(crop: Crop) -> str:
    return crop.water.value if crop.water else ""


def _first(some: list[Interaction], effects: tuple[Effect, ...]) -> Interaction | None:
    """The first by order of effects, then by strength of evidence."""
    return next((i for effect in effects for i in some if i.effect is effect and i.counts), None)


def _best(some: Iterable[Interaction]) -> Interaction | None:
    """Of several gains, the one of most observations, before those without a size."""
    return max(some, key=lambda i: (i.size is not None, i.observations or 0), default=None)


def _cost(some: list[Interaction], sufferer: Crop, other: Crop) -> Interaction | None:
    return next((i for i in some if i.effect in _COSTS and i.acts(sufferer, other)), None)


def _same_reason(one: Crop, two: Crop) -> bool:
    """Whether both are kept apart in rotation for the same pests and diseases."""
    a, b = one.rotation_why, two.rotation_why
    return a is not None and b is not None and a.value == b.value and a.value != "none of weight"
