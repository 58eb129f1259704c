"""Finds texts that a widget, a menu or a page shows as they stand in the source, never translated."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from texts_in_source import CHECKOUT, SOURCE, Fault

SHOWING = {
    "setText", "setToolTip", "setStatusTip", "setWhatsThis", "setTitle", "setWindowTitle",
    "setAccessibleName", "setAccessibleDescription", "setPlaceholderText", "setLabelText", "setPrefix",
    "setSuffix", "setInformativeText", "setDetailedText", "setSpecialValueText",
    "setHorizontalHeaderLabels", "setVerticalHeaderLabels", "setHeaderLabels", "setTabText",
    "setTabToolTip", "addTab", "addRow", "addMenu", "addAction", "addItem", "addItems", "addButton",
    "insertItem", "showMessage", "say", "propose", "push", "drawText", "text", "heading", "information",
    "warning", "question", "critical", "about", "getText", "getOpenFileName", "getSaveFileName", "emit",
}  # fmt: skip
"""Methods and functions that show their text."""
WIDGETS = {
    "QLabel", "PlainLabel", "QPushButton", "QToolButton", "QCheckBox", "QRadioButton", "QGroupBox",
    "QAction", "QMenu", "QMessageBox", "QTreeWidgetItem", "QListWidgetItem", "QTableWidgetItem",
    "QStandardItem", "QProgressDialog", "QInputDialog", "Label", "Problem",
}  # fmt: skip
"""Classes that show the text they are made with."""
_WORD = re.compile(r"[A-Za-z]{2,}")
_FIELD = re.compile(r"\{[^}]*\}")
SAME_EVERYWHERE = {
    "Garden Canvas", "cm", "mm", "km", "in", "ft", "sq ft", "dpi", "heading", "quiet", "source", "pill", "title",
    "PDF", "PNG", "SVG", "right", "center", "left",
}  # fmt: skip
"""Names and units that no language changes, and the roles that a label is given beside its text."""


def untranslated() -> Iterator[Fault]:
    """Every literal with words in it that reaches the grower's eyes untranslated, in the rooms with Qt."""
    for room in ("app", "canvas", "paper"):
        for path in sorted((SOURCE / room).rglob("*.py")):
            yield from untranslated_in(path)


def untranslated_in(path: Path) -> Iterator[Fault]:
    """The same for one module."""
    tree = ast.parse(path.read_text("utf-8"))
    file = path.relative_to(CHECKOUT).as_posix() if path.is_relative_to(CHECKOUT) else path.name
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if isinstance(node.func, ast.Attribute) and name == "tr" or name in {"translate", "say_many"}:
            if any(isinstance(argument, ast.JoinedStr) for argument in node.args):
                yield Fault(file, node.lineno, f"an f-string cannot be looked up: {ast.unparse(node)[:90]}")
        if name in SHOWING | WIDGETS:
            for argument in node.args:
                for text in _texts(argument):
                    yield Fault(file, node.lineno, f"{name}: {text!r} is not translated")


def _texts(node: ast.expr) -> Iterator[str]:
    """Literals of an expression that would be shown: also in f-strings, lists, and either branch of a choice."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        bare = _FIELD.sub("", node.value).strip()
        if _WORD.search(bare) and bare not in SAME_EVERYWHERE:
            yield node.value
    elif isinstance(node, ast.JoinedStr):
        for part in node.values:
            yield from _texts(part.value if isinstance(part, ast.FormattedValue) else part)
    elif isinstance(node, ast.IfExp):
        yield from _texts(node.body)
        yield from _texts(node.orelse)
    elif isinstance(node, ast.BinOp):
        yield from _texts(node.left)
        yield from _texts(node.right)
    elif isinstance(node, ast.List | ast.Tuple):
        for element in node.elts:
            yield from _texts(element)
