"""The tabs below and beside the plan that are made when they are first shown.

A panel is added here: a name, where it stands, its title, and how it is made. The import of its module
stands inside the maker, so that the window starts without it.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from PySide6.QtWidgets import QWidget

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


@dataclass(frozen=True, slots=True)
class Tab:
    """A panel that is made late."""

    name: str
    side: Literal["left", "bottom"]
    title: str
    build: Callable[[], QWidget]


def tabs(window: "MainWindow") -> tuple[Tab, ...]:
    """The late tabs of a window, in their order."""

    def jobs() -> QWidget:
        from gardencanvas.app.work.jobs_panel import JobsPanel

        return JobsPanel(window)

    def seeds() -> QWidget:
        from gardencanvas.app.work.seeds_panel import SeedsPanel

        return SeedsPanel(window)

    def gaps() -> QWidget:
        from gardencanvas.app.gaps.panel import GapsPanel

        return GapsPanel(window)

    return (
        Tab("gaps", "left", window.tr("Gaps"), gaps),
        Tab("jobs", "bottom", window.tr("Jobs"), jobs),
        Tab("seeds", "bottom", window.tr("Seeds"), seeds),
    )
