"""The stand-alone folder, if it was built: python3 packaging/bundle.py makes it (40 s, a network, 250 MB)."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.packaging.conftest import CHECKOUT, load

BUNDLE = CHECKOUT / "dist" / "gardencanvas" / "gardencanvas"

needs_bundle = pytest.mark.skipif(
    not BUNDLE.is_file(), reason="no bundle was built here: python3 packaging/bundle.py builds it"
)


@pytest.fixture(scope="module")
def bundle():
    path = list(sys.path)
    yield load("bundle", "packaging_bundle")
    sys.path[:] = path
    del sys.modules["packaging_bundle"]


def test_a_stranger_has_nothing_but_a_home_and_a_screen(bundle, tmp_path, monkeypatch):
    monkeypatch.setenv("VIRTUAL_ENV", "/somewhere")
    monkeypatch.setenv("DISPLAY", ":7")
    surroundings = bundle.bare(tmp_path)
    assert surroundings["DISPLAY"] == ":7"
    assert set(surroundings) <= {"HOME", "PATH", "LANG", "DISPLAY", "XAUTHORITY", "WAYLAND_DISPLAY"}
    assert surroundings["PATH"] == "/usr/bin:/bin"


def test_desktop_files_go_where_desktops_look_for_them(bundle, tmp_path):
    """Folders of the XDG base directory, shared MIME info and icon theme specifications (freedesktop.org)."""
    bundle.add_desktop_files(tmp_path)
    name = "org.gardencanvas.GardenCanvas"
    found = {p.relative_to(tmp_path / "share").as_posix() for p in tmp_path.rglob("*") if p.is_file()}
    assert found == {
        f"applications/{name}.desktop",
        f"metainfo/{name}.metainfo.xml",
        f"mime/packages/{name}.xml",
        f"icons/hicolor/scalable/apps/{name}.svg",
    }


@needs_bundle
@pytest.mark.slow
def test_it_starts_in_bare_surroundings(bundle):
    assert bundle.start(BUNDLE) == []


@needs_bundle
def test_it_holds_no_python_of_ours_and_every_resource():
    inside = BUNDLE.parent / "_internal"
    shipped = {
        p.relative_to(CHECKOUT / "resources") for p in (CHECKOUT / "resources").rglob("*") if p.is_file()
    }
    held = {
        p.relative_to(inside / "gardencanvas" / "resources")
        for p in inside.rglob("resources/**/*")
        if p.is_file()
    }
    assert shipped - held == set(), "build it again: python3 packaging/bundle.py"
    assert not list(inside.rglob("pyvenv.cfg"))


@needs_bundle
@pytest.mark.xvfb
def test_its_window_shows_the_demo_on_a_real_x_server(
    bundle, qapp: QApplication, qtbot: QtBot, tmp_path: Path
):
    """Read back from the server: a window with the plan has thousands of colours, a bare screen one."""
    surroundings = bundle.bare(tmp_path)
    window = subprocess.Popen([str(BUNDLE), "--demo"], env=surroundings, cwd=tmp_path)
    try:

        def shown() -> None:
            picture = QGuiApplication.primaryScreen().grabWindow(0).toImage()
            kept = os.environ.get("GARDENCANVAS_KEEP_SCREEN")
            colours = {
                picture.pixel(x, y)
                for x in range(0, picture.width(), 3)
                for y in range(0, picture.height(), 3)
            }
            if kept:
                picture.save(kept)
            assert len(colours) > 500

        qtbot.waitUntil(shown, timeout=30_000)
        assert window.poll() is None
    finally:
        window.terminate()
        window.wait()
