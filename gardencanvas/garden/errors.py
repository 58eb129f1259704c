"""Refusals: what is wrong with a value, in one sentence, and nothing changed."""

from pydantic import ValidationError

from gardencanvas.crops.errors import Sayable


class Refusal(Sayable):
    """An edit or file that cannot be accepted; ``str()`` names field, value and what is allowed."""


def _place(location: tuple[int | str, ...]) -> str:
    parts = []
    for step in location:
        if isinstance(step, int):
            parts.append(f"[{step + 1}]")
        else:
            parts.append(("." if parts else "") + shortened(step))
    return "".join(parts) or "the whole"


def shortened(value: object, most: int = 60) -> str:
    """A value from a file as it can stand in a sentence: on one line, and not too long."""
    text = value if isinstance(value, str) else repr(value)
    text = "".join(c if c.isprintable() else "�" for c in text[: most + 1])
    return text if len(text) <= most else text[: most - 3] + "…"


def _allowed(kind: str, message: str, context: dict[str, object]) -> str:
    limits = {
        "greater_than": "more than {gt}",
        "greater_than_equal": "at least {ge}",
        "less_than": "less than {lt}",
        "less_than_equal": "at most {le}",
        "too_long": "at most {max_length} entries, not {actual_length}",
        "too_short": "at least {min_length} entries, not {actual_length}",
        "string_too_long": "at most {max_length} characters",
        "string_too_short": "at least {min_length} character(s)",
        "finite_number": "a finite number",
        "union_tag_invalid": "one of {expected_tags}",
    }
    if kind in limits:
        return "allowed is " + limits[kind].format(**context)
    if kind == "extra_forbidden":
        return "this field is not known"
    if kind == "missing":
        return "this field is missing"
    return shortened(message.removeprefix("Value error, ").rstrip("."), 240)


def refusal(error: ValidationError) -> Refusal:
    """The first complaint of a validation, as a sentence naming field, value and what is allowed."""
    first = error.errors(include_url=False)[0]
    where = _place(first["loc"])
    what = _allowed(first["type"], first["msg"], dict(first.get("ctx", {})))
    if first["type"] in {"missing", "extra_forbidden"} or isinstance(first["input"], (dict, list, tuple)):
        return Refusal(f"{where}: {what}.")
    if not isinstance(first["input"], (str, int, float, bool, type(None))) and not hasattr(
        first["input"], "isoformat"
    ):
        return Refusal(f"{where}: {what}.")
    return Refusal(f"{where} is {shortened(first['input'])}: {what}.")
