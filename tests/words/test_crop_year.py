"""The year in words names each lane once, with its days."""

from gardencanvas.garden.site import DayOfYear
from gardencanvas.season.crop_year import ALWAYS, Task, Way, YearSpan
from gardencanvas.words.crop_year import lanes, tasks_words, year_words

MARCH = YearSpan(DayOfYear(month=3, day=1), 31)
JULY = YearSpan(DayOfYear(month=7, day=1), 31)


def test_each_way_has_its_lanes():
    ways = (Way("raised", JULY, MARCH, ALWAYS), Way("sown", None))
    assert [[lane.name for lane in group] for group in lanes(ways)] == [
        ["Sow under glass", "Plant out", "Harvest"],
        ["Sow in place"],
    ]
    assert year_words(ways) == (
        "Sow under glass 1 March – 31 March; Plant out 1 July – 31 July; Harvest all year. "
        "Sow in place not at this site."
    )


def test_the_harvest_of_a_grown_perennial_comes_once():
    ways = (Way("set", MARCH, None, JULY, True), Way("raised", MARCH, MARCH, JULY, True))
    names = [lane.name for group in lanes(ways) for lane in group]
    assert names == ["Set", "Sow under glass", "Plant out", "Harvest, grown"]


def test_tasks():
    assert tasks_words((Task.SOW_UNDER_GLASS, Task.SOW)) == "sow under glass, or sow"
