"""Earlier states of a garden file, kept whenever it is saved: many of today, few of long ago.

Each is a whole garden file, named by its time, in the garden's folder.
"""

import contextlib
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.keeping.homes import home_of, make_home
from gardencanvas.files.stamps import digest
from gardencanvas.files.writing import SUFFIX, write_whole

MOST_BYTES = 50_000_000  # of one garden
LAST = 10  # the last saves stay, however close together

# Rotation of generations as is common practice for backups: up to an age, one in each stretch of time.
_DAY = timedelta(days=1)
_STRETCHES = (
    (_DAY, timedelta(hours=1)),
    (30 * _DAY, _DAY),
    (366 * _DAY, 7 * _DAY),
    (timedelta.max, 30 * _DAY),
)
_NAME = "%Y%m%dT%H%M%S_%fZ"


@dataclass(frozen=True, slots=True)
class Version:
    """One earlier state: its file, when it was saved (UTC), and its size in bytes."""

    file: Path
    when: datetime
    size: int


def versions(path: Path, work: Path | None = None) -> list[Version]:
    """The kept versions of a garden file, newest first."""
    return _in(home_of(path, work) / "versions")


def keep_version(path: Path, data: bytes, when: datetime, work: Path | None = None) -> Version | None:
    """Keep what a garden file holds; None if the newest version holds just that already.

    Raises
    ------
    CannotWrite
        If it cannot be kept; the older ones are as they were.
    """
    home = home_of(path, work)
    folder = home / "versions"
    make_home(home, path)
    known = _in(folder)
    try:
        folder.mkdir(mode=0o700, exist_ok=True)
        if known and known[0].size == len(data) and digest(known[0].file.read_bytes()) == digest(data):
            return None
    except OSError as error:
        raise CannotWrite(
            "{folder} cannot be used: {why}.", folder=folder, why=error.strerror or error
        ) from error
    when = when.astimezone(UTC)
    while (file := folder / (when.strftime(_NAME) + SUFFIX)).exists():
        when += timedelta(microseconds=1)
    write_whole(file, data)
    new = Version(file, when, len(data))
    _thin([new, *known], when)
    return new


def thinned(times: Iterable[datetime], now: datetime) -> set[datetime]:
    """Which of the times stay: the last ten, and of each stretch of time before them the newest."""
    newest_first = sorted(times, reverse=True)
    kept = set(newest_first[:LAST])
    seen: set[tuple[timedelta, int]] = set()
    for when in newest_first:
        age = max(now - when, timedelta(0))
        stretch = next(length for limit, length in _STRETCHES if age <= limit)
        place = (stretch, int((when - datetime.min.replace(tzinfo=UTC)) / stretch))
        if place not in seen:
            seen.add(place)
            kept.add(when)
    return kept


def _thin(known: list[Version], now: datetime) -> None:
    kept = thinned([v.when for v in known], now)
    total = 0
    for version in sorted(known, key=lambda v: v.when, reverse=True):
        total += version.size
        if version.when not in kept or (total > MOST_BYTES and version is not known[0]):
            with contextlib.suppress(OSError):  # it is tried again at the next save
                version.file.unlink()


def _in(folder: Path) -> list[Version]:
    found = []
    with contextlib.suppress(OSError):  # a folder that is not there holds none
        for file in folder.iterdir():
            when = _when(file)
            if when is not None:
                found.append(Version(file, when, file.stat().st_size))
    return sorted(found, key=lambda v: v.when, reverse=True)


def _when(file: Path) -> datetime | None:
    try:
        return datetime.strptime(file.name.removesuffix(SUFFIX), _NAME).replace(tzinfo=UTC)
    except ValueError:
        return None
