"""``gardencanvas jobs`` and ``gardencanvas seeds``: what they write, and how they end."""

import csv
import io
from datetime import date, timedelta

import icalendar
import pytest
import vobject

from gardencanvas.cli import run
from gardencanvas.files import open_garden, save_garden
from gardencanvas.garden.doing import mark_done
from gardencanvas.measures.jobs import jobs
from gardencanvas.resources_folder import resources
from tests.garden.makers import garden, row


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "a.gardencanvas"
    path.write_bytes((resources() / "demo" / "demo.gardencanvas").read_bytes())
    return path


def rows_of(path):
    return list(csv.DictReader(io.StringIO(path.read_bytes().decode("utf-8"), newline="")))


def test_the_calendar_has_every_job_on_its_day(file, tmp_path, capsys):
    out = tmp_path / "jobs.ics"
    assert run(["jobs", str(file), str(out)]) == 0
    value = open_garden(file)
    expected = jobs(value, "layout-1")
    events = icalendar.Calendar.from_ical(out.read_bytes()).walk("VEVENT")
    assert [(e.decoded("DTSTART"), e.decoded("DTEND")) for e in events] == [
        (j.on, j.on + timedelta(days=1)) for j in expected
    ]
    assert len({str(e["UID"]) for e in events}) == len(expected)
    other = vobject.readOne(out.read_bytes().decode("utf-8"))
    assert len(other.vevent_list) == len(expected)
    assert all(e.dtstamp.value for e in other.vevent_list)
    assert f"{len(expected)} jobs" in capsys.readouterr().out


def test_imported_twice_each_job_is_there_once(file, tmp_path):
    """A calendar keeps one event to a UID (RFC 5545, 3.8.4.7)."""
    kept = {}
    for name in ("first.ics", "second.ics"):
        assert run(["jobs", str(file), str(tmp_path / name)]) == 0
        for event in icalendar.Calendar.from_ical((tmp_path / name).read_bytes()).walk("VEVENT"):
            kept[str(event["UID"])] = event
    assert len(kept) == len(jobs(open_garden(file), "layout-1"))


def test_a_reminder_so_many_hours_before_but_not_of_what_is_done(tmp_path):
    value = garden(row("p", "leek", kind="raised", on=date(2027, 5, 20)))
    path, out = tmp_path / "b.gardencanvas", tmp_path / "jobs.ics"
    save_garden(mark_done(value, "l1", "p:raise", date(2027, 3, 1)), path)
    assert run(["jobs", str(path), str(out), "--alarm", "12"]) == 0
    for event in icalendar.Calendar.from_ical(out.read_bytes()).walk("VEVENT"):
        triggers = [a.decoded("TRIGGER") for a in event.walk("VALARM")]
        assert triggers == ([] if "p:raise" in str(event["UID"]) else [timedelta(hours=-12)])


def test_the_table_has_a_line_for_each_job(file, tmp_path):
    out = tmp_path / "jobs.csv"
    assert run(["jobs", str(file), str(out)]) == 0
    expected = jobs(open_garden(file), "layout-1")
    told = rows_of(out)
    assert [t["From"] for t in told] == [j.on.isoformat() for j in expected]
    for line in told:
        week = date.fromisocalendar(int(line["Week"][:4]), int(line["Week"][6:]), 1)
        assert week <= date.fromisoformat(line["From"]) < week + timedelta(days=7)


def test_the_seed_order_and_the_nursery_as_tables(file, tmp_path):
    out, trays = tmp_path / "seeds.csv", tmp_path / "trays.csv"
    assert run(["seeds", str(file), str(out), "--trays", str(trays)]) == 0
    plants = sum(int(t["Plants"]) for t in rows_of(out))
    value = open_garden(file)
    assert plants == sum(p.plants for p in value.layouts[0].plantings)
    assert max(int(t["Cells"]) for t in rows_of(trays)) > 0


def test_an_empty_layout_makes_files_without_entries(tmp_path):
    path = tmp_path / "b.gardencanvas"
    save_garden(garden(), path)
    assert run(["jobs", str(path), str(tmp_path / "j.ics")]) == 0
    assert icalendar.Calendar.from_ical((tmp_path / "j.ics").read_bytes()).walk("VEVENT") == []
    assert run(["seeds", str(path), str(tmp_path / "s.csv")]) == 0
    assert rows_of(tmp_path / "s.csv") == []


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["jobs", "{file}", "{there}/jobs.txt"], ".ics or .csv"),
        (["seeds", "{file}", "{there}/seeds.ods"], ".csv"),
        (["seeds", "{file}", "{there}/s.csv", "--trays", "{there}/t.ods"], ".csv"),
        (["jobs", "{file}", "{there}/no/jobs.csv"], "could not be written"),
        (["jobs", "{there}/none.gardencanvas", "{there}/jobs.csv"], "none.gardencanvas"),
        (["seeds", "{file}", "{there}/s.csv", "--layout", "Nowhere"], "no layout"),
    ],
)
def test_what_cannot_be_done_is_said_in_a_sentence_and_nothing_is_written(
    file, tmp_path, capsys, arguments, said
):
    before = set(tmp_path.iterdir())
    assert run([a.format(file=file, there=tmp_path) for a in arguments]) == 2
    told = capsys.readouterr().err
    assert said in told
    assert told.count("\n") == 1
    assert set(tmp_path.iterdir()) == before


@pytest.mark.parametrize("hours", ["-4", "x", "1000"])
def test_an_impossible_reminder_is_refused(file, tmp_path, capsys, hours):
    with pytest.raises(SystemExit) as stop:
        run(["jobs", str(file), str(tmp_path / "j.ics"), f"--alarm={hours}"])
    assert stop.value.code == 2
    assert "hours" in capsys.readouterr().err
