"""After a crash or power cut: what was being worked on, how it differs from the file, what to do with it."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QListWidget, QPushButton, QVBoxLayout

from gardencanvas.app import filing
from gardencanvas.app.asking import moment
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.saving import beside
from gardencanvas.app.session import Session
from gardencanvas.files import CannotWrite, FileRefused, open_stamped, save_garden
from gardencanvas.files.differences import differences
from gardencanvas.files.keeping.recovery import Claimed, claimed, left_over
from gardencanvas.garden.garden import Garden
from gardencanvas.words.differences import in_words
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


def found_work() -> list[Claimed]:
    """Work that no file holds, in hand; what a file holds after all is tidied away."""
    hands = []
    for left in left_over():
        hand = claimed(left)
        if hand is None:
            continue
        if hand.differs():
            hands.append(hand)
        else:
            hand.done()
    return hands


def offer_work(window: "MainWindow", *, asked: bool = False) -> None:
    """Offer what was being worked on, if anything was; if ``asked`` for, say so when there is nothing."""
    hands = found_work()
    if hands:
        dialog = RecoveryDialog(window, hands)
        dialog.exec()
        dialog.deleteLater()
    elif asked:
        filing.tell(window, window.tr("Nothing to recover"), window.tr("No window ended with unsaved work."))


class RecoveryDialog(QDialog):
    """Left-over work, one by one."""

    def __init__(self, window: "MainWindow", hands: list[Claimed]) -> None:
        super().__init__(window)
        self._window, self._hands = window, hands
        self.setWindowTitle(self.tr("Work that was not saved"))
        self.resize(620, 340)
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addWidget(
            PlainLabel(
                self.tr("The program ended before this was saved. Nothing is thrown away until you say so."),
                "heading",
            )
        )
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Unsaved work"))
        self.list.setSpacing(3)
        column.addWidget(self.list, 1)
        self.what = PlainLabel("", "body")
        self.what.setMinimumHeight(64)
        self.what.setAlignment(Qt.AlignmentFlag.AlignTop)
        column.addWidget(self.what)
        self.open = self._button(self.tr("&Open it"), self._open)
        self.both = self._button(self.tr("Keep &both"), self._keep_both)
        self.drop = self._button(self.tr("Keep the &file's"), self._keep_file)
        self.later = self._button(self.tr("&Later"), self.reject)
        row = QHBoxLayout()
        for button in (self.open, self.both, self.drop):
            row.addWidget(button)
        row.addStretch(1)
        row.addWidget(self.later)
        column.addLayout(row)
        self.open.setDefault(True)
        self.list.currentRowChanged.connect(self._show)
        self._fill()

    def _button(self, text: str, do: object) -> QPushButton:
        button = QPushButton(text)
        button.clicked.connect(do)
        return button

    def _fill(self) -> None:
        self.list.clear()
        for hand in self._hands:
            left = hand.left
            where = str(left.path) if left.path else self.tr("never saved to a file")
            name = left.name or self.tr("A garden")
            self.list.addItem(f"{name} · {moment(left.written)}\n{where}")
        self.list.setCurrentRow(0)

    @property
    def _hand(self) -> Claimed:
        return self._hands[max(self.list.currentRow(), 0)]

    def _show(self, row: int) -> None:
        if not 0 <= row < len(self._hands):
            return
        hand = self._hand
        has_file = hand.left.path is not None
        readable = True
        try:
            text = self._told(hand.garden(), hand.saved(), has_file=has_file)
        except FileRefused as error:
            readable, text = False, self.tr("It cannot be read: {0}").format(why_refused(error))
        self.what.setText(text)
        self.open.setEnabled(readable)
        self.both.setEnabled(readable)
        self.both.setText(self.tr("Keep &both") if has_file else self.tr("&Save as…"))
        self.drop.setText(self.tr("Keep the &file's") if has_file and readable else self.tr("&Throw away"))
        self.both.setToolTip(self.tr("Saves it beside the file, under a name of its own") if has_file else "")
        self.drop.setToolTip(
            self.tr("The file stays as it is; this work stays among its earlier versions") if has_file else ""
        )

    def _told(self, worked: Garden, saved: Garden | None, *, has_file: bool) -> str:
        if saved is None:
            plantings = sum(len(layout.plantings) for layout in worked.layouts)
            why = self.tr("Its file is not there, or cannot be opened.") if has_file else ""
            return self.tr("{0} plantings in {1} layouts. {2}").format(plantings, len(worked.layouts), why)
        return self.tr("Against the file: {0}").format(in_words(differences(saved, worked)))

    # answers

    def _open(self) -> None:
        hand = self._hand
        if not self._window.filing.may_leave(self._window.session):
            return
        path, stamp, saved = hand.left.path, None, None
        try:
            worked = hand.garden()
            if path is not None and path.exists():
                saved, stamp = open_stamped(path)
        except FileRefused as error:
            filing.tell(self, self.tr("It cannot be opened"), why_refused(error))
            return
        self._window.set_session(Session.recovered(worked, saved, path, stamp))
        self._window.keeping.keep_now()  # it is in a new journal before the old one goes
        self._settled(hand)
        self.accept()

    def _keep_both(self) -> None:
        hand = self._hand
        try:
            worked = hand.garden()
            if hand.left.path is None:
                path = filing.ask_save(self, f"{hand.left.name or 'garden'}")
                if path is None:
                    return
            else:
                path = beside(hand.left.path, self.tr("recovered"), hand.left.written)
            save_garden(worked, path)
        except (CannotWrite, FileRefused) as error:
            filing.tell(self, self.tr("It could not be saved"), why_refused(error))
            return
        self._window.say(self.tr("Saved as {0}.").format(path.name))
        self._settled(hand)

    def _keep_file(self) -> None:
        hand = self._hand
        try:
            if self.open.isEnabled():  # else there is nothing in it that could be kept
                hand.keep_as_version()
        except FileRefused as error:
            filing.tell(self, self.tr("It stays for now"), why_refused(error))
            return
        self._settled(hand)

    def _settled(self, hand: Claimed) -> None:
        hand.done()
        self._hands.remove(hand)
        if self._hands:
            self._fill()
        else:
            self.accept()

    def done(self, result: int) -> None:
        for hand in self._hands:
            hand.let_go()
        super().done(result)
