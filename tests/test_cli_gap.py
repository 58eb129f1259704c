"""``gardencanvas gap``: what it prints, as text and JSON, and its exit codes."""

import json

import pytest

from gardencanvas.cli import run
from gardencanvas.files import save_garden
from tests.garden.makers import garden, row


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "a.gardencanvas"
    save_garden(garden(row()), path)
    return str(path)


def test_text_is_ranked_and_numbered(file, capsys):
    assert run(["gap", file, "--at", "1.8,0.9", "--on", "2027-06-10", "--most", "3"]) == 0
    said = capsys.readouterr().out
    assert "  1. " in said
    assert "  3. " in said
    assert "Ranks by" in said


def test_json_has_proposals_with_numbers(file, capsys):
    assert (
        run(["gap", file, "--at", "1.8,0.9", "--on", "2027-06-10", "--json", "--quick", "--no-raising"]) == 0
    )
    told = json.loads(capsys.readouterr().out)
    assert set(told) == {"layout", "at", "from", "proposals", "misses"}
    scores = [p["score"] for p in told["proposals"]]
    assert scores
    assert scores == sorted(scores, reverse=True)
    for proposal in told["proposals"]:
        assert proposal["verdict"] in ("clear", "shares", "strains")
        assert proposal["start"]["kind"] != "raised"
        assert proposal["harvest"]["from"] <= proposal["harvest"]["to"]
        assert proposal["plants"] > 0


def test_outside_every_bed_is_a_plain_answer(file, capsys):
    assert run(["gap", file, "--at", "50,50"]) == 0
    assert "There is no bed" in capsys.readouterr().out


@pytest.mark.parametrize("at", ["1.8", "x,y", "1e9,0", "nan,0"])
def test_a_bad_place_is_refused(file, capsys, at):
    with pytest.raises(SystemExit) as stop:
        run(["gap", file, "--at", at])
    assert stop.value.code == 2
    assert "--at" in capsys.readouterr().err


def test_an_unreadable_file(tmp_path, capsys):
    assert run(["gap", str(tmp_path / "none.gardencanvas"), "--at", "1,1"]) == 2
