"""The widest range in which a number of a crop can lie: outside it the unit is wrong, or the number.

The bounds are set wide around what the handbooks give, so that they refuse a slip (centimetres for metres,
a share in per cent, a negative size) and no plant. They are common practice, not botany.
"""

from typing import NamedTuple


class Bound(NamedTuple):
    """Least and greatest value, unit, and what stands near the ends."""

    least: float
    most: float
    unit: str
    why: str

    def refusal(self, low: float, high: float) -> str:
        """Why a range outside these bounds cannot be right."""
        return (
            f"{low:g} to {high:g} lies outside {self.least:g} to {self.most:g} {self.unit} ({self.why}); "
            "is it in the right unit?"
        )


_DAYS = "no stage of a crop lasts longer than about a year"
BOUNDS: dict[str, Bound] = {
    "height_m": Bound(0.01, 15.0, "m", "mosses and mats to hops on a pole and small trees"),
    "spread_m": Bound(0.01, 10.0, "m", "single onion leaves to rambling pumpkins"),
    "canopy_base_m": Bound(0.0, 10.0, "m", "leaves on the ground to a trained crown"),
    "root_depth_m": Bound(0.03, 5.0, "m", "cress to lucerne and asparagus"),
    "root_depth_max_m": Bound(0.05, 12.0, "m", "cress to old lucerne"),
    "root_spread_m": Bound(0.03, 15.0, "m", "radish to rambling gourds"),
    "leaf_area_index": Bound(0.1, 12.0, "m² per m²", "a thin stand to the densest canopy measured"),
    "extinction": Bound(0.2, 1.2, "1", "upright blades to flat leaves"),
    "in_row_m": Bound(0.005, 6.0, "m", "broadcast cress to small trees"),
    "between_rows_m": Bound(0.02, 8.0, "m", "broadcast salads to small trees"),
    "clump_spacing_m": Bound(0.02, 4.0, "m", "cress to squash hills"),
    "clump_plants": Bound(1.0, 60.0, "plants", "one plant to a pinch of chives"),
    "half_weight_per_m2": Bound(0.01, 5000.0, "per m²", "rambling squash to cress"),
    "sowing_depth_m": Bound(0.0, 0.5, "m", "seed that needs light to deep bulbs"),
    "germination_min_c": Bound(-5.0, 45.0, "°C", "seed sprouts in thawing soil at the lowest"),
    "germination_best_c": Bound(-5.0, 45.0, "°C", "between thawing and scorched soil"),
    "germination_max_c": Bound(0.0, 50.0, "°C", "seed dies in hotter soil"),
    "germination_share": Bound(0.01, 1.0, "of 1", "a share, not per cent"),
    "seeds_per_gram": Bound(0.01, 200_000.0, "per g", "the largest beans to dust-fine seed"),
    "seed_life_y": Bound(0.02, 50.0, "years", "a week to a long-lived weed"),
    "grown_at_c": Bound(0.0, 40.0, "°C", "crops grow between frost and scorching heat"),
    "base_temperature_c": Bound(-5.0, 25.0, "°C", "winter cereals to tropical crops"),
    "top_temperature_c": Bound(5.0, 50.0, "°C", "cool-season to desert crops"),
    "nursery_d": Bound(0.0, 730.0, "days", "nothing is raised longer than two years"),
    "stage_initial_d": Bound(0.0, 400.0, "days", _DAYS),
    "stage_development_d": Bound(0.0, 400.0, "days", _DAYS),
    "stage_middle_d": Bound(0.0, 400.0, "days", _DAYS),
    "stage_late_d": Bound(0.0, 400.0, "days", _DAYS),
    "harvest_from_sowing_d": Bound(1.0, 1500.0, "days", "sprouting cress to asparagus crowns"),
    "harvest_from_planting_d": Bound(1.0, 1500.0, "days", "grown plants to asparagus crowns"),
    "harvest_length_d": Bound(0.0, 400.0, "days", "a day to all the year"),
    "frost_kill_c": Bound(-60.0, 12.0, "°C", "boreal shrubs to tropical herbs"),
    "light_good": Bound(0.01, 1.0, "of 1", "a share, not per cent"),
    "light_least": Bound(0.0, 1.0, "of 1", "a share, not per cent"),
    "depletion_fraction": Bound(0.05, 0.95, "of 1", "FAO-56 Table 22 gives 0.15 to 0.7"),
    "kc_initial": Bound(0.05, 1.6, "1", "FAO-56 Table 12 gives 0.15 to 1.25"),
    "kc_middle": Bound(0.05, 1.6, "1", "FAO-56 Table 12 gives up to 1.25"),
    "kc_end": Bound(0.05, 1.6, "1", "FAO-56 Table 12 gives up to 1.25"),
    "yield_kg_m2": Bound(0.0, 60.0, "kg/m²", "heated glasshouse tomatoes bear the most"),
    "yield_kg_plant": Bound(0.0, 500.0, "kg", "show pumpkins bear the most"),
    "rotation_y": Bound(0.0, 50.0, "years", "none to the longest-lived resting spores"),
}
