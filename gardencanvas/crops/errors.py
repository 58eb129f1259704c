"""What can be wrong with a crop file, and where: file, crop, field, why."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from pydantic import ValidationError


class Sayable(ValueError):  # noqa: N818 - a base of refusals
    """An error told to the grower: a whole sentence, and values by name, so that any language can say it.

    ``str()`` is the sentence in English.
    """

    def __init__(self, text: str = "", /, **values: object) -> None:
        super().__init__(text.format(**values) if values else text)
        self.text, self.values = text, values


class UnknownCrop(KeyError):  # noqa: N818 - it is the project's word
    """No crop or variety of that id is known."""

    def __str__(self) -> str:
        return str(self.args[0])


@dataclass(frozen=True, slots=True)
class Complaint:
    """One thing that is wrong; ``code`` is for machines, ``text`` for people (one sentence, no full stop)."""

    file: str
    crop: str  # id, or its place in the file where it has none
    field: str
    code: str
    text: str

    def __str__(self) -> str:
        where = ", ".join(part for part in (self.crop, self.field) if part)
        whole = f"{self.file}: {where}: {self.text}" if where else f"{self.file}: {self.text}"
        return "".join(c if c.isprintable() else "\ufffd" for c in whole)  # it may reach a terminal


class CatalogueError(ValueError):
    """A crop file that cannot be used; ``str()`` is its first complaint."""

    def __init__(self, complaints: Iterable[Complaint]) -> None:
        self.complaints = tuple(complaints)
        more = len(self.complaints) - 1
        first = str(self.complaints[0])
        super().__init__(f"{first} (and {more} more)" if more > 0 else first)


class CannotKeep(Sayable):
    """The grower's own library could not be written; what was there before is still there."""


_ALLOWED = {
    "greater_than": "allowed is more than {gt}",
    "greater_than_equal": "allowed is at least {ge}",
    "less_than": "allowed is less than {lt}",
    "less_than_equal": "allowed is at most {le}",
    "string_too_long": "allowed are at most {max_length} characters",
    "string_too_short": "allowed is at least {min_length} character",
    "too_long": "allowed are at most {max_length} entries, not {actual_length}",
    "too_short": "at least {min_length} entry is needed",
    "finite_number": "a finite number is needed",
    "extra_forbidden": "this field is not known",
    "missing": "this field is missing",
    "string_pattern_mismatch": "an id is made of small letters, digits and single hyphens",
}
_LONGEST = 60  # characters of a foreign value that are quoted


def complaints_of(error: ValidationError, file: str, crop: str) -> list[Complaint]:
    """Complaints of one record's validation, a field each."""
    return [
        Complaint(file, crop, _field(e["loc"]), str(e["type"]), _why(dict(e)))
        for e in error.errors(include_url=False)
    ]


def _field(location: tuple[int | str, ...]) -> str:
    parts = [f"[{step + 1}]" if isinstance(step, int) else f".{step}" for step in location]
    return "".join(parts).lstrip(".")[:_LONGEST]


def _why(error: dict[str, Any]) -> str:
    kind, value = str(error["type"]), error.get("input")
    why = _ALLOWED[kind].format(**error.get("ctx", {})) if kind in _ALLOWED else str(error["msg"])
    why = why.removeprefix("Value error, ")
    if kind in {"missing", "extra_forbidden"} or not isinstance(value, (str, int, float)):
        return why
    text = value if isinstance(value, str) else f"{value:g}" if isinstance(value, float) else str(value)[:80]
    return f"{_plain(text)!r}: {why}" if isinstance(value, str) else f"{text}: {why}"


def _plain(text: str) -> str:
    return text if len(text) <= _LONGEST else text[: _LONGEST - 1] + "…"
