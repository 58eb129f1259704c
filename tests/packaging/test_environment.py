import ast
import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]
# Those that run before the libraries are there.
SCRIPTS = [CHECKOUT / "packaging" / f"{n}.py" for n in ("environment", "start", "system_libraries", "test")]


def test_stamp_changes_with_each_of_its_parts(environment: ModuleType) -> None:
    stamps = {
        environment.fingerprint(b"a", "3.11", "/x"),
        environment.fingerprint(b"b", "3.11", "/x"),
        environment.fingerprint(b"a", "3.12", "/x"),
        environment.fingerprint(b"a", "3.11", "/y"),
        environment.fingerprint(b"a3.11", "", "/x"),
    }
    assert len(stamps) == 5
    assert environment.fingerprint(b"a", "3.11", "/x") in stamps


@pytest.fixture
def venv(environment: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty stand-in for .venv, with a file where its Python would be."""
    folder = tmp_path / "venv"
    monkeypatch.setattr(environment, "VENV", folder)
    monkeypatch.setattr(environment, "PIP_LOG", folder / "pip.log")
    environment.program("python").parent.mkdir(parents=True)
    environment.program("python").touch()
    return folder


def test_ready_needs_the_same_stamp_and_a_python(environment: ModuleType, venv: Path) -> None:
    assert not environment.is_ready("s", dev=False)
    environment.stamp_file(dev=False).write_text("s")
    assert environment.is_ready("s", dev=False)
    assert not environment.is_ready("t", dev=False)
    assert not environment.is_ready("s", dev=True)
    environment.program("python").unlink()  # as when the system's Python was replaced
    assert not environment.is_ready("s", dev=False)


def test_second_run_has_nothing_to_do(
    environment: ModuleType, venv: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls: list[object] = []
    monkeypatch.setattr(environment, "make_venv", lambda: calls.append("venv"))
    monkeypatch.setattr(environment, "install", calls.append)
    assert environment.prepare(dev=True)
    assert not environment.prepare(dev=True)
    assert not environment.prepare(dev=False), "the developer's environment serves start.py too"
    assert calls == ["venv", True]


def test_failed_install_leaves_no_stamp(
    environment: ModuleType, venv: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(dev: bool) -> None:
        raise environment.SetupError("no network")

    monkeypatch.setattr(environment, "make_venv", lambda: None)
    monkeypatch.setattr(environment, "install", lambda dev: None)
    environment.prepare(dev=False)
    monkeypatch.setattr(environment, "install", fail)
    monkeypatch.setattr(environment, "fingerprint", lambda *parts: "changed")
    with pytest.raises(environment.SetupError):
        environment.prepare(dev=False)
    assert not environment.is_ready("changed", dev=False)
    assert not environment.stamp_file(dev=False).exists()


def test_venv_of_this_python_is_read_from_its_own_config(environment: ModuleType) -> None:
    # The interpreter's own pyvenv.cfg, written by the venv module, is the outside truth here.
    config = Path(sys.prefix) / "pyvenv.cfg"
    if not config.is_file():
        pytest.skip("this Python runs outside an environment")
    assert environment.venv_version(config.read_text()) == environment.python_version()


def test_config_without_a_version(environment: ModuleType) -> None:
    assert environment.venv_version("home = /usr/bin\n") is None


@pytest.mark.parametrize(
    ("log", "word"),
    [
        # as printed by pip 23.0 on Debian 12 without a network, behind a dead proxy, and on a full disk
        ("Retrying … after connection broken by 'NewConnectionError('<pip._vendor.urllib3 …", "network"),
        ("'ProxyError('Cannot connect to proxy.', NewConnectionError(", "network"),
        ("ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device", "disk"),
        ("SSLError(SSLCertVerificationError(1, '[SSL: CERTIFICATE_VERIFY_FAILED] …", "certificate"),
        ("error: subprocess-exited-with-error", "pip.log"),
    ],
)
def test_pip_complaint_names_the_cause_in_one_sentence(environment: ModuleType, log: str, word: str) -> None:
    sentence = environment.pip_complaint(log)
    assert word in sentence
    assert sentence.endswith(".")
    assert sentence.count(". ") == 0


def test_missing_venv_module_says_which_package(
    environment: ModuleType, venv: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(environment, "venv_module_is_there", lambda: False)
    monkeypatch.setattr(environment, "installs_as_root", lambda: False)
    with pytest.raises(environment.SetupError, match=rf"python{environment.python_version()}-venv"):
        environment.make_venv()


def test_old_python_gets_a_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    spec = importlib.util.spec_from_file_location("old_environment", CHECKOUT / "packaging/environment.py")
    assert spec is not None
    assert spec.loader is not None
    monkeypatch.setattr(sys, "version_info", (3, 10, 13, "final", 0))
    with pytest.raises(SystemExit, match=r"needs Python 3\.11 or newer and this is Python 3\.10"):
        spec.loader.exec_module(importlib.util.module_from_spec(spec))


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda file: file.name)
def test_old_python_can_read_the_script_as_far_as_that_sentence(script: Path) -> None:
    ast.parse(script.read_text("utf-8"), feature_version=(3, 7))


def test_scripts_need_nothing_but_the_standard_library() -> None:
    own = {file.stem for file in SCRIPTS}
    for script in SCRIPTS:
        for node in ast.walk(ast.parse(script.read_text("utf-8"))):
            names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
            names += [node.module or ""] if isinstance(node, ast.ImportFrom) else []
            for name in names:
                root = name.split(".")[0]
                assert root in sys.stdlib_module_names or root in own, f"{script.name} imports {name}"


def test_our_folder_does_not_hide_the_packaging_library() -> None:
    import packaging.version

    assert (CHECKOUT / "packaging") not in Path(packaging.version.__file__).resolve().parents
    assert not (CHECKOUT / "packaging" / "__init__.py").exists()
