"""The journal of one window: the garden as it is being worked on, whole, replaced every second or so.

A line of JSON says what it is (which file, which file content it began from, when, and a digest of the rest);
the rest is the garden in the file format. It is put in place by renaming, so there is always a whole one.
"""

import json
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from gardencanvas.files.errors import FileRefused
from gardencanvas.files.reading import MAX_BYTES, garden_from_bytes
from gardencanvas.files.stamps import digest
from gardencanvas.files.writing import write_whole
from gardencanvas.garden.garden import Garden

SUFFIX = ".journal"
_KIND = 1
_LONGEST_LINE = 64 * 1024


@dataclass(frozen=True, slots=True)
class Head:
    """What a journal says of itself; ``base`` is the digest of the file that was opened or last saved."""

    path: Path | None
    name: str
    base: str | None
    written: datetime


def write_journal(journal: Path, head: Head, garden: bytes) -> None:
    """Put a garden in the place of the one in the journal; raises ``CannotWrite``."""
    line = {
        "journal": _KIND,
        "path": None if head.path is None else str(head.path),
        "name": head.name,
        "base": head.base,
        "written": head.written.astimezone(UTC).isoformat(),
        "digest": digest(garden),
    }
    write_whole(journal, json.dumps(line).encode() + b"\n" + garden)


def read_head(journal: Path) -> Head:
    """What a journal says of itself.

    Raises
    ------
    FileRefused
        If it is none.
    """
    try:
        with journal.open("rb") as file:
            line = file.readline(_LONGEST_LINE)
    except OSError as error:
        raise FileRefused(
            "{file} cannot be read: {why}.", file=journal.name, why=error.strerror or error
        ) from error
    return _head(_line(line, journal.name), journal.name)


def read_journal(journal: Path) -> Garden:
    """The garden in a journal.

    Raises
    ------
    FileRefused
        If it is not whole or not sound.
    """
    try:
        if journal.stat().st_size > MAX_BYTES + _LONGEST_LINE:
            raise FileRefused("{file} is too large for a garden.", file=journal.name)
        first, _, garden = journal.read_bytes().partition(b"\n")
    except OSError as error:
        raise FileRefused(
            "{file} cannot be read: {why}.", file=journal.name, why=error.strerror or error
        ) from error
    said = _line(first, journal.name)
    if said.get("digest") != digest(garden):
        raise FileRefused("{file} is damaged: it does not hold what was written to it.", file=journal.name)
    return garden_from_bytes(garden, journal.name)


def _line(line: bytes, name: str) -> dict[str, Any]:
    try:
        said = json.loads(line)
    except (ValueError, RecursionError) as error:
        raise FileRefused("{name} is not a journal.", name=name) from error
    if not isinstance(said, dict) or said.get("journal") != _KIND:
        raise FileRefused("{name} is not a journal that this version can read.", name=name)
    return said


def _head(said: dict[str, Any], name: str) -> Head:
    path, base, title, written = (said.get(key) for key in ("path", "base", "name", "written"))
    try:
        when = datetime.fromisoformat(written) if isinstance(written, str) else None
    except ValueError as error:
        raise FileRefused("{name} is damaged: {written!r} is no time.", name=name, written=written) from error
    if when is None or when.tzinfo is None or not isinstance(title, str):
        raise FileRefused("{name} is damaged: it does not say when it was written.", name=name)
    return Head(
        path=Path(path) if isinstance(path, str) else None,
        name=title,
        base=base if isinstance(base, str) else None,
        written=when,
    )
