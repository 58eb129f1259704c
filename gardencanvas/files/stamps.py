"""What a file on disk was when it was last read or written, to notice when another program changed it."""

import hashlib
import os
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from gardencanvas.files.errors import FileRefused


class Change(StrEnum):
    """What became of a file since it was last read or written here."""

    NONE = "none"
    CHANGED = "changed"
    GONE = "gone"


@dataclass(frozen=True, slots=True)
class Stamp:
    """Size in bytes, time of change in nanoseconds, number on its disk, and a digest of the content."""

    size: int
    changed_ns: int
    inode: int
    digest: str


def digest(data: bytes) -> str:
    """A short name of some bytes: other bytes have another one."""
    return hashlib.blake2b(data, digest_size=20).hexdigest()


def stamp(found: os.stat_result, data: bytes) -> Stamp:
    """The stamp of a file that holds these bytes."""
    return Stamp(found.st_size, found.st_mtime_ns, found.st_ino, digest(data))


def change_since(path: Path, known: Stamp) -> Change:
    """Whether the file still holds what it held; its content is read only if its outside differs.

    Raises
    ------
    FileRefused
        If it is there and cannot be read.
    """
    try:
        found = path.stat()
        if (found.st_size, found.st_mtime_ns, found.st_ino) == (known.size, known.changed_ns, known.inode):
            return Change.NONE
        if found.st_size != known.size:
            return Change.CHANGED
        return Change.NONE if digest(path.read_bytes()) == known.digest else Change.CHANGED
    except (FileNotFoundError, NotADirectoryError):
        return Change.GONE
    except OSError as error:
        raise FileRefused(
            "{file} cannot be read: {why}.", file=path.name, why=error.strerror or error
        ) from error
