"""Names of outlines, as they stand in other programs' files."""

import re

_LONGEST = 80
# ids that drawing programs give by themselves say nothing
_MADE_UP = re.compile(
    r"(path|rect|circle|ellipse|polygon|polyline|line|shape|object|g|svg|layer|vector|feature|id)?"
    r"[-_ ]?\d*([-_]\d+)*",
    re.IGNORECASE,
)


def name_from(value: object) -> str | None:
    """A name for a bed: on one line, not too long; None for what is no name, or was made by a program."""
    if isinstance(value, bool) or not isinstance(value, str | int | float):
        return None
    text = " ".join("".join(c if c.isprintable() else " " for c in str(value)[:1000]).split())
    if not text or _MADE_UP.fullmatch(text):
        return None
    return text if len(text) <= _LONGEST else text[: _LONGEST - 1] + "…"
