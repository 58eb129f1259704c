"""Measures typed while something is drawn: ``3.6 x 1.2``, ``360 cm``, ``12' 6" x 4'``."""

import re

from gardencanvas.words.plain import Units

_FOOT, _INCH = 0.3048, 0.0254  # exact, by definition (international yard and pound agreement, 1959)
_IN_METRES = {
    "m": 1.0, "cm": 0.01, "mm": 0.001,
    "ft": _FOOT, "'": _FOOT, "′": _FOOT, "in": _INCH, '"': _INCH, "″": _INCH,
}  # fmt: skip
_ONE = re.compile(r"(\d+(?:[.,]\d*)?|[.,]\d+)\s*(mm|cm|m|ft|in|'|′|\"|″)?")
ALLOWED = set("0123456789.,xX×* mcftin'\"′″")


def length_m(text: str, units: Units) -> float | None:
    """One length in metres; a bare number means metres, or feet. None where it is not one."""
    rest, total, bare = text.strip(), 0.0, units == "imperial"
    if not rest:
        return None
    while rest:
        found = _ONE.match(rest)
        if found is None:
            return None
        unit = found[2] or ("ft" if bare else "m")
        total += float(found[1].replace(",", ".")) * _IN_METRES[unit]
        rest = rest[found.end() :].strip()
    return total if 0 < total <= 1000 else None


def sides_m(text: str, units: Units) -> tuple[float | None, float | None]:
    """Width and height on the plan in metres; None for what is not typed yet."""
    parts = re.split(r"[xX×*]", text, maxsplit=1)
    second = length_m(parts[1], units) if len(parts) > 1 else None
    return length_m(parts[0], units), second
