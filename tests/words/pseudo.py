"""A language in which every letter is wide: what stays narrow was never translated."""

import re
from collections.abc import Iterable, Iterator
from contextlib import contextmanager

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.garden import Garden
from gardencanvas.words.language import speak

_WIDE = {
    ord(c): ord(c) - ord("!") + ord("！") for c in map(chr, range(ord("!"), ord("~") + 1)) if c.isalpha()
}
_WORD = re.compile(r"[A-Za-z][A-Za-z']+")
UNITS = frozenset({"cm", "kg", "lb", "sq", "ft", "in"})


def _widened(text: str, _: int | None) -> str:
    """The text with all its letters wide but those of its placeholders."""
    return "".join(p if p.startswith("{") else p.translate(_WIDE) for p in re.split(r"(\{\w+\})", text))


@contextmanager
def spoken_wide() -> Iterator[None]:
    """Everything is said in the wide language inside, in English again afterwards."""
    speak(_widened)
    try:
        yield
    finally:
        speak(None)


def names_in(garden: Garden, known: Catalogue) -> list[str]:
    """Names, which are the grower's or the data's and stay as they are; the longest first."""
    names = {c.name for c in known.crops}
    names |= {v.name for c in known.crops for v in known.varieties_of(c.id)}
    names |= {str(getattr(item, "name", "")) for lay in garden.layouts for item in lay.by_id.values()}
    return sorted(names - {""}, key=len, reverse=True)


def narrow(said: str, names: Iterable[str] = ()) -> list[str]:
    """Words of a sentence that were not translated, but for units and these names."""
    for name in names:
        said = said.replace(name, "")
    return [w for w in _WORD.findall(said) if w not in UNITS]
