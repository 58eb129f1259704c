"""The inspector's lines for a planting that nobody sowed: when it came up, and what to do about it."""

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.app.volunteers import Volunteers
from gardencanvas.garden.planting import Planting
from gardencanvas.words.volunteers import meaning_words


class VolunteerBox(QWidget):
    """What it means, and buttons to keep, thin and remove it; hidden for what was sown or planted."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._do = Volunteers(session)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        self.said = PlainLabel(role="quiet")
        column.addWidget(self.said)
        row = QHBoxLayout()
        row.setSpacing(4)
        self.keep = QPushButton(self.tr("Keep"))
        self.thin = QPushButton(self.tr("Thin"))
        self.remove = QPushButton(self.tr("Remove"))
        for button, name, do in (
            (self.keep, self.tr("Keep what came up"), self._do.keep),
            (self.thin, self.tr("Thin it to its spacing"), self._do.thin),
            (self.remove, self.tr("Remove what came up"), self._do.remove),
        ):
            button.setAccessibleName(name)
            button.clicked.connect(lambda _checked=False, do=do: do())
            row.addWidget(button, 1)
        column.addLayout(row)

    def show_planting(self, planting: Planting) -> None:
        """Show what can be done about it."""
        self.setVisible(planting.start.kind == "volunteer")
        if self.isHidden():
            return
        self.said.setText(meaning_words(planting.start))
        for button, tip, why_not in (
            (self.keep, self.tr("It stays, and its date is not moved"), self._do.why_not_keep()),
            (self.thin, self.tr("Those too near are left out"), self._do.why_not_thin()),
            (self.remove, self.tr("Take it out of the plan"), self._do.why_not()),
        ):
            button.setEnabled(not why_not)
            button.setToolTip(why_not or tip)
