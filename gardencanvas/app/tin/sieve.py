"""Judges crops one by one between the window's events, so that the window stays at hand."""

from collections.abc import Callable, Generator, Sequence
from time import perf_counter

from PySide6.QtCore import QObject, QTimer, Signal

from gardencanvas.crops.model import Crop

SLICE_S = 0.006  # of work at a time; with one step more it stays within a frame
_TOLD_S = 0.3  # between two reports of progress

Judging = Generator[None, None, str | None]  # pauses between steps; what is to be said of a crop that passes


class Sieve(QObject):
    """Lets crops through that a judge approves; ``progressed`` now and then, ``finished`` once."""

    progressed = Signal(int, int)  # judged, of all
    finished = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._crops: Sequence[Crop] = ()
        self._judge: Callable[[Crop], Judging] | None = None
        self._judging: Judging | None = None
        self._next = 0
        self._told = 0.0
        self.passed: dict[str, str] = {}  # crop id -> what is to be said of it
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._slice)

    @property
    def running(self) -> bool:
        """Whether crops are still to be judged."""
        return self._judge is not None

    def start(self, crops: Sequence[Crop], judge: Callable[[Crop], Judging]) -> None:
        """Judge crops, in this order; what was being judged before is dropped."""
        self.stop()
        self._crops, self._judge, self._next, self.passed = crops, judge, 0, {}
        self._told = perf_counter()
        self._timer.start()

    def stop(self) -> None:
        """Leave the rest unjudged."""
        self._timer.stop()
        if self._judging is not None:
            self._judging.close()
        self._judge = self._judging = None

    def pause(self, *, on: bool) -> None:
        """Wait while something else needs the time, or go on."""
        if on:
            self._timer.stop()
        elif self.running:
            self._timer.start()

    def _slice(self) -> None:
        until = perf_counter() + SLICE_S
        while perf_counter() < until and self._judge is not None:
            self._step(self._judge)
        if self._judge is None:
            self.finished.emit()
        elif perf_counter() - self._told > _TOLD_S:
            self._told = perf_counter()
            self.progressed.emit(self._next, len(self._crops))

    def _step(self, judge: Callable[[Crop], Judging]) -> None:
        """Bring the crop in hand a step further, or take the next; stop after the last."""
        if self._judging is None:
            if self._next == len(self._crops):
                self.stop()
                return
            self._judging = judge(self._crops[self._next])
            self._next += 1
        try:
            next(self._judging)
        except StopIteration as end:
            self._judging = None
            if end.value is not None:
                self.passed[self._crops[self._next - 1].id] = end.value
        except Exception:
            self.stop()
            raise
