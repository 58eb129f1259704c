"""What is saved is what is opened; a failed save leaves the old file."""

import errno
import json
import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from gardencanvas.files import CannotWrite, garden_from_bytes, garden_to_bytes, open_garden, save_garden
from gardencanvas.garden import edits
from gardencanvas.garden.garden import FORMAT
from gardencanvas.garden.pattern import Drift, Spots
from tests.garden.makers import garden, row

names = st.text(min_size=1, max_size=60).filter(lambda s: s.strip() == s and s.isprintable())


@given(names, names, st.floats(-900, 900))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_any_garden_survives_saving_and_opening(tmp_path, name, bed_name, x):
    value = garden(
        row("p-1", x=x, succession="p-1"),
        row("p-2", pattern=Spots(points=((x, 0.5), (1 / 3, 0.1)))),
        name=name,
    )
    value = edits.change(value, "l1", "bed-1", name=bed_name)
    path = tmp_path / "g.gardencanvas"
    save_garden(value, path)
    assert open_garden(path) == value


def test_the_file_is_text_that_compares_by_line():
    """Moving one planting changes only its own lines."""
    before = garden(
        row("p-1"), row("p-2", pattern=Drift(outline=((0, 0), (2, 0), (2, 2)), spacing_m=0.2, plants=9))
    )
    after = edits.shift(before, "l1", ["p-1"], 0.25, 0.0)
    old, new = garden_to_bytes(before).decode().splitlines(), garden_to_bytes(after).decode().splitlines()
    assert len(old) == len(new)
    assert sum(a != b for a, b in zip(old, new, strict=True)) == 1
    assert old[1].strip().startswith('"format": 2')


def test_saving_twice_gives_the_same_bytes():
    assert garden_to_bytes(garden(row())) == garden_to_bytes(
        garden_from_bytes(garden_to_bytes(garden(row())), "g")
    )


@pytest.mark.parametrize("call", ["fsync", "replace", "mkstemp", "write"])
@pytest.mark.parametrize("code", [errno.ENOSPC, errno.EACCES, errno.EIO])
def test_a_failed_save_leaves_the_old_file_and_no_litter(tmp_path, monkeypatch, call, code):
    path = tmp_path / "g.gardencanvas"
    save_garden(garden(row()), path)
    before = path.read_bytes()

    def fail(*_args, **_kwargs):
        raise OSError(code, os.strerror(code))

    if call == "fsync":
        monkeypatch.setattr(os, "fsync", fail)
    elif call == "replace":
        monkeypatch.setattr(Path, "replace", fail)
    elif call == "mkstemp":
        monkeypatch.setattr("tempfile.mkstemp", fail)
    else:
        real = os.fdopen

        def full(*args, **kwargs):
            file = real(*args, **kwargs)
            os.close(os.dup(file.fileno()))
            file.close()
            raise OSError(code, os.strerror(code))

        monkeypatch.setattr(os, "fdopen", full)
    with pytest.raises(CannotWrite, match=os.strerror(code)):
        save_garden(garden(row("other")), path)
    monkeypatch.undo()
    assert path.read_bytes() == before
    assert [p.name for p in tmp_path.iterdir()] == ["g.gardencanvas"]


def test_a_link_stays_a_link(tmp_path):
    real, link = tmp_path / "real.gardencanvas", tmp_path / "link.gardencanvas"
    save_garden(garden(), real)
    link.symlink_to(real)
    save_garden(garden(row()), link)
    assert link.is_symlink()
    assert open_garden(real) == garden(row())


def test_a_folder_that_is_not_there_is_told():
    with pytest.raises(CannotWrite, match="No such file"):
        save_garden(garden(), "/nowhere/at/all/g.gardencanvas")


@pytest.mark.parametrize("number", range(1, FORMAT))
def test_a_stored_sample_of_every_older_format_opens_with_all_it_held(number):
    sample = Path(__file__).parent / "samples" / f"format-{number}.gardencanvas"
    before, garden = json.loads(sample.read_text("utf-8")), open_garden(sample)
    assert before["format"] == number
    assert garden.format == FORMAT
    after = json.loads(garden_to_bytes(garden))
    assert [x["name"] for x in after["layouts"]] == [x["name"] for x in before["layouts"]]
    for new, old in zip(after["layouts"], before["layouts"], strict=True):
        assert [p["id"] for p in new["plantings"]] == [p["id"] for p in old["plantings"]]
        for one, other in zip(new["plantings"], old["plantings"], strict=True):
            assert one["crop"] == other["crop"]
            assert one["start"].items() >= other["start"].items()
