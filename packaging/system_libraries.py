"""The system libraries that Qt needs on Linux: which are missing, and in which packages they lie.

The names are those that the shared objects of PySide6-Essentials 6.11.3 ask for (ELF entries
NEEDED of libQt6Core, Gui and DBus, and of the platform plugins offscreen, xcb and wayland). The
packages are those of Debian 12, Fedora and Arch Linux.
"""

import ctypes
from collections.abc import Iterable, Mapping

import environment

Packages = tuple[str, str, str]  # Debian, Fedora, Arch

DRAWING: dict[str, Packages] = {
    "libEGL.so.1": ("libegl1", "libglvnd-egl", "libglvnd"),
    "libGL.so.1": ("libgl1", "libglvnd-glx", "libglvnd"),
    "libX11.so.6": ("libx11-6", "libX11", "libx11"),
    "libxkbcommon.so.0": ("libxkbcommon0", "libxkbcommon", "libxkbcommon"),
    "libfontconfig.so.1": ("libfontconfig1", "fontconfig", "fontconfig"),
    "libfreetype.so.6": ("libfreetype6", "freetype", "freetype2"),
    "libdbus-1.so.3": ("libdbus-1-3", "dbus-libs", "dbus"),
    "libglib-2.0.so.0": ("libglib2.0-0", "glib2", "glib2"),
    "libgthread-2.0.so.0": ("libglib2.0-0", "glib2", "glib2"),
    "libzstd.so.1": ("libzstd1", "libzstd", "zstd"),
}
X11: dict[str, Packages] = {
    "libX11-xcb.so.1": ("libx11-xcb1", "libX11-xcb", "libx11"),
    "libxcb.so.1": ("libxcb1", "libxcb", "libxcb"),
    "libxcb-cursor.so.0": ("libxcb-cursor0", "xcb-util-cursor", "xcb-util-cursor"),
    "libxcb-icccm.so.4": ("libxcb-icccm4", "xcb-util-wm", "xcb-util-wm"),
    "libxcb-image.so.0": ("libxcb-image0", "xcb-util-image", "xcb-util-image"),
    "libxcb-keysyms.so.1": ("libxcb-keysyms1", "xcb-util-keysyms", "xcb-util-keysyms"),
    "libxcb-randr.so.0": ("libxcb-randr0", "libxcb", "libxcb"),
    "libxcb-render.so.0": ("libxcb-render0", "libxcb", "libxcb"),
    "libxcb-render-util.so.0": ("libxcb-render-util0", "xcb-util-renderutil", "xcb-util-renderutil"),
    "libxcb-shape.so.0": ("libxcb-shape0", "libxcb", "libxcb"),
    "libxcb-shm.so.0": ("libxcb-shm0", "libxcb", "libxcb"),
    "libxcb-sync.so.1": ("libxcb-sync1", "libxcb", "libxcb"),
    "libxcb-util.so.1": ("libxcb-util1", "xcb-util", "xcb-util"),
    "libxcb-xfixes.so.0": ("libxcb-xfixes0", "libxcb", "libxcb"),
    "libxcb-xkb.so.1": ("libxcb-xkb1", "libxcb", "libxcb"),
    "libxkbcommon-x11.so.0": ("libxkbcommon-x11-0", "libxkbcommon-x11", "libxkbcommon-x11"),
}
WAYLAND: dict[str, Packages] = {
    "libwayland-client.so.0": ("libwayland-client0", "libwayland-client", "wayland"),
    "libwayland-cursor.so.0": ("libwayland-cursor0", "libwayland-cursor", "wayland"),
}


def needed(variables: Mapping[str, str], window: bool) -> dict[str, Packages]:
    """Libraries that this kind of run needs: drawing always, the screen's own for a window."""
    libraries = dict(DRAWING)
    if window and variables.get("DISPLAY"):
        libraries.update(X11)
    elif window and variables.get("WAYLAND_DISPLAY"):
        libraries.update(WAYLAND)
    return libraries


def loads(library: str) -> bool:
    """Whether the dynamic linker finds and loads this library."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def missing(libraries: Iterable[str]) -> list[str]:
    """Those libraries that do not load, in the order given."""
    return [library for library in libraries if not loads(library)]


def packages(absent: Iterable[str], distribution: int) -> list[str]:
    """Packages that bring these libraries, each once; 0 Debian, 1 Fedora, 2 Arch."""
    known = {**DRAWING, **X11, **WAYLAND}
    return list(dict.fromkeys(known[library][distribution] for library in absent))


def complaint(absent: list[str]) -> str:
    """One sentence that names the missing libraries and how each distribution installs them."""
    debian, fedora, arch = (" ".join(packages(absent, number)) for number in range(3))
    return (
        f"Qt needs system libraries that are not here ({', '.join(absent)}): install them with "
        f"'sudo apt-get install {debian}' (Debian, Ubuntu), 'sudo dnf install {fedora}' (Fedora) or "
        f"'sudo pacman -S {arch}' (Arch) and start again."
    )


def require(libraries: Mapping[str, Packages]) -> None:
    """See to it that these libraries load; as root with apt-get, install what is missing.

    Raises
    ------
    environment.SetupError
        If some are missing and could not be installed.
    """
    absent = missing(libraries)
    if absent and environment.installs_as_root():
        environment.apt_install(packages(absent, 0))
        absent = missing(absent)
    if absent:
        raise environment.SetupError(complaint(absent))
