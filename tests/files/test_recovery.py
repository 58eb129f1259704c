"""What was being worked on when the program died is found, told apart from what was saved, and kept."""

from datetime import UTC, datetime

import pytest

from gardencanvas.files import FileRefused, garden_from_bytes, garden_to_bytes, save_garden
from gardencanvas.files.differences import Difference, How, differences
from gardencanvas.files.keeping.journals import Head, read_journal, write_journal
from gardencanvas.files.keeping.recovery import claimed, left_over
from gardencanvas.files.keeping.sittings import Sitting
from gardencanvas.files.keeping.slices import Slices
from gardencanvas.files.keeping.versions import versions
from gardencanvas.garden import edits, laying_under
from gardencanvas.words.differences import in_words
from tests.garden.makers import bed, garden, row
from tests.garden.pictures import backdrop

WHEN = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "g.gardencanvas"


@pytest.fixture
def work(tmp_path):
    return tmp_path / "work"


def sat(path, work, value, *, alive=False):
    """A window that worked on a value and died, or lives."""
    sitting = Sitting(path, work)
    sitting.begin()
    write_journal(sitting.journal, Head(path, value.name, None, WHEN), Slices().bytes_of(value))
    if not alive:
        sitting.abandon()
    return sitting


def test_the_work_of_a_dead_window_is_found_and_that_of_a_living_one_is_not(path, work):
    saved, worked = garden(row("p-1")), garden(row("p-1"), row("p-2", crop="radish"))
    save_garden(saved, path)
    living = sat(path, work, worked, alive=True)
    assert left_over(work) == []
    sat(path, work, worked)
    (left,) = left_over(work)
    assert (left.path, left.name, left.written, left.fault) == (path, "Test", WHEN, "")
    hand = claimed(left)
    assert hand is not None
    assert hand.garden() == worked
    assert hand.saved() == saved
    assert hand.differs()
    assert left_over(work) == [], "it is offered by one window only"
    hand.let_go()
    assert len(left_over(work)) == 1, "left for later"
    again = claimed(left)
    assert again is not None
    again.done()
    assert left_over(work) == []
    living.end()
    assert list(work.iterdir()) == []


def test_giving_it_up_still_keeps_it_as_a_version(path, work):
    worked = garden(row("p-1"), row("p-2", crop="radish"))
    save_garden(garden(), path)
    sat(path, work, worked)
    hand = claimed(left_over(work)[0])
    assert hand is not None
    hand.keep_as_version()
    hand.done()
    (version,) = versions(path, work)
    assert garden_from_bytes(version.file.read_bytes(), "v") == worked
    assert version.when == WHEN


def test_work_that_its_file_holds_needs_no_recovery(path, work):
    save_garden(garden(row()), path)
    sat(path, work, garden(row()))
    hand = claimed(left_over(work)[0])
    assert hand is not None
    assert not hand.differs()
    hand.done()


def test_a_window_that_died_with_nothing_unsaved_leaves_nothing(path, work):
    sitting = Sitting(path, work)
    sitting.claim()
    sitting.abandon()
    assert left_over(work) == []
    assert not list(sitting.home.glob("*.sitting"))


def test_a_garden_without_a_file_is_found(work):
    sat(None, work, garden(row()))
    (left,) = left_over(work)
    assert left.path is None
    hand = claimed(left)
    assert hand is not None
    assert hand.garden() == garden(row())
    assert hand.saved() is None
    hand.let_go()


@pytest.mark.parametrize(
    "damage",
    [
        lambda data: b"",
        lambda data: b"\x00" * len(data),
        lambda data: data[: len(data) // 2],
        lambda data: data.replace(b"leek", b"beet"),
        lambda data: b"[" * 100_000,
        lambda data: data.replace(b'"journal": 1', b'"journal": 2'),
    ],
    ids=["empty", "zeros", "half", "changed", "deep", "newer"],
)  # fmt: skip
def test_a_damaged_journal_is_told_in_one_sentence_and_left_where_it_is(path, work, damage):
    sitting = sat(path, work, garden(row()))
    sitting.journal.write_bytes(damage(sitting.journal.read_bytes()))
    (left,) = left_over(work)
    hand = claimed(left)
    assert hand is not None
    with pytest.raises(FileRefused) as told:
        hand.garden()
    assert "\n" not in str(left.fault) + str(told.value)
    assert hand.differs(), "what cannot be read must not count as saved"
    hand.let_go()
    assert sitting.journal.exists()


def test_a_garden_is_saved_from_a_journal_whose_head_alone_is_damaged(path, work):
    sitting = sat(path, work, garden(row()))
    sitting.journal.write_bytes(sitting.journal.read_bytes().replace(b"2027-03-01T", b"yesterday at "))
    (left,) = left_over(work)
    assert "yesterday" in left.fault
    assert left.path == path
    hand = claimed(left)
    assert hand is not None
    assert hand.garden() == garden(row())
    hand.let_go()


def test_slices_hold_the_same_garden_as_the_file_and_reuse_what_did_not_change():
    slices = Slices()
    before = garden(row("p-1", note='a "quoted" line\n'), row("p-2", crop="radish"), name="{[,]}")
    after = edits.shift(before, "l1", ["p-2"], 0.5, 0.0)
    under = edits.rebuilt(after, backdrop=backdrop(40, 30))
    turned = laying_under.turned(under, 5.0)
    for value in (before, after, under, turned, garden(backdrop=backdrop(4, 3)), garden()):
        assert garden_from_bytes(slices.bytes_of(value), "s") == value
        assert garden_from_bytes(garden_to_bytes(value), "s") == value


def test_journal_and_differences_are_in_words(path, work):
    before = garden(row("p-1"), row("p-2"), row("p-3"))
    after = edits.remove(before, "l1", ["p-1"])
    after = edits.shift(after, "l1", ["p-2"], 0.1, 0.0)
    after = edits.add(after, "l1", [row("p-4"), row("p-5"), bed("bed-2", y=3)])
    after = edits.rebuilt(after, name="Other")
    assert set(differences(before, after)) == {
        Difference(How.CHANGED, "name", 1),
        Difference(How.ADDED, "plantings", 2, "First"),
        Difference(How.REMOVED, "plantings", 1, "First"),
        Difference(How.CHANGED, "plantings", 1, "First"),
        Difference(How.ADDED, "beds", 1, "First"),
    }
    told = in_words(differences(before, after))
    assert "2 plantings added in First" in told
    assert "1 bed added in First" in told
    assert "the name changed" in told.replace("The", "the")
    assert differences(after, after) == ()
    sitting = sat(path, work, after)
    assert differences(after, read_journal(sitting.journal)) == ()


def test_order_alone_and_layouts_are_differences_too():
    one, two = row("p-1"), row("p-2")
    assert [d.field for d in differences(garden(one, two), garden(two, one))] == ["plantings"]
    value = garden(one)
    more = edits.rebuilt(value, layouts=(*value.layouts, edits.rebuilt(value.layouts[0], id="l2")))
    assert differences(value, more) == (Difference(How.ADDED, "layouts", 1),)
    assert differences(more, value) == (Difference(How.REMOVED, "layouts", 1),)
    assert differences(value, edits.rebuilt(value, note="wet corner")) == (
        Difference(How.CHANGED, "note", 1),
    )
