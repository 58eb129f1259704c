"""The desktop knows the program: entry, description and file type, read by the desktop's own tools."""

import os
import re
import shutil
import subprocess
import tomllib
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import pytest

from gardencanvas import __version__
from tests.packaging.conftest import CHECKOUT

NAME = "org.gardencanvas.GardenCanvas"
PACKAGING = CHECKOUT / "packaging"
TYPE = "application/vnd.gardencanvas+json"


def needs(*tools: str) -> pytest.MarkDecorator:
    """Skip where a tool is missing, and say which package of Debian brings it."""
    packages = {
        "desktop-file-validate": "desktop-file-utils",
        "update-desktop-database": "desktop-file-utils",
        "appstreamcli": "appstream",
        "update-mime-database": "shared-mime-info",
        "gio": "libglib2.0-bin",
        "xdg-open": "xdg-utils",
        "xdg-mime": "xdg-utils",
    }
    missing = sorted({packages[tool] for tool in tools if shutil.which(tool) is None})
    return pytest.mark.skipif(bool(missing), reason=f"install {' '.join(missing)} to check this")


def run(*command: str, **variables: str) -> str:
    surroundings = {**os.environ, **variables}
    done = subprocess.run(command, env=surroundings, capture_output=True, text=True, check=False, timeout=60)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@needs("desktop-file-validate")
def test_the_desktop_entry_is_valid() -> None:
    assert run("desktop-file-validate", str(PACKAGING / f"{NAME}.desktop")) == ""


@needs("appstreamcli")
def test_the_metainfo_is_valid() -> None:
    said = run("appstreamcli", "validate", "--no-net", str(PACKAGING / f"{NAME}.metainfo.xml"))
    assert "Validation was successful" in said


def test_the_newest_release_is_this_version() -> None:
    releases = ElementTree.parse(PACKAGING / f"{NAME}.metainfo.xml").getroot().findall("releases/release")
    assert releases[0].get("version") == __version__
    changes = (CHECKOUT / "DEVELOPERS.md").read_text("utf-8").partition("## Changes")[2]
    newest = re.search(r"^### (\S+)", changes, re.MULTILINE)
    assert newest is not None
    assert newest[1] in (__version__, "Unreleased")
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text("utf-8"))["project"]
    assert "version" in project["dynamic"], "the version stands in one place only"


@pytest.fixture
def installed(tmp_path: Path) -> Path:
    """A data folder of a desktop with the program installed, and nothing else but the system's own types."""
    share = tmp_path / "share"
    for source, place in (
        (PACKAGING / f"{NAME}.desktop", f"applications/{NAME}.desktop"),
        (PACKAGING / f"{NAME}.mime.xml", f"mime/packages/{NAME}.xml"),
    ):
        target = share / place
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(source, target)
    run("update-mime-database", str(share / "mime"))
    run("update-desktop-database", str(share / "applications"))
    return share


@pytest.fixture
def garden_file(tmp_path: Path) -> Path:
    path = tmp_path / "my garden, сад.gardencanvas"
    shutil.copyfile(CHECKOUT / "resources" / "demo" / "demo.gardencanvas", path)
    return path


@pytest.fixture
def stub(tmp_path: Path) -> tuple[Path, Path]:
    """A program of the same name that writes down how it was called; the folder it lies in."""
    folder, called = tmp_path / "bin", tmp_path / "called"
    folder.mkdir()
    (folder / "gardencanvas").write_text(
        f'#!/bin/sh\nprintf "%s\\n" "$@" > "{called}.part"\nmv "{called}.part" "{called}"\n'
    )
    (folder / "gardencanvas").chmod(0o755)
    return folder, called


def waited_for(path: Path) -> str:
    """What a started program wrote, once it has."""
    for _ in range(200):
        if path.exists():
            return path.read_text("utf-8").strip()
        subprocess.run(["sleep", "0.05"], check=True)
    raise AssertionError("the program was not started")


def desktop(share: Path, tmp_path: Path) -> dict[str, str]:
    return {
        "XDG_DATA_HOME": str(share),
        "XDG_DATA_DIRS": f"{share}:/usr/local/share:/usr/share",
        "XDG_CONFIG_HOME": str(tmp_path / "config"),
        "XDG_CURRENT_DESKTOP": "GNOME",  # of the ways of xdg-open the one that asks gio
        "HOME": str(tmp_path),
        "DISPLAY": ":77",
    }


@needs("update-mime-database", "update-desktop-database", "gio")
def test_a_garden_file_is_of_its_own_type_and_the_program_opens_it(
    installed: Path, garden_file: Path, stub: tuple[Path, Path], tmp_path: Path
) -> None:
    folder, called = stub
    variables = {**desktop(installed, tmp_path), "PATH": f"{folder}:{os.environ['PATH']}"}
    said = run("gio", "info", "-a", "standard::content-type", str(garden_file), **variables)
    assert f"standard::content-type: {TYPE}" in said
    assert f"{NAME}.desktop" in run("gio", "mime", TYPE, **variables)
    run("gio", "launch", str(installed / "applications" / f"{NAME}.desktop"), str(garden_file), **variables)
    assert waited_for(called) == str(garden_file)


@needs("update-mime-database", "update-desktop-database", "xdg-open", "xdg-mime", "gio")
def test_a_double_click_opens_the_garden(
    installed: Path, garden_file: Path, stub: tuple[Path, Path], tmp_path: Path
) -> None:
    """xdg-open finds type and program, and hands the whole path over."""
    folder, called = stub
    variables = {**desktop(installed, tmp_path), "PATH": f"{folder}:{os.environ['PATH']}"}
    assert run("xdg-mime", "query", "default", TYPE, **variables).strip() == f"{NAME}.desktop"
    run("xdg-open", str(garden_file), **variables)
    assert waited_for(called) == str(garden_file)


def test_the_icon_is_a_drawing_that_qt_can_read(qapp: object) -> None:
    from PySide6.QtGui import QIcon

    icon = QIcon(str(CHECKOUT / "resources" / "icons" / "gardencanvas.svg"))
    image = icon.pixmap(64, 64).toImage()
    assert image.width() == 64
    assert len({image.pixel(x, y) for x in range(0, 64, 2) for y in range(0, 64, 2)}) > 5


@pytest.mark.parametrize("recipe", ["windows/installer.iss", "macos/make_image.sh"])
def test_recipes_for_other_systems_say_that_they_are_untested_and_name_the_same_things(recipe: str) -> None:
    text = (PACKAGING / recipe).read_text("utf-8")
    assert "UNTESTED" in text
    assert TYPE in text
    assert "packaging" in text
    assert "bundle.py" in text
    if recipe.endswith(".iss"):
        assert f'#define Version "{__version__}"' in text


@pytest.mark.skipif(shutil.which("sh") is None, reason="no shell to read it")
def test_the_recipe_for_macos_is_sound_shell() -> None:
    run("sh", "-n", str(PACKAGING / "macos" / "make_image.sh"))
