"""The catalogue: every crop known here, with its varieties and sources."""

import gc
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cache, cached_property
from pathlib import Path

from pydantic import TypeAdapter

from gardencanvas.crops.built import built, digest
from gardencanvas.crops.errors import CatalogueError, Complaint, UnknownCrop
from gardencanvas.crops.fallback import complete
from gardencanvas.crops.model import Crop, Record, Source, Variety
from gardencanvas.crops.peers import Peers
from gardencanvas.crops.reading import CropFile, parsed
from gardencanvas.crops.varieties import grown
from gardencanvas.resources_folder import resources

__all__ = ["Catalogue", "CatalogueError", "UnknownCrop", "catalogue", "load"]


@dataclass(frozen=True, eq=False)
class Catalogue:
    """Crops, varieties and sources; compared by identity."""

    crops: tuple[Crop, ...]
    varieties: tuple[Variety, ...]
    sources: dict[str, Source]
    families: dict[str, str] = field(default_factory=dict)  # botanical -> common name of the family
    _base: "Catalogue | None" = None  # what own crops were added to
    _resolved: dict[tuple[str, str | None], Crop] = field(default_factory=dict)

    @cached_property
    def _by_id(self) -> dict[str, Crop]:
        return {c.id: c for c in self.crops}

    @cached_property
    def _variety_by_id(self) -> dict[tuple[str, str], Variety]:
        return {(v.crop, v.id): v for v in self.varieties}

    def crop(self, crop_id: str) -> Crop:
        """The crop as its file gives it; raises ``UnknownCrop``."""
        try:
            return self._by_id[crop_id]
        except KeyError:
            raise UnknownCrop(crop_id) from None

    def variety(self, crop_id: str, variety_id: str) -> Variety:
        """A variety of a crop; raises ``UnknownCrop``."""
        try:
            return self._variety_by_id[crop_id, variety_id]
        except KeyError:
            raise UnknownCrop(f"{crop_id}, variety {variety_id}") from None

    def varieties_of(self, crop_id: str) -> tuple[Variety, ...]:
        """Varieties of one crop, in the order of their files."""
        return tuple(v for v in self._variety_by_id.values() if v.crop == crop_id)

    def resolve(self, crop_id: str, variety_id: str | None = None) -> Crop:
        """The crop as that variety grows, with every number that the engine needs (``crops.fallback``).

        The same object each time. Raises ``UnknownCrop``.
        """
        key = (crop_id, variety_id)
        known = self._resolved.get(key)
        if known is None:
            known = self._resolved[key] = self._resolve(crop_id, variety_id)
        return known

    def _resolve(self, crop_id: str, variety_id: str | None) -> Crop:
        crop = self.crop(crop_id)
        variety = None if variety_id is None else self.variety(crop_id, variety_id)
        if self._base is not None and self._base._has(crop, variety):
            return self._base.resolve(crop_id, variety_id)
        return self.complete(crop if variety is None else grown(crop, variety))

    def complete(self, crop: Crop) -> Crop:
        """A crop with its missing numbers filled in from the shipped crops (``crops.fallback``)."""
        return complete(crop, self._peers)

    @cached_property
    def _peers(self) -> Peers:
        return Peers(self.crops) if self._base is None else self._base._peers

    def _has(self, crop: Crop, variety: Variety | None) -> bool:
        if self._by_id.get(crop.id) is not crop:
            return False
        return variety is None or self._variety_by_id.get((variety.crop, variety.id)) is variety

    def with_own(self, crops: Iterable[Crop], varieties: Iterable[Variety]) -> "Catalogue":
        """The catalogue with a grower's own crops and varieties added; own ones win.

        What they do not touch resolves to the same objects as before.
        """
        own, extra = tuple(crops), tuple(varieties)
        if not own and not extra:
            return self
        mine = {c.id for c in own}
        theirs = {(v.crop, v.id) for v in extra}
        return Catalogue(
            (*(c for c in self.crops if c.id not in mine), *own),
            (*(v for v in self.varieties if (v.crop, v.id) not in theirs), *extra),
            self.sources,
            self.families,
            self,
        )


class _Shipped(Record):
    crops: tuple[Crop, ...]
    varieties: tuple[Variety, ...]
    sources: tuple[Source, ...]
    families: dict[str, str]


@cache
def catalogue() -> Catalogue:
    """The shipped catalogue."""
    return load(resources())


def load(folder: Path, cache_in: Path | None = None) -> Catalogue:
    """Load the catalogue in a folder of data.

    Parameters
    ----------
    folder
        Holds ``crops/*.toml``, ``sources.toml`` and ``varieties.toml``.
    cache_in
        Where the built form is kept; by default the user's cache folder.

    Raises
    ------
    CatalogueError
        Naming file, crop, field and why, if any file is not sound.
    """
    paths = [*sorted((folder / "crops").glob("*.toml")), folder / "sources.toml", folder / "varieties.toml"]
    files = [(p.name, p.read_bytes()) for p in paths if p.exists()]
    with _no_garbage():
        shipped = built("catalogue", digest(files), TypeAdapter(_Shipped), lambda: _parse(files), cache_in)
    return Catalogue(
        shipped.crops, shipped.varieties, {s.id: s for s in shipped.sources}, dict(shipped.families)
    )


@contextmanager
def _no_garbage() -> Iterator[None]:
    """Keep the collector from running over tens of thousands of values that all stay: a fifth of the time."""
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


def _parse(files: Iterable[tuple[str, bytes]]) -> _Shipped:
    read = {name: parsed(data, name) for name, data in files}
    complaints = [*(c for each in read.values() for c in each.complaints), *_across(read)]
    if complaints:
        raise CatalogueError(complaints)
    return _Shipped(
        crops=tuple(c for each in read.values() for c in each.crops),
        varieties=tuple(v for each in read.values() for v in each.varieties),
        sources=tuple(s for each in read.values() for s in each.sources),
        families={each.family: each.family_common for each in read.values() if each.family},
    )


def _across(read: dict[str, CropFile]) -> list[Complaint]:
    """Complaints between files: a crop in two of them, a variety of an unknown crop."""
    seen: dict[str, str] = {}
    faults = []
    for name, each in read.items():
        for crop in each.crops:
            if crop.id in seen:
                faults.append(Complaint(name, crop.id, "id", "twice", f"this crop is in {seen[crop.id]} too"))
            seen[crop.id] = name
    for name, each in read.items():
        for variety in each.varieties:
            if variety.crop not in seen:
                text = f"there is no crop {variety.crop}"
                faults.append(Complaint(name, variety.id, "crop", "unknown-crop", text))
    return faults
