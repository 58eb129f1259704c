"""What every tool and gesture has in common."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent

from gardencanvas.canvas.look import CM
from gardencanvas.garden.value import Point

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


@dataclass(frozen=True, slots=True)
class Pointer:
    """Where the mouse is: in centimetres on the plan and in pixels of the viewport."""

    at: QPointF
    pixel: QPoint
    modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier

    @property
    def plan(self) -> Point:
        """The place in plan metres."""
        return self.at.x() / CM, self.at.y() / CM

    def holds(self, key: Qt.KeyboardModifier) -> bool:
        """Whether a modifier key is down."""
        return bool(self.modifiers & key)


class Gesture:
    """One drag, from press to release. Nothing is committed before ``end``; ``cancel`` leaves no trace."""

    def __init__(self, view: PlanView) -> None:
        self.view = view

    def begin(self, pointer: Pointer) -> None:
        """The button went down."""

    def move(self, pointer: Pointer) -> None:
        """The mouse moved; at most once a frame."""

    def end(self, pointer: Pointer) -> None:
        """The button came up: commit."""

    def cancel(self) -> None:
        """Give up: everything as it was."""

    def key(self, event: QKeyEvent) -> bool:
        """Take a key; True when it was of use."""
        return False


class Tool(Gesture):
    """A way of working that stays until another is chosen."""

    name = ""
    takes_space = False  # else Space pans
    takes_letters = False  # of units that are typed; else they choose tools
    cursor = Qt.CursorShape.ArrowCursor

    def hint(self) -> str:
        """One line that says what to do."""
        return ""

    def enter(self) -> None:
        """The tool was chosen."""

    def leave(self) -> None:
        """Another tool was chosen."""
        self.cancel()

    def hover(self, pointer: Pointer) -> None:
        """The mouse moved with no button down."""

    def double_click(self, pointer: Pointer) -> None:
        """The button went down twice."""
