"""``gardencanvas jobs`` and ``gardencanvas seeds``: the year's work, and what to order for it, as files."""

import argparse
from datetime import UTC, datetime
from pathlib import Path

from gardencanvas.cli.arguments import OK, chosen_layout
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.errors import CatalogueError
from gardencanvas.crops.own import load_own
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import FileRefused, open_garden, write_whole
from gardencanvas.measures.calendar_writing import calendar_text
from gardencanvas.measures.csv_writing import csv_text
from gardencanvas.measures.jobs import jobs
from gardencanvas.measures.nursery import nursery_weeks
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.words.jobs import JobWords, jobs_table
from gardencanvas.words.plain import Measure, counted
from gardencanvas.words.seeds import seeds_table, trays_table

MOST_ALARM_H = 24 * 28  # four weeks


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the commands to the parser."""
    one = commands.add_parser("jobs", help="the jobs of the season as a calendar or table")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .ics or .csv")
    one.add_argument("--layout", help="id or name; the first where none is named")
    one.add_argument("--alarm", type=_hours, metavar="HOURS", help="let the calendar remind so long before")
    one.set_defaults(command=_jobs)

    one = commands.add_parser("seeds", help="what to order and raise, as a table")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .csv")
    one.add_argument("--layout", help="id or name; the first where none is named")
    one.add_argument("--trays", type=Path, metavar="TRAYS.csv", help="write also the nursery, week by week")
    one.set_defaults(command=_seeds)


def _hours(text: str) -> int:
    if not text.isdecimal() or int(text) > MOST_ALARM_H:
        raise argparse.ArgumentTypeError(f"{text!r} is not a whole number of hours from 0 to {MOST_ALARM_H}")
    return int(text)


def _jobs(arguments: argparse.Namespace) -> int:
    kind = arguments.out.suffix.lower()
    if kind not in {".ics", ".csv"}:
        raise FileRefused(f"{arguments.out.name} must end in .ics or .csv.")
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    known = catalogue().with_own(garden.crops, garden.varieties)
    found = jobs(garden, layout.id, known=known, lots=_lots())
    words = JobWords(garden, layout, known, Measure())
    done = {d.job: d.on for d in layout.done}
    if kind == ".csv":
        text = csv_text(jobs_table(found, words, done))
    else:
        entries = [words.entry(job, frozenset(done)) for job in found]
        name = f"{garden.name}, {layout.name} {layout.year}"
        text = calendar_text(name, entries, datetime.now(UTC), arguments.alarm)
    write_whole(arguments.out, text.encode("utf-8"))
    print(f"{arguments.out}: {counted(len(found), 'job', 'jobs')}.")
    return OK


def _seeds(arguments: argparse.Namespace) -> int:
    for path in filter(None, (arguments.out, arguments.trays)):
        if path.suffix.lower() != ".csv":
            raise FileRefused(f"{path.name} must end in .csv.")
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    known = catalogue().with_own(garden.crops, garden.varieties)
    lots = _lots()
    lines = seed_order(garden, layout.id, lots, known)
    write_whole(arguments.out, csv_text(seeds_table(lines, known)).encode("utf-8"))
    print(f"{arguments.out}: {counted(len(lines), 'crop or variety', 'crops and varieties')}.")
    if arguments.trays is not None:
        weeks = nursery_weeks(jobs(garden, layout.id, known=known, lots=lots))
        write_whole(arguments.trays, csv_text(trays_table(weeks)).encode("utf-8"))
        print(f"{arguments.trays}: {counted(len(weeks), 'week', 'weeks')}.")
    return OK


def _lots() -> tuple[SeedLot, ...]:
    """The grower's own seed lots."""
    try:
        return load_own().lots
    except CatalogueError as error:
        raise FileRefused(f"Your own library cannot be read: {error}") from error
