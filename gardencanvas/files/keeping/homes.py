"""Where the program keeps its own copies of a garden: never beside the grower's file.

Each file has one folder in the user's data folder, named after its path; a garden that was never saved has a
folder of its own. In it lie the journals of the windows at work on it and the versions that were saved.
"""

import hashlib
import json
import os
import secrets
from pathlib import Path

import platformdirs

from gardencanvas.files.errors import CannotWrite

_ABOUT = "about.json"
DOOR = "door"  # held while one looks who owns a garden
_MOST_BYTES = 64 * 1024


def work_folder() -> Path:
    """The folder that holds a folder for each garden."""
    return platformdirs.user_data_path("gardencanvas", appauthor=False) / "gardens"


def home_of(path: Path | None, work: Path | None = None) -> Path:
    """The folder for a garden file, or a fresh one for a garden without a file; it need not exist yet."""
    work = work or work_folder()
    if path is None:
        return work / f"new-{secrets.token_hex(8)}"
    real = os.path.normcase(os.path.realpath(path))
    key = hashlib.blake2b(os.fsencode(real), digest_size=10).hexdigest()
    stem = "".join(c for c in Path(real).stem if c.isascii() and (c.isalnum() or c in "-_"))[:24]
    return work / f"{stem or 'garden'}-{key}"


def make_home(home: Path, path: Path | None) -> None:
    """Make the folder, for this user's eyes only, and note in it which file it is for.

    Raises
    ------
    CannotWrite
        If it cannot be made.
    """
    about = home / _ABOUT
    try:
        home.mkdir(mode=0o700, parents=True, exist_ok=True)
        if not about.exists():
            about.write_text(json.dumps({"path": None if path is None else os.path.realpath(path)}), "utf-8")
    except OSError as error:
        raise CannotWrite(
            "{folder} cannot be used: {why}.", folder=home, why=error.strerror or error
        ) from error


def file_of(home: Path) -> Path | None:
    """Which file a folder is for; None for a garden without one, or where the note cannot be read."""
    try:
        with (home / _ABOUT).open("rb") as file:
            said = json.loads(file.read(_MOST_BYTES))
    except (OSError, ValueError):
        return None
    path = said.get("path") if isinstance(said, dict) else None
    return Path(path) if isinstance(path, str) else None


def remove_if_empty(home: Path) -> None:
    """Remove the folder if it holds nothing of worth."""
    try:
        if {entry.name for entry in home.iterdir()} <= {_ABOUT, DOOR}:
            for name in (_ABOUT, DOOR):
                (home / name).unlink(missing_ok=True)
            home.rmdir()
    except OSError:
        return  # another window is just using it, or it is gone already
