"""What windows that did not end in good order were working on."""

import os
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from gardencanvas.files.errors import FileRefused
from gardencanvas.files.keeping import journals, sittings
from gardencanvas.files.keeping.homes import file_of, remove_if_empty, work_folder
from gardencanvas.files.keeping.versions import keep_version
from gardencanvas.files.reading import open_garden
from gardencanvas.files.writing import garden_to_bytes
from gardencanvas.garden.garden import Garden


@dataclass(frozen=True, slots=True)
class LeftOver:
    """Work that no file holds: its journal, the file it belongs to (None: never saved), name and time."""

    journal: Path
    path: Path | None
    name: str
    written: datetime
    fault: str = ""  # what is wrong with the journal, if anything is


def left_over(work: Path | None = None) -> list[LeftOver]:
    """The work of dead sittings, newest first; sittings that left nothing behind are tidied away."""
    found = []
    for home in _homes(work or work_folder()):
        for sitting in sorted(home.glob("*" + sittings.SUFFIX)):
            name = sitting.stem
            if not (home / (name + journals.SUFFIX)).exists() and not sittings.is_alive(home, name):
                sittings.forget(home, name)  # it died with nothing unsaved
        found += [_described(j) for j in sorted(home.glob("*" + journals.SUFFIX)) if _is_left(j)]
        remove_if_empty(home)
    return sorted(found, key=lambda f: f.written, reverse=True)


def _homes(work: Path) -> list[Path]:
    try:
        return sorted(entry for entry in work.iterdir() if entry.is_dir())
    except OSError:
        return []  # nothing was ever kept here


def _is_left(journal: Path) -> bool:
    return not sittings.is_alive(journal.parent, journal.stem)


def _described(journal: Path) -> LeftOver:
    try:
        head = journals.read_head(journal)
    except FileRefused as error:
        when = datetime.fromtimestamp(journal.stat().st_mtime, UTC) if journal.exists() else datetime.now(UTC)
        path = file_of(journal.parent)
        return LeftOver(journal, path, path.stem if path else "", when, str(error))
    return LeftOver(journal, head.path, head.name, head.written)


class Claimed:
    """A left-over that no other window offers while this is open."""

    def __init__(self, left: LeftOver, handle: int) -> None:
        self.left = left
        self._handle: int | None = handle

    def garden(self) -> Garden:
        """What was being worked on; raises ``FileRefused``."""
        return journals.read_journal(self.left.journal)

    def saved(self) -> Garden | None:
        """What its file holds now; None where there is none, or none that can be opened."""
        if self.left.path is None or not self.left.path.exists():
            return None
        try:
            return open_garden(self.left.path)
        except FileRefused:
            return None

    def differs(self) -> bool:
        """Whether it holds anything that its file does not."""
        try:
            return self.garden() != self.saved()
        except FileRefused:
            return True

    def keep_as_version(self) -> None:
        """Put it among the versions of its file, where it has one.

        Raises
        ------
        CannotWrite, FileRefused
            If it cannot be kept, or cannot be read.
        """
        path, work = self.left.path, self.left.journal.parents[1]
        if path is not None:
            keep_version(path, garden_to_bytes(self.garden()), self.left.written, work)

    def done(self) -> None:
        """It is in good hands, or given up: remove the journal."""
        sittings.forget(self.left.journal.parent, self.left.journal.stem)
        self.let_go()
        remove_if_empty(self.left.journal.parent)

    def let_go(self) -> None:
        """Leave it for later."""
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None


def claimed(left: LeftOver) -> Claimed | None:
    """Take a left-over in hand; None if another window has it."""
    handle = sittings.adopt(left.journal.parent, left.journal.stem)
    if handle is None:
        return None
    sittings.disown(left.journal.parent, left.journal.stem)
    return Claimed(left, handle)
