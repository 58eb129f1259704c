"""Records built from text files, kept as JSON so that the next start need not parse the text again.

A kept copy is used only if it was built from the very same bytes by the same program: its key is a digest of
every file, of the code that reads them and of the version. Its own digest is checked, and it is validated
record by record as any file from outside, so that a broken or forged copy is at worst not used.
"""

import hashlib
import logging
import pkgutil
import platform
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TypeVar

import platformdirs
import pydantic
from pydantic import TypeAdapter, ValidationError

import gardencanvas
from gardencanvas.crops.replacing import replace_file

T = TypeVar("T")
_log = logging.getLogger(__name__)
_CODE = (  # what the records depend on
    "bounds.py", "model.py", "interactions.py", "tin.py", "reading.py", "built.py", "catalogue.py",
)  # fmt: skip
_MOST_BYTES = 64 * 1024 * 1024


def cache_folder() -> Path:
    """Where copies are kept."""
    return platformdirs.user_cache_path("gardencanvas", appauthor=False)


def digest(files: Iterable[tuple[str, bytes]]) -> str | None:
    """Key of what is built from files; None where the code that reads them cannot be read itself."""
    total = hashlib.blake2b(digest_size=20)
    for part in (gardencanvas.__version__, pydantic.VERSION, platform.python_version()):
        _add(total, part.encode())
    for module in _CODE:
        try:
            code = pkgutil.get_data("gardencanvas.crops", module)
        except OSError:
            return None
        if code is None:
            return None
        _add(total, code)
    for name, data in files:
        _add(total, name.encode())
        _add(total, data)
    return total.hexdigest()


def _add(total: "hashlib.blake2b", part: bytes) -> None:
    total.update(len(part).to_bytes(8, "big"))
    total.update(part)


def built(
    name: str, key: str | None, kind: TypeAdapter[T], build: Callable[[], T], folder: Path | None = None
) -> T:
    """What ``build`` makes, or the copy kept of it under the same key.

    Parameters
    ----------
    name
        Of the kept file; a copy under another key is replaced.
    key
        From ``digest``; None: build anew and keep nothing.
    folder
        Where copies are kept; by default the user's cache folder.
    """
    if key is None:
        return build()
    path = (folder or cache_folder()) / f"{name}.json"
    kept = _read(path, key, kind)
    if kept is not None:
        return kept
    made = build()
    payload = kind.dump_json(made, exclude_defaults=True)
    try:
        replace_file(path, _seal(key, payload) + payload, lasting=False)
    except OSError as error:  # costs time at the next start, no more
        _log.info("cannot keep %s: %s", path, error)
    return made


def _seal(key: str, payload: bytes) -> bytes:
    return f"{key} {hashlib.blake2b(payload, digest_size=20).hexdigest()}\n".encode()


def _read(path: Path, key: str, kind: TypeAdapter[T]) -> T | None:
    try:
        if path.stat().st_size > _MOST_BYTES:
            _log.info("not used, too large: %s", path)
            return None
        seal, end, payload = path.read_bytes().partition(b"\n")
    except FileNotFoundError:
        return None
    except OSError as error:
        _log.info("cannot read %s: %s", path, error)
        return None
    if seal + end != _seal(key, payload):
        _log.info("built anew, of other files or broken: %s", path)
        return None
    try:
        return kind.validate_json(payload)
    except ValidationError:
        _log.info("built anew, not sound: %s", path)
        return None
