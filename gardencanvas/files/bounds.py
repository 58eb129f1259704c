"""What a file may ask for, counted before anything in it is expanded.

The limits lie far above any real garden, and low enough that a file made to do harm is refused in seconds and
within some hundred megabytes.
"""

from typing import Any

from gardencanvas.garden.value import MAX_LAYOUT_STATIONS

MAX_PARTS = 3_000_000  # lists and objects; twenty layouts of 20,000 plants each, single, hold fewer
MAX_DRIFT_PLANTS = MAX_LAYOUT_STATIONS  # places of a drift are found by throwing: dear, and at once


def too_many_parts(data: bytes) -> bool:
    """Whether the text holds more lists and objects than a garden can; strings are counted along."""
    return data.count(b"[") + data.count(b"{") > MAX_PARTS


def drift_plants(document: dict[str, Any]) -> int:
    """How many plants all drifts of a document ask for; what is not a sound document asks for none."""
    return sum(
        _asked(planting) for layout in _list(document, "layouts") for planting in _list(layout, "plantings")
    )


def _asked(planting: Any) -> int:
    pattern = planting.get("pattern") if isinstance(planting, dict) else None
    if not isinstance(pattern, dict) or pattern.get("kind") != "drift":
        return 0
    plants = pattern.get("plants")
    return plants if isinstance(plants, int) and plants > 0 else 0


def _list(within: Any, field: str) -> list[Any]:
    found = within.get(field) if isinstance(within, dict) else None
    return found if isinstance(found, list) else []
