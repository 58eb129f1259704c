"""Whatever call fails while a file is written, the old or the new one is there, whole, and it is told."""

import errno
import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest

from gardencanvas.files import CannotWrite, garden_to_bytes, open_garden, save_garden, write_whole
from tests.garden.makers import garden, row

OLD, NEW = garden(row()), garden(row(), row("p-2", crop="radish"))
CODES = [errno.ENOSPC, errno.EACCES, errno.EIO, errno.EROFS, errno.EDQUOT, errno.ESTALE]


def _fail(code):
    def fail(*_args, **_kwargs):
        raise OSError(code, os.strerror(code))

    return fail


class _Torn:
    """A file that takes half of what it is given, and then no more."""

    def __init__(self, file, code):
        self._file, self._code = file, code

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self._file.close()

    def write(self, data):
        self._file.write(data[: len(data) // 2])
        self._file.flush()
        raise OSError(self._code, os.strerror(self._code))


def _short(monkeypatch, code):
    real = os.fdopen
    monkeypatch.setattr(os, "fdopen", lambda *a, **k: _Torn(real(*a, **k), code))


def _folder_fsync(monkeypatch, code):
    real = os.fsync

    def fail(handle):
        if os.path.isdir(f"/proc/self/fd/{handle}"):  # noqa: PTH112 - a handle, not a path of ours
            raise OSError(code, os.strerror(code))
        real(handle)

    monkeypatch.setattr(os, "fsync", fail)


def _folder_open(monkeypatch, code):
    real = os.open

    def fail(path, *args, **kwargs):
        if Path(path).is_dir():
            raise OSError(code, os.strerror(code))
        return real(path, *args, **kwargs)

    monkeypatch.setattr(os, "open", fail)


FAULTS = {
    "mkstemp": lambda m, code: m.setattr("tempfile.mkstemp", _fail(code)),
    "short write": _short,
    "fsync": lambda m, code: m.setattr(os, "fsync", _fail(code)),
    "fstat": lambda m, code: m.setattr(os, "fstat", _fail(code)),
    "chmod": lambda m, code: m.setattr(Path, "chmod", _fail(code)),
    "replace": lambda m, code: m.setattr(Path, "replace", _fail(code)),
    "folder": _folder_open,
    "folder fsync": _folder_fsync,
    "realpath": lambda m, code: m.setattr(os.path, "realpath", _fail(code)),
}
AFTER_THE_RENAME = {"folder", "folder fsync"}
KNOWN_TO_DO_WITHOUT = {("chmod", errno.EACCES)}  # a stick that knows no permissions still takes the file


@pytest.mark.parametrize("call", FAULTS)
@pytest.mark.parametrize("code", CODES, ids=errno.errorcode.get)
def test_the_old_file_or_the_new_one_is_there_and_whole(tmp_path, monkeypatch, call, code):
    path = tmp_path / "g.gardencanvas"
    save_garden(OLD, path)
    FAULTS[call](monkeypatch, code)
    told = ""
    try:
        save_garden(NEW, path)
    except CannotWrite as error:
        told = str(error)
    monkeypatch.undo()
    done = open_garden(path) == NEW
    assert done or open_garden(path) == OLD
    if (call, code) in KNOWN_TO_DO_WITHOUT:
        assert done
    else:
        assert told == f"g.gardencanvas could not be written: {os.strerror(code)}."
        assert done is (call in AFTER_THE_RENAME)
    assert [p.name for p in tmp_path.iterdir()] == ["g.gardencanvas"]


@pytest.mark.parametrize("code", [errno.EINVAL, errno.ENOTSUP], ids=errno.errorcode.get)
def test_a_network_disk_that_cannot_flush_a_folder_is_no_fault(tmp_path, monkeypatch, code):
    _folder_fsync(monkeypatch, code)
    path = tmp_path / "g.gardencanvas"
    save_garden(NEW, path)
    assert open_garden(path) == NEW


def test_a_left_over_part_that_cannot_be_removed_does_not_hide_the_fault(tmp_path, monkeypatch):
    monkeypatch.setattr(Path, "replace", _fail(errno.ENOSPC))
    monkeypatch.setattr(Path, "unlink", _fail(errno.EIO))
    with pytest.raises(CannotWrite, match="No space left"):
        save_garden(NEW, tmp_path / "g.gardencanvas")


# the same with real disks


def _limited(what, *arguments):
    """Run a piece of a program in a process of its own, which may be limited."""
    command = [sys.executable, "-c", what, *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, check=False, timeout=60)


TOO_LARGE = """
import resource, signal, sys
from pathlib import Path
from gardencanvas.files import CannotWrite, write_whole
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (4096, 4096))
try:
    write_whole(Path(sys.argv[1]), b"x" * 10_000)
except CannotWrite as error:
    print(error)
"""


def test_a_write_that_the_system_cuts_short_is_told(tmp_path):
    """The system itself takes 4,096 of 10,000 bytes and refuses the rest (setrlimit, RLIMIT_FSIZE)."""
    path = tmp_path / "g.gardencanvas"
    write_whole(path, b"old")
    done = _limited(TOO_LARGE, path)
    assert done.stdout.strip() == "g.gardencanvas could not be written: File too large.", done.stderr
    assert path.read_bytes() == b"old"
    assert [p.name for p in tmp_path.iterdir()] == ["g.gardencanvas"]


AS_NOBODY = """
import os, sys
from pathlib import Path
from gardencanvas.files import CannotWrite, open_garden, write_whole
from gardencanvas.files.errors import FileRefused
os.setgid(65534)
os.setuid(65534)
for name in sys.argv[1:]:
    try:
        write_whole(Path(name), b"new")
    except CannotWrite as error:
        print(error)
"""


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root can become somebody else"
)
def test_a_folder_and_a_file_that_may_not_be_written_are_told():
    """As a user who may read and not write; root may do all. Not in pytest's folder: it is closed to them."""
    with tempfile.TemporaryDirectory() as name:
        folder, theirs = Path(name), Path(name) / "theirs"
        folder.chmod(0o755)
        theirs.mkdir()
        theirs.chmod(0o777)
        ours, locked, new = (
            folder / "g.gardencanvas",
            theirs / "locked.gardencanvas",
            folder / "new.gardencanvas",
        )
        write_whole(ours, b"old")
        write_whole(locked, b"old")
        locked.chmod(0o444)
        done = _limited(AS_NOBODY, ours, locked, new)
        assert done.stdout.splitlines() == [
            "g.gardencanvas could not be written: it is write-protected.",
            "locked.gardencanvas could not be written: it is write-protected.",
            "new.gardencanvas could not be written: Permission denied.",
        ], done.stderr
        assert ours.read_bytes() == b"old"
        assert locked.read_bytes() == b"old"
        assert not new.exists()


def _small_disk(folder):
    """A disk of 64 kB at a folder; whether it could be had."""
    command = ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(folder)]
    try:
        return subprocess.run(command, capture_output=True, check=False).returncode == 0
    except OSError:
        return False


