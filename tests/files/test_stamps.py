"""A file that another program changed is noticed; one that was only touched is not."""

import os

import pytest

from gardencanvas.files import FileRefused, open_garden, save_garden
from gardencanvas.files.reading import open_stamped
from gardencanvas.files.stamps import Change, change_since
from tests.garden.makers import garden, row


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "g.gardencanvas"
    save_garden(garden(row()), path)
    return path


def test_an_untouched_file_is_unchanged(path):
    assert change_since(path, open_stamped(path)[1]) is Change.NONE


def test_the_stamp_of_saving_is_the_stamp_of_the_file(path):
    stamp = save_garden(garden(), path)
    assert change_since(path, stamp) is Change.NONE
    assert open_stamped(path)[1] == stamp


def test_another_content_is_noticed_even_of_the_same_size_and_time(path):
    stamp = open_stamped(path)[1]
    other = path.with_name("other")
    other.write_bytes(path.read_bytes().replace(b"leek", b"beet"))
    os.utime(other, ns=(stamp.changed_ns, stamp.changed_ns))
    other.replace(path)  # as sync programs do
    assert change_since(path, stamp) is Change.CHANGED


def test_the_same_content_written_again_is_no_change(path):
    stamp = open_stamped(path)[1]
    data = path.read_bytes()
    path.unlink()
    path.write_bytes(data)
    os.utime(path, (1, 1))
    assert change_since(path, stamp) is Change.NONE


def test_a_file_that_is_gone_is_told_apart(path):
    stamp = open_stamped(path)[1]
    path.unlink()
    assert change_since(path, stamp) is Change.GONE
    path.parent.rename(path.parent.with_name("stick pulled out"))
    assert change_since(path, stamp) is Change.GONE


def test_a_folder_in_its_place_is_a_change(path):
    stamp = open_stamped(path)[1]
    path.unlink()
    path.mkdir()
    assert change_since(path, stamp) is Change.CHANGED


def test_a_pipe_is_refused_and_not_waited_for(tmp_path):
    pipe = tmp_path / "p.gardencanvas"
    os.mkfifo(pipe)
    with pytest.raises(FileRefused, match="not a file"):
        open_garden(pipe)
