"""The language that sentences are said in.

Sentences are written in English where they are made. The window installs a translation here (it has Qt's
translator); without one, as on the command line, they stay English.
"""

from collections.abc import Callable

Translate = Callable[[str, int | None], str]
"""From an English text and, for texts with a plural, a number, to the text of the language shown."""

CONTEXT = "words"
"""The context that these texts have in the translation files."""

_translate: Translate | None = None


def speak(translate: Translate | None) -> None:
    """Say everything through `translate` from now on; in English where it is None."""
    global _translate
    _translate = translate


def say(text: str, **values: object) -> str:
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


def say_many(one: str, many: str, n: int, **values: object) -> str:
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
