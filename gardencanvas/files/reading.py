"""Open a garden file: bounded reading, strict JSON, migration, validation."""

import json
import os
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from gardencanvas.crops.catalogue import UnknownCrop, catalogue
from gardencanvas.files.bounds import MAX_DRIFT_PLANTS, MAX_PARTS, drift_plants, too_many_parts
from gardencanvas.files.errors import FileRefused, NewerFormat
from gardencanvas.files.migrations import migrated
from gardencanvas.files.stamps import Stamp
from gardencanvas.files.stamps import stamp as stamp_of
from gardencanvas.garden.errors import refusal, shortened
from gardencanvas.garden.garden import FORMAT, Garden

# 200,000 stations as single spots come to about 10 MB; anything far larger is not a garden.
MAX_BYTES = 64 * 1024 * 1024


def open_garden(path: Path | str) -> Garden:
    """Read a garden file.

    Raises
    ------
    FileRefused
        With one sentence for the grower, whatever is wrong with the file.
    """
    return open_stamped(path)[0]


def open_stamped(path: Path | str) -> tuple[Garden, Stamp]:
    """Read a garden file, and what it was when it was read; raises ``FileRefused``."""
    path = Path(path)
    data, stamp = read_stamped(path)
    return garden_from_bytes(data, path.name), stamp


def read_stamped(path: Path) -> tuple[bytes, Stamp]:
    """The bytes of a file of bounded size, and its stamp; raises ``FileRefused``."""
    try:
        if path.is_dir():
            raise FileRefused("{file} is a folder, not a garden file.", file=path.name)
        if path.exists() and not path.is_file():
            raise FileRefused(
                "{file} is not a file.", file=path.name
            )  # a pipe would be waited for without end
        with path.open("rb") as file:
            found = os.fstat(file.fileno())
            data = b"" if found.st_size > MAX_BYTES else file.read(MAX_BYTES + 1)
    except FileNotFoundError as error:
        raise FileRefused("There is no file {path}.", path=path) from error
    except OSError as error:
        raise FileRefused(
            "{file} cannot be read: {why}.", file=path.name, why=error.strerror or error
        ) from error
    size = max(found.st_size, len(data))
    if size > MAX_BYTES:
        raise FileRefused(
            "{file} is {size:.0f} MB; a garden file has at most {most:.0f} MB.",
            file=path.name,
            size=size / 1e6,
            most=MAX_BYTES / 1e6,
        )
    return data, stamp_of(found, data)


def garden_from_bytes(data: bytes, name: str) -> Garden:
    """The garden that some bytes hold; ``name`` is used in the sentence of a refusal.

    Raises
    ------
    FileRefused
        If they hold none.
    """
    if too_many_parts(data):
        raise FileRefused(
            "{name} holds more than {most:,} parts, which no garden does.", name=name, most=MAX_PARTS
        )
    document = _parsed(data, name)
    number = document.get("format")
    if not isinstance(number, int) or isinstance(number, bool) or number < 1:
        raise FileRefused("{name} is not a garden file: it has no format number.", name=name)
    if number > FORMAT:
        raise NewerFormat(
            "{name} was written by a newer Garden Canvas (format {number}; this one reads up to {known}). "
            "Update the program to open it.",
            name=name,
            number=number,
            known=FORMAT,
        )
    if drift_plants(document) > MAX_DRIFT_PLANTS:
        raise FileRefused(
            "{name} asks for more than {most:,} plants in drifts.", name=name, most=MAX_DRIFT_PLANTS
        )
    try:
        garden = Garden.model_validate_json(json.dumps(migrated(document, number)), strict=True)
    except ValidationError as error:
        if error.errors()[0]["type"] == "json_invalid":  # it was sound before: only its depth can be wrong
            raise FileRefused("{name} is nested too deeply to be a garden file.", name=name) from error
        raise FileRefused(
            "{name} is not a sound garden file: {why}", name=name, why=refusal(error)
        ) from error
    except RecursionError as error:
        raise FileRefused("{name} is nested too deeply to be a garden file.", name=name) from error
    _know_crops(garden, name)
    return garden


def _parsed(data: bytes, name: str) -> dict[str, Any]:
    if not data.strip():
        raise FileRefused("{name} is empty.", name=name)
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise FileRefused("{name} is not a garden file: it is not text in UTF-8.", name=name) from error
    try:
        document = json.loads(text, object_pairs_hook=_no_key_twice, parse_constant=_no_constant)
    except json.JSONDecodeError as error:
        raise FileRefused(
            "{name} is not a garden file, or was cut short: line {line}, column {column}: {why}.",
            name=name,
            line=error.lineno,
            column=error.colno,
            why=error.msg,
        ) from error
    except RecursionError as error:
        raise FileRefused("{name} is nested too deeply to be a garden file.", name=name) from error
    except ValueError as error:
        raise FileRefused("{name} is not a garden file: {why}.", name=name, why=error) from error
    if not isinstance(document, dict):
        raise FileRefused("{name} is not a garden file.", name=name)
    return document


def _no_key_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise ValueError(f"the field {key[:60]!r} stands there twice")
        found[key] = value
    return found


def _no_constant(word: str) -> Any:
    raise ValueError(f"{word} is not a number a garden can hold")


def _know_crops(garden: Garden, name: str) -> None:
    known = catalogue().with_own(garden.crops, garden.varieties)
    wanted = {
        (p.crop, v) for layout in garden.layouts for p in layout.plantings for v in (p.varieties or (None,))
    }
    for crop, variety in sorted(wanted, key=str):
        try:
            known.resolve(crop, variety)
        except UnknownCrop as error:
            unknown = shortened(str(error), 140)
            raise FileRefused(
                "{name} names a crop or variety that is not known here: {unknown}.",
                name=name,
                unknown=unknown,
            ) from error
