"""Measures typed while something is drawn: ``3.6 x 1.2``, ``360 cm``, ``12' 6" x 4'``."""

import re

from gardencanvas.words.plain import Units

_FOOT, _INCH = 0.3048, 0.0254  # exact, by definition (international yard and pound agreement, 1959)
_METRIC = {"m": 1.0, "cm": 0.01, "mm": 0.001}
_NUMBER = r"(\d+(?:[.,]\d*)?|[.,]\d+)"
_BARE = re.compile(_NUMBER)
_IN_METRES = re.compile(_NUMBER + r"\s*(mm|cm|m)")
_IN_INCHES = re.compile(_NUMBER + r"\s*(?:in|\"|″)")
_IN_FEET = re.compile(_NUMBER + r"\s*(?:ft|'|′)\s*(?:" + _NUMBER + r"\s*(?:in|\"|″)?)?")
ALLOWED = set("0123456789.,xX×* mcftin'\"′″")
_MOST_M = 1000.0
_LEAST_CM = 10.0  # our own reading: a bare 32 is centimetres, a bare 3.2 metres


def length_m(text: str, units: Units) -> float | None:
    """One length in metres; a bare number means metres, or feet. None where it is not one."""
    text = text.strip()
    if _BARE.fullmatch(text):
        metres = _number(text) * (_FOOT if units == "imperial" else 1.0)
    elif found := _IN_METRES.fullmatch(text):
        metres = _number(found[1]) * _METRIC[found[2]]
    elif found := _IN_INCHES.fullmatch(text):
        metres = _number(found[1]) * _INCH
    elif found := _IN_FEET.fullmatch(text):
        metres = _number(found[1]) * _FOOT + (_number(found[2]) if found[2] else 0.0) * _INCH
    else:
        return None
    return metres if 0 < metres <= _MOST_M else None


def small_m(text: str, units: Units) -> float | None:
    """One length in metres as one types it of a pattern: a bare number of 10 or more means centimetres.

    With inches and feet a bare number means inches.
    """
    text = text.strip()
    if _BARE.fullmatch(text):
        number = _number(text)
        if units == "imperial":
            return number * _INCH if 0 < number * _INCH <= _MOST_M else None
        if number >= _LEAST_CM:
            return number / 100
    return length_m(text, units)


def _number(text: str) -> float:
    return float(text.replace(",", "."))


def sides_m(text: str, units: Units) -> tuple[float | None, float | None]:
    """Width and height on the plan in metres; None for what is not typed yet."""
    parts = re.split(r"[xX×*]", text, maxsplit=1)
    second = length_m(parts[1], units) if len(parts) > 1 else None
    return length_m(parts[0], units), second
