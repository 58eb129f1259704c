"""Finding by name: commands, what stands on the plan, and the steps that led to it."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

from gardencanvas.app.search_list import Entry, SearchList
from gardencanvas.garden.garden import Item
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import planting_name, plants_counted

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


def find_command(window: "MainWindow") -> SearchList:
    """A list of every command by name, with its menu and keys; one that cannot be done says why."""
    entries = []
    for name, action in window.actions_.all.items():
        keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        place = " › ".join(_menus(action))
        entries.append(
            Entry(
                _plain(action.text()),
                f"{place}  {keys}".strip(),
                action.trigger,
                "" if action.isEnabled() else window.actions_.why_not(name),
            )
        )
    title = window.tr("Find a command")
    return SearchList(window, title, window.tr("What do you want to do?"), entries)


def find_on_plan(window: "MainWindow") -> SearchList:
    """A list of everything in the shown layout by name; choosing selects it and brings it into view."""
    session = window.session
    layout = session.layout

    def show(item: Item) -> None:
        session.select([item.id])
        window.view.zoom_to({item.id})
        window.view.setFocus(Qt.FocusReason.OtherFocusReason)

    entries = []
    for planting in layout.plantings:
        bed = bed_of(layout, planting)
        where = bed.name if bed is not None else window.tr("outside any bed")
        note = f"{where}, {plants_counted(planting.plants)}"
        entries.append(Entry(planting_name(session.catalogue, planting), note, lambda p=planting: show(p)))
    others: list[Item] = [i for i in layout.items() if not isinstance(i, Planting)]
    entries += [
        Entry(i.name, _kind(window, i), lambda i=i: show(i)) for i in (*others, *session.garden.fixtures)
    ]
    title = window.tr("Find on the plan")
    return SearchList(window, title, window.tr("Crop, variety, bed or support"), entries)


def find_step(window: "MainWindow") -> SearchList:
    """Every step of this session, newest first; choosing one goes back or on to it."""
    history = window.session.history
    names = (window.tr("As it was at first"), *history.steps)
    entries = [
        Entry(name, _when(window, number, history.at), lambda number=number: history.go_to(number))
        for number, name in enumerate(names)
    ]
    return SearchList(window, window.tr("Steps"), window.tr("Back or on to…"), entries[::-1])


def _when(window: "MainWindow", number: int, at: int) -> str:
    """Whether a step is the last that is done, or is taken back."""
    if number == at:
        return window.tr("now")
    return window.tr("taken back") if number > at else ""


def _kind(window: "MainWindow", item: Item) -> str:
    return {
        "Bed": window.tr("bed"),
        "Path": window.tr("path"),
        "Cover": window.tr("cover"),
        "Fixture": window.tr("fixture"),
    }.get(type(item).__name__, window.tr("support"))


def _plain(text: str) -> str:
    """A command's text without the marks of its key."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&")


def _menus(action: QAction) -> list[str]:
    """The menus an action lies in, outermost first."""
    found: list[str] = []
    menu = next((m for m in action.associatedObjects() if isinstance(m, QMenu)), None)
    while menu is not None:
        if menu.title():
            found.insert(0, _plain(menu.title()))
        parent = menu.parent()
        menu = parent if isinstance(parent, QMenu) else None
    return found
