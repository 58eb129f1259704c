"""Keeps the unsaved work of one session on disk, and knows whether this window may write its file."""

import atexit
import contextlib
import threading
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from gardencanvas.app.session import Session
from gardencanvas.files import CannotWrite, FileRefused
from gardencanvas.files.keeping.autosave import Autosave, Standing, State
from gardencanvas.files.keeping.journals import Head, write_journal
from gardencanvas.files.keeping.sittings import Holder, Sitting
from gardencanvas.files.keeping.slices import Slices
from gardencanvas.files.stamps import Change, Stamp, change_since
from gardencanvas.garden.garden import Garden
from gardencanvas.words.refusals import why_refused


@dataclass(frozen=True, slots=True)
class _Work:
    """One state of the garden, and what is to be said of it."""

    garden: Garden
    path: Path | None
    base: str | None


class Safekeeping(QObject):
    """The autosave and the claim of one window on its garden."""

    stood = Signal(object)  # Standing: how the unsaved work stands; may come from another thread
    read_only_changed = Signal(bool)
    file_changed = Signal(object)  # Change: what another program did to the file
    _lost = Signal()  # another window took the file over; from another thread
    _seen = Signal(object, object)  # Change and the stamp it is measured from, from another thread

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.standing: Standing | None = None
        self.read_only = False
        self.writing = False  # the file, at this moment
        self._slices = Slices()
        self._sitting = Sitting(session.path)
        self._autosave: Autosave[_Work] = Autosave(self._write, self._clear, self._told)
        self._looked: Stamp | None = None
        self._looking = self._again = False
        self._finished = False
        session.changed.connect(self._edited)
        session.unsaved_changed.connect(self._edited)
        session.path_changed.connect(self._moved)
        self._seen.connect(self._tell_seen)
        self._lost.connect(self.may_write)

    # whose file it is

    def begin(self) -> Holder | None:
        """Claim the session's file; who has it already, if another window does: then it is read-only here."""
        if self.session.unsaved:
            self._edited()
        if self.session.path is None:
            return None
        try:
            holder = self._sitting.claim()
        except CannotWrite as error:  # without a data folder nobody can be asked, and nothing kept
            self._told(Standing(State.FAILED, datetime.now().astimezone(), why_refused(error)))
            return None
        self._set_read_only(holder is not None)
        return holder

    def take_over(self) -> None:
        """Become the window that may write the file; raises ``CannotWrite``."""
        self._sitting.take_over()
        self._set_read_only(False)

    def may_write(self) -> bool:
        """Whether this window may write the file now; another one may have taken it over."""
        if self.session.path is None or self._finished:
            return True
        if not self.read_only and self._sitting.claimed and not self._sitting.owns():
            self._set_read_only(True)
        return not self.read_only

    def _set_read_only(self, read_only: bool) -> None:
        if read_only != self.read_only:
            self.read_only = read_only
            self.read_only_changed.emit(read_only)

    def _moved(self) -> None:
        """The session has another file now."""
        self._autosave.flush()
        old, self._sitting = self._sitting, Sitting(self.session.path)
        self._set_read_only(False)
        if self.begin() is not None:  # it was just written by this window, over another's
            with contextlib.suppress(CannotWrite):  # then the state stays: read-only
                self.take_over()
        old.end()

    # what other programs do

    def look(self) -> None:
        """See on a thread whether the file was changed by another program; each change is told once."""
        self.may_write()
        path, stamp = self.session.path, self.session.stamp
        if self._finished or path is None or stamp is None:
            return
        if self._looking:
            self._again = True
            return
        self._looking = True

        def see() -> None:
            try:
                change = change_since(path, stamp)
            except FileRefused:
                change = Change.NONE  # it cannot be read now; saving will say why
            with contextlib.suppress(RuntimeError):  # the window was closed meanwhile
                self._seen.emit(change, stamp)

        threading.Thread(target=see, name="look", daemon=True).start()

    def _tell_seen(self, change: Change, stamp: Stamp) -> None:
        """Tell of a change, if it is of the file as it is known now and was not told before."""
        self._looking = False
        if self._again:
            self._again = False
            self.look()
            return
        if self.writing:  # what changed is what this window is just writing
            return
        if change is not Change.NONE and stamp is self.session.stamp and stamp is not self._looked:
            self._looked = stamp
            self.file_changed.emit(change)

    # the unsaved work

    def _edited(self, *_: object) -> None:
        if self._finished:
            return
        session = self.session
        if session.unsaved:
            if self.standing is None:
                atexit.register(self._autosave.stop)  # a program that ends without closing its window
            base = session.stamp.digest if session.stamp else None
            self._autosave.keep(_Work(session.garden, session.path, base))
        elif self.standing is not None:
            self._autosave.keep(None)

    def keep_now(self) -> str:
        """Write the unsaved work to the journal now; why it could not be, or nothing."""
        self._edited()
        if self._autosave.flush():
            return ""
        return (
            self.standing.why if self.standing and self.standing.why else self.tr("The disk does not answer.")
        )

    def finish(self) -> None:
        """The work was saved or given up: remove the journal and let go of the file."""
        if self._finished:
            return
        if self.standing is not None:
            self._autosave.keep(None)
        self._finished = True
        self._autosave.stop()
        atexit.unregister(self._autosave.stop)
        self._sitting.end()

    def _write(self, work: _Work) -> None:
        sitting = self._sitting
        sitting.begin()
        head = Head(work.path, work.garden.name, work.base, datetime.now(UTC))
        write_journal(sitting.journal, head, self._slices.bytes_of(work.garden))
        if sitting.claimed and not sitting.owns():
            with contextlib.suppress(RuntimeError):  # the window was closed meanwhile
                self._lost.emit()

    def _clear(self) -> None:
        self._sitting.clear()

    def _told(self, standing: Standing) -> None:
        self.standing = standing
        with contextlib.suppress(RuntimeError):  # the window was closed meanwhile
            self.stood.emit(standing)
