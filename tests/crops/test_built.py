"""The kept copy of the catalogue is never stale, and a broken one is never used.

What is right is always what the text files say, read without any copy.
"""

import hashlib
import json
import os
import shutil

import pytest

from gardencanvas.crops import built
from gardencanvas.crops.catalogue import CatalogueError, load
from gardencanvas.resources_folder import resources

FAMILIES = ("solanaceae.toml", "oxalidaceae.toml")


@pytest.fixture
def folder(tmp_path):
    """A small data folder to change."""
    (tmp_path / "data" / "crops").mkdir(parents=True)
    for name in FAMILIES:
        shutil.copy(resources() / "crops" / name, tmp_path / "data" / "crops")
    shutil.copy(resources() / "sources.toml", tmp_path / "data")
    return tmp_path / "data"


@pytest.fixture
def cache(tmp_path):
    return tmp_path / "cache"


def height(folder, cache):
    return load(folder, cache).crop("tomato").height_m


def test_a_kept_copy_holds_what_the_files_hold(folder, cache):
    first, second = load(folder, cache), load(folder, cache)
    assert (cache / "catalogue.json").is_file()
    assert second.crops == first.crops
    assert second.sources == first.sources
    assert second.families == first.families


def test_the_second_start_does_not_read_toml(folder, cache, monkeypatch):
    load(folder, cache)

    def refuse(*_):
        raise AssertionError("parsed again")

    monkeypatch.setattr("gardencanvas.crops.catalogue.parsed", refuse)
    assert load(folder, cache).crop("tomato").family == "Solanaceae"


def test_a_change_of_the_same_size_and_time_is_seen(folder, cache):
    was = height(folder, cache)
    path = folder / "crops" / "solanaceae.toml"
    times = path.stat()
    text = path.read_text(encoding="utf-8")
    old = f"height_m = {{ low = {was.low:g}, mid = {was.mid:g}"
    new = f"height_m = {{ low = {was.low:g}, mid = {was.mid - 0.1:.1f}"
    assert len(old) == len(new)
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    os.utime(path, ns=(times.st_atime_ns, times.st_mtime_ns))
    assert height(folder, cache).mid == pytest.approx(was.mid - 0.1)


def test_a_file_more_or_less_is_seen(folder, cache):
    load(folder, cache)
    (folder / "crops" / "oxalidaceae.toml").unlink()
    assert {c.family for c in load(folder, cache).crops} == {"Solanaceae"}


@pytest.mark.parametrize("module", built._CODE)
def test_other_code_has_another_key(module, monkeypatch):
    files = [("a.toml", b"x = 1")]
    was = built.digest(files)
    real = built.pkgutil.get_data

    def changed(package, name):
        return real(package, name) + (b"\n# changed" if name == module else b"")

    monkeypatch.setattr(built.pkgutil, "get_data", changed)
    assert built.digest(files) != was


def test_another_version_has_another_key(monkeypatch):
    files = [("a.toml", b"x = 1")]
    was = built.digest(files)
    monkeypatch.setattr("gardencanvas.__version__", "999.0")
    assert built.digest(files) != was


def test_names_and_bytes_do_not_run_together():
    assert built.digest([("ab", b"c")]) != built.digest([("a", b"bc")])


@pytest.mark.parametrize("broken", [b"", b"\n", b"{", b"\x00" * 1000, b"key digest\n[]"])
def test_a_broken_copy_is_built_anew_and_replaced(folder, cache, broken):
    sound = load(folder, cache).crops
    path = cache / "catalogue.json"
    was = path.read_bytes()
    path.write_bytes(broken)
    assert load(folder, cache).crops == sound
    assert path.read_bytes() == was


def test_a_copy_cut_short_is_not_used(folder, cache):
    sound = load(folder, cache).crops
    path = cache / "catalogue.json"
    path.write_bytes(path.read_bytes()[:-1])
    assert load(folder, cache).crops == sound


def test_a_forged_copy_with_a_right_seal_is_checked_like_any_file(folder, cache):
    """Right key, right digest, but a root 99 m deep: refused by the schema, and built anew."""
    sound = load(folder, cache).crops
    path = cache / "catalogue.json"
    seal, payload = path.read_bytes().split(b"\n", 1)
    data = json.loads(payload)
    data["crops"][0]["root_depth_m"] = {"low": 99.0, "mid": 99.0, "high": 99.0, "source": "fao56"}
    forged = json.dumps(data).encode()
    key = seal.split()[0].decode()
    path.write_bytes(f"{key} {hashlib.blake2b(forged, digest_size=20).hexdigest()}\n".encode() + forged)
    assert load(folder, cache).crops == sound


def test_a_folder_that_cannot_be_written_only_costs_time(folder, tmp_path, caplog):
    (tmp_path / "cache").write_text("a file stands where the folder should be")
    with caplog.at_level("INFO", logger="gardencanvas.crops.built"):
        assert load(folder, tmp_path / "cache").crop("tomato").family == "Solanaceae"
    assert "cannot keep" in caplog.text


def test_faulty_files_are_never_kept(folder, cache):
    (folder / "crops" / "bad.toml").write_text("[[crop]]\nid = 'x'\n", encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"bad\.toml"):
        load(folder, cache)
    assert not cache.exists()
