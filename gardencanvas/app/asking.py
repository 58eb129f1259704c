"""Questions about files, each with its answers as buttons that say what will happen."""

from collections.abc import Mapping
from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMessageBox, QWidget

from gardencanvas.files.keeping.sittings import Holder
from gardencanvas.files.stamps import Change
from gardencanvas.words.plain import day


def choose(window: QWidget, title: str, text: str, more: str, answers: Mapping[str, str]) -> str | None:
    """Ask; the key of the chosen answer, None where it was put aside. The first is the usual one."""
    box = QMessageBox(window)
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle(title)
    box.setText(text)
    box.setInformativeText(more)
    buttons = {box.addButton(words, QMessageBox.ButtonRole.ActionRole): key for key, words in answers.items()}
    box.setDefaultButton(next(iter(buttons)))
    box.addButton(QMessageBox.StandardButton.Cancel)
    box.exec()
    answer = buttons.get(box.clickedButton())  # type: ignore[call-overload]
    box.deleteLater()
    return answer


def moment(when: datetime) -> str:
    """A moment such as “25 November, 17:03”."""
    local = when.astimezone()
    return f"{day(local.date())}, {local:%H:%M}"


def ask_held(window: QWidget, name: str, holder: Holder) -> str | None:
    """Another window has the file: "read" or "take"."""
    since = window.tr(" since {0}").format(moment(holder.since)) if holder.since else ""
    return choose(
        window,
        window.tr("This garden is open already"),
        window.tr("“{0}” is open in another window{1}.").format(name, since),
        window.tr(
            "You can look at it here, and save what you change under another name. Or let this window write "
            "the file from now on: the other one then becomes read-only and keeps its unsaved work."
        ),
        {"read": window.tr("Open read-only"), "take": window.tr("Take over")},
    )


def ask_changed(window: QWidget, name: str, change: Change, *, unsaved: bool) -> str | None:
    """Another program changed or removed the file: "theirs", "both", "mine" or, if it is gone, "again"."""
    if change is Change.GONE:
        return choose(
            window,
            window.tr("The file is not there any more"),
            window.tr("“{0}” was moved, renamed or deleted, or its disk is not connected.").format(name),
            window.tr("The garden is still here in this window."),
            {"again": window.tr("Save it there again"), "other": window.tr("Save as…")},
        )
    mine = window.tr("You have changes here that are not saved.") if unsaved else ""
    answers = {
        "both": window.tr("Keep both"),
        "theirs": window.tr("Take the file's"),
        "mine": window.tr("Keep mine"),
    }
    if not unsaved:
        answers = {"theirs": window.tr("Take the file's"), "mine": window.tr("Keep mine")}
    return choose(
        window,
        window.tr("The file was changed"),
        window.tr("Another program changed “{0}” since it was opened or saved here. {1}")
        .format(name, mine)
        .strip(),
        window.tr(
            "“Keep both” saves yours beside it under a name of its own. Whatever you choose, the other one "
            "stays among the earlier versions in the File menu."
        ),
        answers,
    )


def ask_read_only(window: QWidget, name: str) -> str | None:
    """Saving in a read-only window: "other" or "take"."""
    return choose(
        window,
        window.tr("Read-only here"),
        window.tr("“{0}” is open in another window, which may be changing it.").format(name),
        window.tr("Your changes are kept. Save them under another name, or let this window write the file."),
        {"other": window.tr("Save as…"), "take": window.tr("Take over and save")},
    )
