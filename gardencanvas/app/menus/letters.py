"""A letter of its own for every entry of a menu, in whatever language the menu is."""

import re

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

_MARK = re.compile(r"&(?!&)(\w)")


def give_letters(menu: QMenu) -> None:
    """Keep the letter that an entry's text asks for; where it is taken or missing give it a free one.

    The first that asks for a letter has it, entries without keys of their own before the others. A free one
    is sought among the first letters of the entry's words, then among all of them. Entries named by the
    grower (they carry data) are left as they are.
    """
    taken: set[str] = set()
    without = []
    entries = [a for a in menu.actions() if not a.isSeparator() and a.data() is None]
    for action in entries:
        inner = action.menu()
        if isinstance(inner, QMenu):
            give_letters(inner)
    for action in sorted(entries, key=lambda a: bool(a.shortcuts())):  # who has keys needs a letter less
        asked = _letter(action)
        if asked and asked not in taken:
            taken.add(asked)
        else:
            without.append(action)
    for action in without:
        text = _plain(action.text())
        at = _free(text, taken)
        if at is None:
            action.setText(_doubled(text))
        else:
            taken.add(text[at].lower())
            action.setText(_doubled(text[:at]) + "&" + _doubled(text[at:]))


def _letter(action: QAction) -> str:
    found = _MARK.search(action.text().replace("&&", ""))
    return found[1].lower() if found else ""


def _plain(text: str) -> str:
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&")


def _doubled(text: str) -> str:
    return text.replace("&", "&&")


def _free(text: str, taken: set[str]) -> int | None:
    """Where a letter stands that is not taken."""
    starts = [m.start() for m in re.finditer(r"\b\w", text)]
    for at in (*starts, *range(len(text))):
        if text[at].isalnum() and text[at].lower() not in taken:
            return at
    return None
