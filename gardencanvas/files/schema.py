"""The file format as a JSON Schema, made from the values themselves."""

import json
from typing import Any

from gardencanvas.garden.garden import FORMAT, Garden

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def schema() -> dict[str, Any]:
    """JSON Schema of a garden file of the present format.

    What a schema cannot say is checked when a file is opened: outlines that do not cross themselves, ids that
    are used once, ends after starts, numbers of stations, crops that are known.
    """
    made = Garden.model_json_schema()
    made["properties"]["format"] = {
        "const": FORMAT,
        "description": "Number of the file format. An older one is migrated, a newer one refused.",
    }
    made["required"] = ["format", *made.get("required", [])]
    return {
        "$schema": DIALECT,
        "title": f"Garden Canvas garden, format {FORMAT}",
        "description": (
            "UTF-8 JSON, suffix .gardencanvas, MIME type application/vnd.gardencanvas+json. "
            "Metres, days, degrees, kilograms, litres; x to the right and y down on the plan; "
            "dates as YYYY-MM-DD."
        ),
        **{key: value for key, value in made.items() if key not in {"title", "description"}},
    }


def schema_text() -> str:
    """The schema as it is shipped: indented, with sorted definitions."""
    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"
