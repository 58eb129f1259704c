"""Hints for a first-time user: one quiet line where it is of use, gone for good once the thing was done.

The empty plan has words of its own (``canvas.furniture.EmptyPlan``), so nothing is said here before it has
a bed. Nothing moves or blinks: there is nothing for reduced motion to switch off.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QToolButton, QWidget

from gardencanvas.app import settings
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.garden.garden import Garden

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_KEY = "hints used"  # names in the settings, parted by spaces
Where = Literal["plan", "season"]


@dataclass(frozen=True, slots=True)
class Hint:
    """What to do, where that is said, and whether there is anything to do it with."""

    name: str
    where: Where
    text: str
    ready: Callable[[], bool]


class HintLine(QWidget):
    """One line of words with a button that sends it away; takes no room while there is nothing to say."""

    def __init__(self) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(10, 0, 6, 0)
        row.setSpacing(6)
        self.words = PlainLabel("", "hint")
        self.words.setWordWrap(True)
        row.addWidget(self.words, 1)
        self.away = QToolButton()
        self.away.setText("×")
        self.away.setProperty("role", "small")
        self.away.setToolTip(self.tr("Do not show this hint again"))
        self.away.setAccessibleName(self.away.toolTip())
        row.addWidget(self.away)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.hide()

    def say(self, text: str) -> None:
        """Show these words; none hide the line."""
        self.words.setText(text)
        self.setVisible(bool(text))


class Hints(QObject):
    """Which hint is shown in a window: the first that was not used yet and has something to be used on."""

    def __init__(self, window: "MainWindow", session: Session) -> None:
        super().__init__(session)
        self._window, self._session = window, session
        self.lines: dict[Where, HintLine] = {"plan": HintLine(), "season": HintLine()}
        self._hints = self._all()
        for line in self.lines.values():
            line.away.clicked.connect(self._dismiss)
        session.changed.connect(self._changed)
        session.date_changed.connect(lambda _on: self.used("date"))
        session.layout_changed.connect(self.show)
        self.show()

    def _all(self) -> tuple[Hint, ...]:
        return (
            Hint(
                "crop",
                "plan",
                self.tr("Drag a crop from the seed tin into a bed: its verdict goes with the mouse."),
                self._has_bed,
            ),
            Hint(
                "date",
                "season",
                self.tr("Drag the date: plants grow, meet, and are taken out. Ctrl+→ goes on by a week."),
                self._has_planting,
            ),
            Hint(
                "findings",
                "plan",
                self.tr("F8 goes to the next finding. The changes that mend it are buttons beside it."),
                self._has_planting,
            ),
            Hint(
                "between",
                "plan",
                self.tr("Press 9 while a crop is on the mouse: it takes a free place between the rows."),
                self._has_planting,
            ),
            Hint(
                "commands",
                "plan",
                self.tr("Ctrl+K finds any command by its name."),
                self._has_planting,
            ),
        )

    def _has_bed(self) -> bool:
        return bool(self._session.layout.beds)

    def _has_planting(self) -> bool:
        return bool(self._session.layout.plantings)

    @property
    def current(self) -> Hint | None:
        """The hint that is due; None where all were used or there is nothing to use them on."""
        used = _used()
        due = next((hint for hint in self._hints if hint.name not in used), None)
        return due if due is not None and due.ready() else None

    def show(self, *_: object) -> None:
        """Show the hint that is due."""
        hint = self.current
        for where, line in self.lines.items():
            line.say(hint.text if hint is not None and hint.where == where else "")

    def used(self, name: str) -> None:
        """Something was done that a hint is about: it is not shown again."""
        used = _used()
        if name not in used:
            settings.keep(_KEY, " ".join(sorted({*used, name})))
            self.show()

    def again(self) -> None:
        """Show all hints once more."""
        settings.keep(_KEY, "")
        self.show()

    def none_used(self) -> bool:
        """Whether there is nothing to show once more."""
        return not _used()

    def _dismiss(self) -> None:
        hint = self.current
        if hint is not None:
            self.used(hint.name)
            self._window.view.setFocus()

    def _changed(self, before: Garden, after: Garden) -> None:
        layout_id = self._session.layout_id
        if any(x.id == layout_id for x in before.layouts):
            were, are = (len(g.layout(layout_id).plantings) for g in (before, after))
            if are > were:
                self.used("crop")
                if self._window.view.place.mode == "between":
                    self.used("between")
        self.show()


def _used() -> set[str]:
    return set(settings.text(_KEY, "").split())
