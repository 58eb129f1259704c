"""Facts, company, comparisons and findings of the ground are said whole in a made-up language."""

import csv
import io
from datetime import date
from itertools import combinations

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.interactions import Effect, interactions
from gardencanvas.crops.model import Group, Habit, Harvest, Layer, Start
from gardencanvas.crops.sense import CLASSES
from gardencanvas.files import garden_from_bytes
from gardencanvas.files.differences import Difference, How, differences
from gardencanvas.fit import check
from gardencanvas.fit.cover_share import bed_cover
from gardencanvas.fit.mixing import bed_mixing
from gardencanvas.fit.report import Finding, FitReport, Kind, Verdict
from gardencanvas.garden.differing import Differs
from gardencanvas.measures.codes import KINDS, THROUGH_UNITS, Code, Through
from gardencanvas.measures.comparison import compare
from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.resources_folder import resources
from gardencanvas.season.crop_year import Task, crop_year
from gardencanvas.words import differing, named
from gardencanvas.words.bed_facts import cover_why, cover_words, mixing_why, mixing_words
from gardencanvas.words.company import company
from gardencanvas.words.comparing import changed, explained, label, outcome, shown
from gardencanvas.words.comparing_csv import comparison_csv
from gardencanvas.words.crop_facts import caution, hazard_words, sections
from gardencanvas.words.crop_year import lanes, tasks_words, year_words
from gardencanvas.words.differences import difference, in_words
from gardencanvas.words.findings import headline, reason
from gardencanvas.words.plain import Measure
from tests.garden.makers import garden, row
from tests.words.pseudo import names_in, narrow, spoken_wide

KNOWN, METRIC, IMPERIAL = catalogue(), Measure(), Measure("imperial")
GROUND = garden(row("a", "leek"), row("b", "onion"), row("c", "carrot"))
NAMES = names_in(GROUND, KNOWN)


@pytest.fixture(scope="module")
def demo():
    return garden_from_bytes((resources() / "demo" / "demo.gardencanvas").read_bytes(), "demo")


@pytest.fixture(autouse=True)
def _in_the_wide_language():
    with spoken_wide():
        yield


def finding(code, plantings=("a", "b"), verdict=Verdict.STRAINS, **numbers):
    return Finding(
        id=f"{code}:a", kind=Kind.CROWDING, verdict=verdict, plantings=plantings, first=date(2027, 6, 1),
        last=date(2027, 7, 9), code=code, numbers=numbers, source="common-practice", place=(0.0, 0.0),
        stations=np.array([0], dtype=np.int32),
    )  # fmt: skip


CROWDED = {"share": 0.4, "distance_m": 0.2, "usual_m": 0.3}
CLOSE = {"distance_m": 0.1, "minimum_m": 0.15, "usual_m": 0.2, "usual_across_m": 0.3, "density": 2.2}
LIGHT = {"light_left": 0.4, "light_needed": 0.6, "taken": 0.5}
ROOTS = {"share": 0.4, "depth_m": 0.3, "other_depth_m": 1.1, "depth_overlap": 0.4}
SMALLER = {"size_low": 0.5, "size_high": 0.6, "yield_low": 1.1, "yield_high": 1.2}
TRIED = [i for i in interactions() if i.counts]
GAIN = next(i for i in TRIED if i.effect is Effect.YIELD_GAIN and i.size is not None)
COST = next(i for i in TRIED if i.effect is Effect.YIELD_LOSS)
LIFE = next(i for i in TRIED if i.effect is Effect.FEWER_PESTS)
FOES = next(i for i in TRIED if i.effect is Effect.SHARED_DISEASE)
SAID = [
    finding("crowded", **CROWDED),
    finding("crowded", ("a", "b", "c"), **CROWDED),
    finding("crowded", left=0.3, **CROWDED),
    finding("crowded", ("a", "b", "c"), left=0.3, **CROWDED),
    finding("too close", ("a",), **CLOSE),
    finding("too close", ("a",), **CLOSE, **SMALLER),
    finding("smaller each", ("a",), density=1.4, **SMALLER),
    finding("fixtures", ("a",), light_least=0.3, **LIGHT),
    finding("shaded", light_least=0.5, **LIGHT),
    finding("shaded", ("a", "b", "c"), light_least=0.3, **LIGHT),
    finding("layered", families=2, **LIGHT),
    finding("layered", caught=0.8, **LIGHT),
    finding("same roots", **ROOTS),
    finding("roots apart", **ROOTS),
    finding("roots not known"),
    finding("same family", family="Apiaceae", why="stem eelworm, basal rot"),
    finding("same family", family="Apiaceae", foes=FOES.id),
    *(
        finding("trials", evidence=evidence, **which, **much)
        for evidence in ("several trials", "one trial", "common practice")
        for much in ({}, {"observations": 3, "papers": 1})
        for which in (
            {"gain": GAIN.id},
            {"gain": GAIN.id, "low": 1.0, "mid": 1.2, "high": 1.4},
            {"gain": GAIN.id, "low": 1.2, "mid": 1.2, "high": 1.2},
            {"cost": COST.id},
            {"cost": COST.id, "disputed": 1},
            {"life": LIFE.id, "foes": FOES.id},
            {"life": LIFE.id, "life_for": "a"},
        )
    ),
]


