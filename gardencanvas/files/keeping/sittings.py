"""A sitting: one window's work on one garden. At most one sitting may write a garden's file.

Each sitting holds a lock on a small file of its own in the garden's folder; the system lets go of it when the
process ends, even if it is killed, so that a left-over can be told from a living one without guessing. The
file ``owner`` names the sitting that may write.
"""

import contextlib
import json
import os
import secrets
import time
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.keeping import journals
from gardencanvas.files.keeping.holding import hold
from gardencanvas.files.keeping.homes import DOOR, home_of, make_home, remove_if_empty

SUFFIX = ".sitting"
_OWNER = "owner"
_PATIENCE_S = 2.0  # for two windows that open the same file at the same moment


@dataclass(frozen=True, slots=True)
class Holder:
    """Another window that has the file open for writing."""

    pid: int | None
    since: datetime | None


class Sitting:
    """One window's work on one garden."""

    def __init__(self, path: Path | None, work: Path | None = None) -> None:
        self.path = path
        self.home = home_of(path, work)
        self.name = secrets.token_hex(6)
        self._file: int | None = None
        self.claimed = False  # whether this sitting ever became the owner

    @property
    def journal(self) -> Path:
        """Where this sitting keeps the garden it works on."""
        return self.home / (self.name + journals.SUFFIX)

    def begin(self) -> None:
        """Make the folder and hold this sitting's own file; doing it again changes nothing.

        Raises
        ------
        CannotWrite
            If the user's data folder cannot be used.
        """
        if self._file is not None:
            return
        make_home(self.home, self.path)
        said = {"pid": os.getpid(), "since": datetime.now(UTC).isoformat()}
        try:
            handle = os.open(self.home / (self.name + SUFFIX), os.O_RDWR | os.O_CREAT, 0o600)
            self._file = handle
            hold(handle)
            os.write(handle, json.dumps(said).encode())
        except OSError as error:
            raise CannotWrite(
                "{folder} cannot be used: {why}.", folder=self.home, why=error.strerror or error
            ) from error

    def claim(self) -> Holder | None:
        """Become the one that may write; who has that already, if a living sitting does.

        Raises
        ------
        CannotWrite
            If the user's data folder cannot be used.
        """
        self.begin()
        with _alone(self.home):
            owner = _owner(self.home)
            if owner not in (None, self.name) and is_alive(self.home, str(owner)):
                return _holder(self.home, str(owner))
            self._own()
        return None

    def take_over(self) -> None:
        """Become the one that may write, whoever was; the other window notices. Raises ``CannotWrite``."""
        self.begin()
        with _alone(self.home):
            self._own()

    def _own(self) -> None:
        try:
            (self.home / _OWNER).write_text(self.name, "ascii")
        except OSError as error:
            raise CannotWrite(
                "{folder} cannot be used: {why}.", folder=self.home, why=error.strerror or error
            ) from error
        self.claimed = True

    def owns(self) -> bool:
        """Whether this sitting may write the garden's file now."""
        return self.path is None or (self.claimed and _owner(self.home) in (None, self.name))

    def clear(self) -> None:
        """Remove the journal: there is nothing unsaved. Raises ``CannotWrite``."""
        try:
            self.journal.unlink(missing_ok=True)
        except NotADirectoryError:
            return  # there never was one
        except OSError as error:
            raise CannotWrite(
                "{file} cannot be removed: {why}.", file=self.journal, why=error.strerror or error
            ) from error

    def end(self) -> None:
        """Let go of everything; the journal goes too, for the work was saved or given up."""
        if self._file is None:
            return
        with contextlib.suppress(CannotWrite), _alone(self.home):
            if _owner(self.home) == self.name:
                (self.home / _OWNER).unlink(missing_ok=True)
        with contextlib.suppress(CannotWrite):  # at worst it is offered once more
            self.clear()
        os.close(self._file)  # before its file goes: Windows removes no open file
        self._file = None
        forget(self.home, self.name)
        remove_if_empty(self.home)

    def abandon(self) -> None:
        """Let go without removing anything, as a killed process does."""
        if self._file is not None:
            os.close(self._file)
            self._file = None


def is_alive(home: Path, name: str) -> bool:
    """Whether the process of a sitting still runs and works on the garden."""
    try:
        handle = os.open(home / (name + SUFFIX), os.O_RDWR)
    except OSError:
        return False
    try:
        return not hold(handle)
    except OSError:
        return False  # a disk without locks: what seems left over is offered, and kept until it is answered
    finally:
        os.close(handle)


def forget(home: Path, name: str) -> None:
    """Remove the files of a sitting."""
    for suffix in (journals.SUFFIX, SUFFIX):
        with contextlib.suppress(OSError):  # at worst it is offered once more
            (home / (name + suffix)).unlink(missing_ok=True)


def disown(home: Path, name: str) -> None:
    """Let another sitting own the file that a dead one owned."""
    with contextlib.suppress(CannotWrite, OSError), _alone(home):
        if _owner(home) == name:
            (home / _OWNER).unlink()


def adopt(home: Path, name: str) -> int | None:
    """Hold the file of a dead sitting while its work is being offered; None if another window does.

    The handle is to be closed afterwards.
    """
    try:
        handle = os.open(home / (name + SUFFIX), os.O_RDWR | os.O_CREAT, 0o600)
    except OSError:
        return None
    try:
        if hold(handle):
            return handle
    except OSError:
        return handle
    os.close(handle)
    return None


def _owner(home: Path) -> str | None:
    try:
        name = (home / _OWNER).read_text("ascii")
    except (OSError, UnicodeDecodeError):
        return None
    return name if name.isalnum() and len(name) <= 40 else None


def _holder(home: Path, name: str) -> Holder:
    try:
        said = json.loads((home / (name + SUFFIX)).read_bytes())
        pid, since = said.get("pid"), said.get("since")
        return Holder(
            pid if isinstance(pid, int) else None,
            datetime.fromisoformat(since) if isinstance(since, str) else None,
        )
    except (OSError, ValueError, AttributeError):
        return Holder(None, None)  # it is there, but says nothing of itself


@contextlib.contextmanager
def _alone(home: Path) -> Iterator[None]:
    """One window at a time looks at the owner and changes it; a killed one lets go by itself."""
    try:
        handle = os.open(home / DOOR, os.O_RDWR | os.O_CREAT, 0o600)
    except OSError as error:
        raise CannotWrite(
            "{folder} cannot be used: {why}.", folder=home, why=error.strerror or error
        ) from error
    try:
        until = time.monotonic() + _PATIENCE_S
        while not _entered(handle) and time.monotonic() < until:
            time.sleep(0.01)
        yield
    finally:
        os.close(handle)


def _entered(handle: int) -> bool:
    try:
        return hold(handle)
    except OSError:
        return True  # a disk without locks
