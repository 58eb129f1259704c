"""Writes a garden to its file on a thread, and keeps what was and what is now there as versions."""

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QWidget

from gardencanvas.app.meanwhile import meanwhile
from gardencanvas.files import SUFFIX, CannotWrite, FileRefused, Stamp, garden_to_bytes, write_whole
from gardencanvas.files.keeping.versions import keep_version
from gardencanvas.files.reading import read_stamped
from gardencanvas.garden.garden import Garden
from gardencanvas.words.refusals import why_refused


@dataclass(frozen=True, slots=True)
class Saved:
    """The file as it is now, and why no version of it could be kept, if so."""

    stamp: Stamp
    warning: str = ""


def write_garden(window: QWidget, garden: Garden, path: Path) -> Saved:
    """Write the garden to a file, however long its disk takes; raises ``CannotWrite``."""
    text = window.tr("Saving “{0}”. Your work is kept on this computer meanwhile.").format(path.name)
    return meanwhile(window, text, lambda: _write(garden, path))


def _write(garden: Garden, path: Path) -> Saved:
    data = garden_to_bytes(garden)
    warning = _keep_what_is_there(path)
    stamp = write_whole(path, data)
    try:
        keep_version(path, data, datetime.now(UTC))
    except CannotWrite as error:
        warning = why_refused(error)
    return Saved(stamp, warning)


def _keep_what_is_there(path: Path) -> str:
    """Keep what is written over, for another program may have put it there; why it could not be kept."""
    if not path.exists():
        return ""
    try:
        data, stamp = read_stamped(path)
        keep_version(path, data, datetime.fromtimestamp(stamp.changed_ns / 1e9, UTC))
    except (CannotWrite, FileRefused) as error:
        return why_refused(error)
    return ""


def beside(path: Path, word: str, when: datetime | None = None) -> Path:
    """A free name beside a file, such as “plan (mine 2027-03-01 1203).gardencanvas”."""
    when = (when or datetime.now()).astimezone()
    stem = path.name.removesuffix(SUFFIX)[:120]
    fresh = path.with_name(f"{stem} ({word} {when:%Y-%m-%d %H%M}){SUFFIX}")
    number = 2
    while fresh.exists():
        fresh = path.with_name(f"{stem} ({word} {when:%Y-%m-%d %H%M} {number}){SUFFIX}")
        number += 1
    return fresh
