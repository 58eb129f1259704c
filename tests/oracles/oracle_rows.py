"""Expected values from outside the engine: the rows of ``data/oracles.csv`` by their id.

Each row names its source; ``value_origin`` says whether the value is printed there or was computed
independently from the source's formula.
"""

import csv
import re
from functools import cache
from pathlib import Path

DATA = Path(__file__).parent / "data"
_NUMBER = re.compile(r"[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")


@cache
def rows() -> dict[str, dict[str, str]]:
    """All rows by id."""
    with (DATA / "oracles.csv").open(encoding="utf-8", newline="") as file:
        return {row["id"]: row for row in csv.DictReader(file)}


def expected(row_id: str) -> float | tuple[float, ...]:
    """The expected number of a row, or its numbers in order where it holds several."""
    text = rows()[row_id]["expected"].split("(no exception)")[0]
    numbers = tuple(float(n) for n in _NUMBER.findall(text))
    return numbers[0] if len(numbers) == 1 else numbers


def tolerance(row_id: str) -> float:
    """The first number of a row's tolerance; 0 for exact rows."""
    found = _NUMBER.search(rows()[row_id]["tolerance"])
    return float(found.group()) if found else 0.0
