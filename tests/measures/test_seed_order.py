"""What to order: counts by hand, binomial counts by scipy, the tin's share, what is not known."""

from datetime import date

import pytest
from scipy.stats import binom

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.tin import SeedLot
from gardencanvas.garden.pattern import Rows
from gardencanvas.measures.csv_writing import csv_text
from gardencanvas.measures.emergence import FIELD, GLASS
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.words.seeds import headings, seeds_table, shown_row
from tests.garden.makers import garden, row


def rows(count):
    return Rows(length_m=0.2 * count, spacing_m=0.2, row_spacing_m=0.3)


def line_of(value, lots=(), crop="leek", variety=None):
    return next(x for x in seed_order(value, "l1", lots) if (x.crop, x.variety) == (crop, variety))


def test_raised_seeds_are_counted_by_the_binomial_with_what_comes_up_under_glass():
    crop = catalogue().resolve("leek", None)
    line = line_of(garden(row("p", "leek", pattern=rows(20), kind="raised", on=date(2027, 5, 20))))
    share = round(crop.germination_share.mid * GLASS, 4)
    assert (line.plants, line.bought) == (20, 0)
    assert binom.sf(19, line.sow, share) >= 0.95 > binom.sf(19, line.sow - 1, share)
    assert line.sow_g == pytest.approx(line.sow / crop.seeds_per_gram.mid)


def test_a_lot_s_own_test_of_the_last_year_counts_and_its_seeds_are_not_ordered_again():
    value = garden(row("p", "leek", pattern=rows(20), on=date(2027, 4, 1)))
    lot = SeedLot(
        id="lot", crop="leek", seeds=15, year=2026, tested=0.9, tested_on=date(2027, 2, 1), price=3.0
    )
    line = line_of(value, [lot])
    assert line.tested
    assert line.germination == 0.9
    assert binom.sf(19, line.sow, round(0.9 * FIELD, 4)) >= 0.95
    assert line.order == line.sow - 15
    assert line.cost == pytest.approx(3.0 / 15 * line.order)


def test_an_old_lot_is_not_relied_on():
    crop = catalogue().resolve("leek", None)
    old = SeedLot(id="lot", crop="leek", seeds=500, year=2027 - int(crop.seed_life_y.high) - 2)
    line = line_of(garden(row("p", "leek", on=date(2027, 4, 1))), [old])
    assert line.in_tin == 0
    assert line.order == line.sow


def test_clumps_and_shares_of_varieties_are_counted_apart():
    value = garden(
        row("p", "leek", pattern=rows(10), per_station=4, varieties=("a", "b"), shares=(70, 30)),
        varieties=tuple(
            {"id": v, "crop": "leek", "name": v} for v in ("a", "b")
        ),
    )  # fmt: skip
    a, b = (line_of(value, crop="leek", variety=v) for v in ("a", "b"))
    assert (a.clumps, b.clumps) == (7, 3)
    assert (a.plants, b.plants) == (28, 12)


def test_sets_are_bought_and_need_no_seed():
    line = line_of(
        garden(row("p", "garlic", pattern=rows(12), kind="set", on=date(2027, 3, 1))), crop="garlic"
    )
    assert (line.bought, line.sow, line.order, line.cost) == (12, None, None, None)
    assert shown_row(line, catalogue())[5] == "–"


def test_what_is_not_known_is_said_so_and_never_zero():
    value = garden(row("p", "leek"))
    line = line_of(value)
    assert line.cost is None
    assert "not known" in shown_row(line, catalogue())
    table = seeds_table([line], catalogue())
    assert table[0] == headings()
    assert csv_text(table).split("\r\n")[1].startswith("Leek,")


def test_dead_seed_covers_nothing_and_its_test_is_not_reckoned_with():
    dead = SeedLot(id="lot", crop="leek", seeds=500, year=2026, tested=0.0, tested_on=date(2027, 3, 1))
    line = line_of(garden(row("p", "leek", pattern=rows(20), on=date(2027, 4, 1))), [dead])
    assert line.in_tin == 0
    assert line.order == line.sow > 20
    assert not line.tested


def test_what_was_planted_years_ago_is_not_ordered_again():
    old = garden(row("p", "strawberry", kind="set", on=date(2024, 8, 20)))
    assert seed_order(old, "l1") == ()
