"""Seed lots in words: how much, from when, and whether to trust them."""

from math import ceil

from gardencanvas.crops.model import Quantity
from gardencanvas.crops.tin import Age, AgeWarning, SeedLot
from gardencanvas.words.language import figure, say, say_many
from gardencanvas.words.plain import THIN, day_year, percent


def lot_words(lot: SeedLot) -> str:
    """``200 seeds of 2024, 82 % sprouted on 3 February 2026``."""
    amounts = []
    if lot.seeds is not None:
        amounts.append(say_many("{n} seed", "{n} seeds", round(lot.seeds)))
    if lot.grams is not None:
        amounts.append(f"{figure(lot.grams)}{THIN}g")
    said = say("{amounts} of {year}", amounts=", ".join(amounts), year=lot.year)
    if lot.tested is not None and lot.tested_on is not None:
        share, on = percent(lot.tested), day_year(lot.tested_on)
        said = say("{lot}, {share} sprouted on {day}", lot=said, share=share, day=on)
    elif lot.tested is not None:
        said = say("{lot}, {share} sprouted", lot=said, share=percent(lot.tested))
    return f"{said} – {lot.note}" if lot.note else said


def age_words(warning: AgeWarning) -> str:
    """What is wrong with a lot, and what to do about it: two sentences."""
    if warning.code is Age.POOR and warning.tested is not None:
        return f"{_poor(warning.tested, warning.usual)} {say('Sow thicker, or order anew.')}"
    if warning.life_y is None:
        old = say_many("This seed is {n} year old.", "This seed is {n} years old.", warning.age_y)
    else:
        old = say_many(
            "This seed is {n} year old; it keeps {years}.",
            "This seed is {n} years old; it keeps {years}.",
            warning.age_y,
            years=_years(warning.life_y),
        )
    if warning.code is Age.PAST:
        return f"{old} {say('Test it on damp paper, or order anew.')}"
    return f"{old} {say('Test some on damp paper before you rely on it.')}"


def _poor(tested: float, usual: Quantity | None) -> str:
    if usual is None:
        return say("Only {share} sprouted.", share=percent(tested))
    return say("Only {share} sprouted; {usual} is usual.", share=percent(tested), usual=percent(usual.low))


def _years(life: Quantity) -> str:
    low, high = figure(life.low), figure(life.high)
    if low == high:
        return say_many("about {years} year", "about {years} years", ceil(life.high), years=low)
    return say("{low} to {high} years", low=low, high=high)
