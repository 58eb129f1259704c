"""The grower's own library: crops, varieties and seed lots of theirs, kept as one TOML file."""

from collections.abc import Iterable
from pathlib import Path
from typing import NamedTuple, TypeVar

import platformdirs

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.check import complaints_in
from gardencanvas.crops.errors import CannotKeep, CatalogueError, Complaint
from gardencanvas.crops.model import Crop, Record, Variety
from gardencanvas.crops.reading import MOST_BYTES, parsed
from gardencanvas.crops.replacing import replace_file
from gardencanvas.crops.tin import SeedLot
from gardencanvas.crops.toml_writing import toml_of

_HEADING = (
    "Crops, varieties and seed lots of the grower's own, for Garden Canvas. Units: m, d, °C, kg, shares 0-1."
)


class Own(Record):
    """What a grower has added."""

    crops: tuple[Crop, ...] = ()
    varieties: tuple[Variety, ...] = ()
    lots: tuple[SeedLot, ...] = ()

    def over(self, shipped: Catalogue) -> Catalogue:
        """The catalogue with these crops and varieties; own ones win."""
        return shipped.with_own(self.crops, self.varieties)


def own_file() -> Path:
    """Where the library lies by default."""
    return platformdirs.user_data_path("gardencanvas", appauthor=False) / "own.toml"


def load_own(path: Path | None = None, shipped: Catalogue | None = None) -> Own:
    """Read a library; an empty one where there is no file yet.

    Raises
    ------
    CatalogueError
        Whose text is one sentence for the grower, if anything in it is not sound. Nothing is half read.
    """
    path = path or own_file()
    try:
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        return Own()
    except OSError as error:
        why = f"the file cannot be read: {error.strerror or error}"
        raise CatalogueError([Complaint(path.name, "", "", "unreadable", why)]) from error
    return own_from_bytes(data, path.name, shipped)


def own_from_bytes(data: bytes, name: str, shipped: Catalogue | None = None) -> Own:
    """The library that some bytes hold; ``name`` is used in complaints. Raises ``CatalogueError``."""
    read = parsed(data, name)
    faults = list(read.complaints) or complaints_in(read, name, shipped or catalogue())
    if faults:
        raise CatalogueError(faults)
    return Own(crops=read.crops, varieties=read.varieties, lots=read.lots)


def own_to_text(own: Own) -> str:
    """A library as the text of its file."""
    tables: list[tuple[str, Record]] = [("crop", c) for c in own.crops]
    tables += [("variety", v) for v in own.varieties]
    tables += [("lot", lot) for lot in own.lots]
    return toml_of(tables, _HEADING)


def save_own(own: Own, path: Path | None = None) -> None:
    """Keep a library, whole or not at all.

    Raises
    ------
    CannotKeep
        With one sentence for the grower.
    """
    path = path or own_file()
    try:
        replace_file(path, own_to_text(own).encode())
    except (OSError, UnicodeEncodeError) as error:
        why = getattr(error, "strerror", None) or error
        raise CannotKeep("{file} could not be written: {why}.", file=path.name, why=why) from error


class Merged(NamedTuple):
    """A library after an import, and what in it was replaced."""

    own: Own
    replaced: tuple[str, ...]  # ids


def merged(own: Own, added: Own) -> Merged:
    """A library with another laid over it: records of the same id are replaced."""
    crops, varieties, lots = (
        _laid_over(own.crops, added.crops),
        _laid_over(own.varieties, added.varieties),
        _laid_over(own.lots, added.lots),
    )
    return Merged(
        Own(crops=crops[0], varieties=varieties[0], lots=lots[0]), (*crops[1], *varieties[1], *lots[1])
    )


R = TypeVar("R", Crop, Variety, SeedLot)


def _laid_over(below: Iterable[R], above: Iterable[R]) -> tuple[tuple[R, ...], tuple[str, ...]]:
    before = {r.id: r for r in below}
    added = {r.id: r for r in above}
    replaced = tuple(i for i, r in added.items() if i in before and before[i] != r)
    return tuple((before | added).values()), replaced
