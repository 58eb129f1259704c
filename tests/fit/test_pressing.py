"""What presses on one planting, asked alone, against the whole report: the law is that both say the same."""

from datetime import date

import pytest

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.codes import Code
from gardencanvas.garden import edits
from tests.fit.makers import WIDE, rows
from tests.garden.makers import garden

ON = date(2027, 5, 1)
MIXED = garden(
    rows("cabbages", "cabbage", 3.0, 2, 0.45, 0.6, ON),
    rows("leeks", "leek", 3.0, 3, 0.15, 0.3, ON, y=0.1),
    rows("lettuce", "lettuce", 3.0, 1, 0.25, 0.3, date(2027, 6, 5), y=0.3),
    rows("onions", "onion", 3.0, 2, 0.1, 0.25, date(2027, 4, 1), "set", y=0.35),
    beds=WIDE,
)
PRESSING = (Code.CROWDED.value, Code.TOO_LATE.value, Code.OUT_IN_TIME.value, Code.IN_TURNS.value)


def said(findings, planting):
    return sorted(f.key() for f in findings if f.plantings[0] == planting and f.code in PRESSING)


@pytest.mark.parametrize("planting", ["cabbages", "leeks", "lettuce", "onions"])
def test_asked_alone_it_is_what_the_report_says(planting):
    checker, some = Checker(), MIXED
    found = 0
    for dx, dy in ((0.0, 0.0), (0.05, 0.02), (-0.3, 0.1), (0.0, 0.6)):
        some = edits.shift(some, some.layouts[0].id, [planting], dx, dy)
        alone = checker.pressed(some, some.layouts[0].id, planting)
        report = Checker().update(some, some.layouts[0].id)
        assert said(alone, planting) == said(report.findings, planting)
        assert checker.update(some, some.layouts[0].id).same_as(report)
        found += len(said(alone, planting))
    assert found
