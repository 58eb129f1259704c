"""Measures in words: estimates look like estimates, and what is not known says so."""

import csv
import io
from dataclasses import replace

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.measures.codes import KINDS, THROUGH_UNITS, Code, Through
from gardencanvas.measures.comparison import compare
from gardencanvas.measures.csv_writing import csv_text
from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.words.comparing import NOT_KNOWN, changed, explained, label, outcome, shown
from gardencanvas.words.comparing_csv import comparison_csv
from gardencanvas.words.plain import THIN, Measure
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout

METRIC, IMPERIAL = Measure(), Measure("imperial")


@pytest.mark.parametrize("code", [*Code, *Through])
def test_every_measure_has_a_label_and_an_explanation(code):
    assert label(code)
    assert explained(code).endswith(".")


def test_labels_differ():
    assert len({label(c) for c in (*Code, *Through)}) == len(Code) + len(Through)


@pytest.mark.parametrize("unit", sorted({k.unit for k in KINDS.values()} | set(THROUGH_UNITS.values())))
def test_not_known_is_never_a_number(unit):
    assert shown(UNKNOWN, unit, METRIC) == NOT_KNOWN
    assert changed(UNKNOWN, unit, IMPERIAL) == NOT_KNOWN
    assert shown(Estimate(0.0), unit, METRIC).startswith("0")


@pytest.mark.parametrize(
    ("estimate", "unit", "told"),
    [
        (Estimate(12.34, 8.1, 16.7), "kg", f"≈ 12{THIN}kg (8–17)"),
        (Estimate(1.234, 0.93, 1.71), "ratio", "≈ 1.2 (0.9–1.7)"),
        (Estimate(1.634, 1.23, 2.11, doubtful=True), "ratio", "≈ 1.6 (1.2–2.1, doubtful)"),
        (Estimate(0.456, 0.31, 0.61), "share", f"≈ 46{THIN}% (31–61)"),
        (Estimate(1234.0, 850.0, 1690.0), "litres", f"≈ 1,200{THIN}l (800–1,700)"),
        (Estimate(3.0), "weeks", f"3{THIN}weeks"),
        (Estimate(1.0), "weeks", f"1{THIN}week"),
        (Estimate(-51.0), "days", f"−51{THIN}days"),
        (Estimate(0.0, 0.0, 0.0), "kg", f"0{THIN}kg"),
        (Estimate(12.5), "price", "12.50"),
    ],
)
def test_numbers_are_told_as_finely_as_they_are_known(estimate, unit, told):
    assert shown(estimate, unit, METRIC) == told


def test_a_difference_bears_its_sign():
    assert changed(Estimate(3.0, -1.2, 7.4), "kg", METRIC).startswith("≈ +3")
    assert changed(Estimate(3.0, -1.2, 7.4), "kg", METRIC).endswith("(−1 to 7)")
    assert changed(Estimate(-3.0, -7.4, 1.2), "kg", METRIC).startswith("≈ −3")
    assert changed(Estimate(2.0), "weeks", METRIC) == f"+2{THIN}weeks"
    assert changed(Estimate(-0.02), "share", METRIC) == f"−2{THIN}points"
    assert changed(Estimate(0.004), "share", METRIC) == f"+0.4{THIN}points"


def test_the_growers_units():
    """1 lb is 0.45359237 kg, 1 US gallon 3.785411784 l."""
    assert shown(Estimate(0.45359237 * 20), "kg", IMPERIAL) == f"20{THIN}lb"
    assert shown(Estimate(3.785411784 * 7), "litres", IMPERIAL) == f"7{THIN}gal"


def test_csv_keeps_to_its_rules_and_runs_no_formula():
    """RFC 4180: lines end with CR LF, quotes are doubled; OWASP: no cell begins a formula."""
    text = csv_text([["=1+1", 'a "b"', "c,d", -1.5, None], ["@x", "+y", "-z", 0, "\ttab"]])
    assert text.split("\r\n")[0] == '\'=1+1,"a ""b""","c,d",-1.5,'
    assert list(csv.reader(io.StringIO(text, newline="")))[1] == ["'@x", "'+y", "'-z", "0", "'\ttab"]


def _named(name):
    one, two = filled("a", "leek"), filled("b", "calendula", x=20.0)
    beds = (ground_of(one).model_copy(update={"name": name}), ground_of(two, "bed-2"))
    return garden_of(layout("l1", beds, one, two), layout("l2", beds, one))


def test_the_table_as_csv_holds_every_measure_and_week():
    made = _named("=HYPERLINK(0)")
    text = comparison_csv(compare(made, "l1", "l2"), made, catalogue())
    rows = list(csv.reader(io.StringIO(text, newline="")))
    head = next(k for k, row in enumerate(rows) if row and row[0] == "part")
    table = [
        dict(zip(rows[head], row, strict=True)) for row in rows[head + 1 :] if len(row) == len(rows[head])
    ]
    whole = {row["measure"]: row for row in table if row["part"] == "whole"}
    assert set(whole) >= {label(c) for c in (Code.HARVEST, Code.LER, Code.WATER)}
    assert whole[label(Code.SEED_COST)]["first"] == NOT_KNOWN
    flower = [row for row in table if row["part"] == "crop: Calendula"]
    assert {row["first"] for row in flower if row["measure"] == label(Code.HARVEST)} == {NOT_KNOWN}
    assert any(row["part"] == "bed: =HYPERLINK(0)" for row in table)  # harmless behind its word
    weeks = [row for row in rows if len(row) == 8 and row[1] == label(Through.WATER)]
    assert len(weeks) == 2 * 53


def test_a_layouts_name_cannot_be_a_formula():
    made = _named("Bed")
    changed_name = made.layouts[0].model_copy(update={"name": "=cmd"})
    made = made.model_copy(update={"layouts": (changed_name, made.layouts[1])})
    text = comparison_csv(compare(made, "l1", "l2"), made, catalogue())
    assert "first layout,'=cmd\r\n" in text
    assert "\r\n=cmd" not in text


def test_the_outcome_in_words():
    row = compare(made := _named("Bed"), "l1", "l2").of(Code.GROUND_DAYS)
    assert made.layouts[0].id == "l1"
    assert outcome(row, "First", "Second") == "better in First"
    assert "within uncertainty" in outcome(replace(row, exceeds_uncertainty=False), "First", "Second")
    assert outcome(replace(row, better="neither"), "First", "Second") == "more in First"
    assert outcome(replace(row, difference=Estimate(0.0)), "First", "Second") == "alike"
    assert outcome(replace(row, difference=UNKNOWN), "First", "Second") == NOT_KNOWN


def test_the_winner_is_told_only_beyond_the_uncertainty():
    made = _named("Bed")
    row = compare(made, "l1", "l2").of(Code.GROUND_DAYS)
    assert row.winner == "a"
    assert replace(row, exceeds_uncertainty=False).winner is None
    assert replace(row, better="neither").winner is None
    assert replace(row, better="less").winner == "b"
