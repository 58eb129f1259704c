"""What the README promises under "Your data", each promise held by a test."""

import ast
import json
import os
import random
import re
import subprocess
import sys
from pathlib import Path

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.errors import CatalogueError
from gardencanvas.crops.own import Own, own_from_bytes, own_to_text
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import save_garden
from gardencanvas.resources_folder import resources
from tests.garden.makers import garden, row

CROPS = catalogue()
CHECKOUT = Path(__file__).resolve().parents[1]
PACKAGE = CHECKOUT / "gardencanvas"

# Every Python-level use of the network raises an audit event (PEP 578), whichever library uses it.
WATCHED = """
import os, sys
wrote = []

def watch(event, args):
    if event.startswith(("socket.", "urllib.", "http.", "ftplib.", "smtplib.")):
        if event == "socket.__new__" and args[1] == 1:  # AF_UNIX: within this machine
            return
        os.write(2, f"NETWORK {event} {args}\\n".encode())
        os._exit(99)
    if event == "open" and isinstance(args[0], (str, bytes)):
        path, mode, flags = args
        if flags is not None and flags & (os.O_WRONLY | os.O_RDWR | os.O_CREAT):
            wrote.append(os.fsdecode(path))
    elif event in ("os.rename", "os.mkdir", "os.remove", "os.link", "os.symlink", "os.truncate", "os.chmod"):
        wrote.append(os.fsdecode(args[0]) if isinstance(args[0], (str, bytes)) else str(args[0]))
    elif event in ("subprocess.Popen", "os.system", "os.exec", "os.posix_spawn", "os.fork"):
        os.write(2, f"PROGRAM {event} {args}\\n".encode())
        os._exit(98)

sys.addaudithook(watch)
"""

# What Qt might do past Python: no socket but those within the machine, and its network library not loaded.
NO_SOCKETS = """
import os, re
from pathlib import Path

def inet():
    inodes = set()
    for kind in ("tcp", "tcp6", "udp", "udp6", "raw", "raw6"):
        table = Path("/proc/self/net") / kind
        if table.exists():
            inodes |= {line.split()[9] for line in table.read_text().splitlines()[1:]}
    mine = set()
    for entry in Path("/proc/self/fd").iterdir():
        try:
            found = re.fullmatch(r"socket:\\[(\\d+)\\]", os.readlink(entry))
        except OSError:
            continue
        if found:
            mine.add(found[1])
    return mine & inodes

if sys.platform == "linux":
    assert not inet(), inet()
    assert "libQt6Network" not in Path("/proc/self/maps").read_text()
assert "PySide6.QtNetwork" not in sys.modules
"""

HEADLESS = """
from gardencanvas.__main__ import main
folder = sys.argv[1]
demo, own = folder + "/demo.gardencanvas", folder + "/own.toml"
assert main(["demo", demo]) == 0
assert main(["check", demo]) in (0, 1)
assert main(["check", demo, "--json"]) in (0, 1)
assert main(["picture", demo, folder + "/plan.png"]) == 0
assert main(["picture", demo, folder + "/plan.svg"]) == 0
assert main(["bedmap", demo, folder + "/map.pdf"]) == 0
"""

WINDOW = """
from pathlib import Path
from PySide6.QtCore import QTimer
from gardencanvas.app.recovery_dialog import offer_work
from gardencanvas.app.session import Session
from gardencanvas.app.start import application, demo_garden
from gardencanvas.app.versions_dialog import VersionsDialog
from gardencanvas.app.window import MainWindow
from gardencanvas.files import save_garden
from gardencanvas.garden import edits

app = application()
path = Path(sys.argv[1]) / "g.gardencanvas"
save_garden(demo_garden(), path)
window = MainWindow(Session.opened(path))
window.show()
session = window.session
layout = session.garden.layouts[0]
assert session.propose(edits.remove(session.garden, layout.id, [layout.plantings[0].id]), "Remove")
assert window.keep_now() == ""
for tab in range(window.bottom.count()):
    window.bottom.setCurrentIndex(tab)
    app.processEvents()
window.actions_.all["save"].trigger()
dialog = VersionsDialog(window)
app.processEvents()
QTimer.singleShot(1500, app.quit)
app.exec()
window.close()
"""


