"""Save a garden file so that there is always a whole one on disk."""

import contextlib
import errno
import os
import tempfile
import time
from pathlib import Path

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.stamps import Stamp, stamp
from gardencanvas.garden.garden import Garden

SUFFIX = ".gardencanvas"
PART, PART_END = ".gardencanvas-", ".part"
STALE_S = 3600.0  # no write takes an hour: an older part was left by a program that was killed
_NO_SUCH_CALL = frozenset({errno.EINVAL, errno.ENOTSUP, errno.ENOSYS, errno.EBADF})


def garden_to_bytes(garden: Garden) -> bytes:
    """UTF-8 JSON, indented, keys in the order of the model, so that two versions can be compared by line."""
    return garden.model_dump_json(indent=1, exclude_defaults=False).encode() + b"\n"


def save_garden(garden: Garden, path: Path | str) -> Stamp:
    """Write the garden: first a temporary file beside the target, flushed, then renamed over it.

    Raises
    ------
    CannotWrite
        If any step fails; the file that was there before is untouched.
    """
    return write_whole(Path(path), garden_to_bytes(garden))


def write_whole(path: Path, data: bytes) -> Stamp:
    """Put bytes in the place of a file, whole or not at all; gives the stamp of the new file.

    Raises
    ------
    CannotWrite
        If any step fails. Whatever fails, the old file or the new one is there, and whole.
    """
    temporary: str | None = None
    try:
        target = Path(os.path.realpath(path))  # a link stays a link: what it points to is replaced
        permissions = _permissions(target)
        handle, temporary = tempfile.mkstemp(prefix=PART, suffix=PART_END, dir=target.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
            found = os.fstat(file.fileno())
        with contextlib.suppress(PermissionError, NotImplementedError):  # a stick or share that knows none
            Path(temporary).chmod(permissions)
        Path(temporary).replace(target)
        temporary = None
        _flush_folder(target.parent)
        _tidy(target.parent)
    except OSError as error:
        raise CannotWrite(
            "{file} could not be written: {why}.", file=path.name, why=error.strerror or error
        ) from error
    finally:
        if temporary is not None:
            with contextlib.suppress(OSError):  # the write already failed; a left-over part file does no harm
                Path(temporary).unlink()
    return stamp(found, data)


def _tidy(folder: Path) -> None:
    """Remove parts that killed programs left beside the file."""
    with contextlib.suppress(OSError):  # litter at worst
        for part in folder.glob(f"{PART}*{PART_END}"):
            if time.time() - part.stat().st_mtime > STALE_S:
                part.unlink()


def _permissions(target: Path) -> int:
    """The permissions of the file that is replaced; of a new one, what the user gives new files.

    Raises
    ------
    PermissionError
        If the file is write-protected: a rename would replace it all the same.
    """
    if not target.exists():
        return 0o666 & ~_UMASK
    if not os.access(target, os.W_OK):
        raise PermissionError(errno.EACCES, "it is write-protected")
    return target.stat().st_mode & 0o777


def _umask() -> int:
    mask = os.umask(0o077)  # there is no way to ask without setting it
    os.umask(mask)
    return mask


_UMASK = _umask()  # once, before there are threads


def _flush_folder(folder: Path) -> None:
    """Make the rename itself last through a power cut, where the platform can."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    except OSError as error:
        if error.errno not in _NO_SUCH_CALL:  # some network disks cannot flush a folder
            raise
    finally:
        os.close(handle)
