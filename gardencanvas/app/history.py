"""Undo as a list of values: every garden there was, and what each step was called.

Not a QUndoStack: in PySide6 6.11 its commands are freed twice when it is collected together with the session
that holds it, which crashes the program some time after another garden was opened.
"""

from PySide6.QtCore import QObject, Signal

from gardencanvas.garden.garden import Garden

MOST_STEPS = 1000  # that can be taken back: a long day's work, in bounded memory


class History(QObject):
    """The gardens of a session in the order of editing; ``garden`` is the present one."""

    moved = Signal()  # a step was made, undone or redone
    clean_changed = Signal(bool)  # whether the present garden is the one that was saved

    def __init__(self, garden: Garden, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._gardens = [garden]
        self._texts: list[str] = []  # of the step from garden i to garden i + 1
        self._at = 0
        self._saved: int | None = 0

    @property
    def garden(self) -> Garden:
        """The present garden."""
        return self._gardens[self._at]

    @property
    def undo_text(self) -> str | None:
        """What undo would take back; None at the beginning."""
        return self._texts[self._at - 1] if self._at > 0 else None

    @property
    def redo_text(self) -> str | None:
        """What redo would do again; None at the end."""
        return self._texts[self._at] if self._at < len(self._texts) else None

    @property
    def steps(self) -> tuple[str, ...]:
        """What the known steps are called, oldest first, undone ones included."""
        return tuple(self._texts)

    @property
    def at(self) -> int:
        """How many of the steps are done."""
        return self._at

    def count(self) -> int:
        """How many steps are known, undone ones included."""
        return len(self._texts)

    def is_clean(self) -> bool:
        """Whether the present garden is the saved one."""
        return self._at == self._saved

    def set_clean(self) -> None:
        """The present garden was saved."""
        self._go(self._at, saved=self._at)

    def set_unsaved(self) -> None:
        """No file holds any garden of this history."""
        self._go(self._at, saved=None)

    def push(self, garden: Garden, text: str) -> None:
        """Make a step; what was undone is forgotten."""
        saved = self._saved if self._saved is not None and self._saved <= self._at else None
        del self._gardens[self._at + 1 :]
        del self._texts[self._at :]
        self._gardens.append(garden)
        self._texts.append(text)
        at = self._at + 1
        if len(self._texts) > MOST_STEPS:
            del self._gardens[0], self._texts[0]
            self._at, at = self._at - 1, at - 1
            self._saved = saved = saved - 1 if saved else None
        self._go(at, saved=saved)

    def undo(self) -> None:
        """One step back, if there is one."""
        if self._at > 0:
            self._go(self._at - 1, saved=self._saved)

    def redo(self) -> None:
        """One step on, if there is one."""
        if self._at < len(self._texts):
            self._go(self._at + 1, saved=self._saved)

    def go_to(self, at: int) -> None:
        """Take back or do again as many steps as it takes until ``at`` of them are done.

        Raises
        ------
        IndexError
            If there are not so many.
        """
        if not 0 <= at <= len(self._texts):
            raise IndexError(f"there are {len(self._texts)} steps, not {at}")
        self._go(at, saved=self._saved)

    def _go(self, at: int, *, saved: int | None) -> None:
        clean, before = self.is_clean(), self._at
        old = self.garden
        self._at, self._saved = at, saved
        if at != before:
            self.moved.emit()
            _lighten(old, self.garden)
        if self.is_clean() != clean:
            self.clean_changed.emit(self.is_clean())


def _lighten(old: Garden, new: Garden) -> None:
    """Drop what the old garden had looked up of its layouts: it can be looked up again."""
    present = {id(layout) for layout in new.layouts}
    for layout in old.layouts:
        if id(layout) not in present:
            layout.__dict__.pop("by_id", None)
