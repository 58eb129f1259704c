"""Read crop files: TOML in, records or complaints out.

A shipped file has a ``[family]`` table (``name``, ``common``) and ``[[crop]]`` tables without ``family``;
a grower's own file has ``[[crop]]`` tables that name it, and ``[[variety]]`` and ``[[lot]]`` tables.
"""

import tomllib
from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from gardencanvas.crops.errors import Complaint, complaints_of
from gardencanvas.crops.model import Crop, Source, Variety
from gardencanvas.crops.tin import SeedLot

MOST_BYTES = 4 * 1024 * 1024  # four times the largest family shipped; far beyond any library typed by hand
MOST_CROPS = 1000  # as in a garden file
MOST_VARIETIES = 2000
MOST_LOTS = 5000
_TABLES = {"family", "crop", "variety", "source", "lot"}

R = TypeVar("R", bound=BaseModel)


@dataclass(frozen=True, slots=True)
class CropFile:
    """What one file holds, and what is wrong with the rest of it."""

    crops: tuple[Crop, ...] = ()
    varieties: tuple[Variety, ...] = ()
    sources: tuple[Source, ...] = ()
    lots: tuple[SeedLot, ...] = ()
    family: str = ""
    family_common: str = ""
    complaints: tuple[Complaint, ...] = ()


def parsed(data: bytes, name: str) -> CropFile:
    """The records in the bytes of a file; ``name`` is used in complaints."""
    document, complaint = _document(data, name)
    if document is None:
        return CropFile(complaints=(complaint,) if complaint else ())
    faults = [
        Complaint(name, "", str(table)[:60], "unknown-table", "this table is not known")
        for table in sorted(set(document) - _TABLES)
    ]
    family, common = _family(document, name, faults)
    crop_tables = _tables(document, "crop", MOST_CROPS, name, faults)
    if family:
        faults += [
            Complaint(name, _label(table, at), "family", "family-twice", f"the file says {family}")
            for at, table in enumerate(crop_tables)
            if table.get("family", family) != family
        ]
        crop_tables = [{**table, "family": family} for table in crop_tables]
    crops = _records(Crop, crop_tables, name, faults)
    varieties = _records(Variety, _tables(document, "variety", MOST_VARIETIES, name, faults), name, faults)
    sources = _records(Source, _tables(document, "source", MOST_CROPS, name, faults), name, faults)
    lots = _records(SeedLot, _tables(document, "lot", MOST_LOTS, name, faults), name, faults)
    for records in (crops, varieties, sources, lots):
        faults += _twice([r.id for r in records], name)
    return CropFile(crops, varieties, sources, lots, family, common, tuple(faults))


def _document(data: bytes, name: str) -> tuple[dict[str, Any] | None, Complaint | None]:
    if len(data) > MOST_BYTES:
        text = f"the file has {len(data) / 1e6:.1f} MB; a crop file has at most {MOST_BYTES / 1e6:.1f} MB"
        return None, Complaint(name, "", "", "too-large", text)
    try:
        return tomllib.loads(data.decode("utf-8-sig")), None
    except UnicodeDecodeError:
        return None, Complaint(name, "", "", "not-text", "this is not a crop file: it is not text in UTF-8")
    except tomllib.TOMLDecodeError as error:
        return None, Complaint(name, "", "", "not-toml", f"this is not a sound TOML file: {error}")
    except RecursionError:
        return None, Complaint(name, "", "", "too-deep", "this is nested too deeply to be a crop file")
    except ValueError:  # a whole number of more digits than Python reads
        return None, Complaint(name, "", "", "not-toml", "a number in this file has too many digits")


def _family(document: dict[str, Any], name: str, faults: list[Complaint]) -> tuple[str, str]:
    table = document.get("family")
    if table is None:
        return "", ""
    values = (table.get("name"), table.get("common", "")) if isinstance(table, dict) else (None, None)
    if not isinstance(values[0], str) or not values[0] or not isinstance(values[1], str):
        faults.append(Complaint(name, "", "family", "family-unnamed", "the family table needs a name"))
        return "", ""
    return values[0], values[1]


def _tables(
    document: dict[str, Any], key: str, most: int, name: str, faults: list[Complaint]
) -> list[dict[str, Any]]:
    tables = document.get(key, [])
    if not isinstance(tables, list) or not all(isinstance(t, dict) for t in tables):
        faults.append(Complaint(name, "", key, "not-tables", f"each {key} is a table of its own, [[{key}]]"))
        return []
    if len(tables) > most:
        text = f"there are {len(tables)} of them; a file holds at most {most}"
        faults.append(Complaint(name, "", key, "too-many", text))
        return []
    return tables


def _records(
    kind: type[R], tables: list[dict[str, Any]], name: str, faults: list[Complaint]
) -> tuple[R, ...]:
    sound = []
    for at, table in enumerate(tables):
        try:
            sound.append(kind.model_validate(table))
        except ValidationError as error:
            faults += complaints_of(error, name, _label(table, at))
    return tuple(sound)


def _label(table: dict[str, Any], at: int) -> str:
    own = table.get("id")
    return own[:60] if isinstance(own, str) and own else f"no. {at + 1}"


def _twice(ids: list[str], name: str) -> list[Complaint]:
    seen: set[str] = set()
    again = sorted({i for i in ids if i in seen or seen.add(i)})  # type: ignore[func-returns-value]
    return [Complaint(name, i, "id", "twice", "this id stands there twice") for i in again]
