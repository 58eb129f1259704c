import argparse
import os
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]


def python_without_qt(test_script: ModuleType, code: str) -> subprocess.CompletedProcess[str]:
    surroundings = {**os.environ, "PYTHONPATH": str(test_script.WITHOUT_QT)}
    command = [sys.executable, "-c", code]
    return subprocess.run(command, env=surroundings, capture_output=True, text=True, check=False)


@pytest.mark.parametrize("module", ["PySide6", "PySide6.QtCore", "PySide6.QtGui", "shiboken6"])
def test_block_blocks_qt(test_script: ModuleType, module: str) -> None:
    done = python_without_qt(test_script, f"import {module}")
    assert done.returncode == 1
    assert "out of reach" in done.stderr
    plain = subprocess.run([sys.executable, "-c", f"import {module}"], capture_output=True, check=False)
    assert plain.returncode == 0, "without the block the same import works, or this test shows nothing"


def test_block_lets_everything_else_through(test_script: ModuleType) -> None:
    done = python_without_qt(test_script, "import numpy, shapely, pydantic, gardencanvas.garden")
    assert done.returncode == 0, done.stderr


def options(test_script: ModuleType, *arguments: str) -> argparse.Namespace:
    return test_script.parse(arguments)


def test_qt_free_step_runs_under_the_block(test_script: ModuleType, monkeypatch: pytest.MonkeyPatch) -> None:
    seen: dict[str, object] = {}

    def pytest_step(name: str, *arguments: str, variables: dict[str, str]) -> object:
        seen.update(arguments=arguments, variables=variables)
        return test_script.Outcome(name)

    monkeypatch.setattr(test_script, "pytest", pytest_step)
    test_script.test_without_qt(options(test_script))
    assert seen["variables"]["PYTHONPATH"] == str(CHECKOUT / "packaging" / "without_qt")
    folders = {Path(str(argument)).name for argument in seen["arguments"] if "tests" in str(argument)}
    assert "garden" in folders
    assert not folders & {"window", "app", "canvas", "paper", "bench", "packaging"}


def test_steps(test_script: ModuleType) -> None:
    checks = ["ruff", "format", "mypy", "imports", "without-qt", "tests"]
    assert test_script.steps(options(test_script)) == [*checks, "xvfb"]
    assert test_script.steps(options(test_script, "--quick")) == checks
    assert test_script.steps(options(test_script, "--bench")) == [*checks, "xvfb", "bench"]
    assert test_script.steps(options(test_script, "--only", "mypy")) == ["mypy"]


def run_pytest(folder: Path, source: str) -> tuple[int, Path]:
    """A real run of pytest over one test file: its exit code and its report."""
    (folder / "test_it.py").write_text(source)
    (folder / "pytest.ini").write_text("[pytest]\n")
    report = folder / "report.xml"
    command = [sys.executable, "-m", "pytest", "-q", "-p", "no:pytest-qt", f"--junit-xml={report}", "."]
    done = subprocess.run(command, cwd=folder, capture_output=True, check=False)
    return done.returncode, report


FILES = [
    ("def test_a(): pass\ndef test_b(): pass\n", (2, 0, 0)),
    ("def test_a(): pass\ndef test_b(): assert 0\n", (1, 1, 0)),
    ("import pytest\ndef test_a(): pytest.skip('x')\ndef test_b(): pass\n", (1, 0, 1)),
    ("import pytest\n@pytest.fixture\ndef f(): 1/0\ndef test_a(f): pass\ndef test_b(): pass\n", (1, 1, 0)),
    ("import no_such_module\n", (0, 1, 0)),
    ("import os\ndef test_a(): os._exit(3)\n", (0, 1, 0)),  # as a crash inside Qt: no report
    ("", (0, 0, 0)),
]


@pytest.mark.parametrize(("source", "counted"), FILES)
def test_counts_are_those_of_pytest(
    test_script: ModuleType, tmp_path: Path, source: str, counted: tuple[int, int, int]
) -> None:
    outcome = test_script.judge("it", *run_pytest(tmp_path, source))
    assert (outcome.passed, outcome.failed, outcome.skipped) == counted


def test_closing_line(test_script: ModuleType) -> None:
    outcomes = [test_script.Outcome("ruff", passed=1), test_script.Outcome("tests", passed=7, failed=2)]
    assert test_script.table(outcomes).splitlines()[-1] == "8 passed, 2 failed"


def test_all_steps_run_and_one_failure_is_enough(
    test_script: ModuleType, environment: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    ran: list[str] = []

    def step(name: str, failed: int) -> object:
        def run(_: argparse.Namespace) -> object:
            ran.append(name)
            return test_script.Outcome(name, passed=1, failed=failed)

        return run

    monkeypatch.setattr(environment, "prepare", lambda dev: False)
    monkeypatch.setattr(test_script.system_libraries, "require", lambda libraries: None)
    monkeypatch.chdir(CHECKOUT)
    names = list(test_script.STEPS)
    monkeypatch.setattr(test_script, "STEPS", {name: step(name, int(name == "ruff")) for name in names})
    assert test_script.main(["--bench"]) == 1
    assert ran == names
    monkeypatch.setattr(test_script, "STEPS", {name: step(name, 0) for name in names})
    assert test_script.main([]) == 0
    monkeypatch.setattr(test_script, "STEPS", {name: lambda _: test_script.Outcome("none") for name in names})
    assert test_script.main([]) == 1, "a run in which nothing ran proves nothing"
