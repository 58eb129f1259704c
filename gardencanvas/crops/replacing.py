"""Put a file in the place of another, whole or not at all."""

import os
import tempfile
from pathlib import Path


def replace_file(path: Path, data: bytes, *, lasting: bool = True) -> None:
    """Write bytes to a temporary file beside the target and rename it over the target.

    Parameters
    ----------
    lasting
        Wait until the bytes are on the disk, so that they outlive a power cut.

    Raises
    ------
    OSError
        If a step fails; what was there before is untouched.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, temporary = tempfile.mkstemp(prefix=".", suffix=".part", dir=path.parent)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            if lasting:
                file.flush()
                os.fsync(file.fileno())
        Path(temporary).chmod(path.stat().st_mode & 0o777 if path.exists() else 0o644)
        Path(temporary).replace(path)
    except BaseException:
        Path(temporary).unlink(missing_ok=True)
        raise
