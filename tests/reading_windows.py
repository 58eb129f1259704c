"""Reads what a window shows: texts that were never translated, and texts that do not fit where they stand."""

import re
from collections.abc import Iterator

from PySide6.QtCore import QAbstractListModel, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenu,
    QTabBar,
    QWidget,
)

from gardencanvas.app.labels import ElidedLabel
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.garden import Garden
from tests import pseudo_locale


def names_in(garden: Garden) -> list[str]:
    """What the grower named, what no language changes, and names of crops, which have their own place."""
    found = [
        garden.name,
        garden.site.place,
        garden.site.climate.source,
        "Garden Canvas",
        "English",
        "Deutsch",
        "Letter",
        "Tabloid",
    ]
    for layout in garden.layouts:
        found += [layout.name, layout.note]
        for item in layout.items():
            found += [getattr(item, word, "") for word in ("name", "note", "path_note", "edge_note")]
    found += [fixture.name for fixture in garden.fixtures]
    for crop in catalogue().crops:
        found += [crop.name, crop.botanical, crop.family, *crop.other_names, *crop.names.values()]
    found += [f"{s.author}: {s.title}" for s in catalogue().sources.values() if s.author]  # citations
    return list(pseudo_locale.longest_first(found))


def texts_of(widget: QWidget) -> Iterator[str]:
    """All that a widget shows or tells, but what is typed into it."""
    yield from (widget.toolTip(), widget.statusTip(), widget.accessibleName(), widget.accessibleDescription())
    if widget.isWindow():
        yield widget.windowTitle()
    if isinstance(widget, QLabel | QAbstractButton):
        yield widget.text()
    elif isinstance(widget, QGroupBox):
        yield widget.title()
    elif isinstance(widget, QLineEdit):
        yield widget.placeholderText()
    elif isinstance(widget, QComboBox):
        yield from (widget.itemText(i) for i in range(widget.count()))
    elif isinstance(widget, QTabBar):
        yield from (widget.tabText(i) for i in range(widget.count()))
    elif isinstance(widget, QMenu):
        for action in widget.actions():
            yield from (action.text(), action.toolTip())
    elif isinstance(widget, QAbstractSpinBox) and hasattr(widget, "suffix"):
        yield from (widget.prefix(), widget.suffix())
    elif isinstance(widget, QAbstractItemView):
        yield from _cells(widget)


def _cells(view: QAbstractItemView) -> Iterator[str]:
    model = view.model()
    if isinstance(view, QHeaderView) or model is None:
        return
    for column in range(1 if isinstance(model, QAbstractListModel) else model.columnCount()):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")
        for row in range(min(model.rowCount(), 40)):
            index = model.index(row, column)
            yield str(index.data() or "")
            yield from (
                str(model.index(below, column, index).data() or "") for below in range(model.rowCount(index))
            )


def untranslated(root: QWidget, names: list[str]) -> list[str]:
    """Words outside the brackets, with the widget they stand in."""
    found = []
    for widget in (root, *root.findChildren(QWidget)):
        for text in texts_of(widget):
            bare = pseudo_locale.bare_words(_without_keys(" ".join(text.split())), names)
            if bare:
                found.append(f"{type(widget).__name__}: {text!r}")
    return sorted(set(found))


_KEYS = re.compile(r"\((?:Ctrl|Shift|Alt|F\d|Page \w+|[A-Z])[^)]*\)|\b(?:Ctrl|Shift|Alt)\+\S+|  \S+$")


def _without_keys(text: str) -> str:
    """A text without the names of keys, which Qt translates by itself."""
    return re.sub(
        r"\((?:Ctrl|Shift|Alt|F\d|Page \w+|[A-Z])[^)]*\)|\b(?:Ctrl|Shift|Alt)\+\S+|  \S+$", " ", text
    )


def clipped(root: QWidget) -> list[str]:
    """Widgets in sight that are smaller than their text."""
    found = []
    for widget in root.findChildren(QWidget):
        if widget.isVisible() and widget.width() > 0:
            told = _cut(widget)
            if told:
                found.append(f"{type(widget).__name__}: {told!r}")
    return sorted(set(found))


def _cut(widget: QWidget) -> str:
    if isinstance(widget, ElidedLabel):
        return ""
    if isinstance(widget, QLabel) and widget.text():
        if widget.wordWrap():
            return widget.text() if widget.heightForWidth(widget.width()) > widget.height() + 1 else ""
        return widget.text() if widget.minimumSizeHint().width() > widget.width() + 1 else ""
    if isinstance(widget, QTabBar):
        shown = [i for i in range(widget.count()) if widget.isTabVisible(i)]
        out = [i for i in shown if widget.tabRect(i).right() > widget.width()]
        return ", ".join(widget.tabText(i) for i in out)
    if isinstance(widget, QAbstractButton) and widget.text():
        wanted = max(widget.fontMetrics().horizontalAdvance(line) for line in widget.text().split("\n"))
        return widget.text() if wanted > widget.width() else ""
    return ""
