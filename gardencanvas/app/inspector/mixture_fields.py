"""Which varieties stand along the stations, in what shares, and how many seedlings to a station."""

from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QLineEdit, QMenu, QToolButton, QWidget

from gardencanvas.app.inspector.fields import CountField
from gardencanvas.app.inspector.part import FieldPart
from gardencanvas.crops.model import Variety
from gardencanvas.garden.mixtures import mixture, shortest
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Units, variety_name

_MOST_SHARES = 20


class MixtureFields(FieldPart):
    """Names of varieties, typed in the order in which they repeat; their shares as 2 : 1."""

    def build(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        self.names = QLineEdit()
        self.names.setAccessibleName(self.tr("Varieties in the order in which they repeat"))
        self.names.editingFinished.connect(self._named)
        self.add = QToolButton()
        self.add.setText("+")
        self.add.setAccessibleName(self.tr("Add a variety to the sequence"))
        self.add.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        box = QWidget()
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.names, 1)
        row.addWidget(self.add)
        form.addRow(self.tr("Varieties"), box)
        self.shares = QLineEdit()
        self.shares.setAccessibleName(self.tr("Shares of the varieties"))
        self.shares.setPlaceholderText(self.tr("in turns"))
        self.shares.editingFinished.connect(self._shared)
        form.addRow(self.tr("Shares"), self.shares)
        self.clump = CountField(self.tr("Seedlings to a station"), 1, 20)
        self.clump.committed.connect(lambda n: self.commit(self.tr("Change clump"), per_station=n))
        self.clump.setToolTip(self.tr("Seedlings raised together make a clump, spaced and drawn as one"))
        form.addRow(self.tr("Per station"), self.clump)

    def fill(self, planting: Planting) -> None:
        known = self.session.catalogue.varieties_of(planting.crop)
        self.names.setText(", ".join(self._name(v, known) for v in planting.varieties))
        self.names.setPlaceholderText(self.tr("none in particular"))
        self.shares.setText(" : ".join(map(str, planting.shares)))
        self.clump.show_count(planting.per_station)
        menu = QMenu(self.add)
        for variety in known:
            menu.addAction(variety_name(variety), lambda v=variety.id: self._added(v))
        old = self.add.menu()
        self.add.setMenu(menu)
        if old is not None:
            old.deleteLater()
        self._explain(planting, bool(known))

    def _explain(self, planting: Planting, known: bool) -> None:
        """Fields that cannot be used say why."""
        none = self.tr("No variety of this crop is known; the seed tin's menu adds one")
        order = self.tr("Names with commas between; they repeat along the stations: A, B, A, B …")
        for field in (self.names, self.add):
            field.setEnabled(known or bool(planting.varieties))
            field.setToolTip(order if known else none)
        several = len(planting.varieties) > 1
        self.shares.setEnabled(several)
        self.shares.setToolTip(
            self.tr("How many stations each has, such as 2 : 1, evenly mixed; empty: in turns")
            if several
            else self.tr("Only where there are two varieties or more")
        )

    def _name(self, variety: str, known: tuple[Variety, ...]) -> str:
        return next((variety_name(v) for v in known if v.id == variety), variety)

    def _named(self) -> None:
        """Read the names; those that are not known are told."""
        planting = self.planting
        if planting is None:
            return
        known = self.session.catalogue.varieties_of(planting.crop)
        ids = {name.casefold(): v.id for v in known for name in (v.id, v.name, variety_name(v))}
        ids |= {v.casefold(): v for v in planting.varieties}
        typed = [name for part in self.names.text().split(",") if (name := part.strip())]
        strange = [name for name in typed if name.casefold() not in ids]
        if strange:
            self.session.refused.emit(self.tr("No variety of this crop is called “{0}”.").format(strange[0]))
            self.fill(planting)
            return
        self._mixed([ids[name.casefold()] for name in typed])

    def _added(self, variety: str) -> None:
        if self.planting is not None:
            self._mixed([*self._sequence(self.planting), variety])

    def _sequence(self, planting: Planting) -> list[str]:
        """The planting's varieties, each as often as its share says."""
        shares = planting.shares or (1,) * len(planting.varieties)
        return [v for v, n in zip(planting.varieties, shares, strict=True) for _ in range(n)]

    def _mixed(self, sequence: list[str]) -> None:
        planting = self.planting
        if planting is None:
            return
        varieties, shares = mixture(sequence)
        if set(varieties) == set(planting.varieties) and len(sequence) == len(varieties):
            # the same ones in another order, or untouched: their shares stay with them
            old = dict(zip(planting.varieties, planting.shares, strict=False))
            shares = tuple(old[v] for v in varieties) if planting.shares else ()
        if (varieties, shares) != (planting.varieties, planting.shares):
            self.commit(self.tr("Change varieties"), varieties=varieties, shares=shares)

    def _shared(self) -> None:
        planting = self.planting
        if planting is None:
            return
        typed = self.shares.text().replace(":", " ").replace(",", " ").split()
        count = len(planting.varieties)
        numbers = [int(word) for word in typed if word.isdecimal()]
        if len(numbers) != len(typed) or (typed and len(typed) != count) or 0 in numbers:
            self.session.refused.emit(
                self.tr("Give one whole number above 0 to each of the {0} varieties.").format(count)
            )
            self.fill(planting)
            return
        shares = shortest(numbers)
        if shares != planting.shares:
            self.commit(self.tr("Change shares"), shares=shares)
