"""Save a garden file so that there is always a whole one on disk."""

import contextlib
import os
import tempfile
from pathlib import Path

from gardencanvas.files.errors import CannotWrite
from gardencanvas.garden.garden import Garden

SUFFIX = ".gardencanvas"


def garden_to_bytes(garden: Garden) -> bytes:
    """UTF-8 JSON, indented, keys in the order of the model, so that two versions can be compared by line."""
    return garden.model_dump_json(indent=1, exclude_defaults=False).encode() + b"\n"


def save_garden(garden: Garden, path: Path | str) -> None:
    """Write the garden: first a temporary file beside the target, flushed, then renamed over it.

    Raises
    ------
    CannotWrite
        If any step fails; the file that was there before is untouched.
    """
    write_whole(Path(path), garden_to_bytes(garden))


def write_whole(path: Path, data: bytes) -> None:
    """Put bytes in the place of a file, whole or not at all.

    Raises
    ------
    CannotWrite
        If any step fails.
    """
    temporary: str | None = None
    target = Path(os.path.realpath(path))  # a link stays a link: what it points to is replaced
    try:
        handle, temporary = tempfile.mkstemp(prefix=".", suffix=".part", dir=target.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        Path(temporary).chmod(target.stat().st_mode & 0o777 if target.exists() else 0o644)
        Path(temporary).replace(target)
        temporary = None
        _flush_folder(target.parent)
    except OSError as error:
        raise CannotWrite(f"{path.name} could not be written: {error.strerror or error}.") from error
    finally:
        if temporary is not None:
            with contextlib.suppress(OSError):  # the write already failed; a left-over part file does no harm
                Path(temporary).unlink()


def _flush_folder(folder: Path) -> None:
    """Make the rename itself last through a power cut, where the platform can."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
