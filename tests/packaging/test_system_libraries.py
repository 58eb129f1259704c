import importlib.util
import re
import shutil
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import pytest

LINUX = sys.platform.startswith("linux")
# Belong to the C library or to Python itself, which runs already.
ALWAYS_THERE = re.compile(r"lib(c|m|dl|rt|pthread|gcc_s|stdc\+\+|z)\.so|ld-linux")


def asked_for(pyside: Path, *objects: str) -> set[str]:
    """Shared libraries that these files of PySide6 ask the system for (readelf: NEEDED)."""
    own = {file.name for file in (pyside / "Qt" / "lib").iterdir()}
    names: set[str] = set()
    for name in objects:
        command = ["readelf", "-d", str(pyside / "Qt" / name)]
        listing = subprocess.run(command, capture_output=True, text=True, check=True).stdout
        names |= set(re.findall(r"\(NEEDED\).*\[(.+?)\]", listing))
    return {name for name in names - own if not ALWAYS_THERE.match(name)}


@pytest.mark.skipif(not LINUX or shutil.which("readelf") is None, reason="needs Linux and readelf")
def test_lists_hold_what_qt_asks_for(system_libraries: ModuleType) -> None:
    spec = importlib.util.find_spec("PySide6")
    assert spec is not None
    assert spec.origin is not None
    pyside = Path(spec.origin).parent
    core = ["lib/libQt6Core.so.6", "lib/libQt6Gui.so.6", "lib/libQt6Widgets.so.6", "lib/libQt6DBus.so.6"]
    drawing = asked_for(pyside, *core, "lib/libQt6Svg.so.6", "plugins/platforms/libqoffscreen.so")
    assert drawing <= set(system_libraries.DRAWING)
    x11 = asked_for(pyside, "plugins/platforms/libqxcb.so", "lib/libQt6XcbQpa.so.6")
    assert x11 <= set(system_libraries.DRAWING) | set(system_libraries.X11)
    wayland = asked_for(pyside, "lib/libQt6WaylandClient.so.6")
    assert wayland <= set(system_libraries.DRAWING) | set(system_libraries.WAYLAND)


@pytest.mark.skipif(shutil.which("dpkg-query") is None, reason="needs Debian's package database")
def test_debian_packages_own_their_libraries(system_libraries: ModuleType) -> None:
    known = {**system_libraries.DRAWING, **system_libraries.X11, **system_libraries.WAYLAND}
    patterns = [f"*/{library}" for library in known]
    listing = subprocess.run(["dpkg-query", "-S", *patterns], capture_output=True, text=True, check=False)
    owners = {
        Path(path).name: {owner.split(":")[0].removesuffix("t64") for owner in packages.split(", ")}
        for packages, _, path in (line.partition(": ") for line in listing.stdout.splitlines())
    }
    if not owners:
        pytest.skip("none of the libraries came in a package")
    for library, packages in owners.items():
        if library in known:
            assert known[library][0] in packages


def test_window_asks_for_its_own_screen_only(system_libraries: ModuleType) -> None:
    drawing, x11, wayland = system_libraries.DRAWING, system_libraries.X11, system_libraries.WAYLAND
    x_session = {"DISPLAY": ":0"}
    assert set(system_libraries.needed(x_session, window=False)) == set(drawing)
    assert set(system_libraries.needed(x_session, window=True)) == set(drawing) | set(x11)
    assert set(system_libraries.needed({"WAYLAND_DISPLAY": "w"}, window=True)) == set(drawing) | set(wayland)


def test_library_that_is_not_there_is_named_with_its_packages(
    system_libraries: ModuleType, environment: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    absent = ["libGL.so.1", "libxcb-randr.so.0", "libxcb-render.so.0"]
    monkeypatch.setattr(system_libraries, "loads", lambda library: library not in absent)
    monkeypatch.setattr(environment, "installs_as_root", lambda: False)
    with pytest.raises(environment.SetupError) as caught:
        system_libraries.require({**system_libraries.DRAWING, **system_libraries.X11})
    sentence = str(caught.value)
    assert "apt-get install libgl1 libxcb-randr0 libxcb-render0'" in sentence
    assert "dnf install libglvnd-glx libxcb'" in sentence, "one package for both, named once"
    assert "pacman -S libglvnd libxcb'" in sentence


def test_root_installs_what_is_missing(
    system_libraries: ModuleType, environment: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    absent = {"libEGL.so.1"}
    asked: list[list[str]] = []

    def apt_install(packages: list[str]) -> bool:
        asked.append(packages)
        absent.clear()
        return True

    monkeypatch.setattr(system_libraries, "loads", lambda library: library not in absent)
    monkeypatch.setattr(environment, "installs_as_root", lambda: True)
    monkeypatch.setattr(environment, "apt_install", apt_install)
    system_libraries.require(system_libraries.DRAWING)
    assert asked == [["libegl1"]]


def test_a_name_that_no_system_has_does_not_load(system_libraries: ModuleType) -> None:
    assert system_libraries.missing(["libno-such-thing.so.9"]) == ["libno-such-thing.so.9"]
