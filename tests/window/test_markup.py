"""A grower's words are shown as they are: never read as rich text, wherever they stand in the window."""

import json

import pytest
from PySide6.QtCore import QAbstractItemModel, QModelIndex
from PySide6.QtGui import Qt, QTextDocument
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QGroupBox, QLabel, QTextEdit, QWidget

from gardencanvas.app.session import Session
from gardencanvas.files import garden_from_bytes, garden_to_bytes
from gardencanvas.garden.garden import Garden
from tests.garden.makers import bed, garden, row
from tests.strategies import VARIETIES

MARK = '<b>x</b><img src="file:///etc/passwd">'
FREE = {"name", "note", "place", "path_note", "edge_note", "source", "label"}  # fields for any words


def hostile() -> Garden:
    """A garden in which every free text is markup."""
    value = garden(
        row("p-1"),
        row("p-2", crop="cabbage", y=0.1, varieties=("tall", "small")),
        beds=[bed()],
        varieties=VARIETIES,
    )

    def marked(tree):
        if isinstance(tree, dict):
            return {
                k: MARK if k in FREE and isinstance(v, str) and v != "user" else marked(v)
                for k, v in tree.items()
            }
        return [marked(v) for v in tree] if isinstance(tree, list) else tree

    return garden_from_bytes(json.dumps(marked(json.loads(garden_to_bytes(value)))).encode(), "hostile")


def may_be_rich(text: str) -> bool:
    """Whether Qt would read it as rich text and let a picture of the grower's words through."""
    if not Qt.mightBeRichText(text):
        return False
    document = QTextDocument()
    document.setHtml(text)
    return "￼" in document.toPlainText() or MARK not in document.toPlainText()


def texts_of(widget: QWidget):
    """What a widget shows that Qt may read as rich text, with where it stands."""
    tip = widget.toolTip()
    if tip:
        yield "tooltip", tip
    if isinstance(widget, QLabel) and widget.textFormat() is not Qt.TextFormat.PlainText:
        yield "label", widget.text()
    if isinstance(widget, QTextEdit):
        yield "text", widget.toHtml() if "<img" in widget.toHtml() else ""
    if isinstance(widget, QAbstractItemView) and isinstance(widget.model(), QAbstractItemModel):
        yield from tips_of(widget.model())


def tips_of(model, parent=None):
    parent = parent or QModelIndex()
    for number in range(min(model.rowCount(parent), 60)):
        index = model.index(number, 0, parent)
        tip = index.data(Qt.ItemDataRole.ToolTipRole)
        if isinstance(tip, str):
            yield "item's tooltip", tip
        yield from tips_of(model, index)


def shown_words(widget: QWidget):
    """All words that a widget shows."""
    if isinstance(widget, (QLabel, QAbstractButton)):
        yield widget.text()
    if isinstance(widget, QGroupBox):
        yield widget.title()
    yield widget.windowTitle()
    yield widget.accessibleName()


@pytest.fixture
def main(open_window):
    return open_window(Session(hostile()))


def faults_in(window: QWidget):
    return [
        (type(widget).__name__, widget.objectName(), where, text[:200])
        for widget in (window, *window.findChildren(QWidget))
        for where, text in texts_of(widget)
        if "<img" in text and may_be_rich(text)
    ]


def test_the_check_does_notice(qtbot):
    label = QLabel(MARK)
    qtbot.addWidget(label)
    assert faults_in(label)
    label.setTextFormat(Qt.TextFormat.PlainText)
    assert not faults_in(label)
    label.setToolTip(MARK)
    assert faults_in(label)


@pytest.mark.parametrize("selected", [(), ("p-1",), ("p-2",), ("bed-1",), ("p-1", "p-2")], ids=str)
def test_no_panel_reads_the_growers_words_as_markup(main, qtbot, selected):
    main.session.select(selected)
    for group in (main.left, main.bottom):
        for tab in range(group.count()):
            group.setCurrentIndex(tab)
            qtbot.wait(30)
    qtbot.wait(250)
    assert faults_in(main) == []
    words = [w for widget in (main, *main.findChildren(QWidget)) for w in shown_words(widget)]
    assert any("<img" in w for w in words), "the words are shown, as characters"


def test_menus_and_actions_show_them_as_characters(main):
    for action in main.actions_.all.values():
        for text in (action.toolTip(), action.statusTip()):
            assert not ("<img" in text and may_be_rich(text)), text
