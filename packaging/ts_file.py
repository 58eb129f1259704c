"""Reads and writes translation files of Qt (.ts), in an order that compares well."""

import xml.etree.ElementTree as ElementTree
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from pathlib import Path
from xml.sax.saxutils import escape

FORMS = 2
"""German has two plural forms: for one thing, and for all other numbers."""


@dataclass(frozen=True)
class Message:
    """One text and its translation: one form, or one for each plural form of the language.

    `gone` marks a text that the program no longer has; its translation is kept until tidied.
    """

    context: str
    source: str
    comment: str = ""
    plural: bool = False
    forms: tuple[str, ...] = ()
    files: tuple[str, ...] = field(default=(), compare=False)
    gone: bool = False

    @property
    def key(self) -> tuple[str, str, str]:
        """What tells messages apart."""
        return self.context, self.source, self.comment

    @property
    def finished(self) -> bool:
        """Whether every form is there."""
        return len(self.forms) == (FORMS if self.plural else 1) and all(self.forms)


def read_ts(path: Path) -> list[Message]:
    """The messages of a translation file; none where it is not there yet."""
    if not path.is_file():
        return []
    return [
        _message(context.findtext("name", ""), each)
        for context in ElementTree.parse(path).getroot().iter("context")
        for each in context.iter("message")
    ]


def _message(context: str, element: ElementTree.Element) -> Message:
    told = element.find("translation")
    plural = element.get("numerus") == "yes"
    if told is None:
        forms: tuple[str, ...] = ()
    elif plural:
        forms = tuple(form.text or "" for form in told.iter("numerusform"))
    else:
        forms = (told.text or "",)
    return Message(
        context,
        element.findtext("source", ""),
        element.findtext("comment", ""),
        plural,
        forms if any(forms) else (),
        tuple(location.get("filename", "") for location in element.iter("location")),
        gone=told is not None and told.get("type") == "vanished",
    )


def merged(
    old: Iterable[Message], new: Iterable[Message], others: Iterable[Message] = (), *, tidy: bool = False
) -> list[Message]:
    """The new messages with the translations that old ones of the same key have, or those of `others`.

    Translated messages that are no longer needed stay, marked as gone, unless `tidy`.
    """
    own = {message.key: message for message in old}
    known = {message.key: message for message in others}
    known |= {key: message for key, message in own.items() if message.forms or key not in known}
    fresh: dict[tuple[str, str, str], Message] = {}
    for message in new:
        had, twin = known.get(message.key), fresh.get(message.key)
        plural = message.plural or (twin is not None and twin.plural)
        forms = had.forms if had is not None and had.plural == plural else ()
        files = (*(twin.files if twin else ()), *message.files)
        fresh[message.key] = replace(message, plural=plural, forms=forms, files=tuple(dict.fromkeys(files)))
    gone = [replace(m, gone=True) for k, m in own.items() if k not in fresh and m.forms and not tidy]
    return sorted([*fresh.values(), *gone], key=lambda m: (m.context, m.gone))


def ts_text(messages: Iterable[Message], language: str) -> str:
    """The translation file that holds these messages."""
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>"]
    lines.append(f'<TS version="2.1" language="{language}" sourcelanguage="en">')
    contexts: dict[str, list[Message]] = {}
    for message in messages:
        contexts.setdefault(message.context, []).append(message)
    for context, inside in contexts.items():
        lines += ["<context>", f"    <name>{escape(context)}</name>"]
        for message in inside:
            lines += _lines(message)
        lines.append("</context>")
    return "\n".join([*lines, "</TS>", ""])


def _lines(message: Message) -> list[str]:
    lines = ['    <message numerus="yes">' if message.plural else "    <message>"]
    lines += [f'        <location filename="{escape(file)}"/>' for file in message.files]
    lines.append(f"        <source>{escape(message.source)}</source>")
    if message.comment:
        lines.append(f"        <comment>{escape(message.comment)}</comment>")
    kind = ' type="vanished"' if message.gone else "" if message.finished else ' type="unfinished"'
    if message.plural:
        forms = message.forms or ("",) * FORMS
        lines.append(f"        <translation{kind}>")
        lines += [f"            <numerusform>{escape(form)}</numerusform>" for form in forms]
        lines.append("        </translation>")
    else:
        told = message.forms[0] if message.forms else ""
        lines.append(f"        <translation{kind}>{escape(told)}</translation>")
    lines.append("    </message>")
    return lines
