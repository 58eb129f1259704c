import os
import shutil
import subprocess
import sys
import tarfile
import zipfile
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]
WHERE = "from gardencanvas.resources_folder import resources; print(resources())"

pytestmark = pytest.mark.slow


def run(*command: str, cwd: Path, **variables: str) -> str:
    done = subprocess.run(
        command, cwd=cwd, env={**os.environ, **variables}, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout.strip()


def build(source: Path, kind: str, out: Path) -> Path:
    """Wheel or sdist, built with the hatchling that is here: no network."""
    run(sys.executable, "-m", "hatchling", "build", "-t", kind, "-d", str(out), cwd=source)
    (made,) = out.iterdir()
    return made


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return build(CHECKOUT, "wheel", tmp_path_factory.mktemp("wheel"))


@pytest.fixture(scope="module")
def sdist(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return build(CHECKOUT, "sdist", tmp_path_factory.mktemp("sdist"))


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    target = tmp_path_factory.mktemp("target")
    command = [sys.executable, "-m", "pip", "install", "--quiet", "--no-deps", "--no-index"]
    run(*command, "--target", str(target), str(wheel), cwd=target)
    return target


def shipped() -> dict[str, bytes]:
    """Every file under resources/, by its path from there."""
    files = (file for file in (CHECKOUT / "resources").rglob("*") if file.is_file())
    return {file.relative_to(CHECKOUT / "resources").as_posix(): file.read_bytes() for file in files}


def in_wheel(wheel: Path) -> dict[str, bytes]:
    prefix = "gardencanvas/resources/"
    with zipfile.ZipFile(wheel) as archive:
        names = [name for name in archive.namelist() if name.startswith(prefix)]
        return {name.removeprefix(prefix): archive.read(name) for name in names}


def test_wheel_holds_every_resource(wheel: Path) -> None:
    assert shipped()
    assert in_wheel(wheel) == shipped()


def test_wheel_holds_no_tests_and_no_packaging(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        roots = {name.split("/")[0] for name in archive.namelist()}
    assert {root for root in roots if not root.startswith("gardencanvas")} == set()


def test_wheel_names_its_desktop_entry_like_the_program_names_itself(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        data = {name.partition(".data/data/")[2] for name in archive.namelist() if ".data/data/" in name}
    name = "org.gardencanvas.GardenCanvas"
    assert {
        f"share/applications/{name}.desktop",
        f"share/metainfo/{name}.metainfo.xml",
        f"share/mime/packages/{name}.xml",
        f"share/icons/hicolor/scalable/apps/{name}.svg",
    } == data


def test_resources_are_found_from_the_installed_wheel(installed: Path, tmp_path: Path) -> None:
    found = run(sys.executable, "-c", WHERE, cwd=tmp_path, PYTHONPATH=str(installed))
    assert Path(found) == installed / "gardencanvas" / "resources"


def test_resources_are_found_from_the_checkout(tmp_path: Path) -> None:
    found = run(sys.executable, "-c", WHERE, cwd=tmp_path, PYTHONPATH=str(CHECKOUT))
    assert Path(found) == CHECKOUT / "resources"


def test_damaged_installation_says_so(installed: Path, tmp_path: Path) -> None:
    package = tmp_path / "gardencanvas"
    shutil.copytree(installed / "gardencanvas", package, ignore=shutil.ignore_patterns("resources"))
    command = [sys.executable, "-c", WHERE]
    surroundings = {**os.environ, "PYTHONPATH": str(tmp_path)}
    done = subprocess.run(
        command, cwd=tmp_path, env=surroundings, capture_output=True, text=True, check=False
    )
    assert done.returncode != 0
    assert "Install Garden Canvas again" in done.stderr


def test_installed_program_starts(installed: Path, tmp_path: Path) -> None:
    script = installed / "bin" / "gardencanvas"
    said = run(sys.executable, str(script), "--version", cwd=tmp_path, PYTHONPATH=str(installed))
    assert said.startswith("Garden Canvas ")


def test_sdist_holds_tests_and_packaging_and_builds_the_same_wheel(
    sdist: Path, wheel: Path, tmp_path: Path
) -> None:
    with tarfile.open(sdist) as archive:
        # Python 3.11.2, as on Debian 12, knows no filters yet; 3.12 warns where none is named.
        named = {"filter": "data"} if hasattr(tarfile, "data_filter") else {}
        archive.extractall(tmp_path, **named)
    (root,) = tmp_path.iterdir()
    for name in ("README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml"):
        assert (root / name).is_file(), name
    for name in ("packaging/start.py", "packaging/test.py", "tests/conftest.py", "resources/sources.toml"):
        assert (root / name).is_file(), name
    again = build(root, "wheel", tmp_path / "again")
    with zipfile.ZipFile(wheel) as first, zipfile.ZipFile(again) as second:
        assert sorted(first.namelist()) == sorted(second.namelist())
    assert in_wheel(again) == in_wheel(wheel)
