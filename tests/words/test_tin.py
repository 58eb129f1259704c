"""Seed lots in words carry their numbers."""

from datetime import date

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.tin import SeedLot, age_warning
from gardencanvas.words.plain import THIN
from gardencanvas.words.tin import age_words, lot_words


def lot(**changes):
    return SeedLot(**{"id": "a", "crop": "parsnip", "year": 2022, "seeds": 200, **changes})


def test_a_lot():
    told = lot_words(lot(grams=2.5, tested=0.82, tested_on=date(2026, 2, 3), note="from a friend"))
    assert told.replace(THIN, " ") == (
        "200 seeds, 2.5 g of 2022, 82 % sprouted on 3 February 2026 – from a friend"
    )


def test_old_parsnip_seed():
    """Iowa State after Knott: parsnip seed keeps one year; so it is past its life after five."""
    said = age_words(age_warning(lot(), catalogue().crop("parsnip"), date(2027, 3, 1)))
    assert said == "This seed is 5 years old; it keeps about 1 year. Test it on damp paper, or order anew."


def test_a_poor_test_speaks_before_the_age():
    tested = lot(year=2026, tested=0.2, tested_on=date(2027, 2, 1))
    said = age_words(age_warning(tested, catalogue().crop("parsnip"), date(2027, 3, 1)))
    assert said.replace(THIN, " ").startswith("Only 20 % sprouted")
