"""Many versions of today, few of long ago, and never more than fits."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.keeping import versions as room
from gardencanvas.files.keeping.versions import LAST, keep_version, thinned, versions
from gardencanvas.garden.picture import MAX_TEXT

NOW = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "g.gardencanvas"


@pytest.fixture
def work(tmp_path):
    return tmp_path / "work"


def test_versions_come_newest_first_with_what_was_saved(path, work):
    for n in range(3):
        keep_version(path, f"state {n}".encode(), NOW + timedelta(minutes=n), work)
    found = versions(path, work)
    assert [v.file.read_bytes() for v in found] == [b"state 2", b"state 1", b"state 0"]
    assert [v.when for v in found] == [NOW + timedelta(minutes=n) for n in (2, 1, 0)]
    assert [v.size for v in found] == [7, 7, 7]


def test_the_same_state_saved_again_is_kept_once(path, work):
    assert keep_version(path, b"x", NOW, work) is not None
    assert keep_version(path, b"x", NOW + timedelta(hours=1), work) is None
    assert keep_version(path, b"y", NOW + timedelta(hours=2), work) is not None
    assert keep_version(path, b"x", NOW + timedelta(hours=3), work) is not None
    assert len(versions(path, work)) == 3


def test_two_saves_at_the_same_moment_are_two_versions(path, work):
    for data in (b"a", b"b"):
        keep_version(path, data, NOW, work)
    assert len(versions(path, work)) == 2


def test_versions_of_another_file_are_not_touched(path, work, tmp_path):
    keep_version(tmp_path / "other.gardencanvas", b"o", NOW, work)
    keep_version(path, b"x", NOW, work)
    assert len(versions(path, work)) == 1


def test_they_are_bounded_in_size_and_the_newest_stays(path, work, monkeypatch):
    monkeypatch.setattr(room, "MOST_BYTES", 1000)
    for n in range(30):
        keep_version(path, bytes([n]) * 300, NOW + timedelta(days=n), work)
        assert sum(v.size for v in versions(path, work)) <= 1000
    keep_version(path, b"larger than all that is allowed" * 100, NOW + timedelta(days=40), work)
    assert [v.size for v in versions(path, work)] == [3100]


def test_a_folder_in_the_way_is_told(path, work):
    keep_version(path, b"x", NOW, work)
    (file,) = [v.file for v in versions(path, work)]
    file.unlink()
    file.parent.rmdir()
    file.parent.write_text("in the way")
    with pytest.raises(CannotWrite):
        keep_version(path, b"y", NOW, work)


moments = st.lists(
    st.integers(0, 4 * 366 * 86_400).map(lambda s: NOW - timedelta(seconds=s)), max_size=60, unique=True
)


@given(moments)
def test_the_newest_ten_stay_and_nothing_is_invented(times):
    kept = thinned(times, NOW)
    assert kept <= set(times)
    assert set(sorted(times, reverse=True)[:LAST]) <= kept


@given(moments)
def test_whatever_goes_has_a_newer_or_nearer_one_that_stays(times):
    """The gap to the next kept version is at most the stretch of its age: a day, a month, a year, older."""
    kept = sorted(thinned(times, NOW))
    for when in set(times) - set(kept):
        age = NOW - when
        stretch = next(
            length
            for limit, length in (
                (timedelta(days=1), timedelta(hours=1)),
                (timedelta(days=30), timedelta(days=1)),
                (timedelta(days=366), timedelta(days=7)),
                (timedelta.max, timedelta(days=30)),
            )
            if age <= limit
        )
        assert any(timedelta(0) < k - when <= stretch for k in kept)


def test_ten_years_of_daily_saves_come_to_a_few_dozen():
    """24 hours, 30 days, 52 weeks, 12 months of each further year, and the last ten: each stretch once."""
    times = [NOW - timedelta(hours=6 * n) for n in range(4 * 3653)]
    kept = thinned(times, NOW)
    assert len(kept) <= 24 + 31 + 53 + 9 * 13 + LAST
    assert max(kept) == NOW
    assert NOW - min(kept) > timedelta(days=9 * 365)


def test_thinning_again_and_again_ends_as_sparse_as_thinning_once(path, work):
    """A year of a save a day through keep_version keeps each of the last ten and about one a week."""
    for n in range(200):
        keep_version(path, str(n).encode(), NOW + timedelta(days=n), work)
    assert 10 <= len(versions(path, work)) <= LAST + 31 + 26


def test_ten_versions_with_the_largest_picture_stay_within_what_is_kept():
    """A megabyte beside the picture is a garden of some 20,000 plants in rows ten times over."""
    assert LAST * (MAX_TEXT + 1_000_000) <= room.MOST_BYTES
