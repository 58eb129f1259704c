"""The catalogue: every crop known here, with its varieties and sources."""

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cache, cached_property
from pathlib import Path
from typing import Any

from gardencanvas.crops.model import Crop, Source, Variety
from gardencanvas.resources_folder import resources


class UnknownCrop(KeyError):  # noqa: N818 - it is the project's word
    """No crop or variety of that id is known."""

    def __str__(self) -> str:
        return str(self.args[0])


@dataclass(frozen=True)
class Catalogue:
    """Crops, varieties and sources."""

    crops: tuple[Crop, ...]
    varieties: tuple[Variety, ...]
    sources: dict[str, Source]
    _resolved: dict[tuple[str, str | None], Crop] = field(default_factory=dict)

    @cached_property
    def _by_id(self) -> dict[str, Crop]:
        return {c.id: c for c in self.crops}

    def crop(self, crop_id: str) -> Crop:
        """The crop as its file gives it; raises ``UnknownCrop``."""
        try:
            return self._by_id[crop_id]
        except KeyError:
            raise UnknownCrop(crop_id) from None

    def resolve(self, crop_id: str, variety_id: str | None = None) -> Crop:
        """The crop as that variety grows; the same object each time."""
        key = (crop_id, variety_id)
        if key not in self._resolved:
            crop = self.crop(crop_id)
            if variety_id is not None:
                variety = next((v for v in self.varieties if v.id == variety_id and v.crop == crop_id), None)
                if variety is None:
                    raise UnknownCrop(f"{crop_id}, variety {variety_id}")
                crop = variety.over(crop)
            self._resolved[key] = crop
        return self._resolved[key]

    def with_own(self, crops: Iterable[Crop], varieties: Iterable[Variety]) -> "Catalogue":
        """The catalogue with a grower's own crops and varieties added; own ones win."""
        own = tuple(crops)
        mine = {c.id for c in own}
        if not own and not (extra := tuple(varieties)):
            return self
        extra = tuple(varieties)
        return Catalogue((*(c for c in self.crops if c.id not in mine), *own), (*self.varieties, *extra), self.sources)


@cache
def catalogue() -> Catalogue:
    """The shipped catalogue."""
    folder = resources() / "crops"
    crops = [crop for path in sorted(folder.glob("*.toml")) for crop in _crops(path)]
    sources = tomllib.loads((resources() / "sources.toml").read_text(encoding="utf-8"))["source"]
    return Catalogue(tuple(crops), (), {s["id"]: Source.model_validate(s) for s in sources})


def _crops(path: Path) -> list[Crop]:
    data: dict[str, Any] = tomllib.loads(path.read_text(encoding="utf-8"))
    family = data["family"]["name"]
    return [Crop.model_validate({**c, "family": family}) for c in data["crop"]]
