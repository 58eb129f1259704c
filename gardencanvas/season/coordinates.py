"""Latitudes and longitudes as people write them."""

import re
from typing import Literal

Axis = Literal["latitude", "longitude"]
Fault = Literal["empty", "unreadable", "out of range", "sign and letter", "other axis"]

LIMIT_DEG: dict[Axis, float] = {"latitude": 90.0, "longitude": 180.0}
_LETTERS: dict[Axis, str] = {"latitude": "NS", "longitude": "EW"}
_LONGEST = 40  # characters

# Degrees, or degrees and minutes, or degrees, minutes and seconds; only the last of them with a fraction.
_NUMBERS = re.compile(
    r"""(?P<sign>[+-])?\s*
    (?P<degrees>\d{1,3}(?:[.,]\d*)?|[.,]\d+)\s*°?
    (?:\s*(?P<minutes>\d{1,2}(?:[.,]\d*)?)\s*['’])?
    (?:\s*(?P<seconds>\d{1,2}(?:[.,]\d*)?)\s*(?:"|''|’’))?""",
    re.VERBOSE | re.ASCII,
)
_SAME = str.maketrans({"−": "-", "–": "-", "º": "°", "′": "'", "´": "'", "″": '"', "”": '"', "\u00a0": " "})


class BadCoordinate(ValueError):  # noqa: N818 - said of the coordinate
    """What was written is no such coordinate; ``fault`` says why."""

    def __init__(self, fault: Fault, axis: Axis) -> None:
        super().__init__(f"{axis}: {fault}")
        self.fault, self.axis = fault, axis


def degrees(text: str, axis: Axis) -> float:
    """Decimal degrees, north and east positive, from what was written.

    ``51.5``, ``51,5 N``, ``S 33°52′``, ``-33.87`` and ``33° 52' 10" S`` are all read.

    Raises
    ------
    BadCoordinate
        If it cannot be read so, has both a minus and a letter, has the other axis's letter, or is beyond
        90° of latitude or 180° of longitude.
    """
    written = text.strip().translate(_SAME) if len(text) <= _LONGEST else "?"
    if not written:
        raise BadCoordinate("empty", axis)
    letter = ""
    for at in (0, -1):
        if not letter and written and written[at].upper() in "NSEW":
            letter = written[at].upper()
            written = (written[1:] if at == 0 else written[:-1]).strip()
    match = _NUMBERS.fullmatch(written)
    if match is None:
        raise BadCoordinate("unreadable", axis)
    if letter and letter not in _LETTERS[axis]:
        raise BadCoordinate("other axis", axis)
    if letter and match["sign"]:
        raise BadCoordinate("sign and letter", axis)
    size = _size(match)
    if size is None:
        raise BadCoordinate("unreadable", axis)
    if size > LIMIT_DEG[axis]:
        raise BadCoordinate("out of range", axis)
    return -size if letter in {"S", "W"} or match["sign"] == "-" else size


def _size(match: re.Match[str]) -> float | None:
    """The written size in degrees; None if a part before the last has a fraction, or minutes reach 60."""
    parts = [match[name] for name in ("degrees", "minutes", "seconds")]
    if parts[1] is None and parts[2] is not None:
        return None
    given = [part.replace(",", ".") for part in parts if part is not None]
    if any("." in part for part in given[:-1]):
        return None
    values = [float(part) for part in given]
    if any(value >= 60.0 for value in values[1:]):
        return None
    return sum(value / 60.0**step for step, value in enumerate(values))


def written(value_deg: float, axis: Axis, decimals: int = 2) -> str:
    """A coordinate as it is shown: ``51.05° N``."""
    letter = _LETTERS[axis][value_deg < 0]
    return f"{abs(value_deg):.{decimals}f}° {letter}"
