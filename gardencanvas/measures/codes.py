"""The measures by which layouts are compared: their codes, units, and which way is better."""

from enum import StrEnum
from typing import NamedTuple

from gardencanvas.measures.estimates import Better


class Code(StrEnum):
    """Names of measures; ``words.comparing`` says what each is."""

    GROUND_DAYS = "ground_days"
    GROUND_SHARE = "ground_share"
    HARVEST = "harvest"
    HARVEST_PIECES = "harvest_pieces"  # of one crop only
    ALONE = "alone"  # of one crop only: grown alone on the whole of the same ground
    RELATIVE_YIELD = "relative_yield"  # of one crop only
    HARVEST_WEEKS = "harvest_weeks"
    GAP_WEEKS = "gap_weeks"
    GLUT_WEEKS = "glut_weeks"
    LER = "ler"
    ATER = "ater"
    OVERLAP = "overlap"
    LIGHT = "light"
    MIXING = "mixing"
    KINDS = "kinds"
    SHADED = "shaded"
    WATER = "water"
    WATER_PEAK = "water_peak"
    HUNGRY = "hungry"
    FIXING = "fixing"
    SEED_COST = "seed_cost"
    HOURS = "hours"
    CLEAR = "clear"
    SHARES = "shares"
    STRAINS = "strains"
    CLASHES = "clashes"
    SPARE = "days_to_spare"
    HAZARDS = "hazards"


# Of shares that are looked up at some places of a bed: twice their standard deviation (``reckoned.spots``).
_LOOKED_UP = 0.02


class Kind(NamedTuple):
    """Unit of a measure, whether more or less of it is better, and how fine it is."""

    unit: str  # m2 days, share, kg, pieces, weeks, ratio, index, kinds, litres, litres a week, price, hours …
    better: Better
    grain: float = 0.0  # a smaller difference is finer than the measure can tell


KINDS: dict[Code, Kind] = {
    Code.HARVEST: Kind("kg", "more"),
    Code.HARVEST_PIECES: Kind("pieces", "more"),
    Code.ALONE: Kind("kg", "neither"),
    Code.RELATIVE_YIELD: Kind("share", "more"),
    Code.LER: Kind("ratio", "more"),
    Code.ATER: Kind("ratio", "more"),
    Code.OVERLAP: Kind("share", "neither"),
    Code.GROUND_DAYS: Kind("m2 days", "more"),
    Code.GROUND_SHARE: Kind("share", "more"),
    Code.HARVEST_WEEKS: Kind("weeks", "more"),
    Code.GAP_WEEKS: Kind("weeks", "less"),
    Code.GLUT_WEEKS: Kind("weeks", "less"),
    Code.LIGHT: Kind("share", "more", _LOOKED_UP),
    Code.SHADED: Kind("share", "more", _LOOKED_UP),
    Code.MIXING: Kind("index", "more"),
    Code.KINDS: Kind("kinds", "more"),
    Code.WATER: Kind("litres", "less"),
    Code.WATER_PEAK: Kind("litres a week", "less"),
    Code.HUNGRY: Kind("share", "less"),
    Code.FIXING: Kind("share", "more"),
    Code.SEED_COST: Kind("price", "less"),
    Code.HOURS: Kind("hours", "less"),
    Code.CLEAR: Kind("plantings", "neither"),
    Code.SHARES: Kind("plantings", "neither"),
    Code.STRAINS: Kind("plantings", "less"),
    Code.CLASHES: Kind("plantings", "less"),
    Code.SPARE: Kind("days", "more"),
    Code.HAZARDS: Kind("cautions", "less"),
}

OF_A_CROP = (Code.HARVEST, Code.HARVEST_PIECES, Code.ALONE, Code.RELATIVE_YIELD)
OF_A_LAYOUT = tuple(c for c in KINDS if c not in (Code.HARVEST_PIECES, Code.ALONE, Code.RELATIVE_YIELD))


class Through(StrEnum):
    """Names of measures through the weeks."""

    HARVEST = "harvest_by_week"  # kg, of each crop
    COVER = "cover_by_week"  # share of the soil of all beds under leaves
    WATER = "water_by_week"  # litres, of all beds, less effective rain


THROUGH_UNITS = {Through.HARVEST: "kg", Through.COVER: "share", Through.WATER: "litres"}
