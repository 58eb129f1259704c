"""Nothing that the words room makes of a garden stays untranslated: it is said in a made-up language."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.tin import Age, AgeWarning, SeedLot
from gardencanvas.files import garden_from_bytes
from gardencanvas.fit import check
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Finding, Kind, Remedy, Verdict
from gardencanvas.measures.jobs import jobs
from gardencanvas.measures.nursery import nursery_weeks
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.planner.gaps.answers import Miss, Why
from gardencanvas.planner.gaps.open_ground import gaps
from gardencanvas.planner.remedies import remedies
from gardencanvas.resources_folder import resources
from gardencanvas.words import gaps as gap_words
from gardencanvas.words import in_time, place_found, seeds, succession, tending, tin, watering, weather
from gardencanvas.words.findings import SENTENCES, reason
from gardencanvas.words.jobs import JobWords, jobs_table, kind_word
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure
from gardencanvas.words.remedies import REMEDIES, remedy_text
from gardencanvas.words.sources import origin
from gardencanvas.words.why import WHY
from tests.garden.makers import garden, row
from tests.planner.gaps.askers import ask_place, day, surveyed
from tests.planner.gardens import GARDENS, LAYOUT, troubles
from tests.words.pseudo import names_in, narrow, spoken_wide

KNOWN, METRIC = catalogue(), Measure()
NONE = np.array([0], dtype=np.int32)


@pytest.fixture(scope="module")
def demo():
    return garden_from_bytes((resources() / "demo" / "demo.gardencanvas").read_bytes(), "demo")


@pytest.fixture(scope="module")
def names(demo):
    return names_in(demo, KNOWN)


@pytest.fixture(autouse=True)
def _in_the_wide_language():
    with spoken_wide():
        yield


def test_the_wide_language_finds_what_is_not_translated():
    assert narrow(say("{who} is pale.", who="Leek")) == ["Leek"]
    assert narrow(say("{who} is pale.", who="Leek"), ["Leek"]) == []
    assert narrow("Leek is pale.", ["Leek"]) == ["is", "pale"]


def test_findings_of_the_demo(demo, names):
    report = check(demo)
    assert len(report.findings) > 20
    for finding in report.findings:
        assert narrow(reason(finding, demo, report.layout, KNOWN, METRIC), names) == [], finding.code


MINE = (in_time, place_found, tending, watering, weather)
DAYS = [
    "closes",
    "harvest_last",
    "out",
    "in_bed",
    "on",
    "until",
    "exposed",
    "last_frost",
    "ready",
    "warm_from",
    "killing_frost",
]
SIZES = [
    "soil_m",
    "needed_m",
    "height_m",
    "cover_m",
    "usual_m",
    "distance_m",
    "root_depth_m",
    "reach_m",
    "arm_m",
    "risk_after",
    "ripens",
    "hardier_c",
    "least_c",
]
COUNTS = {"days": 12, "days_cold": -4, "days_warm": 3, "earlier": 9, "on_it": 30, "room": 12, "families": 2}
NUMBERS = dict.fromkeys(DAYS, date(2027, 7, 1)) | dict.fromkeys(SIZES, 0.25) | COUNTS
VARIANTS = (
    {"stations": 3, "of": 12, "support": "net", "cover": "fleece", "kind": "sown"},
    {"stations": 12, "of": 12, "support": "none", "cover": "mesh", "kind": "set", "ripens": 0.0},
    {
        "stations": 1,
        "of": 2,
        "support": "cane",
        "cover": "cloche",
        "kind": "set",
        "days": -3,
        "days_cold": -9,
    },
)


@pytest.mark.parametrize("code", [c for c, say_it in SENTENCES.items() if say_it.__module__ in
                                  {m.__name__ for m in MINE}])  # fmt: skip
@pytest.mark.parametrize("others", [(), ("b",), ("b", "c")])
def test_every_form_of_a_sentence(code, others):
    if not others and code in {"out in time", "too late", "in turns", "unlike water", "thirsty together"}:
        others = ("b",)
    value = garden(row("a", "leek"), row("b", "onion"), row("c", "carrot"))
    for more in VARIANTS:
        if code in {"no support", "support full"} and more["support"] == "none":
            continue
        finding = Finding(
            "x", Kind.TIMING, Verdict.STRAINS, ("a", *others), day(5, 1), day(6, 1), code, NUMBERS | more,
            "common-practice", (0.0, 0.0), NONE,
        )  # fmt: skip
        said = reason(finding, value, "l1", KNOWN, METRIC)
        assert narrow(said, ["Leek", "Onion", "Carrot"]) == []


@pytest.mark.parametrize("code", list(Code))
def test_reasons(code):
    assert narrow(WHY[code.value](None, METRIC)) == []


def test_remedies_that_the_planner_finds():
    told = set()
    for name in ("two brassicas", "late lettuce", "clumps", "ring of beans"):
        value = GARDENS[name]()
        checker, found = troubles(value)
        for finding in found[:2]:
            for remedy in remedies(value, LAYOUT, finding, checker):
                told.add(remedy.code)
                said = remedy_text(remedy, finding, value, LAYOUT, KNOWN, METRIC)
                assert narrow(said, names_in(value, KNOWN)) == []
    assert len(told) >= 4


REMEDY_NUMBERS = {
    "distance_m": 0.06, "other": "b", "dx_m": 0.1, "dy_m": 0.1, "count": 2, "on": date(2027, 6, 1),
    "fewer": 2, "harvest_lost_d": 9, "harvest_d": 40, "early_d": 8, "size": 0.93, "spacing_m": 0.3,
    "per_station": 3, "lines": 2, "variety": "x", "supports": 2, "height_m": 1.8,
}  # fmt: skip


@pytest.mark.parametrize("code", list(REMEDIES))
@pytest.mark.parametrize("planting", ["a", "b"])
def test_every_form_of_a_remedy(code, planting):
    value = garden(row("a", "leek"), row("b", "onion"))
    finding = Finding(
        "x", Kind.CROWDING, Verdict.STRAINS, ("a", "b"), day(5, 1), day(6, 1), "crowded", {},
        "common-practice", (0.0, 0.0), NONE,
    )  # fmt: skip
    for toward, side, field, kind, days in (
        ("away", "first", "spacing_m", "net", -3), ("into", "end", "across_m", "cane row", 3),
        ("poleward", "last", "across_m", "cane ring", 1), ("along", "begin", "across_m", "stake", 1),
        ("across", "first", "across_m", "trellis", 1),
    ):  # fmt: skip
        numbers = REMEDY_NUMBERS | {"planting": planting, "toward": toward, "side": side, "field": field,
                                    "kind": kind, "days": days}  # fmt: skip
        also = Remedy(code, numbers)
        said = remedy_text(Remedy(code, numbers, also), finding, value, "l1", KNOWN, METRIC)
        assert narrow(said, ["Leek", "Onion"]) == []


def test_jobs_and_their_table(demo, names):
    layout = demo.layouts[0]
    found = jobs(demo, layout.id)
    words = JobWords(demo, layout, KNOWN, METRIC)
    for job in found:
        assert narrow(words.title(job), names) == []
        entry = words.entry(job)
        assert narrow(f"{entry.title} {entry.text}", names) == []
        assert narrow(kind_word(job.kind)) == []
    assert narrow(" ".join(map(str, jobs_table(found, words, {})[0]))) == []


def test_seeds_and_nursery(demo, names):
    lines = seed_order(demo, demo.layouts[0].id)
    for line in lines:
        assert narrow(" ".join(seeds.shown_row(line, KNOWN)), names) == []
    assert narrow(" ".join(seeds.headings()) + seeds.sow_why()) == []
    weeks = nursery_weeks(jobs(demo, demo.layouts[0].id))
    told = [seeds.trays_told(weeks), seeds.trays_why(), *(seeds.tray_week(w) for w in weeks)]
    assert narrow(" ".join([*told, *map(str, seeds.trays_table(weeks)[0])])) == []


def test_gaps_and_proposals(demo, names):
    survey, _ = surveyed(demo, demo.layouts[0].id)
    found = gaps(survey, day(7, 1))
    assert found
    for gap in found[:10]:
        assert narrow(gap_words.gap_words(gap, survey.layout, KNOWN, METRIC), names) == []
    value = garden(row())
    survey, _ = surveyed(value)
    proposals = ask_place(value, (1.8, 0.9), day(6, 10)).proposals
    assert proposals
    for proposal in proposals:
        given = (proposal, value, survey.layout, KNOWN, METRIC)
        told = [
            gap_words.line(proposal, survey.layout, KNOWN, METRIC),
            gap_words.short(proposal, survey.layout, KNOWN, METRIC, day(6, 10)),
            gap_words.why_words(proposal, METRIC),
            gap_words.pattern_words(proposal.planting.pattern, METRIC),
            gap_words.family_words(proposal),
            *gap_words.cost_words(*given),
            *gap_words.neighbour_words(*given),
        ]
        assert narrow(" ".join(told), [*names, "Main bed", "bed-1"]) == []
    assert narrow(gap_words.unused_words(0.3) + gap_words.unused_words(None)) == []


@pytest.mark.parametrize(
    ("why", "numbers"),
    [
        (Why.SEASON, {"next": date(2028, 3, 1)}),
        (Why.SEASON, {}),
        (Why.LIGHT, {"light": 0.31, "least": 0.5}),
        (Why.ROOM, {"short_m": 0.12, "spacing_m": 0.5, "by": "p", "until": date(2027, 9, 1)}),
        (Why.ROOM, {"short_m": 0.12, "spacing_m": 0.5}),
        (Why.CLASH, {"code": "crowded", "kind": "crowding", "other": "p", "last": date(2027, 9, 1)}),
        (Why.CLASH, {"code": "too early", "kind": "frost"}),
        (Why.OUTSIDE, {}),
        (Why.NOTHING_LEFT, {}),
    ],
)
def test_misses(why, numbers):
    value = garden(row("p", "leek"))
    said = gap_words.miss_words(Miss(why, "carrot", None, numbers), value.layout("l1"), KNOWN, METRIC)
    assert narrow(said, ["Leek", "Carrot"]) == []


def test_lots_sources_and_successions():
    lot = SeedLot(id="a", crop="parsnip", year=2022, seeds=200, tested=0.8, tested_on=date(2026, 2, 3))
    parsnip = KNOWN.crop("parsnip")
    assert narrow(tin.lot_words(lot)) == []
    for code in Age:
        for life in (None, parsnip.in_row_m):
            assert narrow(tin.age_words(AgeWarning(code, 5, life, 0.3, None))) == []
    told = origin(KNOWN, parsnip.in_row_m)
    assert narrow(told.splitlines()[0] + told.splitlines()[2]) == []
    said = [succession.how_even(), succession.evenness_words(0.3), succession.weekly_words([1.0, 2.0])]
    said += [succession.weekly_words([]), succession.aside_words(1, 2), succession.aside_words(2, 1)]
    assert narrow(" ".join(said)) == []
