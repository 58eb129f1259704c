"""The check of crop files: shipped ones are sound; each kind of fault is found where it is."""

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.check import check_files
from gardencanvas.crops.fallback import STAGES
from gardencanvas.crops.model import Crop
from gardencanvas.crops.own import Own, own_to_text
from gardencanvas.crops.sense import CLASSES, doubts
from gardencanvas.resources_folder import resources

CROPS = catalogue()


def test_shipped_files_are_sound():
    files = [
        *(resources() / "crops").glob("*.toml"),
        resources() / "varieties.toml",
        resources() / "sources.toml",
    ]
    assert len(files) > 20
    assert [str(c) for c in check_files(files)] == []


@pytest.mark.parametrize("variety", CROPS.varieties, ids=lambda v: v.id)
def test_shipped_varieties_make_sense(variety):
    assert list(doubts(CROPS.resolve(variety.crop, variety.id))) == []


def changed(crop_id="cabbage", **changes):
    def quantity(value):
        if isinstance(value, (int, float)):
            return {"low": value, "mid": value, "high": value, "source": "user"}
        return value

    return Crop.model_validate(
        {**CROPS.crop(crop_id).model_dump(), **{k: quantity(v) for k, v in changes.items()}}
    )


@pytest.mark.parametrize(
    ("changes", "field", "code"),
    [
        ({"family": "Apiaceae"}, "family", "family-of-genus"),
        ({"botanical": "× Daucus oleracea"}, "family", "family-of-genus"),
        ({"spread_m": 2.0}, "spread_m", "spread-for-spacing"),
        ({"spread_m": 0.1}, "spread_m", "spread-for-spacing"),
        ({"stage_middle_d": 200}, "stage_late_d", "stages-for-harvest"),
        ({"stage_middle_d": 0, "stage_development_d": 0}, "stage_late_d", "stages-for-harvest"),
        ({"harvest_length_d": 300}, "stage_late_d", "stages-for-harvest"),
        ({"light_least": 0.99}, "light_least", "out-of-order"),
        ({"base_temperature_c": 20}, "base_temperature_c", "out-of-order"),
        ({"canopy_base_m": 0.9}, "canopy_base_m", "out-of-order"),
        ({"root_depth_m": 4.9}, "root_depth_m", "out-of-order"),
        ({"germination_min_c": 40}, "germination_min_c", "out-of-order"),
        ({"harvest_from_planting_d": 500}, "harvest_from_planting_d", "out-of-order"),
        ({"frost": {"value": "fairly hardy", "source": "user"}}, "frost", "unknown-class"),
    ],
)
def test_what_does_not_agree_is_found(changes, field, code):
    assert (field, code) in {(d.field, d.code) for d in doubts(changed(**changes))}


def test_nothing_is_doubted_that_is_not_known():
    crop = CROPS.crop("cabbage")
    known = dict.fromkeys((*crop.quantities, *crop.facts))
    assert list(doubts(Crop.model_validate({**crop.model_dump(), **known}))) == []


def test_published_stages_of_transplanted_tomato_agree_with_its_harvest():
    """FAO-56 table 11 30/40/45/30; Missouri 70-75 days to first harvest, picked for two months and more."""
    days = dict(zip(STAGES, (30, 40, 45, 30), strict=True))
    assert list(doubts(changed("tomato", **days))) == []


def test_classes_are_those_in_use():
    for field, allowed in CLASSES.items():
        used = {c.facts[field].value for c in CROPS.crops if field in c.facts}
        assert used <= set(allowed)
        assert len(used) >= 3


def test_a_complaint_names_file_crop_field_and_why(tmp_path):
    path = tmp_path / "mine.toml"
    path.write_text(own_to_text(Own(crops=(changed(family="Apiaceae"),))), encoding="utf-8")
    [complaint] = check_files([path])
    assert (complaint.file, complaint.crop, complaint.field) == ("mine.toml", "cabbage", "family")
    assert complaint.code == "family-of-genus"
    assert str(complaint).startswith("mine.toml: cabbage, family: Brassica oleracea")


def test_a_parent_in_another_file_is_known(tmp_path):
    (tmp_path / "a.toml").write_text(own_to_text(Own(crops=(changed(id="mine"),))), encoding="utf-8")
    text = '[[variety]]\nid = "v"\ncrop = "mine"\nname = "late"\n'
    (tmp_path / "b.toml").write_text(text, encoding="utf-8")
    assert check_files([tmp_path / "a.toml", str(tmp_path / "b.toml")]) == []
    assert [c.code for c in check_files([tmp_path / "b.toml"])] == ["unknown-crop"]


def test_two_files_of_one_name_are_both_checked(tmp_path):
    for folder, text in (("one", "x = "), ("two", "[[crop]]\n")):
        (tmp_path / folder).mkdir()
        (tmp_path / folder / "mine.toml").write_text(text, encoding="utf-8")
    codes = [c.code for c in check_files(sorted(tmp_path.glob("*/mine.toml")))]
    assert "not-toml" in codes
    assert "missing" in codes


def test_missing_files_and_folders_are_complaints(tmp_path):
    codes = [c.code for c in check_files([tmp_path / "none.toml", tmp_path])]
    assert codes == ["unreadable", "unreadable"]


def test_nothing_that_moves_a_terminal_is_printed(tmp_path):
    path = tmp_path / "mine.toml"
    path.write_text('[[crop]]\nid = "\\u001B[2J"\nname = "\\u001B]0;x"\n', encoding="utf-8")
    complaints = check_files([path])
    assert complaints
    assert all(str(c).isprintable() for c in complaints)
