"""Finds every text of the program that is to be translated, by reading the source.

lupdate would do for ``self.tr("…")`` but knows neither ``say`` nor which class ``window.tr("…")`` belongs to.
"""

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent
SOURCE = CHECKOUT / "gardencanvas"
ROOMS = {
    "app": "app", "__main__.py": "app", "canvas": "canvas", "paper": "paper", "words": "words",
    "garden": "words", "planner": "words", "files": "words", "crops": "words",
}  # fmt: skip
"""The translation file that each part of the source belongs to; the command line stays English."""
WORDS = "words"
"""The context of the texts said without Qt."""
CALLED = {"app": "QApplication", "session": "Session", "window": "MainWindow"}
"""What variables and attributes of these names hold throughout the program."""
REFUSING = {"Refusal", "FileRefused", "NewerFormat", "CannotWrite", "CannotKeep"}
"""Errors whose sentence is said by ``words.refusals``."""
SAYING = {"say", "say_many", "mark"}


@dataclass(frozen=True)
class Text:
    """A text in the source, with the context that Qt looks it up in; `plural` where it counts things."""

    context: str
    source: str
    file: str
    line: int
    comment: str = ""
    plural: bool = False


@dataclass(frozen=True)
class Fault:
    """A place where a text cannot be found: it is no literal, or its class is not known."""

    file: str
    line: int
    why: str


def read_all() -> tuple[list[Text], list[Fault]]:
    """Every text of the program in the order of files and lines, and what could not be read."""
    texts: list[Text] = []
    faults: list[Fault] = []
    for path in sorted(SOURCE.rglob("*.py")):
        if path.relative_to(SOURCE).parts[0] in ROOMS:
            reader = Reader(path.relative_to(CHECKOUT).as_posix(), ast.parse(path.read_text("utf-8")))
            texts += reader.texts
            faults += reader.faults
    return texts, faults


def room_of(text: Text) -> str:
    """The name of the translation file that a text belongs to."""
    return ROOMS[Path(text.file).parts[1]]


class Reader(ast.NodeVisitor):
    """Reads one module: `texts` and `faults` hold what it found."""

    def __init__(self, file: str, tree: ast.Module) -> None:
        self.file = file
        self.texts: list[Text] = []
        self.faults: list[Fault] = []
        self._qt = file.split("/")[1] in {"app", "canvas", "paper"}
        self._classes: list[str] = []
        self._scopes: list[dict[str, str]] = []
        self._wrappers = dict(_wrappers(tree))
        self._marked = any(_called(node) == "mark" for node in ast.walk(tree))
        self.visit(tree)

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        """Inside it, ``self`` is of that class."""
        self._classes.append(node.name)
        self.generic_visit(node)
        self._classes.pop()

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        """Inside it, its arguments are of the classes they are annotated with."""
        if node.name in self._wrappers:
            return
        arguments = [*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs]
        self._scopes.append({a.arg: _class_named(a.annotation) for a in arguments if a.annotation})
        self.generic_visit(node)
        self._scopes.pop()

    def visit_Call(self, node: ast.Call) -> None:
        """A call that looks a text up."""
        self.generic_visit(node)
        function = node.func
        if isinstance(function, ast.Attribute) and function.attr == "tr":
            self._take(node, self._class_of(function.value), node.args)
        elif self._qt and _is_translate(function):
            context = _literal(node.args[0]) if node.args else None
            self._take(node, context, node.args[1:])
        elif isinstance(function, ast.Name) and function.id in self._wrappers:
            self._take(node, self._wrappers[function.id], node.args)
        elif isinstance(function, ast.Name) and function.id in SAYING:
            self._take_said(node, function.id)
        elif isinstance(function, ast.Name) and function.id in REFUSING and node.args:
            self._take_refused(node)

    def _take_refused(self, node: ast.Call) -> None:
        text = _literal(node.args[0])
        if text is not None:
            self._add(node, WORDS, text)
        elif isinstance(node.args[0], ast.JoinedStr) and not self.file.endswith("errors.py"):
            self._fault(node, "the text is no literal")

    def _take(self, node: ast.Call, context: str | None, arguments: list[ast.expr]) -> None:
        literals = [_literal(a) for a in arguments[:2]]
        if not context:
            self._fault(node, "its class is not known: annotate it")
        elif not literals or None in literals:
            self._fault(node, "the text is no literal")
        else:
            comment = literals[1] if len(literals) > 1 else ""
            self._add(node, context, literals[0] or "", comment or "", plural=len(arguments) > 2)

    def _take_said(self, node: ast.Call, name: str) -> None:
        wanted = 2 if name == "say_many" else 1
        literals = [_literal(a) for a in node.args[:wanted]]
        if len(literals) < wanted or None in literals:
            if name != "say" or not self._marked:
                self._fault(node, "the text is no literal")
            return
        self._add(node, WORDS, literals[-1] or "", plural=name == "say_many")

    def _add(
        self, node: ast.Call, context: str, source: str, comment: str = "", *, plural: bool = False
    ) -> None:
        if source:
            self.texts.append(Text(context, source, self.file, node.lineno, comment, plural))

    def _fault(self, node: ast.Call, why: str) -> None:
        self.faults.append(Fault(self.file, node.lineno, f"{why}: {ast.unparse(node)[:100]}"))

    def _class_of(self, receiver: ast.expr) -> str | None:
        if isinstance(receiver, ast.Attribute):
            return CALLED.get(receiver.attr.strip("_"))
        if not isinstance(receiver, ast.Name):
            return None
        if receiver.id == "self":
            return self._classes[-1] if self._classes else None
        for scope in reversed(self._scopes):
            if receiver.id in scope:
                return scope[receiver.id]
        return CALLED.get(receiver.id)


def _wrappers(tree: ast.Module) -> Iterator[tuple[str, str]]:
    """Functions of a module that only pass their text on to Qt, with the context they give it."""
    for function in tree.body:
        if isinstance(function, ast.FunctionDef) and function.args.args:
            for node in ast.walk(function):
                if isinstance(node, ast.Call) and _is_translate(node.func) and len(node.args) >= 2:
                    context, text = node.args[:2]
                    if isinstance(text, ast.Name) and text.id == function.args.args[0].arg:
                        yield function.name, _literal(context) or ""


def _is_translate(function: ast.expr) -> bool:
    if isinstance(function, ast.Name):
        return function.id == "translate"
    return (
        isinstance(function, ast.Attribute)
        and function.attr == "translate"
        and isinstance(function.value, ast.Name)
        and function.value.id == "QCoreApplication"
    )


def _called(node: ast.AST) -> str:
    return node.func.id if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) else ""


def _literal(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None


def _class_named(annotation: ast.expr) -> str:
    """The class an annotation names: ``QWidget`` of ``"QWidget | None"``."""
    text = annotation.value if isinstance(annotation, ast.Constant) else ast.unparse(annotation)
    return str(text).split("|")[0].split("[")[0].strip().split(".")[-1]
