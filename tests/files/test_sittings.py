"""One window may write a file; the others are told; what a dead window left is known for what it is."""

import os
import signal
import subprocess
import sys
import time

import pytest

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.keeping import sittings
from gardencanvas.files.keeping.homes import file_of, home_of
from gardencanvas.files.keeping.sittings import Sitting


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "plan.gardencanvas"
    path.write_text("{}")
    return path


@pytest.fixture
def work(tmp_path):
    return tmp_path / "work"


def test_the_second_window_is_told_who_has_the_file(path, work):
    first, second = Sitting(path, work), Sitting(path, work)
    assert first.claim() is None
    holder = second.claim()
    assert holder is not None
    assert holder.pid == os.getpid()
    assert first.owns()
    assert not second.owns()
    first.end()
    assert second.claim() is None
    assert second.owns()
    second.end()


def test_a_link_to_the_file_is_the_same_file(path, work, tmp_path):
    link = tmp_path / "link.gardencanvas"
    link.symlink_to(path)
    first, second = Sitting(path, work), Sitting(link, work)
    assert first.claim() is None
    assert second.claim() is not None
    first.end()
    second.end()


def test_taking_over_is_noticed_by_the_first(path, work):
    first, second = Sitting(path, work), Sitting(path, work)
    first.claim()
    second.claim()
    second.take_over()
    assert second.owns()
    assert not first.owns()
    first.end()
    assert second.owns(), "the first must not give away what is no longer its own"
    second.end()
    assert not first.home.exists(), "nothing is left behind"


CHILD = """
import sys, time
from pathlib import Path
from gardencanvas.files.keeping.sittings import Sitting
sitting = Sitting(Path(sys.argv[1]), Path(sys.argv[2]))
print(sitting.claim() is None, flush=True)
time.sleep(60)
"""


def test_the_claim_of_a_killed_process_is_stale_at_once(path, work):
    child = subprocess.Popen(
        [sys.executable, "-c", CHILD, str(path), str(work)], stdout=subprocess.PIPE, text=True
    )
    assert child.stdout is not None
    assert child.stdout.readline().strip() == "True"
    mine = Sitting(path, work)
    holder = mine.claim()
    assert holder is not None
    assert holder.pid == child.pid
    child.send_signal(signal.SIGKILL)
    child.wait()
    child.stdout.close()
    assert mine.claim() is None
    assert mine.owns()
    mine.end()


def test_many_windows_at_once_get_one_owner(path, work):
    code = CHILD.replace("time.sleep(60)", "time.sleep(1.5)")
    command = [sys.executable, "-c", code, str(path), str(work)]
    children = [subprocess.Popen(command, stdout=subprocess.PIPE, text=True) for _ in range(4)]
    said = [child.communicate(timeout=60)[0].strip() for child in children]
    assert said.count("True") == 1


def test_a_garden_without_a_file_is_nobody_elses(work):
    first, second = Sitting(None, work), Sitting(None, work)
    assert first.home != second.home
    assert first.owns()
    assert second.owns()


def test_a_data_folder_that_cannot_be_used_is_told_in_a_sentence(path, tmp_path):
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    with pytest.raises(CannotWrite, match="cannot be used"):
        Sitting(path, blocked / "work").claim()


def test_the_folder_is_closed_to_other_users(path, work):
    sitting = Sitting(path, work)
    sitting.claim()
    assert sitting.home.stat().st_mode & 0o077 == 0
    sitting.end()


# 300 characters in all, within the 255 bytes that Linux allows for one name.
LONG = ["d" * 90, "e" * 90, "f" * 90, "garden-of-three-hundred.gardencanvas"]


@pytest.mark.parametrize(
    "parts",
    [LONG, ["сад"], ["花园", "園.gardencanvas"], ["حديقة.gardencanvas"], ["a b'\"$&;%.gardencanvas"]],
    ids=["long", "cyrillic", "chinese", "arabic", "signs"],
)
def test_any_path_has_a_folder_that_names_its_file(parts, tmp_path, work):
    path = tmp_path.joinpath(*parts)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("{}")
    sitting = Sitting(path, work)
    assert sitting.claim() is None
    assert file_of(sitting.home) == path
    assert len(sitting.home.name) < 60
    assert sitting.home.name.isascii()
    sitting.end()


@pytest.mark.skipif(os.name != "posix", reason="names that are not text are a matter of POSIX")
def test_a_name_that_is_not_text_does_no_harm(tmp_path, work):
    path = tmp_path / os.fsdecode(b"gart\xe9n.gardencanvas")
    path.write_text("{}")
    sitting = Sitting(path, work)
    assert sitting.claim() is None
    assert file_of(sitting.home) == path
    sitting.end()


def test_two_files_of_the_same_name_have_two_folders(tmp_path, work):
    assert home_of(tmp_path / "a" / "g.gardencanvas", work) != home_of(
        tmp_path / "b" / "g.gardencanvas", work
    )


def test_a_dead_sitting_is_offered_to_one_window_only(path, work):
    dead = Sitting(path, work)
    dead.claim()
    dead.abandon()
    handle = sittings.adopt(dead.home, dead.name)
    assert handle is not None
    assert sittings.adopt(dead.home, dead.name) is None
    os.close(handle)
    again = sittings.adopt(dead.home, dead.name)
    assert again is not None
    os.close(again)


def test_claiming_does_not_wait_long_for_a_door_that_is_held(path, work):
    mine = Sitting(path, work)
    mine.begin()
    handle = os.open(mine.home / "door", os.O_RDWR | os.O_CREAT)
    assert sittings.hold(handle)
    began = time.monotonic()
    assert mine.claim() is None
    os.close(handle)
    assert time.monotonic() - began < 30  # it gives up waiting: a hung program must not stop another
    mine.end()
