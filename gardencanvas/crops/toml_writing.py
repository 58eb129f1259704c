"""Write our own records as TOML: one table a record, small values on a line each."""

import json
from collections.abc import Iterable, Mapping
from datetime import date

from gardencanvas.crops.model import Record


def toml_of(tables: Iterable[tuple[str, Record]], heading: str = "") -> str:
    """Records as ``[[name]]`` tables; what equals its default is left out.

    Parameters
    ----------
    tables
        Name of the table and record, in the order to be written.
    heading
        A comment of one line on top.
    """
    lines = [f"# {heading}", ""] if heading else []
    for name, record in tables:
        lines.append(f"[[{name}]]")
        for key, value in record.model_dump(exclude_defaults=True).items():
            if value is not None:
                lines.append(f"{_key(key)} = {_value(value)}")
        lines.append("")
    return "\n".join(lines)


def _key(key: str) -> str:
    return key if key.isascii() and key.replace("_", "a").replace("-", "a").isalnum() else _text(key)


def _value(value: object) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (int, float)):
        return repr(value)
    if isinstance(value, str):
        return _text(str(value))
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, Mapping):
        inside = ", ".join(f"{_key(str(k))} = {_value(v)}" for k, v in value.items() if v is not None)
        return f"{{ {inside} }}" if inside else "{}"
    if isinstance(value, (list, tuple)):
        return "[" + ", ".join(_value(v) for v in value) + "]"
    raise TypeError(f"no TOML for {type(value).__name__}")


def _text(text: str) -> str:
    """A basic string: JSON's escapes are TOML's too, but for the delete character."""
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007F")
