import os
import subprocess
import sys
import tomllib
import types
from pathlib import Path

import pytest
from packaging.requirements import Requirement

from gardencanvas import __version__
from gardencanvas.__main__ import COMMANDS, installed_pyside, main, pair_complaint

CHECKOUT = Path(__file__).resolve().parents[1]

# Counted references to None over 1,000 calls of QGraphicsItem.setPos, and drawing until it aborts:
# 6.12.0 loses one a call on 3.11; the others lose none. 3.12 keeps None for ever (PEP 683).
SOUND = [
    ((3, 11, 7), "6.8.3"),
    ((3, 11, 7), "6.10.3"),
    ((3, 11, 7), "6.11.2"),
    ((3, 11, 7), "6.11.3"),
    ((3, 12, 1), "6.12.0"),
    ((3, 13, 0), "6.12.0"),
]


@pytest.mark.parametrize(("python", "pyside"), SOUND)
def test_sound_pairs_pass(python: tuple[int, ...], pyside: str) -> None:
    assert pair_complaint(python, pyside) is None


@pytest.mark.parametrize(
    ("python", "pyside"),
    [
        ((3, 11, 7), "6.12.0"),
        ((3, 11, 9), "6.12.1.1"),
        ((3, 11, 0), "7.0.0"),
        ((3, 11, 7), "6.11.0"),  # QTBUG-147209
        ((3, 13, 0), "6.11.1"),
    ],
)
def test_bad_pairs_are_named_with_a_cure(python: tuple[int, ...], pyside: str) -> None:
    complaint = pair_complaint(python, pyside)
    assert complaint is not None
    assert pyside in complaint
    assert "pip install" in complaint


def requirements() -> list[Requirement]:
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text("utf-8"))["project"]
    return [Requirement(line) for line in project["dependencies"] if line.startswith("PySide6")]


VERSIONS = ["6.8.0", "6.8.3", "6.9.2", "6.10.0", "6.11.0", "6.11.1", "6.11.2", "6.11.3", "6.12.0", "6.13.1"]


@pytest.mark.parametrize("python", [(3, 11), (3, 12), (3, 13), (3, 14)])
@pytest.mark.parametrize("pyside", VERSIONS)
def test_check_agrees_with_what_pip_is_told(python: tuple[int, int], pyside: str) -> None:
    surroundings = {"python_version": f"{python[0]}.{python[1]}"}
    asked = [r for r in requirements() if r.marker is None or r.marker.evaluate(surroundings)]
    allowed = all(r.specifier.contains(pyside) for r in asked)
    assert asked
    assert (pair_complaint(python, pyside) is None) == allowed


def test_installed_version_is_the_one_that_imports() -> None:
    code = "import PySide6; print(PySide6.__version__)"
    said = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert installed_pyside() == said.stdout.strip()


def without_qt(*arguments: str, cwd: Path) -> subprocess.CompletedProcess[str]:
    surroundings = {**os.environ, "PYTHONPATH": str(CHECKOUT / "packaging" / "without_qt")}
    command = [sys.executable, "-m", "gardencanvas", *arguments]
    return subprocess.run(command, cwd=cwd, env=surroundings, capture_output=True, text=True, check=False)


def test_version_and_help_need_no_qt(tmp_path: Path) -> None:
    assert without_qt("--version", cwd=tmp_path).stdout == f"Garden Canvas {__version__}\n"
    usage = without_qt("--help", cwd=tmp_path)
    assert usage.returncode == 0
    assert all(command in usage.stdout for command in COMMANDS)


def test_check_of_a_file_that_is_not_there_needs_no_qt(tmp_path: Path) -> None:
    done = without_qt("check", "nowhere.gardencanvas", cwd=tmp_path)
    assert done.returncode == 2, done.stderr
    assert "nowhere.gardencanvas" in done.stderr
    assert "Traceback" not in done.stderr


def test_demo_is_written_and_checked_without_qt(tmp_path: Path) -> None:
    assert without_qt("demo", "mine.gardencanvas", cwd=tmp_path).returncode == 0
    done = without_qt("check", "mine.gardencanvas", cwd=tmp_path)
    assert done.returncode in (0, 1), done.stderr
    assert done.stdout


def test_window_needs_qt_and_nothing_before_it_does(tmp_path: Path) -> None:
    done = without_qt("--demo", cwd=tmp_path)
    assert done.returncode == 1
    assert "out of reach" in done.stderr, "the block is what stopped it: this path does reach Qt"


def test_fault_of_a_command_is_not_taken_for_a_clash(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def run(arguments: list[str]) -> int:
        raise ZeroDivisionError("seventeen")

    cli = types.ModuleType("gardencanvas.cli")
    cli.__dict__["run"] = run
    monkeypatch.setitem(sys.modules, "gardencanvas.cli", cli)
    assert main(["check", "x"]) == 70
    assert "ZeroDivisionError: seventeen" in capsys.readouterr().err


def test_bad_pair_stops_the_window_but_not_a_check(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    cli = types.ModuleType("gardencanvas.cli")
    cli.__dict__["run"] = lambda arguments: 0
    monkeypatch.setitem(sys.modules, "gardencanvas.cli", cli)
    monkeypatch.setattr("gardencanvas.__main__.installed_pyside", lambda: "6.11.0")
    for arguments in ([], ["--demo"], ["picture", "a", "b.png"]):
        assert main(arguments) == 2
        assert "6.11.0" in capsys.readouterr().err
    assert main(["check", "a"]) == 0


def test_missing_qt_is_one_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("gardencanvas.__main__.installed_pyside", lambda: None)
    assert main([]) == 2
    assert capsys.readouterr().err == "PySide6 is not installed: run pip install PySide6-Essentials.\n"


def test_misspelt_command_opens_no_window(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["chekc"]) == 2
    assert "'chekc'" in capsys.readouterr().err
