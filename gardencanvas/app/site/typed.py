"""Numbers and days as people type them into a table. Knows no widget."""

import re
from typing import Literal

from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.language import say
from gardencanvas.words.plain import MONTHS, month_name, short_month

_LONGEST = 40  # characters
_NUMBER = re.compile(r"[+-]?(\d{1,5}([.,]\d*)?|[.,]\d+)", re.ASCII)
_MONTH_LENGTHS = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_ISO = re.compile(r"(?:\d{4}-)?(\d{1,2})-(\d{1,2})", re.ASCII)
_POINTS = re.compile(r"(\d{1,2})\s*\.\s*(\d{1,2})\s*\.?(?:\s*\d{2,4})?", re.ASCII)
_DAY_WORD = re.compile(r"([0-9]{1,2})\.?\s*([^\W\d_]{3,})\.?(?:\s*[0-9]{4})?")
_WORD_DAY = re.compile(r"([^\W\d_]{3,})\.?\s*([0-9]{1,2})(?:\s*,?\s*[0-9]{4})?")
_SLASHED = re.compile(r"\d{1,2}\s*/\s*\d{1,2}.*", re.ASCII)
NEVER = frozenset({"none", "no frost", "never"})

Fault = Literal["unreadable", "day or month", "no such day"]


class BadDay(ValueError):  # noqa: N818 - said of the day
    """What was typed is no day of the year; ``fault`` says why."""

    def __init__(self, fault: Fault) -> None:
        super().__init__(fault)
        self.fault = fault


def number(text: str) -> float:
    """A number with a decimal point or comma; raises ``ValueError`` for anything else."""
    written = text.strip().replace("−", "-").replace("–", "-")
    if len(written) > _LONGEST or not _NUMBER.fullmatch(written):
        raise ValueError("not a number")
    return float(written.replace(",", "."))


def day_of_year(text: str) -> DayOfYear | None:
    """A day from ``12 May``, ``May 12``, ``12.5.`` or ``2024-05-12``; None for ``none``: no frost that year.

    Raises
    ------
    BadDay
        If it cannot be read, if numbers with a stroke leave open which one is the month, or if there is no
        such day.
    """
    written = text.strip().lower()
    if len(written) > _LONGEST:
        raise BadDay("unreadable")
    if written in NEVER or written == say("no frost").lower():
        return None
    if _SLASHED.fullmatch(written):
        raise BadDay("day or month")
    if match := _ISO.fullmatch(written):
        return _existing(int(match[1]), int(match[2]))
    if match := _POINTS.fullmatch(written):
        return _existing(int(match[2]), int(match[1]))
    if match := _DAY_WORD.fullmatch(written):
        return _existing(_month(match[2]), int(match[1]))
    if match := _WORD_DAY.fullmatch(written):
        return _existing(_month(match[1]), int(match[2]))
    raise BadDay("unreadable")


def _month(word: str) -> int:
    for month, english in enumerate(MONTHS, start=1):
        names = (english, month_name(month), short_month(month).rstrip("."))
        if any(name.lower().startswith(word) for name in names) or (word == "sept" and month == 9):
            return month
    raise BadDay("unreadable")


def _existing(month: int, day: int) -> DayOfYear:
    if not (1 <= month <= 12 and 1 <= day <= _MONTH_LENGTHS[month - 1]):
        raise BadDay("no such day")
    return DayOfYear(month=month, day=min(day, 28) if month == 2 else day)
