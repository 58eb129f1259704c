"""The log: what the program did wrong and where, never what the grower wrote."""

import logging
import sys
import traceback
from pathlib import Path

LOG = logging.getLogger("gardencanvas")

_BYTES, _FILES = 262_144, 3


def start_log() -> Path | None:
    """Log to the platform's log folder, three files of 256 kB; None where it cannot be written."""
    from logging.handlers import RotatingFileHandler  # 40 ms, spent after the window is up

    from platformdirs import user_log_path

    try:
        folder = user_log_path("gardencanvas", appauthor=False, ensure_exists=True)
        handler = RotatingFileHandler(
            folder / "gardencanvas.log", maxBytes=_BYTES, backupCount=_FILES - 1, encoding="utf-8"
        )
    except OSError as error:
        LOG.warning("no log file: %s", error.strerror or type(error).__name__)
        return None
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    LOG.addHandler(handler)
    LOG.setLevel(logging.INFO)
    return folder / "gardencanvas.log"


def impersonal(error: BaseException) -> str:
    """Kind and place of an exception; its words only where the system made them.

    The message of a refusal may quote names and notes of the garden: it is shown to the grower, and not
    logged. The message of an ``OSError`` holds a path at most.
    """
    frames = traceback.extract_tb(error.__traceback__)
    lines = [f"  {Path(f.filename).name}:{f.lineno} {f.name}" for f in frames]
    said = f": {error.strerror} {error.filename or ''}".rstrip() if isinstance(error, OSError) else ""
    lines.append(f"{type(error).__name__}{said}")
    if error.__cause__ is not None:
        lines.append(f"caused by\n{impersonal(error.__cause__)}")
    return "\n".join(lines)


def surroundings() -> str:
    """Versions of the program, Python, Qt and the system, in a line."""
    import platform

    from PySide6.QtCore import qVersion

    from gardencanvas import __version__

    python = ".".join(map(str, sys.version_info[:3]))
    return f"Garden Canvas {__version__}, Python {python}, Qt {qVersion()}, {platform.platform()}"
