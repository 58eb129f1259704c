"""All that is known of a crop as rows of words, each with its source."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Basis, Crop, Fact, Hazard, Quantity
from gardencanvas.words import named
from gardencanvas.words.amounts import in_words, parts
from gardencanvas.words.language import mark, say
from gardencanvas.words.plain import Measure
from gardencanvas.words.sources import cited, origin

CAUTION = mark("Follow local rules and qualified advice.")


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
    (mark("Size when grown"), (
        _Field("height_m", mark("Height")),
        _Field("spread_m", mark("Spread")),
        _Field("canopy_base_m", mark("Lowest leaves")),
        _Field("rooting", mark("Roots")),
        _Field("root_depth_m", mark("Root depth")),
        _Field("root_depth_max_m", mark("Deepest roots")),
        _Field("root_spread_m", mark("Root spread")),
    )),
    (mark("Spacing"), (
        _Field("in_row_m", mark("In the row")),
        _Field("between_rows_m", mark("Between rows")),
        _Field("clump_spacing_m", mark("Between clumps")),
        _Field("clump_plants", mark("Plants to a clump")),
        _Field("half_weight_per_m2", mark("Half as heavy as alone at")),
        _Field("sowing_depth_m", mark("Sowing depth")),
    )),
    (mark("Seed"), (
        _Field("germination_min_c", mark("Sprouts from")),
        _Field("germination_best_c", mark("Sprouts best at")),
        _Field("germination_max_c", mark("Sprouts up to")),
        _Field("germination_share", mark("Usually sprouts")),
        _Field("seeds_per_gram", mark("Seeds")),
        _Field("seed_life_y", mark("Seed keeps")),
    )),
    (mark("Time"), (
        _Field("nursery_d", mark("Under glass")),
        _Field("harvest_from_sowing_d", mark("Sown to harvest")),
        _Field("harvest_from_planting_d", mark("Planted to harvest")),
        _Field("harvest_length_d", mark("Harvest lasts")),
        _Field("frost", mark("Frost")),
        _Field("frost_kill_c", mark("Killed at")),
    )),
    (mark("Needs"), (
        _Field("light", mark("Light")),
        _Field("light_good", mark("Light, full crop")),
        _Field("light_least", mark("Light, at least")),
        _Field("water", mark("Water")),
        _Field("water_critical", mark("Thirsty time")),
        _Field("nutrients", mark("Nutrients")),
        _Field("support", mark("Support")),
    )),
    (mark("Yield and rotation"), (
        _Field("yield_kg_m2", mark("Yield")),
        _Field("yield_kg_plant", mark("Yield of a plant")),
        _Field("rotation_y", mark("Back in the bed after")),
        _Field("rotation_why", mark("Because")),
    )),
    (mark("What the season is reckoned with"), (
        _Field("grown_at_c", mark("Days hold at")),
        _Field("base_temperature_c", mark("Grows from")),
        _Field("top_temperature_c", mark("Grows faster up to")),
        _Field("stage_initial_d", mark("Initial stage")),
        _Field("stage_development_d", mark("Development stage")),
        _Field("stage_middle_d", mark("Middle stage")),
        _Field("stage_late_d", mark("Late stage")),
        _Field("leaf_area_index", mark("Leaf area index")),
        _Field("extinction", mark("Light extinction k")),
        _Field("depletion_fraction", mark("Soil water it can draw")),
        _Field("kc_initial", mark("Crop coefficient, initial")),
        _Field("kc_middle", mark("Crop coefficient, middle")),
        _Field("kc_end", mark("Crop coefficient, end")),
    )),
)  # fmt: skip


def label(field: str) -> str:
    """What a field of a crop is called: ``Root depth``."""
    return say(next(f.label for _, fields in _SECTIONS for f in fields if f.name == field))


def sections(crop: Crop, known: Catalogue, measure: Measure) -> tuple[Section, ...]:
    """Everything known of a crop; of a completed one (``Catalogue.resolve``) what is estimated too."""
    found = [Section(say("Kind"), tuple(_kind(crop)))]
    for title, fields in _SECTIONS:
        rows = tuple(told for f in fields if (told := _told(crop, f, known, measure)) is not None)
        if rows:
            found.append(Section(say(title), rows))
    return tuple(found)


def _kind(crop: Crop) -> Iterable[Told]:
    yield Told(say("Layer"), named.layer(crop.layer))
    yield Told(say("Lives"), named.life(crop.life))
    yield Told(say("Started"), ", ".join(map(named.start, crop.starts)))
    yield Told(say("Harvest"), named.harvest(crop.harvest))
    if crop.harvest_disturbs is not None:
        lifting = say("breaks the soil beside it") if crop.harvest_disturbs else say("leaves the soil")
        yield Told(say("Lifting it"), lifting)


def _told(crop: Crop, field: _Field, known: Catalogue, measure: Measure) -> Told | None:
    value: Quantity | Fact | None = getattr(crop, field.name)
    if value is None:
        return None
    called = say(field.label)
    if isinstance(value, Fact):
        return Told(called, named.fact(field.name, value.value), "", origin(known, value), value.source)
    estimated = value.basis is Basis.FALLBACK
    number, around = parts(field.name, value, measure)
    told = origin(known, value, in_words(field.name, measure))
    return Told(called, f"≈ {number}" if estimated else number, around, told, value.source, estimated)


def caution() -> str:
    """What belongs below hazards: whom to ask."""
    return say(CAUTION)


def hazard_words(hazard: Hazard) -> str:
    """A hazard with its caution: one paragraph. ``caution`` belongs below the last of them."""
    part, what = named.shipped(hazard.part), named.shipped(hazard.hazard)
    told = (f"{part[:1].upper()}{part[1:]} – {what}", named.shipped(hazard.caution))
    return " ".join(p if p.endswith((".", "!")) else f"{p}." for p in told if p)


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
