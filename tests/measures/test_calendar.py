"""The calendar file read by two independent parsers, folded, escaped, and imported twice without doubling."""

from datetime import UTC, date, datetime

import icalendar
import pytest
import vobject
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.measures.calendar_writing import Entry, calendar_text

NOON = datetime(2027, 1, 2, 12, 0, tzinfo=UTC)
LATER = datetime(2027, 2, 2, 12, 0, tzinfo=UTC)
TEXTS = st.text(st.characters(exclude_categories=["Cs", "Cc"]), max_size=120)


def entries():
    return [
        Entry(
            "a@x",
            date(2027, 3, 28),
            date(2027, 3, 28),
            "Sow 12 × Leek; Bed, “long”",
            "Every 15 cm.\n1.3 cm deep.",
        ),
        Entry("b@x", date(2027, 12, 31), date(2028, 1, 2), "Pick"),
    ]


def test_lines_end_with_cr_lf_and_none_is_longer_than_75_octets():
    text = calendar_text("Ä" * 90, entries(), NOON)
    assert text.endswith("END:VCALENDAR\r\n")
    assert "\n" not in text.replace("\r\n", "")
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))


@pytest.mark.parametrize("alarm", [None, 12])
def test_two_parsers_read_whole_days_stamps_and_texts(alarm):
    text = calendar_text("Work, 2027", entries(), NOON, alarm)
    calendar = icalendar.Calendar.from_ical(text)
    first, second = calendar.walk("VEVENT")
    assert first.decoded("DTSTART") == date(2027, 3, 28)
    assert first.decoded("DTEND") == date(2027, 3, 29)  # the day after: RFC 5545, 3.6.1
    assert second.decoded("DTEND") == date(2028, 1, 3)
    assert str(first["SUMMARY"]) == entries()[0].title
    assert str(first["DESCRIPTION"]) == entries()[0].text
    assert all(event.decoded("DTSTAMP") == NOON for event in (first, second))
    assert len(first.walk("VALARM")) == (alarm is not None)

    other = vobject.readOne(text)
    events = other.vevent_list
    assert [e.uid.value for e in events] == ["a@x", "b@x"]
    assert events[0].dtstart.value == date(2027, 3, 28)
    assert events[0].summary.value == entries()[0].title
    assert all(e.dtstamp.value == NOON for e in events)
    other.validate(raiseException=True)


@given(TEXTS, TEXTS)
@settings(max_examples=60)
def test_any_text_comes_back_as_it_was(title, detail):
    text = calendar_text("x", [Entry("u", date(2027, 1, 1), date(2027, 1, 1), title or "t", detail)], NOON)
    (event,) = icalendar.Calendar.from_ical(text).walk("VEVENT")
    assert str(event["SUMMARY"]) == (title or "t")
    assert str(event.get("DESCRIPTION", "")) == detail


def test_a_second_export_updates_the_first():
    """A calendar keeps one event to a UID, the one with the higher SEQUENCE (RFC 5545, 3.8.7.4)."""
    moved = [Entry("a@x", date(2027, 4, 4), date(2027, 4, 4), "Sow"), entries()[1]]
    kept = {}
    for text in (calendar_text("x", entries(), NOON), calendar_text("x", moved, LATER)):
        for event in icalendar.Calendar.from_ical(text).walk("VEVENT"):
            uid = str(event["UID"])
            if uid not in kept or event["SEQUENCE"] >= kept[uid]["SEQUENCE"]:
                kept[uid] = event
    assert set(kept) == {"a@x", "b@x"}
    assert kept["a@x"].decoded("DTSTART") == date(2027, 4, 4)


def test_a_stamp_without_a_time_zone_is_refused():
    with pytest.raises(ValueError, match="time zone"):
        calendar_text("x", [], datetime(2027, 1, 1))
