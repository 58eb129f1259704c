"""Check everything that can be checked here: python3 packaging/test.py.

Sets the developer's environment up, runs the steps of STEPS one after the other, goes on after a
failure, and ends with a table and the line "N passed, N failed". A test that two steps run (once
with Qt out of reach, once in the whole suite) counts in both. Exit code 0 if nothing failed.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))  # also under python3 -P
import environment

# isort: split
import argparse
import os
import shutil
import subprocess
import time
import xml.etree.ElementTree as ElementTree
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import system_libraries

TESTS = environment.CHECKOUT / "tests"
REPORTS = environment.CHECKOUT / "build" / "test-reports"
WITHOUT_QT = environment.CHECKOUT / "packaging" / "without_qt"
QT_FOLDERS = frozenset({"app", "bench", "canvas", "packaging", "paper", "window"})
PYTEST_NO_TESTS = 5  # pytest.ExitCode.NO_TESTS_COLLECTED
HANG_S = 600  # a test that takes longer is taken to hang: pytest prints where and ends
WORKERS = ["-n", "auto", "--maxprocesses", "4", "--dist", "worksteal"]  # pytest-xdist: a process to a core
XVFB_SCREEN = "-screen 0 1600x1000x24"


@dataclass(frozen=True)
class Outcome:
    """What one step came to: counts of tests (a linter counts as one), or why it did not run."""

    name: str
    seconds: float = 0.0
    passed: int = 0
    failed: int = 0
    skipped: int = 0
    note: str = ""


def tool(name: str, *command: str) -> Outcome:
    """Run one linter or checker of the environment."""
    code = subprocess.run([str(environment.program(command[0])), *command[1:]], check=False).returncode
    return Outcome(name, passed=int(code == 0), failed=int(code != 0))


def counts(report: Path) -> tuple[int, int, int]:
    """Passed, failed and skipped tests of a JUnit report; an error in a fixture is a failure."""
    passed = failed = skipped = 0
    for suite in ElementTree.parse(report).getroot().iter("testsuite"):
        tests, failures, errors, left_out = (
            int(suite.get(key, "0")) for key in ("tests", "failures", "errors", "skipped")
        )
        failed += failures + errors
        skipped += left_out
        passed += tests - failures - errors - left_out
    return max(passed, 0), failed, skipped


def judge(name: str, code: int, report: Path) -> Outcome:
    """Outcome of a pytest run from its exit code and its report (which a crash leaves unwritten)."""
    if code == PYTEST_NO_TESTS:
        return Outcome(name, note="no test chosen")
    if not report.is_file():
        return Outcome(name, failed=1, note=f"pytest ended with exit code {code} and no report")
    passed, failed, skipped = counts(report)
    if code != 0 and failed == 0:
        return Outcome(name, passed=passed, failed=1, skipped=skipped, note=f"pytest exit code {code}")
    return Outcome(name, passed=passed, failed=failed, skipped=skipped)


def pytest(
    name: str, *arguments: str, before: Sequence[str] = (), variables: Mapping[str, str] | None = None
) -> Outcome:
    """Run pytest; `before` goes in front of the command, `variables` into its surroundings."""
    report = REPORTS / f"{name}.xml"
    report.parent.mkdir(parents=True, exist_ok=True)
    report.unlink(missing_ok=True)
    command = [*before, str(environment.program("python")), "-m", "pytest", "-q", f"--junit-xml={report}"]
    command += ["-o", f"faulthandler_timeout={HANG_S}", "-o", "faulthandler_exit_on_timeout=true"]
    command += ["-o", "junit_family=xunit2", "--continue-on-collection-errors", *arguments]
    surroundings = {**os.environ, **(variables or {})}
    code = subprocess.run(command, cwd=environment.CHECKOUT, env=surroundings, check=False).returncode
    return judge(name, code, report)


def chosen(options: argparse.Namespace) -> list[str]:
    """Arguments of pytest for -k."""
    return ["-k", options.k] if options.k else []


def rooms_without_qt(tests: Path) -> list[str]:
    """Test folders whose rooms must work with PySide6 out of reach."""
    return [
        str(folder)
        for folder in sorted(tests.iterdir())
        if folder.is_dir() and folder.name not in QT_FOLDERS and any(folder.rglob("test_*.py"))
    ]


def test_without_qt(options: argparse.Namespace) -> Outcome:
    """Run the rooms without Qt with PySide6 made unimportable."""
    folders = rooms_without_qt(TESTS)
    if not folders:
        return Outcome("without-qt", note="no such tests yet")
    # the whole suite runs once more with Qt: here slow tests and many examples would only be run twice
    arguments = [
        *WORKERS,
        "-p",
        "no:pytest-qt",
        "-m",
        "not gui and not xvfb and not slow",
        *chosen(options),
        *folders,
    ]
    return pytest("without-qt", *arguments, variables={"PYTHONPATH": str(WITHOUT_QT), "CI": ""})


def test_suite(options: argparse.Namespace) -> Outcome:
    """Run every test offscreen; benches once as plain tests, unless they are left out or run apart."""
    arguments = [*WORKERS, "-m", "not xvfb", *chosen(options)]
    if options.quick or options.bench:
        arguments.append(f"--ignore={TESTS / 'bench'}")
    return pytest("tests", *arguments)


def test_xvfb(options: argparse.Namespace) -> Outcome:
    """Run the tests that need a real X server under one that shows nothing."""
    if not any("mark.xvfb" in file.read_text("utf-8") for file in TESTS.rglob("test_*.py")):
        return Outcome("xvfb", note="no test asks for it")
    if shutil.which("xvfb-run") is None and environment.installs_as_root():
        environment.apt_install(["xvfb", "xauth"])
    if shutil.which("xvfb-run") is None:
        return Outcome("xvfb", note="skipped: xvfb-run is not installed")
    try:
        system_libraries.require({**system_libraries.DRAWING, **system_libraries.X11})
    except environment.SetupError as error:
        return Outcome("xvfb", failed=1, note=str(error))
    before = ["xvfb-run", "-a", "-s", XVFB_SCREEN]
    arguments = ["-m", "xvfb", *chosen(options)]
    return pytest("xvfb", *arguments, before=before, variables={"GARDENCANVAS_TEST_PLATFORM": "xcb"})


def test_bench(options: argparse.Namespace) -> Outcome:
    """Measure the benches."""
    return pytest("bench", str(TESTS / "bench"), "--benchmark-enable", "-s", *chosen(options))


STEPS: dict[str, Callable[[argparse.Namespace], Outcome]] = {
    "ruff": lambda _: tool("ruff", "ruff", "check", "."),
    "format": lambda _: tool("format", "ruff", "format", "--check", "."),
    "mypy": lambda _: tool("mypy", "mypy"),
    "imports": lambda _: tool("imports", "lint-imports"),
    "without-qt": test_without_qt,
    "tests": test_suite,
    "xvfb": test_xvfb,
    "bench": test_bench,
}


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """Read the command line."""
    parser = argparse.ArgumentParser(prog="test.py", description="Run every check of Garden Canvas.")
    parser.add_argument("--quick", action="store_true", help="no benches, no xvfb")
    parser.add_argument(
        "--bench", action="store_true", help="measure the benches instead of running them once"
    )
    parser.add_argument("-k", metavar="EXPR", default="", help="only tests that match, as in pytest -k")
    parser.add_argument("--only", choices=STEPS, metavar="STEP", help=f"one step: {', '.join(STEPS)}")
    return parser.parse_args(arguments)


def steps(options: argparse.Namespace) -> list[str]:
    """Names of the steps to run, in order."""
    if options.only:
        return [options.only]
    names = list(STEPS)
    if not options.bench or options.quick:
        names.remove("bench")
    if options.quick:
        names.remove("xvfb")
    return names


def run(name: str, options: argparse.Namespace) -> Outcome:
    """Run one step and time it."""
    print(f"\n=== {name}", flush=True)
    began = time.perf_counter()
    outcome = STEPS[name](options)
    return Outcome(**{**vars(outcome), "seconds": time.perf_counter() - began})


def table(outcomes: Sequence[Outcome]) -> str:
    """Table of steps, and under it the closing line."""
    lines = [f"{'step':<12}{'seconds':>9}{'passed':>8}{'failed':>8}{'skipped':>9}"]
    lines += [
        f"{o.name:<12}{o.seconds:>9.1f}{o.passed:>8}{o.failed:>8}{o.skipped:>9}  {o.note}".rstrip()
        for o in outcomes
    ]
    passed, failed = sum(o.passed for o in outcomes), sum(o.failed for o in outcomes)
    return "\n".join([*lines, f"{passed} passed, {failed} failed"])


def main(arguments: Sequence[str]) -> int:
    """Set up and run the steps."""
    options = parse(arguments)
    os.chdir(environment.CHECKOUT)
    began = time.perf_counter()
    try:
        if sys.platform.startswith("linux"):
            system_libraries.require(system_libraries.DRAWING)
        environment.prepare(dev=True)
    except environment.SetupError as error:
        print(error, file=sys.stderr)
        print("0 passed, 1 failed")
        return 1
    outcomes = [Outcome("setup", seconds=time.perf_counter() - began)]
    outcomes += [run(name, options) for name in steps(options)]
    print(f"\n{table(outcomes)}")
    ran = sum(o.passed + o.failed for o in outcomes)
    return 1 if ran == 0 or any(o.failed for o in outcomes) else 0


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit(1)
