"""The filters of the seed tin that look beyond the catalogue: marks, the date cursor, the selected place."""

from PySide6.QtCore import QObject, Signal

from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.app.tin.filter_bar import Chosen
from gardencanvas.app.tin.fitting import Place, Trial, place_of
from gardencanvas.app.tin.sieve import Judging, Sieve
from gardencanvas.crops.model import Crop
from gardencanvas.crops.search import Wanted
from gardencanvas.fit.report import Verdict
from gardencanvas.season.crop_year import tasks_on
from gardencanvas.words import named
from gardencanvas.words.crop_year import tasks_words
from gardencanvas.words.plain import day, planting_name

_SETTLE_MS = 150  # an edit, a date or a selection that is only passed over starts nothing


class Sifting(QObject):
    """Which crops pass, and what is to be said of them; ``told`` when that has changed."""

    told = Signal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._chosen = Chosen(Wanted())
        self._trial: Trial | None = None
        self._count = (0, 0)
        self._own: set[str] = set()  # crops of the grower's own, and those with such varieties
        self.place: Place | None = None
        self._sieve = Sieve(self)
        self._sieve.progressed.connect(self._progressed)
        self._sieve.finished.connect(self.told)
        self._soon = Soon(self, self._begin, _SETTLE_MS)
        for signal in (session.changed, session.layout_changed, session.selection_changed):
            signal.connect(self._stale_fit)
        session.date_changed.connect(self._stale_date)
        session.previewed.connect(self._previewed)

    # what passes

    def ask(self, chosen: Chosen) -> None:
        """Have crops judged for other filters, or because other crops are known."""
        self._chosen = chosen
        garden, own = self._session.garden, self._session.library.own
        varieties = (*garden.varieties, *own.varieties)
        self._own = {c.id for c in (*garden.crops, *own.crops)} | {v.crop for v in varieties}
        self._begin()

    def lets(self, crop: Crop, chosen: Chosen) -> bool:
        """Whether a crop passes, as far as is known by now."""
        library = self._session.library
        if chosen.favourites and crop.id not in library.marked.favourites:
            return False
        if chosen.in_tin and not library.lots_of(crop.id):
            return False
        if chosen.mine == "wanted" and crop.id not in library.marked.wanted:
            return False
        if chosen.mine == "own" and crop.id not in self._own:
            return False
        return not self._judges or crop.id in self._sieve.passed

    @property
    def said(self) -> dict[str, str]:
        """What is to be said of crops that passed, by id."""
        return self._sieve.passed if self._judges else {}

    @property
    def running(self) -> bool:
        """Whether crops are still being judged."""
        return self._sieve.running or self._soon.isActive()

    def words(self) -> str:
        """How far it is, or what came of it; empty where nothing is judged."""
        if not self._judges or (self._chosen.fits and self.place is None):
            return ""
        done, of = self._count
        if self.running:
            return self.tr("Trying {0} of {1} {2}").format(done, of, self._where())
        return self.tr("{0} of {1} {2}").format(len(self._sieve.passed), of, self._where())

    def _where(self) -> str:
        words = []
        if self._chosen.fits and self.place is not None:
            planting = self.place.planting
            if planting is None:
                words.append(self.tr("fit in {0}").format(self.place.name))
            else:
                words.append(
                    self.tr("fit beside {0}").format(planting_name(self._session.catalogue, planting))
                )
        if self._chosen.now:
            words.append(self.tr("can start {0}").format(day(self._session.on)))
        return self.tr(" and ").join(words)

    @property
    def _judges(self) -> bool:
        return self._chosen.now or self._chosen.fits

    # judging

    def stop(self) -> None:
        """Judge no further."""
        self._soon.stop()
        self._sieve.stop()

    def _begin(self) -> None:
        self.stop()
        session = self._session
        self._trial = self.place = None
        self._sieve.passed = {}
        if self._chosen.fits:
            self.place = place_of(session.garden, session.layout_id, session.selection)
        if self._judges and not (self._chosen.fits and self.place is None):
            crops = [c for c in session.catalogue.crops if self._might(c)]
            self._count = (0, len(crops))
            self._sieve.start(crops, self._judge)
        self.told.emit()

    def _might(self, crop: Crop) -> bool:
        return self._chosen.wanted.lets(crop)

    def _judge(self, crop: Crop) -> Judging:
        session, chosen = self._session, self._chosen
        grown = session.catalogue.resolve(crop.id)
        words = []
        if chosen.now:
            tasks = tasks_on(session.garden.site, grown, session.on)
            if not tasks:
                return None
            words.append(tasks_words(tasks))
            yield
        if chosen.fits and self.place is not None:
            if self._trial is None:
                self._trial = Trial(session.garden, session.layout_id, self.place, session.catalogue)
                yield
            verdict = yield from self._trial.tries(grown, session.on if chosen.now else None)
            if verdict is None or verdict > Verdict.SHARES:
                return None
            words.insert(0, named.verdict(verdict))
        return " · ".join(words)

    def _progressed(self, done: int, of: int) -> None:
        self._count = (done, of)
        self.told.emit()

    def _stale_fit(self, *_: object) -> None:
        if self._chosen.fits:
            self._soon.ask()

    def _stale_date(self, *_: object) -> None:
        if self._chosen.now:
            self._soon.ask()

    def _previewed(self, report: object) -> None:
        self._sieve.pause(on=report is not None)
