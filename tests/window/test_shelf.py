"""The library is kept at each change, in all sessions at once, and never over a file it could not read."""

from datetime import date

import pytest

from gardencanvas.app.session import Session
from gardencanvas.app.shelf import NotKept, Shelf
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Basis, Quantity, Variety
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import garden_from_bytes, garden_to_bytes
from gardencanvas.garden import edits
from tests.garden.makers import garden, row


@pytest.fixture
def library(tmp_path, qapp):
    return Shelf(tmp_path)


def short_leek():
    height = Quantity(low=0.3, mid=0.4, high=0.5, source="user", basis=Basis.USER)  # invented for the test
    return Variety(id="leek-short", crop="leek", name="short", height_m=height)


def yard_leek():
    return edits.rebuilt(catalogue().crop("leek"), id="yard-leek", name="Yard leek")


def test_what_is_put_on_the_shelf_is_there_at_the_next_start(library, tmp_path):
    lot = SeedLot(id="lot-1", crop="leek", variety="leek-short", seeds=200, year=2025)
    library.put_crop(yard_leek())
    library.put_variety(short_leek())
    library.put_lot(lot)
    library.mark_favourite("leek", on=True)
    library.mark_wanted("yard-leek", on=True)
    again = Shelf(tmp_path)
    assert (again.own, again.marked) == (library.own, library.marked)
    assert again.lots_of("leek") == again.lots_of("leek", "leek-short") == (lot,)


def test_taking_a_crop_out_takes_its_varieties_and_lots_along(library):
    library.put_crop(yard_leek())
    library.put_variety(Variety(id="long", crop="yard-leek", name="long"))
    library.put_lot(SeedLot(id="lot-1", crop="yard-leek", seeds=10, year=2025))
    library.put_variety(short_leek())
    library.remove(yard_leek())
    assert (library.own.crops, library.own.lots) == ((), ())
    assert library.own.varieties == (short_leek(),)


def test_two_windows_do_not_undo_each_other(library, tmp_path):
    other = Shelf(tmp_path)
    other.put_variety(short_leek())
    library.put_crop(yard_leek())  # it had read the file before the other wrote it
    assert Shelf(tmp_path).own.varieties == (short_leek(),)
    assert Shelf(tmp_path).own.crops == (yard_leek(),)


@pytest.mark.parametrize("name", ["own.toml", "tin.toml"])
def test_a_file_that_cannot_be_read_is_left_alone(tmp_path, qapp, name):
    (tmp_path / name).write_bytes(b"[[crop")
    library = Shelf(tmp_path)
    assert name in library.trouble
    with pytest.raises(NotKept, match="Mend or move that file"):
        library.mark_favourite("leek", on=True)
    with pytest.raises(NotKept, match="Mend or move that file"):
        library.put_variety(short_leek())
    assert (tmp_path / name).read_bytes() == b"[[crop"
    (tmp_path / name).unlink()
    library.put_variety(short_leek())
    assert library.trouble == ""


def test_what_could_not_be_read_again_is_not_kept(library, tmp_path):
    library.put_variety(short_leek())
    was = (tmp_path / "own.toml").read_bytes()
    with pytest.raises(NotKept, match="there is no crop nothing"):
        library.put_variety(Variety(id="lost", crop="nothing", name="lost"))
    assert (tmp_path / "own.toml").read_bytes() == was


def test_export_and_import_bring_everything_and_name_what_is_replaced(library, tmp_path):
    library.put_crop(yard_leek())
    library.put_variety(short_leek())
    library.export_to(tmp_path / "out" / "mine.toml")
    other = Shelf(tmp_path / "elsewhere")
    other.put_variety(Variety(id="leek-short", crop="leek", name="short", note="older"))
    assert other.import_from(tmp_path / "out" / "mine.toml").replaced == ("leek-short",)
    assert set(other.own.varieties) == set(library.own.varieties)
    assert other.own.crops == library.own.crops


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("[[variety]]\nid='a'\ncrop='a'\nname='a'", "variety of itself"),
        ("[[variety]]\nid='a'\ncrop='b'\nname='a'\n[[variety]]\nid='b'\ncrop='a'\nname='b'", "is a variety"),
        (
            "[[variety]]\nid='a'\ncrop='leek'\nname='a'\nheight_m={low=-1,mid=1,high=1,source='user'}",
            "height_m",
        ),
        ("[[crop]]\n" * 10_000, "10000"),
        ("x" * 5_000_000, "MB"),
    ],
)
def test_hostile_imports_are_refused_in_one_sentence_and_change_nothing(library, tmp_path, text, why):
    library.put_variety(short_leek())
    before = library.own
    (tmp_path / "bad.toml").write_text(text)
    with pytest.raises(NotKept, match=why) as refused:
        library.import_from(tmp_path / "bad.toml")
    assert "\n" not in str(refused.value)
    assert library.own is before


def test_an_import_cannot_put_itself_in_the_place_of_a_shipped_crop_and_its_hazards(library, tmp_path):
    path = tmp_path / "bad.toml"
    path.write_text(
        "[[crop]]\nid='rhubarb'\nname='Rhubarb'\nbotanical='Rheum x hybridum'\nfamily='Polygonaceae'\n"
        "group='perennial vegetable'\nhabit='blade'\nlayer='middle'\nstarts=['set']\nharvest='repeated'\n"
    )
    with pytest.raises(NotKept, match="rhubarb is a shipped crop"):
        library.import_from(path)
    assert library.own.crops == ()


def test_a_session_knows_the_library_and_its_garden_takes_in_what_is_planted(library):
    session = Session(garden(), library=library)
    told = []
    session.crops_changed.connect(lambda: told.append(session.catalogue))
    library.put_variety(short_leek())
    assert session.catalogue.variety("leek", "leek-short") == short_leek()
    assert len(told) == 1
    planting = row(varieties=("leek-short",), on=date(2027, 5, 1))
    session.propose(edits.add(session.garden, session.layout_id, [planting]), "Add row")
    assert session.garden.varieties == (short_leek(),)
    assert session.history.count() == 1
    assert garden_from_bytes(garden_to_bytes(session.garden), "it") == session.garden
    session.history.undo()
    assert session.garden.varieties == ()