def watched(program, folder, *before):
    command = [*before, sys.executable, "-c", WATCHED + program, str(folder)]
    surroundings = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(CHECKOUT)}
    done = subprocess.run(
        command, cwd=folder, env=surroundings, capture_output=True, text=True, timeout=120, check=False
    )
    assert done.returncode == 0, done.stderr[-3000:]
    return done.stdout


def _without_network():
    """The command that runs another one in a place with no network at all, where there is one."""
    command = ["unshare", "--net"] if os.geteuid() == 0 else ["unshare", "--user", "--map-root-user", "--net"]
    try:
        works = subprocess.run([*command, "true"], capture_output=True, check=False).returncode == 0
    except OSError:
        works = False
    return command if works else []


def test_the_watch_does_notice(tmp_path):
    """The watch itself: a name looked up, and a program started, end the watched program."""
    for program, code in (
        ("import socket; socket.getaddrinfo('localhost', 80)", 99),
        ("import os; os.system('true')", 98),
    ):
        command = [sys.executable, "-c", WATCHED + program]
        assert subprocess.run(command, capture_output=True, check=False).returncode == code


@pytest.mark.gui
@pytest.mark.parametrize("program", [HEADLESS, WINDOW], ids=["commands", "window"])
def test_no_network_and_no_other_program_is_used(program, tmp_path):
    watched(program + NO_SOCKETS, tmp_path, *_without_network())


def _writes(tmp_path, *arguments):
    """Files outside the program's own cache that a command opens for writing, makes, renames or removes."""
    program = f"""
import gardencanvas.__main__
from gardencanvas.crops.built import cache_folder
code = gardencanvas.__main__.main({list(arguments)!r})
import json
own = (str(cache_folder()), str(cache_folder().parent), "/dev/null")
print("WROTE", json.dumps([w for w in wrote if not w.startswith(own) and "__pycache__" not in w]))
"""
    said = watched(program, tmp_path)
    return json.loads(said.rpartition("WROTE ")[2])


def test_check_writes_nothing_beside_a_file(tmp_path):
    folder = tmp_path / "theirs"
    folder.mkdir()
    sound, broken = folder / "g.gardencanvas", folder / "broken.gardencanvas"
    save_garden(garden(row()), sound)
    broken.write_bytes(sound.read_bytes()[:100])
    before = {p: (p.stat().st_mtime_ns, p.read_bytes()) for p in folder.iterdir()}
    for path in (sound, broken, folder / "missing.gardencanvas"):
        assert _writes(tmp_path, "check", str(path)) == []
    assert {p: (p.stat().st_mtime_ns, p.read_bytes()) for p in folder.iterdir()} == before


BANNED_CALLS = {"eval", "exec", "compile", "__import__", "execfile"}
BANNED_MODULES = {
    "pickle", "marshal", "shelve", "subprocess", "socket", "ssl", "http", "urllib", "ftplib", "smtplib",
    "asyncio", "ctypes", "runpy", "code", "imp", "importlib", "webbrowser", "xmlrpc", "requests", "yaml",
    "multiprocessing",
}  # fmt: skip
BANNED_QT = {"QtNetwork", "QtWebEngineWidgets", "QtQml", "QtWebSockets", "QDesktopServices", "QProcess"}
ALLOWED = {("__main__.py", "importlib")}  # metadata only: which PySide6 is installed


