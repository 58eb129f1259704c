"""What stands in for a number that no source gives of a crop.

A missing number is first taken as the median of the crop's relatives in the catalogue: those of its family
that are alike in what the number depends on, then those alike without regard to family. Where too few
relatives are known, a constant is taken whose source stands beside it. Days and stages are reckoned from one
another where the crop gives some of them. Each filled number has the basis ``fallback`` and says in its note
what it was taken from, so that results that rest on it are marked as estimated.

Stage days of perennials are left open: their growth is a season's matter (``season.traits``).
"""

from collections.abc import Iterable
from functools import partial

from gardencanvas.crops.model import Basis, Crop, Habit, Harvest, Quantity, Start
from gardencanvas.crops.peers import Kinship, Median, Peers

MEDIAN = "catalogue-median"
OWN = "catalogue-own"
STAGES = ("stage_initial_d", "stage_development_d", "stage_middle_d", "stage_late_d")
FIRST_HARVEST = {
    Start.SOWN: "harvest_from_sowing_d",
    Start.RAISED: "harvest_from_planting_d",
    Start.SET: "harvest_from_planting_d",
}


def _constant(low: float, mid: float, high: float, source: str, note: str) -> Quantity:
    return Quantity(low=low, mid=mid, high=high, source=source, basis=Basis.FALLBACK, note=note)


# In what relatives must be alike, the nearest first.
_ALIKE: dict[str, tuple[Kinship, ...]] = {
    "height_m": (("family", "layer", "habit"), ("family", "layer"), ("layer", "habit"), ("layer",)),
    "spread_m": (("family", "habit", "layer"), ("family", "habit"), ("habit", "layer"), ("habit",)),
    "root_depth_m": (("family", "rooting"), ("rooting", "group"), ("rooting",), ("family",), ("group",)),
    "leaf_area_index": (("family", "habit"), ("habit", "layer"), ("habit",), ("group",)),
    "grown_at_c": (("family", "frost"), ("family",), ("group", "frost"), ("frost",), ("group",)),
    "base_temperature_c": (("family", "frost"), ("family",), ("group", "frost"), ("frost",), ("group",)),
    "top_temperature_c": (("family", "frost"), ("family",), ("group", "frost"), ("frost",), ("group",)),
    "frost_kill_c": (("family", "frost"), ("frost",), ("family",), ("group",)),
    "light_good": (("light",), ("family",), ("group",)),
    "light_least": (("light",), ("family",), ("group",)),
    "harvest_length_d": (("family", "harvest"), ("group", "harvest"), ("harvest",)),
}
_NURSERY: tuple[Kinship, ...] = (("family", "group"), ("family",), ("group",))
_RIPE: tuple[Kinship, ...] = (("family", "group", "harvest"), ("family", "group"), ("group",), ("harvest",))
_SHARES: tuple[Kinship, ...] = (("family", "harvest"), ("group", "harvest"), ("harvest",))

