"""What a row of the seed tin shows beside its name."""

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from gardencanvas.app.session import Session
from gardencanvas.crops.model import Crop, Quantity, Variety
from gardencanvas.crops.spelling import words
from gardencanvas.crops.tin import SeedLot, age_warning
from gardencanvas.words import named

_DIFFERS = 0.12  # by this share and more a variety is called lower, earlier and so on (our convention)


def tr(text: str) -> str:
    """The text in the user's language."""
    return QCoreApplication.translate("SeedTin", text)


@dataclass(frozen=True)
class RowLook:
    """A quiet line and marks."""

    about: str = ""
    hazardous: bool = False
    favourite: bool = False
    warned: bool = False  # all its seed is old
    varieties: int = 0
    open: bool = False


class Looks:
    """How the crops and varieties of a session look."""

    def __init__(self, session: Session) -> None:
        self._session = session
        self.open: set[str] = set()  # crops whose varieties are shown
        self.matched: set[str] = set()  # crops of whose varieties one is searched for by name
        self.said: Mapping[str, str] = {}  # what the filters found of crops
        self._favourites: frozenset[str] = frozenset()
        self._lots: dict[str, list[SeedLot]] = {}
        self._own: frozenset[tuple[str, str | None]] = frozenset()
        self.read_own()

    def read_own(self) -> None:
        """Read favourites, seed lots and what is the grower's own anew."""
        library, garden = self._session.library, self._session.garden
        crops = ((c.id, None) for c in (*garden.crops, *library.own.crops))
        varieties = ((v.crop, v.id) for v in (*garden.varieties, *library.own.varieties))
        self._own = frozenset([*crops, *varieties])
        self._favourites = frozenset(library.marked.favourites)
        self._lots = {}
        for lot in library.own.lots:
            self._lots.setdefault(lot.crop, []).append(lot)

    def is_open(self, crop_id: str) -> bool:
        """Whether a crop's varieties are shown."""
        return crop_id in self.open or crop_id in self.matched

    def fold(self, crop_id: str, *, show: bool) -> None:
        """Show a crop's varieties, or hide them."""
        if show:
            self.open.add(crop_id)
        else:
            self.open.discard(crop_id)
            self.matched.discard(crop_id)

    def match(self, text: str) -> None:
        """Show varieties that are searched for by their own name."""
        asked = words(text)
        self.matched = {
            v.crop
            for v in self._session.catalogue.varieties
            if asked and all(any(w.startswith(a) for w in words(v.name)) for a in asked)
        }

    def of_crop(self, crop: Crop, varieties: int) -> RowLook:
        """How a crop's row looks."""
        own = tr("your own") if (crop.id, None) in self._own else ""
        told = [self.said.get(crop.id, ""), self._seed_words(crop), own, about(crop)]
        return RowLook(
            about=" · ".join(w for w in told if w),
            hazardous=any(h.severity == "high" for h in crop.hazards),
            favourite=crop.id in self._favourites,
            warned=self._is_old(crop),
            varieties=varieties,
            open=self.is_open(crop.id),
        )

    def of_variety(self, crop: Crop, variety: Variety) -> RowLook:
        """How a variety's row looks."""
        own = tr("your own") if (variety.crop, variety.id) in self._own else ""
        told = [own, named.shipped(variety.note) or differences(crop, variety)]
        return RowLook(about=" · ".join(w for w in told if w) or tr("variety"))

    def _is_old(self, crop: Crop) -> bool:
        lots = self._lots.get(crop.id, ())
        return bool(lots) and all(age_warning(lot, crop, self._session.on) for lot in lots)

    def _seed_words(self, crop: Crop) -> str:
        years = sorted({lot.year for lot in self._lots.get(crop.id, ())})
        if not years:
            return ""
        word = tr("old seed {0}") if self._is_old(crop) else tr("seed {0}")
        return word.format(", ".join(map(str, years)))


def about(crop: Crop) -> str:
    """Layer and roots in a few words: ``low, shallow roots``."""
    told = [named.layer(crop.layer)]
    if crop.rooting is not None:
        told.append(named.roots(crop.rooting.value))
    return ", ".join(told)


def differences(crop: Crop, variety: Variety) -> str:
    """How a variety differs from its crop, without numbers: ``lower, earlier``."""
    pairs = (
        (variety.height_m, crop.height_m, tr("lower"), tr("taller")),
        (variety.spread_m, crop.spread_m, tr("narrower"), tr("wider")),
        (variety.harvest_from_sowing_d, crop.harvest_from_sowing_d, tr("earlier"), tr("later")),
        (variety.harvest_from_planting_d, crop.harvest_from_planting_d, tr("earlier"), tr("later")),
        (variety.harvest_length_d, crop.harvest_length_d, tr("shorter harvest"), tr("longer harvest")),
    )
    told = [_differs(own, usual, less, more) for own, usual, less, more in pairs]
    return ", ".join(dict.fromkeys(w for w in told if w))


def _differs(own: Quantity | None, usual: Quantity | None, less: str, more: str) -> str:
    if own is None or usual is None or usual.mid <= 0.0:
        return ""
    share = own.mid / usual.mid
    return less if share <= 1.0 - _DIFFERS else more if share >= 1.0 + _DIFFERS else ""
