"""Published ranges by crop id, from the tables in ``data``; their sources stand in their rows."""

import csv
from functools import cache
from pathlib import Path
from typing import NamedTuple

from tests.oracles.handbook_names import HANDBOOKS, HEIGHTS, ROOTS, SEEDS

DATA = Path(__file__).parent / "data"


class Published(NamedTuple):
    """Least and greatest that any row gives."""

    low: float
    high: float

    def holds(self, value: float, slack: float = 0.0) -> bool:
        return self.low * (1 - slack) - 1e-9 <= value <= self.high * (1 + slack) + 1e-9


@cache
def table(name: str) -> tuple[dict[str, str], ...]:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return tuple(csv.DictReader(file))


def _ranges(rows, ids_of, low, high, scale=1.0):
    """Hull over the rows of each crop, of the columns ``low`` and ``high``."""
    found: dict[str, Published] = {}
    for row in rows:
        if not row[low]:
            continue
        one = Published(float(row[low]) * scale, float(row[high]) * scale)
        for crop in ids_of.get(row["crop"], ()):
            old = found.get(crop, one)
            found[crop] = Published(min(old.low, one.low), max(old.high, one.high))
    return found


def rooting_depth() -> dict[str, Published]:
    """Effective rooting depth, m: FAO-56 table 22."""
    rows = table("fao56_rooting_depth")
    return _ranges(rows, ROOTS, "rooting_depth_min_m", "rooting_depth_max_m")


def depletion() -> dict[str, Published]:
    """Depletion fraction: FAO-56 table 22."""
    rows = table("fao56_rooting_depth")
    return _ranges(rows, ROOTS, "depletion_fraction_p", "depletion_fraction_p")


def crop_height() -> dict[str, Published]:
    """Height of the crop's surface, m: FAO-56 table 12."""
    return _ranges(table("fao56_height_kc"), HEIGHTS, "max_height_m", "max_height_m")


def coefficient(stage: str) -> dict[str, Published]:
    """Crop coefficient ``ini``, ``mid`` or ``end``: FAO-56 table 12."""
    return _ranges(table("fao56_height_kc"), HEIGHTS, f"kc_{stage}", f"kc_{stage}")


def plant_height() -> dict[str, Published]:
    """Height of herbs and flowers, m: extension tables."""
    return _ranges(table("spacing"), HANDBOOKS, "height_min_cm", "height_max_cm", 0.01)


def in_row() -> dict[str, Published]:
    """Distance in the row, m: handbooks of field, bed and garden."""
    return _ranges(table("spacing"), HANDBOOKS, "in_row_min_cm", "in_row_max_cm", 0.01)


def between_rows() -> dict[str, Published]:
    """Distance between rows, m: handbooks of field, bed and garden."""
    return _ranges(table("spacing"), HANDBOOKS, "between_row_min_cm", "between_row_max_cm", 0.01)


def seeds(attribute: str, scale: float = 1.0) -> dict[str, Published]:
    """``seeds_per_gram``, ``min_germination_standard`` (per cent) or ``seed_life`` (years)."""
    rows = [row for row in table("seeds") if row["attribute"] == attribute]
    return _ranges(rows, SEEDS, "value_min", "value_max", scale)


def days_to_harvest(started: str) -> dict[str, Published]:
    """Days to the first harvest from ``sowing`` in place, or from ``planting`` out or setting."""
    rows = [
        row for row in table("days_to_harvest") if (row["establishment"] == "sowing") == (started == "sowing")
    ]
    return _ranges(rows, HANDBOOKS, "value_min", "value_max")