# Where the catalogue has too few relatives.
_LAST: dict[str, Quantity] = {
    "height_m": _constant(0.1, 0.4, 2.0, "common-practice", "most vegetables"),
    "spread_m": _constant(0.1, 0.35, 1.0, "common-practice", "most vegetables"),
    "root_depth_m": _constant(0.3, 0.45, 1.0, "fao56", "span of the small vegetables of Table 22"),
    "leaf_area_index": _constant(2.0, 3.0, 4.0, "fao56", "chapter 6: about 3 at effective full cover"),
    "grown_at_c": _constant(15.0, 18.0, 25.0, "common-practice", "between cool-season and warm-season crops"),
    "base_temperature_c": _constant(
        0.0, 5.0, 10.0, "common-practice", "4 for cool, 10 for warm-season crops"
    ),
    "top_temperature_c": _constant(
        25.0, 30.0, 35.0, "common-practice", "25 for cool, 30 for warm-season crops"
    ),
    "frost_kill_c": _constant(-4.0, -2.2, 0.0, "common-practice", "a light freeze, 28 °F"),
    "light_good": _constant(0.4, 0.6, 0.75, "common-practice", "as for partial sun"),
    "light_least": _constant(0.25, 0.4, 0.5, "common-practice", "as for partial sun"),
    "harvest_length_d": _constant(
        7.0, 20.0, 60.0, "common-practice", "from one cut to two months of picking"
    ),
    "nursery_d": _constant(21.0, 35.0, 56.0, "common-practice", "three to eight weeks under glass"),
    "ripe": _constant(40.0, 75.0, 130.0, "common-practice", "most vegetables"),
}
# k of Beer–Lambert by habit, after the values of the SWAT and WOFOST parameter tables.
_DEFAULT_K = _constant(0.5, 0.65, 0.8, "swat-plants", "0.65 for all vegetables there")
_UPRIGHT_K = _constant(0.4, 0.5, 0.65, "wofost", "upright leaves let light through: 0.5 for onion there")
_FLAT_K = _constant(0.65, 0.8, 1.0, "wofost", "broad flat leaves: 0.8 for bean, cowpea and soya there")
_EXTINCTION = {
    Habit.UPRIGHT: _UPRIGHT_K,
    Habit.TUFT: _UPRIGHT_K,
    Habit.HEAD: _FLAT_K,
    Habit.SPRAWLER: _FLAT_K,
}
# FAO-56 Table 11, green bean, 20/30/30/10 of 90 days: growth neither hurried nor drawn out.
_LAST_SHARES = (20 / 90, 30 / 90, 30 / 90, 10 / 90)


def complete(crop: Crop, peers: Peers) -> Crop:
    """The crop with every number that the engine needs; the crop itself where none is missing."""
    filled = _Filling(crop, peers).done()
    if not filled:
        return crop
    return Crop.model_validate({**{k: getattr(crop, k) for k in Crop.model_fields}, **filled})


def estimated(crop: Crop, start: str | None = None) -> tuple[str, ...]:
    """Fields of a completed crop that rest on a fallback.

    Parameters
    ----------
    start
        ``sown``, ``raised``, ``set`` or ``volunteer``: leave out what only concerns other ways of starting.
        Days to the harvest of a way in which the crop is not usually started are reckoned from the usual way
        (``season.traits``): they rest on a fallback too. None: all.
    """
    fields = [k for k, v in crop.quantities.items() if v.basis is Basis.FALLBACK]
    if start is None:
        return tuple(fields)
    own = "harvest_from_sowing_d" if start in ("sown", "volunteer") else "harvest_from_planting_d"
    besides = {*FIRST_HARVEST.values(), "nursery_d"} - {own, *(["nursery_d"] if start == "raised" else [])}
    reckoned = (own,) if getattr(crop, own) is None else ()
    return (*(f for f in fields if f not in besides), *reckoned)


