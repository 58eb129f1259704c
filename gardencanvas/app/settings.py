"""What the program remembers between runs: units, look, panel sizes, recent files."""

from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings

RECENT = 10


def store() -> QSettings:
    """The platform's own settings store for this program."""
    return QSettings("Garden Canvas", "Garden Canvas")


def text(key: str, default: str) -> str:
    """A remembered word."""
    value = store().value(key, default)
    return value if isinstance(value, str) else default


def flag(key: str, *, default: bool) -> bool:
    """A remembered yes or no."""
    return text(key, "yes" if default else "no") == "yes"


def number(key: str, default: int) -> int:
    """A whole number that was kept; the default where there is none, or what is kept is none."""
    kept = store().value(key, default)
    try:
        return int(kept)
    except (TypeError, ValueError):
        return default


def keep(key: str, value: str | bool | int) -> None:
    """Remember a word, or a yes or no."""
    store().setValue(key, ("yes" if value else "no") if isinstance(value, bool) else value)


def shape(key: str) -> QByteArray | None:
    """A remembered window or splitter shape."""
    value = store().value(f"shape/{key}")
    return value if isinstance(value, QByteArray) else None


def keep_shape(key: str, value: QByteArray) -> None:
    """Remember a window or splitter shape."""
    store().setValue(f"shape/{key}", value)


def recent_files() -> list[Path]:
    """Recently used gardens that are still there, newest first."""
    value = store().value("recent", [])
    names = [value] if isinstance(value, str) else value if isinstance(value, list) else []
    return [Path(n) for n in names if isinstance(n, str) and Path(n).is_file()][:RECENT]


def remember_file(path: Path) -> None:
    """Put a garden at the top of the recent ones."""
    resolved = str(path.resolve())
    others = [str(p) for p in recent_files() if str(p) != resolved]
    store().setValue("recent", [resolved, *others][:RECENT])


def forget_files() -> None:
    """Empty the list of recent gardens."""
    store().remove("recent")
