"""Every text can be translated, is translated into German, and what is shipped holds these translations."""

import ast
import re
import string
import sys
from pathlib import Path
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QTranslator

from tests.packaging.conftest import CHECKOUT, load

MODULES = ("texts_in_source", "untranslated", "ts_file", "texts_in_data", "make_translations")


@pytest.fixture(scope="module")
def tools():
    """The modules that collect texts, as they import each other."""
    path = list(sys.path)
    sys.path.insert(0, str(CHECKOUT / "packaging"))
    yield SimpleNamespace(**{name: load(name, name) for name in MODULES})
    sys.path[:] = path
    for name in MODULES:
        sys.modules.pop(name, None)


@pytest.fixture(scope="module")
def german(tools):
    """All messages of the German files by key: context, source, comment."""
    files = [tools.make_translations.ts_path(room) for room in tools.make_translations.FILES]
    return {m.key: m for file in files for m in tools.ts_file.read_ts(file) if not m.gone}


def told(faults) -> str:
    return "\n".join(f"{fault.file}:{fault.line}: {fault.why}" for fault in faults)


# the source


def test_nothing_reaches_the_screen_untranslated(tools):
    faults = list(tools.untranslated.untranslated())
    assert not faults, told(faults)


def test_every_text_that_is_looked_up_can_be_found(tools):
    texts, faults = tools.texts_in_source.read_all()
    assert not faults, told(faults)
    assert len({text.context for text in texts}) > 50  # as many classes with texts of their own


@pytest.mark.parametrize(
    "line",
    [
        'self.button.setText("Go on")',
        'QLabel("Name")',
        'menu.addAction("Open")',
        'self.setWindowTitle(f"{name} is open")',
        'box.setToolTip("first" if one else self.tr("second"))',
        'self.tr(f"{count} plants")',
        'self.view.say("Nothing to do.")',
        'field.setAccessibleName(text="Width of the bed")',
    ],
)
def test_a_text_left_in_english_is_noticed(tools, line):
    assert list(tools.untranslated.untranslated_in("a.py", ast.parse(line))), line


@pytest.mark.parametrize(
    "line",
    [
        'label.setText(self.tr("Go on"))',
        'QLabel(name, "quiet")',
        'box.setSuffix(" cm")',
        'log.warning("no %s", it)',
    ],
)
def test_a_translated_text_is_not(tools, line):
    assert not list(tools.untranslated.untranslated_in("a.py", ast.parse(line)))


SOURCE = """
class Panel(QWidget):
    def fill(self, window: "MainWindow", n: int):
        self.tr("one" "and two")
        window.tr("three")
        say("{who} is here", who=n)
        say_many("{n} plant", "{n} plants", n)
        QCoreApplication.translate("Canvas", "four")
"""


def test_texts_are_found_under_the_class_that_qt_looks_in(tools):
    """By Qt's documentation of ``tr``: the context is the name of the class."""
    reader = tools.texts_in_source.Reader("gardencanvas/app/a.py", ast.parse(SOURCE))
    found = {(text.context, text.source, text.plural) for text in reader.texts}
    assert found == {
        ("Panel", "oneand two", False),
        ("MainWindow", "three", False),
        ("words", "{who} is here", False),
        ("words", "{n} plants", True),
        ("Canvas", "four", False),
    }
    assert not reader.faults


# the German files


def test_the_files_hold_every_text(tools, german):
    wanted = {m.key for messages in tools.make_translations.collected().values() for m in messages}
    missing, left = wanted - german.keys(), german.keys() - wanted
    assert not missing, f"run packaging/make_translations.py: {sorted(missing)[:5]}"
    assert not left, f"run packaging/make_translations.py: {sorted(left)[:5]}"


def test_every_text_is_translated(german):
    unfinished = [key for key, message in german.items() if not message.finished]
    assert not unfinished, unfinished


def fields(text: str) -> set[str]:
    """The placeholders of a text, read by Python's own parser of formats."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def test_placeholders_are_the_same_on_both_sides(german):
    wrong = [
        (message.source, form)
        for message in german.values()
        for form in message.forms
        # a single thing may go without its number
        if fields(form) != fields(message.source) and fields(form) | {"n"} != fields(message.source)
    ]
    assert not wrong, wrong


def test_ends_and_marks_are_kept(german):
    """A mnemonic, an ellipsis, a colon and the spaces around a text mean something to the window."""
    wrong = [
        (message.source, form)
        for message in german.values()
        for form in message.forms
        if _marks(form) != _marks(message.source)
    ]
    assert not wrong, wrong


def _marks(text: str) -> tuple[bool, ...]:
    ends = [text.endswith(mark) for mark in ("…", ":", "?")]
    return *ends, text[:1].isspace(), text[-1:].isspace(), bool(re.search(r"&\w", text))


def test_what_the_program_reads_is_what_the_files_say(tools, german):
    """The compiled file against the sources, through Qt's own reader."""
    translator = QTranslator()
    assert translator.load(str(tools.make_translations.qm_path()))
    other = []
    for (context, source, comment), message in german.items():
        for form, n in zip(message.forms, (1, 2) if message.plural else (-1,), strict=False):
            if translator.translate(context, source, comment or None, n) != form:
                other.append((context, source))
    assert not other, f"run packaging/make_translations.py: {other[:5]}"


# merging


def test_translations_outlive_a_new_collection(tools, tmp_path: Path):
    message = tools.ts_file.Message
    old = [message("A", "bed", forms=("Beet",)), message("A", "path", forms=("Weg",))]
    new = [message("A", "bed"), message("A", "{n} plants", plural=True)]
    merged = tools.ts_file.merged(old, new)
    file = tmp_path / "a.ts"
    file.write_text(tools.ts_file.ts_text(merged, "de"), "utf-8")
    read = {m.source: m for m in tools.ts_file.read_ts(file)}
    assert read["bed"].forms == ("Beet",)
    assert read["path"].gone
    assert read["path"].forms == ("Weg",)
    assert read["{n} plants"].plural
    assert not read["{n} plants"].finished
    assert tools.ts_file.merged(merged, [message("A", "path")])[0].forms == ("Weg",)


def test_signs_of_xml_come_back(tools, tmp_path: Path):
    message = tools.ts_file.Message("A", 'a < b & "c"\nd', forms=("ä > „ö“\nü",))
    file = tmp_path / "a.ts"
    file.write_text(tools.ts_file.ts_text([message], "de"), "utf-8")
    assert tools.ts_file.read_ts(file) == [message]
