"""Crops a grower has marked: favourites, and what is wanted for the next order. Kept beside the library."""

import tomllib
from pathlib import Path
from typing import Annotated

from pydantic import Field, ValidationError

from gardencanvas.crops.errors import CannotKeep, CatalogueError, Complaint, complaints_of
from gardencanvas.crops.model import Record, Slug
from gardencanvas.crops.own import own_file
from gardencanvas.crops.replacing import replace_file

MOST_BYTES = 1024 * 1024
Names = Annotated[tuple[Slug, ...], Field(max_length=5000)]


class Marked(Record):
    """Crop ids, in the order in which they were marked. An id that no catalogue knows any more stays."""

    favourites: Names = ()
    wanted: Names = ()

    def with_favourite(self, crop_id: str, *, on: bool) -> "Marked":
        """With a crop among the favourites, or not."""
        return Marked(favourites=_with(self.favourites, crop_id, on=on), wanted=self.wanted)

    def with_wanted(self, crop_id: str, *, on: bool) -> "Marked":
        """With a crop on the wanted list, or not."""
        return Marked(favourites=self.favourites, wanted=_with(self.wanted, crop_id, on=on))


def _with(ids: tuple[str, ...], crop_id: str, *, on: bool) -> tuple[str, ...]:
    others = tuple(i for i in ids if i != crop_id)
    return (*others, crop_id) if on else others


def tin_file() -> Path:
    """Where they are kept by default: ``tin.toml`` in the folder of the library."""
    return own_file().with_name("tin.toml")


def load_marked(path: Path | None = None) -> Marked:
    """Read them; none where there is no file yet.

    Raises
    ------
    CatalogueError
        Whose text is one sentence for the grower, if the file is not sound.
    """
    path = path or tin_file()
    try:
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        return Marked()
    except OSError as error:
        raise _refused(path, "unreadable", f"the file cannot be read: {error.strerror or error}") from error
    if len(data) > MOST_BYTES:
        raise _refused(path, "too-large", f"the file has more than {MOST_BYTES / 1e6:.0f} MB")
    try:
        return Marked.model_validate(tomllib.loads(data.decode("utf-8-sig")))
    except ValidationError as error:
        raise CatalogueError(complaints_of(error, path.name, "")) from error
    except (ValueError, RecursionError) as error:  # bytes that are no text, text that is no TOML
        raise _refused(path, "not-toml", "this is not a sound TOML file") from error


def save_marked(marked: Marked, path: Path | None = None) -> None:
    """Keep them, whole or not at all.

    Raises
    ------
    CannotKeep
        With one sentence for the grower.
    """
    path = path or tin_file()
    lines = ["# Favourites and wanted crops of the grower's own, for Garden Canvas.", ""]
    for name in Marked.model_fields:
        lines += [f"{name} = [", *(f'    "{i}",' for i in getattr(marked, name)), "]", ""]
    try:
        replace_file(path, "\n".join(lines).encode())
    except OSError as error:
        raise CannotKeep(
            "{file} could not be written: {why}.", file=path.name, why=error.strerror or error
        ) from error


def _refused(path: Path, code: str, text: str) -> CatalogueError:
    return CatalogueError([Complaint(path.name, "", "", code, text)])
