"""Finds texts that a widget, a menu or a page shows as they stand in the source, never translated."""

import ast
import re
from collections.abc import Iterator

from texts_in_source import CHECKOUT, SOURCE, Fault

SHOWING = {
    "setText", "setToolTip", "setStatusTip", "setWhatsThis", "setTitle", "setWindowTitle",
    "setAccessibleName", "setAccessibleDescription", "setPlaceholderText", "setLabelText", "setPrefix",
    "setSuffix", "setInformativeText", "setDetailedText", "setSpecialValueText",
    "setHorizontalHeaderLabels", "setVerticalHeaderLabels", "setHeaderLabels", "setTabText", "setPlainText",
    "setHtml", "setTabToolTip", "addTab", "addRow", "addMenu", "addAction", "addItem", "addItems",
    "addButton", "insertItem", "showMessage", "say", "propose", "push", "drawText", "text", "heading",
    "information", "warning", "question", "critical", "about", "getText", "getOpenFileName",
    "getSaveFileName", "emit",
}  # fmt: skip
"""Methods and functions that show their text."""
WIDGETS = {
    "QLabel", "PlainLabel", "QPushButton", "QToolButton", "QCheckBox", "QRadioButton", "QGroupBox",
    "QAction", "QMenu", "QMessageBox", "QTreeWidgetItem", "QListWidgetItem", "QTableWidgetItem",
    "QStandardItem", "QProgressDialog", "QGraphicsSimpleTextItem", "QGraphicsTextItem", "Column", "Entry",
    "QInputDialog", "Label", "Problem",
}  # fmt: skip
"""Classes that show the text they are made with."""
LOOKING_UP = {"tr", "translate", "say", "say_many", "mark"}
"""Functions that translate; on a window, ``say`` shows a text instead."""
_WORD = re.compile(r"[A-Za-z]{2,}")
_FIELD = re.compile(r"\{[^}]*\}")
NEVER_TRANSLATED = {
    "Garden Canvas", "cm", "mm", "km", "in", "ft", "sq ft", "dpi", "PDF", "PNG", "SVG", "comparison.csv",
    "my-crops.toml", ".pdf", ".csv", "jobs-", "seeds-",
}  # fmt: skip
"""Names, units and parts of file names that no language changes."""
ROLES = {
    "heading", "quiet", "source", "pill", "title", "body", "warning", "estimated", "value", "hint", "right",
    "center", "left", "between", "bed", "fault", "middle",
}  # fmt: skip
"""Codes given beside a text: the role of a label, what an entry of a list stands for."""
_NOT_SHOWN = {"settings", "log", "_log", "logger", "logging", "LOG"}
"""Modules whose methods of such names keep words for the program itself."""


def untranslated() -> Iterator[Fault]:
    """Every literal with words in it that reaches the grower's eyes untranslated, in the rooms with Qt."""
    for room in ("app", "canvas", "paper"):
        for path in sorted((SOURCE / room).rglob("*.py")):
            file = path.relative_to(CHECKOUT).as_posix()
            if path.name != "settings.py":
                yield from untranslated_in(file, ast.parse(path.read_text("utf-8")))


def untranslated_in(file: str, tree: ast.Module) -> Iterator[Fault]:
    """The same for one module."""
    known = {name.name for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) for name in node.names}
    known |= {"tr", "translate"}
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name, owner = _called(node.func)
        if name == "tr" or (name in LOOKING_UP and owner in {"", "QCoreApplication"} and name in known):
            if any(isinstance(argument, ast.JoinedStr) for argument in node.args):
                yield Fault(file, node.lineno, f"an f-string cannot be looked up: {ast.unparse(node)[:90]}")
        elif name in SHOWING | WIDGETS and owner not in _NOT_SHOWN:
            shown = node.args[:1] if name == "addItem" else node.args  # what follows stands for the entry
            for argument in (*shown, *(keyword.value for keyword in node.keywords)):
                for text in _texts(argument):
                    yield Fault(file, node.lineno, f"{name}: {text!r} is not translated")


def _called(function: ast.expr) -> tuple[str, str]:
    """The name of what is called, and of what it is called on."""
    if isinstance(function, ast.Attribute):
        owner = function.value
        return function.attr, owner.id if isinstance(owner, ast.Name) else "…"
    return (function.id if isinstance(function, ast.Name) else ""), ""


def _texts(node: ast.expr) -> Iterator[str]:
    """Literals of an expression that would be shown: in f-strings, lists, either branch of a choice."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        bare = _FIELD.sub("", node.value).strip()
        if _WORD.search(bare) and bare not in NEVER_TRANSLATED | ROLES:
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
