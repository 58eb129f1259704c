"""The language that sentences are said in, and how it writes numbers.

Sentences are written in English where they are made. The window installs a translation here (it has Qt's
translator); without one, as on the command line, they stay English.
"""

from collections.abc import Callable

Translate = Callable[[str, int | None], str]
"""From an English text and, for texts with a plural, a number, to the text of the language shown."""

CONTEXT = "words"
"""The context that these texts have in the translation files."""

ENGLISH = "en"
_COMMA = frozenset({"de"})
"""Languages that write a decimal comma, and a point between thousands (for German: DIN 1333)."""
_SWAPPED = str.maketrans(".,", ",.")

_translate: Translate | None = None
_code = ENGLISH


def speak(translate: Translate | None, code: str = ENGLISH) -> None:
    """Say everything through `translate` from now on; in English where it is None.

    `code` names the language as in ISO 639-1: names of crops and the marks in numbers follow it.
    """
    global _translate, _code
    _translate, _code = translate, code


def spoken() -> str:
    """The code of the language shown, as in ISO 639-1."""
    return _code


def figure(number: float, form: str = "g") -> str:
    """A number in a format of Python's, with the decimal mark of the language: ``0.32``, ``0,32``."""
    return local(format(number, form))


def local(written: str) -> str:
    """A number written with a decimal point, with the marks of the language shown."""
    return written.translate(_SWAPPED) if _code in _COMMA else written


def say(text: str, /, **values: object) -> str:
    """A text in the language shown, with each ``{name}`` replaced by the value of that name.

    `text` must be a literal, or one from a table that is wrapped in ``mark`` there: that is how the texts to
    translate are found in the source. It holds a whole sentence, so that a translation is free to order it
    anew.
    """
    told = text if _translate is None else _translate(text, None)
    return told.format(**values) if values else told


def mark(text: str) -> str:
    """The same text: it marks a literal in a table, which ``say`` takes from there when it is used."""
    return text


def say_many(one: str, many: str, n: int, /, **values: object) -> str:
    """A text for a number of things: `one` for a single thing, else `many`; ``{n}`` is the number.

    Both must be literals. A translation is kept under `many` with the plural forms its language has.
    """
    if _translate is None:
        told = one if n == 1 else many
    else:
        told = _translate(many, n)
        if told == many and n == 1:  # not translated
            told = one
    return told.format(n=n, **values)