class _Filling:
    """One crop as it is filled, field by field; later fields may rest on earlier ones."""

    def __init__(self, crop: Crop, peers: Peers) -> None:
        self._crop = crop
        self._peers = peers
        self._filled: dict[str, Quantity] = {}

    def done(self) -> dict[str, Quantity]:
        for field in _ALIKE:
            if self._get(field) is None:
                self._filled[field] = self._by_kin(field, _ALIKE[field])
        if self._get("extinction") is None:
            self._filled["extinction"] = _EXTINCTION.get(self._crop.habit, _DEFAULT_K)
        if Start.RAISED in self._crop.starts and self._get("nursery_d") is None:
            self._filled["nursery_d"] = self._by_kin("nursery_d", _NURSERY)
        self._fill_first_harvests()
        self._fill_stages()
        return self._filled

    def _get(self, field: str) -> Quantity | None:
        value = self._filled.get(field)
        return value if value is not None else getattr(self._crop, field)

    def _mid(self, field: str) -> float:
        value = self._get(field)
        return 0.0 if value is None else value.mid

    def _by_kin(self, field: str, kinships: Iterable[Kinship], last: str | None = None) -> Quantity:
        found = self._peers.median(self._crop, partial(_known, field), kinships)
        return _LAST[last or field] if found is None else _quantity(found)

    # Days ---------------------------------------------------------------------------------------------------

    def _fill_first_harvests(self) -> None:
        """Days to the first harvest for each way of starting, the usual one first."""
        crop = self._crop
        for start in crop.starts:
            field = FIRST_HARVEST[start]
            if self._get(field) is None:
                other = FIRST_HARVEST[Start.RAISED if start is Start.SOWN else Start.SOWN]
                self._filled[field] = (
                    (self._from_stages() if start is crop.starts[0] else None)
                    or self._from_other(field, other)
                    or self._by_kin(field, _RIPE, "ripe")
                )

    def _from_stages(self) -> Quantity | None:
        """Sum of the stages: all for what is lifted at once, all but the last for what is picked over."""
        stages = [q for s in STAGES if (q := self._get(s)) is not None]
        if len(stages) < len(STAGES):
            return None
        if self._crop.harvest not in (Harvest.SINGLE, Harvest.NONE):
            stages = stages[:-1]
        total = [sum(getattr(q, end) for q in stages) for end in ("low", "mid", "high")]
        return (
            _reckoned(total[0], total[1], total[2], "sum of the crop's stages") if total[1] >= 1.0 else None
        )

    def _from_other(self, field: str, other: str) -> Quantity | None:
        """Days from planting out and days from sowing differ by the days under glass (common practice)."""
        known, nursery = self._get(other), self._mid("nursery_d")
        if known is None:
            return None
        if field == "harvest_from_sowing_d":
            note = "days from planting out, and the days under glass"
            return _reckoned(known.low + nursery, known.mid + nursery, known.high + nursery, note)
        less = min(nursery, known.mid / 2)
        note = "days from sowing, less the days under glass but at most half"
        low = max(known.low - less, min(1.0, known.mid - less))
        return _reckoned(low, known.mid - less, known.high - less, note)

    def _fill_stages(self) -> None:
        """Missing stages share the days to the end of the harvest as those of relatives do."""
        crop = self._crop
        missing = [s for s in STAGES if self._get(s) is None]
        seasonal = crop.life == "perennial" and crop.harvest is not Harvest.SINGLE
        if not missing or (seasonal and len(missing) == len(STAGES)):
            return
        known = sum(self._mid(s) for s in STAGES)
        total = self._mid(FIRST_HARVEST[crop.starts[0]]) + self._mid("harvest_length_d")
        shares, note = self._shares()
        left = max(total - known, 1.0)
        whole = sum(shares[s] for s in missing)
        for stage in missing:
            days = min(left * shares[stage] / whole, 400.0)
            self._filled[stage] = _reckoned(0.7 * days, days, min(1.4 * days, 400.0), note)

    def _shares(self) -> tuple[dict[str, float], str]:
        found = [self._peers.median(self._crop, partial(_share, s), _SHARES) for s in STAGES]
        medians = [m for m in found if m is not None]
        if len(medians) < len(STAGES):
            return dict(
                zip(STAGES, _LAST_SHARES, strict=True)
            ), "days shared out as FAO-56 does for green bean"
        shares = {s: max(m.mid, 0.01) for s, m in zip(STAGES, medians, strict=True)}
        return shares, f"days shared out as by {medians[0].crops} crops {_alike(medians[0].kinship)}"


def _known(field: str, crop: Crop) -> float | None:
    value = getattr(crop, field)
    return None if value is None else float(value.mid)


def _share(stage: str, crop: Crop) -> float | None:
    days = [_known(s, crop) for s in STAGES]
    total = sum(d for d in days if d is not None)
    return None if None in days or total <= 0.0 else (days[STAGES.index(stage)] or 0.0) / total


_WORDS = {
    "harvest": "way of harvest",
    "frost": "frost class",
    "light": "light class",
    "rooting": "root class",
}


def _alike(kinship: Kinship) -> str:
    return "of the same " + " and ".join(_WORDS.get(field, field) for field in kinship)


def _quantity(found: Median) -> Quantity:
    note = f"median of {found.crops} crops {_alike(found.kinship)}"
    return _constant(found.low, found.mid, found.high, MEDIAN, note)


def _reckoned(low: float, mid: float, high: float, note: str) -> Quantity:
    return _constant(min(low, mid), mid, max(high, mid), OWN, note)
