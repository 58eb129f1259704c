"""Collect the texts of the program into resources/translations/*.ts and compile the .qm the program reads.

    python packaging/make_translations.py                   collect and compile
    python packaging/make_translations.py --missing ROOM    print what is not translated yet, as JSON
    python packaging/make_translations.py --enter FILE.json enter translations, and compile
    python packaging/make_translations.py --tidy            collect, and drop what the program no longer says

FILE.json maps an English text to its translation, or to the list of its plural forms; where one text is said
otherwise in another place, a context maps to such a table of its own. Qt Linguist edits the files as well.
"""

import argparse
import fcntl
import json
import os
import subprocess
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(CHECKOUT), str(CHECKOUT / "packaging")]

from texts_in_data import read_data
from texts_in_source import Text, read_all, room_of
from ts_file import FORMS, Message, merged, read_ts, ts_text

FOLDER = CHECKOUT / "resources" / "translations"
LANGUAGE = "de"
FILES = ("words", "app", "canvas", "paper", "crops")
"""A text that several of them say stands in the first."""


def ts_path(room: str) -> Path:
    """The translation file of a room."""
    return FOLDER / f"{room}_{LANGUAGE}.ts"


def qm_path() -> Path:
    """The compiled file, of all rooms together."""
    return FOLDER / f"gardencanvas_{LANGUAGE}.qm"


def collected() -> dict[str, list[Message]]:
    """The texts of the program and its data by room, not translated."""
    texts, faults = read_all()
    for fault in faults:
        print(f"{fault.file}:{fault.line}: {fault.why}", file=sys.stderr)
    found = [(room_of(text), _message(text)) for text in texts]
    found += [("crops", _message(text)) for text in read_data()]
    home: dict[tuple[str, str, str], str] = {}
    for room, message in sorted(found, key=lambda each: FILES.index(each[0])):
        home.setdefault(message.key, room)
    return {room: [m for _, m in found if home[m.key] == room] for room in FILES}


def _message(text: Text) -> Message:
    return Message(text.context, text.source, text.comment, text.plural, files=(text.file,))


def entered(messages: list[Message], table: dict[str, object]) -> list[Message]:
    """Messages with the translations of a table."""
    done = []
    for message in messages:
        own = table.get(message.context)
        told = own.get(message.source) if isinstance(own, dict) else None
        told = table.get(message.source) if told is None else told
        if isinstance(told, str) and told and not message.plural:
            message = replace(message, forms=(told,))
        elif isinstance(told, list) and message.plural:
            message = replace(message, forms=tuple(str(form) for form in told))
        done.append(message)
    return done


def compile_all() -> None:
    """Make the .qm of all translation files; needs Qt's lrelease, which comes with PySide6."""
    tool = Path(sys.executable).parent / "pyside6-lrelease"
    sources = [str(ts_path(room)) for room in FILES if ts_path(room).is_file()]
    subprocess.run([str(tool), "-silent", *sources, "-qm", str(qm_path())], check=True)


@contextmanager
def _alone() -> Iterator[None]:
    """Nobody else writes the files meanwhile."""
    FOLDER.mkdir(exist_ok=True)
    folder = os.open(FOLDER, os.O_RDONLY)
    try:
        fcntl.flock(folder, fcntl.LOCK_EX)
        yield
    finally:
        os.close(folder)


def collect(table: dict[str, object] | None = None, *, tidy: bool = False) -> dict[str, list[Message]]:
    """Write the translation files anew, with what `table` translates; what they hold by room."""
    done = {}
    with _alone():
        old = {room: read_ts(ts_path(room)) for room in FILES}
        found = collected()
        used = {message.key for messages in found.values() for message in messages}
        for room, fresh in found.items():
            others = [m for other in FILES if other != room for m in old[other] if m.finished]
            messages = [
                m for m in merged(old[room], fresh, others, tidy=tidy) if not m.gone or m.key not in used
            ]
            done[room] = entered(messages, table) if table else messages
            ts_path(room).write_text(ts_text(done[room], LANGUAGE), "utf-8")
        compile_all()
    return done


def missing(messages: list[Message], memory: Iterable[Message] = ()) -> dict[str, object]:
    """What is not translated, as a table to fill in; with what the same text is called elsewhere."""
    known = {(m.source, m.plural): m.forms for m in memory if m.finished}
    table: dict[str, object] = {}
    for each in messages:
        if not each.finished and not each.gone:
            forms = known.get((each.source, each.plural), ("",) * (FORMS if each.plural else 1))
            table[each.source] = list(forms) if each.plural else forms[0]
    return table


def main() -> int:
    parser = argparse.ArgumentParser(description="Collect and compile the texts to translate.")
    parser.add_argument("--missing", metavar="ROOM", choices=FILES)
    parser.add_argument("--enter", metavar="FILE.json", type=Path)
    parser.add_argument("--tidy", action="store_true")
    asked = parser.parse_args()
    table = json.loads(asked.enter.read_text("utf-8")) if asked.enter else None
    done = collect(table, tidy=asked.tidy)
    if asked.missing:
        memory = [message for messages in done.values() for message in messages]
        print(json.dumps(missing(done[asked.missing], memory), ensure_ascii=False, indent=1))
        return 0
    for room, messages in done.items():
        print(f"{room}: {len(messages)} texts, {len(missing(messages))} to translate")
    return 0


if __name__ == "__main__":
    sys.exit(main())
