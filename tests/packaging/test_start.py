import json
import sys
from pathlib import Path
from types import ModuleType

import pytest


def never() -> bool:
    raise AssertionError("the X server must not be asked")


@pytest.mark.parametrize(
    ("variables", "platform", "word"),
    [
        ({}, "linux", "no screen"),
        ({"DISPLAY": ""}, "linux", "no screen"),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", None),
        ({"DISPLAY": ":0", "QT_QPA_PLATFORM": "offscreen"}, "linux", "no screen"),
        ({}, "darwin", None),
        ({}, "win32", None),
    ],
)
def test_screen(start: ModuleType, variables: dict[str, str], platform: str, word: str | None) -> None:
    complaint = start.screen_complaint(variables, platform, never)
    assert (complaint is None) if word is None else (word in complaint)


def test_display_counts_only_if_a_server_answers(start: ModuleType) -> None:
    assert start.screen_complaint({"DISPLAY": ":0"}, "linux", lambda: True) is None
    assert ":0" in start.screen_complaint({"DISPLAY": ":0"}, "linux", lambda: False)


def test_dead_display_does_not_answer(start: ModuleType, monkeypatch: pytest.MonkeyPatch) -> None:
    try:
        start.ctypes.CDLL("libxcb.so.1")
    except OSError:
        pytest.skip("no libxcb to ask with")
    monkeypatch.setenv("DISPLAY", ":4321")
    assert not start.x_server_answers()


@pytest.mark.parametrize("arguments", [["--nope"], ["file"], ["--out"]])
def test_wrong_argument_ends_with_1_and_one_sentence(
    start: ModuleType, arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as caught:
        start.parse(arguments)
    assert caught.value.code == 1
    assert capsys.readouterr().err.count("\n") == 1


@pytest.fixture
def program(start: ModuleType, monkeypatch: pytest.MonkeyPatch) -> dict[str, int]:
    """Exit code that each command shall have; the commands write their files, as the real ones do."""
    codes = {"demo": 0, "check": 0, "bedmap": 0, "picture": 0, "--demo": 0}

    def gardencanvas(*arguments: str) -> int:
        if len(arguments) > 1 and arguments[0] != "check" and codes[arguments[0]] == 0:
            Path(arguments[-1]).write_text("made")
        return codes[arguments[0]]

    monkeypatch.setattr(start, "gardencanvas", gardencanvas)
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    return codes


def test_headless_makes_all_three_and_says_where(
    start: ModuleType, program: dict[str, int], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    program["check"] = 1  # the demo holds a clash: no failure
    assert start.work_headless(tmp_path / "new" / "folder") == 0
    assert {file.suffix for file in (tmp_path / "new" / "folder").iterdir()} == {
        ".gardencanvas",
        ".pdf",
        ".png",
    }
    assert str(tmp_path / "new" / "folder") in capsys.readouterr().out.splitlines()[-1]


@pytest.mark.parametrize(("command", "code"), [("demo", 70), ("check", 2), ("bedmap", 2), ("picture", 70)])
def test_headless_passes_a_failure_on(
    start: ModuleType,
    program: dict[str, int],
    tmp_path: Path,
    command: str,
    code: int,
    capsys: pytest.CaptureFixture[str],
) -> None:
    program[command] = code
    assert start.work_headless(tmp_path) == 1
    assert f"'gardencanvas {command}' ended with exit code {code}" in capsys.readouterr().err


def test_window_that_crashed_is_not_called_fine(start: ModuleType, program: dict[str, int]) -> None:
    assert start.open_window() == 0
    program["--demo"] = -6  # aborted, as Qt does where no platform plugin loads
    assert start.open_window() == 1


def test_setup_error_is_one_sentence_and_1(
    start: ModuleType,
    environment: ModuleType,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    def fail(dev: bool) -> None:
        raise environment.SetupError("No network: connect and start again.")

    monkeypatch.setattr(environment, "prepare", fail)
    monkeypatch.setattr(start.system_libraries, "require", lambda libraries: None)
    assert start.main(["--headless"]) == 1
    assert capsys.readouterr().err == "No network: connect and start again.\n"


@pytest.mark.slow
def test_same_job_without_a_window(
    start: ModuleType, environment: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The real commands, run by the Python that runs this test; files known by their signatures."""
    monkeypatch.setattr(environment, "program", lambda name: Path(sys.executable))
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    assert start.work_headless(tmp_path) == 0
    assert (tmp_path / "bedmap.pdf").read_bytes().startswith(b"%PDF-")
    assert (tmp_path / "plan.png").read_bytes().startswith(b"\x89PNG\r\n\x1a\n")
    assert json.loads((tmp_path / "demo.gardencanvas").read_text("utf-8"))["format"] >= 1
