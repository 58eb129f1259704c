"""Lengths as a tape shows them: centimetres to the half, or inches to the quarter."""

from collections.abc import Sequence

from gardencanvas.words.language import figure, say
from gardencanvas.words.plain import THIN, Measure

_INCH_M = 0.0254
_QUARTERS = ("", "¼", "½", "¾")
_FOOT_IN = 12
_FEET_FROM_IN = 36.0  # below a yard a tape is read in inches


def taped(measure: Measure, metres: float) -> str:
    """A length to be paced off: ``35 cm``, ``1.07 m``, ``17¾ in``, ``4′ 2½″``."""
    number, unit = _parts(measure, metres)
    return f"{number}{THIN}{unit}" if unit else number


def taped_list(measure: Measure, lengths: Sequence[float]) -> str:
    """Several lengths, the unit once where all share it: ``25, 55 and 85 cm``."""
    parts = [_parts(measure, each) for each in lengths]
    units = {unit for _, unit in parts}
    if len(units) > 1 or units == {""}:
        said = [f"{number}{THIN}{unit}".rstrip(THIN) for number, unit in parts]
        return _and(said)
    unit = units.pop()
    return f"{_and([number for number, _ in parts])}{THIN}{unit}"


def _and(words: Sequence[str]) -> str:
    return (
        words[0] if len(words) == 1 else say("{some} and {last}", some=", ".join(words[:-1]), last=words[-1])
    )


def _parts(measure: Measure, metres: float) -> tuple[str, str]:
    """Number and unit; feet and inches have none."""
    if measure.units != "imperial":
        centimetres = round(metres * 200) / 2
        return (figure(centimetres), "cm") if centimetres < 100 else (figure(centimetres / 100, ".2f"), "m")
    quarters = round(metres / _INCH_M * 4)
    if quarters / 4 < _FEET_FROM_IN:
        return _inches(quarters), "in"
    feet, rest = divmod(quarters, 4 * _FOOT_IN)
    return f"{feet}′{THIN}{_inches(rest)}″", ""


def _inches(quarters: int) -> str:
    whole, part = divmod(quarters, 4)
    return f"{whole or (0 if not part else '')}{_QUARTERS[part]}"