def _imports(tree):
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((alias.name.split(".")[0], alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module.split(".")[0], node.module
            yield from (
                (alias.name, node.module) for alias in node.names if node.module.startswith("PySide6")
            )
            if node.module.startswith("PySide6."):
                yield node.module.split(".")[1], node.module


def test_nothing_in_the_program_can_run_code_of_a_file_or_reach_out():
    """No way to run text as a program, to load objects with code in them, to start programs or to connect."""
    found = []
    for path in PACKAGE.rglob("*.py"):
        tree = ast.parse(path.read_text("utf-8"))
        found += [
            (path.name, name)
            for name, _module in _imports(tree)
            if name in BANNED_MODULES | BANNED_QT and (path.name, name) not in ALLOWED
        ]
        for node in ast.walk(tree):
            if (
                isinstance(node, ast.Call)
                and isinstance(node.func, ast.Name)
                and node.func.id in BANNED_CALLS
            ):
                found.append((path.name, node.func.id))
            if isinstance(node, ast.keyword) and node.arg == "allow_pickle":
                assert isinstance(node.value, ast.Constant)
                assert node.value.value is False, path.name
    assert found == []


def test_a_garden_file_names_no_other_file_and_no_address():
    """Nothing in the format is a path or an address that could be followed."""
    schema = json.loads((resources() / "format" / "garden.schema.json").read_text("utf-8"))
    formats = {value["format"] for value in _objects(schema) if isinstance(value.get("format"), str)}
    assert formats == {"date"}
    fields = {name for value in _objects(schema) for name in value.get("properties", {})}
    assert not {
        f for f in fields if any(w in f for w in ("path_", "file", "url", "href", "image", "script"))
    } - {"path_note"}


def _objects(tree):
    if isinstance(tree, dict):
        yield tree
        for value in tree.values():
            yield from _objects(value)
    elif isinstance(tree, list):
        for value in tree:
            yield from _objects(value)


def _own_library():
    """A sound library: two crops, their varieties and a seed lot."""
    crops = tuple(CROPS.crop(i) for i in ("leek", "tomato"))
    varieties = tuple(v for c in crops for v in CROPS.varieties_of(c.id))
    return Own(
        crops=crops, varieties=varieties, lots=(SeedLot(id="lot-1", crop="leek", grams=2.0, year=2026),)
    )


def test_five_hundred_mutated_crop_files_are_read_or_refused(tmp_path):
    """A crop file from elsewhere is data like a garden file: broken ones are refused, line by line."""
    draw = random.Random(20270303)
    own, said, read = _own_library(), set(), 0
    sound = own_to_text(own).encode()
    assert own_from_bytes(sound, "own.toml") == own
    for _ in range(500):
        data = bytearray(sound)
        for _ in range(draw.choice([1, 2, 5])):
            at = draw.randrange(len(data))
            kind = draw.randrange(4)
            if kind == 0:
                data[at] = draw.randrange(256)
            elif kind == 1:
                del data[at : at + draw.randrange(1, 40)]
            elif kind == 2:
                data[at:at] = draw.choice(
                    [b"9" * 400, b"[[crop]]\n", b'"""', b"= {a=", b"\x00", b"1e999", b"[" * 200]
                )
            else:
                lines = bytes(data).split(b"\n")
                draw.shuffle(lines)
                data = bytearray(b"\n".join(lines))
        try:
            own_from_bytes(bytes(data), "own.toml")
            read += 1
        except CatalogueError as error:
            said.add(str(error))
    assert read > 10
    assert len(said) > 50
    assert all(len(s) < 600 for s in said)


def test_each_promise_of_the_readme_names_a_test_that_is_there():
    promised = (CHECKOUT / "README.md").read_text("utf-8").partition("## Your data")[2].partition("\n## ")[0]
    named = set(re.findall(r"`(?:tests/)?(?:files/|window/)?(test_\w+\.py)`", promised))
    there = {path.name for path in (CHECKOUT / "tests").rglob("test_*.py")}
    assert len(named) >= 10
    assert named <= there
