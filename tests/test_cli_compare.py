"""``gardencanvas compare``: what it prints, its exit codes, and the files it writes."""

import json
from datetime import date

import pytest

from gardencanvas.__main__ import COMMANDS
from gardencanvas.cli import run
from gardencanvas.files import save_garden
from gardencanvas.measures.codes import OF_A_LAYOUT
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout


@pytest.fixture
def two(tmp_path):
    path = tmp_path / "two.gardencanvas"
    main, catch = filled("a", "cabbage"), filled("b", "lettuce", share=0.5)
    ground = [ground_of(main)]
    save_garden(garden_of(layout("l1", ground, main), layout("l2", ground, main, catch)), path)
    return path


def test_the_table_names_both_layouts_and_every_measure(two, capsys):
    assert run(["compare", str(two), "l1", "l2"]) == 0
    told = capsys.readouterr().out
    assert "Land equivalent ratio" in told
    assert "not known" in told
    assert len(told.splitlines()) == 2 + len(OF_A_LAYOUT)


def test_json_has_the_form_other_programs_read(two, capsys):
    assert run(["compare", str(two), "l1", "l2", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert set(told) == {"first", "second", "measures", "beds", "crops"}
    assert [m["code"] for m in told["measures"]] == [str(c) for c in OF_A_LAYOUT]
    for measure in told["measures"]:
        assert set(measure) == {
            "code", "unit", "better", "first", "second", "first_apart", "second_apart", "difference",
            "exceeds_uncertainty", "winner",
        }  # fmt: skip
        assert measure["first"] is None or measure["first"]["value"] is not None
    cost = next(m for m in told["measures"] if m["code"] == "seed_cost")
    assert cost["first"] is None
    assert cost["difference"] is None
    assert date.fromisoformat(told["first"]["season"]["from"]) == date(2027, 1, 1)
    assert {w["code"] for w in told["second"]["weeks"]} >= {"harvest_by_week", "cover_by_week"}
    assert all(len(w["from"]) == len(w["values"]) for w in told["second"]["weeks"])


def test_a_layout_that_is_not_there_is_named(two, capsys):
    assert run(["compare", str(two), "l1", "none"]) == 2
    assert "There is no layout 'none' in it; it has 'l1', 'l2'." in capsys.readouterr().err


def test_a_file_that_is_not_there_ends_with_2(tmp_path, capsys):
    assert run(["compare", str(tmp_path / "none.gardencanvas"), "a", "b"]) == 2
    assert capsys.readouterr().err


def test_one_layout_alone_is_a_bad_argument(two):
    with pytest.raises(SystemExit) as ended:
        run(["compare", str(two), "l1"])
    assert ended.value.code == 2


def test_the_table_is_written_as_csv(two, tmp_path):
    out = tmp_path / "table.csv"
    assert run(["compare", str(two), "l1", "l2", "--csv", str(out)]) == 0
    assert out.read_bytes().startswith(b"first layout,l1\r\nsecond layout,l2\r\n")


def test_a_crop_nobody_knows_ends_with_2(tmp_path, capsys):
    path = tmp_path / "strange.gardencanvas"
    one = filled("a", "leek").model_copy(update={"crop": "moonplant"})
    save_garden(garden_of(layout("l1", [ground_of(filled("a", "leek"))], one)), path)
    assert run(["compare", str(path), "l1", "l1"]) == 2
    assert "moonplant" in capsys.readouterr().err


def test_the_command_is_known_to_the_program():
    assert "compare" in COMMANDS
