"""All that is known of a crop as rows of words, each with its source."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Basis, Crop, Fact, Harvest, Hazard, Quantity, Start
from gardencanvas.words.amounts import in_words, parts
from gardencanvas.words.plain import Measure
from gardencanvas.words.sources import cited, origin

CAUTION = "Follow local rules and qualified advice."


@dataclass(frozen=True, slots=True)
class Told:
    """One row: what, how much with its range, and where it comes from: ``source`` is a citation's id."""

    label: str
    value: str
    around: str = ""  # its range
    origin: str = ""
    source: str = ""
    estimated: bool = False


@dataclass(frozen=True, slots=True)
class Section:
    """Rows under a heading."""

    title: str
    rows: tuple[Told, ...]


class _Field(NamedTuple):
    name: str
    label: str


_SECTIONS: tuple[tuple[str, tuple[_Field, ...]], ...] = (
    ("Size when grown", (
        _Field("height_m", "Height"),
        _Field("spread_m", "Spread"),
        _Field("canopy_base_m", "Lowest leaves"),
        _Field("rooting", "Roots"),
        _Field("root_depth_m", "Root depth"),
        _Field("root_depth_max_m", "Deepest roots"),
        _Field("root_spread_m", "Root spread"),
    )),
    ("Spacing", (
        _Field("in_row_m", "In the row"),
        _Field("between_rows_m", "Between rows"),
        _Field("clump_spacing_m", "Between clumps"),
        _Field("clump_plants", "Plants to a clump"),
        _Field("sowing_depth_m", "Sowing depth"),
    )),
    ("Seed", (
        _Field("germination_min_c", "Sprouts from"),
        _Field("germination_best_c", "Sprouts best at"),
        _Field("germination_max_c", "Sprouts up to"),
        _Field("germination_share", "Usually sprouts"),
        _Field("seeds_per_gram", "Seeds"),
        _Field("seed_life_y", "Seed keeps"),
    )),
    ("Time", (
        _Field("nursery_d", "Under glass"),
        _Field("harvest_from_sowing_d", "Sown to harvest"),
        _Field("harvest_from_planting_d", "Planted to harvest"),
        _Field("harvest_length_d", "Harvest lasts"),
        _Field("frost", "Frost"),
        _Field("frost_kill_c", "Killed at"),
    )),
    ("Needs", (
        _Field("light", "Light"),
        _Field("light_good", "Light, full crop"),
        _Field("light_least", "Light, at least"),
        _Field("water", "Water"),
        _Field("water_critical", "Thirsty time"),
        _Field("nutrients", "Nutrients"),
        _Field("support", "Support"),
    )),
    ("Yield and rotation", (
        _Field("yield_kg_m2", "Yield"),
        _Field("yield_kg_plant", "Yield of a plant"),
        _Field("rotation_y", "Back in the bed after"),
        _Field("rotation_why", "Because"),
    )),
    ("What the season is reckoned with", (
        _Field("grown_at_c", "Days hold at"),
        _Field("base_temperature_c", "Grows from"),
        _Field("top_temperature_c", "Grows faster up to"),
        _Field("stage_initial_d", "Initial stage"),
        _Field("stage_development_d", "Development stage"),
        _Field("stage_middle_d", "Middle stage"),
        _Field("stage_late_d", "Late stage"),
        _Field("leaf_area_index", "Leaf area index"),
        _Field("extinction", "Light extinction k"),
        _Field("depletion_fraction", "Soil water it can draw"),
        _Field("kc_initial", "Crop coefficient, initial"),
        _Field("kc_middle", "Crop coefficient, middle"),
        _Field("kc_end", "Crop coefficient, end"),
    )),
)  # fmt: skip
_STARTS = {Start.SOWN: "sown in place", Start.RAISED: "raised, planted out", Start.SET: "set"}
_HARVESTS = {
    Harvest.SINGLE: "once, the plant goes",
    Harvest.REPEATED: "picked over",
    Harvest.CUT_AGAIN: "cut and come again",
    Harvest.NONE: "none",
}


def sections(crop: Crop, known: Catalogue, measure: Measure) -> tuple[Section, ...]:
    """Everything known of a crop; of a completed one (``Catalogue.resolve``) what is estimated too."""
    found = [Section("Kind", tuple(_kind(crop)))]
    for title, fields in _SECTIONS:
        rows = tuple(told for f in fields if (told := _told(crop, f, known, measure)) is not None)
        if rows:
            found.append(Section(title, rows))
    return tuple(found)


def _kind(crop: Crop) -> Iterable[Told]:
    yield Told("Layer", str(crop.layer))
    yield Told("Lives", crop.life)
    yield Told("Started", ", ".join(_STARTS[s] for s in crop.starts))
    yield Told("Harvest", _HARVESTS[crop.harvest])
    if crop.harvest_disturbs is not None:
        yield Told("Lifting it", "breaks the soil beside it" if crop.harvest_disturbs else "leaves the soil")


def _told(crop: Crop, field: _Field, known: Catalogue, measure: Measure) -> Told | None:
    value: Quantity | Fact | None = getattr(crop, field.name)
    if value is None:
        return None
    if isinstance(value, Fact):
        return Told(field.label, value.value, "", origin(known, value), value.source)
    estimated = value.basis is Basis.FALLBACK
    number, around = parts(field.name, value, measure)
    told = origin(known, value, in_words(field.name, measure))
    return Told(field.label, f"≈ {number}" if estimated else number, around, told, value.source, estimated)


def hazard_words(hazard: Hazard) -> str:
    """A hazard with its caution: one paragraph. ``CAUTION`` belongs below the last of them."""
    parts = (f"{hazard.part[:1].upper()}{hazard.part[1:]} – {hazard.hazard}", hazard.caution)
    return " ".join(p if p.endswith((".", "!")) else f"{p}." for p in parts if p)


def citations(
    found: Iterable[Section], crop: Crop, known: Catalogue, others: Iterable[str] = ()
) -> dict[str, tuple[int, str]]:
    """Every source that a crop's page names, in the order of naming: id -> number and citation.

    Parameters
    ----------
    others
        Ids of what the page names besides.
    """
    ids = [h.source for h in crop.hazards]
    ids += [t.source for s in found for t in s.rows if t.source]
    ids += [r.source for r in crop.remarks]
    ids += others
    return {i: (number, cited(known, i)) for number, i in enumerate(dict.fromkeys(ids), 1)}
