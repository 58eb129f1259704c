"""Keeps the newest value on disk, on a thread of its own, soon after each change.

Giving it a value costs the caller nothing: values are immutable, so the thread may write one while the next
is being made. Of many values in a row only the newest is written, at the latest ``wait_s`` after the first.
"""

import sys
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Generic, TypeVar

from gardencanvas.files.errors import CannotWrite

V = TypeVar("V")

WAIT_S = 0.7  # the promise is two seconds: the rest is for making and writing it
RETRY_S = 5.0


class State(StrEnum):
    """How the newest value stands."""

    IDLE = "idle"  # there is nothing to keep
    WAITING = "waiting"
    KEPT = "kept"
    FAILED = "failed"


@dataclass(frozen=True, slots=True)
class Standing:
    """How the newest value stands, since when, and why it is not kept."""

    state: State
    when: datetime
    why: str = ""


class Autosave(Generic[V]):
    """Writes the newest value given to it.

    Parameters
    ----------
    write
        Writes a value, or raises ``CannotWrite``. Called on the thread.
    clear
        Removes what was written, when there is nothing to keep any more. Called on the thread.
    told
        Hears how things stand. Called on either thread.
    wait_s
        Seconds from a change to its writing, so that a burst of changes is written once.
    """

    def __init__(
        self,
        write: Callable[[V], None],
        clear: Callable[[], None],
        told: Callable[[Standing], None],
        wait_s: float = WAIT_S,
    ) -> None:
        self._write, self._clear, self._told, self._wait_s = write, clear, told, wait_s
        self._turn = threading.Condition()
        self._waiting: list[V | None] = []  # at most one: the newest
        self._due = 0.0
        self._attempts = 0
        self._busy = self._ending = False
        self._thread: threading.Thread | None = None

    def keep(self, value: V | None) -> None:
        """Have a value written soon; None: there is nothing to keep, remove what was written."""
        with self._turn:
            if not self._waiting:
                self._due = time.monotonic() + self._wait_s
            self._waiting = [value]
            if self._thread is None:
                self._thread = threading.Thread(target=self._run, name="autosave", daemon=True)
                self._thread.start()
            self._turn.notify_all()
        if value is not None:
            self._tell(State.WAITING)

    def flush(self, timeout_s: float = 10.0) -> bool:
        """Try to write what waits, now; whether it is written, or nothing waited."""
        with self._turn:
            self._due, before = 0.0, self._attempts
            self._turn.notify_all()
            self._turn.wait_for(
                lambda: not self._busy and (not self._waiting or self._attempts > before), timeout_s
            )
            return not self._waiting and not self._busy

    def stop(self, timeout_s: float = 10.0) -> bool:
        """Write what waits and end the thread; whether all is written."""
        done = self.flush(timeout_s)
        with self._turn:
            self._ending = True
            thread, self._thread = self._thread, None
            self._turn.notify_all()
        if thread is not None and thread is not threading.current_thread():
            thread.join(timeout_s)
        with self._turn:
            self._ending = False
        return done

    def _run(self) -> None:
        while True:
            with self._turn:
                self._turn.wait_for(lambda: self._ending or bool(self._waiting))
                while self._waiting and not self._ending and (left := self._due - time.monotonic()) > 0:
                    self._turn.wait(left)
                if not self._waiting:
                    return  # told to end
                (value,) = self._waiting
                self._waiting = []
                self._busy = True
            sound = False
            try:
                sound = self._put(value)
            finally:
                self._done(value, sound=sound)

    def _done(self, value: V | None, *, sound: bool) -> None:
        with self._turn:
            self._busy = False
            self._attempts += 1
            if not sound and not self._waiting and not self._ending:
                self._waiting, self._due = [value], time.monotonic() + RETRY_S
            if sys.exc_info()[0] is not None and self._thread is threading.current_thread():
                self._thread = None  # it ends with what nobody foresaw; the next change starts another
            self._turn.notify_all()

    def _put(self, value: V | None) -> bool:
        try:
            if value is None:
                self._clear()
                self._tell(State.IDLE)
            else:
                self._write(value)
                self._tell(State.KEPT)
        except CannotWrite as error:
            self._tell(State.FAILED, str(error))
            return False
        except Exception as error:
            self._tell(State.FAILED, str(error))
            raise
        return True

    def _tell(self, state: State, why: str = "") -> None:
        self._told(Standing(state, datetime.now().astimezone(), why))
