"""The grower's own library on the desk: crops, varieties, seed lots and marks, kept at each change."""

from collections.abc import Callable
from functools import cache
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.errors import CannotKeep, CatalogueError
from gardencanvas.crops.marked import Marked, load_marked, save_marked, tin_file
from gardencanvas.crops.model import Crop, Variety
from gardencanvas.crops.own import (
    Merged,
    Own,
    load_own,
    merged,
    own_file,
    own_from_bytes,
    own_to_text,
    save_own,
)
from gardencanvas.crops.reading import MOST_BYTES
from gardencanvas.crops.replacing import replace_file
from gardencanvas.crops.tin import SeedLot
from gardencanvas.words.language import say
from gardencanvas.words.refusals import why_refused

Stamp = tuple[int, int] | None


class NotKept(ValueError):  # noqa: N818 - it is a refusal
    """A change of the library that could not be made; one sentence. Nothing has changed."""


class Shelf(QObject):
    """What the grower owns in all gardens.

    A file that cannot be read is left as it is: ``trouble`` says why, and nothing is kept until it is mended.
    Before a change the files are read anew if another window has written them.
    """

    changed = Signal()  # crops or varieties
    marked_changed = Signal()  # lots, favourites, wanted

    def __init__(self, folder: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._own_file = own_file() if folder is None else folder / own_file().name
        self._tin_file = tin_file() if folder is None else folder / tin_file().name
        self.own, self.marked = Own(), Marked()
        self.trouble = ""
        self._read: dict[Path, Stamp] = {}
        self._load()

    # what is known

    def over(self, shipped: Catalogue) -> Catalogue:
        """The catalogue with the library's crops and varieties."""
        return self.own.over(shipped)

    def lots_of(self, crop_id: str, variety_id: str | None = None) -> tuple[SeedLot, ...]:
        """Seed lots of a crop; of one of its varieties where one is named."""
        return tuple(
            lot
            for lot in self.own.lots
            if lot.crop == crop_id and (variety_id is None or lot.variety == variety_id)
        )

    # changing it; each raises ``NotKept``

    def put_crop(self, crop: Crop) -> None:
        """Keep a crop, in the place of the one with the same id."""
        self._edit(lambda own: merged(own, Own(crops=(crop,))).own)

    def put_variety(self, variety: Variety) -> None:
        """Keep a variety, in the place of the one with the same id."""
        self._edit(lambda own: merged(own, Own(varieties=(variety,))).own)

    def put_lot(self, lot: SeedLot) -> None:
        """Keep a seed lot, in the place of the one with the same id."""
        self._edit(lambda own: merged(own, Own(lots=(lot,))).own)

    def remove(self, record: Crop | Variety | SeedLot) -> None:
        """Take a record out; a crop takes its varieties and lots along."""
        crop = record.id if isinstance(record, Crop) else None
        self._edit(
            lambda own: Own(
                crops=tuple(c for c in own.crops if c != record),
                varieties=tuple(v for v in own.varieties if v != record and v.crop != crop),
                lots=tuple(lot for lot in own.lots if lot != record and lot.crop != crop),
            )
        )

    def mark_favourite(self, crop_id: str, *, on: bool) -> None:
        """Put a crop among the favourites, or take it out."""
        self._mark(lambda marked: marked.with_favourite(crop_id, on=on))

    def mark_wanted(self, crop_id: str, *, on: bool) -> None:
        """Put a crop on the wanted list, or take it off."""
        self._mark(lambda marked: marked.with_wanted(crop_id, on=on))

    # other files

    def import_from(self, path: Path) -> Merged:
        """Take in a library file; says what was replaced. Raises ``NotKept``."""
        try:
            with path.open("rb") as file:
                data = file.read(MOST_BYTES + 1)
            added = own_from_bytes(data, path.name)
        except OSError as error:
            raise NotKept(
                say("{file} cannot be read: {why}.", file=path.name, why=error.strerror or error)
            ) from error
        except CatalogueError as error:
            raise NotKept(f"{error}.") from error
        shipped = {c.id for c in catalogue().crops}
        known = next((c.id for c in added.crops if c.id in shipped), None)
        if known is not None:  # it would hide the shipped crop with its hazards
            raise NotKept(
                say("{file}: {crop} is a shipped crop; give your own another id.", file=path.name, crop=known)
            )
        self._renew()
        result = merged(self.own, added)
        self._edit(lambda _: result.own)
        return result

    def export_to(self, path: Path) -> None:
        """Write the library to another file; raises ``NotKept``."""
        try:
            replace_file(path, own_to_text(self.own).encode())
        except (OSError, UnicodeEncodeError) as error:
            why = getattr(error, "strerror", None) or error
            raise NotKept(say("{file} could not be written: {why}.", file=path.name, why=why)) from error

    # files

    def _load(self) -> None:
        try:
            own, marked = load_own(self._own_file), load_marked(self._tin_file)
        except CatalogueError as error:
            self.trouble = say("Your own crops are not shown: {why}.", why=error)
            return
        self.own, self.marked, self.trouble = own, marked, ""
        self._read = {path: _stamp(path) for path in (self._own_file, self._tin_file)}

    def _renew(self) -> None:
        """Read anew what has changed on the disk; raises ``NotKept`` where that cannot be read."""
        if self.trouble or self._read != {path: _stamp(path) for path in self._read}:
            self._load()
            self.changed.emit()
            self.marked_changed.emit()
        if self.trouble:
            raise NotKept(say("{trouble} Mend or move that file first.", trouble=self.trouble))

    def _edit(self, change: Callable[[Own], Own]) -> None:
        self._renew()
        before = self.own
        after = change(before)
        if after == before:
            return
        try:  # what is kept must be readable again, whole: a library can grow too large
            own_from_bytes(own_to_text(after).encode(), self._own_file.name)
        except CatalogueError as error:
            raise NotKept(f"{error}.") from error
        self._keep(lambda: save_own(after, self._own_file))
        self.own = after
        if (after.crops, after.varieties) != (before.crops, before.varieties):
            self.changed.emit()
        if after.lots != before.lots:
            self.marked_changed.emit()

    def _mark(self, change: Callable[[Marked], Marked]) -> None:
        self._renew()
        after = change(self.marked)
        if after != self.marked:
            self._keep(lambda: save_marked(after, self._tin_file))
            self.marked = after
            self.marked_changed.emit()

    def _keep(self, save: Callable[[], None]) -> None:
        try:
            save()
        except CannotKeep as error:
            raise NotKept(why_refused(error)) from error
        self._read = {path: _stamp(path) for path in self._read}


def _stamp(path: Path) -> Stamp:
    """When a file was written and how long it is; None where there is none."""
    try:
        stat = path.stat()
    except OSError:
        return None
    return stat.st_mtime_ns, stat.st_size


@cache
def shelf() -> Shelf:
    """The library of this user, read once."""
    return Shelf()
