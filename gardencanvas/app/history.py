"""Undo without end: what each step of a session was called, and what it changed.

The gardens near the present one are kept whole; of earlier and later steps only what they changed
(``garden.steps``), without anything computed from it.

Not a QUndoStack: in PySide6 6.11 its commands are freed twice when it is collected together with the session
that holds it, which crashes the program some time after another garden was opened.
"""

from PySide6.QtCore import QObject, Signal

from gardencanvas.garden.garden import Garden
from gardencanvas.garden.steps import Step, walked

WHOLE = 100  # gardens kept whole to either side of the present one


class History(QObject):
    """The steps of a session in the order of editing; ``garden`` is the present one."""

    moved = Signal()  # a step was made, undone or redone
    clean_changed = Signal(bool)  # whether the present garden is the one that was saved

    def __init__(self, garden: Garden, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._garden = garden
        self._whole = {0: garden}  # by how many steps lead to it; those near the present one
        self._steps: list[Step] = []  # from garden i to garden i + 1
        self._texts: list[str] = []
        self._at = 0
        self._saved: int | None = 0

    @property
    def garden(self) -> Garden:
        """The present garden."""
        return self._garden

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
        del self._steps[self._at :]
        del self._texts[self._at :]
        self._whole = {i: g for i, g in self._whole.items() if i <= self._at}
        self._steps.append(Step.between(self._garden, garden))
        self._texts.append(text)
        self._whole[self._at + 1] = garden
        self._go(self._at + 1, saved=saved)

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
        old = self._garden
        if at != before:
            self._whole[at] = self._garden = self._rebuilt(at)
        self._at, self._saved = at, saved
        if at != before:
            self.moved.emit()
            _lighten(old, self._garden)
            self._thin()
        if self.is_clean() != clean:
            self.clean_changed.emit(self.is_clean())

    def _rebuilt(self, at: int) -> Garden:
        """The garden that so many steps lead to, made from the nearest one that is kept whole."""
        near = min(self._whole, key=lambda i: abs(i - at))
        if near <= at:
            return walked(self._whole[near], self._steps[near:at], back=False)
        return walked(self._whole[near], reversed(self._steps[at:near]), back=True)

    def _thin(self) -> None:
        """Keep whole what is near; of the rest only the steps, and nothing computed from their values."""
        for far in [i for i in self._whole if abs(i - self._at) > WHOLE]:
            del self._whole[far]
            for step in self._steps[max(far - 1, 0) : far + 1]:
                step.forget_caches()


def _lighten(old: Garden, new: Garden) -> None:
    """Drop what the old garden had looked up of its layouts: it can be looked up again."""
    present = {id(layout) for layout in new.layouts}
    for layout in old.layouts:
        if id(layout) not in present:
            layout.__dict__.pop("by_id", None)
