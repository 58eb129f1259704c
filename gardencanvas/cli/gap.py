"""``gardencanvas gap``: what else fits at a place, ranked, with reasons."""

import argparse
import json
from datetime import date
from pathlib import Path
from typing import Any

from gardencanvas.cli.arguments import OK, a_date, chosen_layout
from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit.checker import Checker
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.value import Point
from gardencanvas.planner.gaps.answers import Answer, Proposal, Wishes
from gardencanvas.planner.gaps.asking import Question, by_place, finished
from gardencanvas.planner.gaps.survey import Surveyor
from gardencanvas.words import gaps as words
from gardencanvas.words.plain import Measure, day_year

MOST = 50


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the command to the parser."""
    one = commands.add_parser("gap", help="what else fits at a place, ranked; exit 0, 2 unreadable")
    one.add_argument("file", type=Path)
    one.add_argument("--at", required=True, type=_point, help="plan metres from the origin, such as 1.2,0.6")
    one.add_argument("--on", type=a_date, help="from this day on; else the middle of the season")
    one.add_argument("--layout", help="id or name; the first where none is named")
    one.add_argument("--most", type=_most, default=7, help="how many proposals")
    one.add_argument("--quick", action="store_true", help="only what is harvested within two months")
    one.add_argument("--no-raising", action="store_true", help="only what is sown in place or set")
    one.add_argument("--new-family", action="store_true", help="no family that grew there lately")
    one.add_argument("--json", action="store_true", help="as JSON")
    one.set_defaults(command=_gap)


def _point(text: str) -> Point:
    try:
        x, y = (float(part) for part in text.split(","))
    except ValueError as error:
        raise argparse.ArgumentTypeError(f"{text!r} is not a place such as 1.2,0.6") from error
    if not (abs(x) <= 1000.0 and abs(y) <= 1000.0):
        raise argparse.ArgumentTypeError(f"{text!r} lies outside the plan")
    return x, y


def _most(text: str) -> int:
    if not text.isdigit() or not 1 <= int(text) <= MOST:
        raise argparse.ArgumentTypeError(f"{text!r} is not a whole number from 1 to {MOST}")
    return int(text)


def _gap(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    crops = catalogue().with_own(garden.crops, garden.varieties)
    since = arguments.on or layout.middle
    wishes = Wishes(quick=arguments.quick, no_raising=arguments.no_raising, new_family=arguments.new_family)
    question = Question(since, wishes, most=arguments.most)
    survey = Surveyor(crops).survey(garden, layout.id)
    answer = finished(by_place(survey, Checker(crops), arguments.at, question))
    if arguments.json:
        told = answer_as_json(answer, garden, layout, crops, arguments.at, since)
        print(json.dumps(told, indent=1, ensure_ascii=False))
    else:
        _print_answer(answer, garden, layout, crops, since)
    return OK


def answer_as_json(
    answer: Answer, garden: Garden, layout: Layout, crops: Catalogue, at: Point, since: date
) -> dict[str, Any]:
    """The answer in the form that other programs read."""
    measure = Measure()
    return {
        "layout": layout.id,
        "at": list(at),
        "from": since.isoformat(),
        "proposals": [_proposal_as_json(p, garden, layout, crops) for p in answer.proposals],
        "misses": [
            {
                "why": m.why.value,
                "crop": m.crop,
                "variety": m.variety,
                "text": words.miss_words(m, layout, crops, measure),
            }
            for m in answer.misses
        ],
    }


def _proposal_as_json(p: Proposal, garden: Garden, layout: Layout, crops: Catalogue) -> dict[str, Any]:
    measure = Measure()
    kg = p.harvest_kg
    return {
        "crop": p.crop,
        "variety": p.variety,
        "bed": p.bed,
        "plants": p.plants,
        "pattern": p.planting.pattern.model_dump(mode="json"),
        "start": p.planting.start.model_dump(mode="json"),
        "sow_on": p.sow_on.isoformat(),
        "harvest": {"from": p.harvest_first.isoformat(), "to": p.harvest_last.isoformat()},
        "harvest_kg": None if kg is None else {"low": kg[0], "mid": kg[1], "high": kg[2]},
        "ripens": p.ripens,
        "days_to_spare": p.spare_d,
        "days_to_spare_late": p.spare_late_d,
        "light": round(p.light, 3),
        "verdict": p.verdict.word,
        "costs": list(words.cost_words(p, garden, layout, crops, measure)),
        "neighbours": [
            {
                "id": e.planting,
                "verdict": {"before": e.before.word, "after": e.after.word},
                "light": {"before": round(e.light_before, 3), "after": round(e.light_after, 3)},
            }
            for e in p.effects
        ],
        "score": round(p.score, 4),
        "why": words.why_words(p, measure),
    }


def _print_answer(answer: Answer, garden: Garden, layout: Layout, crops: Catalogue, since: date) -> None:
    measure = Measure()
    print(f"{garden.name} — {layout.name}, from {day_year(since)}")
    for number, p in enumerate(answer.proposals, 1):
        print(f"  {number}. {words.title(p, crops)}: {words.pattern_words(p.planting.pattern, measure)}")
        print(f"     {words.start_words(p, since)}; {words.harvest_words(p, measure)}")
        print(f"     {words.odds_words(p)}")
        print(f"     {words.why_words(p, measure)}")
        for text in words.cost_words(p, garden, layout, crops, measure):
            print(f"     strains: {text}")
        for text in words.neighbour_words(p, garden, layout, crops, measure):
            print(f"     {text}")
    if not answer.proposals:
        print("  Nothing fits. Nearest to it:")
        for miss in answer.misses:
            print(f"  {words.miss_words(miss, layout, crops, measure)}")
