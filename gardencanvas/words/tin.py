"""Seed lots in words: how much, from when, and whether to trust them."""

from gardencanvas.crops.model import Quantity
from gardencanvas.crops.tin import Age, AgeWarning, SeedLot
from gardencanvas.words.plain import THIN, counted, day_year, percent


def lot_words(lot: SeedLot) -> str:
    """``200 seeds of 2024, 82 % sprouted on 3 February 2026``."""
    amounts = []
    if lot.seeds is not None:
        amounts.append(counted(round(lot.seeds), "seed", "seeds"))
    if lot.grams is not None:
        amounts.append(f"{lot.grams:g}{THIN}g")
    said = f"{', '.join(amounts)} of {lot.year}"
    if lot.tested is not None:
        said += f", {percent(lot.tested)} sprouted"
        said += f" on {day_year(lot.tested_on)}" if lot.tested_on is not None else ""
    return f"{said} – {lot.note}" if lot.note else said


def age_words(warning: AgeWarning) -> str:
    """What is wrong with a lot, and what to do about it: two sentences."""
    if warning.code is Age.POOR and warning.tested is not None:
        usual = "" if warning.usual is None else f"; {percent(warning.usual.low)} is usual"
        return f"Only {percent(warning.tested)} sprouted{usual}. Sow thicker, or order anew."
    age = counted(warning.age_y, "year", "years")
    keeps = "" if warning.life_y is None else f"; it keeps {_years(warning.life_y)}"
    if warning.code is Age.PAST:
        return f"This seed is {age} old{keeps}. Test it on damp paper, or order anew."
    return f"This seed is {age} old{keeps}. Test some on damp paper before you rely on it."


def _years(life: Quantity) -> str:
    low, high = f"{life.low:g}", f"{life.high:g}"
    if low == high:
        return f"about {low} {'year' if life.high == 1.0 else 'years'}"
    return f"{low} to {high} years"
