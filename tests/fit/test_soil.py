"""Soil: roots against the depth of beds, and plants on paths."""

from datetime import date

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import Checker, check
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.ground import Path
from tests.fit.makers import rows, spot
from tests.garden.makers import bed, garden

CROPS = catalogue()


def outside(planting, depth=None, beds=None, paths=()):
    ground = beds or (bed(length=4.0, width=2.0, soil_depth_m=depth),)
    made = garden(planting, beds=ground)
    return list(check(edits.add(made, "l1", list(paths)) if paths else made).findings)


def carrots():
    return rows("p", "carrot", 3.0, 3, 0.05, 0.25, date(2027, 4, 15), "sown")


def test_carrots_want_half_a_metre_and_say_so_in_less():
    """Effective depth of carrot 0.5–1.0 m, lettuce 0.3–0.5 m: FAO-56 table 22."""
    (finding,) = outside(carrots(), 0.3)
    assert (finding.code, finding.verdict) == ("shallow soil", Verdict.STRAINS)
    assert finding.numbers["soil_m"] == 0.3
    assert finding.numbers["needed_m"] == pytest.approx(0.5)
    assert outside(carrots(), 0.5) == []


def test_lettuce_does_with_the_soil_of_a_raised_bed():
    lettuce = rows("p", "lettuce", 3.0, 3, 0.25, 0.3, date(2027, 5, 1))
    assert outside(lettuce, 0.3) == []
    assert [f.code for f in outside(lettuce, 0.15)] == ["shallow soil"]


def test_soil_of_unknown_depth_says_nothing():
    assert outside(carrots(), None) == []


def test_of_beds_that_overlap_the_one_drawn_last_counts():
    shallow = bed("low", length=4.0, width=2.0, soil_depth_m=0.2)
    deep = bed("deep", length=4.0, width=2.0, soil_depth_m=0.8)
    assert [f.code for f in outside(carrots(), beds=(deep, shallow))] == ["shallow soil"]
    assert outside(carrots(), beds=(shallow, deep)) == []


def test_only_the_stations_in_the_shallow_bed_are_named():
    shallow = bed("low", 0.0, 0.0, 1.0, 2.0, soil_depth_m=0.2)
    deep = bed("deep", 1.0, 0.0, 3.0, 2.0, soil_depth_m=0.8)
    points = [(0.5, 0.5), (1.5, 0.5), (2.5, 0.5)]
    (finding,) = outside(spot("p", "parsnip", points, date(2027, 4, 1), "sown"), beds=(shallow, deep))
    assert finding.stations.tolist() == [0]


def path(y, width=0.4):
    return Path(id="path", name="path", line=((-1.0, y), (6.0, y)), width_m=width)


def test_plants_on_a_path_strain_and_those_on_its_edge_do_not():
    points = [(0.5, 0.3), (1.0, 0.48), (1.5, 0.52), (2.0, 1.0)]
    (finding,) = outside(spot("p", "lettuce", points, date(2027, 5, 1)), paths=[path(0.3)])
    assert (finding.code, finding.verdict) == ("on path", Verdict.STRAINS)
    assert finding.stations.tolist() == [0]  # the path ends at 0.5; its outer 5 cm are its edge


def test_a_plant_on_a_path_outside_every_bed_is_told_once():
    (finding,) = outside(spot("p", "lettuce", [(5.0, 0.3)], date(2027, 5, 1)), paths=[path(0.3)])
    assert finding.code == "on path"


def test_a_path_or_bed_that_changes_is_seen_at_once():
    made = garden(carrots(), beds=(bed(length=4.0, width=2.0, soil_depth_m=0.8),))
    steps = [
        made,
        edits.add(made, "l1", [path(0.3)]),
        edits.change(made, "l1", "bed-1", soil_depth_m=0.2),
        edits.shift(edits.add(made, "l1", [path(0.3)]), "l1", ["path"], 0.0, 5.0),
        made,
    ]
    checker = Checker()
    said = []
    for step in steps:
        report = checker.update(step, "l1")
        assert report.same_as(check(step, "l1"))
        said.append({f.code for f in report.findings})
    assert said == [set(), {"on path"}, {"shallow soil"}, set(), set()]