@pytest.mark.parametrize("each", SAID, ids=lambda f: f.code)
def test_findings(each):
    said = reason(each, GROUND, "l1", KNOWN, METRIC)
    assert narrow(said, NAMES) == []


@pytest.mark.parametrize("verdict", Verdict)
@pytest.mark.parametrize("plantings", [("a",), ("a", "b"), ("b", "a")])
def test_headlines(verdict, plantings):
    told = finding("roots not known", (*plantings, "c")[: max(2, len(plantings))], verdict)
    report = FitReport("l1", (date(2027, 1, 1), date(2027, 12, 31)), check(GROUND).plantings, (told,))
    for said in headline(report, "a", GROUND, KNOWN):
        assert narrow(said, NAMES) == []


def test_headlines_of_the_demo(demo):
    report, names = check(demo), names_in(demo, KNOWN)
    for planting in report.plantings:
        for said in headline(report, planting, demo, KNOWN):
            assert narrow(said, names) == []


@pytest.mark.parametrize("measure", [METRIC, IMPERIAL], ids=["metric", "imperial"])
def test_all_that_is_known_of_crops(measure):
    for crop in KNOWN.crops[::4]:
        grown = KNOWN.resolve(crop.id)
        for section in sections(grown, KNOWN, measure):
            said = [section.title, *(w for t in section.rows for w in (t.label, t.value, t.around))]
            assert narrow(" ".join(said)) == [], crop.id
        for hazard in grown.hazards:
            assert narrow(hazard_words(hazard)) == []
    assert narrow(caution()) == []


def test_company():
    for crop in KNOWN.crops:
        for each in company(crop, KNOWN, interactions()):
            assert narrow(f"{each.others} {each.said} {each.evidence}", NAMES) == [], crop.id


def test_a_crops_year(demo):
    for crop in KNOWN.crops[::8]:
        ways = crop_year(demo.site, KNOWN.resolve(crop.id), date(2027, 1, 1))
        assert narrow(year_words(ways)) == []
        assert all(narrow(lane.name) == [] for group in lanes(ways) for lane in group)
    for tasks in combinations(Task, 2):
        assert narrow(tasks_words(tasks)) == []


def test_what_differs(demo):
    layout = demo.layouts[0]
    fields = [(f, "") for f in type(demo).model_fields] + [
        (f, layout.name) for f in type(layout).model_fields
    ]
    for field, where in fields:
        for how in How:
            if field not in ("id", "schema"):
                told = difference(Difference(how, field, 2, where))
                assert narrow(told, [layout.name]) == [], (field, how)
    bare = demo.model_copy(update={"layouts": demo.layouts[:1], "fixtures": (), "note": "x"})
    assert narrow(in_words(differences(bare, demo), most=1), [each.name for each in demo.layouts]) == []
    assert narrow(in_words(())) == []


def test_what_differs_between_layouts():
    for how in Differs:
        assert narrow(differing.told([how], Verdict.STRAINS)) == []
        assert narrow(differing.summed([[how]])) == []
    assert narrow(differing.summed([])) == []


@pytest.mark.parametrize("code", [*Code, *Through])
@pytest.mark.parametrize("measure", [METRIC, IMPERIAL], ids=["metric", "imperial"])
def test_measures(code, measure):
    unit = KINDS[code].unit if code in set(Code) else THROUGH_UNITS[code]
    for estimate in (UNKNOWN, Estimate(1.0), Estimate(-3.0), Estimate(2.0, -1.0, 4.0, doubtful=True)):
        assert narrow(shown(estimate, unit, measure)) == []
        assert narrow(changed(estimate, unit, measure)) == []
    assert narrow(label(code)) == []
    assert narrow(explained(code)) == []


def test_a_comparison(demo):
    first, second = demo.layouts[0].id, demo.layouts[-1].id
    made = compare(demo, first, second)
    names = names_in(demo, KNOWN) + [each.name for each in demo.layouts]
    for measure in made.measures:
        assert narrow(outcome(measure, "", "")) == []
    for cells in csv.reader(io.StringIO(comparison_csv(made, demo, KNOWN), newline="")):
        assert narrow(" ".join(cells), names) == []


def test_beds(demo):
    layout = demo.layouts[0]
    for bed in layout.beds:
        assert narrow(mixing_words(bed_mixing(demo, layout, bed, KNOWN))) == []
        assert narrow(cover_words(bed_cover(demo, layout, bed, KNOWN))) == []
    assert narrow(mixing_why() + cover_why()) == []


def test_codes_of_the_trade():
    told = ((named.verdict, Verdict), (named.layer, Layer), (named.habit, Habit), (named.group, Group),
            (named.start, Start), (named.harvest, Harvest), (named.kind, Kind), (named.effect, Effect),
            (named.differs, Differs), (named.roots, CLASSES["rooting"]))  # fmt: skip
    said = [word(code) for word, codes in told for code in codes]
    said += [named.evidence(i.evidence) for i in interactions()]
    said += [named.topic(r.topic) for c in KNOWN.crops for r in c.remarks]
    said += [named.life(c.life) for c in KNOWN.crops]
    said += [named.fact(field, word) for field, words in CLASSES.items() for word in words]
    said += [named.frost_days(basis) for basis in ("known", "past years", "estimated", "none")]
    assert all(said)
    assert narrow(" ".join(said)) == []
