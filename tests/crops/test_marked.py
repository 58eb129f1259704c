"""Favourites and wanted crops are kept whole; a broken file is refused and left alone."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.errors import CannotKeep, CatalogueError
from gardencanvas.crops.marked import Marked, load_marked, save_marked

slugs = st.lists(st.from_regex(r"\A[a-z0-9]{1,6}(-[a-z0-9]{1,5}){0,2}\Z"), max_size=20, unique=True)


@given(slugs, slugs)
def test_what_is_kept_is_read_again(tmp_path_factory, favourites, wanted):
    path = tmp_path_factory.mktemp("tin") / "tin.toml"
    marked = Marked(favourites=tuple(favourites), wanted=tuple(wanted))
    save_marked(marked, path)
    assert load_marked(path) == marked


def test_there_are_none_at_first(tmp_path):
    assert load_marked(tmp_path / "tin.toml") == Marked()


def test_marking_twice_marks_once_and_unmarking_takes_it_out():
    once = Marked().with_favourite("leek", on=True).with_favourite("leek", on=True)
    assert once.favourites == ("leek",)
    assert once.with_favourite("leek", on=False) == Marked()
    assert once.with_wanted("leek", on=True).favourites == ("leek",)


@pytest.mark.parametrize(
    ("data", "why"),
    [
        (b"\x00\xff", "not a sound TOML file"),
        (b"favourites = [", "not a sound TOML file"),
        (b"favourites = ['<b>Leek</b>']", "an id is made of small letters"),
        (b"favourites = 3", "favourites"),
        (b"favorites = []", "this field is not known"),
        (b"wanted = " + b"[" * 5000, "not a sound TOML file"),
        (b"#" * 1_100_000, "more than 1 MB"),
    ],
)
def test_hostile_files_are_refused_in_one_sentence(tmp_path, data, why):
    path = tmp_path / "tin.toml"
    path.write_bytes(data)
    with pytest.raises(CatalogueError, match=why) as refused:
        load_marked(path)
    assert str(refused.value).startswith("tin.toml")
    assert "\n" not in str(refused.value)
    assert path.read_bytes() == data


def test_a_folder_that_cannot_be_written_is_told(tmp_path):
    (tmp_path / "folder").write_text("a file stands here")
    with pytest.raises(CannotKeep, match=r"tin\.toml could not be written"):
        save_marked(Marked(), tmp_path / "folder" / "tin.toml")