def test_a_disk_that_is_really_full_keeps_the_old_file(tmp_path):
    if not _small_disk(tmp_path):
        pytest.skip("no disk of 64 kB can be mounted here")
    try:
        path = tmp_path / "g.gardencanvas"
        save_garden(OLD, path)
        big = garden(*[row(f"p-{n}") for n in range(300)])
        assert len(garden_to_bytes(big)) > 65_536
        with pytest.raises(CannotWrite, match="No space left on device"):
            save_garden(big, path)
        assert open_garden(path) == OLD
        assert [p.name for p in tmp_path.iterdir()] == ["g.gardencanvas"]
    finally:
        subprocess.run(["umount", str(tmp_path)], check=True)


def test_a_path_of_three_hundred_characters_is_written_and_a_name_too_long_is_told(tmp_path):
    """Linux allows 4,096 bytes in a path and 255 in one name (limits.h: PATH_MAX, NAME_MAX)."""
    folder = tmp_path / ("d" * 120) / ("e" * 120)
    folder.mkdir(parents=True)
    path = folder / ("f" * 100 + ".gardencanvas")
    assert len(str(path)) > 300
    save_garden(NEW, path)
    assert open_garden(path) == NEW
    with pytest.raises(CannotWrite, match="File name too long"):
        save_garden(NEW, folder / ("f" * 300 + ".gardencanvas"))


def test_too_many_open_files_is_told(tmp_path):
    """The system refuses one more file (setrlimit, RLIMIT_NOFILE)."""
    path = tmp_path / "g.gardencanvas"
    write_whole(path, b"old")
    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    try:
        resource.setrlimit(resource.RLIMIT_NOFILE, (3, hard))
        with pytest.raises(CannotWrite, match="Too many open files"):
            write_whole(path, b"new")
    finally:
        resource.setrlimit(resource.RLIMIT_NOFILE, (soft, hard))
    assert path.read_bytes() == b"old"
