"""A language that nobody speaks: every text accented, 40 % longer and in brackets.

What stands without brackets in a window that speaks it was never translated; what does not fit is clipped in
other languages too.
"""

import re
from collections.abc import Iterable, Iterator

from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtWidgets import QApplication

from gardencanvas.words.language import speak

OPEN, CLOSE = "⟦", "⟧"
_ACCENTED = str.maketrans("aeiounycsAEIOUNYCS", "áéíôüñýçšÁÉÍÔÜÑÝÇŠ")
_KEPT = re.compile(r"(\{[^}]*\}|\(\*\.[^)]*\)|;;|&\w)")
_DATE = re.compile(r"[dMy. ]+")  # how a day is written, not a text
LONGER = 0.4
"""How much longer German and its like run than English: 30 to 40 % for whole sentences (common practice)."""


def pseudo(text: str) -> str:
    """A text in that language; placeholders, mnemonics and the ends of file names stay."""
    if not text.strip() or _DATE.fullmatch(text):
        return text
    parts = _KEPT.split(text)
    accented = "".join(part if number % 2 else part.translate(_ACCENTED) for number, part in enumerate(parts))
    longer = "~" * max(1, round(LONGER * len(re.sub(_KEPT, "", text))))
    if ";;" in text:  # filters of a file dialog
        return accented
    return f"{OPEN}{accented}{_words_of(longer)}{CLOSE}"


def _words_of(filling: str) -> str:
    """Filling that may break between lines, as words do."""
    return " ".join(filling[start : start + 8] for start in range(0, len(filling), 8))


class Pseudo(QTranslator):
    """Translates every text of every context."""

    def isEmpty(self) -> bool:
        """Never: it knows every text."""
        return False

    def translate(self, context: str, text: str, comment: str | None = None, n: int = -1) -> str:
        """The text in that language."""
        return pseudo(text)


def install(app: QApplication) -> Pseudo:
    """Let the windows made from now on speak it; the caller holds what is returned."""
    translator = Pseudo(app)
    QCoreApplication.installTranslator(translator)
    speak(lambda text, _n: pseudo(text))
    return translator


def remove(translator: Pseudo) -> None:
    """Speak English again."""
    QCoreApplication.removeTranslator(translator)
    speak(None)


def bare_words(text: str, names: Iterable[str] = ()) -> str:
    """What of a text stands outside the brackets and is no given name: words of three letters or more."""
    if not _outside(text):
        return ""
    for name in names:
        text = text.replace(name, " ")
    return _outside(text)


def _outside(text: str) -> str:
    depth, outside = 0, []
    for letter in text:
        depth += (letter == OPEN) - (letter == CLOSE)
        outside.append(letter if depth == 0 and letter != CLOSE else " ")
    return " ".join(re.findall(r"[^\W\d_]{3,}", "".join(outside)))


def longest_first(names: Iterable[str]) -> Iterator[str]:
    """Names in the order in which they are to be looked for: a name may hold another."""
    return iter(sorted({name for name in names if name}, key=len, reverse=True))
