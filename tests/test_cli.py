"""The command line: what it prints, its exit codes, and that it writes nothing beside."""

import json
import subprocess
import sys
from datetime import date
from xml.etree import ElementTree

import pytest

from gardencanvas.cli import run
from gardencanvas.files import open_garden, save_garden
from gardencanvas.fit import check
from gardencanvas.garden.accepting import accept
from gardencanvas.garden.garden import Accepted
from gardencanvas.garden.pattern import Rows
from tests.garden.makers import garden, row


@pytest.fixture
def demo(tmp_path):
    path = tmp_path / "demo.gardencanvas"
    assert run(["demo", str(path)]) == 0
    return path


@pytest.fixture
def sound(tmp_path):
    path = tmp_path / "sound.gardencanvas"
    planting = row("p-1", "leek", x=0.2, y=0.4, on=date(2027, 6, 1), kind="raised")
    save_garden(garden(planting), path)
    return path


def test_demo_writes_a_garden_with_every_verdict(demo, capsys):
    """At least five beds of different shapes, a wall, a tree, sixteen crops, four hundred plants."""
    value = open_garden(demo)
    layout = value.layouts[0]
    assert len(layout.beds) >= 5
    assert len({len(b.outline) for b in layout.beds}) >= 3
    assert {f.kind for f in value.fixtures} >= {"wall", "tree"}
    assert len({p.crop for p in layout.plantings}) >= 16
    assert sum(p.plants for p in layout.plantings) >= 400
    capsys.readouterr()
    assert run(["check", str(demo), "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert {p["verdict"] for p in told["plantings"]} == {"clear", "shares", "strains", "clashes"}


def test_check_json_has_the_form_other_programs_read(demo, capsys):
    capsys.readouterr()
    run(["check", str(demo), "--json"])
    told = json.loads(capsys.readouterr().out)
    assert set(told) == {"layout", "season", "plantings", "findings"}
    assert set(told["season"]) == {"from", "to"}
    for planting in told["plantings"]:
        assert set(planting) == {
            "id", "crop", "variety", "plants", "verdict", "layer", "root_depth_m", "harvest", "light",
            "days_to_spare",
        }  # fmt: skip
        assert date.fromisoformat(planting["harvest"]["from"]) <= date.fromisoformat(
            planting["harvest"]["to"]
        )
        assert 0 <= planting["light"] <= 1
    ids = {p["id"] for p in told["plantings"]}
    for finding in told["findings"]:
        assert set(finding) == {
            "id", "kind", "verdict", "plantings", "from", "to", "reason", "source", "remedies",
        }  # fmt: skip
        assert set(finding["plantings"]) <= ids
        assert finding["kind"] in {
            "crowding", "shading", "roots", "family", "water", "timing", "frost", "rotation", "support",
            "cover", "outside",
        }  # fmt: skip


def test_exit_codes(sound, demo, tmp_path, capsys):
    assert run(["check", str(sound)]) == 0
    assert run(["check", str(demo)]) == 1
    bad = tmp_path / "bad.gardencanvas"
    bad.write_text("{")
    assert run(["check", str(bad)]) == 2
    assert "cut short" in capsys.readouterr().err
    assert run(["check", str(tmp_path / "none")]) == 2
    assert run(["check", str(sound), "--layout", "Nobody's"]) == 2
    assert "'First'" in capsys.readouterr().err
    for words in (
        ["check"],
        ["picture", str(sound), "x.png", "--on", "soon"],
        ["picture", str(sound), "x.gif"],
    ):
        try:
            code = run(words)
        except SystemExit as error:
            code = error.code
        assert code == 2


def test_check_writes_nothing(sound):
    before = sorted(sound.parent.iterdir()), sound.read_bytes()
    run(["check", str(sound)])
    assert (sorted(sound.parent.iterdir()), sound.read_bytes()) == before


def test_the_four_words_are_printed_for_people(sound, capsys):
    run(["check", str(sound)])
    out = capsys.readouterr().out
    assert "Leek" in out
    assert "clear" in out


def _drawn(*words):
    """A command that draws, in a process of its own."""
    done = subprocess.run(
        [sys.executable, "-m", "gardencanvas", *words],
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_picture_as_png_and_svg(sound, tmp_path):
    png, svg = tmp_path / "plan.png", tmp_path / "plan.svg"
    _drawn("picture", str(sound), str(png), "--on", "2027-08-01")
    _drawn("picture", str(sound), str(svg))
    assert png.read_bytes().startswith(b"\x89PNG\r\n\x1a\n")  # PNG signature, RFC 2083
    root = ElementTree.fromstring(svg.read_text(encoding="utf-8"))
    assert root.tag.endswith("svg")
    assert root.get("viewBox")


def test_bedmap_is_true_to_its_scale(tmp_path):
    """A 3.6 m bed at 1:20 is 180 mm long: read back from the PDF's own content stream."""
    import pypdf

    path, pdf = tmp_path / "g.gardencanvas", tmp_path / "map.pdf"
    planting = row(
        "p-1", "leek", pattern=Rows(origin=(0.2, 0.3), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3)
    )
    save_garden(garden(planting), path)
    _drawn("bedmap", str(path), str(pdf), "--scale", "20")
    reader = pypdf.PdfReader(pdf)
    assert len(reader.pages) == 2
    width, height = (float(x) for x in reader.pages[0].mediabox[2:])
    assert {round(width / 72 * 25.4), round(height / 72 * 25.4)} == {297, 210}  # ISO 216: A4
    assert "Leek" in reader.pages[1].extract_text()


def test_json_tells_what_would_mend_a_finding_and_what_is_lived_with(demo, capsys, tmp_path):
    """Every remedy told was tried on the engine; a finding that is lived with keeps its note."""
    assert run(["check", str(demo), "--json"]) == 1
    report = json.loads(capsys.readouterr().out)
    mended = [f for f in report["findings"] if f["remedies"]]
    assert mended
    assert all(f["verdict"] in {"strains", "clashes"} for f in mended)
    assert all(r["text"] for f in mended for r in f["remedies"])

    garden = open_garden(demo)
    found = check(garden).findings[0]
    known = Accepted(
        code=found.code, plantings=found.plantings, verdict=found.verdict.word, note="I know",
        on=date(2027, 1, 2),
    )  # fmt: skip
    save_garden(accept(garden, garden.layouts[0].id, known), tmp_path / "known.gardencanvas")
    run(["check", str(tmp_path / "known.gardencanvas"), "--json"])
    again = json.loads(capsys.readouterr().out)
    (lived,) = [f for f in again["findings"] if "accepted" in f]
    assert (lived["id"], lived["accepted"], lived["remedies"]) == (found.id, "I know", [])


def test_remedies_can_be_left_out(demo, capsys):
    assert run(["check", str(demo), "--json", "--no-remedies"]) == 1
    assert all(f["remedies"] == [] for f in json.loads(capsys.readouterr().out)["findings"])
