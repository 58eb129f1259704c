"""Dated entries as a calendar file, RFC 5545: all-day events that update when they are imported again."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

_PRODUCT = "-//Garden Canvas//Garden Canvas//EN"
_OCTETS = 75  # RFC 5545, 3.1: a line longer than this is folded
_EPOCH = datetime(2020, 1, 1, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Entry:
    """One event of whole days, ``last`` included; ``uid`` must stay the same from export to export."""

    uid: str
    first: date
    last: date
    title: str
    text: str = ""
    done: bool = False  # no reminder any more


def calendar_text(name: str, entries: Iterable[Entry], stamp: datetime, alarm_h: int | None = None) -> str:
    """Entries as the text of a calendar file, lines ending with CR LF.

    Parameters
    ----------
    stamp
        When it is written, with a time zone. It is every event's DTSTAMP and, in minutes, its SEQUENCE, so
        that a calendar takes a later export for the newer one.
    alarm_h
        Hours before the first day at which a calendar may remind; None for no reminder. A reminder counts
        from midnight of wherever the calendar is: days have no time zone.

    Raises
    ------
    ValueError
        If ``stamp`` has no time zone.
    """
    if stamp.tzinfo is None:
        raise ValueError("the stamp needs a time zone")
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", f"PRODID:{_PRODUCT}", "CALSCALE:GREGORIAN", "METHOD:PUBLISH"]
    lines.append(f"X-WR-CALNAME:{_escaped(name)}")
    for entry in entries:
        lines += _event(entry, stamp, alarm_h)
    lines.append("END:VCALENDAR")
    return "".join(part + "\r\n" for line in lines for part in _folded(line))


def _event(entry: Entry, stamp: datetime, alarm_h: int | None) -> Iterator[str]:
    written = stamp.astimezone(UTC)
    yield "BEGIN:VEVENT"
    yield f"UID:{_escaped(entry.uid)}"
    yield f"DTSTAMP:{written:%Y%m%dT%H%M%SZ}"
    yield f"SEQUENCE:{max(int((written - _EPOCH).total_seconds() // 60), 0)}"
    yield f"DTSTART;VALUE=DATE:{entry.first:%Y%m%d}"
    yield f"DTEND;VALUE=DATE:{entry.last + timedelta(days=1):%Y%m%d}"  # the first day after it
    yield f"SUMMARY:{_escaped(entry.title)}"
    if entry.text:
        yield f"DESCRIPTION:{_escaped(entry.text)}"
    yield "STATUS:CONFIRMED"
    yield "TRANSP:TRANSPARENT"  # a job in the garden does not make one busy all day
    if alarm_h is not None and not entry.done:
        yield "BEGIN:VALARM"
        yield "ACTION:DISPLAY"
        yield f"DESCRIPTION:{_escaped(entry.title)}"
        yield f"TRIGGER:-PT{alarm_h}H"
        yield "END:VALARM"
    yield "END:VEVENT"


def _escaped(text: str) -> str:
    """TEXT of RFC 5545, 3.3.11; control characters, which it does not allow, become spaces."""
    plain = "".join(c if c == "\n" or c >= " " else " " for c in text.replace("\r\n", "\n"))
    return plain.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")


def _folded(line: str) -> Iterator[str]:
    """A line in pieces of at most 75 octets, no character parted; each but the first begins with a space."""
    piece, room = "", _OCTETS
    for character in line:
        octets = len(character.encode())
        if octets > room:
            yield piece
            piece, room = " ", _OCTETS - 1
        piece += character
        room -= octets
    yield piece
