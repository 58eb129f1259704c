"""Check crop files: every complaint names file, crop, field and why."""

import unicodedata
from collections.abc import Iterable, Iterator
from pathlib import Path

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.errors import CatalogueError, Complaint
from gardencanvas.crops.model import Crop, Record, Variety
from gardencanvas.crops.reading import MOST_BYTES, CropFile, parsed
from gardencanvas.crops.sense import doubts

__all__ = ["Complaint", "check_files", "complaints_in"]

_TURNS_TEXT = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")  # bidirectional overrides


def check_files(paths: Iterable[Path | str]) -> list[Complaint]:
    """Complaints about crop files, shipped or a grower's own; none where all are sound.

    Crops and sources may be named across the files and from the shipped catalogue.
    """
    faults: list[Complaint] = []
    files: list[tuple[str, CropFile]] = []
    for path in map(Path, paths):
        data = _bytes(path, faults)
        if data is not None:
            files.append((path.name, parsed(data, path.name)))
    try:
        shipped = catalogue()
    except CatalogueError as error:  # what is checked may be the shipped files themselves
        shipped = Catalogue((), (), {})
        faults += error.complaints
    for name, read in files:
        faults += read.complaints
        faults += complaints_in(read, name, shipped, [file for _, file in files])
    return list(dict.fromkeys(faults))


def _bytes(path: Path, faults: list[Complaint]) -> bytes | None:
    try:
        with path.open("rb") as file:
            return file.read(MOST_BYTES + 1)
    except OSError as error:
        why = error.strerror or str(error)
        faults.append(Complaint(path.name, "", "", "unreadable", f"the file cannot be read: {why}"))
        return None


def complaints_in(
    read: CropFile, name: str, shipped: Catalogue, beside: Iterable[CropFile] = ()
) -> list[Complaint]:
    """Complaints about the sound records of a file: what does not agree, what is named but not known."""
    around = [read, *beside]
    parents = {c.id for c in shipped.crops} | {c.id for file in around for c in file.crops}
    sources = set(shipped.sources) | {s.id for file in around for s in file.sources}
    own = {v.id for v in read.varieties}
    faults = []
    for crop in read.crops:
        faults += [Complaint(name, crop.id, d.field, d.code, d.text) for d in doubts(crop)]
        faults += _unknown_sources(crop, name, sources)
    for variety in read.varieties:
        faults += _parent(variety, name, parents, own)
        faults += _unknown_sources(variety, name, sources)
    for lot in read.lots:
        if lot.crop not in parents:
            faults.append(_no_crop(name, lot.id, lot.crop))
    for records in (read.crops, read.varieties, read.lots):
        for record in records:
            faults += _hidden(record, record.id, name)
    return faults


def _parent(variety: Variety, name: str, parents: set[str], own: set[str]) -> Iterator[Complaint]:
    if variety.crop == variety.id:
        text = "a variety cannot be a variety of itself"
        yield Complaint(name, variety.id, "crop", "own-parent", text)
    elif variety.crop not in parents and variety.crop in own:
        text = f"{variety.crop} is a variety; a variety belongs to a crop"
        yield Complaint(name, variety.id, "crop", "parent-is-variety", text)
    elif variety.crop not in parents:
        yield _no_crop(name, variety.id, variety.crop)


def _no_crop(name: str, record: str, crop: str) -> Complaint:
    return Complaint(name, record, "crop", "unknown-crop", f"there is no crop {crop}")


def _unknown_sources(record: Crop | Variety, name: str, sources: set[str]) -> Iterator[Complaint]:
    for field, source in named_sources(record):
        if source not in sources:
            yield Complaint(name, record.id, field, "unknown-source", f"there is no source {source}")


def named_sources(record: Record) -> Iterator[tuple[str, str]]:
    """Field and source of every number, fact, hazard and remark of a record."""
    for field in type(record).model_fields:
        value = getattr(record, field)
        for at, each in enumerate(value if isinstance(value, tuple) else (value,)):
            source = getattr(each, "source", None)
            if source is not None:
                yield (f"{field}[{at + 1}]" if isinstance(value, tuple) else field), source


def _hidden(record: Record, record_id: str, name: str) -> Iterator[Complaint]:
    """Characters that cannot be seen but change what is seen."""
    for field, text in _texts(record.model_dump(exclude_defaults=True)):
        if any(unicodedata.category(c) == "Cc" or c in _TURNS_TEXT for c in text):
            yield Complaint(
                name, record_id, field, "control-character", "there is an invisible character in it"
            )


def _texts(value: object, field: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield field, value
    elif isinstance(value, dict):
        for key, each in value.items():
            yield field, str(key)
            yield from _texts(each, field or str(key))
    elif isinstance(value, (list, tuple)):
        for each in value:
            yield from _texts(each, field)
